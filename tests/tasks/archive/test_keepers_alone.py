"""An item that is the keeper's alone does not exist for an archive (DESIGN: the closed part has never the keeper's);
one that is kept in the family, or closed until a day, leaves its number. Rules of our own, no outside source."""

import shutil
from datetime import date
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.core.fields.pictures import LINK_WORDS, Link
from boxlore.core.fields.sittings import SHOWN_WORDS, ShownAt
from boxlore.core.statements import Kind
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.strike import strike_out
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)


def keep(collection: Collection, number: str, audience: str) -> None:
    act = collection.act("kept")
    act.state(find_item(collection, number), "audience", audience, audience="keeper")
    act.done()


def holding(folder: Path, words: str) -> list[str]:
    """The files below the folder that hold the words in their name or in any byte."""
    files = (path for path in folder.rglob("*") if path.is_file())
    return [path.name for path in files if words in path.name or words.encode() in path.read_bytes()]


def test_what_is_the_keepers_alone_stands_nowhere(small_family: Path, tmp_path: Path) -> None:
    shutil.copytree(small_family, tmp_path / "mine")
    with open_collection(tmp_path / "mine", on_day=ON) as collection:
        first, second = (find_item(collection, number).id for number in ("TRA-0001", "TRA-0002"))
        struck = Teller(collection).tell(find_item(collection, "TRA-0002"), "note", "Of no interest", Telling())
        act = collection.act("told")
        act.state(act.new(Kind.RELATION), "link", LINK_WORDS.write(Link(first, second, "same_picture")))
        sitting = act.new(Kind.SITTING)
        act.state(sitting, "place", "At the table")
        act.state(sitting, "shown", SHOWN_WORDS.write(ShownAt(second, 0)))
        act.done()
        strike_out(collection, [struck.id])
        keep(collection, "TRA-0002", "keeper")
        keep(collection, "TRA-0003", "family")
        made = offer(collection, tmp_path / "offer")
        order = TransferOrder(go_on=True)
        parts = transfer(collection, tmp_path / "t", order=order).parts
        assert (made.items, [part.records for part in parts]) == (1, [2, 2])
        with pytest.raises(CouldNot, match="nothing to offer"):
            offer(collection, tmp_path / "none", selection=Selection(items=("TRA-0002",)))
    for place in ("offer", "t"):
        assert holding(tmp_path / place, "TRA-0002") == [] and holding(tmp_path / place, second) == [], place
    assert holding(tmp_path / "t", "TRA-0003") and not holding(tmp_path / "offer", "TRA-0003"), "the family keeps it"
    assert holding(tmp_path / "t" / "closed", sitting.id)
    assert "receipt.csv" not in holding(tmp_path / "t", "TRA-0003"), "no reference is asked for what is not given"
