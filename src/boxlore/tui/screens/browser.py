"""Looking through the folders of this machine for a folder or a file, for a line of a form."""

import os
from collections.abc import Callable
from pathlib import Path

from textual.app import ComposeResult
from textual.containers import Vertical

from boxlore.tui.keys import LIST_MOVES, bound
from boxlore.tui.screens.cards import Card
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells, Rows

THIS = "."


class Browser(Card):
    """The names in one folder. Enter or → goes into a folder or takes a file, ← goes up; the first row takes the
    folder itself. `taken` gets the path as text."""

    DEFAULT_CSS = "Browser Rows { height: 16; max-height: 60vh; }"
    BINDINGS = bound(
        *LIST_MOVES,
        ("enter", "take"),
        ("right", "into"),
        ("left,backspace", "up"),
    )

    def __init__(self, title: str, begin: Path, *, folders: bool, taken: Callable[[str], None]) -> None:
        super().__init__()
        self._title, self._folders, self._taken = title, folders, taken
        self._folder = _nearest(begin)
        self._names: list[str] = []
        self._where, self._rows = Line(classes="faint"), Rows()

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line(self._title, classes="title")
            yield self._where
            yield self._rows
            yield Line("Enter takes the row, → looks into a folder, ← goes up; Esc goes back.", classes="faint")

    def on_mount(self) -> None:
        self._look()

    def _look(self, at: str = "") -> None:
        """Read the folder, and put the cursor on the row of this name."""
        try:
            with os.scandir(self._folder) as entries:
                rows = sorted((not entry.is_dir(), entry.name) for entry in entries if not entry.name.startswith("."))
        except OSError:
            rows = []
        self._names = [THIS] + [name + "/" * (not is_file) for is_file, name in rows if not (is_file and self._folders)]
        self._where.say(short(str(self._folder), 70))
        row = self._names.index(f"{at}/") if f"{at}/" in self._names else 0
        self._rows.show(len(self._names), self._cells, row)

    def _cells(self, at: int, width: int) -> Cells:
        name = self._names[at]
        return ((short("this folder" if name == THIS else name, width), "strong" if name == THIS else "plain"),)

    def action_move(self, by: int) -> None:
        """Move the cursor."""
        self._rows.move(by)

    def action_into(self) -> None:
        """Look into the folder at the cursor."""
        name = self._names[self._rows.at]
        if name.endswith("/"):
            self._folder /= name
            self._look()

    def action_up(self) -> None:
        """Look at the folder above."""
        below = self._folder.name
        self._folder = self._folder.parent
        self._look(below)

    def action_take(self) -> None:
        """Take the row: a folder or a file, or with the first row the folder itself."""
        name = self._names[self._rows.at]
        path = self._folder if name == THIS else self._folder / name
        self.app.pop_screen()
        self._taken(str(path) + "/" * path.is_dir())

    def on_rows_taken(self) -> None:
        self.action_take()


def _nearest(path: Path) -> Path:
    """The folder of a path, or the nearest one above it that is there."""
    path = path.absolute()
    while not path.is_dir() and path != path.parent:
        path = path.parent
    return path
