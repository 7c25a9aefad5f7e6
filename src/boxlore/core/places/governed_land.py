"""One land of the tables of who governed what: a country of today, or a part of it, with its states by year."""

from typing import NamedTuple

Point = tuple[float, float]
"""Latitude and longitude in degrees."""
Box = tuple[float, float, float, float]
"""South, west, north, east in degrees."""


class Land(NamedTuple):
    """A land that one state after another governed.

    `country` is the ISO 3166-1 code of today, `states` are told as `governed` says, `source` names the acts.
    A place lies in it if it lies in the country, in one of `areas` (GeoNames codes without the country, `82` or
    `82.2204`) where there are any, in one of `boxes` where there are any, and in the polygon `outline` if there is one.
    """

    country: str
    states: str
    source: str
    areas: tuple[str, ...] = ()
    boxes: tuple[Box, ...] = ()
    outline: tuple[Point, ...] = ()

    def holds(self, area1: str, area2: str, point: Point) -> bool:
        """Whether a place of its country lies in this land."""
        if self.areas and not {area1, f"{area1}.{area2}"} & set(self.areas):
            return False
        if self.boxes and not any(_in_box(point, box) for box in self.boxes):
            return False
        return not self.outline or _in_outline(point, self.outline)

    def may_hold(self, area1: str) -> bool:
        """Whether some of a first-level area, or of the country if `area1` is empty, may lie in this land."""
        return not area1 or not self.areas or any(code.split(".")[0] == area1 for code in self.areas)


def _in_box(point: Point, box: Box) -> bool:
    south, west, north, east = box
    return south <= point[0] <= north and west <= point[1] <= east


def _in_outline(point: Point, outline: tuple[Point, ...]) -> bool:
    """Whether a point lies in a polygon: a line from it to the east crosses the outline an odd number of times."""
    lat, lon = point
    inside = False
    for (south, west), (north, east) in zip(outline, (*outline[1:], outline[0]), strict=True):
        crosses = (south > lat) != (north > lat)
        if crosses and lon < west + (lat - south) * (east - west) / (north - south):
            inside = not inside
    return inside
