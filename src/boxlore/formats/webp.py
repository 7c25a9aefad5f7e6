"""WebP (RFC 9649): the RIFF chunks kept, one `XMP ` chunk ours, its flag set, the sizes made right.

A simple file (VP8 or VP8L alone) gets the VP8X header that it needs to carry more (RFC 9649, 2.7).
"""

from dataclasses import dataclass
from typing import BinaryIO

from boxlore.core.crosswalk.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, merging, opaque, xmp
from boxlore.formats.binary import Piece, patched, read_at, size_of

CLAUSE = "RFC 9649, 2.3"
XMP_FLAG, EXIF_FLAG, ALPHA_FLAG = 0x04, 0x08, 0x10
PACKET, EXIF = b"XMP ", b"EXIF"
MOST = 0xFFFFFFF6
"""The largest size a RIFF header may hold (RFC 9649, 2.4)."""


@dataclass(frozen=True, slots=True)
class RiffChunk:
    """Where one chunk stands: `at` its first byte, `length` of its data without padding."""

    type: bytes
    at: int
    length: int

    @property
    def whole(self) -> int:
        return 8 + self.length + self.length % 2


def split(file: BinaryIO) -> tuple[list[RiffChunk], int]:
    """The chunks, and the offset where the RIFF container ends."""
    head = read_at(file, 0, 12, CLAUSE)
    if head[:4] != b"RIFF" or head[8:] != b"WEBP":
        raise ByteFault(0, "This is no WebP", CLAUSE)
    end = 8 + int.from_bytes(head[4:8], "little")
    end += end % 2 if end < size_of(file) else 0
    if end > size_of(file):
        raise ByteFault(4, "The file is shorter than it says", CLAUSE)
    at, found = 12, list[RiffChunk]()
    while at + 8 <= end:
        name = read_at(file, at, 8, CLAUSE)
        chunk = RiffChunk(name[:4], at, int.from_bytes(name[4:], "little"))
        if at + 8 + chunk.length > end:
            raise ByteFault(at, f"Chunk {name[:4]!r} runs past the end", CLAUSE)
        found.append(chunk)
        at += chunk.whole
    if not found:
        raise ByteFault(12, "There is no chunk in this file", CLAUSE)
    return found, end


def packet_of(file: BinaryIO, chunks: list[RiffChunk]) -> bytes:
    """The XMP packet, or no bytes."""
    for chunk in chunks:
        if chunk.type == PACKET:
            if chunk.length > xmp.MOST_BYTES:
                raise ByteFault(chunk.at, f"The XMP packet has {chunk.length} bytes", CLAUSE)
            return read_at(file, chunk.at + 8, chunk.length, CLAUSE)
    return b""


def exif_of(file: BinaryIO) -> list[bytes]:
    """The data of the Exif chunks."""
    return [read_at(file, one.at + 8, one.length, CLAUSE) for one in split(file)[0] if one.type == EXIF]


def _make(kind: bytes, data: bytes) -> bytes:
    return kind + len(data).to_bytes(4, "little") + data + b"\x00" * (len(data) % 2)


def _header(file: BinaryIO, chunks: list[RiffChunk], *, with_exif: bool) -> bytes:
    """The VP8X chunk with the XMP flag set: the file's own, or a new one for a simple file."""
    first = chunks[0]
    head = read_at(file, first.at + 8, min(10, first.length), CLAUSE).ljust(10, b"\x00")
    data = bytearray(10)
    if first.type == b"VP8X" and first.length >= 10:
        data = bytearray(head)
    elif first.type == b"VP8L" and head[0] == 0x2F:
        bits = int.from_bytes(head[1:5], "little")
        data[0] = ALPHA_FLAG if bits >> 28 & 1 else 0
        data[4:7], data[7:10] = (bits & 0x3FFF).to_bytes(3, "little"), (bits >> 14 & 0x3FFF).to_bytes(3, "little")
    elif first.type == b"VP8 " and head[3:6] == b"\x9d\x01\x2a":
        for at in (6, 8):
            side = (int.from_bytes(head[at : at + 2], "little") & 0x3FFF) - 1
            data[4 + (at - 6) // 2 * 3 : 7 + (at - 6) // 2 * 3] = max(side, 0).to_bytes(3, "little")
    else:
        raise ByteFault(first.at, f"A WebP cannot begin with this chunk {first.type!r}", "RFC 9649, 2.5 to 2.7")
    data[0] = data[0] & ~EXIF_FLAG | XMP_FLAG | (EXIF_FLAG if with_exif else 0)
    return _make(b"VP8X", bytes(data))


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and what was in conflict."""
    chunks, end = split(file)
    root, reports = merging.captioned(packet_of(file, chunks), embedding)
    pieces: list[Piece] = []
    has_exif = False
    for chunk in chunks:
        if chunk.type == EXIF:
            data = _exif(read_at(file, chunk.at + 8, chunk.length, CLAUSE), embedding)
            has_exif = has_exif or bool(data)
            pieces += [_make(EXIF, data)] if data else []
        elif chunk.type not in (b"VP8X", PACKET):
            whole = min(chunk.whole, end - chunk.at)
            pieces += [(chunk.at, whole), *([b"\x00"] if whole % 2 else [])]
    pieces.append(_make(PACKET, xmp.serialize(root)))
    pieces.insert(0, _header(file, chunks, with_exif=has_exif))
    total = 4 + sum(len(one) if isinstance(one, bytes) else one[1] for one in pieces)
    if total > MOST:
        raise ByteFault(4, "The copy would pass the 4 GiB that a WebP may have", CLAUSE)
    size = size_of(file)
    rest = [] if embedding.drop_text else patched(end, size - end, opaque.patches(file, end, size))
    return [b"RIFF" + total.to_bytes(4, "little") + b"WEBP", *pieces, *rest], reports


def _exif(data: bytes, embedding: Embedding) -> bytes:
    """The Exif chunk's data after our care, with the mark that some writers put before it."""
    body = data.removeprefix(b"Exif\x00\x00")
    made = exif.only_looks(body) if embedding.drop_text else exif.captioned(body, embedding)
    return data[: len(data) - len(body)] + made if made else b""


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """Where the chunks are that make the picture."""
    chunks, _ = split(file)
    skipped = (b"VP8X", PACKET, EXIF)
    return [(one.at, 8 + one.length) for one in chunks if one.type not in skipped]
