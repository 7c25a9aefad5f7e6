"""PNG (W3C, Third Edition): one iTXt chunk ours, every other as it was; pixels are compared in test_carrier."""

import io
import zlib
from collections.abc import Callable
from dataclasses import replace

import pytest
from PIL import Image

from boxlore.core.crosswalk.metadata_values import Embedding, Text
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, picture_files, png, xmp

Caption = Callable[..., bytes]


def chunk(kind: bytes, data: bytes, crc: int | None = None) -> bytes:
    check = zlib.crc32(kind + data) if crc is None else crc
    return len(data).to_bytes(4, "big") + kind + data + check.to_bytes(4, "big")


def with_chunks(data: bytes, *chunks: bytes) -> bytes:
    return data[:33] + b"".join(chunks) + data[33:]


def chunks_of(data: bytes) -> list[tuple[bytes, bytes]]:
    return [(one.type, data[one.at + 8 : one.at + 8 + one.length]) for one in png.split(io.BytesIO(data))]


def test_the_packet_stands_right_behind_the_header_uncompressed(files: dict[str, bytes], caption: Caption) -> None:
    kind, data = chunks_of(caption(files["png"]))[1]
    assert kind == b"iTXt"
    assert data.startswith(b"XML:com.adobe.xmp\x00\x00\x00\x00\x00<?xpacket")  # XMP Specification Part 3, 1.1.5
    assert data.endswith(b'<?xpacket end="r"?>')


def test_other_chunks_stay_to_the_byte_wrong_checks_included(files: dict[str, bytes], caption: Caption) -> None:
    odd = [chunk(b"tEXt", b"Comment\x00from the scanner", crc=7), chunk(b"prVt", b"\x00\x01"), chunk(b"iTXt", b"a")]
    data = with_chunks(files["png"], *odd) + b"behind the end"
    after = caption(data)
    assert all(one in after for one in odd)
    assert after.endswith(b"behind the end")
    assert caption(after) == after


@pytest.mark.parametrize("compressed", [False, True])
def test_the_files_own_packet_is_read_and_kept(compressed: bool, files: dict[str, bytes], caption: Caption) -> None:
    packet = picture_files.sidecar(Embedding(xmp=(("xmp:Label", Text("theirs")),)))
    body = zlib.compress(packet) if compressed else packet
    text = b"XML:com.adobe.xmp\x00" + bytes((compressed, 0)) + b"en\x00word\x00" + body
    after = caption(with_chunks(files["png"], chunk(b"iTXt", text)))
    with Image.open(io.BytesIO(after)) as image:
        assert image.getxmp()["xmpmeta"]["RDF"]["Description"]["Label"] == "theirs"
    assert sum(kind == b"iTXt" for kind, _ in chunks_of(after)) == 1


def hexed(data: bytes) -> bytes:
    return b"\nexif\n%8d\n%s\n" % (len(data), data.hex().encode())


def test_exif_written_out_in_a_text_goes_with_its_place(files: dict[str, bytes], caption: Caption) -> None:
    place = next(data for kind, data in chunks_of(files["png-exif"]) if kind == b"eXIf")
    plain = exif.captioned(place, Embedding())
    none = b"Raw profile type exif\x00" + hexed(b"Exif\x00\x00" + plain)
    iptc = b"Raw profile type iptc\x00\nwords\n"
    told = [
        b"Raw profile type exif\x00" + hexed(b"Exif\x00\x00" + place),
        b"Raw profile type APP1\x00" + hexed(place),
    ]
    for one in told:
        for data in (chunk(b"tEXt", one), zipped(one), chunk(b"iTXt", one.replace(b"\x00", bytes(5), 1))):
            after = caption(with_chunks(files["png"], data))
            assert data not in after
            with Image.open(io.BytesIO(after)) as image:
                text = image.text[one.partition(b"\x00")[0].decode()]
            block = bytes.fromhex("".join(text.split()[2:])).removeprefix(b"Exif\x00\x00")
            assert not exif.facts(exif.block(block)).has_gps
            assert exif.facts(exif.block(block)).texts["ImageDescription"] == "from the scanner"
    damaged = [b"Raw profile type exif\x00\nexif\n 2\nzz\n", b"Raw profile type xmp\x00\nxmp\n 2\nabc\n"]
    for one in (*damaged, b"exif:GPSLatitude\x0045/1", b"Comment\x00GPSLatitude: 45"):
        for data in (chunk(b"tEXt", one), zipped(one)):
            source = with_chunks(files["png"], data)
            made = picture_files.rewrite(io.BytesIO(source), Embedding(xmp=(("dc:title", Text("x")),)))
            assert made.reports == ("A text in the file that tells where it was made was left out.",)
            assert data not in caption(source)
    for kept in (none, iptc):
        assert chunk(b"tEXt", kept) in caption(with_chunks(files["png"], chunk(b"tEXt", kept)))


def zipped(text: bytes) -> bytes:
    keyword, _, rest = text.partition(b"\x00")
    return chunk(b"zTXt", keyword + b"\x00\x00" + zlib.compress(rest))


def test_for_outside_texts_times_and_what_stands_behind_go(
    files: dict[str, bytes], caption: Caption, words: Embedding
) -> None:
    gone = [chunk(b"tEXt", b"Comment\x00mine"), chunk(b"tIME", bytes(7)), chunk(b"eXIf", b"damaged")]
    kept = [chunk(b"pHYs", b"\x00\x00\x0b\x13\x00\x00\x0b\x13\x01")]
    after = caption(with_chunks(files["png"], *gone, *kept) + b"behind", replace(words, drop_text=True))
    assert kept[0] in after
    assert not any(one in after for one in gone)
    assert not after.endswith(b"behind")


REFUSALS = [
    ("no signature", lambda data: b"\x89PNG\r\n\x1a\r" + data[8:], 0, "PNG Third Edition, 5.2"),
    ("cut off in a chunk", lambda data: data[:60], 41, "PNG Third Edition, 5.3"),
    ("cut off in a chunk's head", lambda data: data[:37], 37, "PNG Third Edition, 5.3"),
    ("without an end", lambda data: data[:-12], None, "PNG Third Edition, 5.6"),
    ("without a header", lambda data: data[:8] + data[33:], None, "PNG Third Edition, 5.6"),
    (
        "length of more than 2^31",
        lambda data: data[:33] + b"\xff\xff\xff\xff" + data[37:],
        33,
        "PNG Third Edition, 5.3",
    ),
    (
        "a damaged packet",
        lambda data: with_chunks(data, chunk(b"iTXt", png.KEYWORD + b"\x01\x00\x00\x00no stream")),
        33,
        "PNG Third Edition, 5.3",
    ),
]


@pytest.mark.parametrize(("why", "damage", "offset", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(
    why: str, damage: Callable[[bytes], bytes], offset: int | None, clause: str, files: dict[str, bytes]
) -> None:
    with pytest.raises(ByteFault) as caught:
        png.rewrite(io.BytesIO(damage(files["png"])), Embedding())
    assert caught.value.clause == clause
    assert offset in (None, caught.value.offset) or why == "cut off in a chunk"


def test_a_packet_that_swells_is_refused(files: dict[str, bytes], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(xmp, "MOST_BYTES", 1000)
    bomb = png.KEYWORD + b"\x01\x00\x00\x00" + zlib.compress(b" " * 100_000)
    with pytest.raises(ByteFault, match="over 1000 bytes"):
        png.rewrite(io.BytesIO(with_chunks(files["png"], chunk(b"iTXt", bomb))), Embedding())
    monkeypatch.setattr(png, "MOST_HEADER", 10)
    with pytest.raises(ByteFault, match="too large"):
        png.rewrite(io.BytesIO(with_chunks(files["png"], chunk(b"iTXt", bomb))), Embedding())


def test_a_packet_without_its_fields_is_none(files: dict[str, bytes], caption: Caption) -> None:
    caption(with_chunks(files["png"], chunk(b"iTXt", png.KEYWORD + b"\x00\x00")))


def test_a_second_packet_is_joined(files: dict[str, bytes], caption: Caption) -> None:
    packets = [
        chunk(b"iTXt", png.KEYWORD + bytes(4) + picture_files.sidecar(Embedding(xmp=((name, Text("kept")),))))
        for name in ("xmp:Nickname", "xmp:BaseURL")
    ]
    found = xmp.values(xmp.tree(*picture_files.packets(io.BytesIO(caption(with_chunks(files["png"], *packets))))))
    assert found["xmp:Nickname"] == found["xmp:BaseURL"] == "kept"
