"""Small cards on top of a screen: a list to choose from, a form to fill in, a notice to read.

The function that is given the answer has finished before the next key is handled.
"""

from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass, replace
from inspect import isawaitable

from textual.app import App, ComposeResult
from textual.containers import Vertical, VerticalScroll
from textual.screen import ModalScreen

from boxlore.tui.keys import bound
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.text_input import Words

KEYS = "123456789abcdefghijklmnopqrstuvwxyz"
"""The keys of the lines of a list, in order."""

OnAnswer = Callable[[str], Awaitable[None] | None]
"""Called with the `value` of the choice taken."""


class Card(ModalScreen[None]):
    """The base of all cards: Esc closes it without an answer, Ctrl+Q leaves the program."""

    AUTO_FOCUS = ""

    BINDINGS = bound(("escape", "close"), ("ctrl+q", "leave"))

    def action_close(self) -> None:
        """Go back without an answer."""
        self.app.pop_screen()

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")


@dataclass(frozen=True, slots=True)
class Choice:
    """One line of a list: the `value` that the answer gets, its name, and a few words about it."""

    value: str
    name: str
    about: str = ""


class Choices(Card):
    """A list to choose from with a letter or a digit, or with the arrows and Enter."""

    BINDINGS = bound(
        ("up", "move(-1)"),
        ("down", "move(1)"),
        ("enter", "take"),
        *[(key, f"press('{key}')") for key in KEYS],
    )

    def __init__(self, title: str, choices: Sequence[Choice], answer: OnAnswer, *, below: str = "") -> None:
        super().__init__()
        self._title, self._choices, self._answer, self._below = title, list(choices), answer, below
        self._at = 0
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
        for at, (line, choice) in enumerate(zip(self._lines, self._choices, strict=True)):
            here = at == self._at
            style = "bold $primary" if here else "bold"
            line.say(
                ("▸ " if here else "  ", "$primary"),
                (f"{KEYS[at]}  ", "$primary"),
                (choice.name.ljust(width), style),
                (f"   {choice.about}" if choice.about else "", "$faint"),
            )
        if self._lines:
            self._lines[self._at].scroll_visible(animate=False)

    def action_move(self, by: int) -> None:
        """Move the cursor to another line."""
        self._at = (self._at + by) % max(len(self._choices), 1)
        self._draw()

    async def action_press(self, key: str) -> None:
        """Take the line of this letter or digit."""
        at = KEYS.find(key)
        if at < len(self._choices):
            await self._take(at)

    async def action_take(self) -> None:
        """Take the line at the cursor."""
        if self._choices:
            await self._take(self._at)

    async def _take(self, at: int) -> None:
        self.app.pop_screen()
        answered = self._answer(self._choices[at].value)
        if isawaitable(answered):
            await answered


@dataclass(frozen=True, slots=True)
class Blank:
    """One line of a form: its key in the answers, its label, the text it begins with, and a hint below it."""

    name: str
    label: str
    text: str = ""
    hint: str = ""


Filled = Callable[[dict[str, str]], Awaitable[str] | str]
"""Called with the answers, by the names of the blanks. Returns '' or what is wrong with them."""


class Form(Card):
    """A few lines to fill in. Enter goes to the next line; at the last one it gives the answers to `answer`."""

    DEFAULT_CSS = """
    Form .label { margin-top: 1; text-style: bold; }
    Form .faint { height: auto; }
    """
    BINDINGS = bound(("enter", "enter"), ("tab,down", "move(1)"), ("shift+tab,up", "move(-1)"))

    def __init__(self, title: str, blanks: Sequence[Blank], answer: Filled) -> None:
        """`answer` returns '', or what is wrong; then the form opens again with the same words and the fault."""
        super().__init__()
        self._title, self._blanks, self._answer = title, list(blanks), answer
        self._words = [Words(text=blank.text) for blank in blanks]
        self._fault = Line(classes="fault")

    def compose(self) -> ComposeResult:
        with VerticalScroll(classes="card", can_focus=False):
            yield Line(self._title, classes="title")
            for blank, words in zip(self._blanks, self._words, strict=True):
                yield Line(blank.label, classes="label")
                yield words
                if blank.hint:
                    yield Line(blank.hint, classes="faint")
            yield self._fault
            yield Line("\nEnter goes on; after the last line it is done. Esc goes back.", classes="faint")

    def on_mount(self) -> None:
        for words in self._words:
            words.load(words.text)
        self.set_focus(self._words[0])
        self._fault.display = False

    async def action_move(self, by: int) -> None:
        """Put the cursor into another line."""
        await self._drained()
        self.set_focus(self._words[(self._here() + by) % len(self._words)])

    async def action_enter(self) -> None:
        """Go to the next line; after the last, close the form and give the answers."""
        await self._drained()
        here = self._here()
        if here + 1 < len(self._words):
            self.set_focus(self._words[here + 1])
            return
        answers = {blank.name: words.text.strip() for blank, words in zip(self._blanks, self._words, strict=True)}
        self.app.pop_screen()
        answered = self._answer(answers)
        fault = await answered if isawaitable(answered) else answered
        if fault:
            again = Form(
                self._title, [replace(blank, text=answers[blank.name]) for blank in self._blanks], self._answer
            )
            await again.open(self.app)
            again._fault.say(("\n" + fault, "bold $error"))
            again._fault.display = True

    async def open(self, app: App[int]) -> None:
        """Show the form; when this returns, the next key is typed into its first line."""
        await app.push_screen(self)
        self.set_focus(self._words[0])

    def _here(self) -> int:
        return self._words.index(self.focused) if self.focused in self._words else 0

    async def _drained(self) -> None:
        if isinstance(self.focused, Words):
            await self.focused.drained()


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
