"""A form to fill in: free words, one of a few choices, or a path. What is wrong with the answers is said on it.

The function that is given the answers has finished before the next key is handled. Where it finds something wrong the
form stands again with all that was typed, and the cursor is in the line that the fault is about: the one whose words
the fault quotes, else the one whose answer was looked at last. What was typed is never put away by one key: Esc and
Ctrl+Q first say that it is not kept yet.
"""

import re
from collections.abc import Awaitable, Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from inspect import isawaitable
from pathlib import Path
from textwrap import wrap

from textual.app import App, ComposeResult
from textual.containers import Vertical, VerticalScroll

from boxlore.tui.from_inside import from_inside
from boxlore.tui.keys import bound
from boxlore.tui.screens.browser import Browser
from boxlore.tui.screens.cards import Card, inner_width
from boxlore.tui.widgets.form_lines import ChoiceLine, NameLine, PathLine, typed_path
from boxlore.tui.widgets.plain_text import Line
from boxlore.tui.widgets.text_input import Words

LOW = 30
"""Under so many rows the lines of a form stand without space between them."""
SHOWN_PATHS = 8
"""How many completions of a path are shown."""


@dataclass(frozen=True, slots=True)
class Blank:
    """One line of a form: its key in the answers, its label, the text it begins with, and a hint below it.

    With `choices` (value, label) the line takes one of them, and `text` is the value that it begins with; the answer
    is a value. `path` is "folder" or "file" for a path that is completed; a relative one begins at `base`.
    """

    name: str
    label: str
    text: str = ""
    hint: str = ""
    choices: tuple[tuple[str, str], ...] = ()
    path: str = ""
    base: Path = Path()
    known: Callable[[str], list[str]] | None = None
    """For a name: the names known that begin as a text; below the line, and Tab takes the first."""
    keeps: bool = False
    """Whether the words are there to be corrected: typing goes on after them."""

    def with_answer(self, answers: Mapping[str, str]) -> "Blank":
        """The same line, beginning with what was answered before."""
        return replace(self, text=answers[self.name])

    def quoted(self, answers: Mapping[str, str], fault: str) -> int:
        """How many letters of this line's own words stand in a fault; 0 where they do not stand there whole."""
        words = "" if self.choices else answers[self.name].rstrip("/")
        if words and self.path and str(typed_path(words, self.base)) in fault:
            return len(words)
        is_short = len(words) < SHORTEST
        if not words or (is_short and words.islower() and f"“{words}”" not in fault):
            return 0  # “a” stands in many a sentence
        quoted = re.search(rf"(?<!\w){re.escape(words)}(?!\w)", fault, re.NOFLAG if is_short else re.IGNORECASE)
        return len(words) if quoted else 0


class Answers(dict[str, str]):
    """The answers of a form, by the names of its blanks. `looked_at` is the name of the one that was read last."""

    looked_at = ""

    def __getitem__(self, name: str) -> str:
        self.looked_at = name
        return super().__getitem__(name)


Filled = Callable[[Answers], Awaitable[str] | str]
"""Called with the answers. Returns '' or what is wrong with them."""

Back = Callable[[], Awaitable[None]]
"""Shows again what stood before a form."""

SHORTEST = 3
"""Letters of an answer that a fault may quote in other letters, large or small, and without marks around it."""

CHOOSE = ("", "→ to choose")
"""What a line shows in which nothing is chosen: nobody's consent is filled in for them, and nothing is given away."""

BESIDE = 5
"""Rows of a form that are neither its lines nor sentences: its frame, its title, and what parts them."""

NOT_YET = "This is not kept yet. {key} again lets go of it; Ctrl+S takes it as it stands."


class Form(Card):
    """A few lines to fill in. Enter goes to the next line; at the last one it gives the answers to `answer`.

    What a line begins with is picked out, so that typing replaces it and an arrow key keeps it.
    """

    DEFAULT_CSS = """
    Form VerticalScroll { height: auto; scrollbar-size-vertical: 1; }
    Form .label { margin-top: 1; text-style: bold; }
    Form .faint { height: auto; }
    Form.-low .label { margin-top: 0; }
    """
    BINDINGS = bound(
        ("enter", "enter"),
        ("tab", "tab"),
        ("down", "move(1)"),
        ("shift+tab,up", "move(-1)"),
        ("f3", "browse"),
        ("ctrl+s", "done"),
    )

    def __init__(
        self, title: str, blanks: Sequence[Blank], answer: Filled, *, above: str = "", back: Back | None = None
    ) -> None:
        """`above` is a text over the lines. `answer` returns '', or what is wrong: then the form opens again with the
        same words and that fault. `back` is where Esc goes, else the screen below."""
        super().__init__()
        self._title, self._blanks, self._answer, self._back = title, list(blanks), answer, back
        self._first, self._asked_to_go = 0, ""
        self._hints = [Line(classes="faint") for _ in blanks]
        self._words = [self._line(at, blank) for at, blank in enumerate(blanks)]
        self._labels = [
            Line(blank.label, ("   ← →" if blank.choices else "", "$faint not bold"), classes="label")
            for blank in blanks
        ]
        self._said, self._above, self._shown = "", above, ""
        self._begun = self._answers()
        """The answers before anything was typed; of a form that opens again, those of the first time."""
        self._wrong = self._begun
        """The answers that the fault is about."""
        self._fault = Line(classes="fault")
        self._lines = VerticalScroll(can_focus=False)

    def _line(self, at: int, blank: Blank) -> Words:
        if blank.choices:
            labels = dict(blank.choices)
            return ChoiceLine(list(labels.values()), labels.get(blank.text, ""))
        if blank.path:
            folders = blank.path == "folder"
            return PathLine(
                blank.text, base=blank.base, folders=folders, seen=lambda paths: self._show_paths(at, paths)
            )
        if blank.known is not None:
            return NameLine(blank.text, known=blank.known, seen=lambda names: self._show_paths(at, names))
        return Words(text=blank.text)

    def compose(self) -> ComposeResult:
        with Vertical(classes="card"):
            yield Line(self._title, classes="title")
            yield self._fault  # seen wherever the cursor is put then, as the last line is
            with self._lines:
                if self._above:
                    yield Line(self._above, classes="above")
                for label, words, hint in zip(self._labels, self._words, self._hints, strict=True):
                    yield label
                    yield words
                    yield hint
            yield Line(f"\n{self._how()}", classes="faint")

    def _how(self) -> str:
        paths = (
            "Tab completes a path, F3 looks through the folders. " if any(blank.path for blank in self._blanks) else ""
        )
        if len(self._blanks) == 1:
            return f"{paths}Enter takes it. Esc goes back."
        return f"{paths}Enter goes on; at the last line it takes all. Ctrl+S: the rest as it stands. Esc goes back."

    def on_mount(self) -> None:
        self.set_class(self.app.size.height < LOW, "-low")
        for at, words in enumerate(self._words):
            words.load(words.text)
            if not (self._said or self._blanks[at].keeps or isinstance(words, ChoiceLine)):
                words.select_all()  # typing takes the place of what was put there for the keeper
            self._show_hint(at)
        self.set_focus(self._words[self._first])
        self._say(self._said)

    def on_text_area_changed(self) -> None:
        """Another answer is being typed: what was wrong with the earlier one is said no more."""
        if self._said and self._answers() != self._wrong:
            self._said = ""
            self._say("")

    def on_resize(self) -> None:
        self._fit()

    def _fit(self) -> None:
        """Give the lines the height that the sentences above and below them leave; further ones are scrolled to."""
        columns, rows = self.app.size
        wide = max(inner_width(columns), 10)
        said = [*wrap(self._how(), wide), *wrap(self._shown, wide), *([""] if self._shown and rows >= LOW else [])]
        self._lines.styles.max_height = max(rows - len(said) - BESIDE, 3)

    def _say(self, words: str) -> None:
        """Show a sentence above the lines; '' takes it away."""
        self._shown = from_inside(words)
        self._fault.say((self._shown + "\n" * (not self.has_class("-low")), "bold $error"))
        self._fault.display = bool(words)
        self._fit()

    def anew(self, answers: Mapping[str, str], fault: str) -> "Form":
        """The same form with these answers, what is wrong with them, and the cursor in the line that it is about."""
        first = self._at_fault(answers, fault)
        form = Form(
            self._title,
            [blank.with_answer(answers) for blank in self._blanks],
            self._answer,
            above=self._above,
            back=self._back,
        )
        form._said, form._begun, form._first = fault, self._begun, first
        return form

    def _at_fault(self, answers: Mapping[str, str], fault: str) -> int:
        """The line that a fault is about."""
        names = [blank.name for blank in self._blanks]
        looked_at = answers.looked_at if isinstance(answers, Answers) else ""
        quoted = {at: found for at, blank in enumerate(self._blanks) if (found := blank.quoted(answers, fault))}
        if quoted:
            return max(quoted, key=quoted.__getitem__)
        return names.index(looked_at) if looked_at in names else 0

    def _show_hint(self, at: int) -> None:
        blank, hint = self._blanks[at], self._hints[at]
        labels = " · ".join(label for _, label in blank.choices)
        words = ". ".join(part for part in (f"← → changes: {labels}" if labels else "", blank.hint) if part)
        hint.say(words)
        hint.display = bool(words) and (self._words[at] is self.focused or not self.has_class("-low"))

    def _show_paths(self, at: int, paths: list[str]) -> None:
        """Below the line, what the path or the name may go on to."""
        names = [path.rstrip("/").rpartition("/")[2] + "/" * path.endswith("/") for path in paths]
        if not names:
            self._show_hint(at)
            return
        more = f"  and {len(names) - SHOWN_PATHS} more" if len(names) > SHOWN_PATHS else ""
        takes = ("Tab takes ", "bold") if self._blanks[at].known else ("Tab ", "bold")
        self._hints[at].say(takes, "  ".join(names[:SHOWN_PATHS]), more)
        self._hints[at].display = True

    def on_descendant_focus(self) -> None:
        for at in range(len(self._blanks)):
            self._show_hint(at)
        for part in (self._hints, self._words, self._labels):  # where not all of them have room, the label has it
            self.call_after_refresh(part[self._here()].scroll_visible, animate=False)
        if self._here() == 0:  # what stands above the first line is seen with it
            self.call_after_refresh(self._lines.scroll_home, animate=False)

    async def action_tab(self) -> None:
        """Complete a path as far as that goes, or a name; else go to the next line."""
        await self._drained()
        words = self._words[self._here()]
        if not (isinstance(words, PathLine | NameLine) and not words.selected_text and words.complete()):
            await self.action_move(1)

    async def action_move(self, by: int) -> None:
        """Put the cursor into another line."""
        await self._drained()
        self._stay()
        self.set_focus(self._words[(self._here() + by) % len(self._words)])

    async def action_browse(self) -> None:
        """Look through the folders for this line's path."""
        await self._drained()
        at = self._here()
        words, blank = self._words[at], self._blanks[at]
        if isinstance(words, PathLine):
            folders = blank.path == "folder"
            await self.app.push_screen(Browser(blank.label, words.path, folders=folders, taken=words.load))

    async def action_enter(self) -> None:
        """Go to the next line; after the last, close the form and give the answers."""
        await self._drained()
        here = self._here()
        if here + 1 < len(self._words):
            self._stay()
            self.set_focus(self._words[here + 1])
            return
        await self.action_done()

    async def action_done(self) -> None:
        """Close the form and give the answers, the lines not reached as they stand."""
        await self._drained()
        answers = Answers(self._answers())
        self.app.pop_screen()
        answered = self._answer(answers)
        fault = await answered if isawaitable(answered) else answered
        if fault:
            await self.anew(answers, fault).open(self.app)

    def _answers(self) -> dict[str, str]:
        return {blank.name: _answer(blank, words.text) for blank, words in zip(self._blanks, self._words, strict=True)}

    async def action_close(self) -> None:
        """Go back without an answer; where something was typed, once it was said that it is not kept."""
        if await self._may_go("Esc"):
            await super().action_close()

    async def may_leave(self) -> bool:
        """Yes, where nothing was typed, or once it was said that it is not kept."""
        return await self._may_go("Ctrl+Q")

    def _stay(self) -> None:
        """Another line is gone to: nobody leaves."""
        if self._asked_to_go:
            self._asked_to_go = ""
            self._say(self._said)

    async def _may_go(self, key: str) -> bool:
        """Whether the form may close without an answer: nothing was typed, or the same key was pressed before."""
        await self._drained()
        if self._answers() == self._begun or self._asked_to_go == key:
            return True
        self._asked_to_go = key
        self._say(NOT_YET.format(key=key))
        return False

    async def open(self, app: App[int]) -> None:
        """Show the form; when this returns, the next key is typed into its first line, or the one with the fault."""
        await app.push_screen(self)
        self.set_focus(self._words[self._first])

    def _here(self) -> int:
        return self._words.index(self.focused) if self.focused in self._words else 0

    async def _drained(self) -> None:
        if isinstance(self.focused, Words):
            await self.focused.drained()


def _answer(blank: Blank, text: str) -> str:
    """The answer of a line: the value of the label chosen, else the words as they were typed."""
    return next((value for value, label in blank.choices if label == text), text.strip())
