"""Written forms of places as case files, and coordinates and codes against open data that are not GeoNames'.

A case: words, year, kind, GeoNames id, first choice today, country, called then, state then, whether there is a
finding. Ids are those of GeoNames (CC BY 4.0); what was called and governed how and when is from memory.
To add a case, add a line.
"""

from importlib.resources import files
from pathlib import Path

import pycountry
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row, every_row_by_group

from boxlore.core.places.abbreviations_table import AREAS
from boxlore.core.places.countries_table import COUNTRY_NAMES
from boxlore.core.places.former_countries_table import FORMER
from boxlore.core.places.reading import distance_km, full_name
from boxlore.gazetteer.lookup import Gazetteer, open_gazetteer
from boxlore.gazetteer.matching import ToldPlaces, told_often

HERE = Path(__file__).parent / "cases"


def cases() -> dict[str, list[tuple[str, ...]]]:
    return {path.stem: _rows(path) for path in sorted(HERE.glob("*.txt"))}


def _rows(path: Path) -> list[tuple[str, ...]]:
    lines = path.read_text(encoding="utf-8").splitlines()
    return [tuple(cell.strip() for cell in line.split("|")) for line in lines if line.strip() and line[0] != "#"]


CASES = cases()


@pytest.fixture(scope="module")
def gazetteer() -> Gazetteer:
    return open_gazetteer()


def test_towns_by_their_size(gazetteer: Gazetteer) -> None:
    """Tallinn, 59.437 N, 24.754 E (GeoNames 588409): of more than 100,000, and of less than 10 million."""
    large, largest = gazetteer.towns(100_000), gazetteer.towns(10_000_000)
    assert (59.44, 24.75) in {(round(lat, 2), round(lon, 2)) for lat, lon, _ in large}
    assert (59.44, 24.75) not in {(round(lat, 2), round(lon, 2)) for lat, lon, _ in largest}
    assert 0 < len(largest) < len(large)


def test_how_many_cases_there_are() -> None:
    assert sum(map(len, CASES.values())) >= 570
    assert {len(case) for rows in CASES.values() for case in rows} == {9}


@every_row_by_group("case", CASES)
def test_case(case: tuple[str, ...], gazetteer: Gazetteer) -> None:
    words, year, kind, ident, name, country, called, state, asks = case
    found = gazetteer.read(words, year=None if year == "-" else int(year))
    assert (found.kind, bool(found.findings)) == (kind, asks == "asks")
    first = found.choices[0] if found.choices else None
    assert str(first.geonames or "-") if first else ident == "-"
    assert (full_name(first) if first else "-") == name
    assert ((first.country_code if first else "") or "-") == country
    assert ((first.called_then if first else "") or "-") == called
    assert ((first.country_then if first else "") or "-") == state
    assert str(first.geonames if first and first.geonames else "-") == ident


@every_row_by_group("case", CASES)
def test_no_told_word_is_lost(case: tuple[str, ...], gazetteer: Gazetteer) -> None:
    assert gazetteer.read(case[0]).text == case[0]


# the tz database (public domain, PyPI `tzdata`): one city a zone with its coordinates in degrees and minutes


def _zones() -> list[tuple[str, str, float, float]]:
    rows = []
    for line in files("tzdata").joinpath("zoneinfo/zone.tab").read_text(encoding="utf-8").splitlines():
        if not line.startswith("#"):
            country, where, zone = line.split("\t")[:3]
            cut = max(where.rfind("+"), where.rfind("-"))
            name = zone.rsplit("/", 1)[1].replace("_", " ")
            rows.append((country, name, _degrees(where[:cut]), _degrees(where[cut:])))
    return rows


def _degrees(text: str) -> float:
    """±DDMM, ±DDDMM, ±DDMMSS or ±DDDMMSS (ISO 6709)."""
    digits = text[1:]
    whole = 3 if len(digits) in (5, 7) else 2
    value = int(digits[:whole]) + int(digits[whole : whole + 2]) / 60 + int(digits[whole + 2 :] or 0) / 3600
    return -value if text[0] == "-" else value


NOT_THE_TOWN = {
    "Sakhalin": "the island's zone",
    "Chatham": "the islands' zone",
    "Macquarie": "an island in the Southern Ocean; the gazetteer has a suburb of that name",
    "Thule": "the air base; the settlement moved north in 1953",
}


@pytest.fixture(scope="module")
def measured(gazetteer: Gazetteer) -> dict[str, float]:
    found = {}
    for country, name, lat, lon in _zones():
        if name in NOT_THE_TOWN or country not in COUNTRY_NAMES:
            continue
        read = gazetteer.read(f"{name}, {COUNTRY_NAMES[country]}")
        if read.kind == "match" and read.choices[0].lat is not None and read.choices[0].lon is not None:
            found[f"{name}, {country}"] = distance_km((lat, lon), (read.choices[0].lat, read.choices[0].lon))
    return found


def test_coordinates_against_the_tz_database(measured: dict[str, float]) -> None:
    """Five kilometres, and a mile for their whole minutes; the few beyond are large cities with another centre."""
    assert len(measured) >= 200
    near = [name for name, away in measured.items() if away <= 5 + 1.85]
    assert len(near) / len(measured) >= 0.92
    assert not {name: round(away) for name, away in measured.items() if away > 30}


CITIES = ["Tallinn, EE", "Riga, LV", "Vilnius, LT", "Helsinki, FI", "Auckland, NZ", "Dublin, IE", "London, GB"]


@pytest.mark.parametrize("city", CITIES)
def test_the_cities_of_our_families_lie_where_the_tz_database_has_them(city: str, measured: dict[str, float]) -> None:
    assert measured[city] <= 5 + 1.85


# codes against pycountry (ISO 3166-1, 3166-2, 3166-3; independent of GeoNames)


def test_country_codes_are_those_of_iso_3166() -> None:
    ours, theirs = set(COUNTRY_NAMES), {country.alpha_2 for country in pycountry.countries}
    assert ours - theirs <= {"XK"}  # Kosovo: a user-assigned code
    assert not theirs - ours


@every_row("code", AREAS)
def test_area_codes_are_those_of_iso_3166_2(code: str) -> None:
    assert pycountry.subdivisions.get(code=code) is not None


FIRST_LEVEL = [
    ("Chicago, Ill.", "US", "IL"),
    ("Portland, Ore.", "US", "OR"),
    ("Boston, MA", "US", "MA"),
]


@pytest.mark.parametrize(("words", "country", "code"), FIRST_LEVEL)
def test_first_level_areas_bear_the_names_of_iso_3166_2(
    words: str, country: str, code: str, gazetteer: Gazetteer
) -> None:
    first = gazetteer.read(words).choices[0]
    found = pycountry.subdivisions.get(code=f"{country}-{code}")
    assert found is not None
    assert (first.admin1, first.admin1_code) == (found.name, code)


WITHDRAWN = {"Czechoslovakia": "CSHH", "Soviet Union": "SUHH", "German Democratic Republic": "DDDE"}


def test_states_did_not_end_on_the_day_their_code_was_withdrawn() -> None:
    """ISO 3166-3 withdrew CS in 1993, SU in 1992, DD in 1990: our years are those of the states, not of the codes."""
    last = {row.name: row.last for row in FORMER}
    for name, code in WITHDRAWN.items():
        withdrawn = pycountry.historic_countries.get(alpha_4=code)
        assert withdrawn is not None
        if name in last:
            assert last[name] <= int(withdrawn.withdrawal_date[:4])


HOSTILE = ["a" * 10_000, "\x00\x1b[2J", "'; DROP TABLE place;--", "\u202edlof", "[/b]", "%_%", ",,,,,,", "/" * 200]


@every_row("words", HOSTILE)
def test_hostile_words_are_kept_as_told(words: str, gazetteer: Gazetteer) -> None:
    found = gazetteer.read(words)
    assert (found.kind, found.text) == ("kept", words)


@drawn(60)
@given(st.text(max_size=40), st.none() | st.integers(1500, 2100))
def test_no_text_ever_fails(words: str, year: int | None) -> None:
    assert open_gazetteer_once().read(words, year=year).text == words


_ONE: list[Gazetteer] = []


def open_gazetteer_once() -> Gazetteer:
    if not _ONE:
        _ONE.append(open_gazetteer())
    return _ONE[0]


FAMILY = [  # GeoNames ids of places told already, words, where the first choice lies with them and without
    ({2208238}, "Milton", "NZ", "CA"),  # Port Chalmers
    ({2655984}, "Newcastle", "GB", "ZA"),  # Belfast
    ({2147714}, "Newcastle", "AU", "ZA"),  # Sydney
    ({6167865}, "London", "CA", "GB"),  # Toronto
]


@pytest.mark.parametrize(("used", "words", "country", "without"), FAMILY, ids=lambda value: str(value))
def test_the_familys_country_comes_first(
    used: set[int], words: str, country: str, without: str, gazetteer: Gazetteer
) -> None:
    """Our rule: it comes first and asks, for only a place that was told already becomes a match by it."""
    at_home, elsewhere = gazetteer.read(words, used=told_often(dict.fromkeys(used, 1))), gazetteer.read(words)
    assert (at_home.choices[0].country_code, elsewhere.choices[0].country_code) == (country, without)
    assert at_home.kind != "match"


TOLD = _rows(Path(__file__).parent / "told" / "places.txt")
"""Collections by what they have told, and what words mean in them; to add either, add a line."""
COLLECTIONS: dict[str, ToldPlaces] = {
    row[0].removeprefix("= "): told_often(
        {
            int(ident): int(times or 1)
            for ident, _, times in (place.strip().partition("×") for place in row[1].split(","))
        }
    )
    for row in TOLD
    if row[0].startswith("=")
}


@every_row(("told", "words", "year", "name", "kind"), [row for row in TOLD if row[0] in COLLECTIONS])
def test_what_words_mean_beside_what_was_told(
    told: str, words: str, year: str, name: str, kind: str, gazetteer: Gazetteer
) -> None:
    read = gazetteer.read(words, year=None if year == "-" else int(year), used=COLLECTIONS[told])
    names = [full_name(place) for place in read.choices]
    assert names[0] == name, names
    assert len(names) == len(set(names)), names
    assert kind in ("-", read.kind)


AT_HOME = _rows(Path(__file__).parent / "at_home" / "places.txt")
"""Countries of the family, words, year, the first choice and the kind; to add a case, add a line."""


@every_row(("home", "words", "year", "name", "kind"), AT_HOME)
def test_what_words_mean_at_home(home: str, words: str, year: str, name: str, kind: str, gazetteer: Gazetteer) -> None:
    lands = frozenset(home.replace("-", "").split())
    read = gazetteer.read(words, year=None if year == "-" else int(year), home=lands)
    assert (full_name(read.choices[0]) if read.choices else "-", read.kind) == (name, kind)


def test_how_many_rows_of_told_places_there_are() -> None:
    assert len([row for row in TOLD if row[0] in COLLECTIONS]) + len(COLLECTIONS) == len(TOLD)


OF_HOME: list[tuple[str, str, int, tuple[str, ...]]] = [
    ("NZ", "Palmerston", 1920, ("Palmerston, Otago, New Zealand", "Palmerston North, Manawatu-Wanganui, New Zealand")),
    ("NZ", "Trentham Camp", 1915, ()),
    ("NZ", "Trentham Military Camp", 1915, ()),
    ("US", "Cook County", 1910, ("Cook County, Illinois, United States", "Cook County, Georgia, United States")),
    ("PL", "Praga", 1930, ("Prague, Czechia", "Praga Południe, Mazovia, Poland")),
    ("PL", "pod Lwowem", 1935, ("near Lviv, Lviv, Ukraine",)),
    ("US", "Grosse Pointe", 1950, ("Grosse Pointe, Michigan, United States",)),
    ("US", "Dearborn", 1950, ("Dearborn, Michigan, United States",)),
    ("ES", "San Sebastián", 1930, ("Donostia / San Sebastián, Basque Country, Spain",)),
    (
        "FR",
        "Belleville",
        1930,
        ("Belleville, Auvergne-Rhône-Alpes, France", "Belleville, Paris, Île-de-France, France"),
    ),
    ("NZ", "St Clair", 1950, ("St Clair, Dunedin, Otago, New Zealand",)),
    ("AU", "Botany Bay", 1920, ("Botany Bay, Australia",)),
    ("AU", "Broken Hill Hospital", 1930, ("Broken Hill Hospital, Broken Hill, New South Wales, Australia",)),
    ("IE", "Lahinch Strand", 1936, ("Lahinch Strand, Lehinch, Munster, Ireland",)),
    ("DE", "Kurhaus Wiesbaden", 1920, ("Wiesbaden, Hesse, Germany",)),
    ("IE", "Trentham", 1930, ("Trentham, New Zealand", "Trentham, Victoria, Australia")),
    ("FI", "mökillä", 1970, ()),
    ("NZ", "Mt Peel", 1930, ()),
    ("NZ", "Waiouru Military Camp", 1942, ("Waiouru Military Camp, Waiouru, Manawatu-Wanganui, New Zealand",)),
    ("US", "Camp Grant", 1918, ()),
    ("ZA", "Table Mt.", 1930, ("Table Mountain, South Africa",)),
    ("US", "Quito", 1950, ("Quito, Pichincha, Ecuador",)),
]
"""Country of the family, words, year, the first choices: what is told at home is meant there (our rule)."""


def test_the_countries_of_the_settings_come_first(gazetteer: Gazetteer) -> None:
    """Our rule, as for places told already; what is told with its region stays where that is."""
    home = frozenset({"NZ"})
    for country, words, year, shown in OF_HOME:
        read = gazetteer.read(words, year=year, home=frozenset({country}))
        assert [full_name(place) for place in read.choices][: len(shown)] == list(shown), words
        assert read.kind != "match"
    assert gazetteer.read("the Bluff", home=home).choices[0].country_code == "NZ"
    assert gazetteer.read("Milton", home=home).choices[0].country_code == "NZ"
    assert gazetteer.read("Milton, Ontario", home=home).choices[0].country_code == "CA"
    assert gazetteer.read("Milton or Gore", home=home).choices[0].country_code == "NZ"


def test_words_met_again_cost_nothing(gazetteer: Gazetteer) -> None:
    assert gazetteer.read("Hokitika, Westland") is gazetteer.read("Hokitika, Westland")


GOVERNED = _rows(Path(__file__).parent / "governed" / "places.txt")
"""Place, country, year and state, one a line; to add a case, add a line."""


def test_how_many_places_and_years_there_are() -> None:
    assert len(GOVERNED) >= 600
    assert {len(row) for row in GOVERNED} == {4}


@every_row(("name", "country", "year", "state"), GOVERNED)
def test_who_governed_it_then(name: str, country: str, year: str, state: str, gazetteer: Gazetteer) -> None:
    first = gazetteer.read(f"{name}, {COUNTRY_NAMES[country]}", year=int(year)).choices[0]
    assert (first.country_code, first.country_then) == (country, state)
