"""A whole copy of a database under a new name: made by SQLite's online backup, there entirely or not at all."""

import os
import sqlite3
from contextlib import closing, suppress
from pathlib import Path

PART = ".part"
WAIT_SECONDS = 30
"""How long a connection waits for another program to let go of a lock."""


def copy_to(db: sqlite3.Connection, target: Path) -> None:
    """Copy the open database to `target`, without a log of its own beside it. Raises OSError, sqlite3.Error."""
    target.parent.mkdir(exist_ok=True)
    part = target.with_suffix(PART)
    part.unlink(missing_ok=True)
    try:
        with closing(sqlite3.connect(part)) as copy:
            db.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")
        settle(part, target)
    finally:
        part.unlink(missing_ok=True)


def settle(part: Path, target: Path) -> None:
    """Flush a finished file to the disk and give it its name."""
    with open(part, "rb+") as file:
        os.fsync(file.fileno())
    os.replace(part, target)
    with suppress(OSError, AttributeError):  # a folder cannot be flushed on every system; the name is there
        handle = os.open(target.parent, os.O_DIRECTORY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def free_name(folder: Path, stem: str) -> Path:
    """`folder/stem.sqlite`, or the first of `stem-2`, `stem-3`, … that no file has."""
    target, count = folder / f"{stem}.sqlite", 1
    while target.exists():
        count += 1
        target = folder / f"{stem}-{count}.sqlite"
    return target
