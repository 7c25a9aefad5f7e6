"""The last step of a strike: no page, free page, log frame or backup keeps what was taken out.

It works from the ids in the tombstones alone, which hold no words, so it can be done again at the next opening
when another program, a power cut or a kill came between.
"""

import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from boxlore.store.copying import PART, WAIT_SECONDS
from boxlore.store.projections import rebuild
from boxlore.store.schema import PROJECTIONS, VERSION, version_of

_BUSY = (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED)

STRUCK = "struck"
"""What remains of the line that told of an act."""

_ACTS = """
    WITH RECURSIVE touched (act) AS (
        SELECT act FROM statement WHERE id = ?
        UNION SELECT w.act FROM withdrawal w JOIN touched t ON w.withdraws = t.act)
    UPDATE act SET what = ? WHERE id IN (SELECT act FROM touched)"""


def is_pending(db: sqlite3.Connection) -> bool:
    """Whether a strike still waits for its last step."""
    return db.execute("SELECT 1 FROM tombstone WHERE finished = 0 LIMIT 1").fetchone() is not None


def scour(db: sqlite3.Connection, folder: Path) -> bool:
    """Do the whole last step on the writing connection, outside a transaction. False if it must wait."""
    return rewrite(db, folder) and empty_log(db)


def rewrite(db: sqlite3.Connection, folder: Path) -> bool:
    """Strike the backups, then write index and file anew. False if another program holds one of them."""
    with _impatient(db):
        try:
            _strike_backups(db, folder)
            db.execute("INSERT INTO words_index (words_index) VALUES ('rebuild')")
            db.execute("VACUUM")
        except sqlite3.OperationalError as error:
            if _is_busy(error):
                return False
            raise
    return True


def empty_log(db: sqlite3.Connection) -> bool:
    """Cut the write-ahead log to nothing and note that it is done. False while another program reads from it."""
    with _impatient(db):
        if _log_is_held(db):
            return False
        db.execute("UPDATE tombstone SET finished = 1 WHERE finished = 0")
        _log_is_held(db)
    return True


@contextmanager
def _impatient(db: sqlite3.Connection) -> Iterator[None]:
    """Wait for others only shortly, so that what is typed meanwhile is soon written."""
    db.execute("PRAGMA busy_timeout = 200")
    try:
        yield
    finally:
        db.execute(f"PRAGMA busy_timeout = {WAIT_SECONDS * 1000}")


def _log_is_held(db: sqlite3.Connection) -> bool:
    return bool(db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0])


def _is_busy(error: sqlite3.Error) -> bool:
    return error.sqlite_errorcode & 0xFF in _BUSY


def _strike_backups(db: sqlite3.Connection, folder: Path) -> None:
    tombs = db.execute("SELECT statement, subject, field FROM tombstone WHERE finished = 0").fetchall()
    backups = folder / "backups"
    for left_over in backups.glob(f"*{PART}*"):
        left_over.unlink()
    for backup in sorted(backups.glob("*.sqlite")):
        try:
            strike_backup(backup, tombs)
        except sqlite3.DatabaseError as error:
            if _is_busy(error):
                raise
            # a backup that cannot be changed is named by the search that follows


def strike_backup(path: Path, tombs: Iterable[tuple[str, str, str]]) -> None:
    """Take the rows out of a backup of any version: its statement table has always had this name and columns."""
    with closing(sqlite3.connect(path, isolation_level=None, timeout=1)) as db:
        db.execute("PRAGMA journal_mode = DELETE")
        db.execute("PRAGMA secure_delete = ON")
        db.execute("BEGIN IMMEDIATE")
        delete(db, [statement for statement, _, _ in tombs])
        for _, subject, field in tombs:
            db.execute("DELETE FROM draft WHERE subject = ? AND field = ?", (subject, field))
        if version_of(db) == VERSION:
            rebuild(db)
        else:
            _empty_projections(db)
        db.execute("COMMIT")
        db.execute("VACUUM")


def delete(db: sqlite3.Connection, ids: Iterable[str]) -> None:
    """Delete statements and their readings, and what the acts that made or undid them were called."""
    for ident in ids:
        db.execute(_ACTS, (ident, STRUCK))
        db.execute("DELETE FROM reading WHERE statement = ?", (ident,))
        db.execute("DELETE FROM statement WHERE id = ?", (ident,))


def _empty_projections(db: sqlite3.Connection) -> None:
    """An older backup's projections are emptied; they are made again when it is opened and brought up to date."""
    there = {name for (name,) in db.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    for table in there.intersection(PROJECTIONS):
        db.execute(f"DELETE FROM {table}")
