"""Reading bytes with their place in the file, so that every fault names its offset and clause."""

from collections.abc import Iterable
from typing import BinaryIO

from boxlore.core.errors import ByteFault

COMPARED = 1 << 18

Piece = bytes | tuple[int, int]
"""New bytes, or (offset, length): a run of the source to be copied untouched."""


def read_at(file: BinaryIO, offset: int, length: int, clause: str) -> bytes:
    """Exactly `length` bytes from `offset`. Raises ByteFault if the file ends before."""
    file.seek(offset)
    data = file.read(length)
    if len(data) != length:
        raise ByteFault(offset + len(data), f"The file ends {length - len(data)} bytes too early", clause)
    return data


def size_of(file: BinaryIO) -> int:
    """The file's size in bytes."""
    return file.seek(0, 2)


def patched(offset: int, length: int, patches: Iterable[tuple[int, bytes]]) -> list[Piece]:
    """A run of the source with some bytes put in place of others; patches lie inside it and do not overlap."""
    pieces: list[Piece] = []
    at = offset
    for where, data in sorted(patches):
        if where > at:
            pieces.append((at, where - at))
        pieces.append(data)
        at = where + len(data)
    if at < offset + length:
        pieces.append((at, offset + length - at))
    return pieces


def same_bytes(one: BinaryIO, at: int, other: BinaryIO, there: int, length: int) -> bool:
    """Whether two runs of two files are equal. The two buffers are small enough to stay in the processor's cache."""
    left, right = bytearray(COMPARED), bytearray(COMPARED)
    one.seek(at)
    other.seek(there)
    while length > 0:
        if length < COMPARED:
            left, right = bytearray(length), bytearray(length)
        count = one.readinto(left)  # type: ignore[attr-defined]  # every file opened for reading bytes has it
        if count != len(left) or other.readinto(right) != count or left != right:  # type: ignore[attr-defined]
            return False
        length -= count
    return True
