"""A picture with outlines drawn over it, whose corners the mouse takes and moves."""

from collections.abc import Iterable, Sequence

from textual import events
from textual.message import Message

from boxlore.tasks.sitting.small_picture import Glimpse
from boxlore.tui.widgets.picture import Picture

Place = tuple[float, float]
"""x, y in 0..1 of what is shown; beyond it, outside."""
Stroke = tuple[Place, Place, tuple[int, int, int]]
"""A straight line from a place to another, and its colour."""


class OutlinePicture(Picture):
    """The mouse says where it was pressed, dragged and let go, instead of where it clicked."""

    DEFAULT_CSS = "OutlinePicture { width: 1fr; height: 1fr; background: $surface; }"

    class Grabbed(Message):
        """The mouse was pressed at x, y, and a cell there is so large."""

        def __init__(self, x: float, y: float, cell: Place) -> None:
            super().__init__()
            self.x, self.y, self.cell = x, y, cell

    class Dragged(Message):
        """The pressed mouse is at x, y; `begun` unless that is its first movement."""

        def __init__(self, x: float, y: float, *, begun: bool) -> None:
            super().__init__()
            self.x, self.y, self.begun = x, y, begun

    _pressed = False
    _moved = False

    def on_click(self, event: events.Click) -> None:
        """What was pressed was grabbed: a click is nothing more."""

    def on_mouse_down(self, event: events.MouseDown) -> None:
        place, beside = self.place(event.x, event.y), self.place(event.x + 1, event.y + 1)
        if place is not None and beside is not None:
            self._pressed, self._moved = True, False
            self.capture_mouse()
            self.post_message(self.Grabbed(*place, (beside[0] - place[0], beside[1] - place[1])))

    def on_mouse_move(self, event: events.MouseMove) -> None:
        place = self.place(event.x, event.y)
        if self._pressed and place is not None:
            self.post_message(self.Dragged(*place, begun=self._moved))
            self._moved = True

    def on_mouse_up(self, event: events.MouseUp) -> None:
        self._pressed = False
        self.release_mouse()


def with_lines(glimpse: Glimpse, lines: Iterable[Stroke]) -> Glimpse:
    """The same picture with lines drawn over it, a pixel wide."""
    if not glimpse.width:
        return glimpse
    rgb = bytearray(glimpse.rgb)
    for (x1, y1), (x2, y2), colour in lines:
        start = (x1 * glimpse.width, y1 * glimpse.height)
        end = (x2 * glimpse.width, y2 * glimpse.height)
        steps = max(1, round(max(abs(end[0] - start[0]), abs(end[1] - start[1]))))
        for step in range(steps + 1):
            x, y = (round(a + (b - a) * step / steps - 0.5) for a, b in zip(start, end, strict=True))
            x, y = _at_edge(x, glimpse.width), _at_edge(y, glimpse.height)
            if 0 <= x < glimpse.width and 0 <= y < glimpse.height:
                rgb[3 * (y * glimpse.width + x) : 3 * (y * glimpse.width + x) + 3] = colour
    return Glimpse(glimpse.width, glimpse.height, bytes(rgb), glimpse.why)


def _at_edge(at: int, size: int) -> int:
    """A line along the very edge is drawn on the last pixel before it."""
    return 0 if at == -1 else size - 1 if at == size else at


def sides_of(corners: Sequence[Place], colour: tuple[int, int, int]) -> list[Stroke]:
    """The lines around an outline."""
    return [(start, end, colour) for start, end in zip(corners, (*corners[1:], corners[0]), strict=True)]
