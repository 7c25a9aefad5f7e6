"""The markers of one item as they are seen: numbered, named or still to be named, on the picture turned upright.

A marker is moved by saying anew where it is, and taken away by saying that it is on no scan; what was told at it
stays told of the item. Both are acts like any other; undo takes them back.
"""

from collections import OrderedDict
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Protocol

from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.records.marker_positions import Point, middle, seen_at, stored_at, turned_by
from boxlore.core.statements import Kind, Subject, Sure
from boxlore.tasks.collection.opening import Act, Collection

NO_SIZE = Area(0.0, 0.0)
"""A point: what a new marker is."""


@dataclass(frozen=True, slots=True)
class Marked:
    """One marker: its id and number, its scan, where it is seen (0..1 of the picture looked at), who is there."""

    id: str
    number: int
    scan: str
    x: float
    y: float
    name: str = ""
    asked: bool = False
    """Whether it was asked who that is, and nobody knew."""

    @property
    def waits(self) -> bool:
        """Whether it is still to ask who that is."""
        return not self.name and not self.asked


@dataclass(slots=True)
class Markers:
    """Reads and makes the markers of one collection; remembers how its pictures are turned."""

    collection: Collection
    _turns: OrderedDict[tuple[str, str], int] = field(default_factory=OrderedDict)

    def of(self, record: Record) -> tuple[Marked, ...]:
        """Every marker on an item, named or not, in the order of the scans and the numbers."""
        scans = {scan.id: scan for scan in record.scans}
        if not scans:
            return ()
        names = {(shown.scan, shown.number): shown.name for shown in record.shown() if shown.number}
        marked: list[Marked] = []
        for material in self.collection.store.about_items(ids=(record.id,)):
            for marker in material.markers:
                scan = scans[marker.scan]
                x, y = seen_at(middle(marker.area), scan.part, self.turn(scan))
                name = names.get((marker.scan, marker.number), "")
                asked = any(said.field == "person" and said.sure is Sure.NOT_KNOWN for said, _ in marker.statements)
                marked.append(Marked(marker.id, marker.number, marker.scan, x, y, name, asked and not name))
        return tuple(marked)

    def turn(self, scan: ScanFile) -> int:
        """How the scan's picture is turned to stand upright: as its file asks, then as the keeper turned it."""
        key = (scan.id, scan.sha256)
        if key not in self._turns:
            from boxlore.disk.pictures import turn_of

            self._turns[key] = turn_of(self.collection.folder / scan.path)
            while len(self._turns) > 500:
                self._turns.popitem(last=False)
        return turned_by(self._turns[key], scan.turn)

    def add(self, act: Act, scan: ScanFile, x: float, y: float) -> Subject:
        """A new marker where the picture was touched, x and y in 0..1 of the picture looked at."""
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", scan.id)
        act.state(marker, "area", self._area(scan, x, y))
        return marker

    def move(self, act: Act, marker: Subject, scan: ScanFile, x: float, y: float) -> None:
        """The marker stands somewhere else on its scan: a point, or a box of the same size around it."""
        for statement, _ in self.collection.store.statements(marker):
            if statement.field == "area":
                stood = AREA_WORDS.read(statement.words)
                act.state(marker, "area", self._area(scan, x, y, stood), replaces=statement.id)

    def remove(self, act: Act, record: Record, marker: Subject) -> None:
        """The marker goes; who was named at it is then told of the item, in the same words and by the same source."""
        item = Subject(Kind.ITEM, record.id)
        for statement, reading in self.collection.store.statements(marker):
            if statement.field == "scan":
                act.state(marker, "scan", "", replaces=statement.id)
            elif FIELDS[statement.field].told:
                moved = act.again(statement, item)
                if reading is not None:
                    act.readings.append((moved.id, reading))

    def _area(self, scan: ScanFile, x: float, y: float, stood: Area = NO_SIZE) -> str:
        """A point of the picture looked at, or a box as large as the one that `stood` before, as the log keeps it."""
        inside = (min(max(x, 0.0), 1.0), min(max(y, 0.0), 1.0))
        left, top = stored_at(inside, scan.part, self.turn(scan))
        wide, high = stood.width, stood.height
        left, top = min(max(left - wide / 2, 0.0), 1 - wide), min(max(top - high / 2, 0.0), 1 - high)
        return AREA_WORDS.write(Area(round(left, 5), round(top, 5), wide, high))


class Sits(Protocol):
    """The sitting in which markers are moved and taken away."""

    collection: Collection
    markers: Markers
    to_name: list[Subject]

    def finish(self, act: Act, item: str) -> None: ...


def move_marker(sitting: Sits, record: Record, marked: Marked, x: float, y: float) -> None:
    """Put a marker somewhere else on its picture (0..1 of the picture looked at), as one undoable step."""
    scan = next(scan for scan in record.scans if scan.id == marked.scan)
    act = sitting.collection.act(f"marker {marked.number} moved")
    sitting.markers.move(act, Subject(Kind.MARKER, marked.id), scan, x, y)
    sitting.finish(act, record.id)


def set_markers(sitting: Sits, record: Record, scan: ScanFile, places: Iterable[Point]) -> list[Subject]:
    """Put a new marker at each place of a picture (0..1 of it as it is looked at), as one undoable step; who they are
    is asked in that order."""
    act = sitting.collection.act("markers on heads")
    new_markers = [sitting.markers.add(act, scan, x, y) for x, y in places]
    sitting.finish(act, record.id)
    sitting.to_name.extend(new_markers)
    return new_markers


def remove_marker(sitting: Sits, record: Record, marked: Marked) -> None:
    """Take a marker away, as one undoable step; no name is lost with it."""
    act = sitting.collection.act(f"marker {marked.number} taken away")
    marker = Subject(Kind.MARKER, marked.id)
    sitting.markers.remove(act, record, marker)
    sitting.finish(act, record.id)
    sitting.to_name[:] = [awaited for awaited in sitting.to_name if awaited != marker]
