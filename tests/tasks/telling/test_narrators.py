"""One narrator, however named: rules of our own, no outside source; the people are invented."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind, typed_source
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.sitting import course
from boxlore.tasks.sitting.beginning import check_teller
from boxlore.tasks.sitting.linking import story_about
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.what_to_ask import to_ask
from boxlore.tasks.sitting.who_said_it import give_all, reassign
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.table import tell_from

NEW = "Nobody here was called “{0}”, so {0} is a new person now."


@pytest.fixture
def collection(bare: Callable[[int], Path]) -> Iterator[Collection]:
    with open_collection(bare(2)) as opened:
        act = opened.act("people")
        for name in ("Leida Tamm", "Con Rourke", "Ruth Rourke"):
            Teller(opened).read_into(act, act.state(act.new(Kind.PERSON), "name", name))
        act.done()
        yield opened


def everyone(collection: Collection) -> list[str]:
    return sorted(person.name for person in collection.people().values())


@pytest.mark.parametrize(
    ("name", "meant", "said"),
    [
        ("Leida Tamm", "Leida Tamm", []),
        ("Leida", "Leida Tamm", []),
        ("Tamm", "Leida Tamm", ["“Tamm” is Leida Tamm."]),
        ("Aunt Leida", "Leida Tamm", ["“Aunt Leida” is Leida Tamm."]),
        ("Anu", "Anu", [NEW.format("Anu")]),
        ("Leid", "Leid", [NEW.format("Leid")]),
    ],
)
def test_a_part_of_a_name_is_the_one_who_is_known(
    collection: Collection, name: str, meant: str, said: list[str]
) -> None:
    before = everyone(collection)
    teller = Teller(collection)
    item = find_item(collection, "TRA-0001")
    statement = teller.tell(item, "story", "A boat.", Telling(source=typed_source(f"narrator:{name}")))
    assert collection.people()[statement.source.ref].name == meant and teller.unsaid == said
    assert everyone(collection) == sorted({*before, meant})


def test_a_new_narrator_in_her_own_first_picture_is_one_person(collection: Collection) -> None:
    before, item = everyone(collection), find_item(collection, "TRA-0001")
    Teller(collection).tell(item, "person", "Anu Saar", Telling(source=typed_source("narrator:Anu Saar")))
    table = collection.folder.parent / "told.csv"
    table.write_text(
        "item,field,text,by\n"
        "TRA-0001,kind,spaceship,narrator:Joan Hill\n"
        "TRA-0002,person,Anu Saar and Joan Hill,narrator:Joan Hill\n"
        "TRA-0002,person,Vi Dell,narrator:Vi Dell\n",
        "utf-8",
    )
    assert [row.line for row in tell_from(collection, table, Telling()).refused] == [2]
    assert everyone(collection) == sorted([*before, "Anu Saar", "Joan Hill", "Vi Dell"])


def test_several_are_listed_and_nothing_is_kept(collection: Collection, tmp_path: Path) -> None:
    how, item = Telling(source=typed_source("narrator:Rourke")), find_item(collection, "TRA-0001")
    before = everyone(collection)
    for attempt in (
        lambda: Teller(collection).tell(item, "story", "A boat.", how),
        lambda: check_teller(collection, "Rourke"),
        lambda: Sitting(collection, narrator="Rourke").begin(),
        lambda: Sitting(collection).start_with("Rourke"),
        lambda: course.prepare(Sitting(collection), {"narrator": "Rourke"}),
        lambda: give_all(collection, "Rourke", ""),
        lambda: story_about(Sitting(collection), "person", "Rourke", "He kept bees.", item.id),
    ):
        with pytest.raises(WrongUse, match=r"“Rourke” may be 2 people: Con Rourke \(.*; Ruth Rourke \("):
            attempt()
    check_teller(collection, "")
    assert everyone(collection) == before and not collection.store.subjects_told(Kind.ITEM, "story")


def test_a_sitting_is_with_the_one_who_is_known(collection: Collection) -> None:
    before = everyone(collection)
    sitting = Sitting(collection, narrator="Tamm")
    sitting.begin()
    assert sitting.narrator == "Leida Tamm" and sitting.teller.unsaid == ["“Tamm” is Leida Tamm."]
    begun = sitting.id
    course.prepare(sitting, {"narrator": "Leida", "terms": "1", "agreed_by": "Leida Tamm"})
    assert sitting.id == begun
    course.prepare(sitting, {"narrator": "Anu"})
    assert sitting.id != begun and sitting.narrator == "Anu" and everyone(collection) == sorted([*before, "Anu"])
    story_about(sitting, "person", "Tamm", "She kept bees.", find_item(collection, "TRA-0001").id)
    assert everyone(collection) == sorted([*before, "Anu"])
    told = sitting.teller.tell(find_item(collection, "TRA-0001"), "story", "A boat.", Telling())
    source = reassign(sitting, told, "Tamm", find_item(collection, "TRA-0001").id)
    assert collection.people()[source.ref].name == "Leida Tamm"
    course.ask_next_time(sitting, "The boat's name?")
    assert [asked.words for asked in to_ask(collection, "Anu")] == ["The boat's name?"]


def test_in_a_table_a_new_narrator_is_made_once_and_only_if_her_row_is_taken(collection: Collection) -> None:
    table = collection.folder.parent / "told.csv"
    table.write_text(
        "item,field,text,by\n"
        "TRA-0001,story,A boat.,narrator:Anu Saar\n"
        "TRA-0001,story,A red boat.,narrator:Saar\n"
        "TRA-0002,story,A cart.,narrator:Rourke\n"
        "TRA-0002,kind,spaceship,narrator:Joan Hill\n"
        "TRA-0002,story,A barn.,narrator:Tamm\n",
        "utf-8",
    )
    before = everyone(collection)
    taken = tell_from(collection, table, Telling())
    assert len(taken.told) == 3 and [row.line for row in taken.refused] == [4, 5]
    assert taken.unsaid == (NEW.format("Anu Saar"), "“Tamm” is Leida Tamm.")
    assert everyone(collection) == sorted([*before, "Anu Saar"])
    assert tell_from(collection, table, Telling()).known == 3 and everyone(collection) == sorted([*before, "Anu Saar"])
