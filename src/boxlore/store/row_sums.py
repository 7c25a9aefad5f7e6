"""A sum over each row of the log, by which a letter that turned on the disk is noticed.

SQLite's own checks look at the shape of the file, not at the words in it: a bit that turns inside a text passes them.
So beside each row of `statement`, `reading` and `settlement` stands the BLAKE2b of its columns (RFC 7693, 8 bytes),
made of the values when the row is written and never again. Rows are never changed, so that every other sum means
damage, or another program's hand. Rows from before the sums have none, and nothing can be said of them.

    sum = BLAKE2b-64(column *(%x00 column))      a number in decimal digits, text in UTF-8, NULL as %xFF
"""

import sqlite3
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from hashlib import blake2b

from boxlore.store.rows import COLUMNS
from boxlore.store.schema import MIGRATIONS, SUMS, SUMS_FROM, version_of

_STATEMENTS = f"""
    SELECT s.subject_kind, s.subject, s.field, t.sum IS NULL AND s.row > (SELECT CAST(value AS INTEGER) FROM meta
    WHERE name = '{SUMS_FROM}'), t.sum, {", ".join(f"s.{name}" for name in COLUMNS)}
    FROM statement s LEFT JOIN statement_sum t ON t.row = s.row ORDER BY s.row"""

_READINGS = """
    SELECT s.subject_kind, s.subject, s.field, 0, r.sum, r.statement, r.act, r.kind, r.value, r.reader, r.settings,
    r.asks, r.confirmed, r.recorded_at FROM reading r LEFT JOIN statement s ON s.id = r.statement"""

_SETTLEMENTS = """
    SELECT subject_kind, subject, field, 0, sum, id, act, subject_kind, subject, field, outcome, chosen, recorded_at, by
    FROM settlement"""

_TABLES = (("statement", _STATEMENTS), ("reading", _READINGS), ("settlement", _SETTLEMENTS))

_WITHOUT = "SELECT count(*) FROM statement s LEFT JOIN statement_sum t ON t.row = s.row WHERE t.sum IS NULL"


@dataclass(frozen=True, slots=True)
class AlteredRow:
    """A row that is not as it was written: its table, and what it says that it is about, which may be altered too."""

    table: str
    kind: str
    subject: str
    field: str


Column = str | bytes | int | None


def row_sum(values: Iterable[Column]) -> bytes:
    """The sum over a row's columns in their order, as text or as the bytes that are on the disk."""
    return blake2b(b"\0".join(map(_as_bytes, values)), digest_size=8).digest()


def _as_bytes(value: Column) -> bytes:
    if isinstance(value, bytes):
        return value
    if isinstance(value, str):
        return value.encode()
    return b"\xff" if value is None else str(int(value)).encode()


def altered_rows(db: sqlite3.Connection) -> Iterator[AlteredRow]:
    """Every row that is not as it was written. The connection gives texts as bytes from now on: some may be none."""
    db.text_factory = bytes
    for table, query in _TABLES if _has_sums(db) else ():
        for kind, subject, field, is_lost, kept, *values in db.execute(query):
            if is_lost or (kept is not None and kept != row_sum(values)):
                yield AlteredRow(table, *(_as_text(value) for value in (kind, subject, field)))


def _as_text(value: bytes | None) -> str:
    return (value or b"").decode("utf-8", "replace")


def _has_sums(db: sqlite3.Connection) -> bool:
    """Whether the tables are of a version with sums; older ones may be read where nothing can be written."""
    return version_of(db) > MIGRATIONS.index(SUMS)


def rows_without_sum(db: sqlite3.Connection) -> int:
    """How many statements have no sum."""
    count: int = db.execute(_WITHOUT if _has_sums(db) else "SELECT count(*) FROM statement").fetchone()[0]
    return count
