"""Copying a database with SQLite's online backup, so that the copy is whole or not there at all."""

import os
import sqlite3
from contextlib import closing, suppress
from pathlib import Path

PART = ".part"
WAIT_SECONDS = 30
"""How long a connection waits for another program to release a lock."""


def copy_to(db: sqlite3.Connection, target: Path) -> None:
    """Copy the open database to `target`; the copy has no write-ahead log. Raises OSError and sqlite3.Error."""
    target.parent.mkdir(exist_ok=True)
    unfinished = target.with_suffix(PART)
    unfinished.unlink(missing_ok=True)
    try:
        with closing(sqlite3.connect(unfinished)) as copy:
            db.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")
        put_in_place(unfinished, target)
    finally:
        unfinished.unlink(missing_ok=True)


def put_in_place(unfinished: Path, target: Path) -> None:
    """Flush a finished file to the disk and rename it to `target`."""
    with open(unfinished, "rb+") as file:
        os.fsync(file.fileno())
    os.replace(unfinished, target)
    with suppress(OSError, AttributeError):  # not every system can flush a folder
        handle = os.open(target.parent, os.O_DIRECTORY)
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
