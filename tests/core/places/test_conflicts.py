"""Two places of one thing: where each lies is by GeoNames (CC BY 4.0) and ISO 3166, as the gazetteer reads it."""

from dataclasses import replace

from tests.every_row import every_row

from boxlore.core.places.conflicts import can_both_be, common_place, is_narrower
from boxlore.core.places.reading import Place

ESTONIA = Place(name="Estonia", country="Estonia", country_code="EE")
HARJU = replace(ESTONIA, name="Harjumaa", admin1="Harjumaa", admin1_code="01")
TALLINN = replace(HARJU, name="Tallinn", city="Tallinn", admin2="Tallinn", lat=59.437, lon=24.7535, radius_km=5.0,
                  geonames=588409)  # fmt: skip
KALAMAJA = replace(TALLINN, sublocation="Kalamaja")
NEAR_TALLINN = replace(TALLINN, radius_km=15.0, lat=59.4, lon=24.8, geonames=None)
NOMME = replace(TALLINN, name="Nõmme", city="Nõmme", lat=59.3776, lon=24.6859, geonames=589947)
MAARDU = replace(TALLINN, name="Maardu", city="Maardu", admin2="Maardu linn", lat=59.4764, lon=25.0161, geonames=590337)
NARVA = replace(TALLINN, name="Narva", city="Narva", admin1="Ida-Virumaa", admin1_code="03", admin2="Narva linn",
                lat=59.3772, lon=28.1903, geonames=590031)  # fmt: skip
LIVONIA = Place(name="Livonia", box=(56.4, 23.8, 59.0, 28.0))
LAPLAND = Place(name="Lapland", box=(65.0, 20.0, 70.0, 30.0))
SOVIET_UNION = Place(name="Soviet Union", country_then="Soviet Union")
NEW_ZEALAND = Place(name="New Zealand", country="New Zealand", country_code="NZ")
OTAGO = replace(NEW_ZEALAND, name="Otago", admin1="Otago", admin1_code="F7")
DUNEDIN = replace(OTAGO, name="Dunedin", city="Dunedin", admin2="Dunedin City", lat=-45.8742, lon=170.5036,
                  radius_km=5.0, geonames=2191562)  # fmt: skip
PORT = replace(DUNEDIN, name="Port Chalmers", city="Port Chalmers", lat=-45.8166, lon=170.6204, geonames=2208238)
MILTON = replace(DUNEDIN, name="Milton", city="Milton", admin2="Clutha District", lat=-46.1208, lon=169.9694,
                 geonames=2208242)  # fmt: skip
FARM = replace(MILTON, name="Grandpa's farm", sublocation="Grandpa's farm", city="", geonames=None, lat=-46.13,
               lon=169.98, radius_km=0.5)  # fmt: skip

APART = [(TALLINN, NARVA), (TALLINN, PORT), (PORT, MILTON), (ESTONIA, NEW_ZEALAND), (SOVIET_UNION, PORT),
         (TALLINN, LIVONIA), (TALLINN, OTAGO), (NARVA, HARJU), (TALLINN, MAARDU), (LIVONIA, LAPLAND),
         (FARM, PORT)]  # fmt: skip


@every_row(("first", "second"), APART)
def test_neither_lies_in_the_other(first: Place, second: Place) -> None:
    assert not can_both_be(first, second) and not can_both_be(second, first)


WITHIN = [(TALLINN, ESTONIA), (TALLINN, HARJU), (KALAMAJA, TALLINN), (NOMME, TALLINN), (PORT, DUNEDIN), (PORT, OTAGO),
          (TALLINN, NEAR_TALLINN), (NARVA, SOVIET_UNION), (ESTONIA, SOVIET_UNION), (OTAGO, NEW_ZEALAND),
          (LIVONIA, SOVIET_UNION), (FARM, MILTON), (FARM, OTAGO)]  # fmt: skip


@every_row(("inner", "outer"), WITHIN)
def test_the_one_that_lies_in_the_other_says_more(inner: Place, outer: Place) -> None:
    assert can_both_be(inner, outer) and can_both_be(outer, inner)
    assert is_narrower(inner, outer) and not is_narrower(outer, inner)


def test_of_what_is_not_known_nothing_is_said() -> None:
    assert can_both_be(Place(name="the mill"), Place(name="the river")) and can_both_be(OTAGO, LIVONIA)
    assert not is_narrower(TALLINN, replace(TALLINN, name="Reval"))


def test_what_both_lie_in() -> None:
    assert common_place((TALLINN, NARVA)) == ESTONIA
    assert common_place((PORT, MILTON)) == OTAGO
    assert common_place((TALLINN, PORT)) is None and common_place((SOVIET_UNION, LIVONIA)) is None
    assert common_place((ESTONIA, TALLINN)) == ESTONIA
