"""The sitting's screen: one item, its picture, and its prompts in the order in which they are asked.

It shows and it keeps; `tui.screens.sitting_keys` adds what each key does.
"""

import gc

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.geometry import Size
from textual.timer import Timer

from boxlore.core.dates.family_display import FamilyWay
from boxlore.core.dates.phrases import make_ready
from boxlore.core.errors import BoxloreError
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting.beginning import Way
from boxlore.tasks.sitting.correcting import to_settle
from boxlore.tasks.sitting.course import consent_due, due_words, suggest_end
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.sharp_picture import SharpPictures
from boxlore.tasks.sitting.small_picture import Glimpse, Glimpses
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tasks.sitting.which_meant import open_question
from boxlore.tasks.telling.markers import Marked
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import ITEM_KEYS
from boxlore.tui.screens.beside_prompts import further_questions, legend, worth_asking
from boxlore.tui.screens.settling import ask_settle
from boxlore.tui.screens.sitting_markers import MarkingScreen
from boxlore.tui.widgets.bars import Bottom, Top
from boxlore.tui.widgets.fetching import Fetch
from boxlore.tui.widgets.picture import Picture
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.prompt_block import Block, asked_or_made, made_of
from boxlore.tui.widgets.worth_asking import Question, WorthAsking

WIDE, TALL = 100, 34
"""From so many columns on the picture stands beside the prompts; from so many rows on there is space between them."""


SELDOM = (20_000, 20, 20)
"""How many objects are made between two searches for garbage, of the young, the older and the old (gc.set_threshold).
A search of all takes as long as a key may."""


class ItemView(MarkingScreen):
    """Shows the item at `position` of the list; `open` shows another in the same widgets, so nothing is built anew.

    `before` is the id of the item shown before this one, `marked` are the item's markers.
    """

    AUTO_FOCUS = ""
    DEFAULT_CSS = """
    ItemView #body { height: 1fr; }
    ItemView #desks { display: none; height: 1; background: $panel; padding: 0 1; }
    ItemView #side { width: 3fr; display: none; padding: 0 1; background: $surface; }
    ItemView #form { width: 2fr; scrollbar-size-vertical: 1; padding-top: 1; }
    ItemView.-wide #side { display: block; }
    ItemView #legend { height: auto; max-height: 30%; background: $surface; padding: 0 1; }
    ItemView.-low Block { margin-bottom: 0; }
    ItemView.-low #form { padding-top: 0; }
    """

    def __init__(
        self, sitting: Sitting, listing: Listing, showing: Showing, position: int = 0, *, way: Way | None = None
    ) -> None:
        """`way` are the only items that PgDn and PgUp go through, if not all."""
        super().__init__()
        self.way = way
        self.sitting, self.listing, self.position = sitting, listing, position
        self.showing = showing
        self.marked: tuple[Marked, ...] = ()
        self.picked: dict[str, None] = {}
        """Ids of the items picked out in the list, for something that is so of all of them."""
        self.glimpses = Glimpses(sitting.collection)
        self.sharp_pictures = SharpPictures(sitting.collection)
        self.record: Record = sitting.record(listing.id_at(position))
        self.before = ""
        self.top = Top()
        self.desks = Line(id="desks")
        self.note = Line(id="note")
        self.picture = Picture()
        self.legend = Line(id="legend")
        self.asks = (WorthAsking(), WorthAsking())
        """Below the picture, and on a narrow screen below the prompts."""
        self.questions: list[Question] = []
        self._further: list[Question] = []
        """The last ones of `questions`: what follows from the lives of those in it."""
        self._is_ready = False
        """Whether the words of dates, which they are worked out with, are in memory."""
        self.blocks = [Block(prompt, self) for prompt in sitting.prompts]
        self._note = self._desks = ""
        self._shown = self._was_low = False
        self._later: Timer | None = None

    def compose(self) -> ComposeResult:
        self._fit(self.app.size)  # before there are widgets, so that none is styled twice
        yield self.top
        yield self.desks
        with Horizontal(id="body"):
            with Vertical(id="side"):
                yield self.picture
                yield self.legend
                yield self.asks[0]
            with VerticalScroll(id="form", can_focus=False):
                yield from self.blocks
        yield self.asks[1]
        yield self.note
        yield Bottom(ITEM_KEYS)

    def on_mount(self) -> None:
        self.open(self.position)
        if not self.sitting.writable:
            for block in self.blocks:
                block.words.read_only = True
            why = self.sitting.collection.store.why_read_only
            self.say(f"For reading only: {why} What is typed here could not be kept.", bad=True)
        if self.sitting.prompts_fault:
            self.say(self.sitting.prompts_fault, bad=True)
        elif due := consent_due(self.sitting):
            self.say(f"Consent to ask for again: {'; '.join(map(due_words, due))}. Esc, then “This sitting”.")
        self.hear_page()
        self.call_after_refresh(self._begin_beside)

    def _begin_beside(self) -> None:
        """Start the slow parts in threads, once the first question is drawn: the list of places, the teller's page."""
        gc.freeze()  # what was made until now stays; to look through it for garbage took 0.1 s, in the midst of a key
        gc.set_threshold(*SELDOM)
        self.run_worker(self._prepare, thread=True, group="places", exit_on_error=False)
        self.run_worker(self.serve_page, thread=True, group="page", exit_on_error=False)

    def _prepare(self) -> None:
        make_ready()
        self.call_later(self._dates_ready)
        self.sitting.prepare()

    def _dates_ready(self) -> None:
        self._is_ready = True
        self._ask_further()

    def _ask_further(self) -> None:
        """Show what else is worth asking, which is worked out after all the rest is drawn."""
        with self.said():
            further = further_questions(self.sitting, self.record)
            if further != self._further:
                self.questions[len(self.questions) - len(self._further) :] = further
                self._further = further
                self._say_asks()

    def on_resize(self) -> None:
        low = self._fit(self.size)
        self.say(self._note, bad=self.note.has_class("-bad"))
        if low != self._was_low:
            self._was_low = low
            self._say_others()
        self.top.tell(self._called())
        self._say_asks()
        self.call_after_refresh(self.show_picture)

    def _fit(self, size: Size) -> bool:
        """Choose the layout for a size. Returns whether the screen is low (under TALL rows)."""
        low = size.height < TALL
        self.set_class(size.width >= WIDE, "-wide")
        self.set_class(low, "-low")
        return low

    def on_screen_resume(self) -> None:
        if self._shown:
            self.refresh_record()
        self._shown = True

    def _say_others(self) -> None:
        for block in self.blocks:
            block.say_others(self.sitting.others(self.record, block.prompt))

    # showing an item

    def open(self, position: int) -> None:
        """Show the item at a position; the cursor stands in the first prompt when this returns."""
        self.say("")  # what was said is about the item that is put away
        self.before = self.record.id
        self.position = position
        item = self.listing.id_at(position)
        fault = self._note_shown(item)
        self.fill(self.sitting.record(item))
        if fault:
            self.say(fault, bad=True)
        self.query_one("#form", VerticalScroll).scroll_home(animate=False)
        if words := suggest_end(self.sitting):
            self.say(f"{words} Esc, “This sitting”, “End the sitting”.")
        self.set_focus(self.blocks[0].words)
        for block in self.blocks:
            block.draw()
        if self.showing.lookers and position + 1 < len(self.listing):
            following = self.sitting.record(self.listing.id_at(position + 1))
            self.run_worker(
                lambda: self.showing.expect(following), thread=True, exclusive=True, group="ahead", exit_on_error=False
            )

    def _note_shown(self, item: str) -> str:
        """Note in the time log that the item is out; what hinders it, for it is shown in any case."""
        try:
            self.sitting.show(item)
        except BoxloreError as error:
            return str(error)
        return ""

    def fill(self, record: Record, *, keeps: bool = True) -> None:
        """Show a record. Without `keeps`, words being typed stay as they are."""
        if record.id != self.record.id:
            self._further = []
        self.record = record
        self.marked = self.sitting.markers.of(record)
        if self.sitting.writable:
            self.sitting.await_names([marker.id for marker in self.marked if marker.waits])
        self.showing.show(record, self.marked, f"{self.position + 1} of {len(self.listing)}")
        for block in self.blocks:
            block.asking = self.asking_of(block)
            own = self.sitting.own(record, block.prompt)
            typing = not keeps and block.changed
            block.load(record, own, self.sitting.others(record, block.prompt), keeps=not typing)
            block.understood = asked_or_made(
                open_question(self.sitting, record, block.prompt), own, block.prompt, self._way
            )
            block.draw()
        self.top.tell(self._called())
        self.stand()
        self.questions = [*worth_asking(self.sitting, record, self.sitting.prompts), *self._further]
        self._say_asks()
        if self._is_ready:
            self.call_after_refresh(self._ask_further)
        parts = legend(record, self.marked)
        self.legend.say(*parts)
        self.legend.display = bool(parts)
        self.show_picture()

    @property
    def _way(self) -> FamilyWay:
        """How this family writes its dates."""
        return family_way(self.sitting.collection.settings)

    def refresh_record(self) -> None:
        """Read the item's record again and show it, after a change. Words being typed stay."""
        with self.said():
            self.fill(self.sitting.record(self.record.id), keeps=False)

    def _called(self) -> str:
        """The item's number, where it is kept, in short on a narrow screen, and what it is."""
        record = self.record
        narrow = not self.has_class("-wide")
        mark = (record.mark.short if narrow else record.mark.long) if record.mark else "no box yet"
        kind = {"print": "", "card": " · card photograph"}.get(record.kind, f" · {record.kind}")
        return f"{record.number} · {mark}{kind}"

    def place(self) -> str:
        """“5 of 25”, or along a way “Box 1, 2 of 7”."""
        if self.way is not None and self.position in self.way.positions:
            return f"{self.way.name}, {self.way.positions.index(self.position) + 1} of {len(self.way.positions)}"
        return f"{self.position + 1} of {len(self.listing)}"

    def say(self, words: str, *, bad: bool = False) -> None:
        """Show one sentence above the keys; '' takes it away. `bad`: it is an error."""
        self._note = words
        self.note.display = bool(words) or not self.has_class("-low")
        self.note.set_class(bad, "-bad")
        self.note.say(from_inside(words))

    def say_desks(self, words: str) -> None:
        """Show below the top line what is to be said of other desks; nothing takes no room."""
        if words == self._desks:
            return
        self._desks = words
        if self.desks.display != bool(words):
            self.desks.display = bool(words)
            self.call_after_refresh(self.show_picture)
        self.desks.say(from_inside(words))

    def said_before(self) -> None:
        """Another key was pressed: what the last one did is said no more; that nothing can be kept is."""
        if self._note and self.sitting.writable and not self.unsaved:
            self.say("")

    async def settle(self, field: str) -> None:
        """Ask which answer to this question is used, where one is."""

        def done(words: str) -> None:
            self.refresh_record()
            self.say(words)

        if to_settle(self.record, field):
            await ask_settle(self, self.record, field, done)

    def _say_asks(self) -> None:
        """Show what is worth asking below the picture, or on a narrow screen below the prompts, in a part of the room
        that there is."""
        columns, rows = self.app.size
        wide = self.has_class("-wide")
        shown, other = self.asks if wide else self.asks[::-1]
        shown.tell(self.questions, columns * 3 // 5 - 5 if wide else columns - 2, rows * 3 // 10 if wide else rows // 6)
        other.display = False

    def task_done(self, *, wrote: bool) -> None:
        """Called when a long task is over; `wrote` says that it may have changed the collection, so the list is read
        again."""
        if wrote:
            self.listing.reload()
            self.position = max(self.listing.position(self.record.id), 0)
        self.refresh_record()

    # the picture

    def show_picture(self) -> None:
        """Show the item's first picture. One that is not in memory is read in a thread, so that typing never waits."""
        wide, high = self.picture.wanted
        if wide < 4 or high < 4 or not self.has_class("-wide"):
            return
        if self.showing.is_covered(self.record.id):
            words = "Care: read the note below first. F2 shows the picture."
            self.picture.show(Glimpse(0, 0, b"", words))
            return
        scan = self.recto
        fetch = Fetch(self, scan, (wide, high), self.picture.graphics)
        self.picture.show(fetch.glimpse, self.pins(scan), fetch.sharp)
        fetch.begin(self.picture, self._fetched)

    def _fetched(self, scan: ScanFile | None) -> None:
        if scan is self.recto or (scan and self.recto and scan.id == self.recto.id):
            self.show_picture()

    def on_painted_sharper(self) -> None:
        """The terminal has said that it can draw pictures."""
        self.show_picture()

    # hearing

    def understand(self, block: Block) -> None:
        """Show below the words what is understood of them; a place only after a pause in typing (0.15 s)."""
        block.suggest(self.sitting.complete(block.prompt, block.text))
        block.understood = ()
        if block.prompt.reads == "place":
            if self._later is not None:
                self._later.stop()
            self._later = self.set_timer(0.15, lambda: self._understood(block))
        elif block.prompt.reads == "date":
            self._understood(block)
        block.draw()

    def _understood(self, block: Block) -> None:
        understood = None
        with self.said():
            understood = self.sitting.understand(block.prompt, block.text, self.record)
        block.understood = () if understood is None else made_of(understood, self._way)
        block.draw()

    async def on_bottom_pressed(self, event: Bottom.Pressed) -> None:
        await self.run_action(event.action)
