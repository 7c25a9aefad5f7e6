"""Folders in which a long task makes an output, and how those of a killed run are found wherever they lie.

How they are made and held is told in `disk.unfinished`. Where one lies is noted, while it is there, in
`unfinished.txt` in the collection's folder, one path a line. So the next such task removes what a killed one left,
also in another folder or on another disk, and `verify` names it until then. Where the note cannot be written (a
collection on a disc), a folder that was left is still found beside its own target, by the next run with that target.
"""

import os
from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.disk.unfinished import PART, clear, is_worked_at, remains, unfinished_folder
from boxlore.disk.writing import could_not, write_whole
from boxlore.tasks.collection.opening import has_collection
from boxlore.tasks.collection.output_paths import UNFINISHED as LIST_NAME


@contextmanager
def work_folder(home: Path, target: Path) -> Iterator[Path]:
    """A new empty folder beside `target` to make it in, removed at the end; first what killed runs left is removed.

    `home` is the collection's folder. Folders that were made for it alone, and are empty at the end, go too. Raises
    CouldNot when the disk refuses.
    """
    _sweep(home)
    missing = [folder for folder in target.absolute().parents if not folder.exists()]
    try:
        with unfinished_folder(target) as folder:
            _note(home, folder)
            try:
                yield folder
            finally:
                _write(home, [path for path in _listed(home) if path != folder.absolute()])
    except OSError as error:
        raise could_not(error, Path(error.filename or target)) from error
    finally:
        for folder in missing:
            with suppress(OSError):  # it holds something, or was not made
                folder.rmdir()


def left_findings(home: Path, *others: Path) -> list[Finding]:
    """A finding for each thing that a killed run left below the collection's folder, below `others`, or where noted."""
    noted = [path for path in _listed(home) if os.path.lexists(path) and not is_worked_at(path)]
    below = [path.absolute() for folder in (home, *others) for path in remains(folder)]
    return [_finding(path) for path in dict.fromkeys((*below, *noted))]


def _finding(path: Path) -> Finding:
    words = f"A run that was broken off left {path}. It may hold what is closed to others: keep it to yourself."
    what_to_do = "The next run of the same command removes it; or delete it."
    return make_finding("unfinished.left", Severity.ERROR, f"{words} {what_to_do}", "our own rule: disk.unfinished")


def _sweep(home: Path) -> None:
    """Remove what is noted and nobody works at; what lies on a disk that is not plugged in stays noted."""
    noted = _listed(home)
    stays = [path for path in noted if not (clear(path) and path.parent.is_dir())]
    if stays != noted:
        _write(home, stays)


def _listed(home: Path) -> list[Path]:
    """The paths noted. A line that is no unfinished work of ours, as a hand may write it, is never touched."""
    with suppress(OSError):
        lines = (home / LIST_NAME).read_bytes().splitlines()
        return [path for path in map(Path, map(os.fsdecode, lines)) if path.name.endswith(PART) and path.is_absolute()]
    return []


def _note(home: Path, folder: Path) -> None:
    if has_collection(home):
        _write(home, [*_listed(home), folder.absolute()])


def _write(home: Path, paths: Iterable[Path]) -> None:
    data = b"".join(os.fsencode(path) + b"\n" for path in paths)
    with suppress(CouldNot, OSError):  # the folder in the making is found beside its target then
        if data:
            write_whole(home / LIST_NAME, data)
        else:
            (home / LIST_NAME).unlink(missing_ok=True)
