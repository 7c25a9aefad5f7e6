"""Exif (CIPA DC-008): what is read from it, and the few values that a copy changes.

The date and place in a scan's Exif are those of the scanning, not of the picture. So in a copy
- the GPS directory is emptied and unlinked, because it gives somebody's home;
- DateTimeOriginal becomes DateTimeDigitized. Where the file has both, DateTimeOriginal takes the day of the picture
  if that is full and sure, else it is removed;
- a text tag is rewritten only where the file has it.

Values are patched where they stand, so that no offset moves and the maker's notes stay readable.
"""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats.directory import Directory, Entry, Tiff, open_tiff

EXIF_IFD, GPS_IFD = 0x8769, 0x8825
ORIENTATION = 0x0112
ORIGINAL, DIGITIZED = 0x9003, 0x9004
ASCII = 2
TEXT_TAGS = {0x010E: "ImageDescription", 0x013B: "Artist", 0x8298: "Copyright"}

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
    main = tiff.directory(tiff.first)
    for tag, name in TEXT_TAGS.items():
        if (entry := main.get(tag)) is not None and entry.type == ASCII:
            texts[name] = _text(tiff, entry)
    exif_directory = _inner(tiff, main, EXIF_IFD)
    for tag, name in ((ORIGINAL, "DateTimeOriginal"), (DIGITIZED, "DateTimeDigitized")):
        if exif_directory is not None and (entry := exif_directory.get(tag)) is not None:
            texts[name] = _text(tiff, entry)
    orientation_entry = main.get(ORIENTATION)
    orientation = tiff.numbers(orientation_entry)[0] if orientation_entry is not None and orientation_entry.count else 1
    return Facts(texts, orientation, main.get(GPS_IFD) is not None)


def _text(tiff: Tiff, entry: Entry) -> str:
    return tiff.value(entry).split(b"\x00")[0].decode("utf-8", "replace").strip()


def _inner(tiff: Tiff, main: Directory, tag: int) -> Directory | None:
    """The directory that an entry of the main directory points to, or None."""
    pointer = main.get(tag)
    if pointer is None or not pointer.count:
        return None
    offset = tiff.numbers(pointer)[0]
    return tiff.directory(offset) if 0 < offset < tiff.size else None


def patches(tiff: Tiff, embedding: Embedding, *, unlink_gps: bool = True) -> list[Patch]:
    """The patches that take out the place and set the dates; those that would change nothing are left out.

    With `unlink_gps` the entry that points to the GPS directory goes too, not only what that directory holds.
    """
    main = tiff.directory(tiff.first)
    changes = [*_without_gps(tiff, main, unlink=unlink_gps), *_dates(tiff, main, embedding.original_day)]
    return [(offset, new) for offset, new in changes if tiff.read(offset, len(new)) != new]


def captioned(data: bytes, embedding: Embedding, most: int = 1 << 30) -> bytes:
    """The block with its place and dates patched, and with our texts in the text tags that it has.

    A text longer than the old one is appended to the block, so that no offset moves. If the block would grow past
    `most` bytes, the text is cut to the room of the old one instead; the XMP packet holds it whole.
    """
    written = bytearray(apply(data, patches(block(data), embedding)))
    for tag, words in embedding.exif:
        tiff = block(bytes(written))
        entry = tiff.directory(tiff.first).get(tag)
        if entry is None or entry.type != ASCII or not entry.length:
            continue
        encoded = words.encode("utf-8", "ignore") + b"\x00"
        behind = len(written) + len(written) % 2
        room = entry.length if _lies_inside(tiff, entry) else 0
        if room and (len(encoded) <= room or behind + len(encoded) > most):
            written[entry.value_at : entry.value_at + entry.length] = fitted(words, entry.length)
        elif behind + len(encoded) <= most:
            written += b"\x00" * (behind - len(written)) + encoded
            written[entry.at + 4 : entry.at + 12] = tiff.pack(len(encoded), 4) + tiff.pack(behind, 4)
    return bytes(written)


def fitted(words: str, length: int) -> bytes:
    """The words in UTF-8, cut between two characters or filled with zero bytes to `length`; the last byte is zero."""
    value = words.encode("utf-8", "ignore")[: length - 1].decode("utf-8", "ignore").encode("utf-8")
    return value.ljust(length, b"\x00")


def _without_gps(tiff: Tiff, main: Directory, *, unlink: bool) -> Iterator[Patch]:
    pointer = main.get(GPS_IFD)
    if pointer is None:
        return
    yield from emptied(tiff, pointer)
    if unlink:
        yield from _rewritten(tiff, main, {GPS_IFD}, {})


def emptied(tiff: Tiff, pointer: Entry) -> Iterator[Patch]:
    """Patches that overwrite with zero bytes the directory that `pointer` points to, and every value of it."""
    offset = tiff.numbers(pointer)[0] if pointer.count else 0
    try:
        inner = tiff.directory(offset)
    except ByteFault:
        return  # it points nowhere, so there is nothing to empty
    for entry in inner.entries:
        if entry.length > tiff.offset_size and _lies_inside(tiff, entry):
            yield entry.value_at, bytes(entry.length)
    yield offset, bytes(tiff.count_size + len(inner.entries) * tiff.entry_size)


def _dates(tiff: Tiff, main: Directory, day: str) -> Iterator[Patch]:
    """Patches for the dates as the module's docstring says. `day` is yyyy-mm-dd, or empty where it is not sure."""
    exif_directory = _inner(tiff, main, EXIF_IFD)
    if exif_directory is None:
        return
    gone: set[int] = set()
    renamed: dict[int, int] = {}
    for original, digitized in _MOVED:
        entry = exif_directory.get(original)
        if entry is None:
            continue
        if exif_directory.get(digitized) is None:
            renamed[original] = digitized
        elif original == ORIGINAL and day and entry.length == 20 and _lies_inside(tiff, entry):
            yield entry.value_at, f"{day.replace('-', ':')}   :  :  \x00".encode()
        else:
            gone.add(original)
            if entry.length > tiff.offset_size and _lies_inside(tiff, entry):
                yield entry.value_at, bytes(entry.length)
    yield from _rewritten(tiff, exif_directory, gone, renamed)


def _lies_inside(tiff: Tiff, entry: Entry) -> bool:
    """Whether the value lies inside the block. In a damaged entry its offset and length can be anything."""
    return entry.value_at + entry.length <= tiff.size


def _rewritten(tiff: Tiff, directory: Directory, gone: set[int], renamed: dict[int, int]) -> Iterator[Patch]:
    """A patch for the whole directory: without the tags `gone`, with tags renamed, and sorted again by tag."""
    if not gone and not renamed:
        return
    kept = [entry for entry in directory.entries if entry.tag not in gone]
    raws = [(renamed.get(entry.tag, entry.tag), entry.raw[2:]) for entry in kept]
    table = b"".join(tiff.pack(tag, 2) + behind_tag for tag, behind_tag in sorted(raws))
    link = tiff.pack(directory.next, tiff.offset_size)
    spare = bytes((len(directory.entries) - len(kept)) * tiff.entry_size)
    yield directory.at, tiff.pack(len(kept), tiff.count_size) + table + link + spare


def apply(data: bytes, changes: Iterable[Patch]) -> bytes:
    """The block with the patches put in."""
    written = bytearray(data)
    for offset, new in changes:
        written[offset : offset + len(new)] = new
    return bytes(written)


_LOOKS = (ORIENTATION, 0x011A, 0x011B, 0x0128)
"""Orientation, horizontal and vertical resolution and its unit: how to show a picture. They tell nothing of anyone."""


def only_looks(data: bytes) -> bytes:
    """A new Exif block with orientation and resolution alone; empty if the block has neither or is damaged."""
    try:
        tiff = block(data)
        main = tiff.directory(tiff.first)
        looks = [(entry, tiff.value(entry)) for entry in main.entries if entry.tag in _LOOKS and 0 < entry.length <= 8]
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
