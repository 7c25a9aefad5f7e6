"""What can be worked out of everything told: the statements are gathered once, and `core.evidence` does the rest.

It is a proposal, for the keeper alone. Nothing of it is written, and no output has it: what is worked out rests on
statements of every audience, and so may tell of what somebody may not know. `evidence_for_outputs` works out anew what
may leave.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from boxlore.core.errors import WrongUse
from boxlore.core.evidence.asking import TOLD_BY_HER, Family, Question, Teller, what_to_ask
from boxlore.core.evidence.claims import Claim, of_birth, of_death, of_item
from boxlore.core.evidence.gathering import Background, all_clues
from boxlore.core.evidence.lives import LIFE_FIELDS, PARENT_FIELDS, ToldOfPerson
from boxlore.core.evidence.may_be_meant import with_who_may_be_meant
from boxlore.core.evidence.proposals import Proposal, proposal
from boxlore.core.evidence.sentences import teller_of
from boxlore.core.evidence.working_out import WorkedOut, days_of
from boxlore.core.people.kin import By, Kin
from boxlore.core.people.person import Person, Registry
from boxlore.core.people.who_is_meant import by_name, known_by, the_one
from boxlore.core.records.audience_levels import To
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind, Reading, Said, Statement, Subject, Sure
from boxlore.core.wording.catalogue import say_in
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.records_for_outputs import record_of, records, seen_by
from boxlore.tasks.collection.settings import phrase_settings
from boxlore.tasks.telling.time_line import own_events, source_words

FIELDS_READ = (*LIFE_FIELDS, *PARENT_FIELDS, "born_as")


@dataclass(frozen=True, slots=True)
class Evidence:
    """Everything that follows from what is told, with the records it was gathered of."""

    records: Sequence[Record]
    people: Registry
    worked: WorkedOut
    happened: Sequence[FamilyEvent] = ()

    def of_item(self, item: str) -> Proposal:
        return proposal(self.worked, of_item(item))

    def left_out(self, record: Record) -> list[Claim]:
        """What is told of the lives of those in a picture, and bounds nothing of it since not all can be so that is
        told of them elsewhere."""
        circles = set(self.worked.circles_of(of_item(record.id)))
        lives = {
            day for each in record.shown() if each.person for day in (of_birth(each.person), of_death(each.person))
        }
        return list(
            dict.fromkeys(
                claim
                for day in sorted(lives)
                for circle in self.worked.circles_of(day)
                if circle not in circles
                for claim in circle.set_aside
                if days_of(claim) == {day}
            )
        )

    def of_birth(self, person: str) -> Proposal:
        return proposal(self.worked, of_birth(person))

    def of_death(self, person: str) -> Proposal:
        return proposal(self.worked, of_death(person))


def evidence(collection: Collection, progress: Progress = QUIET) -> Evidence:
    """Gather what is told, and work out what follows. Raises CouldNot where somebody asked to stop."""
    everything = []
    people = collection.people()
    names = by_name(people.values())
    for record in records(collection):
        go_on(progress)
        everything.append(with_who_may_be_meant(record, names))
    rows = list(_told_of_people(collection, people))
    background = _background(collection)
    clues = all_clues(everything, people, rows, background.happened, background)
    return Evidence(everything, people, WorkedOut(clues), background.happened)


MOST_AT_ONCE = 2000
"""Items up to which everything is worked out for the record of one of them, in some two seconds. Beyond, it takes too
long, and what follows from a part alone would be another answer."""


def evidence_at_once(collection: Collection) -> Evidence | None:
    """`evidence`, where that is soon worked out; None where it is not."""
    return evidence(collection) if collection.store.count(Kind.ITEM) <= MOST_AT_ONCE else None


def _nearby(collection: Collection, record: Record, people: Registry) -> Evidence:
    """What follows from an item, those related to it and the lives of these people: a few questions of the store,
    however large the collection. It is as a rule wider than what follows from everything, and never shown as a date."""
    background = replace(_background(collection), people=people, has_all_pictures=False)
    related = [record_of(collection, find_item(collection, other.number).id) for other in record.related]
    rows = list(_told_of_people(collection, people))
    clues = all_clues([record, *related], people, rows, background.happened, background)
    return Evidence([record], people, WorkedOut(clues), background.happened)


def _background(collection: Collection) -> Background:
    return Background(
        people=collection.people(),
        happened=own_events(collection),
        settings=phrase_settings(collection.settings),
    )


def _told_of_people(collection: Collection, people: Registry) -> Iterator[ToldOfPerson]:
    """What is told of the lives and parents of these people."""
    names = collection.people().names()
    for statement, reading in rows_of_lives(collection, people):
        yield ToldOfPerson(
            person=statement.subject.id,
            field=statement.field,
            words=" ".join(statement.words.split()),
            value=reading.usable_value if reading else None,
            source=source_words(statement.source, names),
            sure=statement.sure,
            teller=statement.source.ref if statement.source.said is Said.NARRATOR else "",
        )


def rows_of_lives(collection: Collection, people: Registry) -> Iterator[tuple[Statement, Reading | None]]:
    """The statements of the lives and parents of these people, with their readings; none of which it was said that it
    is not known."""
    for ident in (ident for person in people.values() for ident in person.ids):
        for statement, reading in collection.store.statements(Subject(Kind.PERSON, ident)):
            if statement.field in FIELDS_READ and statement.sure is not Sure.NOT_KNOWN:
                yield statement, reading


def to_ask_next(collection: Collection, found: Evidence, name: str, minutes: int) -> list[Question]:
    """What to ask this teller, in order. Raises WrongUse where nobody, or several, are called so."""
    person = the_one(known_by(found.people.values(), name), name)
    if person is None:
        raise WrongUse(f"Nobody among the people is called “{name[:40]}”.", "boxlore people list shows who is there.")
    return _to_ask(collection, found, person, Kin(found.people), minutes)


def to_ask_of(collection: Collection, record: Record, name: str) -> list[Question]:
    """What to ask this teller of one item, the best first, by what follows from it, from those in it and their nearest
    kin: quick however large the collection. Nothing where nobody, or several, are called so."""
    everyone = collection.people()
    tellers = known_by(everyone.values(), name) if name else []
    if len(tellers) != 1:
        return []
    kin = Kin(everyone)
    shown = {everyone[each.person].id for each in record.shown() if each.person in everyone}
    near = [near for ident in shown for near in (*kin.parents(ident), *kin.spouses(ident), *kin.children(ident))]
    found = _nearby(collection, record, Registry(everyone[ident] for ident in {*shown, *near, tellers[0].id}))
    return _to_ask(collection, found, tellers[0], kin, LONGEST)


LONGEST = 600
"""Minutes that nobody is asked for longer."""


def _to_ask(collection: Collection, found: Evidence, person: Person, kin: Kin, minutes: int) -> list[Question]:
    hers = {person.id: 0}
    for other in found.people:
        kinship = kin.between(person.id, other)
        if kinship is not None and kinship.by is not By.SELF:
            hers[other] = kinship.degree or 1
    hers |= {ident: TOLD_BY_HER for ident in _told_of_by(collection, found, person) if ident not in hers}
    asked = Teller(id=person.id, name=person.name, kin=hers)
    family = seen_by(collection, To.FAMILY).recipient
    named = {each.id for each in found.people.values() if each.id in hers and family.may_name(each.id, each.name)}
    say = say_in(collection.settings.language)
    whom = Family(people=found.people, may_be_named=named, happened=found.happened, say=say)
    return what_to_ask(found.records, found.worked, asked, whom, minutes)


def _told_of_by(collection: Collection, found: Evidence, teller: Person) -> set[str]:
    """Everybody whom a teller has named in a picture, or of whose life she has told."""
    named = {shown.person for record in found.records for shown in record.people if teller_of(shown.told) in teller.ids}
    lives = {row.person for row in _told_of_people(collection, found.people) if row.teller in teller.ids}
    return {found.people[ident].id for ident in named | lives if ident in found.people}
