"""What the menu starts, run as the menu runs it: each form's answers as they first stand (our own contract)."""

import csv
from collections.abc import Callable
from pathlib import Path

import pikepdf
import pytest
from PIL import Image

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.progress import QUIET
from boxlore.tasks.collection.records import records
from boxlore.tui.jobs import TASKS


def start(collected: Path, task: str, /, **answers: str) -> list[str]:
    """The task with its form's own answers but for `answers`; the sentences it ends in."""
    with open_collection(collected) as collection:
        first = {blank.name: blank.text for blank in TASKS[task].blanks(collection)}
        return TASKS[task].job(collection, first | answers, QUIET)


@pytest.fixture
def folder(bare: Callable[[int], Path], tmp_path: Path) -> Path:
    """One item without a scan, one with a front and a back taken in by the menu."""
    scans = tmp_path / "from the scanner"
    scans.mkdir()
    for name, colour in (("quay_f.jpg", (90, 70, 50)), ("quay_b.jpg", (230, 220, 200))):
        Image.new("RGB", (60, 40), colour).save(scans / name)
    folder = bare(1)
    assert start(folder, "intake", path=str(scans), box="3", folder="12") == ["2 files: 1 taken."]
    return folder


def test_pictures_are_taken_in_by_the_menu(folder: Path) -> None:
    with open_collection(folder, write=False) as collection:
        number, mark, scans = [(one.number, str(one.mark), one.scans) for one in records(collection)][-1]
    assert (number, mark, [scan.side for scan in scans]) == (
        "TRA-0002",
        "Box 3 / Folder 12 / Item 1",
        ["recto", "verso"],
    )
    assert all((folder / scan.path).is_file() and scan.path.startswith("scans/") for scan in scans)


def test_what_the_menu_writes_is_there(folder: Path) -> None:
    assert start(folder, "copies") == [f"In {folder / 'copies'}: 2 written."]
    assert len(list((folder / "copies").rglob("*.jpg"))) == 2
    assert start(folder, "sheet")[0] == f"{folder / 'print/album.pdf'}: 1 items, 1 left out."
    with pikepdf.open(folder / "print/album.pdf") as pdf:
        assert len(pdf.pages) >= 1
    assert start(folder, "transfer")[0].startswith(f"{folder / 'transfer/open'}: ")
    assert (folder / "transfer/open/manifest-sha512.txt").is_file()


def test_what_the_menu_looks_over(folder: Path) -> None:
    assert {"TRA-0001", "TRA-0002"} <= {line.split()[0] for line in start(folder, "check")}
    with open_collection(folder) as collection:
        act = collection.act("told")
        act.state(Subject(Kind.ITEM, collection.store.item_by_number("TRA-0001") or ""), "enclosure", "PVC sleeve")
        act.done()
    (line,) = [line for line in start(folder, "housing") if "PVC" in line]
    assert line.startswith("TRA-0001")
    work, order = folder / "print/work.csv", folder / "print/scanning.csv"
    lines = start(folder, "lists", work=str(work), order=str(order))
    assert lines[0].startswith(f"{work}: ") and lines[1].startswith(f"{order}: ")
    assert "TRA-0001" in work.read_text(encoding="utf-8")
    assert list(csv.reader(order.read_text(encoding="utf-8").splitlines()))
