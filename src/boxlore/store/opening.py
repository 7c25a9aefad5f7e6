"""Opening a collection's database; `Store`, through which everything else reads and writes it.

A database that is newer than the program, damaged, or no collection is not touched; an error says why. One program
may write, and others may read meanwhile. On a disk that cannot be written to, the file is opened as immutable (SQLite
URI, `immutable=1`).
"""

import itertools
import sqlite3
import threading
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import closing
from pathlib import Path
from typing import Concatenate, ParamSpec, Protocol, Self, TypeVar

from boxlore.core.errors import CouldNot
from boxlore.core.fields.originals import Kept
from boxlore.core.fields.pictures import FileFacts, Shows
from boxlore.core.originals.location_history import Stated
from boxlore.core.records.item_record import Material
from boxlore.core.statements import Kind, Subject
from boxlore.store import log, queries, record_rows, schema, searching
from boxlore.store.backups import clear_away, why_not
from boxlore.store.copying import prove
from boxlore.store.database_file import (
    DATABASE,
    bring_up_to_date,
    check_file,
    check_version,
    check_whole,
    connect_to_read,
    connect_to_write,
    errors_in_words,
    make_database,
)
from boxlore.store.locking import Lock, network_kind
from boxlore.store.projections import can_be_made, is_in_step
from boxlore.store.projections_check import are_words_in_step
from boxlore.store.row_sums import AlteredRow, altered_rows, rows_without_sum
from boxlore.store.rows import ToldRow
from boxlore.store.strike_rewriting import finish_strike, is_pending
from boxlore.store.values import ActDone, Change, Draft, Hit, Past, Struck
from boxlore.store.writer_thread import DRAFT, Writer

QueryArgs = ParamSpec("QueryArgs")
QueryResult = TypeVar("QueryResult")


class IdsAndTimes(Protocol):
    """Gives new ids and the time; `tasks.collection.clock.Clock` does."""

    def new_id(self) -> str: ...
    def now(self) -> str: ...


def create(folder: Path, *, clock: IdsAndTimes, ident: str = "") -> "Store":
    """Make a new database in `folder`, with a new id or `ident`, and open it for writing.

    Raises CouldNot if there is one already.
    """
    if kind := network_kind(folder):
        raise CouldNot(_network(folder, kind), "Choose a folder on a disk of this machine.")
    make_database(folder / DATABASE, ident or clock.new_id())
    return open_store(folder)


def open_store(folder: Path, *, write: bool = True, fallback_read_only: bool = False) -> "Store":
    """Open the database in `folder`. Raises CouldNot when it cannot be opened as asked.

    With `fallback_read_only`, a collection that another program writes to, or that lies on a disk that can
    only be read, is opened for reading, and `why_read_only` says why.
    """
    check_file(folder / DATABASE)
    lock, why, what_to_do = _lock(folder) if write else (None, "opened for reading only", "")
    if lock is None and write and not fallback_read_only:
        raise CouldNot(why, f"{what_to_do}, or only look: show, find and check work meanwhile.")
    try:
        with errors_in_words(folder / DATABASE):
            return Store(folder, lock, why)
    except BaseException:
        if lock is not None:
            lock.free()
        raise


def _lock(folder: Path) -> tuple[Lock | None, str, str]:
    """The lock of the collection, or None with a sentence about why it could not be got, and what to do."""
    if kind := network_kind(folder):
        return None, _network(folder, kind), "Copy it to a disk of this machine"
    lock = Lock(folder)
    try:
        if lock.take():
            return lock, "", ""
    except OSError as error:
        why = f"{folder} cannot be written to ({why_not(error)})."
        return None, why, "Let the folder and what is in it be written to, or ask whoever owns it"
    return None, f"Another Boxlore is writing to {folder}.", "Close the other one"


def _network(folder: Path, kind: str) -> str:
    return f"{folder} is on a network disk ({kind}), where two could write at once and lose words."


class Store:
    """One open database. Each thread reads on a connection of its own; one thread writes (see `writer`).

    `why_read_only` says why it may not be written to. `people_version` grows with each change that makes what is cached
    of people stale.
    """

    def __init__(self, folder: Path, lock: Lock | None, why_read_only: str) -> None:
        self.folder = folder
        self.path = folder / DATABASE
        self.why_read_only = why_read_only
        self.people_version = 0
        self._lock = lock
        self._local = threading.local()
        self._generation = 0
        self._opened: list[sqlite3.Connection] = []
        self._numbers = itertools.count()
        self._writer: Writer | None = None
        if lock is not None:
            self._writer = Writer(_ready_to_write(self.path), self.path)
        else:
            self._check_tables()
        self.collection_id = self.meta("collection")

    @property
    def writable(self) -> bool:
        """Whether this program may write to the collection."""
        return self._writer is not None

    def close(self) -> None:
        """Finish writing, close all connections and release the lock."""
        self.release_readers()
        for connection in self._opened:
            connection.close()
        self._opened = []
        if self._writer is not None:  # last, so that SQLite moves the write-ahead log into the file
            self._writer.close()
            self._writer = None
        if self._lock is not None:
            self._lock.free()
            self._lock = None

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    # writing

    def write(self, change: Change) -> None:
        """Write one act. When this returns, the act is on the disk (synchronous FULL). Raises CouldNot, WrongUse."""
        self.writer.do(lambda db: log.apply(db, change))
        if _touches_people(change):
            self.people_version += 1

    def take_tombstones(self, struck: Iterable[Struck]) -> None:
        """Note what was struck elsewhere, in the collection that this one was made of."""
        rows = [(each.statement, each.kind, each.subject, each.field, each.at, each.by) for each in struck]
        self.writer.do(lambda db: db.executemany("INSERT OR IGNORE INTO tombstone VALUES (?, ?, ?, ?, ?, ?, 1)", rows))

    def give_series(self, letters: str) -> None:
        """Note that a working copy numbers in the series of these letters, if that is not noted."""
        self.writer.do(lambda db: db.execute("INSERT OR IGNORE INTO meta VALUES (?, '0')", (queries.GIVEN + letters,)))

    def series_given(self) -> set[str]:
        """The letters of every series in which a number was given, or that a working copy was given."""
        return self._ask(queries.series_given)

    def save_draft(self, draft: Draft) -> None:
        """Keep what is being typed. It is written before all changes that wait."""
        self.writer.do(lambda db: log.save_draft(db, draft), DRAFT)

    def drop_draft(self, subject: str, field: str, slot: str) -> None:
        """Delete a draft."""
        self.writer.do(
            lambda db: db.execute(
                "DELETE FROM draft WHERE subject = ? AND field = ? AND slot = ?", (subject, field, slot)
            ),
            DRAFT,
        )

    def set_meta(self, name: str, value: str) -> None:
        """Store a fact about the database itself."""
        self.writer.do(lambda db: db.execute("INSERT OR REPLACE INTO meta VALUES (?, ?)", (name, value)))
        if name == "collection":
            self.collection_id = value

    @property
    def writer(self) -> Writer:
        """The thread that writes. Raises CouldNot when the collection is open for reading only."""
        if self._writer is None:
            raise CouldNot(f"Nothing can be written: {self.why_read_only}")
        return self._writer

    # reading

    @property
    def version(self) -> tuple[int, int]:
        """What is another whenever anything was written since, by this program or by another one.

        SQLite counts it for each connection (`PRAGMA data_version`), so each of these has versions of its own.
        """
        counted = self._ask(queries.data_version)
        return int(self._local.number), counted

    @property
    def db(self) -> sqlite3.Connection:
        """This thread's own reading connection."""
        connection: sqlite3.Connection | None = getattr(self._local, "db", None)
        if connection is None or self._local.generation != self._generation:
            if connection is not None:
                self._let_go(connection)
            connection = self._local.db = connect_to_read(self.path)
            self._local.generation = self._generation
            self._local.number = next(self._numbers)
            self._opened.append(connection)
        return connection

    def release_readers(self) -> None:
        """Close this thread's reading connection now, and every other thread's when that thread next reads.

        Another thread may be in the middle of an answer, which closing its connection from here would break.
        """
        self._generation += 1
        connection: sqlite3.Connection | None = getattr(self._local, "db", None)
        if connection is not None:
            self._local.db = None
            self._let_go(connection)

    def _let_go(self, connection: sqlite3.Connection) -> None:
        connection.close()
        if connection in self._opened:
            self._opened.remove(connection)

    def _ask(
        self,
        question: Callable[Concatenate[sqlite3.Connection, QueryArgs], QueryResult],
        *values: QueryArgs.args,
        **named: QueryArgs.kwargs,
    ) -> QueryResult:
        """The result of a query on this thread's connection."""
        with errors_in_words(self.path):
            return question(self.db, *values, **named)

    def _stream(
        self,
        question: Callable[Concatenate[sqlite3.Connection, QueryArgs], Iterator[QueryResult]],
        *values: QueryArgs.args,
        **named: QueryArgs.kwargs,
    ) -> Iterator[QueryResult]:
        """The results of a query one by one."""
        with errors_in_words(self.path):
            yield from question(self.db, *values, **named)

    def altered_rows(self) -> list[AlteredRow]:
        """Rows of the log that are not as they were written (see `row_sums`)."""
        with errors_in_words(self.path), closing(connect_to_read(self.path)) as db:
            return list(altered_rows(db))

    def damage(self) -> str:
        """What SQLite's whole check (`PRAGMA integrity_check`, with the indexes) finds first; '' for a sound file."""
        try:
            prove(self.db, ("integrity_check",))
        except sqlite3.DatabaseError as error:
            return why_not(error)
        return ""

    def is_in_step(self) -> bool:
        """Whether what counts as withdrawn and as past follows from the log."""
        return self._ask(is_in_step)

    def are_words_in_step(self) -> bool:
        """Whether what is searched, and the names that complete what is typed, follow from the log."""
        return self._ask(are_words_in_step)

    def make_projections_again(self) -> bool:
        """At the next opening for writing everything that follows from the log is made of it again. False where the log
        is damaged so that it cannot be."""
        if self._ask(can_be_made):
            self.set_meta(schema.STALE, "to be made again")
            return True
        return False

    def rows_without_sum(self) -> int:
        """How many statements were written before sums were kept."""
        return self._ask(rows_without_sum)

    def meta(self, name: str) -> str:
        """A fact about the database itself, or an empty string."""
        return self._ask(queries.meta, name)

    def statements(self, subject: Subject) -> list[ToldRow]:
        """The statements in force about a subject, with their readings, in the order of the log."""
        return self._ask(queries.statements, subject.id)

    def of_sitting(self, sitting: str) -> list[ToldRow]:
        """The statements in force that were told in a sitting, with their readings, in the order of the log."""
        return self._ask(queries.of_sitting, sitting)

    def about_items(self, *, ids: Sequence[str] | None = None) -> Iterator[Material]:
        """What the records are made from, item by item: of these ids in their order, or of all in that of numbers."""
        return self._stream(record_rows.about_items, ids)

    def people(self) -> Iterator[tuple[str, list[ToldRow]]]:
        """(id, statements in force with their readings) of everyone in the registry."""
        return self._stream(queries.by_subject, "person")

    def subjects(self, kind: str) -> Iterator[tuple[str, list[ToldRow]]]:
        """(id, statements in force with their readings) of every subject of a kind."""
        return self._stream(queries.by_subject, kind)

    def subjects_told(self, kind: str, field: str) -> list[str]:
        """Ids of the subjects of a kind with a statement in force in this field; not for items, scans and markers."""
        return self._ask(queries.subjects_told, kind, field)

    def history(self, subject: str, field: str) -> list[Past]:
        """Everything ever told of one field, replaced and withdrawn statements too, in the order of the log."""
        return self._ask(queries.history, subject, field)

    def struck(self) -> set[tuple[str, str]]:
        """(subject, field) of all struck statements, so that nothing read in from a file brings them back."""
        return self._ask(queries.struck)

    def tombs_about(self, subjects: Iterable[str]) -> list[str]:
        """Ids of the statements that were struck of these items and scans, or of what belongs to no single item."""
        return self._ask(queries.tombs_about, subjects)

    def tombstones(self) -> Iterator[Struck]:
        """Everything that was struck, without its words, in the order of the time."""
        return self._stream(queries.tombstones)

    def fields_of(self, ids: Sequence[str]) -> dict[str, tuple[str, bool]]:
        """The field of each of these statements, and whether it is in force, by its id."""
        return self._ask(queries.fields_of, ids)

    def last_acts(self, limit: int = 50) -> list[ActDone]:
        """The last acts that are no undo or redo, newest first."""
        return self._ask(queries.last_acts, limit)

    def acts_since(self, when: str) -> list[str]:
        """Ids of the acts recorded at that time or later that are no undo or redo, in their order."""
        return self._ask(queries.acts_since, when)

    def told_besides(self, acts: Sequence[str]) -> list[str]:
        """Ids of the items and containers of which other acts tell something in force that stands on what these acts
        made: told of an item, shown by a scan, kept in a container."""
        return self._ask(queries.told_besides, acts)

    def last_time(self) -> str:
        """The newest time in the log, or an empty string."""
        return self._ask(queries.last_time)

    def items(self) -> list[tuple[str, str]]:
        """(number, id) of every item, in the order of numbers."""
        return self._ask(queries.items)

    def item_ids(self) -> bytes:
        """Every item's id in the order of numbers, 16 bytes each."""
        return self._ask(queries.item_ids)

    def item_by_number(self, number: str) -> str | None:
        """The id of the item with that number, or None."""
        return self._ask(queries.item_by_number, number)

    def container_facts(self) -> list[Stated]:
        """Every kind, label and `inside` ever told of containers, past ones too, in the order of the log."""
        return self._ask(queries.container_facts)

    def ever_kept(self, where: Sequence[Kept]) -> list[str]:
        """Ids of items ever kept at one of these positions."""
        return self._ask(queries.ever_kept, where)

    def kept_facts(self, items: Sequence[str]) -> list[Stated]:
        """Every position ever told of these items, past ones too, in the order of the log."""
        return self._ask(queries.kept_facts, items)

    def withdrawals(self) -> list[tuple[str, str, str]]:
        """(act, act that it withdraws, time) of every withdrawal, oldest first."""
        return self._ask(queries.withdrawals)

    def kept_in(self) -> list[tuple[str, Kept]]:
        """(item id, where it is kept) of everything that has a place now."""
        return self._ask(queries.kept_in)

    def number_of(self, item: str) -> str:
        """An item's number, or an empty string."""
        return self._ask(queries.number_of, item)

    def containers(self) -> list[tuple[str, tuple[tuple[str, str], ...]]]:
        """Every container's id with its path of (kind, label), outermost first."""
        return self._ask(queries.containers)

    def kept_before(self) -> list[tuple[str, Kept, str]]:
        """(item id, where it was kept, since when) of every position that an item has left."""
        return self._ask(queries.kept_before)

    def wanted(self) -> list[str]:
        """Ids of the items that an archive has said it wants."""
        return self._ask(queries.wanted)

    def words_of(self, fields: Sequence[str]) -> Iterator[tuple[str, str, str]]:
        """(subject id, field, words) of every statement in force of these fields, where something is said."""
        return self._stream(queries.words_of, fields)

    def every_words(self) -> Iterator[tuple[str, str, str, str, str, str, str]]:
        """(statement id, subject, field, words, said, source, who gave the consent that it is) of every statement in
        the log, in force or not."""
        return self._stream(queries.every_words)

    def fixity(self) -> list[tuple[str, str, queries.FixityTold, str]]:
        """(kind, subject, facts, when) of every file taken in, also of a sitting, and every fixity event since."""
        return self._ask(queries.fixity)

    def last_position(self, container: str) -> int:
        """The highest place taken in a container."""
        return self._ask(queries.last_position, container)

    def next_number_count(self, prefix: str = "", series: str = "") -> int:
        """The count for the next number of a series: one more than the highest that was ever given in it."""
        return self._ask(queries.next_number_count, f"{prefix}{series}")

    def scan_by_sha256(self, digest: str) -> str:
        """The id of the scan with these bytes, or an empty string."""
        return self._ask(queries.scan_by_sha256, digest)

    def struck_files(self) -> set[str]:
        """SHA-256 of the files whose own words were struck: they are not taken from such a file again."""
        return self._ask(queries.struck_files)

    def shown_on(self, scan: str, area: Sequence[float]) -> str:
        """The number of the item shown by that part of a scan, or an empty string."""
        return self._ask(queries.shown_on, scan, area)

    def scans(self) -> Iterator[tuple[str, FileFacts]]:
        """Every scan's id with the facts of its file."""
        return self._stream(queries.scans)

    def showing(self, item: str) -> list[tuple[str, Shows]]:
        """(scan's id, what it shows) of all that shows an item, of what has another in its place too."""
        return self._ask(queries.showing, item)

    def search(self, words: str, limit: int = 50) -> list[Hit]:
        """Statements in force and drafts that hold all these words, or words that begin with them."""
        return self._ask(searching.search, words, limit)

    def dated(self, first: str, last: str, limit: int = 50) -> list[Hit]:
        """What was told of items and is understood as a date that lies wholly from one ISO day to another."""
        return self._ask(searching.dated, first, last, limit)

    def words_beginning(self, start: str, limit: int = 2000) -> set[str]:
        """Folded words told and in force that begin with these letters, of at most `limit` statements."""
        return self._ask(searching.words_beginning, start, limit)

    def complete_people(self, prefix: str, limit: int = 8) -> list[tuple[str, str]]:
        """(id, name) of people with a name any word of which begins with `prefix`; last meant first."""
        return self._ask(searching.complete, "person", prefix, limit)

    def complete_places(self, prefix: str, limit: int = 8) -> list[str]:
        """Places told before, any word of which begins with `prefix`."""
        return [words for _, words in self._ask(searching.complete, "place", prefix, limit)]

    def places_told(self, words: str) -> list[ToldRow]:
        """The places of items that are told in these words, with their readings, oldest first."""
        return self._ask(queries.places_told, words)

    def places_used(self) -> dict[int, int]:
        """GeoNames ids of the places that readings in this collection name, and how many do."""
        return self._ask(queries.places_used)

    def scan_facts(self) -> Iterator[dict[str, list[str]]]:
        """Of every scan: field -> words in force, oldest first, of its file, what it shows, its role, where it came
        from, how it looks."""
        return self._stream(queries.scan_facts)

    def meaning(self, ids: Sequence[str]) -> list[ToldRow]:
        """What is told with a reading that names one of these people or events; another reading may count by now."""
        return self._ask(queries.meaning, ids)

    def own_fields(self) -> list[str]:
        """Fields of the collection's own questions in which words are kept."""
        return self._ask(queries.own_fields)

    def drafts(self) -> list[Draft]:
        """What is being typed and has not become a statement yet, oldest first."""
        return self._ask(queries.drafts)

    def count(self, kind: str) -> int:
        """How many subjects of a kind there are."""
        return self._ask(queries.count, kind)

    def _check_tables(self) -> None:
        version = self._ask(schema.version_of)
        check_version(self.path, version)
        if version < schema.READ_FROM:
            raise CouldNot(f"{self.path} was written by an older Boxlore.", "Open it once for writing.")


def _ready_to_write(path: Path) -> sqlite3.Connection:
    """The connection for writing, with the tables brought up to date and what a kill left undone finished."""
    clear_away(path.parent)
    check_whole(path)
    bring_up_to_date(path)
    db = connect_to_write(path)
    if is_pending(db):
        finish_strike(db, path.parent)
    return db


def _touches_people(change: Change) -> bool:
    """Whether this change makes the cached registry of people stale."""
    added = {statement.id for statement in change.statements}
    is_about_person = any(statement.subject.kind is Kind.PERSON for statement in change.statements)
    return is_about_person or bool(change.withdraws) or any(statement not in added for statement, _ in change.readings)
