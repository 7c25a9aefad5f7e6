"""A scan in the place of one that is here: the same side of the same original, scanned better, or mended.

The scan keeps its id, and so what it shows, its part of a sheet and its markers; what is noted of its file takes the
place of what was, which stays in the history. Nothing is deleted. Which scan is meant is told by the file: it lies
where that scan lies, for it was written over; or it is called by an item's number, as a table's row may be, and that
item has one scan of that side. Where that is a part of a sheet, or of anything else, the file becomes a scan of its
own, and the part is kept as the earlier one: the sheet shows others. So does a file of which the bytes are known, and
of which what lies in the collection is gone, or is not as it was.
"""

import os
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.pictures import EARLIER, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.findings import several
from boxlore.core.records.item_record import AS_SCANNED
from boxlore.core.records.marks import looks_like_number
from boxlore.core.statements import Kind, Said, Source, Subject
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.what_scans_show import shown_by
from boxlore.tasks.scans.pairing import Planned, ScanSide, split_suffix


@dataclass(frozen=True, slots=True)
class Stood:
    """What a file takes the place of: a scan (its id), or where `item` is given, the part that shows that item."""

    scan: str
    item: str = ""


@dataclass
class ScansHere:
    """The scans that a new file may take the place of; read when it is first asked for."""

    collection: Collection

    @cached_property
    def by_path(self) -> Mapping[str, str]:
        """The path of a file, without dots -> the id of its scan."""
        folder = str(self.collection.folder.resolve())
        return {os.path.normpath(os.path.join(folder, facts.path)): ident for ident, facts in self.files.items()}

    @cached_property
    def files(self) -> Mapping[str, FileFacts]:
        """Scan id -> what was noted of its file."""
        return dict(self.collection.store.scans())

    @cached_property
    def of_side(self) -> Mapping[tuple[str, str], list[Stood]]:
        """(item id, side) -> what shows it as it was scanned: scans, and parts of scans."""
        made = {ident: role for ident, _, role in self.collection.store.words_of(["role"])}
        sides: dict[tuple[str, str], list[Stood]] = defaultdict(list)
        for scan, shows in self._shows:
            alone = shows.area is None and len(self.shown.get(scan, ())) == 1
            if (shows.role or made.get(scan, AS_SCANNED)) == AS_SCANNED:
                sides[shows.item, shows.side].append(Stood(scan, "" if alone else shows.item))
        return sides

    @cached_property
    def shown(self) -> Mapping[str, Mapping[str, str]]:
        """Scan id -> the items that it shows, each with the side."""
        items: dict[str, dict[str, str]] = defaultdict(dict)
        for scan, shows in self._shows:
            if shows.role != EARLIER:
                items[scan][shows.item] = shows.side
        return items

    @cached_property
    def _shows(self) -> Sequence[tuple[str, Shows]]:
        """Scan id, and what it shows."""
        return [(scan, SHOWS_WORDS.read(words)) for scan, _, words in self.collection.store.words_of(["shows"])]

    def shown_whole(self, scan: str) -> list[str]:
        """The items (ids) that all of a scan shows."""
        return [shows.item for _, shows in shown_by(self.collection, scan) if shows.area is None]

    def lies_as_noted(self, scan: str) -> bool:
        """Whether the file of a scan lies where it was noted, and is as long as it was."""
        facts = self.files.get(scan)
        if facts is None:  # of a scan that came just now
            return True
        path = self.collection.folder / facts.path
        return path.is_file() and path.stat().st_size == facts.bytes

    def is_whole(self, scan: str, digest: str) -> bool:
        """Whether the file of a scan lies where it was noted, with these bytes."""
        return self.lies_as_noted(scan) and sha256_of(self.collection.folder / self.files[scan].path) == digest

    def numbers(self, stood: Stood) -> str:
        """The numbers of the items that are shown there."""
        items = (stood.item,) if stood.item else self.shown.get(stood.scan, ())
        return ", ".join(map(self.collection.store.number_of, items))

    def turned(self, stood: Stood) -> str:
        """What is said where the keeper turned a scan whose place another takes: that one may stand upright itself."""
        turn = next((shows.turn for _, shows in shown_by(self.collection, stood.scan) if shows.turn), 0)
        if stood.item or not turn:
            return ""
        return f", seen turned by {turn}° as the one before was: look whether that is right"

    def lies_there(self, side: ScanSide) -> Stood | None:
        """The scan whose file lies where this one does."""
        scan = self.by_path.get(str(side.path.resolve()))
        return Stood(scan) if scan else None

    def called_so(self, planned: Planned, side: ScanSide) -> Stood | None:
        """What a file is to replace by the number that it, or its row, is called by; None for nothing.

        Raises WrongUse where several may be meant.
        """
        name = next(filter(looks_like_number, (planned.key, split_suffix(side.path.stem)[0])), "").upper()
        item = self.collection.store.item_by_number(name) if name else None
        scans = self.of_side.get((item, side.side), []) if item and side.role == AS_SCANNED else []
        if item and len(scans) > 1:  # a damaged one, in whose place a whole one came, is not meant
            seen = {scan.id for scan in record_of(self.collection, item).scans}
            scans = [stood for stood in scans if stood.scan in seen]
        if len(scans) > 1:
            raise WrongUse(
                f"{name} has {several(len(scans), 'scan')} of that side, and {side.path.name} may be in place of any.",
                "Write it over the file of the one that it is better than, and take that file in with --replace.",
            )
        return scans[0] if scans else None


def restate(act: Act, collection: Collection, scan: str, told: Mapping[str, str]) -> None:
    """Note what is so of a scan's file now, by field, in place of what was noted of it before."""
    about = Subject(Kind.SCAN, scan)
    before = {statement.field: statement.id for statement, _ in collection.store.statements(about)}
    for name, words in told.items():
        if words:
            source = {"source": Source(Said.FILE)} if name == "embedded" else {}
            act.state(about, name, words, replaces=before.get(name, ""), **source)


def part_gives_way(act: Act, collection: Collection, stood: Stood) -> None:
    """Note that a part of a scan is the earlier picture of an item: it is kept, and shown nowhere."""
    for statement, shows in shown_by(collection, stood.scan):
        if shows.item == stood.item and shows.role != EARLIER:
            earlier = replace(shows, role=EARLIER)
            act.state(statement.subject, "shows", SHOWS_WORDS.write(earlier), replaces=statement.id)


def written_over(path: Path, numbers: str) -> WrongUse:
    """What is said of a file that lies where a scan lies, and is another, unless it is said that it replaces it."""
    return WrongUse(
        f"{path.name} lies where the scan of {numbers} lies, and is not as it was when that was taken in.",
        "If it is a better scan of it, take it in with --replace; if it is of another picture, give it another name.",
    )
