"""Dates that nobody has told, worked out for one output from what its recipient may see, and from nothing else.

What follows tells of what it follows from: a picture's date of a birth, a birth of a picture. So nothing is taken from
what follows for the keeper. The clues are gathered anew of the records as the recipient has them, of people as far as
they may be known, of the events of the time line of which every statement may be told, and of no item that the output
is not of. A date that is told and withheld is not worked out either, nor the birth of somebody of whom a part is kept
back or, outside, who counts as living. What cannot be all so is for the keeper to settle, and nothing of it goes. It is
a proposal: it says so wherever it stands, and no field of a date has it.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from boxlore.core.evidence.claims import of_birth, of_death, of_item
from boxlore.core.evidence.gathering import Background, all_clues
from boxlore.core.evidence.lives import ToldOfPerson
from boxlore.core.evidence.proposals import Proposal, proposal
from boxlore.core.evidence.working_out import WorkedOut
from boxlore.core.people.person import Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.in_force import told_of
from boxlore.core.records.item_record import Record
from boxlore.core.records.worked_out_date import Because, WorkedOutDate
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.records_for_outputs import AudienceView
from boxlore.tasks.collection.settings import phrase_settings
from boxlore.tasks.people.evidence import rows_of_lives
from boxlore.tasks.telling.time_line import own_events

WIDEST = 40
"""Years that a date which is worked out may leave open at most: a wider one tells whose life it was, and no date
(common practice, no source)."""


@dataclass(frozen=True, slots=True)
class WorkedOutFor:
    """What follows for one recipient: dates by the ids of items, births and deaths by those of people."""

    dates: Mapping[str, WorkedOutDate]
    births: Mapping[str, WorkedOutDate]
    deaths: Mapping[str, WorkedOutDate]

    def beside(self, record: Record) -> Record:
        """The record with what is worked out of its date."""
        dated = self.dates.get(record.id)
        return replace(record, worked_out=dated) if dated else record


NOTHING = WorkedOutFor({}, {}, {})


def worked_out_for(seen: AudienceView, records: Sequence[Record], *, is_whole: bool) -> WorkedOutFor:
    """What follows of these records, as `seen` has them; `is_whole`: whether they are all that there are."""
    lacking = [record for record in records if _lacks_a_date(record)]
    people = _known(seen)
    lives = [person for person in people.values() if not (person.born and person.died)]
    if not lacking and not lives:
        return NOTHING
    happened = list(_events(seen))
    settings = phrase_settings(seen.collection.settings)
    background = Background(people=people, happened=happened, settings=settings, has_all_pictures=is_whole)
    worked = WorkedOut(all_clues(records, people, list(_told(seen, people)), happened, background))
    return WorkedOutFor(
        {record.id: dated for record in lacking if (dated := _dated(seen, proposal(worked, of_item(record.id))))},
        _lives(seen, worked, {person.id: of_birth(person.id) for person in lives if not person.born}),
        _lives(seen, worked, {person.id: of_death(person.id) for person in lives if not person.died}),
    )


def _lacks_a_date(record: Record) -> bool:
    return record.date is None and record.disputed("date") is None and not record.date_withheld


def _known(seen: AudienceView) -> Registry:
    """Those who may be named, as far as they may be known."""
    named = seen.recipient.may_name
    return Registry(person for ident, person in seen.people().items() if named(ident, person.name))


def _told(seen: AudienceView, people: Registry) -> Iterator[ToldOfPerson]:
    """What the recipient may be told of the lives and parents of these people."""
    said_by = seen.collection.people().names()
    for statement, reading in rows_of_lives(seen.collection, people):
        view = told_of(statement, reading, said_by)
        if seen.recipient.may_be_told(view, statement.subject):
            view = seen.recipient.without_names(view, statement.subject)
            yield ToldOfPerson(
                person=statement.subject.id, field=view.field, words=" ".join(view.words.split()), value=view.value,
                source=view.who, sure=view.sure, statement=view.statement,
            )  # fmt: skip


def _events(seen: AudienceView) -> Iterator[FamilyEvent]:
    """The family's own events of which every statement may be told."""
    recipient, said_by = seen.recipient, seen.collection.people().names()
    rows = dict(seen.collection.store.subjects(Kind.EVENT))
    for event in own_events(seen.collection):
        about = Subject(Kind.EVENT, event.id)
        views = [told_of(statement, reading, said_by) for statement, reading in rows.get(event.id, ())]
        if all(recipient.may_be_told(view, about) for view in views):
            is_named = all(map(recipient.may_name_source, views))
            yield event if is_named else replace(event, said="a narrator" if event.said else "")


def _dated(seen: AudienceView, worked: Proposal) -> WorkedOutDate | None:
    """What may go: nothing that is in doubt, that says too little, or of which a reason may not be read there."""
    is_open = worked.first is None or worked.last is None
    if not worked.edtf or worked.circles or (not is_open and (worked.years or 0) > WIDEST):
        return None
    because = tuple(Because(claim.words, claim.source, claim.statement) for claim in worked.because)
    dated = WorkedOutDate(worked.edtf, because)
    recipient = seen.recipient
    return dated if recipient.may_read(dated.reasons) and not recipient.surely_named(dated.reasons) else None


def _lives(seen: AudienceView, worked: WorkedOut, days: Mapping[str, str]) -> dict[str, WorkedOutDate]:
    found, everyone = {}, seen.collection.people()
    for ident, day in days.items():
        life, of_life = seen.lives.get(ident), proposal(worked, day)
        is_kept = not seen.recipient.may_know_all_of(everyone[ident]) or (life is not None and life.living)
        if not is_kept and of_life.years is not None and (dated := _dated(seen, of_life)):
            found[ident] = dated
    return found
