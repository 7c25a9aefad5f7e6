"""Odd and damaged pictures: each is shown rightly or refused by name, and none ends a task.

Colours are checked against the standards named beside them; the rest against Pillow's own writing of the format.
"""

import io
import struct
import subprocess
import sys
import tracemalloc
import zlib
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.errors import CouldNot
from boxlore.disk.decoding import MOST_PIXELS, opened
from boxlore.disk.pictures import looks_hash, make_jpeg, make_upright_jpeg, read_header, small_pixels
from boxlore.tasks.check import check
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.scans.damage import look_closer
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix

LAB_RED = (136, 208, 195)
"""sRGB red (255, 0, 0) in CIELAB, L* 53.2, a* 80.1, b* 67.2 for D65 (IEC 61966-2-1 and ISO/CIE 11664-4; the figures are
from memory), in eight bits: L* by 255/100, a* and b* with 128 added. D50, which TIFF means, is a little off."""


def colour_of(jpeg: bytes) -> tuple[int, ...]:
    with Image.open(io.BytesIO(jpeg)) as image:
        pixel = image.convert("RGB").getpixel((image.width // 2, image.height // 2))
    assert isinstance(pixel, tuple)
    return pixel


def near(seen: tuple[int, ...], wanted: tuple[int, ...], most: int = 30) -> bool:
    return all(abs(a - b) <= most for a, b in zip(seen, wanted, strict=True))


PALETTE = Image.new("P", (64, 64), 1)
PALETTE.putpalette([255, 255, 255, 200, 40, 40])

MODES = {
    "LAB": (Image.new("LAB", (64, 64), LAB_RED), (255, 0, 0)),
    "LA": (Image.new("LA", (64, 64), (90, 255)), (90, 90, 90)),
    "YCbCr": (Image.new("RGB", (64, 64), (200, 40, 40)).convert("YCbCr"), (200, 40, 40)),
    "CMYK": (Image.new("CMYK", (64, 64), (0, 255, 255, 0)), (255, 0, 0)),
    "I;16": (Image.new("I;16", (64, 64), 100 * 256), (100, 100, 100)),
    "I;16B": (Image.new("I;16B", (64, 64), 100 * 256), (100, 100, 100)),
    "F of 0 to 1": (Image.new("F", (64, 64), 0.4), (102, 102, 102)),
    "F of 0 to 65535": (Image.new("F", (64, 64), 25600.0), (100, 100, 100)),
    "1": (Image.new("1", (64, 64), 1), (255, 255, 255)),
    "P": (PALETTE, (200, 40, 40)),
    "RGBA": (Image.new("RGBA", (64, 64), (200, 40, 40, 0)), (255, 255, 255)),
}


@pytest.mark.parametrize("mode", MODES)
def test_every_mode_of_a_tiff_is_shown_in_its_colours(mode: str, tmp_path: Path) -> None:
    picture, wanted = MODES[mode]
    path = tmp_path / "scan.tif"
    picture.save(path)
    assert near(colour_of(make_jpeg(path, 32)), wanted)
    assert near(colour_of(make_upright_jpeg(path, 32).data), wanted)
    width, height, pixels = small_pixels(path, 8, 8)
    assert (width, height) == (8, 8)
    assert near(tuple(pixels[:3]), wanted)
    assert looks_hash(path) == 0  # one colour all over is a blank picture


def test_a_transparent_colour_of_a_palette_is_white(tmp_path: Path) -> None:
    path = tmp_path / "scan.png"
    PALETTE.save(path, transparency=1)
    assert near(colour_of(make_jpeg(path, 32)), (255, 255, 255), 2)


def bomb() -> bytes:
    """A WebP that claims 16383 by 16383 pixels: a lossless bitstream's header (RFC 9649, 3.4) and little behind it."""
    bits = b"\x2f" + struct.pack("<I", 16382 | 16382 << 14) + b"\x00" * 9
    chunk = b"VP8L" + struct.pack("<I", len(bits)) + bits
    return b"RIFF" + struct.pack("<I", 4 + len(chunk)) + b"WEBP" + chunk


def test_a_bomb_is_refused_by_its_header(tmp_path: Path) -> None:
    path = tmp_path / "harmless.webp"
    path.write_bytes(bomb())
    tracemalloc.start()
    for read in (read_header, looks_hash, lambda path: make_jpeg(path, 100), make_upright_jpeg):
        with pytest.raises(CouldNot, match=r"^harmless\.webp "):
            read(path)
    assert tracemalloc.get_traced_memory()[1] < 10_000_000
    tracemalloc.stop()


def png_claiming(side: int) -> bytes:
    """The start of a PNG so many pixels wide and high (PNG, third edition, 11.2.1 and 5.4), in 100 kB."""
    out = io.BytesIO()
    Image.new("1", (8, 8)).save(out, "PNG")
    head = bytearray(out.getvalue())
    head[16:24] = struct.pack(">II", side, side)
    head[29:33] = struct.pack(">I", zlib.crc32(head[12:29]))
    return bytes(head) + bytes(100_000)


def test_a_header_of_more_than_a_gigapixel_is_refused_and_one_of_a_large_scan_is_not(tmp_path: Path) -> None:
    path = tmp_path / "large.png"
    path.write_bytes(png_claiming(30_000))
    assert read_header(path).width == 30_000
    path.write_bytes(png_claiming(int(MOST_PIXELS**0.5) + 1))
    with pytest.raises(CouldNot, match="more than 1,073,741,824 pixels"):
        read_header(path)


def test_a_blank_sheet_in_group_4_is_shown_and_a_bomb_of_a_bit_a_pixel_is_not(tmp_path: Path) -> None:
    """A row like the one above it is one bit (ITU-T T.6): 15,000 pixels a byte. Written by libtiff, through Pillow."""
    path = tmp_path / "blank.tif"
    Image.new("1", (20_000, 3_300), 1).save(path, compression="group4")
    assert 15_000 * path.stat().st_size < 20_000 * 3_300
    assert read_header(path).width == 20_000
    assert near(colour_of(make_jpeg(path, 100)), (255, 255, 255))
    bomb = tmp_path / "bomb.png"
    bomb.write_bytes(png_claiming(30_000)[:3_000])
    with pytest.raises(CouldNot, match=r"has only 3000 bytes.* scale it there"):
        read_header(bomb)


def test_a_heic_that_claims_more_than_a_gigapixel_is_refused(tmp_path: Path) -> None:
    """By its image extents, as ISO/IEC 23008-12, 6.5.3 lays them out; the box and brand are those of 6.2."""
    path = tmp_path / "large.heic"
    for side, refused in ((30_000, False), (60_000, True)):
        extent = b"\x00\x00\x00\x14ispe" + bytes(4) + struct.pack(">II", side, side)
        path.write_bytes(b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic" + extent)
        if refused:
            with pytest.raises(CouldNot, match=r"^large\.heic has more than 1,073,741,824 pixels"):
                read_header(path)
        else:
            assert read_header(path).width == side


ERRORS = (
    ValueError, SyntaxError, TypeError, KeyError, IndexError, ZeroDivisionError, struct.error, OverflowError,
    MemoryError, Image.DecompressionBombError, EOFError, RuntimeError, AttributeError, AssertionError, OSError,
)  # fmt: skip


@pytest.mark.parametrize("error", ERRORS)
def test_whatever_a_decoder_raises_names_the_file(error: type[Exception], tmp_path: Path) -> None:
    path = tmp_path / "scan.png"
    Image.new("L", (8, 8)).save(path)
    with pytest.raises(CouldNot, match=r"^scan\.png "), opened(path):
        raise error("from deep within")


def test_a_decoders_warnings_are_no_talk_for_the_keeper(tmp_path: Path) -> None:
    """A TIFF whose description lies beyond its end, of which Pillow warns, in a process without the tests' filters."""
    path = tmp_path / "scan.tif"
    Image.new("L", (8, 8)).save(path, tiffinfo={270: "the quay at Reval, seen from the harbour"})
    data = bytearray(path.read_bytes())
    at = data.index(struct.pack("<HH", 270, 2)) + 4
    data[at : at + 8] = struct.pack("<II", 40, len(data) - 4)  # the description lies beyond the end (TIFF 6.0, 2)
    path.write_bytes(data)
    code = f"""
from pathlib import Path
from boxlore.disk.pictures import looks_hash, read_pixel_format, turn_of
path = Path({str(path)!r})
turn_of(path)
for read in (looks_hash, read_pixel_format):
    try:
        read(path)
    except Exception:
        pass
"""
    ended = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert ended.stderr == ""


def quay(tone: int = 0) -> Image.Image:
    """A picture with something on it: a quay in steps of grey, the sky above."""
    picture = Image.effect_noise((9, 8), 90).resize((270, 240), Image.Resampling.BICUBIC)
    return picture.point(lambda value: value + tone)


def test_intake_checks_and_copies_go_on_past_what_cannot_be_decoded(
    bare: Callable[[int], Path], tmp_path: Path
) -> None:
    scans = tmp_path / "from-the-scanner"
    scans.mkdir()
    for mode in ("LAB", "LA"):
        MODES[mode][0].save(scans / f"{mode}.tif")
    jp2 = io.BytesIO()
    quay().save(jp2, "JPEG2000")
    bad = bytearray(jp2.getvalue())
    at = bad.index(b"\xff\x51") + 6  # SIZ: behind marker, length and capabilities, the width (ISO/IEC 15444-1, A.5.1)
    bad[at : at + 4] = b"\xff\xff\xff\xff"
    (scans / "cut.jp2").write_bytes(bad)
    (scans / "half.jpg").write_bytes(encoded(quay())[:-400])
    (scans / "whole.jpg").write_bytes(encoded(quay(3)))
    (scans / "bomb.webp").write_bytes(bomb())
    folder = bare(0)
    with open_collection(folder) as collection:
        results = take_in(collection, by_suffix(scans.iterdir()), IntakeOptions(copy=True))
        states = {Path(result.key).name: result.state for result in results}
        assert states.pop("bomb") == "refused"
        assert set(states.values()) == {"taken"}
        assert look_closer(collection) == 5
        assert look_closer(collection) == 0
        made = list(copies(collection, tmp_path / "copies", longest=100))
        assert len(made) == 5
        assert {Path(copy.scan).suffix for copy in made if copy.state == "refused"} == {".jpg", ".jp2"}
        assert all("damaged" in copy.why for copy in made if copy.state == "refused")
        list(check(collection))


def encoded(picture: Image.Image) -> bytes:
    out = io.BytesIO()
    picture.save(out, "JPEG", quality=90)
    return out.getvalue()


def test_what_looks_alike_is_one_finding_a_group_and_blank_pictures_none(
    bare: Callable[[int], Path], tmp_path: Path
) -> None:
    scans = tmp_path / "scans"
    scans.mkdir()
    base = quay()
    for at in range(20):
        base.point(lambda value, at=at: value * (100 - at) // 100).save(scans / f"quay-{at:02}.png")  # type: ignore[misc]
        Image.new("L", (200, 150), 255 - at).save(scans / f"blank-{at:02}.png")
    with open_collection(bare(0)) as collection:
        take_in(collection, by_suffix(scans.iterdir()), IntakeOptions())
        assert look_closer(collection) == 40
        (finding,) = [found for found in check(collection) if found.finding.rule == "scan.alike"]
    assert finding.number == "TRA-0021"
    assert finding.finding.message.startswith("20 prints of one picture? TRA-")
    assert finding.finding.message.endswith("TRA-0032 and 8 more look alike.")
