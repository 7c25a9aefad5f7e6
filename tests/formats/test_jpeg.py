"""JPEG (ITU-T T.81): segments both ways, what is ours and what stays, refusals; pixels are in test_carrier.

XMP Specification Part 3 (2020), 1.1.3 for where packets stand; CIPA DC-007 for several pictures.
"""

import hashlib
import io
from collections.abc import Callable
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image
from tests.drawn import drawn

from boxlore.core.crosswalk.metadata_values import Alt, Embedding, Text
from boxlore.core.errors import ByteFault
from boxlore.formats import iim, image_resources, jpeg, picture_files, xmp
from boxlore.formats.image_resources import Resource
from boxlore.formats.jpeg import APP1, APP2, APP13, EXTENDED_MARK, XMP_MARK, Segment

Caption = Callable[..., bytes]
With = Callable[..., bytes]

SCAN = b"\xff\xda\x00\x02picture\xff\x00\xff\xd0more\xff\xd9"

BOTH_WAYS = [
    (b"", []),
    (b"\xff\xe0\x00\x04ab", [Segment(0xE0, b"\xff\xe0\x00\x04ab", b"ab")]),
    (b"\xff\xff\xff\xfe\x00\x02", [Segment(0xFE, b"\xff\xff\xff\xfe\x00\x02", b"")]),
    (b"\xff\x01\xff\xd3", [Segment(0x01, b"\xff\x01"), Segment(0xD3, b"\xff\xd3")]),
]


@pytest.mark.parametrize(("data", "segments"), BOTH_WAYS)
def test_both_ways(data: bytes, segments: list[Segment]) -> None:
    whole = b"\xff\xd8" + data + SCAN
    assert jpeg.split(io.BytesIO(whole)) == (segments, 2 + len(data))
    assert b"".join(one.raw for one in segments) == data


@drawn(60)
@given(st.lists(st.tuples(st.sampled_from([0xE0, 0xE5, 0xEF, 0xFE, 0xDB, 0xC4]), st.binary(max_size=300))))
def test_joining_and_splitting_are_inverse(parts: list[tuple[int, bytes]]) -> None:
    made = [jpeg.new_segment(*one) for one in parts]
    whole = b"\xff\xd8" + b"".join(one.raw for one in made) + SCAN
    assert jpeg.split(io.BytesIO(whole))[0] == made


REFUSALS = [
    ("no start", b"\xff\xd9", 0, "T.81 B.1.1.3"),
    ("cut off at the start", b"\xff", 1, "T.81 B.1.1.3"),
    ("nothing behind the start", b"\xff\xd8", 2, "T.81 B.1.1.2"),
    ("junk between segments", b"\xff\xd8\xff\xe5\x00\x02junk", 6, "T.81 B.1.1.2"),
    ("fill bytes without end", b"\xff\xd8" + b"\xff" * 80, 2, "T.81 B.1.1.2"),
    ("an end before the picture", b"\xff\xd8\xff\xd9", 3, "T.81 B.2.1"),
    ("a second start", b"\xff\xd8\xff\xd8", 3, "T.81 B.2.1"),
    ("a stuffed byte", b"\xff\xd8\xff\x00", 3, "T.81 B.2.1"),
    ("length of one", b"\xff\xd8\xff\xe5\x00\x01", 4, "T.81 B.1.1.4"),
    ("no length", b"\xff\xd8\xff\xe5\x00", 5, "T.81 B.1.1.4"),
    ("segment past the end", b"\xff\xd8\xff\xe5\xff\xff", 6, "T.81 B.1.1.4"),
]


@pytest.mark.parametrize(("why", "data", "offset", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(why: str, data: bytes, offset: int, clause: str) -> None:
    with pytest.raises(ByteFault) as caught:
        jpeg.split(io.BytesIO(data))
    assert (caught.value.offset, caught.value.clause) == (offset, clause)


def test_a_payload_that_is_too_long_for_a_segment_is_refused() -> None:
    assert jpeg.new_segment(APP1, bytes(65533)).raw[2:4] == b"\xff\xff"
    with pytest.raises(ByteFault, match="65534 bytes"):
        jpeg.new_segment(APP1, bytes(65534))


def test_hostile_xmp_refuses_the_file(jpeg_with: With, words: Embedding) -> None:
    hostile = XMP_MARK + b"<!DOCTYPE x [<!ENTITY a SYSTEM 'file:///etc/hostname'>]><x>&a;</x>"
    with pytest.raises(ByteFault, match="document type"):
        picture_files.rewrite(io.BytesIO(jpeg_with((APP1, hostile))), words)


def markers(data: bytes) -> list[int]:
    return [one.marker for one in jpeg.split(io.BytesIO(data))[0]]


def test_ours_stand_behind_the_leading_segments_and_others_keep_their_order(jpeg_with: With, caption: Caption) -> None:
    data = jpeg_with((0xEC, b"Ducky"), (0xFE, b"a word"), (APP2, b"ICC_PROFILE\x00\x01\x01profile"))
    data = data[:2] + jpeg.new_segment(0xE0, b"JFIF\x00\x01\x01\x00\x00\x01\x00\x01\x00\x00").raw + data[2:]
    after = markers(caption(data))
    assert after[:6] == [0xE0, APP1, APP13, 0xEC, 0xFE, APP2]


def test_fill_bytes_stay(files: dict[str, bytes], caption: Caption) -> None:
    odd = files["baseline"].replace(b"\xff\xdb", b"\xff\xff\xff\xdb", 1)
    assert b"\xff\xff\xff\xdb" in caption(odd)


def extended(packet: bytes, guid: str = "") -> list[tuple[int, bytes]]:
    """Extended XMP in chunks (XMP Specification Part 3, 1.1.3.1)."""
    name = (guid or hashlib.md5(packet).hexdigest().upper()).encode()
    head = EXTENDED_MARK + name + len(packet).to_bytes(4, "big")
    steps = range(0, len(packet), 60_000)
    return [(APP1, head + at.to_bytes(4, "big") + packet[at : at + 60_000]) for at in steps]


def naming(guid: str) -> tuple[int, bytes]:
    note = Embedding(xmp=(("xmpNote:HasExtendedXMP", Text(guid)),))
    return (APP1, XMP_MARK + picture_files.sidecar(note))


BODY = picture_files.sidecar(Embedding(xmp=(("xmp:Label", Text("y" * 200_000)), ("exif:GPSLatitude", Text("45")))))
GUID = hashlib.md5(BODY).hexdigest().upper()


@pytest.mark.parametrize("order", [1, -1])
def test_two_hundred_kilobytes_of_another_survive(order: int, jpeg_with: With, caption: Caption) -> None:
    after = caption(jpeg_with(naming(GUID), *extended(BODY)[::order]))
    packets = jpeg.packets_of(jpeg.split(io.BytesIO(after))[0])
    assert packets.problems == ()
    assert all(len(one.payload) <= 65502 + len(XMP_MARK) for one in jpeg.split(io.BytesIO(after))[0][:2])
    found = xmp.values(xmp.tree(packets.standard, packets.to_join))
    assert found["xmp:Label"] == "y" * 200_000
    assert "exif:GPSLatitude" not in found  # what is to go goes from there too
    assert xmp.values(xmp.parse(packets.standard))["photoshop:DateCreated"] == "1912"
    assert caption(after) == after


def test_a_story_of_two_hundred_kilobytes_of_ours_reads_back(jpeg_with: With, caption: Caption) -> None:
    story = "She told of the herring. " * 8000
    long = Embedding(xmp=(("dc:description", Alt((("x-default", story), ("en", story)))), ("dc:source", Text("s"))))
    after = caption(jpeg_with(), long)
    assert caption(after, long) == after
    assert xmp.values(xmp.tree(*picture_files.packets(io.BytesIO(after))))["dc:description"] == story


PLAIN = picture_files.sidecar(Embedding(xmp=(("xmp:Label", Text("y" * 200_000)),)))
WRONG = [
    ("its digest is wrong", [naming("A" * 32), *extended(PLAIN, "A" * 32)], "does not fit its own digest"),
    ("it is not named", [naming("B" * 32), *extended(PLAIN)], "does not name"),
    ("there is no packet to name it", extended(PLAIN), "does not name"),
]


@pytest.mark.parametrize(("why", "segments", "said"), WRONG, ids=[row[0] for row in WRONG])
def test_extended_xmp_that_is_not_to_be_trusted_is_left_and_said(
    why: str, segments: list[tuple[int, bytes]], said: str, jpeg_with: With, words: Embedding, caption: Caption
) -> None:
    data = jpeg_with(*segments)
    made = picture_files.rewrite(io.BytesIO(data), words)
    assert any(said in one for one in made.reports)
    after = caption(data)
    for one in segments[-2:]:
        assert jpeg.new_segment(*one).raw in after
    assert b"yyyy" not in caption(data, replace(words, drop_text=True))


def test_extended_xmp_that_is_not_to_be_trusted_leaves_where_it_says_a_place(
    jpeg_with: With, words: Embedding, caption: Caption
) -> None:
    for segments in ([naming("A" * 32), *extended(BODY, "A" * 32)], extended(BODY)):
        data = jpeg_with(*segments)
        assert any("says where it was made" in said for said in picture_files.rewrite(io.BytesIO(data), words).reports)
        after = caption(data)
        assert b"GPSLatitude" not in after and b"yyyy" not in after


def test_a_second_packet_is_joined_and_said(jpeg_with: With, words: Embedding, caption: Caption) -> None:
    one, two = (
        (APP1, XMP_MARK + picture_files.sidecar(Embedding(xmp=(("xmp:Label", Text(label)), (name, Text("kept"))))))
        for label, name in (("one", "xmp:Nickname"), ("two", "xmp:BaseURL"))
    )
    made = picture_files.rewrite(io.BytesIO(jpeg_with(one, two)), words)
    assert made.reports == ("The file holds 2 XMP packets; they were joined, the first before the others.",)
    found = xmp.values(xmp.tree(*picture_files.packets(io.BytesIO(caption(jpeg_with(one, two))))))
    assert (found["xmp:Label"], found["xmp:Nickname"], found["xmp:BaseURL"]) == ("one", "kept", "kept")


def test_resources_over_sixty_four_kilobytes_span_segments_in_order(jpeg_with: With, caption: Caption) -> None:
    held = [Resource(b"8BIM", 0x040C, b"", bytes(range(256)) * 600), Resource(b"8BIM", 0x03ED, b"", b"resolution")]
    block = image_resources.join(held)
    parts = [(APP13, jpeg.PHOTOSHOP_MARK + block[at : at + 65_000]) for at in range(0, len(block), 65_000)]
    after = caption(jpeg_with(*parts))
    segments, _ = jpeg.split(io.BytesIO(after))
    kept, tail = image_resources.split(jpeg.resource_block(segments))
    assert [one.data for one in kept[2:]] == [one.data for one in held]
    assert sum(one.marker == APP13 for one in segments) == 3
    assert tail == b""


def test_the_digest_fits_the_block_and_undeclared_latin_is_transcoded(jpeg_with: With, words: Embedding) -> None:
    old = iim.join([(2, 90, "Võru".encode("latin-1"))])
    held = [Resource(b"8BIM", 0x0404, b"", old), Resource(b"8BIM", 0x0425, b"", bytes(16))]
    made = picture_files.rewrite(
        io.BytesIO(jpeg_with((APP13, jpeg.PHOTOSHOP_MARK + image_resources.join(held)))), words
    )
    assert len(made.reports) == 2 and "digest" in made.reports[0] and "2:90" in made.reports[1]
    assert isinstance(made.pieces[0], bytes)
    data = {
        one.id: one.data
        for one in image_resources.split(jpeg.resource_block(jpeg.split(io.BytesIO(made.pieces[0] + SCAN))[0]))[0]
    }
    assert data[0x0425] == hashlib.md5(data[0x0404]).digest()
    assert (2, 90, "Võru".encode()) in iim.split(data[0x0404])


def test_exif_that_no_reader_reads_is_left_out_and_said(jpeg_with: With, words: Embedding, caption: Caption) -> None:
    data = jpeg_with((APP1, b"Exif\x00\x00damaged"))
    said = "The Exif in the file cannot be read (This is no TIFF header) and was left out."
    assert said in picture_files.rewrite(io.BytesIO(data), words).reports
    for embedding in (words, replace(words, drop_text=True)):
        assert b"damaged" not in caption(data, embedding)


@pytest.mark.parametrize("parts", [1, 2, 3])
def test_exif_over_several_segments_is_one_block(
    parts: int, jpeg_with: With, words: Embedding, caption: Caption
) -> None:
    """Pillow reads such a block as one; the place is in the first part, its values in the last."""
    made = Image.Exif()
    made.get_ifd(0x8769)[0x927C] = bytes(range(256)) * 40
    made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    made[0x010E] = "from the scanner, and long enough"
    block = made.tobytes().removeprefix(b"Exif\x00\x00")
    size = len(block) // parts + 1
    segments = [(APP1, b"Exif\x00\x00" + block[at : at + size]) for at in range(0, len(block), size)]
    source = jpeg_with(*segments)
    assert picture_files.read(io.BytesIO(source)).has_gps
    after = caption(source)
    assert not picture_files.read(io.BytesIO(after)).has_gps
    with Image.open(io.BytesIO(after)) as image:
        read = image.getexif()
        assert read.get_ifd(0x8769)[0x927C] == bytes(range(256)) * 40
        assert not read.get_ifd(0x8825)
        assert read[0x010E].startswith("Nets drying at Haapsalu")


def several(files: dict[str, bytes], caption: Caption) -> bytes:
    """Two pictures as Pillow writes them into one JPEG, the second with the place of its making."""
    exif = Image.Exif()
    exif.get_ifd(0x8825)[1], exif.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    out = io.BytesIO()
    second = Image.new("RGB", (60, 40), "brown")
    second.encoderinfo = {"exif": exif.tobytes()}
    Image.new("RGB", (90, 60), "grey").save(out, "MPO", save_all=True, append_images=[second], exif=exif.tobytes())
    return out.getvalue()


def test_several_pictures_stay_where_their_index_says(files: dict[str, bytes], caption: Caption) -> None:
    before = several(files, caption)
    after = caption(before)
    with Image.open(io.BytesIO(before)) as old, Image.open(io.BytesIO(after)) as new:
        assert new.format == "MPO" and new.n_frames == 2
        for frame in (0, 1):
            old.seek(frame)
            new.seek(frame)
            assert old.tobytes() == new.tobytes()
        sizes = [one["Size"] for one in new.mpinfo[0xB002]]
        assert sum(sizes) == len(after)
    assert caption(after) == after


def test_no_further_picture_carries_where_it_was_made(
    files: dict[str, bytes], caption: Caption, words: Embedding
) -> None:
    before = several(files, caption)
    with Image.open(io.BytesIO(caption(before))) as image:
        image.seek(1)
        assert not image.getexif().get_ifd(0x8825)
    outside = caption(before, replace(words, drop_text=True))
    assert outside.endswith(b"\xff\xd9") and outside.count(b"\xff\xd8\xff") == 1


FILM = b"\x00\x00\x00\x18ftypmp42\x00\x00\x00\x00\xa9xyz\x00\x12\x15\xc7+59.4370+024.7536/mdat and more"


def test_a_film_behind_the_picture_stays_without_its_place(jpeg_with: With, caption: Caption, words: Embedding) -> None:
    after = caption(jpeg_with(after=FILM))
    assert after.endswith(FILM.replace(b"59.4370+024.7536", b"00.0000+000.0000"))
    assert caption(jpeg_with(after=FILM), replace(words, drop_text=True)).endswith(b"\xff\xd9")


def test_exif_that_cannot_be_read_makes_the_trailer_be_looked_at() -> None:
    odd = Segment(APP1, b"", b"Exif\x00\x00damaged")
    assert jpeg._has_place(odd)


ENDS = [
    (b"\xff\xd9", 2),
    (b"a\xff\x00b\xff\xd3c\xff\xd9more", 9),
    (b"a\xff\xc4\x00\x04\xff\xd9b\xff\xd9", 10),
    (b"a\xff\xff\xd9b", 4),
    (b"a\xff\x01b\xff\xd9", 6),
    (b"abc", 3),
    (b"abc\xff", 4),
    (b"", 0),
]


@pytest.mark.parametrize("window", [2, 3, 1 << 20])
@pytest.mark.parametrize(("data", "end"), ENDS)
def test_where_the_picture_ends(data: bytes, end: int, window: int, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(jpeg, "WINDOW", window)
    assert jpeg.picture_end(io.BytesIO(b"xx" + data), 2) == 2 + end
