"""HEIC and AVIF: their size by their boxes, and what is said where this machine has no reader for them.

The boxes are written by hand from ISO/IEC 23008-12 (6.5.3 `ispe`, 6.5.10 `irot`) and ISO/IEC 14496-12 (4.3 `ftyp`).
"""

import struct
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image
from tests.every_row import every_row

from boxlore.disk.decoding import NoReader
from boxlore.disk.pictures import make_jpeg, read_header
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.scans.damage import damage_findings, look_closer, unseen_lines
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix


def box(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", 8 + len(data)) + kind + data


def heic(*sizes: tuple[int, int], turn: int | None = None) -> bytes:
    extents = b"".join(box(b"ispe", struct.pack(">III", 0, *size)) for size in sizes)
    turned = b"" if turn is None else box(b"irot", bytes([turn]))
    return box(b"ftyp", b"heic\x00\x00\x00\x00mif1heic") + box(b"meta", bytes(4) + box(b"ipco", extents + turned))


SIZES = [
    (heic((4032, 3024), (320, 240)), (4032, 3024)),
    (heic((320, 240), (4032, 3024), turn=2), (4032, 3024)),
    (heic((4032, 3024), (320, 240), turn=1), (3024, 4032)),
    (heic((4032, 3024), turn=3), (3024, 4032)),
]


@every_row(("data", "size"), SIZES)
def test_the_size_is_the_one_that_readers_show(tmp_path: Path, data: bytes, size: tuple[int, int]) -> None:
    (tmp_path / "a.heic").write_bytes(data)
    header = read_header(tmp_path / "a.heic")
    assert (header.width, header.height, header.media_type) == (*size, "image/heic")


def test_where_the_reader_is_there_its_size_is_ours(tmp_path: Path) -> None:
    heif = pytest.importorskip("pillow_heif", reason="the optional library for telephone pictures is not installed")
    heif.from_pillow(Image.radial_gradient("L").resize((200, 100)).convert("RGB")).save(tmp_path / "a.heic")
    header = read_header(tmp_path / "a.heic")
    heif.register_heif_opener()
    with Image.open(tmp_path / "a.heic") as image:
        assert image.size == (header.width, header.height)


def test_what_is_kept_and_cannot_be_shown_is_said(
    bare: Callable[[int], Path], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    scans = tmp_path / "scans"
    scans.mkdir()
    (scans / "a.heic").write_bytes(heic((40, 30)))
    (scans / "b.heic").write_bytes(heic((50, 30)))
    Image.radial_gradient("L").resize((64, 48)).save(scans / "c.avif")
    Image.radial_gradient("L").resize((60, 40)).save(scans / "d.png")
    Image.init()
    monkeypatch.setitem(sys.modules, "pillow_heif", None)
    with open_collection(bare(0)) as collection:
        results = take_in(collection, by_suffix(sorted(scans.iterdir())), IntakeOptions())
        assert [result.state for result in results] == ["taken"] * 4
        monkeypatch.delitem(Image.OPEN, "AVIF")
        with pytest.raises(NoReader, match=r"c\.avif is an AVIF picture, and the Pillow that is installed reads none"):
            make_jpeg(scans / "c.avif", 100)
        look_closer(collection)
        heif, avif = unseen_lines(collection)
        assert heif.startswith("Kept, and not shown: a.heic is a HEIC picture, and the part that reads them")
        assert heif.endswith("So with 1 more.") and avif.startswith("Kept, and not shown: c.avif is an AVIF picture")
        assert damage_findings(collection) == []
        (scans / "a.heic").unlink()
        monkeypatch.undo()
        look_closer(collection)
        assert [line for line in unseen_lines(collection) if "AVIF" in line] == []
