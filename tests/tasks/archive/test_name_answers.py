"""The keeper's answers to the name search: in a table, kept in the log, asked once (a rule of our own)."""

import csv
from collections.abc import Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.records.audience import To
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.archive.name_answers import decide, undecided
from boxlore.tasks.archive.names_asked import look_for_names, names_asked, write_names_found
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.telling.understanding import person_reading

MAY = "A picnic, and May laughed."


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """May Rourke lives; two things told name her, or the month."""
    start(tmp_path / "tamm", Settings(title="Tamm", prefix="TR"))
    with open_collection(tmp_path / "tamm") as opened:
        act = opened.act("told")
        may = act.new(Kind.PERSON)
        act.state(may, "given", "May")
        act.state(may, "family", "Rourke")
        item = act.new(Kind.ITEM)
        act.state(item, "number", "TRA-0001")
        act.state(item, "story", MAY)
        act.state(item, "rights_holder", "May Rourke")
        act.done()
        yield opened


def table(collection: Collection) -> list[dict[str, str]]:
    with open(write_names_found(collection, look_for_names(collection)), encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def fill(collection: Collection, *answers: str) -> None:
    rows = table(collection)
    with open(collection.folder / "names-found.csv", "w", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, rows[0].keys())
        out.writeheader()
        for row, answer in zip(rows, answers, strict=True):
            out.writerow(row | {"Answer": answer})


def stories(collection: Collection) -> list[str]:
    (record,) = seen_by(collection, To.OUTSIDE).records()
    return [record.words("story"), record.words("rights_holder")]


def test_the_table_shows_the_word_in_its_sentence_and_why_it_is_asked(collection: Collection) -> None:
    assert [(row["Where"], row["Words"], row["Why it is asked"]) for row in table(collection)] == [
        ("story", "A picnic, and [May] laughed.", "a word of every day too"),
        ("rights_holder", "[May Rourke]", "surely the name"),
    ]


def test_a_row_that_follows_from_others_says_so_and_takes_no_answer(collection: Collection) -> None:
    """What is written there is never passed over, unless it is what becomes of the row in any case."""
    act = collection.act("told")
    (item,) = (Subject(Kind.ITEM, ident) for _, ident in collection.store.items())
    (may,) = collection.people()
    girl = act.state(item, "person", "the girl")
    act.readings.append((girl.id, person_reading(Subject(Kind.PERSON, may))))
    act.done()
    rows = table(collection)
    assert [row["Why it is asked"] for row in rows if not row["Key"]] == [
        "not asked: the person is meant, and goes out with a consent"
    ]
    fill(collection, *("hide" for _ in rows))
    assert names_asked(collection).taken == len(rows) - 1
    fill(collection, *("" if row["Key"] else "may be named" for row in rows))
    with pytest.raises(WrongUse, match=r"line \d: this row takes no answer\. Take it out there\."):
        names_asked(collection)


def test_what_is_undecided_stays_out_and_what_is_answered_is_kept(collection: Collection) -> None:
    assert stories(collection) == ["", ""]
    fill(collection, "Not that  person", "")
    assert names_asked(collection).taken == 1
    assert stories(collection) == [MAY, ""]
    assert [(row["Where"], row["Answer"]) for row in table(collection)] == [
        ("rights_holder", ""),
        ("story", "not that person"),
    ]
    fill(collection, "may be named", "")
    assert names_asked(collection).taken == 1
    assert stories(collection) == [MAY, "May Rourke"]
    assert look_for_names(collection).namings == []
    assert {row["Answer"] for row in table(collection)} == {"not that person", "may be named"}
    assert {row["What becomes of it"] for row in table(collection)} == {"may go out, as you answered"}
    fill(collection, "hide", "")
    assert names_asked(collection).taken == 1
    assert stories(collection) == ["", "May Rourke"], "what was let go is held back again"


def test_what_is_hidden_is_not_asked_again(collection: Collection) -> None:
    fill(collection, "hide", "hide")
    assert names_asked(collection).taken == 2
    found = [place for hit in look_for_names(collection).namings for place in hit.places]
    assert undecided(found) == [] and {place.answer for place in found} == {"hide"}
    assert {row["Answer"] for row in table(collection)} == {"hide"}
    assert names_asked(collection).taken == 0, "the same answers are not told twice"
    assert decide(collection, [(found[0], NamingAnswer.OTHER)]) == 1
    assert stories(collection) == [MAY, ""], "an answer may be changed"


def test_new_words_are_asked_about(collection: Collection) -> None:
    fill(collection, "hide", "hide")
    names_asked(collection)
    (item,) = [Subject(Kind.ITEM, ident) for _, ident in collection.store.items()]
    act = collection.act("more")
    act.state(item, "story", "Then May sang.")
    act.done()
    assert [place.sentence for hit in look_for_names(collection).namings for place in undecided(hit.places)] == [
        "Then [May] sang."
    ]


REFUSED = [
    ("Number,Answer\n", "has no column Key"),
    ("Number,Key,Answer\nTRA-0001,x,perhaps\n", "line 2: “perhaps” is no"),
]


@pytest.mark.parametrize(("text", "sentence"), REFUSED)
def test_a_table_that_cannot_be_read_is_left_and_says_why(collection: Collection, text: str, sentence: str) -> None:
    listed = collection.folder / "names-found.csv"
    listed.write_text(text, "utf-8")
    with pytest.raises(WrongUse, match=sentence):
        names_asked(collection)
    assert listed.read_text("utf-8") == text


def test_an_answer_about_words_that_are_gone_is_passed_over(collection: Collection) -> None:
    (collection.folder / "names-found.csv").write_text("Number,Key,Answer\nTRA-0001,x,hide\n", "utf-8")
    assert names_asked(collection).taken == 0
