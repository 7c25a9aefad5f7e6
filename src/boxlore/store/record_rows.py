"""All rows that the records of items are made from, item by item.

They are asked for CHUNK items at a time. So memory does not grow with the collection, and no query stays open between
two chunks: a task of hours holds up neither the checkpoint of the write-ahead log nor a strike.
"""

import json
import sqlite3
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from boxlore.core.fields.areas import AREA_WORDS
from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.fields.pictures import (
    EARLIER,
    FILE_WORDS,
    LINK_FIRST_SQL,
    LINK_SECOND_SQL,
    LINK_WORDS,
    LOOKS_WORDS,
    SHOWS_ITEM_SQL,
    SHOWS_WORDS,
    Shows,
    words_struck,
)
from boxlore.core.fields.quads import to_straight
from boxlore.core.records.item_record import AS_SCANNED, MarkerRows, Material, Related, ScanFile
from boxlore.core.records.marks import ContainerPath
from boxlore.core.statements import Reading
from boxlore.store.promises import Promises
from boxlore.store.queries import items_after, number_of, path_of
from boxlore.store.rows import READING, SELECT, ToldRow, reading_of, statement_of

CHUNK = 200

_AMONG = "IN (SELECT value FROM json_each(?))"


@dataclass(slots=True)
class _PathCache:
    """Cache of container paths for one pass over the items; there are few containers."""

    db: sqlite3.Connection
    paths: dict[str, ContainerPath] = field(default_factory=dict)

    def path(self, container: str) -> ContainerPath:
        if container not in self.paths:
            self.paths[container] = path_of(self.db, container)
        return self.paths[container]


def about_items(db: sqlite3.Connection, ids: Sequence[str] | None) -> Iterator[Material]:
    """What is in force about each item: of these ids in their order, or of all items in the order of numbers."""
    path_cache = _PathCache(db)
    for chunk in _chunks_of_all(db) if ids is None else _chunks_of_these(db, ids):
        yield from _materials(path_cache, chunk)


def _chunks_of_all(db: sqlite3.Connection) -> Iterator[list[tuple[str, str]]]:
    """(number, id) of all items, in chunks."""
    number = ""
    while chunk := items_after(db, number, CHUNK):
        yield chunk
        number = chunk[-1][0]


def _chunks_of_these(db: sqlite3.Connection, ids: Sequence[str]) -> Iterator[list[tuple[str, str]]]:
    for start in range(0, len(ids), CHUNK):
        yield [(number, ident) for ident in ids[start : start + CHUNK] if (number := number_of(db, ident))]


def _materials(path_cache: _PathCache, chunk: list[tuple[str, str]]) -> Iterator[Material]:
    db = path_cache.db
    ids = [ident for _, ident in chunk]
    statements_of = _statements_of(db, ids)
    scans = _scans(db, ids)
    markers = _markers(db, {scan.id for of_item in scans.values() for scan in of_item})
    related = _related(db, ids)
    settled = _settlements(db, ids)
    for number, ident in chunk:
        rows = statements_of.get(ident, [])
        kept = _kept(rows)
        chosen, weighed = settled.get(ident, ({}, frozenset()))
        yield Material(
            id=ident,
            number=number,
            statements=rows,
            scans=scans.get(ident, ()),
            markers=[marker for scan in scans.get(ident, ()) for marker in _markers_on(scan, markers.get(scan.id, ()))],
            path=path_cache.path(kept.container) if kept else (),
            position=kept.position if kept else 0,
            related=related.get(ident, ()),
            chosen=chosen,
            settled=weighed,
        )


def _kept(rows: Iterable[ToldRow]) -> Kept | None:
    """The container that an item is in and its position there, from the last such statement in force."""
    words = ""
    for statement, _ in rows:
        if statement.field == "kept":
            words = statement.words
    return KEPT_WORDS.or_none(words)


def _statements_of(db: sqlite3.Connection, subjects: Iterable[str]) -> dict[str, list[ToldRow]]:
    """The statements in force with their readings, by subject, in the order of the log."""
    subject_list = (json.dumps(list(subjects)),)
    readings = _readings(db, subject_list)
    by_subject: defaultdict[str, list[ToldRow]] = defaultdict(list)
    promises = Promises(db)
    for row in db.execute(
        f"SELECT {SELECT} FROM in_force s WHERE s.subject {_AMONG} ORDER BY s.subject, s.row", subject_list
    ):
        by_subject[row[3]].append((promises.held(statement_of(row)), readings.get(row[0])))
    return by_subject


def _readings(db: sqlite3.Connection, subject_list: tuple[str]) -> dict[str, Reading | None]:
    """The reading that counts of each statement, by the statement's id.

    The rule is that of `rows.NEWEST_READING`: the rows come in its order, and the last one replaces the others.
    """
    query = f"""
        SELECT r.statement, {READING} FROM statement s JOIN reading r ON r.statement = s.id
        WHERE s.subject {_AMONG} AND r.act NOT IN (SELECT act FROM withdrawn)
        ORDER BY r.confirmed, r.recorded_at, r.act"""
    return {row[0]: reading_of(row[1:]) for row in db.execute(query, subject_list)}


def _scans(db: sqlite3.Connection, items: Sequence[str]) -> dict[str, list[ScanFile]]:
    """The scans by item: those as scanned before altered ones, and among these recto before verso."""
    query = f"""
        SELECT subject, words, replaces, row FROM in_force
        WHERE field = 'shows' AND {SHOWS_ITEM_SQL} {_AMONG} ORDER BY row"""
    rows = db.execute(query, (json.dumps(items),)).fetchall()
    if any(replaces for _, _, replaces, _ in rows):  # one that was turned stays where it was among the others
        rows.sort(key=lambda row: _first_row(db, row[2]) if row[2] else row[3])
    shows = [(scan, shown) for scan, words, _, _ in rows if (shown := SHOWS_WORDS.read(words)).role != EARLIER]
    facts: defaultdict[str, dict[str, str]] = defaultdict(dict)
    query = f"SELECT subject, field, words FROM in_force WHERE subject {_AMONG} ORDER BY subject, row"
    for scan, name, words in db.execute(query, (json.dumps([scan for scan, _ in shows]),)):
        facts[scan][name] = words
    # The tombstone says it, not a statement: it outlives an undo, a kill, and a backup that is brought back.
    for (scan,) in db.execute("SELECT subject FROM tombstone WHERE field = 'embedded'"):
        if "file" in facts.get(scan, ()):
            facts[scan]["embedded"] = words_struck(FILE_WORDS.read(facts[scan]["file"]).sha256)
    by_item: defaultdict[str, list[ScanFile]] = defaultdict(list)
    for scan, shown in shows:
        if "file" in facts[scan]:
            by_item[shown.item].append(_scan(scan, facts[scan], shown))
    for of_item in by_item.values():
        of_item.sort(key=lambda scan_file: (scan_file.role != AS_SCANNED, scan_file.side))
        of_item[:] = _without_replaced(of_item)
    return by_item


def _first_row(db: sqlite3.Connection, statement: str) -> int:
    """The row of the statement with which a chain of statements, each in the place of the one before, begins."""
    row = 0
    while statement:
        row, statement = db.execute("SELECT row, replaces FROM statement WHERE id = ?", (statement,)).fetchone()
    return row


def _without_replaced(scans: Sequence[ScanFile]) -> list[ScanFile]:
    """The scans without each damaged one in whose place a whole one was taken in; the log and the disk keep it."""
    whole = {(scan.role, scan.side) for scan in scans if not scan.damaged}
    return [scan for scan in scans if not (scan.damaged and (scan.role, scan.side) in whole)]


def _scan(ident: str, words_of: dict[str, str], shows: Shows) -> ScanFile:
    facts = FILE_WORDS.read(words_of["file"])
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
        role=shows.role or words_of.get("role", AS_SCANNED),
        embedded=words_of.get("embedded", ""),
        damaged="looks" in words_of and LOOKS_WORDS.or_none(words_of["looks"]) is None,
        orientation=facts.orientation,
        turn=shows.turn,
        corners=shows.corners,
    )


def _markers(db: sqlite3.Connection, scans: Iterable[str]) -> dict[str, list[tuple[str, list[ToldRow]]]]:
    """The markers by scan, in the order in which they were set, with the statements about each."""
    query = f"SELECT words, subject FROM in_force WHERE field = 'scan' AND words {_AMONG} ORDER BY row"
    scan_and_marker = db.execute(query, (json.dumps(list(scans)),)).fetchall()
    if not scan_and_marker:
        return {}
    statements_of = _statements_of(db, [marker for _, marker in scan_and_marker])
    by_scan: defaultdict[str, list[tuple[str, list[ToldRow]]]] = defaultdict(list)
    for scan, marker in scan_and_marker:
        by_scan[scan].append((marker, statements_of.get(marker, [])))
    return by_scan


def _markers_on(scan: ScanFile, markers: Iterable[tuple[str, list[ToldRow]]]) -> Iterator[MarkerRows]:
    """The markers that lie on the part of the scan that shows the item, numbered from 1."""
    number = 0
    for ident, rows in markers:
        words = next((statement.words for statement, _ in rows if statement.field == "area"), "")
        position = AREA_WORDS.read(words).numbers if words else ()
        if position and _inside(position, scan.part):
            number += 1
            yield MarkerRows(id=ident, scan=scan.id, number=number, area=position, statements=rows)


def _inside(position: tuple[float, ...], part: tuple[float, ...]) -> bool:
    """Whether a marker (its middle) lies in a part of the scan; an empty one is the whole scan.

    `position` is x and y, or x, y, width and height; all in 0..1 of the scan.
    """
    if len(part) < 4:
        return True
    x, y = (position[0] + position[2] / 2, position[1] + position[3] / 2) if len(position) == 4 else position[:2]
    if len(part) == 4:
        return part[0] <= x <= part[0] + part[2] and part[1] <= y <= part[1] + part[3]
    u, v = to_straight(part, x, y)
    return 0 <= u <= 1 and 0 <= v <= 1


def _related(db: sqlite3.Connection, items: Sequence[str]) -> dict[str, list[Related]]:
    """The relations by item, those from the item before those to it."""
    by_item: defaultdict[str, list[Related]] = defaultdict(list)
    for column, reverse in ((LINK_FIRST_SQL, False), (LINK_SECOND_SQL, True)):
        query = f"SELECT words FROM in_force WHERE field = 'link' AND {column} {_AMONG} ORDER BY row"
        for (words,) in db.execute(query, (json.dumps(items),)).fetchall():
            link = LINK_WORDS.read(words)
            item, other_item = (link.second, link.first) if reverse else (link.first, link.second)
            if number := number_of(db, other_item):
                by_item[item].append(Related(kind=link.kind, number=number, reverse=reverse))
    return by_item


def _settlements(db: sqlite3.Connection, items: Sequence[str]) -> dict[str, tuple[dict[str, str], frozenset[str]]]:
    """The settlements by item: the statement chosen for each field, and all statements weighed.

    Only items with a settlement are in it. A later settlement of a field replaces an earlier one.
    """
    query = f"""
        SELECT s.subject, s.field, s.chosen, w.statement FROM settlement s LEFT JOIN weighed w ON w.settlement = s.id
        WHERE s.subject {_AMONG} AND s.act NOT IN (SELECT act FROM withdrawn) ORDER BY s.recorded_at, s.id"""
    chosen: defaultdict[str, dict[str, str]] = defaultdict(dict)
    weighed: defaultdict[str, set[str]] = defaultdict(set)
    for item, field_name, statement_chosen, statement_weighed in db.execute(query, (json.dumps(items),)):
        chosen[item][field_name] = statement_chosen
        if statement_weighed:
            weighed[item].add(statement_weighed)
    return {item: (chosen[item], frozenset(weighed[item])) for item in chosen}
