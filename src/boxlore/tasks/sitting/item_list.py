"""All items in the order of their numbers, small enough for a society's whole holding.

Ids are kept as 16 bytes each, and what a row shows (what it is about, how much is told) is read only for the
rows that are on the screen.
"""

import uuid
from bisect import bisect_left
from collections import OrderedDict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import PurePosixPath

from boxlore.core.crosswalk.captions import named_by_file, own_lines
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.records.in_force import build
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Said, Statement, fold
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.settings import family_way

KEEP = 400

BARE, BEGUN, TOLD = "bare", "begun", "told"


@dataclass(frozen=True, slots=True)
class ListRow:
    """One line of the list: number, mark, how much is told (bare, begun, told), what it is, what is to ask."""

    id: str
    number: str
    mark: str
    state: str
    about: str
    to_ask: str = ""


class Listing:
    """The items of a collection by position, from 0."""

    def __init__(self, collection: Collection) -> None:
        self._collection = collection
        self._ids = b""
        self._rows: OrderedDict[str, ListRow] = OrderedDict()
        self._read_at: tuple[int, int] | None = None
        """The version of the store that the rows were read of: a name put right is one of many rows."""
        self.reload()

    def reload(self) -> None:
        """Read the order again, after an intake."""
        self._ids = self._collection.store.item_ids()
        self._rows.clear()

    def __len__(self) -> int:
        return len(self._ids) // 16

    def id_at(self, position: int) -> str:
        """The item's id at a position."""
        return str(uuid.UUID(bytes=self._ids[position * 16 : position * 16 + 16]))

    def position(self, item: str) -> int:
        """Where an item stands, or -1; '' is no item, as in what was done to a person's entry."""
        if not item:
            return -1
        wanted = uuid.UUID(item).bytes
        at = self._ids.find(wanted)
        while at >= 0 and at % 16:
            at = self._ids.find(wanted, at + 1)
        return at // 16 if at >= 0 else -1

    def row_at(self, position: int, around: int = 40) -> ListRow:
        """The row at a position; its neighbours are read with it, in one go."""
        item = self.id_at(position)
        if item not in self._rows:
            near = range(max(0, position - around), min(len(self), position + around))
            self.rows([self.id_at(at) for at in near])
        return self.rows([item])[0]

    def rows(self, items: Sequence[str]) -> list[ListRow]:
        """The rows of these items, those not remembered read in one go; of rows, whatever was written since is read
        again."""
        version = self._collection.store.version
        if version != self._read_at:
            self._rows.clear()
            self._read_at = version
        missing = [item for item in items if item not in self._rows]
        for row in self._read(missing):
            self._rows[row.id] = row
        while len(self._rows) > KEEP + len(items):
            self._rows.popitem(last=False)
        return [self._rows[item] for item in items if item in self._rows]

    def _read(self, items: Sequence[str]) -> Iterator[ListRow]:
        if not items:
            return
        people, way = self._collection.people(), family_way(self._collection.settings)
        for material in self._collection.store.about_items(ids=items):
            to_ask = still_to_ask([statement for statement, _ in material.statements])
            record = build(material, people, {})
            yield ListRow(
                record.id,
                record.number,
                record.mark.short if record.mark else "",
                state_of(record),
                about(record, way),
                "; ".join(to_ask),
            )


def still_to_ask(statements: Iterable[Statement]) -> list[str]:
    """What is to ask about an item, and why it was set aside."""
    asides = {"asked": "", "set_aside": "set aside: "}
    done_with = ("asked", "")  # a question that was answered
    return [
        asides[statement.field] + statement.words
        for statement in statements
        if statement.field in asides and (statement.field, statement.words) != done_with
    ]


def state_of(record: Record) -> str:
    """Bare: nobody told anything. Told: who, when, where are told or asked, and a story or an occasion. Else begun."""
    have = (
        set(filter(record.somebody_told, record.told))
        | record.not_known
        | ({"person"} if _somebody_named(record) else set())
    )
    if {"person", "date", "place"} <= have and have & {"story", "occasion"}:
        return TOLD
    return BEGUN if have else BARE


def _somebody_named(record: Record) -> bool:
    return any(shown.told.source.said is not Said.FILE for shown in record.shown())


def about(record: Record, way: FamilyWay) -> str:
    """What an item shows, in one line: its title, or its people and occasion, or the story's beginning."""
    if title := record.words("title"):
        return _line(title)
    names = ", ".join(shown.name for shown in record.shown())
    parts = [part for part in (record.words("occasion"), names) if part]
    if not parts:
        own = next(iter(own_lines(record)), "")
        parts = [
            record.words("story") or record.words("inscription") or record.words("place") or own or _by_file(record)
        ]
    if record.words("date"):
        first = record.first("date")
        edtf = first.date.edtf if first is not None and first.date is not None else None
        when = family_display(edtf, way) if edtf else record.date_display
        if when not in _line(" ".join(parts)):  # a file's name often ends in its year
            parts.append(when)
    return _line(" · ".join(part for part in parts if part))


def _by_file(record: Record) -> str:
    """What its file's name says; where that says nothing (`scan_005.jpg`), what its folder's says, and the name."""
    named = named_by_file(record)
    file = record.first("file_name")
    name = PurePosixPath(file.words).name if file is not None else ""
    says = any(word in fold(name) for word in fold(named).split())
    return named if says or not name else " · ".join(part for part in (named, name) if part)


def _line(words: str) -> str:
    return " ".join(words.split())


def nearest(positions: Sequence[int], position: int) -> int:
    """The index in a sorted list of positions at or after a position (the last one beyond its end)."""
    return min(bisect_left(positions, position), max(len(positions) - 1, 0))


def filtered(listing: Listing, wanted: str, chunk: int = 200) -> Iterable[list[int]]:
    """Positions of the items in a state (bare, begun, told) or with something to ask, chunk by chunk."""
    for start in range(0, len(listing), chunk):
        ids = [listing.id_at(at) for at in range(start, min(start + chunk, len(listing)))]
        rows = listing.rows(ids)
        yield [start + at for at, row in enumerate(rows) if (row.to_ask if wanted == "to ask" else row.state == wanted)]
