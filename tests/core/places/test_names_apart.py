"""Names of places to choose from (our rule; places invented but for their countries)."""

from boxlore.core.places.names_apart import names_apart
from boxlore.core.places.reading import Place


def _newport(county: str = "", **where: float) -> Place:
    return Place(name="Newport", city="Newport", admin1="England", admin2=county, country="United Kingdom", **where)


def test_names_that_read_alike_have_their_county() -> None:
    assert names_apart([_newport("Essex"), _newport("Shropshire")]) == [
        "Newport, Essex, England, United Kingdom",
        "Newport, Shropshire, England, United Kingdom",
    ]


def test_names_that_still_read_alike_begin_with_their_degrees() -> None:
    places = [_newport(lat=52.0, lon=0.2), _newport(lat=-52.8, lon=-2.4), _newport()]
    name = "Newport, England, United Kingdom"
    assert names_apart(places) == [f"(52.0 N, 0.2 E) {name}", f"(52.8 S, 2.4 W) {name}", name]


def test_other_names_stand_as_they_are() -> None:
    assert names_apart([_newport("Essex")]) == ["Newport, England, United Kingdom"]
    assert names_apart([]) == []
