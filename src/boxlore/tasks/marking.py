"""The markers of one item as they are seen: numbered, named or still to be named, on the picture turned upright."""

from collections import OrderedDict
from dataclasses import dataclass, field
from importlib import import_module

from boxlore.core.markers import middle, seen_at, stored_at
from boxlore.core.record import Record, ScanFile
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.opening import Act, Collection


@dataclass(frozen=True, slots=True)
class Marked:
    """One marker: its id and number, its scan, where it is seen (0..1 of the picture looked at), who is there."""

    id: str
    number: int
    scan: str
    x: float
    y: float
    name: str = ""


@dataclass(slots=True)
class Markers:
    """Reads and makes the markers of one collection; remembers how its pictures are turned."""

    collection: Collection
    _turns: OrderedDict[str, int] = field(default_factory=OrderedDict)

    def of(self, record: Record) -> tuple[Marked, ...]:
        """Every marker on an item, named or not, in the order of the scans and the numbers."""
        scans = {scan.id: scan for scan in record.scans}
        if not scans:
            return ()
        names = {(one.scan, one.number): one.name for one in record.shown() if one.number}
        found: list[Marked] = []
        for material in self.collection.store.about_items(ids=(record.id,)):
            for marker in material.markers:
                scan = scans[marker.scan]
                x, y = seen_at(middle(marker.area), scan.area, self.turn(scan))
                name = names.get((marker.scan, marker.number), "")
                found.append(Marked(marker.id, marker.number, marker.scan, x, y, name))
        return tuple(found)

    def turn(self, scan: ScanFile) -> int:
        """How the scan's picture is turned to stand upright."""
        if scan.id not in self._turns:
            turn_of = import_module("boxlore.disk.glimpses").turn_of  # loads the library that decodes pictures
            self._turns[scan.id] = turn_of(self.collection.folder / scan.path)
            while len(self._turns) > 500:
                self._turns.popitem(last=False)
        return self._turns[scan.id]

    def add(self, act: Act, scan: ScanFile, x: float, y: float) -> Subject:
        """A new marker where the picture was touched, x and y in 0..1 of the picture looked at."""
        inside = (min(max(x, 0.0), 1.0), min(max(y, 0.0), 1.0))
        at = stored_at(inside, scan.area, self.turn(scan))
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", scan.id)
        act.state(marker, "area", f"{at[0]:.5f} {at[1]:.5f}")
        return marker
