"""Picture files of every kind that copies are made of, each by a library that is not ours or by the standard's words.

Pillow writes most, tifffile the tiled, 16-bit, big-endian and BigTIFF ones; Adam7 is woven here (PNG Third
Edition, 8.2).
"""

import io
import zlib
from collections.abc import Callable

import numpy
import pytest
import tifffile
from PIL import Image, ImageCms

from boxlore.core.crosswalk.metadata_values import PLACE_TAKEN_OUT, Bag, Embedding, Struct, Text, alternative, bag
from boxlore.core.errors import ByteFault
from boxlore.formats import jpeg, picture_files

PROFILE = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()

CAPTION = Embedding(
    xmp=(
        ("dc:title", alternative("Võrgud kuivavad", "et")),
        ("dc:description", alternative("Nets drying at Haapsalu, “1912”", "en")),
        ("dc:subject", bag("nets", "Haapsalu")),
        ("photoshop:DateCreated", Text("1912")),
        (
            "Iptc4xmpExt:ImageRegion",
            Bag((Struct((("Iptc4xmpExt:Name", alternative("Helmi", "en")), ("Iptc4xmpExt:rId", Text("boxlore-m1")))),)),
        ),
    ),
    iim=(((2, 5), ("Võrgud kuivavad",)), ((2, 120), ("Nets drying at Haapsalu, “1912”",)), ((2, 55), ("19120000",))),
    exif=((0x010E, "Nets drying at Haapsalu, “1912”"),),
    remove=("exif:GPSLatitude",),
)


def picture(kind: str, mode: str = "RGB", **more: object) -> bytes:
    image = Image.radial_gradient("L").resize((96, 64)).convert(mode)
    if mode == "RGBA":
        image.putalpha(Image.radial_gradient("L").resize((96, 64)))
    out = io.BytesIO()
    image.save(out, kind, **more)
    return out.getvalue()


def frames(kind: str, **more: object) -> bytes:
    shades = [Image.new("RGB", (40, 30), (shade, 90, 10)) for shade in (10, 120, 230)]
    out = io.BytesIO()
    shades[0].save(out, kind, save_all=True, append_images=shades[1:], **more)
    return out.getvalue()


def tiff(pages: int = 1, dtype: str = "uint8", byteorder: str = "<", bigtiff: bool = False, **more: object) -> bytes:
    out = io.BytesIO()
    with tifffile.TiffWriter(out, byteorder=byteorder, bigtiff=bigtiff) as writer:
        for page in range(pages):
            data = (numpy.arange(96 * 64 * 3).reshape(64, 96, 3) * (page + 1)).astype(dtype)
            writer.write(data, photometric="rgb", description=f"page {page} from the scanner", metadata=None, **more)
    return out.getvalue()


def png_chunk(kind: bytes, data: bytes) -> bytes:
    return len(data).to_bytes(4, "big") + kind + data + zlib.crc32(kind + data).to_bytes(4, "big")


def interlaced() -> bytes:
    """Eight-bit grey, 13 × 11, in the seven passes of Adam7."""
    width, height = 13, 11
    passes = ((0, 0, 8, 8), (4, 0, 8, 8), (0, 4, 4, 8), (2, 0, 4, 4), (0, 2, 2, 4), (1, 0, 2, 2), (0, 1, 1, 2))
    rows = b""
    for left, top, across, down in passes:
        for y in range(top, height, down):
            line = bytes((x * 17 + y * 5) % 256 for x in range(left, width, across))
            rows += b"\x00" + line if line else b""
    header = width.to_bytes(4, "big") + height.to_bytes(4, "big") + bytes((8, 0, 0, 0, 1))
    body = png_chunk(b"IHDR", header) + png_chunk(b"IDAT", zlib.compress(rows)) + png_chunk(b"IEND", b"")
    return b"\x89PNG\r\n\x1a\n" + body


def exif_block() -> bytes:
    exif = Image.Exif()
    exif[0x010E], exif[0x0112], exif[0x011A] = "from the scanner", 6, 300.0
    exif.get_ifd(0x8769)[0x9003] = "2026:03:01 12:00:00"
    exif.get_ifd(0x8769)[0x927C] = b"a maker's own note"
    exif.get_ifd(0x8825)[1], exif.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    return exif.tobytes()


FILES = {
    "baseline": picture("JPEG"),
    "progressive": picture("JPEG", progressive=True),
    "cmyk": picture("JPEG", "CMYK"),
    "grey": picture("JPEG", "L"),
    "with-exif": picture("JPEG", exif=exif_block(), icc_profile=PROFILE, comment=b"kept"),
    "png": picture("PNG"),
    "png-exif": picture("PNG", exif=exif_block()),
    "png-16": picture("PNG", "I;16"),
    "png-interlaced": interlaced(),
    "png-animated": frames("PNG"),
    "tiff": picture("TIFF"),
    "tiff-lzw": picture("TIFF", compression="tiff_lzw"),
    "tiff-exif": picture("TIFF", exif=exif_block()),
    "tiff-cmyk": picture("TIFF", "CMYK"),
    "tiff-16": tiff(dtype="uint16"),
    "tiff-tiles": tiff(tile=(32, 32)),
    "tiff-deflate": tiff(compression="zlib", rowsperstrip=7),
    "tiff-pages": tiff(pages=3),
    "tiff-motorola": tiff(byteorder=">", dtype="uint16", pages=2),
    "tiff-big": tiff(bigtiff=True, tile=(16, 16)),
    "tiff-big-motorola": tiff(bigtiff=True, byteorder=">", pages=2),
    "webp": picture("WEBP"),
    "webp-lossless": picture("WEBP", lossless=True),
    "webp-alpha": picture("WEBP", "RGBA", lossless=True),
    "webp-animated": frames("WEBP", duration=100),
    "webp-exif": picture("WEBP", exif=exif_block()),
}


def captioned(data: bytes, embedding: Embedding = CAPTION) -> bytes:
    """The copy, proved, and written to the byte as it was said."""
    source = io.BytesIO(data)
    made = picture_files.rewrite(source, embedding)
    whole = b"".join(p if isinstance(p, bytes) else data[p[0] : p[0] + p[1]] for p in made.pieces)
    assert picture_files.verify(source, io.BytesIO(whole), embedding) == []
    assert len(whole) == picture_files.size_after(made)
    assert picture_files.matches(made, source, io.BytesIO(whole))
    return whole


def prove_without_place(source: io.BytesIO, copy: io.BytesIO) -> None:
    """Raises ByteFault unless the copy has the picture of `source` byte for byte, and says no place any more."""
    known = picture_files.sniff(source.getvalue()[:16]) is not None
    if known and (differences := picture_files.same_picture(source, copy, PLACE_TAKEN_OUT)):
        raise ByteFault(0, f"Without its place {differences[0]}", "the source's own bytes")
    if not picture_files.is_whole(picture_files.without_place(copy), copy):
        raise ByteFault(0, "Its place cannot be taken out", "CIPA DC-008, 4.6.6")


@pytest.fixture(params=FILES)
def source(request: pytest.FixtureRequest) -> bytes:
    """Every kind of file, one after the other."""
    return FILES[request.param]


@pytest.fixture
def files() -> dict[str, bytes]:
    return FILES


@pytest.fixture
def caption() -> Callable[..., bytes]:
    return captioned


@pytest.fixture
def words() -> Embedding:
    """A caption of several kinds of values."""
    return CAPTION


@pytest.fixture
def jpeg_with(files: dict[str, bytes]) -> Callable[..., bytes]:
    """A JPEG with further segments (given as marker and payload) before its tables."""

    def make(*segments: tuple[int, bytes], after: bytes = b"") -> bytes:
        data = files["baseline"]
        return data[:2] + b"".join(jpeg.new_segment(*one).raw for one in segments) + data[2:] + after

    return make
