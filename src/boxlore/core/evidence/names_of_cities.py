"""Clues of a city's name on the thing itself that nobody used before a year: “Leningrad” on a picture of 1921.

Most cities that were renamed had both names long before and after the decree, one in each language of their people;
such a name bounds nothing. A name that was given anew (`GIVEN_ANEW`) was nobody's before. It may have been written on
an older picture later, so that it is a guess, and is held against a date that is told, and nothing else.
"""

import re
from collections.abc import Iterator
from functools import cache

from boxlore.core.evidence.claims import Claim, not_before, of_item
from boxlore.core.evidence.even_years import number_of
from boxlore.core.evidence.told_dates import has_a_year, told
from boxlore.core.findings import one_line
from boxlore.core.places.renamed_cities_table import RENAMED
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Said, Sure, fold

GIVEN_ANEW: tuple[str, ...] = (
    "Petrograd|Петроград", "Leningrad|Léningrad|Leningradi|Ленинград", "Stalingrad|Сталинград", "Volgograd|Волгоград",
    "Sverdlovsk|Swerdlowsk|Свердловск", "Kuybyshev|Kuibyshev|Kuibyschew|Куйбышев", "Kaliningrad|Калининград",
    "Stalinogród", "Litzmannstadt", "Stalino|Сталино", "Karl-Marx-Stadt", "Oslo", "Kitchener", "Thunder Bay",
    "Ho Chi Minh City", "Novosibirsk|Nowosibirsk|Новосибирск", "Krasnodar|Краснодар", "Ulyanovsk|Uljanowsk|Ульяновск",
    "Faisalabad", "Harare", "Kinshasa",
)  # fmt: skip
"""Names of the table of renamed cities that were in use in no language before, each with its other spellings; from
memory, as that table is."""
_FIELDS = ("inscription", "place")


def clues(record: Record) -> Iterator[Claim]:
    written = [view for name in _FIELDS for view in record.all(name) if view.source.said is Said.INSCRIPTION]
    if record.first("date") is None and not any(has_a_year(view.words) for view in written):
        return
    for view in written:
        for match in _any().finditer(fold(view.words)):
            name, year = _first_years()[match[0]]
            yield Claim(
                words=f"{record.number}: “{one_line(view.words)}”, and no city was called {name} before {year}",
                source=told(view, "").source,
                sure=Sure.GUESS,
                limits=(not_before(of_item(record.id), number_of(year, 1, 1)),),
                statement=view.statement,
            )


@cache
def _first_years() -> dict[str, tuple[str, int]]:
    """By each spelling, folded, the name and the year from which it was in use."""
    first = {name: year for row in RENAMED for name, year, _ in reversed(row.names)}
    rows = [names.split("|") for names in GIVEN_ANEW]
    return {fold(spelling): (names[0], first[names[0]]) for names in rows for spelling in names}


@cache
def _any() -> re.Pattern[str]:
    return re.compile("|".join(rf"(?<!\w){re.escape(name)}(?!\w)" for name in _first_years()))
