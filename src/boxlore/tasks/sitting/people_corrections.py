"""Putting people right from a screen: who is in which picture, another name everywhere, one made of two, two of one.

Every function is one act and one step of the sitting, so that one undo takes it back (a parting again is one for each
merging); no words told are changed.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from boxlore.core.errors import WrongUse
from boxlore.core.fields.language import language_tag
from boxlore.core.fields.letters import is_question
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import several
from boxlore.core.people.consent import Consent
from boxlore.core.people.kin import possessive
from boxlore.core.people.names.forms import close
from boxlore.core.people.person import Person
from boxlore.core.people.reference import id_meant
from boxlore.core.people.who_is_meant import known_by
from boxlore.core.statements import KEEPER, Kind, Reading, Statement, Subject, Sure, fold
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.what_scans_show import shown_by
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


MOST_CALLED = 12
"""Of more people than these a search names none: the words are no name then, but a family's."""


def items_with(collection: Collection, words: str) -> dict[str, str]:
    """Items with people whose names, as they are called today, have these words or words that begin so: item -> name.

    What was told in other words is among them, a name that was put right, somebody who was only “my brother”.
    """
    asked = fold(words).split()
    called = [
        person
        for person in collection.people().values()
        if asked and all(any(word.startswith(part) for word in fold(person.name).split()) for part in asked)
    ]
    if len(called) > MOST_CALLED:
        return {}
    return {naming.item: person.name for person in called for naming in namings(collection, person)}


def _item_of(collection: Collection, subject: Subject) -> str:
    """The item that a statement is about: itself, or the one on whose scan the marker is; '' for anything else."""
    if subject.kind is Kind.ITEM:
        return subject.id
    if subject.kind is not Kind.MARKER:
        return ""
    scans = [said.words for said, _ in collection.store.statements(subject) if said.field == "scan" and said.words]
    for scan in scans:
        for _, shows in shown_by(collection, scan):
            return shows.item
    return ""


def told_of(collection: Collection, person: Person) -> list[tuple[Statement, Reading | None]]:
    """Everything told of the person, in the order in which it was told."""
    return [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]


def rename(sitting: Sitting, person: Person, name: str, *, apart_from: Person | None = None) -> None:
    """Call the person so everywhere, on the keeper's word, and whoever is called by what they are to this person
    (“Leida's mother”); the name before stays in the history, and words told are as they were. `apart_from` has the same
    name and is somebody else: the two are proposed as one no more."""
    subject = Subject(Kind.PERSON, person.id)
    act = sitting.collection.act(f"{person.name} is called {name.strip()[:40]}")
    _call(sitting, act, subject, name)
    whose = f"{possessive(person.name)} "
    for relative in sitting.collection.people().values():
        if relative.name.startswith(whose) and relative.name.removeprefix(whose).islower():
            _call(
                sitting,
                act,
                Subject(Kind.PERSON, relative.id),
                f"{possessive(name.strip())} {relative.name.removeprefix(whose)}",
            )
    if apart_from is not None:
        act.state(subject, "different", apart_from.id, audience="keeper")
    sitting.finish(act, "")


def _call(sitting: Sitting, act: Act, subject: Subject, name: str) -> None:
    names = [said for said, _ in sitting.collection.store.statements(subject) if said.field == "name"]
    how = replace(sitting.telling, source=KEEPER)
    sitting.teller.add(act, subject, "name", name, how, replaces=names[-1].id if names else "")


def namesake(collection: Collection, person: Person, name: str) -> Person | None:
    """Somebody else who is called so already."""
    asked = fold(name).strip()
    others = (known for known in collection.people().values() if known.id != person.id)
    return next((known for known in others if fold(known.name) == asked), None)


def same_person(sitting: Sitting, keep: Person, second: Person) -> None:
    """Say that somebody else is this person too."""
    act = registry.merge(sitting.collection, keep, second)
    sitting.steps.remember(Done(act, f"{second.name} is {keep.name}", ""))


def parted_again(sitting: Sitting, person: Person) -> bool:
    """Take back every merging that made this person, each a step of the sitting. False if it was made of one."""
    acts = registry.unmerge(sitting.collection, person)
    for act in acts:
        sitting.steps.remember(Done(act, f"the parting of {person.name}", ""))
    return bool(acts)


def in_short(collection: Collection, person: Person) -> str:
    """Who a person is, to tell two apart: “Ruby Brackenbury, born 1921, in 5 pictures”."""
    born = f", born {person.born.display}" if person.born else ", no birth told"
    pictures = len({naming.item for naming in namings(collection, person)})
    return f"{person.name}{born}, in {several(pictures, 'picture')}"


def names_begun(collection: Collection, words: str) -> list[str]:
    """The names of people that begin so, any word of them."""
    people = collection.people()
    begun = (people.get(ident) for ident, _ in collection.store.complete_people(words.strip(), 8))
    return list(dict.fromkeys(person.name for person in begun if person is not None))


def alike(sitting: Sitting, name: str) -> list[Person]:
    """Those who may be meant by a name that nobody has: each word of it the same, or one slip apart."""
    people = sitting.collection.people().values()
    if not name.strip() or known_by(people, name, sitting.teller.understanding.known_names):
        return []
    asked = fold(name).split()
    parted = [(person, fold(person.name).split()) for person in people]
    return [person for person, words in parted if len(words) == len(asked) and all(map(close, words, asked))]


def two_people(sitting: Sitting, person: Person, second: Person) -> None:
    """Say that somebody else is not this person, so that it is proposed no more."""
    if act := registry.apart(sitting.collection, person, second):
        sitting.steps.remember(Done(act, f"{person.name} and {second.name} are two", ""))


def somebody_else(sitting: Sitting, person: Person, naming: Naming, name: str) -> str:
    """In this one place another person is meant: the one of that name, or a new one. Returns the name."""
    if not name.strip():
        raise WrongUse("It is not said who it is.", "Write a name; somebody new is added, if nobody is called so.")
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


def nobody_known(sitting: Sitting, person: Person, naming: Naming) -> None:
    """In this one place it is not this person, and nobody knows who it is; the words told stay in the history."""
    act = sitting.collection.act(f"{naming.number}: not {person.name}, not known who")
    said = naming.statement
    act.state(said.subject, said.field, "", source=KEEPER, sure=Sure.NOT_KNOWN, sitting=sitting.id, replaces=said.id)
    sitting.finish(act, naming.item)


def is_anybody(sitting: Sitting, words: str) -> bool:
    """Whether these words mean somebody who is here, so that nobody new is made of them; or that nobody knows."""
    return is_question(words) or sitting.teller.understanding.read("person", words) is not None


def add(sitting: Sitting, person: Person, field: str, words: str) -> str:
    """Tell one thing of the person: a birth, a mother, a nickname. Returns a sentence on a date that is not read, or
    not surely; else ''. Raises WrongUse for what cannot be."""
    if not words.strip():
        raise WrongUse("There is nothing to keep yet.", "Write what was told.")
    statement = sitting.teller.tell(Subject(Kind.PERSON, person.id), field, words, sitting.telling)
    sitting.steps.remember(Done(statement.act, f"{person.name}: {FIELDS[field].label.lower()}", ""))
    return sitting.teller.understanding.doubt(field, words)


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
    sitting.steps.remember(Done(corrected.act, f"{statement.field}: corrected", ""))


def keep_to(sitting: Sitting, person: Person, audience: str) -> None:
    """Keep a person, wherever they are named, to an audience."""
    before = sitting.collection.store.version
    statement = registry.set_audience(sitting.collection, Subject(Kind.PERSON, person.id), audience)
    if sitting.collection.store.version != before:  # else it was so already
        sitting.steps.remember(Done(statement.act, f"{person.name}: {audience}", ""))


def allow(sitting: Sitting, person: Person, answer: Consent) -> list[str]:
    """Note a consent, or its withdrawal. Returns sentences on the outputs that a withdrawal makes out of date, and on
    places that a consent does not open."""
    statement = registry.consent(sitting.collection, person, answer)
    sitting.steps.remember(Done(statement.act, f"consent of {person.name}", ""))
    if answer.given:
        return registry.still_hidden(sitting.collection, person, answer)
    from boxlore.tasks.outputs.made_before import to_make_again

    return to_make_again(sitting.collection, [sitting.collection.people()[person.id]])


def called(collection: Collection, name: str, *, but: Person) -> list[Person]:
    """Everybody else of this name. Raises WrongUse where there is nobody."""
    people = [person for person in _all_named(collection, name) if person.id != but.id]
    if not people:
        raise WrongUse(f"Nobody {'else ' if fold(name).strip() == fold(but.name) else ''}here is called "
                       f"“{name.strip()[:60]}”.", "The list of people shows everyone.")  # fmt: skip
    return people


def _named(collection: Collection, name: str) -> Person | None:
    whole = _all_named(collection, name)
    if len(whole) > 1:
        raise WrongUse(f"{len(whole)} people are called “{name.strip()[:60]}”.", "Write the name in full.")
    return whole[0] if whole else None


def _all_named(collection: Collection, name: str) -> list[Person]:
    """Those whose whole name it is; else those who are called so too."""
    asked = fold(name).strip()
    matches = [
        person
        for person in collection.people().values()
        if asked in map(fold, (person.name, *person.forms, *person.calls))
    ]
    return [person for person in matches if fold(person.name) == asked] or matches


def listed(collection: Collection, words: str = "") -> Iterator[Person]:
    """Everyone whose name holds these words, in the order of a list; where words are asked for, whoever is called by
    what they are to somebody (“Leida's mother”) last."""
    asked = fold(words).replace(",", " ").split()
    kin: list[Person] = []
    for person in registry.in_list_order(collection):
        forms = fold(" ".join((person.name, *person.forms, *person.calls)))
        if not all(part in forms for part in asked):
            continue
        if asked and possessive("") in person.name:
            kin.append(person)
        else:
            yield person
    yield from kin
