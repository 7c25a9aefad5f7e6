"""A parcel on the disk: one file that holds others, each proved by its digest, and locked by a passphrase if wanted.

It is a ZIP archive as ISO/IEC 21320-1 has it (stored or deflated, no encryption of its own), whose last member,
`manifest-sha256.txt`, has a line for each other one, written as RFC 8493, 2.1.3 writes them. A locked one holds two
members instead, in the format of C2SP, age-encryption.org/v1: `key.age`, a key that the passphrase opens (scrypt), and
`contents.age`, that archive, for that key. So a large one is locked and opened piece by piece, and any program that
knows the format opens it without this one.
"""

import hashlib
import io
import os
import shutil
import zipfile
import zlib
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path, PurePosixPath
from types import ModuleType
from typing import BinaryIO

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.disk.unfinished import unfinished_file
from boxlore.disk.writing import CHUNK, could_not, replacing

MANIFEST = "manifest-sha256.txt"
KEY, CONTENTS = "key.age", "contents.age"
SHORTEST = 8
"""Letters of the shortest passphrase that is taken (NIST SP 800-63B, 5.1.1.2, of secrets that people choose)."""

_PICTURES = {".jpg", ".jpeg", ".png", ".webp", ".heic", ".avif", ".mp3", ".m4a", ".ogg", ".flac", ".mp4", ".zip"}
"""Packed by themselves: to pack them once more makes nothing smaller."""

Member = tuple[str, Path | bytes]
"""A name with slashes, and the file that lies under it, or its bytes."""


def pack(target: Path, members: Iterable[Member], passphrase: str = "", step: Callable[[], None] = lambda: None) -> str:
    """Write a parcel of the members, locked if there is a passphrase; `step` is called after each member.

    Returns the parcel's SHA-256. Raises CouldNot for what cannot be read or written, or where what locks is not
    installed, and WrongUse for a passphrase that is too short; nothing is left at `target` then.
    """
    if passphrase and len(passphrase) < SHORTEST:
        raise WrongUse(f"A passphrase has {SHORTEST} letters at least.", "Four words that nobody guesses are good.")
    locks = _locks() if passphrase else None
    try:
        with replacing(target) as out:
            if locks is None:
                _write(out, members, step)
            else:
                with unfinished_file(target) as plain:
                    with open(plain, "wb") as inner:
                        _write(inner, members, step)
                    _lock(locks, plain, out, passphrase)
    except OSError as error:
        raise could_not(error, target) from error
    return sha256_of(target)


def _write(out: BinaryIO, members: Iterable[Member], step: Callable[[], None]) -> None:
    lines = []
    with zipfile.ZipFile(out, "w", allowZip64=True) as archive:
        for name, content in members:
            lines.append(f"{_add(archive, name, content)}  {_escaped(name)}\n")
            step()
        _add(archive, MANIFEST, "".join(lines).encode())


def _add(archive: zipfile.ZipFile, name: str, content: Path | bytes) -> str:
    """Add one member. Returns its SHA-256."""
    entry = zipfile.ZipInfo(name)  # of 1980: what lies in it has its own times
    is_packed = PurePosixPath(name).suffix.lower() in _PICTURES
    entry.compress_type = zipfile.ZIP_STORED if is_packed else zipfile.ZIP_DEFLATED
    digest = hashlib.sha256()
    with _opened(content) as source, archive.open(entry, "w", force_zip64=True) as member:
        while data := source.read(CHUNK):
            digest.update(data)
            member.write(data)
    return digest.hexdigest()


@contextmanager
def _opened(content: Path | bytes) -> Iterator[BinaryIO]:
    if isinstance(content, bytes):
        yield io.BytesIO(content)
        return
    try:
        file = open_regular(content)
    except OSError as error:
        raise could_not(error, content, reading=True) from error
    with file:
        yield file


def _lock(locks: ModuleType, plain: Path, out: BinaryIO, passphrase: str) -> None:
    key = locks.x25519.Identity.generate()
    with zipfile.ZipFile(out, "w", allowZip64=True) as archive:
        archive.writestr(KEY, locks.passphrase.encrypt(str(key).encode(), passphrase))
        with open(plain, "rb") as source, archive.open(CONTENTS, "w", force_zip64=True) as member:
            locks.encrypt_io(source, member, [key.to_public()])


def is_locked(path: Path) -> bool:
    """Whether a passphrase is needed. Raises CouldNot for a file that is no parcel, or cannot be read."""
    with _archive(path) as archive:
        return KEY in archive.namelist()


def unpack(path: Path, folder: Path, passphrase: str = "", step: Callable[[], None] = lambda: None) -> None:
    """Write every member into `folder`, and prove each; `step` is called after each.

    Raises WrongUse for a wrong passphrase, and CouldNot for what is no parcel, is damaged, or has no room on the disk;
    what was written by then stays in `folder`, which is the caller's to remove.
    """
    if not is_locked(path):
        _unpack(path, folder, step)
        return
    if not passphrase:
        raise WrongUse(f"{path.name} is locked.", "Its passphrase is with whoever made it.")
    plain = folder / CONTENTS
    with _archive(path) as archive, _reading(path), archive.open(CONTENTS) as source, open(plain, "wb") as out:
        key = _key(archive.read(KEY), passphrase, path)
        try:
            _locks().decrypt_io(source, out, [key])
        except _locks().DecryptError as error:
            raise _damaged(path) from error
        except OSError as error:
            if error.errno is None:  # what the library says of contents that were changed
                raise _damaged(path) from error
            raise
    _unpack(plain, folder, step, called=path)
    plain.unlink()


def _key(locked: bytes, passphrase: str, path: Path) -> object:
    locks = _locks()
    try:
        return locks.x25519.Identity.from_str(locks.passphrase.decrypt(locked, passphrase).decode())
    except locks.DecryptError as error:
        raise WrongUse(f"This is not the passphrase of {path.name}.", "Capitals and spaces count.") from error


def _unpack(path: Path, folder: Path, step: Callable[[], None], called: Path | None = None) -> None:
    called = called or path
    with _archive(path, called) as archive, _reading(called):
        digests = dict(_manifest(archive, called))
        names = [name for name in archive.namelist() if name != MANIFEST]
        if sorted(names) != sorted(digests):
            raise _damaged(called)
        needed = sum(entry.file_size for entry in archive.infolist())
        if needed > shutil.disk_usage(folder).free:
            raise CouldNot(f"{called.name} needs {needed >> 20} MB on the disk of {folder.parent}.", "Make room first.")
        for name in names:
            if not _is_safe(name):
                raise CouldNot(f"{called.name} holds a file named {name!r}, which no parcel of ours does.")
            if _extract(archive, name, folder / name) != digests[name]:
                raise _damaged(called)
            step()


def _manifest(archive: zipfile.ZipFile, path: Path) -> Iterator[tuple[str, str]]:
    try:
        lines = archive.read(MANIFEST).decode().splitlines()
    except (KeyError, UnicodeDecodeError) as error:
        raise _no_parcel(path) from error
    for line in lines:
        digest, _, name = line.partition("  ")
        yield _unescaped(name), digest


def _extract(archive: zipfile.ZipFile, name: str, target: Path) -> str:
    target.parent.mkdir(parents=True, exist_ok=True)
    digest = hashlib.sha256()
    with archive.open(name) as member, open(target, "xb") as out:
        while data := member.read(CHUNK):
            digest.update(data)
            out.write(data)
        out.flush()
        os.fsync(out.fileno())
    return digest.hexdigest()


def _is_safe(name: str) -> bool:
    """Whether a member stays below the folder that it is unpacked into, on every system."""
    parts = name.split("/")
    return not any(part in ("", ".", "..") or "\\" in part or ":" in part or "\0" in part for part in parts)


def _escaped(name: str) -> str:
    """A name on a line of a manifest (RFC 8493, 2.1.3)."""
    return name.replace("%", "%25").replace("\n", "%0A").replace("\r", "%0D")


def _unescaped(name: str) -> str:
    return name.replace("%0D", "\r").replace("%0A", "\n").replace("%25", "%")


@contextmanager
def _archive(path: Path, called: Path | None = None) -> Iterator[zipfile.ZipFile]:
    try:
        archive = zipfile.ZipFile(path)
    except zipfile.BadZipFile as error:
        raise _no_parcel(called or path) from error
    except OSError as error:
        raise could_not(error, called or path, reading=True) from error
    with archive:
        yield archive


@contextmanager
def _reading(path: Path) -> Iterator[None]:
    """Context: what a damaged archive raises when it is read is said as damage."""
    try:
        yield
    except (zipfile.BadZipFile, zlib.error, KeyError, EOFError, NotImplementedError) as error:
        raise _damaged(path) from error
    except OSError as error:
        raise could_not(error, Path(error.filename or path)) from error
    except RuntimeError as error:  # what zipfile says of a member that asks for a password
        raise _damaged(path) from error


def _no_parcel(path: Path) -> CouldNot:
    return CouldNot(f"{path.name} is no parcel, or it came in part only.", "Ask for it again; nothing was taken in.")


def _damaged(path: Path) -> CouldNot:
    return CouldNot(f"{path.name} is damaged: it is not as it was packed.", "Ask for it again; nothing was taken in.")


def _locks() -> ModuleType:
    try:
        import pyrage  # noqa: PLC0415  # an extra that few have
    except ImportError as error:
        raise CouldNot(
            "The part that locks and opens parcels is not installed.", "Install it: pip install boxlore[lock]"
        ) from error
    locks: ModuleType = pyrage
    return locks
