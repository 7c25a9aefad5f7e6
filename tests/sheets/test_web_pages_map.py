"""The map of the family's places (equirectangular: Snyder, Map Projections, 1987, p. 90, from memory)."""

from math import cos, radians

import pytest

from boxlore.sheets.web_pages_map import TALLEST, WIDE, frame_of, map_of

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
    near = [
        place("Tallinn", TALLINN, 9),
        place("Nõmme", (59.45, 24.76)),
        place("Pirita", (59.44, 24.74)),
        place("Sea", None),
    ]
    drawn = map_of(near, [TALLINN, CHALMERS])
    assert drawn is not None and len(drawn["marks"]) == 3
    assert [mark["anchor"] for mark in drawn["marks"]] == ["start", "end", ""]
    assert drawn["dots"].count("M") == 1
    assert map_of([place("Sea", None)], [TALLINN]) is None
