"""The registry of people: who is meant, their kin, one person made of two and two of one, consent, who may see them.

Everything is an act of statements, so everything can be taken back; no statement is changed or lost. What moves
from one person to another stands under the new one and replaces the row under the old.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations

from boxlore.core.errors import WrongUse
from boxlore.core.fields.audiences import AUDIENCE_WORDS, KeptTo, read_audience
from boxlore.core.fields.letters import check_typed
from boxlore.core.fields.name_answers import NAMING_WORDS, NamingAnswer
from boxlore.core.findings import several
from boxlore.core.people.consent import Consent, Matter
from boxlore.core.people.duplicates import Proposal, propose
from boxlore.core.people.kin import Kin, Kinship, table
from boxlore.core.people.names.list_order import list_key
from boxlore.core.people.person import Person, known_names
from boxlore.core.people.reference import id_meant
from boxlore.core.people.who_is_meant import known_by, the_one
from boxlore.core.people.who_is_where.reader import read_who
from boxlore.core.people.who_is_where.written_out import Placed, note_of, write_placed
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.records.living import Life
from boxlore.core.statements import Kind, Reading, Statement, Subject, fold
from boxlore.store.values import Change
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import lives_of, records
from boxlore.tasks.people.split_keeps_restrictions import is_restriction, restrict, restrict_each
from boxlore.tasks.telling.allowed_words import ancestors, check_field
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.understanding import person_reading

CONSENT_READER = "consent 1"


def find_person(collection: Collection, text: str) -> Person:
    """The one person meant by a name or a part of one (`core.people.who_is_meant`), an id or eight letters and more of
    its end, or else by letters of a name, as nothing is made of it here. Raises WrongUse with the choices."""
    people = collection.people().values()
    asked = fold(text).strip()
    matches = known_by(people, text, known_names(people)) or [
        person for person in people if asked and asked in fold(" ".join((person.name, *person.forms)))
    ]
    person = the_one(matches, text)
    if person is None:
        raise WrongUse(f"Nobody here is called “{text[:60]}”.", "boxlore people list shows everyone.")
    return person


def in_list_order(collection: Collection) -> list[Person]:
    """Everyone by sort form, in the alphabet of the collection."""
    language = collection.settings.language
    return sorted(collection.people().values(), key=lambda person: (list_key(person.sort_name, language), person.id))


@dataclass(frozen=True, slots=True)
class PersonSummary:
    """One person as `people show` tells it."""

    person: Person
    life: Life
    statements: tuple[tuple[Statement, Reading | None], ...]
    numbers: tuple[str, ...]


def known_of(collection: Collection, person: Person) -> PersonSummary:
    """Everything told about someone, and the numbers of the items they are in."""
    statements = [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]
    numbers = [
        record.number for record in records(collection) if any(shown.person == person.id for shown in record.people)
    ]
    return PersonSummary(person, lives_of(collection)[person.id], tuple(statements), tuple(numbers))


def kin_of(collection: Collection, ego: Person) -> list[tuple[Person, Kinship]]:
    """Everyone who is kin to somebody, the nearest first."""
    people = collection.people()
    return table(Kin(people), ego.id, people.values())


def merge(collection: Collection, keep: Person, duplicate: Person) -> str:
    """Say that two entries are one person, under the name of the first. Returns the act, to be taken back."""
    if keep.id == duplicate.id:
        raise WrongUse(f"{keep.name} is one person already.")
    people = collection.people()
    for elder, younger in ((keep, duplicate), (duplicate, keep)):
        if elder.id not in younger.parents and elder.id in set(ancestors(people, younger.id)):
            raise WrongUse(f"{elder.name} is told to be an ancestor of {younger.name}.", "Mend that link first.")
    if duplicate.id in {*keep.parents, *keep.spouses} or keep.id in {*duplicate.parents, *duplicate.spouses}:
        raise WrongUse(f"{keep.name} and {duplicate.name} are parent and child, or married.", "Mend that link first.")
    collection.back_up_before("merging people")
    act = collection.act(f"{duplicate.name} is the same person as {keep.name}")
    act.state(Subject(Kind.PERSON, duplicate.id), "merged_into", keep.id, audience="keeper")
    act.done()
    return act.id


def apart(collection: Collection, person: Person, namesake: Person) -> str:
    """Say that two people are not the same, so that it is proposed no more. Returns the act's id, '' if it was said."""
    if person.id == namesake.id:
        raise WrongUse(
            f"{person.name} is one person.", "Name two; boxlore people split parts one that was made of two."
        )
    if _said_apart(collection, person, namesake) or _said_apart(collection, namesake, person):
        return ""
    act = collection.act(f"{person.name} and {namesake.name} are two people")
    act.state(Subject(Kind.PERSON, person.id), "different", namesake.id, audience="keeper")
    act.done()
    return act.id


def _said_apart(collection: Collection, person: Person, namesake: Person) -> bool:
    """Whether something that stands of the first says that the second is somebody else."""
    return any(
        statement.field == "different" and statement.words in namesake.ids
        for ident in person.ids
        for statement, _ in collection.store.statements(Subject(Kind.PERSON, ident))
    )


def take_back(collection: Collection, act: str) -> str:
    """Withdraw an act of the registry; all its statements stay in the history. Returns the act that does so."""
    clock = collection.clock
    change = Change(act=clock.new_id(), what="taken back", by=collection.by, recorded_at=clock.now(), withdraws=(act,))
    collection.store.write(change)
    return change.act


def split(
    collection: Collection, person: Person, name: str, *, statements: Iterable[str] = (), items: Iterable[str] = ()
) -> Subject:
    """Make a second person of one: `statements` (ids) of the person move over, and in `items` (ids) the new one is
    meant. What is closed of the person is closed of the new one too. If the person was made by a merging, that is
    taken back first with `unmerge`."""
    check_typed(name)
    wanted, in_items = set(statements), set(items)
    collection.back_up_before("parting people")
    act = collection.act(f"{name} parted from {person.name}")
    new_person = act.new(Kind.PERSON)
    act.state(new_person, "name", name)
    moved = 0
    for ident in person.ids:
        for statement, reading in collection.store.statements(Subject(Kind.PERSON, ident)):
            if statement.id in wanted and not is_restriction(statement, reading):
                copy = act.again(statement, new_person)
                if reading is not None:
                    act.readings.append((copy.id, reading))
                moved += 1
    for item in in_items:
        moved += _point_over(collection, item, person, new_person, act.readings)
    if not moved:
        raise WrongUse("Nothing would move to the new person.", "Name statements or items.")
    rows = [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]
    restrict(act, new_person, rows)
    act.state(new_person, "different", person.id, audience="keeper")
    act.done()
    return new_person


def _point_over(
    collection: Collection, item: str, person: Person, new_person: Subject, readings: list[tuple[str, Reading]]
) -> int:
    """In one item, and its markers, the statements that mean the person mean the new one from now on."""
    before = len(readings)
    for material in collection.store.about_items(ids=(item,)):
        rows = [*material.statements, *(row for marker in material.markers for row in marker.statements)]
        for statement, reading in rows:
            if reading is not None and reading.kind == "person" and id_meant(reading) in person.ids:
                readings.append((statement.id, person_reading(new_person)))
    return len(readings) - before


def unmerge(collection: Collection, person: Person) -> list[str]:
    """Take back every merging that made this person; the entries stand apart again. Returns the acts that do so.

    What was closed while they were one stays closed for each of them.
    """
    acts = {
        statement.act
        for ident in person.also
        for statement, _ in collection.store.statements(Subject(Kind.PERSON, ident))
        if statement.field == "merged_into"
    }
    if acts:
        collection.back_up_before("parting people")
        restrict_each(collection, person)
    return [take_back(collection, act) for act in acts]


def duplicates(collection: Collection) -> list[Proposal]:
    """Likely duplicates; two who stand in one picture are two."""
    together: set[tuple[str, str]] = set()
    for record in records(collection):
        inside = sorted({shown.person for shown in record.shown() if shown.person})
        together.update((first, second) for first, second in combinations(inside, 2))
    return propose(collection.people().values(), together)


def consent(collection: Collection, person: Person, answer: Consent) -> Statement:
    """Note a consent or its withdrawal; the last word stands."""
    for name in filter(None, (answer.by, answer.witness)):
        check_typed(name)
    _check_can_be_given(collection, person, answer)
    act = collection.act(f"consent of {person.name} {'answer' if answer.given else 'withdrawn'}")
    statement = act.state(
        Subject(Kind.PERSON, person.id), "consent", answer.words, audience="keeper", sitting=answer.sitting
    )
    act.readings.append((statement.id, Reading("consent", answer, CONSENT_READER, confirmed=True)))
    act.done()
    return statement


def still_hidden(collection: Collection, person: Person, answer: Consent) -> list[str]:
    """A sentence where a name that may be said from now on stays out of some places: the keeper answered `hide`."""
    decisions = (NAMING_WORDS.or_none(words) for _, _, words in collection.store.words_of(["naming"]))
    hide = sum(told is not None and (told.answer, told.person) == (NamingAnswer.HIDE, person.id) for told in decisions)
    if not hide or not answer.given or Matter.NAME not in answer.matters:
        return []
    return [
        f"You answered hide in {several(hide, 'mention')} that may name {person.name}, and there it stays so: "
        "change those answers in the table of names that the next output for outside writes."
    ]


def _check_can_be_given(collection: Collection, person: Person, answer: Consent) -> None:
    """Raises WrongUse for a day that is still to come, and for a consent of somebody dead, who needs none."""
    today = max(collection.clock.today().isoformat(), collection.clock.now()[:10])
    if answer.day > today:
        raise WrongUse(f"{answer.day} is still to come.", "Note a consent on the day when it is given, or later.")
    if answer.given and (person.dead or person.died or person.living == "no"):
        raise WrongUse(
            f"{person.name} is told to have died, and no consent is needed.",
            f"If that is wrong, say so: boxlore people tell “{person.name}” living yes.",
        )


def set_audience(collection: Collection, subject: Subject, audience: str, field: str = "") -> Statement:
    """Keep a person, an item, or one field of an item to an audience."""
    kept = KeptTo(read_audience(audience), field)
    if field and subject.kind is not Kind.ITEM:
        raise WrongUse(f"There is no field “{field[:40]}” to keep.", "Fields are kept for items; see boxlore tell.")
    if field:
        check_field(collection, subject.kind, field)
    words = AUDIENCE_WORDS.write(kept)
    same = [
        earlier
        for earlier, _ in collection.store.statements(subject)
        if earlier.field == "audience" and (stood := AUDIENCE_WORDS.or_none(earlier.words)) and stood.field == field
    ]
    if same and same[-1].words == words:
        return same[-1]
    act = collection.act(f"audience: {words}")
    statement = act.state(subject, "audience", words, audience="keeper", replaces=same[-1].id if same else "")
    act.done()
    return statement


def tell_placed(teller: Teller, collection: Collection, item: Subject, text: str, how: Telling) -> list[Placed]:
    """Read who stands where, and keep each person with row and place; someone unknown is kept as not known."""
    who = read_who(text, teller.understanding.known_names)
    if not (who.people or who.takers):
        raise WrongUse("Nobody is named there.", "Write: back row, left to right: Anna, ?, Ruth (Anna's cousin)")
    act = collection.act(f"who stands where: {text[:40]}")
    people = teller.add_people(act, item, replace(who, placed=True), how) if who.people else []
    people += teller.add_takers(act, item, who, how)
    for statement in (*people, *teller.add_whole_answer(act, item, text, who, how)):
        teller.read_into(act, statement)
    act.done()
    return [*who.people, *who.takers, *who.too]


def placed_in(record: Record) -> list[Placed]:
    """Who stands where in an item, those whom nobody knows too; by markers where there are no rows."""
    placed = [
        Placed(shown.name, shown.position or shown.number, shown.row, _note_beside(shown), unsure=shown.unsure)
        for shown in record.shown()
        if shown.position or shown.number
    ]
    return placed + [Placed("", position, row) for row, position in record.nameless]


def _note_beside(shown: PersonShown) -> str:
    """What brackets say of somebody, where the name itself does not end with it."""
    note = note_of(shown.told.words)
    return "" if shown.name.endswith(f"({note})") else note


def written_back(record: Record) -> str:
    """“front row, left to right: …”, or an empty string."""
    return write_placed(placed_in(record))


def links_of(person: Person, collection: Collection) -> Iterator[tuple[str, Person]]:
    """The links that kin is worked out from."""
    people = collection.people()
    for role, idents in (
        ("mother", person.mothers),
        ("father", tuple(ident for ident in person.parents if ident not in person.mothers)),
        ("adoptive parent", person.adoptive_parents),
        ("foster parent", person.foster_parents),
        ("spouse", person.spouses),
    ):
        for ident in idents:
            if ident in people:
                yield role, people[ident]
