"""A tree file opened: its bytes decoded by the encoding it claims or shows, its lines read as a tree."""

import gc
import unicodedata
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import ansel

from boxlore.core.errors import WrongUse
from boxlore.formats.gedcom import Tree, read_tree, split_lines
from boxlore.formats.gedcom_lines import Encoding, Fault, encoding_of


def read_file(path: Path) -> tuple[Tree, Encoding]:
    """The tree in a file, whatever its encoding. Raises WrongUse if it is no tree file."""
    try:
        data = path.read_bytes()
    except (FileNotFoundError, IsADirectoryError):
        raise WrongUse(f"There is no file {path}.") from None
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
    return tree, encoding


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
