"""A file's bytes as they were hashed, to work on: what somebody writes into the file meanwhile is not among them.

The file is read once. A small one is held in memory, a large one in a file without a name, which is gone when it is
closed and mostly never reaches the disk.
"""

import hashlib
import io
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from io import BufferedReader
from pathlib import Path
from typing import BinaryIO

IN_MEMORY = 16 << 20
"""Bytes of a file up to which it is held in memory: each thread holds one."""
CHUNK = 1 << 20


@contextmanager
def as_hashed(source: BufferedReader, beside: Path) -> Iterator[tuple[BinaryIO, str]]:
    """What is left of an open file, and its SHA-256 in hexadecimal (FIPS 180-4). Raises OSError.

    A large one is held on the disk of `beside`, or of the next folder above that is there.
    """
    head = source.read(IN_MEMORY)
    digest = hashlib.sha256(head)
    if len(head) < IN_MEMORY:
        yield io.BytesIO(head), digest.hexdigest()
        return
    folder = next(folder for folder in (beside, *beside.absolute().parents) if folder.is_dir())
    with tempfile.TemporaryFile(dir=folder) as held:
        held.write(head)
        del head
        while data := source.read(CHUNK):
            digest.update(data)
            held.write(data)
        held.flush()
        held.seek(0)
        yield held, digest.hexdigest()
