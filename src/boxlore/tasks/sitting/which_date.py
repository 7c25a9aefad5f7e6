"""Which date is meant, where told words leave it open: a question as a person asks it, and its choices in their order.

As with places (`which_place`), a choice is kept as the confirmed reading of the same statement: the words stay as they
were told, the choices have the same numbers whenever one comes back, and undo brings the question back. So is a date
that the keeper says in other words, where the words told are read as none, or as another.
"""

from dataclasses import dataclass, replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.event_question import asked_birth
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.dates.phrases import READER_VERSION
from boxlore.core.dates.reading import DateReading
from boxlore.core.errors import WrongUse
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_meant import named
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.prompts import Prompt
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.sitting.numbered_choice import numbered
from boxlore.tasks.sitting.session import Sitting


@dataclass(frozen=True, slots=True)
class OpenDate:
    """A statement about a date whose reading asks. `choices` are the dates that may be meant, as EDTF: the likeliest
    first, and last all of them together where nobody can tell; none where only other words can answer. `asks` is
    empty where there is no question: the words are read as the first choice, or without one as no date."""

    view: StatementView
    reading: Reading
    asks: str
    choices: tuple[str, ...]
    way: FamilyWay

    @property
    def names(self) -> list[str]:
        """The choices as one reads them, in their order: the first is number 1."""
        return [family_display(standard.parsed(edtf), self.way) for edtf in self.choices]


def asked_of(collection: Collection, statement: Statement) -> list[str]:
    """What is to be asked about the date that a statement tells: the question, and its choices, numbered; none where
    nothing is."""
    for row, reading in collection.store.statements(statement.subject):
        value = reading.value if row.id == statement.id and reading is not None and reading.asks else None
        if isinstance(value, DateReading) and value.ask:
            way = family_way(collection.settings)
            names = [family_display(standard.parsed(edtf), way) for edtf in value.choices]
            numbered_names = [f"  {number}. {name}" for number, name in enumerate(names, 1)]
            takes = names and statement.subject.kind is Kind.ITEM
            how = ["Told in other words it is settled; in a sitting a number takes one."] if takes else []
            return [f"To ask: {_sentence(value)}", *numbered_names, *how]
    return []


def open_date(sitting: Sitting, record: Record, prompt: Prompt) -> OpenDate | None:
    """The open question about the answer to this prompt: this teller's own, else another's; None if there is none."""
    if prompt.reads != "date":
        return None
    own = sitting.own(record, prompt)
    asking = [view for view in ([own] if own else record.all(prompt.field)) if view.asks]
    question = _read_as(sitting, record, asking[0]) if asking else None
    return question if question is not None and question.asks else None


def read_date(sitting: Sitting, record: Record, prompt: Prompt) -> OpenDate | None:
    """What the answer to this prompt was read as, this teller's own or else another's that is in question, so that it
    can be put right: read as none, as one, or as several. None where nothing is told."""
    if prompt.reads != "date":
        return None
    own = sitting.own(record, prompt)
    told = [own] if own else [view for view in record.all(prompt.field) if view.asks]
    return _read_as(sitting, record, told[0]) if told else None


def _read_as(sitting: Sitting, record: Record, view: StatementView) -> OpenDate | None:
    way = family_way(sitting.collection.settings)
    for statement, reading in sitting.collection.store.statements(Subject(Kind.ITEM, record.id)):
        value = reading.value if reading is not None else None
        if statement.id == view.statement and reading and isinstance(value, DateReading):
            return OpenDate(view, reading, _sentence(value) if value.ask else "", value.choices, way)
    return None


def _sentence(read: DateReading) -> str:
    """The question with the words that it is about, once."""
    ask = str(read.ask)
    return ask if "“" in ask or not read.text else f"“{read.text}”: {ask[0].lower()}{ask[1:]}"


def birth_asked(sitting: Sitting, question: OpenDate) -> Person | None:
    """Whose birth the question asks for, where that is one of the registry: the teller's own, or somebody's by name."""
    value = question.reading.value
    name = asked_birth(value.ask or "") if isinstance(value, DateReading) else None
    if name is None:
        return None
    people = sitting.collection.people()
    if not name:
        return people.get(question.view.source.ref)
    namesakes = named(people.values(), name, sitting.teller.understanding.known_names)
    return namesakes[0] if len(namesakes) == 1 else None


def choose_date(sitting: Sitting, record: Record, question: OpenDate, number: int) -> str:
    """Keep that choice `number` (from 1) is meant. Returns it in words. Raises WrongUse for a number without one."""
    meant = DateReading(question.view.words, standard.parsed(numbered(question.choices, number)))
    return _keep(sitting, record, question, meant)


def say_date(sitting: Sitting, record: Record, prompt: Prompt, question: OpenDate, words: str) -> str:
    """Keep that what was told at a prompt means the date of these other words. Returns it in words.

    Raises WrongUse for words that are no date, or may be several.
    """
    understood = sitting.understand(prompt, words, record)
    meant = understood.reading.value if understood is not None else None
    if not isinstance(meant, DateReading) or meant.edtf is None:
        raise WrongUse(f"“{words[:40]}” is not read as a date.", "Write 1952, about 1950, or summer of 1953.")
    if meant.ask:
        raise WrongUse(f"{_sentence(meant)}", "Write it so that it can be one date only.")
    return _keep(sitting, record, question, replace(meant, text=question.view.words))


def _keep(sitting: Sitting, record: Record, question: OpenDate, meant: DateReading) -> str:
    shown = family_display(meant.edtf, question.way) if meant.edtf else ""
    act = sitting.collection.act(f"date: {shown[:40]}")
    reading = replace(question.reading, value=meant, reader=READER_VERSION, asks=False, confirmed=True)
    act.readings.append((question.view.statement, reading))
    sitting.teller.read_again(act, Subject(Kind.ITEM, record.id), "place")  # a place as it was in that year
    sitting.finish(act, record.id)
    return shown
