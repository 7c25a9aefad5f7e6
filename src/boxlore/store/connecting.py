"""The database file itself: looked at before it is opened, made whole, and connected to.

Offsets are those of the SQLite file format, section 1.3 (the database header). Nothing is written to a file
that is newer than the program, damaged, or another program's.
"""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.store import schema
from boxlore.store.copying import PART, WAIT_SECONDS, copy_to, free_name, settle
from boxlore.store.projections import rebuild

DATABASE = "collection.sqlite"

_WRITING = ("journal_mode = WAL", "synchronous = FULL", "secure_delete = ON", "foreign_keys = OFF")
_HEADER = 100


def make(path: Path, collection: str) -> None:
    """Make a new database with the collection's id in it, there entirely or not at all."""
    if path.exists():
        raise CouldNot(f"{path.parent} already holds a collection.", "Open it, or choose another folder.")
    part = path.with_suffix(PART)
    try:
        part.unlink(missing_ok=True)
        with closing(sqlite3.connect(part, isolation_level=None)) as db:
            schema.migrate(db)
            db.execute("DELETE FROM meta WHERE name = ?", (schema.STALE,))
            db.execute("INSERT INTO meta VALUES ('collection', ?)", (collection,))
        settle(part, path)
    except (OSError, sqlite3.Error) as error:
        raise CouldNot(f"No collection could be made in {path.parent} ({error}).", "Choose another folder.") from error


def look(path: Path) -> None:
    """Look at the header without writing: is it a collection of ours, whole, and of a version we know?"""
    try:
        with open(path, "rb") as file:
            head = file.read(_HEADER)
            size = os.fstat(file.fileno()).st_size
    except FileNotFoundError as error:
        raise CouldNot(f"There is no collection in {path.parent}.", "Name its folder with -c FOLDER.") from error
    except OSError as error:
        raise CouldNot(f"{path} cannot be read ({error.strerror}).", "Ask whoever owns the file.") from error
    if len(head) < _HEADER or head[:16] != b"SQLite format 3\0":
        raise damaged(path, "its first bytes are not those of a database")
    if _number(head, 68) != schema.APPLICATION_ID:
        raise CouldNot(f"{path} is a database of another program.", "Nothing was touched.")
    check_version(path, _number(head, 60))
    if size < _told_size(head) and not _log_beside(path):
        raise damaged(path, "it is cut short")


def check_version(path: Path, version: int) -> None:
    """Raise CouldNot for tables that this program does not know yet."""
    if version > schema.VERSION:
        raise CouldNot(
            f"{path} was written by a newer Boxlore (tables of version {version}; this one knows {schema.VERSION}).",
            "Install the newest Boxlore; nothing was touched.",
        )


def damaged(path: Path, why: str) -> CouldNot:
    """The sentence for a damaged database, with the newest backup."""
    backups = sorted((path.parent / "backups").glob("*.sqlite"), key=lambda one: one.stat().st_mtime)
    newest = f"The newest backup is {backups[-1]}." if backups else "There is no backup beside it."
    return CouldNot(f"{path} is damaged ({why}). Nothing was touched.", newest)


@contextmanager
def said_plainly(path: Path) -> Iterator[None]:
    """Turn what SQLite refuses while reading into a sentence."""
    try:
        yield
    except sqlite3.OperationalError as error:
        if "interrupted" in str(error) or "closed" in str(error):
            raise CouldNot("The collection was closed while it was being read.") from error
        why = f"{path} could not be read ({error})."
        raise CouldNot(why, "Close other programs that use it and try again.") from error
    except sqlite3.DatabaseError as error:
        if "closed" in str(error):
            raise CouldNot("The collection was closed while it was being read.") from error
        raise damaged(path, str(error)) from error


def bring_up_to_date(path: Path) -> None:
    """Move an older database to this version's tables, after a backup, and make again what follows from its log."""
    with closing(connect_to_write(path)) as db:
        version = schema.version_of(db)
        check_version(path, version)
        if version < schema.VERSION:
            copy_to(db, free_name(path.parent / "backups", f"before-version-{schema.VERSION}"))
            schema.migrate(db)
        if db.execute("SELECT 1 FROM meta WHERE name = ?", (schema.STALE,)).fetchone():
            _make_again(db)


def _make_again(db: sqlite3.Connection) -> None:
    db.execute("BEGIN IMMEDIATE")
    try:
        rebuild(db)
        db.execute("DELETE FROM meta WHERE name = ?", (schema.STALE,))
        db.execute("COMMIT")
    except sqlite3.Error:
        if db.in_transaction:
            db.execute("ROLLBACK")
        raise


def connect_to_write(path: Path) -> sqlite3.Connection:
    """The writing connection: write-ahead log, flushed to the disk at every commit, freed pages zeroed."""
    db = sqlite3.connect(path, isolation_level=None, check_same_thread=False, timeout=WAIT_SECONDS)
    for pragma in _WRITING:
        db.execute(f"PRAGMA {pragma}")
    return db


def connect_to_read(path: Path) -> sqlite3.Connection:
    """A reading connection; immutable where the disk cannot even hold the log's index (URI, `immutable=1`)."""
    db = _connect(path, "mode=ro")
    if not os.access(path.parent, os.W_OK):
        try:
            db.execute("SELECT 1 FROM sqlite_master LIMIT 1").fetchone()
        except sqlite3.OperationalError:
            db.close()
            db = _connect(path, "immutable=1")
    with suppress(sqlite3.OperationalError):
        db.execute("PRAGMA query_only = ON")
    return db


def _connect(path: Path, mode: str) -> sqlite3.Connection:
    uri = f"{path.resolve().as_uri()}?{mode}"
    return sqlite3.connect(uri, uri=True, isolation_level=None, check_same_thread=False, timeout=WAIT_SECONDS)


def _number(head: bytes, offset: int) -> int:
    return int.from_bytes(head[offset : offset + 4], "big")


def _told_size(head: bytes) -> int:
    """The size in bytes that the header tells, or 0 where its page count is not to be relied on (1.3.7)."""
    page = int.from_bytes(head[16:18], "big")
    return _number(head, 28) * (65536 if page == 1 else page) if head[24:28] == head[92:96] else 0


def _log_beside(path: Path) -> bool:
    log = path.with_name(path.name + "-wal")
    return log.exists() and log.stat().st_size > 0
