"""Which collections were open last, so that bare `boxlore` opens the last one again, and offers the others.

One folder a line in the user's own state folder, the last one first.
"""

import os
import sys
from pathlib import Path

from boxlore.core.errors import BoxloreError
from boxlore.disk.writing import write_whole
from boxlore.tasks.collection.opening import DATABASE

FILE, COLOURS = "last-collection", "colours"
MOST = 9
"""So many collections are remembered."""


def remember_colours(name: str) -> None:
    """Note the colours that were chosen; a state folder that cannot be written to costs only this comfort."""
    try:
        _folder().mkdir(parents=True, exist_ok=True)
        write_whole(_folder() / COLOURS, name.encode())
    except (OSError, RuntimeError, BoxloreError):  # RuntimeError: there is no home
        return


def colours_chosen() -> str:
    """The colours that were chosen last; '' for none."""
    try:
        return (_folder() / COLOURS).read_text(encoding="utf-8").strip()
    except (OSError, RuntimeError, UnicodeDecodeError):
        return ""


def _folder() -> Path:
    """The user's state folder (XDG Base Directory 0.8; on Windows LOCALAPPDATA)."""
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA", Path.home())) / "boxlore"
    return Path(os.environ.get("XDG_STATE_HOME") or Path.home() / ".local" / "state") / "boxlore"


def remember(folder: Path) -> None:
    """Note the collection opened last; a state folder that cannot be written to costs only this comfort."""
    try:
        _folder().mkdir(parents=True, exist_ok=True)
        before = [path for path in _lines() if path != folder.resolve()]
        lines = [str(path) for path in (folder.resolve(), *before)][:MOST]
        write_whole(_folder() / FILE, "\n".join(lines).encode())
    except (OSError, RuntimeError, BoxloreError):  # RuntimeError: there is no home
        return


def last_collection() -> Path | None:
    """The collection to open when none is named: the one we are in, else the one open last, if it is there."""
    if (Path() / DATABASE).is_file():
        return Path()
    return next(iter(recent_collections()), None)


def recent_collections() -> list[Path]:
    """The collections that were open before and are still there, the last one first."""
    return [folder for folder in _lines() if folder.is_absolute() and (folder / DATABASE).is_file()]


def _lines() -> list[Path]:
    try:
        text = (_folder() / FILE).read_text(encoding="utf-8")
    except (OSError, RuntimeError, UnicodeDecodeError):
        return []
    return [Path(line.strip()) for line in text.splitlines() if line.strip()]
