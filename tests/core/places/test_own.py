"""The family's own places (rules of our own, no outside source). The places are invented but for Milton, Otago."""

import pytest
from tests.every_row import every_row

from boxlore.core.places.own import RADIUS_KM, OwnPlace, read_own
from boxlore.core.places.reading import Place

MILTON = Place(
    name="Milton", city="Milton", admin1="Otago", admin1_code="F7", country="New Zealand", country_code="NZ",
    lat=-46.12, lon=169.97, radius_km=5, geonames=6215994, box=(-46.2, 169.8, -46.0, 170.1),
)  # fmt: skip
FARM = OwnPlace(
    id="f", names=("Grandpa's farm", "The old farm"), inside_words="Milton, Otago", inside=MILTON, point=(-46.15, 169.9)
)
CHURCH = OwnPlace(id="c", names=("St John's",), inside_words="Milton", inside=MILTON)
OTHER_CHURCH = OwnPlace(id="d", names=("Saint John's",), inside_words="Reval")
KUUSE = OwnPlace(id="k", names=("Kuuse talu",))
OWN = (FARM, CHURCH, OTHER_CHURCH, KUUSE)


def test_an_own_place_has_its_name_and_point_and_the_rest_from_around_it() -> None:
    place = FARM.place
    assert (place.name, place.sublocation, place.city, place.country) == (
        "Grandpa's farm", "Grandpa's farm", "Milton", "New Zealand",
    )  # fmt: skip
    assert (place.point, place.radius_km, place.box) == ((-46.15, 169.9), RADIUS_KM, ())


def test_without_a_point_it_has_none_and_not_that_of_the_town() -> None:
    assert (CHURCH.place.point, CHURCH.place.radius_km, CHURCH.place.city) == (None, None, "Milton")
    assert OTHER_CHURCH.place == Place(name="Saint John's", sublocation="Saint John's")


READ = [  # words, kind, ids of the choices
    ("Grandpa's farm", "match", "f"),
    ("grandpas FARM", "match", "f"),
    ("the old farm, Milton", "match", "f"),
    ("the old farm, Milton, New Zealand", "match", "f"),
    ("at the old farm", "match", "f"),
    ("haymaking at the old farm, Milton", "match", "f"),
    ("probably the old farm", "check", "f"),
    ("St John's", "choices", "cd"),
    ("St John's, Milton", "match", "c"),
    ("St John's, Reval", "match", "d"),
    ("St John's?", "choices", "cd"),
    ("at Grandpas farm, by the woolshed", "check", "f"),
    ("Grandpa's farm by the woolshed", "check", "f"),
    ("vana Kuuse talu", "check", "k"),
    ("Kuuse talus", "check", "k"),
]


@every_row(("words", "kind", "ids"), READ)
def test_words_that_name_one(words: str, kind: str, ids: str) -> None:
    reading = read_own(words, OWN)
    assert reading is not None
    named = {own.id: own.place for own in OWN}
    assert (reading.text, reading.kind, reading.choices) == (words, kind, tuple(named[ident] for ident in ids))


def test_near_an_own_place() -> None:
    farm, church = read_own("2 miles from Grandpa's farm", OWN), read_own("near St John's, Reval", OWN)
    assert farm is not None and church is not None
    assert [(place.sublocation, place.radius_km) for place in farm.choices] == [("near Grandpa's farm", 3.218)]
    assert [(place.sublocation, place.radius_km) for place in church.choices] == [("near Saint John's", None)]


@pytest.mark.parametrize("words", ["", "  ", "?", "Milton", "the old farm, Reval", "farm"])
def test_words_that_name_none(words: str) -> None:
    assert read_own(words, OWN) is None
