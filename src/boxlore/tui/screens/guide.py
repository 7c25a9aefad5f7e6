"""The screen that shows the guide (`tui.guide`)."""

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.screen import Screen

from boxlore.tui import guide
from boxlore.tui.keys import bound
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.plain_text import Line


class GuideScreen(Screen[None]):
    """The guide to scroll through; Esc, Enter or F1 goes back."""

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("escape,enter,f1", "close"),
        ("down", "roll(1)"),
        ("up", "roll(-1)"),
        ("pagedown,space", "roll(15)"),
        ("pageup", "roll(-15)"),
        ("ctrl+q", "leave"),
    )
    DEFAULT_CSS = """
    GuideScreen VerticalScroll { align-horizontal: center; scrollbar-size-vertical: 1; scrollbar-gutter: stable; }
    GuideScreen .page { width: 84; max-width: 100%; padding: 1 2; }
    """

    def __init__(self, here: tuple[tuple[str, str], ...] = ()) -> None:
        """`here` are the keys of the screen below, as (what is printed on them, what they do), where it has its own."""
        super().__init__()
        self._here = here

    def compose(self) -> ComposeResult:
        yield Top("Guide", "↑ ↓ PgUp PgDn read on · Esc back")
        with VerticalScroll(can_focus=False):
            yield Line(*guide.parts(self._here), classes="page")

    def action_roll(self, by: int) -> None:
        """Scroll by so many lines."""
        self.query_one(VerticalScroll).scroll_relative(y=by, animate=False, immediate=True)

    def action_close(self) -> None:
        """Go back."""
        self.app.pop_screen()

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")
