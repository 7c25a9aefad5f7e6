"""Who governed a place in a year, from 1815 on.

The tables have one row for each land, which is a country of today or a part of it. The first row of its country that
holds a place is the place's own; so the parts of a country stand before the whole of it. A row tells its states as
text, the first year of each before its name:

    1815 Austrian Empire; 1867 Austria-Hungary; 1919 -; 1920 Poland; 1992 *

Each state lasts until the year before the next, and the last one until today. A year belongs to the state that
governed for most of it. `-` means that nothing is said: the land changed hands in that year, was fought over or
divided, or we do not know. `*` is today's country under today's name.

Worked example: Lviv lies in area 15 of Ukraine (UA), whose row begins with the Austrian Empire in 1815. In 1900 the
answer is Austria-Hungary, in 1930 Poland, in 1919 nothing.
"""

from collections.abc import Iterable, Iterator, Mapping
from functools import lru_cache
from types import MappingProxyType

from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.governed_africa_table import GOVERNED_AFRICA
from boxlore.core.places.governed_america_table import GOVERNED_AMERICA
from boxlore.core.places.governed_asia_table import GOVERNED_ASIA
from boxlore.core.places.governed_europe_table import GOVERNED_EUROPE
from boxlore.core.places.governed_land import Land, Point
from boxlore.core.places.governed_russia_table import GOVERNED_RUSSIA
from boxlore.core.places.governed_small_table import GOVERNED_SMALL

NOT_SAID, TODAYS = "-", "*"


@lru_cache(1)
def lands() -> Mapping[str, tuple[Land, ...]]:
    """The rows of all tables by country, in their order, without the small lands."""
    return _by_country((*GOVERNED_EUROPE, *GOVERNED_RUSSIA, *GOVERNED_ASIA, *GOVERNED_AFRICA, *GOVERNED_AMERICA))


@lru_cache(1)
def small_lands() -> Mapping[str, tuple[Land, ...]]:
    """The rows of small lands by country: they come before the others for a place, and are no part of the whole."""
    return _by_country(GOVERNED_SMALL)


def _by_country(rows: Iterable[Land]) -> Mapping[str, tuple[Land, ...]]:
    by_country: dict[str, tuple[Land, ...]] = {}
    for land in rows:
        by_country[land.country] = (*by_country.get(land.country, ()), land)
    return MappingProxyType(by_country)


def governed_by(country: str, year: int | None, *, area1: str = "", area2: str = "", point: Point | None = None) -> str:
    """The state that governed a place in that year; empty where our tables say nothing, or without a year.

    `country` is the ISO 3166-1 code of today, `area1` and `area2` are the codes of GeoNames. Without a `point` the
    answer is for the whole first-level area, or the whole country: only if all its parts had the same state.
    """
    if year is None:
        return ""
    small, rows = small_lands().get(country, ()), lands().get(country, ())
    if point is None:
        rows = next(((land,) for land in small if area1 in land.areas and not land.boxes), rows)
        states = {state_in(land, year) for land in _holding(rows, area1)}
        return states.pop() if len(states) == 1 else ""
    return next((state_in(land, year) for land in (*small, *rows) if land.holds(area1, area2, point)), "")


def _holding(rows: Iterable[Land], area1: str) -> Iterator[Land]:
    """The lands that may hold some of a first-level area, up to the one that holds the whole of it."""
    for land in rows:
        if land.may_hold(area1):
            yield land
        if area1 in land.areas and not (land.boxes or land.outline):
            return


def state_in(land: Land, year: int) -> str:
    """The state of one land in that year; empty if nothing is said of it."""
    name = NOT_SAID
    for first, state in spans(land.states):
        if first <= year:
            name = state
    if name == TODAYS:
        return COUNTRY_NAMES[land.country]
    return "" if name == NOT_SAID else name


@lru_cache(1024)
def spans(states: str) -> tuple[tuple[int, str], ...]:
    """(first year, state) of a row's text, as the module says."""
    pairs = (state.strip().split(" ", 1) for state in states.split(";"))
    return tuple((int(first), name) for first, name in pairs)
