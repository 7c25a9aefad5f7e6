"""`verify` names what is not as it was told; the database's bytes are changed beside SQLite (rules of our own)."""

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from click.testing import CliRunner

from boxlore.cli.main import boxlore
from boxlore.core.errors import CouldNot
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.log_check import MOST, log_findings, said_of_older
from boxlore.tasks.collection.opening import DATABASE, open_collection
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.undoing import Done, Steps


@pytest.fixture
def home(bare: Callable[[int], Path]) -> Path:
    folder = bare(MOST + 2)
    with open_collection(folder) as collection:
        act = collection.act("told")
        for at in range(1, MOST + 3):
            item = collection.store.item_by_number(f"TRA-{at:04}") or ""
            act.state(Subject(Kind.ITEM, item), "story", f"Nets of Haapsalu, {at}.")
        act.done()
    return folder


def turn(folder: Path, old: bytes, new: bytes) -> None:
    path = folder / DATABASE
    data = path.read_bytes()
    assert old in data
    path.write_bytes(data.replace(old, new))


def test_an_item_of_which_a_letter_turned_is_named(home: Path) -> None:
    assert CliRunner().invoke(boxlore, ["-c", str(home), "verify"]).exit_code == 0
    turn(home, b"Haapsalu, 7.", b"Haapsalv, 7.")
    result = CliRunner().invoke(boxlore, ["-c", str(home), "verify"])
    assert result.exit_code == 1
    assert "TRA-0007" in result.output and "is not as it was written (its words" in " ".join(result.output.split())


def test_where_many_are_changed_the_rest_are_counted(home: Path) -> None:
    turn(home, b"Nets of", b"Jets of")
    with open_collection(home, write=False) as collection:
        said = log_findings(collection)
        assert said_of_older(collection) == ""
    assert len(said) == MOST + 1 and said[-1][1].message.startswith("2 further rows of the log are not")


def test_what_is_damaged_beyond_reading_is_named_without_its_number(home: Path) -> None:
    turn(home, b"TRA-0007", b"TRA-\xff007")
    with open_collection(home, write=False) as collection:
        assert {number for number, _ in log_findings(collection)} == {""}


def rules(folder: Path, *, write: bool = False) -> list[str]:
    with open_collection(folder, write=write) as collection:
        return [finding.rule for _, finding in log_findings(collection)]


def test_each_place_of_a_text_that_is_altered_is_found(home: Path) -> None:
    """In the row by its sum, in an index by SQLite, which holds it against the row."""
    path, number = home / DATABASE, b"TRA-0007"
    good = path.read_bytes()
    places = [at for at in range(len(good)) if good.startswith(number, at)]
    found = set()
    for at in places:
        path.write_bytes(good[:at] + b"TRA-0907" + good[at + len(number) :])
        found.add(tuple(rules(home)))
    assert len(places) >= 2 and ("log.damaged",) in found and all(found)


@pytest.mark.parametrize(
    "script", ["DELETE FROM past", "INSERT INTO past SELECT min(row) FROM statement", "DELETE FROM withdrawn"]
)
def test_what_does_not_follow_from_the_log_is_said_and_made_again(home: Path, script: str) -> None:
    with open_collection(home) as collection:
        Steps(collection).withdraw(Done(collection.store.last_acts()[0].id, "told", ""), undoes=False)
    assert rules(home) == []
    with closing(sqlite3.connect(home / DATABASE)) as db, db:
        db.execute(script)
    assert rules(home, write=True) == ["log.out-of-step"]
    assert rules(home, write=True) == []


BESIDE = [
    "UPDATE words_index_content SET c0 = 'nets of haapsalv, 7.' WHERE c0 = 'nets of haapsalu, 7.'",
    "UPDATE words_index_content SET c0 = CAST(x'6eff' AS TEXT) WHERE c0 = 'nets of haapsalu, 7.'",
    "UPDATE words_index_data SET block = CAST(replace(CAST(block AS TEXT), 'haap', 'haaq') AS BLOB) WHERE id > 10",
    "UPDATE words_index_docsize SET sz = x'09' WHERE id = 60",
    "DELETE FROM words_index_content WHERE c0 = 'nets of haapsalu, 7.'",
    "INSERT INTO words_index (rowid, folded) VALUES (9999, 'a row of nothing')",
    "INSERT INTO name VALUES ('anna', '', 'person', 'Anna', '')",
    "DELETE FROM name",
]


def test_a_search_that_misses_what_is_told_is_noticed_and_made_again(home: Path) -> None:
    with open_collection(home) as collection:
        act = collection.act("told")
        act.state(act.new(Kind.PERSON), "name", "Leida Rourke")
        act.state(find_item(collection, "TRA-0001"), "place", "Haapsalu")
        act.done()
    good = (home / DATABASE).read_bytes()
    assert rules(home) == []
    for script in BESIDE:
        (home / DATABASE).write_bytes(good)
        with closing(sqlite3.connect(home / DATABASE)) as db, db:
            assert db.execute(script).rowcount, script
        assert rules(home) == ["log.out-of-step"], script
        assert rules(home, write=True) == ["log.out-of-step"], script
        assert rules(home, write=True) == [], script
        with open_collection(home) as collection:
            assert len(collection.store.search("haapsalu", 99)) == MOST + 3, script


DAMAGED = [
    ("block = x'00ff00ff00ff00ff' WHERE id > 10", lambda collection, item: collection.store.search("nets")),
    (
        "block = zeroblob(9) WHERE id = 10",
        lambda collection, item: Teller(collection).tell(item, "note", "x", Telling()),
    ),
]


@pytest.mark.parametrize(("damage", "ask"), DAMAGED, ids=["search", "tell"])
def test_a_damaged_index_is_told_from_a_damaged_log(home: Path, damage: str, ask: Callable[..., object]) -> None:
    """Whoever searches, or tells, is sent to verify and not to a backup, which would lose what was told since."""
    with closing(sqlite3.connect(home / DATABASE)) as db, db:
        db.execute(f"UPDATE words_index_data SET {damage}")
    with open_collection(home) as collection:
        item = find_item(collection, "TRA-0001")
        with pytest.raises(CouldNot, match=r"index of what can be searched is damaged.*boxlore verify"):
            ask(collection, item)
    assert rules(home, write=True) == ["log.out-of-step"] and rules(home) == ["log.out-of-step"]
    with open_collection(home) as collection:
        assert len(collection.store.search("nets", 99)) == MOST + 2


def test_withdrawals_that_form_a_circle_are_no_log_of_ours(home: Path) -> None:
    with closing(sqlite3.connect(home / DATABASE)) as db, db:
        db.execute("INSERT INTO withdrawal SELECT max(id), min(id) FROM act UNION SELECT min(id), max(id) FROM act")
    assert rules(home) == ["log.out-of-step"]
    with open_collection(home) as collection:
        assert log_findings(collection)[0][1].message.endswith("bring back a backup from before (boxlore restore).")
    assert rules(home, write=True) == ["log.out-of-step"]  # it can be opened still
