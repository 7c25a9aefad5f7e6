"""What the backups were when they were written: their SHA-256 (FIPS 180-4), so that one whose words were altered
since, which SQLite finds sound, is not brought back unnoticed.

They stand in `backups.sha256` in the collection's folder, as `sha256sum -c` reads them there. A backup without a line
(made by an older version, put there by hand, left by a kill between the two writings) is taken as it is. A strike,
which writes backups anew, drops the lines first and notes the new bytes after; the earlier ones stay behind `#`, for a
keeper may put an older copy of a backup back, out of which everything struck is taken again. A disk that refuses costs
the line alone.
"""

import re
from collections.abc import Mapping, Sequence
from contextlib import suppress
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.disk.digests import sha256_of
from boxlore.disk.writing import write_whole

LIST_NAME = "backups.sha256"

_LINE = re.compile(r"#? ?([0-9a-f]{64}) [ *](.+)")


def note(backup: Path, earlier: Sequence[str] = ()) -> None:
    """Note what a backup is now, and what it was earlier (oldest first)."""
    with suppress(CouldNot):
        _write(backup, {**_sums(backup), backup.name: [*earlier, sha256_of(backup)]})


def forget(backup: Path) -> list[str]:
    """Drop the lines of a backup that is to be changed, or is gone. Returns what it was, the oldest first."""
    sums = _sums(backup)
    was = sums.pop(backup.name, [])
    with suppress(CouldNot):
        _write(backup, sums)
    return was


def is_altered(backup: Path) -> bool:
    """Whether a backup was never, to the byte, what it is now. Raises CouldNot where it cannot be read."""
    noted = _sums(backup).get(backup.name)
    return noted is not None and sha256_of(backup) not in noted


def _list(backup: Path) -> Path:
    return backup.parent.parent / LIST_NAME


def _sums(backup: Path) -> dict[str, list[str]]:
    """Digests by name, the oldest first, of the backups that lie beside this one; none of what cannot be read."""
    sums: dict[str, list[str]] = {}
    with suppress(OSError):
        for line in _list(backup).read_text(encoding="utf-8", errors="replace").splitlines():
            if match := _LINE.fullmatch(line):
                sums.setdefault(Path(match[2]).name, []).append(match[1])
    return sums


def _write(backup: Path, sums: Mapping[str, Sequence[str]]) -> None:
    there = [(name, digests) for name, digests in sorted(sums.items()) if (backup.parent / name).exists()]
    lines = [
        f"{'' if digest == digests[-1] else '# '}{digest}  {backup.parent.name}/{name}\n"
        for name, digests in there
        for digest in dict.fromkeys(digests)
    ]
    if lines or _list(backup).exists():
        write_whole(_list(backup), "".join(lines).encode())
