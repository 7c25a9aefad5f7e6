"""From told words to ranked places: exact names first, a spelling guess only when there is none.

Ranking: 1 less 0.18 for each slip of the pen, 0.05 for a main name, 0.06 × log10 of the people living there; each
told context +0.6 if it fits, less if it does not; 0.3 if the name was in use that year; a bonus for places that
this collection uses already. A guess that breaks any told context is dropped, and so is a namesake in another
country than the one told.
"""

import math
import re
import sqlite3
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from rapidfuzz import process
from rapidfuzz.distance import OSA

from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.governed_table import GOVERNED, GOVERNED_PARTS
from boxlore.core.places.reading import Place, distance_km
from boxlore.core.places.renamed_table import RENAMED, Renamed
from boxlore.core.places.words import fold_place
from boxlore.gazetteer.larger_parts import ELSEWHERE, LargerPart

USED = 0.6
GENERIC = frozenset(
    "lake farm sea home house church school beach garden hospital station harbour harbor river hill the shop street "
    "work town village city park hotel studio kitchen yard front back inside outside unknown mountain island".split()
)
"""Words that are a place only with a context (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """A candidate with its score, the slips of the pen, and whether every context fits."""

    score: float
    id: int
    name: str
    country: str
    area1: str
    area2: str
    lat: float
    lon: float
    population: int
    slips: int
    fits: bool
    elsewhere: bool
    in_use: str
    """The name told, where the place bore it in that year."""


def candidates(
    db: sqlite3.Connection,
    names: Sequence[str],
    contexts: Sequence[LargerPart],
    year: int | None,
    used: frozenset[int],
) -> list[Ranked]:
    """Places of any of these names, best first; by a spelling guess only where no name is exact."""
    folded = [fold_place(name) for name in names]
    rows = _exact(db, folded)
    slips = dict.fromkeys(rows, 0)
    if not rows:
        rows, slips = _guessed(db, folded)
    ranked = [_rank(row, slips[ident], folded, contexts, year, used) for ident, row in rows.items()]
    kept = [one for one in ranked if one.fits or not (one.slips or one.elsewhere)]
    return sorted(kept, key=lambda one: (-one.score, one.id))


def exact(
    db: sqlite3.Connection, name: str, contexts: Sequence[LargerPart] = (), year: int | None = None
) -> list[Ranked]:
    """Places of exactly this name that fit, best first; never a spelling guess."""
    folded = [fold_place(name)]
    ranked = [_rank(row, 0, folded, contexts, year, frozenset()) for row in _exact(db, folded).values()]
    return sorted((one for one in ranked if one.fits), key=lambda one: (-one.score, one.id))


def kilometres(one: Ranked, other: Ranked) -> float:
    """How far two places lie apart, on a sphere of 6,371 km (the haversine formula)."""
    return distance_km((one.lat, one.lon), (other.lat, other.lon))


_Row = tuple[int, str, str, str, str, float, float, int, int]


def _exact(db: sqlite3.Connection, folded: Iterable[str]) -> dict[int, _Row]:
    query = "SELECT p.*, n.main FROM name n JOIN place p ON p.id = n.place WHERE n.folded = ?"
    return {row[0]: row for name in folded if name for row in db.execute(query, (name,))}


def _guessed(db: sqlite3.Connection, folded: Iterable[str]) -> tuple[dict[int, _Row], dict[int, int]]:
    rows: dict[int, _Row] = {}
    slips: dict[int, int] = {}
    for name in folded:
        if not 4 <= len(name) <= 40:
            continue
        most = 1 if len(name) <= 7 else 2
        start = name[:1]
        query = "SELECT DISTINCT folded FROM name WHERE folded >= ? AND folded < ? AND length(folded) BETWEEN ? AND ?"
        ends = (start, start + "\U0010ffff", len(name) - most, len(name) + most)
        spelled = [other for (other,) in db.execute(query, ends)]
        for other, distance, _ in process.extract(name, spelled, scorer=OSA.distance, score_cutoff=most, limit=50):
            for ident, row in _exact(db, [other]).items():
                if distance < slips.get(ident, 9):
                    rows[ident], slips[ident] = row, int(distance)
    return rows, slips


def _rank(
    row: _Row, slips: int, folded: Sequence[str], contexts: Sequence[LargerPart], year: int | None, used: frozenset[int]
) -> Ranked:
    ident, name, country, area1, area2, lat, lon, population, main = row
    fitting = [context.fits(country, area1, area2, (lat, lon)) for context in contexts]
    score = 1 - 0.18 * slips + 0.05 * main + 0.06 * math.log10(population + 10) + sum(fitting)
    renamed = renamed_of(name, country)
    in_use = _in_use(renamed, folded, year) if renamed is not None and year is not None else ""
    if in_use:
        score += 0.3
    if ident in used:
        score += USED
    fits = all(one > 0 for one in fitting)
    elsewhere = any(one <= ELSEWHERE for one in fitting)
    return Ranked(score, ident, name, country, area1, area2, lat, lon, population, slips, fits, elsewhere, in_use)


_RENAMED = {(fold_place(one.now), one.country): one for one in RENAMED}


def renamed_of(name: str, country: str) -> Renamed | None:
    """The row of a city that has been renamed."""
    return _RENAMED.get((fold_place(name), country))


def _in_use(renamed: Renamed, folded: Sequence[str], year: int) -> str:
    """The name told, if the city bore it in that year."""
    borne = (name for name, first, last in renamed.names if covers(first, last, year))
    return next((name for name in borne if fold_place(name) in folded), "")


def covers(first: int, last: int, year: int) -> bool:
    """Whether years, 0 for no bound, cover a year."""
    return (not first or first <= year) and (not last or year <= last)


def place_of(db: sqlite3.Connection, one: Ranked, year: int | None, sublocation: str, near_km: float) -> Place:
    """A candidate as a place, with what it was called and governed by in that year."""
    lat, lon, radius = round(one.lat, 4), round(one.lon, 4), 5.0
    if near_km:
        lat, lon, radius = round(one.lat, 1), round(one.lon, 1), max(near_km, 15.0)
    renamed = renamed_of(one.name, one.country)
    called = ""
    if renamed is not None and year is not None:
        called = one.in_use or next((name for name, first, last in renamed.names if covers(first, last, year)), "")
    return Place(
        name=one.name,
        city=one.name,
        sublocation=sublocation,
        admin1=area_name(db, f"{one.country}.{one.area1}"),
        admin1_code=one.area1,
        admin2=area_name(db, f"{one.country}.{one.area1}.{one.area2}"),
        country=COUNTRY_NAMES.get(one.country, one.country),
        country_code=one.country,
        called_then=called,
        country_then=governed_by(one.country, year, (one.lat, one.lon)),
        lat=lat,
        lon=lon,
        radius_km=radius,
        geonames=one.id,
    )


def area_name(db: sqlite3.Connection, code: str) -> str:
    """The name of an area by its code, or an empty string."""
    row = db.execute("SELECT name FROM area WHERE code = ?", (code,)).fetchone()
    return str(row[0]) if row else ""


def governed_by(country: str, year: int | None, where: tuple[float, float] | None = None) -> str:
    """The state that today's country, or this part of it, belonged to in that year; empty where none is known."""
    if year is None:
        return ""
    for part in GOVERNED_PARTS:
        south, west, north, east = part.box
        if where and part.country == country and south <= where[0] <= north and west <= where[1] <= east:
            return _in_year(part.states, year)
    return _in_year(GOVERNED.get(country, ()), year)


def _in_year(states: Sequence[tuple[int, int, str]], year: int) -> str:
    return next((name for first, last, name in states if first <= year <= last), "")


def is_generic(name: str) -> bool:
    """Whether every word is one that means a place only with a context."""
    words = re.findall(r"\w+", fold_place(name))
    return not words or all(word in GENERIC for word in words)
