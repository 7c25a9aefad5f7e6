"""The part of a picture that is shown large: closer, farther, and moved along.

All places are x, y in 0..1 of the whole picture as it is seen.
"""

from dataclasses import replace
from typing import NamedTuple

from boxlore.core.records.item_record import ScanFile
from boxlore.core.records.marker_positions import part_of

CLOSEST = 1 / 16
"""The narrowest window, as a part of the picture's width."""


class Window(NamedTuple):
    """What is shown of a picture, in 0..1 of it; all of it at first."""

    left: float = 0.0
    top: float = 0.0
    wide: float = 1.0
    high: float = 1.0

    @property
    def middle(self) -> tuple[float, float]:
        """The place in the middle of what is shown."""
        return self.place(0.5, 0.5)

    def place(self, x: float, y: float) -> tuple[float, float]:
        """A place in 0..1 of what is shown, as one of the whole picture."""
        return self.left + x * self.wide, self.top + y * self.high

    def seen(self, x: float, y: float) -> tuple[float, float]:
        """A place of the picture in 0..1 of what is shown; beyond it, outside. The other way round."""
        return (x - self.left) / self.wide, (y - self.top) / self.high

    def around(self, x: float, y: float, wide: float) -> "Window":
        """The window of that width around a place, no closer than CLOSEST and no farther than the whole picture."""
        wide = min(max(wide, CLOSEST), 1.0)
        return Window(x - wide / 2, y - wide / 2, wide, wide)._on_picture()

    def reaching(self, x: float, y: float) -> "Window":
        """The window moved, if the place is outside it, so far that it is inside."""
        left, top = min(max(self.left, x - self.wide), x), min(max(self.top, y - self.high), y)
        return self._replace(left=left, top=top)._on_picture()

    def _on_picture(self) -> "Window":
        left, top = min(max(self.left, 0.0), 1.0 - self.wide), min(max(self.top, 0.0), 1.0 - self.high)
        return self._replace(left=left, top=top)

    def of(self, scan: ScanFile, turn: int) -> ScanFile:
        """The scan narrowed to what is shown (`turn` as in `marker_positions`), so that only that part is read."""
        if self == WHOLE:
            return scan
        part = part_of(scan.part, self, turn)
        return replace(scan, area=part[:4], corners=part[4:])


WHOLE = Window()
"""The window that shows the whole picture."""
