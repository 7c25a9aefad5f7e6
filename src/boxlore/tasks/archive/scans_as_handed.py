"""Scans as they leave: in the open part the picture, and nothing that stands beside it in the file.

Beside the picture a file may tell where it was scanned (often somebody's home), whose machine it was, names, and what
was cut off the picture, in places that no reader shows. The keeper's scans are read and never written: one that holds
more than its picture is copied beside the package without it, its pixels untouched, and proved; the records then tell
the digest and size of what is handed over. One that cannot be taken apart stays out of the part, with a sentence.
The closed part has every scan as it is, but for those out of whose files words were struck: of these too it has the
picture alone, so that nobody reads the words in it, and a collection made of it does not take them back.

A scan that is not as it was at its intake stays out of both parts, since it may show anything: whoever decides that it
goes all the same hands it over as it is now, with its own digest in every record. Each scan is read once: it is copied
into the package's own folder while it is hashed (`Staged`), and moved to its place. For an update it is hashed alone,
since most scans stay.
"""

import os
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import BinaryIO

from boxlore.core.errors import ByteFault, CouldNot
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not, write_pieces
from boxlore.exports.bag import Staged, hashed, stage
from boxlore.formats import picture_files
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.scans.fixity_events import CHECKED
from boxlore.tasks.scans.unchanged import changed_finding

SOURCE = "our own rule: what leaves is listed, all else stays (formats.bare)"
STRUCK = "our own rule: what was struck leaves nowhere"
FIXITY = "fixity of scans: common practice, no source"
CLEANED = "metadata modification"
"""A term of the Library of Congress preservation vocabulary for events (from memory)."""


@dataclass(frozen=True, slots=True)
class Cleaned:
    """A scan with its picture alone: as records tell it, and the digest of the keeper's own."""

    scan: ScanFile
    sha256_before: str
    event = CLEANED

    @property
    def outcome(self) -> str:
        """What was done, as the table of fixity events has it."""
        return f"all but its picture was left out; the keeper's own has SHA-256 {self.sha256_before}"


@dataclass(frozen=True, slots=True)
class Changed:
    """A scan that goes as it is now, at the keeper's word, and the digest that it had at its intake."""

    scan: ScanFile
    sha256_before: str
    event = CHECKED

    @property
    def outcome(self) -> str:
        """What was found, as the table of fixity events has it."""
        return f"not as at its intake, when its SHA-256 was {self.sha256_before}; handed over as it is now"


@dataclass(slots=True)
class HandedScans:
    """The scans of one part. Each is looked at once; `folder` is the collection's, `work` takes copies of scans."""

    folder: Path
    work: Path
    is_open: bool
    take_changed: bool = False
    """Whether a scan that is not as it was at its intake goes, as it is now."""
    staged: bool = True
    """Whether scans are copied while they are hashed; else they are copied by whoever packs them."""
    progress: Progress = QUIET
    cleaned: dict[str, Cleaned] = field(default_factory=dict)
    changed: dict[str, Changed] = field(default_factory=dict)
    findings: list[Finding] = field(default_factory=list)
    _files: dict[str, Path | Staged] = field(default_factory=dict)
    _left_out: set[str] = field(default_factory=set)

    def record(self, record: Record) -> Record:
        """The record with its scans as they are handed over. Scans that do not leave are not looked at."""
        if record.closed_scans:
            return record
        handed = tuple(handed for scan in record.scans if (handed := self._scan(record, scan)) is not None)
        return record if handed == record.scans else replace(record, scans=handed)

    def file(self, scan: ScanFile) -> Path | Staged:
        """The file to be packed for a scan that leaves; it may not be there."""
        return self._files[scan.id]

    def _scan(self, record: Record, scan: ScanFile) -> ScanFile | None:
        if scan.id not in self._left_out and scan.id not in self._files:
            self._look_at(record, scan)
        if scan.id in self._left_out:
            return None
        handed = self.cleaned.get(scan.id) or self.changed.get(scan.id)
        return scan if handed is None else replace(scan, sha256=handed.scan.sha256, bytes=handed.scan.bytes)

    def _look_at(self, record: Record, scan: ScanFile) -> None:
        """Take a scan, cleaned if it needs it. One that is not there is said by whoever packs it."""
        path = self.folder / scan.path
        if not path.is_file():
            self._files[scan.id] = path
            return
        is_struck = EMBEDDED_WORDS.read(scan.embedded).are_struck
        try:
            digest = self._take(scan, path, bare=self.is_open or is_struck)
        except _UnreadableScan as error:
            words = f"The scan {scan.path} of {record.number} cannot be read and is left out: {error.why}"
            self._leave_out(scan, make_finding("scan.unreadable", Severity.ERROR, words, FIXITY))
            return
        except ByteFault as fault:
            self._say_uncleaned(record, scan, fault, is_struck)
            return
        if scan.sha256 and digest != scan.sha256 and not self.take_changed:
            words = "It is left out; --changed-scans hands it over as it is now."
            self._leave_out(scan, changed_finding(scan, record.number, words))
        elif scan.sha256 and digest != scan.sha256:
            self.findings.append(changed_finding(scan, record.number, "It is handed over as it is now."))
            if scan.id not in self.cleaned:
                size = self._size(scan)
                self.changed[scan.id] = Changed(replace(scan, sha256=digest, bytes=size), scan.sha256)
        if scan.id in self.cleaned:
            words = f"{record.number}: what {scan.path} holds beside its picture is left out of the {self._part} part."
            self._find(Severity.NOTE, words, is_struck)

    def _size(self, scan: ScanFile) -> int:
        """Bytes of the file to be packed."""
        file = self._files[scan.id]
        return file.size if isinstance(file, Staged) else file.stat().st_size

    def _say_uncleaned(self, record: Record, scan: ScanFile, fault: ByteFault, is_struck: bool) -> None:
        """Leave out a scan that cannot be taken apart: since it was changed, or of a kind of which nothing is known."""
        if scan.sha256 and _digest(self.folder / scan.path) != scan.sha256:
            self._leave_out(scan, changed_finding(scan, record.number, "It is left out."))
            return
        words = f"The scan {scan.path} of {record.number} is left out of the {self._part} part: {fault}"
        why = "Words were struck out of what it says" if is_struck else "It may hold more than its picture"
        self._left_out.add(scan.id)
        self._find(Severity.ERROR, f"{words} {why}, and it cannot be cleaned.", is_struck)

    def _leave_out(self, scan: ScanFile, finding: Finding) -> None:
        self.findings.append(finding)
        self._left_out.add(scan.id)
        self.cleaned.pop(scan.id, None)
        if isinstance(file := self._files.pop(scan.id, None), Staged):
            file.path.unlink(missing_ok=True)

    @property
    def _part(self) -> str:
        return "open" if self.is_open else "closed"

    def _take(self, scan: ScanFile, path: Path, *, bare: bool) -> str:
        """Take the file that is to be packed. Returns the SHA-256 of the keeper's own.

        Raises ByteFault where it cannot be taken apart, _UnreadableScan, CouldNot where the disk takes no more.
        """
        target = self.work / f"{len(self._files)}-{len(self._left_out)}{path.suffix}"
        try:
            source = open_regular(path)
        except OSError as error:
            raise _UnreadableScan(str(could_not(error, path, reading=True))) from error
        try:
            with source:
                if bare and (cleaned := self._clean(scan, source, target)) is not None:
                    self.cleaned[scan.id] = cleaned
                    return _digest(path)
                source.seek(0)
                if not self.staged:
                    self._files[scan.id] = path
                    return _digest(path)
                staged = self._files[scan.id] = stage(source, target, self._copied)
                return staged.digests["sha256"]
        except OSError as error:
            _digest(path)  # whose error is it: the scan's, or that of the disk to which it is copied?
            raise could_not(error, target) from error

    def _copied(self, count: int) -> None:
        """So many bytes more are copied. Raises CouldNot if the person asked to stop."""
        go_on(self.progress)

    def _clean(self, scan: ScanFile, source: BinaryIO, target: Path) -> Cleaned | None:
        """The scan with its picture alone; None where it is so. Raises ByteFault where it cannot be taken apart."""
        rewritten = picture_files.bare_picture(source)
        if picture_files.is_whole(rewritten, source):
            return None
        with open(target, "w+b") as out:
            write_pieces(rewritten.pieces, source, out)
            picture_files.prove_bare(source, out)
            out.flush()
            os.fsync(out.fileno())
        file = self._files[scan.id] = hashed(target)
        return Cleaned(replace(scan, sha256=file.digests["sha256"], bytes=file.size), scan.sha256)

    def _find(self, severity: Severity, message: str, is_struck: bool) -> None:
        source = STRUCK if is_struck else SOURCE
        self.findings.append(Finding(rule="scan.bare", severity=severity, message=message, source=source))


def _digest(path: Path) -> str:
    """The SHA-256 of a scan. Raises _UnreadableScan."""
    try:
        return sha256_of(path)
    except CouldNot as error:
        raise _UnreadableScan(str(error)) from error


@dataclass(eq=False)
class _UnreadableScan(Exception):
    """A scan that cannot be read, and why."""

    why: str
