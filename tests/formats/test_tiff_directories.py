"""TIFF directories (TIFF 6.0, section 2, pages 13 to 16; BigTIFF), both byte orders, against tifffile."""

import io

import pytest
import tifffile

from boxlore.core.errors import ByteFault
from boxlore.formats import tiff_directories
from boxlore.formats.tiff_directories import Directory, Tiff, open_tiff


def opened(data: bytes) -> Tiff:
    return open_tiff(lambda at, length: data[at : at + length], len(data))


def chain_of(tiff: Tiff) -> list[Directory]:
    """All directories, from the first."""
    return tiff.following(tiff.first, set())


@pytest.mark.parametrize("name", ["tiff", "tiff-16", "tiff-pages", "tiff-motorola", "tiff-big", "tiff-big-motorola"])
def test_entries_are_those_that_tifffile_reads(name: str, files: dict[str, bytes]) -> None:
    ours = chain_of(opened(files[name]))
    with tifffile.TiffFile(io.BytesIO(files[name])) as read:
        assert len(ours) == len(read.pages)
        for mine, page in zip(ours, read.pages, strict=True):
            assert mine.at == page.offset
            assert [(one.tag, one.type, one.count) for one in mine.entries] == [
                (tag.code, int(tag.dtype), tag.count) for tag in page.tags
            ]
            inline = {tag.code: tag.valueoffset for tag in page.tags}
            assert {one.tag: one.value_at for one in mine.entries} == inline


def numbers_of(order: str, big: bool) -> Tiff:
    return Tiff(lambda at, length: b"", 0, order, big, 0)


@pytest.mark.parametrize(("order", "data"), [("II", b"\x02\x01"), ("MM", b"\x01\x02")])
def test_both_byte_orders(order: str, data: bytes) -> None:
    assert numbers_of(order, False).number(data) == 0x0102
    assert numbers_of(order, False).pack(0x0102, 2) == data


def entry(tag: int, kind: int = 3, count: int = 1, value: int = 1) -> bytes:
    return b"".join((tag.to_bytes(2, "little"), kind.to_bytes(2, "little"), count.to_bytes(4, "little"))) + (
        value.to_bytes(4, "little")
    )


def small(*entries: bytes, following: int = 0, count: int | None = None) -> bytes:
    number = (len(entries) if count is None else count).to_bytes(2, "little")
    return b"II*\x00\x08\x00\x00\x00" + number + b"".join(entries) + following.to_bytes(4, "little")


REFUSALS = [
    ("no TIFF", b"IJ*\x00\x08\x00\x00\x00", 0, "TIFF 6.0, section 2, page 13"),
    ("too short", b"II*\x00", 0, "TIFF 6.0, section 2, page 13"),
    ("unknown version", b"II\x2c\x00\x08\x00\x00\x00", 2, "TIFF 6.0, section 2, page 13"),
    ("BigTIFF of other offsets", b"II+\x00\x04\x00\x00\x00" + bytes(8), 2, "TIFF 6.0, section 2, page 13"),
    ("directory outside", b"II*\x00\xff\x00\x00\x00", 255, "TIFF 6.0, section 2"),
    ("directory cut off", small(entry(256))[:-4], 10, "TIFF 6.0, section 2"),
    ("too many entries", small(count=5000), 8, "TIFF 6.0, section 2"),
    ("unsorted", small(entry(257), entry(256)), 8, "TIFF 6.0, section 2, page 15"),
    ("doubled", small(entry(256), entry(256)), 8, "TIFF 6.0, section 2, page 15"),
    ("loop", small(entry(256), following=8), 8, "TIFF 6.0, section 2"),
]


@pytest.mark.parametrize(("why", "data", "offset", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(why: str, data: bytes, offset: int, clause: str) -> None:
    with pytest.raises(ByteFault) as caught:
        chain_of(opened(data))
    assert (caught.value.offset, caught.value.clause) == (offset, clause)


def test_a_value_beyond_all_measure_is_refused() -> None:
    whole = small(entry(700, 1, tiff_directories.MOST_VALUE + 1, 8))
    tiff = open_tiff(lambda at, length: whole[at : at + length], 1 << 31)
    with pytest.raises(ByteFault, match="claims 67108865 bytes") as caught:
        tiff.value(chain_of(tiff)[0].entries[0])
    assert caught.value.offset == 10


def test_a_value_outside_and_a_reader_that_ends_early_are_refused() -> None:
    whole = small(entry(700, 1, 50, 4000))
    with pytest.raises(ByteFault, match="outside"):
        tiff = opened(whole)
        tiff.value(chain_of(tiff)[0].entries[0])
    with pytest.raises(ByteFault, match="too early") as caught:
        open_tiff(lambda at, length: whole[at : at + length], 9000).value(chain_of(opened(whole))[0].entries[0])
    assert caught.value.offset == 4000


def test_a_chain_of_very_many_directories_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(tiff_directories, "MOST_DIRECTORIES", 2)
    data = small(entry(256), following=26)
    data += (b"\x01\x00" + entry(256) + (44).to_bytes(4, "little")) + b"\x01\x00" + entry(256) + bytes(4)
    with pytest.raises(ByteFault, match="more than 2 directories") as caught:
        chain_of(opened(data))
    assert caught.value.offset == 44
