"""The places, or the occasions, as they were told: the pictures with each, and its words corrected everywhere."""

from textual.app import ComposeResult

from boxlore.core.errors import BoxloreError
from boxlore.core.statements import fold
from boxlore.tasks.sitting.words_told import WordsTold, rewrite, words_told
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.list_screen import ListScreen, SittingHost, taken_back
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells
from boxlore.tui.widgets.text_input import Words

MOST = 30
"""So many pictures of one place are listed to choose from."""


class WordsToldScreen(ListScreen):
    """All words told in one field of items, with how often; letters narrow it, Enter offers what can be done."""

    BINDINGS = bound(("ctrl+z", "undo"))
    DEFAULT_CSS = """
    WordsToldScreen Words { margin: 1 1 0 1; }
    WordsToldScreen .heading { color: $faint; padding: 0 1; }
    WordsToldScreen Rows { margin: 0 1; }
    """

    def __init__(self, host: SittingHost, field: str, title: str) -> None:
        super().__init__(title)
        self._host, self._field = host, field
        self._all: list[WordsTold] = []
        self._told: list[WordsTold] = []
        self._words = Words(heard=lambda _: self._narrow(), id="wanted")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._words
        yield Line("  Type a part of it; ↑ ↓ move, Enter shows what can be done.", classes="heading")
        yield self._rows
        yield self._note

    async def show(self) -> None:
        """Open the screen; when this returns, the next key is typed into the search line."""
        await self._host.app.push_screen(self)
        self.set_focus(self._words)

    def on_mount(self) -> None:
        self.call_after_refresh(self._load)

    def _load(self) -> None:
        self._all = words_told(self._host.sitting.collection, self._field)
        self._narrow()

    def _narrow(self) -> None:
        asked = fold(self._words.text).split()
        self._told = [group for group in self._all if all(part in fold(group.words) for part in asked)]
        self._rows.show(len(self._told), self._cells, self._rows.at)
        self._top.tell(right=f"{len(self._told)} told")

    def _cells(self, at: int, width: int) -> Cells:
        group = self._told[at]
        count = "one picture" if len(group.items) == 1 else f"{len(group.items)} pictures"
        return ((f"{short(group.words, width - 16):<{max(width - 16, 8)}}", "plain"), (f"  {count}", "faint"))

    async def action_move(self, by: int) -> None:
        """Move the cursor, once every letter is typed in: among the rows that are shown then."""
        await self._words.drained()
        self._rows.move(by)

    async def action_take(self) -> None:
        """Offer the pictures, and other words everywhere."""
        await self._words.drained()
        if not self._told:
            return
        group = self._told[self._rows.at]

        async def answer(value: str) -> None:
            if value != "rewrite":
                self._host.show_item(value)
            elif self._host.sitting.writable:
                await self._rewrite(group)
            else:
                self.say("Open for reading only; nothing can be changed.")

        choices = [Choice("rewrite", "Call it something else everywhere", "what was there stays in the history")]
        choices += [Choice(item, f"Show {number}") for item, number in group.items[:MOST]]
        await self.app.push_screen(Choices(short(group.words, 60), choices, answer))

    async def _rewrite(self, group: WordsTold) -> None:
        def answer(answers: dict[str, str]) -> str:
            try:
                count = rewrite(self._host.sitting, group, answers["words"])
            except BoxloreError as error:
                return str(error)
            self._load()
            self.say(f"{count} put right. Ctrl+Z takes it back.")
            return ""

        hint = "If that name stands here already, the two become one."
        blank = Blank("words", "What is it called?", group.words, hint, keeps=True)
        await Form("Everywhere", [blank], answer).open(self.app)

    def action_undo(self) -> None:
        """Take back the last thing done."""
        words = taken_back(self._host.sitting)
        self._load()
        self.say(words)
