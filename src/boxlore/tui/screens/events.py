"""What happened to the family, in order, with who said so: what the dates of its pictures lean on.

The events that pictures wait for stand first. Whatever is told here is told by who tells in the sitting.
"""

from collections.abc import Callable
from functools import partial

from textual.app import ComposeResult

from boxlore.core.dates.family_display import family_display
from boxlore.core.errors import BoxloreError
from boxlore.core.findings import several
from boxlore.core.records.events import FamilyEvent
from boxlore.tasks.collection.opening import Act
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.telling.events import Waiting, add_event, date_event, remove_event, rename_event, waiting
from boxlore.tasks.telling.time_line import time_line
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.list_screen import ListScreen, SittingHost, taken_back
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.row_list import Cells

DATE_WIDTH = 24
MOST = 30
"""So many pictures that wait for one event are listed to choose from."""

_NEW = "Tell of something that happened"
HINT = "As the family says it: June 1931, the spring after the fire."


def noted(name: str, count: int) -> str:
    """What is said once an event is told; `count` dates that wait for it were read again."""
    read = f" {several(count, 'date')} read again." if count else ""
    return f"Noted: {short(name, 40)}.{read} Ctrl+Z takes it back."


class EventsScreen(ListScreen):
    """The time line; Enter on a row says when it was, calls it something else or takes it off."""

    BINDINGS = bound(("ctrl+z", "undo"))
    DEFAULT_CSS = """
    EventsScreen .heading { color: $faint; padding: 0 1; margin-top: 1; }
    EventsScreen Rows { margin: 0 1; }
    """

    def __init__(self, host: SittingHost) -> None:
        super().__init__("What happened when")
        self._host = host
        self._asked: list[Waiting] = []
        self._events: list[FamilyEvent] = []

    def compose(self) -> ComposeResult:
        yield self._top
        yield Line("  Dates may lean on these: “the summer after the wedding”. ↑ ↓ move, Enter.", classes="heading")
        yield self._rows
        yield self._note

    def on_mount(self) -> None:
        self._load()

    def _load(self) -> None:
        sitting = self._host.sitting
        self._asked, self._events = waiting(sitting.collection, sitting.teller), time_line(sitting.collection)
        self._rows.show(1 + len(self._asked) + len(self._events), self._cells, self._rows.at)
        self._top.tell(right=f"{len(self._events)} told, {len(self._asked)} asked")

    def _cells(self, at: int, width: int) -> Cells:
        row = self._row(at)
        if row is None:
            return ((_NEW, "strong"),)
        if isinstance(row, Waiting):
            count = "a picture waits for it" if len(row.items) == 1 else f"{len(row.items)} pictures wait for it"
            return (
                (f"{'when was it?':<{DATE_WIDTH}}", "strong"),
                (short(row.name, max(width - DATE_WIDTH - 24, 12)), "plain"),
                (f"  {count}", "faint"),
            )
        way = family_way(self._host.sitting.collection.settings)
        shown = family_display(row.when.edtf, way) if row.when and row.when.edtf else ""
        when = shown or row.words or "no date yet"
        return (
            (f"{short(when, DATE_WIDTH - 2):<{DATE_WIDTH}}", "plain" if row.edtf else "strong"),
            (short(row.name, max(width - DATE_WIDTH - 24, 12)), "plain"),
            (f"  {short(row.said, 20)}", "faint"),
        )

    def _row(self, at: int) -> Waiting | FamilyEvent | None:
        rows: list[Waiting | FamilyEvent] = [*self._asked, *self._events]
        return rows[at - 1] if at else None

    async def action_take(self) -> None:
        """Offer what can be done with the row, or ask about it."""
        row = self._row(self._rows.at)
        if isinstance(row, FamilyEvent) and not row.own:
            self.say("That follows from what is told of a person. Menu, Put right, People has the dates.")
        elif not self._host.sitting.writable:
            self.say("Open for reading only; nothing can be changed.")
        elif row is None:
            await self._add("", "")
        elif isinstance(row, Waiting):
            await self._answer_waiting(row)
        else:
            await self._change(row)

    async def _answer_waiting(self, row: Waiting) -> None:
        numbers = [(item, self._host.sitting.collection.store.number_of(item)) for item in row.items[:MOST]]

        async def answer(value: str) -> None:
            if value == "when":
                await self._add(row.name, "The pictures that wait for it are read by it.")
            else:
                self._host.show_item(value)

        choices = [Choice("when", "Say when it was"), *(Choice(item, f"Show {number}") for item, number in numbers)]
        await self.app.push_screen(Choices(short(row.name, 60), choices, answer))

    async def _add(self, name: str, above: str) -> None:
        known = next((event for event in self._events if event.own and event.name == name and not event.edtf), None)
        if known is not None:
            await self._say_when(known)
            return

        def answer(answers: dict[str, str]) -> str:
            sitting = self._host.sitting
            return self._done(
                partial(add_event, sitting.teller, answers["name"], answers["date"], sitting.telling), answers["name"]
            )

        blanks = [
            Blank("name", "What happened?", name, "The wedding of Anna and Joe; when we sailed.", keeps=True),
            Blank("date", "When was it?", "", f"{HINT} May stay empty."),
        ]
        await Form("Something that happened", blanks[::-1] if name else blanks, answer, above=above).open(self.app)

    async def _change(self, event: FamilyEvent) -> None:
        async def answer(value: str) -> None:
            if value == "when":
                await self._say_when(event)
            elif value == "rename":
                await self._rename(event)
            else:
                self._done(partial(remove_event, self._host.sitting.teller, event), event.name)

        choices = [
            Choice("when", "Say when it was", event.words),
            Choice("rename", "Call it something else", "what was there stays in the history"),
            Choice("remove", "Take it off", "Ctrl+Z brings it back"),
        ]
        await self.app.push_screen(Choices(short(event.name, 60), choices, answer))

    async def _say_when(self, event: FamilyEvent) -> None:
        def answer(answers: dict[str, str]) -> str:
            sitting = self._host.sitting
            return self._done(partial(date_event, sitting.teller, event, answers["date"], sitting.telling), event.name)

        blank = Blank("date", "When was it?", event.words, HINT, keeps=True)
        await Form(short(event.name, 60), [blank], answer).open(self.app)

    async def _rename(self, event: FamilyEvent) -> None:
        def answer(answers: dict[str, str]) -> str:
            sitting = self._host.sitting
            return self._done(
                partial(rename_event, sitting.teller, event, answers["name"], sitting.telling), answers["name"]
            )

        blank = Blank("name", "What is it called?", event.name, keeps=True)
        await Form("Call it something else", [blank], answer).open(self.app)

    def _done(self, change: Callable[..., int], name: str) -> str:
        """Do it as a step of the sitting; returns what is wrong, or ''."""

        def write(act: Act) -> None:
            self._host.sitting.finish(act, "")

        try:
            count = change(write=write)
        except BoxloreError as error:
            return str(error)
        self._load()
        self.say(noted(name, count))
        return ""

    def action_undo(self) -> None:
        """Take back the last thing done."""
        words = taken_back(self._host.sitting)
        self._load()
        self.say(words)
