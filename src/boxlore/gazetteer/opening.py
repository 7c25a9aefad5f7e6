"""The gazetteer: opened (and built on the first use), then asked for readings and completions.

The kinds of answer and when each is given are in `core.places.reading`; a match needs a lead of 0.5 over the next.
"""

import math
import sqlite3
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from boxlore.core.findings import Finding, Severity
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.reading import Place, PlaceReading, distance_km
from boxlore.core.places.since_table import ENGLISH_ALWAYS, SINCE
from boxlore.core.places.words import fold_place, take_apart
from boxlore.gazetteer.index import DATA, BuildProgress, cache_folder, index_path, make_index
from boxlore.gazetteer.larger_parts import LargerPart, context_of
from boxlore.gazetteer.matching import (
    Ranked,
    area_name,
    candidates,
    covers,
    exact,
    governed_by,
    is_generic,
    kilometres,
    place_of,
    renamed_of,
)

LEAD, LEAD_IN_USE = 0.5, 0.4
"""How far the best must lead the next; less is enough for a name that was in use that very year."""
SMALL = 100_000
NEAR_KM = 60
MOST_CHOICES = 5


def open_gazetteer(
    folder: Path | None = None, progress: BuildProgress | None = None, data: Path = DATA, extra: Path | None = None
) -> "Gazetteer":
    """Open the index in the user's cache folder, building it first where it is missing or damaged.

    `extra` is a keeper's own file of places (`gazetteer.own_data`), indexed together with the shipped data.
    """
    path = index_path(folder or cache_folder(), data, extra)
    if not path.is_file():
        make_index(path, progress or _unheard, data, extra)
    try:
        return Gazetteer(_connect(path))
    except sqlite3.DatabaseError:
        path.unlink(missing_ok=True)
        make_index(path, progress or _unheard, data, extra)
        return Gazetteer(_connect(path))


def _unheard(what: str, done: int, total: int) -> None:
    """Nobody watches the building."""


def _connect(path: Path) -> sqlite3.Connection:
    db = sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True, check_same_thread=False)
    db.execute("SELECT count(*) FROM area").fetchone()
    return db


class Gazetteer:
    """Answers from one index."""

    def __init__(self, db: sqlite3.Connection) -> None:
        self._db = db

    def read(self, text: str, *, year: int | None = None, used: frozenset[int] = frozenset()) -> PlaceReading:
        """What these words mean in that year. Never raises for any text."""
        told = take_apart(text)
        if not told.parts:
            return PlaceReading(text, "kept")
        parts, contexts = self._contexts(list(told.parts), year)
        if not parts:
            return self._area(text, contexts, year, told.unsure)
        for at in range(len(parts) - 1, -1, -1):
            names = [parts[at], *(told.names if at == 0 or len(parts) == 1 else ())]
            if is_generic(parts[at]):
                continue
            ranked = candidates(self._db, names, contexts, year, used)
            if ranked:
                at, ranked = self._nearby(parts, at, ranked, contexts, year)
                names = names if parts[at] in names else [parts[at]]
                before = ", ".join([part for part in (told.sublocation, *parts[:at]) if part])
                unsure = told.unsure or self._larger_before(parts[:at], ranked[0])
                return self._answer(text, ranked, contexts, year, before, told.near_km, unsure, names)
        town = self._town(contexts, year)
        if town:
            before = ", ".join([part for part in (told.sublocation, *parts) if part])
            return self._answer(text, town, contexts[:-1], year, before, told.near_km, told.unsure, [contexts[-1].told])
        if contexts:
            reading = self._area(text, contexts, year, told.unsure)
            before = ", ".join([part for part in (told.sublocation, *parts) if part])
            return replace(reading, choices=tuple(replace(one, sublocation=before) for one in reading.choices))
        return PlaceReading(text, "kept")

    def complete(self, prefix: str, limit: int = 8) -> tuple[str, ...]:
        """Main names that begin so, the largest first."""
        start = fold_place(prefix)
        if len(start) < 2:
            return ()
        query = """
            SELECT p.name, p.country FROM name n JOIN place p ON p.id = n.place
            WHERE n.folded >= ? AND n.folded < ? AND n.main = 1 ORDER BY p.population DESC LIMIT ?"""
        rows = self._db.execute(query, (start, start + "\U0010ffff", limit))
        return tuple(f"{name}, {COUNTRY_NAMES.get(country, country)}" for name, country in rows)

    def country_at(self, lat: float, lon: float) -> str:
        """ISO code of the country of the town nearest to a point, within about 200 km; empty at sea."""
        query = """SELECT country, lat, lon FROM place
            WHERE lat BETWEEN ?1 - 2 AND ?1 + 2 AND lon BETWEEN ?2 - ?3 AND ?2 + ?3"""
        wide = min(180.0, 2 / max(0.02, math.cos(math.radians(lat))))
        rows = self._db.execute(query, (lat, lon, wide)).fetchall()
        near = [(distance_km((lat, lon), (row[1], row[2])), str(row[0])) for row in rows]
        return min(near)[1] if near else ""

    def _contexts(self, parts: list[str], year: int | None) -> tuple[list[str], list[LargerPart]]:
        """Take contexts off from the right; what is left is the place. Without commas, the last words are tried."""
        contexts: list[LargerPart] = []
        while parts:
            found = context_of(self._db, parts[-1], year)
            if found is None or (len(parts) == 1 and not contexts and self._is_large(parts[-1], found)):
                break
            if len(parts) == 1 and contexts and self._names_a_place(parts[-1], contexts):
                break
            if contexts and found.countries and not any(found.countries & one.countries for one in contexts):
                break
            contexts.append(found)
            parts.pop()
        if len(parts) == 1 and not contexts:
            parts, contexts = self._last_words(parts[0], year)
        return parts, contexts

    def _last_words(self, words: str, year: int | None) -> tuple[list[str], list[LargerPart]]:
        tokens = words.split()
        if exact(self._db, words):
            return [words], []
        for count in range(min(3, len(tokens) - 1), 0, -1):
            found = context_of(self._db, " ".join(tokens[-count:]), year)
            if found is not None:
                return [" ".join(tokens[:-count])], [found]
        return [words], []

    def _is_large(self, words: str, context: LargerPart) -> bool:
        """A country, former country, abbreviation or large area beats a namesake town of fewer than 100,000 people.

        A county does not, nor an area that only begins with the name (Nelson, Nelson Region).
        """
        found = [] if context.country or context.former else exact(self._db, words)
        if not found:
            return False
        if context.box:
            return found[0].population >= SMALL
        by_name = self._db.execute("SELECT code FROM area_name WHERE folded = ?", (fold_place(words),)).fetchall()
        large_area = any(code.count(".") == 1 for (code,) in by_name) or (context.areas and not by_name)
        main = fold_place(found[0].name) == fold_place(words)
        return not large_area or (main and found[0].population >= SMALL)

    def _town(self, contexts: Sequence[LargerPart], year: int | None) -> list[Ranked]:
        """The town that the smallest context names, where its area is no more than a town's (`Kadriorg, Tallinn`)."""
        if not contexts or not contexts[-1].areas or any(code.count(".") < 2 for code in contexts[-1].areas):
            return []
        found = exact(self._db, contexts[-1].told, contexts[:-1], year)
        return found if found and found[0].country in contexts[-1].countries else []

    def _nearby(
        self, parts: Sequence[str], at: int, ranked: list[Ranked], contexts: Sequence[LargerPart], year: int | None
    ) -> tuple[int, list[Ranked]]:
        """A smaller town told before the larger one, and close to it, is the place (`Trakai, Wilno`)."""
        if at == 0 or is_generic(parts[at - 1]):
            return at, ranked
        best = ranked[0]
        near = [one for one in exact(self._db, parts[at - 1], contexts, year) if kilometres(one, best) <= NEAR_KM]
        return (at - 1, near) if near else (at, ranked)

    def _larger_before(self, parts: Sequence[str], best: Ranked) -> bool:
        """Whether an earlier part names a town far larger than the one found: `Chemnitz, Sachsen` is no farm."""
        for part in parts:
            found = exact(self._db, part)
            if found and found[0].population > 10 * best.population:
                return True
        return False

    def _names_a_place(self, words: str, contexts: Sequence[LargerPart]) -> bool:
        """Whether a part that could be an area is a town within the contexts told (`Otago` no, `Tartu` yes)."""
        found = candidates(self._db, [words], contexts, None, frozenset())
        return bool(found) and not found[0].slips and found[0].fits

    def _area(self, text: str, contexts: Sequence[LargerPart], year: int | None, unsure: bool) -> PlaceReading:
        smallest = contexts[-1]
        countries = {code for one in contexts for code in one.countries if one.countries} or {
            code[:2] for code in smallest.areas
        }
        for one in contexts:
            countries &= one.countries or {code[:2] for code in one.areas}
        only = next(iter(countries)) if len(countries) == 1 else ""
        area = next(iter(smallest.areas)) if len(smallest.areas) == 1 else ""
        place = Place(
            name=area_name(self._db, area) or smallest.name,
            admin1=area_name(self._db, area) if area.count(".") == 1 else "",
            admin1_code=area.split(".")[1] if area else "",
            country=COUNTRY_NAMES.get(only, ""),
            country_code=only,
            country_then=smallest.former.name if smallest.former else governed_by(only, year),
            box=smallest.box,
        )
        return PlaceReading(text, "area", (place,), tuple(_anachronisms(contexts, year)))

    def _answer(
        self,
        text: str,
        ranked: Sequence[Ranked],
        contexts: Sequence[LargerPart],
        year: int | None,
        before: str,
        near_km: float,
        unsure: bool,
        names: Sequence[str],
    ) -> PlaceReading:
        kind = _kind(ranked, contexts, unsure)
        shown = ranked[:1] if kind == "match" else ranked[:MOST_CHOICES]
        choices = tuple(place_of(self._db, one, year, before, near_km) for one in shown)
        former = next((one.former for one in contexts if one.former), None)
        if former is not None:
            choices = tuple(replace(one, country_then=former.name) for one in choices)
        findings = [*_anachronisms(contexts, year), *_coined_later(ranked[0], names[:1], year)]
        return PlaceReading(text, kind, choices, tuple(findings))


def _kind(ranked: Sequence[Ranked], contexts: Sequence[LargerPart], unsure: bool) -> str:
    best = ranked[0]
    if best.slips or (contexts and not best.fits):
        return "perhaps"
    if any(one.loose for one in contexts) and len(ranked) > 1 and ranked[1].fits:
        return "check"
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
    """A country that did not exist in the year."""
    found: list[Finding] = []
    for one in contexts:
        if year is None:
            continue
        if one.former is not None and not covers(one.former.first, one.former.last, year):
            message = f"{one.former.name} existed {one.former.first}-{one.former.last}; the picture is of {year}."
            found.append(_finding("place.country-then", message, one.former.source))
        since = SINCE.get(one.country)
        if since is not None and year < since[0] and one.country not in ENGLISH_ALWAYS:
            message = f"In {year} there was no {one.name} yet: {since[1]}."
            found.append(_finding("place.country-then", message, "political years, from memory"))
    return found


def _coined_later(best: Ranked, names: Sequence[str], year: int | None) -> list[Finding]:
    """An official renaming that came later than the picture; a name that people always used is none."""
    renamed = renamed_of(best.name, best.country)
    if renamed is None or year is None:
        return []
    for name, first, _last in renamed.names:
        told = any(fold_place(name) == fold_place(one) for one in names)
        ever = [row for row in renamed.names if fold_place(row[0]) == fold_place(name)]
        if told and name in COINED and all(row[1] and year < row[1] for row in ever):
            message = f"{best.name} was first called {name} in {first}; the picture is of {year}."
            return [_finding("place.name-then", message, "renamed cities, from memory")]
    return []


COINED = frozenset(
    "Leningrad Petrograd Stalingrad Volgograd Sverdlovsk Gorky Kuybyshev Kaliningrad Kalinin Stalinogród Stalino "
    "Karl-Marx-Stadt Ivano-Frankivsk Litzmannstadt Dnepropetrovsk Kitchener Harare Kinshasa".split()
) | {"Thunder Bay", "Ho Chi Minh City"}
"""Names coined by an authority on a day; the others were always used by somebody (Tallinn and Reval, Lviv and Lwów)."""


def _finding(rule: str, message: str, source: str) -> Finding:
    return Finding(rule=rule, severity=Severity.NOTE, message=message, source=source)
