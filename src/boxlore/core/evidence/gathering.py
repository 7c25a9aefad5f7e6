"""All clues of a collection, one reader after another. A source of clues more is a module beside this one, and a line
here."""

from collections.abc import Iterable, Iterator, Sequence

from boxlore.core.evidence import ages, events, lives, names_then, object_clues, relations, studios, told_dates
from boxlore.core.evidence.claims import Claim
from boxlore.core.evidence.lives import ToldOfPerson
from boxlore.core.people.person import Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record


def all_clues(
    records: Sequence[Record], people: Registry, rows: Sequence[ToldOfPerson], happened: Iterable[FamilyEvent]
) -> Iterator[Claim]:
    """Every claim that bears on the days of pictures and lives; `rows` are what is told of people."""
    yield from lives.clues_of_lives(people, rows)
    yield from names_then.clues_of_weddings(people)
    yield from events.clues_of_events(happened)
    ids = {record.number: record.id for record in records}
    born_as: dict[str, set[str]] = {}
    for row in rows:
        if row.field == "born_as":
            born_as.setdefault(people[row.person].id, set()).add(row.words)
    for record in records:
        yield from told_dates.clues(record)
        yield from lives.clues_of_picture(record, people)
        yield from ages.clues(record, people)
        yield from events.clues(record)
        yield from relations.clues(record, ids)
        yield from names_then.clues(record, people, born_as)
        yield from studios.clues(record)
        yield from object_clues.clues(record)
