"""The extent of a transfer: how many items, of which kinds, in how many boxes, from when to when.

DACS 2.4 (date) and 2.5 (extent).
"""

from collections import Counter
from dataclasses import dataclass
from dataclasses import field as starts

from boxlore.core.crosswalk.captions import NATURE
from boxlore.core.crosswalk.dublin_core import process_term
from boxlore.core.findings import several
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import Record

PLURALS = {"photograph": "photographs", "album page": "album pages", "mounted photograph": "mounted photographs"}


@dataclass(slots=True, kw_only=True)
class Extent:
    """The extent of a transfer, counted record by record with `add`.

    `kinds`: nature -> number of items. `boxes` are labels, `folders` are paths of labels. `earliest` and `latest` are
    days in ISO 8601, or ''. `found_in` and `creators`: words or name -> number of items.
    """

    items: int = 0
    kinds: Counter[str] = starts(default_factory=Counter)
    boxes: set[str] = starts(default_factory=set)
    folders: set[tuple[str, ...]] = starts(default_factory=set)
    scan_ids: set[str] = starts(default_factory=set)
    """A scan that shows several items is one."""
    earliest: str = ""
    latest: str = ""
    found_in: dict[str, int] = starts(default_factory=dict)
    creators: dict[str, int] = starts(default_factory=dict)
    people: Counter[str] = starts(default_factory=Counter)
    """Id of a person of the registry who is shown -> number of items."""
    places: Counter[str] = starts(default_factory=Counter)
    processes: dict[str, str] = starts(default_factory=dict)
    """Process -> its term, or ''."""
    occasions: Counter[str] = starts(default_factory=Counter)
    languages: Counter[str] = starts(default_factory=Counter)
    """Language tag -> number of statements in it."""

    def add(self, record: Record) -> None:
        """Count one record."""
        self.items += 1
        self.kinds[NATURE.get(record.kind, record.kind)] += 1
        if record.mark:
            self.boxes.add(record.mark.path[0][1])
            self.folders.add(tuple(label for _, label in record.mark.path))
        if not record.closed_scans:
            self.scan_ids |= {scan.id for scan in record.scans}
        if record.found_in:
            self.found_in[record.found_in] = self.found_in.get(record.found_in, 0) + 1
        for person in record.shown("photographer"):
            self.creators[person.name] = self.creators.get(person.name, 0) + 1
        self.people.update({shown.person for shown in record.shown() if shown.person and not shown.unsure})
        if record.place is not None:
            self.places[full_name(record.place)] += 1
        self.occasions.update({view.words for view in record.all("occasion")})
        if process := record.words("process"):
            self.processes[process] = process_term(record)
        self.languages.update(view.language for rows in record.told.values() for view in rows if view.language)
        self._date(record)

    def _date(self, record: Record) -> None:
        view = record.first("date")
        date = view.date if view else None
        if date and date.first_year is not None:
            self.earliest = min(self.earliest or str(date.earliest), str(date.earliest))
        if date and date.last_year is not None:
            self.latest = max(self.latest, str(date.latest))

    @property
    def scans(self) -> int:
        """How many scans there are that are not closed."""
        return len(self.scan_ids)

    @property
    def years(self) -> str:
        """`1898-1975`, `1912` or `undated`."""
        first, last = self.earliest[:4], self.latest[:4]
        return "-".join(dict.fromkeys(year for year in (first, last) if year)) or "undated"

    @property
    def words(self) -> str:
        """`20 photographs, 2 letters; 2 boxes, 5 folders`."""
        counted = ", ".join(several(count, kind, plural(kind)) for kind, count in self.kinds.most_common())
        boxes, folders = len(self.boxes), len({labels for labels in self.folders if len(labels) > 1})
        containers = [several(boxes, "box", "boxes")] if boxes else []
        containers += [several(folders, "folder")] if folders else []
        return "; ".join(part for part in (counted, ", ".join(containers)) if part)


def plural(kind: str) -> str:
    """The name of a kind for several items."""
    return PLURALS.get(kind, f"{kind}s")
