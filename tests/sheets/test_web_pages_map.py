"""The map of the family's places (equirectangular: Snyder, Map Projections, 1987, p. 90, from memory)."""

from math import cos, radians

import pytest

from boxlore.core.wording.catalogue import ENGLISH
from boxlore.sheets.web_pages_map import MOST_TOWNS, TALLEST, WIDE, frame_of, maps_of

TALLINN, CHALMERS, KARDLA = (59.44, 24.75), (-45.82, 170.62), (59.0, 22.75)


def place(name: str, point, photographs: int = 1):  # type: ignore[no-untyped-def]
    return {"name": name, "point": point, "photographs": photographs, "href": f"place/{name}.html"}


@pytest.mark.parametrize("points", [(TALLINN,), (TALLINN, KARDLA), (TALLINN, CHALMERS), ((80.0, 10.0), (81.0, 12.0))])
def test_every_place_lies_inside_and_north_is_up(points) -> None:  # type: ignore[no-untyped-def]
    frame = frame_of(points)
    at = [frame.at(point) for point in points]
    assert all(0 < x < WIDE and 0 < y < frame.high <= TALLEST + 0.1 for x, y in at)
    by_latitude = sorted(points)
    assert [frame.at(point)[1] for point in by_latitude] == sorted((y for _, y in at), reverse=True)


def test_a_degree_has_its_width_on_the_middle_latitude() -> None:
    frame = frame_of((TALLINN, KARDLA))
    assert frame.across / frame.up == pytest.approx(cos(radians((59.44 + 59.0) / 2)))


def test_names_do_not_meet_and_every_mark_is_there() -> None:
    near = [place("Tallinn", TALLINN, 9), place("Nõmme", (59.45, 24.76)), place("Pirita", (59.44, 24.74))]
    (drawn,) = maps_of([*near, place("Sea", None)], lambda: [(*TALLINN, 400_000), (*CHALMERS, 1_400)], ENGLISH)
    assert [mark["anchor"] for mark in drawn["marks"]] == ["start", "end", ""]
    assert drawn["dots"].count("M") == 1
    assert drawn["label"] == "Map of Tallinn, Nõmme and Pirita; each is in the list below too"
    assert maps_of([place("Sea", None)], lambda: [(*TALLINN, 400_000)], ENGLISH) == []


def test_regions_far_apart_have_maps_of_their_own() -> None:
    """Tallinn to Dunedin is about 17,200 km (great circle, from memory); a region of one place needs no map."""
    towns = [(*TALLINN, 400_000), (*KARDLA, 3_000), (*CHALMERS, 1_400)]
    far = [place("Port Chalmers", CHALMERS, 4), place("Tallinn", TALLINN, 3), place("Kärdla", KARDLA)]
    names = [[mark["name"] for mark in drawn["marks"]] for drawn in maps_of(far, lambda: towns, ENGLISH)]
    assert names == [["Port Chalmers", "Tallinn", "Kärdla"], ["Tallinn", "Kärdla"]]
    assert [drawn["dots"].count("M") for drawn in maps_of(far, lambda: towns, ENGLISH)] == [3, 2]


def test_a_map_shows_the_largest_towns_when_there_are_too_many() -> None:
    many = [(59.0 + at % 100 / 100, 24.0 + at / 5000, at) for at in range(MOST_TOWNS + 500)]
    (drawn,) = maps_of([place("Tallinn", TALLINN)], lambda: many, ENGLISH)
    assert drawn["dots"].count("M") <= MOST_TOWNS
    names = [place(f"Town{at}", (59.0 + at / 50, 24.0)) for at in range(9)]
    assert " and 3 more;" in maps_of(names, lambda: many, ENGLISH)[0]["label"]
