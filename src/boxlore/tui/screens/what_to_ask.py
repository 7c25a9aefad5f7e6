"""The list of what to ask the one who tells; Enter opens the photograph, or takes a note off the list."""

from collections.abc import Callable

from textual.app import ComposeResult

from boxlore.core.findings import several
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.what_to_ask import ToAsk, for_others, to_ask, was_asked
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.list_screen import ListScreen
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells


class AskScreen(ListScreen):
    """What was noted for the teller, and faces that nobody has named. `opened` gets the id of an item."""

    DEFAULT_CSS = "AskScreen Rows { margin: 1 1 0 1; } AskScreen #whole { height: auto; padding: 1 2; }"

    def __init__(self, sitting: Sitting, opened: Callable[[str], None]) -> None:
        super().__init__()
        self._sitting, self._opened = sitting, opened
        self._asked: list[ToAsk] = []
        self._whole = Line(id="whole")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._rows
        yield self._whole

    def on_mount(self) -> None:
        self.call_after_refresh(self._load)

    def _load(self) -> None:
        self._asked = to_ask(self._sitting.collection, self._sitting.narrator)
        whom = self._sitting.narrator or "a teller"
        self._top.tell(f"What to ask {whom}", "Enter opens it · Esc back to the photograph")
        self._rows.show(len(self._asked), self._cells, self._rows.at)
        self._at_row()

    def _cells(self, at: int, width: int) -> Cells:
        asked = self._asked[at]
        return ((f"{asked.number or 'note':<10} ", "strong"), (short(asked.words, max(width - 12, 8)), "plain"))

    def _at_row(self) -> None:
        if self._asked:
            self._whole.say(self._asked[self._rows.at].words)
        else:
            whom = self._sitting.narrator or "a teller"
            others = for_others(self._sitting.collection, self._asked)
            notes = several(others, "photograph has", "photographs have")
            elsewhere = f" {notes} a note that does not name {whom}: F3 and Tab, “to ask”."
            self._whole.say(
                f"Nothing is noted to ask {whom}, and no marker waits for a name. F9 at a photograph notes something.",
                elsewhere if others else "",
            )

    async def action_take(self) -> None:
        """Open the photograph; of a note without one, ask whether it is done with."""
        if not self._asked:
            return
        asked = self._asked[self._rows.at]
        if asked.item:
            self.app.pop_screen()
            self._opened(asked.item)
            return

        def answer(value: str) -> None:
            if value == "asked" and self._sitting.writable:
                was_asked(self._sitting.collection, asked)
                self._load()

        choices = [Choice("keep", "It stays on the list"), Choice("asked", "It was asked", "taken off the list")]
        await self.app.push_screen(Choices(short(f"“{asked.words}”", 60), choices, answer))
