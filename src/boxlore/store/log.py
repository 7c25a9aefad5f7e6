"""Adding to the log: every act in one transaction, together with all that follows from it.

Theory of operation
===================

The problem. A family's memories are told by several people over years, and are corrected and doubted. If a field were
simply overwritten, it would be lost who said what before; and a wrong key or a power cut could lose words that nobody
can tell again. So no correction, no undo and no crash may lose anything that was told.

The idea. The collection is a log of statements. A statement is one row: about one subject (an item, a scan, a person
...), in one field, in these words, from this source, as sure as this, for this audience. Rows are only added. All
later events are further rows:

- An act is one thing that somebody did at one moment. All rows made by it carry its id, and `apply` writes them in one
  transaction, so that an act is in the log whole or not at all.
- A correction is a new statement. Its `replaces` holds the id of the older one.
- Undo is a new act that withdraws an earlier act (a row of `withdrawal`). It writes no statements and takes none back.
- Redo is a new act that withdraws the undo.
- A reading is what the program understood of a statement's words: a date, a place, a person. It stands beside the
  statement and belongs to an act as well, so that it can be corrected and undone. A confirmed reading counts before
  others, then the newest.
- A settlement is the keeper's decision between statements that disagree.

A draft, which is being typed, is not part of the log.

In force. Which statements count now is stored nowhere by hand; it follows from the rows:

- An act is withdrawn if some act that withdraws it is not withdrawn itself.
- A statement is past if its act is withdrawn, or if a statement of an act that is not withdrawn replaces it.
- Every other statement is in force: the view `in_force`.

So several statements of one field may be in force at once. They are what several people told, and no order among them
is decided here.

What always holds
- A row of the log is never changed and, except by a strike (see `strike`), never deleted.
- An act is whole or absent, and so is all that follows from it, because it is written in the same transaction.
- What is in force depends on the rows alone, not on the order in which they came in.
- Withdrawals never form a circle: an act that is withdrawn already can withdraw nothing further (`_withdraw`).
- Beside every statement, reading and settlement stands a sum over its row, so that a change that did not come through
  here is noticed (`row_sums`).
- Every statement has passed the one guard (`boxlore.core.fields.guard`), so what is read back makes sense.

An example. Leida Rourke tells of a picture of a farm near Kärdla.

    act 1    date: about 1935           adds s1
    act 2    date: summer of 1931       adds s2, which replaces s1
    act 3    undo of act 2              withdraws act 2
    act 4    redo                       withdraws act 3

After act 1, s1 is in force. After act 2, s2 is, and s1 is past, because it is replaced. After act 3, act 2 is
withdrawn: s2 is past, and s1, which only a statement of a withdrawn act replaces, is in force again. After act 4, act 3
is withdrawn and therefore act 2 is not: s2 is in force and s1 is past. Rows were added at every step, and none changed.

Then the back of the picture is read, and act 5 adds s3, "suvi 1931", from the inscription, which replaces nothing. s2
and s3 are in force beside each other, with their sources.
"""

import sqlite3
from collections.abc import Iterable

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.guard import checked
from boxlore.core.statements import Reading, Statement
from boxlore.store import projections
from boxlore.store.row_sums import row_sum
from boxlore.store.rows import COLUMNS, DRAFT_COLUMNS, draft_values, reading_values, statement_values
from boxlore.store.values import Change, Draft, Settlement

_MARKS = ", ".join("?" * len(COLUMNS))
_APPEND = f"INSERT INTO statement ({', '.join(COLUMNS)}) VALUES ({_MARKS})"
_GIVEN = "SELECT 1 FROM statement WHERE field = 'number' AND words = ? LIMIT 1"
_SUM = "INSERT OR REPLACE INTO statement_sum VALUES (?, ?)"
_DRAFT = f"INSERT OR REPLACE INTO draft ({', '.join(DRAFT_COLUMNS)}) VALUES ({', '.join('?' * len(DRAFT_COLUMNS))})"


def apply(db: sqlite3.Connection, change: Change) -> None:
    """Write one act, or a further part of one, in the caller's transaction. Raises WrongUse."""
    db.execute(
        "INSERT OR IGNORE INTO act (id, what, recorded_at, by) VALUES (?, ?, ?, ?)",
        (change.act, change.what, change.recorded_at, change.by),
    )
    append(db, change.statements)
    for statement, reading in change.readings:
        _read(db, change, statement, reading)
    for settlement in change.settlements:
        _settle(db, change, settlement)
    for undone in change.withdraws:
        _withdraw(db, change.act, undone)
    db.executemany("DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", change.clears_drafts)


def append(db: sqlite3.Connection, statements: Iterable[Statement]) -> None:
    """Add statements, with all that follows from them. Raises WrongUse for one that the guard refuses, CouldNot for a
    number that was given already."""
    for statement in statements:
        values = statement_values(checked(statement))
        if statement.field == "number" and db.execute(_GIVEN, (statement.words,)).fetchone():
            raise CouldNot("That number was given already.", "Numbers are given once; nothing was changed.")
        row = db.execute(_APPEND, values).lastrowid
        assert row is not None  # an INSERT that did not raise has a row
        db.execute(_SUM, (row, row_sum(values)))
        projections.add(db, row, statement)


def save_draft(db: sqlite3.Connection, draft: Draft) -> None:
    """Keep what is being typed, in place of what was kept of the same field and slot."""
    db.execute(_DRAFT, draft_values(draft))


def _read(db: sqlite3.Connection, change: Change, statement: str, reading: Reading) -> None:
    row = (statement, change.act, *reading_values(reading), change.recorded_at)
    db.execute("INSERT OR REPLACE INTO reading VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", (*row, row_sum(row)))
    projections.add_reading(db, reading, change.recorded_at)


def _settle(db: sqlite3.Connection, change: Change, settlement: Settlement) -> None:
    decided = (settlement.subject.kind, settlement.subject.id, settlement.field, settlement.outcome, settlement.chosen)
    row = (settlement.id, change.act, *decided, change.recorded_at, change.by)
    db.execute("INSERT INTO settlement VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", (*row, row_sum(row)))
    weighed = [(settlement.id, ident) for ident in settlement.weighed]
    db.executemany("INSERT OR IGNORE INTO weighed VALUES (?, ?)", weighed)


def _withdraw(db: sqlite3.Connection, act: str, undone: str) -> None:
    """Withdraw an act. Raises WrongUse if the withdrawing act was withdrawn already; so withdrawals form no circle."""
    is_withdrawn = db.execute("SELECT 1 FROM withdrawal WHERE withdraws = ? LIMIT 1", (act,)).fetchone()
    if act == undone or is_withdrawn:
        raise WrongUse("An act that is taken back cannot take another back.", "Take it back in an act of its own.")
    db.execute("INSERT OR IGNORE INTO withdrawal (act, withdraws) VALUES (?, ?)", (act, undone))
    projections.weigh_act(db, undone)
