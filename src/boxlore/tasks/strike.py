"""Strike: one statement, or everything that holds some words, taken out for good."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.statements import Subject
from boxlore.store.strike import StrikeReport, finish, pending, strike
from boxlore.tasks.opening import Collection

BEYOND = (
    "Boxlore cannot reach copies on other disks or in other people's hands, backups that others made, "
    "or the spare blocks of this disk."
)


@dataclass(frozen=True, slots=True)
class Target:
    """One statement that would be struck."""

    statement: str
    field: str
    words: str


def targets(collection: Collection, item: Subject, field: str, words: str = "") -> list[Target]:
    """The statements of a field of an item, only those that hold `words` where some are given."""
    found = [
        Target(one.id, one.field, one.words)
        for one, _ in collection.store.statements(item)
        if one.field == field and words.casefold() in one.words.casefold()
    ]
    if not found:
        raise WrongUse(f"There is no such {field} to strike.", "boxlore show ITEM lists what is told.")
    return found


def strike_out(
    collection: Collection,
    statements: list[str],
    *,
    waiting: Callable[[str], None] = lambda why: None,
    stopped: Callable[[], bool] = lambda: False,
) -> StrikeReport:
    """Strike these statements; waits for other readers until `stopped`."""
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
