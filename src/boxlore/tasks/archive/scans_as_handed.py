"""Scans as they leave: in the open part the picture, and nothing that stands beside it in the file.

Beside the picture a file may tell where it was scanned (often somebody's home), whose machine it was, names, and what
was cut off the picture, in places that no reader shows. The keeper's scans are read and never written: one that holds
more than its picture is copied beside the package without it, its pixels untouched, and proved; the records then tell
the digest and size of what is handed over. One that cannot be taken apart stays out of the part, with a sentence.
The closed part has every scan as it is, but for those out of whose files words were struck: of these too it has the
picture alone, so that nobody reads the words in it, and a collection made of it does not take them back.
"""

from dataclasses import dataclass, field, replace
from pathlib import Path

from boxlore.core.errors import ByteFault
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.findings import Finding, Severity
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not, write_pieces
from boxlore.formats import picture_files

SOURCE = "our own rule: what leaves is listed, all else stays (formats.bare)"
STRUCK = "our own rule: what was struck leaves nowhere"
FIXITY = "fixity of scans: common practice, no source"
CLEANED = "metadata modification"
"""A term of the Library of Congress preservation vocabulary for events (from memory)."""


@dataclass(frozen=True, slots=True)
class Cleaned:
    """A scan with its picture alone: as records tell it, the file, and the digest of the keeper's own."""

    scan: ScanFile
    path: Path
    sha256_before: str

    @property
    def outcome(self) -> str:
        """What was done, as the table of fixity events has it."""
        return f"all but its picture was left out; the keeper's own has SHA-256 {self.sha256_before}"


@dataclass(slots=True)
class HandedScans:
    """The scans of one part. Each is looked at once; `folder` is the collection's, `work` takes those cleaned."""

    folder: Path
    work: Path
    is_open: bool
    cleaned: dict[str, Cleaned] = field(default_factory=dict)
    findings: list[Finding] = field(default_factory=list)
    _as_they_are: set[str] = field(default_factory=set)
    _left_out: set[str] = field(default_factory=set)

    def record(self, record: Record) -> Record:
        """The record with its scans as they are handed over. Scans that do not leave are not looked at."""
        if record.closed_scans:
            return record
        handed = tuple(handed for scan in record.scans if (handed := self._scan(record, scan)) is not None)
        return record if handed == record.scans else replace(record, scans=handed)

    def path(self, scan: ScanFile) -> Path:
        """The file to be packed for a scan."""
        return self.cleaned[scan.id].path if scan.id in self.cleaned else self.folder / scan.path

    def _scan(self, record: Record, scan: ScanFile) -> ScanFile | None:
        if scan.id not in self._as_they_are | self._left_out | self.cleaned.keys():
            self._look_at(record, scan)
        if scan.id in self._left_out:
            return None
        if scan.id not in self.cleaned:
            return scan
        handed = self.cleaned[scan.id].scan
        return replace(scan, sha256=handed.sha256, bytes=handed.bytes)

    def _look_at(self, record: Record, scan: ScanFile) -> None:
        """Clean a scan if it needs it. One that is not there is said by whoever packs it."""
        is_struck = EMBEDDED_WORDS.read(scan.embedded).are_struck
        is_there = (self.folder / scan.path).is_file()
        if is_there and scan.sha256 and sha256_of(self.folder / scan.path) != scan.sha256:
            words = f"The scan {scan.path} of {record.number} is not as it was at its intake: its SHA-256 is another."
            advice = "Bring the right file back, or take this one in; `boxlore verify` tells more."
            changed = Finding(rule="scan.changed", severity=Severity.ERROR, message=f"{words} {advice}", source=FIXITY)
            self.findings.append(changed)
        if not (self.is_open or is_struck) or not is_there:
            self._as_they_are.add(scan.id)
            return
        try:
            cleaned = self._clean(scan)
        except ByteFault as fault:
            self._left_out.add(scan.id)
            words = f"The scan {scan.path} of {record.number} is left out of the {self._part} part: {fault}"
            why = "Words were struck out of what it says" if is_struck else "It may hold more than its picture"
            self._find(Severity.ERROR, f"{words} {why}, and it cannot be cleaned.", is_struck)
            return
        if cleaned is None:
            self._as_they_are.add(scan.id)
            return
        self.cleaned[scan.id] = cleaned
        words = f"{record.number}: what {scan.path} holds beside its picture is left out of the {self._part} part."
        self._find(Severity.NOTE, words, is_struck)

    @property
    def _part(self) -> str:
        return "open" if self.is_open else "closed"

    def _clean(self, scan: ScanFile) -> Cleaned | None:
        """The scan with its picture alone; None where it is so. Raises ByteFault where it cannot be taken apart."""
        target = self.work / f"{len(self.cleaned)}{Path(scan.path).suffix}"
        try:
            with open_regular(self.folder / scan.path) as source:
                rewritten = picture_files.bare_picture(source)
                if picture_files.is_whole(rewritten, source):
                    return None
                with open(target, "w+b") as out:
                    write_pieces(rewritten.pieces, source, out)
                    picture_files.prove_bare(source, out)
        except OSError as error:
            raise could_not(error, target) from error
        handed = replace(scan, sha256=sha256_of(target), bytes=target.stat().st_size)
        return Cleaned(handed, target, scan.sha256)

    def _find(self, severity: Severity, message: str, is_struck: bool) -> None:
        source = STRUCK if is_struck else SOURCE
        self.findings.append(Finding(rule="scan.bare", severity=severity, message=message, source=source))
