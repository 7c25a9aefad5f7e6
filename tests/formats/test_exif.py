"""Exif (CIPA DC-008): what a copy changes of it, and that all else stays, read back by Pillow and exiv2."""

import io

import exiv2
import pytest
from PIL import Image

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, exif_copied

ORDERS = ["<", ">"]


def block(*, order: str = "<", gps: bool = True, digitized: bool = False, text: str = "from the scanner") -> bytes:
    """An Exif block as Pillow writes it, without its mark."""
    made = Image.Exif()
    made.endian = order
    if text:
        made[0x010E] = text
    made[0x0112], made[0x011A], made[0x0128] = 6, 300.0, 2
    inner = made.get_ifd(0x8769)
    inner[0x9003], inner[0x9011], inner[0x9291] = "2026:03:01 12:00:00", "+02:00", "25"
    inner[0x927C] = b"a maker's own note"
    if digitized:
        inner[0x9004], inner[0x9012], inner[0x9292] = "2026:03:01 12:00:01", "+02:00", "26"
    if gps:
        made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
        made.get_ifd(0x8825)[29] = "2026:03:01"
    return made.tobytes().removeprefix(b"Exif\x00\x00")


def read(data: bytes) -> Image.Exif:
    made = Image.Exif()
    made.load(b"Exif\x00\x00" + data)
    return made


@pytest.mark.parametrize("order", ORDERS)
def test_the_place_of_capture_goes_and_no_byte_of_it_is_left(order: str) -> None:
    before = block(order=order)
    after = exif.captioned(before, Embedding())
    assert len(after) == len(before)
    assert not read(after).get_ifd(0x8825)
    assert 0x8825 not in read(after)
    where = read(before).get_ifd(0x8825)
    assert where[29] == "2026:03:01"
    assert b"2026:03:01\x00" in before and b"2026:03:01\x00" not in after
    assert exif.captioned(after, Embedding()) == after


@pytest.mark.parametrize("order", ORDERS)
def test_the_day_of_the_scanning_becomes_that_of_digitizing(order: str) -> None:
    inner = read(exif.captioned(block(order=order), Embedding())).get_ifd(0x8769)
    assert (inner[0x9004], inner[0x9012], inner[0x9292]) == ("2026:03:01 12:00:00", "+02:00", "25")
    assert not {0x9003, 0x9011, 0x9291} & set(inner)
    assert inner[0x927C] == b"a maker's own note"


def test_where_the_day_of_digitizing_is_there_the_other_goes_or_is_the_pictures_own() -> None:
    inner = read(exif.captioned(block(digitized=True), Embedding())).get_ifd(0x8769)
    assert (inner[0x9004], inner[0x9012]) == ("2026:03:01 12:00:01", "+02:00")
    assert not {0x9003, 0x9011, 0x9291} & set(inner)
    dated = read(exif.captioned(block(digitized=True), Embedding(original_day="1938-06-14"))).get_ifd(0x8769)
    assert dated[0x9003].startswith("1938:06:14   :  :")
    assert 0x9011 not in dated and dated[0x9004] == "2026:03:01 12:00:01"


TEXTS = [
    ("shorter", "Nets", 0),
    ("just as long", "Nets are drying.", 0),
    ("longer", "Nets drying at Haapsalu, “1912”, told by Leida", 1),
]


@pytest.mark.parametrize("order", ORDERS)
@pytest.mark.parametrize(("why", "words", "grown"), TEXTS, ids=[row[0] for row in TEXTS])
def test_a_text_is_written_where_one_is(order: str, why: str, words: str, grown: int) -> None:
    before = block(order=order)
    after = exif.captioned(before, Embedding(exif=((0x010E, words), (0x013B, "Nobody"))))
    assert exif.facts(exif.block(after)).texts["ImageDescription"] == words
    assert (len(after) > len(before)) == bool(grown)
    assert exif.captioned(after, Embedding(exif=((0x010E, words),))) == after
    assert read(after).get_ifd(0x8769)[0x927C] == b"a maker's own note"
    assert 0x013B not in read(after)
    plain = Image.new("L", (8, 8))
    out = io.BytesIO()
    plain.save(out, "JPEG", exif=b"Exif\x00\x00" + after)
    image = exiv2.ImageFactory.open(out.getvalue())
    image.readMetadata()
    assert image.exifData()["Exif.Image.ImageDescription"].toString() == words


def test_a_text_is_written_where_none_is_in_no_case() -> None:
    after = exif.captioned(block(text=""), Embedding(exif=((0x010E, "Nets"),)))
    assert b"Nets" not in after


def test_a_text_that_has_no_room_is_cut_between_characters() -> None:
    before = block()
    after = exif.captioned(before, Embedding(exif=((0x010E, "õ" * 40),)), most=len(before))
    assert exif.facts(exif.block(after)).texts["ImageDescription"] == "õ" * 8


@pytest.mark.parametrize("order", ORDERS)
def test_what_is_left_for_outside_is_how_it_looks(order: str) -> None:
    looks = read(exif.only_looks(block(order=order)))
    assert dict(looks) == {0x0112: 6, 0x011A: 300.0, 0x0128: 2}
    assert exif.only_looks(b"no exif") == b""
    only_text = Image.Exif()
    only_text[0x010E] = "x"
    assert exif.only_looks(only_text.tobytes().removeprefix(b"Exif\x00\x00")) == b""


def test_facts() -> None:
    found = exif.facts(exif.block(block(digitized=True)))
    assert found.texts == {
        "ImageDescription": "from the scanner",
        "DateTimeOriginal": "2026:03:01 12:00:00",
        "DateTimeDigitized": "2026:03:01 12:00:01",
    }
    assert (found.orientation, found.has_gps) == (6, True)
    assert exif.facts(exif.block(exif.captioned(block(), Embedding()))).has_gps is False


POINTERS = [0, 4000, 1 << 31]


@pytest.mark.parametrize("at", POINTERS)
def test_a_pointer_to_nowhere_empties_nothing(at: int) -> None:
    entries = b"".join(
        (tag).to_bytes(2, "little") + b"\x04\x00\x01\x00\x00\x00" + at.to_bytes(4, "little") for tag in (0x8769, 0x8825)
    )
    data = b"II*\x00\x08\x00\x00\x00\x02\x00" + entries + bytes(4)
    after = exif.captioned(data, Embedding())
    assert exif.facts(exif.block(after)) == exif.Facts({}, 1, False)


def test_pointers_without_a_value() -> None:
    entries = b"".join(tag.to_bytes(2, "little") + b"\x04\x00" + bytes(8) for tag in (0x0112, 0x8769, 0x8825))
    data = b"II*\x00\x08\x00\x00\x00\x03\x00" + entries + bytes(4)
    assert exif.facts(exif.block(data)).orientation == 1
    assert not exif.facts(exif.block(exif.captioned(data, Embedding()))).has_gps


def huge(tag: int, kind: int) -> bytes:
    """An entry whose value claims two thousand million bytes."""
    numbers = (tag, 2), (kind, 2), (2_000_000_000 // (8 if kind == 5 else 1), 4), (60, 4)
    return b"".join(number.to_bytes(size, "little") for number, size in numbers)


def test_values_that_claim_more_than_there_is_cost_nothing() -> None:
    inner = b"\x02\x00" + huge(0x9003, 2) + huge(0x9004, 2) + bytes(4)
    main = b"\x02\x00" + huge(0x010E, 2) + b"\x69\x87\x04\x00\x01\x00\x00\x00\x26\x00\x00\x00" + bytes(4)
    data = b"II*\x00\x08\x00\x00\x00" + main + inner
    after = exif.captioned(data, Embedding(exif=((0x010E, "Nets"),), original_day="1938-06-14"))
    assert len(after) < 200
    assert exif.block(after).value(exif.block(after).directory(8).entries[0]) == b"Nets\x00"
    kept = exif.captioned(data, Embedding(exif=((0x010E, "Nets"),)), most=len(data))
    assert len(kept) == len(data)


def test_what_is_no_exif_is_refused() -> None:
    with pytest.raises(ByteFault, match="no TIFF header"):
        exif.captioned(b"nothing of the kind", Embedding())


def unsorted(data: bytes, order: str) -> bytes:
    """The block with the entries of its main and Exif directories turned round (DC-008, 4.6.2 wants them sorted)."""
    written, tiff = bytearray(data), exif.block(data)
    main = tiff.directory(tiff.first)
    for directory in (main, tiff.directory(tiff.numbers(main.get(0x8769))[0])):  # type: ignore[arg-type]  # it has one
        table = b"".join(entry.raw for entry in reversed(directory.entries))
        written[directory.at + 2 : directory.at + 2 + len(table)] = table
    return bytes(written)


@pytest.mark.parametrize("order", ORDERS)
def test_an_unsorted_block_is_sorted_with_everything_kept(order: str) -> None:
    """Pillow and exiv2 read unsorted directories; so the place is there, and is to go."""
    before = unsorted(block(order=order), order)
    with pytest.raises(ByteFault, match="unsorted"):
        exif.block(before).directory(8)
    assert exif.facts(exif.block(before)).has_gps and read(before).get_ifd(0x8825)
    after = exif.captioned(before, Embedding(exif=((0x010E, "Nets drying at Haapsalu"),)))
    assert after == exif.captioned(block(order=order), Embedding(exif=((0x010E, "Nets drying at Haapsalu"),)))
    assert exif.faults(exif.block(after)) == []
    assert read(after).get_ifd(0x8769)[0x927C] == b"a maker's own note" and not read(after).get_ifd(0x8825)


def entry(tag: int, kind: int, count: int, value: int) -> bytes:
    return b"".join(number.to_bytes(size, "little") for number, size in ((tag, 2), (kind, 2), (count, 4), (value, 4)))


def little(*entries: bytes, link: bytes = bytes(4), behind: bytes = b"", count: int = -1) -> bytes:
    """A block in Intel order with one directory of these entries, and what stands behind it."""
    number = len(entries) if count < 0 else count
    return b"II*\x00\x08\x00\x00\x00" + number.to_bytes(2, "little") + b"".join(entries) + link + behind


TURN, NOTE = entry(0x0112, 3, 1, 6), b"maker"
DAMAGED = {
    "a tag twice": (little(TURN, entry(0x0112, 3, 1, 3)), [TURN]),
    "a value outside": (little(TURN, entry(0x011A, 5, 1, 4000)), [TURN]),
    "a link to nowhere": (little(TURN, link=b"\xff\xff\x00\x00"), [TURN]),
    "a link to no directory": (little(TURN, link=b"\x1a\x00\x00\x00", behind=b"\x02\x00" + b"\xff" * 30), [TURN]),
    "a link back": (little(TURN, link=b"\x08\x00\x00\x00"), [TURN]),
    "more entries than there are": (little(TURN, count=9, link=bytes(4)), [TURN]),
    "a maker's note cut off": (
        little(TURN, entry(0x927C, 7, 900, 38), behind=NOTE),
        [TURN, entry(0x927C, 7, 5, 38)],
    ),
    "a text cut off": (little(TURN, entry(0x9286, 2, 900, 38), behind=NOTE), [TURN]),
    "a value in the link's place": (little(TURN, entry(0x011A, 5, 1, 34), link=b"", behind=bytes(8)),
                                    [TURN, entry(0x011A, 5, 1, 34)]),
}  # fmt: skip
"""What is damaged -> (the block, the entries of its main directory set right)."""


@pytest.mark.parametrize("why", DAMAGED)
def test_a_damaged_block_is_set_right(why: str) -> None:
    before, wanted = DAMAGED[why]
    after = exif.captioned(before, Embedding())
    assert [entry.raw for entry in exif.block(after).directory(8).entries] == wanted
    assert exif.faults(exif.block(after)) == []
    assert read(after)[0x0112] == 6 and after.endswith(before[38:])
    assert exif.captioned(after, Embedding()) == after


def test_a_block_cut_off_behind_its_last_entry_is_left_as_it_is() -> None:
    """There is nothing to lose, and readers do without the link."""
    before = little(TURN, link=b"")
    assert exif.captioned(before, Embedding()) == before
    assert exif.faults(exif.block(before)) == []


def test_a_directory_with_values_in_its_midst_is_refused_where_it_must_change() -> None:
    tangled = entry(0x011A, 5, 1, 14)
    assert exif.captioned(little(TURN, tangled), Embedding()) == little(TURN, tangled)
    with pytest.raises(ByteFault, match="in the midst"):
        exif.captioned(little(tangled, TURN), Embedding())
    left, said = exif_copied.captioned_or_left_out(little(tangled, TURN), Embedding())
    assert left == b"" and "was left out" in said[0]


def test_a_directory_on_another_is_none() -> None:
    """A link into the middle of the main directory, where bytes look like entries."""
    inside = entry(0x0131, 2, 1, 0) * 3
    before = little(TURN, inside[:12], inside[12:24], inside[24:], link=b"\x14\x00\x00\x00")
    after = exif.captioned(before, Embedding())
    assert read(after)[0x0112] == 6 and exif.faults(exif.block(after)) == []


FAULTS = [
    (little(entry(0x011A, 5, 1, 4000)), "The Exif has a value that lies outside of it."),
    (block(), "The Exif says where the file was made."),
    (little(TURN, TURN), "The Exif is damaged: The entries of a directory are unsorted or doubled."),
    (little(TURN, count=5000), "The Exif is damaged: A directory claims 5000 entries and has 1."),
]


@pytest.mark.parametrize(("data", "said"), FAULTS)
def test_faults_are_said(data: bytes, said: str) -> None:
    assert said in exif.faults(exif.block(data))


def test_a_place_is_found_in_whatever_directory_it_stands() -> None:
    """Twice in the main directory, in Exif's own, and in the directory of the thumbnail."""
    place = b"\x01\x00" + entry(1, 2, 2, ord("S")) + bytes(4)  # DC-008, 4.6.6: GPSLatitudeRef
    link = (8 + 2 + 36 + 4).to_bytes(4, "little")
    at = 8 + 2 + 36 + 4 + 2 + 12 + 4 + 2 + 12 + 4
    inner = b"\x01\x00" + entry(0x8825, 4, 1, at + 36) + bytes(4)
    thumbnail = b"\x01\x00" + entry(0x8825, 4, 1, at + 54) + bytes(4)
    pointers = (entry(0x8769, 4, 1, at - 18), entry(0x8825, 4, 1, at), entry(0x8825, 4, 1, at + 18))
    before = little(*pointers, link=link, behind=thumbnail + inner + place * 4)
    assert before.count(b"S\x00\x00\x00") == 4
    after = exif.captioned(before, Embedding())
    assert len(after) == len(before) and b"S\x00\x00\x00" not in after
    assert not exif.facts(exif.block(after)).has_gps and exif.faults(exif.block(after)) == []


def test_a_pointer_of_many_offsets_costs_nothing() -> None:
    data = little(TURN, entry(0x014A, 4, 5000, 38), behind=b"\x08\x00\x00\x00" * 5000)
    assert exif.captioned(data, Embedding()) == data


@pytest.mark.parametrize("target", [0, 8])
def test_a_place_that_seems_to_lie_on_the_header_or_a_directory_is_only_unlinked(target: int) -> None:
    gps = b"\x01\x00" + entry(2, 5, 3, target) + bytes(4)
    before = little(TURN, entry(0x8825, 4, 1, 38), behind=gps)
    after = exif.captioned(before, Embedding())
    assert read(after)[0x0112] == 6 and exif.faults(exif.block(after)) == []
    looped = little(TURN, entry(0x8825, 4, 1, 8))
    assert read(exif.captioned(looped, Embedding()))[0x0112] == 6


def test_a_text_that_seems_to_lie_on_the_header_is_written_behind() -> None:
    after = exif.captioned(little(entry(0x010E, 2, 17, 1), TURN), Embedding(exif=((0x010E, "Nets at the quay"),)))
    assert (read(after)[0x010E], read(after)[0x0112]) == ("Nets at the quay", 6)


def test_bytes_that_are_no_gps_directory_are_left() -> None:
    """A pointer that is wrong leads to the maker's words, which stay (tags of GPS end with 31: DC-008, 4.6.6)."""
    words = b"\x02\x00" + entry(0x8298, 2, 1, 0) + entry(0x9003, 2, 1, 0) + bytes(4)
    after = exif.captioned(little(TURN, entry(0x8825, 4, 1, 38), behind=words), Embedding())
    assert after.endswith(words) and not exif.facts(exif.block(after)).has_gps
