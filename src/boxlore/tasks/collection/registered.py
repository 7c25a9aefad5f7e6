"""Which files are scans of a collection, wherever they lie: nothing that Boxlore writes takes the place of one.

A scan may be registered where it is, in any folder and under any name; an output that was taken in is a scan too. So
the register decides, and no suffix and no folder. `--over` lets an output take the place of a foreign file, never of
a scan.
"""

import os
import unicodedata
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import WrongUse


@dataclass(frozen=True, slots=True)
class RegisteredScans:
    """Where the scans of one collection lie: their paths by name, in one spelling of capitals and marks.

    A file is looked up by its name, so that a disk with ten thousand scans, or one that is slow, is not asked of each.
    """

    by_name: dict[str, list[Path]]

    def scan_at(self, out: Path) -> Path | None:
        """The scan that `out` is: by its path, through a link, or by another spelling of the same file."""
        target = Path(os.path.realpath(out))
        for name in {out.name, target.name}:
            for scan in self.by_name.get(_spelt(name), ()):
                if scan == target or _is_same_file(scan, out):
                    return scan
        return None

    def check(self, out: Path) -> None:
        """Raises WrongUse if `out` is a scan."""
        if (scan := self.scan_at(out)) is not None:
            raise WrongUse(
                f"{scan} is a scan of this collection, and Boxlore never writes to one, also not with --over.",
                "Choose another name or folder.",
            )


def registered_scans(folder: Path, paths: Iterable[str]) -> RegisteredScans:
    """The scans of the collection in `folder`, given by their paths as the log has them."""
    home = os.path.realpath(folder)
    by_name: dict[str, list[Path]] = {}
    for path in paths:
        scan = Path(os.path.normpath(os.path.join(home, path)))
        by_name.setdefault(_spelt(scan.name), []).append(scan)
    return RegisteredScans(by_name)


def _spelt(name: str) -> str:
    """One spelling of a name, for disks on which capitals and composed letters make no difference."""
    return unicodedata.normalize("NFC", name).casefold()


def _is_same_file(scan: Path, out: Path) -> bool:
    with suppress(OSError):
        return os.path.samefile(scan, out)
    return False
