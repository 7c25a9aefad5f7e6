"""Points of lakes, islands, mountains and villages against the towns of GeoNames (CC BY 4.0).

The tables are from memory: a wrong sign, or a country that the land was in once, shows by whose towns are near.
"""

import lzma
import math
from collections import defaultdict
from collections.abc import Iterable, Iterator

from tests.drawn import some

from boxlore.core.places.features_table import FEATURES, Feature
from boxlore.core.places.nature import features_of_lines
from boxlore.core.places.nature_north_table import NATURE_NORTH
from boxlore.core.places.nature_overseas_table import NATURE_OVERSEAS
from boxlore.core.places.nature_south_table import NATURE_SOUTH
from boxlore.core.places.villages_table import VILLAGES
from boxlore.gazetteer.index import DATA

Town = tuple[float, float, str]
Cells = dict[tuple[int, int], list[Town]]


def towns_by_degree() -> Cells:
    """Latitude, longitude and country of every town, by the square of one degree that it lies in."""
    cells: Cells = defaultdict(list)
    for line in lzma.decompress((DATA / "cities.tsv.xz").read_bytes()).decode("utf-8").splitlines():
        _, _, country, _, _, lat, lon, *_ = line.split("\t")
        cells[math.floor(float(lat)), math.floor(float(lon))].append((float(lat), float(lon), country))
    return cells


def near(feature: Feature, cells: Cells) -> Iterator[tuple[float, str]]:
    """Kilometres, on a plane, to the towns of its degree and those around, and their countries."""
    north, east, narrow = math.floor(feature.lat), math.floor(feature.lon), math.cos(math.radians(feature.lat))
    wide = math.ceil(1 / narrow)
    for cell in ((north + up, east + right) for up in (-1, 0, 1) for right in range(-wide, wide + 1)):
        for lat, lon, country in cells.get(cell, ()):
            yield 111 * math.hypot(lat - feature.lat, (lon - feature.lon) * narrow), country


def in_wrong_country(features: Iterable[Feature], cells: Cells) -> list[str]:
    """The names of those whose own countries' towns are far, measured by the nearest town and by their size; of those
    in the wild, and of large ones, nothing is said.
    """
    wrong = []
    for feature in features:
        towns = list(near(feature, cells))
        nearest = min(towns, default=(math.inf, ""))[0]
        limit = 3 * nearest + 25 + 111 * feature.high
        if limit < 111 and all(far > limit or country not in feature.countries.split() for far, country in towns):
            wrong.append(feature.name)
    return wrong


def test_points_lie_near_towns_of_their_countries() -> None:
    cells = towns_by_degree()
    lines = "".join((NATURE_NORTH, NATURE_SOUTH, NATURE_OVERSEAS, VILLAGES))
    assert in_wrong_country(some((*FEATURES, *features_of_lines(lines))), cells) == []
    planted = features_of_lines("\nIS: mountain Esja 64.25 21.7; Katla 63.6 -19.05\nIN: village Quetta 30.2 67.0\n")
    assert in_wrong_country(planted, cells) == ["Esja", "Quetta"]
