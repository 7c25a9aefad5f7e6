"""Exif (CIPA DC-008): what the file says of itself, and how little of it is changed in a copy.

The capture date and place of a scan are the scan's, not the picture's. In a copy the GPS directory is emptied
and unlinked (it is somebody's home); DateTimeOriginal becomes DateTimeDigitized, or takes the picture's own day
where that is full and sure; a text tag is rewritten only where it is present. All by patches in place, so that
no offset moves and maker notes stay whole.
"""

from collections.abc import Iterable, Iterator

from boxlore.core.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats.directory import Directory, Entry, Tiff, open_tiff

EXIF_IFD, GPS_IFD = 0x8769, 0x8825
ORIENTATION = 0x0112
ORIGINAL, DIGITIZED = 0x9003, 0x9004
TEXT_TAGS = {0x010E: "ImageDescription", 0x013B: "Artist", 0x8298: "Copyright"}

_MOVED = ((0x9003, 0x9004), (0x9011, 0x9012), (0x9291, 0x9292))
"""DateTime, OffsetTime, SubSecTime: Original and Digitized (DC-008, 4.6.5)."""

Patch = tuple[int, bytes]


def block(data: bytes) -> Tiff:
    """The TIFF structure of an Exif block (without its `Exif` mark)."""
    return open_tiff(lambda at, length: data[at : at + length], len(data))


def facts(tiff: Tiff) -> tuple[dict[str, str], int, bool]:
    """Text and dates by name, the orientation, and whether there is a place of capture."""
    found: dict[str, str] = {}
    main = tiff.directory(tiff.first)
    for tag, name in TEXT_TAGS.items():
        if (entry := main.get(tag)) is not None and entry.type == 2:
            found[name] = _text(tiff, entry)
    inner = _inner(tiff, main, EXIF_IFD)
    for tag, name in ((ORIGINAL, "DateTimeOriginal"), (DIGITIZED, "DateTimeDigitized")):
        if inner is not None and (entry := inner.get(tag)) is not None:
            found[name] = _text(tiff, entry)
    turned = main.get(ORIENTATION)
    orientation = tiff.numbers(turned)[0] if turned is not None and turned.count else 1
    return found, orientation, main.get(GPS_IFD) is not None


def _text(tiff: Tiff, entry: Entry) -> str:
    return tiff.value(entry).split(b"\x00")[0].decode("utf-8", "replace").strip()


def _inner(tiff: Tiff, main: Directory, tag: int) -> Directory | None:
    pointer = main.get(tag)
    if pointer is None or not pointer.count:
        return None
    at = tiff.numbers(pointer)[0]
    return tiff.directory(at) if 0 < at < tiff.size else None


def patches(tiff: Tiff, embedding: Embedding, *, unlink_gps: bool = True) -> list[Patch]:
    """The bytes to change: (offset in the structure, new bytes of the same length)."""
    main = tiff.directory(tiff.first)
    made = [*_without_gps(tiff, main, unlink=unlink_gps), *_dates(tiff, main, embedding.original_day)]
    for tag, words in embedding.exif:
        entry = main.get(tag)
        if entry is not None and entry.type == 2 and entry.length:
            made.append((entry.value_at, _fitted(words, entry.length)))
    return [(at, new) for at, new in made if tiff.read(at, len(new)) != new]


def _fitted(words: str, length: int) -> bytes:
    """The words in UTF-8 in just that many bytes, ended by a zero byte; XMP holds them whole."""
    value = words.encode("utf-8")[: length - 1].decode("utf-8", "ignore").encode("utf-8")
    return value.ljust(length, b"\x00")


def _without_gps(tiff: Tiff, main: Directory, *, unlink: bool) -> Iterator[Patch]:
    pointer = main.get(GPS_IFD)
    if pointer is None:
        return
    yield from emptied(tiff, pointer)
    if unlink:
        yield from _rewritten(tiff, main, {GPS_IFD}, {})


def emptied(tiff: Tiff, pointer: Entry) -> Iterator[Patch]:
    """Zero bytes over every value of a directory, and over the directory itself."""
    at = tiff.numbers(pointer)[0] if pointer.count else 0
    try:
        inner = tiff.directory(at)
    except ByteFault:
        return  # it points nowhere, so there is nothing to empty
    for entry in inner.entries:
        if entry.length > tiff.offset_size and entry.value_at + entry.length <= tiff.size:
            yield entry.value_at, bytes(entry.length)
    yield at, bytes(tiff.count_size + len(inner.entries) * tiff.entry_size)


def _dates(tiff: Tiff, main: Directory, day: str) -> Iterator[Patch]:
    inner = _inner(tiff, main, EXIF_IFD)
    if inner is None:
        return
    gone: set[int] = set()
    renamed: dict[int, int] = {}
    for original, digitized in _MOVED:
        entry = inner.get(original)
        if entry is None:
            continue
        if inner.get(digitized) is None:
            renamed[original] = digitized
        elif original == ORIGINAL and day and entry.length == 20:
            yield entry.value_at, f"{day.replace('-', ':')}   :  :  \x00".encode()
        else:
            gone.add(original)
            if entry.length > tiff.offset_size:
                yield entry.value_at, bytes(entry.length)
    yield from _rewritten(tiff, inner, gone, renamed)


def _rewritten(tiff: Tiff, where: Directory, gone: set[int], renamed: dict[int, int]) -> Iterator[Patch]:
    if not gone and not renamed:
        return
    kept = [entry for entry in where.entries if entry.tag not in gone]
    raws = [(renamed.get(entry.tag, entry.tag), entry.raw[2:]) for entry in kept]
    table = b"".join(tiff.pack(tag, 2) + rest for tag, rest in sorted(raws))
    link = tiff.pack(where.next, tiff.offset_size)
    spare = bytes((len(where.entries) - len(kept)) * tiff.entry_size)
    yield where.at, tiff.pack(len(kept), tiff.count_size) + table + link + spare


def apply(data: bytes, made: Iterable[Patch]) -> bytes:
    """The block with the patches in place."""
    out = bytearray(data)
    for at, new in made:
        out[at : at + len(new)] = new
    return bytes(out)


def only_orientation(orientation: int) -> bytes:
    """The smallest Exif block there is: the orientation and nothing else."""
    entry = b"\x12\x01\x03\x00\x01\x00\x00\x00" + orientation.to_bytes(2, "little") + b"\x00\x00"
    return b"II*\x00\x08\x00\x00\x00\x01\x00" + entry + bytes(4)
