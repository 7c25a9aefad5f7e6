"""Clues of names in use only in certain years: a married name, and the name of a city that was renamed.

Only what stands on the thing itself is taken: whoever tells of somebody today calls them as they were called last, and
often a town too. It may have been written years later, so that it is a guess.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import cache

from boxlore.core.dates.calendars import to_number
from boxlore.core.evidence.claims import Claim, dated, of_item
from boxlore.core.evidence.network import NEVER, Limit
from boxlore.core.evidence.told_dates import told
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person, Registry
from boxlore.core.places.renamed_cities_table import RENAMED
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure, fold

NAMES_TABLE = "our table of renamed cities, from memory"


def clues(record: Record, people: Registry, born_as: Mapping[str, set[str]]) -> Iterator[Claim]:
    """`born_as` are the names at birth that are told, by the person's id."""
    for shown in record.shown():
        person = people.get(shown.person)
        if person and shown.told.source.said is Said.INSCRIPTION and len(person.married) == 1:
            yield from _married(record, person, shown.told, born_as.get(person.id, set()))
    for view in (*record.all("place"), *record.all("inscription")):
        if view.source.said is Said.INSCRIPTION:
            yield from _renamed(record, view)


def wedding_of(person: Person) -> str:
    """The day of somebody's one wedding."""
    return f"wedding {person.id}"


def clues_of_weddings(people: Registry) -> Iterator[Claim]:
    for person in people.values():
        if len(person.married) == 1 and (edtf := person.married[0].edtf):
            claim = Claim(
                words=f"{person.name} married “{one_line(person.married[0].text)}”", source="the family's time line"
            )
            yield dated(claim, wedding_of(person), edtf)


def _married(record: Record, person: Person, view: StatementView, born_as: set[str]) -> Iterator[Claim]:
    written = _words(view.words)
    names = [name for name in person.surnames if _words(name) <= written]
    if names and born_as and not born_as & set(names):
        yield replace(
            told(view, f"{person.name} is called {names[0]} on {record.number}, a name of after the wedding"),
            sure=Sure.GUESS,
            limits=(Limit(wedding_of(person), of_item(record.id), 0),),
        )


def _renamed(record: Record, view: StatementView) -> Iterator[Claim]:
    written = _words(view.words)
    for names in _names_of_cities():
        spans = [(name, first, last) for name, words_of, first, last in names if words_of <= written]
        if not spans or len({name for name, _, _ in spans}) > 1:
            continue
        days = tuple(
            (to_number(first, 1, 1) if first else -NEVER, to_number(last, 12, 31) if last else NEVER)
            for _, first, last in spans
        )
        years = " and ".join(f"{first or '…'} to {last or 'today'}" for _, first, last in spans)
        words = f"{record.number} bears the name {spans[0][0]}, in use {years} ({NAMES_TABLE})"
        yield replace(told(view, words), sure=Sure.GUESS, chosen=of_item(record.id), choices=days)


@cache
def _names_of_cities() -> tuple[tuple[tuple[str, set[str], int, int], ...], ...]:
    """For each city that was renamed: name, the words of it, first and last year."""
    return tuple(tuple((name, _words(name), first, last) for name, first, last in city.names) for city in RENAMED)


def _words(text: str) -> set[str]:
    return set(re.findall(r"\w+", fold(text)))
