"""WebP (RFC 9649): chunks kept, the XMP chunk and its flag ours; pixels are compared in test_carrier."""

import io
from collections.abc import Callable
from dataclasses import replace

import pytest
from PIL import Image

from boxlore.core.crosswalk.metadata_values import Embedding, Text
from boxlore.core.errors import ByteFault
from boxlore.formats import picture_files, webp

Caption = Callable[..., bytes]


def chunk(kind: bytes, data: bytes) -> bytes:
    return kind + len(data).to_bytes(4, "little") + data + b"\x00" * (len(data) % 2)


def riff(*chunks: bytes, size: int | None = None) -> bytes:
    body = b"WEBP" + b"".join(chunks)
    return b"RIFF" + (len(body) if size is None else size).to_bytes(4, "little") + body


LOSSY = chunk(b"VP8 ", b"\x30\x01\x00\x9d\x01\x2a\x08\x00\x06\x00" + bytes(7))
EXTENDED = chunk(b"VP8X", b"\x00\x00\x00\x00\x07\x00\x00\x05\x00\x00")


def chunks_of(data: bytes) -> list[tuple[bytes, bytes]]:
    found, _ = webp.split(io.BytesIO(data))
    return [(one.type, data[one.at + 8 : one.at + 8 + one.length]) for one in found]


def test_a_simple_lossy_file_gets_the_header_that_it_needs(caption: Caption) -> None:
    found = chunks_of(caption(riff(LOSSY)))
    assert [name for name, _ in found] == [b"VP8X", b"VP8 ", b"XMP "]
    assert found[0][1] == b"\x04\x00\x00\x00\x07\x00\x00\x05\x00\x00"  # RFC 9649, 2.7: width and height less one


@pytest.mark.parametrize(("name", "flags"), [("webp-lossless", 0x04), ("webp-alpha", 0x14), ("webp-animated", 0x06)])
def test_flags(name: str, flags: int, files: dict[str, bytes], caption: Caption) -> None:
    first = chunks_of(caption(files[name]))[0]
    with Image.open(io.BytesIO(files[name])) as image:
        width, height = image.size
    assert first[0] == b"VP8X"
    assert first[1][0] & 0x16 == flags
    assert first[1][4:] == (width - 1).to_bytes(3, "little") + (height - 1).to_bytes(3, "little")


def test_exif_flag_and_chunk_go_together(files: dict[str, bytes], caption: Caption, words: Embedding) -> None:
    family = dict(chunks_of(caption(files["webp-exif"])))
    assert family[b"VP8X"][0] & 0x08 and b"EXIF" in family
    outside = dict(chunks_of(caption(files["webp-exif"], replace(words, drop_text=True))))
    assert outside[b"VP8X"][0] & 0x08 and b"from the scanner" not in outside[b"EXIF"]
    empty = riff(EXTENDED, LOSSY, chunk(b"EXIF", b"no exif"))
    assert b"EXIF" not in dict(chunks_of(caption(empty, replace(words, drop_text=True))))


def test_unknown_chunks_and_what_stands_behind_survive(caption: Caption) -> None:
    data = riff(EXTENDED, chunk(b"ODD ", b"abc"), LOSSY, chunk(b"XMP ", b"")) + b"behind"
    found = caption(data)
    assert (b"ODD ", b"abc") in chunks_of(found)
    assert found.endswith(b"behind")
    assert caption(found) == found


def test_a_last_chunk_without_its_padding_gets_it(caption: Caption) -> None:
    data = riff(EXTENDED, LOSSY, chunk(b"ODD ", b"abc")[:-1])
    found = caption(data)
    assert [name for name, _ in chunks_of(found)] == [b"VP8X", b"VP8 ", b"ODD ", b"XMP "]
    assert caption(found) == found


def test_an_exif_mark_that_some_writers_put_first_stays(files: dict[str, bytes], caption: Caption) -> None:
    inner = dict(chunks_of(files["webp-exif"]))[b"EXIF"]
    data = riff(EXTENDED, LOSSY, chunk(b"EXIF", b"Exif\x00\x00" + inner))
    assert dict(chunks_of(caption(data)))[b"EXIF"].startswith(b"Exif\x00\x00")


REFUSALS = [
    ("no RIFF", b"RIFX\x00\x00\x00\x00WEBP", 0, "RFC 9649, 2.3"),
    ("cut off", riff(LOSSY)[:-4], 4, "RFC 9649, 2.3"),
    ("too short for a header", b"RIFF\x00", 5, "RFC 9649, 2.3"),
    ("chunk past the end", riff(b"VP8 \xff\x00\x00\x00abcd"), 12, "RFC 9649, 2.3"),
    ("no chunk", riff(), 12, "RFC 9649, 2.3"),
    ("begins with another", riff(chunk(b"ODD ", b"abcd")), 12, "RFC 9649, 2.5 to 2.7"),
    ("lossy without its start code", riff(chunk(b"VP8 ", bytes(12))), 12, "RFC 9649, 2.5 to 2.7"),
    ("lossless without its signature", riff(chunk(b"VP8L", bytes(12))), 12, "RFC 9649, 2.5 to 2.7"),
    ("short extended header", riff(chunk(b"VP8X", b"\x00")), 12, "RFC 9649, 2.5 to 2.7"),
]


@pytest.mark.parametrize(("why", "data", "offset", "clause"), REFUSALS, ids=[row[0] for row in REFUSALS])
def test_refusals(why: str, data: bytes, offset: int, clause: str) -> None:
    with pytest.raises(ByteFault) as caught:
        webp.rewrite(io.BytesIO(data), Embedding(xmp=(("dc:title", Text("x")),)))
    assert (caught.value.offset, caught.value.clause) == (offset, clause)


def test_too_large_a_packet_or_copy_is_refused(monkeypatch: pytest.MonkeyPatch, words: Embedding) -> None:
    data = riff(EXTENDED, LOSSY, chunk(b"XMP ", b"x" * 99))
    monkeypatch.setattr("boxlore.formats.xmp.MOST_BYTES", 50)
    with pytest.raises(ByteFault, match="99 bytes"):
        picture_files.rewrite(io.BytesIO(data), words)
    monkeypatch.setattr(webp, "MOST", 50)
    with pytest.raises(ByteFault, match="4 GiB") as caught:
        picture_files.rewrite(io.BytesIO(riff(EXTENDED, LOSSY)), words)
    assert caught.value.offset == 4
