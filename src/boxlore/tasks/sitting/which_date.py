"""Which date is meant, where told words leave it open: a question as a person asks it, and its choices in their order.

As with places (`which_place`), a choice is kept as the confirmed reading of the same statement: the words stay as they
were told, the choices have the same numbers whenever one comes back, and undo brings the question back.
"""

from dataclasses import dataclass, replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.dates.phrases import READER_VERSION
from boxlore.core.dates.reading import DateReading
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
    first, and last all of them together where nobody can tell; none where only other words can answer."""

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
    settings = sitting.collection.settings
    rows = sitting.collection.store.statements(Subject(Kind.ITEM, record.id)) if asking else []
    for statement, reading in rows:
        value = reading.value if reading is not None else None
        if statement.id == asking[0].statement and reading and isinstance(value, DateReading) and value.ask:
            return OpenDate(asking[0], reading, _sentence(value), value.choices, family_way(settings))
    return None


def _sentence(read: DateReading) -> str:
    """The question with the words that it is about, once."""
    ask = str(read.ask)
    return ask if "“" in ask or not read.text else f"“{read.text}”: {ask[0].lower()}{ask[1:]}"


def choose_date(sitting: Sitting, record: Record, question: OpenDate, number: int) -> str:
    """Keep that choice `number` (from 1) is meant. Returns it in words. Raises WrongUse for a number without one."""
    meant = DateReading(question.view.words, standard.parsed(numbered(question.choices, number)))
    act = sitting.collection.act(f"date: {question.names[number - 1][:40]}")
    reading = replace(question.reading, value=meant, reader=READER_VERSION, asks=False, confirmed=True)
    act.readings.append((question.view.statement, reading))
    sitting.teller.read_again(act, Subject(Kind.ITEM, record.id), "place")  # a place as it was in that year
    sitting.finish(act, record.id)
    return question.names[number - 1]
