"""Opening a collection's database, and the `Store` that everything else holds.

A database that is newer than the program, damaged, or no collection at all is said to be so and is not
touched. A second program may read while the first writes; on a disk that cannot be written to, the file
is opened as immutable (SQLite URI, `immutable=1`).
"""

import os
import sqlite3
import threading
import uuid
from collections.abc import Iterator, Sequence
from contextlib import suppress
from pathlib import Path
from typing import Protocol, Self

from boxlore.core.errors import CouldNot
from boxlore.core.record import Material
from boxlore.core.statements import Subject
from boxlore.store import log, reading, schema, searching
from boxlore.store.locking import Lock, network_kind
from boxlore.store.rows import Told
from boxlore.store.values import ActDone, Change, Draft, Hit, Past
from boxlore.store.writer import DRAFT, Writer

DATABASE = "collection.sqlite"


class Clock(Protocol):
    """Gives ids and times; `tasks.clock.Clock` is one."""

    def new_id(self) -> str: ...
    def now(self) -> str: ...


def create(folder: Path, *, clock: Clock) -> "Store":
    """Make a new database in `folder` and open it for writing."""
    store = _open(folder, write=True, fallback_read_only=False, new=True)
    store.set_meta("collection", clock.new_id())
    return store


def open_store(folder: Path, *, write: bool = True, fallback_read_only: bool = False) -> "Store":
    """Open the database in `folder`. Raises CouldNot when it cannot be opened as asked.

    With `fallback_read_only`, a collection that another program writes to, or that lies on a disk that can
    only be read, is opened for reading, and `why_read_only` says why.
    """
    return _open(folder, write=write, fallback_read_only=fallback_read_only, new=False)


def _open(folder: Path, *, write: bool, fallback_read_only: bool, new: bool) -> "Store":
    path = folder / DATABASE
    if not new:
        _look(path)
    lock, why = _lock(folder) if write else (None, "opened for reading only")
    if lock is None and write and not fallback_read_only:
        raise CouldNot(why, "Close the other one, or only look: show, find and check work meanwhile.")
    try:
        return Store(folder, lock, why)
    except sqlite3.DatabaseError as error:
        if lock is not None:
            lock.free()
        raise _damaged(path, str(error)) from error


def _look(path: Path) -> None:
    """Look at the header without writing: is it a collection of ours, and of a version we know?"""
    try:
        with open(path, "rb") as file:
            head = file.read(100)
    except OSError as error:
        raise CouldNot(f"There is no collection in {path.parent}.", "Name its folder with -c FOLDER.") from error
    if len(head) < 100 or head[:16] != b"SQLite format 3\0":
        raise _damaged(path, "its first bytes are not those of a database")
    if int.from_bytes(head[68:72], "big") not in (schema.APPLICATION_ID, 0):
        raise CouldNot(f"{path} is a database of another program.", "Nothing was touched.")
    version = int.from_bytes(head[60:64], "big")
    if version > schema.VERSION:
        raise CouldNot(
            f"{path} was written by a newer Boxlore (tables of version {version}; this one knows {schema.VERSION}).",
            "Install the newest Boxlore; nothing was touched.",
        )


def _damaged(path: Path, why: str) -> CouldNot:
    backups = sorted((path.parent / "backups").glob("*.sqlite"))
    newest = f"The newest backup is {backups[-1]}." if backups else "There is no backup beside it."
    return CouldNot(f"{path} is damaged ({why}). Nothing was touched.", newest)


def _lock(folder: Path) -> tuple[Lock | None, str]:
    if kind := network_kind(folder):
        return None, f"{folder} is on a network disk ({kind}), where two could write at once and lose words."
    lock = Lock(folder)
    try:
        if lock.take():
            return lock, ""
    except OSError:
        return None, f"{folder} cannot be written to."
    return None, f"Another Boxlore is writing to {folder}."


class Store:
    """One open database. Reading is done on a connection of each thread's own; writing by one thread."""

    def __init__(self, folder: Path, lock: Lock | None, why_read_only: str) -> None:
        self.folder = folder
        self.path = folder / DATABASE
        self.why_read_only = why_read_only
        self.people_version = 0
        self._lock = lock
        self._local = threading.local()
        self._opened: list[sqlite3.Connection] = []
        self._writer: Writer | None = None
        if lock is not None:
            self._prepare()
            self._writer = Writer(self._connect_to_write)
        self.collection_id = self.meta("collection")

    @property
    def writable(self) -> bool:
        """Whether this program may write to the collection."""
        return self._writer is not None

    def close(self) -> None:
        """Finish writing and let go of the file."""
        if self._writer is not None:
            self._writer.close()
            self._writer = None
        self.release_readers()
        if self._lock is not None:
            self._lock.free()
            self._lock = None

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    # writing

    def write(self, change: Change) -> None:
        """Write one act; on the disk (synchronous FULL) when this returns."""
        self.writer.do(lambda db: log.apply(db, change))
        self.people_version += 1

    def save_draft(self, draft: Draft) -> None:
        """Keep what is being typed; goes before every other waiting change."""
        self.writer.do(lambda db: log.save_draft(db, draft), DRAFT)

    def drop_draft(self, subject: str, field: str, slot: str) -> None:
        """Forget a draft that came to nothing."""
        self.writer.do(
            lambda db: db.execute(
                "DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", (subject, field, slot)
            ),
            DRAFT,
        )

    def rebuild(self) -> None:
        """Make every projection again from the log."""
        self.writer.do(log.rebuild)
        self.people_version += 1

    def set_meta(self, name: str, value: str) -> None:
        """Remember a fact about the database itself."""
        self.writer.do(lambda db: db.execute("INSERT OR REPLACE INTO meta VALUES (?, ?)", (name, value)))
        if name == "collection":
            self.collection_id = value

    @property
    def writer(self) -> Writer:
        """The writing thread. Raises CouldNot when the collection is open for reading only."""
        if self._writer is None:
            raise CouldNot(f"Nothing can be written: {self.why_read_only}")
        return self._writer

    # reading

    @property
    def db(self) -> sqlite3.Connection:
        """This thread's own reading connection."""
        found: sqlite3.Connection | None = getattr(self._local, "db", None)
        if found is None or found not in self._opened:
            found = self._local.db = self._connect_to_read()
            self._opened.append(found)
        return found

    def release_readers(self) -> None:
        """Close every reading connection; the next reader opens its own again."""
        for connection in self._opened:
            connection.close()
        self._opened = []

    def meta(self, name: str) -> str:
        """A fact about the database itself, or an empty string."""
        row = self.db.execute("SELECT value FROM meta WHERE name = ?", (name,)).fetchone()
        return str(row[0]) if row else ""

    def statements(self, subject: Subject) -> list[Told]:
        """What is in force about one thing, in the order it was told."""
        return reading.statements(self.db, subject.id)

    def about_items(self, *, ids: Sequence[str] | None = None) -> Iterator[Material]:
        """Everything a record is made from, item by item in the order of numbers, with flat memory."""
        return reading.about_items(self.db, ids)

    def people(self) -> Iterator[tuple[str, list[Told]]]:
        """Everyone in the registry with the statements about them."""
        return reading.by_subject(self.db, "person")

    def subjects(self, kind: str) -> Iterator[tuple[str, list[Told]]]:
        """Every thing of a kind with the statements about it."""
        return reading.by_subject(self.db, kind)

    def history(self, subject: str, field: str) -> list[Past]:
        """Everything ever said of one field, replaced and withdrawn statements too."""
        return reading.history(self.db, subject, field)

    def last_acts(self, limit: int = 50) -> list[ActDone]:
        """What was done last, newest first."""
        return reading.last_acts(self.db, limit)

    def last_time(self) -> str:
        """The newest time in the log, or an empty string."""
        row = self.db.execute("SELECT max(recorded_at) FROM act").fetchone()
        return str(row[0] or "")

    def items(self) -> list[tuple[str, str]]:
        """(number, id) of every item, in the order of numbers."""
        return reading.items(self.db)

    def item_by_number(self, number: str) -> str | None:
        """The id of the item with that number."""
        return reading.item_by_number(self.db, number)

    def items_by_mark(self, short: str) -> list[str]:
        """Ids of the items kept at a mark now; if none are, of those that once were."""
        return reading.items_by_mark(self.db, short)

    def containers(self) -> list[tuple[str, tuple[tuple[str, str], ...]]]:
        """Every container's id with its path of (kind, label), outermost first."""
        return reading.containers(self.db)

    def last_position(self, container: str) -> int:
        """The highest place taken in a container."""
        return reading.last_position(self.db, container)

    def next_number_count(self, prefix: str = "", series: str = "") -> int:
        """The count for the next number of a series: one more than the highest ever given in it."""
        return reading.next_number_count(self.db, f"{prefix}{series}-")

    def scan_by_sha256(self, digest: str) -> str:
        """The id of the scan with these bytes, or an empty string."""
        return reading.scan_by_sha256(self.db, digest)

    def shown_on(self, scan: str, area: Sequence[float]) -> str:
        """The number of the item shown by that part of a scan, or an empty string."""
        return reading.shown_on(self.db, scan, area)

    def scans(self) -> Iterator[tuple[str, dict[str, object]]]:
        """Every scan's id with its facts (path, sha256, bytes, …)."""
        return reading.scans(self.db)

    def search(self, words: str, limit: int = 50) -> list[Hit]:
        """Items and other things whose words, or drafts, hold all these words."""
        return searching.search(self.db, words, limit)

    def complete_people(self, prefix: str, limit: int = 8) -> list[tuple[str, str]]:
        """(id, name) of people any part of whose name begins so, most recently meant first."""
        return searching.complete(self.db, "person", prefix, limit)

    def complete_places(self, prefix: str, limit: int = 8) -> list[str]:
        """Places told before that begin so."""
        return [words for _, words in searching.complete(self.db, "place", prefix, limit)]

    def drafts(self) -> list[Draft]:
        """What was being typed and has not become a statement."""
        return reading.drafts(self.db)

    def count(self, kind: str) -> int:
        """How many things of a kind there are."""
        return reading.count(self.db, kind)

    # connections

    def _prepare(self) -> None:
        db = self._connect_to_write()
        try:
            if 0 < schema.version_of(db) < schema.VERSION:
                (self.folder / "backups").mkdir(exist_ok=True)
                name = self.folder / "backups" / f"before-version-{schema.VERSION}-{uuid.uuid4().hex[:6]}.sqlite"
                with sqlite3.connect(name) as target:
                    db.backup(target)
                target.close()
            schema.migrate(db)
        finally:
            db.close()

    def _connect_to_write(self) -> sqlite3.Connection:
        db = sqlite3.connect(self.path, isolation_level=None, check_same_thread=False, timeout=30)
        for pragma in (
            "journal_mode = WAL",
            "synchronous = FULL",
            "secure_delete = ON",
            "foreign_keys = OFF",
        ):
            db.execute(f"PRAGMA {pragma}")
        return db

    def _connect_to_read(self) -> sqlite3.Connection:
        uri = self.path.resolve().as_uri()
        mode = "mode=ro" if self._lock is not None or os.access(self.folder, os.W_OK) else "immutable=1"
        db = sqlite3.connect(f"{uri}?{mode}", uri=True, isolation_level=None, check_same_thread=False, timeout=30)
        with suppress(sqlite3.OperationalError):
            db.execute("PRAGMA query_only = ON")
        return db
