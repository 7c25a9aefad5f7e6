"""What to ask one teller: the notes for next time, the notes that name her, and faces that nobody has named."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from boxlore.core.people.person import Person
from boxlore.core.people.reference import id_meant
from boxlore.core.people.who_is_meant import known_by
from boxlore.core.statements import Kind, Reading, Subject, fold
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.what_scans_show import shown_by


@dataclass(frozen=True, slots=True)
class ToAsk:
    """One thing to ask: the question, the item it is about (an id and a number, '' for none), and the statement that
    notes it ('' if it was not noted but found). What was worked out says what an answer is good for (`why`), its kind,
    and the event or person that it is `about` where it is about no item."""

    words: str
    item: str = ""
    number: str = ""
    statement: str = ""
    why: str = ""
    kind: str = ""
    about: str = ""


def to_ask(collection: Collection, name: str) -> list[ToAsk]:
    """Everything to ask this teller: what was noted for her first, then whom nobody has named."""
    matches = known_by(collection.people().values(), name)
    person = matches[0] if len(matches) == 1 else None
    return [*_for_next_time(collection, name, person), *_noted(collection, name, person), *_faces(collection)]


def for_others(collection: Collection, asked: Sequence[ToAsk]) -> int:
    """How many photographs have a note that is not among these: it names somebody else, or nobody."""
    return len(
        {item for item, _, words in collection.store.words_of(("asked",)) if words} - {row.item for row in asked}
    )


def _for_next_time(collection: Collection, name: str, person: Person | None) -> Iterator[ToAsk]:
    calls = _calls(name, person)
    for _, rows in collection.store.subjects(Kind.SITTING):
        told = [row for row in rows if row[0].field == "narrator"]
        if any(fold(statement.words) in calls or _means(reading, person) for statement, reading in told):
            for statement, _ in rows:
                if statement.field == "asked" and statement.words:
                    yield ToAsk(statement.words, statement=statement.id)


def _means(reading: Reading | None, person: Person | None) -> bool:
    return person is not None and reading is not None and id_meant(reading) in person.ids


def _noted(collection: Collection, name: str, person: Person | None) -> Iterator[ToAsk]:
    calls = _calls(name, person)
    for item, _, words in collection.store.words_of(("asked",)):
        number = collection.store.number_of(item)
        if number and any(call in fold(words) for call in calls):
            yield ToAsk(words, item, number)


def _calls(name: str, person: Person | None) -> set[str]:
    """How the teller may be named in a note, folded: her names, and the first word of each."""
    names = {name, *((person.name, *person.forms, *person.calls) if person else ())}
    folded = {fold(form) for form in names if form}
    return folded | {form.split()[0] for form in folded if len(form.split()[0]) > 2}


def _faces(collection: Collection) -> Iterator[ToAsk]:
    """The photographs with a marker that has neither a name nor a “not known”, by their numbers."""
    waiting: dict[str, ToAsk] = {}
    for _, rows in collection.store.subjects(Kind.MARKER):
        words_of = {statement.field: statement.words for statement, _ in rows}
        if "person" in words_of or not words_of.get("scan"):
            continue
        for _, shows in shown_by(collection, words_of["scan"]):
            if number := collection.store.number_of(shows.item):
                waiting[number] = ToAsk("A marker here has no name yet.", shows.item, number)
    yield from dict(sorted(waiting.items())).values()


def was_asked(collection: Collection, asked: ToAsk) -> None:
    """A note for next time is done with: it is taken off the list, and stays in the history."""
    for subject, rows in collection.store.subjects(Kind.SITTING):
        for statement, _ in rows:
            if statement.id == asked.statement:
                act = collection.act(f"asked: {statement.words[:40]}")
                act.state(Subject(Kind.SITTING, subject), "asked", "", replaces=statement.id, audience="keeper")
                act.done()
                return
