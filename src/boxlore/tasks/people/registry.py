"""The registry of people: who is meant, their kin, one person made of two and two of one, consent, who may see them.

Everything is an act of statements, so everything can be taken back; no statement is changed or lost. What moves
from one person to another stands under the new one and replaces the row under the old.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import AUDIENCE_WORDS, KeptTo
from boxlore.core.fields.pictures import ROW_WORDS, RowPosition
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.consent import Consent
from boxlore.core.people.duplicates import Proposal, propose
from boxlore.core.people.kin import Kin, Kinship, table
from boxlore.core.people.person import Person
from boxlore.core.people.positions import Placed, note_of, read_placed, write_placed
from boxlore.core.people.reference import id_meant
from boxlore.core.records.in_force import Record
from boxlore.core.records.living import Life
from boxlore.core.statements import Kind, Reading, Statement, Subject, Sure, fold, read_audience
from boxlore.store.values import Change
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.records import lives_of, records
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import person_reading

CONSENT_READER = "consent 1"


def find_person(collection: Collection, text: str) -> Person:
    """The one person meant by an id (or eight letters and more of its end), a name, or a part of one.

    Raises WrongUse with the choices.
    """
    people = collection.people()
    if text.removeprefix("urn:uuid:") in people:
        return people[text.removeprefix("urn:uuid:")]
    asked = fold(text).strip()
    ends = [one for one in people.values() if len(asked) >= 8 and one.id.endswith(asked)]
    if len(ends) == 1:
        return ends[0]
    whole = [one for one in people.values() if asked in map(fold, (one.name, *one.forms, *one.calls))]
    found = whole or [one for one in people.values() if asked and asked in fold(" ".join((one.name, *one.forms)))]
    if len(found) == 1:
        return found[0]
    if not found:
        raise WrongUse(f"Nobody here is called “{text[:60]}”.", "boxlore people list shows everyone.")
    choices = "; ".join(f"{one.name} ({one.id[-12:]})" for one in found[:6])
    raise WrongUse(f"“{text[:60]}” may be {len(found)} people: {choices}.", "Say the id, or more of the name.")


@dataclass(frozen=True, slots=True)
class PersonSummary:
    """One person as `people show` tells it."""

    person: Person
    life: Life
    statements: tuple[tuple[Statement, Reading | None], ...]
    numbers: tuple[str, ...]


def known_of(collection: Collection, person: Person) -> PersonSummary:
    """Everything told about someone, and the numbers of the items they are in."""
    told = [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]
    numbers = [record.number for record in records(collection) if any(one.person == person.id for one in record.people)]
    return PersonSummary(person, lives_of(collection)[person.id], tuple(told), tuple(numbers))


def kin_of(collection: Collection, ego: Person) -> list[tuple[Person, Kinship]]:
    """Everyone who is kin to somebody, the nearest first."""
    people = collection.people()
    return table(Kin(people), ego.id, people.values())


def merge(collection: Collection, keep: Person, other: Person) -> str:
    """Say that two entries are one person, under the name of the first. Returns the act, to be taken back."""
    if keep.id == other.id:
        raise WrongUse(f"{keep.name} is one person already.")
    if other.id in {*keep.parents, *keep.spouses} or keep.id in {*other.parents, *other.spouses}:
        raise WrongUse(f"{keep.name} and {other.name} are parent and child, or married.", "Mend that link first.")
    collection.back_up_before("merging people")
    act = collection.act(f"{other.name} is the same person as {keep.name}")
    act.state(Subject(Kind.PERSON, other.id), "merged_into", keep.id, audience="keeper")
    act.done()
    return act.id


def apart(collection: Collection, one: Person, other: Person) -> str:
    """Say that two people are not the same, so that it is proposed no more."""
    act = collection.act(f"{one.name} and {other.name} are two people")
    act.state(Subject(Kind.PERSON, one.id), "different", other.id, audience="keeper")
    act.done()
    return act.id


def take_back(collection: Collection, act: str) -> None:
    """Withdraw an act of the registry; all its statements stay in the history."""
    clock = collection.clock
    change = Change(act=clock.new_id(), what="taken back", by=collection.by, recorded_at=clock.now(), withdraws=(act,))
    collection.store.write(change)


def split(
    collection: Collection, person: Person, name: str, *, statements: Iterable[str] = (), items: Iterable[str] = ()
) -> Subject:
    """Make a second person of one: `statements` (ids) of the person move over, and in `items` (ids) the new one is
    meant. If the person was made by a merging, that is taken back first with `unmerge`."""
    wanted, in_items = set(statements), set(items)
    collection.back_up_before("parting people")
    act = collection.act(f"{name} parted from {person.name}")
    made = act.new(Kind.PERSON)
    act.state(made, "name", name)
    moved = 0
    for ident in person.ids:
        for told, reading in collection.store.statements(Subject(Kind.PERSON, ident)):
            if told.id in wanted:
                copy = act.again(told, made)
                if reading is not None:
                    act.readings.append((copy.id, reading))
                moved += 1
    for item in in_items:
        moved += _point_over(collection, item, person, made, act.readings)
    if not moved:
        raise WrongUse("Nothing would move to the new person.", "Name statements or items.")
    act.state(made, "different", person.id, audience="keeper")
    act.done()
    return made


def _point_over(
    collection: Collection, item: str, person: Person, made: Subject, readings: list[tuple[str, Reading]]
) -> int:
    """In one item, and its markers, the statements that mean the person mean the new one from now on."""
    before = len(readings)
    for material in collection.store.about_items(ids=(item,)):
        rows = [*material.statements, *(row for marker in material.markers for row in marker.statements)]
        for told, reading in rows:
            if reading is not None and reading.kind == "person" and id_meant(reading) in person.ids:
                readings.append((told.id, person_reading(made)))
    return len(readings) - before


def unmerge(collection: Collection, person: Person) -> int:
    """Take back every merging that made this person; the entries stand apart again. Returns how many."""
    acts = {
        told.act
        for ident in person.also
        for told, _ in collection.store.statements(Subject(Kind.PERSON, ident))
        if told.field == "merged_into"
    }
    if acts:
        collection.back_up_before("parting people")
    for act in acts:
        take_back(collection, act)
    return len(acts)


def duplicates(collection: Collection) -> list[Proposal]:
    """Likely duplicates; two who stand in one picture are two."""
    together: set[tuple[str, str]] = set()
    for record in records(collection):
        inside = sorted({one.person for one in record.shown() if one.person})
        together.update((one, other) for one, other in combinations(inside, 2))
    return propose(collection.people().values(), together)


def consent(collection: Collection, person: Person, one: Consent) -> Statement:
    """Note a consent or its withdrawal; the last word stands."""
    act = collection.act(f"consent of {person.name} {'given' if one.given else 'withdrawn'}")
    told = act.state(Subject(Kind.PERSON, person.id), "consent", one.words, audience="keeper", sitting=one.sitting)
    act.readings.append((told.id, Reading("consent", one, CONSENT_READER, confirmed=True)))
    act.done()
    return told


def set_audience(collection: Collection, subject: Subject, audience: str, field: str = "") -> Statement:
    """Keep a person, an item, or one field of an item to an audience."""
    kept = KeptTo(read_audience(audience), field)
    if field and (field not in FIELDS or subject.kind is not Kind.ITEM):
        raise WrongUse(f"There is no field “{field[:40]}” to keep.", "Fields are kept for items; see boxlore tell.")
    words = AUDIENCE_WORDS.write(kept)
    same = [
        told.id
        for told, _ in collection.store.statements(subject)
        if told.field == "audience" and (stood := AUDIENCE_WORDS.or_none(told.words)) and stood.field == field
    ]
    act = collection.act(f"audience: {words}")
    made = act.state(subject, "audience", words, audience="keeper", replaces=same[-1] if same else "")
    act.done()
    return made


def tell_placed(teller: Teller, collection: Collection, item: Subject, text: str, how: Telling) -> list[Placed]:
    """Read who stands where, and keep each person with row and place; someone unknown is kept as not known."""
    placed = read_placed(text)
    if not placed:
        raise WrongUse("Nobody is named there.", "Write: back row, left to right: Anna, ?, Ruth (Anna's cousin)")
    act = collection.act(f"who stands where: {text[:40]}")
    for one in placed:
        sure = Sure.NOT_KNOWN if not one.words else Sure.GUESS if one.unsure else how.sure
        words = f"{one.words} ({one.note})" if one.words and one.note else one.words
        told = teller.add_words(act, item, "person", words, replace(how, sure=sure))
        if one.words:
            _read_name(teller, act, told, one.words)
        act.state(item, "row", ROW_WORDS.write(RowPosition(told.id, one.row, one.position)), sitting=how.sitting)
    act.done()
    return placed


def _read_name(teller: Teller, act: Act, told: Statement, name: str) -> None:
    """The person of that name, or a new one; what was said of them in brackets is no part of it."""
    understood = teller.understanding.read("person", name)
    if understood is not None:
        act.readings.append((told.id, understood.reading))
        return
    made = act.new(Kind.PERSON)
    act.state(made, "name", name, source=told.source, audience=told.audience, language=told.language)
    act.readings.append((told.id, person_reading(made)))


def placed_in(record: Record) -> list[Placed]:
    """Who stands where in an item, those whom nobody knows too; by markers where there are no rows."""
    shown = [
        Placed(one.name, one.position or one.number, one.row, note_of(one.told.words), unsure=one.unsure)
        for one in record.shown()
        if one.position or one.number
    ]
    return shown + [Placed("", position, row) for row, position in record.nameless]


def written_back(record: Record) -> str:
    """“front row, left to right: …”, or an empty string."""
    return write_placed(placed_in(record))


def links_of(person: Person, collection: Collection) -> Iterator[tuple[str, Person]]:
    """The links that kin is worked out from."""
    people = collection.people()
    for role, idents in (("parent", person.parents), ("spouse", person.spouses)):
        for ident in idents:
            if ident in people:
                yield role, people[ident]
