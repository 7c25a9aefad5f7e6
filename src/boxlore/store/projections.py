"""Projections: tables that follow from the log, so that the questions asked most often are answered quickly.

Theory of operation
===================

The problem. Which statements are in force, which rows hold the words searched for, which names complete what is typed:
all of this follows from the log (see `log`). But a collection has hundreds of thousands of rows, and to read them at
every key would take seconds.

The idea. The answers are kept in tables of their own, which are changed in the same transaction as the log:

- `withdrawn` holds the acts that are withdrawn.
- `past` holds the rows of `statement` that are withdrawn or replaced. It lists what is not in force, since that is the
  smaller part: most acts write nothing into it.
- `words_index` is the full-text index over the folded words of all statements that were told, past ones too. A search
  joins it with the view `in_force`.
- `name` holds each name from each of its words on (`leida rourke` and `rourke`), so that any part of it completes. `at`
  says when the person, event or place was last meant, and those meant last are offered first.
- `used` holds the same time for each person, event and place.

`add`, `add_reading` and `weigh_act` are called for what was just added to the log, and each touches only what that can
have changed. `forget` follows a strike.

What always holds
- The tables hold nothing that the log does not hold. `rebuild` drops them and makes the same again from the log alone;
  a test of the store compares the two.
- They change in the transaction of the rows that they follow from, so a crash cannot leave them out of step.
- The rules are those of `log`: an act is withdrawn if some act that withdraws it is not withdrawn; a row is past if its
  act is withdrawn or if a statement of an act that is not withdrawn replaces it.

An example, with the acts of the example in `log`.

                                              withdrawn    past
    act 1 adds s1                             -            -
    act 2 adds s2, which replaces s1          -            s1
    act 3 withdraws act 2                     2            s2
    act 4 withdraws act 3                     3            s1

In the last line `weigh_act` begins with act 3: an act that is not withdrawn withdraws it, so it goes into `withdrawn`.
It has no statements. But it withdrew act 2, so act 2 is weighed next: the only act that withdraws it is withdrawn now,
so act 2 leaves `withdrawn`. Its statement s2 leaves `past`, and s1, which s2 replaces, goes into it. Act 2 itself
withdrew nothing, so this is the end.
"""

import sqlite3
from collections.abc import Iterable
from graphlib import CycleError, TopologicalSorter

from boxlore.core.fields.plain_values import START, START_SQL
from boxlore.core.fields.table import FIELDS
from boxlore.core.people.reference import id_meant
from boxlore.core.statements import Kind, Reading, Statement, fold
from boxlore.store.rows import MEANT, SELECT, statement_of
from boxlore.store.schema import PROJECTIONS, WORDS_INDEX
from boxlore.store.values import NAMED_KINDS, PERSON_NAMES

_IS_PAST = """(s.act IN (SELECT act FROM withdrawn) OR EXISTS (
    SELECT 1 FROM statement r WHERE r.replaces = s.id AND r.replaces <> '' AND r.act NOT IN (SELECT act FROM withdrawn)
))"""

_IS_WITHDRAWN = """
    SELECT 1 FROM withdrawal w WHERE w.withdraws = ? AND w.act NOT IN (SELECT act FROM withdrawn) LIMIT 1"""

_NEW_NAME = "INSERT OR IGNORE INTO name (folded, subject, kind, words, at) VALUES (?, ?, ?, ?, ?)"


def add(db: sqlite3.Connection, row: int, statement: Statement) -> None:
    """Follow a statement that was just added to the log as `row`.

    It may be past from the start: its act may be withdrawn already, or another statement may replace it.
    """
    index(db, row, statement)
    if statement.replaces:
        weigh_statement(db, statement.replaces)
    replaced = "SELECT 1 FROM statement WHERE replaces = ? AND replaces <> ''"  # as the partial index has it
    may_be_past = f"SELECT 1 FROM withdrawn WHERE act = ? UNION ALL {replaced} LIMIT 1"
    if db.execute(may_be_past, (statement.act, statement.id)).fetchone():
        weigh_statement(db, statement.id)


def add_reading(db: sqlite3.Connection, reading: Reading, at: str) -> None:
    """Follow a reading that was just added: note that the person or event which it names was meant at `at`."""
    if meant := id_meant(reading):
        mark_used(db, meant, at)


def index(db: sqlite3.Connection, row: int, statement: Statement) -> None:
    """Add one statement's words to `words_index`, and its names to `name`."""
    if is_indexed(statement.field, statement.words):
        db.execute("INSERT INTO words_index (rowid, folded) VALUES (?, ?)", (row, fold(statement.words)))
    _name(db, statement)


def is_indexed(name: str, words: str) -> bool:
    """Whether the words of that field can be searched for."""
    field = FIELDS.get(name)
    return bool(words) and (field is None or field.told)


def _name(db: sqlite3.Connection, statement: Statement) -> None:
    """Add a statement to `name` if it holds a name of a person, event or place, or tells the place of an item."""
    entries = names_in(statement.subject.kind, statement.subject.id, statement.field, statement.words)
    is_of_somebody = statement.subject.kind in NAMED_KINDS and statement.field in PERSON_NAMES
    at = mark_used(db, statement.subject.id, statement.recorded_at) if is_of_somebody else ""
    db.executemany(_NEW_NAME, [(*entry, at) for entry in entries])


NameEntry = tuple[str, str, str, str]
"""A row of `name` without its time: folded, subject, kind, words."""


def names_in(kind: str, subject: str, field: str, words: str) -> list[NameEntry]:
    """The rows of `name` that come of a statement, by the kind and id of its subject, its field and its words."""
    if kind in NAMED_KINDS and field in PERSON_NAMES:
        return [(ending, subject, str(kind), words) for ending in _endings(fold(words))]
    if field == "place" and kind == Kind.ITEM and words:
        return [(fold(words)[:START], "", str(Kind.PLACE), words[:START])]
    return []


def mark_used(db: sqlite3.Connection, subject: str, at: str) -> str:
    """Note that a person, event or place was meant at `at`, in `used` and with its names.

    Returns when it was last meant, which may be later than `at`.
    """
    later = "INSERT INTO used VALUES (?, ?) ON CONFLICT (subject) DO UPDATE SET at = max(at, excluded.at) RETURNING at"
    (newest,) = db.execute(later, (subject, at)).fetchone()
    db.execute("UPDATE name SET at = ? WHERE subject = ? AND at <> ?", (newest, subject, newest))
    return str(newest)


def _endings(folded: str) -> Iterable[str]:
    """The name from each of its words on: `leida rourke` and `rourke`."""
    parts = folded.split()
    return [" ".join(parts[at:])[:START] for at in range(len(parts))]


def weigh_statement(db: sqlite3.Connection, ident: str) -> None:
    """Recompute whether one statement is past, that is withdrawn, or replaced by a statement not withdrawn."""
    row_and_state = db.execute(f"SELECT s.row, {_IS_PAST} FROM statement s WHERE s.id = ?", (ident,)).fetchone()
    if row_and_state is None:
        return
    row, past = row_and_state
    db.execute("INSERT OR IGNORE INTO past VALUES (?)" if past else "DELETE FROM past WHERE row = ?", (row,))


def weigh_act(db: sqlite3.Connection, act: str) -> None:
    """Recompute whether an act is withdrawn. If that changes, recompute all that it changes: whether the act's
    statements, and those that they replace, are past, and whether the acts that it withdrew are withdrawn.
    """
    to_weigh = [act]
    while to_weigh:
        current = to_weigh.pop()
        is_withdrawn = db.execute(_IS_WITHDRAWN, (current,)).fetchone() is not None
        was_withdrawn = db.execute("SELECT 1 FROM withdrawn WHERE act = ?", (current,)).fetchone() is not None
        if is_withdrawn == was_withdrawn:
            continue
        record_it = "INSERT INTO withdrawn VALUES (?)" if is_withdrawn else "DELETE FROM withdrawn WHERE act = ?"
        db.execute(record_it, (current,))
        for ident, replaces in db.execute("SELECT id, replaces FROM statement WHERE act = ?", (current,)).fetchall():
            weigh_statement(db, ident)
            weigh_statement(db, replaces)
        withdrew = db.execute("SELECT withdraws FROM withdrawal WHERE act = ?", (current,))
        to_weigh += [undone for (undone,) in withdrew]


def rebuild(db: sqlite3.Connection) -> None:
    """Empty the projections and make them again from the log alone; the full-text index, which may be damaged so that
    nothing can be deleted from it, from nothing."""
    db.execute("DROP TABLE words_index")
    db.execute(WORDS_INDEX)
    for table in PROJECTIONS:
        db.execute(f"DELETE FROM {table}")
    db.executemany("INSERT INTO withdrawn VALUES (?)", [(act,) for act in _withdrawn(db)])
    db.execute(f"INSERT INTO past SELECT s.row FROM statement s WHERE {_IS_PAST}")
    for row in db.execute(f"SELECT {SELECT}, s.row FROM statement s ORDER BY s.row"):
        index(db, row[16], statement_of(row))
    used = f"SELECT {MEANT} AS id, max(recorded_at) FROM reading WHERE kind IN ('person', 'event') GROUP BY id"
    for subject, at in db.execute(used).fetchall():
        if subject:
            mark_used(db, subject, at)


def is_in_step(db: sqlite3.Connection) -> bool:
    """Whether the withdrawn acts and the past statements are those that follow from the log."""
    out_of_step = f"SELECT 1 FROM statement s WHERE {_IS_PAST} <> (s.row IN (SELECT row FROM past)) LIMIT 1"
    try:
        withdrawn = _withdrawn(db)
    except CycleError:  # an id was altered
        return False
    kept = {act for (act,) in db.execute("SELECT act FROM withdrawn")}
    return kept == withdrawn and db.execute(out_of_step).fetchone() is None


def can_be_made(db: sqlite3.Connection) -> bool:
    """Whether the log says of each act whether it is withdrawn: acts that withdraw each other in a circle do not."""
    try:
        _withdrawn(db)
    except CycleError:
        return False
    return True


def _withdrawn(db: sqlite3.Connection) -> set[str]:
    """The acts that are withdrawn, by the log alone. An act is looked at after all acts that withdraw it."""
    withdrawers: dict[str, list[str]] = {}
    for act, undone in db.execute("SELECT act, withdraws FROM withdrawal"):
        withdrawers.setdefault(undone, []).append(act)
    withdrawn: set[str] = set()
    for act in TopologicalSorter(withdrawers).static_order():
        if any(withdrawer not in withdrawn for withdrawer in withdrawers.get(act, ())):
            withdrawn.add(act)
    return withdrawn


def forget(db: sqlite3.Connection, struck: Iterable[tuple[Statement, int]], meant: set[str]) -> None:
    """Follow a strike. `struck` are the deleted statements with their rows, `meant` the ids in their readings."""
    subjects = set(meant)
    for statement, row in struck:
        db.execute("DELETE FROM words_index WHERE rowid = ?", (row,))
        db.execute("DELETE FROM past WHERE row = ?", (row,))
        if statement.subject.kind in NAMED_KINDS:
            subjects.add(statement.subject.id)
        elif statement.field == "place":
            still_told = f"SELECT 1 FROM statement WHERE field = 'place' AND subject_kind = 'item' AND {START_SQL} = ?"
            if db.execute(still_told, (statement.words[:START],)).fetchone() is None:
                db.execute("DELETE FROM name WHERE subject = '' AND words = ?", (statement.words[:START],))
    for subject in subjects:
        _name_again(db, subject)


def _name_again(db: sqlite3.Connection, subject: str) -> None:
    """Make the names of one person, event or place again from the log."""
    db.execute("DELETE FROM name WHERE subject = ?", (subject,))
    db.execute("DELETE FROM used WHERE subject = ?", (subject,))
    for row in db.execute(f"SELECT {SELECT} FROM statement s WHERE s.subject = ?", (subject,)).fetchall():
        _name(db, statement_of(row))
    query = f"SELECT max(recorded_at) FROM reading WHERE kind IN ('person', 'event') AND {MEANT} = ?"
    (at,) = db.execute(query, (subject,)).fetchone()
    if at:
        mark_used(db, subject, at)
