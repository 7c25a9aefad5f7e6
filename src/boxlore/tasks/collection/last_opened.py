"""Which collection was open last, so that bare `boxlore` opens it again. One line in the user's own state folder."""

import os
import sys
from pathlib import Path

from boxlore.core.errors import BoxloreError
from boxlore.disk.writing import write_whole
from boxlore.tasks.collection.opening import DATABASE

FILE = "last-collection"


def _folder() -> Path:
    """The user's state folder (XDG Base Directory 0.8; on Windows LOCALAPPDATA)."""
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", Path.home())) / "boxlore"
    return Path(os.environ.get("XDG_STATE_HOME") or Path.home() / ".local" / "state") / "boxlore"


def remember(folder: Path) -> None:
    """Note the collection opened last; a state folder that cannot be written to costs only this comfort."""
    try:
        _folder().mkdir(parents=True, exist_ok=True)
        write_whole(_folder() / FILE, str(folder.resolve()).encode())
    except (OSError, BoxloreError):
        return


def last_collection() -> Path | None:
    """The collection to open when none is named: the one we are in, else the one open last, if it is there."""
    if (Path() / DATABASE).is_file():
        return Path()
    try:
        folder = Path((_folder() / FILE).read_text(encoding="utf-8").strip())
    except (OSError, UnicodeDecodeError):
        return None
    return folder if folder.is_absolute() and (folder / DATABASE).is_file() else None
