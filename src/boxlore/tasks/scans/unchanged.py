"""Whether a scan is, to the byte, the file that was taken in; asked before its picture goes under its caption.

A file that was changed, or swapped with another, may show anything: another photograph, or somebody who is withheld
from those for whom the output is. So no output shows it, and each says so by name.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from pathlib import Path
from typing import TypeVar

from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.progress import QUIET, Progress, go_on, workers
from boxlore.tasks.scans.file_state import SOURCE

_Made = TypeVar("_Made")

TRIES = 3
"""How often a picture is made of a scan that is being written to meanwhile."""


def changed_finding(scan: ScanFile, number: str, what_becomes_of_it: str) -> Finding:
    """What is said of a changed scan; `what_becomes_of_it` is a sentence."""
    advice = "Bring the right file back, or let it take the place of that scan: boxlore intake FILE --replace."
    return make_finding(
        "scan.changed", Severity.ERROR, f"{_is_another(scan, number)} {what_becomes_of_it} {advice}", SOURCE
    )


def as_it_is_now(scan: ScanFile, number: str) -> Finding:
    """What is noted of a changed scan that goes at the keeper's word."""
    words = f"{_is_another(scan, number)} It is handed over as it is now, as you asked."
    return make_finding("scan.changed", Severity.NOTE, words, SOURCE)


def _is_another(scan: ScanFile, number: str) -> str:
    return f"The scan {scan.path} of {number} is not as it was at its intake: its SHA-256 is another."


@dataclass(slots=True)
class ScanCheck:
    """Looks whether scans are as they were at intake, for one output; several threads may ask."""

    folder: Path
    what_becomes_of_it: str = "It is not shown."
    _changed: dict[tuple[str, str], Finding] = field(default_factory=dict)

    @property
    def findings(self) -> tuple[Finding, ...]:
        """A finding for each item's scan that is not as it was, in the order of the numbers."""
        return tuple(self._changed[key] for key in sorted(self._changed))

    def is_changed(self, scan: ScanFile, number: str) -> bool:
        """Whether the file is there and is another; one that is gone, is no file (a pipe) or cannot be read is said by
        whoever shows it."""
        path = self.folder / scan.path
        try:
            changed = bool(scan.sha256 and path.is_file()) and (
                path.stat().st_size != (scan.bytes or path.stat().st_size) or sha256_of(path) != scan.sha256
            )
        except (CouldNot, OSError):
            return False
        if changed:
            self._changed[number, scan.id] = changed_finding(scan, number, self.what_becomes_of_it)
        return changed

    def made(self, scan: ScanFile, number: str, make: Callable[[Path], _Made]) -> _Made | None:
        """What `make` makes of the file; None where that is not, to the end of the making, as it was at its intake.

        Raises what `make` raises.
        """
        path = self.folder / scan.path
        for _ in range(TRIES):
            before = _state(path)
            if self.is_changed(scan, number):
                return None
            picture = make(path)
            if before == _state(path):
                return picture
        self._changed[number, scan.id] = changed_finding(scan, number, self.what_becomes_of_it)
        return None

    def look_at(self, records: Iterable[Record], progress: Progress = QUIET) -> None:
        """Look at every scan of these records that may be seen, for an output that shows no pictures."""
        sides = [(scan, record.number) for record in records if not record.closed_scans for scan in record.scans]
        progress.begin("Reading scans", len(sides))
        with workers() as pool:
            for _ in pool.map(lambda side: not progress.stopped() and self.is_changed(*side), sides):
                progress.step()
        go_on(progress)


def _state(path: Path) -> tuple[int, ...]:
    """What of a file is other when it was written to, or another has its name (stat(2)); empty where it is not there.

    The time of a change of its state (ctime) is set by no program.
    """
    try:
        stat = path.stat()
    except OSError:
        return ()
    return stat.st_dev, stat.st_ino, stat.st_size, stat.st_mtime_ns, stat.st_ctime_ns
