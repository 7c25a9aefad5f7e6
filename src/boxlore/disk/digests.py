"""Fixity: the SHA-256 of a file (FIPS 180-4). The file is read once from end to end and never written to."""

import hashlib
import shutil
from collections.abc import Callable
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import CHUNK, could_not, replacing


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


def copy_proved(source: Path, target: Path, sha256: str) -> None:
    """Copy a file, read the copy again, and only then give it its name.

    Raises CouldNot, and nothing is there then, where the copy has another SHA-256: the file was changed since it was
    hashed, or a disk fails.
    """
    try:
        file = open_regular(source)
    except OSError as error:
        raise could_not(error, source, reading=True) from error
    with file, replacing(target) as out:
        shutil.copyfileobj(file, out, CHUNK)
        out.flush()
        if sha256_of(Path(out.name)) != sha256:
            raise CouldNot(
                f"The copy of {source.name} differs from it.",
                "It was changed just now, or a disk is failing.",
            )
