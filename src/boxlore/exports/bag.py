"""A bag: files with their digests, as BagIt 1.0 (RFC 8493) defines it. Written by streaming.

Payload and tag files each have manifests in SHA-512 and SHA-256. No name holds `%`, a backslash, CR or LF; links are
refused. The bag is written under a temporary name and renamed when it is whole. `bag_check` reads it again.
"""

import hashlib
import os
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from types import MappingProxyType
from typing import BinaryIO

from boxlore.core.errors import WrongUse
from boxlore.disk.regular_file import open_regular
from boxlore.disk.unfinished import is_free, unfinished_folder
from boxlore.disk.writing import could_not

ALGORITHMS = ("sha512", "sha256")
CHUNK = 1 << 20
DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"
"""The text of bagit.txt (RFC 8493, 2.1.1)."""


@dataclass(frozen=True, slots=True)
class Payload:
    """One file of the payload: its path below `data/`, and its bytes or the file to copy them from."""

    path: str
    source: "Path | bytes | Staged"


@dataclass(frozen=True, slots=True)
class Staged:
    """A file made beside the bag, flushed, whose size in bytes and digests by algorithm are known: it is moved into
    the bag and not read again."""

    path: Path
    size: int
    digests: Mapping[str, str]


def write_bag(
    folder: Path,
    payload: Iterable[Payload],
    info: Mapping[str, str],
    progress: Callable[[int], None] = lambda count: None,
    tags: Mapping[str, bytes] = MappingProxyType({}),
) -> int:
    """Write a bag as `folder`. Returns the number of bytes of the payload.

    `info` goes into bag-info.txt (RFC 8493, 2.2.2), `tags` are further tag files by path (2.2.4), and `progress` is
    called with the number of bytes of each piece copied. Raises WrongUse if the folder is not empty or a path is not
    allowed, CouldNot if the disk refuses; nothing is left behind then.
    """
    if not is_free(folder):
        raise WrongUse(f"{folder} is not empty.", "Name a new folder for the package.")
    try:
        with unfinished_folder(folder) as unfinished:
            total = _fill(unfinished, payload, info, progress, tags)
            if folder.exists():
                folder.rmdir()
            os.replace(unfinished, folder)
    except OSError as error:
        raise could_not(error, Path(error.filename or folder)) from error
    return total


def _fill(
    unfinished: Path,
    payload: Iterable[Payload],
    info: Mapping[str, str],
    progress: Callable[[int], None],
    extra_tags: Mapping[str, bytes],
) -> int:
    """Write all files of the bag into the folder `unfinished`. Returns the number of bytes of the payload."""
    manifests: dict[str, list[str]] = {name: [] for name in ALGORITHMS}
    total = count = 0
    (unfinished / "data").mkdir(parents=True)
    for file in payload:
        path = safe_path(file.path)
        size, digests = _put(unfinished / "data" / path, file.source, progress)
        total, count = total + size, count + 1
        for name, digest in digests.items():
            manifests[name].append(f"{digest}  data/{path}\n")
    sizes = {"Payload-Oxum": f"{total}.{count}", "Bag-Size": _readable_size(total)}
    tag_files = {"bagit.txt": DECLARATION, "bag-info.txt": _info({**info, **sizes})}
    tag_files |= {f"manifest-{name}.txt": "".join(sorted(lines, key=_path_of)) for name, lines in manifests.items()}
    tag_lines: dict[str, list[str]] = {name: [] for name in ALGORITHMS}
    for name, text in ({name: words.encode() for name, words in tag_files.items()} | dict(extra_tags)).items():
        _, digests = _write_hashed(unfinished / safe_path(name), text, progress)
        for algorithm, digest in digests.items():
            tag_lines[algorithm].append(f"{digest}  {name}\n")
    for algorithm, lines in tag_lines.items():
        text = "".join(sorted(lines, key=_path_of)).encode()
        _write_hashed(unfinished / f"tagmanifest-{algorithm}.txt", text, progress)
    return total


def _path_of(line: str) -> str:
    return line.split("  ", 1)[1]


def safe_path(path: str) -> str:
    """The path in its plain form. Raises WrongUse for a path that a bag of ours may not hold.

    It may not be empty or absolute, and may not hold `..`, `%`, a backslash, CR or LF.
    """
    parts = PurePosixPath(path).parts
    if not parts or path.startswith("/") or ".." in parts or any(letter in path for letter in "%\r\n\\"):
        raise WrongUse(f"A package cannot hold a file named {path!r}.", "Rename it and make the package again.")
    return str(PurePosixPath(path))


def _put(target: Path, source: Path | bytes | Staged, progress: Callable[[int], None]) -> tuple[int, Mapping[str, str]]:
    """Write or move a file to its place in the bag. Returns its size in bytes and its digest by algorithm."""
    if not isinstance(source, Staged):
        return _write_hashed(target, source, progress)
    target.parent.mkdir(parents=True, exist_ok=True)
    os.replace(source.path, target)
    progress(source.size)
    return source.size, source.digests


def stage(
    source: BinaryIO, target: Path, progress: Callable[[int], None] = lambda count: None, *, to_pack: bool = True
) -> Staged:
    """Copy what is left of an open file into a new file, flushed, and hash it in the same reading. Raises OSError.

    One that is not `to_pack`, only to be worked on, is not flushed and has its SHA-256 alone.
    """
    digests = [hashlib.new(name) for name in (ALGORITHMS if to_pack else ("sha256",))]
    with open(target, "xb") as out:
        size = _copy(source, out, digests, progress)
        out.flush()
        if to_pack:
            os.fsync(out.fileno())
    return Staged(target, size, {digest.name: digest.hexdigest() for digest in digests})


def hashed(path: Path) -> Staged:
    """A file that we have made and flushed, hashed for a bag. Raises OSError."""
    digests = [hashlib.new(name) for name in ALGORITHMS]
    size = 0
    with open(path, "rb") as file:
        while data := file.read(CHUNK):
            size += len(data)
            for digest in digests:
                digest.update(data)
    return Staged(path, size, {digest.name: digest.hexdigest() for digest in digests})


def _write_hashed(target: Path, source: Path | bytes, progress: Callable[[int], None]) -> tuple[int, dict[str, str]]:
    """Write a new file, flushed to the disk. Returns its size in bytes and its digest by algorithm."""
    target.parent.mkdir(parents=True, exist_ok=True)
    digests = [hashlib.new(name) for name in ALGORITHMS]
    size = 0
    with open(target, "xb") as out:
        if isinstance(source, bytes):
            out.write(source)
            size = len(source)
            for digest in digests:
                digest.update(source)
        else:
            if source.is_symlink():
                raise WrongUse(f"{source} is a link.", "A package holds files only.")
            with open_regular(source) as file:
                size = _copy(file, out, digests, progress)
        out.flush()
        os.fsync(out.fileno())
    return size, {name: digest.hexdigest() for name, digest in zip(ALGORITHMS, digests, strict=True)}


def _copy(file: BinaryIO, out: BinaryIO, digests: list["hashlib._Hash"], progress: Callable[[int], None]) -> int:
    size = 0
    while data := file.read(CHUNK):
        out.write(data)
        for digest in digests:
            digest.update(data)
        size += len(data)
        progress(len(data))
    return size


def _info(values: Mapping[str, str]) -> str:
    """The text of bag-info.txt: `label: value` lines (RFC 8493, 2.2.2), without empty values."""
    lines = [f"{name}: {' '.join(value.split())}\n" for name, value in values.items() if value.strip()]
    return "".join(lines)


def _readable_size(size: int) -> str:
    steps = [(1e9, "GB"), (1e6, "MB"), (1e3, "KB")]
    return next((f"{size / step:.1f} {unit}" for step, unit in steps if size >= step), f"{size} B")
