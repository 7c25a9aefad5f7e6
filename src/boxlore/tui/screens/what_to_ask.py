"""The list of what to ask the one who tells; Enter opens the photograph, or takes a note off the list.

What was noted, and whom nobody has named, is there at once; what follows from everything told is worked out beside it.
"""

from collections.abc import Callable
from functools import partial
from typing import Protocol

from boxlore.core.findings import several
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.what_to_ask import ToAsk, for_others, to_ask, was_asked
from boxlore.tasks.sitting.worked_out import more_to_ask
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.events import EventsScreen
from boxlore.tui.screens.list_screen import LookingScreen, SittingHost
from boxlore.tui.screens.person import PersonScreen
from boxlore.tui.widgets.plain_text import short
from boxlore.tui.widgets.row_list import Cells

_ANSWERED_AT = {"who": "person", "date": "date", "before-or-after": "date"}
"""At which question what is to be asked is answered, by its kind; all else is told in the story, where it is read."""
_AS = {"age": ", with the name: “… looks about seven”"}


class AskingHost(SittingHost, Protocol):
    """What the list needs of the sitting's screen below it."""

    def say(self, words: str, *, bad: bool = False) -> None: ...


class AskScreen(LookingScreen):
    """What was noted for the teller, faces that nobody has named, and what only she can date."""

    LOOKS = "Looking for more that only one who was there can tell …"

    def __init__(self, host: AskingHost) -> None:
        super().__init__()
        self._host, self._sitting = host, host.sitting
        self._noted: list[ToAsk] = []
        self._more: list[ToAsk] = []
        self._for_others = ""

    @property
    def _asked(self) -> list[ToAsk]:
        return [*self._noted, *self._more]

    def on_mount(self) -> None:
        super().on_mount()
        self._load()

    def look(self, progress: Progress) -> Callable[[], None]:
        """Work out what else to ask."""
        return partial(self._found, more_to_ask(self._sitting.collection, self._sitting.teller_named, progress))

    def _found(self, more: list[ToAsk]) -> None:
        self._more = more
        self._load()

    def _load(self) -> None:
        self._noted = to_ask(self._sitting.collection, self._sitting.teller_named)
        whom = self._sitting.teller_named or "a teller"
        self._top.tell(f"What to ask {whom}", "Enter opens it · Esc back to the photograph")
        others = for_others(self._sitting.collection, self._noted)
        notes = several(others, "photograph has", "photographs have")
        elsewhere = f"{notes} a note that does not name {whom}: F3 and Tab, “to ask”."
        self._for_others = elsewhere if others else ""
        self._rows.show(len(self._asked), self._cells, self._rows.at)
        self._at_row()

    def _cells(self, at: int, width: int) -> Cells:
        asked = self._asked[at]
        head = asked.number or ("note" if asked.statement else "")
        return ((f"{head:<10} ", "strong"), (short(asked.words, max(width - 12, 8)), "plain"))

    def _at_row(self) -> None:
        below = [words for words in (self._for_others, self._unfound) if words]
        if self._asked:
            asked = self._asked[self._rows.at]
            words, below = asked.words, [*([asked.why] if asked.why else []), *below]
        else:
            whom = self._sitting.teller_named or "a teller"
            words = (
                f"Nothing is noted to ask {whom}, and no marker waits for a name. F9 at a photograph notes something."
            )
        self._whole.say(words, ("".join(f"\n{line}" for line in below), "$faint"))

    async def action_take(self) -> None:
        """Open the photograph; of a note without one, ask whether it is done with; of an event or a life, its own
        screen."""
        if not self._asked:
            return
        asked = self._asked[self._rows.at]
        if asked.item:
            self._host.show_item(asked.item, _ANSWERED_AT.get(asked.kind, "story") if asked.kind else "")
            if asked.kind:
                how = "" if asked.kind in _ANSWERED_AT else f" Tell it in the story{_AS.get(asked.kind, '')}."
                self._host.say(f"To ask: {asked.words}{how}")
        elif asked.about:
            await self._open_about(asked)
        else:
            await self._ask_done(asked)

    async def _open_about(self, asked: ToAsk) -> None:
        if asked.kind == "birth":
            await self.app.push_screen(PersonScreen(self._host, asked.about))
        else:
            await self.app.push_screen(EventsScreen(self._host))

    async def _ask_done(self, asked: ToAsk) -> None:
        def answer(value: str) -> None:
            if value == "asked" and self._sitting.writable:
                was_asked(self._sitting.collection, asked)
                self._load()

        choices = [Choice("keep", "It stays on the list"), Choice("asked", "It was asked", "taken off the list")]
        await self.app.push_screen(Choices(short(f"“{asked.words}”", 60), choices, answer))
