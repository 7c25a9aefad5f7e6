"""A bare picture: decoded by Pillow and tifffile as before, with its colours, resolution and orientation, and without a
word. What is planted is looked for in the bytes, and in what zlib inflates; where it can stand, the standards named in
formats/picture_alone say.
"""

import io
import re
import struct
import zlib

import numpy
import pytest
import tifffile
from PIL import Image
from tests.formats.conftest import FILES, PROFILE, exif_block, frames, picture, png_chunk

from boxlore.core.errors import ByteFault
from boxlore.formats import picture_alone, picture_files

WORD = "Tuulikki"
PLANTED = WORD.encode()


def stripped(data: bytes) -> bytes:
    source = io.BytesIO(data)
    pieces = picture_files.bare_picture(source).pieces
    made = b"".join(piece if isinstance(piece, bytes) else data[piece[0] : sum(piece)] for piece in pieces)
    picture_files.prove_bare(source, io.BytesIO(made))
    return made


def everything(data: bytes) -> bytes:
    """The bytes, also those of 16-bit texts as 8-bit ones, and whatever in them zlib can inflate."""
    inflated = b""
    for match in re.finditer(rb"\x78[\x01\x5e\x9c\xda]", data):
        try:
            inflated += zlib.decompressobj().decompress(data[match.start() :])
        except zlib.error:
            continue
    return data + inflated + data.replace(b"\x00", b"")


NOT_HERE = ("webp-animated", "tiff-big-motorola")
"""One is refused; the other Pillow does not read, and tifffile looks at it below."""


@pytest.mark.parametrize("name", [name for name in FILES if name not in NOT_HERE])
def test_the_picture_is_as_it_was(name: str) -> None:
    data = FILES[name]
    made = stripped(data)
    with Image.open(io.BytesIO(data)) as before, Image.open(io.BytesIO(made)) as after:
        assert (before.mode, before.size) == (after.mode, after.size)
        for page in range(getattr(before, "n_frames", 1)):
            before.seek(page)
            after.seek(page)
            assert before.tobytes() == after.tobytes()
        assert before.info.get("icc_profile") == after.info.get("icc_profile")
        assert before.info.get("dpi") == after.info.get("dpi")
        assert before.getexif().get(0x0112) == after.getexif().get(0x0112)
    assert b"scanner" not in made and b"kept" not in made and b"2026:03:01" not in made
    assert stripped(made) == made


XMP = f"<x:xmpmeta xmlns:x='adobe:ns:meta/'>{WORD}</x:xmpmeta>".encode()


def jpeg(*segments: tuple[int, bytes], at: int = 2, data: bytes = FILES["with-exif"], after: bytes = b"") -> bytes:
    planted = b"".join(
        bytes((0xFF, marker)) + (len(payload) + 2).to_bytes(2, "big") + payload for marker, payload in segments
    )
    return data[:at] + planted + data[at:] + after


def png(*chunks: bytes, after: bytes = b"") -> bytes:
    data = FILES["png"]
    return data[:33] + b"".join(chunks) + data[33:] + after


def webp(kind: bytes, *, after: bytes = b"") -> bytes:
    body = FILES["webp-exif"][12:] + kind + len(PLANTED).to_bytes(4, "little") + PLANTED
    return b"RIFF" + (4 + len(body)).to_bytes(4, "little") + b"WEBP" + body + after


def with_tags(*tags: tuple[int, int, bytes]) -> bytes:
    out = io.BytesIO()
    data = numpy.arange(96 * 64 * 3).reshape(64, 96, 3).astype("uint8")
    extra = [(tag, kind, len(value), value, True) for tag, kind, value in tags]
    tifffile.imwrite(out, data, photometric="rgb", extratags=extra, description=WORD, software=WORD, metadata=None)
    return out.getvalue()


def with_smaller_picture() -> bytes:
    out = io.BytesIO()
    with tifffile.TiffWriter(out) as writer:
        for side, kind in ((64, 0), (16, 1)):
            data = numpy.full((side, side, 3), 7 + kind, "uint8")
            writer.write(data, photometric="rgb", subfiletype=kind, description=WORD, metadata=None)
    return out.getvalue()


JFXX = b"JFXX\x00\x10" + picture("JPEG", comment=PLANTED)
CARRIERS = {
    "comment": jpeg((0xFE, PLANTED)),
    "JFIF thumbnail": jpeg((0xE0, b"JFIF\x00\x01\x02\x01\x01\x2c\x01\x2c\x01\x03" + PLANTED + b"!")),
    "JFXX thumbnail": jpeg((0xE0, JFXX)),
    "XMP": jpeg((0xE1, b"http://ns.adobe.com/xap/1.0/\x00" + XMP)),
    "extended XMP": jpeg((0xE1, b"http://ns.adobe.com/xmp/extension/\x00" + b"0" * 32 + bytes(8) + XMP)),
    "Exif": jpeg((0xE1, exif_block().replace(b"from the scanner", PLANTED + bytes(8))), data=FILES["baseline"]),
    "image resources": jpeg(
        (0xED, b"Photoshop 3.0\x008BIM\x04\x04\x00\x00\x00\x00\x00\x0d\x1c\x02\x78\x00\x08" + PLANTED)
    ),
    "unknown segment": jpeg((0xEB, b"maker\x00" + PLANTED)),
    "Adobe segment": jpeg((0xEE, b"Adobe\x00\x64\x00\x00\x00\x00\x01" + PLANTED)),
    "JPEG end": jpeg(after=PLANTED),
    "JPEG 16-bit end": jpeg(after=WORD.encode("utf-16-le")),
    "second JPEG": jpeg(after=picture("JPEG", comment=PLANTED)),
    "tEXt": png(png_chunk(b"tEXt", b"Comment\x00" + PLANTED)),
    "zTXt": png(png_chunk(b"zTXt", b"Comment\x00\x00" + zlib.compress(PLANTED))),
    "iTXt": png(png_chunk(b"iTXt", b"Title\x00\x00\x00en\x00\x00" + PLANTED)),
    "compressed iTXt": png(png_chunk(b"iTXt", b"Title\x00\x01\x00en\x00\x00" + zlib.compress(PLANTED))),
    "suggested palette": png(png_chunk(b"sPLT", PLANTED + b"\x00\x08")),
    "unknown chunk": png(png_chunk(b"naMe", PLANTED)),
    "PNG Exif": png(png_chunk(b"eXIf", b"II*\x00\x08\x00\x00\x00" + PLANTED)),
    "PNG end": png(after=PLANTED),
    "WebP XMP": webp(b"XMP "),
    "WebP unknown": webp(b"NAME"),
    "WebP end": webp(b"XMP ", after=PLANTED),
    "TIFF texts": with_tags((315, 2, PLANTED), (316, 2, PLANTED), (269, 2, PLANTED), (333, 2, PLANTED)),
    "TIFF XMP and IIM": with_tags((700, 1, XMP), (33723, 7, PLANTED)),
    "TIFF words for a system": with_tags((0x9C9D, 1, WORD.encode("utf-16-le"))),
    "TIFF unknown tag": with_tags((65000, 7, PLANTED), (37724, 7, PLANTED)),
    "TIFF smaller picture": with_smaller_picture(),
    "TIFF end": FILES["tiff"] + PLANTED,
    "TIFF Exif": picture("TIFF", exif=exif_block(), description=WORD),
}


@pytest.mark.parametrize("name", CARRIERS)
def test_a_name_is_gone_wherever_it_stood(name: str) -> None:
    data = CARRIERS[name]
    assert PLANTED in everything(data), "it is planted"
    made = stripped(data)
    assert PLANTED not in everything(made)
    with Image.open(io.BytesIO(data)) as before, Image.open(io.BytesIO(made)) as after:
        assert before.tobytes() == after.tobytes()


def test_a_smaller_picture_is_no_page_any_more() -> None:
    with tifffile.TiffFile(io.BytesIO(stripped(with_smaller_picture()))) as read:
        assert [page.shape for page in read.pages] == [(64, 64, 3)]
    for name, pages in (("tiff-pages", 3), ("tiff-big-motorola", 2)):
        with (
            tifffile.TiffFile(io.BytesIO(FILES[name])) as was,
            tifffile.TiffFile(io.BytesIO(stripped(FILES[name]))) as now,
        ):
            assert len(now.pages) == pages, "a page is no smaller picture"
            assert all((a.asarray() == b.asarray()).all() for a, b in zip(was.pages, now.pages, strict=True))


def test_the_colours_stay() -> None:
    with Image.open(io.BytesIO(stripped(FILES["with-exif"]))) as after:
        assert after.info["icc_profile"] == PROFILE
        assert after.getexif()[0x0112] == 6 and not after.getexif().get_ifd(0x8825)


def stream_with_a_text() -> bytes:
    """A TIFF of one strip that is a JPEG stream with a comment (TIFF Technical Note 2)."""
    stream = jpeg((0xFE, PLANTED), data=picture("JPEG", "L"))
    tags = ((256, 96), (257, 64), (258, 8), (259, 7), (262, 1), (273, 8), (278, 64), (279, len(stream)))
    rows = b"".join(struct.pack("<HHII", tag, 4, 1, value) for tag, value in tags)
    at = 8 + len(stream) + len(stream) % 2
    return b"II*\0" + struct.pack("<I", at) + stream.ljust(at - 8, b"\0") + struct.pack("<H", 8) + rows + bytes(4)


def smaller_pictures_alone() -> bytes:
    out = io.BytesIO()
    tifffile.imwrite(out, numpy.zeros((8, 8), "uint8"), subfiletype=1, metadata=None)
    return out.getvalue()


def directory_among_values() -> bytes:
    """A TIFF whose description lies in the picture's own directory, as no writer should (TIFF 6.0, section 2)."""
    out = io.BytesIO()
    tifffile.imwrite(out, numpy.zeros((8, 8), "uint8"), metadata=None)
    data = bytearray(out.getvalue())
    first = int.from_bytes(data[4:8], "little")
    count = int.from_bytes(data[first : first + 2], "little")
    for at in range(first + 2, first + 2 + 12 * count, 12):
        if int.from_bytes(data[at : at + 2], "little") == 273:
            data[at + 8 : at + 12] = first.to_bytes(4, "little")
    return bytes(data)


def scans_with_a_text_between() -> bytes:
    data = FILES["progressive"]
    second = data.index(b"\xff\xc4", data.index(b"\xff\xda"))
    return jpeg((0xFE, PLANTED), at=second, data=data)


REFUSED = {
    "no end": (FILES["baseline"][:-2], "The picture has no end"),
    "a text between scans": (scans_with_a_text_between(), "in the midst of the picture"),
    "a chunk the picture needs": (png(png_chunk(b"NEED", PLANTED)), "is not known"),
    "a film": (frames("WEBP", duration=100), "a film of several pictures"),
    "a stream with a text": (stream_with_a_text(), "in the midst of the picture"),
    "smaller pictures alone": (smaller_pictures_alone(), "smaller pictures alone"),
    "a directory in the picture": (directory_among_values(), "lies inside other data"),
    "another format": (b"GIF89a" + bytes(50), "a GIF"),
}


@pytest.mark.parametrize("name", REFUSED)
def test_what_cannot_be_taken_apart_is_refused(name: str) -> None:
    data, why = REFUSED[name]
    with pytest.raises(ByteFault, match=why):
        stripped(data)


def test_a_proof_fails_where_anything_more_stands_in_the_copy() -> None:
    data = FILES["with-exif"]
    for wrong in (data, stripped(data) + b"!", stripped(FILES["baseline"])):
        with pytest.raises(ByteFault, match="cannot be cleaned"):
            picture_files.prove_bare(io.BytesIO(data), io.BytesIO(wrong))
    assert picture_alone.is_application(0xFE) and not picture_alone.is_application(0xC4)
