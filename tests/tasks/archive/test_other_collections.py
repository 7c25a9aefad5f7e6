"""What another collection handed over is not taken for our own (our own rules, no outside source)."""

import shutil
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings


def test_parts_of_two_collections_are_not_made_into_one(tmp_path: Path) -> None:
    """They have the same prefix and numbers, as two cousins who each began one of their own have."""
    for title in ("Tamm", "Rourke"):
        start(tmp_path / title, Settings(title=title, prefix="TR"))
        with open_collection(tmp_path / title) as collection:
            act = collection.act("intake")
            act.state(act.new(Kind.ITEM), "number", "TRA-0001")
            act.done()
            transfer(collection, tmp_path / f"of {title}", order=TransferOrder(go_on=True))
    shutil.copytree(tmp_path / "of Tamm" / "open", tmp_path / "both" / "open")
    shutil.copytree(tmp_path / "of Rourke" / "closed", tmp_path / "both" / "closed")
    with pytest.raises(WrongUse, match=r"holds parts of two collections, “(Tamm” and “Rourke|Rourke” and “Tamm)”"):
        rebuild(tmp_path / "made", tmp_path / "both")
    assert not (tmp_path / "made").exists()
    rebuild(tmp_path / "made", tmp_path / "of Tamm")
