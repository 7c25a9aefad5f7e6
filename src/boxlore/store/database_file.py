"""The database file: how it is made, checked before it is opened, brought up to date and connected to.

Nothing is written to a file that is newer than the program, damaged, or another program's. The offsets used here are
those of the SQLite file format, section 1.3 (the database header).
"""

import os
import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from pathlib import Path

from boxlore.core.errors import CouldNot, in_words
from boxlore.store import backups, schema
from boxlore.store.backups import damaged, why_not
from boxlore.store.copying import PART, WAIT_SECONDS, prove, put_in_place, sweep
from boxlore.store.projections import rebuild

DATABASE = "collection.sqlite"

_WRITING = ("journal_mode = WAL", "synchronous = FULL", "secure_delete = ON", "foreign_keys = OFF")
HEADER = 100
"""Bytes of a database's header."""
_NO_VERSION = 10_000
"""Tables will never be of so late a version; a header that says so is damaged."""


def make_database(path: Path, collection: str) -> None:
    """Make a new database at `path` that holds the collection's id. Raises CouldNot, and leaves nothing behind then."""
    if path.exists():
        raise CouldNot(f"{path.parent} already holds a collection.", "Open it, or choose another folder.")
    unfinished = path.with_suffix(PART)
    try:
        sweep(unfinished)
        with closing(sqlite3.connect(unfinished, isolation_level=None)) as db:
            db.execute("PRAGMA synchronous = OFF")  # it is flushed once, when it is whole
            schema.migrate(db)
            db.execute("DELETE FROM meta WHERE name = ?", (schema.STALE,))
            db.execute("INSERT INTO meta VALUES ('collection', ?)", (collection,))
            db.execute("PRAGMA journal_mode = WAL")
        put_in_place(unfinished, path)
    except (OSError, sqlite3.Error) as error:
        why = f"No collection could be made in {path.parent} ({in_words(error)})."
        raise CouldNot(why, "Choose another folder.") from error
    finally:
        with suppress(OSError):  # on a disk that cannot be written to nothing was begun
            sweep(unfinished)


def check_file(path: Path) -> None:
    """Read the header, without writing. Raises CouldNot unless it is a whole collection of a version that we know."""
    try:
        with open(path, "rb") as file:
            head = file.read(HEADER)
            size = os.fstat(file.fileno()).st_size
    except FileNotFoundError as error:
        raise CouldNot(f"There is no collection in {path.parent}.", "Name its folder with -c FOLDER.") from error
    except OSError as error:
        raise CouldNot(f"{path} cannot be read ({error.strerror}).", "Ask whoever owns the file.") from error
    if len(head) < HEADER or head[:16] != b"SQLite format 3\0":
        raise damaged(path, "its first bytes are not those of a database")
    if _number(head, 68) != schema.APPLICATION_ID:
        if backups.has_some(path.parent):
            raise damaged(path, "its header is not that of a collection")
        what_to_do = "Nothing was touched. If it was a collection, its header is damaged: put a backup beside it."
        raise CouldNot(f"{path} is a database of another program.", what_to_do)
    if not _is_of_a_known_format(head):
        raise damaged(path, "its header tells a file format that there is none of")
    if _number(head, 60) > _NO_VERSION:
        raise damaged(path, "its header tells a version that there is none of")
    check_version(path, _number(head, 60))
    if is_cut_short(path, head, size):
        raise damaged(path, "it is cut short")


def check_whole(path: Path) -> None:
    """Raise sqlite3.DatabaseError for a damaged database, before anything is written to it: what is added to one is
    lost with it when a backup is brought back. SQLite's quick check reads all of it, 25 MB (10,000 items) in 0.05 s.

    Bytes that are nobody's are not looked at, and need not be: those of the header that only count or are reserved, and
    the free room between a page's cell pointers and its cells (1.6), as most of the first two pages is. Nothing told
    stands in them. A letter turned within told words SQLite cannot see; a backup has a checksum of its own for that.
    """
    if not _was_proved(path):
        _prove(path)


def _prove(path: Path) -> None:
    with closing(connect_to_read(path)) as db:
        prove(db)


_Stamp = tuple[tuple[int, int, int], ...]


class _Check(threading.Thread):
    """A check begun ahead: how the file was then, and whether it has been found whole."""

    def __init__(self, path: Path) -> None:
        super().__init__(name="boxlore-check", daemon=True)
        self.path, self.stamp, self.is_whole = path, _stamp(path), False

    def run(self) -> None:
        with suppress(OSError, sqlite3.Error):
            _prove(self.path)
            self.is_whole = True


_begun: dict[Path, _Check] = {}


def check_ahead(path: Path) -> None:
    """Begin `check_whole` in a thread, beside the loading of what an opening waits for anyway: of 100,000 items it
    takes as long as that. What it finds the opening finds again."""
    if path.is_file():
        check = _begun[path.resolve()] = _Check(path)
        check.start()


def _was_proved(path: Path) -> bool:
    """Whether a check begun ahead, which is waited for, has found the file whole, and it is as it was then."""
    check = _begun.pop(path.resolve(), None)
    if check is None:
        return False
    check.join()
    return check.is_whole and check.stamp == _stamp(path)


def _stamp(path: Path) -> _Stamp:
    """What a change of the file, or of its write-ahead log, changes; a log that is empty is as none."""
    stamps = []
    for file in (path, path.with_name(f"{path.name}-wal")):
        with suppress(OSError):
            found = file.stat()
            if found.st_size:
                stamps.append((found.st_ino, found.st_mtime_ns, found.st_size))
    return tuple(stamps)


def check_version(path: Path, version: int) -> None:
    """Raise CouldNot if the tables are of a newer version than this program knows."""
    if version > schema.VERSION:
        raise CouldNot(
            f"{path} was written by a newer Boxlore (tables of version {version}; this one knows {schema.VERSION}).",
            "Install the newest Boxlore; nothing was touched.",
        )


@contextmanager
def errors_in_words(path: Path) -> Iterator[None]:
    """Turn an error of SQLite while reading into a CouldNot."""
    try:
        yield
    except sqlite3.OperationalError as error:
        if "interrupted" in str(error) or "closed" in str(error):
            raise CouldNot("The collection was closed while it was being read.") from error
        if "decode" in str(error):
            raise damaged(path, why_not(error)) from error
        raise CouldNot(f"{path} could not be read ({error}).", _what_to_do(str(error))) from error
    except sqlite3.DatabaseError as error:
        if "closed" in str(error):
            raise CouldNot("The collection was closed while it was being read.") from error
        if is_of_index(error):
            raise CouldNot(INDEX_DAMAGED, INDEX_AGAIN) from error
        raise damaged(path, str(error)) from error


INDEX_DAMAGED = "The index of what can be searched is damaged; what was told is not."
INDEX_AGAIN = "Close it, and run boxlore verify: it has the index made again at the next opening."


def is_of_index(error: sqlite3.Error) -> bool:
    """Whether it is the full-text index that cannot be read or written (SQLITE_CORRUPT_VTAB, or a clash of its rows
    below, which no constraint of ours is)."""
    code = getattr(error, "sqlite_errorcode", 0)  # an error of Python's own module has none
    return code == sqlite3.SQLITE_CORRUPT_VTAB or str(error) == "constraint failed"


def _what_to_do(words: str) -> str:
    """What a keeper can do about an error of SQLite's while reading."""
    if "full" in words:
        return "Free some space on its disk and try again."
    if "disk I/O" in words or "unable to open" in words:
        return "Plug its disk in again, or put its folder back; if the disk is full, free some space; and try again."
    return "Close other programs that use it and try again."


def bring_up_to_date(path: Path) -> None:
    """Bring an older database to this version's tables, after a backup, and make its projections again if need be."""
    with closing(connect_to_write(path)) as db:
        version = schema.version_of(db)
        check_version(path, version)
        if version < schema.VERSION:
            backups.keep(db, path.parent, f"before-version-{schema.VERSION}")
            schema.migrate(db)
        if db.execute("SELECT 1 FROM meta WHERE name = ?", (schema.STALE,)).fetchone():
            _rebuild_projections(db)


def _rebuild_projections(db: sqlite3.Connection) -> None:
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
    """A connection for writing. It uses the write-ahead log, flushes it at every commit, and zeroes freed pages."""
    db = sqlite3.connect(path, isolation_level=None, check_same_thread=False, timeout=WAIT_SECONDS)
    for pragma in _WRITING:
        db.execute(f"PRAGMA {pragma}")
    return db


def connect_to_read(path: Path) -> sqlite3.Connection:
    """A connection for reading. On a disk that cannot be written to, where SQLite cannot make the index of its
    write-ahead log, the file is opened as immutable (SQLite URI, `immutable=1`).
    """
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
    """The four-byte number at an offset of the header."""
    return int.from_bytes(head[offset : offset + 4], "big")


def _is_of_a_known_format(head: bytes) -> bool:
    """Whether the numbers of the file format are ones that there are (1.3.3, 1.3.10): else SQLite says that the file
    may only be read, or is of no format that it supports, and nothing of damage."""
    return set(head[18:20]) <= {1, 2} and _number(head, 44) <= 4


def _size_in_header(head: bytes) -> int:
    """The size of the database in bytes by its header; 0 if the header's page count is not valid (1.3.7)."""
    page = int.from_bytes(head[16:18], "big")
    return _number(head, 28) * (65536 if page == 1 else page) if head[24:28] == head[92:96] else 0


def is_cut_short(path: Path, head: bytes, size: int) -> bool:
    """Whether the file is shorter than its header tells; a log beside it may hold the rest."""
    log = path.with_name(path.name + "-wal")
    return size < _size_in_header(head) and not (log.exists() and log.stat().st_size > 0)
