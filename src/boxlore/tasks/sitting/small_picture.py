"""A small picture as rows of pixels, for the terminal: where on the picture someone stands, not what they look like.

The library that decodes pictures is loaded with the first picture, beside the typing.
"""

from collections import OrderedDict
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.records.item_record import ScanFile
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.screen_previews import previews

KEEP = 24
"""Glimpses kept in memory: those just looked at, for turning back."""


@dataclass(frozen=True, slots=True)
class Glimpse:
    """`rgb` holds three bytes a pixel, row by row. Without pixels, `why` says why."""

    width: int
    height: int
    rgb: bytes
    why: str = ""


NO_PICTURE = Glimpse(0, 0, b"", "There is no scan of this photograph yet.")


@dataclass(slots=True)
class Glimpses:
    """Makes glimpses of one collection's scans and remembers the last few."""

    collection: Collection
    _kept: OrderedDict[tuple[object, ...], Glimpse] = field(default_factory=OrderedDict)

    def of(self, scan: ScanFile | None, wide: int, high: int) -> Glimpse:
        """The scan, upright, fitted into `wide` × `high` pixels; a sentence instead where it cannot be shown."""
        if scan is None:
            return NO_PICTURE
        key = _key(scan, wide, high)
        if key not in self._kept:
            self._kept[key] = self._make(self.collection.folder / scan.path, scan, wide, high)
            while len(self._kept) > KEEP:
                self._kept.popitem(last=False)
        return self._kept[key]

    def kept(self, scan: ScanFile | None, wide: int, high: int) -> Glimpse | None:
        """The same if it is remembered, else None; never touches the disk."""
        return NO_PICTURE if scan is None else self._kept.get(_key(scan, wide, high))

    def _make(self, path: Path, scan: ScanFile, wide: int, high: int) -> Glimpse:
        from boxlore.disk.pictures import small_pixels

        room = max(wide, 1), max(high, 1)
        try:
            return Glimpse(*small_pixels(path, *room, area=scan.part, turn=scan.turn, previews=previews()))
        except CouldNot as error:
            return Glimpse(0, 0, b"", str(error))


def _key(scan: ScanFile, wide: int, high: int) -> tuple[object, ...]:
    return scan.id, scan.sha256, scan.part, scan.turn, wide, high
