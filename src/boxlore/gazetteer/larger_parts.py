"""The larger parts of a told place, such as `Estonia` in `Reval, Estonia`, and what each may mean.

One word may mean several: `Kent` is a county of England and one of Delaware, `S.A.` South Africa and South Australia.
The meanings come in this order: a former country, a country, a region, an abbreviation, an area of today. The year
tells apart a former country and one of today that share a name; the other parts told decide between the rest.
"""

import re
import sqlite3
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from boxlore.core.places.abbreviations_table import AREAS, COUNTRIES
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.country_words_table import COUNTRY_WORDS
from boxlore.core.places.former_countries_table import FORMER, Former
from boxlore.core.places.historic_regions_table import REGIONS, Region
from boxlore.core.places.nature import (
    is_other_kind,
    is_written_so,
    regions_by_bare_name,
    regions_by_name,
    rivers_of_bare_name,
    without_kind_word,
)
from boxlore.core.places.regions_europe_table import REGIONS_EUROPE
from boxlore.core.places.regions_isles_table import REGIONS_ISLES
from boxlore.core.places.regions_overseas_table import REGIONS_OVERSEAS
from boxlore.core.places.taking_apart import fold_place

NUMBERED = {
    "CA-AB": "01", "CA-BC": "02", "CA-MB": "03", "CA-NB": "04", "CA-NL": "05", "CA-NS": "07", "CA-ON": "08",
    "CA-PE": "09", "CA-QC": "10", "CA-SK": "11", "CA-YT": "12", "CA-NT": "13", "CA-NU": "14",
    "AU-ACT": "01", "AU-NSW": "02", "AU-NT": "03", "AU-QLD": "04", "AU-SA": "05", "AU-TAS": "06", "AU-VIC": "07",
    "AU-WA": "08",
}  # fmt: skip
"""ISO 3166-2 -> the area's code in GeoNames (admin1CodesASCII), where it is a number."""


ELSEWHERE = -0.7
"""The score of a place that lies in another country than the told one, or outside a told region."""


LONGEST_SHORT = 4
"""A country told in more letters than this, blanks counted, means nothing else (`S.A.` may be South Australia)."""


LONGEST_OF_NO_SLIP = 5
"""The name of a lake or a mountain of more letters is known with one letter wrong, not the first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LargerPart:
    """One meaning of a larger part.

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
    natural: bool = False
    """Whether it is a mountain, a lake or the like, so that a town of its name is another thing."""
    doubtful: bool = False
    """Whether it is an abbreviation that might as well mean another part that fits (`Adelaide, S.A.`)."""

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
            return 0.6 if self.holds(point) and country in self.countries else ELSEWHERE
        return 0.6 if country in self.countries else ELSEWHERE

    def holds(self, point: tuple[float, float]) -> bool:
        """Whether a point lies in its box."""
        south, west, north, east = self.box
        return south <= point[0] <= north and west <= point[1] <= east


def countries_of(part: LargerPart) -> frozenset[str]:
    """The countries of today (ISO 3166-1) that a part lies in."""
    return part.countries or frozenset(code[:2] for code in part.areas)


def _also_joined(form: str) -> set[str]:
    """A form and, if all its words have one or two letters, the same without blanks: `o f s`, `ofs` for O.F.S."""
    short = all(len(word) <= 2 for word in form.split())
    return {form, form.replace(" ", "")} if short else {form}


_AREA_OF: dict[str, list[str]] = {}
for _iso, _forms in AREAS.items():
    for _form in _forms:
        for _spelled in {_form, _form.replace(" ", "")}:
            _AREA_OF.setdefault(_spelled, []).append(_iso)

_FORMER_OF: dict[str, list[Former]] = {}
for _former_row in FORMER:
    for _folded in {fold_place(alias) for alias in _former_row.aliases}:
        _FORMER_OF.setdefault(_folded, []).append(_former_row)

_REGIONS_OF: dict[str, list[Region]] = {}
for _region_row in (*REGIONS, *REGIONS_ISLES, *REGIONS_OVERSEAS, *REGIONS_EUROPE):
    for _folded in {spelled for alias in _region_row.aliases for spelled in _also_joined(fold_place(alias))}:
        _REGIONS_OF.setdefault(_folded, []).append(_region_row)


def features_of(words: str) -> list[LargerPart]:
    """The mountains, lakes and the like of this name."""
    by_name = regions_by_name()
    folded, bare = fold_place(words), fold_place(_ARTICLE.sub("", words))
    is_river = bare != folded and not {bare, folded} & _REGIONS_OF.keys()  # `the Murray`
    return _natural(words, by_name.get(folded) or by_name.get(bare) or (rivers_of_bare_name(bare) if is_river else []))


_ARTICLE = re.compile(r"^(?:the|a|az|die|der|das|la|le|les|il|lo|el|de|het)\s+", re.IGNORECASE)


def features_without_kind(words: str) -> list[LargerPart]:
    """Those of this name but for the word for the kind: `River Tisza`, `Tisza folyó`, `the Saint John River`."""
    folded = fold_place(_ARTICLE.sub("", words))
    bare = without_kind_word(folded)
    if bare == folded:
        return []
    rows = regions_by_name().get(bare) or regions_by_bare_name().get(bare, [])
    return _natural(words, [row for row in rows if not is_other_kind(folded, (row.name, *row.aliases))])


def _natural(words: str, rows: Iterable[Region]) -> list[LargerPart]:
    if words.islower():
        return []
    return [
        LargerPart(words=words, name=row.name, countries=frozenset(row.now), box=row.box, natural=True) for row in rows
    ]


def features_like(words: str) -> list[LargerPart]:
    """The mountains, lakes and the like whose name differs by one letter, of a long name: `Lake Wakatip`."""
    folded = fold_place(words)
    if len(folded) <= LONGEST_OF_NO_SLIP or words.islower():
        return []
    like = process.extractOne(folded, _long_names(), scorer=OSA.distance, score_cutoff=1)
    return features_of(like[0].title()) if like is not None and like[0][0] == folded[0] else []


@cache
def _long_names() -> list[str]:
    return [name for name in regions_by_name() if len(name) > LONGEST_OF_NO_SLIP]


_COUNTRY_IN_OTHER_WORDS = {
    name: code for code, names in COUNTRY_WORDS.items() for name in names.split("|") if name not in _REGIONS_OF
}
_COUNTRY_OF = (
    _COUNTRY_IN_OTHER_WORDS
    | {fold_place(name): code for code, name in COUNTRY_NAMES.items()}
    | {fold_place(name): code for name, code in COUNTRIES.items()}
)
"""A word for a country that is also one for a region of our tables means that (`Estland`)."""


def is_known_larger_part(folded: str) -> bool:
    """Whether a folded name is one of a country, of four letters at least, or a longer one of a region."""
    if len(folded) == LONGEST_SHORT:
        return folded in _COUNTRY_OF  # `Lätis`
    return len(folded) > LONGEST_SHORT and (folded in _COUNTRY_OF or folded in _REGIONS_OF or folded in _FORMER_OF)


def meanings_of(db: sqlite3.Connection, words: str, year: int | None) -> list[LargerPart]:
    """What a part may mean as a larger part of a place, the likeliest first; empty if it means nothing of that kind.

    `year` is the year of the picture. A country of today with an area of its name (Georgia) is one meaning.
    """
    folded = fold_place(words)
    if not folded:
        return []
    former, country = _former(words, folded, year), _country(words, folded)
    meanings = [former] if former else [_also_area(db, country, folded)] if country else []
    if country and not former:
        meanings += _of_other_years(words, folded)
    if meanings and len(folded) > LONGEST_SHORT:
        return meanings
    features = features_of(words)
    if is_written_so(words):
        return meanings + features
    meanings += features if len(folded) > LONGEST_SHORT else []
    meanings += _regions(words, folded)
    abbreviation = _abbreviation(words, folded)
    meanings += [*([abbreviation] if abbreviation else []), *_areas(db, words, folded)]
    return meanings + (features if len(folded) <= LONGEST_SHORT else [])


def _former(words: str, folded: str, year: int | None) -> LargerPart | None:
    """A former country. If a country of today has the same name, it is meant only in a year of its own time."""
    in_english = fold_place(COUNTRY_NAMES.get(_COUNTRY_IN_OTHER_WORDS.get(folded, ""), ""))
    of_that_name = _FORMER_OF.get(folded) or _FORMER_OF.get(in_english, [])
    in_its_time = [row for row in of_that_name if year is not None and row.first <= year <= row.last]
    if in_its_time:
        chosen = min(in_its_time, key=lambda row: (row.last - row.first, len(row.now)))
    elif of_that_name and folded not in _COUNTRY_OF:
        chosen = of_that_name[0]
    else:
        return None
    now = frozenset(code for row in (in_its_time or [chosen]) for code in row.now)
    return LargerPart(words=words, name=chosen.name, countries=now, former=chosen)


def _of_other_years(words: str, folded: str) -> list[LargerPart]:
    """Former countries of the name of one of today, told without a year of theirs: with a doubt (`Wiborg, Finland`)."""
    english = fold_place(COUNTRY_NAMES.get(_COUNTRY_IN_OTHER_WORDS.get(folded, ""), ""))
    rows = _FORMER_OF.get(folded) or _FORMER_OF.get(english, [])
    return [
        LargerPart(words=words, name=row.name, countries=frozenset(row.now), former=row, doubtful=True) for row in rows
    ]


def _country(words: str, folded: str) -> LargerPart | None:
    code = _COUNTRY_OF.get(folded) or _COUNTRY_OF.get(folded.replace(" ", "")) or _SHORT_COUNTRY.get(folded)
    if code is None and words.isupper() and words in COUNTRY_NAMES and folded not in _AREA_OF:
        code = words
    if code is None:
        return None
    return LargerPart(words=words, name=COUNTRY_NAMES[code], countries=frozenset({code}), country=code)


_SHORT_COUNTRY = {joined: code for name, code in COUNTRIES.items() for joined in _also_joined(name)}


def _also_area(db: sqlite3.Connection, country: LargerPart, folded: str) -> LargerPart:
    """The country, with the areas of other countries that bear its name (Georgia), since either may be meant."""
    rows = db.execute("SELECT code FROM area_name WHERE folded = ?", (folded,)).fetchall()
    areas = {code for (code,) in rows if code.count(".") == 1 and code[:2] != country.country}
    if not areas:
        return country
    return replace(country, areas=frozenset(areas), countries=country.countries | {code[:2] for code in areas})


_COUNTY_WORDS = (
    "county ", "co ", "province of ", "district of ", "parish of ", "isle of ", "island of ", "government of ",
    "gouvernement ", "gouv ", "gubernia ", "provinz ", "prov ", "insel ", "territory of ", "wojewodztwo ", "powiat ",
    "kreis ", "landkreis ", "judetul ", "provincia di ", "provincia de ", "departement ", "kanton ", "canton of ",
)  # fmt: skip

_COUNTY_ENDS = (
    " county", " co", " parish", " district", " province", " region", " oblast", " maakond", " vald", " shire",
    " government", " governorate", " gubernia", " guberniya", " gub", " krai", " kray", " island", " islands",
    " territory", " terr", " ter", " voivodeship", " land", " state", " megye", " varmegye", " fylke", " lan",
    " kommun", " kommune", " rajons", " novads", " pagasts", " apskritis", " rajonas", " zupanija", " kraj", " judet",
    " kihelkond", " powiat", " wojewodztwo", " kreis", " landkreis", " губерния", " область", " уезд", " край",
)  # fmt: skip
"""Words that say of what kind an area is, and that one may leave out."""


def is_kind_of_area(words: str) -> bool:
    """Whether words are only one for a kind of area: `megye`."""
    folded = fold_place(words)
    return f" {folded}" in _COUNTY_ENDS or f"{folded} " in _COUNTY_WORDS


def _plain_forms(folded: str) -> list[str]:
    """The folded words, and the same without an article or a word for the kind of the area; `the chathams` is
    `chatham islands`."""
    forms = [folded, folded.removeprefix("the ")]
    forms += [f"{form[:-1]} islands" for form in forms if form.endswith("s") and len(form) > LONGEST_SHORT]
    forms += [folded.removeprefix(start) for start in _COUNTY_WORDS if folded.startswith(start)]
    forms += [folded.removesuffix(end) for end in _COUNTY_ENDS if folded.endswith(end)]
    return list(dict.fromkeys(form for form in forms if form))


def _regions(words: str, folded: str) -> list[LargerPart]:
    """The regions of our tables of this name, with or without a word such as `county`."""
    rows = _REGIONS_OF.get(folded, [])
    for form in _plain_forms(folded):
        rows = rows or _REGIONS_OF.get(form, [])
    return [LargerPart(words=words, name=row.name, countries=frozenset(row.now), box=row.box) for row in rows]


def _abbreviation(words: str, folded: str) -> LargerPart | None:
    forms = _plain_forms(folded)
    iso_codes = next((_AREA_OF[form] for form in (*forms, folded.replace(" ", "")) if form in _AREA_OF), None)
    if iso_codes is None:
        return None
    areas = frozenset(f"{iso[:2]}.{NUMBERED[iso]}" if iso in NUMBERED else iso.replace("-", ".") for iso in iso_codes)
    return LargerPart(words=words, name=words, areas=areas)


def _areas(db: sqlite3.Connection, words: str, folded: str) -> list[LargerPart]:
    """Areas of today by their name, with or without a word such as `county`: the first-level ones are one meaning,
    the second-level ones another.
    """
    is_island = folded.endswith((" island", " islands")) or folded.startswith(("isle of ", "island of "))
    forms = {form for plain in _plain_forms(folded) for form in ((plain,) if is_island else _area_forms(plain))}
    marks = ", ".join("?" * len(forms))
    rows = db.execute(f"SELECT code FROM area_name WHERE folded IN ({marks})", tuple(forms)).fetchall()
    levels = (frozenset(code for (code,) in rows if code.count(".") == level) for level in (1, 2))
    return [
        LargerPart(words=words, name=words, areas=codes, countries=frozenset(code[:2] for code in codes))
        for codes in levels
        if codes
    ]


def _area_forms(spelling: str) -> Iterable[str]:
    return (spelling, f"{spelling} county", f"county {spelling}", f"{spelling} region", f"{spelling} oblast")
