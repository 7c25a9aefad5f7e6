"""Everything that records are made from, item by item in the order of numbers.

Asked for CHUNK items at a time, so that memory stays flat and no question stays open between two chunks: a
task of hours holds up neither the log's checkpoint nor a strike.
"""

import json
import sqlite3
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from boxlore.core.fields.pictures import (
    FILE_WORDS,
    LINK_FIRST_SQL,
    LINK_SECOND_SQL,
    LINK_WORDS,
    SHOWS_ITEM_SQL,
    SHOWS_WORDS,
    Shows,
)
from boxlore.core.fields.points import AREA_WORDS
from boxlore.core.records.in_force import AS_SCANNED, MarkerRows, Material, Related, ScanFile
from boxlore.core.statements import Reading
from boxlore.store.queries import ContainerPath, items_after, number_of, path_of
from boxlore.store.rows import READING, SELECT, ToldRow, reading_of, statement_of

CHUNK = 200

_AMONG = "IN (SELECT value FROM json_each(?))"


@dataclass(slots=True)
class _PathCache:
    """What a whole run remembers: the ways to the containers met, which are few."""

    db: sqlite3.Connection
    paths: dict[str, ContainerPath] = field(default_factory=dict)

    def path(self, container: str) -> ContainerPath:
        if container not in self.paths:
            self.paths[container] = path_of(self.db, container)
        return self.paths[container]


def about_items(db: sqlite3.Connection, ids: Sequence[str] | None) -> Iterator[Material]:
    """Everything in force about each item: of all, in the order of numbers, or of these, in their order."""
    shelf = _PathCache(db)
    for numbered in _all(db) if ids is None else _these(db, ids):
        yield from _materials(shelf, numbered)


def _all(db: sqlite3.Connection) -> Iterator[list[tuple[str, str]]]:
    number = ""
    while found := items_after(db, number, CHUNK):
        yield found
        number = found[-1][0]


def _these(db: sqlite3.Connection, ids: Sequence[str]) -> Iterator[list[tuple[str, str]]]:
    for at in range(0, len(ids), CHUNK):
        yield [(number, ident) for ident in ids[at : at + CHUNK] if (number := number_of(db, ident))]


def _materials(shelf: _PathCache, numbered: list[tuple[str, str]]) -> Iterator[Material]:
    db = shelf.db
    ids = [ident for _, ident in numbered]
    told = _told(db, ids)
    scans = _scans(db, ids)
    markers = _markers(db, {scan.id for found in scans.values() for scan in found})
    related = _related(db, ids)
    settled = _settlements(db, ids)
    for number, ident in numbered:
        rows = told.get(ident, [])
        container, position = _kept(rows)
        chosen, weighed = settled.get(ident, ({}, frozenset()))
        yield Material(
            id=ident,
            number=number,
            statements=rows,
            scans=scans.get(ident, ()),
            markers=[one for scan in scans.get(ident, ()) for one in _on(scan, markers.get(scan.id, ()))],
            path=shelf.path(container) if container else (),
            position=position,
            related=related.get(ident, ()),
            chosen=chosen,
            settled=weighed,
        )


def _kept(rows: Iterable[ToldRow]) -> tuple[str, int]:
    """The container an item is in and its place there, from what was said last."""
    words = ""
    for statement, _ in rows:
        if statement.field == "kept":
            words = statement.words
    container, _, place = words.partition(" ")
    return container, int(place) if place.isdigit() else 0


def _told(db: sqlite3.Connection, subjects: Iterable[str]) -> dict[str, list[ToldRow]]:
    """Statements in force with their readings, by subject, each in the order of the log."""
    asked = (json.dumps(list(subjects)),)
    readings = _readings(db, asked)
    found: defaultdict[str, list[ToldRow]] = defaultdict(list)
    for row in db.execute(f"SELECT {SELECT} FROM in_force s WHERE s.subject {_AMONG} ORDER BY s.subject, s.row", asked):
        found[row[3]].append((statement_of(row), readings.get(row[0])))
    return found


def _readings(db: sqlite3.Connection, asked: tuple[str]) -> dict[str, Reading | None]:
    """The reading beside each statement, by the rule of `rows.NEWEST_READING`: the last row that comes stands."""
    query = f"""
        SELECT r.statement, {READING} FROM statement s JOIN reading r ON r.statement = s.id
        WHERE s.subject {_AMONG} AND r.act NOT IN (SELECT act FROM withdrawn)
        ORDER BY r.confirmed, r.recorded_at, r.act"""
    return {row[0]: reading_of(row[1:]) for row in db.execute(query, asked)}


def _scans(db: sqlite3.Connection, items: Sequence[str]) -> dict[str, list[ScanFile]]:
    """The scans of each item: as scanned before altered, and in each of these recto before verso."""
    query = f"""
        SELECT subject, words FROM in_force
        WHERE field = 'shows' AND {SHOWS_ITEM_SQL} {_AMONG} ORDER BY row"""
    shows = [(scan, SHOWS_WORDS.read(words)) for scan, words in db.execute(query, (json.dumps(items),))]
    facts: defaultdict[str, dict[str, str]] = defaultdict(dict)
    query = f"SELECT subject, field, words FROM in_force WHERE subject {_AMONG} ORDER BY subject, row"
    for scan, name, words in db.execute(query, (json.dumps([scan for scan, _ in shows]),)):
        facts[scan][name] = words
    found: defaultdict[str, list[ScanFile]] = defaultdict(list)
    for scan, shown in shows:
        if "file" in facts[scan]:
            found[shown.item].append(_scan(scan, facts[scan], shown))
    for some in found.values():
        some.sort(key=lambda one: (one.role != AS_SCANNED, one.side))
    return found


def _scan(ident: str, told: dict[str, str], shows: Shows) -> ScanFile:
    facts = FILE_WORDS.read(told["file"])
    return ScanFile(
        id=ident,
        path=facts.path,
        sha256=facts.sha256,
        bytes=facts.bytes,
        width=facts.width,
        height=facts.height,
        media_type=facts.media_type,
        ppi=facts.ppi,
        side=shows.side,
        area=shows.area.numbers if shows.area else (),
        role=told.get("role", AS_SCANNED),
        embedded=told.get("embedded", ""),
    )


def _markers(db: sqlite3.Connection, scans: Iterable[str]) -> dict[str, list[tuple[str, list[ToldRow]]]]:
    """The markers on each scan in the order they were set, with what is told of them."""
    query = f"SELECT words, subject FROM in_force WHERE field = 'scan' AND words {_AMONG} ORDER BY row"
    on = db.execute(query, (json.dumps(list(scans)),)).fetchall()
    if not on:
        return {}
    told = _told(db, [marker for _, marker in on])
    found: defaultdict[str, list[tuple[str, list[ToldRow]]]] = defaultdict(list)
    for scan, marker in on:
        found[scan].append((marker, told.get(marker, [])))
    return found


def _on(scan: ScanFile, markers: Iterable[tuple[str, list[ToldRow]]]) -> Iterator[MarkerRows]:
    number = 0
    for ident, told in markers:
        words = next((statement.words for statement, _ in told if statement.field == "area"), "")
        where = AREA_WORDS.read(words).numbers if words else ()
        if where and _inside(where, scan.area):
            number += 1
            yield MarkerRows(id=ident, scan=scan.id, number=number, area=where, statements=told)


def _inside(where: tuple[float, ...], area: tuple[float, ...]) -> bool:
    """Whether a marker lies on the part of the scan that shows this item."""
    if len(area) != 4:
        return True
    x, y = (where[0] + where[2] / 2, where[1] + where[3] / 2) if len(where) == 4 else where[:2]
    return area[0] <= x <= area[0] + area[2] and area[1] <= y <= area[1] + area[3]


def _related(db: sqlite3.Connection, items: Sequence[str]) -> dict[str, list[Related]]:
    """Relations from and to each item, those from it first."""
    found: defaultdict[str, list[Related]] = defaultdict(list)
    for column, reverse in ((LINK_FIRST_SQL, False), (LINK_SECOND_SQL, True)):
        query = f"SELECT words FROM in_force WHERE field = 'link' AND {column} {_AMONG} ORDER BY row"
        for (words,) in db.execute(query, (json.dumps(items),)).fetchall():
            link = LINK_WORDS.read(words)
            here, there = (link.second, link.first) if reverse else (link.first, link.second)
            if number := number_of(db, there):
                found[here].append(Related(kind=link.kind, number=number, reverse=reverse))
    return found


def _settlements(db: sqlite3.Connection, items: Sequence[str]) -> dict[str, tuple[dict[str, str], frozenset[str]]]:
    """For each item that has any: the statement chosen of each field, and every statement weighed."""
    query = f"""
        SELECT s.subject, s.field, s.chosen, w.statement FROM settlement s LEFT JOIN weighed w ON w.settlement = s.id
        WHERE s.subject {_AMONG} AND s.act NOT IN (SELECT act FROM withdrawn) ORDER BY s.recorded_at, s.id"""
    chosen: defaultdict[str, dict[str, str]] = defaultdict(dict)
    weighed: defaultdict[str, set[str]] = defaultdict(set)
    for item, name, one, statement in db.execute(query, (json.dumps(items),)):
        chosen[item][name] = one
        if statement:
            weighed[item].add(statement)
    return {item: (chosen[item], frozenset(weighed[item])) for item in chosen}
