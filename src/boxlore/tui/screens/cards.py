"""Small cards on top of a screen: a list to choose from, a notice to read.

The function that is given the answer has finished before the next key is handled.
"""

from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass
from inspect import isawaitable

from rich.console import RenderableType
from textual.app import ComposeResult
from textual.containers import Vertical, VerticalScroll
from textual.renderables.background_screen import BackgroundScreen
from textual.screen import ModalScreen

from boxlore.tui.keys import bound
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.widgets.picture import Dimmed
from boxlore.tui.widgets.plain_text import Line, short

KEYS = "123456789abcdefghijklmnopqrstuvwxyz"
"""The keys of the lines of a list, in order; but for those that a line of it has for its own."""

OnAnswer = Callable[[str], Awaitable[None] | None]
"""Called with the `value` of the choice taken."""


class Card(ModalScreen[None]):
    """The base of all cards: Esc closes it without an answer, F1 shows the guide over it, Ctrl+Q leaves the program."""

    AUTO_FOCUS = ""

    BINDINGS = bound(("escape", "close"), ("f1", "guide"), ("ctrl+q", "leave"))

    def render(self) -> RenderableType:
        below = super().render()
        return Dimmed(below.screen, below.color) if isinstance(below, BackgroundScreen) else below

    async def action_close(self) -> None:
        """Go back without an answer."""
        self.app.pop_screen()

    async def action_guide(self) -> None:
        """Show the guide; what is on the card stays as it is."""
        await self.app.push_screen(GuideScreen())

    async def may_leave(self) -> bool:
        """Whether the program may be left while this card stands; where not, the card says why."""
        return True

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")


@dataclass(frozen=True, slots=True)
class Choice:
    """One line of a list: the `value` that the answer gets, its name, and a few words about it.

    `key` is a letter of its own, for a line that stands now here, now there: what a hand has learnt stays so.
    """

    value: str
    name: str
    about: str = ""
    key: str = ""


class Choices(Card):
    """A list to choose from with a letter or a digit, or with the arrows and Enter."""

    BINDINGS = bound(
        ("up", "move(-1)"),
        ("down", "move(1)"),
        ("enter", "take"),
        *[(key, f"press('{key}')") for key in f"0{KEYS}"],
    )

    def __init__(
        self,
        title: str,
        choices: Sequence[Choice],
        answer: OnAnswer,
        *,
        below: str = "",
        back: Callable[[], Awaitable[None]] | None = None,
        at: int = 0,
    ) -> None:
        """`below` is a text under the lines; `back` is where Esc goes, else the screen below; `at` is the line where
        the cursor stands first."""
        super().__init__()
        own_keys = {choice.key for choice in choices}
        others = (key for key in KEYS if key not in own_keys)
        self._keys = [choice.key or next(others) for choice in choices]
        self._title, self._choices, self._answer, self._below = title, list(choices), answer, below
        self._back = back
        self._at = at
        self._lines = [Line() for _ in choices]

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line(self._title, classes="title")
            with VerticalScroll(can_focus=False) as scroll:
                scroll.styles.height = "auto"
                scroll.styles.max_height = "80vh"
                yield from self._lines
            hint = "A letter or digit chooses; ↑ ↓ and Enter too; Esc goes back."
            yield Line(f"\n{self._below}\n{hint}" if self._below else hint, classes="faint")

    def on_mount(self) -> None:
        self._draw()

    def _draw(self) -> None:
        width = max((len(choice.name) for choice in self._choices), default=0)
        room = min(76, self.app.size.width * 96 // 100) - 6 - len("▸ 1  ") - len("   ")
        for at, (line, choice) in enumerate(zip(self._lines, self._choices, strict=True)):
            here = at == self._at
            style = "bold $primary" if here else "bold"
            line.say(
                ("▸ " if here else "  ", "$primary"),
                (f"{self._keys[at]}  ", "$primary"),
                (choice.name.ljust(width), style),
                (f"   {short(choice.about, max(room - width, 8))}" if choice.about else "", "$faint"),
            )
        if self._lines:
            self._lines[self._at].scroll_visible(animate=False)

    def action_move(self, by: int) -> None:
        """Move the cursor to another line."""
        self._at = (self._at + by) % max(len(self._choices), 1)
        self._draw()

    async def action_press(self, key: str) -> None:
        """Take the line of this letter or digit."""
        if key in self._keys:
            await self._take(self._keys.index(key))

    async def action_take(self) -> None:
        """Take the line at the cursor."""
        if self._choices:
            await self._take(self._at)

    async def action_close(self) -> None:
        """Go back without an answer."""
        self.app.pop_screen()
        if self._back is not None:
            await self._back()

    async def _take(self, at: int) -> None:
        self.app.pop_screen()
        answered = self._answer(self._choices[at].value)
        if isawaitable(answered):
            await answered


class Notice(Card):
    """Something to read; any of Enter, Esc or Space closes it."""

    DEFAULT_CSS = "Notice #result { height: auto; max-height: 75vh; scrollbar-size-vertical: 1; }"

    BINDINGS = bound(
        ("enter,space", "close"),
        ("down", "roll(1)"),
        ("up", "roll(-1)"),
        ("pagedown", "roll(10)"),
        ("pageup", "roll(-10)"),
    )

    def __init__(self, title: str, *parts: str | tuple[str, str]) -> None:
        super().__init__()
        self._title, self._parts = title, parts

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line(self._title, classes="title")
            with VerticalScroll(can_focus=False, id="result"):
                yield Line(*self._parts)
            yield Line("\nEnter or Esc goes back.", classes="faint")

    def action_roll(self, by: int) -> None:
        """Scroll what is longer than the screen."""
        self.query_one(VerticalScroll).scroll_relative(y=by, animate=False, immediate=True)
