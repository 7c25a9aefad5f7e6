"""Names of places in maker's notes (tags and layouts of Panasonic and Samsung as exiv2 0.28 reads them)."""

import io

import exiv2
import pytest
from PIL import Image

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.formats import exif


def entry(tag: int, kind: int, count: int, value: bytes) -> bytes:
    return b"".join(number.to_bytes(size, "little") for number, size in ((tag, 2), (kind, 2), (count, 4))) + value


def panasonic(at: int) -> bytes:
    """A note with a city and a lens; offsets count from the block's start."""
    entries = entry(0x51, 2, 12, (at + 42).to_bytes(4, "little")) + entry(0x6D, 7, 12, (at + 54).to_bytes(4, "little"))
    return b"Panasonic\x00\x00\x00\x02\x00" + entries + bytes(4) + b"LUMIX G 20\x00\x00" + b"Port Chalmer"


def samsung() -> bytes:
    """A note with a version and the name of a place; offsets count from the note's start."""
    entries = entry(0x01, 7, 4, b"0100") + entry(0x30, 2, 12, (30).to_bytes(4, "little"))
    return b"\x02\x00" + entries + bytes(4) + b"Port Chalmer"


def made(make: bytes, note: bytes) -> bytes:
    exif_block = Image.Exif()
    exif_block.endian = "<"
    exif_block[0x010F] = make.decode()
    exif_block.get_ifd(0x8769)[0x927C] = note
    return exif_block.tobytes().removeprefix(exif.MARK)


def with_note(make: bytes, note_at: object) -> bytes:
    """The block that Pillow writes, the note's own offsets fitted to where Pillow puts it."""
    first = made(make, panasonic(0) if note_at is panasonic else samsung())
    if note_at is not panasonic:
        return first
    return made(make, panasonic(first.index(b"Panasonic\x00\x00\x00")))


@pytest.mark.parametrize(("make", "note"), [(b"Panasonic", panasonic), (b"SAMSUNG", samsung)])
def test_the_name_of_the_place_goes_and_the_rest_of_the_note_stays(make: bytes, note: object) -> None:
    before = with_note(make, note)
    assert b"Port Chalmer" in before
    after = exif.captioned(before, Embedding())
    assert len(after) == len(before) and b"Port Chalmer" not in after
    assert before.replace(b"Port Chalmer", bytes(12)) == after
    assert exif.captioned(after, Embedding()) == after


def test_exiv2_reads_the_lens_and_no_city() -> None:
    data = io.BytesIO()
    Image.new("L", (8, 8)).save(
        data, "JPEG", exif=exif.MARK + exif.captioned(with_note(b"Panasonic", panasonic), Embedding())
    )
    image = exiv2.ImageFactory.open(data.getvalue())
    image.readMetadata()
    tags = {datum.key(): datum.toString() for datum in image.exifData()}
    assert tags["Exif.Panasonic.LensType"].startswith("LUMIX G 20")
    assert set(tags["Exif.Panasonic.City"].split()) == {"0"}


OTHERS = [
    (b"Another", samsung()),
    (b"SAMSUNG", b"\xff" * 20),
    (b"SAMSUNG", b"\x01\x00" + entry(0x30, 2, 900, (26).to_bytes(4, "little")) + bytes(4)),
    (b"Panasonic", b"Panasonic\x00\x00\x00\xff\xff"),
]


@pytest.mark.parametrize(("make", "note"), OTHERS)
def test_a_note_of_another_maker_or_a_damaged_one_is_left(make: bytes, note: bytes) -> None:
    before = made(make, note)
    assert exif.captioned(before, Embedding()) == before
