"""Fixity: the SHA-256 (FIPS 180-4) of a file, read once from end to end, never written to."""

import hashlib
from collections.abc import Callable
from pathlib import Path

from boxlore.disk.writing import could_not


def sha256_of(path: Path, read: Callable[[int], None] | None = None) -> str:
    """The lower-case hexadecimal digest. `read` hears the number of bytes of each piece read."""
    digest = hashlib.sha256()
    try:
        with open(path, "rb", buffering=0) as file:
            buffer = bytearray(1 << 20)
            view = memoryview(buffer)
            while count := file.readinto(buffer):
                digest.update(view[:count])
                if read is not None:
                    read(count)
    except OSError as error:
        raise could_not(error, path) from error
    return digest.hexdigest()
