"""Copying a database with SQLite's online backup, so that the copy is whole or not there at all."""

import os
import sqlite3
from collections.abc import Sequence
from contextlib import closing, suppress
from pathlib import Path

PART = ".part"
WAIT_SECONDS = 30
"""How long a connection waits for another program to release a lock."""

BESIDE = ("-wal", "-shm", "-journal")
"""What SQLite keeps beside a database while it is open (Temporary Files Used By SQLite, 2.1 to 2.3)."""

PAGES = 1024
"""Pages copied in one go; between two of them Ctrl+C is heard."""


def copy_to(db: sqlite3.Connection, target: Path) -> None:
    """Copy the open database to `target`; the copy has no write-ahead log. Raises OSError and sqlite3.Error.

    The copy takes its name only if SQLite finds it sound, so that a damaged one never stands among the good ones.
    """
    target.parent.mkdir(exist_ok=True)
    unfinished = target.with_suffix(PART)
    try:
        fill(unfinished, db)
        with closing(sqlite3.connect(unfinished)) as copy:
            prove(copy)
        put_in_place(unfinished, target)
    finally:
        sweep(unfinished)


def fill(unfinished: Path, db: sqlite3.Connection) -> None:
    """Copy the open database, as it is at this moment, into a new file. Raises sqlite3.Error."""
    sweep(unfinished)
    with closing(sqlite3.connect(unfinished, isolation_level=None)) as copy:
        copy.execute("PRAGMA synchronous = OFF")  # `put_in_place` flushes the whole
        db.execute("BEGIN")
        try:
            db.execute("SELECT 1 FROM sqlite_master").fetchone()  # what is written from now on is not in the copy
            db.backup(copy, pages=PAGES, progress=_hear)
        finally:
            db.execute("COMMIT")
        copy.execute("PRAGMA journal_mode = DELETE")


def _hear(status: int, remaining: int, pages: int) -> None:
    """Called between two goes, so that Python hears a signal."""


def prove(db: sqlite3.Connection, checks: Sequence[str] = ("quick_check", "integrity_check")) -> None:
    """Raise DatabaseError unless one of SQLite's own checks, the quicker first, finds nothing.

    What the quick one finds is asked of the other: that of SQLite 3.40 takes values of keys for NULL that are none.
    """
    for check in checks:
        (words,) = db.execute(f"PRAGMA {check}(1)").fetchone()
        if words == "ok":
            return
    raise sqlite3.DatabaseError(f"malformed: {words.splitlines()[-1]}")


def sweep(unfinished: Path) -> None:
    """Remove an unfinished copy and whatever SQLite keeps beside it."""
    for suffix in ("", *BESIDE):
        unfinished.with_name(unfinished.name + suffix).unlink(missing_ok=True)


def put_in_place(unfinished: Path, target: Path) -> None:
    """Flush a finished file to the disk and rename it to `target`."""
    with open(unfinished, "rb+") as file:
        os.fsync(file.fileno())
    os.replace(unfinished, target)
    flush_folder(target.parent)


def flush_folder(folder: Path) -> None:
    """Make it durable that a name in the folder is new, or gone."""
    with suppress(OSError, AttributeError):  # not every system can flush a folder
        handle = os.open(folder, os.O_DIRECTORY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def free_name(folder: Path, stem: str) -> Path:
    """`folder/stem.sqlite`, or the first of `stem-2`, `stem-3`, … that is not taken."""
    target, count = folder / f"{stem}.sqlite", 1
    while target.exists():
        count += 1
        target = folder / f"{stem}-{count}.sqlite"
    return target
