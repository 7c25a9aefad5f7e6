"""A list of any length: only the rows on the screen are asked for and drawn."""

from collections.abc import Callable, Iterable, Sequence
from typing import ClassVar

from rich.cells import cell_len
from rich.segment import Segment
from rich.style import Style
from textual import events
from textual.geometry import Region, Size
from textual.message import Message
from textual.scroll_view import ScrollView
from textual.strip import Strip

Cells = Sequence[tuple[str, str]]
"""The parts of a row: words, and a style class (plain, faint, strong)."""


def widest(labels: Iterable[str]) -> int:
    """How wide a column is that shows these labels whole."""
    return max(map(cell_len, labels), default=0)


class Rows(ScrollView):
    """The list. `at` is the position of the cursor, from 0, and `count` how many rows there are."""

    COMPONENT_CLASSES: ClassVar[set[str]] = {"rows--faint", "rows--strong", "rows--at"}
    DEFAULT_CSS = """
    Rows { width: 1fr; height: 1fr; background: $surface; scrollbar-size-vertical: 1; overflow-x: hidden; }
    Rows .rows--faint { color: $faint; }
    Rows .rows--strong { color: $primary; text-style: bold; }
    Rows .rows--at { background: $field-on; text-style: bold; }
    """

    class Taken(Message):
        """A row was clicked."""

    can_focus = False

    def __init__(self, id: str | None = None) -> None:
        super().__init__(id=id)
        self.at = 0
        self.count = 0
        self._row: Callable[[int, int], Cells] = lambda position, width: ()
        self._styles_drawn: dict[str, Style] = {}
        """Style class -> its style, while lines are drawn: each is worked out once for all of them."""

    def show(self, count: int, row: Callable[[int, int], Cells], at: int = 0) -> None:
        """Show `count` rows with the cursor at `at`; `row(position, width)` returns the cells of one row."""
        self.count, self._row = count, row
        self.virtual_size = Size(self.size.width or self.app.size.width, count)
        self.go(at)

    def go(self, at: int) -> None:
        """Put the cursor on a row, and scroll so that it is seen."""
        self.at = max(0, min(at, self.count - 1))
        if self.size:
            self.scroll_to_region(Region(0, self.at, 1, 1), animate=False, force=True)
            self.refresh()
        else:  # before it has its place: the first frame shows the row where that will be, so that no second is needed
            self.scroll_y = max(0, self.at - self.app.size.height // 3)

    def move(self, by: int) -> None:
        """Move the cursor by so many rows."""
        self.go(self.at + by)

    @property
    def page(self) -> int:
        """How many rows a page moves."""
        return max(1, self.size.height - 1)

    def on_resize(self) -> None:
        self.virtual_size = Size(self.size.width, self.count)
        self.go(self.at)  # among rows that were told before there was a screen, or of which a smaller one shows fewer

    def on_click(self, event: events.Click) -> None:
        position = int(self.scroll_offset.y) + event.y
        if position < self.count:
            self.go(position)
            self.post_message(self.Taken())

    def render_lines(self, crop: Region) -> list[Strip]:
        self._styles_drawn = {"": self.rich_style}
        return super().render_lines(crop)

    def _style_of(self, name: str) -> Style:
        if name not in self._styles_drawn:
            self._styles_drawn[name] = self.get_component_rich_style(f"rows--{name}", partial=name != "at")
        return self._styles_drawn[name]

    def render_line(self, y: int) -> Strip:
        width = self.scrollable_content_region.width or self.size.width  # what the bar leaves
        position = int(self.scroll_offset.y) + y
        base = self._styles_drawn[""]
        if position >= self.count:
            return Strip([Segment(" " * width, base)], width)
        here = position == self.at
        if here:
            base += self._style_of("at")
        segments = [Segment("▸ " if here else "  ", base)]
        for words, name in self._row(position, width - 2):
            style = base if name == "plain" else base + self._style_of(name)
            segments.append(Segment(words, style))
        return Strip(segments).adjust_cell_length(width, base)
