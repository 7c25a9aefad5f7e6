"""The names that the collection tells of people of whom the registry knows nothing: they count as living."""

import re
from collections.abc import Iterable, Iterator, Mapping

from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.name_answers import NamingAnswer
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.names_in_text.finder import name_finder
from boxlore.core.people.names_in_text.names_in_notes import in_brackets, names_in_note
from boxlore.core.people.names_in_text.names_of_the_living import name_alone, names_of_the_living
from boxlore.core.people.person import Registry
from boxlore.core.people.reference import id_meant
from boxlore.core.records.file_strangers import WHO, Strangers, stranger_digest, strangers_to
from boxlore.core.records.name_answers import STRANGER, Decided
from boxlore.core.records.told_nowhere import NamesToldNowhere, may_name
from boxlore.core.statements import Kind, Reading, Said, Statement, Subject, fold
from boxlore.tasks.collection.opening import Collection

MAY_TELL_OF_THE_LIVING = tuple(
    name
    for name, field in FIELDS.items()
    if not {Kind.ITEM, Kind.COLLECTION}.isdisjoint(field.kinds) and field.reads != "date" and may_name(name)
)
"""Fields in whose words a name may stand of which nobody told who bears it; the years of a date are no births."""


def strangers_of(
    collection: Collection, answers: Decided, hidden: frozenset[str], years: Mapping[str, int]
) -> Strangers:
    """Who knows whom the registry has, and the words of who is somewhere that were made nobody and not let out; with
    the names that may stand in notes of who the `hidden` (ids) are. `years` are the last years that
    pictures of items (ids) may be of."""
    everyone = tuple(collection.people().values())
    since = collection.clock.today().year - collection.settings.living_years
    old = frozenset(item for item, last in years.items() if last < since)
    shapes = NamesToldNowhere(
        known=name_finder(everyone, frozenset(person.id for person in everyone)),
        places=frozenset(_told_places(collection)),
        old=old,
        since=since,
        long_ago=frozenset(_events_long_ago(collection, old, since)),
    )
    known = strangers_to(everyone, answers, shapes=shapes)
    told = []
    for subject, name, words in collection.store.words_of(WHO):
        answer = answers.answers.get((subject, name, STRANGER, stranger_digest(words)))
        if fold(words) not in known.known and answer in (None, NamingAnswer.HIDE):
            rows = collection.store.statements(Subject(Kind.ITEM, subject))
            if not any(row.words == words and _is_known(row, reading) for row, reading in rows):
                told.append(words)
    living = (*_told_as_living(collection, answers), *_told_beside(collection, told, hidden))
    return strangers_to(everyone, answers, told, living=living, shapes=shapes) if told or living else known


def _told_places(collection: Collection) -> Iterator[str]:
    """The names that are told as places, whole and in their parts, folded."""
    for _, _, words in collection.store.words_of(("place", "born_at", "died_at", "buried_at", "called_then")):
        yield from (fold(part).strip() for part in (words, *_BETWEEN_PLACES.split(words)))


def _events_long_ago(collection: Collection, old: frozenset[str], since: int) -> set[str]:
    """What events are called, folded, that are told of items of `old` (ids) alone, or were in a year before `since`."""
    was: dict[str, list[bool]] = {}
    for item, _, words in collection.store.words_of(("occasion",)):
        was.setdefault(fold(words), []).append(item in old)
    for _, rows in collection.store.subjects(Kind.EVENT):
        dates = [reading.usable_value if reading else None for row, reading in rows if row.field == "date"]
        for row, _ in rows if dates else ():
            if row.field == "name":
                was.setdefault(fold(row.words), []).append(all(_is_before(date, since) for date in dates))
    return {name for name, each in was.items() if all(each)}


def _is_before(date: object, since: int) -> bool:
    return isinstance(date, DateReading) and date.last_year is not None and date.last_year < since


def _told_as_living(collection: Collection, answers: Decided) -> Iterator[str]:
    """The names that words tell of somebody who may well live, of whom the registry knows nothing."""
    everyone = tuple(collection.people().values())
    finder = name_finder(everyone, frozenset(person.id for person in everyone))
    year, longest_life = collection.clock.today().year, collection.settings.living_years
    for subject, name, words in collection.store.words_of(MAY_TELL_OF_THE_LIVING):
        names = names_of_the_living(words, name, year, longest_life)
        answer = answers.answers.get((subject, name, STRANGER, stranger_digest(words))) if names else None
        for told in names if answer in (None, NamingAnswer.HIDE) else ():
            if not any(hit.end - hit.start >= len(name_alone(told)) for hit in finder.hits(told)):
                yield told


def _told_beside(collection: Collection, unread: Iterable[str], hidden: frozenset[str]) -> Iterator[str]:
    """The names that may stand beside the name of somebody hidden, and in words of who is somewhere that were made
    nobody: in brackets, behind a comma, `=` or a dash. What a finder knows as hers is none, nor what is told of
    somebody else whom it knows."""
    people, ids = collection.people(), sorted(hidden)
    of_whom = [(words, "") for words in unread]
    for at in range(0, len(ids), _AT_ONCE):
        of_whom += [
            (row.words, id_meant(reading))
            for row, reading in collection.store.meaning(ids[at : at + _AT_ONCE])
            if row.field in WHO and reading is not None and not _is_a_name_alone(people, row.words, id_meant(reading))
        ]
    of_whom += [
        (inside, ident)
        for ident in ids
        if ident in people
        for form in people[ident].forms
        for inside in in_brackets(form)
    ]
    if not of_whom:
        return
    places = frozenset(_told_places(collection))
    everyone = tuple(people.values())
    finder = name_finder(everyone, frozenset(person.id for person in everyone))
    for words, ident in dict.fromkeys(of_whom):
        own = people[ident].id if ident in people else ""
        for name in names_in_note(words, places):
            whole = [hit for hit in finder.hits(name.words) if hit.end - hit.start >= len(name.words)]
            if not any(name.is_anothers or own in hit.people for hit in whole):
                yield name.words


def _is_a_name_alone(people: Registry, words: str, ident: str) -> bool:
    """Whether words are what somebody is called, with nothing beside it: a finder has that already."""
    return ident in people and fold(words) == fold(people[ident].name)


_AT_ONCE = 500
_BETWEEN_PLACES = re.compile(r"[,;()]|\b(?:in|near|at)\b")


def _is_known(row: Statement, reading: Reading | None) -> bool:
    """Whether words are read as somebody, or stand in a scan's file alone, where they are asked about."""
    return row.source.said is Said.FILE or bool(reading and id_meant(reading))
