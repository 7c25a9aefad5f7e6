"""Every question that the tasks ask of the log."""

import json
import sqlite3
from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from typing import Any

from boxlore.core.record import MarkerRows, Material, Related, ScanFile
from boxlore.core.statements import Reading, Statement
from boxlore.store.rows import (
    DRAFT_COLUMNS,
    NEWEST_READING,
    READING,
    SELECT,
    Told,
    draft_of,
    reading_of,
    statement_of,
    told_rows,
)
from boxlore.store.values import ActDone, Draft, Past

Path = tuple[tuple[str, str], ...]


def statements(db: sqlite3.Connection, subject: str) -> list[Told]:
    return list(told_rows(db, "s.subject = ? ORDER BY s.row", (subject,)))


def by_subject(db: sqlite3.Connection, kind: str) -> Iterator[tuple[str, list[Told]]]:
    rows = told_rows(db, "s.subject_kind = ? ORDER BY s.subject, s.row", (kind,))
    for subject, told in groupby(rows, key=lambda one: one[0].subject.id):
        yield subject, list(told)


def items(db: sqlite3.Connection) -> list[tuple[str, str]]:
    return list(db.execute(f"SELECT s.words, s.subject FROM in_force s WHERE s.field = 'number' ORDER BY {_BY_NUMBER}"))


_BY_NUMBER = "substr(s.words, 1, instr(s.words, '-')), length(s.words), s.words"


def item_by_number(db: sqlite3.Connection, number: str) -> str | None:
    row = db.execute("SELECT subject FROM in_force WHERE field = 'number' AND words = ?", (number,)).fetchone()
    return str(row[0]) if row else None


def about_items(db: sqlite3.Connection, ids: Sequence[str] | None) -> Iterator[Material]:
    if ids is None:
        numbered: Iterable[tuple[str, str]] = items(db)
    else:
        numbered = [(number, ident) for ident in ids if (number := _number_of(db, ident))]
    paths = dict(containers(db))
    for number, ident in numbered:
        yield _material(db, ident, number, paths)


def _number_of(db: sqlite3.Connection, ident: str) -> str:
    row = db.execute("SELECT words FROM in_force WHERE subject = ? AND field = 'number'", (ident,)).fetchone()
    return str(row[0]) if row else ""


def _material(db: sqlite3.Connection, ident: str, number: str, paths: dict[str, Path]) -> Material:
    told = statements(db, ident)
    container, position = "", 0
    for statement, _ in told:
        if statement.field == "kept":
            container, _, place = statement.words.partition(" ")
            position = int(place or 0)
    scans = _scans_of(db, ident)
    chosen, settled = _settlements(db, ident)
    return Material(
        id=ident,
        number=number,
        statements=told,
        scans=scans,
        markers=[marker for scan in scans for marker in _markers(db, scan)],
        path=paths.get(container, ()),
        position=position,
        related=_related(db, ident),
        chosen=chosen,
        settled=settled,
    )


def _scans_of(db: sqlite3.Connection, item: str) -> list[ScanFile]:
    shows = db.execute(
        "SELECT subject, words FROM in_force WHERE field = 'shows' AND json_extract(words, '$.item') = ? ORDER BY row",
        (item,),
    ).fetchall()
    found = [_scan(db, scan, json.loads(words)) for scan, words in shows]
    return sorted((scan for scan in found if scan), key=lambda scan: scan.side)


def _scan(db: sqlite3.Connection, ident: str, shows: dict[str, Any]) -> ScanFile | None:
    told = dict(db.execute("SELECT field, words FROM in_force WHERE subject = ? ORDER BY row", (ident,)))
    if "file" not in told:
        return None
    facts = json.loads(told["file"])
    return ScanFile(
        id=ident,
        path=facts["path"],
        sha256=facts["sha256"],
        bytes=facts["bytes"],
        width=facts["width"],
        height=facts["height"],
        media_type=facts["media_type"],
        ppi=facts.get("ppi", 0),
        side=shows["side"],
        area=tuple(shows.get("area") or ()),
        role=told.get("role", "as-scanned"),
        embedded=told.get("embedded", ""),
    )


def _markers(db: sqlite3.Connection, scan: ScanFile) -> Iterator[MarkerRows]:
    rows = db.execute("SELECT subject FROM in_force WHERE field = 'scan' AND words = ? ORDER BY row", (scan.id,))
    number = 0
    for (ident,) in rows.fetchall():
        told = statements(db, ident)
        area = next((statement.words for statement, _ in told if statement.field == "area"), "")
        where = tuple(float(part) for part in area.split())
        if where and _inside(where, scan.area):
            number += 1
            yield MarkerRows(id=ident, scan=scan.id, number=number, area=where, statements=told)


def _inside(where: tuple[float, ...], area: tuple[float, ...]) -> bool:
    """Whether a marker lies on the part of the scan that shows this item."""
    if len(area) != 4:
        return True
    x, y = (where[0] + where[2] / 2, where[1] + where[3] / 2) if len(where) == 4 else where[:2]
    return area[0] <= x <= area[0] + area[2] and area[1] <= y <= area[1] + area[3]


def _related(db: sqlite3.Connection, item: str) -> list[Related]:
    found = []
    for column, reverse in (("substr(words, 1, 36)", False), ("substr(words, 38, 36)", True)):
        query = f"SELECT words FROM in_force WHERE field = 'link' AND {column} = ? ORDER BY row"
        for (words,) in db.execute(query, (item,)).fetchall():
            one, other, kind = words.split()
            number = _number_of(db, one if reverse else other)
            if number:
                found.append(Related(kind=kind, number=number, reverse=reverse))
    return found


def _settlements(db: sqlite3.Connection, item: str) -> tuple[dict[str, str], frozenset[str]]:
    query = (
        "SELECT id, field, chosen FROM settlement WHERE subject = ?"
        " AND act NOT IN (SELECT act FROM withdrawn) ORDER BY recorded_at"
    )
    rows = db.execute(query, (item,)).fetchall()
    weighed: set[str] = set()
    for ident, _, _ in rows:
        weighed |= {one for (one,) in db.execute("SELECT statement FROM weighed WHERE settlement = ?", (ident,))}
    return {field: chosen for _, field, chosen in rows}, frozenset(weighed)


def history(db: sqlite3.Connection, subject: str, field: str) -> list[Past]:
    query = f"""
        SELECT {SELECT}, s.act IN (SELECT act FROM withdrawn), EXISTS (
            SELECT 1 FROM statement r
            WHERE r.replaces = s.id AND r.replaces <> '' AND r.act NOT IN (SELECT act FROM withdrawn))
        FROM statement s WHERE s.subject = ? AND s.field = ? ORDER BY s.row"""
    return [
        Past(statement_of(row), "withdrawn" if row[16] else "replaced" if row[17] else "in force")
        for row in db.execute(query, (subject, field))
    ]


def last_acts(db: sqlite3.Connection, limit: int) -> list[ActDone]:
    query = """
        SELECT a.id, a.what, a.recorded_at, a.by, a.id IN (SELECT act FROM withdrawn) FROM act a
        WHERE NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.act = a.id)
        ORDER BY a.recorded_at DESC, a.id DESC LIMIT ?"""
    return [ActDone(row[0], row[1], row[2], row[3], bool(row[4])) for row in db.execute(query, (limit,))]


def containers(db: sqlite3.Connection) -> list[tuple[str, Path]]:
    facts: dict[str, dict[str, str]] = {}
    query = "SELECT subject, field, words FROM in_force WHERE subject_kind = 'container' AND field IN ({}) ORDER BY row"
    for subject, field, words in db.execute(query.format("'kind', 'label', 'inside'")):
        facts.setdefault(subject, {})[field] = words
    return [(ident, _path(facts, ident)) for ident in facts]


def _path(facts: dict[str, dict[str, str]], ident: str) -> Path:
    steps: list[tuple[str, str]] = []
    seen: set[str] = set()
    while ident in facts and ident not in seen:
        seen.add(ident)
        steps.append((facts[ident].get("kind", "box"), facts[ident].get("label", "?")))
        ident = facts[ident].get("inside", "")
    return tuple(reversed(steps))


def items_by_mark(db: sqlite3.Connection, short: str) -> list[str]:
    container, _, position = short.rpartition("/")
    ids = [ident for ident, path in containers(db) if "/".join(label for _, label in path) == container]
    for table in ("in_force", "statement"):
        found: list[str] = []
        for ident in ids:
            query = f"SELECT subject FROM {table} WHERE field = 'kept' AND words = ? ORDER BY row"
            found += [subject for (subject,) in db.execute(query, (f"{ident} {position}",))]
        if found:
            return list(dict.fromkeys(found))
    return []


def last_position(db: sqlite3.Connection, container: str) -> int:
    query = "SELECT words FROM in_force WHERE field = 'kept' AND words >= ? AND words < ?"
    taken = [words.partition(" ")[2] for (words,) in db.execute(query, (f"{container} ", f"{container}!"))]
    return max((int(place) for place in taken if place.isdigit()), default=0)


def next_number_count(db: sqlite3.Connection, start: str) -> int:
    given = "FROM statement WHERE field = 'number' AND words >= ? AND words < ?"
    query = f"SELECT max(CAST(substr(words, ?) AS INTEGER)) {given}"
    row = db.execute(query, (len(start) + 1, start, start[:-1] + ".")).fetchone()
    return int(row[0] or 0) + 1


def scan_by_sha256(db: sqlite3.Connection, digest: str) -> str:
    query = "SELECT subject FROM in_force WHERE field = 'file' AND json_extract(words, '$.sha256') = ?"
    row = db.execute(query, (digest,)).fetchone()
    return str(row[0]) if row else ""


def shown_on(db: sqlite3.Connection, scan: str, area: Sequence[float]) -> str:
    for (words,) in db.execute("SELECT words FROM in_force WHERE subject = ? AND field = 'shows'", (scan,)).fetchall():
        shows = json.loads(words)
        if list(shows.get("area") or ()) == list(area):
            return _number_of(db, shows["item"])
    return ""


def scans(db: sqlite3.Connection) -> Iterator[tuple[str, dict[str, object]]]:
    for subject, words in db.execute("SELECT subject, words FROM in_force WHERE field = 'file' ORDER BY row"):
        yield subject, json.loads(words)


def drafts(db: sqlite3.Connection) -> list[Draft]:
    query = f"SELECT {', '.join(DRAFT_COLUMNS)} FROM draft ORDER BY updated_at"
    return [draft_of(row) for row in db.execute(query)]


def count(db: sqlite3.Connection, kind: str) -> int:
    row = db.execute("SELECT count(DISTINCT subject) FROM in_force WHERE subject_kind = ?", (kind,)).fetchone()
    return int(row[0])


def reading_beside(db: sqlite3.Connection, statement: str) -> tuple[Statement, Reading | None] | None:
    """One statement by its id, in force or not, with its reading."""
    query = f"SELECT {SELECT}, {READING} FROM statement s {NEWEST_READING} WHERE s.id = ?"
    row = db.execute(query, (statement,)).fetchone()
    return (statement_of(row), reading_of(row[16:])) if row else None
