"""Outlines in the order of reading (common practice, no source: rows from above, each from the left)."""

import pytest

from boxlore.disk.outlines import Quad, in_reading_order


def box(left: float, top: float, wide: float = 0.25, high: float = 0.2) -> Quad:
    return (left, top), (left + wide, top), (left + wide, top + high), (left, top + high)


@pytest.mark.parametrize(
    ("ordered", "why"),
    [
        ([], "none"),
        ([box(0.1, 0.22), box(0.4, 0.18), box(0.7, 0.21)], "one row, whose tops differ a little"),
        ([box(0.1, 0.12), box(0.5, 0.08), box(0.1, 0.42), box(0.5, 0.38)], "two rows"),
        ([box(0.1, 0.1), box(0.6, 0.19), box(0.1, 0.36), box(0.6, 0.4)], "two rows, of which one leans"),
        ([box(0.05, 0.1, high=0.8), box(0.5, 0.12), box(0.48, 0.6)], "a high one, and two above each other beside it"),
        ([box(0.5, 0.05), box(0.4, 0.3), box(0.1, 0.55)], "each a row by itself"),
    ],
)
def test_outlines_are_in_rows_from_the_left(ordered: list[Quad], why: str) -> None:
    assert in_reading_order(reversed(ordered)) == ordered, why
    assert in_reading_order(ordered) == ordered, why
