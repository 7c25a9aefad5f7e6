"""One writer: an operating-system lock on a file beside the database, freed by the kernel when we die.

No process id is stored, so nothing is left to clean up after a kill. Network folders do not keep such
locks reliably and are refused for writing.
"""

import os
import sys
from pathlib import Path

LOCK_NAME = "collection.lock"
NETWORK = {"nfs", "nfs4", "cifs", "smb3", "smbfs", "fuse.sshfs", "afs", "ncpfs", "davfs", "fuse.davfs", "9p"}


class Lock:
    """The right to write to a collection. `take` says whether we got it."""

    def __init__(self, folder: Path) -> None:
        self._path = folder / LOCK_NAME
        self._handle = -1

    def take(self) -> bool:
        """Try once, without waiting."""
        handle = os.open(self._path, os.O_RDWR | os.O_CREAT, 0o644)
        try:
            _lock(handle)
        except OSError:
            os.close(handle)
            return False
        self._handle = handle
        return True

    def free(self) -> None:
        """Give the right back."""
        if self._handle >= 0:
            os.close(self._handle)
            self._handle = -1


def _lock(handle: int) -> None:
    if sys.platform == "win32":
        import msvcrt

        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)


def network_kind(folder: Path) -> str:
    """The kind of network file system the folder is on, or an empty string (known on Linux only)."""
    try:
        mounts = Path("/proc/mounts").read_text(encoding="utf-8", errors="replace").splitlines()
    except OSError:
        return ""
    best, kind = "", ""
    where = str(folder.resolve()) + "/"
    for line in mounts:
        _, point, found, *_ = [*line.split(), "", "", ""]
        point = point.replace("\\040", " ").rstrip("/") + "/"
        if where.startswith(point) and len(point) >= len(best):
            best, kind = point, found
    return kind if kind in NETWORK else ""
