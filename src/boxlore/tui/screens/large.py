"""The picture as large as the screen, front and back."""

from collections.abc import Callable, Sequence

from textual.app import ComposeResult
from textual.screen import Screen

from boxlore.core.record import Record, ScanFile
from boxlore.tasks.glimpse import NO_PICTURE, Glimpse, Glimpses
from boxlore.tui.keys import bound
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.line import Line
from boxlore.tui.widgets.picture import Picture, Pin

Pins = Callable[[ScanFile | None], Sequence[Pin]]


class LargeScreen(Screen[None]):
    """One scan after the other with F2; Esc goes back."""

    AUTO_FOCUS = ""
    BINDINGS = bound(("f2,space,right,down", "other"), ("escape,enter", "close"), ("ctrl+q", "leave"))

    def __init__(self, record: Record, glimpses: Glimpses, pins: Pins) -> None:
        super().__init__()
        self._record, self._glimpses, self._pins = record, glimpses, pins
        self._at = 0
        self._top, self._picture, self._names = Top(), Picture(), Line(id="note")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._picture
        yield self._names

    def on_mount(self) -> None:
        shown = [one for one in self._record.shown() if one.number]
        self._names.say("   ".join(f"{one.number} {one.name}" for one in shown) or "No markers on this picture.")

    def on_resize(self) -> None:
        self.call_after_refresh(self._show)

    def _show(self) -> None:
        scans = self._record.scans
        scan = scans[self._at % len(scans)] if scans else None
        side = f"{scan.side} ({self._at % len(scans) + 1} of {len(scans)})" if scan else "no scan"
        self._top.tell(f"{self._record.number} · {side}", "F2 next side · Esc back")
        if scan is None:
            self._picture.show(NO_PICTURE)
            return
        wide, high = self._picture.wanted
        if wide < 2 or high < 2:
            return
        self._picture.show(self._glimpses.kept(scan, wide, high), self._pins(scan))
        self.run_worker(
            lambda: self._fetch(scan, wide, high), thread=True, exclusive=True, group="large", exit_on_error=False
        )

    def _fetch(self, scan: ScanFile, wide: int, high: int) -> None:
        glimpse: Glimpse = self._glimpses.of(scan, wide, high)
        self.app.call_from_thread(self._picture.show, glimpse, self._pins(scan))

    def action_other(self) -> None:
        """The other side, or the next scan."""
        self._at += 1
        self._show()

    def action_close(self) -> None:
        """Back to the prompts."""
        self.app.pop_screen()

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")
