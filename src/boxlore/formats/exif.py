"""Exif (CIPA DC-008): what is read from it, and the few values that a copy changes.

The date and place in a scan's Exif are those of the scanning, not of the picture. So in a copy
- every GPS directory is emptied and unlinked, because it gives somebody's home;
- DateTimeOriginal becomes DateTimeDigitized. Where the file has both, DateTimeOriginal takes the day of the picture
  if that is full and sure, else it is removed;
- a text tag is rewritten only where the file has it;
- a damaged directory is set right, as strict readers read nothing of it: its entries are sorted by tag, each tag comes
  once (the first is kept), and an entry whose value the block does not hold goes (DC-008, 4.6.2).

Values are patched where they stand, so that no offset moves and the maker's notes stay readable.
"""

import struct
from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import NamedTuple

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import maker_notes, places_in_texts
from boxlore.formats.tiff_directories import MOST_DIRECTORIES, SIZES, Directory, Entry, Tiff, open_tiff

EXIF_IFD, GPS_IFD, INTEROPERABILITY_IFD, SUB_IFDS = 0x8769, 0x8825, 0xA005, 0x014A
MARK = b"Exif\x00\x00"
HEADERS = (b"II*\x00", b"MM\x00*")
"""The first bytes of a block: the header of a TIFF structure in either byte order (DC-008, 4.5.2)."""
HEADER_SIZE = 8
ORIENTATION, MAKE, MAKER_NOTE, XMP = 0x0112, 0x010F, 0x927C, 700
ORIGINAL, DIGITIZED = 0x9003, 0x9004
BYTE, ASCII, UNDEFINED, DOUBLE = 1, 2, 7, 12
TEXT_TAGS = {0x010E: "ImageDescription", 0x013B: "Artist", 0x8298: "Copyright"}
MACHINE_TAGS = {0x010F: "Make", 0x0110: "Model", 0x0131: "Software"}
"""What a camera, scanner or program calls itself (DC-008, 4.6.4)."""

GEOGRAPHY = frozenset({33550, 33922, 34264, 34735, 34736, 34737, 42112})
"""Tags of GeoTIFF (OGC 19-008r4, 7.1.2) and of GDAL's metadata: where on the earth the picture lies."""

PRIVATE = frozenset({*range(32768, 33421), *range(35000, 36864), *range(42113, 42240), *range(59934, 65536)})
"""Tags that TIFF 6.0 (page 8) leaves to whoever asks for one, without the ranges of Exif, DNG and image resources."""

MOST_POINTERS = 4096
"""The most bytes of offsets in one entry; a picture has a handful of further directories."""

LAST_GPS_TAG = 0x1F
"""GPSHPositioningError (DC-008, 4.6.6), the last tag of a GPS directory."""
MOST_GPS_VALUE = 1 << 16
"""The most bytes of a value in a GPS directory; a longer one is no value of such a directory."""

_MOVED = ((0x9003, 0x9004), (0x9011, 0x9012), (0x9291, 0x9292))
"""(Original, Digitized) of the tags DateTime, OffsetTime and SubSecTime (DC-008, 4.6.5)."""

Patch = tuple[int, bytes]
"""(offset in the structure, new bytes that replace as many old ones)."""


def block(data: bytes) -> Tiff:
    """The TIFF structure of an Exif block; `data` begins behind the `Exif` mark. Raises ByteFault for anything else."""
    return open_tiff(lambda at, length: data[at : at + length], len(data))


class Facts(NamedTuple):
    """Texts and dates by tag name, the orientation (1 to 8; DC-008, 4.6.4), and whether there is a place of capture."""

    texts: dict[str, str]
    orientation: int
    has_gps: bool


def facts(tiff: Tiff) -> Facts:
    """Read the facts of an Exif block. Raises ByteFault for a damaged one."""
    texts: dict[str, str] = {}
    main = tiff.loosely(tiff.first)
    for tag, name in (TEXT_TAGS | MACHINE_TAGS).items():
        if (entry := main.get(tag)) is not None and entry.type == ASCII:
            texts[name] = _text(tiff, entry)
    exif_directory = _inner(tiff, main)
    for tag, name in ((ORIGINAL, "DateTimeOriginal"), (DIGITIZED, "DateTimeDigitized")):
        if exif_directory is not None and (entry := exif_directory.get(tag)) is not None:
            texts[name] = _text(tiff, entry)
    orientation_entry = main.get(ORIENTATION)
    orientation = tiff.numbers(orientation_entry)[0] if orientation_entry is not None and orientation_entry.count else 1
    return Facts(texts, orientation, any(inner.get(GPS_IFD) is not None for inner in all_directories(tiff)))


def _text(tiff: Tiff, entry: Entry) -> str:
    return tiff.value(entry).split(b"\x00")[0].decode("utf-8", "replace").strip()


def _inner(tiff: Tiff, main: Directory) -> Directory | None:
    """Exif's own directory, to which the main directory points, or None."""
    pointer = main.get(EXIF_IFD)
    offsets = _offsets(tiff, pointer) if pointer is not None else ()
    return next((inner for inner in all_directories(tiff, chain=False) if inner.at in offsets[:1]), None)


def _offsets(tiff: Tiff, pointer: Entry) -> tuple[int, ...]:
    """The offsets inside the block that an entry points to."""
    if not _lies_inside(tiff, pointer) or pointer.length > MOST_POINTERS:
        return ()
    return tuple(at for at in tiff.numbers(pointer) if 0 < at < tiff.size)


def all_directories(tiff: Tiff, *, chain: bool = True) -> list[Directory]:
    """The main directory, and every directory that it leads to, each once: by `chain` those that follow it, Exif's,
    those of interoperability and SubIFDs. One that is damaged beyond reading is passed over.
    """
    reached, ahead = dict[int, Directory](), [tiff.first]
    while ahead and len(reached) < MOST_DIRECTORIES:
        at = ahead.pop(0)
        if at in reached:
            continue
        try:
            directory = tiff.loosely(at)
        except ByteFault:
            if at == tiff.first:
                raise
            continue
        if at != tiff.first and not _plausible(tiff, directory):
            continue
        if any(_overlap(tiff, directory, accepted) for accepted in reached.values()):
            continue
        reached[at] = directory
        ahead += [directory.next] if chain and directory.next else []
        for entry in directory.entries:
            if entry.tag in (EXIF_IFD, INTEROPERABILITY_IFD, SUB_IFDS):
                ahead += _offsets(tiff, entry)
    return list(reached.values())


def _overlap(tiff: Tiff, directory: Directory, accepted: Directory) -> bool:
    """Whether the tables of two directories share bytes; then one of them is none."""
    first, second = sorted((directory, accepted), key=lambda table: table.at)
    return first.at + tiff.count_size + len(first.entries) * tiff.entry_size > second.at


def _plausible(tiff: Tiff, directory: Directory) -> bool:
    """Whether this is a directory and no other bytes: at least half of its entries can be."""
    sound = [entry for entry in directory.entries if entry.type in SIZES and _lies_inside(tiff, entry)]
    return bool(sound) and 2 * len(sound) >= len(directory.entries)


def patches(tiff: Tiff, embedding: Embedding, *, unlink_gps: bool = True, chain: bool = True) -> list[Patch]:
    """The patches that take out the place, set the dates and set damaged directories right; those that would change
    nothing are left out. A patch may reach a few bytes past the end of a block that is cut off.

    With `unlink_gps` the entries that point to a GPS directory go too, not only what that directory holds; with
    `chain` the directories that follow the first are looked at too.
    """
    directories = all_directories(tiff, chain=chain)
    exif_directory = _inner(tiff, directories[0])
    changes = _places(tiff, directories)
    for index, directory in enumerate(directories):
        gone, renamed = {*GEOGRAPHY, *({GPS_IFD} if unlink_gps or index else ())}, dict[int, int]()
        if exif_directory is not None and directory.at == exif_directory.at and not embedding.keeps_day:
            dates_gone, renamed, values = _dates(tiff, directory, embedding.original_day)
            gone |= dates_gone
            changes += values
        changes.append(_rewritten(tiff, directory, gone, renamed))
        if chain and directory.next in (earlier.at for earlier in directories[: index + 1]):
            changes += _unlinked(tiff, directory, directories)
    return _changing(tiff, changes)


def place_patches(tiff: Tiff) -> list[Patch]:
    """The patches that take out the place, and leave everything else. None reaches past the end."""
    directories = all_directories(tiff)
    changes = _places(tiff, directories)
    for directory in directories:
        if any(directory.get(tag) is not None for tag in (GPS_IFD, *GEOGRAPHY)):
            try:
                changes.append(_rewritten(tiff, directory, {GPS_IFD, *GEOGRAPHY}, {}))
            except ByteFault:
                continue  # the pointer stays, and points to an empty directory
    return _changing(tiff, changes)


def text_patches(tiff: Tiff) -> list[Patch]:
    """Spaces over the points that are written into texts (see `places_in_texts`), value by value, as they may touch."""
    return [
        (entry.value_at + at, new)
        for directory in all_directories(tiff)
        for entry in directory.entries
        if entry.type in (BYTE, ASCII, UNDEFINED)
        and entry.tag not in (MAKER_NOTE, XMP)
        and tiff.offset_size < entry.length <= MOST_GPS_VALUE
        if _lies_inside(tiff, entry)
        for at, new in places_in_texts.patches(tiff.value(entry), alone=entry.tag in PRIVATE)
    ] + [
        (entry.value_at, bytes(entry.length))
        for directory in all_directories(tiff)
        for entry in directory.entries
        if tiff.offset_size < entry.length <= MOST_GPS_VALUE and _lies_inside(tiff, entry)
        if entry.tag in GEOGRAPHY
        or (entry.tag in PRIVATE and entry.type == DOUBLE and _may_be_point(tiff.value(entry), tiff.order))
    ]


def _may_be_point(value: bytes, order: str) -> bool:
    """Whether two numbers beside each other may be degrees: within their bounds, and neither of them whole."""
    count = len(value) // 8
    numbers = struct.unpack(f"{'>' if order == 'MM' else '<'}{count}d", value[: count * 8])
    return any(
        max(abs(first), abs(second)) <= 180 and max(abs(first), abs(second)) >= 1 and first % 1 and second % 1
        for first, second in pairwise(numbers)
    )


def _changing(tiff: Tiff, changes: Iterable[Patch]) -> list[Patch]:
    """The patches that change something."""
    return [(at, new) for at, new in changes if at + len(new) > tiff.size or tiff.read(at, len(new)) != new]


def _places(tiff: Tiff, directories: list[Directory]) -> list[Patch]:
    """Patches over every GPS directory, and over the names of places in the maker's notes.

    In a damaged block these may seem to lie on the header or on another directory; what would overwrite one is left.
    """
    make = directories[0].get(MAKE)
    maker = tiff.value(make) if make is not None and _lies_inside(tiff, make) and make.length < MOST_POINTERS else b""
    changes: list[Patch] = []
    for directory in directories:
        for entry in directory.entries:
            if entry.tag == GPS_IFD:
                changes += emptied(tiff, entry, most_tag=LAST_GPS_TAG)
            elif entry.tag == MAKER_NOTE and entry.length > 12 and _lies_inside(tiff, entry):
                changes += maker_notes.place_patches(tiff, entry, maker)
    return [(at, new) for at, new in changes if _is_free(tiff, directories, at, len(new))]


def _is_free(tiff: Tiff, directories: list[Directory], at: int, length: int) -> bool:
    """Whether neither the header nor a directory lies in these bytes."""
    tables = [(0, HEADER_SIZE), *((inner.at, _table_end(tiff, inner)) for inner in directories)]
    return all(at + length <= start or at >= end for start, end in tables)


def _table_end(tiff: Tiff, directory: Directory) -> int:
    """Where the table ends as far as its entries can be."""
    odd = (entry.at for entry in directory.entries if entry.type not in SIZES or not _lies_inside(tiff, entry))
    start = directory.at + tiff.count_size
    return next(odd, start + len(directory.entries) * tiff.entry_size)


def is_block(tiff: Tiff) -> bool:
    """Whether these bytes, which begin like a TIFF structure, are one: its first directory can be, or leads to GPS."""
    try:
        main = tiff.loosely(tiff.first)
        return _plausible(tiff, main) or any(
            _plausible(tiff, tiff.loosely(at))
            for entry in main.entries
            if entry.tag == GPS_IFD
            for at in _offsets(tiff, entry)
        )
    except ByteFault:
        return False


def captioned(data: bytes, embedding: Embedding, most: int = 1 << 30) -> bytes:
    """The block with its place and dates patched, and with our texts in the text tags that it has.

    A text longer than the old one is appended to the block, so that no offset moves. If the block would grow past
    `most` bytes, the text is cut to the room of the old one instead; the XMP packet holds it whole.
    """
    if embedding.only_place:
        return apply(data, place_patches(block(data)))
    written = bytearray(data)
    for tag, words in embedding.exif:
        tiff = block(bytes(written))
        entry = tiff.loosely(tiff.first).get(tag)
        if entry is None or entry.type != ASCII or not entry.length:
            continue
        encoded = words.encode("utf-8", "ignore") + b"\x00"
        behind = len(written) + len(written) % 2
        inline = entry.length <= tiff.offset_size
        free = inline or _is_free(tiff, all_directories(tiff), entry.value_at, entry.length)
        room = entry.length if free and _lies_inside(tiff, entry) else 0
        if room and (len(encoded) <= room or behind + len(encoded) > most):
            written[entry.value_at : entry.value_at + entry.length] = fitted(words, entry.length)
        elif behind + len(encoded) <= most:
            written += b"\x00" * (behind - len(written)) + encoded
            written[entry.at + 4 : entry.at + 12] = tiff.pack(len(encoded), 4) + tiff.pack(behind, 4)
    return apply(bytes(written), patches(block(bytes(written)), embedding))


def fitted(words: str, length: int) -> bytes:
    """The words in UTF-8, cut between two characters or filled with zero bytes to `length`; the last byte is zero."""
    value = words.encode("utf-8", "ignore")[: length - 1].decode("utf-8", "ignore").encode("utf-8")
    return value.ljust(length, b"\x00")


def emptied(tiff: Tiff, pointer: Entry, *, most_tag: int = 0xFFFF) -> Iterator[Patch]:
    """Patches that overwrite with zero bytes the directory that `pointer` points to, and every value of it.

    At least half of its entries can be, with tags up to `most_tag`; else these are other bytes, and are left.
    """
    offsets = _offsets(tiff, pointer)
    try:
        inner = tiff.loosely(offsets[0]) if offsets else None
    except ByteFault:
        return  # it points nowhere, so there is nothing to empty
    sound = [
        entry
        for entry in (inner.entries if inner is not None else ())
        if entry.tag <= most_tag and entry.type in SIZES and _lies_inside(tiff, entry)
    ]
    if inner is None or not sound or 2 * len(sound) < len(inner.entries):
        return
    for entry in sound:
        if tiff.offset_size < entry.length <= MOST_GPS_VALUE:
            yield entry.value_at, bytes(entry.length)
    yield inner.at, bytes(sound[-1].at + tiff.entry_size - inner.at)


def _dates(tiff: Tiff, exif_directory: Directory, day: str) -> tuple[set[int], dict[int, int], list[Patch]]:
    """What the dates come to, as the module's docstring says: tags that go, tags that are renamed, new values.

    `day` is yyyy-mm-dd, or empty where it is not sure.
    """
    gone, renamed, values = set[int](), dict[int, int](), list[Patch]()
    for original, digitized in _MOVED:
        entry = exif_directory.get(original)
        if entry is None:
            continue
        if exif_directory.get(digitized) is None:
            renamed[original] = digitized
        elif original == ORIGINAL and day and entry.length == 20 and _lies_inside(tiff, entry):
            values.append((entry.value_at, f"{day.replace('-', ':')}   :  :  \x00".encode()))
        else:
            gone.add(original)
            if entry.length > tiff.offset_size and _lies_inside(tiff, entry):
                values.append((entry.value_at, bytes(entry.length)))
    return gone, renamed, values


def _lies_inside(tiff: Tiff, entry: Entry) -> bool:
    """Whether the value lies inside the block. In a damaged entry its offset and length can be anything."""
    return entry.value_at + entry.length <= tiff.size


def _rewritten(tiff: Tiff, directory: Directory, gone: set[int], renamed: dict[int, int]) -> Patch:
    """A patch for the whole directory: without the tags `gone`, with tags renamed, sorted by tag, each tag once.

    The bytes behind the last entry are left: where a writer forgot the link, a value stands there already. Raises
    ByteFault where the directory must change and values stand in its midst.
    """
    raw_by_tag: dict[int, bytes] = {}
    for entry in directory.entries:
        if entry.tag not in gone and (raw := _held(tiff, entry)):
            tag = renamed.get(entry.tag, entry.tag)
            raw_by_tag.setdefault(tag, tiff.pack(tag, 2) + raw[2:])
    table = tiff.pack(len(raw_by_tag), tiff.count_size) + b"".join(raw for _, raw in sorted(raw_by_tag.items()))
    fewer = len(directory.entries) - len(raw_by_tag)
    ours = sum(entry.tag in gone for entry in directory.entries)
    link = tiff.pack(directory.next, tiff.offset_size) if fewer else b""
    written = table + (link.ljust(fewer * tiff.entry_size, b"\x00") if fewer == ours else link)
    end = directory.at + tiff.count_size + len(directory.entries) * tiff.entry_size
    if tiff.read(directory.at, len(written)) != written and any(
        entry.length > tiff.offset_size and directory.at < entry.value_at + entry.length and entry.value_at < end
        for entry in directory.entries
        if _lies_inside(tiff, entry)
    ):
        raise ByteFault(directory.at, "Values stand in the midst of this directory", "DC-008, 4.6.2")
    return directory.at, written


def _unlinked(tiff: Tiff, directory: Directory, directories: Iterable[Directory]) -> Iterator[Patch]:
    """A patch that ends the chain behind a directory whose link goes back, unless a value stands in its place."""
    at = directory.at + tiff.count_size + len(directory.entries) * tiff.entry_size
    end = at + tiff.offset_size
    values = [(entry.value_at, entry.value_at + entry.length) for inner in directories for entry in inner.entries]
    if all(start >= end or stop <= at for start, stop in values):
        yield at, bytes(tiff.offset_size)


def _held(tiff: Tiff, entry: Entry) -> bytes:
    """The entry as the block holds it: a maker's note without the end that is missing; empty if it has no value."""
    if _lies_inside(tiff, entry):
        return entry.raw
    left = tiff.size - entry.value_at
    if entry.type != UNDEFINED or left <= tiff.offset_size:
        return b""
    return entry.raw[:4] + tiff.pack(left, tiff.offset_size) + entry.raw[4 + tiff.offset_size :]


def faults(tiff: Tiff) -> list[str]:
    """Sentences about what a strict reader would refuse in the Exif of a copy, or a place of capture left in it.

    The link behind the last entry may be missing, as there are writers that forget it, and readers do without.
    """
    problems: list[str] = []
    for directory in all_directories(tiff):
        tags = [entry.tag for entry in directory.entries]
        count = tiff.number(tiff.read(directory.at, tiff.count_size))
        if count != len(tags):
            problems.append(f"The Exif is damaged: A directory claims {count} entries and has {len(tags)}.")
        if sorted(set(tags)) != tags:
            problems.append("The Exif is damaged: The entries of a directory are unsorted or doubled.")
        if GPS_IFD in tags:
            problems.append("The Exif says where the file was made.")
        if not all(_lies_inside(tiff, entry) for entry in directory.entries if entry.type in SIZES):
            problems.append("The Exif has a value that lies outside of it.")
    return problems


def apply(data: bytes, changes: Iterable[Patch]) -> bytes:
    """The block with the patches put in."""
    written = bytearray(data)
    for offset, new in changes:
        written[offset : offset + len(new)] = new
    return bytes(written)


LOOKS = (ORIENTATION, 0x011A, 0x011B, 0x0128)
"""Orientation, horizontal and vertical resolution and its unit: how to show a picture. They tell nothing of anyone."""


def only_looks(data: bytes) -> bytes:
    """A new Exif block with orientation and resolution alone; empty if the block has neither or is damaged."""
    try:
        tiff = block(data)
        main = tiff.loosely(tiff.first)
        looks = [(entry, tiff.value(entry)) for entry in main.entries if entry.tag in LOOKS and 0 < entry.length <= 8]
    except ByteFault:
        return b""
    if not looks:
        return b""
    body, values_at = b"", 8 + 2 + 12 * len(looks) + 4
    table = b""
    for entry, value in looks:
        inline = value.ljust(4, b"\x00") if len(value) <= 4 else tiff.pack(values_at + len(body), 4)
        body += value if len(value) > 4 else b""
        table += tiff.pack(entry.tag, 2) + tiff.pack(entry.type, 2) + tiff.pack(entry.count, 4) + inline
    return data[:4] + tiff.pack(8, 4) + tiff.pack(len(looks), 2) + table + bytes(4) + body
