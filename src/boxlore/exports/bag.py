"""A bag: files with their fixity, as BagIt 1.0 (RFC 8493) lays them down. Written by streaming, read back in full.

Manifests of SHA-512 and SHA-256 for the payload and for every tag file. Names hold no `%`, CR or LF; links
are refused; the bag is made under a temporary name and takes its own only when it is whole.
"""

import hashlib
import os
import shutil
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from types import MappingProxyType
from typing import BinaryIO

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.findings import Finding, Severity

ALGORITHMS = ("sha512", "sha256")
CHUNK = 1 << 20
DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"
LEFT_OUT = {"Thumbs.db", ".DS_Store"}


@dataclass(frozen=True, slots=True)
class Payload:
    """One file of the payload: its path below `data/`, and its bytes or the file they are in."""

    path: str
    source: Path | bytes


def write_bag(
    folder: Path,
    payload: Iterable[Payload],
    info: Mapping[str, str],
    copied: Callable[[int], None] = lambda count: None,
    tags: Mapping[str, bytes] = MappingProxyType({}),
) -> int:
    """Write a bag as `folder`, with further tag files (2.2.4); returns the number of payload bytes.

    Raises WrongUse if the folder is taken.
    """
    if folder.exists() and any(folder.iterdir()):
        raise WrongUse(f"{folder} is not empty.", "Name a new folder for the package.")
    part = folder.with_name(folder.name + ".part")
    shutil.rmtree(part, ignore_errors=True)
    try:
        total = _fill(part, payload, info, copied, tags)
        if folder.exists():
            folder.rmdir()
        os.replace(part, folder)
    except OSError as error:
        shutil.rmtree(part, ignore_errors=True)
        raise CouldNot(f"The package could not be written: {error.strerror or error} ({error.filename}).") from error
    except BaseException:
        shutil.rmtree(part, ignore_errors=True)
        raise
    return total


def _fill(
    part: Path,
    payload: Iterable[Payload],
    info: Mapping[str, str],
    copied: Callable[[int], None],
    further: Mapping[str, bytes],
) -> int:
    manifests: dict[str, list[str]] = {name: [] for name in ALGORITHMS}
    total = count = 0
    (part / "data").mkdir(parents=True)
    for one in payload:
        path = safe_path(one.path)
        size, digests = _put(part / "data" / path, one.source, copied)
        total, count = total + size, count + 1
        for name, digest in digests.items():
            manifests[name].append(f"{digest}  data/{path}\n")
    oxum = {"Payload-Oxum": f"{total}.{count}", "Bag-Size": _human(total)}
    tags = {"bagit.txt": DECLARATION, "bag-info.txt": _info({**info, **oxum})}
    tags |= {f"manifest-{name}.txt": "".join(sorted(lines, key=_path_of)) for name, lines in manifests.items()}
    listed: dict[str, list[str]] = {name: [] for name in ALGORITHMS}
    for name, text in ({name: words.encode() for name, words in tags.items()} | dict(further)).items():
        _, digests = _put(part / safe_path(name), text, copied)
        for algorithm, digest in digests.items():
            listed[algorithm].append(f"{digest}  {name}\n")
    for algorithm, lines in listed.items():
        _put(part / f"tagmanifest-{algorithm}.txt", "".join(sorted(lines, key=_path_of)).encode(), copied)
    return total


def _path_of(line: str) -> str:
    return line.split("  ", 1)[1]


def safe_path(path: str) -> str:
    """The path if a bag may hold it. Raises WrongUse for one that is absolute, climbs, or has letters it may not."""
    parts = PurePosixPath(path).parts
    if not parts or path.startswith("/") or ".." in parts or any(one in path for one in "%\r\n\\"):
        raise WrongUse(f"A package cannot hold a file named {path!r}.", "Rename it and make the package again.")
    return str(PurePosixPath(path))


def _put(target: Path, source: Path | bytes, copied: Callable[[int], None]) -> tuple[int, dict[str, str]]:
    """Copy while hashing, flush to the disk; returns the size and the digests."""
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
            with open(source, "rb") as file:
                size = _copy(file, out, digests, copied)
        out.flush()
        os.fsync(out.fileno())
    return size, {name: digest.hexdigest() for name, digest in zip(ALGORITHMS, digests, strict=True)}


def _copy(file: BinaryIO, out: BinaryIO, digests: list["hashlib._Hash"], copied: Callable[[int], None]) -> int:
    size = 0
    while data := file.read(CHUNK):
        out.write(data)
        for digest in digests:
            digest.update(data)
        size += len(data)
        copied(len(data))
    return size


def _info(values: Mapping[str, str]) -> str:
    lines = [f"{name}: {' '.join(value.split())}\n" for name, value in values.items() if value.strip()]
    return "".join(lines)


def _human(size: int) -> str:
    steps = [(1e9, "GB"), (1e6, "MB"), (1e3, "KB")]
    return next((f"{size / step:.1f} {unit}" for step, unit in steps if size >= step), f"{size} B")


def verify_bag(folder: Path) -> list[Finding]:
    """Read every file of a bag against its manifests; a finding for each that is missing, changed or not listed."""
    findings: list[Finding] = []
    if not (folder / "bagit.txt").is_file():
        return [_finding("bag.none", f"{folder} is no bag: it has no bagit.txt.")]
    present = {
        path.relative_to(folder).as_posix()
        for path in folder.rglob("*")
        if path.is_file() and path.name not in LEFT_OUT
    }
    listed: set[str] = set()
    for manifest in sorted(folder.glob("*manifest-*.txt")):
        algorithm = manifest.stem.rpartition("-")[2]
        if algorithm not in hashlib.algorithms_available:
            continue
        for line in manifest.read_text(encoding="utf-8").splitlines():
            digest, _, path = line.partition(" ")
            path = path.strip().lstrip("*")
            listed.add(path)
            findings += _check(folder, path, algorithm, digest)
    unlisted = {path for path in present - listed if path.startswith("data/")}
    findings += [_finding("bag.unlisted", f"{path} is in no manifest.") for path in sorted(unlisted)]
    return findings


def _check(folder: Path, path: str, algorithm: str, digest: str) -> list[Finding]:
    target = folder / path
    if ".." in PurePosixPath(path).parts or not target.is_file():
        return [_finding("bag.missing", f"{path} is listed but not there.")]
    with open(target, "rb") as file:
        found = hashlib.file_digest(file, algorithm).hexdigest()
    if found != digest.lower():
        return [_finding("bag.changed", f"{path} has changed: its {algorithm} is not the one in the manifest.")]
    return []


def _finding(rule: str, message: str) -> Finding:
    return Finding(rule=rule, severity=Severity.ERROR, message=message, source="RFC 8493, 3")
