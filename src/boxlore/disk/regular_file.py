"""Opening a file that ought to lie there, where something else may have been put: a pipe or a device never ends."""

import errno
import os
import stat
from io import BufferedReader
from pathlib import Path


def open_regular(path: Path) -> BufferedReader:
    """A file opened for reading bytes. Raises OSError, for what is no file too, and waits for nothing.

    Without O_NONBLOCK the opening of a pipe waits for whoever writes into it (POSIX, open).
    """
    handle = os.open(path, os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_NONBLOCK", 0))
    mode = os.fstat(handle).st_mode
    if not stat.S_ISREG(mode):
        os.close(handle)
        if stat.S_ISDIR(mode):
            raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR), str(path))
        raise OSError(errno.EINVAL, "It is a pipe, a socket or a device, and no file", str(path))
    return os.fdopen(handle, "rb")
