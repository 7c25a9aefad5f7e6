"""Fixity: the SHA-256 of a file (FIPS 180-4). The file is read once from end to end and never written to."""

import hashlib
from collections.abc import Callable
from pathlib import Path

from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not


def sha256_of(path: Path, progress: Callable[[int], None] | None = None) -> str:
    """The digest in lower-case hexadecimal. Raises CouldNot for a file that cannot be read.

    `progress` is called with the number of bytes of each piece read.
    """
    digest = hashlib.sha256()
    try:
        with open_regular(path) as file:
            buffer = bytearray(1 << 20)
            view = memoryview(buffer)
            while count := file.readinto(buffer):
                digest.update(view[:count])
                if progress is not None:
                    progress(count)
    except OSError as error:
        raise could_not(error, path, reading=True) from error
    return digest.hexdigest()
