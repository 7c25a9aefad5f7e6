"""Where a maker's note says where a picture was made: texts of two makers, overwritten where they stand.

Of the notes whose tags are published (exiv2's tables, version 0.28) none has coordinates; Panasonic's and Samsung's
have names of places. A note is left whole otherwise, as its offsets are its maker's own.
"""

from collections.abc import Iterator
from typing import NamedTuple

from boxlore.core.errors import ByteFault
from boxlore.formats.tiff_directories import Entry, Tiff


class _Note(NamedTuple):
    """A kind of note: how it begins, what its maker is called, where its directory begins in it, whether its offsets
    count from the note's own start, and the tags that name places.
    """

    head: bytes
    maker: bytes
    start: int
    own_offsets: bool
    tags: frozenset[int]


_NOTES = (
    _Note(b"Panasonic\x00\x00\x00", b"", 12, False, frozenset((0x67, 0x69, 0x6B, 0x6D, 0x6F, 0x80))),
    _Note(b"", b"samsung", 0, True, frozenset((0x30, 0x31))),
)


def place_patches(tiff: Tiff, note: Entry, maker: bytes) -> Iterator[tuple[int, bytes]]:
    """Patches of zero bytes over the names of places in a maker's note. `maker` is the text of the tag Make."""
    head = tiff.read(note.value_at, 12)
    for kind in _NOTES:
        if not head.startswith(kind.head) or not maker.lower().startswith(kind.maker):
            continue
        base = note.value_at if kind.own_offsets else 0
        inner = _from(tiff, base)
        try:
            directory = inner.loosely(note.value_at - base + kind.start)
        except ByteFault:
            continue  # it is no note of this maker
        for entry in directory.entries:
            if (
                entry.tag in kind.tags
                and 0 < entry.length <= note.length
                and entry.value_at + entry.length <= inner.size
            ):
                yield base + entry.value_at, bytes(entry.length)


def _from(tiff: Tiff, base: int) -> Tiff:
    """The structure with offsets that count from `base`."""
    return Tiff(lambda at, length: tiff.read(base + at, length), tiff.size - base, tiff.order, tiff.big, 0)
