"""A collection opened: its folder, settings, store and clock, and the people everyone asks about.

`start` makes one, `open_collection` opens one; both fronts hold the `Collection` and nothing below it.
"""

import getpass
import logging
import os
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TypeVar, cast

from boxlore.core.errors import CouldNot, WrongUse, in_words
from boxlore.core.fields.guard import checked
from boxlore.core.fields.language import language_tag
from boxlore.core.people.person import Registry, build_registry
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.disk.writing import write_whole
from boxlore.store import database_file
from boxlore.store.backups import way_back
from boxlore.store.opening import Store, create, open_store
from boxlore.store.strike_rewriting import is_pending
from boxlore.store.values import Change
from boxlore.tasks.collection.act_index import ActIndex
from boxlore.tasks.collection.backups import CLOSING, has_backups, keep
from boxlore.tasks.collection.clock import Clock
from boxlore.tasks.collection.registered import RegisteredScans, registered_scans
from boxlore.tasks.collection.settings import FILE_NAME, Settings, as_toml, check_settings, lost_settings, read_settings

DATABASE = "collection.sqlite"
_log = logging.getLogger("boxlore")

Worth = TypeVar("Worth")

FOLDERS = ("scans", "recordings", "papers", "backups")


@dataclass(slots=True)
class Collection:
    """One open collection. `by` is who works at the keyboard; it stands in every row of the log."""

    folder: Path
    settings: Settings
    store: Store
    clock: Clock
    by: str
    over: bool = False
    """Whether an output may take the place of a file that Boxlore did not write (see `output_paths`)."""
    unsaid: list[str] = field(default_factory=list)
    """What went wrong without stopping anything, for the keeper to read when the collection is closed."""
    files_say: dict[str, str] | None = None
    """By the id of a scan, what its file says now, where that could not be kept (see `files_read_again`)."""
    _people: Registry = field(default_factory=Registry)
    _people_at: int = -1
    _worked_out: dict[str, tuple[tuple[int, int], object]] = field(default_factory=dict)

    @property
    def id(self) -> str:
        """The collection's own id (the subject of what is told about the whole of it)."""
        return self.store.collection_id

    def people(self) -> Registry:
        """Everyone in the registry, by id."""
        if self._people_at != self.store.people_version:
            self._people_at = self.store.people_version
            self._people = build_registry(self.store.people())
        return self._people

    def while_unchanged(self, what: str, work_out: Callable[[], Worth]) -> Worth:
        """What is worked out of all records, kept under a name for as long as nothing is written.

        Only for what follows from the database alone: no day, no setting, no file.
        """
        version = self.store.version
        kept = self._worked_out.get(what)
        if kept is None or kept[0] != version:
            kept = self._worked_out[what] = version, work_out()
        return cast(Worth, kept[1])

    def registered_scans(self) -> RegisteredScans:
        """Where the scans lie that the collection has."""
        return registered_scans(self.folder, (facts.path for _, facts in self.store.scans()))

    def back_up_before(self, step: str) -> None:
        """Make a backup before a step of the kinds that `tasks.collection.backups` names; a refusal is no fault."""
        self.back_up(f"before {step}")

    def back_up(self, why: str) -> None:
        """Make a backup if something was told since the last one."""
        if self.store.writable and (words := keep(self.store, why, self.clock.now(), self.settings.backups_mb)):
            self.unsaid.append(words)

    def act(self, what: str) -> "Act":
        """A new act: rows that are made, and undone, together."""
        return Act(self, self.clock.new_id(), what)


@dataclass(slots=True)
class Act:
    """Gathers the rows of one action; `done` writes them in one transaction, safe when it returns."""

    collection: Collection
    id: str
    what: str
    statements: list[Statement] = field(default_factory=list)
    readings: list[tuple[str, Reading]] = field(default_factory=list)
    clears: list[tuple[str, str, str]] = field(default_factory=list)
    _index: ActIndex | None = None

    @property
    def index(self) -> ActIndex:
        """What was gathered so far, by thing and by statement."""
        index = self._index
        if index is None or index.statements is not self.statements or index.readings is not self.readings:
            index = self._index = ActIndex(self.statements, self.readings)
        return index

    def state(self, subject: Subject, name: str, words: str, **more: object) -> Statement:
        """Add one statement; `more` are further attributes of `Statement`. Raises WrongUse for what no log may take."""
        clock = self.collection.clock
        statement = Statement(
            id=clock.new_id(),
            act=self.id,
            subject=subject,
            field=name,
            words=words,
            recorded_at=clock.now(),
            by=self.collection.by,
            **more,  # type: ignore[arg-type]  # the guard checks what they hold
        )
        self.statements.append(checked(statement))
        return statement

    def again(self, statement: Statement, subject: Subject) -> Statement:
        """Say the same of another thing, in place of the statement that was made of the first."""
        clock = self.collection.clock
        moved = replace(
            statement,
            id=clock.new_id(),
            act=self.id,
            subject=subject,
            language=language_tag(statement.language),  # an older log took what is no tag
            recorded_at=clock.now(),
            by=self.collection.by,
            replaces=statement.id,
        )
        self.statements.append(checked(moved))
        return moved

    def new(self, kind: Kind) -> Subject:
        """A new thing of that kind, with its id for life."""
        return Subject(kind, self.collection.clock.new_id())

    def done(self) -> None:
        """Write what was gathered, if anything was."""
        if self.statements or self.readings or self.clears:
            self.collection.store.write(
                Change(
                    act=self.id,
                    what=self.what,
                    by=self.collection.by,
                    recorded_at=self.collection.clock.now(),
                    statements=tuple(self.statements),
                    readings=tuple(self.readings),
                    clears_drafts=tuple(self.clears),
                )
            )


READER = "5"
"""The reader of what files say (`embedded_metadata`): one more whenever it reads more of a file."""

READ_BY = "files read by"
"""The name of the note which reader has read the files of scans, and of which scans (ids) it could not."""


def start(folder: Path, settings: Settings, *, on_day: date | None = None, ident: str = "") -> None:
    """Make a new collection in `folder`, with a new id or `ident`. Raises WrongUse if one is there already."""
    _check_no_collection(folder)
    check_settings(settings)
    _check_untouched(folder, as_toml(settings).encode())
    write_whole(folder / FILE_NAME, as_toml(settings).encode())
    for name in FOLDERS:
        (folder / name).mkdir(parents=True, exist_ok=True)
    with create(folder, clock=Clock(on_day=on_day, right_on=settings.clock_right_on), ident=ident) as store:
        store.set_meta(READ_BY, READER)


def _check_no_collection(folder: Path) -> None:
    """Raises WrongUse where a collection, or its backups, lie in the folder."""
    if has_collection(folder):
        raise WrongUse(f"{folder} already holds a collection.", "Open it, or choose another folder.")
    if has_backups(folder):
        raise WrongUse(f"{folder} holds the backups of a collection. {way_back(folder)}", "Or choose another folder.")


def check_new_folder(folder: Path) -> None:
    """Raises WrongUse, CouldNot where no collection can be made in the folder; it leaves nothing there."""
    _check_no_collection(folder)
    if folder.exists() and not folder.is_dir():
        raise WrongUse(f"{folder} is a file.", "Choose a folder.")
    missing = [path for path in (folder, *folder.parents) if not path.exists()]
    try:
        folder.mkdir(parents=True, exist_ok=True)
        with TemporaryDirectory(dir=folder):
            pass
    except OSError as error:
        raise CouldNot(f"Nothing can be written in {folder}: {in_words(error)}.", "Choose another folder.") from error
    finally:
        for path in missing:
            with suppress(OSError):
                path.rmdir()


def _check_untouched(folder: Path, settings: bytes) -> None:
    """Raises WrongUse where something of somebody else's lies at a place that a new collection takes.

    Its own settings may lie there, left by a start that was interrupted.
    """
    path = folder / FILE_NAME
    if os.path.lexists(path) and not (path.is_file() and not path.is_symlink() and path.read_bytes() == settings):
        raise WrongUse(
            f"{path} is there already, and is not of this collection.",
            "Move it out of the folder, or choose another folder.",
        )
    for name in FOLDERS:
        if os.path.lexists(folder / name) and not (folder / name).is_dir():
            raise WrongUse(f"{folder / name} is a file.", "Move it out of the folder, or choose another folder.")


def is_of_collection(folder: Path, path: Path) -> bool:
    """Whether a file is one that the collection in `folder` makes for itself."""
    try:
        first = path.resolve().relative_to(folder.resolve()).parts[:1]
    except ValueError:
        return False
    return any(part in (FILE_NAME, *FOLDERS) or part.startswith(DATABASE) for part in first)


def files_beside(folder: Path) -> int:
    """How many files lie in a folder where a collection is wanted, hidden ones aside; 0 for one that is not there."""
    try:
        with os.scandir(folder) as entries:
            return sum(entry.is_file() and not entry.name.startswith(".") for entry in entries)
    except OSError:
        return 0


def has_collection(folder: Path) -> bool:
    """Whether there is a collection in the folder."""
    return (folder / DATABASE).is_file()


def check_ahead(folder: Path) -> None:
    """Begin to check the database of the collection that is opened next, beside what is loaded meanwhile."""
    database_file.check_ahead(folder / DATABASE)


STRIKE_WAITS = (
    "A strike waits to be finished: traces of the words may still be in the database and the backups. The next command "
    "that writes, such as boxlore tell, or a sitting, finishes it."
)


@contextmanager
def open_collection(
    folder: Path, *, write: bool = True, fallback_read_only: bool = False, on_day: date | None = None
) -> Iterator[Collection]:
    """Open the collection in `folder`. Raises CouldNot if there is none, or if it is written to elsewhere.

    On closing a backup is made, and what was left unsaid is logged as a warning.
    """
    if not has_collection(folder):
        if has_backups(folder):
            raise CouldNot(f"There is no {folder / DATABASE}, but there are backups of it.", way_back(folder))
        raise CouldNot(
            f"There is no collection in {folder}.",
            "Make one with: boxlore new FOLDER. Or name it with -c FOLDER.",
        )
    settings = read_settings(folder)
    store = open_store(folder, write=write, fallback_read_only=fallback_read_only)
    with store:
        clock = Clock(store.last_time(), on_day, settings.clock_right_on)
        collection = Collection(folder, settings, store, clock, _who())
        if lost := lost_settings(folder):
            collection.unsaid.append(lost)
        if not store.writable and is_pending(store.db):
            collection.unsaid.append(STRIKE_WAITS)
        if fault := clock.fault():
            collection.unsaid.append(fault)
        try:
            yield collection
        finally:
            _close(collection)


def _close(collection: Collection) -> None:
    if not isinstance(sys.exception(), KeyboardInterrupt):  # then nobody wants to wait; the next closing makes it
        collection.back_up(CLOSING)
    for words in dict.fromkeys(collection.unsaid):
        _log.warning(words)


def _who() -> str:
    try:
        return getpass.getuser()
    except (OSError, KeyError):
        return "keeper"
