"""Markers on the picture, set here or by a touch on the teller's page, and the names that are asked for at them."""

from collections.abc import Callable

from boxlore.core.errors import BoxloreError
from boxlore.core.records.item_record import ScanFile
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.sitting.tellers_page import Showing, Tap
from boxlore.tasks.telling.markers import Marked
from boxlore.tui.screens.saving import KeepingScreen
from boxlore.tui.widgets.picture import Picture, Pin
from boxlore.tui.widgets.prompt_block import Block


class MarkingScreen(KeepingScreen):
    """The part of the sitting's screen that marks. `marked` are the item's markers."""

    showing: Showing
    marked: tuple[Marked, ...]

    def show_picture(self) -> None:
        """Show the item's first picture with its markers."""
        raise NotImplementedError

    @property
    def recto(self) -> ScanFile | None:
        """The scan to show first."""
        return self.record.scans[0] if self.record.scans else None

    def pins(self, scan: ScanFile | None) -> list[Pin]:
        """The item's markers that are on this scan, as pins to draw."""
        markers = [marker for marker in self.marked if scan is not None and marker.scan == scan.id]
        return [Pin(marker.number, marker.x, marker.y) for marker in markers]

    def asking_of(self, block: Block) -> str:
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
            block.asking = self.asking_of(block)
            block.draw()

    def on_picture_touched(self, event: Picture.Touched) -> None:
        if self.recto is not None and all(self.keep(block) for block in self.blocks):
            self.mark_at(self.recto, event.x, event.y, by_keeper=True)

    # the teller's page

    def hear_page(self) -> None:
        """Begin to hear what is done on the teller's page."""
        self.showing.heard = lambda tap: self._from_page(lambda: self._tapped(tap))
        self.showing.uncovered = lambda: self._from_page(self.show_picture)

    def serve_page(self) -> None:
        """Start the server of the teller's page (in a thread), and show its address until something is typed."""
        try:
            self.showing.opening()
        except BoxloreError as error:
            words, bad = str(error), True
        else:
            address = self.showing.address
            words, bad = (f"Page for the teller: {address}   To see it again: Esc, “Sit”." if address else ""), False
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
