"""Dated copies of the database, made by SQLite's own online backup before anything risky."""

import os
import re
import sqlite3
from contextlib import closing
from pathlib import Path

from boxlore.store.opening import Store


def back_up(store: Store, why: str, now: str) -> Path:
    """Copy the database to `backups/`, named by time and reason, whole or not at all. Returns the copy's path."""
    folder = store.folder / "backups"
    folder.mkdir(exist_ok=True)
    stamp = re.sub(r"[^0-9T]", "", now.partition(".")[0])
    target = folder / f"{stamp}-{re.sub(r'[^a-z0-9]+', '-', why.lower()).strip('-')}.sqlite"
    part = target.with_suffix(".part")
    part.unlink(missing_ok=True)
    with closing(sqlite3.connect(part)) as copy:
        store.db.backup(copy)
        copy.execute("PRAGMA journal_mode = DELETE")
    with open(part, "rb+") as file:
        os.fsync(file.fileno())
    os.replace(part, target)
    return target
