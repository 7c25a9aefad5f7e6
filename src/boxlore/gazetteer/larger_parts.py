"""The larger parts of a told place, such as `Estonia` in `Reval, Estonia`, and what each may mean.

A part is looked for as a former country, a country, a region, an abbreviation, a county and an area, in this order.
The year tells apart a former country and one of today that share a name.
"""

import sqlite3
from dataclasses import dataclass, replace

from boxlore.core.places.abbreviations_table import AREAS, BRITISH_COUNTIES, COUNTIES, COUNTRIES
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.former_countries_table import FORMER, Former
from boxlore.core.places.historic_regions_table import REGIONS
from boxlore.core.places.words import fold_place

NUMBERED = {
    "CA-AB": "01", "CA-BC": "02", "CA-MB": "03", "CA-NB": "04", "CA-NL": "05", "CA-NS": "07", "CA-ON": "08",
    "CA-PE": "09", "CA-QC": "10", "CA-SK": "11", "CA-YT": "12", "CA-NT": "13", "CA-NU": "14",
    "AU-ACT": "01", "AU-NSW": "02", "AU-NT": "03", "AU-QLD": "04", "AU-SA": "05", "AU-TAS": "06", "AU-VIC": "07",
    "AU-WA": "08",
}  # fmt: skip
"""ISO 3166-2 -> the area's code in GeoNames (admin1CodesASCII), where it is a number."""


ELSEWHERE = -0.7
"""The score of a place that lies in another country than the told one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LargerPart:
    """One larger part, with what it means.

    `words` is how it was told, `countries` the ISO 3166-1 codes of today's countries that it lies in, `areas` codes of
    GeoNames (`US.MI`, `US.MI.089`), `box` south, west, north, east in degrees, `former` the former country it names.
    """

    words: str
    name: str
    countries: frozenset[str] = frozenset()
    areas: frozenset[str] = frozenset()
    box: tuple[float, ...] = ()
    former: Former | None = None
    country: str = ""
    """ISO 3166-1 code if the part is a country of today."""
    area_unknown: bool = False
    """A county that is none of today's areas, so that only its country can be checked."""

    def score(self, country: str, area1: str, area2: str, point: tuple[float, float]) -> float:
        """+0.6 for a place inside this part, -0.4 for one in the same country only, -0.7 for one elsewhere.

        `point` is the place's latitude and longitude in degrees.
        """
        if self.areas:
            codes = {f"{country}.{area1}", f"{country}.{area1}.{area2}"}
            if codes & self.areas or country == self.country:
                return 0.6
            return -0.4 if country in {code[:2] for code in self.areas} else ELSEWHERE
        if self.box:
            south, west, north, east = self.box
            inside = south <= point[0] <= north and west <= point[1] <= east
            return 0.6 if inside and country in self.countries else ELSEWHERE
        return 0.6 if country in self.countries else ELSEWHERE


_COUNTRY_OF = {fold_place(name): code for code, name in COUNTRY_NAMES.items()} | {
    fold_place(name): code for name, code in COUNTRIES.items()
}

_AREA_OF: dict[str, list[str]] = {}
for _iso, _forms in AREAS.items():
    for _form in _forms:
        for _spelled in {_form, _form.replace(" ", "")}:
            _AREA_OF.setdefault(_spelled, []).append(_iso)


def context_of(db: sqlite3.Connection, words: str, year: int | None) -> LargerPart | None:
    """What a part means as a larger part of a place; None if it means nothing of that kind.

    `year` is the year of the picture.
    """
    folded = fold_place(words)
    for find in (_former, _country, _region, _abbreviation):
        meaning = find(words, folded, year)
        if meaning is not None:
            return _also_area(db, meaning, folded) if meaning.country else meaning
    return _county(db, words, folded) or _area(db, words, folded)


def _former(words: str, folded: str, year: int | None) -> LargerPart | None:
    """A former country. If a country of today has the same name, it is meant only in a year of its own time."""
    of_that_name = [row for row in FORMER if folded in {fold_place(alias) for alias in row.aliases}]
    in_its_time = [row for row in of_that_name if year is not None and row.first <= year <= row.last]
    if in_its_time:
        chosen = min(in_its_time, key=lambda row: (row.last - row.first, len(row.now)))
    elif of_that_name and folded not in _COUNTRY_OF:
        chosen = of_that_name[0]
    else:
        return None
    now = frozenset(code for row in (in_its_time or [chosen]) for code in row.now)
    return LargerPart(words=words, name=chosen.name, countries=now, former=chosen)


def _country(words: str, folded: str, year: int | None) -> LargerPart | None:
    code = _COUNTRY_OF.get(folded) or _COUNTRY_OF.get(folded.replace(" ", ""))
    if code is None and words.isupper() and words in COUNTRY_NAMES and folded not in _AREA_OF:
        code = words
    if code is None:
        return None
    return LargerPart(words=words, name=COUNTRY_NAMES[code], countries=frozenset({code}), country=code)


def _also_area(db: sqlite3.Connection, country: LargerPart, folded: str) -> LargerPart:
    """The country, with the areas of other countries that bear its name (Georgia), since either may be meant."""
    rows = db.execute("SELECT code FROM area_name WHERE folded = ?", (folded,)).fetchall()
    areas = {code for (code,) in rows if code.count(".") == 1 and code[:2] != country.country}
    if not areas:
        return country
    return replace(country, areas=frozenset(areas), countries=country.countries | {code[:2] for code in areas})


def _region(words: str, folded: str, year: int | None) -> LargerPart | None:
    for row in REGIONS:
        if folded in {fold_place(alias) for alias in row.aliases}:
            return LargerPart(words=words, name=row.name, countries=frozenset(row.now), box=row.box)
    return None


def _abbreviation(words: str, folded: str, year: int | None) -> LargerPart | None:
    iso_codes = _AREA_OF.get(folded) or _AREA_OF.get(folded.replace(" ", ""))
    if not iso_codes:
        return None
    areas = frozenset(f"{iso[:2]}.{NUMBERED[iso]}" if iso in NUMBERED else iso.replace("-", ".") for iso in iso_codes)
    return LargerPart(words=words, name=words, areas=areas)


_COUNTY_OF = {fold_place(name): (name, "GB") for name in BRITISH_COUNTIES} | COUNTIES


def _county(db: sqlite3.Connection, words: str, folded: str) -> LargerPart | None:
    """A county by its name or abbreviation, with today's area of that name if there is one."""
    folded_name = folded.removeprefix("co ").removeprefix("county ")
    if folded_name not in _COUNTY_OF:
        return None
    name, country = _COUNTY_OF[folded_name]
    area = _area(db, name, fold_place(name))
    areas = frozenset(code for code in (area.areas if area else ()) if code[:2] == country)
    return LargerPart(words=words, name=name, countries=frozenset({country}), areas=areas, area_unknown=not areas)


_COUNTY_WORDS = ("county ", "co ")
_COUNTY_ENDS = (" county", " co", " parish", " district", " province", " region", " oblast", " maakond", " vald")


def _area(db: sqlite3.Connection, words: str, folded: str) -> LargerPart | None:
    """A first- or second-level area by its name, with or without a word such as `county`."""
    spelled = {folded}
    for start in _COUNTY_WORDS:
        spelled.add(folded.removeprefix(start))
    for end in _COUNTY_ENDS:
        spelled.add(folded.removesuffix(end))
    forms = {
        form
        for spelling in spelled
        if spelling
        for form in (spelling, f"{spelling} county", f"county {spelling}", f"{spelling} region")
    }
    marks = ", ".join("?" * len(forms))
    rows = db.execute(f"SELECT code FROM area_name WHERE folded IN ({marks})", tuple(forms)).fetchall()
    if not rows:
        return None
    codes = frozenset(code for (code,) in rows)
    return LargerPart(words=words, name=words, areas=codes, countries=frozenset(code[:2] for code in codes))
