"""Which parts of a told place are larger parts, and which are left for the place itself.

`Reval, Estonia`: Estonia is taken, Reval is left. The parts are taken from the right, as long as each means something
larger that agrees with what was taken before. A part of several meanings has the one in which the part before it lies:
`Dover, Kent` is in England, since Dover in Kent comes first, but `Smyrna, Kent` is in Delaware.
"""

import re
import sqlite3
from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.places.inflections import uninflected
from boxlore.core.places.letters import lands_of_letters
from boxlore.core.places.nature import is_written_so
from boxlore.core.places.taking_apart import fold_place
from boxlore.core.places.within_words import without_leading
from boxlore.gazetteer.larger_parts import (
    LONGEST_SHORT,
    LargerPart,
    countries_of,
    features_without_kind,
    is_kind_of_area,
    is_known_larger_part,
    meanings_of,
)
from boxlore.gazetteer.matching import (
    CITY,
    Family,
    Ranked,
    area_name,
    ends_as_kind,
    exact,
    exactly_named,
    is_description,
    is_generic,
    is_ship,
)

_JOINING = re.compile(r"\s+(?:i\.?|in|im|in der|dans|em|v)$", re.IGNORECASE)
"""A word between a town and its region: `Allenstein i. Ostpr.`"""
_SMALL_BEFORE = re.compile(r"\s[a-zà-ÿ]{1,4}\.?$")
"""A small word before the last one, which is then a part of the name: `Rothenburg o. d. T.`, `Stoke on T.`."""
BEGINNING = frozenset(
    "mt mount lake cape port camp fort ft loch lough river st saint isle castle bay san santa".split()
)
"""Words that a name begins with, which is then no region behind a town: `Mount Peel`, `Camp Grant`."""
SMALL = 100_000
"""A town of fewer people is not meant where a country or a large area bears the same name."""


KNOWN = 10_000
"""A town of so many people is meant before a lake or a mountain of its name."""


def take_larger_parts(
    db: sqlite3.Connection, parts: Sequence[str], year: int | None, family: Family
) -> tuple[list[str], list[LargerPart]]:
    """The parts left, and the larger parts, largest first.

    Taking ends at a part that means nothing larger, that contradicts the larger parts taken, or that is more likely
    the place itself. A single part without commas may end with a larger part (`Reval Estonia`).
    """
    left, contexts = list(parts), list[LargerPart]()
    while left:
        meanings = [part for part in _meanings(db, left[-1], year) if _agrees(part, contexts)]
        if is_generic(left[-1]):
            meanings = [part for part in meanings if left[:-1] and exact(db, left[-2], [*contexts, part])]
        if len(left) > 1 and not contexts:
            meanings = [part for part in meanings if _bears(db, part) or exact(db, left[-2], [part], year)]
        if not meanings or (not contexts and _is_form_at_home(db, left[-1], meanings, family)):
            break
        if len(left) == 1:
            is_place = _names_a_place(db, left[0], contexts) if contexts else means_town(db, left[0], meanings[0])
            if meanings[0].natural and not any(context.areas for context in contexts):
                is_place = (is_place or not contexts) and _is_known_better(db, left[0], meanings, family)
            if is_place or (not contexts and _is_quarter_at_home(db, left[0], meanings, family)):
                break
        elif _is_far_city(db, left, meanings, family) or _is_far_district(db, left, meanings, family):
            break
        contexts.append(_likeliest(db, meanings, left[:-1], contexts, family, year))
        left.pop()
    if len(left) == 1 and not contexts:
        return _last_words(db, left[0], year, family)
    return left, contexts


def _meanings(db: sqlite3.Connection, words: str, year: int | None) -> list[LargerPart]:
    """What a part may mean; where it means nothing and is no town, what it is an inflected form of (`Kanadassa`)."""
    lands = lands_of_letters([words])
    meanings = [
        part
        for part in meanings_of(db, words, year)
        if not lands or not part.areas or part.country or countries_of(part) & lands  # `Ełk` is in no Elk County
    ]
    if meanings or exact(db, words):
        return meanings
    forms = uninflected(words)
    if any(map(is_kind_of_area, (words.split()[-1], *uninflected(words.split()[-1])))):  # `Tomski oblastis`
        of_forms = (meanings_of(db, form, year) for form in forms)
        return [replace(part, words=words) for part in next(filter(None, of_forms), [])]
    name = next(filter(is_known_larger_part, forms), None)
    return [replace(part, words=words) for part in meanings_of(db, name, year)] if name else []


def _agrees(part: LargerPart, contexts: Sequence[LargerPart]) -> bool:
    """Whether a larger part shares a country with one of those taken before, if there are any, and lies in each
    region among them (Londonderry does not lie in Tyrone).
    """
    if contexts and not any(countries_of(part) & countries_of(taken) for taken in contexts):
        return False
    return all(_lies_in(part.box, taken.box) for taken in contexts if part.box and taken.box)


def _lies_in(inner: tuple[float, ...], outer: tuple[float, ...]) -> bool:
    """Whether at least three quarters of a box lie in another: the edges of both are rough."""
    height = min(inner[2], outer[2]) - max(inner[0], outer[0])
    width = min(inner[3], outer[3]) - max(inner[1], outer[1])
    shared = max(height, 0) * max(width, 0)
    return shared >= 0.75 * (inner[2] - inner[0]) * (inner[3] - inner[1])


def _is_known_better(db: sqlite3.Connection, words: str, features: Sequence[LargerPart], family: Family) -> bool:
    """Whether a town is known better than the mountain or lake of its name: it has KNOWN people, or lies at
    home where the other does not. Else that is meant rather than a suburb of its name.
    """
    lands = frozenset[str]().union(*map(countries_of, features))
    at_home = bool(lands & family.home)
    towns = exact(db, words)
    if is_written_so(words):  # `Rømø` is not Rome
        towns = [town for town in towns if town.country in lands or town.name.casefold() == words.casefold()]
    bearing = [town for town in towns if fold_place(town.name) == fold_place(words)]
    own = [town for town in bearing if town.country in family.home]
    if not at_home and any(town.country in family.home or town.population >= CITY for town in towns):
        return True
    return any(town.population >= KNOWN for town in (own if at_home else bearing))


def _is_quarter_at_home(db: sqlite3.Connection, words: str, meanings: Sequence[LargerPart], family: Family) -> bool:
    """Whether a quarter in the family's own countries bears the name, and no first-level area or region there does."""
    at_home = [part for part in meanings if not _is_second_level(part) and countries_of(part) & family.home]
    rows = exactly_named(db, [fold_place(words)]).values() if not at_home else ()
    return any(row[0] < 0 and row[2] in family.home for row in rows)


def _is_far_city(db: sqlite3.Connection, parts: Sequence[str], meanings: Sequence[LargerPart], family: Family) -> bool:
    """Whether the last of several parts is a city rather than the second-level area of its name, which does not have
    the part told before it either (`Byculla, Bombay` is not in Manchester, Jamaica).
    """
    if not all(part.areas and not part.country and _is_second_level(part) for part in meanings):
        return False
    cities = [town for town in exact(db, parts[-1]) if town.population >= CITY]
    areas = {code for part in meanings for code in part.areas}
    if not cities or any(f"{town.country}.{town.area1}.{town.area2}" in areas for town in cities):
        return False
    return not any(exact(db, parts[-2], [part]) or any(map(family.is_own, countries_of(part))) for part in meanings)


def _is_far_district(
    db: sqlite3.Connection, parts: Sequence[str], meanings: Sequence[LargerPart], family: Family
) -> bool:
    """Whether the last of several parts is a second-level area abroad, which does not have the part told before it,
    while a place at home bears that name: `Arrowtown, Lake County` is in a county that we do not know.
    """
    is_abroad = not any(countries_of(part) & family.home for part in meanings)
    if not (family.home and is_abroad and all(map(_is_second_level, meanings))):
        return False
    at_home = any(town.country in family.home for town in exact(db, parts[-2]))
    return at_home and not any(exact(db, parts[-2], [part]) for part in meanings)


def _is_second_level(part: LargerPart) -> bool:
    return bool(part.areas) and all(code.count(".") == 2 for code in part.areas)


def likeliest_feature(
    features: Sequence[LargerPart], contexts: Sequence[LargerPart], family: Family
) -> LargerPart | None:
    """Of lakes, mountains and the like of one name, the first in the family's own countries that lies where it was
    told to; without a home there, the first.
    """
    agreeing = [part for part in features if _agrees(part, contexts)]
    agreeing.sort(key=lambda part: (not countries_of(part) & family.home, not _is_own(part, family)))
    return agreeing[0] if agreeing else None


def _likeliest(
    db: sqlite3.Connection,
    meanings: Sequence[LargerPart],
    before: Sequence[str],
    contexts: Sequence[LargerPart],
    family: Family,
    year: int | None,
) -> LargerPart:
    """The meaning that the part told before lies in, those in the family's own countries first; else the one in the
    countries of the settings; else the first. What was told before moves no area to another country.

    Where an abbreviation has several meanings that fit, the one with the largest place is taken, with a doubt.
    """
    if len(meanings) == 1:
        return meanings[0]
    at_home = sorted(meanings, key=lambda part: (not countries_of(part) & family.home, not _is_own(part, family)))
    towns = {part: exact(db, before[-1], [*contexts, part], year) for part in at_home} if before else {}
    fitting = [part for part in at_home if towns.get(part)]
    if len(fitting) > 1 and len(fold_place(meanings[0].words)) <= LONGEST_SHORT:
        largest = max(fitting, key=lambda part: towns[part][0].population)
        return replace(largest, doubtful=True)
    return fitting[0] if fitting else min(meanings, key=lambda part: not countries_of(part) & family.home)


def _is_own(part: LargerPart, family: Family) -> bool:
    return any(map(family.is_own, countries_of(part)))


def _last_words(
    db: sqlite3.Connection, words: str, year: int | None, family: Family
) -> tuple[list[str], list[LargerPart]]:
    """Words without commas, parted before the last one to three words if these are a larger part."""
    tokens = words.split()
    if is_ship(words) or exact(db, words) or features_without_kind(words):
        return [words], []
    for count in range(min(3, len(tokens) - 1), 0, -1):
        last, start = " ".join(tokens[-count:]), " ".join(tokens[:-count])
        goes_on = last[0].islower() or (_SMALL_BEFORE.search(start) and not _JOINING.search(start))
        is_name = is_generic(last) or is_description(last) or (goes_on and _has_name(tokens[:-count]))
        is_name = is_name or ends_as_kind(f"{start} {last}") or fold_place(start) in BEGINNING
        meanings = [] if is_name else [part for part in meanings_of(db, last, year) if _bears(db, part)]
        is_town = meanings and _is_far_city(db, [start, last], meanings, family)  # `bei Tante Ilse in Stettin`
        if meanings and not is_town and not _is_form_at_home(db, last, meanings, family):
            before = without_leading(_JOINING.sub("", " ".join(tokens[:-count])))
            left = [before] if before else []
            return left, [_likeliest(db, meanings, left, [], family, year)]
    return [words], []


def _is_form_at_home(db: sqlite3.Connection, words: str, meanings: Sequence[LargerPart], family: Family) -> bool:
    """Whether words that are areas abroad are a form of a town in the family's own countries (`Elvas`)."""
    if not family.home or any(countries_of(part) & family.home or not part.areas for part in meanings):
        return False
    forms = uninflected(words)
    return any(town.country in family.home & forms[form] for form in forms for town in exact(db, form))


def _bears(db: sqlite3.Connection, part: LargerPart) -> bool:
    """Whether an area of today is called by the words told, and not by them with a word for its kind (`Lake George`
    is not in George County). An area told by an abbreviation is.
    """
    if part.box or part.country or part.former or part.natural or not part.countries:
        return True
    rows = db.execute("SELECT code FROM area_name WHERE folded = ?", (fold_place(part.words),)).fetchall()
    return any(code in part.areas for (code,) in rows)


def _has_name(tokens: Sequence[str]) -> bool:
    return any(token[0].isupper() for token in tokens)


def means_town(db: sqlite3.Connection, words: str, context: LargerPart) -> bool:
    """Whether words told alone mean a town rather than the larger part of the same name.

    A country or former country always wins over a town of its name. A region wins over a town of fewer than SMALL
    people, unless it is called after that town, which lies in it (Kilkenny yes, but Westland is not the town in
    Michigan). So does a first-level area of this name, and an area that the words only abbreviate or begin
    (Nelson, Nelson Region), whose reading also offers the towns; not one whose largest town is written as it is, for
    the two read alike (Tartu). A second-level area of this name does not.
    """
    towns = [] if context.country or context.former else exact(db, words)
    if not towns:
        return False
    if context.box:
        inside = any(context.holds((town.lat, town.lon)) and town.country in context.countries for town in towns)
        return (inside and _is_small(context)) or towns[0].population >= SMALL
    by_name = db.execute("SELECT code FROM area_name WHERE folded = ?", (fold_place(words),)).fetchall()
    large_area = any(code.count(".") == 1 for (code,) in by_name) or (context.areas and not by_name)
    is_main_name = fold_place(towns[0].name) == fold_place(words)
    if not large_area or (is_main_name and towns[0].population >= SMALL):
        return True
    code = f"{towns[0].country}.{towns[0].area1}"
    return by_name == [(code,)] and area_name(db, code) == towns[0].name and is_largest(db, towns[0])


def is_largest(db: sqlite3.Connection, town: Ranked) -> bool:
    """Whether no place of its first-level area has more people."""
    query = "SELECT max(population) FROM place WHERE country = ? AND area1 = ?"
    return bool(town.population and db.execute(query, (town.country, town.area1)).fetchone() == (town.population,))


def _is_small(region: LargerPart) -> bool:
    """Whether a region is about as large as a county: two degrees high and three wide at most (our rule)."""
    south, west, north, east = region.box
    return north - south <= 2 and east - west <= 3


def may_name_town(smallest: LargerPart) -> bool:
    """Whether the smallest larger part is no larger than a county, so that it may also name its town.

    That is a second-level area (`Kadriorg, Tallinn`), or a small region of our tables.
    """
    if smallest.box:
        return _is_small(smallest) and not smallest.natural
    return bool(smallest.areas) and all(code.count(".") == 2 for code in smallest.areas)


def _names_a_place(db: sqlite3.Connection, words: str, contexts: Sequence[LargerPart]) -> bool:
    """Whether the words are also the name of a place inside all these larger parts (`Otago` no, `Tartu` yes)."""
    return bool(exact(db, words, contexts))
