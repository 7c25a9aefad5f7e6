"""Putting people right from a screen: who is in which picture, another name everywhere, one made of two, two of one.

Every function is one act and one step of the sitting, so that one undo takes it back; no words told are changed.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.language import language_tag
from boxlore.core.fields.pictures import SHOWS_WORDS
from boxlore.core.people.consent import Consent
from boxlore.core.people.person import Person
from boxlore.core.people.reference import id_meant
from boxlore.core.statements import Kind, Reading, Statement, Subject, fold
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.outputs.made_before import to_make_again
from boxlore.tasks.people import registry
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Telling
from boxlore.tasks.telling.understanding import person_reading
from boxlore.tasks.telling.undoing import Done


@dataclass(frozen=True, slots=True)
class Naming:
    """One place where a person is named: the item (id and number), the statement, and its field."""

    item: str
    number: str
    statement: Statement


def namings(collection: Collection, person: Person) -> list[Naming]:
    """Every picture that the person is told to be in, named of or to have taken, by number."""
    namings_told = [
        Naming(item, number, statement)
        for statement, reading in collection.store.meaning(person.ids)
        if reading is not None and id_meant(reading) in person.ids
        if (item := _item_of(collection, statement.subject)) and (number := collection.store.number_of(item))
    ]
    return sorted(namings_told, key=lambda naming: (len(naming.number), naming.number))


def _item_of(collection: Collection, subject: Subject) -> str:
    """The item that a statement is about: itself, or the one on whose scan the marker is; '' for anything else."""
    if subject.kind is Kind.ITEM:
        return subject.id
    if subject.kind is not Kind.MARKER:
        return ""
    scans = [said.words for said, _ in collection.store.statements(subject) if said.field == "scan" and said.words]
    for scan in scans:
        for said, _ in collection.store.statements(Subject(Kind.SCAN, scan)):
            if said.field == "shows" and (shows := SHOWS_WORDS.or_none(said.words)) is not None:
                return shows.item
    return ""


def told_of(collection: Collection, person: Person) -> list[tuple[Statement, Reading | None]]:
    """Everything told of the person, in the order in which it was told."""
    return [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]


def rename(sitting: Sitting, person: Person, name: str) -> None:
    """Call the person so everywhere; the name before stays in the history, and words told are as they were."""
    if not name.strip():
        raise WrongUse("There is no name.", "Write the whole name, as captions shall give it.")
    subject = Subject(Kind.PERSON, person.id)
    names = [said for said, _ in sitting.collection.store.statements(subject) if said.field == "name"]
    act = sitting.collection.act(f"{person.name} is called {name.strip()[:40]}")
    how = sitting.telling
    sitting.teller.add(act, subject, "name", name, how, replaces=names[-1].id if names else "")
    sitting.finish(act, "")


def same_person(sitting: Sitting, keep: Person, name: str) -> Person:
    """Say that somebody else is this person too. Returns who that was."""
    second = found(sitting.collection, name)
    act = registry.merge(sitting.collection, keep, second)
    sitting.steps.remember(Done(act, f"{second.name} is {keep.name}", ""))
    return second


def two_people(sitting: Sitting, person: Person, name: str) -> Person:
    """Say that somebody else is not this person, so that it is proposed no more. Returns who that was."""
    second = found(sitting.collection, name)
    if act := registry.apart(sitting.collection, person, second):
        sitting.steps.remember(Done(act, f"{person.name} and {second.name} are two", ""))
    return second


def somebody_else(sitting: Sitting, person: Person, naming: Naming, name: str) -> str:
    """In this one place another person is meant: the one of that name, or a new one. Returns the name."""
    if not name.strip():
        raise WrongUse("It is not said who it is.", "Write a name; somebody not known yet is made.")
    act = sitting.collection.act(f"{naming.number}: not {person.name}")
    registered = _named(sitting.collection, name)
    if registered is not None and registered.id == person.id:
        raise WrongUse(f"That is {person.name}.", "Write who it is instead.")
    meant = Subject(Kind.PERSON, registered.id) if registered else act.new(Kind.PERSON)
    if registered is None:
        act.state(meant, "name", name.strip(), source=naming.statement.source, audience=naming.statement.audience)
        act.state(meant, "different", person.id, audience="keeper")
    act.readings.append((naming.statement.id, person_reading(meant)))
    sitting.finish(act, naming.item)
    return registered.name if registered else name.strip()


def add(sitting: Sitting, person: Person, field: str, words: str) -> None:
    """Tell one thing of the person: a birth, a mother, a nickname. Raises WrongUse for what cannot be."""
    if not words.strip():
        raise WrongUse("There is nothing to keep yet.", "Write what was told.")
    statement = sitting.teller.tell(Subject(Kind.PERSON, person.id), field, words, sitting.telling)
    sitting.steps.remember(Done(statement.act, f"{field} of {person.name}", ""))


def correct(sitting: Sitting, statement: Statement, words: str) -> None:
    """Other words in place of these, by the same source and for the same audience; read anew."""
    if not words.strip():
        raise WrongUse("There are no words.", "Write what it should say.")
    how = Telling(
        source=statement.source,
        sure=statement.sure,
        audience=statement.audience,
        language=language_tag(statement.language),
        sitting=sitting.id,
        moment=sitting.moment,
    )
    corrected = sitting.teller.tell(statement.subject, statement.field, words, how, replaces=statement.id)
    sitting.steps.remember(Done(corrected.act, f"{statement.field} corrected", ""))


def allow(sitting: Sitting, person: Person, answer: Consent) -> list[str]:
    """Note a consent, or its withdrawal. Returns sentences on the outputs that a withdrawal makes out of date."""
    statement = registry.consent(sitting.collection, person, answer)
    sitting.steps.remember(Done(statement.act, f"consent of {person.name}", ""))
    return [] if answer.given else to_make_again(sitting.collection, [sitting.collection.people()[person.id]])


def found(collection: Collection, name: str) -> Person:
    """The one person of this name. Raises WrongUse where it is nobody's, or several people's."""
    if (person := _named(collection, name)) is None:
        raise WrongUse(f"Nobody here is called “{name.strip()[:60]}”.", "The list of people shows everyone.")
    return person


def _named(collection: Collection, name: str) -> Person | None:
    asked = fold(name).strip()
    matches = [
        person
        for person in collection.people().values()
        if asked in map(fold, (person.name, *person.forms, *person.calls))
    ]
    whole = [person for person in matches if fold(person.name) == asked] or matches
    if len(whole) > 1:
        raise WrongUse(f"{len(whole)} people are called “{name.strip()[:60]}”.", "Write the name in full.")
    return whole[0] if whole else None


def listed(collection: Collection, words: str = "") -> Iterator[Person]:
    """Everyone whose name holds these words, by sort form."""
    asked = fold(words).split()
    for person in sorted(collection.people().values(), key=lambda person: (fold(person.sort_name), person.id)):
        forms = fold(" ".join((person.name, *person.forms, *person.calls)))
        if all(part in forms for part in asked):
            yield person
