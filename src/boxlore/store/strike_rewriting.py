"""The second step of a strike: no page, free page, log frame or backup keeps the bytes of what was taken out.

The theory of operation of the whole strike opens `strike`. In short, the first step has deleted the rows from the
database and left a tombstone for each, marked as not finished. But SQLite leaves deleted bytes behind, and backups
still have the rows. So this step, for the unfinished tombstones,

1. deletes the rows from every backup too, and what is noted in `meta` (drafts, lines about acts), adds the tombstones
   there, and writes anew each backup that had such rows;
2. makes the full-text index again, because it keeps the words of deleted rows until its parts are merged;
3. writes the database file anew (VACUUM), so that it has no free pages with old bytes;
4. empties the write-ahead log, which still holds the old pages, and marks the tombstones as finished.

What always holds: it needs the ids in the tombstones and the note alone and no words, and each part of it may be done
twice. So if another program, a power cut or a kill comes between, it is simply done again, at the latest when the
collection is next opened for writing. A tombstone is marked as finished only after everything else.

Part 4 must wait while another connection reads, because its answer still needs the old pages. The other parts must wait
while another program holds a lock on the file or on a backup.
"""

import json
import sqlite3
from collections.abc import Collection, Iterable, Iterator, Sequence
from contextlib import closing, contextmanager
from pathlib import Path

from boxlore.store.backup_sums import forget, is_altered, note
from boxlore.store.backups import FOLDER, read_only
from boxlore.store.copying import PART, WAIT_SECONDS
from boxlore.store.projections import rebuild
from boxlore.store.schema import PROJECTIONS, VERSION, version_of
from boxlore.store.strike_branches import NO_TRACES, Traces, backup_files

_BUSY = (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED)

TRACES = "strike_traces"
"""The name in `meta` of what else holds struck words in backups (`strike_branches.Traces`) and goes from each."""

STRUCK = "struck"
"""Replaces the line that says what an act did (`act.what`), if that line may repeat struck words."""

PIECE = 40
"""The line about an act never repeats more characters of a statement than these."""

Tomb = tuple[str, str, str, str, str, str]
"""A tombstone's columns, in the order of TOMB; no words are among them."""

TOMB = "statement, subject_kind, subject, field, struck_at, by"

_DROP_DRAFTS = "DELETE FROM draft WHERE subject = ? AND field = ?"

_ACTS = """
    WITH RECURSIVE touched (act) AS (
        SELECT act FROM statement WHERE id IN (SELECT value FROM json_each(?))
        UNION SELECT w.act FROM withdrawal w JOIN touched t ON w.withdraws = t.act)
    SELECT act FROM touched"""


def is_pending(db: sqlite3.Connection) -> bool:
    """Whether a strike still waits for this step."""
    return db.execute("SELECT 1 FROM tombstone WHERE finished = 0 LIMIT 1").fetchone() is not None


def finish_strike(db: sqlite3.Connection, folder: Path) -> bool:
    """Do the whole step on the writing connection, outside a transaction. False if another program holds it up."""
    return rewrite_files(db, folder) and empty_log(db)


def rewrite_files(db: sqlite3.Connection, folder: Path) -> bool:
    """Parts 1 to 3: the backups, the full-text index, the file. False if another program holds one of them."""
    with _short_wait(db):
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
    """Part 4: empty the write-ahead log and mark the tombstones as finished. False while another program reads it."""
    with _short_wait(db):
        if _log_is_held(db):
            return False
        db.execute("UPDATE tombstone SET finished = 1 WHERE finished = 0")
        db.execute("DELETE FROM meta WHERE name = ?", (TRACES,))
        _log_is_held(db)
    return True


@contextmanager
def _short_wait(db: sqlite3.Connection) -> Iterator[None]:
    """Wait for locks only shortly while the block runs, so that what is typed meanwhile is soon written."""
    db.execute("PRAGMA busy_timeout = 200")
    try:
        yield
    finally:
        db.execute(f"PRAGMA busy_timeout = {WAIT_SECONDS * 1000}")


def _log_is_held(db: sqlite3.Connection) -> bool:
    """Empty the write-ahead log; whether another connection kept that from happening."""
    return bool(db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0])


def _is_busy(error: sqlite3.Error) -> bool:
    return error.sqlite_errorcode & 0xFF in _BUSY


def _strike_backups(db: sqlite3.Connection, folder: Path) -> None:
    tombs = db.execute(f"SELECT {TOMB} FROM tombstone WHERE finished = 0").fetchall()
    noted = db.execute("SELECT value FROM meta WHERE name = ?", (TRACES,)).fetchone()
    traces = Traces.from_json(noted[0] if noted else "")
    for left_over in (folder / FOLDER).glob(f"*{PART}*"):
        left_over.unlink()
    for backup in backup_files(folder):
        if not backup.stat().st_size:
            continue  # SQLite would delete the log beside an empty file, which may be all that is left
        altered = is_altered(backup)
        try:
            was = forget(backup)
            strike_backup(backup, tombs, traces)
            if not altered:
                note(backup, was)
        except sqlite3.DatabaseError as error:
            if _is_busy(error):
                raise
            # a backup that cannot be changed is named by the proof, which follows


def strike_backup(path: Path, tombs: Sequence[Tomb], traces: Traces = NO_TRACES, *, finished: bool = True) -> int:
    """Delete the rows of these tombstones, and these traces, from a backup, and write its file anew if there were any.

    It works for a backup of any version, because the table `statement` keeps its name and columns for ever. The
    tombstones go in, `finished` or not, so that the backup knows what was struck if it is brought back. Returns how
    many statements were deleted.
    """
    with closing(sqlite3.connect(path, isolation_level=None, timeout=1)) as db:
        db.execute("PRAGMA journal_mode = DELETE")
        db.execute("PRAGMA secure_delete = ON")
        db.execute("BEGIN IMMEDIATE")
        words = _words_of(db, [tomb[0] for tomb in tombs])
        drafts = sum(db.execute(_DROP_DRAFTS, (tomb[2], tomb[3])).rowcount for tomb in tombs)
        drafts += sum(db.execute(f"{_DROP_DRAFTS} AND slot = ?", draft).rowcount for draft in traces.drafts)
        lines = blank_lines(db, traces.acts)
        if words or drafts:
            delete_statements(db, [tomb[0] for tomb in tombs])
            quiet_acts(db, words)
            _project_again(db)
        db.executemany(
            f"INSERT OR IGNORE INTO tombstone ({TOMB}, finished) VALUES (?, ?, ?, ?, ?, ?, ?)",
            [(*tomb, int(finished)) for tomb in tombs],
        )
        db.execute("COMMIT")
        if words or drafts or lines:
            db.execute("VACUUM")
        return len(words)


def still_holds(backup: Path, ids: Iterable[str]) -> bool:
    """Whether a backup has any of these statements yet, for it could not be changed."""
    with closing(read_only(backup)) as db:
        query = "SELECT EXISTS (SELECT 1 FROM statement WHERE id IN (SELECT value FROM json_each(?)))"
        return bool(db.execute(query, (json.dumps(list(ids)),)).fetchone()[0])


def _words_of(db: sqlite3.Connection, statements: Iterable[str]) -> list[str]:
    rows = (db.execute("SELECT words FROM statement WHERE id = ?", (ident,)).fetchone() for ident in statements)
    return [row[0] for row in rows if row]


def _project_again(db: sqlite3.Connection) -> None:
    """Make the projections again, the index of words from nothing: rows deleted from it leave their words behind."""
    if version_of(db) == VERSION:
        rebuild(db)
    else:
        _empty_projections(db)
    db.execute("INSERT INTO words_index (words_index) VALUES ('rebuild')")


def quiet_acts(db: sqlite3.Connection, words: Iterable[str]) -> None:
    """Blank the lines about acts that repeat the beginning of struck words, unless that is very short."""
    for struck_words in words:
        start = struck_words.strip()[:PIECE]
        if len(start) > PIECE // 4:
            db.execute("UPDATE act SET what = ? WHERE instr(lower(what), lower(?))", (STRUCK, start))


def blank_lines(db: sqlite3.Connection, acts: Iterable[str]) -> int:
    """Blank the lines about these acts. Returns how many were not blank."""
    query = "UPDATE act SET what = ? WHERE id = ? AND what <> ?"
    return sum(db.execute(query, (STRUCK, act, STRUCK)).rowcount for act in acts)


def acts_of(db: sqlite3.Connection, ids: Collection[str]) -> set[str]:
    """The acts that made, undid or redid statements: the line of each may repeat their words."""
    return {act for (act,) in db.execute(_ACTS, (json.dumps(sorted(ids)),))}


def delete_statements(db: sqlite3.Connection, ids: Collection[str]) -> None:
    """Delete statements with their readings, and blank the lines of the acts that made, undid or redid them."""
    blank_lines(db, acts_of(db, ids))
    for ident in ids:
        db.execute("DELETE FROM reading WHERE statement = ?", (ident,))
        db.execute("DELETE FROM statement WHERE id = ?", (ident,))


def _empty_projections(db: sqlite3.Connection) -> None:
    """Empty the projections of an older backup. They are made again when it is opened and brought up to date."""
    present = {name for (name,) in db.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    for table in present.intersection(PROJECTIONS):
        db.execute(f"DELETE FROM {table}")
