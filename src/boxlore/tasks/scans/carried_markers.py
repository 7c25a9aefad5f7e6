"""The markers of a picture in whose place another comes: each is seen where it was seen before.

Where the two have one shape, that is where its person is, up to what was cut off the rims. On a picture of another
shape it cannot be right; so nothing takes its place before it is said what becomes of them.
"""

from collections.abc import Iterator
from math import dist

from boxlore.core.errors import WrongUse
from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.fields.pictures import FileFacts
from boxlore.core.fields.quads import corners_of
from boxlore.core.findings import several
from boxlore.core.records.item_record import MarkerRows, Record, ScanFile
from boxlore.core.records.marker_positions import TURNED, seen_at, stored_at
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.telling.markers import Markers

STAY, AWAY = "stay", "away"
"""What becomes of markers on a picture in whose place one of another shape comes; '' where nobody has said."""
OTHER_SHAPE = 0.03
"""From such a part on, two pictures count as of another shape: what one scan cuts off and another does not is less (a
rule of our own, no outside source)."""


def is_of_another_shape(old: ScanFile, turn: int, new: FileFacts) -> bool:
    """Whether two pictures, or a part of one and another, are of another shape as they are seen upright; `turn` is the
    orientation that sets the old one upright."""
    shapes = _shape(old), new.width / (new.height or 1)
    if TURNED[turn][0] != TURNED.get(new.orientation, TURNED[1])[0]:
        shapes = shapes[0], 1 / (shapes[1] or 1)
    return abs(shapes[0] / (shapes[1] or 1) - 1) > OTHER_SHAPE


def _shape(old: ScanFile) -> float:
    """Width by height of what is seen, before it is turned."""
    width, height = old.width or 1, old.height or 1
    if old.corners:
        points = [(x * width, y * height) for x, y in corners_of(old.corners)]
        sides = [dist(points[at - 1], points[at]) for at in range(4)]
        return (sides[1] + sides[3]) / (sides[0] + sides[2])
    _, _, wide, high = old.area if len(old.area) == 4 else (0.0, 0.0, 1.0, 1.0)
    return wide * width / (high * height)


def carry_markers(act: Act, collection: Collection, item: str, old: str, scan: str, new: FileFacts, say: str) -> None:
    """Put the markers that an item has on a scan (`old`) where they are seen, on the picture that comes in its place.

    Raises WrongUse where that has another shape, and nobody says (`say`) whether they stay or go.
    """
    record = record_of(collection, item)
    shown = next((one for one in record.scans if one.id == old), None)
    if shown is None:  # a damaged one, in whose place a whole one came
        return
    turn = shown.orientation if scan == old else shown.stands  # the keeper's turn stays with the scan
    marked = list(_marked(collection, record, old))
    if marked and not say and is_of_another_shape(shown, turn, new):
        raise WrongUse(
            f"{record.number} has {several(len(marked), 'marker')} on the picture that is here, and this one has "
            "another shape: they would stand wrong.",
            "Say whether they stay (you move them then) or go (who was named there is told of the item): boxlore scan "
            "replace --markers.",
        )
    for marker in marked:
        about = Subject(Kind.MARKER, marker.id)
        if say == AWAY:
            Markers(collection).remove(act, record, about)
        elif scan != old or turn != new.orientation:
            area = _carried(marker.area, shown.part if scan != old else (), turn, new.orientation)
            carried = {"scan": scan, "area": AREA_WORDS.write(area)}
            for statement, _ in marker.statements:
                if carried.get(statement.field, statement.words) != statement.words:
                    act.state(about, statement.field, carried[statement.field], replaces=statement.id)


def _marked(collection: Collection, record: Record, scan: str) -> Iterator[MarkerRows]:
    for material in collection.store.about_items(ids=(record.id,)):
        yield from (marker for marker in material.markers if marker.scan == scan)


def _carried(area: tuple[float, ...], part: tuple[float, ...], turn: int, new_turn: int) -> Area:
    """A point or a box of a stored picture, as one of another that is seen as that part of it; cut off at its rims."""
    wide, high = area[2:] or (0.0, 0.0)
    corners = [(area[0] + x, area[1] + y) for x in (0.0, wide) for y in (0.0, high)]
    places = [stored_at(seen_at(corner, part, turn), (), new_turn) for corner in corners]
    xs, ys = ([round(min(max(place[axis], 0.0), 1.0), 5) for place in places] for axis in (0, 1))
    return Area(min(xs), min(ys), round(max(xs) - min(xs), 5), round(max(ys) - min(ys), 5))
