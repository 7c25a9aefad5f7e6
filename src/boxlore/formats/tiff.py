"""TIFF 6.0 and BigTIFF: the file is copied whole, and our values and a new first directory are appended.

The header then points to the new directory, and no byte of the picture moves. What an earlier run appended is
recognised by its shape (values of ours, then the first directory, then the end of the file) and taken off first, so
that a second run gives the same bytes. Refused are strips or tiles that end beyond the file or do not say where they
end (appended bytes would become pixels), loops, unsorted directories, a classic TIFF that would pass 4 GiB, and raw
files of cameras.
"""

from collections.abc import Iterable, Iterator
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, places_unread, xmp, xmp_merging
from boxlore.formats import image_resources as resources
from boxlore.formats.binary import Piece, patched, read_at, size_of
from boxlore.formats.tiff_directories import MOST_ENTRIES, SIZES, Directory, Entry, Tiff, open_tiff

XMP_TAG, IIM_TAG, RESOURCES_TAG, SUB_IFDS, NEW_SUBFILE_TYPE = 700, 33723, 34377, 330, 254
RUNS = ((273, 279, "strip"), (324, 325, "tile"), (513, 514, "JPEG stream"))
"""(tag of the offsets, tag of the lengths, name) of the picture's parts (TIFF 6.0, sections 8, 15 and 22)."""
TEXTUAL = {269, 270, 285, 305, 306, 315, 316, 33432, XMP_TAG, IIM_TAG, RESOURCES_TAG, 37724, 0x8769, 0x8825}
"""Tags that hold text, dates or places; a copy for outside is without them."""
APPENDED = {XMP_TAG, IIM_TAG, RESOURCES_TAG, *exif.TEXT_TAGS}
"""Tags whose values we append."""
RAW_TAGS = {50706: None, 33421: None, 50740: None, 259: {34713, 32767, 65535, 34892}, 262: {32803, 34892}}
"""Tags that mark a raw file of a camera: with any value (None), or with one of these."""
MOST_TABLE = (MOST_ENTRIES + 9) * 20 + 16
"""The most bytes of a directory that we write."""
CLAUSE = "TIFF 6.0, section 2"


def opened(file: BinaryIO) -> tuple[Tiff, list[Directory]]:
    """The structure and the directories of its pages. Raises ByteFault for a file that must not be appended to."""
    tiff = open_tiff(lambda at, length: read_at(file, at, length, CLAUSE), size_of(file))
    if not tiff.big and tiff.size > 10 and tiff.read(8, 2) == b"CR":
        raise ByteFault(8, "This is a raw file of a camera, not a scan", CLAUSE)
    seen = set[int]()
    chain = tiff.following(tiff.first, seen)
    if not chain:
        raise ByteFault(4, "There is no picture in this file", CLAUSE)
    for directory in _all_directories(tiff, chain, seen):
        _look_over(tiff, directory)
    return tiff, chain


def pages_in(file: BinaryIO) -> int:
    """How many pictures stand one behind another in a TIFF, smaller ones of another (NewSubfileType, bit 0) left out.
    Raises ByteFault for a file that is none."""
    structure, chain = opened(file)
    kinds = [structure.numbers(entry) if (entry := page.get(NEW_SUBFILE_TYPE)) else () for page in chain]
    return sum(not (kind and kind[0] & 1) for kind in kinds)


def _all_directories(tiff: Tiff, chain: list[Directory], seen: set[int]) -> Iterator[Directory]:
    """Every directory: those of `chain`, and those that these point to at any depth (TIFF Supplement 1, SubIFDs)."""
    for directory in chain:
        yield directory
        inner = directory.get(SUB_IFDS)
        for at in tiff.numbers(inner) if inner is not None else ():
            yield from _all_directories(tiff, tiff.following(at, seen), seen)


def _look_over(tiff: Tiff, directory: Directory) -> None:
    """Raise ByteFault for a directory that makes the file one that must not be appended to."""
    if not directory.entries:
        raise ByteFault(directory.at, "This directory has no entries", f"{CLAUSE}, page 14")
    for tag, values in RAW_TAGS.items():
        entry = directory.get(tag)
        if entry is not None and (values is None or set(tiff.numbers(entry)) & values):
            raise ByteFault(directory.at, "This is a raw file of a camera, not a scan", CLAUSE)
    for entry in directory.entries:
        if entry.type in SIZES and entry.value_at + entry.length > tiff.size:
            raise ByteFault(entry.at, f"The value of tag {entry.tag} lies outside the file", CLAUSE)
    for at, length, kind in picture_parts(tiff, directory):
        if at + length > tiff.size:
            raise ByteFault(at, f"A {kind} of the picture ends beyond the file", f"{CLAUSE}, page 40")
        if at and not length:
            raise ByteFault(directory.at, f"A {kind} of the picture does not say its length", f"{CLAUSE}, page 40")


def picture_parts(tiff: Tiff, directory: Directory) -> Iterator[tuple[int, int, str]]:
    """(offset, length, name) of the parts of a page's picture. Raises ByteFault if their lengths are not given."""
    for offsets_tag, counts_tag, kind in RUNS:
        offsets_entry, counts_entry = directory.get(offsets_tag), directory.get(counts_tag)
        if offsets_entry is None:
            continue
        if counts_entry is None or counts_entry.count != offsets_entry.count:
            raise ByteFault(directory.at, f"The {kind}s of the picture do not say their lengths", f"{CLAUSE}, page 40")
        for at, length in zip(tiff.numbers(offsets_entry), tiff.numbers(counts_entry), strict=True):
            yield at, length, kind


def _value(tiff: Tiff, directory: Directory, tag: int) -> bytes:
    entry = directory.get(tag)
    return tiff.value(entry) if entry is not None else b""


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and sentences about texts that were cut or replaced."""
    tiff, chain = opened(file)
    main, drop = chain[0], embedding.drop_text
    root, reports = xmp_merging.captioned(_value(tiff, main, XMP_TAG), embedding)
    old_resources = b"" if drop else _value(tiff, main, RESOURCES_TAG)
    block, datasets, cuts = resources.captioned(old_resources, embedding, b"" if drop else _value(tiff, main, IIM_TAG))
    new = {XMP_TAG: (1, xmp.serialize(root)), IIM_TAG: (7, datasets)}
    if old_resources:
        new[RESOURCES_TAG] = (1, block)
    if not drop:
        new |= dict(_texts(main, embedding))
    kept = [entry for entry in main.entries if entry.tag not in new and not (drop and entry.tag in TEXTUAL)]
    end = own_tail(tiff, chain)
    start = end + -end % alignment(tiff)
    room = sum(len(value) + alignment(tiff) for _, value in new.values()) + MOST_TABLE
    if not tiff.big and start + room > 0xFFFFFFFF:
        raise ByteFault(tiff.size, "The copy would pass the 4 GiB that a TIFF may have", f"{CLAUSE}, page 13")
    kept = [entry for entry in kept if entry.tag not in {exif.GPS_IFD, *exif.GEOGRAPHY}]
    appended, directory_at = _appended(tiff, main, kept, new, start)
    header = (8, tiff.pack(directory_at, 8)) if tiff.big else (4, tiff.pack(directory_at, 4))
    changes = dict(_places_between(file, tiff, chain, end)) | dict(_patches(tiff, chain, embedding))
    patches = [(at, data) for at, data in _without_overlaps(changes) if at + len(data) <= end]
    runs = [run for page in _all_directories(tiff, chain, set()) for run in picture_parts(tiff, page)]
    for at, data in patches:
        if any(at < start + length and start < at + len(data) for start, length, _ in runs):
            raise ByteFault(at, "What is to be taken out stands in the picture", CLAUSE)
    return [*patched(0, end, [header, *patches]), bytes(start - end) + appended], [*reports, *cuts]


def _texts(main: Directory, embedding: Embedding) -> Iterator[tuple[int, tuple[int, bytes]]]:
    """(tag, (type, value)) of our texts for the text tags that the page has."""
    for tag, words in embedding.exif:
        entry = main.get(tag)
        if entry is not None and entry.type == exif.ASCII:
            yield tag, (exif.ASCII, words.encode("utf-8", "ignore") + b"\x00")


def alignment(tiff: Tiff) -> int:
    """The number that every offset is a multiple of: 2 in TIFF (page 13), 8 in BigTIFF."""
    return 8 if tiff.big else 2


def own_tail(tiff: Tiff, chain: list[Directory]) -> int:
    """The offset from which an earlier run appended; the size of the file if none did.

    An appended tail is recognised by this: it ends with the first directory, values of that directory which we write
    anew stand before it without a gap, and nothing else in the file points into it.
    """
    main = chain[0]
    if main.at + tiff.count_size + len(main.entries) * tiff.entry_size + tiff.offset_size != tiff.size:
        return tiff.size
    at = main.at
    values = [entry for entry in main.entries if entry.tag in APPENDED and entry.length > tiff.offset_size]
    for entry in sorted(values, key=lambda entry: entry.value_at, reverse=True):
        end = entry.value_at + entry.length
        if end + -end % alignment(tiff) != at:
            break
        at = entry.value_at
    spans = [
        (entry.value_at, entry.length)
        for entry in main.entries
        if entry.tag not in APPENDED and entry.value_at < main.at
    ]
    for directory in _all_directories(tiff, chain, set()):
        spans += [(start, length) for start, length, _ in picture_parts(tiff, directory)]
        if directory is not main:
            spans += [(directory.at, 2), *((entry.value_at, entry.length) for entry in directory.entries)]
    reached = any(length and start + length > at for start, length in spans)
    return tiff.size if at == main.at or reached else at


def _patches(tiff: Tiff, chain: list[Directory], embedding: Embedding) -> list[tuple[int, bytes]]:
    """The patches of `exif.patches` for every page; for a copy for outside also zero bytes over the old texts."""
    new_bytes_at: dict[int, bytes] = {}
    for directory in chain:
        page = Tiff(tiff.read, tiff.size, tiff.order, tiff.big, directory.at)
        changes = exif.patches(page, embedding, unlink_gps=directory is not chain[0], chain=False)
        new_bytes_at |= dict(exif.text_patches(page))
        new_bytes_at |= {at: new for at, new in changes if at + len(new) <= tiff.size}
        if embedding.drop_text:
            for entry in directory.entries:
                pointer = entry.tag in (exif.EXIF_IFD, exif.GPS_IFD)
                if entry.tag in TEXTUAL and not pointer and entry.value_at + entry.length <= tiff.size:
                    new_bytes_at[entry.value_at] = bytes(entry.length)
            if (exif_pointer := directory.get(exif.EXIF_IFD)) is not None:
                new_bytes_at.update(exif.emptied(tiff, exif_pointer))
    return list(new_bytes_at.items())


def _places_between(file: BinaryIO, tiff: Tiff, chain: list[Directory], end: int) -> Iterator[tuple[int, bytes]]:
    """Patches over places in what stands between the parts of the picture: XMP of old, Exif in image resources.

    The directories are seen to by themselves, and nothing is searched across one: some writers put a header of its own
    before each page, and its page's offsets, which count from the file's begin, would be read as counting from there.
    """
    parts: list[tuple[int, int]] = []
    for page in _all_directories(tiff, chain, set()):
        parts.append((page.at, tiff.count_size + len(page.entries) * tiff.entry_size + tiff.offset_size))
        parts += [(start, length) for start, length, _ in picture_parts(tiff, page)]
    at = 8  # behind the header
    for start, length in sorted(parts):
        if at < start <= end:
            yield from places_unread.patches(file, at, start)
        at = max(at, start + length)
    if at < end:
        yield from places_unread.patches(file, at, end)


def named_places(file: BinaryIO) -> list[tuple[int, bytes]]:
    """(offset in the file, spaces) over the places by their names in the IIM of every page; none of a damaged file."""
    try:
        tiff, chain = opened(file)
        entries = [
            (entry, entry.tag) for page in chain for entry in page.entries if entry.tag in (IIM_TAG, RESOURCES_TAG)
        ]
        blocks = [(entry.value_at, tag, tiff.value(entry)) for entry, tag in entries]
    except ByteFault:
        return []
    places = {IIM_TAG: iim.named_places, RESOURCES_TAG: resources.named_places}
    return [(start + at, new) for start, tag, data in blocks for at, new in places[tag](data)]


def _without_overlaps(new_bytes_at: dict[int, bytes]) -> list[tuple[int, bytes]]:
    """The patches sorted by offset, without those that lie inside a longer one."""
    patches: list[tuple[int, bytes]] = []
    for at, new in sorted(new_bytes_at.items(), key=lambda patch: (patch[0], -len(patch[1]))):
        if not patches or at >= patches[-1][0] + len(patches[-1][1]):
            patches.append((at, new))
    return patches


def _appended(
    tiff: Tiff, main: Directory, kept: Iterable[Entry], new: dict[int, tuple[int, bytes]], start: int
) -> tuple[bytes, int]:
    """The bytes to append at offset `start` (our values, then the new directory), and the offset of the directory.

    `kept` are the entries taken over from the old directory; `new` holds (type, value) by tag.
    """
    body = bytearray()
    entries: list[tuple[int, bytes]] = [(entry.tag, entry.raw) for entry in kept]
    for tag, (kind, value) in new.items():
        raw = tiff.pack(tag, 2) + tiff.pack(kind, 2) + tiff.pack(len(value), tiff.offset_size)
        if len(value) <= tiff.offset_size:
            entries.append((tag, raw + value.ljust(tiff.offset_size, b"\x00")))
            continue
        entries.append((tag, raw + tiff.pack(start + len(body), tiff.offset_size)))
        body += value + bytes(-len(value) % alignment(tiff))
    directory_at = start + len(body)
    table = b"".join(raw for _, raw in sorted(entries))
    directory = tiff.pack(len(entries), tiff.count_size) + table + tiff.pack(main.next, tiff.offset_size)
    return bytes(body) + directory, directory_at


def kept_runs(file: BinaryIO, embedding: Embedding) -> list[tuple[int, int]]:
    """(offset, length) of the runs that copy and source share: all but the header's pointer and what is patched."""
    return [piece for piece in rewrite(file, embedding)[0] if isinstance(piece, tuple)]


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """(offset, length) of the strips and tiles of every page."""
    tiff, chain = opened(file)
    return [(at, length) for directory in chain for at, length, _ in picture_parts(tiff, directory)]


def texts_of(file: BinaryIO) -> tuple[bytes, bytes, list[str], Tiff]:
    """The XMP packet and the IIM block of the first page, sentences about problems, and the structure."""
    tiff, chain = opened(file)
    image_resources, _ = resources.split(_value(tiff, chain[0], RESOURCES_TAG))
    iim_in_resources, problems = resources.iim_of(image_resources)
    return _value(tiff, chain[0], XMP_TAG), _value(tiff, chain[0], IIM_TAG) or iim_in_resources, problems, tiff
