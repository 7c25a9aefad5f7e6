"""No coordinates of the scan in a copy, in whatever bytes they stand: one number of degrees is enough to be cut out.

What is a private tag or chunk: TIFF 6.0, page 8; PNG Third Edition, 5.4. GeoTIFF's tags: OGC 19-008r4, 7.1.2. The files
are made by Pillow and tifffile. That a lone number with four decimals counts as a place is a rule of our own.
"""

import io
import struct
import zlib
from typing import Any

import numpy
import pytest
import tifffile
from tests.formats.conftest import picture

from boxlore.core.crosswalk.metadata_values import Embedding, alternative
from boxlore.formats import picture_files

LATITUDE = "45.87654"
CAPTION = Embedding(xmp=(("dc:title", alternative("Nets", "en")),))


def chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(*chunks: bytes, behind: bytes = b"") -> bytes:
    data = picture("PNG")
    return data[:33] + b"".join(chunks) + data[33:] + behind


def tiff(tag: int, kind: int, count: int, value: object) -> bytes:
    out = io.BytesIO()
    with tifffile.TiffWriter(out) as writer:
        shades = numpy.full((40, 50, 3), 90, "uint8")
        writer.write(shades, photometric="rgb", metadata=None, extratags=[(tag, kind, count, value, True)])
    return out.getvalue()


FILES = {
    "a text called Location": png(chunk(b"tEXt", b"Location\x00the home, 45.87654")),
    "a text of any name": png(chunk(b"tEXt", b"Where\x0045.87654 home")),
    "a text of two numbers": png(chunk(b"tEXt", b"Where\x0045.87654 170.61234")),
    "a compressed text": png(chunk(b"zTXt", b"Where\x00\x00" + zlib.compress(b"at 45.87654"))),
    "a compressed international text": png(chunk(b"iTXt", b"Where\x00\x01\x00\x00\x00" + zlib.compress(b"45.87654"))),
    "a private chunk": png(chunk(b"prVt", b"45.87654 home")),
    "behind the end of a PNG": png(behind=b"home 45.87654" * 5),
    "behind it in UTF-16": png(behind="home 45.87654 home".encode("utf-16-le")),
    "behind the end of a JPEG": picture("JPEG") + b"home 45.87654" * 5,
    "behind it and another end": picture("JPEG") + b"home 45.87654\xff\xd9",
    "behind the end of a WebP": picture("WEBP") + b"home 45.87654 ",
    "a private tag": tiff(35575, 2, 0, "home 45.87654"),
    "a private tag of numbers": tiff(65000, 12, 2, (45.87654, 170.61234)),
    "GeoTIFF, a point": tiff(33922, 12, 6, (0.0, 0.0, 0.0, 170.61234, 45.87654, 0.0)),
    "GeoTIFF, words": tiff(34737, 2, 0, "WGS 84|45.87654"),
}


def made_of(rewritten: picture_files.Rewrite, data: bytes) -> bytes:
    return b"".join(piece if isinstance(piece, bytes) else data[piece[0] : sum(piece)] for piece in rewritten.pieces)


def says_place(data: bytes) -> bool:
    """Whether the latitude stands in the bytes, in UTF-16, as a double, or in what zlib makes of any of them."""
    shapes = (LATITUDE.encode(), LATITUDE.encode("utf-16-le"), struct.pack("<d", float(LATITUDE)))
    inflated = [data]
    for at in range(len(data) - 1):
        if data[at : at + 2] == b"\x78\x9c":
            try:
                inflated.append(zlib.decompressobj().decompress(data[at:]))
            except zlib.error:
                continue
    return any(shape in part for shape in shapes for part in inflated)


@pytest.mark.parametrize("name", FILES)
def test_no_number_of_degrees_is_in_a_copy_or_an_open_scan(name: str) -> None:
    data = FILES[name]
    source = io.BytesIO(data)
    assert says_place(data)
    copy = made_of(picture_files.rewrite(source, CAPTION), data)
    assert not says_place(copy)
    assert picture_files.verify(source, io.BytesIO(copy), CAPTION) == []
    assert not says_place(made_of(picture_files.without_place(source), data))
    assert not says_place(made_of(picture_files.bare_picture(source), data))


KEPT: dict[str, tuple[Any, bytes]] = {
    "a private tag of words": (tiff(65000, 2, 0, "batch 45, roll 3.5"), b"batch 45, roll 3.5"),
    "a private tag of whole numbers": (tiff(65000, 12, 2, (45.0, 170.0)), struct.pack("<dd", 45.0, 170.0)),
    "a private tag with an exponent": (tiff(65000, 2, 0, "scale 5.4509008E-05"), b"scale 5.4509008E-05"),
    "a text": (png(chunk(b"tEXt", b"Comment\x00f/2.8 at 1/60, 35.5 mm")), b"f/2.8 at 1/60, 35.5 mm"),
    "behind the end": (png(behind=b"roll 12.75 of 1912.1234"), b"roll 12.75 of 1912.1234"),
}


@pytest.mark.parametrize("name", KEPT)
def test_other_numbers_stay(name: str) -> None:
    data, kept = KEPT[name]
    assert kept in made_of(picture_files.rewrite(io.BytesIO(data), CAPTION), data)
