"""The directories of a TIFF structure (TIFF 6.0, section 2; BigTIFF as published by its designers).

A TIFF file and an Exif block have the same structure, so both are read here: `Tiff` gives the entries of each image
file directory, and for each entry the offset of its value.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from boxlore.core.errors import ByteFault

SIZES: Mapping[int, int] = {
    1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 6: 1, 7: 1, 8: 2, 9: 4, 10: 8, 11: 4, 12: 8, 13: 4, 16: 8, 17: 8, 18: 8,
}  # fmt: skip
"""Type of an entry -> size of one of its values in bytes (TIFF 6.0, page 15; types 16 to 18 are BigTIFF's)."""

MOST_ENTRIES = 4096
MOST_DIRECTORIES = 20_000
MOST_VALUE = 64 << 20
"""Limits far above any real scan. They keep a damaged file from costing much time or memory."""
CLAUSE = "TIFF 6.0, section 2"

ReadAt = Callable[[int, int], bytes]


@dataclass(frozen=True, slots=True)
class Entry:
    """One entry. `at` is its own offset, `value_at` that of its value, `length` the size of the value in bytes."""

    tag: int
    type: int
    count: int
    at: int
    value_at: int
    length: int
    raw: bytes


@dataclass(frozen=True, slots=True)
class Directory:
    """One image file directory: its offset, its entries in file order, and the offset of the next (0 for none)."""

    at: int
    entries: tuple[Entry, ...]
    next: int

    def get(self, tag: int) -> Entry | None:
        """The entry of a tag, or None."""
        return next((entry for entry in self.entries if entry.tag == tag), None)


@dataclass(frozen=True, slots=True)
class Tiff:
    """A TIFF structure of `size` bytes.

    `read(offset, length)` gives its bytes, `order` is II (least significant byte first) or MM, `big` says that it is
    a BigTIFF, and `first` is the offset of the first directory.
    """

    read: ReadAt
    size: int
    order: str
    big: bool
    first: int

    @property
    def entry_size(self) -> int:
        """The size of an entry in bytes."""
        return 20 if self.big else 12

    @property
    def offset_size(self) -> int:
        """The size in bytes of an offset, and of the count and the value field of an entry."""
        return 8 if self.big else 4

    @property
    def count_size(self) -> int:
        """The size in bytes of the number of entries in a directory."""
        return 8 if self.big else 2

    def number(self, data: bytes) -> int:
        """An unsigned number in this file's byte order."""
        return int.from_bytes(data, "big" if self.order == "MM" else "little")

    def pack(self, value: int, length: int) -> bytes:
        """`value` as `length` bytes in this file's byte order; the inverse of `number`."""
        return value.to_bytes(length, "big" if self.order == "MM" else "little")

    def directory(self, at: int) -> Directory:
        """Read the directory at offset `at`. Raises ByteFault for a damaged one.

            directory = count *entry next     (TIFF 6.0, page 14; count is 2 bytes, in BigTIFF 8)
            entry     = tag type count value  (tag and type are 2 bytes each)

        Count and value of an entry, and `next`, take 4 bytes each (in BigTIFF 8). `value` is the value itself if it
        fits, else its offset. Entries are sorted by tag, and no tag comes twice.
        """
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

    def loosely(self, at: int) -> Directory:
        """As `directory`, but passing over damage as most readers do: entries in any order and twice, a table that the
        file does not hold whole, a missing `next`, which counts as 0. Raises ByteFault where there is no table.
        """
        count = self.number(self._take(at, self.count_size))
        start, room = at + self.count_size, (self.size - at - self.count_size) // self.entry_size
        held = min(count, room, MOST_ENTRIES)
        table = self._take(start, held * self.entry_size)
        link_at = start + count * self.entry_size
        whole = link_at + self.offset_size <= self.size
        link = self.number(self._take(link_at, self.offset_size)) if whole else 0
        return Directory(at, tuple(self._entry(table, start, index) for index in range(held)), link)

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
        """The bytes of an entry's value. Raises ByteFault if they lie outside the file or exceed MOST_VALUE."""
        if entry.length > MOST_VALUE:
            raise ByteFault(entry.at, f"The value of tag {entry.tag} claims {entry.length} bytes", CLAUSE)
        return self._take(entry.value_at, entry.length)

    def numbers(self, entry: Entry) -> tuple[int, ...]:
        """The values of an entry whose type is a whole number."""
        size, data = SIZES.get(entry.type, 1), self.value(entry)
        return tuple(self.number(data[at : at + size]) for at in range(0, len(data), size))

    def following(self, at: int, seen: set[int]) -> list[Directory]:
        """The directory at offset `at` and those that follow it by their `next`; empty for offset 0.

        Each offset is added to `seen`; ByteFault is raised for one that is in `seen` already.
        """
        chain: list[Directory] = []
        entry_count = 0
        while at:
            if at in seen:
                raise ByteFault(at, "The directories go round in a loop", CLAUSE)
            seen.add(at)
            chain.append(self.directory(at))
            entry_count += len(chain[-1].entries)
            if len(seen) > MOST_DIRECTORIES or entry_count > MOST_DIRECTORIES * 20:
                raise ByteFault(at, f"There are more than {MOST_DIRECTORIES} directories", CLAUSE)
            at = chain[-1].next
        return chain

    def _take(self, at: int, length: int) -> bytes:
        if at < 0 or length < 0 or at + length > self.size:
            raise ByteFault(at, "This lies outside the file", CLAUSE)
        data = self.read(at, length)
        if len(data) != length:
            raise ByteFault(at + len(data), "The file ends too early", CLAUSE)
        return data


def open_tiff(read: ReadAt, size: int) -> Tiff:
    """Read the header of a TIFF structure. Raises ByteFault for anything else.

    header = order 42 first            (TIFF 6.0, page 13: 2, 2 and 4 bytes)
           / order 43 8 0 first        (BigTIFF: 2, 2, 2, 2 and 8 bytes)
    order  = "II" / "MM"
    """
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
