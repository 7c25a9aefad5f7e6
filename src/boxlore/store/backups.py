"""Backups: dated copies of the database, each proved before it takes its name, and the sentence for a damaged one.

They lie in `backups/`, and a name tells when (UTC, ISO 8601) and why: `20261125T101530Z-before-merging-people.sqlite`.
A file of another name, which a keeper put there or which was made before newer tables, is listed with the day it was
written on; only those that are named so are ever dropped.
"""

import re
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Protocol

from boxlore.core.errors import CouldNot
from boxlore.store.backup_sums import forget, note
from boxlore.store.backups_retention import Rolled, to_drop
from boxlore.store.copying import BESIDE, PART, copy_to, free_name

FOLDER = "backups"
DAMAGED = "damaged"
"""The reason of a database that was kept as it was, because it could not be read."""

_NAME = re.compile(r"(\d{8}T\d{6}Z)-(.+?)(?:-\d+)?")
_STAMP = "%Y%m%dT%H%M%SZ"

_TOLD = """SELECT (SELECT max(id) FROM act), (SELECT max(row) FROM statement), (SELECT count(*) FROM tombstone),
    (SELECT count(*) FROM draft), (SELECT max(updated_at) FROM draft)"""
"""Whatever is told, taken back or struck changes one of these; acts have ids that sort by time."""


_COURSE = """SELECT coalesce(max(id), ''), count(*), (SELECT coalesce(max(row), 0) FROM statement),
    (SELECT coalesce(max(updated_at), '') FROM draft) FROM act"""
"""What grows as a log goes on; nothing of it shrinks but by a strike, which reaches every backup alike."""


class OpenDatabase(Protocol):
    """What a backup is made of; `store.opening.Store` is one."""

    @property
    def folder(self) -> Path: ...
    @property
    def db(self) -> sqlite3.Connection: ...


@dataclass(frozen=True, slots=True)
class Backup:
    """One file of `backups/`: when it was made (UTC), why, how many bytes; `ours` if it is named as we name them."""

    path: Path
    at: datetime
    why: str
    size: int
    ours: bool

    @property
    def day(self) -> str:
        """When it was made, by this machine's calendar and clock: `2026-11-25 10:15`."""
        return f"{self.at.astimezone():%Y-%m-%d %H:%M}"


@dataclass(frozen=True, slots=True)
class Holdings:
    """What a backup holds: how many items, how many statements."""

    items: int
    statements: int


def listed(folder: Path) -> list[Backup]:
    """The backups of the collection in `folder`, the newest first: the one that holds most of the log's course.

    The log goes on where a clock jumps back, and a name may tell a time that never was. So those that can be read are
    put in order by what they hold; of the same, the one that is named last is the newest, and of one second one made on
    closing. One that cannot be read stays where its name puts it.
    """
    by_name = sorted(_listed(folder), key=_age, reverse=True)
    courses = {backup.path: course for backup in by_name if (course := _course(backup)) is not None}
    readable = [backup for backup in by_name if backup.path in courses]
    in_order = iter(sorted(readable, key=lambda backup: (courses[backup.path], _age(backup)), reverse=True))
    return [next(in_order) if backup.path in courses else backup for backup in by_name]


def _course(backup: Backup) -> tuple[str, int, int, str] | None:
    """How far the log goes in a backup, to compare with others; None where it cannot be read."""
    if backup.why != DAMAGED:
        with suppress(sqlite3.Error), closing(read_only(backup.path)) as db:
            last_act, acts, last_row, last_draft = db.execute(_COURSE).fetchone()
            return last_act, acts, last_row, last_draft
    return None


def _age(backup: Backup) -> tuple[datetime, str, int, str]:
    """What backups are sorted by: `on closing` after `before …`, `-10` after `-9`."""
    name = backup.path.name
    return backup.at, backup.why, len(name), name


def _listed(folder: Path) -> Iterator[Backup]:
    for path in (folder / FOLDER).glob("*.sqlite"):
        with suppress(OSError):  # it was taken away meanwhile
            stat = path.stat()
            at, why = _read_name(path.stem)
            written = datetime.fromtimestamp(stat.st_mtime, UTC)
            yield Backup(path, at or written, why.replace("-", " "), stat.st_size, at is not None)


def _read_name(stem: str) -> tuple[datetime | None, str]:
    """When and why, from a name of ours; of another only the name."""
    parts = _NAME.fullmatch(stem)
    if parts:
        with suppress(ValueError):  # no such day
            return datetime.strptime(parts[1], _STAMP).replace(tzinfo=UTC), parts[2]
    return None, stem


def holdings(backup: Backup) -> Holdings | None:
    """What a backup holds, or None where it cannot be read."""
    return None if backup.why == DAMAGED else holdings_of(backup.path)


def holdings_of(path: Path) -> Holdings | None:
    """What a database that nobody writes to holds, or None where it cannot be read."""
    query = "SELECT (SELECT count(*) FROM in_force WHERE field = 'number'), (SELECT count(*) FROM statement)"
    try:
        with closing(read_only(path)) as db:
            return Holdings(*db.execute(query).fetchone())
    except sqlite3.Error:
        return None


def read_only(path: Path) -> sqlite3.Connection:
    """A connection to a database that nobody writes to. A missing file is an error, not a new database."""
    return sqlite3.connect(address(path), uri=True, isolation_level=None, timeout=1)


def address(path: Path) -> str:
    """Where a database that nobody writes to is read: where no log lies beside it, none is made (SQLite URI,
    `immutable=1`)."""
    has_log = any(path.with_name(path.name + suffix).exists() for suffix in BESIDE)
    return f"{path.resolve().as_uri()}?{'mode=ro' if has_log else 'immutable=1'}"


def is_kept(store: OpenDatabase) -> bool:
    """Whether there is nothing to back up: the newest backup holds it all, or nothing was ever told.

    Raises CouldNot for a damaged collection.
    """
    try:
        return kept_in(store.db, store.folder) is not None or not any(store.db.execute(_TOLD).fetchone())
    except sqlite3.DatabaseError as error:
        raise _refused(store.folder, error) from error


def kept_in(db: sqlite3.Connection, folder: Path) -> Path | None:
    """The newest backup of ours, if it holds just what the open database of `folder` holds. Raises sqlite3.Error."""
    state = db.execute(_TOLD).fetchone()
    newest = next((backup for backup in listed(folder) if backup.ours and backup.why != DAMAGED), None)
    if newest is not None:
        with suppress(sqlite3.Error), closing(read_only(newest.path)) as copy:
            return newest.path if copy.execute(_TOLD).fetchone() == state else None
    return None


def back_up(store: OpenDatabase, why: str, now: str) -> Path:
    """Copy the database to `backups/`, named by time and reason; an earlier copy is never overwritten.

    Returns the copy's path. Raises CouldNot when the disk refuses or the database is damaged; nothing is left
    half-copied.
    """
    return keep(store.db, store.folder, named(why, now))


def named(why: str, now: str) -> str:
    """The stem of a backup's file name; `now` is UTC, as the log has it."""
    stamp = re.sub(r"[^0-9T]", "", now.partition(".")[0])
    return f"{stamp}Z-{re.sub(r'[^a-z0-9]+', '-', why.lower()).strip('-')}"


def keep(db: sqlite3.Connection, folder: Path, stem: str) -> Path:
    """Copy the open database of `folder` to `backups/`, under the first free name of that stem. Raises CouldNot."""
    target = free_name(folder / FOLDER, stem)
    try:
        _has_room(db, folder)
        copy_to(db, target)
        note(target)
    except (OSError, sqlite3.Error) as error:
        raise _refused(folder, error) from error
    return target


def _has_room(db: sqlite3.Connection, folder: Path) -> None:
    """A copy must leave as much room on the disk as it takes, so that what is typed next can be kept."""
    pages, size = db.execute("PRAGMA page_count").fetchone()[0], db.execute("PRAGMA page_size").fetchone()[0]
    if shutil.disk_usage(folder).free < 2 * pages * size:
        raise OSError(None, "the disk is nearly full")


def _refused(folder: Path, error: OSError | sqlite3.Error) -> CouldNot:
    if isinstance(error, (OSError, sqlite3.OperationalError)):
        why = f"No backup could be made in {folder / FOLDER} ({why_not(error)}); what is told is safe all the same."
        return CouldNot(why, "Free some space on that disk, or let the folder be written to.")
    return damaged(folder / "collection.sqlite", str(error))


def why_not(error: OSError | sqlite3.Error) -> str:
    """What the disk refused, in plain words."""
    if isinstance(error, OSError):
        return (error.strerror or str(error)).lower()
    if "decode" in str(error):  # SQLite's own words would quote the text
        return "a text in it is not UTF-8"
    return "the disk is full" if "disk is full" in str(error) else str(error)


def roll(folder: Path, now: str, room: int) -> list[Path]:
    """Drop what the rolling rule lets go of, where backups may take `room` bytes. Returns what was dropped."""
    ours = [backup for backup in listed(folder) if backup.ours and backup.why != DAMAGED]
    rolled = [
        Rolled(str(backup.path), backup.at, backup.why.startswith("before"), backup.size, newer_than)
        for newer_than, backup in enumerate(reversed(ours))
    ]
    gone = [Path(dropped.name) for dropped in to_drop(rolled, datetime.fromisoformat(now), room)]
    for path in gone:
        for suffix in ("", *BESIDE):
            with suppress(OSError):  # it stays then, and is dropped with the next one
                path.with_name(path.name + suffix).unlink()
        forget(path)
    return gone


def clear_away(folder: Path) -> None:
    """Remove copies that a kill left unfinished. Only whoever holds the lock of the collection may do this."""
    for left_over in (*folder.glob(f"collection{PART}*"), *(folder / FOLDER).glob(f"*{PART}*")):
        with suppress(OSError):  # on a disk that refuses, opening goes on without
            left_over.unlink()


def damaged(path: Path, why: str) -> CouldNot:
    """The sentence for a damaged database, with the way back."""
    return CouldNot(f"{path} is damaged ({why}). Nothing was touched.", way_back(path.parent))


def has_some(folder: Path) -> bool:
    """Whether there is a backup that can be read."""
    return any(holdings(backup) is not None for backup in listed(folder))


def way_back(folder: Path) -> str:
    """The sentence that tells of the newest backup that can be read."""
    for backup in listed(folder):
        if holdings(backup) is not None:
            return f"boxlore restore can bring back the backup of {backup.day} ({backup.path})."
    return "There is no backup beside it."
