"""Rows of an uncompressed TIFF read where they lie: the same as what Pillow decodes, at a fraction of the memory."""

import io
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import tifffile
from PIL import Image, ImageChops
from tests.every_row import every_row

from boxlore.core.errors import CouldNot
from boxlore.disk import pictures
from boxlore.disk.rows_in_place import rows_in_place

WIDE, HIGH = 301, 203


def drawn(mode: str) -> Image.Image:
    gradient = Image.radial_gradient("L").resize((WIDE, HIGH))
    turned = gradient.transpose(Image.Transpose.FLIP_LEFT_RIGHT)
    return Image.merge("RGB", (gradient, turned, gradient.rotate(90))).convert(mode)


def tiff(mode: str, *, as_kind: str = "TIFF", **more: object) -> bytes:
    out = io.BytesIO()
    drawn(mode).save(out, as_kind, **more)  # type: ignore[arg-type]  # options by name
    return out.getvalue()


def by_tifffile(pixels: Any, **more: object) -> bytes:
    """By an independent writer: either order of bytes, one strip or many, tiles, planes."""
    out = io.BytesIO()
    tifffile.imwrite(out, pixels, photometric="rgb", **more)  # type: ignore[arg-type]  # options by name
    return out.getvalue()


DEEP = np.asarray(drawn("RGB"), dtype=np.uint16) * 257
PLAIN = [
    ("grey", tiff("L")),
    ("colour", tiff("RGB")),
    ("with a mask", tiff("RGBA")),
    ("for print", tiff("CMYK")),
    ("in one strip", tiff("RGB", strip_size=1 << 30)),
    ("16 bits", by_tifffile(DEEP, rowsperstrip=7)),
    ("16 bits, Motorola", by_tifffile(DEEP, byteorder=">")),
]
BOXES = [(0, 0, WIDE, HIGH), (0, 50, WIDE, 120), (40, 199, 90, HIGH)]


@every_row(("name", "data"), PLAIN)
@every_row("box", BOXES)
def test_a_part_is_what_pillow_decodes(name: str, data: bytes, box: tuple[int, int, int, int]) -> None:
    with Image.open(io.BytesIO(data)) as image:
        cut = rows_in_place(image, io.BytesIO(data))
        assert cut is not None, name
        part = cut(box)
        whole = image.crop(box)
        assert (part.mode, part.size, part.tobytes()) == (whole.mode, whole.size, whole.tobytes())


PLANES = np.stack([np.asarray(band) for band in drawn("RGB").split()])
OTHERWISE = [
    ("packed", tiff("RGB", compression="tiff_lzw")),
    ("a bit a pixel", tiff("1")),
    ("in tiles", by_tifffile(np.asarray(drawn("RGB")), tile=(64, 64))),
    ("in planes", by_tifffile(PLANES, planarconfig="separate")),
    ("no TIFF", tiff("RGB", as_kind="PNG")),
]


@every_row(("name", "data"), OTHERWISE)
def test_what_does_not_lie_plainly_is_left_to_pillow(name: str, data: bytes) -> None:
    with Image.open(io.BytesIO(data)) as image:
        assert rows_in_place(image, io.BytesIO(data)) is None, name


@every_row("area", [(), (0.2, 0.3, 0.5, 0.4)])
def test_the_picture_looks_the_same(area: tuple[float, ...], tmp_path: Path) -> None:
    path = tmp_path / "a.tif"
    path.write_bytes(tiff("RGB"))
    with pytest.MonkeyPatch.context() as patched:
        plainly = pictures.small_pixels(path, 30, 30, area=area)
        patched.setattr(pictures, "SURELY_FITS", 1)
        patched.setattr(pictures, "BAND_IN_PLACE", 3000)
        in_place = pictures.small_pixels(path, 30, 30, area=area)
    assert in_place[:2] == plainly[:2]
    first, second = (Image.frombytes("RGB", made[:2], made[2]) for made in (plainly, in_place))
    assert max(high for _, high in ImageChops.difference(first, second).getextrema()) <= 24


def test_a_file_that_ends_too_early_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "cut.tif"
    path.write_bytes(tiff("RGB")[:-2000])
    monkeypatch.setattr(pictures, "SURELY_FITS", 1)
    with pytest.raises(CouldNot, match="ends before its picture does"):
        pictures.small_pixels(path, 30, 30)
