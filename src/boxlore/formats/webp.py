"""WebP (RFC 9649): one `XMP ` chunk of ours, with its flag and the file's size set; all other chunks are kept.

A simple file (VP8 or VP8L alone) gets the VP8X header that a file with further chunks must have (RFC 9649, 2.7).
"""

from dataclasses import dataclass
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif_copied, places_unread, xmp, xmp_merging
from boxlore.formats.binary import Piece, patched, read_at, size_of

CLAUSE = "RFC 9649, 2.3"
XMP_FLAG, EXIF_FLAG, ALPHA_FLAG = 0x04, 0x08, 0x10
PACKET, EXIF = b"XMP ", b"EXIF"
PICTURE = (b"VP8 ", b"VP8L", b"ALPH", b"ANIM", b"ANMF", b"ICCP")
"""Chunks that make the picture and say how it looks (RFC 9649, 2.5 to 2.7)."""
MOST = 0xFFFFFFF6
"""The largest size a RIFF header may hold (RFC 9649, 2.4)."""


@dataclass(frozen=True, slots=True)
class RiffChunk:
    """One chunk. `at` is the offset of its first byte, `length` the size of its data, `whole` that of all of it."""

    type: bytes
    at: int
    length: int

    @property
    def whole(self) -> int:
        """The size of the chunk in bytes, with type, length and padding."""
        return 8 + self.length + self.length % 2


def split(file: BinaryIO) -> tuple[list[RiffChunk], int]:
    """The chunks, and the offset where the RIFF container ends. Raises ByteFault.

    file  = "RIFF" size "WEBP" *chunk …     (RFC 9649, 2.4; size counts from "WEBP")
    chunk = type length data [00]           (2.3: 4 bytes each, little-endian; padded to even length)
    """
    head = read_at(file, 0, 12, CLAUSE)
    if head[:4] != b"RIFF" or head[8:] != b"WEBP":
        raise ByteFault(0, "This is no WebP", CLAUSE)
    end = 8 + int.from_bytes(head[4:8], "little")
    end += end % 2 if end < size_of(file) else 0
    if end > size_of(file):
        raise ByteFault(4, "The file is shorter than it says", CLAUSE)
    at, chunks = 12, list[RiffChunk]()
    while at + 8 <= end:
        name = read_at(file, at, 8, CLAUSE)
        chunk = RiffChunk(name[:4], at, int.from_bytes(name[4:], "little"))
        if at + 8 + chunk.length > end:
            raise ByteFault(at, f"Chunk {name[:4]!r} runs past the end", CLAUSE)
        chunks.append(chunk)
        at += chunk.whole
    if not chunks:
        raise ByteFault(12, "There is no chunk in this file", CLAUSE)
    return chunks, end


def packet_of(file: BinaryIO, chunks: list[RiffChunk]) -> bytes:
    """The first XMP packet; empty if there is none. Raises ByteFault if it is larger than xmp.MOST_BYTES."""
    for chunk in chunks:
        if chunk.type == PACKET:
            if chunk.length > xmp.MOST_BYTES:
                raise ByteFault(chunk.at, f"The XMP packet has {chunk.length} bytes", CLAUSE)
            return read_at(file, chunk.at + 8, chunk.length, CLAUSE)
    return b""


def exif_of(file: BinaryIO) -> list[bytes]:
    """The data of the Exif chunks."""
    return [read_at(file, chunk.at + 8, chunk.length, CLAUSE) for chunk in split(file)[0] if chunk.type == EXIF]


def chunk_of(kind: bytes, data: bytes) -> bytes:
    """A new chunk, padded to even length."""
    return kind + len(data).to_bytes(4, "little") + data + b"\x00" * (len(data) % 2)


def _header(file: BinaryIO, chunks: list[RiffChunk], *, with_exif: bool) -> bytes:
    """The VP8X chunk of the copy: the file's own, or a new one for a simple file; flags for XMP and Exif are set.

        data = flags reserved width-1 height-1     (RFC 9649, 2.7: 1, 3, 3 and 3 bytes, little-endian)

    For a simple file width and height come from its picture (2.5 and 2.6).
    """
    first_chunk = chunks[0]
    head = read_at(file, first_chunk.at + 8, min(10, first_chunk.length), CLAUSE).ljust(10, b"\x00")
    data = bytearray(10)
    if first_chunk.type == b"VP8X" and first_chunk.length >= 10:
        data = bytearray(head)
    elif first_chunk.type == b"VP8L" and head[0] == 0x2F:
        bits = int.from_bytes(head[1:5], "little")
        data[0] = ALPHA_FLAG if bits >> 28 & 1 else 0
        data[4:7], data[7:10] = (bits & 0x3FFF).to_bytes(3, "little"), (bits >> 14 & 0x3FFF).to_bytes(3, "little")
    elif first_chunk.type == b"VP8 " and head[3:6] == b"\x9d\x01\x2a":
        for at in (6, 8):
            side = (int.from_bytes(head[at : at + 2], "little") & 0x3FFF) - 1
            data[4 + (at - 6) // 2 * 3 : 7 + (at - 6) // 2 * 3] = max(side, 0).to_bytes(3, "little")
    else:
        raise ByteFault(
            first_chunk.at, f"A WebP cannot begin with this chunk {first_chunk.type!r}", "RFC 9649, 2.5 to 2.7"
        )
    data[0] = data[0] & ~EXIF_FLAG | XMP_FLAG | (EXIF_FLAG if with_exif else 0)
    return chunk_of(b"VP8X", bytes(data))


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and sentences about texts that were replaced."""
    chunks, end = split(file)
    root, reports = xmp_merging.captioned(packet_of(file, chunks), embedding)
    pieces: list[Piece] = []
    has_exif = False
    for chunk in chunks:
        if chunk.type == EXIF:
            data, problems = exif_copied.captioned_or_left_out(
                read_at(file, chunk.at + 8, chunk.length, CLAUSE), embedding
            )
            reports += problems
            has_exif = has_exif or bool(data)
            pieces += [chunk_of(EXIF, data)] if data else []
        elif chunk.type not in (b"VP8X", PACKET):
            start, is_private = chunk.at + 8, chunk.type not in PICTURE
            if is_private and places_unread.patches(file, start, start + chunk.length, alone=True):
                raise ByteFault(chunk.at, f"Chunk {chunk.type!r} says where the file was made", CLAUSE)
            padded_length = min(chunk.whole, end - chunk.at)
            pieces += [(chunk.at, padded_length), *([b"\x00"] if padded_length % 2 else [])]
    pieces.append(chunk_of(PACKET, xmp.serialize(root)))
    pieces.insert(0, _header(file, chunks, with_exif=has_exif))
    total = 4 + sum(len(piece) if isinstance(piece, bytes) else piece[1] for piece in pieces)
    if total > MOST:
        raise ByteFault(4, "The copy would pass the 4 GiB that a WebP may have", CLAUSE)
    size = size_of(file)
    behind = [] if embedding.drop_text else patched(end, size - end, places_unread.patches(file, end, size, alone=True))
    return [b"RIFF" + total.to_bytes(4, "little") + b"WEBP", *pieces, *behind], reports


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """(offset, length) of the chunks that make the picture."""
    chunks, _ = split(file)
    skipped = (b"VP8X", PACKET, EXIF)
    return [(chunk.at, 8 + chunk.length) for chunk in chunks if chunk.type not in skipped]
