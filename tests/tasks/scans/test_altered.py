"""Altered versions (coloured, retouched) beside the scans they were made from: never taken for the original.

Rule of our own, no outside source; the copies' words are read back with exiv2.
"""

import json
from collections.abc import Callable
from datetime import date
from pathlib import Path

import exiv2
import pytest
from PIL import Image

from boxlore.core.errors import WrongUse
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.originals.housing_check import check_scans
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_table

ROWS = (
    {"item": "1", "file": "coloured.jpg", "role": "Altered"},
    {"item": "1", "file": "back.jpg", "side": "verso"},
    {"item": "1", "file": "front.jpg", "role": "as-scanned", "title": "The quay"},
)


@pytest.fixture
def folder(bare: Callable[[int], Path], tmp_path: Path) -> Path:
    """A collection of one item: a front, its back, and the front coloured, which the table names first."""
    for name, colour in (("front", (90, 90, 90)), ("back", (230, 220, 200)), ("coloured", (90, 70, 160))):
        Image.new("RGB", (60, 40), colour).save(tmp_path / f"{name}.jpg")
    folder = bare(0)
    with open_collection(folder) as collection:
        plan = by_table(enumerate(ROWS, 2), tmp_path)
        assert [one.state for one in take_in(collection, plan, IntakeOptions(copy=True, box="1"))] == ["taken"]
    return folder


def sides(folder: Path) -> list[tuple[str, str, str]]:
    with open_collection(folder, write=False) as collection:
        (record,) = records(collection)
    return [(scan.side, scan.role, Path(scan.path).name) for scan in record.scans]


SIDES = [
    ("recto", "as-scanned", "TRA-0001_f.jpg"),
    ("verso", "as-scanned", "TRA-0001_b.jpg"),
    ("recto", "altered", "TRA-0001_f_altered.jpg"),
]


def test_it_stands_behind_what_it_was_made_from(folder: Path) -> None:
    assert sides(folder) == SIDES


def test_a_copy_says_that_it_is_altered(folder: Path, tmp_path: Path) -> None:
    with open_collection(folder) as collection:
        made = {Path(line.copy).name for line in copies(collection, tmp_path / "out")}
        asked = {finding.finding.message for finding in check_scans(collection)}
    assert made == {"TRA-0001_f.jpg", "TRA-0001_b.jpg", "TRA-0001_f_altered.jpg"}
    assert not any("altered" in message for message in asked)
    words = {}
    for path in (tmp_path / "out").rglob("*.jpg"):
        image = exiv2.ImageFactory.open(str(path))
        image.readMetadata()
        told = {str(datum.key()): str(datum.toString()) for datum in image.xmpData()}
        words[path.name] = (told.get("Xmp.dc.description", ""), "Xmp.iptcExt.DigitalSourceType" in told)
    coloured, scanned = words["TRA-0001_f_altered.jpg"], words["TRA-0001_f.jpg"]
    assert "Altered version (coloured or retouched)." in coloured[0] and not coloured[1]
    assert "Altered" not in scanned[0] and scanned[1]


def test_it_comes_back_out_of_a_transfer(folder: Path, tmp_path: Path) -> None:
    with open_collection(folder, on_day=date(2026, 11, 25)) as collection:
        transfer(collection, tmp_path / "t")
    rebuild(tmp_path / "again", tmp_path / "t")
    assert [(side, role) for side, role, _ in sides(tmp_path / "again")] == [(side, role) for side, role, _ in SIDES]


FAULTS = [
    ([{"item": "1", "file": "a.jpg", "role": "painted"}], "Line 2: role is “painted”"),
    ([{"item": "1", "file": "a.jpg", "role": "altered"}], "Item 1 has an altered recto, a.jpg, and no scan"),
    (
        [{"item": "1", "file": "a.jpg"}, {"item": "1", "file": "b.jpg", "side": "verso", "role": "altered"}],
        "Item 1 has an altered verso, b.jpg",
    ),
]


@pytest.mark.parametrize(("rows", "words"), FAULTS, ids=lambda value: json.dumps(value)[:40])
def test_a_table_is_refused_with_what_to_do(rows: list[dict[str, str]], words: str) -> None:
    with pytest.raises(WrongUse, match=words):
        by_table(enumerate(rows, 2), Path())
