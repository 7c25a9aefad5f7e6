"""The files that an intake is given: each is a picture to take, is refused with a reason, or is named as no picture."""

import os
import re
import stat
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.disk.picture_kinds import NOT_READ, RAW, head_of, is_a_picture
from boxlore.disk.writing import could_not

SUFFIXES = frozenset(
    ".jpg .jpeg .jpe .jfif .mpo .tif .tiff .png .webp .heic .heif .hif .avif .jp2 .j2k .jpx .gif .bmp .psd .pcx .pcd"
    " .ppm .pgm".split()
)
"""A file of these names is taken for a picture before it is opened."""


_RAW_FILE = f"It is {NOT_READ['.dng']}."


@dataclass(slots=True)
class GivenFiles:
    """`pictures` to take, `refused` as (path, why), and all other files by what they are: `not_pictures`."""

    pictures: list[Path] = field(default_factory=list)
    refused: list[tuple[Path, str]] = field(default_factory=list)
    not_pictures: dict[str, list[Path]] = field(default_factory=dict)

    @property
    def other_files(self) -> list[Path]:
        """The files that are no pictures."""
        return [path for paths in self.not_pictures.values() for path in paths]

    def leave_out(self, is_ours: Callable[[Path], bool]) -> None:
        """Name no file that is no picture where it is one of our own."""
        kept = {what: [path for path in paths if not is_ours(path)] for what, paths in self.not_pictures.items()}
        self.not_pictures = {what: paths for what, paths in kept.items() if paths}

    def pass_over(self, path: Path, what: str) -> None:
        """Note a file that is no picture; `what` it is, such as its suffix."""
        self.not_pictures.setdefault(what, []).append(path)


def in_utf_8(words: str) -> bool:
    """Whether a name can be kept as text. Python gives the bytes of a name that is not UTF-8 as half surrogates."""
    return all(not "\ud800" <= letter <= "\udfff" for letter in words)


def readable(path: Path | str) -> str:
    """A path, or words with one, to be read by a person. Of a name that is no UTF-8, as on an old disk, the letters are
    those of Windows-1252 where most of the word is ASCII, as in most languages of Europe; else U+FFFD."""
    return _WORD.sub(_in_letters, str(path))


_WORD = re.compile("[a-zA-Z\ud800-\udfff]*[\ud800-\udfff][a-zA-Z\ud800-\udfff]*")


def _in_letters(word: re.Match[str]) -> str:
    """The letters of a word with bytes that are no UTF-8 (PEP 383)."""
    unread = [letter for letter in word[0] if "\ud800" <= letter <= "\udfff"]
    letters = {letter: bytes([ord(letter) & 0xFF]).decode("cp1252", "replace") for letter in unread}
    if 2 * len(unread) > len(word[0]) or not all(map(str.isalpha, letters.values())):
        letters = dict.fromkeys(unread, "\ufffd")
    return "".join(letters.get(letter, letter) for letter in word[0])


_FIRST = 3
"""How many names of a group are shown."""

_ABOUT = {
    **NOT_READ,
    ".xmp": "what a program noted beside a picture; it is not read",
    ".aae": "what a telephone noted beside a picture; it is not read",
}


def named_groups(given: GivenFiles, first: int | None = _FIRST) -> Iterator[str]:
    """A line for each kind of file that is no picture, with how many there are and the `first` names (None for all)."""
    for what, paths in sorted(given.not_pictures.items(), key=lambda group: (-len(group[1]), group[0])):
        about = f" ({_ABOUT[what]})" if what in _ABOUT else ""
        names = ", ".join(readable(path if first is None else path.name) for path in paths[:first])
        more = f" and {len(paths) - first} more" if first is not None and len(paths) > first else ""
        yield f"{len(paths)} {what}{about}: {names}{more}"


def files_given(paths: Iterable[Path]) -> GivenFiles:
    """The files named, and all those in the folders named. Raises WrongUse for a path that does not exist."""
    given = GivenFiles()
    for path in paths:
        if path.is_dir():
            _walk(path, given)
        elif path.is_file() and path.suffix.lower() in RAW:
            given.refused.append((path, _RAW_FILE))
        elif path.is_file():
            given.pictures.append(path)
        elif path.exists():
            given.pass_over(path, _special(path))
        else:
            raise WrongUse(f"There is no file or folder {readable(path)}.")
    given.pictures = list(dict.fromkeys(given.pictures))
    return given


def _walk(top: Path, given: GivenFiles) -> None:
    """Sort all that is in the folder and in those inside it, in the order of the names. Links are not followed down."""

    def closed(error: OSError) -> None:
        path = Path(error.filename or top)
        given.refused.append((path, f"The folder cannot be opened: {could_not(error, path).problem}"))

    for folder, names_of_folders, names in os.walk(top, onerror=closed):
        names_of_folders.sort()
        for name in names_of_folders:
            if (inner := Path(folder, name)).is_symlink():
                given.refused.append((inner, "It is a link to a folder. Name that folder itself to take it in."))
        for name in sorted(names):
            _sort_file(Path(folder, name), given)


def _sort_file(path: Path, given: GivenFiles) -> None:
    """Put a file of a folder where it belongs."""
    try:
        _sort_by_name(path, given)
    except OSError as error:  # of a folder whose names can be read, and nothing else
        given.refused.append((path, could_not(error, path).problem))


def _sort_by_name(path: Path, given: GivenFiles) -> None:
    if path.name.startswith(".") and not _holds_a_picture(path):
        given.pass_over(path, "hidden")
    elif path.name.startswith("."):
        given.refused.append((path, "It is a picture, but hidden by the point before its name. Name it itself."))
    elif path.is_symlink() and not path.exists():
        given.refused.append((path, "It is a link to a file that is not there. Plug in its disk, or delete it."))
    elif not path.is_file():
        given.pass_over(path, _special(path))
    elif path.suffix.lower() in SUFFIXES:
        given.pictures.append(path)
    elif path.suffix.lower() in RAW:
        given.refused.append((path, _RAW_FILE))
    elif not path.stat().st_size:
        given.pass_over(path, "empty (0 bytes)")
    else:
        _sort_by_content(path, given)


def _holds_a_picture(path: Path) -> bool:
    """Whether a file begins as pictures do; what a Mac notes beside one (`._harbour.jpg`) does not."""
    return path.is_file() and is_a_picture(head_of(path))


def _special(path: Path) -> str:
    """What a thing is that is neither file nor folder."""
    mode = path.stat().st_mode
    kinds = ((stat.S_ISFIFO, "pipe (FIFO)"), (stat.S_ISSOCK, "socket"))
    return next((words for is_kind, words in kinds if is_kind(mode)), "device")


def _sort_by_content(path: Path, given: GivenFiles) -> None:
    """The same for a file whose name is no picture's."""
    head = head_of(path)
    is_picture = is_a_picture(head)
    if is_picture and not path.suffix:
        given.pictures.append(path)
    elif is_picture:
        why = f"It is a picture, but its name ends in {path.suffix}, as no scan's does. Name it itself to take it in."
        given.refused.append((path, why))
    elif head.startswith(b"%PDF-"):
        given.refused.append((path, "It is a PDF. Save its pages as TIFF or JPEG, and take those in."))
    else:
        given.pass_over(path, path.suffix.lower() or "without a suffix")
