"""The place whose name stands within told words, as it is or inflected: `the pub at Waihola`, `Strand von Hapsal`.

Sought only where no place bears the whole of the words. What stands beside the name counts as told before the place,
and the reading always asks.
"""

import math
import sqlite3
from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.places.inflections import uninflected
from boxlore.core.places.reading import PlaceReading
from boxlore.core.places.streets import is_street
from boxlore.core.places.taking_apart import Parts
from boxlore.core.places.within_words import Within, is_joined, names_within, pieces_of
from boxlore.gazetteer.answering import Told, area_answer, place_answer, told_beside
from boxlore.gazetteer.guessing import inflected, with_forms_at_home
from boxlore.gazetteer.larger_parts import (
    LargerPart,
    countries_of,
    features_of,
    features_without_kind,
    is_kind_of_area,
)
from boxlore.gazetteer.matching import (
    LARGE_NAMESAKE,
    Family,
    ends_as_kind,
    exact,
    is_generic,
    is_ship,
    is_somebodys,
    named,
    without_kind,
)
from boxlore.gazetteer.town_or_region import KNOWN, likeliest_feature


def named_within(
    db: sqlite3.Connection, told_words: Parts, parts: Sequence[str], may_be: Sequence[int], told: Told, family: Family
) -> PlaceReading | None:
    """The place whose name stands within the words of a part, as it is or inflected: always with a question."""
    if len(may_be) > 1 and _is_form_at_home(db, parts[may_be[0]], told, family):
        return None
    runs = [(at, run) for at in may_be for run in names_within(parts[at])]
    wholes = [(at, Within("", parts[at], "")) for at in may_be]
    for at, run in (*wholes, *runs):
        in_forms = [pair for pair in uninflected(run.name).items() if not _is_town(db, pair[0])]
        forms = [features_of(run.name), *(_of_form(form, lands, family) for form, lands in in_forms)]
        features = next(filter(None, [forms[0], features_without_kind(run.name), *forms[1:]]), [])
        if (feature := likeliest_feature(features, told.contexts, family)) is not None:
            beside = _beside_run(told, told_words, parts[:at], run)
            read = area_answer(db, replace(beside, contexts=[*told.contexts, feature]))
            is_larger_unknown = any(right > at for right in may_be)
            return replace(read, kind="check") if is_larger_unknown else read
    pieces = [(at, piece) for at, run in runs if not ends_as_kind(run.name) for piece in pieces_of(run)]
    return _one_of(db, runs, told_words, parts, told, family) or _one_of(db, pieces, told_words, parts, told, family)


def _of_form(form: str, lands: frozenset[str], family: Family) -> list[LargerPart]:
    """Those of a name that was told in a form of a language of these lands: in the family's own countries, if these are
    known (`Hangossa` is not on Hankø), and told where the language is spoken, or by a family from there.
    """
    return [
        part
        for part in features_of(form.title())
        if lands & (countries_of(part) | family.home) and (not family.home or countries_of(part) & family.home)
    ]


def _is_form_at_home(db: sqlite3.Connection, part: str, told: Told, family: Family) -> bool:
    """Whether a part is a form of the name of a town at home: that is meant before what a part before it names."""
    places = inflected(db, [part], told.contexts, told.year, family)
    return any(place.country in family.home and place.fits for place in places)


def _is_town(db: sqlite3.Connection, name: str) -> bool:
    """Whether a town that is known better than a mountain or a lake bears the name."""
    return any(town.population >= KNOWN for town in exact(db, name))


SHORTEST_FIRST = 4
"""Letters of a town's name that a longer name may begin or end with."""


def named_in_part(
    db: sqlite3.Connection, told_words: Parts, parts: Sequence[str], may_be: Sequence[int], told: Told, family: Family
) -> PlaceReading | None:
    """The place that a part of a name is called, where none is called the whole: `Strand von Hapsal`."""
    joined = [at for at in may_be if is_joined(parts[at])]
    pieces = [(at, piece) for at in joined for piece in pieces_of(Within("", parts[at], ""))]
    named_parts = [at for at in may_be if ends_as_kind(parts[at]) and not parts[at].islower()]
    houses = [(at, Within(parts[at], without_kind(parts[at]), "")) for at in named_parts]

    def best_score(piece: tuple[int, Within]) -> float:
        places = named(db, [piece[1].name], told.contexts, told.year, family)
        return places[0].score if places else 0.0

    pieces.sort(key=best_score, reverse=True)
    read = _one_of(db, pieces, told_words, parts, told, family)
    if read is not None:
        return read
    houses.sort(key=best_score, reverse=True)
    read = _one_of(db, houses, told_words, parts, told, family, is_large_abroad=True)
    if read is not None or not (family.home or told.contexts):
        return read
    first = [(at, run) for at in may_be for run in _words_at_an_end(parts[at])]
    for at, run in first:
        feature = likeliest_feature(features_of(run.name), told.contexts, family)
        if feature is not None and countries_of(feature) & family.home:
            beside = _beside_run(told, told_words, parts[:at], run)
            return area_answer(db, replace(beside, contexts=[*told.contexts, feature]))
    read = _one_of(db, first, told_words, parts, told, family, is_large_abroad=True)
    is_theirs = read is not None and read.best is not None and family.is_own(read.best.country_code)
    return read if is_theirs or told.contexts else None


def _words_at_an_end(part: str) -> list[Within]:
    """The names that a longer one begins with, the longest first, and those that it ends with: `Mosgiel` of `Mosgiel
    Woollen Mills`, `Lossiemouth` of `RAF Lossiemouth`. All of it is told before the place.
    """
    tokens = part.split()
    counts = range(len(tokens) - 1, 0, -1)
    names = [*(" ".join(tokens[:count]) for count in counts), *(" ".join(tokens[-count:]) for count in counts)]
    names = [name for name in names if len(name) >= SHORTEST_FIRST and name[0].isupper()]
    told = [name for name in names if " " in name or not (is_street(f"a {name}") or ends_as_kind(f"a {name}"))]
    return [Within(part, name, "") for name in told]


def _one_of(
    db: sqlite3.Connection,
    runs: Sequence[tuple[int, Within]],
    told_words: Parts,
    parts: Sequence[str],
    told: Told,
    family: Family,
    *,
    is_large_abroad: bool = False,
) -> PlaceReading | None:
    """The first of these names, each within the part of its number, that is one of a place; None if none is.

    With `is_large_abroad` a place outside the family's own countries counts only if it is large and these countries are
    not in the settings, or a larger part is told: `Trentham Camp` is in no village abroad.
    """
    for find in (named, inflected):
        for at, run in runs:
            names = [] if is_generic(run.name) or is_ship(run.name) or is_somebodys(run.name) else [run.name]
            places = find(db, names, told.contexts, told.year, family)
            if is_large_abroad and not told.contexts:
                least = math.inf if family.home else LARGE_NAMESAKE  # `Rose Cottage` is not in Roses
                places = [place for place in places if family.is_theirs(place) or place.population >= least]
            places = (
                with_forms_at_home(db, places, names, told.contexts, told.year, family) if find is named else places
            )
            if fitting := [place for place in places if place.fits]:
                return place_answer(db, fitting, _beside_run(told, told_words, parts[:at], run), names)
    return None


def _beside_run(told: Told, told_words: Parts, parts: Sequence[str], run: Within) -> Told:
    """What was told, with `parts` before the place and the words beside its name; never sure."""
    beside = told_beside(told, told_words, parts)
    words = "" if is_kind_of_area(run.words) else run.words  # `Sopron megye`: the county after its town
    return replace(beside, before=", ".join(part for part in (beside.before, words) if part), unsure=True)
