"""TIFF 6.0 and BigTIFF: the file copied whole, our values and a new first directory appended.

Only the pointer in the header changes; no picture byte moves. What was appended by an earlier run is recognised
by its shape (values of ours, then the first directory, then the end of the file) and taken off first, so that a
second run gives the same bytes. Refused: strips or tiles that end beyond the file or do not say where they end
(appended bytes would become pixels), loops, unsorted directories, a classic file that would pass 4 GiB, raw files.
"""

from collections.abc import Iterable, Iterator
from typing import BinaryIO

from boxlore.core.crosswalk.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, merging, resources, xmp
from boxlore.formats.binary import Piece, patched, read_at, size_of
from boxlore.formats.directory import MOST_ENTRIES, SIZES, Directory, Entry, Tiff, open_tiff

XMP_TAG, IIM_TAG, RESOURCES_TAG, SUB_IFDS = 700, 33723, 34377, 330
RUNS = ((273, 279, "strip"), (324, 325, "tile"), (513, 514, "JPEG stream"))
"""Offsets and lengths of the picture's parts (TIFF 6.0, sections 8, 15 and 22)."""
TEXTUAL = {269, 270, 285, 305, 306, 315, 316, 33432, XMP_TAG, IIM_TAG, RESOURCES_TAG, 37724, 0x8769, 0x8825}
APPENDED = {XMP_TAG, IIM_TAG, RESOURCES_TAG, *exif.TEXT_TAGS}
RAW_TAGS = {50706: None, 33421: None, 50740: None, 259: {34713, 32767, 65535, 34892}, 262: {32803, 34892}}
"""What marks a raw file of a camera: the tag alone, or with one of these values."""
MOST_TABLE = (MOST_ENTRIES + 9) * 20 + 16
CLAUSE = "TIFF 6.0, section 2"


def opened(file: BinaryIO) -> tuple[Tiff, list[Directory]]:
    """The structure and its pages, looked over. Raises ByteFault for what must not be appended to."""
    tiff = open_tiff(lambda at, length: read_at(file, at, length, CLAUSE), size_of(file))
    if not tiff.big and tiff.size > 10 and tiff.read(8, 2) == b"CR":
        raise ByteFault(8, "This is a raw file of a camera, not a scan", CLAUSE)
    seen = set[int]()
    chain = tiff.following(tiff.first, seen)
    if not chain:
        raise ByteFault(4, "There is no picture in this file", CLAUSE)
    for directory in _all(tiff, chain, seen):
        _look_over(tiff, directory)
    return tiff, chain


def _all(tiff: Tiff, chain: list[Directory], seen: set[int]) -> Iterator[Directory]:
    """Every page, and the further directories that pages hold (TIFF Supplement 1, SubIFDs)."""
    for directory in chain:
        yield directory
        inner = directory.get(SUB_IFDS)
        for at in tiff.numbers(inner) if inner is not None else ():
            yield from _all(tiff, tiff.following(at, seen), seen)


def _look_over(tiff: Tiff, directory: Directory) -> None:
    if not directory.entries:
        raise ByteFault(directory.at, "This directory has no entries", f"{CLAUSE}, page 14")
    for tag, kinds in RAW_TAGS.items():
        entry = directory.get(tag)
        if entry is not None and (kinds is None or set(tiff.numbers(entry)) & kinds):
            raise ByteFault(directory.at, "This is a raw file of a camera, not a scan", CLAUSE)
    for entry in directory.entries:
        if entry.type in SIZES and entry.value_at + entry.length > tiff.size:
            raise ByteFault(entry.at, f"The value of tag {entry.tag} lies outside the file", CLAUSE)
    for at, length, kind in _runs(tiff, directory):
        if at + length > tiff.size:
            raise ByteFault(at, f"A {kind} of the picture ends beyond the file", f"{CLAUSE}, page 40")
        if at and not length:
            raise ByteFault(directory.at, f"A {kind} of the picture does not say its length", f"{CLAUSE}, page 40")


def _runs(tiff: Tiff, directory: Directory) -> Iterator[tuple[int, int, str]]:
    """Where the parts of a page's picture lie. Raises ByteFault where the file does not say it."""
    for offsets, counts, kind in RUNS:
        where, sizes = directory.get(offsets), directory.get(counts)
        if where is None:
            continue
        if sizes is None or sizes.count != where.count:
            raise ByteFault(directory.at, f"The {kind}s of the picture do not say their lengths", f"{CLAUSE}, page 40")
        for at, length in zip(tiff.numbers(where), tiff.numbers(sizes), strict=True):
            yield at, length, kind


def _value(tiff: Tiff, directory: Directory, tag: int) -> bytes:
    entry = directory.get(tag)
    return tiff.value(entry) if entry is not None else b""


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and what was cut or in conflict."""
    tiff, chain = opened(file)
    main, drop = chain[0], embedding.drop_text
    root, reports = merging.captioned(_value(tiff, main, XMP_TAG), embedding)
    held = b"" if drop else _value(tiff, main, RESOURCES_TAG)
    block, datasets, more = resources.captioned(held, embedding, b"" if drop else _value(tiff, main, IIM_TAG))
    new = {XMP_TAG: (1, xmp.serialize(root)), IIM_TAG: (7, datasets)}
    if held:
        new[RESOURCES_TAG] = (1, block)
    if not drop:
        new |= dict(_texts(main, embedding))
    kept = [one for one in main.entries if one.tag not in new and not (drop and one.tag in TEXTUAL)]
    end = own_tail(tiff, chain)
    start = end + -end % step(tiff)
    room = sum(len(value) + step(tiff) for _, value in new.values()) + MOST_TABLE
    if not tiff.big and start + room > 0xFFFFFFFF:
        raise ByteFault(tiff.size, "The copy would pass the 4 GiB that a TIFF may have", f"{CLAUSE}, page 13")
    appended, first = _append(tiff, main, [one for one in kept if one.tag != exif.GPS_IFD], new, start)
    header = (8, tiff.pack(first, 8)) if tiff.big else (4, tiff.pack(first, 4))
    patches = [one for one in _patches(tiff, chain, embedding) if one[0] < end]
    return [*patched(0, end, [header, *patches]), bytes(start - end) + appended], [*reports, *more]


def _texts(main: Directory, embedding: Embedding) -> Iterator[tuple[int, tuple[int, bytes]]]:
    for tag, words in embedding.exif:
        entry = main.get(tag)
        if entry is not None and entry.type == exif.ASCII:
            yield tag, (exif.ASCII, words.encode("utf-8", "ignore") + b"\x00")


def step(tiff: Tiff) -> int:
    """What offsets are a multiple of: 2 in TIFF (page 13), 8 in BigTIFF."""
    return 8 if tiff.big else 2


def own_tail(tiff: Tiff, chain: list[Directory]) -> int:
    """The offset where what an earlier run appended begins; the size of the file where there is nothing such.

    It is taken off only if it is made of the first directory and values of it that we write afresh, without a gap,
    and nothing else points into it.
    """
    main = chain[0]
    if main.at + tiff.count_size + len(main.entries) * tiff.entry_size + tiff.offset_size != tiff.size:
        return tiff.size
    at = main.at
    values = [one for one in main.entries if one.tag in APPENDED and one.length > tiff.offset_size]
    for entry in sorted(values, key=lambda one: one.value_at, reverse=True):
        end = entry.value_at + entry.length
        if end + -end % step(tiff) != at:
            break
        at = entry.value_at
    spans = [(one.value_at, one.length) for one in main.entries if one.tag not in APPENDED and one.value_at < main.at]
    for directory in _all(tiff, chain, set()):
        spans += [(start, length) for start, length, _ in _runs(tiff, directory)]
        if directory is not main:
            spans += [(directory.at, 2), *((one.value_at, one.length) for one in directory.entries)]
    reached = any(length and start + length > at for start, length in spans)
    return tiff.size if at == main.at or reached else at


def _patches(tiff: Tiff, chain: list[Directory], embedding: Embedding) -> list[tuple[int, bytes]]:
    """The same care as in an Exif block, in every page; for outside, the old text is zeroed where it stood."""
    made: dict[int, bytes] = {}
    for directory in chain:
        page = Tiff(tiff.read, tiff.size, tiff.order, tiff.big, directory.at)
        made |= dict(exif.patches(page, embedding, unlink_gps=directory is not chain[0]))
        if embedding.drop_text:
            for entry in directory.entries:
                pointer = entry.tag in (exif.EXIF_IFD, exif.GPS_IFD)
                if entry.tag in TEXTUAL and not pointer and entry.value_at + entry.length <= tiff.size:
                    made[entry.value_at] = bytes(entry.length)
            if (inner := directory.get(exif.EXIF_IFD)) is not None:
                made.update(exif.emptied(tiff, inner))
    return _apart(made)


def _apart(made: dict[int, bytes]) -> list[tuple[int, bytes]]:
    """The patches in order, a shorter one inside a longer one left out."""
    found: list[tuple[int, bytes]] = []
    for at, new in sorted(made.items(), key=lambda one: (one[0], -len(one[1]))):
        if not found or at >= found[-1][0] + len(found[-1][1]):
            found.append((at, new))
    return found


def _append(
    tiff: Tiff, main: Directory, kept: Iterable[Entry], new: dict[int, tuple[int, bytes]], at: int
) -> tuple[bytes, int]:
    """The bytes to append at an even offset: our values, then the directory. Returns them and its offset."""
    body = bytearray()
    entries: list[tuple[int, bytes]] = [(one.tag, one.raw) for one in kept]
    for tag, (kind, value) in new.items():
        raw = tiff.pack(tag, 2) + tiff.pack(kind, 2) + tiff.pack(len(value), tiff.offset_size)
        if len(value) <= tiff.offset_size:
            entries.append((tag, raw + value.ljust(tiff.offset_size, b"\x00")))
            continue
        entries.append((tag, raw + tiff.pack(at + len(body), tiff.offset_size)))
        body += value + bytes(-len(value) % step(tiff))
    first = at + len(body)
    table = b"".join(raw for _, raw in sorted(entries))
    directory = tiff.pack(len(entries), tiff.count_size) + table + tiff.pack(main.next, tiff.offset_size)
    return bytes(body) + directory, first


def kept_runs(file: BinaryIO, embedding: Embedding) -> list[tuple[int, int]]:
    """The runs of the source that stand in the copy at the same place: all but the header's pointer and patches."""
    return [piece for piece in rewrite(file, embedding)[0] if isinstance(piece, tuple)]


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """Where the strips and tiles of every page lie."""
    tiff, chain = opened(file)
    return [(at, length) for directory in chain for at, length, _ in _runs(tiff, directory)]


def texts_of(file: BinaryIO) -> tuple[bytes, bytes, list[str], Tiff]:
    """The XMP packet, the IIM block, problems, and the structure."""
    tiff, chain = opened(file)
    held, _ = resources.split(_value(tiff, chain[0], RESOURCES_TAG))
    inner, problems = resources.iim_of(held)
    return _value(tiff, chain[0], XMP_TAG), _value(tiff, chain[0], IIM_TAG) or inner, problems, tiff
