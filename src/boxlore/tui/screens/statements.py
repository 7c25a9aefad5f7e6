"""The screen of everything told of one item: who says so, how surely, for whom; and what can be done with each."""

from collections import Counter
from collections.abc import Callable, Iterable

from textual.app import ComposeResult

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.language_names import language_name
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import Conflict, Record, StatementView
from boxlore.core.statements import Said, fold
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting import correcting
from boxlore.tasks.sitting.people_corrections import Naming
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.time_log import cite
from boxlore.tasks.sitting.who_said_it import reassign
from boxlore.tasks.strike import named
from boxlore.tui.keys import bound
from boxlore.tui.menu_tasks.striking import struck_lines
from boxlore.tui.screens.audience_lines import audience_blanks, audience_read, for_whom
from boxlore.tui.screens.cards import Choice, Choices, Notice
from boxlore.tui.screens.forms import Answers, Blank, Form
from boxlore.tui.screens.language_line import language_blank, language_read
from boxlore.tui.screens.list_screen import ListScreen, taken_back
from boxlore.tui.screens.long_task import WorkingScreen
from boxlore.tui.screens.not_this_person import NOT_THIS, put_right
from boxlore.tui.screens.person_actions import names_known
from boxlore.tui.screens.settling import ask_settle
from boxlore.tui.screens.which_teller import ask_which_teller
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.prompt_block import marks, source_words, who_says
from boxlore.tui.widgets.row_list import Cells, widest

WHO = ("person", "named", "photographer")
"""Fields that say who somebody is."""
CORRECT = (
    Choice("correct", "Correct the words", "what was there stays in the history"),
    Choice("said", "Somebody else said it", "a teller by name, or you"),
)
REST = (
    Choice("withdraw", "Take this answer back", "the history keeps it"),
    Choice("audience", "Who may see it", "anyone, family, keeper, archive"),
    Choice("language", "Which language it is in", "the words stay as they are"),
    Choice("history", "History", "what was said, what became of it"),
)
SETTLE = Choice("settle", "Choose which answer is used", "the others stay on record", key="u")
STRIKE = Choice("strike", "Strike for good", "out of the log and every backup", key="x")
"""What can be done with a statement; then, where it names a person, that it is the wrong one; what cannot be undone
last, by a letter of its own."""


def _among(view: StatementView, conflicts: Iterable[Conflict]) -> bool:
    """Whether the statement is a side of one of them."""
    return any(view.statement == side.statement for conflict in conflicts for side in conflict.told)


def _state(view: StatementView, record: Record) -> str:
    """What becomes of the statement, in a word or two."""
    if _among(view, record.conflicts):
        return "disputed"
    if _among(view, record.undecided):
        return "all kept"
    return "used" if FIELDS[view.field].many or view in record.rests_on(view.field) else "also said"


class SaidScreen(ListScreen):
    """The statements as a list; Enter offers what can be done with one. `changed` is called when the screen closes."""

    BINDINGS = bound(("f4", "close"), ("ctrl+z", "undo"))
    DEFAULT_CSS = (
        "SaidScreen Rows { margin: 1 1 0 1; } SaidScreen #whole { height: auto; max-height: 40%; padding: 1 2; }"
    )

    def __init__(self, sitting: Sitting, record: Record, changed: Callable[[], None]) -> None:
        super().__init__()
        self._sitting, self._record, self._changed = sitting, record, changed
        self._views: list[StatementView] = []
        self._numbers: dict[str, int] = {}
        self._names: dict[str, str] = {}
        """Who is meant by each statement (its id) that names somebody."""
        self._labels = 0
        """How wide the labels of all rows are."""
        self._alike: set[str] = set()
        """The ids of statements that another one reads like, so that each is told with when it was said."""
        self._whole = Line(id="whole")

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._rows
        yield self._whole
        yield self._note

    def on_mount(self) -> None:
        self._load()

    def _load(self) -> None:
        self._record = self._sitting.record(self._record.id)
        shown = self._record.people
        self._names = {person.told.statement: person.name for person in shown if person.person}
        marked = [person.told for person in self._record.shown() if person.number]
        known_ids = {view.statement for rows in self._record.told.values() for view in rows}
        self._views = [view for name in FIELDS.in_order(self._record.told) for view in self._record.all(name)]
        self._views += [view for view in marked if view.statement not in known_ids]
        self._labels = widest(FIELDS[view.field].label for view in self._views)
        rows = Counter(self._read(view) for view in self._views)
        self._alike = {view.statement for view in self._views if rows[self._read(view)] > 1}
        self._numbers = {person.told.statement: person.number for person in self._record.shown() if person.number}
        self._top.tell(f"{self._record.number} · who says so", "Enter what can be done · Esc back")
        self._rows.show(len(self._views), self._cells, self._rows.at)
        self._at_row()

    def _read(self, view: StatementView) -> tuple[str, ...]:
        """What the row of a statement says of it."""
        words = f"{who_says(view)}: “{' '.join(view.words.split())}”{self._meant(view)}"
        return FIELDS[view.field].label, _state(view, self._record), words, marks(view)

    def _meant(self, view: StatementView) -> str:
        """“ = Jaan Tamm”: who is meant, where the words do not give the name."""
        name = self._names.get(view.statement, "")
        return f" = {name}" if fold(name) not in fold(view.words) else ""

    def _cells(self, at: int, width: int) -> Cells:
        view = self._views[at]
        _, state, about, extra = self._read(view)
        if view.statement in self._alike:
            number = self._numbers.get(view.statement)
            apart = (f"at {number}" if number else "", view.recorded_at[: len("2026-11-27T10:20:30")].replace("T", " "))
            extra = ", ".join(part for part in (extra, *apart) if part)
        extra = f"  ({extra})" if extra else ""
        return (
            (f"{FIELDS[view.field].label:<{self._labels}} ", "strong"),
            (f"{state:<9} ", "faint"),
            (short(about, max(width - self._labels - 11 - len(extra), 8)) + extra, "plain"),
        )

    def _at_row(self) -> None:
        if not self._views:
            self._whole.say("Nothing is told of this photograph yet.")
            return
        view = self._views[self._rows.at]
        when = view.recorded_at[:16].replace("T", " ")
        language = f" · in {language_name(view.language)}" if view.language else ""
        extra = f" · {marks(view)}" if marks(view) else ""
        heard = cite(self._sitting.collection, view)
        extra += f" · heard in {heard}" if heard else ""
        about = f"{who_says(view)} · {when}{language}{extra}"
        self._whole.say(f"“{view.words}”{self._meant(view)}\n", (about, "$faint"))

    async def _clicked(self) -> None:
        self._at_row()

    def action_close(self) -> None:
        """Go back to the prompts."""
        self.app.pop_screen()
        self._changed()

    # what can be done

    async def action_take(self) -> None:
        """Offer what can be done with the statement."""
        if not self._views:
            return
        if not self._sitting.writable:
            self.say("Open for reading only; nothing can be changed.", bad=True)
            return
        view = self._views[self._rows.at]
        answers = {
            "audience": self._audience,
            "language": self._language,
            "settle": self._settle,
            "history": self._history,
            "strike": self._strike,
            "correct": self._correct,
            "said": self._said,
            "withdraw": self._withdraw,
        }
        person = self._sitting.collection.people().get(view.meant) if view.field in WHO else None

        async def answer(value: str) -> None:
            try:
                if value in answers:
                    await answers[value](view)
                elif person is not None:
                    statement = correcting.statement_of(self._sitting, self._record, view)
                    await put_right(self, value, person, Naming(self._record.id, self._record.number, statement))
            except BoxloreError as error:
                self.say(str(error), bad=True)

        settle = [SETTLE] if correcting.to_settle(self._record, view.field) else []
        choices = [*CORRECT, *REST, *(NOT_THIS if person is not None else ()), *settle, STRIKE]
        await self.app.push_screen(Choices(short(f"“{view.words}”", 60), choices, answer))

    @property
    def sitting(self) -> Sitting:
        """The sitting in which things are put right."""
        return self._sitting

    def done(self, words: str) -> None:
        """Show the statements anew after a change, and say what was done."""
        self._load()
        self.say(f"{words} Ctrl+Z takes it back.")

    def action_undo(self) -> None:
        """Take back the last thing done."""
        words = taken_back(self._sitting)
        self._load()
        self.say(words)

    async def _withdraw(self, view: StatementView) -> None:
        correcting.withdraw(self._sitting, self._record, view)
        self.done("Taken back: it is used no more.")

    async def _audience(self, view: StatementView) -> None:
        def answer(value: Answers) -> str:
            try:
                audience = audience_read(value)
                correcting.change(self._sitting, self._record, view, audience=audience)
            except BoxloreError as error:
                return str(error)
            self.done(f"It is {for_whom(audience)} from now on.")
            return ""

        await Form("Who may see it?", audience_blanks(view.audience), answer).open(self.app)

    async def _language(self, view: StatementView) -> None:
        def answer(value: dict[str, str]) -> str:
            tag, fault = language_read(value["tag"])
            if fault:
                return fault
            correcting.change(self._sitting, self._record, view, language=tag)
            self.done(f"Noted as told in {language_name(tag)}.")
            return ""

        blank = language_blank(view.language)
        await Form("Which language is it in?", [blank], answer).open(self.app)

    async def _settle(self, view: StatementView) -> None:
        def done(words: str) -> None:
            self._load()
            self.say(words)

        await ask_settle(self, self._record, view.field, done, view)

    async def _correct(self, view: StatementView) -> None:
        def answer(value: dict[str, str]) -> str:
            try:
                correcting.correct(self._sitting, self._record, view, value["words"])
            except BoxloreError as error:
                return str(error)
            self.done("Corrected. What was there stays in the history.")
            return ""

        blank = Blank("words", f"{FIELDS[view.field].label} ({who_says(view)})", view.words, keeps=True)
        await Form("Correct the words", [blank], answer).open(self.app)

    async def _said(self, view: StatementView) -> None:
        async def take(name: str) -> str:
            try:
                statement = correcting.statement_of(self._sitting, self._record, view)
                source = reassign(self._sitting, statement, name, self._record.id)
            except BoxloreError as error:
                return str(error)
            by = self._sitting.collection.people().names().get(source.ref, "the keeper")
            self.done(f"Said by {by} from now on.")
            return ""

        async def answer(value: dict[str, str]) -> str:
            return await ask_which_teller(self.app, self._sitting, value["name"], take)

        name = view.said_by if view.source.said is Said.NARRATOR else self._sitting.teller_named
        blank = Blank("name", "Name of the teller", name, "Empty: you.", known=names_known(self._sitting))
        await Form("Who said it?", [blank], answer).open(self.app)

    async def _history(self, view: StatementView) -> None:
        parts: list[str | tuple[str, str]] = []
        names = self._sitting.collection.people().names()
        for past in self._sitting.history(self._record.id, view.field):
            statement = past.statement
            when = statement.recorded_at[:16].replace("T", " ")
            words = statement.words or "asked, not known"
            parts += [
                (f"{when}  {past.shown}\n", "bold"),
                f"{source_words(statement.source, names.get(statement.source.ref, ''))}: “{words}”\n\n",
            ]
        await self.app.push_screen(Notice(f"History: {FIELDS[view.field].label}", *parts))

    async def _strike(self, view: StatementView) -> None:
        async def answer(value: str) -> None:
            if value == "yes":
                await self.app.push_screen(
                    WorkingScreen("Strike for good", lambda progress: self._struck(view, progress), self._load)
                )

        below = "This cannot be undone. Copies, sheets and packages made earlier may still hold the words."
        choices = [Choice("no", "No, leave them"), Choice("yes", "Yes, strike them for good")]
        title = f"Strike “{short(view.words, 44)}” for good?"
        await self.app.push_screen(Choices(title, choices, answer, below=below))

    def _struck(self, view: StatementView, progress: Progress) -> list[str]:
        report = self._sitting.strike(view.statement, progress)
        named(self._sitting.collection)
        return struck_lines(self._sitting.collection, report)
