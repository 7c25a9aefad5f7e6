"""The picture as large as the screen: its sides, zoom, and markers set, moved and taken away by keys.

All places are x, y in 0..1 of the whole picture as it is seen. A window is (left, top, width, height) in the same
measure: the part that is shown.
"""

from collections.abc import Callable
from pathlib import PurePosixPath
from typing import Any, Protocol

from textual.app import App, ComposeResult
from textual.screen import Screen

from boxlore.core.errors import BoxloreError
from boxlore.core.findings import several
from boxlore.core.records.item_record import ALTERED, Record, ScanFile
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.sharp_picture import SharpPictures
from boxlore.tasks.sitting.small_picture import NO_PICTURE, Glimpses
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tasks.telling.markers import Marked, move_marker, remove_marker, set_markers
from boxlore.tasks.telling.proposed_heads import propose_heads
from boxlore.tasks.telling.turned_scans import alter_shown, turn_shown
from boxlore.tui.from_inside import SIDES, from_inside
from boxlore.tui.keys import PICTURE_KEYS, bound
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.fetching import Fetch
from boxlore.tui.widgets.picture import Picture, Pin
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.window import WHOLE, Window

STEP = 0.04
"""How far an arrow moves the cross, as a share of the window."""
CLOSE = 0.3
"""The width of the window around a marker that a digit goes to."""


NO_HEADS = "No head without a marker is found. Faces seen from the side are not; set those by the cross."


class PictureHost(Protocol):
    """What this screen needs of the screen below it, which shows the item."""

    record: Record
    marked: tuple[Marked, ...]
    glimpses: Glimpses
    sharp_pictures: SharpPictures
    showing: Showing
    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def refresh_record(self) -> None: ...

    async def action_undo(self) -> None: ...

    async def turn_item(self, by: int) -> None: ...

    def name_marker(self, ident: str) -> None: ...

    def mark_at(self, scan: ScanFile, x: float, y: float, *, by_keeper: bool) -> None: ...


class LargeScreen(Screen[None]):
    """F2 or Space: the next side. Arrows: a cross; Enter sets a marker there. + and -: closer.

    A digit takes a marker in hand: then arrows and Enter move it, Del takes it away, 0 lets go of it. PgDn and PgUp go
    to another photograph, whose picture is large too. r turns the picture by a quarter to the right, a notes that it is
    an altered version, or is none. h proposes a marker on each face: Enter takes them, a digit leaves one out.
    """

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("f2,space,tab", "other"),
        ("pagedown", "turn(1)"),
        ("pageup", "turn(-1)"),
        ("left", "move(-1, 0)"),
        ("right", "move(1, 0)"),
        ("up", "move(0, -1)"),
        ("down", "move(0, 1)"),
        ("enter", "enter"),
        ("plus,equals_sign", "zoom(0.7)"),
        ("minus", "zoom(1.43)"),
        ("0", "whole"),
        ("delete,backspace", "remove"),
        ("r", "turn_picture"),
        ("a", "altered"),
        ("h", "heads"),
        ("ctrl+z", "undo"),
        *[(str(digit), f"go({digit})") for digit in range(1, 10)],
        ("f1", "guide"),
        ("escape", "close"),
        ("ctrl+q", "leave"),
    )

    def __init__(self, host: PictureHost) -> None:
        super().__init__()
        self._host = host
        self._at = 0
        self._window = WHOLE
        self._aim: tuple[float, float] | None = None
        """Where the cross is; None before the first arrow."""
        self._hand = ""
        """The id of the marker in hand, '' for none."""
        self._proposed: list[tuple[float, float]] = []
        """Where faces are, while it is not said yet whether markers are set there."""
        self._despite_care = ""
        """The item with a care note for which it was asked a first time to look for heads."""
        self._said = ""
        """A sentence about the last key: it stays until the next one, also where the picture comes meanwhile."""
        self._top, self._picture, self._names = Top(), Picture(), Line(id="note")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._picture
        yield self._names

    def on_resize(self) -> None:
        self.call_after_refresh(self._draw)

    @property
    def scan(self) -> ScanFile | None:
        """The scan that is shown; None for an item without scans."""
        scans = self._host.record.scans
        return scans[self._at % len(scans)] if scans else None

    def _show(self) -> None:
        """Draw what a key came to; the sentence about the key before it goes."""
        self._said = ""
        self._draw()

    def _draw(self) -> None:
        scan, scans = self.scan, self._host.record.scans
        side = f"{SIDES.get(scan.side, scan.side)} ({self._at % len(scans) + 1} of {len(scans)})" if scan else "no scan"
        self._top.tell(f"{self._host.record.number} · {side}{self._file_name()}", "F2 next side · Esc closes")
        self._say_names(scan)
        if scan is None:
            self._picture.show(NO_PICTURE)
            return
        wide, high = self._picture.wanted
        if wide < 2 or high < 2:
            return
        part = self._part(scan)
        fetch = Fetch(self._host, part, (wide, high), self._picture.graphics)
        self._picture.show(fetch.glimpse, self._pins(scan), fetch.sharp)
        fetch.begin(self._picture, self._fetched)

    def _file_name(self) -> str:
        """“ · harbour_b.jpg”: what the file was called that is shown, where that is noted of every scan."""
        record = self._host.record
        told = [PurePosixPath(view.words).name for view in record.all("file_name")]
        return f" · {told[self._at % len(told)]}" if told and len(told) == len(record.scans) else ""

    def _say_names(self, scan: ScanFile | None) -> None:
        markers = [marker for marker in self._host.marked if scan is not None and marker.scan == scan.id]
        names = (
            "   ".join(
                f"{marker.number} {marker.name or ('not known' if marker.asked else 'not named')}" for marker in markers
            )
            or "No markers on this picture."
        )
        hand = self._in_hand
        if self._proposed:
            self._names.say(
                *([f"{self._said}   "] if self._said else []),
                ("Enter sets a marker on each, a digit leaves one out, Esc leaves them all.", "italic"),
            )
            return
        how = (
            f"{hand.number} in hand: arrows and Enter move it, Del takes it away, 0 lets go. Enter alone names it."
            if hand
            else "Arrows and Enter set one, a digit goes to one, + - zoom, h faces, r turns, a retouched; F1: keys."
        )
        self._names.say(*([f"{self._said}   "] if self._said else []), names, (f"   {how}", "italic"))

    @property
    def _in_hand(self) -> Marked | None:
        scan = self.scan
        markers = [marker for marker in self._host.marked if scan is not None and marker.scan == scan.id]
        return next((marker for marker in markers if marker.id == self._hand), None)

    def _part(self, scan: ScanFile) -> ScanFile:
        """The scan narrowed to the window, for reading only that part of the picture."""
        return self._window.of(scan, self._host.sitting.markers.turn(scan))

    def _pins(self, scan: ScanFile) -> list[Pin]:
        """The scan's markers and the cross, at places in the window; what is outside it is left out."""
        marks = [(marker.number, marker.x, marker.y, "") for marker in self._host.marked if marker.scan == scan.id]
        marks += [(0, x, y, f" ?{at} ") for at, (x, y) in enumerate(self._proposed, 1)]
        if self._aim is not None:
            marks.append((0, *self._aim, "╋"))
        pins = [Pin(number, *self._window.seen(x, y), sign) for number, x, y, sign in marks]
        return [pin for pin in pins if 0 <= pin.x <= 1 and 0 <= pin.y <= 1]

    def _fetched(self, part: ScanFile | None) -> None:
        scan = self.scan
        if scan is not None and self._part(scan) == part:
            self._draw()

    def on_painted_sharper(self) -> None:
        """The terminal has said that it can draw pictures."""
        self._draw()

    # moving

    def action_other(self) -> None:
        """Show the other side, or the next scan; the teller's page shows the same."""
        self._at += 1
        self._window, self._aim, self._hand, self._proposed = WHOLE, None, "", []
        if self._host.record.scans:
            self._host.showing.turn(self._at % len(self._host.record.scans))
        self._show()

    async def action_turn(self, by: int) -> None:
        """Show the next photograph (`by` 1), or the one before; one with a care note stays covered until that is
        read."""
        host = self._host
        before = host.record.id
        await host.turn_item(by)
        if host.showing.is_covered(host.record.id):
            self.action_close()
            return
        self._at, self._window, self._aim, self._hand, self._proposed = 0, WHOLE, None, "", []
        self._show()
        if host.record.id == before:
            self._tell("That was the last." if by > 0 else "This is the first.")

    def action_move(self, right: int, down: int) -> None:
        """Move the cross. The first arrow puts it at the marker in hand, else in the middle of what is shown."""
        if self._aim is None and (hand := self._in_hand) is not None:
            self._aim = (hand.x, hand.y)
        if self._aim is None:
            self._aim = self._window.middle
        else:
            x, y = self._aim[0] + right * STEP * self._window.wide, self._aim[1] + down * STEP * self._window.high
            self._aim = (min(max(x, 0.0), 1.0), min(max(y, 0.0), 1.0))
        self._look(self._window.reaching(*self._aim))

    def action_zoom(self, by: float) -> None:
        """Zoom around the cross; `by` below 1 goes closer."""
        self._look(self._window.around(*(self._aim or self._window.middle), self._window.wide * by))

    def action_whole(self) -> None:
        """Show the whole picture, and let go of the marker in hand."""
        self._aim, self._hand = (None, "") if self._hand else (self._aim, "")
        self._look(WHOLE)

    def action_go(self, number: int) -> None:
        """Zoom to the marker of this number, and take it in hand; of heads that are proposed, leave that one out."""
        scan = self.scan
        if self._proposed:
            del self._proposed[number - 1 : number]
            self._show()
            return
        for marker in self._host.marked:
            if scan is not None and marker.scan == scan.id and marker.number == number:
                self._aim, self._hand = None, marker.id
                self._look(self._window.around(marker.x, marker.y, CLOSE))

    def _look(self, window: Window) -> None:
        self._window = window
        self._show()

    # marking

    def action_enter(self) -> None:
        """Set a marker at the cross, or put the one in hand there; without a cross, name the one in hand, or put the
        cross into the middle."""
        if self._proposed:
            self._take_heads()
        elif self._aim is not None:
            self._set(*self._aim)
        elif (hand := self._in_hand) is not None:
            self.action_close()
            if self._host.sitting.writable:
                self._host.name_marker(hand.id)
        elif self.scan is not None:
            self.action_move(0, 0)
            self._tell("The cross is in the middle: arrows move it, Enter sets a marker there.")

    def on_picture_touched(self, event: Picture.Touched) -> None:
        self._proposed = []
        self._set(*self._window.place(event.x, event.y))

    def action_remove(self) -> None:
        """Take away the marker in hand."""
        if (hand := self._in_hand) is None:
            self._tell("Take a marker in hand first: its digit.")
            return
        still_named = f" {hand.name} is still told of this photograph." if hand.name else ""
        if self._changed(lambda: remove_marker(self._host.sitting, self._host.record, hand)):
            self._tell(f"Marker {hand.number} is taken away.{still_named} Ctrl+Z brings it back.")

    def action_turn_picture(self) -> None:
        """Turn the picture by a quarter to the right; its file stays as it is, and markers turn with it."""
        host, scan = self._host, self.scan
        if scan is not None and self._changed(lambda: turn_shown(host.sitting, host.record, scan)):
            self._window, self._proposed = WHOLE, []
            self._tell("Turned to the right, here and in all that is made of it; the file is as it was. Ctrl+Z: back.")

    def action_altered(self) -> None:
        """Note that the picture is an altered version, coloured or retouched; or that it is none."""
        host, scan = self._host, self.scan
        if scan is not None and self._changed(lambda: alter_shown(host.sitting, host.record, scan)):
            self._at = next(at for at, each in enumerate(host.record.scans) if each.id == scan.id)
            words = "it was scanned" if scan.role == ALTERED else "an altered version"
            self._tell(f"It counts as {words} now. Ctrl+Z takes that back.")

    def action_heads(self) -> None:
        """Look for faces, and propose a marker on each that has none. Where there is a care note, only asked twice."""
        host, scan = self._host, self.scan
        if scan is None or not host.sitting.writable:
            self._tell("Open for reading only; nothing can be changed." if scan else "There is no picture.")
            return
        record = host.record
        if record.words("care") and self._despite_care != record.id:
            self._despite_care = record.id
            self._tell(
                "A care note stands by this picture, so heads are not looked for. h once more looks all the same."
            )
            return
        self._tell("Looking for heads …")

        def look() -> None:
            try:
                places = propose_heads(host.sitting.collection, host.sitting.markers, record, scan, despite_care=True)
                words = f"{several(len(places), 'head')} without a marker." if places else NO_HEADS
            except BoxloreError as error:
                places, words = [], from_inside(str(error))
            self.app.call_from_thread(self._heads_found, scan, places, words)

        self.run_worker(look, thread=True, exclusive=True, group="heads", exit_on_error=False)

    def _heads_found(self, scan: ScanFile, places: list[tuple[float, float]], words: str) -> None:
        if self.scan is scan:
            self._proposed, self._aim, self._hand, self._window = places, None, "", WHOLE
            self._tell(words)

    def _take_heads(self) -> None:
        """Set a marker on each head that is proposed; who they are is asked one after the other."""
        scan, places = self.scan, self._proposed
        if scan is not None and self._changed(lambda: self._mark(scan, places)):
            self._proposed = []
            self._tell(f"{several(len(places), 'marker')} set. Esc: who each is, is asked under “Who is in it?”.")

    def _mark(self, scan: ScanFile, places: list[tuple[float, float]]) -> None:
        set_markers(self._host.sitting, self._host.record, scan, places)

    async def action_undo(self) -> None:
        """Close, and let the screen below take back the last step; it may have to show another item for that."""
        self.app.pop_screen()
        await self._host.action_undo()

    def _changed(self, change: Callable[[], None]) -> bool:
        """Run a change of a marker, then let go of it. False, with the reason shown, if it could not be kept."""
        host = self._host
        if not host.sitting.writable:
            self._tell("Open for reading only; nothing can be changed.")
            return False
        try:
            change()
        except BoxloreError as error:
            self._tell(f"NOT SAVED: {error}")
            return False
        self._aim, self._hand = None, ""
        host.refresh_record()
        return True

    def _tell(self, words: str) -> None:
        self._said = words
        self._draw()

    def _set(self, x: float, y: float) -> None:
        """Move the marker in hand to x, y; without one, set a new marker there."""
        if (hand := self._in_hand) is not None:
            if self._changed(lambda: move_marker(self._host.sitting, self._host.record, hand, x, y)):
                self._tell(f"Marker {hand.number} is moved.")
            return
        scan = self.scan
        self.app.pop_screen()
        if scan is not None:
            self._host.mark_at(scan, x, y, by_keeper=True)

    def action_close(self) -> None:
        """Go back to the prompts; where heads are proposed, leave those first."""
        if self._proposed:
            self._proposed = []
            self._tell("No marker was set.")
            return
        self.app.pop_screen()

    async def action_guide(self) -> None:
        """Show the guide, with the keys of this screen first."""
        await self.app.push_screen(GuideScreen(PICTURE_KEYS))

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")
