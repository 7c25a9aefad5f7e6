"""The sitting's own screen: one item, its picture, and the prompts in the order they are asked."""

from collections.abc import Callable

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.geometry import Size
from textual.screen import Screen
from textual.timer import Timer

from boxlore.core.errors import BoxloreError
from boxlore.core.records.in_force import Record, ScanFile
from boxlore.tasks.sitting.course import SUGGESTED_MINUTES, consent_due, due_words
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.sitting.linking import related_lines
from boxlore.tasks.sitting.preview import Glimpse, Glimpses
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.showing import Showing, Tap
from boxlore.tasks.telling.markers import Marked
from boxlore.tui.keys import ITEM_KEYS
from boxlore.tui.widgets.bars import Bottom, Top
from boxlore.tui.widgets.picture import Picture, Pin
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.prompt_block import Block, made_of

WIDE, TALL = 100, 34


class ItemView(Screen[None]):
    """Shows the item at `position`; `open` shows another in the same widgets, so nothing is built anew."""

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

    def __init__(self, sitting: Sitting, listing: Listing, showing: Showing, position: int = 0) -> None:
        super().__init__()
        self.sitting, self.listing, self.position = sitting, listing, position
        self.showing = showing
        self.marked: tuple[Marked, ...] = ()
        self.glimpses = Glimpses(sitting.collection)
        self.record: Record = sitting.record(listing.id_at(position))
        self.before = ""
        self.top = Top()
        self.note = Line(id="note")
        self.picture = Picture()
        self.legend = Line(id="legend")
        self.asks = (Line(classes="asks"), Line(classes="asks"))
        self.blocks = [Block(prompt, self) for prompt in sitting.prompts]
        self._note = ""
        self._long = False
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
        self.open(self.position)
        self.call_after_refresh(self._begin_beside)

    def _begin_beside(self) -> None:
        """What takes its time begins when the first question is drawn: the list of places, the teller's page."""
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
        """Lay out for a size; whether it is low."""
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
        self.before = self.record.id
        self.position = position
        item = self.listing.id_at(position)
        self.listing.forget(self.before)
        self.sitting.show(item)
        self.fill(self.sitting.record(item))
        self.query_one("#form", VerticalScroll).scroll_home(animate=False)
        if self.sitting.minutes >= SUGGESTED_MINUTES and self.sitting.id and not self._long:
            self._long = True
            self.say("An hour and a half by now. Enough for today? Esc, “This sitting”, “Close”.")
        self.set_focus(self.blocks[0].words)
        for block in self.blocks:
            block.draw()
        if self.showing.lookers and position + 1 < len(self.listing):
            following = self.sitting.record(self.listing.id_at(position + 1))
            self.run_worker(
                lambda: self.showing.expect(following), thread=True, exclusive=True, group="ahead", exit_on_error=False
            )

    def fill(self, record: Record, *, keeps: bool = True) -> None:
        """Show a record. Without `keeps`, words being typed stay as they are."""
        self.record = record
        self.marked = self.sitting.markers.of(record)
        self.showing.show(record, self.marked, f"{self.position + 1} of {len(self.listing)}")
        for block in self.blocks:
            block.asking = self._asking(block)
            own = self.sitting.own(record, block.prompt)
            typing = not keeps and block.changed
            block.load(record, own, self.sitting.others(record, block.prompt), keeps=not typing)
            block.understood = made_of(own) if own else ()
            block.draw()
        self._head()
        self._say_asks()
        self._say_legend()
        self.show_picture()

    def refresh_record(self) -> None:
        """Read the item again, after a change made elsewhere."""
        self.fill(self.sitting.record(self.record.id), keeps=False)

    def _head(self) -> None:
        record = self.record
        mark = record.mark.long if record.mark else "no box yet"
        kind = "" if record.kind == "print" else f" · {record.kind}"
        self.top.tell(f"{record.number} · {mark}{kind}", self._standing())

    def _standing(self, saved: str = "") -> str:
        place = f"{self.position + 1} of {len(self.listing)}"
        who = f"{self.sitting.narrator} tells · " if self.sitting.id else ""
        state = saved or ("all saved" if self.sitting.writable else "read only")
        return f"{who}{place} · {state}"

    def stand(self, saved: str) -> None:
        """Say in the top line whether the words are safe."""
        self.top.tell(right=self._standing(saved))

    def say(self, words: str, *, bad: bool = False) -> None:
        """One sentence above the keys; empty takes it away."""
        self._note = words
        self.note.display = bool(words) or not self.has_class("-low")
        self.note.set_class(bad, "-bad")
        self.note.say(words)

    def _say_asks(self) -> None:
        parts: list[str | tuple[str, str]] = []
        parts += [f"\n? {words}" for words in self.sitting.gentle_questions(self.record)]
        to_ask = self.sitting.to_ask(self.record.id)
        parts += [f"\n→ {words}" for words in to_ask]
        wide = self.has_class("-wide")
        for line, here in zip(self.asks, (wide, not wide), strict=True):
            line.say(("Worth asking", "bold"), *parts)
            line.display = bool(parts) and here

    def _say_legend(self) -> None:
        parts: list[str | tuple[str, str]] = []
        for one in self.record.shown():
            if one.number:
                parts += ["▐", (str(one.number), "reverse"), "▌"]
                parts += [f" {one.name}{'?' if one.unsure else ''}   "]
        for mark in self.marked:
            if not mark.name:
                parts += ["▐", (str(mark.number), "reverse"), "▌ not named   "]
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
        """A long task is over: new items may stand in the list."""
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
        """Show the picture; one not seen lately is fetched beside the typing."""
        wide, high = self.picture.wanted
        if wide < 4 or high < 4 or not self.has_class("-wide"):
            return
        if self.showing.is_covered(self.record.id):
            words = "Care: read the note below first. F2 shows the picture."
            self.picture.show(Glimpse(0, 0, b"", words))
            return
        scan = self.recto
        kept = self.glimpses.kept(scan, wide, high)
        self.picture.show(kept, self.pins(scan))
        if kept is None:
            self.run_worker(
                lambda: self._fetch(scan, wide, high), thread=True, exclusive=True, group="picture", exit_on_error=False
            )

    def _fetch(self, scan: ScanFile | None, wide: int, high: int) -> None:
        glimpse = self.glimpses.of(scan, wide, high)
        self.app.call_from_thread(self._fetched, scan, glimpse)

    def _fetched(self, scan: ScanFile | None, glimpse: object) -> None:
        if scan is self.recto or (scan and self.recto and scan.id == self.recto.id):
            self.show_picture()

    def pins(self, scan: ScanFile | None) -> list[Pin]:
        """The markers on a scan, where they are seen."""
        here = [one for one in self.marked if scan is not None and one.scan == scan.id]
        return [Pin(one.number, one.x, one.y) for one in here]

    # markers

    def _asking(self, block: Block) -> str:
        """Who is at the marker just set, instead of the open question."""
        wanted = self.sitting.to_name[0].id if self.sitting.to_name else ""
        number = next((one.number for one in self.marked if one.id == wanted), 0)
        return f"Who is at {number}?" if number and block.prompt.field == "person" else ""

    def mark_at(self, scan: ScanFile, x: float, y: float, *, by_keeper: bool) -> None:
        """A marker on a picture. The keeper's own moves the cursor to the names; a touch of another never does."""
        if not self.sitting.writable:
            self.say("Open for reading only; no marker can be set.", bad=True)
            return
        try:
            made = self.sitting.mark(self.record, scan, x, y)
        except BoxloreError as error:
            self.say(str(error), bad=True)
            return
        self.refresh_record()
        number = next((one.number for one in self.marked if one.id == made.id), 0)
        if by_keeper:
            self.name_next()
        else:
            self.say(f"Marker {number} was touched. The next name under “Who” is there.")

    def name_next(self) -> None:
        """The cursor goes to the names."""
        block = next((block for block in self.blocks if block.prompt.field == "person"), self.blocks[0])
        self.set_focus(block.words)
        for each in self.blocks:
            each.asking = self._asking(each)
            each.draw()

    def on_picture_touched(self, event: Picture.Touched) -> None:
        if self.recto is not None and all(self.keep(block) for block in self.blocks):
            self.mark_at(self.recto, event.x, event.y, by_keeper=True)

    def _serve(self) -> None:
        """Let the page's server begin; where it is stands above the keys until something is typed."""
        try:
            self.showing.opening()
        except BoxloreError as error:
            words, bad = str(error), True
        else:
            address = self.showing.address
            words, bad = (f"Page for the teller: {address}   Esc and “Page” show it again." if address else ""), False
        if words:
            self._from_page(lambda: None if self._note else self.say(words, bad=bad))

    def _from_page(self, what: Callable[[], None]) -> None:
        """Called by the page's server in a thread of its own."""
        self.call_later(what)

    def _tapped(self, tap: Tap) -> None:
        scan = next((scan for scan in self.record.scans if scan.id == tap.scan), None)
        if scan is None or tap.item != self.record.id:
            self.say("The picture was touched while it was turned over; that touch is not taken.")
            return
        self.mark_at(scan, tap.x, tap.y, by_keeper=False)

    # hearing

    def typed(self, block: Block) -> None:
        """A change to the words: kept as a draft before it is drawn."""
        try:
            words = block.text if block.changed else ""
            self.sitting.draft(self.record.id, block.prompt, words, block.replaces)
        except BoxloreError as error:
            self.stand("NOT SAVED")
            self.say(str(error), bad=True)
        else:
            self.stand("saved")
            if self._note:
                self.say("")
        self.understand(block)

    def left(self, block: Block) -> None:
        """The focus went elsewhere by mouse: keep what was typed."""
        if block.changed and block.words is not self.focused:
            self.keep(block)

    def keep(self, block: Block, *, person: str = "", redraw: bool = True) -> bool:
        """Make the block's words a statement. False, with the reason shown, if they could not be kept."""
        if not block.changed and not person:
            return True
        try:
            made = self.sitting.keep(self.record, block.prompt, block.text, person=person)
        except BoxloreError as error:
            self.say(str(error), bad=True)
            return False
        if made:
            block.baseline = block.text
            if redraw:
                self.refresh_record()
        self.stand("saved")
        return True

    def understand(self, block: Block) -> None:
        """Say beside the words what is made of them."""
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
        understood = self.sitting.understand(block.prompt, block.text, self.record)
        block.understood = () if understood is None else made_of(understood)
        block.draw()

    async def on_bottom_pressed(self, event: Bottom.Pressed) -> None:
        await self.run_action(event.action)
