"""`verify` names what is not as it was told; the database's bytes are changed beside SQLite (rules of our own)."""

from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner

from boxlore.cli.main import boxlore
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.log_check import MOST, log_findings, said_of_older
from boxlore.tasks.collection.opening import DATABASE, open_collection


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
        assert [number for number, _ in log_findings(collection)] == [""]
