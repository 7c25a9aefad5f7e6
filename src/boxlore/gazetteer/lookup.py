"""The gazetteer: opened, built on its first use, and asked what told words mean and how they go on.

The kinds of answer are explained in `core.places.reading`; `town_or_region` takes off the larger parts that were told,
`matching` ranks the places of a name, `named_within` and `guessing` find those that do not bear the whole of it,
`answering` makes the reading.
"""

import math
import shutil
import sqlite3
import weakref
from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import lru_cache
from pathlib import Path
from tempfile import mkdtemp

from boxlore.core.errors import CouldNot, in_words
from boxlore.core.places.alternatives import either_of, without_denied
from boxlore.core.places.between import between_of
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.inflections import uninflected
from boxlore.core.places.nearness import near_of
from boxlore.core.places.reading import PlaceReading, distance_km
from boxlore.core.places.streets import is_street
from boxlore.core.places.taking_apart import (
    MOST_LETTERS,
    Parts,
    at_river,
    fold_place,
    is_district,
    part_of_town,
    parted_at_in,
    spaced,
    take_apart,
    with_directions,
    with_epithets,
    with_qualifier,
    without_district,
    without_way,
    written_out,
)
from boxlore.gazetteer.also_meant import with_also_meant
from boxlore.gazetteer.answering import MOST_CHOICES, Told, area_answer, place_answer, told_before, told_beside
from boxlore.gazetteer.between_two import reading_between, reading_either
from boxlore.gazetteer.guessing import guessed, inflected, large_names, with_forms_at_home
from boxlore.gazetteer.index import DATA, ELSEWHERE, BuildProgress, cache_folder, index_path, make_index
from boxlore.gazetteer.larger_parts import LargerPart, countries_of, features_like, features_of
from boxlore.gazetteer.matching import (
    Family,
    Ranked,
    ToldPlaces,
    also_told,
    city_among,
    exact,
    exactly_named,
    family_of,
    has_apostrophe,
    is_description,
    is_generic,
    is_ship,
    is_somebodys,
    kilometres,
    may_be_a_house,
    named,
)
from boxlore.gazetteer.named_within import named_in_part, named_within
from boxlore.gazetteer.order_of_parts import description_first, is_close, smaller_first
from boxlore.gazetteer.town_or_region import SMALL, is_largest, likeliest_feature, may_name_town, take_larger_parts

NEAR_KM = 60
"""How near a town told first must lie to the larger one told after it, to be the place meant."""
READINGS_KEPT = 4096
"""How many readings are kept, so that words met again are not looked up again."""


def open_gazetteer(
    folder: Path | None = None, progress: BuildProgress | None = None, data: Path = DATA, extra: Path | None = None
) -> "Gazetteer":
    """Open the index in `folder` (default: the user's cache folder); build it if it is missing or damaged.

    `extra` is a keeper's own file of places (`gazetteer.bigger_file`), indexed together with the shipped data. Raises
    CouldNot when the index cannot be read and not be written.
    """
    path = index_path(folder or cache_folder(), data, extra)
    try:
        if not path.is_file():
            make_index(path, progress or _no_progress, data, extra)
        try:
            return Gazetteer(_connect(path))
        except sqlite3.DatabaseError:
            path.unlink(missing_ok=True)
            make_index(path, progress or _no_progress, data, extra)
            return Gazetteer(_connect(path))
    except (OSError, sqlite3.DatabaseError) as error:
        raise CouldNot(
            f"The index of places could not be read in {path.parent}: {in_words(error)}.", ELSEWHERE
        ) from error


def open_anyway(
    said: Callable[[str], None], progress: BuildProgress | None = None, data: Path = DATA, extra: Path | None = None
) -> "Gazetteer":
    """As `open_gazetteer`; where the user's cache folder takes nothing, from an index made for this run alone.

    `said` is called with the sentence about it. Raises CouldNot where it can be made nowhere.
    """
    try:
        return open_gazetteer(None, progress, data, extra)
    except CouldNot as error:
        refused = error
    try:
        folder = mkdtemp(prefix="boxlore-")
    except OSError:
        raise refused from None
    try:
        gazetteer = open_gazetteer(Path(folder), progress, data, extra)
    except CouldNot:
        shutil.rmtree(folder, ignore_errors=True)
        raise refused from None
    weakref.finalize(gazetteer, shutil.rmtree, folder, ignore_errors=True)  # at the end of the program at the latest
    said(f"{refused} It was made for this time only.")
    return gazetteer


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
        self._read = lru_cache(READINGS_KEPT)(self._read_anew)
        self._family = lru_cache(4)(lambda used, home: family_of(db, used, home))
        self._large = lru_cache(4)(lambda countries: large_names(db, countries))

    def read(
        self,
        text: str,
        *,
        year: int | None = None,
        used: ToldPlaces = frozenset(),
        home: frozenset[str] = frozenset(),
    ) -> PlaceReading:
        """What these words mean in that year. Never raises for any text.

        First the larger parts are taken off from the right. What is left is tried as a place from the right, since
        the left part may be a house or a street (`Back yard, Reval`). If none of it is a place, the smallest larger
        part is the answer. `used` are the places that this collection uses already, `home` the countries of its
        family (ISO 3166-1).
        """
        return self._read(text, year, used, home)

    def _read_anew(self, text: str, year: int | None, used: ToldPlaces, home: frozenset[str]) -> PlaceReading:
        """The reading of the words as they stand; where it finds too little, that of them written out or parted."""
        if len(text) > MOST_LETTERS:
            return PlaceReading(text, "kept")
        if (spelled := with_directions(text)) != text:
            again = self._read_anew(spelled, year, used, home)
            return replace(again, text=text, kind="check" if again.kind == "match" else again.kind)
        read = self._read_words(text, year, used, home)
        beside = read.best is not None and bool(read.best.sublocation) and not read.best.near
        beside = beside or (read.kind == "check" and read.best is not None and bool(read.best.box))
        if (read.kind in ("kept", "perhaps") or beside) and not is_ship(text):
            joined = None if self._is_form(text) else part_of_town(text)
            qualified = [
                way for way in with_qualifier(text) if read.kind != "match" and exact(self._db, way.partition(",")[0])
            ]
            ways = (*qualified, *written_out(text), *([", ".join(joined)] if joined else []))
            for words in ways:
                again = self._read_words(words, year, used, home)
                if _is_better(again, read):
                    return replace(again, text=text, kind="check" if again.kind == "match" else again.kind)
            if joined is not None and read.kind in ("kept", "perhaps"):
                return self._town_of(joined, read, year, used, home)
        return read

    def _is_form(self, text: str) -> bool:
        """Whether the words are a form of one whole name (`Viru-Nigulas`)."""
        return any(exact(self._db, form) or features_of(form.title()) for form in uninflected(text.partition(",")[0]))

    def _town_of(
        self, joined: tuple[str, str], read: PlaceReading, year: int | None, used: ToldPlaces, home: frozenset[str]
    ) -> PlaceReading:
        """The town of a part that the gazetteer does not know, with the part as it was told; else the reading."""
        part, town = joined
        whole = self._read_words(town, year, used, home)
        if whole.kind not in ("match", "check", "choices"):
            return read
        choices = tuple(replace(place, sublocation=part) for place in whole.choices)
        return replace(whole, text=read.text, kind="check" if whole.kind == "match" else whole.kind, choices=choices)

    def _read_words(self, text: str, year: int | None, used: ToldPlaces, home: frozenset[str]) -> PlaceReading:
        of_two = self._of_pair(text, year, used, home)
        if of_two is not None:
            return of_two
        told_words = self._taken_apart(self._without_way(without_denied(text)))
        if not told_words.parts:
            return PlaceReading(text, "kept")
        family = self._family(used, home)
        told_words = replace(told_words, parts=description_first(told_words.parts))
        parts, contexts = take_larger_parts(self._db, told_words.parts, year, family)
        if parts and (inside := parted_at_in(parts[-1])) is not None and not exact(self._db, parts[-1]):
            around = [context.words for context in reversed(contexts)]
            inside = self._without_epithet(inside, contexts)
            told_words = replace(told_words, parts=(*parts[:-1], *inside, *around))
            parts, contexts = take_larger_parts(self._db, told_words.parts, year, family)
            told_words = replace(told_words, unsure=told_words.unsure or not contexts)  # `at Eden Park`: of many
        if not told_words.names:
            parts = smaller_first(self._db, parts, contexts)
        read = self._as_told(text, told_words, parts, contexts, year, family)
        return with_also_meant(self._db, read, told_words, year, family, self._large)

    def _as_told(
        self,
        text: str,
        told_words: Parts,
        parts: Sequence[str],
        contexts: Sequence[LargerPart],
        year: int | None,
        family: Family,
    ) -> PlaceReading:
        """The reading of the parts left and the larger parts."""
        told = Told(
            text=text, contexts=contexts, year=year, near_km=told_words.near_km, before=told_before(told_words, parts),
            unsure=told_words.unsure or any(part.doubtful for part in contexts), family=family,
        )  # fmt: skip
        if parts or told.near_km:
            reading = self._among(told_words, parts, told, family) or self._town(told)
            if reading is not None:
                return reading
        return area_answer(self._db, told) if contexts else PlaceReading(text, "kept")

    def _of_pair(self, text: str, year: int | None, used: ToldPlaces, home: frozenset[str]) -> PlaceReading | None:
        """The reading of words that tell of two places: between them, or one of them; None where they do not."""

        def read(words: str, near: frozenset[int]) -> PlaceReading:
            return self._read(words, year, also_told(used, near), home)

        for pair, reading_of in ((between_of(text), reading_between), (either_of(text), reading_either)):
            if pair is not None and (reading := reading_of(pair, text, read)) is not None:
                return reading
        return None

    def _taken_apart(self, text: str) -> Parts:
        """The words taken apart; nearness in the place's own name stays there (`Bernau bei Berlin`)."""
        told_words = take_apart(text)
        if told_words.near_km:
            undivided = take_apart(text, is_near=False)
            if undivided.parts and exact(self._db, undivided.parts[0]):
                return undivided
        return told_words

    def _without_way(self, text: str) -> str:
        """The words without those that say which way one went, where they are no part of a name (`Up Holland`)."""
        text = spaced(text)
        by_river = at_river(text)
        text = by_river if by_river != text and any(exact(self._db, part) for part in by_river.split(",")) else text
        text = next((form for form in with_epithets(text) if exact(self._db, form.partition(",")[0])), text)
        words = without_way(text)
        return text if words == text or near_of(text) or exact(self._db, text.split(",")[0]) else words

    def _without_epithet(self, inside: tuple[str, ...], contexts: Sequence[LargerPart]) -> tuple[str, ...]:
        """The town alone where the words behind its preposition are none around it: `Köln am Rhein`, not in Canada."""
        if len(inside) < 2 or not inside[0][:1].isupper():
            return inside
        towns = exact(self._db, inside[0], contexts)
        around = exact(self._db, inside[1], contexts) if towns else []
        is_near = any(kilometres(towns[0], place) <= NEAR_KM for place in around)
        return inside if not towns or is_near or towns[0].population < SMALL else inside[:1]

    def _among(self, told_words: Parts, parts: Sequence[str], told: Told, family: Family) -> PlaceReading | None:
        """The place that the parts left name: exactly if any of them does, else at a guess; None if none does."""
        may_be = [at for at in reversed(range(len(parts))) if not (is_generic(parts[at]) or is_ship(parts[at]))]
        if not may_be and len(parts) == 1 and self._is_name_at_home(parts[0], family):
            may_be = [0]
        names = {at: _names(told_words, parts, at) for at in may_be}
        ranked = {at: named(self._db, names[at], told.contexts, told.year, family) for at in names}
        for at in filter(lambda at: is_description(parts[at]), names):
            ranked[at] = [place for place in ranked[at] if fold_place(place.name) == fold_place(parts[at])]
        for at in filter(lambda at: is_somebodys(parts[at]), names):
            ranked[at] = [place for place in ranked[at] if has_apostrophe(place)]
        if len(parts) > 1:
            for at, places in ranked.items():
                ranked[at] = with_forms_at_home(self._db, places, names[at], told.contexts, told.year, family)
        exactly = {at: places for at, places in ranked.items() if places}
        if not exactly:
            may_be = [at for at in may_be if not is_street(parts[at])] or may_be
            names = {at: names[at] for at in may_be}
            within = named_within(self._db, told_words, parts, may_be, told, family)
            if within is not None:
                return within
            for at in (at for at in names if not (is_description(parts[at]) or is_somebodys(parts[at]))):
                similar = guessed(self._db, names[at], told.contexts, told.year, family)
                is_abroad = bool(family.home) and not any(family.is_own(place.country) for place in similar)
                if similar and is_abroad and not told.contexts:
                    part = named_in_part(self._db, told_words, parts, may_be, told, family)
                    if part is not None:
                        return part
                    similar = [] if parts[at].islower() and all(place.slips for place in similar) else similar
                if similar and at and (inside := self._inside(told_words, parts[:at], similar[0], told, family)):
                    return inside
                if similar:
                    told = told_beside(told, told_words, parts[:at])
                    return place_answer(self._db, similar, told, names[at])
            for at in names:
                like = likeliest_feature(features_like(parts[at]), told.contexts, family)
                is_abroad = like is not None and bool(family.home) and not countries_of(like) & family.home
                if like is not None and not is_abroad:  # `Lakes District` is not in England
                    told = told_beside(told, told_words, parts[:at])
                    return area_answer(self._db, replace(told, contexts=[*told.contexts, like]))
            return named_in_part(self._db, told_words, parts, may_be, told, family)
        at = max(exactly)
        # what stands to the right of the place is a larger part that we do not know: it may lie elsewhere
        unknown_larger = any(right > at for right in names)
        bare = parts[at].startswith("the ") and not exact(self._db, parts[at])
        unsure = told.unsure or unknown_larger or bare or is_district(parts[at])
        best = exactly[at][0]
        unsure = unsure or (not told.contexts and best.population < SMALL and may_be_a_house(parts[at]))
        smaller = replace(told, unsure=unsure)
        told = told_beside(smaller, told_words, parts[:at])
        if told.near_km and (itself := self._itself(told_words.sublocation, exactly[at], smaller, family)) is not None:
            return itself
        if at - 1 in exactly and (city := city_among(self._db, exactly[at - 1], exactly[at])) is not None:
            return place_answer(self._db, [city], told, names[at])
        if at - 1 in exactly:
            before = told_beside(smaller, told_words, parts[: at - 1])
            return self._of_two(exactly[at - 1], exactly[at], (before, told), (names[at - 1], names[at]))
        forms = inflected(self._db, names[at - 1], told.contexts, told.year, family) if at - 1 in names else []
        if parts_of := [place for place in forms if is_close(place, exactly[at][0])]:
            before = told_beside(replace(smaller, unsure=True), told_words, parts[: at - 1])
            return place_answer(self._db, parts_of, before, names[at - 1])
        return place_answer(self._db, exactly[at], told, names[at])

    def _is_name_at_home(self, part: str, family: Family) -> bool:
        """Whether words that may only describe a place are the name of one at home (`Sea Point`)."""
        rows = exactly_named(self._db, [fold_place(part)]) if part.istitle() and " " in part else {}
        return any(row[2] in family.home for row in rows.values())

    def _inside(
        self, told_words: Parts, parts: Sequence[str], town: Ranked, told: Told, family: Family
    ) -> PlaceReading | None:
        """The place that the parts before a town name, whose own name was told in another form (`Nõmmel, Tallinnas`);
        None where they name none in it."""
        read = self._among(told_words, [*parts, town.name], told, family)
        if read is None or read.best is None or read.best.sublocation == told_before(told_words, parts):
            return None
        is_there = read.best.point and distance_km(read.best.point, (town.lat, town.lon)) <= NEAR_KM
        return replace(read, kind="check" if read.kind == "match" else read.kind) if is_there else None

    def _itself(self, before: str, anchors: list[Ranked], told: Told, family: Family) -> PlaceReading | None:
        """The place that stands before “near” where the gazetteer has it there (`Portobello, near Dunedin`)."""
        *around, name = (part.strip() for part in before.split(","))
        if not name or is_generic(name):
            return None
        places = named(self._db, [name], told.contexts, told.year, family)
        there = [place for place in places if any(0 < kilometres(place, anchor) <= NEAR_KM for anchor in anchors)]
        told = replace(told, before=", ".join(around), near_km=0.0)
        return place_answer(self._db, there, told, [name]) if there else None

    def _of_two(
        self,
        smaller: list[Ranked],
        larger: list[Ranked],
        told: tuple[Told, Told],
        names: tuple[Sequence[str], Sequence[str]],
    ) -> PlaceReading:
        """The reading where two parts beside each other are names of places (`Trakai, Wilno`).

        The smaller, told first, is meant if it lies near the larger. Else one of the two is no town but a house, a
        part of a town, or a region that we do not know, and the reading asks: the large town comes first if it is
        over ten times as large, else the one told first.
        """
        near = [place for place in smaller if kilometres(place, larger[0]) <= NEAR_KM]
        if near:
            return place_answer(self._db, near, told[0], names[0])
        beside = [place for place in smaller if any(kilometres(place, town) <= NEAR_KM for town in larger)]
        if beside:
            return place_answer(self._db, beside, replace(told[0], unsure=True), names[0])
        first, second = (
            place_answer(self._db, places, replace(of, unsure=True), words)
            for places, of, words in zip((smaller, larger), told, names, strict=True)
        )
        if larger[0].population >= max(SMALL, 10 * smaller[0].population):
            first, second = second, first
        choices = (*first.choices[: MOST_CHOICES - 2], *second.choices[:2])
        return replace(first, kind="choices", choices=choices)

    def _town(self, told: Told) -> PlaceReading | None:
        """The town that the smallest larger part also names (`Tallinn` in `Kadriorg, Tallinn`, `near Tartu`)."""
        if not told.contexts:
            return None
        smallest, around = told.contexts[-1], told.contexts[:-1]
        if not (told.near_km or may_name_town(smallest)):
            return self._city(told)
        inside = told.contexts if smallest.box else around
        towns = exact(self._db, smallest.words, inside, told.year)
        if not towns or towns[0].country not in smallest.countries:
            return None
        unsure = told.unsure or bool(smallest.box)
        return place_answer(self._db, towns, replace(told, contexts=around, unsure=unsure), [smallest.words])

    def _city(self, told: Told) -> PlaceReading | None:
        """The city that a larger area is called after, where a street in it is told (`Nevsky, St Petersburg`)."""
        smallest = told.contexts[-1]
        cities = exact(self._db, smallest.words, told.contexts, told.year) if smallest.areas and told.before else []
        if not cities or not cities[0].fits:
            return None
        if cities[0].population < SMALL and not is_largest(self._db, cities[0]):
            return None
        return place_answer(
            self._db, cities[:1], replace(told, contexts=told.contexts[:-1], unsure=True), [smallest.words]
        )

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

    def towns(self, least: int) -> list[tuple[float, float, int]]:
        """Latitude, longitude and people of every place with at least so many of them."""
        rows = self._db.execute("SELECT lat, lon, population FROM place WHERE population >= ? ORDER BY id", (least,))
        return [(float(lat), float(lon), int(people)) for lat, lon, people in rows]

    def country_at(self, lat: float, lon: float) -> str:
        """ISO 3166-1 code of the country of the town nearest to a point; empty if none is within about 200 km."""
        query = """SELECT country, lat, lon FROM place
            WHERE lat BETWEEN ?1 - 2 AND ?1 + 2 AND lon BETWEEN ?2 - ?3 AND ?2 + ?3"""
        wide = min(180.0, 2 / max(0.02, math.cos(math.radians(lat))))
        rows = self._db.execute(query, (lat, lon, wide)).fetchall()
        near = [(distance_km((lat, lon), (row[1], row[2])), str(row[0])) for row in rows]
        return min(near)[1] if near else ""


def _is_better(again: PlaceReading, read: PlaceReading) -> bool:
    """Whether the reading of other words finds more: a place at all, or the whole where the first left words beside."""
    if again.best is None or again.kind == "perhaps":
        return False
    return read.kind in ("kept", "perhaps") or not again.best.sublocation


def _names(told_words: Parts, parts: Sequence[str], at: int) -> list[str]:
    """The told names of one part: its words, without the word for a district, and other names of the same place."""
    others = told_words.names if at == 0 or len(parts) == 1 else ()
    bare = parts[at].removeprefix("the ")
    also = (bare,) if bare != parts[at] and bare[:1].isupper() else ()  # `the Bluff`
    return list(dict.fromkeys((without_district(parts[at]), parts[at], *also, *others)))
