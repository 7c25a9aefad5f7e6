"""One person: everything told of them, the pictures with them, and what can be put right."""

from textual.app import ComposeResult

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.audiences import audience_shown
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.person import Person
from boxlore.core.people.reference import id_meant
from boxlore.core.records.living import life_of
from boxlore.core.statements import Statement
from boxlore.tasks.sitting import people_corrections
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.who_said_it import reassign
from boxlore.tui.keys import bound
from boxlore.tui.screens.audience_lines import for_whom
from boxlore.tui.screens.cards import Choice, Choices, Notice
from boxlore.tui.screens.forms import Blank, Form
from boxlore.tui.screens.list_screen import ListScreen, SittingHost, taken_back
from boxlore.tui.screens.not_this_person import NOT_THIS, put_right
from boxlore.tui.screens.person_actions import ask_about, names_known
from boxlore.tui.screens.which_teller import ask_which_teller
from boxlore.tui.widgets.plain_text import Line, short
from boxlore.tui.widgets.prompt_block import source_words
from boxlore.tui.widgets.row_list import Cells, widest


class PersonScreen(ListScreen):
    """Rows of what is told, then of the pictures; Enter offers what can be done with the row, A with the person."""

    BINDINGS = bound(("a,insert", "about"), ("ctrl+z", "undo"), ("q", "leave"))
    DEFAULT_CSS = """
    PersonScreen Rows { margin: 1 1 0 1; }
    PersonScreen #whole { height: auto; max-height: 30%; padding: 1 2; }
    """

    def __init__(self, host: SittingHost, ident: str) -> None:
        super().__init__()
        self._host, self._ident = host, ident
        self._told: list[Statement] = []
        self._meant: dict[str, str] = {}
        """Who is meant by what is told, as the id of a statement and of a person."""
        self._labels = 0
        """How wide the labels of all rows are."""
        self._namings: list[people_corrections.Naming] = []
        self._whole = Line(id="whole")

    @property
    def sitting(self) -> Sitting:
        """The sitting in which things are put right."""
        return self._host.sitting

    @property
    def person(self) -> Person:
        """Who is shown, as known now."""
        return self.sitting.collection.people()[self._ident]

    def compose(self) -> ComposeResult:
        yield self._top
        yield self._rows
        yield self._whole
        yield self._note

    def on_mount(self) -> None:
        self._load()

    def _load(self) -> None:
        if self._ident not in self.sitting.collection.people():
            self.app.pop_screen()
            return
        person, collection = self.person, self.sitting.collection
        rows = people_corrections.told_of(collection, person)
        self._told = [said for said, _ in rows if FIELDS[said.field].told or said.words]
        self._meant = {said.id: id_meant(reading) for said, reading in rows if reading is not None}
        self._namings = people_corrections.namings(collection, person)
        self._labels = widest([*(FIELDS[said.field].label for said in self._told), "Took it"])
        pictures = len({naming.item for naming in self._namings})
        count = "one picture" if pictures == 1 else f"{pictures} pictures"
        self._top.tell(f"{person.name} · {count}", "Enter: the line · A: name, kin, consent · Esc")
        self._rows.show(len(self._told) + len(self._namings), self._cells, self._rows.at)
        self._at_row()

    def _row(self, at: int) -> Statement | people_corrections.Naming | None:
        if at < len(self._told):
            return self._told[at]
        place = at - len(self._told)
        return self._namings[place] if place < len(self._namings) else None

    def _cells(self, at: int, width: int) -> Cells:
        row = self._row(at)
        if isinstance(row, people_corrections.Naming):
            said = row.statement
            label = "Took it" if said.field == "photographer" else "In it"
            about = short(f"{self._says(said)}: “{said.words}”", max(width - self._labels - 13, 8))
            return (f"{label:<{self._labels}} ", "strong"), (f"{row.number:<10} ", "plain"), (about, "faint")
        if row is None:
            return ()
        words, room = self._words(row), max(width - self._labels - 25, 8)
        return ((f"{FIELDS[row.field].label:<{self._labels}} ", "strong"),
                (f"{short(words, room):<{room}} ", "plain"),
                (short(self._says(row), 22), "faint"))  # fmt: skip

    def _words(self, said: Statement) -> str:
        people = self.sitting.collection.people()
        if said.field == "merged_into":  # told of the other entry: here it stands by the name that it had
            names = [row.words for row in self._told if row.subject == said.subject and row.field == "name"]
            return next(iter(names), said.words)
        ident = self._meant.get(said.id, "") or said.words
        return people[ident].name if ident in people else said.words or "asked, not known"

    def _says(self, said: Statement) -> str:
        return source_words(said.source, self.sitting.collection.people().names().get(said.source.ref, ""))

    def _at_row(self) -> None:
        row = self._row(self._rows.at)
        said = row.statement if isinstance(row, people_corrections.Naming) else row
        if said is None:
            self._whole.say("Nothing is told yet. A adds something.")
            return
        self._whole.say(
            f"“{self._words(said)}”\n",
            (f"{self._says(said)} · {said.recorded_at[:10]} · {self._for_whom(said)}", "$faint"),
        )

    def _is_living(self) -> bool:
        collection = self.sitting.collection
        return life_of(self.person, collection.clock.today(), collection.settings.living_years).living

    def _for_whom(self, said: Statement) -> str:
        """Whom a statement is for; of somebody living nothing goes outside the family without consent."""
        whom = for_whom(said.audience)
        if audience_shown(said.audience) or not self._is_living():
            return whom
        return f"{whom}; taken as living, so outside the family by consent only"

    def action_undo(self) -> None:
        """Take back the last thing done."""
        words = taken_back(self.sitting)
        self._load()
        self.say(words)

    def _writable(self) -> bool:
        if not self.sitting.writable:
            self.say("Open for reading only; nothing can be changed.", bad=True)
        return self.sitting.writable

    def done(self, words: str) -> None:
        """Show the person anew after a change, and say what was done."""
        self._load()
        self.say(f"{words} Ctrl+Z takes it back.")

    # a row

    async def action_take(self) -> None:
        """Offer what can be done with the row."""
        row = self._row(self._rows.at)
        if isinstance(row, people_corrections.Naming):
            await self._picture(row)
        elif row is not None and self._writable():
            await self._statement(row)

    async def _picture(self, naming: people_corrections.Naming) -> None:
        async def answer(value: str) -> None:
            if value == "open":
                self._host.show_item(naming.item)
            elif self._writable() and value == "said":
                await self._ask_source(naming.statement, naming.item)
            elif self._writable():
                await put_right(self, value, self.person, naming)

        choices = [
            Choice("open", f"Show {naming.number}"),
            *NOT_THIS,
            Choice("said", "Somebody else said it"),
        ]
        await self.app.push_screen(Choices(f"{self.person.name} in {naming.number}", choices, answer))

    async def _statement(self, said: Statement) -> None:
        async def answer(value: str) -> None:
            if value == "history":
                await self._history(said)
            elif value == "correct":
                await self._correct(said)
            else:
                await self._ask_source(said, "")

        choices = [
            Choice("history", "History"),
            Choice("correct", "Correct the words", "what was there stays in the history"),
            Choice("said", "Somebody else said it"),
        ]
        if not FIELDS[said.field].told:
            del choices[1:]
        await self.app.push_screen(Choices(short(f"“{self._words(said)}”", 60), choices, answer))

    async def _history(self, said: Statement) -> None:
        parts: list[str | tuple[str, str]] = []
        for past in self.sitting.history(said.subject.id, said.field):
            when = past.statement.recorded_at[:16].replace("T", " ")
            parts += [(f"{when}  {past.shown}\n", "bold")]
            parts += [f"{self._says(past.statement)}: “{self._words(past.statement)}”\n\n"]
        await self.app.push_screen(Notice(f"History: {FIELDS[said.field].label}", *parts))

    async def _correct(self, said: Statement) -> None:
        def answer(answers: dict[str, str]) -> str:
            try:
                people_corrections.correct(self.sitting, said, answers["words"])
            except BoxloreError as error:
                return str(error)
            self.done("Corrected.")
            return ""

        blank = Blank("words", FIELDS[said.field].label, said.words, keeps=True)
        await Form("Correct the words", [blank], answer).open(self.app)

    async def _ask_source(self, said: Statement, item: str) -> None:
        async def take(name: str) -> str:
            try:
                source = reassign(self.sitting, said, name, item)
            except BoxloreError as error:
                return str(error)
            self.done(f"Said by {self.sitting.collection.people().names().get(source.ref, 'the keeper')}.")
            return ""

        async def answer(answers: dict[str, str]) -> str:
            return await ask_which_teller(self.app, self.sitting, answers["name"], take)

        known = names_known(self.sitting)
        blank = Blank("name", "Name of the teller", self.sitting.teller_named, "Empty: you.", known=known)
        await Form("Who said it?", [blank], answer).open(self.app)

    async def action_about(self) -> None:
        """Offer what can be done with the person."""
        if self._writable():
            await ask_about(self)
