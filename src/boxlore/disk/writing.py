"""Writing files so that a power cut leaves the old file or the new one, never a half-written one.

The new bytes are written under a temporary name in the target's own folder and flushed to the disk. Then the file is
renamed to the target's name in one step, and the folder is flushed too (POSIX rename(2); `os.replace` elsewhere).
"""

import errno
import hashlib
import os
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from io import BytesIO
from pathlib import Path
from typing import BinaryIO

from boxlore.core.errors import CouldNot
from boxlore.disk.unfinished import unfinished_file

CHUNK = 1 << 20

_SENTENCES = {
    errno.ENOSPC: (
        "The disk is full",
        "Free some space, or choose another folder, and run the same command again.",
    ),
    errno.EDQUOT: ("Your share of the disk is used up", "Free some space and run the same command again."),
    errno.EROFS: ("The disk can only be read", "Choose a folder on another disk."),
    errno.EACCES: ("Writing is not allowed there", "Choose a folder that belongs to you."),
    errno.EPERM: ("Writing is not allowed there", "Choose a folder that belongs to you."),
    errno.ENOTDIR: ("A file stands where a folder is wanted", "Choose another folder."),
    errno.EEXIST: ("A file stands where a folder is wanted", "Choose another folder."),
    errno.EISDIR: ("A folder stands where a file is wanted", "Move it away, or choose another folder."),
    errno.ENAMETOOLONG: ("The name is too long for this disk", "Choose a folder with a shorter name."),
    errno.EFBIG: ("The file would be larger than this disk takes", "Choose a folder on another disk."),
    errno.ENOENT: ("There is no such file", "It may have been moved, or its disk is not plugged in."),
}


def could_not(error: OSError, path: Path, *, reading: bool = False) -> CouldNot:
    """The CouldNot for an error of the operating system at `path`: a sentence, and what to do about it.

    Where something was to be written, it says that nothing was half-written; not where it was only to be read.
    """
    problem, what_to_do = _SENTENCES.get(error.errno or 0, (error.strerror or str(error), ""))
    if reading and error.errno in (errno.EACCES, errno.EPERM):
        problem, what_to_do = "Reading is not allowed there", "Give yourself the right to read it."
    if not reading and error.errno == errno.ENOENT:
        problem, what_to_do = "Nothing can be written there", "Choose another folder."
    everywhere = error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EROFS)
    left = "" if reading or error.errno == errno.ENOENT else "Nothing was half-written."
    return CouldNot(f"{problem}: {path}.", f"{what_to_do} {left}".strip(), everywhere)


@contextmanager
def replacing(target: Path) -> Iterator[BinaryIO]:
    """A file to write to, which gets the name `target` only when the block ends without an error.

    What a killed run left under its temporary name goes first, and a link there is not followed. Raises CouldNot when
    the disk refuses, and leaves nothing behind then.
    """
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        with unfinished_file(target) as part:
            with open(part, "wb") as out:
                yield out
                out.flush()
                os.fsync(out.fileno())
            os.replace(part, target)
        flush_folder(target.parent)
    except OSError as error:
        raise could_not(error, target) from error


def flush_folder(folder: Path) -> None:
    """Flush a folder to the disk, so that a new name in it survives a power cut, where the system can do that."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:  # Windows does not open folders; its rename is durable by journal
        return
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def write_whole(target: Path, data: bytes) -> bool:
    """Write `data`, unless the file holds exactly that already. Returns whether it was written."""
    if target.is_file() and target.stat().st_size == len(data) and target.read_bytes() == data:
        return False
    with replacing(target) as out:
        out.write(data)
    return True


Piece = bytes | tuple[int, int]
"""A part of a copy: new bytes, or (offset, length) of a run of the source that is copied untouched."""


def write_pieces(pieces: Iterable[Piece], source: BinaryIO, out: BinaryIO) -> None:
    """Write the pieces in order. Runs of the source are copied by the kernel (sendfile) where the system can."""
    for piece in pieces:
        if isinstance(piece, bytes):
            out.write(piece)
        else:
            _copy_run(source, piece[0], piece[1], out)


def write_hashed(pieces: Iterable[Piece], source: BinaryIO, out: BinaryIO) -> str:
    """Write the pieces in order. Returns the SHA-256 of what was written, which is not read again for it."""
    digest = hashlib.sha256()
    for piece in pieces:
        for data in (piece,) if isinstance(piece, bytes) else _run(source, *piece):
            digest.update(data)
            out.write(data)
    return digest.hexdigest()


def _run(source: BinaryIO, offset: int, length: int) -> Iterator[bytes | memoryview]:
    """A run of the source in chunks. Raises OSError where the source ends early."""
    if isinstance(source, BytesIO):
        yield source.getbuffer()[offset : offset + length]
        return
    source.seek(offset)
    while length:
        data = source.read(min(CHUNK, length))
        if not data:
            raise OSError(errno.EIO, "the source ended early")
        yield data
        length -= len(data)


def _copy_run(source: BinaryIO, offset: int, length: int, out: BinaryIO) -> None:
    out.flush()
    send = None if isinstance(source, BytesIO) else getattr(os, "sendfile", None)
    while length and send is not None:
        try:
            sent = send(out.fileno(), source.fileno(), offset, min(length, 1 << 30))
        except OSError as error:
            if error.errno in (errno.EINVAL, errno.ENOSYS, errno.ENOTSOCK, errno.EOPNOTSUPP):
                break
            raise
        if sent == 0:
            raise OSError(errno.EIO, "the source ended early")
        offset, length = offset + sent, length - sent
    for data in _run(source, offset, length):
        out.write(data)
