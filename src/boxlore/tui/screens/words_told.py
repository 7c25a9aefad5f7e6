"""The places, or the occasions, as they were told: the pictures with each, and its words corrected everywhere.

A place shows where it is on the map, and can be put right for all pictures at once; its words stay then.
"""

from functools import partial

from textual.app import ComposeResult

from boxlore.core.errors import BoxloreError
from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.reading import Place, full_name
from boxlore.core.statements import fold
from boxlore.tasks.sitting.words_told import (
    IN_QUESTION,
    WordsTold,
    mean_everywhere,
    place_read,
    rewrite,
    words_told,
)
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.list_screen import ListScreen, SittingHost, taken_back
from boxlore.tui.screens.other_place import ask_other_place, numbered
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells
from boxlore.tui.widgets.text_input import Words

OTHER, NONE = "other", "none"
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
        self._means: dict[str, str] = {}
        """What each place that was shown is read as, by its words."""
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
        self._load()

    def _load(self) -> None:
        self._means.clear()
        self._all = words_told(self._host.sitting.collection, self._field)
        self._narrow()

    def _narrow(self) -> None:
        asked = fold(self._words.text).split()
        self._told = [group for group in self._all if all(part in fold(group.words) for part in asked)]
        self._rows.show(len(self._told), self._cells, self._rows.at)
        self._top.tell(right=f"{len(self._told)} told" if self._told else "nothing told yet")

    def _cells(self, at: int, width: int) -> Cells:
        group = self._told[at]
        count = "one picture" if len(group.items) == 1 else f"{len(group.items)} pictures"
        room = max(width - 16, 8)
        if self._field != "place":
            return ((f"{short(group.words, room):<{room}}", "plain"), (f"  {count}", "faint"))
        words, means = room * 2 // 5, room - room * 2 // 5 - 2
        return (
            (f"{short(group.words, words):<{words}}  ", "plain"),
            (f"{short(self._meant(group), means):<{means}}", "faint"),
            (f"  {count}", "faint"),
        )

    def _meant(self, group: WordsTold) -> str:
        """Which place the words are read as, or that it is asked; read when the row is first drawn."""
        if group.words not in self._means:
            reading = place_read(self._host.sitting.collection, group)
            if reading is None or reading.best is None:
                means = "no place on a map"
            elif reading.kind in IN_QUESTION:
                more = f", or {len(reading.choices) - 1} more" if len(reading.choices) > 1 else ""
                means = f"? {full_name(reading.best)}{more}"
            else:
                means = f"= {full_name(reading.best)}"
            self._means[group.words] = means
        return self._means[group.words]

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
            if value not in ("rewrite", "place"):
                self._host.show_item(value)
            elif not self._host.sitting.writable:
                self.say("Open for reading only; nothing can be changed.")
            elif value == "rewrite":
                await self._rewrite(group)
            else:
                await self._ask_place(group)

        choices = [Choice("rewrite", "Call it something else everywhere", "the old words stay in the history")]
        if self._field == "place":
            choices.append(Choice("place", "Say which place it is", "for all of them; the words stay"))
        choices += [Choice(item, f"Show {number}") for item, number in group.items[:MOST]]
        await self.app.push_screen(Choices(short(group.words, 60), choices, answer))

    async def _ask_place(self, group: WordsTold) -> None:
        """Ask which place is meant: one of those in question, another in other words, or none on a map."""
        reading = place_read(self._host.sitting.collection, group)
        places = reading.choices if reading is not None and reading.kind in IN_QUESTION else ()

        async def answer(value: str) -> None:
            if value == OTHER:
                await ask_other_place(self.app, self._host.sitting, group.words, partial(self._mean, group))
            else:
                self._mean(group, None if value == NONE else places[int(value) - 1])

        other = Choice(OTHER, "Another place", "in other words", key="o")
        none = Choice(NONE, "No place on a map", "the words stay as they were told", key="0")
        title = f"“{short(group.words, 40)}”: which place is it?"
        now = f"Now: {full_name(reading.best)}." if reading is not None and reading.best and not places else ""
        choices = [*numbered(names_apart(places)), other, none]
        await self.app.push_screen(Choices(title, choices, answer, below=now, at=NOWHERE))

    def _mean(self, group: WordsTold, place: Place | None) -> None:
        count = mean_everywhere(self._host.sitting, group, place)
        self._load()
        means = full_name(place) if place else "no place on a map"
        self.say(f"Noted: {means}, {count}×. Ctrl+Z takes it back.")

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
