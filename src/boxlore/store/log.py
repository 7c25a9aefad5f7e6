"""Adding to the log, and the two projections that follow it: the words to search and the names to complete."""

import sqlite3
from collections.abc import Iterable

from boxlore.core.statements import FIELDS, Kind, Statement, fold
from boxlore.store.rows import COLUMNS, DRAFT_COLUMNS, SELECT, draft_values, statement_of, statement_values
from boxlore.store.values import NAMED_KINDS, PERSON_NAMES, Change, Draft, Settlement

_MARKS = ", ".join("?" * len(COLUMNS))
_APPEND = f"INSERT INTO statement ({', '.join(COLUMNS)}) VALUES ({_MARKS})"
_DRAFT = f"INSERT OR REPLACE INTO draft ({', '.join(DRAFT_COLUMNS)}) VALUES ({', '.join('?' * len(DRAFT_COLUMNS))})"


def apply(db: sqlite3.Connection, change: Change) -> None:
    """Write one act inside the caller's transaction."""
    db.execute(
        "INSERT OR IGNORE INTO act (id, what, recorded_at, by) VALUES (?, ?, ?, ?)",
        (change.act, change.what, change.recorded_at, change.by),
    )
    append(db, change.statements)
    for statement, one in change.readings:
        value = (
            statement,
            change.act,
            one.kind,
            one.value,
            one.reader,
            one.settings,
            one.asks,
            one.confirmed,
        )
        db.execute("INSERT OR REPLACE INTO reading VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)", (*value, change.recorded_at))
    for settlement in change.settlements:
        _settle(db, change, settlement)
    for undone in change.withdraws:
        db.execute("INSERT OR IGNORE INTO withdrawal (act, withdraws) VALUES (?, ?)", (change.act, undone))
        weigh_withdrawals(db, undone)
    db.executemany("DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", change.clears_drafts)


def append(db: sqlite3.Connection, statements: Iterable[Statement]) -> None:
    """Add rows, with the words to search and the names to complete."""
    for one in statements:
        row = db.execute(_APPEND, statement_values(one)).lastrowid
        index(db, row, one)


def index(db: sqlite3.Connection, row: int | None, one: Statement) -> None:
    """Bring one statement into the projections."""
    if FIELDS[one.field].told and one.words:
        db.execute("INSERT INTO words_index (rowid, folded) VALUES (?, ?)", (row, fold(one.words)))
    if one.subject.kind in NAMED_KINDS and one.field in PERSON_NAMES:
        entries = [(part, one.subject.id, one.subject.kind, one.words) for part in _endings(fold(one.words))]
        db.executemany("INSERT OR IGNORE INTO name VALUES (?, ?, ?, ?)", entries)
        mark_used(db, one.subject.id, one.recorded_at)
    elif one.field == "place" and one.subject.kind is Kind.ITEM and one.words:
        db.execute(
            "INSERT OR IGNORE INTO name VALUES (?, ?, ?, ?)",
            (fold(one.words)[:200], "", Kind.PLACE, one.words[:200]),
        )


def mark_used(db: sqlite3.Connection, subject: str, at: str) -> None:
    """Remember when a person, event or place was last meant, for completion."""
    db.execute("INSERT OR REPLACE INTO used VALUES (?, ?)", (subject, at))


def _endings(folded: str) -> Iterable[str]:
    """A name from each of its words on, so that any part of it completes."""
    parts = folded.split()
    return [" ".join(parts[at:])[:200] for at in range(len(parts))]


def save_draft(db: sqlite3.Connection, draft: Draft) -> None:
    """Keep what is being typed."""
    db.execute(_DRAFT, draft_values(draft))


def _settle(db: sqlite3.Connection, change: Change, one: Settlement) -> None:
    where = (one.subject.kind, one.subject.id, one.field, one.outcome, one.chosen)
    db.execute(
        "INSERT INTO settlement VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (one.id, change.act, *where, change.recorded_at, change.by),
    )
    db.executemany("INSERT OR IGNORE INTO weighed VALUES (?, ?)", [(one.id, ident) for ident in one.weighed])


def weigh_withdrawals(db: sqlite3.Connection, act: str) -> None:
    """Set whether an act counts as withdrawn, and then every act that it had withdrawn itself.

    An act is withdrawn while some act that withdraws it is not withdrawn in its turn: undo, redo, undo.
    """
    withdrawn = db.execute(
        "SELECT 1 FROM withdrawal w WHERE w.withdraws = ? AND w.act NOT IN (SELECT act FROM withdrawn) LIMIT 1",
        (act,),
    ).fetchone()
    if withdrawn:
        db.execute("INSERT OR IGNORE INTO withdrawn VALUES (?)", (act,))
    else:
        db.execute("DELETE FROM withdrawn WHERE act = ?", (act,))
    for (further,) in db.execute("SELECT withdraws FROM withdrawal WHERE act = ?", (act,)).fetchall():
        weigh_withdrawals(db, further)


def rebuild(db: sqlite3.Connection) -> None:
    """Drop what the projections hold and make it again from the log."""
    db.execute("DELETE FROM words_index")
    db.execute("DELETE FROM name")
    db.execute("DELETE FROM used")
    db.execute("DELETE FROM withdrawn")
    for row in db.execute(f"SELECT {SELECT}, s.row FROM statement s ORDER BY s.row").fetchall():
        index(db, row[16], statement_of(row))
    used = "SELECT json_extract(value, '$.id'), max(recorded_at) FROM reading WHERE kind IN ('person', 'event')"
    for subject, at in db.execute(f"{used} GROUP BY 1").fetchall():
        if subject:
            mark_used(db, subject, at)
    for (act,) in db.execute("SELECT id FROM act ORDER BY recorded_at DESC, id DESC").fetchall():
        weigh_withdrawals(db, act)
