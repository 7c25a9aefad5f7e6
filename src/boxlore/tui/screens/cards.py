"""Small cards on top of a screen: a list to choose from, a notice to read.

The function that is given the answer has finished before the next key is handled. Words that are typed into a list by
mistake choose nothing: from the first letter that is none of its keys on, until a pause or an arrow, the list only says
that they are kept nowhere; and no letter leaves the program.
"""

import time
from collections.abc import Awaitable, Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from inspect import isawaitable
from textwrap import wrap

from textual import events
from textual.app import ComposeResult
from textual.containers import Vertical, VerticalScroll
from textual.screen import ModalScreen

from boxlore.tui.keys import bound
from boxlore.tui.screens.guide import GuideScreen
from boxlore.tui.widgets.form_lines import PAUSE
from boxlore.tui.widgets.plain_text import Line, plain, short
from boxlore.tui.widgets.text_input import drained

KEYS = "123456789abcdefghijklmnopqrstuvwxyz"
"""The keys of the lines of a list, in order; but for those that a line of it has for its own."""

NO_KEY = " "
NOWHERE = -1

OnAnswer = Callable[[str], Awaitable[None] | None]
"""Called with the `value` of the choice taken."""


MOST_HIGH, SCROLL_BAR = 80, 2
"""Of a hundred rows of the screen, how many a list has before it is scrolled; and the columns of the bar of that."""
WIDEST = 96
"""Columns of a card, as its style has it; on a screen of fewer it leaves a margin."""


def inner_width(columns: int) -> int:
    """How many columns there are within a card, on a screen of so many."""
    return min(WIDEST, columns * 96 // 100) - 6


class Card(ModalScreen[None]):
    """The base of all cards: Esc closes it without an answer, F1 shows the guide over it, Ctrl+Q leaves the program.

    It stands alone on the screen: what is below it would be seen in slivers only, and to dim that took longer than all
    else that opens a card.
    """

    AUTO_FOCUS = ""
    _back: Callable[[], Awaitable[None]] | None = None

    BINDINGS = bound(("escape", "close"), ("f1", "guide"), ("ctrl+q", "leave"))

    async def action_close(self) -> None:
        """Go back without an answer."""
        self.app.pop_screen()
        if self._back is not None:
            await self._back()

    async def action_guide(self) -> None:
        """Show the guide; what is on the card stays as it is."""
        await self.app.push_screen(GuideScreen())

    def goes_back(self, back: Callable[[], Awaitable[None]]) -> None:
        """Let Esc go there, where nothing else was said."""
        self._back = self._back or back

    async def may_leave(self) -> bool:
        """Whether the program may be left while this card stands; where not, the card says why."""
        return True

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")


@dataclass(frozen=True, slots=True)
class Choice:
    """One line of a list: the `value` that the answer gets, its name, and a few words about it.

    `key` is a letter of its own, for a line that stands now here, now there: what a hand has learnt stays so. NO_KEY is
    none at all: such a line is taken with the arrows.
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
        *[(key, f"press('{key}')") for key in f"0{KEYS}{KEYS[9:].upper()}"],
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
        the cursor stands first, `NOWHERE` for lines of which each writes at once: Enter alone takes none of them."""
        super().__init__()
        own_keys = {choice.key for choice in choices}
        others = (key for key in KEYS if key not in own_keys)
        self._keys = [choice.key or next(others) for choice in choices]
        self._title, self._choices, self._answer, self._below = title, list(choices), answer, below
        self._back = back
        self._at = at
        self._lines = [Line() for _ in choices]
        self._typed, self._typed_at = "", 0.0
        """Words that were typed into the list and chose nothing, and when the last letter of them was."""
        self._how = Line(classes="faint")

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line(self._title, classes="title")
            with VerticalScroll(can_focus=False) as scroll:
                scroll.styles.height = "auto"
                scroll.styles.max_height = f"{MOST_HIGH}vh"
                yield from self._lines
            if self._below:
                yield Line(f"\n{self._below}", classes="faint")
            yield self._how

    def on_mount(self) -> None:
        self._draw()

    def _draw(self) -> None:
        room = max(inner_width(self.app.size.width) - len("▸ 1  "), 16)
        width = max((len(choice.name) for choice in self._choices if choice.about), default=0)
        rows = sum(
            "".join(part for part, _ in _laid_out(each, width, room, "")).count("\n") + 1 for each in self._choices
        )
        if rows > self.app.size.height * MOST_HIGH // 100:
            room -= SCROLL_BAR
        for at, (line, choice) in enumerate(zip(self._lines, self._choices, strict=True)):
            here = at == self._at
            style = "bold $primary" if here else "bold"
            line.say(
                ("▸ " if here else "  ", "$primary"),
                (f"{self._keys[at]}  ", "$primary"),
                *_laid_out(choice, width, room, style),
            )
        if self._typed:
            words = "is typed into a list: it is kept nowhere" if len(self._typed) > 1 else "chooses nothing here"
            kept = short(f"“{self._typed.strip()}", room) + "”"
            self._how.say((f"{kept} {words}. Esc goes back.", "bold $warning"))
        else:
            self._how.say("A letter or digit chooses; ↑ ↓ and Enter too; Esc goes back.")
        if self._lines and self._at != NOWHERE:
            self._lines[self._at].scroll_visible(animate=False)

    def action_move(self, by: int) -> None:
        """Move the cursor to another line."""
        self._typed = ""
        first = 0 if by > 0 else -1
        self._at = (first if self._at == NOWHERE else self._at + by) % max(len(self._choices), 1)
        self._draw()

    async def action_press(self, key: str) -> None:
        """Take the line of this letter or digit, unless it is one of words that are typed here by mistake."""
        await drained(self)  # of letters that are no key of any list
        if key.lower() in self._keys and not self._is_typing():
            await self._take(self._keys.index(key.lower()))
        else:
            self._hear(key)

    def on_key(self, event: events.Key) -> None:
        """A letter that is no key of any list."""
        if event.is_printable and event.character:
            self._hear(event.character)

    def _is_typing(self) -> bool:
        return bool(self._typed) and time.monotonic() - self._typed_at < PAUSE

    def _hear(self, letter: str) -> None:
        self._typed = self._typed + letter if self._is_typing() else letter
        self._typed_at = time.monotonic()
        self._draw()

    async def action_take(self) -> None:
        """Take the line at the cursor; behind words that were typed here, only end them."""
        await drained(self)  # of letters that are no key of any list
        if self._is_typing():
            self._typed_at = 0.0
        elif self._choices and self._at != NOWHERE:
            await self._take(self._at)

    async def _take(self, at: int) -> None:
        self.app.pop_screen()
        below = self.app.screen
        answered = self._answer(self._choices[at].value)
        if isawaitable(answered):
            await answered
        above = self.app.screen
        if isinstance(above, Card) and above is not below:
            above.goes_back(partial(self._again, at))

    async def _again(self, at: int) -> None:
        """Show the list again, with the cursor where it was: Esc was pressed on what a line had opened."""
        again = Choices(self._title, self._choices, self._answer, below=self._below, back=self._back, at=at)
        await self.app.push_screen(again)


APART = 3
"""Columns between the name of a line and what is said about it."""
NARROWEST = 24
"""Columns that words about a line need beside it; in fewer they stand below its name."""


def _in_lines(words: str, columns: int) -> list[str]:
    return [words] if len(words) <= columns and "\n" not in words else wrap(" ".join(words.split()), columns)


def _laid_out(choice: Choice, width: int, room: int, style: str) -> Iterator[tuple[str, str]]:
    """The name of a line and what is said about it, whole: on further rows what has no room on the first. `width` are
    the columns of the names that have words about them, `room` those of the whole."""
    margin = "\n" + " " * len("▸ 1  ")
    names = wrap(" ".join(plain(choice.name).split()), room) or [""]
    if not choice.about:
        yield margin.join(names), style
        return
    is_beside = len(names) == 1 and len(names[0]) <= width and room - width - APART >= NARROWEST
    lines = _in_lines(plain(choice.about), room - width - APART if is_beside else room - APART)
    if is_beside:
        yield names[0].ljust(width + APART), style
        yield (margin + " " * (width + APART)).join(lines), "$faint"
    else:
        yield margin.join(names), style
        yield "".join(f"{margin}{' ' * APART}{line}" for line in lines), "$faint"


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
