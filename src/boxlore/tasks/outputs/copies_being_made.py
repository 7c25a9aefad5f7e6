"""The list of copies that a run is making, so that a run that was killed knows its own work again.

The contents page is written when a run ends. Until then this list has a line for each file, written and flushed before
the file takes its name (a caption that lies beside a copy too):

    line = sha256 " " audience " " name

`name` is relative to the folder of the copies. A file with the digest that its line gives is to the byte one that we
wrote. The list goes when the contents page is written and says all that it said of files that are there.
"""

import os
import re
import threading
from collections.abc import Collection
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.disk.writing import could_not

FILE_NAME = ".copies-being-made"

_LINE = re.compile(r"([0-9a-f]{64}) (\S+) (.+)")


@dataclass(slots=True)
class BeingMade:
    """The list of one folder. `write` may be called by several threads at once."""

    folder: Path
    digests: dict[str, set[str]] = field(default_factory=dict)
    """Name -> the SHA-256 of each shape in which it was written."""
    audiences: set[str] = field(default_factory=set)
    _lock: threading.Lock = field(default_factory=threading.Lock)

    def wrote(self, copy: str, digest: str) -> bool:
        """Whether a run that did not come to its end wrote this file of the folder with these bytes."""
        return digest in self.digests.get(copy, ())

    def write(self, copy: str, digest: str, audience: str) -> None:
        """Note a file that is about to take its name. Raises CouldNot."""
        path = self.folder / FILE_NAME
        try:
            with self._lock:
                path.parent.mkdir(parents=True, exist_ok=True)
                # A link is not followed, so that nobody can have us write elsewhere.
                handle = os.open(path, os.O_WRONLY | os.O_APPEND | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0), 0o666)
                try:
                    os.write(handle, f"{digest} {audience} {copy}\n".encode())
                    os.fsync(handle)
                finally:
                    os.close(handle)
                self.digests.setdefault(copy, set()).add(digest)
        except OSError as error:
            raise could_not(error, path) from error

    def left(self) -> list[str]:
        """Names of the files that this run or a killed one made and that are there."""
        with self._lock:
            noted = list(self.digests)
        return [copy for copy in noted if (self.folder / copy).is_file()]

    def done(self, listed: Collection[str]) -> None:
        """The contents page is written, and lists these copies. The list goes, unless it knows of more."""
        if all(copy in listed or copy.removesuffix(".xmp") in listed for copy in self.left()):
            (self.folder / FILE_NAME).unlink(missing_ok=True)


def read_being_made(folder: Path) -> BeingMade:
    """The list that a killed run left, or an empty one. A line that is no line is left out."""
    try:
        text = (folder / FILE_NAME).read_text("utf-8", errors="replace")
    except FileNotFoundError:
        text = ""
    except OSError as error:
        raise could_not(error, folder / FILE_NAME) from error
    being_made = BeingMade(folder)
    for line in text.splitlines():
        if match := _LINE.fullmatch(line):
            being_made.digests.setdefault(match[3], set()).add(match[1])
            being_made.audiences.add(match[2])
    return being_made
