"""A picture as sharp as the terminal can show it, made beside the typing: decoded, fitted, and written in its language.

Which languages there are, and how a terminal is asked, is `tui/terminal_answers`. What is not drawn sharp is a
`small_picture.Glimpse`, two pixels to a cell.
"""

import sys
from collections import OrderedDict
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import count
from threading import Lock

from boxlore.core.errors import CouldNot
from boxlore.core.records.item_record import ScanFile
from boxlore.formats.inline_pictures import iterm, kitty_forgotten, kitty_put, kitty_sent, kitty_taken_away
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.screen_previews import previews

KEEP = 6
"""Sharp pictures kept in memory: about half a megabyte each."""
COLOURS = 64
"""Of a sixel picture at most: enough for a photograph, and a third of the time that 256 take (measured)."""
MOST_SIXELS = 800_000
"""Pixels of a sixel picture at most: it is made in less than a second (measured)."""
MOST_PIXELS = 4_000_000
"""Pixels of any other."""


class Language(StrEnum):
    """How a terminal wants to be told a picture."""

    KITTY = "kitty"
    SIXEL = "sixel"
    ITERM = "iterm"


@dataclass(frozen=True, slots=True)
class Graphics:
    """What a terminal can draw: the language, the size of a cell in pixels, and for sixels how many colours and the
    largest picture (0 by 0: not said)."""

    language: Language
    cell: tuple[int, int]
    colours: int = COLOURS
    largest: tuple[int, int] = (0, 0)


@dataclass(frozen=True, slots=True)
class SharpPicture:
    """A picture of so many pixels. `sequence` draws it at the cursor; in kitty's language it only sends it, and
    `number` is the picture's there. Equal are pictures of one number."""

    number: int
    width: int
    height: int
    cell: tuple[int, int]
    language: Language
    sequence: str = field(compare=False, repr=False)

    @property
    def columns(self) -> int:
        """How many cells it is wide."""
        return -(-self.width // self.cell[0])

    @property
    def rows(self) -> int:
        """How many cells it is high."""
        return -(-self.height // self.cell[1])


@dataclass(slots=True)
class SharpPictures:
    """Makes sharp pictures of one collection's scans and remembers the last few."""

    collection: Collection
    _kept: OrderedDict[tuple[object, ...], SharpPicture | None] = field(default_factory=OrderedDict)
    _numbers: "count[int]" = field(default_factory=lambda: count(1))
    _lock: Lock = field(default_factory=Lock)
    """One is made at a time: who asks for it meanwhile waits, and gets the same."""

    def of(self, scan: ScanFile, graphics: Graphics, columns: int, rows: int) -> SharpPicture | None:
        """The scan, upright, fitted into so many cells; None where it cannot be shown: its glimpse says why."""
        key = _key(scan, graphics, columns, rows)
        with self._lock:
            if key not in self._kept:
                self._kept[key] = self._make(scan, graphics, columns, rows)
                while len(self._kept) > KEEP:
                    self._kept.popitem(last=False)
            return self._kept[key]

    def kept(self, scan: ScanFile | None, graphics: Graphics | None, columns: int, rows: int) -> SharpPicture | None:
        """The same if it is remembered, else None; never touches the disk."""
        return None if scan is None or graphics is None else self._kept.get(_key(scan, graphics, columns, rows))

    def _make(self, scan: ScanFile, graphics: Graphics, columns: int, rows: int) -> SharpPicture | None:
        from boxlore.disk.pictures import small_pixels

        room = pixels_of(graphics, columns, rows)
        try:
            path = self.collection.folder / scan.path
            width, height, rgb = small_pixels(path, *room, area=scan.part, turn=scan.turn, previews=previews())
        except CouldNot:
            return None
        number = next(self._numbers)
        with _in_small_turns():
            sequence = _told(graphics, number, width, height, rgb)
        return SharpPicture(number, width, height, graphics.cell, graphics.language, sequence)


@contextmanager
def _in_small_turns() -> Iterator[None]:
    """Context: Python's threads take turns ten times as often, so that a key does not wait for a picture."""
    usual = sys.getswitchinterval()
    sys.setswitchinterval(usual / 10)
    try:
        yield
    finally:
        sys.setswitchinterval(usual)


def pixels_of(graphics: Graphics, columns: int, rows: int) -> tuple[int, int]:
    """Width and height in pixels of so many cells, lessened in proportion to what the terminal and the time allow."""
    wide, high = max(columns, 1) * graphics.cell[0], max(rows, 1) * graphics.cell[1]
    most = MOST_SIXELS if graphics.language is Language.SIXEL else MOST_PIXELS
    scale = min(1.0, (most / (wide * high)) ** 0.5)
    wide, high = int(wide * scale), int(high * scale)
    largest_wide, largest_high = graphics.largest
    return max(1, min(wide, largest_wide or wide)), max(1, min(high, largest_high or high))


def _told(graphics: Graphics, number: int, width: int, height: int, rgb: bytes) -> str:
    from boxlore.disk.terminal_pictures import as_png, in_colours

    if graphics.language is Language.SIXEL:
        from boxlore.formats.sixel import encode

        indexes, palette = in_colours(width, height, rgb, min(max(graphics.colours, 2), COLOURS))
        return encode(width, height, indexes, palette).decode("ascii")
    png = as_png(width, height, rgb)
    if graphics.language is Language.KITTY:
        return kitty_sent(number, png)
    cells = -(-width // graphics.cell[0]), -(-height // graphics.cell[1])
    return iterm(png, *cells)


def marker_sent(number: int, sign: str, cell: tuple[int, int]) -> str:
    """A marker's sign as a picture of its own, in kitty's language: letters would lie below the picture there."""
    from boxlore.disk.terminal_pictures import sign_png

    shown = sign.strip() if sign.isascii() else "+"
    return kitty_sent(number, sign_png(shown, cell[0] * len(sign), cell[1]))


def taken_away(number: int = 0) -> str:
    """Takes all pictures off the screen, in kitty's language, and lets the terminal forget the one of this number."""
    return kitty_taken_away() + (kitty_forgotten(number) if number else "")


def all_forgotten() -> str:
    """Takes all pictures off the screen, and lets the terminal forget them, in kitty's language."""
    return kitty_taken_away(forget=True)


def put(number: int, *, above: int = 0) -> str:
    """Shows a picture that was sent, at the cursor, in kitty's language."""
    return kitty_put(number, above=above)


def _key(scan: ScanFile, graphics: Graphics, columns: int, rows: int) -> tuple[object, ...]:
    return scan.id, scan.sha256, scan.part, scan.turn, graphics, columns, rows
