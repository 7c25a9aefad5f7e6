"""Dated copies of the database, made before anything risky."""

import re
import sqlite3
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.store.copying import copy_to, free_name
from boxlore.store.opening import Store


def back_up(store: Store, why: str, now: str) -> Path:
    """Copy the database to `backups/`, named by time and reason; an earlier copy is never overwritten.

    Returns the copy's path. Raises CouldNot when the disk refuses; nothing is left half-copied.
    """
    stamp = re.sub(r"[^0-9T]", "", now.partition(".")[0])
    reason = re.sub(r"[^a-z0-9]+", "-", why.lower()).strip("-")
    target = free_name(store.folder / "backups", f"{stamp}-{reason}")
    try:
        copy_to(store.db, target)
    except (OSError, sqlite3.Error) as error:
        raise CouldNot(f"No backup could be made in {target.parent} ({error}).", "Nothing else was done.") from error
    return target
