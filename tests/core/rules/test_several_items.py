"""Findings over several records (our own rule: 300 km in one day is asked about)."""

import pytest

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.reference import PersonRef
from boxlore.core.places.reading import Place, PlaceReading, distance_km
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.rules.several_items import Together
from boxlore.core.statements import KEEPER, Sure

DISTANCES = [  # on a sphere of 6,371 km: a quarter meridian, a degree of latitude; Tallinn to Riga from memory
    ((0.0, 0.0), (90.0, 0.0), 10_007.5, 1),
    ((45.0, 10.0), (46.0, 10.0), 111.19, 0.01),
    ((59.44, 24.75), (56.95, 24.11), 279, 5),
    ((10.0, 20.0), (10.0, 20.0), 0, 0.001),
]


@pytest.mark.parametrize(("one", "other", "km", "within"), DISTANCES)
def test_distances(one: tuple[float, float], other: tuple[float, float], km: float, within: float) -> None:
    assert abs(distance_km(one, other) - km) <= within
    assert distance_km(one, other) == pytest.approx(distance_km(other, one))


TALLINN, RIGA, VILJANDI = (59.44, 24.75), (56.95, 24.11), (58.36, 25.60)
"""From memory; Tallinn to Viljandi is 130 km, to Port Chalmers half the world."""
PORT_CHALMERS = (-45.82, 170.62)


def view(field: str, words: str, value: object) -> StatementView:
    return StatementView(
        statement=words, field=field, words=words, language="en", source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="", value=value,  # type: ignore[arg-type]
    )  # fmt: skip


def record(number: str, name: str, point: tuple[float, float] | None, date: str = "", event: str = "") -> Record:
    lat, lon = point or (None, None)
    place = PlaceReading(name, "match", (Place(name=name, lat=lat, lon=lon),))
    told = {"place": (view("place", name, place),)}
    if date:
        told["date"] = (view("date", date, DateReading.from_edtf(date)),)
    if event:
        told["occasion"] = (view("occasion", event, PersonRef(event)),)
    return Record(id=number, number=number, told=told)


def test_one_day_at_two_places_far_apart_is_asked_about_once_a_record() -> None:
    together = Together()
    assert list(together.add(record("TRA-0001", "Tallinn", TALLINN, "1931-06-14"))) == []
    assert list(together.add(record("TRA-0002", "Viljandi", VILJANDI, "1931-06-14"))) == []
    ((number, finding),) = together.add(record("TRA-0003", "Port Chalmers", PORT_CHALMERS, "1931-06-14"))
    assert number == "TRA-0003" and finding.rule == "place.far"
    assert finding.because == ("TRA-0001 is told of Tallinn, more than 300 km away",)
    ((number, finding),) = together.add(record("TRA-0004", "Tallinn", TALLINN, "1931-06-14"))
    assert number == "TRA-0004" and finding.because[0].startswith("TRA-0003 is told of Port Chalmers")


@pytest.mark.parametrize("date", ["1931-06", "1931-06-14~", "1931-06-14/1931-06-20", ""])
def test_only_a_day_known_exactly_is_one_day(date: str) -> None:
    together = Together()
    assert not list(together.add(record("TRA-0001", "Tallinn", TALLINN, date)))
    assert not list(together.add(record("TRA-0002", "Port Chalmers", PORT_CHALMERS, date)))


def test_an_occasion_of_the_family_is_at_one_place_and_a_place_without_a_point_says_nothing() -> None:
    together = Together()
    assert not list(together.add(record("TRA-0001", "Grandpa's farm", None, event="wedding")))
    assert not list(together.add(record("TRA-0002", "Tallinn", TALLINN, event="wedding")))
    ((_, finding),) = together.add(record("TRA-0003", "Port Chalmers", PORT_CHALMERS, event="wedding"))
    assert "at “wedding”" in finding.message
