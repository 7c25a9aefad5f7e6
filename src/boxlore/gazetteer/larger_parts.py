"""What the larger parts of a place say: a country, a former one, an abbreviation, a region, a county.

Each is tried as told and folded, the nearest meaning first; the year tells apart countries that share a name.
"""

import sqlite3
from dataclasses import dataclass, replace

from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.former_table import FORMER, Former
from boxlore.core.places.forms_table import AREAS, BRITISH_COUNTIES, COUNTIES, COUNTRIES
from boxlore.core.places.regions_table import REGIONS
from boxlore.core.places.words import fold_place

NUMBERED = {
    "CA-AB": "01", "CA-BC": "02", "CA-MB": "03", "CA-NB": "04", "CA-NL": "05", "CA-NS": "07", "CA-ON": "08",
    "CA-PE": "09", "CA-QC": "10", "CA-SK": "11", "CA-YT": "12", "CA-NT": "13", "CA-NU": "14",
    "AU-ACT": "01", "AU-NSW": "02", "AU-NT": "03", "AU-QLD": "04", "AU-SA": "05", "AU-TAS": "06", "AU-VIC": "07",
    "AU-WA": "08",
}  # fmt: skip
"""ISO 3166-2 → the area codes of GeoNames (admin1CodesASCII)."""


ELSEWHERE = -0.7
"""What a place in another country than the one told comes to."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LargerPart:
    """One larger part: the countries it lies in now, area codes (`US.MI`), a box, and the former country told."""

    told: str
    name: str
    countries: frozenset[str] = frozenset()
    areas: frozenset[str] = frozenset()
    box: tuple[float, ...] = ()
    former: Former | None = None
    country: str = ""
    """ISO code, where the part is a country of today."""
    loose: bool = False
    """A county that today's areas do not show: only its country can be checked."""

    def fits(self, country: str, area1: str, area2: str, where: tuple[float, float]) -> float:
        """+0.6 if a place lies in it, -0.4 if only in the same country, -0.7 if elsewhere."""
        if self.areas:
            codes = {f"{country}.{area1}", f"{country}.{area1}.{area2}"}
            if codes & self.areas or country == self.country:
                return 0.6
            return -0.4 if country in {code[:2] for code in self.areas} else ELSEWHERE
        if self.box:
            south, west, north, east = self.box
            inside = south <= where[0] <= north and west <= where[1] <= east
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


def context_of(db: sqlite3.Connection, told: str, year: int | None) -> LargerPart | None:
    """What a part means as a context, or None."""
    folded = fold_place(told)
    for find in (_former, _country, _region, _abbreviation):
        found = find(told, folded, year)
        if found is not None:
            return _also_area(db, found, folded) if found.country else found
    return _county(db, told, folded) or _area(db, told, folded)


def _former(told: str, folded: str, year: int | None) -> LargerPart | None:
    """A country that was. One whose name is also a country's of today needs a year of its own time."""
    found = [row for row in FORMER if folded in {fold_place(alias) for alias in row.aliases}]
    in_its_time = [row for row in found if year is not None and row.first <= year <= row.last]
    if in_its_time:
        chosen = min(in_its_time, key=lambda row: (row.last - row.first, len(row.now)))
    elif found and folded not in _COUNTRY_OF:
        chosen = found[0]
    else:
        return None
    now = frozenset(code for row in (in_its_time or [chosen]) for code in row.now)
    return LargerPart(told=told, name=chosen.name, countries=now, former=chosen)


def _country(told: str, folded: str, year: int | None) -> LargerPart | None:
    code = _COUNTRY_OF.get(folded) or _COUNTRY_OF.get(folded.replace(" ", ""))
    if code is None and told.isupper() and told in COUNTRY_NAMES and folded not in _AREA_OF:
        code = told
    if code is None:
        return None
    return LargerPart(told=told, name=COUNTRY_NAMES[code], countries=frozenset({code}), country=code)


def _also_area(db: sqlite3.Connection, found: LargerPart, folded: str) -> LargerPart:
    """A country whose name is also that of another country's area (Georgia) means either."""
    rows = db.execute("SELECT code FROM area_name WHERE folded = ?", (folded,)).fetchall()
    areas = {code for (code,) in rows if code.count(".") == 1 and code[:2] != found.country}
    if not areas:
        return found
    return replace(found, areas=frozenset(areas), countries=found.countries | {code[:2] for code in areas})


def _region(told: str, folded: str, year: int | None) -> LargerPart | None:
    for row in REGIONS:
        if folded in {fold_place(alias) for alias in row.aliases}:
            return LargerPart(told=told, name=row.name, countries=frozenset(row.now), box=row.box)
    return None


def _abbreviation(told: str, folded: str, year: int | None) -> LargerPart | None:
    found = _AREA_OF.get(folded) or _AREA_OF.get(folded.replace(" ", ""))
    if not found:
        return None
    areas = frozenset(f"{iso[:2]}.{NUMBERED[iso]}" if iso in NUMBERED else iso.replace("-", ".") for iso in found)
    return LargerPart(told=told, name=told, areas=areas)


_COUNTY_OF = {fold_place(name): (name, "GB") for name in BRITISH_COUNTIES} | COUNTIES


def _county(db: sqlite3.Connection, told: str, folded: str) -> LargerPart | None:
    """A county of Britain by its name or abbreviation: today's area of that name if there is one."""
    bare = folded.removeprefix("co ").removeprefix("county ")
    if bare not in _COUNTY_OF:
        return None
    name, country = _COUNTY_OF[bare]
    found = _area(db, name, fold_place(name))
    areas = frozenset(code for code in (found.areas if found else ()) if code[:2] == country)
    return LargerPart(told=told, name=name, countries=frozenset({country}), areas=areas, loose=not areas)


_COUNTY_WORDS = ("county ", "co ")
_COUNTY_ENDS = (" county", " co", " parish", " district", " province", " region", " oblast", " maakond", " vald")


def _area(db: sqlite3.Connection, told: str, folded: str) -> LargerPart | None:
    """A first- or second-level area by its own name, with or without “county”."""
    spelled = {folded}
    for start in _COUNTY_WORDS:
        spelled.add(folded.removeprefix(start))
    for end in _COUNTY_ENDS:
        spelled.add(folded.removesuffix(end))
    forms = {form for one in spelled if one for form in (one, f"{one} county", f"county {one}", f"{one} region")}
    marks = ", ".join("?" * len(forms))
    rows = db.execute(f"SELECT code FROM area_name WHERE folded IN ({marks})", tuple(forms)).fetchall()
    if not rows:
        return None
    codes = frozenset(code for (code,) in rows)
    return LargerPart(told=told, name=told, areas=codes, countries=frozenset(code[:2] for code in codes))
