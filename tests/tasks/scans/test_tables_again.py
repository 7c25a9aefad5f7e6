"""A table of items that is taken again, mended or not, doubles nothing (rules of our own, no outside source)."""

from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import take_back
from boxlore.tasks.scans.intake import IntakeOptions, IntakeResult, take_in
from boxlore.tasks.scans.pairing import read_items

TABLE = (
    "item,title,date,box,attached_to\n"
    "1,The harbour,1908,1,\n"
    "2,,?,1,\n"
    "3,A letter,,1,1\n"
)  # fmt: skip


@pytest.fixture
def home(tmp_path: Path) -> Path:
    start(tmp_path / "tamm", Settings(title="Tamm and Rourke", prefix="TR"))
    return tmp_path / "tamm"


def take(home: Path, text: str, name: str = "items.csv") -> list[IntakeResult]:
    table = home.parent / name
    table.write_text(text, "utf-8")
    with open_collection(home) as collection:
        return take_in(collection, read_items(table, table.parent), IntakeOptions())


def seen(results: list[IntakeResult]) -> list[tuple[str, str]]:
    return [(result.state, result.number[-4:]) for result in results]


def held(home: Path) -> tuple[int, int, int]:
    """How many items, links and statements."""
    with open_collection(home, write=False) as collection:
        store = collection.store
        rows = store.db.execute("SELECT count(*) FROM statement").fetchone()[0]
        return store.count("item"), store.count("relation"), rows


def test_rows_of_one_table_are_known_again(home: Path) -> None:
    assert seen(take(home, TABLE)) == [("taken", "0001"), ("taken", "0002"), ("taken", "0003")]
    before = held(home)
    assert before[:2] == (3, 1)
    again = take(home, TABLE)
    assert seen(again) == [("known", "0001"), ("known", "0002"), ("known", "0003")] and held(home) == before
    assert {result.why for result in again} == {"this row of the table is here already"}
    assert [state for state, _ in seen(take(home, TABLE, "others.csv"))] == ["taken"] * 3


def test_what_is_new_in_a_row_is_told_and_a_new_row_is_linked(home: Path) -> None:
    take(home, TABLE)
    mended = take(home, TABLE.replace("2,,?", "2,The picnic,?") + "4,An envelope,,1,1\n")
    assert seen(mended) == [("known", "0001"), ("known", "0002"), ("known", "0003"), ("taken", "0004")]
    assert mended[1].why == "this row of the table is here already; what is new in it is told now"
    assert held(home)[:2] == (4, 2)
    with open_collection(home, write=False) as collection:
        assert [record.words("title") for record in records(collection)][1] == "The picnic"


def test_a_row_that_says_another_thing_is_refused(home: Path) -> None:
    take(home, TABLE)
    before = held(home)
    refused = take(home, "item,title\n1,The wharf\n")
    assert [result.state for result in refused] == ["refused"] and held(home) == before
    assert "An item 1 of this table is here (TRA-0001), and its title was another." in refused[0].why
    assert "boxlore tell TRA-0001 title. If not, give it another key." in refused[0].why


def test_a_number_is_the_item_that_has_it(home: Path) -> None:
    take(home, TABLE)
    assert seen(take(home, "item,story\nTRA-0002,A tale.\n", "more.csv")) == [("known", "0002")]
    assert held(home)[0] == 3
    assert seen(take(home, "item,story\nTRA-0077,A tale.\n", "more.csv")) == [("taken", "0004")]


def test_a_scan_that_its_row_gets_later_joins_the_item(home: Path) -> None:
    take(home, "item,title\n1,The harbour\n")
    Image.new("L", (80, 60), 90).save(home.parent / "harbour.png")
    joined = take(home, "item,title,file\n1,The harbour,harbour.png\n")
    assert seen(joined) == [("joined", "0001")] and held(home)[0] == 1
    assert seen(take(home, "item,title,file\n1,The harbour,harbour.png\n")) == [("known", "")]


def test_a_table_whose_intake_was_taken_back_is_taken_anew(home: Path) -> None:
    take(home, TABLE)
    with open_collection(home) as collection:
        act = next(act for act in collection.store.last_acts() if act.what == "intake")
        take_back(collection, act.id)
        assert collection.store.count(str(Kind.ITEM)) == 0
    assert [state for state, _ in seen(take(home, TABLE))] == ["taken"] * 3
