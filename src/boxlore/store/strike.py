"""Strike: words taken out for good, at the wish of whoever told them.

The one exception to append-only. The words leave the statement and every earlier form of it, its readings,
drafts, the search index, the write-ahead log and every backup; people, places and events made only from
struck words go too. A tombstone stays (what kind, who, when; no words), so that a joining of two copies does
not bring them back. It is called done only after a case-folded search of every byte of the collection's
folder. While another program reads the file, the old pages cannot be let go of: the strike says that it is
waiting, and finishes when that program leaves, or at the next opening.
"""

import sqlite3
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.statements import fold
from boxlore.store.log import rebuild
from boxlore.store.opening import Store

CHUNK = 1 << 20
PAUSE_SECONDS = 0.25


@dataclass(frozen=True, slots=True)
class StrikeReport:
    """What a strike came to. `left_in` names files of the folder that still hold the words (exports, notes)."""

    struck: int
    finished: bool
    left_in: tuple[str, ...] = ()


def strike(
    store: Store,
    statements: Iterable[str],
    *,
    by: str,
    now: str,
    waiting: Callable[[str], None] = lambda why: None,
    stopped: Callable[[], bool] = lambda: False,
) -> StrikeReport:
    """Strike these statements (ids) and all that carries their words. Waits for readers until `stopped`."""
    ids, words = store.writer.do(lambda db: _take_out(db, list(statements), by, now))
    store.people_version += 1
    for backup in sorted((store.folder / "backups").glob("*.sqlite")):
        _strike_backup(backup, ids)
    finished = finish(store, waiting, stopped)
    left = tuple(str(path) for path in holding(store.folder, words)) if finished else ()
    return StrikeReport(len(ids), finished, left)


def pending(store: Store) -> bool:
    """Whether an earlier strike still waits for its last step."""
    return store.db.execute("SELECT 1 FROM tombstone WHERE finished = 0 LIMIT 1").fetchone() is not None


def finish(store: Store, waiting: Callable[[str], None], stopped: Callable[[], bool]) -> bool:
    """The last step: no page, free page or log frame of the file keeps what was struck. False if it must wait."""
    said = False
    while True:
        store.release_readers()
        if store.writer.do(_scour, plain=True):
            return True
        if not said:
            waiting("Another program has the collection open; the strike finishes when it is closed.")
            said = True
        if stopped():
            return False
        time.sleep(PAUSE_SECONDS)


def _scour(db: sqlite3.Connection) -> bool:
    db.execute("PRAGMA busy_timeout = 200")
    try:
        db.execute("INSERT INTO words_index (words_index) VALUES ('optimize')")
        db.execute("VACUUM")
        busy, _, _ = db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
        if busy:
            return False
        db.execute("UPDATE tombstone SET finished = 1 WHERE finished = 0")
        return not db.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0]
    except sqlite3.OperationalError:
        return False
    finally:
        db.execute("PRAGMA busy_timeout = 30000")


def _take_out(db: sqlite3.Connection, asked: list[str], by: str, now: str) -> tuple[list[str], list[str]]:
    """Take the rows out; returns their ids and the words they held."""
    ids = _with_earlier_forms(db, asked)
    ids += [one for one in _made_only_from(db, ids) if one not in ids]
    words: list[str] = []
    for ident in ids:
        row = db.execute(
            "SELECT subject_kind, subject, field, words, row FROM statement WHERE id = ?", (ident,)
        ).fetchone()
        if row is None:
            continue
        words.append(row[3])
        db.execute("INSERT OR REPLACE INTO tombstone VALUES (?, ?, ?, ?, ?, ?, 0)", (ident, *row[:3], now, by))
        db.execute("DELETE FROM draft WHERE subject = ? AND field = ?", (row[1], row[2]))
        db.execute("UPDATE act SET what = 'struck' WHERE id IN (SELECT act FROM statement WHERE id = ?)", (ident,))
    _delete(db, ids)
    rebuild(db)
    return ids, [one for one in words if one.strip()]


def _delete(db: sqlite3.Connection, ids: Iterable[str]) -> None:
    for ident in ids:
        db.execute("DELETE FROM reading WHERE statement = ?", (ident,))
        db.execute("DELETE FROM statement WHERE id = ?", (ident,))


def _with_earlier_forms(db: sqlite3.Connection, asked: Iterable[str]) -> list[str]:
    """The statements, all that they replaced, and all that replaced those."""
    found: list[str] = []
    queue = list(asked)
    while queue:
        ident = queue.pop()
        if not ident or ident in found:
            continue
        found.append(ident)
        queue += [one for (one,) in db.execute("SELECT replaces FROM statement WHERE id = ?", (ident,))]
        queue += [one for (one,) in db.execute("SELECT id FROM statement WHERE replaces = ?", (ident,))]
    return found


def _made_only_from(db: sqlite3.Connection, ids: list[str]) -> list[str]:
    """Statements about people, events and places that were made in the same acts and that nothing else means."""
    further: list[str] = []
    for ident in ids:
        query = "SELECT json_extract(value, '$.id') FROM reading WHERE statement = ? AND kind IN ('person', 'event')"
        for (subject,) in db.execute(query, (ident,)).fetchall():
            others = "SELECT statement FROM reading WHERE json_extract(value, '$.id') = ?"
            meant = {one for (one,) in db.execute(others, (subject,))} - set(ids)
            made_here = db.execute(
                "SELECT id, act FROM statement WHERE subject = ? AND subject_kind IN ('person', 'event')", (subject,)
            ).fetchall()
            acts = {act for (act,) in db.execute("SELECT act FROM statement WHERE id = ?", (ident,))}
            if not meant and all(act in acts for _, act in made_here):
                further += [one for one, _ in made_here]
    return further


def _strike_backup(path: Path, ids: list[str]) -> None:
    """The same in a backup: the statement table has had this name and these columns in every version."""
    with closing(sqlite3.connect(path, isolation_level=None)) as db:
        db.execute("PRAGMA secure_delete = ON")
        db.execute("BEGIN IMMEDIATE")
        acts = {act for ident in ids for (act,) in db.execute("SELECT act FROM statement WHERE id = ?", (ident,))}
        db.executemany("UPDATE act SET what = 'struck' WHERE id = ?", [(act,) for act in acts])
        db.execute("DELETE FROM draft")
        _delete(db, ids)
        db.execute("DELETE FROM words_index")
        rebuild(db)
        db.execute("COMMIT")
        db.execute("VACUUM")


def holding(folder: Path, words: Iterable[str]) -> Iterator[Path]:
    """Files below the folder in whose bytes, case-folded, any of the words stand (UTF-8, UTF-16, or folded)."""
    needles = {form for one in words for form in _forms(one)}
    if not needles:
        return
    longest = max(map(len, needles))
    for path in sorted(folder.rglob("*")):
        if path.is_file() and _holds(path, needles, longest):
            yield path


def _forms(words: str) -> set[bytes]:
    """The words as they may stand in a file once its ASCII letters are lower-cased."""
    line = words.strip()
    spelled = {line, line.casefold(), line.lower(), fold(line)}
    encoded = {one.encode(code) for one in spelled for code in ("utf-8", "utf-16-le", "utf-16-be")}
    return {one.lower() for one in encoded}


def _holds(path: Path, needles: set[bytes], longest: int) -> bool:
    tail = b""
    with open(path, "rb") as file:
        while data := file.read(CHUNK):
            window = tail + data.lower()
            if any(needle in window for needle in needles):
                return True
            tail = window[-longest:]
    return False
