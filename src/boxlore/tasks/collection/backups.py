"""When a backup is made, and how one is brought back.

A backup of the database is made where something was told since the last one:

- on closing, when nobody types any more;
- before a step that one undo does not take back whole, or that writes many rows at once (what a file says, a plan of
  moves). Such a task begins with `collection.back_up_before("merging people")`. The words name the step and nothing
  that was told: they stand in a file name.

Newer tables, and bringing a backup back, see to it themselves (`store/database_file.py`, `store/restoring.py`). A disk
that refuses costs the backup and nothing else: the task goes on, and the sentence is said on closing.
"""

from dataclasses import dataclass
from itertools import takewhile
from pathlib import Path

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.store import backups
from boxlore.store.backups import FOLDER, Backup, Holdings
from boxlore.store.opening import Store, open_store
from boxlore.store.restoring import BroughtBack, bring_back, is_whole
from boxlore.tasks.collection.clock import Clock

MEGABYTE = 1_000_000
_NAMED = 5
"""How many damaged backups a sentence names."""
CLOSING = "on closing"


def keep(store: Store, why: str, now: str, megabytes: int) -> str:
    """Make a backup if the newest one holds less than the collection, and let the older ones roll.

    Returns what went wrong, in a sentence, or nothing.
    """
    try:
        if not backups.is_kept(store):
            backups.back_up(store, why, now)
            backups.roll(store.folder, now, megabytes * MEGABYTE)
    except CouldNot as error:
        return str(error)
    return ""


def is_kept(store: Store) -> bool:
    """Whether the newest backup holds all that is told."""
    return backups.is_kept(store)


@dataclass(frozen=True, slots=True)
class ListedBackup:
    """One backup, with what it holds (None where it cannot be read)."""

    backup: Backup
    holds: Holdings | None

    @property
    def name(self) -> str:
        """What it is asked for by."""
        return self.backup.path.stem

    @property
    def contents(self) -> str:
        """`25 items, 840 statements`, or that it cannot be read."""
        return _contents(self.holds) if self.holds else "cannot be read"


def list_backups(folder: Path) -> list[ListedBackup]:
    """The backups of the collection in `folder`, the newest first. The collection need not be there."""
    return [ListedBackup(backup, backups.holdings(backup)) for backup in backups.listed(folder)]


def has_backups(folder: Path) -> bool:
    """Whether there is a backup that can be read."""
    return backups.has_some(folder)


def find_backup(folder: Path, text: str) -> ListedBackup:
    """The backup whose name begins so, or the `newest` that is whole. Raises WrongUse with what there is, and CouldNot
    where all are damaged.
    """
    listed = list_backups(folder)
    if not listed:
        raise WrongUse(f"There are no backups in {folder / FOLDER}.", "Name the collection with -c FOLDER.")
    wanted = text.strip().removesuffix(".sqlite")
    if wanted == "newest":
        return _newest_whole(folder, listed)
    named = _beginning(listed, wanted)
    if len(named) != 1:
        what = "No backup is called" if not named else f"{len(named)} backups are called"
        raise WrongUse(f"{what} “{text[:40]}”.", "boxlore restore lists them; the beginning of a name is enough.")
    if named[0].holds is None:
        raise WrongUse(f"{named[0].name} cannot be read.", "Take another one; boxlore restore lists them.")
    return named[0]


def passed_over(folder: Path, chosen: ListedBackup) -> list[str]:
    """The names of the backups that are newer than this one."""
    return [entry.name for entry in takewhile(lambda entry: entry.name != chosen.name, list_backups(folder))]


def _newest_whole(folder: Path, listed: list[ListedBackup]) -> ListedBackup:
    for entry in listed:
        if entry.holds and is_whole(entry.backup.path):
            return entry
    names = ", ".join(entry.name for entry in listed[:_NAMED])
    more = f" and {len(listed) - _NAMED} more" if len(listed) > _NAMED else ""
    raise CouldNot(
        f"None of the backups in {folder / FOLDER} can be brought back, for all are damaged: {names}{more}.",
        "Nothing was changed: leave them and the database as they are. Copy an older backup from another disk into "
        "that folder and try again; a transfer makes a collection anew: boxlore new FOLDER --from TRANSFER.",
    )


def _beginning(listed: list[ListedBackup], wanted: str) -> list[ListedBackup]:
    whole = [entry for entry in listed if entry.name == wanted]
    return whole or [entry for entry in listed if wanted and entry.name.startswith(wanted)]


def restore(folder: Path, backup: Path) -> BroughtBack:
    """Make a backup the collection's database; the one that is there becomes a backup itself. Raises CouldNot.

    It is opened once, so that newer tables, and a strike that came after it, are seen to at once.
    """
    brought = bring_back(folder, backup, Clock().now())
    open_store(folder).close()
    return brought


def said(brought: BroughtBack, chosen: ListedBackup) -> list[str]:
    """What came of it, in sentences."""
    lines = [f"The backup of {chosen.backup.day} is back: {_contents(brought.holds)}."]
    if brought.kept is not None:
        lines.append(f"What was there before is kept in {brought.kept}.")
    if more := brought.lost_statements:
        lines.append(
            f"That was damaged, and {_counted(more, 'statement')} told since the backup {'is' if more == 1 else 'are'} "
            "in it alone: tell them again, or have somebody who knows SQLite look into it."
        )
    if brought.struck:
        lines.append(f"Struck since that day, and taken out of it again: {_counted(brought.struck, 'statement')}.")
    if brought.only_before:
        first, last = brought.only_before[0], brought.only_before[-1]
        since = first if first == last else f"{first} to {last}"
        lines.append(
            f"Not in it: {_counted(len(brought.only_before), 'item')} taken in since ({since}). Their scans can be "
            "taken in again, under new numbers."
        )
    return lines


def _contents(holds: Holdings) -> str:
    return f"{_counted(holds.items, 'item')}, {_counted(holds.statements, 'statement')}"


def _counted(count: int, noun: str) -> str:
    return f"{count} {noun}" if count == 1 else f"{count} {noun}s"
