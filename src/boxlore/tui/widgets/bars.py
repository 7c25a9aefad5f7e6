"""The top line (which item, where it is kept, whether the words are safe) and the bottom line of keys."""

from rich.cells import cell_len
from textual import events
from textual.message import Message

from boxlore.tui.keys import Key
from boxlore.tui.widgets.plain_text import Line, short


class Top(Line):
    """The top line: what is shown, at the left; the state of the sitting, at the right."""

    DEFAULT_CSS = "Top { width: 100%; height: 1; background: $panel; padding: 0 1; }"

    def __init__(self, left: str = "", right: str = "") -> None:
        super().__init__()
        self._left, self._right = left, right

    def on_mount(self) -> None:
        self._draw()

    def on_resize(self) -> None:
        self._draw()

    def tell(self, left: str | None = None, right: str | None = None) -> None:
        """Change the left end, the right end, or both; None leaves an end as it is."""
        self._left = self._left if left is None else left
        self._right = self._right if right is None else right
        self._draw()

    def _draw(self) -> None:
        room = self.size.width or self.app.size.width - 2  # before it has its place: the first frame shows it whole
        right = short(self._right, max(room // 2, room - cell_len(self._left) - 2, 12))
        left = short(self._left, max(room - cell_len(right) - 2, 0))
        gap = " " * max(room - cell_len(left) - cell_len(right), 1)
        self.say((left, "bold $primary"), gap, right)


class Bottom(Line):
    """The bottom line: the keys whose `short` is not empty, on a second line too where they need it. They can be
    clicked; keys that find no room there either are left out, but never the last."""

    DEFAULT_CSS = "Bottom { width: 100%; height: auto; max-height: 2; background: $panel; padding: 0 1; }"
    LINES = 2

    class Pressed(Message):
        """A key's name was clicked."""

        def __init__(self, action: str) -> None:
            super().__init__()
            self.action = action

    def __init__(self, keys: tuple[Key, ...]) -> None:
        super().__init__()
        self._keys = [key for key in keys if key.short]
        self._spans: list[tuple[int, int, int, str]] = []
        """Of each key: its line, its first column, the one after its last, and its action."""

    def on_mount(self) -> None:
        self._draw()

    def on_resize(self) -> None:
        self._draw()

    def _draw(self) -> None:
        parts: list[str | tuple[str, str]] = []
        self._spans = []
        at, line, room = 0, 0, self.size.width or self.app.size.width - 2
        last = self._keys[-1] if self._keys else None
        for key in self._keys:
            wide = cell_len(f"{key.cap} {key.short}")
            spare = cell_len(f"{last.cap} {last.short}") + 2 if last is not None and key is not last else 0
            if at + wide + (spare if line + 1 == self.LINES else 0) > room:
                if line + 1 == self.LINES:
                    continue
                at, line = 0, line + 1
                parts.append("\n")
            self._spans.append((line, at, at + wide, key.action))
            parts += [(key.cap, "bold $primary"), f" {key.short}  "]
            at += wide + 2
        self.say(*parts)

    def on_click(self, event: events.Click) -> None:
        for line, start, end, action in self._spans:
            if line == event.y and start <= event.x - 1 < end:
                self.post_message(self.Pressed(action))
