"""`verify` names what is not as it was told; the database's bytes are changed beside SQLite (rules of our own)."""

import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from click.testing import CliRunner

from boxlore.cli.main import boxlore
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.log_check import MOST, log_findings, said_of_older
from boxlore.tasks.collection.opening import DATABASE, open_collection
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


def test_withdrawals_that_form_a_circle_are_no_log_of_ours(home: Path) -> None:
    with closing(sqlite3.connect(home / DATABASE)) as db, db:
        db.execute("INSERT INTO withdrawal SELECT max(id), min(id) FROM act UNION SELECT min(id), max(id) FROM act")
    assert rules(home) == ["log.out-of-step"]
