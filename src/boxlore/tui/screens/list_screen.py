"""What every screen that is a list has in common: its keys, its cursor, and a sentence below it."""

from collections.abc import Callable
from typing import Any, Protocol

from textual.app import App, ComposeResult
from textual.screen import Screen

from boxlore.core.errors import BoxloreError
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import LIST_MOVES, bound
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.watch import Watch
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.row_list import Rows


class SittingHost(Protocol):
    """What a list needs of the sitting's screen below it."""

    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def show_item(self, item: str, field: str = "") -> None:
        """Show the item of this id, above nothing else, with the cursor in the prompt of this field."""

    async def settle(self, field: str) -> None:
        """Ask which answer to this question is used, of the item that is out."""


class ListScreen(Screen[None]):
    """Rows with a cursor. Enter and a click take the row; Esc goes back, Ctrl+Q leaves the program.

    A list composes `_top` and `_rows`, and `_note` where it has something to say; it fills `_rows` itself.
    """

    AUTO_FOCUS = ""
    BINDINGS = bound(*LIST_MOVES, ("enter", "take"), ("escape", "close"), ("f1", "guide"), ("ctrl+q", "leave"))

    def __init__(self, title: str = "") -> None:
        super().__init__()
        self._top, self._rows, self._note = Top(title), Rows(), Line(id="note")
        self._note.display = False

    def say(self, words: str, *, bad: bool = False) -> None:
        """Show a sentence below the list; '' takes it away."""
        self._note.display = bool(words)
        self._note.set_class(bad, "-bad")
        self._note.say(from_inside(words))

    def said_before(self) -> None:
        """Another key was pressed: what the last one did is said no more."""
        if self._note.display:
            self.say("")

    def _at_row(self) -> None:
        """What is done when the cursor stands on another row: for a list that shows it whole."""

    async def action_move(self, by: int) -> None:
        """Move the cursor."""
        self._rows.move(by)
        self._at_row()

    async def action_take(self) -> None:
        """Do with the row at the cursor what the list is for."""

    async def on_rows_taken(self) -> None:
        await self._clicked()

    async def _clicked(self) -> None:
        """What a click on a row does."""
        await self.action_take()

    def action_close(self) -> None:
        """Go back."""
        self.app.pop_screen()

    async def action_guide(self) -> None:
        """Show the guide."""
        await self.app.push_screen(GuideScreen())

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")


class LookingScreen(ListScreen):
    """A list whose rows are found in a thread, which is asked to stop when the screen is left."""

    DEFAULT_CSS = """
    LookingScreen Rows { margin: 1 1 0 1; }
    LookingScreen #whole { height: auto; max-height: 45%; padding: 1 2; }
    """
    LOOKS = "Looking at every photograph …"

    def __init__(self, title: str = "") -> None:
        super().__init__(title)
        self._whole = Line(id="whole")
        self._watch = Watch()
        self._unfound = self.LOOKS
        """What is said where rows would be: that they are looked for, then why they are not found; '' once they are."""

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._rows
        yield self._whole

    def on_mount(self) -> None:
        self._whole.say(self._unfound)
        self.run_worker(self._look_through, thread=True, exit_on_error=False)

    def on_unmount(self) -> None:
        self._watch.stop()

    def look(self, progress: Progress) -> Callable[[], None]:
        """Find the rows, in the thread; what is returned shows them."""
        raise NotImplementedError

    def _look_through(self) -> None:
        fault = ""
        try:
            show = self.look(self._watch)
        except BoxloreError as error:
            show, fault = self._at_row, from_inside(str(error))
        if not self._watch.stopped():
            self.app.call_from_thread(self._looked, show, fault)

    def _looked(self, show: Callable[[], None], fault: str) -> None:
        self._unfound = fault
        show()


def taken_back(sitting: Sitting) -> str:
    """Take back the last thing done in the sitting; the sentence that says what it was, or why it stays."""
    try:
        done = sitting.undo() if sitting.writable else None
    except BoxloreError as error:
        return str(error)
    return (
        f"Taken back: {done.in_words.removesuffix('.')}." if done else "Nothing of this sitting is left to take back."
    )
