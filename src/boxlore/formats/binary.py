"""Reading bytes at an offset, so that every fault names the offset and the clause; and copies described as pieces."""

from collections.abc import Iterable
from typing import BinaryIO

from boxlore.core.errors import ByteFault

COMPARE_BYTES = 1 << 18
"""How many bytes are compared at a time: small enough that both buffers stay in the processor's cache."""

Piece = bytes | tuple[int, int]
"""A part of a copy: new bytes, or (offset, length) of a run of the source that is copied untouched."""


def read_at(file: BinaryIO, offset: int, length: int, clause: str) -> bytes:
    """Exactly `length` bytes from `offset`. Raises ByteFault with `clause` if the file ends before."""
    file.seek(offset)
    data = file.read(length)
    if len(data) != length:
        raise ByteFault(offset + len(data), f"The file ends {length - len(data)} bytes too early", clause)
    return data


def size_of(file: BinaryIO) -> int:
    """The file's size in bytes."""
    return file.seek(0, 2)


def patched(start: int, length: int, patches: Iterable[tuple[int, bytes]]) -> list[Piece]:
    """The pieces of a copy of `length` bytes of the source from `start`, with the patches put in.

    A patch is (offset in the source, new bytes). Patches lie inside the run and do not overlap.
    """
    pieces: list[Piece] = []
    at = start
    for patch_at, data in sorted(patches):
        if patch_at > at:
            pieces.append((at, patch_at - at))
        pieces.append(data)
        at = patch_at + len(data)
    if at < start + length:
        pieces.append((at, start + length - at))
    return pieces


def same_bytes(source: BinaryIO, source_at: int, copy: BinaryIO, copy_at: int, length: int) -> bool:
    """Whether `length` bytes of the source from `source_at` equal those of the copy from `copy_at`."""
    source_bytes, copy_bytes = bytearray(COMPARE_BYTES), bytearray(COMPARE_BYTES)
    source.seek(source_at)
    copy.seek(copy_at)
    while length > 0:
        if length < COMPARE_BYTES:
            source_bytes, copy_bytes = bytearray(length), bytearray(length)
        count = source.readinto(source_bytes)  # type: ignore[attr-defined]  # every file opened for reading bytes has it
        if count != len(source_bytes) or copy.readinto(copy_bytes) != count or source_bytes != copy_bytes:  # type: ignore[attr-defined]
            return False
        length -= count
    return True


def decoded(data: bytes) -> str:
    """Bytes as text: UTF-8, else Latin-1, which reads anything."""
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError:
        return data.decode("latin-1")
