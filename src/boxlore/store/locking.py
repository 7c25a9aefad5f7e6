"""Only one program may write to a collection: it holds a lock of the operating system on a file beside the database.

The system frees the lock when the program ends, however it ends, so there is nothing to clean up after a kill.
Folders on a network do not keep such locks reliably, so collections there are not written to.
"""

import os
from pathlib import Path

from boxlore.disk.unfinished import lock

LOCK_NAME = "collection.lock"
NETWORK = {"nfs", "nfs4", "cifs", "smb3", "smbfs", "fuse.sshfs", "afs", "ncpfs", "davfs", "fuse.davfs", "9p"}


class Lock:
    """The lock of one collection."""

    def __init__(self, folder: Path) -> None:
        self._path = folder / LOCK_NAME
        self._handle = -1

    def take(self) -> bool:
        """Try once to get the lock, without waiting. Returns whether it was got. Raises OSError on a read-only disk."""
        handle = os.open(self._path, os.O_RDWR | os.O_CREAT, 0o644)
        try:
            lock(handle)
        except OSError:
            os.close(handle)
            return False
        self._handle = handle
        return True

    def free(self) -> None:
        """Release the lock if it is held."""
        if self._handle >= 0:
            os.close(self._handle)
            self._handle = -1


def network_kind(folder: Path) -> str:
    """The type of the network file system that the folder is on; empty for a local one, and on other systems than
    Linux.
    """
    try:
        mounts = Path("/proc/mounts").read_text(encoding="utf-8", errors="replace").splitlines()
    except OSError:
        return ""
    longest_point, file_system = "", ""
    path = str(folder.resolve()) + "/"
    for line in mounts:
        _, point, kind_of_line, *_ = [*line.split(), "", "", ""]
        point = point.replace("\\040", " ").rstrip("/") + "/"
        if path.startswith(point) and len(point) >= len(longest_point):
            longest_point, file_system = point, kind_of_line
    return file_system if file_system in NETWORK else ""
