"""The front door: who tells today, what was agreed, and where to begin. Three keys lead to the first question."""

from collections.abc import Awaitable, Callable

from textual.app import ComposeResult
from textual.screen import Screen

from boxlore.tasks.sitting.beginning import Way, next_open, same_box, where_stopped
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.screens.tellers import ask_teller, on_day
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.plain_text import Line, short

Show = Callable[[int, Way | None, str], Awaitable[None]]
"""Shows the sitting's screen at a position of the list, along a way, with one of THEN opened above it."""

LIST, ASK, MENU = "list", "ask", "menu"
"""What may be opened above the sitting's screen: the list, what to ask the teller, the menu."""

_MORE = (
    Choice("menu", "No sitting today", "put right, print, hand on, keep safe", key="t"),
    Choice("others", "Another collection", "open or start one", key="c"),
)


class FrontScreen(Screen[None]):
    """Asks its questions on cards, one after the other; Esc goes a step back. `show` opens the sitting's screen,
    `others` the choice of collections."""

    AUTO_FOCUS = ""
    BINDINGS = bound(("f1", "guide"), ("enter", "who"), ("escape", "menu"), ("ctrl+q,q", "leave"))
    DEFAULT_CSS = "FrontScreen .about { padding: 1 2; color: $faint; }"

    def __init__(self, sitting: Sitting, listing: Listing, show: Show, others: Callable[[], Awaitable[None]]) -> None:
        super().__init__()
        self._sitting, self._listing, self._show, self._others = sitting, listing, show, others
        self._is_away = False
        """Whether another collection is being looked for."""

    def compose(self) -> ComposeResult:
        collection = self._sitting.collection
        count = len(self._listing)
        photographs = "one photograph" if count == 1 else f"{count:,} photographs"
        yield Top(collection.settings.title, photographs)
        yield Line(f"{collection.folder.resolve()}", classes="about")
        yield Line("  Enter who tells · Esc the menu, with no teller yet · F1 Guide · Q Leave", classes="about")

    async def on_screen_resume(self) -> None:
        """Ask again, where one came back from the choice of collections."""
        if self._is_away:
            self._is_away = False
            await self.action_who()

    async def action_who(self) -> None:
        """Ask who tells, then where to begin."""
        await ask_teller(self.app, self._sitting, self.ask_where, *_MORE, chosen=self._chosen)

    async def action_menu(self) -> None:
        """Show the menu, without a sitting."""
        await self._chosen(MENU)

    async def _chosen(self, value: str) -> None:
        if value == "others":
            await self._others()
            self._is_away = True
        else:
            stopped = where_stopped(self._sitting.collection, self._listing)
            self._sitting.nobody()
            await self._show(stopped.position if stopped else 0, None, MENU)

    async def ask_where(self) -> None:
        """Ask where to begin, with where one stopped first."""
        listing = self._listing
        stopped = where_stopped(self._sitting.collection, listing)
        at = stopped.position if stopped else 0
        row = listing.row_at(at)
        first = Choice("here", f"The first: {row.number}", row.about)
        if stopped:
            when = on_day(self._sitting, stopped.when)
            first = Choice("here", f"Where you stopped: {row.number}", when)
        teller = short(self._sitting.teller_named, 24) if self._sitting.id else "a teller"
        choices = [
            first,
            Choice("next", "Next with an answer missing", "after the one where you stopped" if stopped else ""),
            Choice(ASK, f"What to ask {teller}", "notes, faces without a name, dates"),
            Choice(LIST, "A list", "find words, a number, a box"),
        ]
        if row.mark:  # last: the others keep their digits where it is missing
            all_of_it = "Go on in the same box" if stopped else "All in the same box"
            choices.append(Choice("box", all_of_it, f"as {row.number}, which lies at {row.mark}"))

        async def answer(value: str) -> None:
            await self._begin(value, at)

        await self.app.push_screen(Choices("Where do we begin?", choices, answer, back=self.action_who))

    async def _begin(self, value: str, at: int) -> None:
        if value == "next":
            open_at = next_open(self._listing, at)
            await self._show(at if open_at is None else open_at, None, LIST if open_at is None else "")
        elif value == "box":
            way = same_box(self._sitting.collection, self._listing, at)
            await self._show(at, way, "")
        else:
            await self._show(at, None, "" if value == "here" else value)

    async def action_guide(self) -> None:
        """Show the guide."""
        await self.app.push_screen(GuideScreen())

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")
