"""A scan in the place of one that is here: the same side of the same original, scanned better, or mended.

The scan keeps its id, and so what it shows, its part of a sheet and its markers; what is noted of its file takes the
place of what was, which stays in the history. Nothing is deleted. Which scan is meant is told by the file: it lies
where that scan lies, for it was written over; or it is called by an item's number, as a table's row may be, and that
item has one scan of that side which shows it alone.
"""

import os
from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import SHOWS_WORDS
from boxlore.core.findings import several
from boxlore.core.records.item_record import AS_SCANNED
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.what_scans_show import shown_by
from boxlore.tasks.scans.pairing import Planned, ScanSide, split_suffix


@dataclass
class ScansHere:
    """The scans that a new file may take the place of; read when it is first asked for."""

    collection: Collection

    @cached_property
    def by_path(self) -> Mapping[str, str]:
        """The path of a file, without dots -> the id of its scan."""
        folder = str(self.collection.folder.resolve())
        scans = self.collection.store.scans()
        return {os.path.normpath(os.path.join(folder, facts.path)): ident for ident, facts in scans}

    @cached_property
    def of_side(self) -> Mapping[tuple[str, str], list[str]]:
        """(item id, side) -> the scans of it that show it alone, as it was scanned."""
        made = {ident for ident, _, role in self.collection.store.words_of(["role"]) if role != AS_SCANNED}
        sides: dict[tuple[str, str], list[str]] = defaultdict(list)
        for scan, shown in self.shown.items():
            if len(shown) == 1 and scan not in made:
                ((item, side),) = shown.items()
                sides[item, side].append(scan)
        return sides

    @cached_property
    def shown(self) -> Mapping[str, Mapping[str, str]]:
        """Scan id -> the items that it shows, each with the side."""
        items: dict[str, dict[str, str]] = defaultdict(dict)
        for scan, _, words in self.collection.store.words_of(["shows"]):
            shows = SHOWS_WORDS.read(words)
            items[scan][shows.item] = shows.side
        return items

    def numbers(self, scan: str) -> str:
        """The numbers of the items that a scan shows."""
        return ", ".join(self.collection.store.number_of(item) for item in self.shown.get(scan, ()))

    def turned(self, scan: str) -> str:
        """What is said where the keeper turned a scan whose place another takes: that one may stand upright itself."""
        turn = next((shows.turn for _, shows in shown_by(self.collection, scan) if shows.turn), 0)
        return f", seen turned by {turn}° as the one before was: look whether that is right" if turn else ""

    def lies_there(self, side: ScanSide) -> str:
        """The id of the scan whose file lies where this one does; '' for none."""
        return self.by_path.get(str(side.path.resolve()), "")

    def called_so(self, planned: Planned, side: ScanSide) -> str:
        """The id of the scan that a file is to replace by the number that it, or its row, is called by; '' for none.

        Raises WrongUse where several may be meant.
        """
        name = next(filter(looks_like_number, (planned.key, split_suffix(side.path.stem)[0])), "").upper()
        item = self.collection.store.item_by_number(name) if name else None
        scans = self.of_side.get((item, side.side), []) if item and side.role == AS_SCANNED else []
        if len(scans) > 1:
            raise WrongUse(
                f"{name} has {several(len(scans), 'scan')} of that side, and {side.path.name} may be in place of any.",
                "Write it over the file of the one that it is better than, and take that file in with --replace.",
            )
        return scans[0] if scans else ""


def restate(act: Act, collection: Collection, scan: str, told: Mapping[str, str]) -> None:
    """Note what is so of a scan's file now, by field, in place of what was noted of it before."""
    about = Subject(Kind.SCAN, scan)
    before = {statement.field: statement.id for statement, _ in collection.store.statements(about)}
    for name, words in told.items():
        if words:
            source = {"source": Source(Said.FILE)} if name == "embedded" else {}
            act.state(about, name, words, replaces=before.get(name, ""), **source)


def written_over(path: Path, numbers: str) -> WrongUse:
    """What is said of a file that lies where a scan lies, and is another, unless it is said that it replaces it."""
    return WrongUse(
        f"{path.name} lies where the scan of {numbers} lies, and is not as it was when that was taken in.",
        "If it is a better scan of it, take it in with --replace; if it is of another picture, give it another name.",
    )
