"""The names of scans in a package (the grammar in the module; our own, no outside source)."""

import pytest

from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.records.item_record import ALTERED, Record, ScanFile


def scan(ident: str, path: str, **more: object) -> ScanFile:
    facts = {"sha256": "0123456789abcdef", "bytes": 1, "width": 300, "height": 200, "media_type": "image/jpeg"}
    return ScanFile(id=ident, path=path, **{**facts, **more})  # type: ignore[arg-type]  # as the test spells them


SCANS = (
    scan("a", "scans/a.JPG"),
    scan("b", "scans/b.tif"),
    scan("c", "scans/c.jpg", side="verso"),
    scan("d", "scans/d.jpg", role=ALTERED),
    scan("e", "scans/e.jpg", role="in colour"),
    scan("f", "scans/f.jpg"),
    scan("g", "scans/1st.box/g", area=(0.0, 0.0, 0.5, 0.5)),
)
NAMES = [
    "scans/TRA-0042_f.jpg",
    "scans/TRA-0042_f-2.tif",
    "scans/TRA-0042_b.jpg",
    "scans/TRA-0042_f_altered.jpg",
    "scans/TRA-0042_f_in-colour.jpg",
    "scans/TRA-0042_f-3.jpg",
    "scans/0123456789ab_sheet.bin",
]


@pytest.mark.parametrize(("at", "name"), list(enumerate(NAMES)))
def test_each_scan_has_a_name_of_its_own(at: int, name: str) -> None:
    record = Record(id="i", number="TRA-0042", scans=SCANS)
    assert packed_path(record, SCANS[at]) == name
    assert len({packed_path(record, one) for one in SCANS}) == len(SCANS)
