"""Everything told of one item: who says so, how surely, for whom; and what can be done with each statement."""

from collections.abc import Callable

from textual.app import ComposeResult
from textual.screen import Screen

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.in_force import Record, StatementView
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.session import AUDIENCES, Sitting
from boxlore.tasks.sitting.time_log import cite
from boxlore.tasks.strike import BEYOND
from boxlore.tui.keys import bound
from boxlore.tui.screens.cards import Blank, Choice, Choices, Form, Notice
from boxlore.tui.screens.language import is_language, language_blank
from boxlore.tui.screens.working import WorkingScreen
from boxlore.tui.widgets.bars import Top
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.prompt_block import marks, who_says
from boxlore.tui.widgets.row_list import Cells, Rows

ACTIONS = (
    Choice("audience", "Who may see it", "anyone, family, keeper, or closed until"),
    Choice("language", "Which language it is in", "the words stay as they are"),
    Choice("settle", "Settle the field", "the others stay on record"),
    Choice("history", "History of the field", "what was said, what became of it"),
    Choice("strike", "Strike", "take the words out for good"),
)


class SaidScreen(Screen[None]):
    """The statements as a list; Enter offers what can be done with one."""

    AUTO_FOCUS = ""
    BINDINGS = bound(
        ("up", "move(-1)"),
        ("down", "move(1)"),
        ("pageup", "move(-10)"),
        ("pagedown", "move(10)"),
        ("enter", "choose"),
        ("escape,f4", "close"),
        ("ctrl+q", "leave"),
    )
    DEFAULT_CSS = (
        "SaidScreen Rows { margin: 1 1 0 1; } SaidScreen #whole { height: auto; max-height: 40%; padding: 1 2; }"
    )

    def __init__(self, sitting: Sitting, record: Record, changed: Callable[[], None]) -> None:
        super().__init__()
        self._sitting, self._record, self._changed = sitting, record, changed
        self._told: list[StatementView] = []
        self._top, self._rows, self._whole, self._note = Top(), Rows(), Line(id="whole"), Line(id="note")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._rows
        yield self._whole
        yield self._note

    def on_mount(self) -> None:
        self._note.display = False
        self.call_after_refresh(self._load)

    def _load(self) -> None:
        self._record = self._sitting.record(self._record.id)
        marked = [one.told for one in self._record.shown() if one.number]
        known = {told.statement for rows in self._record.told.values() for told in rows}
        own = [name for name in self._record.told if name not in FIELDS]
        self._told = [told for name in (*FIELDS, *own) for told in self._record.all(name)]
        self._told += [told for told in marked if told.statement not in known]
        self._top.tell(f"{self._record.number} · who says so", "Enter what can be done · Esc back")
        self._rows.show(len(self._told), self._cells, self._rows.at)
        self._say_whole()

    def _cells(self, at: int, width: int) -> Cells:
        told = self._told[at]
        doubted = any(told.statement in {one.statement for one in c.told} for c in self._record.conflicts)
        first = self._record.first(told.field) is told and not FIELDS[told.field].many
        state = "disputed" if doubted else "in force" if first or FIELDS[told.field].many else "besides"
        about = f"{who_says(told)}: “{' '.join(told.words.split())}”"
        extra = f"  ({marks(told)})" if marks(told) else ""
        return (
            (f"{FIELDS[told.field].label:<15.15} ", "strong"),
            (f"{state:<9} ", "faint"),
            (short(about, max(width - 26 - len(extra), 8)) + extra, "plain"),
        )

    def _say_whole(self) -> None:
        if not self._told:
            self._whole.say("Nothing is told of this item yet.")
            return
        told = self._told[self._rows.at]
        when = told.recorded_at[:16].replace("T", " ")
        language = f" · in “{told.language}”" if told.language else ""
        extra = f" · {marks(told)}" if marks(told) else ""
        heard = cite(self._sitting.collection, told)
        extra += f" · heard in {heard}" if heard else ""
        self._whole.say(f"“{told.words}”\n", (f"{who_says(told)} · {when}{language}{extra}", "$faint"))

    def action_move(self, by: int) -> None:
        """Another statement."""
        self._rows.move(by)
        self._say_whole()

    def on_rows_taken(self) -> None:
        self._say_whole()

    def action_close(self) -> None:
        """Back to the prompts."""
        self.app.pop_screen()
        self._changed()

    async def action_leave(self) -> None:
        """Leave the program."""
        await self.app.run_action("leave")

    def say(self, words: str, *, bad: bool = False) -> None:
        """A sentence below the list."""
        self._note.display = bool(words)
        self._note.set_class(bad, "-bad")
        self._note.say(words)

    # what can be done

    async def action_choose(self) -> None:
        """Offer what can be done with the statement."""
        if not self._told:
            return
        if not self._sitting.writable:
            self.say("Open for reading only; nothing can be changed.", bad=True)
            return
        told = self._told[self._rows.at]
        answers = {
            "audience": self._audience,
            "language": self._language,
            "settle": self._settle,
            "history": self._history,
            "strike": self._strike,
        }

        async def answer(value: str) -> None:
            try:
                await answers[value](told)
            except BoxloreError as error:
                self.say(str(error), bad=True)

        await self.app.push_screen(Choices(short(f"“{told.words}”", 60), ACTIONS, answer))

    async def _audience(self, told: StatementView) -> None:
        def answer(value: dict[str, str]) -> str:
            try:
                self._sitting.change(self._record, told, audience=value["audience"])
            except BoxloreError as error:
                return str(error)
            self._load()
            self.say(f"For {value['audience']} from now on. Ctrl+Z, back at the photograph, takes it back.")
            return ""

        hint = f"{', '.join(AUDIENCES)}, or archive:2060-01-01 (closed until that day)"
        await Form("Who may see it?", [Blank("audience", "Audience", told.audience, hint)], answer).open(self.app)

    async def _language(self, told: StatementView) -> None:
        def answer(value: dict[str, str]) -> str:
            tag = value["tag"]
            if not is_language(tag):
                return "Write a language tag: en, et, mi, de-AT."
            self._sitting.change(self._record, told, language=tag)
            self._load()
            self.say(f"Noted as told in “{tag}”.")
            return ""

        blank = language_blank(told.language)
        await Form("Which language is it in?", [blank], answer).open(self.app)

    async def _settle(self, told: StatementView) -> None:
        others = self._record.all(told.field)
        if len(others) < 2 or FIELDS[told.field].many:
            self.say("Nothing else is said here, so there is nothing to settle.")
            return
        choices = [
            Choice(told.statement, "This one is right", "the others stay on record"),
            Choice("both", "Keep both", "each may be so: two days, two names"),
            Choice("", "Cannot be said", "all stay, marked doubtful"),
        ]

        def answer(value: str) -> None:
            chosen, outcome = ("", value) if value == "both" else (value, "chosen" if value else "doubtful")
            self._sitting.settle(self._record, told.field, others, chosen, outcome=outcome)
            self._load()
            self.say("Settled. What the others said stays on record; a later statement opens it again.")

        await self.app.push_screen(Choices(f"Settle: {FIELDS[told.field].label}", choices, answer))

    async def _history(self, told: StatementView) -> None:
        parts: list[str | tuple[str, str]] = []
        for past in self._sitting.history(self._record.id, told.field):
            one = past.statement
            when = one.recorded_at[:16].replace("T", " ")
            words = one.words or "asked, not known"
            parts += [(f"{when}  {past.state}\n", "bold"), f"{one.source.said}: “{words}”\n\n"]
        await self.app.push_screen(Notice(f"History: {FIELDS[told.field].label}", *parts))

    async def _strike(self, told: StatementView) -> None:
        async def answer(value: str) -> None:
            if value == "yes":
                await self.app.push_screen(
                    WorkingScreen("Strike", lambda progress: self._struck(told, progress), self._load)
                )

        below = "This cannot be undone. Copies, sheets and packages made earlier may still hold the words."
        choices = [Choice("no", "No, leave them"), Choice("yes", "Yes, take them out for good")]
        title = f"Strike {short(told.words, 44)}?"
        await self.app.push_screen(Choices(title, choices, answer, below=below))

    def _struck(self, told: StatementView, progress: Progress) -> list[str]:
        report = self._sitting.strike(told.statement, progress)
        if not report.finished:
            return [
                "The words are struck. Another program still reads the collection;",
                "the last traces go when it closes.",
            ]
        left = [f"Still in: {path}" for path in report.left_in]
        gone = "Struck from the records." if left else "Struck. No byte of the collection holds the words."
        return [gone, *left, BEYOND]
