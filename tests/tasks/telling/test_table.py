"""Tables and worksheets taken twice, mended and taken again (rules of our own, no outside source)."""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.core.sitting.worksheet_origin import write_origin
from boxlore.core.statements import KEEPER, Kind, Said, Source, Subject, Sure
from boxlore.store.values import Change
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.people.registry import find_person, merge
from boxlore.tasks.strike import strike_out
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import TableTaken, tell_from

HEADING = "item,field,text,by,sure,audience\n"
TABLE = (
    HEADING
    + "TRA-0001,story,Fish on Fridays,narrator:Con Rourke,likely,family\n"
    + "TRA-0001,date,about 1938,,,\n"
    + "TRA-0001,keyword,boats,,,\n"
    + "TRA-0002,place,,,not-known,\n"
    + "TRA-0009,story,Of no item,,,\n"
)


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    with open_collection(bare(3)) as opened:
        yield opened


def take(
    collection: Collection, text: str, how: Telling | None = None, *, name: str = "told.csv", again: bool = False
) -> TableTaken:
    path = collection.folder.parent / name
    path.write_text(text, "utf-8")
    return tell_from(collection, path, how or Telling(), again=again, printed_here=True)


def counts(taken: TableTaken) -> tuple[int, int, int]:
    return len(taken.told), taken.known, len(taken.refused)


def rows(collection: Collection) -> int:
    return int(collection.store.db.execute("SELECT count(*) FROM statement").fetchone()[0])


def words(collection: Collection, number: str, field: str) -> list[str]:
    return [view.words for view in record_of(collection, find_item(collection, number).id).all(field)]


def test_a_table_taken_twice_adds_nothing(collection: Collection) -> None:
    assert counts(take(collection, TABLE)) == (4, 0, 1)
    before = rows(collection), len(collection.store.last_acts())
    assert counts(take(collection, TABLE)) == (0, 4, 1)
    assert counts(take(collection, TABLE, name="a copy.csv")) == (0, 4, 1)
    assert (rows(collection), len(collection.store.last_acts())) == before


def test_after_mending_one_line_only_that_line_is_new(collection: Collection) -> None:
    take(collection, TABLE)
    mended = take(collection, TABLE.replace("TRA-0009", "TRA-0003"))
    assert counts(mended) == (1, 4, 0) and words(collection, "TRA-0003", "story") == ["Of no item"]


def test_the_answers_of_a_worksheet_are_known_again(collection: Collection) -> None:
    code = write_code(CodedLine("TRA-0001", "story"), "TR")
    asked = write_code(CodedLine("TRA-0001", "place"), "TR")
    text = f"{code}: Fish\n on Fridays\n{asked}: ?\n"
    leida = Telling(source=Source(Said.NARRATOR, "Leida"))
    assert counts(take(collection, text, leida, name="answers.txt")) == (2, 0, 0)
    assert counts(take(collection, text, leida, name="answers.txt")) == (0, 2, 0)
    assert counts(take(collection, text, Telling(), name="answers.txt")) == (2, 0, 0)  # another says the same
    assert len(words(collection, "TRA-0001", "story")) == 2


def test_a_line_of_a_worksheet_without_a_code_is_not_glued_to_the_answer_before(collection: Collection) -> None:
    """One line for when and where, several for a story, for people, and for a question that says so (our worksheet)."""
    (collection.folder / "prompts.toml").write_text(
        '[[prompt]]\nfield = "own-clothes"\nquestion = "What do they wear?"\nlines = 2\n', encoding="utf-8"
    )
    number = "TRA-0001"
    date, clothes, who, story = (
        write_code(CodedLine(number, field), "TR") for field in ("date", "own-clothes", "person", "story")
    )
    text = f"{date}: 1931\nAnna\n{clothes}: hats\nand shoes\n{who}: Con\nMia\n{story}: Fish\non Fridays\nA99-Z: x\ny\n"
    taken = take(collection, text, name="answers.txt")
    assert [refusal.line for refusal in taken.refused] == [1]
    assert "Line 2 below it has no code: “Anna”" in taken.refused[0].why
    assert words(collection, number, "date") == []
    assert words(collection, number, "own-clothes") == ["hats\nand shoes"]
    assert words(collection, number, "person") == ["Con", "Mia"]
    assert words(collection, number, "story") == ["Fish\non Fridays\nA99-Z: x\ny"]
    mended = text.replace("1931\nAnna", "1931\n Anna's year")
    assert counts(take(collection, mended, name="answers.txt"))[2] == 0
    assert words(collection, number, "date") == ["1931\n Anna's year"]


def test_rows_that_say_the_same_are_counted(collection: Collection) -> None:
    two = HEADING + "TRA-0001,person,Anna,,,\nTRA-0001,person,Anna,,,\n"
    assert counts(take(collection, two)) == (2, 0, 0)
    assert len({shown.person for shown in record_of(collection, find_item(collection, "TRA-0001").id).shown()}) == 2
    assert counts(take(collection, two)) == (0, 2, 0)
    assert counts(take(collection, two + "TRA-0001,person,Anna,,,\n")) == (1, 2, 0)


def test_a_repeat_that_is_meant_can_be_said(collection: Collection) -> None:
    one = HEADING + "TRA-0001,keyword,boats,,,\n"
    take(collection, one)
    assert counts(take(collection, one, again=True)) == (1, 0, 0)
    assert words(collection, "TRA-0001", "keyword") == ["boats", "boats"]


def test_one_name_in_many_rows_is_one_person(collection: Collection) -> None:
    take(
        collection,
        HEADING + "TRA-0001,person,Jaan Tamm,,,\nTRA-0002,person,jaan tamm,,,\nTRA-0003,person,Jaan Tamm,,,\n",
    )
    assert [person.name for person in collection.people().values()] == ["Jaan Tamm"]


def test_what_was_corrected_since_is_known_and_what_was_taken_back_is_not(collection: Collection) -> None:
    taken = take(collection, TABLE)
    date = next(statement for statement in taken.told if statement.field == "date")
    item = find_item(collection, "TRA-0001")
    Teller(collection).tell(item, "date", "1939", Telling(), replaces=date.id)
    assert counts(take(collection, TABLE)) == (0, 4, 1)
    assert words(collection, "TRA-0001", "date") == ["1939"]
    clock = collection.clock
    collection.store.write(
        Change(act=clock.new_id(), what="undone", by="", recorded_at=clock.now(), withdraws=(taken.told[0].act,))
    )
    assert len(take(collection, TABLE).told) == 4


def test_an_audience_narrowed_since_stays_and_a_row_changed_since_is_refused(collection: Collection) -> None:
    taken = take(collection, TABLE)
    keyword = next(statement for statement in taken.told if statement.field == "keyword")
    how = Telling(audience="keeper")
    Teller(collection).tell(keyword.subject, "keyword", "boats", how, replaces=keyword.id)
    assert counts(take(collection, TABLE)) == (0, 4, 1)
    changed = TABLE.replace("likely,family", "sure,anyone")
    refused = take(collection, changed).refused[0]
    assert (refused.line, refused.why) == (
        2,
        "These words are known already, likely, for family, in en; the row says sure, for anyone, in en. Change that "
        "in the sitting (.sure, .audience, .language), or say --again to keep both.",
    )
    assert words(collection, "TRA-0001", "story") == ["Fish on Fridays"]
    assert counts(take(collection, changed, again=True)) == (4, 0, 1)


def test_words_that_were_struck_do_not_come_back(collection: Collection) -> None:
    taken = take(collection, TABLE)
    strike_out(collection, [taken.told[0].id])
    refused = take(collection, TABLE).refused[0]
    assert refused.line == 2 and "Words of this story were taken out for good" in refused.why
    assert take(collection, TABLE, again=True).refused[0].line == 2
    assert words(collection, "TRA-0001", "story") == []


def test_a_narrator_who_was_merged_is_known_again(collection: Collection) -> None:
    take(collection, TABLE)
    act = collection.act("another")
    act.state(act.new(Kind.PERSON), "name", "Connor Rourke")
    act.done()
    merge(collection, find_person(collection, "Connor Rourke"), find_person(collection, "Con Rourke"))
    assert counts(take(collection, TABLE.replace("Con Rourke", "Connor Rourke"))) == (0, 4, 1)


def test_a_refused_row_leaves_nobody_behind(collection: Collection) -> None:
    text = HEADING + "TRA-0001,story,x,narrator:Ghost,,nobody\nTRA-0001,story,y,narrator:Ghost,,\n"
    assert counts(take(collection, text)) == (1, 0, 1)
    assert [person.name for person in collection.people().values()] == ["Ghost"]
    text = HEADING + "TRA-0001,story,x,narrator:Spectre,,nobody\n"
    assert counts(take(collection, text)) == (0, 0, 1)
    assert [person.name for person in collection.people().values()] == ["Ghost"]


def test_what_is_told_by_hand_is_known_to_a_table(collection: Collection) -> None:
    subject = find_item(collection, "TRA-0001")
    assert subject == Subject(Kind.ITEM, subject.id)
    Teller(collection).tell(subject, "keyword", "boats", Telling(source=KEEPER, sure=Sure.SURE))
    assert take(collection, TABLE).known == 1


def _line(number: str, field: str = "story") -> str:
    return f"{write_code(CodedLine(number, field), 'TR')}: Fish\n"


ELSEWHERE = write_origin("another collection")
OF_ANOTHER = [
    (f"collection: {ELSEWHERE}\n{_line('TRA-0001')}", ".txt, line 2: these answers are of another collection"),
    (f"OURS\n{_line('TRA-0001')}# Collection: {ELSEWHERE}\n{_line('TRA-0002')}", ".txt, line 4: these answers"),
    (f"OURS\n# OURA-0001 · Box 1\n{_line('TRA-0001')}", ".txt, line 3 is about OURA-0001, and “Tamm and Rourke” has"),
    (f"# OURA-0001\n# Who is it?\n{_line('TRA-0001')}", ".txt, line 3 is about OURA-0001"),
    (_line("TRA-0001"), "does not say from which collection its worksheet was printed (line 1)"),
    (f"code,text,collection\nA1-S-B,Fish,{ELSEWHERE}\n", ".csv, line 2: these answers are of another collection"),
    (f"item,field,text,collection\nTRA-0001,story,Fish,{ELSEWHERE}\n", ".csv, line 2: these answers"),
    ("code,text,collection\nA1-S-B,Fish,\n", "does not say from which collection"),
    ("code,text,collection\nA1-S-B,Fish,7KQ2M9-9\n", "is no code of a collection"),
]
"""What is read (OURS is the line of this collection), and what is said of it."""


def test_answers_of_another_collection_are_not_taken(collection: Collection) -> None:
    before = rows(collection)
    ours = f"Collection: {write_origin(collection.id)}"
    for text, sentence in OF_ANOTHER:
        path = collection.folder.parent / ("told.csv" if "," in text.splitlines()[0] else "told.txt")
        path.write_text(text.replace("OURS", ours), "utf-8")
        with pytest.raises(WrongUse, match=re.escape(sentence)):
            tell_from(collection, path, Telling())
        assert rows(collection) == before, text
    path = collection.folder.parent / "told.txt"
    path.write_text(f"{ours}\n# TRA-0001\n{_line('TRA-0001')}# TRA-0002 · Box 2\n{_line('TRA-0003')}", "utf-8")
    taken = tell_from(collection, path, Telling())
    assert len(taken.told) == 1 and "stands under TRA-0002, and means TRA-0003 here" in taken.refused[0].why
    (collection.folder.parent / "told.csv").write_text(
        f"code,text,collection\n{_line('TRA-0002').partition(':')[0]},Fish,{write_origin(collection.id).lower()}\n"
    )
    assert counts(tell_from(collection, collection.folder.parent / "told.csv", Telling())) == (1, 0, 0)
