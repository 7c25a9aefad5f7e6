"""The sitting's screen: one item, its picture, and its prompts in the order in which they are asked.

It shows and it keeps; `tui.screens.sitting_keys` adds what each key does.
"""

from collections.abc import Callable

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.geometry import Size
from textual.timer import Timer

from boxlore.core.dates.family_display import FamilyWay
from boxlore.core.errors import BoxloreError
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting.beginning import Way
from boxlore.tasks.sitting.course import consent_due, due_words, suggest_end
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.linking import related_lines
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.sharp_picture import SharpPictures
from boxlore.tasks.sitting.small_picture import Glimpse, Glimpses
from boxlore.tasks.sitting.tellers_page import Showing, Tap
from boxlore.tasks.sitting.which_meant import open_question
from boxlore.tasks.sitting.which_name import open_name
from boxlore.tasks.sitting.which_person import open_person
from boxlore.tasks.telling.markers import Marked
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import ITEM_KEYS
from boxlore.tui.screens.saving import KeepingScreen
from boxlore.tui.widgets.bars import Bottom, Top
from boxlore.tui.widgets.fetching import Fetch
from boxlore.tui.widgets.picture import Picture, Pin
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.prompt_block import Block, asked_or_made, made_of

WIDE, TALL = 100, 34
"""From so many columns on the picture stands beside the prompts; from so many rows on there is space between them."""


class ItemView(KeepingScreen):
    """Shows the item at `position` of the list; `open` shows another in the same widgets, so nothing is built anew.

    `before` is the id of the item shown before this one, `marked` are the item's markers.
    """

    AUTO_FOCUS = ""
    DEFAULT_CSS = """
    ItemView #body { height: 1fr; }
    ItemView #side { width: 3fr; display: none; padding: 0 1; background: $surface; }
    ItemView #form { width: 2fr; scrollbar-size-vertical: 1; padding-top: 1; }
    ItemView.-wide #side { display: block; }
    ItemView #legend { height: auto; max-height: 30%; background: $surface; padding: 0 1; }
    ItemView .asks { height: auto; background: $surface; color: $secondary; padding: 0 1; }
    ItemView #side .asks { max-height: 30%; }
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
        self.glimpses = Glimpses(sitting.collection)
        self.sharp_pictures = SharpPictures(sitting.collection)
        self.record: Record = sitting.record(listing.id_at(position))
        self.before = ""
        self.top = Top()
        self.note = Line(id="note")
        self.picture = Picture()
        self.legend = Line(id="legend")
        self.asks = (Line(classes="asks"), Line(classes="asks"))
        self.blocks = [Block(prompt, self) for prompt in sitting.prompts]
        self._note = ""
        self._shown = self._was_low = False
        self._later: Timer | None = None

    def compose(self) -> ComposeResult:
        self._fit(self.app.size)  # before there are widgets, so that none is styled twice
        yield self.top
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
        self.showing.heard = lambda tap: self._from_page(lambda: self._tapped(tap))
        self.showing.uncovered = lambda: self._from_page(self.show_picture)
        self.call_after_refresh(self._begin_beside)

    def _begin_beside(self) -> None:
        """Start the slow parts in threads, once the first question is drawn: the list of places, the teller's page."""
        self.run_worker(self.sitting.prepare, thread=True, group="places", exit_on_error=False)
        self.run_worker(self._serve, thread=True, group="page", exit_on_error=False)

    def on_resize(self) -> None:
        low = self._fit(self.size)
        self.say(self._note, bad=self.note.has_class("-bad"))
        if low != self._was_low:
            self._was_low = low
            self._say_others()
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
            self.say(f"{words} Esc, “This sitting”, “Close”.")
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
        self.record = record
        self.marked = self.sitting.markers.of(record)
        if self.sitting.writable:
            self.sitting.await_names([marker.id for marker in self.marked if marker.waits])
        self.showing.show(record, self.marked, f"{self.position + 1} of {len(self.listing)}")
        for block in self.blocks:
            block.asking = self._asking(block)
            own = self.sitting.own(record, block.prompt)
            typing = not keeps and block.changed
            block.load(record, own, self.sitting.others(record, block.prompt), keeps=not typing)
            block.understood = asked_or_made(open_question(self.sitting, record, block.prompt), own, self._way)
            block.draw()
        self._head()
        self._say_asks()
        self._say_legend()
        self.show_picture()

    @property
    def _way(self) -> FamilyWay:
        """How this family writes its dates."""
        return family_way(self.sitting.collection.settings)

    def refresh_record(self) -> None:
        """Read the item's record again and show it, after a change. Words being typed stay."""
        with self.said():
            self.fill(self.sitting.record(self.record.id), keeps=False)

    def _head(self) -> None:
        record = self.record
        narrow = not self.has_class("-wide")
        mark = (record.mark.short if narrow else record.mark.long) if record.mark else "no box yet"
        kind = "" if record.kind == "print" else f" · {record.kind}"
        self.top.tell(f"{record.number} · {mark}{kind}")
        self.stand()

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

    def _say_asks(self) -> None:
        parts: list[str | tuple[str, str]] = []
        if (name := open_name(self.sitting, self.record)) is not None:
            parts += [f"\n? {name.question} ", ("Ctrl+P", "bold")]
        to_ask = self.sitting.to_ask(self.record.id)
        if (person := open_person(self.sitting, self.record)) is not None:
            numbered = " · ".join(f"{number} {short(words, 34)}" for number, words in enumerate(person.names, 1))
            parts += [f"\n? {person.asks} ", ("Ctrl+P", "bold"), f" chooses: {numbered}"]
            to_ask = [words for words in to_ask if words != person.asks]
        parts += [f"\n? {words}" for words in self.sitting.gentle_questions(self.record)]
        parts += [f"\n→ {words}" for words in to_ask]
        wide = self.has_class("-wide")
        for line, shown in zip(self.asks, (wide, not wide), strict=True):
            line.say(("Worth asking", "bold"), *parts)
            line.display = bool(parts) and shown

    def _say_legend(self) -> None:
        parts: list[str | tuple[str, str]] = []
        for person in self.record.shown():
            if person.number:
                parts += ["▐", (str(person.number), "reverse"), "▌"]
                parts += [f" {person.name}{'?' if person.unsure else ''}   "]
        for mark in self.marked:
            if not mark.name:
                what = "not known" if mark.asked else "not named"
                parts += ["▐", (str(mark.number), "reverse"), f"▌ {what}   "]
        backs = sum(scan.side == "verso" for scan in self.record.scans)
        if backs:
            parts.append(("F2 shows the back", "italic"))
        related = related_lines(self.record)
        if related:
            parts.append("\n" * bool(parts) + " · ".join(related))
        if care := self.record.words("care"):
            parts = [(f"Care: {care}\n", "bold $warning"), *parts]
        self.legend.say(*parts)
        self.legend.display = bool(parts)

    def task_done(self, *, wrote: bool) -> None:
        """Called when a long task is over; `wrote` says that it may have changed the collection, so the list is read
        again."""
        if wrote:
            self.listing.reload()
            self.position = max(self.listing.position(self.record.id), 0)
        self.refresh_record()

    # the picture

    @property
    def recto(self) -> ScanFile | None:
        """The scan to show first."""
        return self.record.scans[0] if self.record.scans else None

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

    def pins(self, scan: ScanFile | None) -> list[Pin]:
        """The item's markers that are on this scan, as pins to draw."""
        markers = [marker for marker in self.marked if scan is not None and marker.scan == scan.id]
        return [Pin(marker.number, marker.x, marker.y) for marker in markers]

    # markers

    def _asking(self, block: Block) -> str:
        """`Who is at 3?` in the prompt of names, while a marker waits for its name; else ''."""
        marker_id = self.sitting.to_name[0].id if self.sitting.to_name else ""
        number = next((marker.number for marker in self.marked if marker.id == marker_id), 0)
        return f"Who is at {number}?" if number and block.prompt.field == "person" else ""

    def mark_at(self, scan: ScanFile, x: float, y: float, *, by_keeper: bool) -> None:
        """Set a marker at x, y (0..1 of the picture as it is shown).

        `by_keeper` moves the cursor to the prompt of names. A touch on the teller's page never moves the cursor, for
        the keeper may be typing.
        """
        if not self.sitting.writable:
            self.say("Open for reading only; no marker can be set.", bad=True)
            return
        try:
            new_marker = self.sitting.mark(self.record, scan, x, y)
        except BoxloreError as error:
            self.say(str(error), bad=True)
            return
        self.refresh_record()
        number = next((marker.number for marker in self.marked if marker.id == new_marker.id), 0)
        if by_keeper:
            self.name_next()
        else:
            self.say(f"Marker {number} was touched. The next name under “Who” is there.")

    def name_marker(self, ident: str) -> None:
        """Ask now who is at this marker, named before or not."""
        self.sitting.to_name[:] = [
            Subject(Kind.MARKER, ident),
            *(subject for subject in self.sitting.to_name if subject.id != ident),
        ]
        self.name_next()

    def name_next(self) -> None:
        """Put the cursor into the prompt of names, and ask there who is at the marker."""
        name_block = next((block for block in self.blocks if block.prompt.field == "person"), self.blocks[0])
        self.set_focus(name_block.words)
        for block in self.blocks:
            block.asking = self._asking(block)
            block.draw()

    def on_picture_touched(self, event: Picture.Touched) -> None:
        if self.recto is not None and all(self.keep(block) for block in self.blocks):
            self.mark_at(self.recto, event.x, event.y, by_keeper=True)

    def _serve(self) -> None:
        """Start the server of the teller's page (in a thread), and show its address until something is typed."""
        try:
            self.showing.opening()
        except BoxloreError as error:
            words, bad = str(error), True
        else:
            address = self.showing.address
            words, bad = (f"Page for the teller: {address}   Esc, “Sit” has it too." if address else ""), False
        if words:
            self._from_page(lambda: None if self._note else self.say(words, bad=bad))

    def _from_page(self, action: Callable[[], None]) -> None:
        """Run an action in the app's loop; the page's server calls this from its own thread."""
        self.call_later(action)

    def _tapped(self, tap: Tap) -> None:
        scan = next((scan for scan in self.record.scans if scan.id == tap.scan), None)
        if scan is None or tap.item != self.record.id:
            self.say("The picture was touched while it was turned over; that touch is not taken.")
            return
        self.mark_at(scan, tap.x, tap.y, by_keeper=False)

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
