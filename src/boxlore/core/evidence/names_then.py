"""Clues of names in use only in certain years: a married name, and the name of a city that was renamed.

Only what stands on the thing itself is taken: whoever tells of somebody today calls them as they were called last, and
often a town too. It may have been written years later, so that it is a guess.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import cache

from boxlore.core.evidence.claims import Claim, of_item
from boxlore.core.evidence.even_years import number_of
from boxlore.core.evidence.network import NEVER, Limit
from boxlore.core.evidence.told_dates import told
from boxlore.core.evidence.weddings import Weddings
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person, Registry
from boxlore.core.places.renamed_cities_table import RENAMED
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure, fold

NAMES_TABLE = "our table of renamed cities, from memory"


def clues(record: Record, people: Registry, born_as: Mapping[str, set[str]], weddings: Weddings) -> Iterator[Claim]:
    """`born_as` are the names at birth that are told, by the person's id."""
    for shown in record.shown():
        person = people.get(shown.person)
        if person and shown.told.source.said is Said.INSCRIPTION and (day := weddings.of(person.id)):
            yield from _married(record, person, shown.told, (day, born_as.get(person.id, set())))
    for view in record.all("inscription"):
        if view.source.said is Said.INSCRIPTION:
            yield from _titled(record, view, people, weddings)
    for view in (*record.all("place"), *record.all("inscription")):
        if view.source.said is Said.INSCRIPTION:
            yield from _renamed(record, view)


def _married(record: Record, person: Person, view: StatementView, then: tuple[str, set[str]]) -> Iterator[Claim]:
    day, born_as = then
    written = _words(view.words)
    names = [name for name in person.surnames if _words(name) <= written]
    if names and born_as and not born_as & set(names):
        yield replace(
            told(view, f"{person.name} is called {names[0]} on {record.number}, a name of after the wedding"),
            sure=Sure.GUESS,
            limits=(Limit(day, of_item(record.id), 0),),
        )


_TITLED = re.compile(
    r"\b(?:(?P<miss>miss|fräulein|frl|preili|prl|neiti|fröken|frøken|mademoiselle|mlle|señorita|srta|signorina|panna)|"
    r"(?P<mrs>mrs|frau|proua|pr|rouva|fru|madame|mme|señora|sra|signora|pani))\b\.? "
    r"(?P<name>\w+(?: \w+)?)\b(?!['’]s| \w+['’]s)"
)
"""What an unmarried and a married woman is called before her name."""


def _titled(record: Record, view: StatementView, people: Registry, weddings: Weddings) -> Iterator[Claim]:
    """“Miss Ana Saar” was written before she married, and the picture was taken before that; “Mrs” may be written on an
    older one, and is a guess."""
    shown = [person for each in record.shown() if (person := people.get(each.person)) is not None]
    for match in _TITLED.finditer(fold(view.words)):
        first = match["name"].split()[0]
        called = [person for person in shown if first in {fold(call) for call in person.calls}]
        second = match["name"].split()[1:]
        if match["miss"] and called and set(second) & _names_of_spouses(called[0], people):
            continue  # a slip, or written by a name of later
        if len(called) != 1 or not (day := weddings.of(called[0].id)):
            continue
        limit = Limit(of_item(record.id), day, 0) if match["miss"] else Limit(day, of_item(record.id), 0)
        words = f"{called[0].name} is called “{one_line(match[0])}” on {record.number}"
        yield replace(told(view, words), sure=Sure.LIKELY if match["miss"] else Sure.GUESS, limits=(limit,))


def _names_of_spouses(person: Person, people: Registry) -> set[str]:
    return {fold(name) for ident in person.spouses if ident in people for name in people[ident].surnames}


def _renamed(record: Record, view: StatementView) -> Iterator[Claim]:
    written = _words(view.words)
    for names in _names_of_cities():
        spans = [(name, first, last) for name, words_of, first, last in names if words_of <= written]
        if not spans or len({name for name, _, _ in spans}) > 1:
            continue
        days = tuple(
            (number_of(first, 1, 1) if first else -NEVER, number_of(last, 12, 31) if last else NEVER)
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
