"""Previews of very large pictures, so that they open for the screen at once: JPEGs in the user's cache folder.

A packed TIFF or a PNG of two hundred megapixels takes seconds to decode, and is decoded whole at intake anyway: a
smaller one is kept then, without a word of what the file says. It stands in for its file where a screen is drawn, and
nowhere else: what is printed, copied or handed on is made of the scan. A file that is changed has none. The folder is
the user's alone, holds MOST of them at most, and can be taken away at any time.
"""

import os
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path
from typing import BinaryIO

from boxlore.core.errors import BoxloreError
from boxlore.disk.writing import replacing

LONGEST = 4000
"""Pixels of a preview's longer side: what the largest screen asks for."""
SLOW = 32_000_000
"""Pixels from which a picture that is decoded whole has one: it takes half a second and more (measured)."""
MOST = 100
"""Previews that are kept: some 200 MB. The oldest goes first."""


@dataclass(frozen=True, slots=True)
class Previews:
    """Those in a folder."""

    folder: Path

    def instead_of(self, path: Path, longest: int, area: tuple[float, ...]) -> Path:
        """The preview of a picture, if there is one that shows so many pixels of a part of it; else the file itself."""
        part = min(area[2:4], default=1.0)
        if longest > LONGEST * part:
            return path
        with suppress(OSError):
            preview = self._path(path)
            if _is_whole(preview):
                return preview
            preview.unlink(missing_ok=True)
        return path

    def keep(self, path: Path, save: Callable[[BinaryIO], None]) -> None:
        """Keep a preview, which `save` writes. Where the disk refuses there is none."""
        with suppress(BoxloreError, OSError):
            self.folder.mkdir(parents=True, exist_ok=True, mode=0o700)
            with replacing(self._path(path)) as out:
                save(out)
            kept = sorted(self.folder.glob("*.jpg"), key=lambda preview: preview.stat().st_mtime_ns)
            for old in kept[:-MOST]:
                old.unlink(missing_ok=True)

    def _path(self, path: Path) -> Path:
        """Named for the file as it is now: its path, size and time, of which the name tells none. Raises OSError."""
        facts = path.stat()
        name = f"{os.path.abspath(path)}\n{facts.st_size}\n{facts.st_mtime_ns}"
        return self.folder / f"{sha256(name.encode('utf-8', 'surrogateescape')).hexdigest()}.jpg"


def _is_whole(preview: Path) -> bool:
    """Whether the bytes of a JPEG begin and end as they must (ITU-T T.81, B.1.1.3): on a failing disk they may not."""
    if not preview.is_file():
        return False
    with open(preview, "rb") as file:
        begins = file.read(2)
        file.seek(-2, os.SEEK_END)
        return (begins, file.read(2)) == (b"\xff\xd8", b"\xff\xd9")
