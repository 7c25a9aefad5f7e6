"""Unfinished work: what it is called while it is made, and how what a killed run left is told apart and removed.

What always holds:

- A file or folder in the making lies beside its target, under the target's name with PART behind it. So unfinished
  work never leaves the folder that the keeper chose, and nothing else of ours ends in PART.
- Whoever makes it holds it with a lock of the operating system (flock(2)), which the system frees however the program
  ends. So one with PART behind its name that nobody holds is what a killed run left, and may go.
- A second run at the same time is not hindered: it takes the next free name, `-2`, `-3` before PART.

On Windows no lock is needed for a file, since one that is open cannot be removed; a folder in the making counts there
as left, and so does everything on a disk without locks.
"""

import errno
import os
import shutil
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from itertools import count
from pathlib import Path

PART = ".boxlore-part"
"""Ends the name of a file or folder in the making."""

_NO_LOCKS = {errno.ENOLCK, errno.ENOTSUP, errno.EOPNOTSUPP, errno.EINVAL, errno.ENOSYS, errno.EBADF}
"""What flock(2) gives on a disk without locks; EBADF is from network folders opened for reading."""


def lock(handle: int) -> None:
    """Lock an open file, or a folder, without waiting. Raises OSError where it is locked already."""
    if sys.platform == "win32":
        import msvcrt

        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)


@contextmanager
def unfinished_file(target: Path) -> Iterator[Path]:
    """A new empty file in the making beside `target`, held; what is left of it at the end is removed.

    Whoever uses it writes to it, closes it, and renames it to `target` when it is whole. Raises OSError.
    """
    with _held(target, _new_file) as part:
        yield part


@contextmanager
def unfinished_folder(target: Path) -> Iterator[Path]:
    """A new empty folder in the making beside `target`, held; what is left of it at the end is removed.

    Whoever uses it renames what is in it, or the folder itself, when it is whole. Raises OSError.
    """
    target = target.resolve()  # `.` has no name
    target.parent.mkdir(parents=True, exist_ok=True)
    with _held(target, _new_folder) as part:
        yield part


def _new_file(part: Path) -> int:
    handle = os.open(part, os.O_RDWR | os.O_CREAT | os.O_EXCL, 0o666)
    if sys.platform == "win32":  # where a handle of our own would hinder the renaming
        os.close(handle)
        return -1
    return handle


def _new_folder(part: Path) -> int:
    part.mkdir()
    return _opened(part)


def _opened(path: Path) -> int:
    """A handle to lock; -1 where the system has no such locks on files and folders."""
    return -1 if sys.platform == "win32" else os.open(path, os.O_RDONLY | os.O_NOFOLLOW)


@contextmanager
def _held(target: Path, make: Callable[[Path], int]) -> Iterator[Path]:
    part, handle = _claim(target, make)
    try:
        yield part
    finally:
        if _is_same(part, handle):  # else it has been renamed, and the name may be another run's by now
            _remove(part)
        if handle >= 0:
            os.close(handle)


def _claim(target: Path, make: Callable[[Path], int]) -> tuple[Path, int]:
    """The first name for unfinished work that is free, or that a killed run left; made, and held."""
    for number in count(1):
        part = target.with_name(f"{target.name}{f'-{number}' if number > 1 else ''}{PART}")
        if not clear(part):
            continue
        handle = make(part)
        if _is_held(handle) and _is_same(part, handle):
            return part, handle
        os.close(handle)  # another run took it for left in the moment before it was held
    raise AssertionError("the numbers have no end")


def _is_held(handle: int) -> bool:
    """Lock what was just opened. Whether it is ours now; where nothing can be locked, it is."""
    try:
        if handle >= 0:
            lock(handle)
    except OSError as error:
        return error.errno in _NO_LOCKS
    return True


def _is_same(part: Path, handle: int) -> bool:
    if handle < 0:
        return True
    with suppress(FileNotFoundError):
        return os.path.samestat(os.lstat(part), os.fstat(handle))
    return False


def clear(part: Path) -> bool:
    """Remove what a killed run left under this name. Whether nothing is there now: False while somebody works at it.

    A link is removed and not followed. Raises OSError where it cannot be removed.
    """
    if not os.path.lexists(part):
        return True
    if is_worked_at(part):
        return False
    _remove(part)
    return not os.path.lexists(part)


def is_worked_at(part: Path) -> bool:
    """Whether a program that is running now holds this unfinished work."""
    if part.is_symlink() or not (part.is_file() or part.is_dir()):
        return False
    with suppress(FileNotFoundError):
        handle = _opened(part)
        try:
            return not _is_held(handle)
        finally:
            if handle >= 0:
                os.close(handle)
    return False


def _remove(part: Path) -> None:
    if part.is_dir() and not part.is_symlink():
        shutil.rmtree(part, ignore_errors=True)
        return
    with suppress(OSError):
        part.unlink()


def remains(folder: Path) -> Iterator[Path]:
    """What killed runs left in the folder and in those inside it; nothing that is being worked at."""
    for inside, folders, files in os.walk(folder):
        for name in sorted(name for name in (*folders, *files) if name.endswith(PART)):
            if not is_worked_at(part := Path(inside, name)):
                yield part
        folders[:] = [name for name in folders if not name.endswith(PART)]


def clear_remains(folder: Path) -> None:
    """Remove what killed runs left in the folder and in those inside it."""
    for part in list(remains(folder)):
        clear(part)


def is_free(folder: Path) -> bool:
    """Whether a new output may be made as this folder: it is not there or is empty, once what was left is removed."""
    if not os.path.lexists(folder):
        return True
    return folder.is_dir() and not any(not path.name.endswith(PART) or not clear(path) for path in folder.iterdir())


def put_in_place(part: Path, folder: Path, last: str = "") -> None:
    """A folder that is whole becomes `folder`. Raises OSError.

    Where an empty folder is there already (it may be the one that somebody stands in), what is inside moves over one
    by one, and `last` after all the rest.
    """
    if not folder.exists():
        part.replace(folder.resolve())
        return
    for path in sorted(part.iterdir(), key=lambda each: (each.name == last, each.name)):
        path.replace(folder / path.name)
