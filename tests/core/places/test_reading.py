"""The reading of a place: its JSON form both ways, what is no such form, and how a place is written."""

import json
from dataclasses import replace
from typing import Any

import pytest
from tests.every_row import every_row

from boxlore.core.findings import Finding, Severity
from boxlore.core.places.reading import (
    Place,
    PlaceReading,
    coordinates,
    dcmi_box,
    dcmi_point,
    distance_km,
    full_name,
    said_in_all,
)

KEYS = [
    "name", "city", "sublocation", "admin1", "admin1_code", "admin2", "country", "country_code", "called_then",
    "country_then", "lat", "lon", "radius_km", "near", "geonames", "box", "full",
]  # fmt: skip
"""The members of a choice and their order, as the command's JSON is published (our own form)."""

TALLINN = Place(
    name="Tallinn", city="Tallinn", admin1="Harju", admin1_code="01", country="Estonia", country_code="EE",
    called_then="Reval", country_then="Russian Empire", lat=59.43696, lon=24.75353, radius_km=5, geonames=588409,
)  # fmt: skip
"""Coordinates and id from GeoNames (cities500)."""

ESTONIA = Place(name="Estonia", country="Estonia", country_code="EE", box=(57.5, 21.8, 59.7, 28.2))
ASKS = Finding(rule="place.then", severity=Severity.ASK, message="Which of the two?", source="ours")

NEAR_TALLINN = replace(TALLINN, near=True, radius_km=15)

READINGS = [
    PlaceReading("Reval", "match", (TALLINN,)),
    PlaceReading("near Reval", "match", (NEAR_TALLINN,)),
    PlaceReading("Reval or Estonia", "choices", (TALLINN, ESTONIA), (ASKS,)),
    PlaceReading("Nõmme", "kept"),
]


@pytest.mark.parametrize("reading", READINGS, ids=lambda reading: reading.text)
def test_both_ways(reading: PlaceReading) -> None:
    told = json.loads(json.dumps(reading.to_json(), ensure_ascii=False))
    assert list(told) == ["text", "kind", "choices", "findings"]
    assert all(list(choice) == KEYS for choice in told["choices"])
    assert PlaceReading.from_json(told) == reading


def test_the_best_is_the_first() -> None:
    assert [reading.best for reading in READINGS] == [TALLINN, NEAR_TALLINN, TALLINN, None]


def test_what_an_older_reading_leaves_out_is_not_known() -> None:
    reading = PlaceReading.from_json({"choices": [{"name": "Tallinn", "lat": 59, "lon": 24.7}]})
    assert (reading.kind, reading.text, reading.findings) == ("match", "", ())
    assert reading.best == Place(name="Tallinn", lat=59, lon=24.7)


NAMED = {"name": "Tallinn"}
REFUSALS: list[dict[str, Any]] = [
    {}, {"choices": None}, {"choices": NAMED}, {"choices": ["Tallinn"]}, {"choices": [{}]}, {"choices": [{"name": 1}]},
    {"choices": [NAMED | {"city": 1}]}, {"choices": [NAMED | {"lat": "59"}]}, {"choices": [NAMED | {"lon": True}]},
    {"choices": [NAMED | {"lat": float("nan")}]}, {"choices": [NAMED | {"geonames": 1.5}]},
    {"choices": [NAMED | {"geonames": "1"}]}, {"choices": [NAMED | {"geonames": True}]},
    {"choices": [NAMED | {"near": 1}]}, {"choices": [NAMED | {"near": "yes"}]},
    {"choices": [NAMED | {"box": [1, 2, 3, None]}]}, {"choices": [NAMED | {"radius_km": float("inf")}]},
    {"choices": [NAMED | {"box": "1 2 3 4"}]}, {"choices": [NAMED | {"box": [1, 2, 3, "4"]}]},
    {"choices": [], "text": 1}, {"choices": [], "kind": "sure"}, {"choices": [], "findings": {"rule": "x"}},
    {"choices": [], "findings": ["x"]}, {"choices": [], "findings": [{"rule": "x"}]},
    {"choices": [], "findings": [{"rule": 1, "severity": "ask"}]},
]  # fmt: skip


@every_row("data", REFUSALS)
def test_another_shape_is_refused(data: dict[str, Any]) -> None:
    with pytest.raises(ValueError, match=r"."):
        PlaceReading.from_json(data)


def test_how_a_place_is_written() -> None:
    farm = Place(name="Mäe", sublocation="Mäe", city="Tallinn", admin1="Harju", country="Estonia")
    assert (full_name(farm), farm.town) == ("Mäe, Tallinn, Harju, Estonia", "Tallinn, Harju, Estonia")
    assert full_name(NEAR_TALLINN) == "near Tallinn, Harju, Estonia"
    assert (full_name(ESTONIA), ESTONIA.town) == ("Estonia", "Estonia")


def test_where_a_place_is() -> None:
    """The address is GeoNames' own; the point and box are the DCMI encoding schemes (2006)."""
    assert (TALLINN.link, TALLINN.point) == ("https://sws.geonames.org/588409/", (59.43696, 24.75353))
    assert coordinates(TALLINN) == "59.44° N, 24.75° E"
    assert dcmi_point(TALLINN) == "east=24.75; north=59.44; name=Tallinn, Harju, Estonia"
    assert dcmi_box(ESTONIA) == "northlimit=59.7; eastlimit=28.2; southlimit=57.5; westlimit=21.8; name=Estonia"


@pytest.mark.parametrize("place", [ESTONIA, Place(name="x", lat=1), Place(name="x", lon=1)], ids=str)
def test_a_place_without_coordinates_is_nowhere(place: Place) -> None:
    assert (place.link, place.point, coordinates(place), dcmi_point(place)) == ("", None, "", None)


def test_coordinates_that_may_be_far_off_are_written_coarser() -> None:
    """One decimal from 15 km on (our rule); west and south as letters (ISO 6709, annex D)."""
    place = Place(name="Port Chalmers", lat=-45.81667, lon=-170.61667, radius_km=15)
    assert coordinates(place) == "45.8° S, 170.6° W"
    assert dcmi_point(place) == "east=-170.6; north=-45.8; name=Port Chalmers"
    assert dcmi_box(place) is None


def test_a_degree_on_a_sphere() -> None:
    """A degree of latitude is 6,371 km times pi over 180, that is 111.19 km."""
    assert distance_km((0, 0), (1, 0)) == pytest.approx(111.195, abs=0.01)
    assert distance_km((60, 0), (60, 1)) == pytest.approx(55.59, abs=0.02)


def test_what_is_said_of_then_holds_in_all_years() -> None:
    """Danzig in 1938 to 1940 (annexed on 1 September 1939)."""
    free = Place(name="Gdańsk", geonames=3099434, called_then="Danzig", country_then="Free City of Danzig")
    annexed = replace(free, country_then="Germany")
    readings = [PlaceReading("Danzig", "match", (place,)) for place in (free, free, annexed)]
    assert said_in_all(readings[0], readings[1:2]).choices == (free,)
    assert said_in_all(readings[0], readings[1:]).choices == (replace(free, country_then=""),)
    unknown = said_in_all(readings[0], [PlaceReading("Danzig", "kept")])
    assert unknown.choices == (replace(free, country_then="", called_then=""),)
    assert said_in_all(readings[0], []) is readings[0]
