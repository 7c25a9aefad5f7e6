"""Who governed what: the rows of the tables hold together, and each way of asking them has its answer.

The tables' own content is held to named places in `tests/gazetteer/governed`.
"""

from itertools import pairwise

import pycountry
import pytest

from boxlore.core.places.governed import governed_by, lands, small_lands, spans, state_in
from boxlore.core.places.governed_land import Land

ROWS = [land for rows in (*lands().values(), *small_lands().values()) for land in rows]


def test_every_row_has_states_in_order_and_a_source() -> None:
    assert len(ROWS) > 400
    for land in ROWS:
        years = [first for first, _ in spans(land.states)]
        assert years == sorted(set(years)), land
        assert all(1700 <= year <= 2026 for year in years), land
        assert land.source, land
        names = [name for _, name in spans(land.states)]
        assert all(name != following for name, following in pairwise(names)), land


def test_countries_are_those_of_iso_3166() -> None:
    """PyPI `pycountry`; XK for Kosovo is user-assigned."""
    assert set(lands()) - {"XK"} <= {country.alpha_2 for country in pycountry.countries}


def test_a_whole_country_stands_after_its_parts() -> None:
    for country, rows in lands().items():
        whole = [at for at, land in enumerate(rows) if not (land.areas or land.boxes or land.outline)]
        assert whole in ([], [len(rows) - 1]), country


LAND = Land(
    "PL",
    "1815 Kingdom of Prussia; 1919 -; 1920 *",
    "invented for this test",
    areas=("82", "86.3019"),
    boxes=((50.0, 16.0, 54.0, 18.0),),
    outline=((50.0, 16.0), (54.0, 16.0), (54.0, 18.0)),
)
HELD = [
    ("82", "2261", (53.0, 17.0), True),
    ("86", "3019", (53.0, 17.0), True),
    ("86", "3020", (53.0, 17.0), False),  # another second-level area
    ("82", "2261", (53.0, 18.5), False),  # outside the box
    ("82", "2261", (51.0, 17.5), False),  # in the box, outside the triangle
]


@pytest.mark.parametrize(("area1", "area2", "point", "held"), HELD)
def test_what_a_land_holds(area1: str, area2: str, point: tuple[float, float], held: bool) -> None:
    assert LAND.holds(area1, area2, point) is held


@pytest.mark.parametrize(("area1", "may"), [("", True), ("82", True), ("86", True), ("72", False)])
def test_what_a_land_may_hold(area1: str, may: bool) -> None:
    assert LAND.may_hold(area1) is may
    assert Land("PL", "1815 *", "invented for this test").may_hold(area1)


STATES = [(1814, ""), (1815, "Kingdom of Prussia"), (1918, "Kingdom of Prussia"), (1919, ""), (1920, "Poland")]


@pytest.mark.parametrize(("year", "state"), STATES)
def test_a_state_lasts_until_the_next(year: int, state: str) -> None:
    assert state_in(LAND, year) == state


WHOLE = [
    ("NZ", "", 1930, "Dominion of New Zealand"),  # one state for all of it (proclamation of 1907)
    ("UA", "", 1930, ""),  # divided between four states
    ("UA", "", 1960, "Soviet Union"),
    ("UA", "01", 1930, "Soviet Union"),  # Cherkasy
    ("IT", "05", 1850, ""),  # Parma, Modena and the Papal States
    ("AQ", "", 1930, ""),  # of Antarctica nothing is said
    ("NZ", "", None, ""),
]


@pytest.mark.parametrize(("country", "area1", "year", "state"), WHOLE)
def test_a_country_or_area_has_a_state_if_all_of_it_had(country: str, area1: str, year: int | None, state: str) -> None:
    assert governed_by(country, year, area1=area1) == state


POINTS = [
    ("RU", "28", (61.37, 31.85), 1930, "Finland"),  # Salmi (Treaty of Tartu, 1920)
    ("RU", "28", (61.8, 34.3), 1930, "Soviet Union"),  # Petrozavodsk
    ("SK", "03", (48.71, 21.26), 1942, "Hungary"),  # Košice (First Vienna Award, 1938)
    ("AQ", "", (-80.0, 0.0), 1930, ""),
]


@pytest.mark.parametrize(("country", "area1", "point", "year", "state"), POINTS)
def test_a_point_has_the_state_of_the_first_land_that_holds_it(
    country: str, area1: str, point: tuple[float, float], year: int, state: str
) -> None:
    assert governed_by(country, year, area1=area1, point=point) == state


def test_small_lands_are_no_part_of_a_country_as_a_whole() -> None:
    """Neuchâtel (Congress of Vienna 1815), the Bay Islands (proclamation of 1852)."""
    assert governed_by("CH", 1840) == "Switzerland"
    assert governed_by("CH", 1840, area1="NE") != governed_by("CH", 1840, area1="BE") == "Switzerland"
    assert governed_by("HN", 1855, area1="11") == "Bay Islands (British colony)"
    assert governed_by("HN", 1855, point=(14.1, -87.2)) == "Honduras"
