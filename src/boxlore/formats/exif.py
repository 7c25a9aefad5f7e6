"""Exif (CIPA DC-008): what the file says of itself, and how little of it is changed in a copy.

The capture date and place of a scan are the scan's, not the picture's. In a copy the GPS directory is emptied
and unlinked (it is somebody's home); DateTimeOriginal becomes DateTimeDigitized, or takes the picture's own day
where that is full and sure; a text tag is rewritten only where it is present. All by patches in place, so that
no offset moves and maker notes stay whole.
"""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from boxlore.core.crosswalk.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats.directory import Directory, Entry, Tiff, open_tiff

EXIF_IFD, GPS_IFD = 0x8769, 0x8825
ORIENTATION = 0x0112
ORIGINAL, DIGITIZED = 0x9003, 0x9004
ASCII = 2
TEXT_TAGS = {0x010E: "ImageDescription", 0x013B: "Artist", 0x8298: "Copyright"}

_MOVED = ((0x9003, 0x9004), (0x9011, 0x9012), (0x9291, 0x9292))
"""DateTime, OffsetTime, SubSecTime: Original and Digitized (DC-008, 4.6.5)."""

Patch = tuple[int, bytes]


def block(data: bytes) -> Tiff:
    """The TIFF structure of an Exif block (without its `Exif` mark)."""
    return open_tiff(lambda at, length: data[at : at + length], len(data))


class Facts(NamedTuple):
    """Text and dates by name, the orientation, and whether there is a place of capture."""

    texts: dict[str, str]
    orientation: int
    has_gps: bool


def facts(tiff: Tiff) -> Facts:
    """What is read out of an Exif block."""
    found: dict[str, str] = {}
    main = tiff.directory(tiff.first)
    for tag, name in TEXT_TAGS.items():
        if (entry := main.get(tag)) is not None and entry.type == ASCII:
            found[name] = _text(tiff, entry)
    inner = _inner(tiff, main, EXIF_IFD)
    for tag, name in ((ORIGINAL, "DateTimeOriginal"), (DIGITIZED, "DateTimeDigitized")):
        if inner is not None and (entry := inner.get(tag)) is not None:
            found[name] = _text(tiff, entry)
    turned = main.get(ORIENTATION)
    orientation = tiff.numbers(turned)[0] if turned is not None and turned.count else 1
    return Facts(found, orientation, main.get(GPS_IFD) is not None)


def _text(tiff: Tiff, entry: Entry) -> str:
    return tiff.value(entry).split(b"\x00")[0].decode("utf-8", "replace").strip()


def _inner(tiff: Tiff, main: Directory, tag: int) -> Directory | None:
    pointer = main.get(tag)
    if pointer is None or not pointer.count:
        return None
    at = tiff.numbers(pointer)[0]
    return tiff.directory(at) if 0 < at < tiff.size else None


def patches(tiff: Tiff, embedding: Embedding, *, unlink_gps: bool = True) -> list[Patch]:
    """What is emptied, moved or re-dated in place: (offset in the structure, new bytes of the same length)."""
    main = tiff.directory(tiff.first)
    made = [*_without_gps(tiff, main, unlink=unlink_gps), *_dates(tiff, main, embedding.original_day)]
    return [(at, new) for at, new in made if tiff.read(at, len(new)) != new]


def captioned(data: bytes, embedding: Embedding, most: int = 1 << 30) -> bytes:
    """The block with its dates and place seen to, and our text where a text tag is present.

    A text longer than the one there was goes behind everything, so that no offset moves; if the block would grow
    past `most` bytes, it is cut to the room there is (XMP holds it whole).
    """
    out = bytearray(apply(data, patches(block(data), embedding)))
    for tag, words in embedding.exif:
        tiff = block(bytes(out))
        entry = tiff.directory(tiff.first).get(tag)
        if entry is None or entry.type != ASCII or not entry.length:
            continue
        value = words.encode("utf-8", "ignore") + b"\x00"
        place = len(out) + len(out) % 2
        room = entry.length if _lies_inside(tiff, entry) else 0
        if room and (len(value) <= room or place + len(value) > most):
            out[entry.value_at : entry.value_at + entry.length] = fitted(words, entry.length)
        elif place + len(value) <= most:
            out += b"\x00" * (place - len(out)) + value
            out[entry.at + 4 : entry.at + 12] = tiff.pack(len(value), 4) + tiff.pack(place, 4)
    return bytes(out)


def fitted(words: str, length: int) -> bytes:
    """The words in UTF-8 in just that many bytes, ended by a zero byte; XMP holds them whole."""
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
    """Zero bytes over every value of a directory, and over the directory itself."""
    at = tiff.numbers(pointer)[0] if pointer.count else 0
    try:
        inner = tiff.directory(at)
    except ByteFault:
        return  # it points nowhere, so there is nothing to empty
    for entry in inner.entries:
        if entry.length > tiff.offset_size and _lies_inside(tiff, entry):
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
        elif original == ORIGINAL and day and entry.length == 20 and _lies_inside(tiff, entry):
            yield entry.value_at, f"{day.replace('-', ':')}   :  :  \x00".encode()
        else:
            gone.add(original)
            if entry.length > tiff.offset_size and _lies_inside(tiff, entry):
                yield entry.value_at, bytes(entry.length)
    yield from _rewritten(tiff, inner, gone, renamed)


def _lies_inside(tiff: Tiff, entry: Entry) -> bool:
    """Whether the value is in the block; a damaged entry may claim to be anywhere, and of any length."""
    return entry.value_at + entry.length <= tiff.size


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


_LOOKS = (ORIENTATION, 0x011A, 0x011B, 0x0128)
"""Orientation, resolution across and down, and its unit: how a picture is shown, and nothing about anyone."""


def only_looks(data: bytes) -> bytes:
    """The smallest Exif block that shows the picture the same: orientation and resolution; no bytes if it has none."""
    try:
        tiff = block(data)
        main = tiff.directory(tiff.first)
        kept = [(one, tiff.value(one)) for one in main.entries if one.tag in _LOOKS and 0 < one.length <= 8]
    except ByteFault:
        return b""
    if not kept:
        return b""
    body, place = b"", 8 + 2 + 12 * len(kept) + 4
    table = b""
    for one, value in kept:
        inline = value.ljust(4, b"\x00") if len(value) <= 4 else tiff.pack(place + len(body), 4)
        body += value if len(value) > 4 else b""
        table += tiff.pack(one.tag, 2) + tiff.pack(one.type, 2) + tiff.pack(one.count, 4) + inline
    return data[:4] + tiff.pack(8, 4) + tiff.pack(len(kept), 2) + table + bytes(4) + body
