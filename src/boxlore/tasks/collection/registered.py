"""Which files are scans of a collection, wherever they lie: nothing that Boxlore writes takes the place of one.

A scan may be registered where it is, in any folder and under any name; an output that was taken in is a scan too. So
the register decides, and no suffix and no folder. A scan may be a link too: then what it leads to is the scan, and so
is every other name of that file. `--over` lets an output take the place of a foreign file, never of a scan.
"""

import os
import unicodedata
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

from boxlore.core.errors import WrongUse


@dataclass(slots=True)
class RegisteredScans:
    """Where the scans of one collection lie: their paths by name, in one spelling of capitals and marks.

    A file is looked up by its name first. Only if no scan has that name is each scan's file asked for, once.
    """

    by_name: dict[str, list[Path]]
    _files: "_ScanFiles | None" = field(default=None, repr=False)

    def scan_at(self, out: Path) -> Path | None:
        """The scan that `out` is: by its path, through links on either side, by another spelling, or by another name
        of the same file (a hard link)."""
        target = Path(os.path.realpath(out))
        for name in {out.name, target.name}:
            for scan in self.by_name.get(_spelt(name), ()):
                if scan == target or _is_same_file(scan, out):
                    return scan
        if self._files is None:
            self._files = _files_of(scan for scans in self.by_name.values() for scan in scans)
        return self._files.scan_at(out, target)

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


@dataclass(frozen=True, slots=True)
class _ScanFiles:
    """The files that the paths of scans lead to: `there` by device and number of the file, `gone` by the path at which
    a scan that is missing now would be."""

    there: dict[tuple[int, int], Path]
    gone: dict[Path, Path]

    def scan_at(self, out: Path, target: Path) -> Path | None:
        """The scan whose file `out` is; `target` is `out` with all links followed."""
        with suppress(OSError):
            return self.there.get(_identity(out))
        return self.gone.get(target)


def _files_of(scans: Iterable[Path]) -> _ScanFiles:
    files = _ScanFiles({}, {})
    for scan in scans:
        try:
            files.there[_identity(scan)] = scan
        except OSError:
            files.gone[Path(os.path.realpath(scan))] = scan
    return files


def _identity(path: Path) -> tuple[int, int]:
    """The device and the number of a file, links followed (stat(2)). Raises OSError."""
    stat = os.stat(path)
    return stat.st_dev, stat.st_ino


def _is_same_file(scan: Path, out: Path) -> bool:
    with suppress(OSError):
        return os.path.samefile(scan, out)
    return False
