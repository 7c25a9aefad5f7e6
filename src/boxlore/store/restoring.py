"""Bringing a backup back: the whole database becomes what it was, and nothing is lost on the way.

The order is what makes it safe against a kill at any moment:

1. A copy of the backup is made beside the database, brought to where it may stand: what was struck since is taken
   out of it again (the tombstones of the present database and of every backup say what), and SQLite checks all of it.
2. The present database is kept in `backups/`: by SQLite's own backup where it is sound, else byte for byte with the
   log beside it.
3. The present log goes into the present database, or away if that is damaged (it is kept by then). A log that stayed
   would be taken for the new database's own (How To Corrupt An SQLite Database File, 1.4).
4. The copy takes the database's name in one step.

A kill before the fourth step leaves the present database, after it the one brought back, and never less than both in
`backups/`.
"""

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from boxlore.core.errors import CouldNot
from boxlore.core.fields.originals import COUNT_SQL, SERIES_SQL
from boxlore.store import schema
from boxlore.store.backup_sums import LIST_NAME, is_altered
from boxlore.store.backups import (
    DAMAGED,
    FOLDER,
    Holdings,
    clear_away,
    holdings_of,
    keep,
    kept_in,
    listed,
    named,
    read_only,
    why_not,
)
from boxlore.store.copying import BESIDE, PART, fill, flush_folder, free_name, prove, put_in_place, sweep
from boxlore.store.database_file import DATABASE, HEADER, check_version, is_cut_short
from boxlore.store.locking import Lock, network_kind
from boxlore.store.queries import GIVEN
from boxlore.store.strike_rewriting import TOMB, Tomb, strike_backup

_ANOTHER = "Take another one; boxlore restore lists them."
_COUNTS = f"""
    SELECT rtrim({SERIES_SQL}, '-'), max({COUNT_SQL}) FROM statement WHERE field = 'number' GROUP BY 1
    UNION ALL SELECT substr(name, {len(GIVEN) + 1}), CAST(value AS INTEGER)
    FROM meta WHERE substr(name, 1, {len(GIVEN)}) = '{GIVEN}'"""
_MAGIC = b"SQLite format 3\0"


@dataclass(frozen=True, slots=True)
class BroughtBack:
    """What came of it: where the database that was there is kept (if one was), what there is now, how many statements
    were struck since and taken out again, the numbers of items that only the one before has, and how many statements
    more than the backup a damaged one held, as far as it can be read."""

    kept: Path | None
    holds: Holdings
    struck: int
    only_before: tuple[str, ...]
    lost_statements: int = 0


def bring_back(folder: Path, backup: Path, now: str) -> BroughtBack:
    """Make the backup the collection's database. Raises CouldNot, with everything as it was, if it cannot be."""
    if kind := network_kind(folder):
        raise CouldNot(f"{folder} is on a network disk ({kind}).", "Copy it to a disk of this machine first.")
    path = folder / DATABASE
    part = path.with_suffix(PART)
    with _alone(folder):
        try:
            clear_away(folder)
            is_sound = _is_sound(path)
            struck = _prepare(part, backup, _tombs(folder))
            _same_collection(part, path, is_sound)
            _give_no_number_twice(part, folder)
            only_before = _numbers(path) - _numbers(part) if is_sound else set()
            before = None if is_sound or not _is_of_ours(path) else holdings_of(path)
            kept = _keep_sound(path, now) if is_sound else _keep_damaged(path, now)
            put_in_place(part, path)
        except (OSError, sqlite3.Error) as error:
            why = f"The backup could not be brought back ({why_not(error)})."
            raise CouldNot(why, "Nothing was changed.") from error
        finally:
            with suppress(OSError):
                sweep(part)
    holds = holdings_of(path)
    assert holds is not None  # it was proved before it took the name
    lost = max(0, before.statements - holds.statements) if before else 0
    return BroughtBack(kept, holds, struck, tuple(sorted(only_before, key=lambda number: (len(number), number))), lost)


def is_whole(backup: Path) -> bool:
    """Whether a backup can be brought back: SQLite reads all of it and finds nothing wrong."""
    try:
        return _is_sound(backup) and not is_altered(backup)
    except (OSError, CouldNot):
        return False


@contextmanager
def _alone(folder: Path) -> Iterator[None]:
    """Hold the collection's lock."""
    lock = Lock(folder)
    try:
        is_ours = lock.take()
    except OSError as error:
        raise CouldNot(f"{folder} cannot be written to ({why_not(error)}).", "Nothing was changed.") from error
    if not is_ours:
        raise _held()
    try:
        yield
    finally:
        lock.free()


def _is_sound(path: Path) -> bool:
    """Whether the present database is whole. One that is empty, or no database, is never opened: SQLite would throw
    its log away."""
    if not _is_of_ours(path):
        return False
    try:
        with closing(read_only(path)) as db:
            prove(db, ("integrity_check",))
    except sqlite3.Error as error:
        if _is_locked(error):
            raise _held() from error
        return False
    return True


def _is_of_ours(path: Path) -> bool:
    """Whether it begins as a collection's database does (SQLite file format, 1.3.1 and 1.3.17) and is not cut short."""
    head = _head(path)
    begins_so = head.startswith(_MAGIC) and head[68:72] == schema.APPLICATION_ID.to_bytes(4, "big")
    return begins_so and not is_cut_short(path, head, path.stat().st_size)


def _head(path: Path) -> bytes:
    """The header of a database; nothing of a file that is not there."""
    try:
        with open(path, "rb") as file:
            return file.read(HEADER)
    except FileNotFoundError:
        return b""


def _held() -> CouldNot:
    return CouldNot("Another program has the collection open.", "Close it there and try again; nothing was changed.")


def _is_locked(error: sqlite3.Error) -> bool:
    return getattr(error, "sqlite_errorcode", 0) & 0xFF in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED)


def _tombs(folder: Path) -> list[Tomb]:
    """The tombstones of everything ever struck here, from the present database and from every backup.

    Of a damaged one, those that can be read.
    """
    return list({tomb[0]: tomb for tomb in _of_every_database(folder, f"SELECT {TOMB} FROM tombstone")}.values())


def _of_every_database(folder: Path, query: str) -> Iterator[Any]:
    """The rows that the present database and every backup give, as far as they can be read."""
    for path in (folder / DATABASE, *(backup.path for backup in listed(folder))):
        if _head(path).startswith(_MAGIC):
            with suppress(sqlite3.Error), closing(read_only(path)) as db:
                yield from db.execute(query)


def _prepare(part: Path, backup: Path, tombs: list[Tomb]) -> int:
    """Copy the backup and take out of it what was struck since. Returns how many statements that were.

    The tombstones go in as unfinished: at the next opening the strike reaches the backups too, this one among them.
    """
    if not _is_of_ours(backup):
        raise CouldNot(f"{backup.name} is no whole backup of a collection.", _ANOTHER)
    altered = is_altered(backup)
    try:
        with closing(sqlite3.connect(backup, isolation_level=None)) as db:
            check_version(backup, schema.version_of(db))
            fill(part, db)
        with closing(read_only(part)) as db:
            known = {ident for (ident,) in db.execute("SELECT statement FROM tombstone")}
        struck = strike_backup(part, [tomb for tomb in tombs if tomb[0] not in known], finished=False)
        with closing(read_only(part)) as db:
            prove(db, ("integrity_check",))
        if altered:
            why = f"The backup {backup.name} is not as it was written: its SHA-256 is another."
            own = f"If you changed it yourself, take its line out of {backup.parent.parent / LIST_NAME}."
            raise CouldNot(why, f"{_ANOTHER} {own}")
    except sqlite3.OperationalError:
        raise
    except sqlite3.DatabaseError as error:
        why = f"The backup {backup.name} is damaged itself ({error})."
        raise CouldNot(why, _ANOTHER) from error
    return struck


def _same_collection(part: Path, path: Path, is_sound: bool) -> None:
    if is_sound and _id(part) != _id(path):
        raise CouldNot("That is a backup of another collection.", f"Give it a folder of its own; {path} is as it was.")


def _id(path: Path) -> str:
    with closing(read_only(path)) as db:
        return "".join(value for (value,) in db.execute("SELECT value FROM meta WHERE name = 'collection'"))


def _give_no_number_twice(part: Path, folder: Path) -> None:
    """Let the count of each series go on from the highest number ever given: it may stand on an enclosure."""
    highest: dict[str, int] = {}
    for letters, count in _of_every_database(folder, _COUNTS):
        highest[letters] = max(highest.get(letters, 0), count)
    with closing(sqlite3.connect(part)) as db:
        rows = [(GIVEN + letters, str(count)) for letters, count in highest.items()]
        db.executemany("INSERT OR REPLACE INTO meta VALUES (?, ?)", rows)
        db.commit()


def _numbers(path: Path) -> set[str]:
    with closing(read_only(path)) as db:
        return {words for (words,) in db.execute("SELECT words FROM statement WHERE field = 'number'")}


def _keep_sound(path: Path, now: str) -> Path:
    """Keep the present database as a backup, unless the newest one holds it all; and bring its log home, which only
    one that is alone can do."""
    with closing(sqlite3.connect(path, isolation_level=None, timeout=1)) as db:
        try:
            mode = db.execute("PRAGMA journal_mode = DELETE").fetchone()[0]
        except sqlite3.OperationalError as error:
            if _is_locked(error):
                raise _held() from error
            raise
        if mode != "delete":
            raise _held()
        return kept_in(db, path.parent) or keep(db, path.parent, named("before restoring", now))


def _keep_damaged(path: Path, now: str) -> Path | None:
    """Keep a damaged database, and the log beside it, byte for byte; then take the log away."""
    target = free_name(path.parent / FOLDER, named(DAMAGED, now))
    copies: list[Path] = []
    for suffix in ("", "-wal", "-journal"):
        part_of_it = path.with_name(path.name + suffix)
        if part_of_it.exists() and (not suffix or part_of_it.stat().st_size):
            copies.append(_copy_bytes(part_of_it, target.with_name(target.name + suffix)))
    for suffix in BESIDE:
        path.with_name(path.name + suffix).unlink(missing_ok=True)
    flush_folder(path.parent)
    return copies[0] if copies else None


def _copy_bytes(source: Path, target: Path) -> Path:
    target.parent.mkdir(exist_ok=True)
    part = target.with_name(target.name + PART)
    try:
        shutil.copyfile(source, part)
        put_in_place(part, target)
    finally:
        part.unlink(missing_ok=True)
    return target
