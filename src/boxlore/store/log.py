"""Adding to the log, each act in one transaction with everything that follows from it."""

import sqlite3
from collections.abc import Iterable

from boxlore.core.errors import WrongUse
from boxlore.core.fields.guard import checked
from boxlore.core.statements import Reading, Statement
from boxlore.store import projections
from boxlore.store.rows import COLUMNS, DRAFT_COLUMNS, draft_values, statement_values
from boxlore.store.values import Change, Draft, Settlement

_MARKS = ", ".join("?" * len(COLUMNS))
_APPEND = f"INSERT INTO statement ({', '.join(COLUMNS)}) VALUES ({_MARKS})"
_DRAFT = f"INSERT OR REPLACE INTO draft ({', '.join(DRAFT_COLUMNS)}) VALUES ({', '.join('?' * len(DRAFT_COLUMNS))})"


def apply(db: sqlite3.Connection, change: Change) -> None:
    """Write one act, or a further part of one, inside the caller's transaction."""
    db.execute(
        "INSERT OR IGNORE INTO act (id, what, recorded_at, by) VALUES (?, ?, ?, ?)",
        (change.act, change.what, change.recorded_at, change.by),
    )
    append(db, change.statements)
    for statement, one in change.readings:
        _read(db, change, statement, one)
    for settlement in change.settlements:
        _settle(db, change, settlement)
    for undone in change.withdraws:
        _withdraw(db, change.act, undone)
    db.executemany("DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", change.clears_drafts)


def append(db: sqlite3.Connection, statements: Iterable[Statement]) -> None:
    """Add rows, with all that follows from them. Raises WrongUse for one that no log may take; then none is added."""
    for one in statements:
        row = db.execute(_APPEND, statement_values(checked(one))).lastrowid
        assert row is not None  # an INSERT that did not raise has a row
        projections.add(db, row, one)


def save_draft(db: sqlite3.Connection, draft: Draft) -> None:
    """Keep what is being typed."""
    db.execute(_DRAFT, draft_values(draft))


def _read(db: sqlite3.Connection, change: Change, statement: str, one: Reading) -> None:
    made = (one.kind, one.value, one.reader, one.settings, one.asks, one.confirmed)
    row = (statement, change.act, *made, change.recorded_at)
    db.execute("INSERT OR REPLACE INTO reading VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)", row)
    projections.add_reading(db, one, change.recorded_at)


def _settle(db: sqlite3.Connection, change: Change, one: Settlement) -> None:
    where = (one.subject.kind, one.subject.id, one.field, one.outcome, one.chosen)
    db.execute(
        "INSERT INTO settlement VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (one.id, change.act, *where, change.recorded_at, change.by),
    )
    db.executemany("INSERT OR IGNORE INTO weighed VALUES (?, ?)", [(one.id, ident) for ident in one.weighed])


def _withdraw(db: sqlite3.Connection, act: str, undone: str) -> None:
    """Withdraw an act. One that was itself withdrawn withdraws no more, so that undoing never runs in a circle."""
    taken_back = db.execute("SELECT 1 FROM withdrawal WHERE withdraws = ? LIMIT 1", (act,)).fetchone()
    if act == undone or taken_back:
        raise WrongUse("An act that is taken back cannot take another back.", "Take it back in an act of its own.")
    db.execute("INSERT OR IGNORE INTO withdrawal (act, withdraws) VALUES (?, ?)", (act, undone))
    projections.weigh_act(db, undone)
