"""What of a log is left out of a parcel, by ids, and what is asked of the log to know it."""

import json
import sqlite3
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass

from boxlore.store.rows import MEANT


@dataclass(frozen=True, slots=True)
class LeftOut:
    """What of the other copy does not come, by ids: rows, acts with all their rows, acts whose lines do not, and what
    was settled."""

    rows: frozenset[str] = frozenset()
    acts: frozenset[str] = frozenset()
    lines: frozenset[str] = frozenset()
    settlements: frozenset[str] = frozenset()


NOTHING = LeftOut()

NOT_TOLD = "something of which a part is kept back"
"""The line of an act of which a part was left out, for its own may repeat what was."""

_ROWS = f"""
    SELECT s.id, s.subject_kind, s.subject, s.field, s.words, s.source, s.audience,
        EXISTS (SELECT 1 FROM past p WHERE p.row = s.row),
        (SELECT group_concat({MEANT}, ' ') FROM reading WHERE reading.statement = s.id AND json_valid(value))
    FROM statement s"""

_SETTLED = "SELECT settlement FROM weighed WHERE statement IN (SELECT value FROM json_each(?1))"

_TOUCHED = f"""
    WITH RECURSIVE touched (act) AS (
        SELECT act FROM statement WHERE id IN (SELECT value FROM json_each(?1))
        UNION SELECT act FROM reading WHERE statement IN (SELECT value FROM json_each(?1))
        UNION SELECT act FROM settlement WHERE id IN ({_SETTLED})
        UNION SELECT w.act FROM withdrawal w JOIN touched t ON w.withdraws = t.act)
    SELECT act FROM touched"""

_TOUCHES = """
    WITH RECURSIVE done (act) AS (
        SELECT value FROM json_each(?1) UNION SELECT w.withdraws FROM withdrawal w JOIN done d ON w.act = d.act)
    SELECT id FROM statement WHERE act IN (SELECT act FROM done)
    UNION SELECT statement FROM reading WHERE act IN (SELECT act FROM done)
    UNION SELECT w.statement FROM weighed w JOIN settlement s ON s.id = w.settlement
        WHERE s.act IN (SELECT act FROM done)"""


def every_row(
    db: sqlite3.Connection, rows: Collection[str] | None = None
) -> Iterator[tuple[str, str, str, str, str, str, str, bool, str | None]]:
    """(id, kind and id of what it is about, field, words, who says it, audience, whether it is past, the ids of whoever
    it was ever read as, with spaces between) of every row, or of these."""
    if rows is None:
        yield from db.execute(_ROWS)
    else:
        yield from db.execute(f"{_ROWS} WHERE s.id IN (SELECT value FROM json_each(?))", (json.dumps(sorted(rows)),))


def every_line(db: sqlite3.Connection) -> Iterator[tuple[str, str]]:
    """(act, line) of every act."""
    yield from db.execute("SELECT id, what FROM act")


def touched_by(db: sqlite3.Connection, acts: Iterable[str]) -> set[str]:
    """The rows that these acts told, read or settled, or that acts did which they took back or did again."""
    return {row for (row,) in db.execute(_TOUCHES, (json.dumps(sorted(acts)),))}


def acts_before(db: sqlite3.Connection, when: str) -> frozenset[str]:
    """The acts recorded before a time."""
    return frozenset(act for (act,) in db.execute("SELECT id FROM act WHERE recorded_at < ?", (when,)))


def with_what_repeats_them(db: sqlite3.Connection, rows: Iterable[str], lines: Iterable[str]) -> LeftOut:
    """These rows and lines of acts, with what was settled of the rows, and with the lines of all acts that told, read
    or settled them, or took that back or did it again: each may repeat their words."""
    of_rows = (json.dumps(sorted(rows)),)
    touched = frozenset(act for (act,) in db.execute(_TOUCHED, of_rows))
    settled = frozenset(ident for (ident,) in db.execute(_SETTLED, of_rows))
    return LeftOut(frozenset(rows), lines=touched.union(lines), settlements=settled)
