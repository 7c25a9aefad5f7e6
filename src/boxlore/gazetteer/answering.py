"""From ranked places, or larger parts alone, to a reading: its kind, its choices, and what to ask.

The kinds of answer are explained in `core.places.reading`. A place is a match if its score leads that of the next by
more than LEAD.
"""

import sqlite3
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.places.countries_since_table import ENGLISH_ALWAYS, SINCE
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.former_countries_table import Former
from boxlore.core.places.governed import governed_by
from boxlore.core.places.reading import Place, PlaceReading, full_name
from boxlore.core.places.taking_apart import Parts, fold_place
from boxlore.gazetteer.larger_parts import LargerPart, countries_of, features_of
from boxlore.gazetteer.matching import (
    CITY,
    LARGE_NAMESAKE,
    MUCH_LARGER,
    NEW_WORLD,
    NO_FAMILY,
    OLD_NAMED,
    Family,
    Ranked,
    area_name,
    covers,
    exact,
    is_with_epithet,
    is_written_elsewhere,
    place_of,
    renamed_of,
)

LEAD, LEAD_IN_USE = 0.5, 0.4
"""How far the best score must lead the next; LEAD_IN_USE for a place that bore the told name in that year."""
MOST_CHOICES = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What was told besides the place's own name.

    `before` is what stood before it, such as a house or street; `near_km` over 0 that it is only near; `unsure` that
    the reading must not be a match, whatever its score.
    """

    text: str
    contexts: Sequence[LargerPart]
    year: int | None
    before: str = ""
    near_km: float = 0.0
    unsure: bool = False
    family: Family = NO_FAMILY


def told_before(told_words: Parts, parts: Sequence[str]) -> str:
    """What was told before the place, such as a house or a street."""
    near_it = [f"{told_words.near_words} {parts[0]}".strip(), *parts[1:]] if parts else []
    return ", ".join(part for part in (told_words.sublocation, *near_it) if part)


def told_beside(told: Told, told_words: Parts, parts: Sequence[str]) -> Told:
    """What was told, with `parts` before the place. Near one of those is in the place: `near the pier, Reval`."""
    return replace(told, before=told_before(told_words, parts), near_km=0.0 if parts else told.near_km)


def place_answer(db: sqlite3.Connection, ranked: Sequence[Ranked], told: Told, names: Sequence[str]) -> PlaceReading:
    """The reading for ranked candidates. `names` are the told names of the place."""
    unsure = told.unsure or _is_small_abroad(ranked[0], told) or _has_great_namesake(ranked, told)
    unsure = unsure or is_written_elsewhere(ranked[0], names, told.family)
    unsure = unsure or (ranked[0].id < 0 and not is_city_told(db, ranked[0], told.contexts))
    kind = _kind(ranked, told.contexts, unsure)
    shown = ranked[:1] if kind == "match" else _with_quarter(_likely(db, ranked, told, names), told)[:MOST_CHOICES]
    choices = tuple(place_of(db, candidate, told.year, told.before, told.near_km) for candidate in shown)
    formers = [part.former for part in told.contexts if part.former and not part.doubtful]
    former = next((row.name for row in formers if _in_time(row, told.year)), "")
    choices = tuple(replace(choice, country_then=choice.country_then or former) for choice in choices)
    findings = [*_anachronisms(told.contexts, told.year), *_coined_later(db, ranked[0], names[:1], told.year)]
    return PlaceReading(told.text, kind, choices, tuple(findings))


def _is_small_abroad(place: Ranked, told: Told) -> bool:
    """Whether a place told alone lies in none of the family's own countries and is no city: one of its name at home,
    which the gazetteer does not have, may be meant (Glendalough).
    """
    is_abroad = bool(told.family.home) and not told.family.is_theirs(place)
    return is_abroad and not told.contexts and not place.in_use and place.population < CITY


def _has_great_namesake(ranked: Sequence[Ranked], told: Told) -> bool:
    """Whether the best is a place told before, told now without a larger part, and a MUCH_LARGER one of GREAT people
    bears its name: a family that was in London, Ontario, may have been in the other too.
    """
    best = ranked[0]
    return (
        not told.contexts
        and best.id in told.family.used
        and any(
            place.population >= max(GREAT, MUCH_LARGER * best.population)
            and fold_place(place.name) == fold_place(best.name)
            for place in ranked[1:]
        )
    )


def is_city_told(db: sqlite3.Connection, quarter: Ranked, contexts: Sequence[LargerPart]) -> bool:
    """Whether a larger part that was told is called as the city of a quarter (`Kopli, Tallinn`)."""
    query = "SELECT 1 FROM quarter q JOIN name n ON n.place = q.city WHERE q.id = ? AND n.folded = ?"
    return any(db.execute(query, (quarter.id, fold_place(part.words))).fetchone() for part in contexts)


GREAT = 1_000_000
"""People of a city that is known everywhere (our rule)."""


def _with_quarter(ranked: list[Ranked], told: Told) -> list[Ranked]:
    """The candidates, with the first quarter of a city in the family's own countries second at the latest: more people
    lived there than in the villages of its name.
    """
    quarter = next((place for place in ranked[2:] if place.id < 0 and told.family.is_own(place.country)), None)
    return ranked if quarter is None else [ranked[0], quarter, *(place for place in ranked[1:] if place is not quarter)]


def _likely(db: sqlite3.Connection, ranked: Sequence[Ranked], told: Told, names: Sequence[str]) -> list[Ranked]:
    """The candidates without those that only once bore the name of another (Silverton in Colorado, called Quito): of
    smaller ones, much smaller where names changed with states, and any in the New World that our tables do not have.
    """
    folded = {fold_place(name) for name in names}
    bearing = {place.id for place in ranked if _is_called(place, folded)}
    largest = max((place.population for place in ranked if place.id in bearing), default=0)

    def is_likely(place: Ranked) -> bool:
        if place.id in bearing or place.slips or place.in_use or place.id in told.family.used or not largest:
            return True
        is_much_smaller = place.population * MUCH_LARGER <= largest
        if place.country in OLD_NAMED:
            return not is_much_smaller
        if told.family.is_own(place.country):
            return place.country not in NEW_WORLD or place.population > largest
        return place.population > largest and (place.country not in NEW_WORLD or renamed_of(db, place) is not None)

    return [ranked[0], *filter(is_likely, ranked[1:])]


def _is_called(place: Ranked, folded: Iterable[str]) -> bool:
    name = fold_place(place.name)
    return name in folded or any(is_with_epithet(name, told) for told in folded)


def area_answer(db: sqlite3.Connection, told: Told) -> PlaceReading:
    """The reading for words that name larger parts alone: the smallest of them.

    Told alone it may also mean an area of the same name in another country (Georgia), or a town (Lebanon): these
    are offered after it.
    """
    smallest = _narrowed(told.contexts, told.family)
    counties = [code for code in smallest.areas if code.count(".") == 2] if not smallest.box else []
    if len(counties) > 1 and not smallest.country:
        choices = [
            _area_place(db, [*told.contexts[:-1], replace(smallest, areas=frozenset({code}))], told.year, told.before)
            for code in _by_people(db, counties, told.family)[:MOST_COUNTIES]
        ]
    else:
        choices = [_area_place(db, [*told.contexts[:-1], smallest], told.year, told.before)]
    if smallest.natural:
        others = [part for part in features_of(smallest.words) if part.name != smallest.name]
        choices += [_area_place(db, [part], told.year, told.before) for part in others if len(told.contexts) == 1]
        towns = exact(db, smallest.words, told.contexts[:-1], told.year)
        choices += [place_of(db, town, told.year, told.before, told.near_km) for town in towns]
    elif len(told.contexts) == 1 and not told.before:
        areas = [code for code in sorted(smallest.areas) if code.count(".") == 1]
        if smallest.country or len(areas) > 1:
            choices += [_one_area(db, code, told.year) for code in areas]
        towns = [town for town in exact(db, smallest.words, year=told.year) if _bears(town, smallest.words)]
        known = exact(db, smallest.words, year=told.year) if _is_abroad(smallest, told.family) else towns
        known = [town for town in known if town in towns or town.population >= LARGE_NAMESAKE]
        own = [town for town in known if told.family.is_own(town.country)]
        own.sort(key=lambda town: not _bears(town, smallest.words))
        is_counties = bool(counties) and len(counties) == len(smallest.areas)
        if is_counties:
            own = [town for town in own if town.population >= LARGE_NAMESAKE]
        if is_counties or _is_abroad(smallest, told.family):
            choices = [*(place_of(db, town, told.year, "", told.near_km) for town in own), *choices]
        choices += [place_of(db, town, told.year, "", told.near_km) for town in towns]
    by_name: dict[str, Place] = {}
    for choice in choices:
        by_name.setdefault(full_name(choice), choice)  # Singapore and its town are one
    shown = tuple(by_name.values())[:MOST_CHOICES]
    return PlaceReading(told.text, "area", shown, tuple(_anachronisms(told.contexts, told.year)))


MOST_COUNTIES = 3
"""How many counties of one name are offered, before the towns of that name."""


def _narrowed(contexts: Sequence[LargerPart], family: Family) -> LargerPart:
    """The smallest larger part, with those of its areas alone that lie in the larger ones; told alone, in the
    countries of the family's settings, if any do.
    """
    *around, smallest = contexts
    if smallest.country or smallest.former or smallest.box or len(smallest.areas) < 2:
        return smallest
    larger = [part for part in around if part.areas and not part.country]
    lands = [countries_of(part) for part in around]
    there = {code for code in smallest.areas if all(code[:2] in land for land in lands)} or smallest.areas
    inside = {code for code in there if all(code.rpartition(".")[0] in part.areas for part in larger)}
    at_home = {code for code in inside if code[:2] in family.home}
    areas = frozenset(at_home or inside or there)
    return replace(smallest, areas=areas, countries=frozenset(code[:2] for code in areas))


def _by_people(db: sqlite3.Connection, codes: Iterable[str], family: Family) -> list[str]:
    """Second-level areas, those of the family's own countries first, and of them the one with the largest town."""

    def largest_town(code: str) -> int:
        query = "SELECT max(population) FROM place WHERE country = ? AND area1 = ? AND area2 = ?"
        return int(db.execute(query, code.split(".")).fetchone()[0] or 0)

    return sorted(codes, key=lambda code: (not family.is_own(code[:2]), -largest_town(code), code))


def _is_abroad(part: LargerPart, family: Family) -> bool:
    """Whether a part is an area of today in none of the countries of the family's settings."""
    is_area = bool(part.areas) and not (part.country or part.former or part.box)
    return is_area and bool(family.home) and not any(code[:2] in family.home for code in part.areas)


def _bears(town: Ranked, words: str) -> bool:
    """Whether this is the town's main name."""
    return fold_place(town.name) == fold_place(words)


def _area_place(db: sqlite3.Connection, contexts: Sequence[LargerPart], year: int | None, before: str) -> Place:
    """The smallest larger part as a place; its country only if the parts agree on one."""
    smallest = contexts[-1]
    countries = {code for context in contexts for code in context.countries if context.countries} or {
        code[:2] for code in smallest.areas
    }
    for context in contexts:
        countries &= context.countries or {code[:2] for code in context.areas}
    country = next(iter(countries)) if len(countries) == 1 else ""
    area = next(iter(smallest.areas)) if len(smallest.areas) == 1 and not smallest.country else ""
    around = {code for part in contexts[:-1] for code in part.areas if code.count(".") == 1}
    if smallest.natural and len(around) == 1:
        (area,) = around
    if smallest.country and len(contexts) == 1:
        country = smallest.country
    return Place(
        name=smallest.name if smallest.natural else area_name(db, area) or smallest.name,
        sublocation=before,
        admin1=area_name(db, ".".join(area.split(".")[:2])) if area else "",
        admin1_code=area.split(".")[1] if area else "",
        country=COUNTRY_NAMES.get(country, ""),
        country_code=country,
        country_then=_then(db, smallest, country, area, year),
        box=smallest.box,
    )


def _then(db: sqlite3.Connection, part: LargerPart, country: str, area: str, year: int | None) -> str:
    """The state told, if there was one in that year; else the one that our tables have for the area or country; of a
    region, and of a small natural feature, for all the towns in its box, if these had one state.
    """
    if part.former is not None and _in_time(part.former, year):
        return part.former.name
    box = part.box
    if year is None or not box or (part.natural and box[2] - box[0] > SMALL_FEATURE):
        return governed_by(country, year, area1=area.split(".")[1] if area else "")
    south, west, north, east = box
    query = """SELECT DISTINCT area1, area2, lat, lon FROM place
        WHERE country = ? AND lat BETWEEN ? AND ? AND lon BETWEEN ? AND ?"""
    states = {
        governed_by(country, year, area1=area1, area2=area2, point=(lat, lon))
        for area1, area2, lat, lon in db.execute(query, (country, south, north, west, east))
    } or {governed_by(country, year)}
    return states.pop() if len(states) == 1 else ""


SMALL_FEATURE = 1.0
"""Degrees, north to south, of a mountain or an island of which the towns around its middle speak."""


def _in_time(former: Former, year: int | None) -> bool:
    """Whether a former country existed in that year; in a year not told it may have."""
    return year is None or covers(former.first, former.last, year)


def _one_area(db: sqlite3.Connection, code: str, year: int | None) -> Place:
    """One first-level area by its code, such as `US.GA`."""
    country, _, number = code.partition(".")
    name = area_name(db, code)
    return Place(
        name=name,
        admin1=name,
        admin1_code=number,
        country=COUNTRY_NAMES.get(country, ""),
        country_code=country,
        country_then=governed_by(country, year, area1=number),
    )


def _kind(ranked: Sequence[Ranked], contexts: Sequence[LargerPart], unsure: bool) -> str:
    """The kind of the answer (see `core.places.reading`), by how well the best fits and how far it leads."""
    best = ranked[0]
    if best.slips or (contexts and not best.fits):
        return "perhaps"
    lead = best.score - ranked[1].score if len(ranked) > 1 else LEAD + 1
    if len(ranked) == 1 and not contexts and best.population < 2000 and " " not in best.name:
        return "check"
    if lead > (LEAD_IN_USE if best.in_use else LEAD):
        return "check" if unsure else "match"
    near = abs(best.lat - ranked[1].lat) + abs(best.lon - ranked[1].lon) < 0.15
    if near and best.country == ranked[1].country:
        return "check" if unsure else "match"
    return "check" if lead > 0.12 else "choices"


def _anachronisms(contexts: Sequence[LargerPart], year: int | None) -> list[Finding]:
    """A finding for each larger part that is a country which did not exist in that year."""
    findings: list[Finding] = []
    for context in contexts:
        if year is None:
            continue
        if context.former is not None and not covers(context.former.first, context.former.last, year):
            message = (
                f"{context.former.name} existed {context.former.first}-{context.former.last}; the picture is of {year}."
            )
            findings.append(make_finding("place.country-then", Severity.NOTE, message, context.former.source))
        since = SINCE.get(context.country)
        if since is not None and year < since[0] and context.country not in ENGLISH_ALWAYS:
            message = f"In {year} there was no {context.name} yet: {since[1]}."
            findings.append(make_finding("place.country-then", Severity.NOTE, message, "political years, from memory"))
    return findings


def _coined_later(db: sqlite3.Connection, best: Ranked, names: Sequence[str], year: int | None) -> list[Finding]:
    """A finding if the told name was given to the place by an authority only after the year of the picture."""
    renamed = renamed_of(db, best)
    if renamed is None or year is None:
        return []
    for name, first, _last in renamed.names:
        is_told = any(fold_place(name) == fold_place(told_name) for told_name in names)
        rows_of_name = [row for row in renamed.names if fold_place(row[0]) == fold_place(name)]
        if is_told and name in COINED and all(row[1] and year < row[1] for row in rows_of_name):
            message = f"{best.name} was first called {name} in {first}; the picture is of {year}."
            return [make_finding("place.name-then", Severity.NOTE, message, "renamed cities, from memory")]
    return []


COINED = frozenset(
    "Leningrad Petrograd Stalingrad Volgograd Sverdlovsk Gorky Kuybyshev Kaliningrad Kalinin Stalinogród Stalino "
    "Karl-Marx-Stadt Ivano-Frankivsk Litzmannstadt Dnepropetrovsk Kitchener Harare Kinshasa".split()
) | {"Thunder Bay", "Ho Chi Minh City"}
"""Names that nobody used before an authority gave them. Other new names were in use before (Tallinn beside Reval)."""
