"""TIFF directories (TIFF 6.0, section 2; BigTIFF as published by its designers), in a TIFF file or an Exif block.

One reader for both: `Tiff` gives the entries of an image file directory with where their values lie.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from boxlore.core.errors import ByteFault

SIZES: Mapping[int, int] = {
    1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 6: 1, 7: 1, 8: 2, 9: 4, 10: 8, 11: 4, 12: 8, 13: 4, 16: 8, 17: 8, 18: 8,
}  # fmt: skip
"""Bytes of one value of a type (TIFF 6.0, page 15; 16 to 18 BigTIFF)."""

MOST_ENTRIES = 4096
MOST_DIRECTORIES = 20_000
MOST_VALUE = 64 << 20
"""Bounds that no scan comes near, so that a damaged file costs neither time nor memory."""
CLAUSE = "TIFF 6.0, section 2"

ReadAt = Callable[[int, int], bytes]


@dataclass(frozen=True, slots=True)
class Entry:
    """One entry: `at` is where the entry stands, `value_at` where its value does, `length` in bytes."""

    tag: int
    type: int
    count: int
    at: int
    value_at: int
    length: int
    raw: bytes


@dataclass(frozen=True, slots=True)
class Directory:
    """One image file directory: its offset, entries in file order, the offset of the next (0 for none)."""

    at: int
    entries: tuple[Entry, ...]
    next: int

    def get(self, tag: int) -> Entry | None:
        """The entry of a tag, or None."""
        return next((entry for entry in self.entries if entry.tag == tag), None)


@dataclass(frozen=True, slots=True)
class Tiff:
    """A TIFF structure of `size` bytes; `read(offset, length)` gives its bytes."""

    read: ReadAt
    size: int
    order: str
    big: bool
    first: int

    @property
    def entry_size(self) -> int:
        return 20 if self.big else 12

    @property
    def offset_size(self) -> int:
        return 8 if self.big else 4

    @property
    def count_size(self) -> int:
        return 8 if self.big else 2

    def number(self, data: bytes) -> int:
        """An unsigned number in this file's byte order."""
        return int.from_bytes(data, "big" if self.order == "MM" else "little")

    def pack(self, value: int, length: int) -> bytes:
        """The other way."""
        return value.to_bytes(length, "big" if self.order == "MM" else "little")

    def directory(self, at: int) -> Directory:
        """The directory at an offset. Raises ByteFault for one that is none."""
        count = self.number(self._take(at, self.count_size))
        if count > MOST_ENTRIES:
            raise ByteFault(at, f"This directory claims {count} entries", CLAUSE)
        start = at + self.count_size
        table = self._take(start, count * self.entry_size + self.offset_size)
        entries = [self._entry(table, start, index) for index in range(count)]
        tags = [entry.tag for entry in entries]
        if sorted(set(tags)) != tags:
            raise ByteFault(at, "The entries of this directory are unsorted or doubled", f"{CLAUSE}, page 15")
        return Directory(at, tuple(entries), self.number(table[-self.offset_size :]))

    def _entry(self, table: bytes, start: int, index: int) -> Entry:
        raw = table[index * self.entry_size : (index + 1) * self.entry_size]
        tag, kind = self.number(raw[:2]), self.number(raw[2:4])
        count = self.number(raw[4 : 4 + self.offset_size])
        length = count * SIZES.get(kind, 1)
        at = start + index * self.entry_size
        inline = at + 4 + self.offset_size
        value_at = inline if length <= self.offset_size else self.number(raw[4 + self.offset_size :])
        return Entry(tag, kind, count, at, value_at, length, raw)

    def value(self, entry: Entry) -> bytes:
        """The bytes of an entry's value. Raises ByteFault if they lie outside, or are beyond all measure."""
        if entry.length > MOST_VALUE:
            raise ByteFault(entry.at, f"The value of tag {entry.tag} claims {entry.length} bytes", CLAUSE)
        return self._take(entry.value_at, entry.length)

    def numbers(self, entry: Entry) -> tuple[int, ...]:
        """The values of an entry of whole numbers."""
        size, data = SIZES.get(entry.type, 1), self.value(entry)
        return tuple(self.number(data[at : at + size]) for at in range(0, len(data), size))

    def chain(self) -> list[Directory]:
        """All directories in order. Raises ByteFault for a loop."""
        return self.following(self.first, set())

    def following(self, at: int, seen: set[int]) -> list[Directory]:
        """The directory at an offset and those that it leads to; `seen` remembers what must not come again."""
        found: list[Directory] = []
        entries = 0
        while at:
            if at in seen:
                raise ByteFault(at, "The directories go round in a loop", CLAUSE)
            seen.add(at)
            found.append(self.directory(at))
            entries += len(found[-1].entries)
            if len(seen) > MOST_DIRECTORIES or entries > MOST_DIRECTORIES * 20:
                raise ByteFault(at, f"There are more than {MOST_DIRECTORIES} directories", CLAUSE)
            at = found[-1].next
        return found

    def _take(self, at: int, length: int) -> bytes:
        if at < 0 or length < 0 or at + length > self.size:
            raise ByteFault(at, "This lies outside the file", CLAUSE)
        data = self.read(at, length)
        if len(data) != length:
            raise ByteFault(at + len(data), "The file ends too early", CLAUSE)
        return data


def open_tiff(read: ReadAt, size: int) -> Tiff:
    """Read the header. Raises ByteFault for what is no TIFF."""
    head = read(0, min(16, size))
    order = {b"II": "II", b"MM": "MM"}.get(head[:2], "")
    if not order or len(head) < 8:
        raise ByteFault(0, "This is no TIFF header", f"{CLAUSE}, page 13")
    plain = Tiff(read, size, order, False, 0)
    version = plain.number(head[2:4])
    if version == 42:
        return Tiff(read, size, order, False, plain.number(head[4:8]))
    if version == 43 and len(head) == 16 and plain.number(head[4:6]) == 8:
        return Tiff(read, size, order, True, plain.number(head[8:16]))
    raise ByteFault(2, f"TIFF version {version} is not known", f"{CLAUSE}, page 13")
