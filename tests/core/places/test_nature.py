"""Tables of nature and of quarters: every row is read, lies on the earth, and stands once in its country."""

from collections import Counter

import pycountry

from boxlore.core.places.nature import (
    features_of_lines,
    is_other_kind,
    is_written_so,
    regions_by_bare_name,
    regions_by_name,
    rivers_of_bare_name,
    without_kind_word,
)
from boxlore.core.places.nature_north_table import NATURE_NORTH
from boxlore.core.places.nature_overseas_table import NATURE_OVERSEAS
from boxlore.core.places.nature_south_table import NATURE_SOUTH
from boxlore.core.places.quarters import quarters
from boxlore.core.places.quarters_table import QUARTERS
from boxlore.core.places.villages_table import VILLAGES

TABLES = (NATURE_NORTH, NATURE_SOUTH, NATURE_OVERSEAS, VILLAGES)


def test_every_row_is_read() -> None:
    """Rows end with `;` or with their line, which begins with countries and a colon."""
    for table in TABLES:
        assert len(list(features_of_lines(table))) == table.count(";") + table.count(": ")
    assert len(list(quarters())) == QUARTERS.count(";") + QUARTERS.count(": ")


def test_every_row_is_known_by_a_name() -> None:
    """None has only names that a finer table, or an earlier row, has in its country."""
    known = {region for regions in regions_by_name().values() for region in regions}
    rows = [feature.region for table in TABLES for feature in features_of_lines(table)]
    assert [row.name for row in rows if row not in known] == []
    assert [row.name for row, times in Counter(rows).items() if times > 1] == []


def test_rows_lie_on_the_earth_in_countries_that_there_are() -> None:
    features = [feature for table in TABLES for feature in features_of_lines(table)]
    wrong = [feature.name for feature in features if not (-90 <= feature.lat <= 90 and -180 <= feature.lon <= 180)]
    codes = {code for feature in features for code in feature.countries.split()} | {row.country for row in quarters()}
    assert wrong == []
    assert [code for code in codes - {"XK"} if pycountry.countries.get(alpha_2=code) is None] == []  # Kosovo: GeoNames'


KNOWN_HEIGHTS = {
    "mt everest": (27.99, 86.93), "kekesteto": (47.87, 20.01), "nanda devi": (30.38, 79.97),
    "ben nevis": (56.80, -5.00), "mt logan": (60.57, -140.41), "rysy": (49.18, 20.09), "galdhopiggen": (61.64, 8.31),
    "mulhacen": (37.05, -3.31), "mt kosciuszko": (-36.46, 148.26), "gerlachovsky stit": (49.16, 20.13),
    "mt rainier": (46.85, -121.76), "carrauntoohil": (52.00, -9.74),
}  # fmt: skip
"""Summits as maps have them, in degrees, from memory: another list than the tables were made from."""


def test_summits_are_in_their_boxes() -> None:
    for name, (lat, lon) in KNOWN_HEIGHTS.items():
        south, west, north, east = regions_by_name()[name][0].box
        assert south <= lat <= north and west <= lon <= east, name


def test_a_word_for_the_kind_may_be_told_or_left_out() -> None:
    rows = {
        "fleuve du saint laurent": "st laurent", "river tisza": "tisza", "tisza folyo": "tisza", "mjosa": "mjosa",
        "lake": "lake", "lake of the woods": "woods", "ile de la": "la", "mt cook": "cook",
    }  # fmt: skip
    assert {told: without_kind_word(told) for told in rows} == rows
    assert regions_by_bare_name()["peipus"][0].name == "Lake Peipus"


def test_a_word_for_another_kind_tells_of_another_thing() -> None:
    rows = {
        ("gulf country", "Hill Country"): True, ("lake tisza", "River Tisza"): True, ("river tisza", "Tisza"): False,
        ("yarra valley", "Yarra River"): False, ("tisza", "River Tisza"): False, ("tisza folyo", "River Tisza"): False,
        ("", "River Tisza"): False,
    }  # fmt: skip
    assert {pair: is_other_kind(pair[0], [pair[1]]) for pair in rows} == rows


def test_a_river_may_be_told_by_its_name_alone() -> None:
    assert [row.name for row in rivers_of_bare_name("taieri")] == ["Taieri River"]
    assert rivers_of_bare_name("cook") == []


def test_a_name_of_two_countries_means_two_and_one_of_a_region_the_region() -> None:
    avon = {code for region in regions_by_bare_name()["avon"] for code in region.now}
    assert {"GB", "NZ"} <= avon
    assert "mull" not in regions_by_name()
    assert [region.name for region in regions_by_name()["mon"]] == ["Møn"]  # beside Monmouthshire's `Mon.`


def test_a_name_with_marks_is_written_so_in_the_tables_or_not() -> None:
    rows = {"Rømø": True, "rømø": True, "Römö": False, "Romo": False, "Крым": False, "Zürich": False}
    assert {words: is_written_so(words) for words in rows} == rows


def test_a_quarter_with_a_bracket_or_of_two_cities_is_shared() -> None:
    shared = {(row.city, row.names[0]): row.shared for row in quarters()}
    assert shared["Dunedin", "St Kilda"] and shared["Melbourne", "St Kilda"]
    assert not shared["Tallinn", "Kopli"]
