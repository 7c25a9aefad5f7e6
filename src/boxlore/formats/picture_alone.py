"""A scan as anyone may have it: the picture, its colours, its resolution and which way up it is, and nothing else.

Rule kept: what may stay is listed, and all else goes, known or not: captions, comments, the place and the time of the
scanning, names of owners and numbers of machines, makers' notes, smaller pictures of the same thing (which may show
what was cut off), and bytes in gaps or behind the end. Nothing is decoded, so the picture's own bytes stay. A file that
cannot be taken apart to its end is refused. A file that is bare already comes out as it is, byte for byte.
"""

from collections.abc import Iterable, Iterator
from enum import IntEnum
from typing import BinaryIO

from boxlore.core.errors import ByteFault
from boxlore.formats import exif, jpeg, png, tiff, webp
from boxlore.formats.binary import Piece, patched, read_at
from boxlore.formats.tiff_directories import Directory, Entry, Tiff

JFIF, ADOBE, PROFILE = b"JFIF\x00", b"Adobe", b"ICC_PROFILE\x00"
JFIF_SIZE, ADOBE_SIZE = 14, 12
"""Bytes of their payloads without a thumbnail (JFIF 1.02; T.872, 6.5.3)."""
WINDOW = 1 << 20
REDUCED = 1
"""The bit of NewSubfileType that marks a smaller picture of another page (TIFF 6.0, page 36)."""


def of_jpeg(file: BinaryIO) -> list[Piece]:
    """The pieces of a bare JPEG. Raises ByteFault for one without an end, or with texts between its scans."""
    segments, tail = jpeg.split(file)
    end = jpeg.picture_end(file, tail)
    if read_at(file, end - 2, 2, "T.81 B.1.1.3") != b"\xff\xd9":
        raise ByteFault(end, "The picture has no end", "T.81 B.2.1")
    for marker, at in jpeg.markers_behind(file, tail):
        if is_application(marker):
            raise ByteFault(at, "A text stands in the midst of the picture", "T.81 B.2.4")
    kept = [bare for run in jpeg.runs(segments) for bare in kept_of(run)]
    return [b"\xff\xd8" + b"".join(segment.raw for segment in kept), (tail, end - tail)]


def is_application(marker: int) -> bool:
    """Whether a marker begins a segment that says something beside the picture (T.81, table B.1: APPn, COM, JPGn)."""
    return jpeg.APP0 <= marker <= 0xFE


def kept_of(run: list[jpeg.Segment]) -> Iterator[jpeg.Segment]:
    """What stays of one of `jpeg.runs`: what decodes the picture, its colours, and how it is to be shown."""
    segment = run[0]
    if not is_application(segment.marker) or segment.starts(jpeg.APP2, PROFILE):
        yield segment
    elif segment.starts(jpeg.APP1, exif.MARK):
        looks = exif.only_looks(b"".join(part.payload[len(exif.MARK) :] for part in run))
        yield from _kept(segment, exif.MARK + looks if looks else b"")
    elif segment.starts(jpeg.APP0, JFIF) and len(segment.payload) >= JFIF_SIZE:
        yield from _kept(segment, segment.payload[: JFIF_SIZE - 2] + b"\x00\x00")
    elif segment.starts(0xEE, ADOBE) and len(segment.payload) >= ADOBE_SIZE:
        yield from _kept(segment, segment.payload[:ADOBE_SIZE])


def _kept(segment: jpeg.Segment, payload: bytes) -> Iterator[jpeg.Segment]:
    """The segment itself where its payload stays, a new one where it changes, none where nothing is left."""
    if payload:
        yield segment if payload == segment.payload else jpeg.new_segment(segment.marker, payload)


PNG = png.PICTURE - {b"sPLT"}
"""A suggested palette has a name of its own, and no viewer needs it (PNG Third Edition, 11.3.4.4)."""


def of_png(file: BinaryIO) -> list[Piece]:
    """The pieces of a bare PNG. Raises ByteFault for a chunk that the picture needs and nobody knows."""
    pieces: list[Piece] = [png.SIGNATURE]
    for chunk in png.split(file):
        if chunk.type == b"eXIf":
            data = png.data_of(file, chunk)
            looks = exif.only_looks(data)
            pieces += [(chunk.at, chunk.whole) if looks == data else png.make(b"eXIf", looks)] if looks else []
        elif chunk.type in PNG:
            pieces.append((chunk.at, chunk.whole))
        elif chunk.type[:1].isupper():
            raise ByteFault(chunk.at, f"Chunk {chunk.type!r} is not known", "PNG Third Edition, 5.4")
    return pieces


def of_webp(file: BinaryIO) -> list[Piece]:
    """The pieces of a bare WebP. Raises ByteFault for a film, whose frames may hold more than pictures."""
    chunks, end = webp.split(file)
    pieces: list[Piece] = []
    turned = False
    for chunk in chunks:
        if chunk.type in (b"ANIM", b"ANMF"):
            raise ByteFault(chunk.at, "It is a film of several pictures", "RFC 9649, 2.7")
        if chunk.type == webp.EXIF:
            data = read_at(file, chunk.at + 8, chunk.length, webp.CLAUSE)
            looks = exif.only_looks(data.removeprefix(exif.MARK))
            turned = turned or bool(looks)
            pieces += [webp.chunk_of(webp.EXIF, looks)] if looks else []
        elif chunk.type in webp.PICTURE:
            padded_length = min(chunk.whole, end - chunk.at)
            pieces += [(chunk.at, padded_length), *([b"\x00"] if padded_length % 2 else [])]
    if chunks[0].type == b"VP8X":
        head = bytearray(read_at(file, chunks[0].at + 8, min(10, chunks[0].length), webp.CLAUSE).ljust(10, b"\x00"))
        head[0] = head[0] & ~(webp.XMP_FLAG | webp.EXIF_FLAG) | (webp.EXIF_FLAG if turned else 0)
        pieces.insert(0, webp.chunk_of(b"VP8X", bytes(head)))
    total = 4 + sum(len(piece) if isinstance(piece, bytes) else piece[1] for piece in pieces)
    return [b"RIFF" + total.to_bytes(4, "little") + b"WEBP", *pieces]


TIFF_PROFILE = 34675


class _Tag(IntEnum):
    SUBFILE, COMPRESSION, TABLES = 254, 259, 347


TIFF = frozenset(
    (
        *(254, 255, 256, 257, 258, 259, 262, 263, 264, 265, 266, 273, 274, 277, 278, 279, 280, 281, 282, 283, 284, 290),
        *(291, 292, 293, 296, 297, 301, 317, 318, 319, 320, 321, 322, 323, 324, 325, 332, 334, 336, 338, 339, 340, 341),
        *(342, 347, 512, 513, 514, 515, 517, 518, 519, 520, 521, 529, 530, 531, 532, 559, 34675),
    )
)
"""Tags that say how the picture is decoded and shown (TIFF 6.0; its Supplements; ICC.1, annex B.4); none is text."""


def of_tiff(file: BinaryIO) -> list[Piece]:
    """The pieces of a bare TIFF: nothing moves, and every byte that no page needs is zero."""
    structure, chain = tiff.opened(file)
    pages = [page for page in chain if not _is_reduced(structure, page)]
    if not pages:
        raise ByteFault(chain[0].at, "It holds smaller pictures alone", "TIFF 6.0, page 36")
    spans = [(0, 16 if structure.big else 8)]
    changes = [(8, structure.pack(pages[0].at, 8)) if structure.big else (4, structure.pack(pages[0].at, 4))]
    for page, following in zip(pages, [*pages[1:], None], strict=True):
        _check_streams(structure, page)
        kept = [entry for entry in page.entries if entry.tag in TIFF]
        table = _table(structure, kept, following.at if following else 0)
        whole = structure.count_size + len(page.entries) * structure.entry_size + structure.offset_size
        changes.append((page.at, table.ljust(whole, b"\x00")))
        spans.append((page.at, whole))
        spans += [(entry.value_at, entry.length) for entry in kept if entry.length > structure.offset_size]
        spans += [(start, length) for start, length, _ in tiff.picture_parts(structure, page)]
    _check_apart(changes[1:], spans)
    emptied = [(at, bytes(end - at)) for at, end in gaps(spans, structure.size) if _is_written(file, at, end)]
    return patched(0, structure.size, [*changes, *emptied])


def check_pages(structure: Tiff, chain: list[Directory]) -> None:
    """Raises ByteFault for a smaller picture among the pages, or for a text in the midst of a picture."""
    for page in chain:
        _check_streams(structure, page)
        if _is_reduced(structure, page):
            raise ByteFault(page.at, "It holds a smaller picture", "TIFF 6.0, page 36")


def _is_reduced(structure: Tiff, page: Directory) -> bool:
    entry = page.get(_Tag.SUBFILE)
    return entry is not None and entry.count > 0 and bool(structure.numbers(entry)[0] & REDUCED)


def _table(structure: Tiff, entries: list[Entry], following: int) -> bytes:
    """A directory of these entries; unused bytes of a value that stands in its entry become zero."""
    rows = []
    for entry in entries:
        head = entry.raw[: 4 + structure.offset_size]
        inline = entry.length <= structure.offset_size
        value = entry.raw[len(head) :][: entry.length if inline else structure.offset_size]
        rows.append(head + value.ljust(structure.offset_size, b"\x00"))
    count = structure.pack(len(entries), structure.count_size)
    return count + b"".join(rows) + structure.pack(following, structure.offset_size)


def _check_streams(structure: Tiff, page: Directory) -> None:
    """Raises ByteFault where a part of the page is a JPEG stream that says something beside the picture."""
    compression = page.get(_Tag.COMPRESSION)
    if compression is None or not set(structure.numbers(compression)) & {6, 7}:
        return
    tables = page.get(_Tag.TABLES)
    spans = [(start, length) for start, length, _ in tiff.picture_parts(structure, page)]
    for start, length in [*spans, *([(tables.value_at, tables.length)] if tables is not None else [])]:
        for marker in jpeg.markers_in(structure.read(start, length)):
            if is_application(marker) and marker not in (jpeg.APP0, 0xEE):
                raise ByteFault(start, "A text stands in the midst of the picture", "TIFF Technical Note 2")


def _check_apart(tables: Iterable[tuple[int, bytes]], spans: list[tuple[int, int]]) -> None:
    """Raises ByteFault where a directory lies among the values or in the picture, so that it cannot be rewritten."""
    for at, table in tables:
        if sum(start < at + len(table) and at < start + length for start, length in spans if length) > 1:
            raise ByteFault(at, "A directory lies inside other data", "TIFF 6.0, section 2")


def gaps(spans: Iterable[tuple[int, int]], size: int) -> Iterator[tuple[int, int]]:
    at = 0
    for start, length in sorted(spans):
        if at < start:
            yield at, start
        at = max(at, start + length)
    if at < size:
        yield at, size


def _is_written(file: BinaryIO, at: int, end: int) -> bool:
    """Whether any byte between the offsets is not zero."""
    return any(any(read_at(file, start, min(WINDOW, end - start), "a gap")) for start in range(at, end, WINDOW))
