"""What the larger parts of a place say: a country, a former one, an abbreviation, a region, a county.

Each is tried as told and folded, the nearest meaning first; the year tells apart countries that share a name.
"""

import sqlite3
from dataclasses import dataclass

from boxlore.core.places_text import fold_place
from boxlore.core.tables.places_countries import COUNTRY_NAMES
from boxlore.core.tables.places_former import FORMER, Former
from boxlore.core.tables.places_forms import AREAS, COUNTIES, COUNTRIES
from boxlore.core.tables.places_regions import REGIONS

CANADA = {
    "CA-AB": "01", "CA-BC": "02", "CA-MB": "03", "CA-NB": "04", "CA-NL": "05", "CA-NS": "07", "CA-ON": "08",
    "CA-PE": "09", "CA-QC": "10", "CA-SK": "11", "CA-YT": "12", "CA-NT": "13", "CA-NU": "14",
}  # fmt: skip
"""ISO 3166-2 → the area codes of GeoNames (admin1CodesASCII)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Context:
    """One larger part: the countries it lies in now, area codes (`US.MI`), a box, and the former country told."""

    told: str
    name: str
    countries: frozenset[str] = frozenset()
    areas: frozenset[str] = frozenset()
    box: tuple[float, ...] = ()
    former: Former | None = None
    country: str = ""
    """ISO code, where the part is a country of today."""

    def fits(self, country: str, area1: str, area2: str, where: tuple[float, float]) -> float:
        """+0.6 if a place lies in it, -0.4 if only in the same country, -0.7 if elsewhere."""
        if self.areas:
            codes = {f"{country}.{area1}", f"{country}.{area1}.{area2}"}
            if codes & self.areas:
                return 0.6
            return -0.4 if country in {code[:2] for code in self.areas} else -0.7
        if self.box:
            south, west, north, east = self.box
            inside = south <= where[0] <= north and west <= where[1] <= east
            return 0.6 if inside and country in self.countries else -0.7
        return 0.6 if country in self.countries else -0.7


_COUNTRY_OF = {fold_place(name): code for code, name in COUNTRY_NAMES.items()} | {
    fold_place(name): code for name, code in COUNTRIES.items()
}

_AREA_OF: dict[str, list[str]] = {}
for _iso, _forms in AREAS.items():
    for _form in _forms:
        for _spelled in {_form, _form.replace(" ", "")}:
            _AREA_OF.setdefault(_spelled, []).append(_iso)


def context_of(db: sqlite3.Connection, told: str, year: int | None) -> Context | None:
    """What a part means as a context, or None."""
    folded = fold_place(told)
    for find in (_former, _country, _region, _abbreviation, _county):
        found = find(told, folded, year)
        if found is not None:
            return found
    return _area(db, told, folded)


def _former(told: str, folded: str, year: int | None) -> Context | None:
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
    return Context(told=told, name=chosen.name, countries=now, former=chosen)


def _country(told: str, folded: str, year: int | None) -> Context | None:
    code = _COUNTRY_OF.get(folded) or _COUNTRY_OF.get(folded.replace(" ", ""))
    if code is None and told.isupper() and told in COUNTRY_NAMES and told not in _AREA_OF:
        code = told
    if code is None:
        return None
    return Context(told=told, name=COUNTRY_NAMES[code], countries=frozenset({code}), country=code)


def _region(told: str, folded: str, year: int | None) -> Context | None:
    for row in REGIONS:
        if folded in {fold_place(alias) for alias in row.aliases}:
            return Context(told=told, name=row.name, countries=frozenset(row.now), box=row.box)
    return None


def _abbreviation(told: str, folded: str, year: int | None) -> Context | None:
    found = _AREA_OF.get(folded) or _AREA_OF.get(folded.replace(" ", ""))
    if not found:
        return None
    areas = frozenset(f"CA.{CANADA[iso]}" if iso in CANADA else iso.replace("-", ".") for iso in found)
    return Context(told=told, name=told, areas=areas)


def _county(told: str, folded: str, year: int | None) -> Context | None:
    if folded in COUNTIES:
        name, country = COUNTIES[folded]
        return Context(told=told, name=name, countries=frozenset({country}))
    return None


_COUNTY_WORDS = ("county ", "co ")
_COUNTY_ENDS = (" county", " co", " parish", " district", " province", " region", " oblast", " maakond", " vald")


def _area(db: sqlite3.Connection, told: str, folded: str) -> Context | None:
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
    return Context(told=told, name=told, areas=codes, countries=frozenset(code[:2] for code in codes))
