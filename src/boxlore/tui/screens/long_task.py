"""The card of a long task: how far it is, how to stop it, and its report at the end."""

from collections.abc import Awaitable, Callable
from pathlib import Path

from textual.app import ComposeResult
from textual.containers import Vertical, VerticalScroll

from boxlore.core.errors import BoxloreError, in_words
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.desktop import can_open, folder_named, open_folder
from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import bound
from boxlore.tui.menu_tasks.task import NOT_YET
from boxlore.tui.screens.cards import Card
from boxlore.tui.screens.saving import KeepingScreen
from boxlore.tui.watch import Watch
from boxlore.tui.widgets.plain_text import Line

WIDTH = 50


class WorkingScreen(Card):
    """Runs `job` in a thread and shows the lines that it returns, then calls `after`.

    Esc asks the job to stop; when it is over, Esc or Enter goes back. Where the job refuses what it was asked, or the
    disk does, `again` is called with the reason, and the card closes: what was answered is there again. O opens the
    folder that the first line of the report names, where there is a desktop to open it on. `does` does what the report
    only shows, on D.
    """

    DEFAULT_CSS = "WorkingScreen #result { height: auto; max-height: 70vh; scrollbar-size-vertical: 1; }"
    BINDINGS = bound(
        ("enter", "enter"),
        ("o", "open"),
        ("d", "do"),
        ("down", "roll(1)"),
        ("up", "roll(-1)"),
        ("pagedown", "roll(10)"),
        ("pageup", "roll(-10)"),
    )

    def __init__(
        self,
        title: str,
        job: Callable[[Progress], list[str]],
        after: Callable[[], None],
        *,
        again: Callable[[str], Awaitable[None]] | None = None,
        does: Callable[[], Awaitable[None]] | None = None,
    ) -> None:
        super().__init__()
        self._title, self._job, self._after, self._again, self._does = title, job, after, again, does
        self._folder: Path | None = None
        self._watch = Watch()
        self._over = False
        self._bar, self._result = Line(), Line()
        self._hint = Line("\nEsc stops after what is at hand; what is finished stays.", classes="faint")

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line(self._title, classes="title")
            yield self._bar
            with VerticalScroll(can_focus=False, id="result"):
                yield self._result
            yield self._hint

    def on_mount(self) -> None:
        self._beat = self.set_interval(0.1, self._draw)
        self.run_worker(self._work, thread=True, exit_on_error=False)

    def _draw(self) -> None:
        watch = self._watch
        if not watch.total:
            self._bar.say(f"{watch.label or 'Beginning'} … {watch.done or ''}")
            return
        full = min(WIDTH, WIDTH * watch.done // watch.total)
        self._bar.say(
            f"{watch.label}\n", ("█" * full, "$primary"), "░" * (WIDTH - full), f"  {watch.done} of {watch.total}"
        )

    def _work(self) -> None:
        try:
            lines = self._job(self._watch)
        except BoxloreError as error:
            self._failed([str(error)])
            return
        except OSError as error:
            words, where = in_words(error), f": {error.filename}" if error.filename else ""
            self._failed([f"{words[:1].upper()}{words[1:]}{where}.", "What was finished is kept."])
            return
        self.app.call_from_thread(self._finished, lines)

    def _failed(self, lines: list[str]) -> None:
        """Ask again with what is wrong, where there is a form to fill in; else it is the report."""
        if self._again is not None:
            self.app.call_from_thread(self._ask_again, " ".join(lines))
        else:
            self.app.call_from_thread(self._finished, lines)

    def _finished(self, lines: list[str]) -> None:
        self._over = True
        self._beat.stop()
        self._bar.display = False
        self._result.say("\n".join(from_inside(line) for line in lines))
        self._folder = folder_named(lines)
        if NOT_YET not in "".join(lines[:1]):
            self._does = None
        does = "D does it now. " if self._does is not None else ""
        opens = "O opens the folder. " if self._folder is not None and can_open() else ""
        back = " to the photograph" if isinstance(self.app.screen_stack[-2], KeepingScreen) else ""
        self._hint.say(f"\n{does}{opens}Enter or Esc goes back{back}.")
        self._after()

    def _ask_again(self, fault: str) -> None:
        self.app.run_worker(self._asked_again(fault), exit_on_error=False)

    async def _asked_again(self, fault: str) -> None:
        self._over = True
        self._beat.stop()
        self.app.pop_screen()
        if self._again is not None:
            await self._again(fault)

    def action_open(self) -> None:
        """Open the folder that was written to, in the desktop's own file manager."""
        if self._over and self._folder is not None and can_open():
            open_folder(self._folder)

    async def action_do(self) -> None:
        """Do what the report shows, if it only shows it."""
        if self._over and self._does is not None:
            self.app.pop_screen()
            await self._does()

    def action_enter(self) -> None:
        """Go back, if the task is over."""
        if self._over:
            self.app.pop_screen()

    async def action_close(self) -> None:
        """Ask the task to stop; if it is over, go back."""
        if self._over:
            self.app.pop_screen()
        else:
            self._watch.stop()
            self._hint.say("\nStopping after what is at hand …")

    async def may_leave(self) -> bool:
        """Yes, if the task is over; otherwise it is only asked to stop."""
        if not self._over:
            await self.action_close()
        return self._over

    def action_roll(self, by: int) -> None:
        """Scroll what is longer than the screen."""
        self.query_one(VerticalScroll).scroll_relative(y=by, animate=False)
