"""A picture with numbered markers on it.

First it is in half blocks, two pixels to a cell one above the other; then, where the terminal can, it is sharp.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby, zip_longest

from rich.color import Color, ColorType
from rich.color_triplet import ColorTriplet
from rich.segment import Segment
from rich.style import Style
from textual import events
from textual.geometry import Region, Size
from textual.message import Message
from textual.strip import Strip

from boxlore.tasks.sitting.sharp_picture import Graphics, SharpPicture
from boxlore.tasks.sitting.small_picture import Glimpse
from boxlore.tui.drawing import DrawingApp, Painted, Painting, Sign

HALF = "▀"
PIN = Style(color="#16120f", bgcolor="#f2c96b", bold=True)
BELOW = 2
"""So many cells below its place a marker is written on a sharp picture: the face that it is about stays to be seen."""


@dataclass(frozen=True, slots=True)
class Pin:
    """A marker to draw: its number, and its place as x, y in 0..1 of the picture shown."""

    number: int
    x: float
    y: float
    sign: str = ""
    """Drawn instead of the number, if not empty: the cross that the arrow keys move."""


class Picture(Painted):
    """Shows a picture in the middle of its room: a `Glimpse`, and a `SharpPicture` where there is one."""

    class Touched(Message):
        """The picture was clicked at x, y in 0..1 of what is shown."""

        def __init__(self, x: float, y: float) -> None:
            super().__init__()
            self.x, self.y = x, y

    DEFAULT_CSS = "Picture { width: 1fr; height: 1fr; background: $surface; }"

    def __init__(self, id: str | None = None) -> None:
        super().__init__(id=id)
        self._glimpse: Glimpse | None = None
        self._sharp: SharpPicture | None = None
        self._pins: Sequence[Pin] = ()
        self._strips: dict[int, Strip] = {}

    @property
    def wanted(self) -> tuple[int, int]:
        """How many pixels there is room for: (width, height)."""
        return self.size.width, self.size.height * 2

    @property
    def graphics(self) -> Graphics | None:
        """What the terminal can draw beyond cells."""
        return self.app.graphics if isinstance(self.app, DrawingApp) else None

    def painting(self) -> Painting | None:
        """The sharp picture in the middle of its room on the screen, with its markers."""
        sharp, room = self._sharp, self.region
        if sharp is None or not (sharp.columns <= room.width and sharp.rows <= room.height) or not self.display:
            return None
        left, top = room.x + (room.width - sharp.columns) // 2, room.y + (room.height - sharp.rows) // 2
        signs = []
        for pin in self._pins:
            label = pin.sign or f" {pin.number} "
            column = int(pin.x * sharp.width / sharp.cell[0]) - len(label) // 2
            row = min(int(pin.y * sharp.height / sharp.cell[1]) + (0 if pin.sign else BELOW), sharp.rows - 1)
            signs.append(Sign(label, left + max(0, min(column, sharp.columns - len(label))), top + max(0, row)))
        return Painting(sharp, left, top, tuple(signs))

    def show(self, glimpse: Glimpse | None, pins: Sequence[Pin] = (), sharp: SharpPicture | None = None) -> None:
        """Draw this picture with these pins; None draws nothing, while it is being read. `sharp` is the same picture,
        if it is made already.

        Of a picture that is shown already, only the lines whose pins change are drawn again: a cross moves quickly.
        """
        before, self._glimpse, self._pins = (self._glimpse, self._pins), glimpse, pins
        sharp_before, self._sharp = self._sharp, sharp
        if self.stands_sharp or sharp is not None:
            if sharp_before != sharp or not self.stands_sharp:
                self.stand_sharp(sharp is not None)  # the cells around it are drawn anew, and then it is painted
            elif isinstance(self.app, DrawingApp):
                self.app.paint_again(self)
            return
        if glimpse is None or glimpse != before[0]:
            self._strips.clear()
            self.refresh()
            return
        changed = [pair for pair in zip_longest(before[1], pins) if pair[0] != pair[1]]
        top = (self.size.height - (glimpse.height + 1) // 2) // 2
        for y in {top + _row(pin, glimpse) for pair in changed for pin in pair if pin}:
            self._strips.pop(y, None)
            self.refresh(Region(0, y, self.size.width, 1))

    def place(self, column: int, row: int) -> tuple[float, float] | None:
        """The place in 0..1 of what is shown that a cell lies on, beyond 0..1 outside; None without a picture."""
        if (sharp := self._sharp) is not None and self.stands_sharp:
            left, top = (self.size.width - sharp.columns) // 2, (self.size.height - sharp.rows) // 2
            return (
                (column - left + 0.5) * sharp.cell[0] / sharp.width,
                (row - top + 0.5) * sharp.cell[1] / sharp.height,
            )
        glimpse = self._glimpse
        if glimpse is None or not glimpse.width:
            return None
        cells = (glimpse.height + 1) // 2
        top, left = (self.size.height - cells) // 2, (self.size.width - glimpse.width) // 2
        return (column - left + 0.5) / glimpse.width, (2 * (row - top) + 1) / glimpse.height

    def on_click(self, event: events.Click) -> None:
        if (place := self.place(event.x, event.y)) is not None and min(place) >= 0 and max(place) <= 1:
            self.post_message(self.Touched(*place))

    def stand_sharp(self, sharp: bool) -> None:
        self._strips.clear()
        super().stand_sharp(sharp)

    def notify_style_update(self) -> None:
        super().notify_style_update()
        self._strips.clear()

    def _size_updated(self, size: Size, *more: object, **further: object) -> bool:
        self._strips.clear()
        return super()._size_updated(size, *more, **further)  # type: ignore[arg-type]  # handed through as it came

    def render_line(self, y: int) -> Strip:
        if y not in self._strips:
            self._strips[y] = self._draw(y)
        return self._strips[y]

    def _draw(self, y: int) -> Strip:
        width, height = self.size.width, self.size.height
        ground = self.rich_style
        glimpse = self._glimpse
        if self.stands_sharp or glimpse is None or not glimpse.width:
            why = "" if glimpse is None or self.stands_sharp else glimpse.why
            words = why[:width].center(width) if y == height // 2 else " " * width
            return Strip([Segment(words, ground)], width)
        cells = (glimpse.height + 1) // 2
        top, left = (height - cells) // 2, (width - glimpse.width) // 2
        row = y - top
        if not 0 <= row < cells or left < 0:
            return Strip([Segment(" " * width, ground)], width)
        segments = [Segment(" " * left, ground)] if left else []
        segments += self._cells(glimpse, row, ground)
        right = width - left - glimpse.width
        return Strip([*segments, Segment(" " * right, ground)] if right else segments, width)

    def _cells(self, glimpse: Glimpse, row: int, ground: Style) -> list[Segment]:
        """A row of cells. Those side by side that look alike are one segment: it is quicker to draw and to send."""
        pinned = self._pinned(glimpse, row)
        upper, lower = 2 * row * glimpse.width * 3, (2 * row + 1) * glimpse.width * 3
        cells = [
            (
                pinned.get(at // 3, ""),
                glimpse.rgb[upper + at : upper + at + 3],
                glimpse.rgb[lower + at : lower + at + 3],
            )
            for at in range(0, 3 * glimpse.width, 3)
        ]
        segments: list[Segment] = []
        for (letter, over, under), alike in groupby(cells):
            if letter:
                style = PIN
            else:
                style = Style.from_color(_color(over), _color(under) if len(under) == 3 else ground.bgcolor)
            segments.append(Segment((letter or HALF) * len([*alike]), style))
        return segments

    def _pinned(self, glimpse: Glimpse, row: int) -> dict[int, str]:
        """The letters of the markers on this row of cells, by column."""
        letters: dict[int, str] = {}
        for pin in self._pins:
            if _row(pin, glimpse) == row:
                label = pin.sign or f" {pin.number} "
                start = max(0, min(int(pin.x * glimpse.width) - len(label) // 2, glimpse.width - len(label)))
                letters |= {start + at: letter for at, letter in enumerate(label)}
        return letters


def _color(rgb: Sequence[int]) -> Color:
    """A colour without the name that rich makes of its hex digits, which takes longer than all else of a cell."""
    return Color("", ColorType.TRUECOLOR, triplet=ColorTriplet(*rgb))


def _row(pin: Pin, glimpse: Glimpse) -> int:
    """The row of cells, from the top of the picture, on which a pin is drawn."""
    return max(0, min(int(pin.y * glimpse.height), glimpse.height - 1)) // 2
