"""Places that words may also mean, beside those that bear the name: of which it is a form, of longer names, of nature.

Each takes a reading, and gives it with more choices, or as it is.
"""

import sqlite3
from collections.abc import Callable, Sequence
from dataclasses import replace

from boxlore.core.places.inflections import uninflected
from boxlore.core.places.reading import PlaceReading
from boxlore.core.places.taking_apart import Parts, fold_place
from boxlore.gazetteer.answering import MOST_CHOICES, Told, area_answer, place_answer, told_before
from boxlore.gazetteer.guessing import FORMS_SHOWN, guessed, inflected, longer_names, may_be_guessed
from boxlore.gazetteer.larger_parts import countries_of, features_of
from boxlore.gazetteer.matching import LARGE_NAMESAKE, MUCH_LARGER, Family, Ranked, exact
from boxlore.gazetteer.town_or_region import SMALL, likeliest_feature

LARGE_FEATURE = 0.25
"""Degrees, north to south, of an island or a lake that is known far away (ours)."""


Spellings = Callable[[frozenset[str]], Sequence[str]]
"""The `guessing.large_names` of these countries, which are read once."""


def with_also_meant(
    db: sqlite3.Connection,
    read: PlaceReading,
    told_words: Parts,
    year: int | None,
    family: Family,
    large: Spellings,
) -> PlaceReading:
    """The reading with all that its words may also mean."""
    read = _or_a_form(db, read, told_words, year, family, large)
    for also in (_or_longer, _or_nature):
        read = also(db, read, told_words, year, family)
    return read


def _or_a_form(
    db: sqlite3.Connection,
    read: PlaceReading,
    told_words: Parts,
    year: int | None,
    family: Family,
    large: Spellings,
) -> PlaceReading:
    """The reading; where it lies abroad, with the places of the family's own countries, or told before, first of
    whose names the told one may be a form in a language that is spoken there (`Tartus`), unless they are much
    smaller.
    """
    if read.best is None or read.kind == "perhaps" or len(told_words.parts) != 1:
        return read
    name = told_words.parts[0]
    abroad = exact(db, name) if not family.is_own(read.best.country_code) else []
    forms = uninflected(name) if abroad else {}
    spoken = frozenset[str]().union(*forms.values())
    lands = {land for land in (*family.home, *family.shares) if land in spoken}
    own = [
        place
        for place in (inflected(db, [name], (), year, family) if lands else [])
        if place.country in lands and family.is_theirs(place) and place.population * MUCH_LARGER > abroad[0].population
    ]
    if not own and abroad and family.home and may_be_guessed(name, large(family.home)):
        own = _misspelled_at_home(db, name, abroad[0], year, family)
    if not own:
        return read
    before = told_before(told_words, ())
    told = Told(text=read.text, contexts=(), year=year, before=before, near_km=told_words.near_km, unsure=True)
    first = place_answer(db, own[:FORMS_SHOWN], told, [name]).choices
    return replace(read, kind="choices", choices=(*first, *read.choices)[:MOST_CHOICES])


def _misspelled_at_home(
    db: sqlite3.Connection, name: str, abroad: Ranked, year: int | None, family: Family
) -> list[Ranked]:
    """Towns of the family's own countries whose names differ by one letter, where they are MUCH_LARGER than the one
    abroad that bears the name (`Kimberly` is a village in Wisconsin)."""
    return [
        place
        for place in guessed(db, [name], (), year, family)
        if place.country in family.home and place.population > max(MUCH_LARGER * abroad.population, LARGE_NAMESAKE)
    ]


def _or_longer(
    db: sqlite3.Connection, read: PlaceReading, told_words: Parts, year: int | None, family: Family
) -> PlaceReading:
    """The reading; beside a place abroad, or a much smaller one, with the large towns and parts of cities of the
    settings' countries of whose names the told one is the first word (`Praga`, `Palmerston`).
    """
    best = read.best
    if best is None or read.kind == "perhaps" or len(told_words.parts) != 1 or told_words.near_km:
        return read
    name, is_own = told_words.parts[0], family.is_own(best.country_code)
    if read.kind == "match" and fold_place(best.name).startswith(f"{fold_place(name)} "):
        return _or_as_long(db, read, name, year, family)
    if is_own and read.kind == "match":
        return read
    bearing = exact(db, name)
    least = LARGE_NAMESAKE if is_own else SMALL
    longer = longer_names(db, name, family.home, least, year, family) if bearing else []
    if is_own:
        of_own = [
            place.population
            for place in bearing
            if place.country == best.country_code and fold_place(place.name) == fold_place(name)
        ]
        longer = [place for place in longer if place.population > MUCH_LARGER * max(of_own, default=0)]
    shown = {place.geonames for place in read.choices}
    longer = [place for place in longer if place.id not in shown]
    if not longer:
        return read
    told = Told(text=read.text, contexts=(), year=year, before=told_before(told_words, ()), unsure=True)
    also = place_answer(db, longer[:FORMS_SHOWN], told, [name]).choices
    choices = (read.choices[0], *also, *read.choices[1:])
    if read.kind == "area" and fold_place(also[0].name) == f"{fold_place(name)} city":  # `Salt Lake` is not the county
        choices = (also[0], read.choices[0], *also[1:], *read.choices[1:])
    return replace(read, kind="area" if read.kind == "area" else "choices", choices=choices[:MOST_CHOICES])


def _or_as_long(
    db: sqlite3.Connection, read: PlaceReading, name: str, year: int | None, family: Family
) -> PlaceReading:
    """The reading of a name told short; with the other places of its country whose names go on behind it too, the
    largest first (`Nykøbing`, on Falster and on Mors), but for the much smaller ones.
    """
    best = exact(db, name)[0]
    others = longer_names(db, name, frozenset({best.country}), max(best.population // MUCH_LARGER, 1), year, family)
    places = [best, *(place for place in others if place.id != best.id)]
    if len(places) == 1:
        return read
    places.sort(key=lambda place: -place.population)
    told = Told(text=read.text, contexts=(), year=year, unsure=True)
    shown = place_answer(db, places, told, [name]).choices
    return replace(read, kind="choices", choices=shown)


def _or_nature(
    db: sqlite3.Connection, read: PlaceReading, told_words: Parts, year: int | None, family: Family
) -> PlaceReading:
    """The reading; beside a town abroad, with the large island, lake or the like of its name that lies in another
    country (`Pemba`).
    """
    best = read.best
    is_town = best is not None and best.point is not None and read.kind != "perhaps"
    if best is None or not is_town or len(told_words.parts) != 1 or family.is_own(best.country_code):
        return read
    large = [part for part in features_of(told_words.parts[0]) if part.box[2] - part.box[0] >= LARGE_FEATURE]
    other = likeliest_feature([part for part in large if best.country_code not in countries_of(part)], (), family)
    if other is None:
        return read
    told = Told(text=read.text, contexts=[other], year=year)
    also = area_answer(db, told).choices[:1]
    return replace(read, kind="choices", choices=(best, *also, *read.choices[1:])[:MOST_CHOICES])
