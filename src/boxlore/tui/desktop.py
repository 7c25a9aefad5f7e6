"""The desktop around the terminal: whether there is one, and a folder opened in its own file manager."""

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

_PATH = re.compile(r"(?:^|In )(/[^:\n]+|[A-Z]:\\[^:\n]+)")


def can_open() -> bool:
    """Whether a graphical session is there in which a folder can be shown."""
    if sys.platform in ("win32", "darwin"):
        return not os.environ.get("SSH_CONNECTION")
    has_screen = bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))
    return has_screen and shutil.which("xdg-open") is not None


def open_folder(folder: Path) -> None:
    """Show the folder, and do not wait for whoever shows it."""
    if sys.platform == "win32":
        os.startfile(folder)
        return
    program = "open" if sys.platform == "darwin" else "xdg-open"
    quiet = subprocess.DEVNULL
    subprocess.Popen([program, str(folder)], stdin=quiet, stdout=quiet, stderr=quiet, start_new_session=True)


def folder_named(lines: Sequence[str]) -> Path | None:
    """The folder that a report names first: of a file the one that it lies in. None if no path in it is there."""
    for line in lines:
        match = _PATH.search(line)
        path = Path(match[1]) if match else None
        if path is not None and path.exists():
            return path if path.is_dir() else path.parent
    return None
