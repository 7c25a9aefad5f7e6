"""Which item a scan belongs to that comes later than the scan of the other side.

Fronts are often scanned first and backs another day. The rule is that of `pairing.by_suffix`: two files of one name
but for the suffix of their side, in one folder, show one item. So a back whose front is here joins its item, and so
does a front whose back is here. It is sure where a single item of that name and folder waits for that side; the same
name in another folder, or several items, is a question. A file that is called by an item's number joins that item, for
so a scanning shop is told to name its files. A side whose file is damaged waits too, for a whole file of its own name.

Names of files may name people. So a scan that is copied in keeps digests of its folder and of its name without the
suffix (`CameFrom`), which are enough to know its other side by, and no words. The digest is that of the name in one
normal form and in small letters; older collections have that of the name as it was written, so that both are sought.
"""

import hashlib
import os
from collections import defaultdict
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path

from boxlore.core.fields.pictures import CAME_FROM_WORDS, FILE_WORDS, LOOKS_WORDS, SHOWS_WORDS, CameFrom
from boxlore.core.records.item_record import AS_SCANNED
from boxlore.core.records.marks import looks_like_number
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.scans.pairing import RECTO, VERSO, Planned, ScanSide, as_one_name, split_suffix

_OPPOSITE = {RECTO: VERSO, VERSO: RECTO}


@dataclass(frozen=True, slots=True)
class Match:
    """The items (ids) that a scan may belong to. It is `sure` only of one."""

    items: tuple[str, ...]
    sure: bool


def came_from(path: Path) -> CameFrom:
    """What is kept of the place and the name that a scan's file has."""
    return _came_from(path.resolve())


def _came_from(path: Path) -> CameFrom:
    """The same of a path without links and dots."""
    return CameFrom(_digest(str(path.parent)), _digest(as_one_name(split_suffix(path.stem)[0])))


def row_came_from(table: str, key: str) -> CameFrom:
    """The same of an item of a table: the table's path, and the item's key in it."""
    return CameFrom(_digest(table), _digest(key))


@lru_cache(1024)
def _digest(text: str) -> str:
    return hashlib.sha256(os.fsencode(text)).hexdigest()[:16]


@dataclass(slots=True)
class Sides:
    """The sides of every item that are scanned as they are, and the names of their files; kept up to date by `add`."""

    collection: Collection
    sides: defaultdict[str, set[str]] = field(default_factory=lambda: defaultdict(set))
    """Item id -> recto, verso."""
    _named: defaultdict[tuple[str, str], list[tuple[str, str]]] = field(default_factory=lambda: defaultdict(list))
    """(digest of the name, side) -> (digest of the folder, item id)."""
    damaged: set[str] = field(default_factory=set)
    """The paths of damaged files, relative to the collection."""

    def __post_init__(self) -> None:
        folder = str(self.collection.folder.resolve())
        for facts in self.collection.store.scan_facts():
            if facts.get("role", [AS_SCANNED]) != [AS_SCANNED]:
                continue
            kept = CAME_FROM_WORDS.or_none(facts["came_from"][-1]) if "came_from" in facts else None
            came = kept or _came_from(
                Path(os.path.normpath(os.path.join(folder, FILE_WORDS.read(facts["file"][-1]).path)))
            )
            damaged = "looks" in facts and LOOKS_WORDS.or_none(facts["looks"][-1]) is None
            if damaged:
                self.damaged.add(FILE_WORDS.read(facts["file"][-1]).path)
            for words in facts.get("shows", ()):
                shows = SHOWS_WORDS.read(words)
                if shows.role:  # an altered part of a sheet, or one that a better scan came for
                    continue
                if damaged:
                    self._named[came.name, _OPPOSITE[shows.side]].append((came.folder, shows.item))
                else:
                    self._add(shows.item, shows.side, came, whole=shows.area is None)

    def add(self, item: str, side: ScanSide) -> None:
        """An item has this scan now."""
        if side.role == AS_SCANNED:
            self._add(item, side.side, came_from(side.path), whole=not side.area)

    def _add(self, item: str, side: str, came: CameFrom, *, whole: bool) -> None:
        self.sides[item].add(side)
        if whole:
            self._named[came.name, side].append((came.folder, item))

    def match(self, planned: Planned) -> Match | None:
        """The item that the scans of one side, and no other, may belong to by their name; None where there is none."""
        sides = {side.side for side in planned.sides}
        whole = all(side.role == AS_SCANNED and not side.area for side in planned.sides)
        if len(planned.sides) != 1 or not whole:
            return None
        (side,), path = sides, planned.sides[0].path
        stem, side_named = split_suffix(path.stem)
        if side_named != side:
            return None
        if looks_like_number(stem):
            item = self.collection.store.item_by_number(stem.upper())
            return Match((item,), sure=True) if item and side not in self.sides[item] else None
        waiting = [
            (folder, item) for folder, item in self._called_so(path, _OPPOSITE[side]) if side not in self.sides[item]
        ]
        folder_here = came_from(path).folder if waiting else ""
        here = tuple(dict.fromkeys(item for folder, item in waiting if folder == folder_here))
        if len(here) == 1:
            return Match(here, sure=True)
        items = here or tuple(dict.fromkeys(item for _, item in waiting))
        return Match(items, sure=False) if items else None

    def has_a_back(self, planned: Planned) -> str:
        """The item whose front has the name of this back, and which has another back; '' for none."""
        side = planned.sides[0]
        if len(planned.sides) != 1 or side.role != AS_SCANNED or split_suffix(side.path.stem)[1] != VERSO:
            return ""
        return next((item for _, item in self._called_so(side.path, RECTO) if VERSO in self.sides[item]), "")

    def _called_so(self, path: Path, side: str) -> list[tuple[str, str]]:
        """(digest of the folder, item id) of the scans of that side whose name is that of a file without its suffix."""
        path = path.resolve()
        names = dict.fromkeys((_came_from(path).name, _digest(split_suffix(path.stem)[0])))
        return [row for name in names for row in self._named[name, side]]
