"""Where an output may be written: never among what a collection keeps, over no scan, and over nothing not ours.

An output is ours if its bytes are, to the byte, ones that Boxlore wrote. Their SHA-256 stand one a line in
`outputs.sha256` in the collection's folder: no name and no word of anyone, and a file that somebody has written into
since is not taken for ours. Each line is written before its file takes its name, so that a killed run leaves at most
a line too many. Where the list cannot be written, the next run asks for `--over`.
"""

import hashlib
import os
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.disk.digests import sha256_of
from boxlore.disk.writing import could_not, write_whole
from boxlore.store.backup_sums import LIST_NAME as BACKUP_SUMS
from boxlore.tasks.collection.opening import DATABASE, FOLDERS, has_collection, open_collection
from boxlore.tasks.collection.registered import RegisteredScans
from boxlore.tasks.collection.settings import FILE_NAME as SETTINGS_NAME

LIST_NAME = "outputs.sha256"
UNFINISHED = "unfinished.txt"
"""Where the folders in the making are noted (see `tasks.collection.unfinished`)."""

COPIES_LIST, PAGES_LIST, OFFER_LIST = "contents.csv", "our-files.txt", "offer.csv"
"""What lists, in a folder of copies, of pages or of an offer, what was made there."""

NAMES_FOUND, NAMES_LEFT = "names-found.csv", "names-left.csv"
"""Tables that Boxlore writes into the collection's folder for the keeper to answer."""

ASKED_BY_AN_UPDATE = "An archive is asked by an update of the transfer (boxlore transfer --update EARLIER)."
"""How words and pictures come back from whoever holds a transfer."""

OWN_FILES = (
    *(SETTINGS_NAME, "prompts.toml", "places.tsv", "archive.toml"),  # the keeper's
    *(NAMES_FOUND, NAMES_LEFT),  # both write into them
    *(LIST_NAME, UNFINISHED, BACKUP_SUMS),  # Boxlore's
)
"""Every file of a collection besides its database (and what lies beside that: -wal, -shm, the lock). No output takes
such a name, as a file or as a folder, also where no such file is yet."""

_OWN_STEM = DATABASE.partition(".")[0] + "."


class Outputs(Protocol):
    """What writing an output asks for; an open collection has it."""

    folder: Path
    over: bool

    def registered_scans(self) -> RegisteredScans: ...


@dataclass(slots=True)
class Unopened:
    """A folder in which no collection need be open, for an output that is made of a file alone."""

    folder: Path
    over: bool = False

    def registered_scans(self) -> RegisteredScans:
        """The scans of the collection that the folder holds, if it holds one."""
        if not has_collection(self.folder):
            return RegisteredScans({})
        with open_collection(self.folder, write=False) as collection:
            return collection.registered_scans()


def write_output(outputs: Outputs, out: Path, data: bytes) -> bool:
    """Write an output whole. Returns whether it was written: not if the file holds exactly that already.

    Raises WrongUse as `check_output` does, CouldNot when the disk refuses.
    """
    check_output(outputs, out, data)
    return _write(outputs, out, data)


def _write(outputs: Outputs, out: Path, data: bytes) -> bool:
    if not _is_listed(outputs.folder, digest := hashlib.sha256(data).hexdigest()):
        _note(outputs.folder, digest)
    return write_whole(out, data)


def write_own(outputs: Outputs, name: str, data: bytes) -> Path:
    """Write one of the collection's OWN_FILES, for the task whose file it is. Returns where it lies.

    Raises as `write_output` does, but that the name is the collection's own is no reason.
    """
    path = outputs.folder / name
    outputs.registered_scans().check(path)
    _check_free(outputs, path, data)
    _write(outputs, path, data)
    return path


def check_output(outputs: Outputs, out: Path, data: bytes | None = None) -> None:
    """Raises WrongUse if nothing of ours may be written to the file `out`, and says what to do.

    So a long task learns it before its work. A file that holds exactly `data` is never in the way.
    """
    check_place(outputs, out)
    _check_free(outputs, out, data)


def _check_free(outputs: Outputs, out: Path, data: bytes | None = None) -> None:
    if out.is_symlink():
        raise WrongUse(f"{out} is a link, and Boxlore does not write through links.", "Choose another name.")
    if out.is_dir():
        raise WrongUse(f"{out} is a folder.", "Choose the name of a file.")
    if outputs.over or not os.path.lexists(out):
        return
    if not out.is_file():
        raise WrongUse(f"{out} is no plain file.", "Choose another name.")
    if data is not None and out.stat().st_size == len(data) and out.read_bytes() == data:
        return
    if not _is_listed(outputs.folder, sha256_of(out)):
        raise foreign(out)


def is_as_written(outputs: Outputs, out: Path) -> bool:
    """Whether a plain file lies there that Boxlore wrote and nobody has changed since."""
    return out.is_file() and not out.is_symlink() and _is_listed(outputs.folder, sha256_of(out))


def all_written(folder: Path) -> frozenset[str]:
    """The SHA-256 of everything that was written as an output, for a task that asks about many files."""
    return _listed(folder)


def note_outputs(folder: Path, digests: Iterable[str]) -> None:
    """Note the SHA-256 of files that are about to take their names, for a task that puts many there by itself."""
    _note(folder, *sorted(set(digests) - _listed(folder)))


def was_written(outputs: Outputs, digest: str) -> bool:
    """Whether a file with this SHA-256 was written as an output."""
    return _is_listed(outputs.folder, digest)


def check_pdf(outputs: Outputs, out: Path) -> None:
    """As `check_output`, and raises WrongUse for a name that would hide that the file is a PDF."""
    check_place(outputs, out)
    if out.suffix.casefold() != ".pdf":
        raise WrongUse(f"{out.name} would be a PDF.", f"Call it {out.stem or 'sheet'}.pdf.")
    _check_free(outputs, out)


def foreign(out: Path) -> WrongUse:
    """The error for a file or folder in the way that is not as Boxlore wrote it."""
    return WrongUse(
        f"{out} is not something that Boxlore wrote, or was changed since.",
        "Choose another name or folder, or move it away; or, at the shell, add --over to replace it.",
    )


def check_place(outputs: Outputs, out: Path) -> None:
    """Raises WrongUse if `out` is a scan of this collection, one of a collection's own files or folders, or lies in
    such a folder.

    Of the files and folders that holds for any collection, not only for the one that is open.
    """
    try:
        path = out.parent.resolve() / out.name if out.name else out.resolve()
        placed = {path, out.resolve()}
    except (OSError, RuntimeError) as error:  # a link that leads to itself
        raise CouldNot(f"{out} leads nowhere.", "Choose another name.") from error
    for target in placed:
        for home in target.parents:
            if has_collection(home):
                _check_inside(out, target.relative_to(home).parts)
    outputs.registered_scans().check(out)


def _check_inside(out: Path, parts: tuple[str, ...]) -> None:
    first = parts[0].casefold()
    if first in FOLDERS:
        raise WrongUse(
            f"{out} is in {parts[0]}, where a collection keeps what cannot be made again.",
            "Choose another folder, such as print.",
        )
    if first in OWN_FILES or first.startswith(_OWN_STEM):
        raise WrongUse(
            f"{parts[0]} is one of the collection's own files, and no output takes its name, also not with --over.",
            "Choose another name.",
        )


def _is_listed(folder: Path, digest: str) -> bool:
    return digest in _listed(folder)


def _listed(folder: Path) -> frozenset[str]:
    try:
        return frozenset((folder / LIST_NAME).read_text(encoding="ascii", errors="replace").split())
    except FileNotFoundError:
        return frozenset()
    except OSError as error:
        raise could_not(error, folder / LIST_NAME) from error


def _note(folder: Path, *digests: str) -> None:
    if not digests or not has_collection(folder):  # a logger's file can be judged without a collection
        return
    flags = os.O_WRONLY | os.O_APPEND | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0)
    with suppress(OSError):
        handle = os.open(folder / LIST_NAME, flags, 0o666)
        with open(handle, "ab") as out:
            out.write("".join(f"{digest}\n" for digest in digests).encode())
            out.flush()
            os.fsync(out.fileno())
