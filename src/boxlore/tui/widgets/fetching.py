"""Where pictures come from: what is remembered is shown at once, the rest is made in a thread beside the typing."""

from collections.abc import Callable
from typing import Protocol

from textual.widget import Widget
from textual.worker import get_current_worker

from boxlore.core.records.item_record import ScanFile
from boxlore.tasks.sitting.sharp_picture import Graphics, SharpPicture, SharpPictures
from boxlore.tasks.sitting.small_picture import Glimpse, Glimpses


class Shelf(Protocol):
    """Both kinds of pictures of one collection."""

    glimpses: Glimpses
    sharp_pictures: SharpPictures


class Fetch:
    """One picture for one room. `glimpse` and `sharp` are what is remembered of it; None was not made yet."""

    def __init__(self, shelf: Shelf, scan: ScanFile | None, room: tuple[int, int], graphics: Graphics | None) -> None:
        """`room` is pixels of half blocks: (width, height). Without `graphics` nothing sharp is made."""
        self._shelf, self._scan, self._room, self._graphics = shelf, scan, room, graphics
        self._cells = room[0], room[1] // 2
        self.glimpse: Glimpse | None = shelf.glimpses.kept(scan, *room)
        self.sharp: SharpPicture | None = shelf.sharp_pictures.kept(scan, graphics, *self._cells)

    def begin(self, widget: Widget, done: Callable[[ScanFile | None], None]) -> None:
        """Make what is missing; a picture that was begun before for this widget is no longer wanted. `done` is called
        in the app's loop after each of both."""
        glimpse, graphics = self.glimpse, self._graphics
        can_be_sharp = graphics is not None and self._scan is not None and (glimpse is None or glimpse.width > 0)
        if glimpse is not None and (self.sharp is not None or not can_be_sharp):
            widget.workers.cancel_group(widget, "picture")
            return

        def make() -> None:
            worker = get_current_worker()
            scan = self._scan
            if glimpse is None:
                self._shelf.glimpses.of(scan, *self._room)
                widget.app.call_from_thread(done, scan)
            if can_be_sharp and graphics is not None and scan is not None and not worker.is_cancelled:
                sharp = self._shelf.sharp_pictures.of(scan, graphics, *self._cells)
                if sharp is not None and not worker.is_cancelled:
                    widget.app.call_from_thread(done, scan)

        widget.run_worker(make, thread=True, exclusive=True, group="picture", exit_on_error=False)
