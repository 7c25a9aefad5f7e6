"""The screen of a collection that has no items yet: it offers to take scans in."""

from collections.abc import Awaitable, Callable

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.screen import Screen

from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import bound
from boxlore.tui.menu_tasks.table import of_group
from boxlore.tui.menu_tasks.task import Group
from boxlore.tui.screens.cards import NO_KEY, Choice, Choices
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.screens.menu import BACKUPS, start
from boxlore.tui.widgets.plain_text import Line


class BareScreen(Screen[None]):
    """Offers the one task that makes sense here; `filled` is called once the collection has items, and `others` shows
    the choice of collections."""

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("t,enter", "take_in"),
        ("p", "sheets"),
        ("c,o", "others"),
        ("escape", "menu"),
        ("ctrl+y", "redo"),
        ("f1", "guide"),
        ("ctrl+q,q", "leave"),
    )
    DEFAULT_CSS = "BareScreen { align: center middle; }"

    def __init__(
        self,
        sitting: Sitting,
        listing: Listing,
        filled: Callable[[Sitting, Listing], Awaitable[None]],
        others: Callable[[], Awaitable[None]],
        showing: Showing,
    ) -> None:
        super().__init__()
        self._showing = showing
        self.sitting, self._listing, self._filled, self._others = sitting, listing, filled, others
        self._note = Line(id="note")

    def compose(self) -> ComposeResult:
        collection = self.sitting.collection
        with Vertical(classes="card"):
            yield Line(collection.settings.title, classes="title")
            yield Line(f"{collection.folder}\n\nNothing is in it yet.\n")
            yield Line(("  T    ", "bold $primary"), "Take scans in")
            yield Line(("  P    ", "bold $primary"), "Prints on a sheet: outlines by mouse or keys")
            yield Line(("  C    ", "bold $primary"), "Another collection")
            yield Line(("  Esc  ", "bold $primary"), "Menu")
            yield Line(("  F1   ", "bold $primary"), "Guide")
            yield Line(("  Q    ", "bold $primary"), "Leave\n")
            yield self._note

    def on_mount(self) -> None:
        self._note.display = False

    def say(self, words: str, *, bad: bool = False) -> None:
        """Show one sentence below the choices; '' takes it away."""
        self._note.display = bool(words)
        self._note.set_class(bad, "-bad")
        self._note.say(from_inside(words))

    def task_done(self, *, wrote: bool) -> None:
        """Read the list again after a task; the items are shown once its report is closed."""
        self._listing.reload()

    async def on_screen_resume(self) -> None:
        if len(self._listing):
            await self._filled(self.sitting, self._listing)

    async def action_take_in(self) -> None:
        """Take scans in."""
        await start(self, "intake")

    async def action_sheets(self) -> None:
        """Take in the prints on sheets, outlined by hand."""
        from boxlore.tui.screens.prints_on_a_sheet import ask_sheets

        await ask_sheets(self, self._showing)

    async def action_menu(self) -> None:
        """Show all that can be taken in, and what the menu has for a collection without photographs."""
        tasks = of_group(Group.TAKE_IN)

        async def answer(value: str) -> None:
            if value in tasks:
                await start(self, value, back=self.action_menu)
            elif value == BACKUPS:
                await self.app.run_action(BACKUPS, default_namespace=self.app)
            else:
                await self.run_action(value)

        choices = [
            *[Choice(value, task.name, task.about) for value, task in tasks.items()],
            Choice("sheets", "Prints on a sheet", "outlines by mouse or keys", "p"),
            Choice(BACKUPS, "Bring back a backup", "as the collection was before", "b"),
            Choice("others", "Another collection", "open or start one", "c"),
            Choice("guide", "Guide", "F1", "g"),
            Choice("leave", "Leave", "Ctrl+Q", NO_KEY),
        ]
        await self.app.push_screen(Choices("Menu", choices, answer))

    async def action_redo(self) -> None:
        """Take in again what was just taken back."""
        if self.sitting.writable and self.sitting.redo() is not None:
            self._listing.reload()
            await self.on_screen_resume()
        else:
            self.say("Nothing was taken back.")

    async def action_others(self) -> None:
        """Open or start another collection."""
        await self._others()

    async def action_guide(self) -> None:
        """Show the guide."""
        await self.app.push_screen(GuideScreen())

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")
