"""Strike: one statement, or everything that holds some words, taken out for good."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.records.containers import looks_like_number
from boxlore.core.statements import Kind, Subject
from boxlore.store.backups import FOLDER
from boxlore.store.strike import StrikeReport, finish, pending, strike
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.people.registry import find_person

BEYOND = (
    "Boxlore cannot reach copies on other disks or in other people's hands, backups that others made, "
    "or the spare blocks of this disk."
)

COMPRESSED = (".pdf", ".zip", ".gz", ".xz", ".7z", ".docx", ".xlsx", ".odt", ".ods", ".epub")


@dataclass(frozen=True, slots=True)
class Target:
    """One statement that would be struck."""

    statement: str
    field: str
    words: str


def meant(collection: Collection, text: str, field: str) -> list[Subject]:
    """The item, or the person with all entries that were merged, whose field is to be struck. Raises WrongUse."""
    if field not in FIELDS:
        raise WrongUse(f"There is no field “{field[:40]}”.", "boxlore show and boxlore people show name the fields.")
    kinds = FIELDS[field].kinds
    if looks_like_number(text) or Kind.PERSON not in kinds:
        return [find_item(collection, text)]
    if Kind.ITEM in kinds and "/" in text:
        return [find_item(collection, text)]
    return [Subject(Kind.PERSON, ident) for ident in find_person(collection, text).ids]


def targets(collection: Collection, subjects: Iterable[Subject], field: str, words: str = "") -> list[Target]:
    """The statements of a field of an item or person, only those that hold `words` where some are given."""
    matches = [
        Target(statement.id, statement.field, statement.words)
        for subject in subjects
        for statement, _ in collection.store.statements(subject)
        if statement.field == field and words.casefold() in statement.words.casefold()
    ]
    if not matches:
        raise WrongUse(
            f"There is no such {field} to strike.", "boxlore show and boxlore people show list what is told."
        )
    return matches


def strike_out(
    collection: Collection,
    statements: list[str],
    *,
    waiting: Callable[[str], None] = lambda why: None,
    stopped: Callable[[], bool] = lambda: False,
) -> StrikeReport:
    """Strike these statements; waits for other readers until `stopped`."""
    collection.back_up_before("striking")
    by, now = collection.by, collection.clock.now()
    return strike(collection.store, statements, by=by, now=now, waiting=waiting, stopped=stopped)


def finish_pending(collection: Collection) -> bool:
    """Finish a strike that waited for another program, if there is one and it can be. True if none is left."""
    if not collection.store.writable or not pending(collection.store):
        return True
    return finish(collection.store, lambda why: None, lambda: True)


def carriers(collection: Collection, report: StrikeReport) -> list[str]:
    """Files of the collection's folder that still carry the words, relative to it."""
    return [Path(path).relative_to(collection.folder).as_posix() for path in report.left_in]


def is_backup(path: str) -> bool:
    """Whether one of the `carriers` is a backup: one that is damaged, for every other is struck as well."""
    return path.startswith(f"{FOLDER}/")


def not_searched(collection: Collection) -> list[str]:
    """Files of the folder that hold their words compressed, where a search of bytes does not see them."""
    paths = sorted(path for path in collection.folder.rglob("*") if path.suffix.lower() in COMPRESSED)
    return [path.relative_to(collection.folder).as_posix() for path in paths if path.is_file()]
