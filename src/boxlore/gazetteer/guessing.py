"""Places whose names are not the told one: of a similar spelling, of a longer name, of a name that was told inflected.

Only where no place bears the name itself; a guess that contradicts any larger part is dropped.
"""

import sqlite3
from bisect import bisect_left
from collections.abc import Iterable, Sequence
from dataclasses import replace

from rapidfuzz import process
from rapidfuzz.distance import OSA

from boxlore.core.places.inflections import uninflected
from boxlore.core.places.taking_apart import directions_in, fold_place
from boxlore.gazetteer.larger_parts import LargerPart
from boxlore.gazetteer.matching import (
    LARGE_NAMESAKE,
    MUCH_LARGER,
    Family,
    Ranked,
    Row,
    best_first,
    exactly_named,
    heard,
    rank,
    without_passing,
)

AT_HOME_BONUS = 0.1
"""Added to the score of a place of an inflected name that lies where its language is spoken."""
LONGEST_OF_ONE_SLIP = 8
"""Letters of the longest name that may have one slip only: two of eight would make any name of it."""
BEHIND_A_FORM = 0.3
"""How far a misspelled name stands behind a form of another, in a language of the family's own countries."""
COMPOUND_BONUS, SHORTEST_OF_COMPOUND = 0.15, 4
"""A name that is a whole part of a joined one is no slip: it comes before misspelled ones."""
SHORTENED = INFLECTED = 1
"""A name told short, or as a form of itself, counts as one misspelled letter."""


def guessed(
    db: sqlite3.Connection, names: Sequence[str], contexts: Sequence[LargerPart], year: int | None, family: Family
) -> list[Ranked]:
    """Places of names similar to these that lie in every larger part told, best first."""
    folded = [fold_place(name) for name in names]
    rows, slips = _guessed(db, folded)
    forms = inflected(db, names, contexts, year, family)
    told_inflected = {place.id for place in forms}
    ranked = [
        rank(row, slips[ident], folded, contexts, year, family)
        for ident, row in heard(rows, family).items()
        if ident not in told_inflected
    ]
    if forms and any(not family.home.isdisjoint(lands) for name in names for lands in uninflected(name).values()):
        ranked = [replace(place, score=place.score - BEHIND_A_FORM) for place in ranked if family.is_own(place.country)]
    compounds = _compounds(db, folded, contexts, year, family)
    similar = without_passing([candidate for candidate in (*compounds, *ranked, *forms) if candidate.fits], family)
    if similar:
        return similar
    rows = _shortened(db, folded, alone=not contexts)
    ranked = [rank(row, SHORTENED, folded, contexts, year, family) for row in heard(rows, family).values()]
    return without_passing([candidate for candidate in ranked if candidate.fits], family)


def large_names(db: sqlite3.Connection, countries: frozenset[str]) -> list[str]:
    """The folded names of all places of more than LARGE_NAMESAKE people in these countries, sorted; read through
    once."""
    query = f"""SELECT DISTINCT n.folded FROM place p JOIN name n ON p.id = n.place
        WHERE p.country IN ({",".join("?" * len(countries))}) AND p.population > ?"""
    return sorted(folded for (folded,) in db.execute(query, (*sorted(countries), LARGE_NAMESAKE)))


def may_be_guessed(name: str, spellings: Sequence[str]) -> bool:
    """Whether `guessed` may come from a told name to any of these folded spellings, which are sorted: it is of few
    slips, a form, or goes on behind the first word. Where not, that much longer search is spared.
    """
    folded = fold_place(name)
    if _beginning(spellings, f"{folded.partition(' ')[0]} "):
        return True
    if any(form in _beginning(spellings, form)[:1] for form in uninflected(name)):
        return True
    alike = _beginning(spellings, folded[:1])
    return process.extractOne(folded, alike, scorer=OSA.distance, score_cutoff=_most_slips(folded)) is not None


def _beginning(spellings: Sequence[str], start: str) -> Sequence[str]:
    """Those of sorted spellings that begin so."""
    return spellings[bisect_left(spellings, start) : bisect_left(spellings, f"{start}\U0010ffff")]


def _most_slips(folded: str) -> int:
    return 1 if len(folded) <= LONGEST_OF_ONE_SLIP else 2


def _compounds(
    db: sqlite3.Connection,
    folded: Iterable[str],
    contexts: Sequence[LargerPart],
    year: int | None,
    family: Family,
) -> list[Ranked]:
    """Places of two names joined, of which the told one is the first (`Bielsko` of Bielsko-Biała)."""
    found = [
        rank(row, SHORTENED, (), contexts, year, family)
        for name in folded
        if len(name) >= SHORTEST_OF_COMPOUND
        for row in db.execute(_BEGUN, (f"{name} ", f"{name}!", 0)).fetchall()
        if "-" in row[1]
    ]
    return [replace(place, score=place.score + COMPOUND_BONUS) for place in found]


_BEGUN = """SELECT p.*, n.main FROM name n JOIN place p ON p.id = n.place
    WHERE n.folded >= ? AND n.folded < ? AND n.main = 1 AND p.population >= ?"""


def longer_names(
    db: sqlite3.Connection, name: str, countries: frozenset[str], least: int, year: int | None, family: Family
) -> list[Ranked]:
    """Places of at least so many people in these countries whose main names go on behind this one; best first."""
    folded = fold_place(name)
    rows = db.execute(_BEGUN, (f"{folded} ", f"{folded}!", least)).fetchall()
    return best_first(rank(row, SHORTENED, (), (), year, family) for row in rows if row[2] in countries)


def inflected(
    db: sqlite3.Connection, names: Sequence[str], contexts: Sequence[LargerPart], year: int | None, family: Family
) -> list[Ranked]:
    """Places of whose names these are forms, as they stand in sentences, in every larger part told; best first."""
    folded, found = [fold_place(name) for name in names], list[Ranked]()
    for form, lands in (pair for name in names for pair in uninflected(name).items()):
        for row in heard(exactly_named(db, [form]), family).values():
            place = rank(row, INFLECTED, folded, contexts, year, family)
            at_home = AT_HOME_BONUS if place.country in lands else 0.0
            found += [replace(place, score=place.score + at_home)] if place.fits else []
    best: dict[int, Ranked] = {}
    for place in without_passing(found, family):
        best.setdefault(place.id, place)
    return list(best.values())


def with_forms_at_home(
    db: sqlite3.Connection,
    places: list[Ranked],
    names: Sequence[str],
    contexts: Sequence[LargerPart],
    year: int | None,
    family: Family,
) -> list[Ranked]:
    """The places; where they lie abroad, after those of the family's own countries of whose names the told one may be a
    form in a language spoken there (`Tartus`), unless these are much smaller.
    """
    if not (places and family.home) or family.is_theirs(places[0]):
        return places
    lands = frozenset[str]().union(*(spoken for name in names for spoken in uninflected(name).values()))
    forms = [
        place
        for place in inflected(db, names, contexts, year, family)
        if place.country in lands & family.home and place.population * MUCH_LARGER > places[0].population
    ]
    return [*forms[:FORMS_SHOWN], *places]


FORMS_SHOWN = 2
"""How many places are offered of whose names the told one may be a form, before the one that bears it."""


def _shortened(db: sqlite3.Connection, folded: Iterable[str], *, alone: bool) -> dict[int, Row]:
    """The places of whose names of several words these are a short form, by id.

    The first word is told whole, the others by their beginnings or not at all (`Halle a. S.`, `Burton on T.`); the
    first word alone counts only beside a larger part (`Merthyr, Glamorgan`), not `alone`.
    """
    longer: set[str] = set()
    for first, *others in (name.split() for name in folded if name):
        shortened = any(len(word) <= LONGEST_ABBREVIATION for word in others)
        if shortened or not (others or alone or len(first) < 5):
            bounds = (f"{first} ", f"{first}!")
            spellings = db.execute("SELECT DISTINCT folded FROM name WHERE folded >= ? AND folded < ?", bounds)
            longer |= {spelling for (spelling,) in spellings if _begin_in_order(others, spelling.split()[1:])}
    return exactly_named(db, longer)


LONGEST_ABBREVIATION = 3
"""Letters of a word of a name that may be an abbreviation."""


def _begin_in_order(told: Sequence[str], words: Sequence[str]) -> bool:
    """Whether each told word begins one of the words, in their order, and the last one the last."""
    if not told:
        return True
    remaining = iter(words)
    return words[-1].startswith(told[-1]) and all(any(word.startswith(short) for word in remaining) for short in told)


def _guessed(db: sqlite3.Connection, folded: Iterable[str]) -> tuple[dict[int, Row], dict[int, int]]:
    """The places of similar names, and the number of letters misspelled, both by id.

    A direction told is no slip of another one (`Palmerston South` is not Palmerston North). The first letter must be
    right. One misspelled letter is allowed up to LONGEST_OF_ONE_SLIP, two up to forty.
    """
    rows: dict[int, Row] = {}
    slips: dict[int, int] = {}
    for name in folded:
        if not 4 <= len(name) <= 40:
            continue
        most_slips = _most_slips(name)
        first_letter = name[:1]
        bounds = (first_letter, first_letter + "\U0010ffff", len(name) - most_slips, len(name) + most_slips)
        first, middle, last = _pieces(name, most_slips + 1)
        begins = db.execute(_BEGINS, (first, first + "\U0010ffff", *bounds[2:]))
        others = db.execute(_HOLDS if middle else _ENDS, (*bounds, -len(last), last, *([middle] if middle else [])))
        found = dict.fromkeys(spelling for (spelling,) in (*begins, *others))
        spellings = [spelling for spelling in found if directions_in(spelling) == directions_in(name)]
        for spelling, distance, _ in process.extract(
            name, spellings, scorer=OSA.distance, score_cutoff=most_slips, limit=50
        ):
            for ident, row in exactly_named(db, [spelling]).items():
                if distance < slips.get(ident, 9):
                    rows[ident], slips[ident] = row, int(distance)
    return rows, slips


_BEGINS = "SELECT DISTINCT folded FROM name WHERE folded >= ? AND folded < ? AND length(folded) BETWEEN ? AND ?"
_ENDS = f"{_BEGINS} AND substr(folded, ?) = ?"
_HOLDS = f"{_BEGINS} AND (substr(folded, ?) = ? OR instr(folded, ?))"


def _pieces(name: str, count: int) -> tuple[str, str, str]:
    """The first, the middle (of three) and the last piece of a name parted in two or three.

    One letter between two pieces belongs to none, so that a slip (a letter more, less, other, or two exchanged) spoils
    one piece at most: of a name with fewer slips than pieces, one piece stands as it is.
    """
    size = (len(name) - count + 1) // count
    middle = name[size + 1 : len(name) - size - 1] if count > 2 else ""
    return name[:size], middle, name[len(name) - size :]
