"""The database of an open collection put into another folder, where an earlier copy of it may lie.

What always holds: nothing that was told is lost there. An earlier copy goes only where it is of the same collection,
every act in it is in this one too, and no program has it open; its log of changes (-wal) goes with it, for SQLite would
play that into whatever takes its place (Write-Ahead Logging, 2.1).
"""

import sqlite3
from contextlib import closing
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.store.backups import read_only, why_not
from boxlore.store.copying import BESIDE, copy_to
from boxlore.store.locking import Lock

_AS_IT_WAS = "Choose another folder; what lies there is as it was."


def put_copy(db: sqlite3.Connection, target: Path) -> None:
    """Copy the open database to `target`, in a folder that is there.

    Raises WrongUse where something else lies there or more was told in it, CouldNot where it is open or the disk
    refuses.
    """
    lock = Lock(target.parent)
    try:
        if not lock.take():
            raise CouldNot(f"The copy in {target.parent} is open in another program.", "Close it there first.")
        try:
            if target.exists():
                _check_contained(db, target)
                for suffix in BESIDE:
                    target.with_name(target.name + suffix).unlink(missing_ok=True)
            copy_to(db, target)
        finally:
            lock.free()
    except (OSError, sqlite3.Error) as error:
        words = f"The collection could not be copied to {target.parent} ({why_not(error)})."
        raise CouldNot(words, "Free some space there, or choose another folder.", everywhere=True) from error


def _check_contained(db: sqlite3.Connection, target: Path) -> None:
    """Raises WrongUse unless all that was told in the database there was told here too."""
    try:
        with closing(read_only(target)) as copy:
            there = copy.execute("SELECT value FROM meta WHERE name = 'collection'").fetchone()
            acts = {act for (act,) in copy.execute("SELECT id FROM act")}
    except sqlite3.Error as error:
        raise WrongUse(f"{target} cannot be read as a collection.", _AS_IT_WAS) from error
    if there != db.execute("SELECT value FROM meta WHERE name = 'collection'").fetchone():
        raise WrongUse(f"{target.parent} holds another collection.", _AS_IT_WAS)
    if acts - {act for (act,) in db.execute("SELECT id FROM act")}:
        raise WrongUse(f"Something was told in the copy in {target.parent} that is not told here.", _AS_IT_WAS)
