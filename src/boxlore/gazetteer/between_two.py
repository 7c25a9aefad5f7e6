"""The reading of a place that lies between two others, or is one of two: both are choices.

Between two others lies what is near both, so of all places of their names the nearest two are meant.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import product

from boxlore.core.places.between import Between
from boxlore.core.places.nearness import NEAR_KM
from boxlore.core.places.reading import Place, PlaceReading, distance_km

Read = Callable[[str, frozenset[int]], PlaceReading]
"""Reads words; places near those of the given ids come first."""

FARTHEST_KM = 1000
"""Two places of which one is between lie no farther apart (ours)."""


def reading_between(pair: Between, text: str, read: Read) -> PlaceReading | None:
    """Near the one or near the other, and half of the way off at most; None where not both are towns."""
    first, second = (_towns(told, read) for told in pair.places)
    if not (first and second):
        return None
    first = [*first, *_towns(pair.places[0], read, second)]  # of many places of a name those near the other end too
    second = [*second, *_towns(pair.places[1], read, first)]
    ends = min(product(first, second), key=lambda two: _apart(*two))
    if _apart(*ends) > FARTHEST_KM:  # neither is the one that was meant, and we know no better
        ends = (first[0], second[0])
    radius = max(NEAR_KM, round(_apart(*ends) / 2))
    shown = dict.fromkeys((*ends, first[0], second[0]))
    return PlaceReading(text, "choices", tuple(_near(place, pair.before, radius) for place in shown))


def reading_either(pair: Between, text: str, read: Read) -> PlaceReading | None:
    """The one or the other, with a question; None where not both are places."""
    readings = [read(told, frozenset()) for told in pair.places]
    if not all(reading.choices for reading in readings):
        return None
    one, other = (reading.choices for reading in readings)
    places = dict.fromkeys((one[0], other[0], *one[1:2], *other[1:2]))
    return PlaceReading(text, "choices", tuple(replace(place, sublocation=pair.before) for place in places))


def _towns(told: str, read: Read, near: Sequence[Place] = ()) -> list[Place]:
    """The towns that the words may name, with what is told behind the comma, else without it (`Timaru, Canterbury`)."""
    used = frozenset(place.geonames for place in near if place.geonames)
    for words in dict.fromkeys((told, told.partition(",")[0])):
        if towns := [place for place in read(words, used).choices if place.point and not place.sublocation]:
            return towns
    return []


def _apart(first: Place, second: Place) -> float:
    return distance_km(first.point or (0, 0), second.point or (0, 0))


def _near(place: Place, before: str, radius: float) -> Place:
    lat, lon = place.point or (0, 0)
    return replace(place, near=True, sublocation=before, lat=round(lat, 1), lon=round(lon, 1), radius_km=radius)
