"""The terminal interface: which collection is open, and how one leaves without losing a word.

Every key typed is kept as a draft on the disk before it is drawn. Leaving, by a key, by a signal or by a closed
terminal, makes the words in the prompts statements. After a fault of our own the drafts are still on the disk, and
become statements when the collection is opened again.
"""

import asyncio
import sys
import traceback
from collections.abc import Awaitable, Callable
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from contextlib import ExitStack
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from rich.text import Text

from boxlore.core.errors import BoxloreError, CouldNot
from boxlore.core.findings import several
from boxlore.tasks.collection.backups import ListedBackup, has_backups, restore, said
from boxlore.tasks.collection.last_opened import last_collection, recent_collections, remember
from boxlore.tasks.collection.opening import DATABASE, Collection, open_collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.beginning import Way, check_teller, where_stopped
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tui.drawing import DrawingApp
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import bound
from boxlore.tui.screens.backups import choose_backup
from boxlore.tui.screens.cards import Card, Notice
from boxlore.tui.screens.choose_collection import StartScreen
from boxlore.tui.screens.empty_collection import BareScreen
from boxlore.tui.screens.list_screen import ListScreen
from boxlore.tui.screens.long_task import WorkingScreen
from boxlore.tui.screens.sitting_front import ASK, LIST, MENU, FrontScreen, Show
from boxlore.tui.screens.sitting_keys import ItemScreen
from boxlore.tui.themed_app import ThemedApp

if TYPE_CHECKING:
    from boxlore.tasks.collection.live_meeting import LiveMeeting


MEETING_SHOWN = 0.5
"""Seconds between two looks at what other desks did."""


class Boxlore(DrawingApp, ThemedApp):
    """The app. It holds the open collection and shows its first item; without a collection, the first screen."""

    BINDINGS = bound(("ctrl+q", "leave"))

    def __init__(
        self,
        collection: Collection | None,
        *,
        narrator: str = "",
        interviewer: str = "",
        showing: Showing | None = None,
        broken: tuple[Path, str] | None = None,
        door: bool = False,
        opened: ExitStack | None = None,
    ) -> None:
        """`opened` closes the collection, where it is to be closed before the app ends. `broken` is a folder whose
        collection could not be opened, and why. `door`: ask first who tells, and where to begin; without it the first
        item is shown at once."""
        super().__init__()
        self.showing = showing or Showing()
        self.collection = collection
        self.made: Path | None = None
        self._broken, self._door = broken, door
        self.lost: list[str] = []
        """Words that could not be kept when the keeper left; they are printed, so that they can be kept elsewhere."""
        self._narrator, self._interviewer = narrator, interviewer
        self._opened = opened or ExitStack()
        self._first_words = ""
        self._ahead: Future[Listing] | None = None
        self._asked_to_leave = False
        self._live: LiveMeeting | None = None
        self._came = 0

    async def on_mount(self) -> None:
        self.signals.hear(draws=not self.is_headless)
        if self.collection is None:
            ways = (self.open_folder, self.make_demo, self.restore, self.rebuild, self.from_parcel, self.open_made)
            await self.push_screen(StartScreen(*ways, broken=self._broken, recent=recent_collections()))
        else:
            await self.show_collection(self.collection)

    def read_ahead(self, reader: Executor) -> None:
        """Read the order of the items in a thread while the screen is made; SQLite reads without Python's lock."""
        if (collection := self.collection) is not None:

            def read() -> Listing:
                try:
                    return Listing(collection)
                finally:
                    collection.store.release_readers()  # this thread reads no more

            self._ahead = reader.submit(read)

    def signalled(self) -> None:
        self._leaving = asyncio.get_running_loop().create_task(self._leave_at_once())

    # opening

    async def show_collection(self, collection: Collection) -> None:
        """Begin a sitting with a collection, and show its first item."""
        self.collection = self.showing.collection = collection
        self._begin_meeting(collection)
        sitting = Sitting(collection, narrator=self._narrator, interviewer=self._interviewer)
        recovered = sitting.begin()
        listing = await asyncio.wrap_future(self._ahead) if self._ahead else Listing(collection)
        self._ahead = None
        show = self.show_door if self._door else self.show_items
        if not len(listing):
            await self.push_screen(BareScreen(sitting, listing, show, self._other_collection, self.showing))
            return
        await show(sitting, listing)
        if recovered:
            many = len(recovered) > 1
            subject = (
                f"{len(recovered)} answers that were being typed are" if many else "one answer that was being typed is"
            )
            words = f"After an interruption: {subject} kept."
            if isinstance(self.screen, ItemScreen):
                self._item_screen().say(words)
            else:
                self._first_words = words

    def _begin_meeting(self, collection: Collection) -> None:
        """Meet other desks beside all else, where a meeting place is known; it ends before the collection is closed."""
        if collection.settings.meeting and collection.store.writable:
            from boxlore.tasks.collection.live_meeting import LiveMeeting

            self._live = LiveMeeting(collection)
            self._came = 0
            shown = self.set_interval(MEETING_SHOWN, self._show_meeting)
            self._opened.callback(self._live.end)
            self._opened.callback(shown.stop)
            self._live.begin()

    def _show_meeting(self) -> None:
        """Show what other desks do, and what came of them. Words being typed stay."""
        if (live := self._live) is None:
            return
        for screen in self._item_screens():
            live.out = screen.record.id
            screen.say_desks(live.line)
            if live.came != self._came and screen is self.screen:
                self._came = live.came
                screen.task_done(wrote=True)

    async def show_door(self, sitting: Sitting, listing: Listing) -> None:
        """Show the front door: who tells, and where to begin. Opened for reading only, nobody can tell: then the item
        that was out last is shown."""
        if not sitting.writable:
            stopped = where_stopped(sitting.collection, listing)
            await self.push_screen(ItemScreen(sitting, listing, self.showing, stopped.position if stopped else 0))
            return
        front = FrontScreen(sitting, listing, self._begin_at(sitting, listing), self._other_collection)
        await self.push_screen(front)
        await front.action_who()

    def _begin_at(self, sitting: Sitting, listing: Listing) -> Show:
        """What the front door does at its end: the sitting's screen, and the list or the menu above it."""

        async def show(position: int, way: Way | None, above: str) -> None:
            screen = ItemScreen(sitting, listing, self.showing, position, way=way)
            opens = {LIST: screen.action_find, ASK: screen.action_asking, MENU: screen.action_menu}
            with self.batch_update():  # drawn at once: an Esc at a photograph without its menu would close the menu
                await self.push_screen(screen)
                if self._first_words:
                    screen.say(self._first_words)
                    self._first_words = ""
                if above in opens:
                    await opens[above]()

        return show

    async def _other_collection(self, *, hidden: bool = False) -> None:
        """Show the screen on which a collection is opened or started; `hidden` while another card stands on it."""
        ways = (self.open_folder, self.make_demo, self.restore, self.rebuild, self.from_parcel, self.open_made)
        back = self.collection.settings.title if self.collection is not None else ""
        await self.push_screen(StartScreen(*ways, recent=recent_collections(), hidden=hidden, back=back))

    async def show_items(self, sitting: Sitting, listing: Listing) -> None:
        """Show the sitting's screen at the first item."""
        await self.push_screen(ItemScreen(sitting, listing, self.showing))

    async def on_item_over_emptied(self, emptied: ItemScreen.Emptied) -> None:
        """Take the sitting's screen away, which has no item any more; the one of an empty collection stands then."""
        while isinstance(self.screen, ItemScreen | FrontScreen):
            await self.pop_screen()
        if isinstance(self.screen, BareScreen):
            bare = self.screen
        else:
            bare = BareScreen(emptied.sitting, emptied.listing, self.show_items, self._other_collection, self.showing)
            await self.push_screen(bare)
        bare.say("Taken back. Ctrl+Y takes it in again; your own files stay where they are.")

    async def open_folder(self, folder: Path) -> str:
        """Open the collection in a folder named on the first screen. Returns what went wrong, or ''."""
        if self.collection is not None and folder.resolve() == self.collection.folder.resolve():
            self.pop_screen()  # it is open: back to its front door
            return ""
        if not await self._kept():
            return "What was typed could not be kept, so this collection stays open."
        with ExitStack() as opened:
            try:
                collection = opened.enter_context(open_collection(folder, fallback_read_only=True))
            except BoxloreError as error:
                return str(error)
            remember(folder)
            if self.collection is None:
                self._opened.push(opened.pop_all())
                await self.show_collection(collection)
            else:
                self.call_later(self._change_to, collection, opened.pop_all())
        return ""

    async def _change_to(self, collection: Collection, opened: ExitStack) -> None:
        """Give the collection that was open back to others, and show another."""
        with self.batch_update():
            await self._leave_screens()
            self._opened.push(opened)
            await self.show_collection(collection)

    async def make_demo(self, folder: Path) -> str:
        """Make the demonstration in a folder; it is opened when its report is closed. Returns ''."""
        from boxlore.tasks.demo import every_task

        def job(progress: Progress) -> list[str]:
            lines: list[str] = []
            for label, where in every_task.run(folder, lines.append, progress):
                lines.append(f"{label}: {where}")
            self.made = folder
            return lines

        await self.push_screen(WorkingScreen("The demonstration", job, lambda: None))
        return ""

    async def rebuild(self, folder: Path, package: Path, again: Callable[[str], Awaitable[None]]) -> None:
        """Make a collection again from a transfer; it is opened when its report is closed. `again` asks once more."""
        from boxlore.tasks.archive.rebuild import rebuild

        def job(progress: Progress) -> list[str]:
            progress.begin("Making it again", 0)
            rebuilt = rebuild(folder, package)
            self.made = folder
            counts = ((rebuilt.items, "item"), (rebuilt.scans, "scan"), (rebuilt.statements, "statement"))
            return [
                f"{folder}: {', '.join(several(count, thing) for count, thing in counts)}.",
                *rebuilt.notes,
                *[f"The transfer does not hold {path}." for path in rebuilt.missing],
                "What boxes are made of and where they stand is not in a transfer: “Keep safe” takes it.",
                "Nor is what is kept to the family or the keeper: owners, givers and lenders, words for the family.",
            ]

        await self.push_screen(WorkingScreen("Make one again from a transfer", job, lambda: None, again=again))

    async def from_parcel(
        self, folder: Path, parcel: Path, passphrase: str, again: Callable[[str], Awaitable[None]]
    ) -> None:
        """Make a working copy of a parcel; it is opened when its report is closed. `again` asks once more."""
        from boxlore.tasks.collection.parcels import copy_from_parcel, passphrase_for
        from boxlore.tasks.collection.said_of_joining import said_of_working_copy

        def job(progress: Progress) -> list[str]:
            made = copy_from_parcel(folder, parcel, passphrase_for(parcel, lambda: passphrase), progress)
            self.made = folder
            later = "Later, “Hand on”, “A parcel” makes a parcel of what was told here, to send back."
            return [*said_of_working_copy(parcel, folder, made.joined), later]

        await self.push_screen(WorkingScreen("Begin with a parcel", job, lambda: None, again=again))

    async def restore(self, folder: Path) -> str:
        """Ask which backup shall come back, bring it back, and open it when its report is closed. Returns ''."""

        async def chosen(wanted: ListedBackup) -> None:
            await self._bring_back(folder, wanted)

        await choose_backup(self, folder, chosen)
        return ""

    async def open_made(self) -> str:
        """Open what was just made or brought back, if anything was. Returns what went wrong, or ''."""
        folder, self.made = self.made, None
        return "" if folder is None else await self.open_folder(folder)

    async def action_others(self) -> None:
        """Show where another collection is opened or started; Esc goes back to the one that is open."""
        if await self._kept():
            await self._other_collection()

    async def action_backups(self) -> None:
        """Ask which backup shall come back. Everything typed is kept, the collection is closed, the backup brought
        back, and what is there then is opened: as chosen, or as it was, where that could not be done."""
        collection = self.collection
        if collection is None:
            return
        folder = collection.folder

        async def chosen(wanted: ListedBackup) -> None:
            if await self._kept():
                await self._put_away()
                await self._bring_back(folder, wanted, reopen=True)

        await choose_backup(self, folder, chosen)

    async def _put_away(self) -> None:
        """Close the collections that are open, once no thread reads in them; the first screen stands then."""
        with self.batch_update():
            await self._leave_screens()
            await self._other_collection(hidden=True)

    async def _leave_screens(self) -> None:
        """Take all screens away, and close the collections once no thread reads in them."""
        reading = [worker for worker in self.workers if worker.is_running]
        await asyncio.gather(*(worker.wait() for worker in reading), return_exceptions=True)
        while len(self.screen_stack) > 1:
            await self.pop_screen()
        self.collection = self.showing.collection = None
        self.close_collections()

    async def _bring_back(self, folder: Path, wanted: ListedBackup, *, reopen: bool = False) -> None:
        """Bring a backup back on a card; the collection is opened when its report is closed, with `reopen` also as it
        was, where that could not be done."""

        def job(progress: Progress) -> list[str]:
            progress.begin("Bringing it back", 0)
            self.made = folder if reopen else None
            lines = said(restore(folder, wanted.backup.path), wanted)
            self.made = folder
            return lines

        await self.push_screen(WorkingScreen("Bring back a backup", job, lambda: None))

    def close_collections(self) -> None:
        """Close the collections that are open."""
        self._opened.close()

    async def run_action(self, *action: Any, **named: Any) -> bool:
        """Run the action of a key: what was said of an earlier one is over then. A fault of the disk ends no program:
        it is said, and what is typed stays."""
        if isinstance(self.screen, ItemScreen | ListScreen):
            self.screen.said_before()
        try:
            return await super().run_action(*action, **named)
        except BoxloreError as error:
            if screens := self._item_screens():
                screens[0].say(str(error), bad=True)
            else:
                await self.push_screen(Notice("This could not be done", from_inside(str(error))))
            return True

    # leaving

    def _item_screen(self) -> ItemScreen:
        return next(screen for screen in self.screen_stack if isinstance(screen, ItemScreen))

    def _item_screens(self) -> list[ItemScreen]:
        return [screen for screen in self.screen_stack if isinstance(screen, ItemScreen)]

    async def _kept(self) -> bool:
        item_screens = self._item_screens()
        return not item_screens or await item_screens[0].settled()

    async def action_leave(self) -> None:
        """Keep everything, then leave. If something cannot be kept, say so and stay; asked again, leave anyway.

        A card may stand against it: a form that holds words, a task at work. It is shown then, and says why.
        """
        for card in [screen for screen in reversed(self.screen_stack) if isinstance(screen, Card)]:
            if not await card.may_leave():
                while self.screen is not card:
                    self.pop_screen()
                return
        if await self._kept() or self._asked_to_leave:
            self.lost = [words for screen in self._item_screens() for words in screen.unsaved]
            self.exit(0)
            return
        self._asked_to_leave = True
        while not isinstance(self.screen, ItemScreen):
            self.pop_screen()

    async def action_quit(self) -> None:
        await self.action_leave()

    async def _leave_at_once(self) -> None:
        """Keep everything and leave, after a signal: nobody can be asked any more."""
        await self._kept()
        self.lost = [words for screen in self._item_screens() for words in screen.unsaved]
        self.exit(0)

    def _fatal_error(self) -> None:
        """Handle a fault of our own: say where everything is, then what happened. No words told are printed."""
        where = self.collection.folder / DATABASE if self.collection else None
        but = (
            ", but for the words that were NOT SAVED" if any(screen.unsaved for screen in self._item_screens()) else ""
        )
        safe = f"Everything told is safe in {where}{but}.\n" if where else ""
        message = Text(f"Boxlore met a fault of its own and had to stop.\n{safe}Open it again to go on.\n\n")
        self._exit_renderables.append(message.append("".join(traceback.format_exc(limit=-8)), style="dim"))
        self._close_messages_no_wait()


def run(
    collection: Path | None,
    *,
    narrator: str = "",
    interviewer: str = "",
    on_day: date | None = None,
    showing: Showing | None = None,
    door: bool = False,
) -> int:
    """Open a collection and sit with it, `door`: by the front door. Returns an exit code.

    Without a collection it opens the one in this folder, else the one opened last, else the first screen.
    """
    folder = collection
    if folder is None or (folder == Path() and not (folder / DATABASE).is_file()):
        folder = Path() if has_backups(Path()) else last_collection()
    with ExitStack() as stack, ThreadPoolExecutor(1) as reader:
        opened, broken = None, None
        try:
            if folder is not None:
                opened = stack.enter_context(open_collection(folder, fallback_read_only=True, on_day=on_day))
                check_teller(opened, narrator)
                remember(folder)
        except CouldNot as error:
            if folder is None or not has_backups(folder) or not sys.stdin.isatty():
                raise
            broken = folder, str(error)
        app = Boxlore(
            opened, narrator=narrator, interviewer=interviewer, showing=showing, broken=broken, door=door, opened=stack
        )
        app.read_ahead(reader)
        code = app.run()
    if app.collection is not None and not app.lost and not app.return_code:
        where = app.collection.folder.resolve()
        print(f"All that was told is kept in {where}; boxlore opens it again.", file=sys.stderr)
    for words in app.lost:
        print(f"NOT KEPT, for the disk refused: {words}", file=sys.stderr)
    return 3 if app.return_code else code or 0
