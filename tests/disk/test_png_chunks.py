"""Checksums of a PNG: PNG Third Edition, 5.3 to 5.5 (the pictures are Pillow's, the checksums zlib's CRC-32)."""

import io
import struct
import zlib
from pathlib import Path

import pytest
from PIL import Image

from boxlore.disk.pictures import make_jpeg, read_header
from boxlore.disk.png_chunks import chunks, is_sound, picture_alone


def png(wrong: bytes = b"", *, text: bool = True) -> bytes:
    """A PNG with a text, in which the checksum of the chunk `wrong` is wrong."""
    out = io.BytesIO()
    Image.radial_gradient("L").resize((40, 30)).save(out, "PNG")
    data, whole = out.getvalue(), bytearray()
    comment = b"Comment\x00from the scanner"
    extra = struct.pack(">I", len(comment)) + b"tEXt" + comment + struct.pack(">I", zlib.crc32(b"tEXt" + comment))
    data = data[:33] + (extra if text else b"") + data[33:]
    whole += data[:8]
    at = 8
    while at < len(data):
        length = int.from_bytes(data[at : at + 4], "big")
        piece = bytearray(data[at : at + 12 + length])
        if data[at + 4 : at + 8] == wrong:
            piece[-1] ^= 1
        whole += piece
        at += 12 + length
    return bytes(whole)


@pytest.mark.parametrize("wrong", [b"", b"IHDR", b"tEXt", b"IDAT", b"IEND"])
def test_a_wrong_checksum_is_found(wrong: bytes) -> None:
    assert is_sound(io.BytesIO(png(wrong))) == (not wrong)
    assert [chunk.type for chunk in chunks(io.BytesIO(png(wrong))) if not chunk.sound] == ([wrong] if wrong else [])


def test_another_file_and_a_cut_one_have_no_chunks_beyond() -> None:
    assert list(chunks(io.BytesIO(b"\xff\xd8\xff\xe0"))) == []
    assert [chunk.type for chunk in chunks(io.BytesIO(png()[:-20]))] == [b"IHDR", b"tEXt"]
    assert [chunk.type for chunk in chunks(io.BytesIO(png() + b"behind"))][-1] == b"IEND"


@pytest.mark.parametrize("missing", [1, 12, 40])
def test_a_png_without_its_end_is_not_sound(missing: int) -> None:
    assert not is_sound(io.BytesIO(png()[:-missing])) and is_sound(io.BytesIO(png() + b"behind"))


def test_a_picture_shows_although_a_text_beside_it_is_damaged(tmp_path: Path) -> None:
    path = tmp_path / "nets.png"
    path.write_bytes(png(b"tEXt"))
    assert (read_header(path).width, read_header(path).media_type) == (40, "image/png")
    assert make_jpeg(path, 40).startswith(b"\xff\xd8")
    alone = picture_alone(io.BytesIO(path.read_bytes()))
    assert alone is not None and alone.read() == png(text=False)
    assert picture_alone(io.BytesIO(png(b"IDAT"))) is None
