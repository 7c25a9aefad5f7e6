"""WebP (RFC 9649): the RIFF chunks kept, one `XMP ` chunk ours, its flag set, the sizes made right.

A simple file (VP8 or VP8L alone) gets the VP8X header that it needs to carry more (RFC 9649, 2.7).
"""

from dataclasses import dataclass
from typing import BinaryIO

from boxlore.core.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, xmp
from boxlore.formats.binary import Piece, read_at, size_of

CLAUSE = "RFC 9649, 2.3"
XMP_FLAG, EXIF_FLAG, ALPHA_FLAG = 0x04, 0x08, 0x10
PACKET, EXIF = b"XMP ", b"EXIF"


@dataclass(frozen=True, slots=True)
class Chunk:
    """Where one chunk stands: `at` its first byte, `length` of its data without padding."""

    type: bytes
    at: int
    length: int

    @property
    def whole(self) -> int:
        return 8 + self.length + self.length % 2


def split(file: BinaryIO) -> tuple[list[Chunk], int]:
    """The chunks, and the offset where the RIFF container ends."""
    head = read_at(file, 0, 12, CLAUSE)
    if head[:4] != b"RIFF" or head[8:] != b"WEBP":
        raise ByteFault(0, "This is no WebP", CLAUSE)
    end = 8 + int.from_bytes(head[4:8], "little")
    if end > size_of(file):
        raise ByteFault(4, "The file is shorter than it says", CLAUSE)
    at, found = 12, list[Chunk]()
    while at + 8 <= end:
        name = read_at(file, at, 8, CLAUSE)
        chunk = Chunk(name[:4], at, int.from_bytes(name[4:], "little"))
        if at + 8 + chunk.length > end:
            raise ByteFault(at, f"Chunk {name[:4]!r} runs past the end", CLAUSE)
        found.append(chunk)
        at += chunk.whole
    if not found:
        raise ByteFault(12, "There is no chunk in this file", CLAUSE)
    return found, end


def packet_of(file: BinaryIO, chunks: list[Chunk]) -> bytes:
    """The XMP packet, or no bytes."""
    for chunk in chunks:
        if chunk.type == PACKET:
            return read_at(file, chunk.at + 8, chunk.length, CLAUSE)
    return b""


def _make(kind: bytes, data: bytes) -> bytes:
    return kind + len(data).to_bytes(4, "little") + data + b"\x00" * (len(data) % 2)


def _header(file: BinaryIO, chunks: list[Chunk], *, keep_exif: bool) -> bytes:
    """The VP8X chunk with the XMP flag set: the file's own, or a new one for a simple file."""
    first = chunks[0]
    if first.type == b"VP8X":
        data = bytearray(read_at(file, first.at + 8, 10, CLAUSE))
    else:
        data = bytearray(10)
        head = read_at(file, first.at + 8, 10, CLAUSE)
        if first.type == b"VP8L":
            bits = int.from_bytes(head[1:5], "little")
            width, height = bits & 0x3FFF, bits >> 14 & 0x3FFF
            data[0] = ALPHA_FLAG if bits >> 28 & 1 else 0
        elif first.type == b"VP8 ":
            width = (int.from_bytes(head[6:8], "little") & 0x3FFF) - 1
            height = (int.from_bytes(head[8:10], "little") & 0x3FFF) - 1
        else:
            raise ByteFault(first.at, f"A WebP cannot begin with {first.type!r}", CLAUSE)
        data[4:7], data[7:10] = width.to_bytes(3, "little"), height.to_bytes(3, "little")
    data[0] |= XMP_FLAG
    if not keep_exif:
        data[0] &= ~EXIF_FLAG
    return _make(b"VP8X", bytes(data))


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and what was in conflict."""
    chunks, end = split(file)
    packet = xmp.serialize(xmp.merge(packet_of(file, chunks), embedding))
    pieces: list[Piece] = [_header(file, chunks, keep_exif=not embedding.drop_text)]
    for chunk in chunks:
        if chunk.type in (b"VP8X", PACKET) or (embedding.drop_text and chunk.type == EXIF):
            continue
        if chunk.type == EXIF:
            data = read_at(file, chunk.at + 8, chunk.length, CLAUSE)
            body = data.removeprefix(b"Exif\x00\x00")
            made = exif.apply(body, exif.patches(exif.block(body), embedding))
            pieces.append(_make(EXIF, data[: len(data) - len(body)] + made))
        else:
            pieces.append((chunk.at, min(chunk.whole, end - chunk.at)))
    pieces.append(_make(PACKET, packet))
    total = 4 + sum(len(one) if isinstance(one, bytes) else one[1] for one in pieces)
    rest: list[Piece] = [] if embedding.drop_text or size_of(file) == end else [(end, size_of(file) - end)]
    return [b"RIFF" + total.to_bytes(4, "little") + b"WEBP", *pieces, *rest], []


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """Where the chunks are that make the picture."""
    chunks, end = split(file)
    skipped = (b"VP8X", PACKET, EXIF)
    return [(one.at, min(one.whole, end - one.at)) for one in chunks if one.type not in skipped]
