"""From told names to ranked places; `guessing` makes those of other names that a told one may mean.

The score of a place is the sum of
    1, less 0.18 for each letter misspelled (Optimal String Alignment distance of the folded names)
    0.05 if the told name is its main name
    0.06 × log10 of its population
    for each larger part told with it, 0.6 if the place lies in that, or belonged to that country in the year of the
        picture (Petsamo, Finland), less if not (`LargerPart.score`); IN_NAME_BONUS if its own name has the part in it
    IN_USE_BONUS if the place bore the told name in the year of the picture, unless that is the name of a larger city,
        or of one of CITY people
    USED_BONUS if this collection uses the place already; else NEAR_BONUS if it lies about a degree from one that it
        uses; else COUNTRY_BONUS if it lies in a country of the family's own, and a part of that in another country
        where a place was told, unless one of MUCH_LARGER bears the name too
    less FOREIGN_LETTERS if the letters of the told name are those of other countries; OWN_LETTERS if it is written so
The weights are ours, chosen by the cases in `tests/gazetteer`. No bonus for the family's whereabouts alone makes a
match, but for a place used already. A place of the right name outside a told country or region is dropped.
"""

import math
import re
import sqlite3
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace

from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.governed import governed_by
from boxlore.core.places.inflections import uninflected
from boxlore.core.places.letters import lands_of_letters
from boxlore.core.places.reading import Place, distance_km
from boxlore.core.places.renamed_cities_table import RENAMED, Renamed
from boxlore.core.places.taking_apart import fold_place
from boxlore.core.places.within_words import JOINING, LEADING, is_whose
from boxlore.gazetteer.larger_parts import ELSEWHERE, LargerPart

USED_BONUS, NEAR_BONUS, COUNTRY_BONUS = 0.6, 0.4, 0.3
"""Added to the score of a place that this collection uses already, or that lies near one, or in its country."""
OWN_SHARE = 0.2
"""The share of all that was told of places from which on a country is one of the family's own."""
MUCH_LARGER = 5
"""A place of so many times the people is not outranked by one in a country where the family was only now and then."""
IN_NAME_BONUS = 0.3
"""Neustadt in Holstein, not that in Hamburg, is `Neustadt, Holstein`."""
IN_USE_BONUS, CITY = 0.3, 100_000
"""Berlin in Ontario was called so until 1916, and yet who says Berlin means the other."""
OLD_NAME_BONUS, OLD_NAMES_UNTIL = 0.15, 1950
"""How far a place comes forward whose told name is not its main one, in a year when another state governed it than
today's: the names of that state (Karlsbad, Zara) were in use then. It only orders the choices, and makes no match.
"""
OLD_NAMED = frozenset("AL BA BG BY CZ EE FI GR HR LT LV MD ME MK PL RO RS RU SI SK TR UA XK".split())
"""The countries whose places have such names (ISO 3166-1)."""
NEW_WORLD = frozenset("AU CA NZ US".split())
"""Countries whose towns were seldom called otherwise for long (ISO 3166-1; common practice, no source)."""
OWN_STATES = frozenset({"Russian Empire", "Soviet Russia", "Soviet Union"})
"""States of Russia itself, which are not another state for a place in Russia."""
LARGE_NAMESAKE = 20_000
"""A place of so many people that bears the name as its main one is meant before any place of that old name."""
GENERIC = frozenset(
    "lake farm sea home house church school beach garden hospital station harbour harbor river hill the shop street "
    "work town village city park hotel studio kitchen yard front back inside outside unknown mountain island north "
    "south east west up down out over see meer garten haus wald ufer bahnhof kirche schule bay point creek valley "
    "falls islands camp airport kotona kodus daheim zuhause zu hause mājās namie hjemme hemma mökillä "
    "suvilas maal".split()
)
"""Words that name a place only together with a larger part (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """A candidate place with its score.

    `slips` is the number of letters misspelled, `fits` says that it lies in every larger part told, `elsewhere` that
    it lies in another country than a told one. `lat` and `lon` are degrees.
    """

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
    """The told name, if the place was renamed and bore this name in the year of the picture; else empty."""


ToldPlaces = frozenset[tuple[int, int]]
"""GeoNames ids of places told already, each with how often, to a power of two: a telling more is seldom another key."""


def told_often(times: Mapping[int, int]) -> ToldPlaces:
    """Ids with how often each was told."""
    return frozenset((ident, 1 << (count.bit_length() - 1)) for ident, count in times.items())


def also_told(told: ToldPlaces, idents: Iterable[int]) -> ToldPlaces:
    """The same with these places told too, if they were not."""
    known = {ident for ident, _ in told}
    return told | {(ident, 1) for ident in idents if ident not in known}


@dataclass(frozen=True, slots=True, kw_only=True)
class Family:
    """Where the family's story has been told to play: what a doubtful name is weighed by.

    `used` are GeoNames ids of places told already, `cells` the squares of one degree that they lie in, with the squares
    around those. `home` are the countries of the keeper's settings (ISO 3166-1), `shares` is how much of all that was
    told of places plays in a country, from 0 to 1.
    """

    used: frozenset[int] = frozenset()
    cells: frozenset[tuple[int, int]] = frozenset()
    home: frozenset[str] = frozenset()
    shares: Mapping[str, float] = field(default_factory=dict)

    def is_own(self, country: str) -> bool:
        """Whether a country is the family's own: by the settings, or by how much plays there."""
        return country in self.home or self.shares.get(country, 0) >= OWN_SHARE

    def is_theirs(self, place: Ranked) -> bool:
        """Whether a place was told already, or lies in one of the family's own countries."""
        return place.id in self.used or self.is_own(place.country)

    def passing(self, ident: int, country: str, point: tuple[float, float]) -> float:
        """What is added to the score of a place because the family has been in its country now and then."""
        if ident in self.used or _cell(point) in self.cells or self.is_own(country):
            return 0.0
        return COUNTRY_BONUS * (self.shares.get(country, 0) / OWN_SHARE) ** 2

    def bonus(self, ident: int, country: str, point: tuple[float, float]) -> float:
        """What is added to the score of a place."""
        if ident in self.used:
            return USED_BONUS
        if _cell(point) in self.cells:
            return NEAR_BONUS
        return COUNTRY_BONUS if self.is_own(country) else self.passing(ident, country, point)


NO_FAMILY = Family()


def family_of(db: sqlite3.Connection, told: ToldPlaces, home: frozenset[str]) -> Family:
    """The family of these countries that has told these places."""
    query = "SELECT country, lat, lon FROM place WHERE id = ?"
    rows = [(times, *row) for ident, times in sorted(told) for row in db.execute(query, (ident,))]
    around = [(step_north, step_east) for step_north in (-1, 0, 1) for step_east in (-1, 0, 1)]
    cells = {(north + up, east + right) for row in rows for north, east in [_cell(row[2:])] for up, right in around}
    of_country = Counter[str]()
    for times, country, *_ in rows:
        of_country[country] += times
    shares = {country: times / of_country.total() for country, times in of_country.items()}
    return Family(used=frozenset(ident for ident, _ in told), cells=frozenset(cells), home=home, shares=shares)


def _cell(point: tuple[float, float]) -> tuple[int, int]:
    return math.floor(point[0]), math.floor(point[1])


def named(
    db: sqlite3.Connection, names: Sequence[str], contexts: Sequence[LargerPart], year: int | None, family: Family
) -> list[Ranked]:
    """Places of any of exactly these names, best first, without those that lie outside a told country or region.

    `contexts` are the larger parts told, `year` is that of the picture.
    """
    folded = [fold_place(name) for name in names]
    rows = heard(exactly_named(db, folded), family).values()
    ranked = [rank(row, 0, folded, contexts, year, family) for row in rows]
    plausible = [place for place in ranked if place.fits or not place.elsewhere]
    plausible = without_passing(_without_once_called(plausible, folded, family), family)
    plausible = _at_home_then(plausible, folded, year, family)
    plausible = _by_letters(_without_usurpers(plausible, folded, year, family), names, family)
    if year is None or year >= OLD_NAMES_UNTIL:
        return plausible
    is_main = {candidate.id: fold_place(candidate.name) in folded for candidate in plausible}
    if any(is_main[candidate.id] and candidate.population >= LARGE_NAMESAKE for candidate in plausible):
        return plausible
    old = {candidate.id for candidate in plausible if not is_main[candidate.id] and _has_old_names(candidate, year)}
    return sorted(plausible, key=lambda candidate: -candidate.score - OLD_NAME_BONUS * (candidate.id in old))


def without_passing(ranked: Sequence[Ranked], family: Family) -> list[Ranked]:
    """The places, best first; one is not preferred for its country, where the family was now and then, to one of
    MUCH_LARGER.
    """
    largest = max((place.population for place in ranked), default=0)
    return best_first(
        replace(place, score=place.score - family.passing(place.id, place.country, (place.lat, place.lon)))
        if place.population * MUCH_LARGER <= largest
        else place
        for place in ranked
    )


def _without_once_called(ranked: Sequence[Ranked], folded: Sequence[str], family: Family) -> list[Ranked]:
    """The places; one in the New World that only once bore the name of a MUCH_LARGER one, or, without being a city, of
    another in its country, is not preferred for lying in the family's country (Silverton in Colorado, which was called
    Quito; Evanston, once Grosse Pointe).
    """
    bearing_in = {place.country for place in ranked if fold_place(place.name) in folded}
    largest = max((place.population for place in ranked if fold_place(place.name) in folded), default=0)

    def is_once_called(place: Ranked) -> bool:
        is_own = place.country in NEW_WORLD and place.id not in family.used and family.is_own(place.country)
        is_behind = place.population < CITY and place.country in bearing_in
        is_behind = is_behind or place.population * MUCH_LARGER <= largest
        return is_own and is_behind and not place.in_use and fold_place(place.name) not in folded

    return [replace(place, score=place.score - COUNTRY_BONUS) if is_once_called(place) else place for place in ranked]


def _without_usurpers(ranked: list[Ranked], folded: Sequence[str], year: int | None, family: Family) -> list[Ranked]:
    """The places; one that bore the name of a larger city, of a city, or of a place at home, has no bonus for that.

    Of two in one first-level area only one was called so: the other has its name of later (Palmerston was Darwin).
    """
    bearing = [place for place in ranked if fold_place(place.name) in folded]

    def is_usurper(place: Ranked) -> bool:
        if not place.in_use or fold_place(place.name) in folded:
            return False
        others = [other for other in bearing if (other.country, other.area1) != (place.country, place.area1)]
        is_own = family.is_own(place.country) or _is_at_home_then(place, folded, year, family)
        bears_at_home = not is_own and any(other.country in family.home for other in others)
        largest = max((other.population for other in others), default=0)
        return bears_at_home or largest >= min(CITY, place.population)

    return best_first(
        replace(place, score=place.score - IN_USE_BONUS, in_use="") if is_usurper(place) else place for place in ranked
    )


def _at_home_then(ranked: Iterable[Ranked], folded: Sequence[str], year: int | None, family: Family) -> list[Ranked]:
    """The places; one told by a name of then lay at home, if one of the family's countries governed it."""
    return [
        replace(place, score=place.score + COUNTRY_BONUS) if _is_at_home_then(place, folded, year, family) else place
        for place in ranked
    ]


def _is_at_home_then(place: Ranked, folded: Sequence[str], year: int | None, family: Family) -> bool:
    """Whether it is abroad today, and was in one of the family's countries then, told by another name than today's
    (Stanisławów; Viborg in the Grand Duchy of Finland).
    """
    if not family.home or year is None or family.is_own(place.country) or fold_place(place.name) in folded:
        return False
    then = governed_by(place.country, year, area1=place.area1, area2=place.area2, point=(place.lat, place.lon))
    return any(COUNTRY_NAMES.get(country, "-") in then for country in family.home)


def _by_letters(ranked: Sequence[Ranked], names: Sequence[str], family: Family) -> list[Ranked]:
    """The places; one that the letters of the told name do not fit stands back, one that is written with them comes
    forward.
    """
    is_written = {name.casefold().translate(_ALIKE) for name in names if lands_of_letters([name])}
    if not is_written:
        return list(ranked)

    def by_letters(place: Ranked) -> float:
        if place.name.casefold().translate(_ALIKE) in is_written:
            return OWN_LETTERS
        return -FOREIGN_LETTERS if is_written_elsewhere(place, names, family) else 0.0

    return best_first(replace(place, score=place.score + by_letters(place)) for place in ranked)


_ALIKE = str.maketrans("ţş", "țș")
"""Romanian letters as they are often written, with a cedilla."""
FOREIGN_LETTERS, OWN_LETTERS = 0.4, 0.15
"""Taken from the score of a place in a country where no names are written with a letter of the told one; added to that
of one whose name has the same letters (ours).
"""


def is_written_elsewhere(place: Ranked, names: Sequence[str], family: Family) -> bool:
    """Whether the letters of a told name are those of other countries than the place's; a family that writes them at
    home calls places abroad by them too.
    """
    lands = lands_of_letters(names[:1])
    return bool(lands) and place.country not in lands and lands.isdisjoint(family.home)


def _has_old_names(candidate: Ranked, year: int) -> bool:
    """Whether another state than today's governed the place in that year, in a land where names changed with it."""
    if candidate.country not in OLD_NAMED:
        return False
    state = governed_by(
        candidate.country,
        year,
        area1=candidate.area1,
        area2=candidate.area2,
        point=(candidate.lat, candidate.lon),
    )
    own = candidate.country == "RU" and state in OWN_STATES
    return state not in ("", COUNTRY_NAMES[candidate.country]) and not own


Row = tuple[int, str, str, str, str, float, float, int, int]
"""The columns of table `place`, and `main` of the name asked for (see `index`): 1 of a main one, 2 of a nickname."""


def best_first(ranked: Iterable[Ranked]) -> list[Ranked]:
    return sorted(ranked, key=lambda candidate: (-candidate.score, candidate.id))


def exact(
    db: sqlite3.Connection, name: str, contexts: Sequence[LargerPart] = (), year: int | None = None
) -> list[Ranked]:
    """Places of exactly this name that lie in every larger part, best first; quarters of cities are none."""
    folded = [fold_place(name)]
    rows = exactly_named(db, folded).values()
    ranked = [rank(row, 0, folded, contexts, year, NO_FAMILY) for row in rows if row[0] > 0]
    return best_first(candidate for candidate in ranked if candidate.fits)


def kilometres(from_place: Ranked, to_place: Ranked) -> float:
    """The distance of two places in kilometres, on a sphere of 6,371 km (the haversine formula)."""
    return distance_km((from_place.lat, from_place.lon), (to_place.lat, to_place.lon))


def exactly_named(db: sqlite3.Connection, folded: Iterable[str]) -> dict[int, Row]:
    """The places of these folded names, by id."""
    query = "SELECT p.*, n.main FROM name n JOIN place p ON p.id = n.place WHERE n.folded = ?"
    return {row[0]: row for name in folded if name for row in db.execute(query, (name,))}


def heard(rows: Mapping[int, Row], family: Family) -> dict[int, Row]:
    """The rows without those of quarters (see `index.add_quarters`) whose name others bear too, but in the family's own
    countries.
    """
    return {ident: row for ident, row in rows.items() if ident > 0 or row[8] or family.is_own(row[2])}


def rank(
    row: Row, slips: int, folded: Sequence[str], contexts: Sequence[LargerPart], year: int | None, family: Family
) -> Ranked:
    ident, name, country, area1, area2, lat, lon, population, main = row
    context_scores = [context.score(country, area1, area2, (lat, lon)) for context in contexts]
    if year is not None and any(context_score <= ELSEWHERE for context_score in context_scores):
        then = governed_by(country, year, area1=area1, area2=area2, point=(lat, lon))
        context_scores = [
            0.6 if context.country and then and context.name in then else context_score
            for context, context_score in zip(contexts, context_scores, strict=True)
        ]
    called = main or (_has_epithet(name) and any(is_with_epithet(fold_place(name), told) for told in folded))
    score = 1 - 0.18 * slips + 0.05 * called + 0.06 * math.log10(population + 10) + sum(context_scores)
    if any(f" {fold_place(context.words)} " in f"{fold_place(name)} " for context in contexts):
        score += IN_NAME_BONUS
    renamed = _RENAMED.get((fold_place(name), country))
    in_use = _in_use(renamed, folded, year) if renamed is not None and year is not None else ""
    if in_use:
        score += IN_USE_BONUS
    score += family.bonus(ident, country, (lat, lon))
    fits = all(context_score > 0 for context_score in context_scores)
    elsewhere = any(context_score <= ELSEWHERE for context_score in context_scores)
    return Ranked(score, ident, name, country, area1, area2, lat, lon, population, slips, fits, elsewhere, in_use)


def _has_epithet(name: str) -> bool:
    return " " in name and not JOINING.isdisjoint(name.split())


def is_with_epithet(folded: str, told: str) -> bool:
    """Whether a folded name is a told one with what tells it from others behind (`geislingen an der steige`)."""
    return bool(told) and folded.startswith(f"{told} ") and folded[len(told) + 1 :].split()[0] in JOINING


_RENAMED = {(fold_place(row.now), row.country): row for row in RENAMED}


def renamed_of(db: sqlite3.Connection, candidate: Ranked) -> Renamed | None:
    """The row of our table for a city that was renamed; None for any other, and for a smaller place of its name."""
    renamed = _RENAMED.get((fold_place(candidate.name), candidate.country))
    query = "SELECT id FROM place WHERE name = ? AND country = ? ORDER BY population DESC LIMIT 1"
    largest = db.execute(query, (candidate.name, candidate.country)).fetchone() if renamed else None
    return renamed if largest == (candidate.id,) else None


def _in_use(renamed: Renamed, folded: Sequence[str], year: int) -> str:
    """The told name, if the city bore it in that year; else empty."""
    borne = (name for name, first, last in renamed.names if covers(first, last, year))
    return next((name for name in borne if fold_place(name) in folded), "")


def covers(first: int, last: int, year: int) -> bool:
    """Whether `year` is one of `first` to `last`; 0 means no bound."""
    return (not first or first <= year) and (not last or year <= last)


def place_of(db: sqlite3.Connection, candidate: Ranked, year: int | None, sublocation: str, near_km: float) -> Place:
    """A candidate as a place, with its name and its state in that year.

    `near_km` over 0 means that the place told is that near to the candidate; its coordinates are then given to one
    decimal, with a radius of at least 15 km instead of 5.
    """
    lat, lon, radius = round(candidate.lat, 4), round(candidate.lon, 4), 5.0
    if near_km:
        lat, lon, radius = round(candidate.lat, 1), round(candidate.lon, 1), max(near_km, 15.0)
    city = db.execute(_CITY_OF, (candidate.id,)).fetchone() if candidate.id < 0 else None
    if city is not None:
        before = [part for part in sublocation.split(", ") if part and not _names_city(db, part, city[0])]
        sublocation = ", ".join([*before, candidate.name])
        candidate, radius = replace(candidate, id=city[0], name=city[1]), max(radius, 15.0)
    renamed = renamed_of(db, candidate)
    called_then = ""
    if renamed is not None and year is not None:
        called_then = candidate.in_use or next(
            (name for name, first, last in renamed.names if covers(first, last, year)), ""
        )
    return Place(
        name=candidate.name,
        city=candidate.name,
        sublocation=sublocation,
        admin1=area_name(db, f"{candidate.country}.{candidate.area1}"),
        admin1_code=candidate.area1,
        admin2=area_name(db, f"{candidate.country}.{candidate.area1}.{candidate.area2}"),
        country=COUNTRY_NAMES.get(candidate.country, candidate.country),
        country_code=candidate.country,
        called_then=called_then,
        country_then=governed_by(
            candidate.country,
            year,
            area1=candidate.area1,
            area2=candidate.area2,
            point=(candidate.lat, candidate.lon),
        ),
        lat=lat,
        lon=lon,
        radius_km=radius,
        near=near_km > 0,
        geonames=candidate.id,
    )


def _names_city(db: sqlite3.Connection, words: str, city: int) -> bool:
    """Whether words told before a quarter name its city, as in `Kaune, Laisvės alėjoje` or `in Wien, beim Prater`."""
    tokens = words.split()
    name = " ".join(tokens[1:] if len(tokens) > 1 and tokens[0].casefold() in LEADING else tokens)
    query = "SELECT 1 FROM name WHERE folded = ? AND place = ?"
    return any(db.execute(query, (form, city)).fetchone() for form in (fold_place(name), *uninflected(name)))


def city_among(db: sqlite3.Connection, smaller: Iterable[Ranked], larger: Iterable[Ranked]) -> Ranked | None:
    """The city among the larger places of which one of the smaller is a quarter (`Kalamaja, Reval`)."""
    quarters = (db.execute(_CITY_OF, (place.id,)).fetchone() for place in smaller if place.id < 0)
    cities = {city[0] for city in quarters}
    return next((place for place in larger if place.id in cities), None)


_CITY_OF = "SELECT p.id, p.name FROM quarter q JOIN place p ON p.id = q.city WHERE q.id = ?"


def area_name(db: sqlite3.Connection, code: str) -> str:
    """The name of an area by its code, or an empty string."""
    row = db.execute("SELECT name FROM area WHERE code = ?", (code,)).fetchone()
    return str(row[0]) if row else ""


_HOUSES = GENERIC | frozenset(
    "gardens hall castle cottage bridge square lodge manor court villa estate inn hills plains flat goldfields "
    "diggings barracks junction wharf pier docks quay heights cliffs road show racecourse cemetery".split()
)


def may_be_a_house(name: str) -> bool:
    """Whether a name ends as that of a house, a park or a street does, of which there are many (`Eden Park`)."""
    words = re.findall(r"\w+", fold_place(name))
    return len(words) > 1 and words[-1] in _HOUSES


_KINDS = _HOUSES | frozenset(
    "moor moors common head heads mountains aerodrome airfield base mission reserve crossing siding strand quays "
    "mine mines mt "
    "gard gaard gods herrgard leir fangeleir lager tabor mois talu kartano puszta tanya dwor majatek folwark "
    "усадьба хутор имение".split()
)
"""Words for a kind of place at the end of a name (common practice, no source)."""


def ends_as_kind(name: str) -> bool:
    """Whether a name ends with a word for a kind of place (`Botany Bay`), which is then no region behind a town."""
    words = re.findall(r"\w+", fold_place(name))
    return len(words) > 1 and words[-1] in _KINDS


_OF_KIND = re.compile(
    r"\s(?:(?:military|army|naval|air force|internment|transit|holiday|migrant|refugee|dp|base|general|public|primary|"
    r"high|grammar|national|state|railway)\s)*\S+$",
    re.IGNORECASE,
)
"""A word for a kind of place, and what stands before it (common practice, no source)."""


def without_kind(name: str) -> str:
    """A name without the word for the kind of place at its end, and those that tell of what sort it is (`Waiouru` of
    `Waiouru Military Camp`)."""
    return _OF_KIND.sub("", name)


def is_generic(name: str) -> bool:
    """Whether every word is a generic one, such as `lake` or `the farm`; `Ísland` is none."""
    words = re.findall(r"\w+", name.casefold())
    return not words or all(word in GENERIC for word in words)


_DESCRIPTION = re.compile(r"^(?:the|our|my|his|her|their|a|an)\s+[a-z]")


def is_description(name: str) -> bool:
    """Whether the words only describe a place, as small letters behind an article do (`the wharf`, `our shop`)."""
    return bool(_DESCRIPTION.match(name))


def is_somebodys(name: str) -> bool:
    """Whether the words say whose it is (`Gran's`, `the Rourkes'`) and are no saint's: a house of the family's, and no
    town whose name has the same letters without the apostrophe."""
    return is_whose(name.strip()) and "st" not in fold_place(name).split()


def has_apostrophe(place: Ranked) -> bool:
    """Whether the place is written with one itself (`Coeur d'Alene`)."""
    return any(mark in place.name for mark in "'’ʼ")


_LEADS_TO_SHIP = r"(?:(?:on|off|from|auf|an|na|à|sur)\s+)?(?:(?:the|our|dem|der|den|das|le|la|het|de)\s+)?"
_SHIP = re.compile(
    r"^(?:(?:on board|aboard|an bord|à bord|ombord|pardal|na pokładzie|на борту)\b"
    rf"|{_LEADS_TO_SHIP}(?:steamer|steamship|steamboat|troop ?ship|emigrant ship|sailing ship|hospital ship|liner|"
    r"barque|schooner|brigantine|frigate|destroyer|battleship|trawler|dampfer|dampfschiff|segelschiff|paquebot|piroscafo|"
    r"aurik|aurulaev|laev|höyrylaiva|ångaren|ångfartyget|kuģis|tvaikonis|garlaivis|parowiec|parowcu|statek|statku|"
    r"пароход|пароходе)\s|(?:on |off )?(?:the|our) (?:ship|boat|ferry|yacht)\s+(?-i:[“\"'‘]?[A-ZÀ-Þ]))",
    re.IGNORECASE,
)
_SHIP_LETTERS = re.compile(
    rf"^{_LEADS_TO_SHIP}(?P<letters>(?-i:[A-ZÉ]{{2,5}})|s\.?s|(?:\w[./]\s?){{1,5}}\w?)\.?\s+\S", re.IGNORECASE
)
_SHIPS = frozenset(
    "ss hms rms mv hmnzs hmas hmcs hmis hmt hmnzt hmat uss usat usns tss tsmv ts ms mf mfv sms ps ds sy lé orp".split()
)
"""What stands before the name of a ship, which may be that of a town (common practice, no source)."""


def is_ship(name: str) -> bool:
    """Whether the words name a ship, which is no place: `S.S. Wellington`, `m/s Batory`, `on board the Athenic`."""
    letters = _SHIP_LETTERS.match(name)
    is_lettered = letters is not None and re.sub(r"\W", "", letters["letters"]).casefold() in _SHIPS
    return is_lettered or bool(_SHIP.match(name))
