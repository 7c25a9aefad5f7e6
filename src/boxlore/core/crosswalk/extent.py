"""What a whole transfer comes to (how many, of which kinds, from when to when) and how its files are called.

DACS 2.4 (date) and 2.5 (extent). A scan's name in a package rests on what never changes: number, side, role.
"""

from collections import Counter
from dataclasses import dataclass
from dataclasses import field as starts

from boxlore.core.crosswalk.captions import NATURE
from boxlore.core.records.in_force import AS_SCANNED, Record, ScanFile

PLURALS = {"photograph": "photographs", "album page": "album pages", "mounted photograph": "mounted photographs"}


@dataclass(slots=True, kw_only=True)
class Extent:
    """Counted record by record with `add`; `earliest` and `latest` are ISO days or empty."""

    items: int = 0
    kinds: Counter[str] = starts(default_factory=Counter)
    boxes: set[str] = starts(default_factory=set)
    folders: set[tuple[str, ...]] = starts(default_factory=set)
    scans: int = 0
    earliest: str = ""
    latest: str = ""
    found_in: dict[str, int] = starts(default_factory=dict)
    creators: dict[str, int] = starts(default_factory=dict)

    def add(self, record: Record) -> None:
        """Count one record in."""
        self.items += 1
        self.kinds[NATURE.get(record.kind, record.kind)] += 1
        if record.mark:
            self.boxes.add(record.mark.path[0][1])
            self.folders.add(tuple(label for _, label in record.mark.path))
        self.scans += 0 if record.closed_scans else len(record.scans)
        if record.found_in:
            self.found_in[record.found_in] = self.found_in.get(record.found_in, 0) + 1
        for one in record.shown("photographer"):
            self.creators[one.name] = self.creators.get(one.name, 0) + 1
        self._date(record)

    def _date(self, record: Record) -> None:
        told = record.first("date")
        first, last = (str(told.value.get(name) or "") if told else "" for name in ("earliest", "latest"))
        if len(first) == 10 and (not self.earliest or first < self.earliest):
            self.earliest = first
        if len(last) == 10 and last > self.latest:
            self.latest = last

    @property
    def years(self) -> str:
        """`1898-1975`, `1912` or `undated`."""
        first, last = self.earliest[:4], self.latest[:4]
        return "-".join(dict.fromkeys(one for one in (first, last) if one)) or "undated"

    @property
    def words(self) -> str:
        """`20 photographs, 2 letters; 2 boxes, 5 folders`."""
        counted = ", ".join(
            f"{count} {kind if count == 1 else plural(kind)}" for kind, count in self.kinds.most_common()
        )
        boxes, folders = len(self.boxes), len({one for one in self.folders if len(one) > 1})
        kept = [f"{boxes} {'box' if boxes == 1 else 'boxes'}"] if boxes else []
        kept += [f"{folders} folder{'' if folders == 1 else 's'}"] if folders else []
        return "; ".join(part for part in (counted, ", ".join(kept)) if part)


def plural(kind: str) -> str:
    """The kind's name for several."""
    return PLURALS.get(kind, f"{kind}s")


def packed_path(record: Record, scan: ScanFile) -> str:
    """Where a scan lies in a package: `scans/TRA-0042_f.jpg`; a scan of several items goes by its bytes."""
    named = [_base(record, one) for one in record.scans[: _place(record, scan) + 1]]
    again = named.count(named[-1])
    suffix = scan.path.rpartition(".")[2].lower() if "." in scan.path.rpartition("/")[2] else "bin"
    return f"scans/{named[-1]}{f'-{again}' if again > 1 else ''}.{suffix}"


def _place(record: Record, scan: ScanFile) -> int:
    return next((at for at, one in enumerate(record.scans) if one.id == scan.id), 0)


def _base(record: Record, scan: ScanFile) -> str:
    if scan.area:
        return f"{scan.sha256[:12]}_sheet"
    side = "f" if scan.side == "recto" else "b"
    altered = "" if scan.role == AS_SCANNED else f"_{''.join(c if c.isalnum() else '-' for c in scan.role)}"
    return f"{record.number}_{side}{altered}"
