"""The gazetteer: opened, built on its first use, and asked what told words mean and how they go on.

The kinds of answer are explained in `core.places.reading`. A place is a match if its score leads that of the next by
more than LEAD.
"""

import math
import sqlite3
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.places.countries_since_table import ENGLISH_ALWAYS, SINCE
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.reading import Place, PlaceReading, distance_km
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
"""How far the best score must lead the next; LEAD_IN_USE for a place that bore the told name in that year."""
SMALL = 100_000
"""A town of fewer people is not meant where a country or a large area bears the same name."""
NEAR_KM = 60
"""How near a town told first must lie to the larger one told after it, to be the place meant."""
MOST_CHOICES = 5


def open_gazetteer(
    folder: Path | None = None, progress: BuildProgress | None = None, data: Path = DATA, extra: Path | None = None
) -> "Gazetteer":
    """Open the index in `folder` (default: the user's cache folder); build it if it is missing or damaged.

    `extra` is a keeper's own file of places (`gazetteer.own_data`), indexed together with the shipped data. Raises
    CouldNot when the index cannot be written.
    """
    path = index_path(folder or cache_folder(), data, extra)
    if not path.is_file():
        make_index(path, progress or _no_progress, data, extra)
    try:
        return Gazetteer(_connect(path))
    except sqlite3.DatabaseError:
        path.unlink(missing_ok=True)
        make_index(path, progress or _no_progress, data, extra)
        return Gazetteer(_connect(path))


def _no_progress(stage: str, done: int, total: int) -> None:
    """Default callback: does nothing."""


def _connect(path: Path) -> sqlite3.Connection:
    db = sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True, check_same_thread=False)
    db.execute("SELECT count(*) FROM area").fetchone()
    return db


class Gazetteer:
    """Answers questions about places from one index."""

    def __init__(self, db: sqlite3.Connection) -> None:
        self._db = db

    def read(self, text: str, *, year: int | None = None, used: frozenset[int] = frozenset()) -> PlaceReading:
        """What these words mean in that year. Never raises for any text.

        First the larger parts are taken off from the right. What is left is tried as a place from the right, since
        the left part may be a house or a street (`Back yard, Reval`). If none of it is a place, the smallest larger
        part is the answer. `used` are the ids of places that this collection uses already.
        """
        told_words = take_apart(text)
        if not told_words.parts:
            return PlaceReading(text, "kept")
        parts, contexts = self._contexts(list(told_words.parts), year)
        if not parts:
            return self._area(text, contexts, year)
        for at in range(len(parts) - 1, -1, -1):
            names = [parts[at], *(told_words.names if at == 0 or len(parts) == 1 else ())]
            if is_generic(parts[at]):
                continue
            ranked = candidates(self._db, names, contexts, year, used)
            if ranked:
                at, ranked = self._nearby(parts, at, ranked, contexts, year)
                names = names if parts[at] in names else [parts[at]]
                before = ", ".join([part for part in (told_words.sublocation, *parts[:at]) if part])
                unsure = told_words.unsure or self._larger_before(parts[:at], ranked[0])
                return self._answer(text, ranked, contexts, year, before, told_words.near_km, unsure, names)
        town = self._town(contexts, year)
        if town:
            before = ", ".join([part for part in (told_words.sublocation, *parts) if part])
            return self._answer(
                text, town, contexts[:-1], year, before, told_words.near_km, told_words.unsure, [contexts[-1].words]
            )
        if contexts:
            reading = self._area(text, contexts, year)
            before = ", ".join([part for part in (told_words.sublocation, *parts) if part])
            return replace(reading, choices=tuple(replace(choice, sublocation=before) for choice in reading.choices))
        return PlaceReading(text, "kept")

    def complete(self, prefix: str, limit: int = 8) -> tuple[str, ...]:
        """Main names that begin with `prefix`, each with its country; the largest place first."""
        start = fold_place(prefix)
        if len(start) < 2:
            return ()
        query = """
            SELECT p.name, p.country FROM name n JOIN place p ON p.id = n.place
            WHERE n.folded >= ? AND n.folded < ? AND n.main = 1 ORDER BY p.population DESC LIMIT ?"""
        rows = self._db.execute(query, (start, start + "\U0010ffff", limit))
        return tuple(f"{name}, {COUNTRY_NAMES.get(country, country)}" for name, country in rows)

    def country_at(self, lat: float, lon: float) -> str:
        """ISO 3166-1 code of the country of the town nearest to a point; empty if none is within about 200 km."""
        query = """SELECT country, lat, lon FROM place
            WHERE lat BETWEEN ?1 - 2 AND ?1 + 2 AND lon BETWEEN ?2 - ?3 AND ?2 + ?3"""
        wide = min(180.0, 2 / max(0.02, math.cos(math.radians(lat))))
        rows = self._db.execute(query, (lat, lon, wide)).fetchall()
        near = [(distance_km((lat, lon), (row[1], row[2])), str(row[0])) for row in rows]
        return min(near)[1] if near else ""

    def _contexts(self, parts: list[str], year: int | None) -> tuple[list[str], list[LargerPart]]:
        """Take the larger parts off from the right. Returns the parts left, and the larger parts, largest first.

        Taking ends at a part that means nothing larger, that contradicts the larger parts taken, or that is more
        likely the place itself. A single part without commas may end with a larger part (`Reval Estonia`).
        """
        contexts: list[LargerPart] = []
        while parts:
            context = context_of(self._db, parts[-1], year)
            if context is None or (len(parts) == 1 and not contexts and self._means_town(parts[-1], context)):
                break
            if len(parts) == 1 and contexts and self._names_a_place(parts[-1], contexts):
                break
            if contexts and context.countries and not any(context.countries & taken.countries for taken in contexts):
                break
            contexts.append(context)
            parts.pop()
        if len(parts) == 1 and not contexts:
            parts, contexts = self._last_words(parts[0], year)
        return parts, contexts

    def _last_words(self, words: str, year: int | None) -> tuple[list[str], list[LargerPart]]:
        """Words without commas, parted before the last one to three words if these are a larger part."""
        tokens = words.split()
        if exact(self._db, words):
            return [words], []
        for count in range(min(3, len(tokens) - 1), 0, -1):
            context = context_of(self._db, " ".join(tokens[-count:]), year)
            if context is not None:
                return [" ".join(tokens[:-count])], [context]
        return [words], []

    def _means_town(self, words: str, context: LargerPart) -> bool:
        """Whether the words mean a town rather than the larger part of the same name.

        A country or former country always wins over a town of its name. A region, a first-level area of this name,
        and an area that the words only abbreviate or begin (Nelson, Nelson Region) win over a town of fewer than
        SMALL people. A second-level area of this name does not, nor does a county that is no area of today.
        """
        towns = [] if context.country or context.former else exact(self._db, words)
        if not towns:
            return False
        if context.box:
            return towns[0].population >= SMALL
        by_name = self._db.execute("SELECT code FROM area_name WHERE folded = ?", (fold_place(words),)).fetchall()
        large_area = any(code.count(".") == 1 for (code,) in by_name) or (context.areas and not by_name)
        is_main_name = fold_place(towns[0].name) == fold_place(words)
        return not large_area or (is_main_name and towns[0].population >= SMALL)

    def _town(self, contexts: Sequence[LargerPart], year: int | None) -> list[Ranked]:
        """The town that the smallest larger part also names (`Tallinn` in `Kadriorg, Tallinn`).

        Only for a second-level area, which is about as large as a town.
        """
        if not contexts or not contexts[-1].areas or any(code.count(".") < 2 for code in contexts[-1].areas):
            return []
        towns = exact(self._db, contexts[-1].words, contexts[:-1], year)
        return towns if towns and towns[0].country in contexts[-1].countries else []

    def _nearby(
        self, parts: Sequence[str], at: int, ranked: list[Ranked], contexts: Sequence[LargerPart], year: int | None
    ) -> tuple[int, list[Ranked]]:
        """The place meant, if a smaller town was told before a larger one and lies near it (`Trakai, Wilno`).

        Returns the index of the part that names the place, and the candidates for it.
        """
        if at == 0 or is_generic(parts[at - 1]):
            return at, ranked
        best = ranked[0]
        near = [town for town in exact(self._db, parts[at - 1], contexts, year) if kilometres(town, best) <= NEAR_KM]
        return (at - 1, near) if near else (at, ranked)

    def _larger_before(self, parts: Sequence[str], best: Ranked) -> bool:
        """Whether one of these parts names a town over ten times as large as `best` (`Chemnitz, Sachsen`).

        `best` is then probably not meant: it is a small place that bears the name of the area told.
        """
        for part in parts:
            towns = exact(self._db, part)
            if towns and towns[0].population > 10 * best.population:
                return True
        return False

    def _names_a_place(self, words: str, contexts: Sequence[LargerPart]) -> bool:
        """Whether the words are also the name of a place inside all these larger parts (`Otago` no, `Tartu` yes)."""
        towns = candidates(self._db, [words], contexts, None, frozenset())
        return bool(towns) and not towns[0].slips and towns[0].fits

    def _area(self, text: str, contexts: Sequence[LargerPart], year: int | None) -> PlaceReading:
        """The reading for words that name larger parts alone: the smallest of them."""
        smallest = contexts[-1]
        countries = {code for context in contexts for code in context.countries if context.countries} or {
            code[:2] for code in smallest.areas
        }
        for context in contexts:
            countries &= context.countries or {code[:2] for code in context.areas}
        country = next(iter(countries)) if len(countries) == 1 else ""
        area = next(iter(smallest.areas)) if len(smallest.areas) == 1 else ""
        place = Place(
            name=area_name(self._db, area) or smallest.name,
            admin1=area_name(self._db, area) if area.count(".") == 1 else "",
            admin1_code=area.split(".")[1] if area else "",
            country=COUNTRY_NAMES.get(country, ""),
            country_code=country,
            country_then=smallest.former.name if smallest.former else governed_by(country, year),
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
        """The reading for ranked candidates. `before` is what was told before the place, such as a house or street."""
        kind = _kind(ranked, contexts, unsure)
        shown = ranked[:1] if kind == "match" else ranked[:MOST_CHOICES]
        choices = tuple(place_of(self._db, candidate, year, before, near_km) for candidate in shown)
        former = next((context.former for context in contexts if context.former), None)
        if former is not None:
            choices = tuple(replace(choice, country_then=former.name) for choice in choices)
        findings = [*_anachronisms(contexts, year), *_coined_later(ranked[0], names[:1], year)]
        return PlaceReading(text, kind, choices, tuple(findings))


def _kind(ranked: Sequence[Ranked], contexts: Sequence[LargerPart], unsure: bool) -> str:
    """The kind of the answer (see `core.places.reading`), by how well the best fits and how far it leads."""
    best = ranked[0]
    if best.slips or (contexts and not best.fits):
        return "perhaps"
    if any(context.area_unknown for context in contexts) and len(ranked) > 1 and ranked[1].fits:
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


def _coined_later(best: Ranked, names: Sequence[str], year: int | None) -> list[Finding]:
    """A finding if the told name was given to the place by an authority only after the year of the picture."""
    renamed = renamed_of(best.name, best.country)
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
