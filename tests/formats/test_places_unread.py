"""Places of capture in bytes that we read as no format (DC-008, 4.6.6; QuickTime File Format, `©xyz`)."""

import io

import pytest
from PIL import Image
from tests.drawn import some

from boxlore.core.errors import ByteFault
from boxlore.formats import exif, places_unread


def exif_block(order: str = "<") -> bytes:
    made = Image.Exif()
    made.endian = order
    made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    return made.tobytes()


def cleaned(data: bytes, start: int = 0) -> bytes:
    return exif.apply(data, places_unread.patches(io.BytesIO(data), start, len(data)))


@pytest.mark.parametrize("order", ["<", ">"])
@pytest.mark.parametrize("before", some([places_unread.WINDOW - 3, 0, 7, places_unread.WINDOW + 100]))
def test_an_exif_block_loses_its_place_wherever_it_stands(order: str, before: int) -> None:
    block = exif_block(order)
    data = bytes(before) + block + b"ftyp and more"
    after = cleaned(data)
    assert len(after) == len(data)
    assert after[:before] == bytes(before) and after.endswith(b"ftyp and more")
    assert not exif.facts(exif.block(after[before + 6 : before + len(block)])).has_gps
    assert cleaned(after) == after


def test_a_films_place_is_set_to_nought() -> None:
    data = b"moov\x00\x00\x00\x1e\xa9xyz\x00\x12\x15\xc7+59.4370+024.7536/mdat"
    assert cleaned(data) == b"moov\x00\x00\x00\x1e\xa9xyz\x00\x12\x15\xc7+00.0000+000.0000/mdat"


def test_only_the_run_is_looked_at() -> None:
    data = exif_block() + b"behind"
    assert places_unread.patches(io.BytesIO(data), 10, len(data)) == []


def test_a_place_written_in_another_way_refuses_the_file() -> None:
    with pytest.raises(ByteFault) as caught:
        cleaned(b"<rdf:Description exif:GPSLatitude='45,52.47S'/>")
    assert (caught.value.offset, caught.value.clause) == (22, places_unread.CLAUSE)


def test_a_block_that_nobody_can_read_is_left() -> None:
    data = b"Exif\x00\x00II*\x00\xff\xff\xff\xff and no more"
    assert cleaned(data) == data
