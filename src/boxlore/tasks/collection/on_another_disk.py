"""The whole collection copied into a folder on another disk: all that is told, the scans, and what lies beside them.

The database is copied first, as it is at this moment; then file by file, each read again before it takes its name. A
second run copies what is new or changed. What is in the copy and no longer here stays there and is counted. The scans
that are registered where they lie outside the collection's folder are not copied; they are named.
"""

import os
import shutil
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.core.errors import BoxloreError, CouldNot, WrongUse
from boxlore.disk.digests import copy_proved, sha256_of
from boxlore.disk.unfinished import PART
from boxlore.disk.writing import could_not
from boxlore.store import copying
from boxlore.store.copy_elsewhere import put_copy
from boxlore.store.locking import LOCK_NAME
from boxlore.tasks.collection.opening import DATABASE, Collection, has_collection
from boxlore.tasks.collection.progress import Progress

_IN_THE_MAKING = Path(DATABASE).with_suffix(copying.PART).name
_OF_THE_DATABASE = {LOCK_NAME, *(name + end for name in (DATABASE, _IN_THE_MAKING) for end in ("", *copying.BESIDE))}
"""What the database is called, its lock, a copy of it in the making, and what SQLite keeps beside these."""

TIME_STEP = 2.0
"""Seconds: two files of one size whose times differ by no more are taken for one. FAT, of most sticks, keeps times in
such steps (Microsoft's FAT specification, from memory), and nothing is to be copied anew for that."""


@dataclass(slots=True)
class CopiedAway:
    """How many files were copied where, and how many lay there already; what could not be, and why (sentences).

    `outside` are the paths of scans that lie elsewhere, `further` the files of an earlier copy that are no longer here.
    """

    folder: Path
    copied: int = 0
    same: int = 0
    faults: list[str] = field(default_factory=list)
    outside: list[str] = field(default_factory=list)
    further: int = 0
    on_same_disk: bool = False
    stopped: bool = False


def copy_away(collection: Collection, into: Path, progress: Progress) -> CopiedAway:
    """Copy the collection into a folder of its own name in `into`, or into `into` where that is a copy of it.

    Raises WrongUse where it cannot stand there or would take the place of other files, CouldNot where the disk refuses
    the database or has no room for all.
    """
    home = collection.folder.resolve()
    try:
        folder = _where(home, into)
        wanted = [(source, folder / source.relative_to(home)) for source in _files(home)]
        missing = [pair for pair in wanted if not _is_same(*pair)]
        if not has_collection(folder) and any(target.exists() for _, target in missing):
            raise WrongUse(f"{folder} holds other files, and no copy of this collection.", "Choose another folder.")
        size = sum(source.stat().st_size for source, _ in missing) + (home / DATABASE).stat().st_size
        folder.mkdir(parents=True, exist_ok=True)
        free = shutil.disk_usage(folder).free
        result = CopiedAway(folder, on_same_disk=folder.stat().st_dev == home.stat().st_dev)
    except OSError as error:
        raise could_not(error, into) from error
    if size > free:
        raise CouldNot(
            f"{_megabytes(size)} are wanted, and the disk of {folder} has {_megabytes(free)} free.",
            "Free some space there, or choose another disk.",
        )
    put_copy(collection.store.db, folder / DATABASE)
    result.same = len(wanted) - len(missing)
    as_taken_in = {Path(os.path.normpath(home / facts.path)): facts.sha256 for _, facts in collection.store.scans()}
    result.outside = [str(scan) for scan in as_taken_in if not scan.is_relative_to(home)]
    progress.begin("Copying", len(missing))
    _copy(missing, as_taken_in, result, progress)
    result.further = len(set(_files(folder)) - {target for _, target in wanted})
    return result


def _where(home: Path, into: Path) -> Path:
    """The folder of the copy. Raises WrongUse for one in the collection, around it, or that is another collection."""
    around = into.resolve()
    folder = around if has_collection(around) else around / home.name
    if folder == home or folder.is_relative_to(home) or home.is_relative_to(folder):
        raise WrongUse(f"{into} is the collection itself, or in it.", "Choose a folder on another disk.")
    return folder


def _files(folder: Path) -> Iterator[Path]:
    """All files in a folder but for the database's own and those in the making; a link to a folder is not followed."""
    for place, folders, names in os.walk(folder):
        folders[:] = [name for name in folders if not name.endswith(PART)]
        for name in names:
            own = Path(place) == folder and name in _OF_THE_DATABASE
            if not own and not name.endswith(PART) and (Path(place) / name).is_file():
                yield Path(place) / name


def _is_same(source: Path, target: Path) -> bool:
    if not target.is_file() or target.is_symlink():
        return False
    here, there = source.stat(), target.stat()
    return here.st_size == there.st_size and abs(here.st_mtime - there.st_mtime) <= TIME_STEP


def _copy(
    missing: list[tuple[Path, Path]], as_taken_in: dict[Path, str], result: CopiedAway, progress: Progress
) -> None:
    for source, target in missing:
        if progress.stopped():
            result.stopped = True
            return
        try:
            _copy_one(source, target, as_taken_in.get(source, ""), result)
            result.copied += 1
        except BoxloreError as error:
            result.faults.append(str(error))
            if isinstance(error, CouldNot) and error.everywhere:
                return
        progress.step()


def _copy_one(source: Path, target: Path, as_taken_in: str, result: CopiedAway) -> None:
    now = sha256_of(source)
    if as_taken_in and now != as_taken_in:
        result.faults.append(f"{source} is not as it was at its intake; it was copied as it is.")
    copy_proved(source, target, now)
    try:
        stat = source.stat()
        os.utime(target, ns=(stat.st_atime_ns, stat.st_mtime_ns))
    except OSError as error:
        raise could_not(error, target) from error


def _megabytes(size: int) -> str:
    return f"{size / 1_000_000:,.0f} MB"
