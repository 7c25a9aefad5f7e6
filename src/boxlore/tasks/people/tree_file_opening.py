"""A tree file opened: its bytes decoded by the encoding it claims or shows, its lines read as a tree.

A GEDZIP (7.0, chapter 4) is a zip archive with the tree as `gedcom.ged`; the files beside it are named, not taken.
"""

import gc
import io
import unicodedata
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import ansel

from boxlore.core.errors import WrongUse
from boxlore.formats.gedcom import Tree, read_tree, split_lines
from boxlore.formats.gedcom_lines import Encoding, Fault, encoding_of

LARGEST_TREE = 2_000_000_000
"""Bytes of a tree inside an archive: far more than any family has, and no more than a machine holds."""


@dataclass(frozen=True, slots=True)
class OpenedTree:
    """A tree, the encoding that it was read in, and the names of the files that came with it in an archive."""

    tree: Tree
    encoding: Encoding
    beside: tuple[str, ...] = ()


def read_file(path: Path) -> OpenedTree:
    """The tree in a file, whatever its encoding. Raises WrongUse if it is no tree file."""
    try:
        data = path.read_bytes()
    except (FileNotFoundError, IsADirectoryError):
        raise WrongUse(f"There is no file {path}.") from None
    beside: tuple[str, ...] = ()
    if data.startswith(b"PK"):
        data, beside = _unzipped(path.name, data)
    encoding = encoding_of(data)
    text, doubtful = _decoded(data, encoding)
    del data
    with _without_collecting():
        tree = read_tree(split_lines(text))
    if not tree.begun and not tree.individuals:
        raise WrongUse(f"{path.name} is no GEDCOM file.", "It should begin with a line “0 HEAD”.")
    if doubtful:
        tree.faults.append(
            Fault(doubtful, f"holds bytes that are no {encoding.codec}; such lines are read as Windows-1252")
        )
    return OpenedTree(tree, encoding, beside)


def _unzipped(name: str, data: bytes) -> tuple[bytes, tuple[str, ...]]:
    """The tree inside an archive, and the names of the other files. Raises WrongUse."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            entry = archive.getinfo("gedcom.ged")
            if entry.file_size > LARGEST_TREE:
                raise WrongUse(
                    f"The tree in {name} is larger than {LARGEST_TREE} bytes.", "Take it out and look at it."
                )
            beside = tuple(member.filename for member in archive.infolist() if member != entry and not member.is_dir())
            return archive.read(entry), beside
    except KeyError:
        raise WrongUse(f"There is no gedcom.ged in {name}.", "Take the tree file out of it, and give that.") from None
    except (zipfile.BadZipFile, zlib.error, RuntimeError, NotImplementedError, EOFError):
        raise WrongUse(f"{name} is a damaged or locked archive.", "Ask for it again, or for the .ged alone.") from None


@contextmanager
def _without_collecting() -> Iterator[None]:
    """No search for rubbish while a million small values are made that all stay."""
    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()


def _decoded(data: bytes, encoding: Encoding) -> tuple[str, int]:
    """The text, and the first line that is not in the encoding (0 if none); nothing is dropped."""
    if encoding.codec == "gedcom":
        ansel.register()
    try:
        if encoding.codec == "gedcom":
            return _from_ansel(data), 0
        return data.decode(encoding.codec).lstrip("\ufeff"), 0
    except UnicodeDecodeError:
        if encoding.codec.startswith("utf-16"):
            return data.decode(encoding.codec, "replace").lstrip("\ufeff"), 1
    lines: list[str] = []
    doubtful = 0
    for number, line in enumerate(data.replace(b"\r\n", b"\n").replace(b"\r", b"\n").split(b"\n"), 1):
        try:
            lines.append(line.decode(encoding.codec))
        except UnicodeDecodeError:
            doubtful = doubtful or number
            lines.append(line.decode("cp1252", "replace"))
    return "\n".join(lines).lstrip("\ufeff"), doubtful


def _from_ansel(data: bytes) -> str:
    """ANSEL in pieces of whole lines, for its decoder takes a hundred times the memory of what it reads. It parts
    accents from letters; joined again they are what everyone types."""
    lines = data.splitlines(keepends=True)
    pieces = (b"".join(lines[at : at + 2000]).decode("gedcom") for at in range(0, len(lines), 2000))
    return "".join(unicodedata.normalize("NFC", piece) for piece in pieces)
