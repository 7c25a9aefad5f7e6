"""A map of the family's places, drawn by ourselves: the towns of the gazetteer as fine dots, the places as marks.

Equirectangular: a degree of longitude is as wide as on the middle latitude of what is shown. Where two names would
meet, the later one stands on the other side of its mark or nowhere: all stand in the list below the map too.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from math import cos, radians
from typing import Any

from boxlore.core.places.reading import distance_km
from boxlore.core.wording.catalogue import Say

Point = tuple[float, float]
"""Latitude and longitude in degrees (WGS 84)."""

Town = tuple[float, float, int]
"""Latitude, longitude, and how many people live there."""

MOST_TOWNS = 4000
"""Towns on one map: the largest of those that lie on it. A page with three maps stays under 300 kB."""

FEW = 400
"""A map with fewer towns has larger dots."""

FAR_KM = 1500.0
"""Places farther apart than this, with none between them, stand on maps of their own too."""

MOST_NAMED = 6
"""Places that the words for those who cannot see a map name."""

WIDE = 1000.0
TALLEST = 620.0
LETTER = 24.0
"""Height of a name on the map, in its own units; a letter is about half as wide."""

LEAST_SPAN = 2.0
"""Degrees of latitude that a map shows at least."""


@dataclass(frozen=True, slots=True)
class Frame:
    """What part of the earth is shown: its south-west and north-east corner, and units for a degree each way."""

    south: float
    west: float
    north: float
    east: float
    across: float
    up: float

    def at(self, point: Point) -> tuple[float, float]:
        """Where a point stands on the map, from its upper left corner."""
        return round((point[1] - self.west) * self.across, 1), round((self.north - point[0]) * self.up, 1)

    @property
    def high(self) -> float:
        """The height of the map in its units; it is WIDE units wide."""
        return round((self.north - self.south) * self.up, 1)


def frame_of(points: Sequence[Point]) -> Frame:
    """The frame around these points with a margin, no narrower than a country and no flatter than a strip."""
    south, north = min(point[0] for point in points), max(point[0] for point in points)
    west, east = min(point[1] for point in points), max(point[1] for point in points)
    squeeze = max(0.3, cos(radians((south + north) / 2)))
    tall = max(LEAST_SPAN, (north - south) * 1.3)
    broad = max(tall * 1.7 / squeeze, (east - west) * 1.3)
    tall = max(tall, broad * squeeze * 0.45)
    middle = (south + north) / 2, (west + east) / 2
    across = WIDE / broad
    up = min(across / squeeze, TALLEST / tall)
    return Frame(middle[0] - tall / 2, middle[1] - broad / 2, middle[0] + tall / 2, middle[1] + broad / 2, across, up)


def maps_of(places: Sequence[Mapping[str, Any]], towns: Callable[[], Sequence[Town]], say: Say) -> list[dict[str, Any]]:
    """The maps as the template draws them: all places; then, where they lie far apart, each region that has several.

    None where no place has coordinates.
    """
    placed = [place for place in places if place["point"]]
    if not placed:
        return []
    regions = _regions(placed)
    closer = [region for region in regions if len(region) > 1] if len(regions) > 1 else []
    ground = towns()
    return [_map_of(shown, ground, say) for shown in (placed, *closer)]


def _regions(placed: Sequence[Mapping[str, Any]]) -> list[list[Mapping[str, Any]]]:
    """Places in groups: of two groups no place of one lies within FAR_KM of a place of the other; the largest first."""
    regions: list[list[Mapping[str, Any]]] = []
    for place in placed:
        near = [region for region in regions if any(_is_near(place, member) for member in region)]
        joined = [place, *(member for region in near for member in region)]
        regions = [region for region in regions if region not in near] + [joined]
    return sorted(regions, key=len, reverse=True)


def _is_near(place: Mapping[str, Any], member: Mapping[str, Any]) -> bool:
    return distance_km(place["point"], member["point"]) < FAR_KM


def _map_of(placed: Sequence[Mapping[str, Any]], towns: Sequence[Town], say: Say) -> dict[str, Any]:
    frame = frame_of([place["point"] for place in placed])
    south, west, north, east = frame.south, frame.west, frame.north, frame.east
    inside = [town for town in towns if south < town[0] < north and west < town[1] < east]
    largest = sorted(inside, key=lambda town: -town[2])[:MOST_TOWNS]
    dots = {tuple(map(round, frame.at(town[:2]))) for town in largest}
    marks: list[dict[str, Any]] = []
    taken: list[tuple[float, float, float, float]] = []
    for place in sorted(placed, key=lambda place: -place["photographs"]):
        x, y = frame.at(place["point"])
        radius = round(7 + min(place["photographs"], 60) ** 0.5 * 2, 1)
        beside = _name_beside(x, y, place["name"], taken)
        marks.append({"x": x, "y": y, "r": radius, "href": place["href"], "name": place["name"], **beside})
    dotted = "".join(f"M{x} {y}h0" for x, y in sorted(dots))
    names = [mark["name"] for mark in marks[:MOST_NAMED]]
    if further := len(marks) - len(names):
        names.append(say.counted(further, "{count} more", "{count} more"))
    label = say("Map of {names}; each is in the list below too", names=say.listed(names))
    return {
        "high": frame.high,
        "dots": dotted,
        "marks": marks,
        "letter": LETTER,
        "label": label,
        "few": len(dots) < FEW,
    }


def _name_beside(x: float, y: float, name: str, taken: list[tuple[float, float, float, float]]) -> dict[str, Any]:
    """Where the name stands: right of the mark, else left of it, else nowhere."""
    wide = len(name) * LETTER * 0.55
    for anchor, start in (("start", x + 18), ("end", x - 18 - wide)):
        box = (start, y - LETTER / 2, start + wide, y + LETTER / 2)
        free = all(box[2] < each[0] or box[0] > each[2] or box[3] < each[1] or box[1] > each[3] for each in taken)
        if free and box[0] >= 0 and box[2] <= WIDE:
            taken.append(box)
            return {"anchor": anchor, "text_x": round(x + 18 if anchor == "start" else x - 18, 1)}
    return {"anchor": "", "text_x": 0.0}
