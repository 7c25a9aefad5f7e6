"""Four corners and what lies between them, held against OpenCV's perspective transform."""

import cv2
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.fields.pictures import SHOWS_WORDS, Shows
from boxlore.core.fields.quads import from_straight, is_quad, to_straight

SQUARE = np.array([(0, 0), (1, 0), (1, 1), (0, 1)], np.float32)
ASLANT = (0.1, 0.2, 0.7, 0.1, 0.8, 0.6, 0.2, 0.9)
NUDGE = st.floats(-0.12, 0.12)


@drawn(100)
@given(st.tuples(*[NUDGE] * 8), st.floats(0, 1), st.floats(0, 1))
def test_places_are_mapped_as_opencv_maps_them_and_back(nudges: tuple[float, ...], u: float, v: float) -> None:
    corners = np.array([(0.2, 0.2), (0.8, 0.2), (0.8, 0.8), (0.2, 0.8)]) + np.reshape(nudges, (4, 2))
    part = (0.0, 0.0, 1.0, 1.0, *map(float, corners.reshape(-1)))
    assert is_quad(part[4:])
    matrix = cv2.getPerspectiveTransform(SQUARE, corners.astype(np.float32))
    (((x, y),),) = cv2.perspectiveTransform(np.array([[(u, v)]], np.float64), matrix)
    assert from_straight(part, u, v) == pytest.approx((x, y), abs=1e-5)
    assert to_straight(part, *from_straight(part, u, v)) == pytest.approx((u, v), abs=1e-6)


def test_of_a_box_and_of_the_whole_they_are_parts_of_its_sides() -> None:
    assert from_straight((0.2, 0.4, 0.5, 0.2), 0.5, 0.5) == pytest.approx((0.45, 0.5))
    assert to_straight((0.2, 0.4, 0.5, 0.2), 0.45, 0.5) == pytest.approx((0.5, 0.5))
    assert from_straight((), 0.3, 0.4) == (0.3, 0.4) == to_straight((), 0.3, 0.4)


def test_what_is_no_quadrilateral_is_refused() -> None:
    assert is_quad(ASLANT)
    assert not is_quad(ASLANT[::-1][1::2] + ASLANT[::-1][::2])
    assert not is_quad((0, 0, 1, 0, 0.2, 0.2, 0, 1)), "bent inward"
    assert not is_quad((0, 0, 0, 1, 1, 1, 1, 0)), "not clockwise"
    assert not is_quad((0, 0, 1, 1, 1, 0, 0, 1)), "crossed"


def test_the_log_keeps_corners_only_of_four_within_a_part() -> None:
    words = SHOWS_WORDS.write(Shows("i", "recto", None, 90, ()))
    assert "corners" not in words
    kept = '{"item": "i", "side": "recto", "area": [0.1, 0.1, 0.7, 0.8], "turn": 90, "corners": %s}'
    shows = SHOWS_WORDS.read(kept % list(ASLANT))
    assert shows.corners == ASLANT and shows.turn == 90 and SHOWS_WORDS.read(SHOWS_WORDS.write(shows)) == shows
    for wrong in ("[0.1, 0.2]", "[0.1, 0.2, 0.3]", "[0, 0, 0, 1, 1, 1, 1, 0]", "[0, 0, 2, 0, 2, 2, 0, 2]", '"x"'):
        assert SHOWS_WORDS.or_none(kept % wrong) is None
    assert SHOWS_WORDS.or_none((kept % list(ASLANT)).replace("[0.1, 0.1, 0.7, 0.8]", "null")) is None
