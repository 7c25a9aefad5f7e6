"""PNG (W3C, Third Edition): one iTXt chunk of ours after IHDR, all others as they are, even with a wrong CRC.

Our chunk has the keyword `XML:com.adobe.xmp` and is not compressed (XMP Specification Part 3, 1.1.5). PNG defines
no chunk for IIM.
"""

import zlib
from dataclasses import dataclass
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif_copied, places_unread, png_texts, xmp, xmp_merging
from boxlore.formats.binary import Piece, patched, read_at, size_of

SIGNATURE = b"\x89PNG\r\n\x1a\n"
KEYWORD = b"XML:com.adobe.xmp\x00"
CLAUSE = "PNG Third Edition, 5.3"
PICTURE = frozenset(
    kind.encode()
    for kind in (
        "IHDR PLTE IDAT IEND tRNS gAMA cHRM sRGB iCCP sBIT bKGD hIST pHYs sPLT acTL fcTL fdAT cICP mDCV cLLI"
    ).split()
)
"""Chunks that say how the picture looks (PNG Third Edition, 5.6)."""
TEXTUAL = {b"tEXt", b"zTXt", b"iTXt", b"eXIf", b"tIME"}
MOST_HEADER = 64 << 20


@dataclass(frozen=True, slots=True)
class PngChunk:
    """One chunk. `at` is the offset of its first byte, `length` the size of its data, `whole` that of all of it."""

    type: bytes
    at: int
    length: int

    @property
    def whole(self) -> int:
        """The size of the chunk in bytes, with length, type and CRC."""
        return self.length + 12


def split(file: BinaryIO) -> list[PngChunk]:
    """Every chunk to the end of the file; what stands behind IEND is one chunk of type b"". Raises ByteFault.

    file  = signature IHDR *chunk IEND …     (PNG Third Edition, 5.2 and 5.6)
    chunk = length type data crc             (5.3: 4 bytes, 4 bytes, `length` bytes, 4 bytes; big-endian)
    """
    if read_at(file, 0, 8, "PNG 5.2") != SIGNATURE:
        raise ByteFault(0, "This is no PNG", "PNG Third Edition, 5.2")
    size, at, chunks = size_of(file), 8, list[PngChunk]()
    while at < size:
        head = read_at(file, at, 8, CLAUSE)
        length = int.from_bytes(head[:4], "big")
        if length > 0x7FFFFFFF or at + 12 + length > size:
            raise ByteFault(at, f"Chunk {head[4:]!r} runs past the end of the file", CLAUSE)
        chunks.append(PngChunk(head[4:], at, length))
        at += 12 + length
        if head[4:] == b"IEND":
            break
    if not chunks or chunks[0].type != b"IHDR" or chunks[-1].type != b"IEND":
        raise ByteFault(at, "The first chunk must be IHDR and the last IEND", "PNG Third Edition, 5.6")
    if at < size:
        chunks.append(PngChunk(b"", at, size - at - 12))
    return chunks


def data_of(file: BinaryIO, chunk: PngChunk) -> bytes:
    """The data of a chunk that is not part of the picture. Raises ByteFault if it is larger than MOST_HEADER."""
    if chunk.length > MOST_HEADER:
        raise ByteFault(chunk.at, "This text chunk is too large", CLAUSE)
    return read_at(file, chunk.at + 8, chunk.length, CLAUSE)


def is_packet(file: BinaryIO, chunk: PngChunk) -> bool:
    """Whether the chunk holds the XMP packet."""
    return chunk.type == b"iTXt" and read_at(file, chunk.at + 8, min(18, chunk.length), CLAUSE) == KEYWORD


def packets_of(file: BinaryIO, chunks: list[PngChunk]) -> list[bytes]:
    """The XMP packets, decompressed where they are compressed; a sound file has one at most.

    iTXt = keyword 00 compressed method language 00 translated 00 text     (PNG Third Edition, 11.3.3.4)
    """
    packets: list[bytes] = []
    for chunk in chunks:
        if is_packet(file, chunk):
            behind_keyword = data_of(file, chunk)[len(KEYWORD) :]
            compressed, body = behind_keyword[:1] == b"\x01", behind_keyword[2:]
            text = body.split(b"\x00", 2)[2] if body.count(b"\x00") >= 2 else b""
            packets.append(png_texts.inflated(text, chunk.at) if compressed else text)
    return packets


def make(kind: bytes, data: bytes) -> bytes:
    """A new chunk with its CRC."""
    return len(data).to_bytes(4, "big") + kind + data + zlib.crc32(kind + data).to_bytes(4, "big")


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and sentences about texts that were replaced or left out."""
    chunks = split(file)
    pieces: list[Piece] = [SIGNATURE, (8, chunks[0].whole)]
    reports: list[str] = []
    if not embedding.only_place:
        packet, *further = packets_of(file, chunks) or [b""]
        root, reports = xmp_merging.captioned(packet, embedding, tuple(further))
        pieces.append(make(b"iTXt", KEYWORD + b"\x00\x00\x00\x00" + xmp.serialize(root, end="r", padding=0)))
    for chunk in chunks[1:]:
        if is_packet(file, chunk) and not embedding.only_place:
            continue
        chunk_pieces, problems = _carried_over(file, chunk, embedding)
        pieces += chunk_pieces
        reports += problems
    return _joined(pieces), reports


def _carried_over(file: BinaryIO, chunk: PngChunk, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """What the copy takes from a chunk of the source, and sentences about what was left out."""
    if chunk.type == b"eXIf":
        return _exif_chunk(file, chunk, embedding)
    if chunk.type in PICTURE:
        return [(chunk.at, chunk.whole)], []
    if embedding.drop_text and chunk.type in (*TEXTUAL, b""):
        return [], []
    if chunk.type == b"":
        end = chunk.at + chunk.whole
        changes = places_unread.patches(file, chunk.at, end, only_place=embedding.only_place, alone=True)
        return patched(chunk.at, chunk.whole, changes), []
    data = data_of(file, chunk)
    if chunk.type in TEXTUAL:
        cleaned, reports = png_texts.without_place(chunk.type, data, only_place=embedding.only_place)
        return [make(chunk.type, cleaned) if cleaned != data else (chunk.at, chunk.whole)] if cleaned else [], reports
    if places_unread.cleaned(data, only_place=True) != data:
        raise ByteFault(chunk.at, f"Chunk {chunk.type!r} says where the file was made", CLAUSE)
    if chunk.type[:1].islower() and (  # no picture needs it (5.4)
        places_unread.cleaned(data, alone=True) != data or png_texts.has_compressed_place(data)
    ):
        return [], [png_texts.LEFT_OUT]
    return [(chunk.at, chunk.whole)], []


def _exif_chunk(file: BinaryIO, chunk: PngChunk, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The Exif chunk of the copy (a new one, the run of the old one if nothing changes, or none), and sentences."""
    data = data_of(file, chunk)
    rewritten, reports = exif_copied.captioned_or_left_out(data, embedding)
    if not rewritten:
        return [], reports
    return [make(b"eXIf", rewritten) if rewritten != data else (chunk.at, chunk.whole)], reports


def _joined(pieces: list[Piece]) -> list[Piece]:
    """The pieces with neighbouring runs of the source joined, so that they are copied in one go."""
    joined: list[Piece] = []
    for piece in pieces:
        last = joined[-1] if joined else b""
        if isinstance(piece, tuple) and isinstance(last, tuple) and sum(last) == piece[0]:
            joined[-1] = (last[0], last[1] + piece[1])
        else:
            joined.append(piece)
    return joined


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """(offset, length) of the chunks that make the picture: those of PICTURE, and any that readers must know (5.4)."""
    chunks = split(file)
    return [(chunk.at, chunk.whole) for chunk in chunks if chunk.type in PICTURE or chunk.type[:1].isupper()]
