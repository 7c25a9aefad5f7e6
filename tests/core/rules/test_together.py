"""Findings over several records (our own rule: 300 km in one day is asked about)."""

import pytest

from boxlore.core.places.reading import distance_km

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
