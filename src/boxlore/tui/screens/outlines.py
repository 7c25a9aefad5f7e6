"""Outlines of prints on a sheet, drawn over the picture, moved by mouse or keys, and taken by Enter.

The same outlines stand on the page that the teller looks at, and can be moved there. The file stays as it is.
"""

from collections.abc import Awaitable, Callable

from textual.app import ComposeResult
from textual.screen import Screen

from boxlore.core.errors import BoxloreError, WrongUse
from boxlore.core.findings import several
from boxlore.core.records.item_record import ScanFile
from boxlore.tasks.scans.outlines_by_hand import Looked, OutlinesByHand, as_quad
from boxlore.tasks.scans.pairing import Planned
from boxlore.tasks.sitting.sharp_picture import SharpPictures
from boxlore.tasks.sitting.small_picture import Glimpses
from boxlore.tasks.sitting.tellers_page import OutlineTouch, Showing
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import OUTLINE_KEYS, bound
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.fetching import Fetch
from boxlore.tui.widgets.outline_picture import OutlinePicture, Stroke, sides_of, with_lines
from boxlore.tui.widgets.picture import Pin
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.window import WHOLE

STEP, FINE = 0.02, 0.002
"""How far an arrow moves what is in hand, as a share of what is shown; and with Shift."""
REACH = 2.5
"""Cells within which the mouse takes a corner."""
IN_HAND, OTHERS, HERE = (224, 48, 30), (0, 150, 200), (128, 128, 128)
"""Colours of the outline in hand, of the others, and of the prints that are items already. The one in hand has signs
at its corners too."""

HOW = (
    "Tab takes a corner, a digit a whole outline; arrows move it, finer with Shift; or drag it. a adds one, s splits "
    "one, Del takes it away, + and - zoom, Ctrl+Z: a step back."
)


class OutlineScreen(Screen[None]):
    """Goes through the pictures of a run; `taken` is called with the plan at the end, `left` where nothing is taken."""

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("tab", "corner(1)"),
        ("shift+tab", "corner(-1)"),
        *[
            (f"{shift}{key}", f"move({right}, {down}, {fine})")
            for shift, fine in (("", False), ("shift+", True))
            for key, right, down in (("left", -1, 0), ("right", 1, 0), ("up", 0, -1), ("down", 0, 1))
        ],
        *[(str(digit), f"hold({digit})") for digit in range(1, 10)],
        ("0", "let_go"),
        ("a,insert", "add"),
        ("s", "split"),
        ("delete,backspace", "remove"),
        ("enter", "take"),
        ("pagedown", "turn(1)"),
        ("pageup", "turn(-1)"),
        ("plus,equals_sign", "zoom(0.6)"),
        ("minus", "zoom(1.667)"),
        ("ctrl+z", "undo"),
        ("f1", "guide"),
        ("escape", "close"),
        ("ctrl+q", "leave"),
    )

    def __init__(
        self,
        hand: OutlinesByHand,
        showing: Showing,
        taken: Callable[[list[Planned]], Awaitable[None]],
        left: Callable[[], None],
    ) -> None:
        super().__init__()
        self.hand, self._showing, self._taken, self._left = hand, showing, taken, left
        self.glimpses, self.sharp_pictures = Glimpses(hand.collection), SharpPictures(hand.collection)
        self._window = WHOLE
        self._said = ""
        self._asked_to_go = False
        self._top, self._picture, self._note = Top(), OutlinePicture(), Line(id="note")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._picture
        yield self._note

    def on_mount(self) -> None:
        self._showing.outlined = lambda touch: self._from_page(lambda: self._touched(touch))
        self._open()
        if not self._showing.address:
            self.run_worker(self._serve_page, thread=True, group="page", exit_on_error=False)

    def on_unmount(self) -> None:
        self._showing.outlined = lambda touch: None

    def _serve_page(self) -> None:
        try:
            self._showing.opening()
        except BoxloreError as error:
            words = str(error)
        else:
            words = f"On the teller's page too: {self._showing.address}" if self._showing.address else ""
        if words:
            self._from_page(lambda: self._tell(words))

    def _from_page(self, action: Callable[[], None]) -> None:
        """Run an action in the app's loop; the page's server calls this from its own thread."""
        self.call_later(action)

    def on_resize(self) -> None:
        self.call_after_refresh(self._draw)

    # one picture after the other

    def _open(self) -> None:
        """Show the picture that is out, and look for prints on it beside."""
        self._window = WHOLE
        at = self.hand.at
        if at not in self.hand.looked:

            def look() -> None:
                looked = self.hand.look(at)
                self.app.call_from_thread(self._looked, at, looked)

            self.run_worker(look, thread=True, exclusive=True, group="looking", exit_on_error=False)
        self._draw()

    def _looked(self, at: int, looked: Looked) -> None:
        self.hand.begin(at, looked)
        if at == self.hand.at:
            found = f"{several(len(looked.proposed), 'outline')} proposed."
            here = f" {several(len(looked.here), 'print is', 'prints are')} here already." if looked.here else ""
            self._tell(from_inside(looked.why) if looked.why else f"{found}{here}")

    async def action_take(self) -> None:
        """Take the outlines of this picture, and go on to the next; after the last, all are taken in."""
        if self.hand.at not in self.hand.looked:
            self._tell("Still looking for prints: one moment.")
            return
        try:
            self.hand.check()
        except WrongUse as error:
            self._tell(str(error))
            return
        if self.hand.turn(1):
            self._said = ""
            self._open()
        else:
            await self._taken(self.hand.taken())

    def action_turn(self, by: int) -> None:
        """Go to another picture; what is drawn on this one stays."""
        if self.hand.turn(by):
            self._said = ""
            self._open()
        else:
            self._tell("That was the last: Enter takes them." if by > 0 else "This is the first.")

    # drawing

    def _draw(self) -> None:
        hand = self.hand
        drawn, path = hand.now, hand.path
        number = f" ({hand.at + 1} of {len(hand.sheets)})" if len(hand.sheets) > 1 else ""
        heading = f"{path.name}{number}"
        looked = hand.looked.get(hand.at)
        self._top.tell(f"{heading} · {several(len(drawn.outlines), 'outline')}", "Enter takes them · Esc back")
        self._say()
        if looked is not None:
            self._showing.show_sheet(hand.scan, heading, drawn, looked.items)
        wide, high = self._picture.wanted
        if wide < 2 or high < 2:
            return
        scan = self._part()
        fetch = Fetch(self, scan, (wide, high), None)
        glimpse = fetch.glimpse
        if glimpse is not None:
            lines: list[Stroke] = []
            for at, quad in enumerate(drawn.outlines):
                colour = IN_HAND if at == drawn.outline else HERE if at < len(drawn.owners) else OTHERS
                lines += sides_of([self._window.seen(*corner) for corner in quad], colour)
            glimpse = with_lines(glimpse, lines)
        self._picture.show(glimpse, self._pins())
        fetch.begin(self._picture, self._fetched)

    def _part(self) -> ScanFile:
        looked = self.hand.looked.get(self.hand.at)
        return self.hand.scan if looked is None else self._window.of(self.hand.scan, looked.turn)

    def _fetched(self, part: ScanFile | None) -> None:
        if self._part() == part:
            self._draw()

    def _pins(self) -> list[Pin]:
        """The number of each outline in its middle, and signs at the corners of the one in hand."""
        drawn = self.hand.now
        pins = [Pin(number, *self._window.seen(*middle)) for number, middle in enumerate(drawn.middles, 1)]
        for corner, place in enumerate(drawn.in_hand or ()):
            pins.append(Pin(0, *self._window.seen(*place), "╋" if corner == drawn.corner or drawn.corner < 0 else "○"))
        return [pin for pin in pins if 0 <= pin.x <= 1 and 0 <= pin.y <= 1]

    def _say(self) -> None:
        drawn = self.hand.now
        corner = ("upper left", "upper right", "lower right", "lower left")[drawn.corner] if drawn.corner >= 0 else ""
        held = f"{drawn.outline + 1}: {f'its {corner} corner' if corner else 'all of it'} in hand.   "
        self._note.say(
            *([f"{self._said}   "] if self._said else []),
            *([(held, "bold")] if drawn.in_hand is not None else []),
            (HOW, "italic"),
        )

    def _tell(self, words: str) -> None:
        self._said = words
        self._draw()

    # by keys

    def _done(self, *, at_hand: bool = False) -> None:
        """Draw what a key came to; `at_hand`, where the window shows what is in hand."""
        self._said, self._asked_to_go = "", False
        if at_hand and (place := self.hand.now.held_at) is not None:
            self._window = self._window.reaching(*place)
        self._draw()

    def action_corner(self, by: int) -> None:
        """Take the next corner in hand."""
        self.hand.next_corner(by)
        self._done(at_hand=True)

    def action_hold(self, number: int) -> None:
        """Take the whole outline of that number in hand."""
        if self.hand.hold(number - 1):
            self._done(at_hand=True)
        else:
            self._tell(f"There is no outline {number}.")

    def action_let_go(self) -> None:
        """Nothing is in hand, and the whole picture is shown."""
        self.hand.let_go()
        self._window = WHOLE
        self._done()

    def action_move(self, right: int, down: int, fine: bool) -> None:
        """Move what is in hand."""
        if self.hand.now.in_hand is None:
            self._tell("Nothing is in hand: Tab takes a corner, a digit an outline.")
            return
        step = (FINE if fine else STEP) * self._window.wide
        self.hand.move(right * step, down * step)
        self._done(at_hand=True)

    def action_add(self) -> None:
        """Add an outline in the middle of what is shown."""
        self.hand.add(*self._window.middle)
        self._done()

    def action_remove(self) -> None:
        """Take the outline in hand away."""
        self._change(self.hand.remove)

    def action_split(self) -> None:
        """Make two of the outline in hand, for prints that touch."""
        self._change(self.hand.split)

    def _change(self, change: Callable[[], bool]) -> None:
        try:
            changed = change()
        except WrongUse as error:
            self._tell(str(error))
            return
        if changed:
            self._done()
        else:
            self._tell("Nothing is in hand: a digit takes an outline.")

    def action_undo(self) -> None:
        """Take the last step on this picture back."""
        if self.hand.undo():
            self._done()
        else:
            self._tell("Nothing was done by hand on this picture.")

    def action_zoom(self, by: float) -> None:
        """Zoom around what is in hand; `by` below 1 goes closer."""
        self._window = self._window.around(*(self.hand.now.held_at or self._window.middle), self._window.wide * by)
        self._draw()

    # by mouse, here and on the page

    def on_outline_picture_grabbed(self, event: OutlinePicture.Grabbed) -> None:
        reach = (REACH * event.cell[0] * self._window.wide, REACH * event.cell[1] * self._window.high)
        self.hand.grab(*self._window.place(event.x, event.y), reach)
        self._done()

    def on_outline_picture_dragged(self, event: OutlinePicture.Dragged) -> None:
        self.hand.drag(*self._window.place(event.x, event.y), begun=event.begun)
        self._done()

    def _touched(self, touch: OutlineTouch) -> None:
        hand = self.hand
        if touch.do == "put":
            corners = zip(touch.corners[::2], touch.corners[1::2], strict=True)
            hand.put(touch.outline, touch.corner, as_quad(corners), begun=touch.begun)
        elif touch.do == "take":
            self.app.run_worker(self.action_take(), group="taking")  # of the app: this screen goes meanwhile
            return
        elif touch.do == "remove":
            if not hand.hold(touch.outline):
                hand.let_go()  # the page has nothing in hand
            self.action_remove()
            return
        elif touch.do == "add":
            hand.add()
        else:
            hand.undo()
        self._done()

    # leaving

    def action_close(self) -> None:
        """Go back without taking anything in; where something was drawn, once it was said."""
        if self._may_go("Esc"):
            self._left()

    def _may_go(self, key: str) -> bool:
        if self.hand.is_changed and not self._asked_to_go:
            self._tell(f"Nothing is taken in yet, and what you drew is not kept: {key} once more leaves it.")
            self._asked_to_go = True
            return False
        return True

    async def action_guide(self) -> None:
        """Show the guide, with the keys of this screen first."""
        await self.app.push_screen(GuideScreen(OUTLINE_KEYS))

    async def action_leave(self) -> None:
        """Leave the program; where something was drawn, once it was said."""
        if self._may_go("Ctrl+Q"):
            await self.app.run_action("leave")
