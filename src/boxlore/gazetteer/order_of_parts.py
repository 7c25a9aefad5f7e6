"""Parts told from large to small, as “Helsinki, Kallio” and “Wilno, ul. Mickiewicza” are: turned to the usual order.

A part is smaller than the town before it if it is a quarter of that, a street, or a place close by with far fewer
people.
"""

import sqlite3
from collections.abc import Sequence

from boxlore.core.places.inflections import uninflected
from boxlore.core.places.streets import is_street
from boxlore.core.places.taking_apart import fold_place
from boxlore.gazetteer.larger_parts import LargerPart, is_kind_of_area
from boxlore.gazetteer.matching import Ranked, exact, exactly_named, is_ship, kilometres

QUARTER_KM = 15
"""How near a town a place lies that is told as a part of it (our rule)."""
TIMES_SMALLER = 5


def description_first(parts: Sequence[str]) -> tuple[str, ...]:
    """The parts, with those at the end that only describe put first: `the Taieri, shearing`, `Tartus, Emajõe ääres`.

    Such a part has no large letter, or begins with a name and ends with a small word; a part before it is a name.
    """
    names = list(parts)
    while len(names) > 1 and _describes(names[-1]) and any(map(_is_name, names[:-1])):
        names.pop()
    return (*parts[len(names) :], *names)


def _is_name(part: str) -> bool:
    return part.split()[-1][:1].isupper() and not is_ship(part)


def _describes(part: str) -> bool:
    first, *more = part.split()
    if any(map(is_kind_of_area, (part.split()[-1], *uninflected(part.split()[-1])))):
        return False
    return part.islower() or (first[:1].isupper() and bool(more) and len(more[-1]) > 1 and more[-1].islower())


def smaller_first(db: sqlite3.Connection, parts: Sequence[str], contexts: Sequence[LargerPart]) -> list[str]:
    """The parts, small to large: the last is put before the town that stands before it, if it is smaller than that."""
    if len(parts) < 2:
        return list(parts)
    *before, town, last = parts
    is_turned = not is_street(town) if is_street(last) else _is_part_of(db, last, town, contexts)
    return [*before, last, town] if is_turned else list(parts)


def _is_part_of(db: sqlite3.Connection, name: str, town: str, contexts: Sequence[LargerPart]) -> bool:
    towns = exact(db, town, contexts)
    if not towns:
        return False
    folded = [fold_place(name)]
    quarters = "SELECT 1 FROM quarter WHERE city = ? AND id = ?"
    if any(db.execute(quarters, (towns[0].id, ident)).fetchone() for ident in exactly_named(db, folded) if ident < 0):
        return True
    named = exact(db, name, contexts)
    is_larger = any(place.population > towns[0].population for place in named)  # `Islington, London`
    return not is_larger and any(is_close(place, towns[0]) for place in named)


def is_close(place: Ranked, town: Ranked) -> bool:
    """Whether a place lies close by a town of TIMES_SMALLER its people at least, and is not that itself."""
    is_smaller = place.population * TIMES_SMALLER <= town.population
    return place.id != town.id and is_smaller and kilometres(place, town) <= QUARTER_KM
