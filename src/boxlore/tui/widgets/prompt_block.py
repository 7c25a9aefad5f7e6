"""One prompt on the screen: the question, what others said, the words being typed, and what is understood of them."""

from collections.abc import Sequence
from textwrap import wrap
from typing import Protocol

from rich.cells import cell_len
from textual.app import ComposeResult
from textual.containers import Vertical

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.event_question import asked_event
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.audiences import audience_shown
from boxlore.core.fields.table import FIELDS
from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.reading import PlaceReading
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Source, Sure, fold
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.sitting.which_date import OpenDate
from boxlore.tasks.sitting.which_meant import OpenQuestion
from boxlore.tasks.telling.understanding import Understood
from boxlore.tui.from_inside import SIDES
from boxlore.tui.widgets.plain_text import Line, StyledText, short
from boxlore.tui.widgets.text_input import Words

MOST_SHOWN = 300
"""Letters of another's words shown above a prompt; F4 shows them whole."""

MOST_LINES, MOST_LINES_LOW = 6, 3
"""Lines below a prompt, which a question with its choices may need; and on a low screen."""


class Typist(Protocol):
    """What a block calls when something happens in it."""

    def typed(self, block: "Block") -> None:
        """The words were changed."""

    def left(self, block: "Block") -> None:
        """The focus has gone elsewhere."""


class Block(Vertical):
    """One prompt with its words. `load` fills it from a record.

    `baseline` are the words as they are kept, and `replaces` the id of that statement ('' if nothing is kept).
    """

    DEFAULT_CSS = """
    Block { height: auto; margin-bottom: 1; padding: 0 1; }
    Block .question { color: $foreground; height: 1; }
    Block .question.-here { color: $primary; text-style: bold; }
    Block .others { height: auto; color: $secondary; padding-left: 2; }
    Block .made { height: 1; color: $faint; padding-left: 2; }
    """

    def __init__(self, prompt: Prompt, typist: Typist) -> None:
        super().__init__(id=f"block-{prompt.field}")
        self.prompt = prompt
        self.baseline = ""
        self.replaces = ""
        self.suggestions: list[tuple[str, str]] = []
        """(id, words), the one that Tab takes first; the id is empty for a place."""
        self.understood: tuple[StyledText, ...] = ()
        self.asking = ""
        """The question to ask instead of the prompt's own, such as who is at a marker; '' for none."""
        self._typist = typist
        self._state = self._means = ""
        self._names: dict[str, str] = {}
        """Who is meant by each answer (its id) of this record that names somebody."""
        self.words = Words(lines=prompt.lines, heard=lambda _: typist.typed(self), left=lambda _: self._lost())
        self._question = Line(classes="question")
        self._others = Line(classes="others")
        self._made = Line(classes="made")

    def compose(self) -> ComposeResult:
        yield self._question
        yield self._others
        yield self.words
        yield self._made

    def load(
        self, record: Record, own: StatementView | None, others: list[StatementView], *, keeps: bool = True
    ) -> None:
        """Show this teller's own answer, ready to be corrected, and what others said. `keeps` False leaves the words
        that are being typed as they are."""
        self.baseline = own.words if own else ""
        self.replaces = own.statement if own else ""
        self.suggestions, self.understood = [], ()
        self._state = _state(record, self.prompt, own)
        self._names = {shown.told.statement: shown.name for shown in record.people}
        self._means = self._meant(own) if own else ""
        picked_out = bool(self.words.selected_text) and self.words.text == self.baseline
        if keeps and not picked_out:  # typing takes the place of what is picked out, after a card too
            self.words.load(self.baseline)
        self.say_others(others)
        self.draw()

    def say_others(self, others: list[StatementView]) -> None:
        """Show what others said: up to MOST_SHOWN letters each, but only one line each on a low screen."""
        parts: list[StyledText] = []
        room = max(self.size.width - 4, 40) if self.screen.has_class("-low") else MOST_SHOWN
        if self.prompt.gathers and others:
            parts.append(" · ".join(_named(view, self._meant(view)) for view in others))
        else:
            for view in others:
                parts += [("\n" if parts else ""), short(_said(view), room)]
        self._others.display = bool(parts)
        self._others.say(*parts)

    def _meant(self, view: StatementView) -> str:
        """The name of the person meant, where the words told do not give it: “me” and “Stan” say little alone."""
        name = self._names.get(view.statement, "")
        return name if fold(name) not in fold(view.words) else ""

    @property
    def text(self) -> str:
        """The words as they are typed now."""
        return self.words.text

    @property
    def changed(self) -> bool:
        """Whether the words differ from what is kept."""
        return self.text.strip() != self.baseline.strip()

    def enter(self) -> None:
        """The cursor comes here: an answer of one line is picked out, so that typing takes its place; an arrow key
        keeps it."""
        if self.prompt.lines == 1 and self.text and not self.changed and not self.words.read_only:
            self.words.select_all()

    def suggest(self, suggestions: list[tuple[str, str]]) -> None:
        """Offer completions; the first is the one that Tab takes."""
        self.suggestions = suggestions

    def turn(self, by: int) -> None:
        """Bring the next suggestion to the front (`by` 1), or the one before (-1)."""
        by %= len(self.suggestions)
        self.suggestions = self.suggestions[by:] + self.suggestions[:by]
        self.draw()

    def draw(self) -> None:
        """Draw the question, and the line below the words."""
        here = self.screen.focused is self.words
        self._question.set_class(here, "-here")
        self._question.say("▸ " if here else "  ", self.asking or self.prompt.question, ("   " + self._state, "italic"))
        parts = self._below(here)
        self._made.display = bool(parts)
        if parts:
            words = "".join(part if isinstance(part, str) else part[0] for part in parts)
            most = MOST_LINES_LOW if self.screen.has_class("-low") else MOST_LINES
            width = max(self.size.width - 6, 20)
            lines = max(len(wrap(words, width, break_on_hyphens=False)), -(-cell_len(words) // width))
            self._made.styles.height = min(lines, most)
        self._made.say(*parts)

    def _below(self, here: bool) -> tuple[StyledText, ...]:
        """What stands below the words; while they take the place of an answer of one line, which that is."""
        parts = self._made_of_them(here)
        if self.prompt.lines > 1 or not self.baseline or not self.changed:
            return parts
        was = f"In the place of “{short(self.baseline, 30)}”; "
        return (*parts, "  · " if parts else "", was, ("Ctrl+Z", "bold"), " puts it back.")

    def _made_of_them(self, here: bool) -> tuple[StyledText, ...]:
        if here and self.suggestions:
            names = [short(words, 40) for _, words in self.suggestions]
            others = f"   ↓ {', '.join(names[1:])}" if names[1:] else ""
            return (("Tab", "bold"), f" takes {names[0]}{others}")
        if self.understood:
            return self.understood
        if self._means and not self.changed:
            return ("= ", self._means)
        goes_on = "Enter: a new line · Tab goes on." if self.prompt.lines > 1 else ""
        if here and not self.text:
            return (f"{self.prompt.hint} {goes_on}".strip(),)
        return (goes_on,) if here and goes_on else ()

    def on_descendant_focus(self) -> None:
        self.draw()

    def _lost(self) -> None:
        self._typist.left(self)
        self.draw()


SURE_WORDS = {Sure.SURE: "", Sure.LIKELY: "likely", Sure.GUESS: "a guess", Sure.NOT_KNOWN: "not known"}


def marks(view: StatementView) -> str:
    """How sure a statement is and who may see it, in words; '' if it is sure and for anyone."""
    return ", ".join(part for part in (SURE_WORDS[view.sure], audience_shown(view.audience)) if part)


def who_says(view: StatementView) -> str:
    """Whose words these are, or where they were written."""
    return source_words(view.source, view.said_by)


def source_words(source: Source, name: str) -> str:
    """A source in words; `name` is that of a teller of the registry."""
    said, ref = source.said, source.ref
    names = {
        Said.INSCRIPTION: f"on the {SIDES.get(ref, ref) or 'print'}",
        Said.FILE: "in the file",
        Said.KEEPER: "the keeper",
    }
    return names.get(said, name or ref or str(said))


def made_of(meant: Understood | StatementView, way: FamilyWay) -> tuple[StyledText, ...]:
    """What was understood of a date or a place: its standard form, or the question that it leaves open."""
    if isinstance(meant, StatementView):
        best = meant.place.best if meant.place else None
        return ("= ", best.town) if best else _date_parts(meant.date, way)
    value = meant.reading.value
    if isinstance(value, PlaceReading) and value.kind != "match":
        return places_asked(names_apart(value.choices))
    if meant.asks and isinstance(value, DateReading):
        return date_asked(meant.asks, [family_display(standard.parsed(edtf), way) for edtf in value.choices])
    if meant.asks:
        return (("? ", "bold $warning"), meant.asks)
    if isinstance(value, DateReading):
        return _date_parts(value, way) or (UNREAD,)
    return ("= ", meant.shown)


UNREAD = "kept as told; not read as a date"


def asked_or_made(
    question: OpenQuestion | None, own: StatementView | None, prompt: Prompt, way: FamilyWay
) -> tuple[StyledText, ...]:
    """The question that is open about a date or a place, or what this teller's answer was understood as."""
    if isinstance(question, OpenDate):
        return date_asked(question.asks, question.names)
    if question is not None:
        return places_asked(question.names)
    if own is not None and own.asks and prompt.reads == "date":
        return (f"{UNREAD}; ", ("Ctrl+P", "bold"), ": say when")
    return made_of(own, way) if own else ()


def date_asked(asks: str, names: Sequence[str]) -> tuple[StyledText, ...]:
    """The question about a date, and its choices, numbered as the card of Ctrl+P has them; a question that names them
    all is enough."""
    if not names and asked_event(asks):
        return (("? ", "bold $warning"), f"{asks} ", ("Ctrl+P", "bold"), ": say when")
    if not names:
        return (("? ", "bold $warning"), asks)
    asked = question_alone(asks, names)
    numbered = " · ".join(f"{number} {short(name, 34)}" for number, name in enumerate(names, 1))
    takes = f" takes {'it' if len(names) == 1 else 'one'}"
    chooses = takes if all(name in asked for name in names) else f" chooses: {numbered}"
    return (("? ", "bold $warning"), f"{asked} ", ("Ctrl+P", "bold"), chooses)


def question_alone(asks: str, names: Sequence[str]) -> str:
    """A question about a date as it stands beside its choices: what it lists behind its first mark of question is told
    by them, unless it lists them by the same names."""
    end = asks.find("?", asks.find("”") + 1) + 1  # of the question, and not of what it quotes
    return asks if all(name in asks for name in names) else asks[:end] or asks


def places_asked(names: Sequence[str]) -> tuple[StyledText, ...]:
    """The choices of a place in question, numbered as the card of Ctrl+P has them."""
    if not names:
        return (("Ctrl+P", "bold"), " makes it our own; it is not in the list of places")
    numbered = " · ".join(f"{number} {name}" for number, name in enumerate(short_places(names, 40), 1))
    return (("? ", "bold $warning"), ("Ctrl+P", "bold"), f" chooses: {numbered}")


def short_places(names: Sequence[str], width: int) -> list[str]:
    """The names of places to choose from, each in so many letters: what lies between a place and its country is left
    out first, unless it is all that tells it from another."""
    briefs = [_without_between(name) for name in names]
    return [
        name if len(name) <= width else short(name if briefs.count(brief) > 1 else brief, width)
        for name, brief in zip(names, briefs, strict=True)
    ]


def _without_between(name: str) -> str:
    """`Milton, … New Zealand`, of `Milton, Otago, New Zealand` or `(46.1 S, 170.0 E) Milton, Otago, New Zealand`."""
    bare = name.partition(") ")[2] if name.startswith("(") else name
    place, _, rest = bare.partition(", ")
    between, _, country = rest.rpartition(", ")
    return f"{place}, … {country}" if between else name


def _date_parts(date: DateReading | None, way: FamilyWay) -> tuple[StyledText, ...]:
    if date is None or date.edtf is None:
        return ()
    return (f"= {family_display(date.edtf, way)}",)


def _said(view: StatementView) -> str:
    extra = f" ({marks(view)})" if marks(view) else ""
    return f"{who_says(view)}: “{' '.join(view.words.split())}”{extra}"


def _named(view: StatementView, meant: str) -> str:
    """A name among several and who is `meant` by it, without who says so: F4 shows that."""
    extra = ", ".join(part for part in (f"= {meant}" if meant else "", marks(view)) if part)
    return " ".join(view.words.split()) + (f" ({extra})" if extra else "")


def _state(record: Record, prompt: Prompt, own: StatementView | None) -> str:
    if any(conflict.field == prompt.field for conflict in record.conflicts):
        return "disputed: F4" if FIELDS[prompt.field].many else "disputed: Ctrl+P"
    used = record.rests_on(prompt.field)
    if own is not None and not (prompt.gathers or FIELDS[prompt.field].many) and used and own not in used:
        return f"used: {who_says(used[0])}"
    if own is not None and marks(own):
        return marks(own)
    return "asked, not known" if prompt.field in record.not_known else ""
