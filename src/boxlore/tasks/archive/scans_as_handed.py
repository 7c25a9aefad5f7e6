"""Scans as they leave: in the open part the picture, and nothing that stands beside it in the file.

Beside the picture a file may tell where it was scanned (often somebody's home), whose machine it was, names, and what
was cut off the picture, in places that no reader shows. The keeper's scans are read and never written: one that holds
more than its picture is copied beside the package without it, its pixels untouched, and proved; the records then tell
the digest and size of what is handed over. One that cannot be taken apart stays out of the part, with a sentence.
The closed part has every scan as it is, but for those out of whose files words were struck: of these too it has the
picture alone, so that nobody reads the words in it, and a collection made of it does not take them back.

A scan that is not as it was at its intake stays out of both parts, since it may show anything: whoever decides that it
goes all the same hands it over as it is now, with its own digest in every record. Of a scan that is damaged or gone
here the archive may have a good one, of an earlier transfer: it keeps that one, and the records of an update go on to
tell of it, as the archive has it.

What leaves is always what was checked, also if somebody changes or swaps a scan meanwhile: each scan is read once, and
copied into the package's own folder while it is hashed (`Staged`); this copy is cleaned, or moved to its place. For an
update most scans stay. So they are hashed alone at first, and those that go are read again by the same rules (`take`).
"""

import hashlib
import os
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from io import BufferedReader
from itertools import count
from pathlib import Path
from typing import BinaryIO

from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.errors import ByteFault, CouldNot
from boxlore.core.fields.pictures import EMBEDDED_WORDS
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not, write_pieces
from boxlore.exports.bag import Staged, hashed, stage
from boxlore.formats import picture_files
from boxlore.tasks.archive.transfer_updates import HeldFile
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.scans.fixity_events import CHECKED
from boxlore.tasks.scans.unchanged import as_it_is_now, changed_finding

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
    before = "the keeper's own file of {}"
    """What events before this one are of: another bitstream is another object (PREMIS 3.0, derivation; from memory)."""

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
    before = "{} as it was taken in"

    @property
    def outcome(self) -> str:
        """What was found, as the table of fixity events has it."""
        return f"not as at its intake, when its SHA-256 was {self.sha256_before}; handed over as it is now"


Held = Callable[[str], HeldFile | None]
"""The file that an archive has under a path of a part."""


@dataclass(frozen=True, slots=True)
class _Later:
    """A scan of an update that was hashed, and is copied when it is known that it goes."""

    scan: ScanFile
    size: int


@dataclass(slots=True)
class HandedScans:
    """The scans of one part. Each is looked at once; `folder` is the collection's, `work` takes copies of scans."""

    folder: Path
    work: Path
    is_open: bool
    take_changed: bool = False
    """Whether a scan that is not as it was at its intake goes, as it is now."""
    staged: bool = True
    """Whether scans are copied while they are hashed; else those that go are copied by `take`."""
    progress: Progress = QUIET
    held: Held = lambda path: None
    """Of an update: what the archive has already."""
    cleaned: dict[str, Cleaned] = field(default_factory=dict)
    changed: dict[str, Changed] = field(default_factory=dict)
    findings: list[Finding] = field(default_factory=list)
    damaged: set[str] = field(default_factory=set)
    """Paths in the part of scans that are left out only since their files are not as they were at their intake."""
    _files: dict[str, Staged | _Later | None] = field(default_factory=dict)
    """None for one that is not there."""
    _left_out: set[str] = field(default_factory=set)
    _at_the_archive: dict[str, ScanFile] = field(default_factory=dict)
    """Scans that the archive has and that are not as they were here, as it has them."""
    _names: "count[int]" = field(default_factory=count)
    """Numbers for the names of the copies."""

    def record(self, record: Record) -> Record:
        """The record with its scans as they are handed over. Scans that do not leave are not looked at."""
        if record.closed_scans:
            return record
        handed = tuple(handed for scan in record.scans if (handed := self._scan(record, scan)) is not None)
        return record if handed == record.scans else replace(record, scans=handed)

    def file(self, scan: ScanFile) -> Staged | None:
        """The file to be packed for a scan that leaves; None where it is not there."""
        file = self._files[scan.id]
        assert not isinstance(file, _Later), "an update takes what goes first"
        return file

    def take(self, record: Record) -> Record:
        """The record of an update that goes, its scans copied. A scan that was changed meanwhile is looked at anew."""
        if record.closed_scans:
            return record
        for scan in record.scans:
            if isinstance(later := self._files.get(scan.id), _Later):
                del self._files[scan.id]
                self.changed.pop(scan.id, None)
                self._look_at(record, later.scan, staged=True)
        return self.record(record)

    def _scan(self, record: Record, scan: ScanFile) -> ScanFile | None:
        if scan.id not in self._left_out and scan.id not in self._files:
            self._look_at(record, scan, staged=self.staged)
        if scan.id in self._left_out:
            return None
        if scan.id in self._at_the_archive:
            return self._at_the_archive[scan.id]
        handed = self.cleaned.get(scan.id) or self.changed.get(scan.id)
        return scan if handed is None else replace(scan, sha256=handed.scan.sha256, bytes=handed.scan.bytes)

    def _look_at(self, record: Record, scan: ScanFile, *, staged: bool) -> None:
        """Take a scan, cleaned if it needs it. One that is not there, and not at the archive, is said by whoever packs
        it."""
        path = self.folder / scan.path
        is_gone = not path.is_file()
        if is_gone and not self._is_at_the_archive(record, scan):
            self._files[scan.id] = None
            return
        is_struck = EMBEDDED_WORDS.read(scan.embedded).are_struck
        if is_gone:
            words = f"The scan {scan.path} of {record.number} is not there."
            self._leave_out(record, scan, missing_finding(f"{words} {_KEPT}"), is_struck)
            return
        try:
            digest = self._take(scan, path, bare=self.is_open or is_struck, staged=staged)
        except _UnreadableScan as error:
            words = f"The scan {scan.path} of {record.number} cannot be read: {error.why} {self._fate(record, scan)}"
            finding = make_finding("scan.unreadable", Severity.ERROR, words, FIXITY)
            self._leave_out(record, scan, finding, is_struck)
            return
        except _Uncleanable as error:
            self._say_uncleaned(record, scan, error, is_struck)
            return
        if scan.sha256 and digest != scan.sha256 and not self.take_changed:
            words = f"{self._fate(record, scan)}{self._way_out}"
            self._leave_out(record, scan, changed_finding(scan, record.number, words), is_struck)
        elif scan.sha256 and digest != scan.sha256:
            if not isinstance(self._files[scan.id], _Later):
                self.findings.append(as_it_is_now(scan, record.number))
            if scan.id not in self.cleaned:
                size = self._size(scan)
                self.changed[scan.id] = Changed(replace(scan, sha256=digest, bytes=size), scan.sha256)
        if scan.id in self.cleaned:
            words = f"{record.number}: what {scan.path} holds beside its picture is left out of the {self._part} part."
            self._find(Severity.NOTE, words, is_struck)

    def _size(self, scan: ScanFile) -> int:
        """Bytes of the file to be packed."""
        file = self._files[scan.id]
        return file.size if file is not None else 0

    def _say_uncleaned(self, record: Record, scan: ScanFile, error: "_Uncleanable", is_struck: bool) -> None:
        """Leave out a scan that cannot be taken apart: since it was changed, or of a kind of which nothing is known."""
        if scan.sha256 and error.sha256 != scan.sha256:
            finding = changed_finding(scan, record.number, f"{self._fate(record, scan)}{self._way_out}")
            self._leave_out(record, scan, finding, is_struck)
            return
        words = f"The scan {scan.path} of {record.number} is left out of the {self._part} part: {error.fault}"
        why = "Words were struck out of what it says" if is_struck else "It may hold more than its picture"
        self._left_out.add(scan.id)
        self._find(Severity.ERROR, f"{words} {why}, and it cannot be cleaned.", is_struck)

    def _leave_out(self, record: Record, scan: ScanFile, finding: Finding, is_struck: bool) -> None:
        """Leave out a scan whose file is not as it was at its intake; the archive keeps the one it has, if it may."""
        self.findings.append(finding)
        path = packed_path(record, scan)
        if not is_struck:
            self.damaged.add(path)
        held = self.held(path)
        if held is not None and not is_struck and (held.bytes or held.sha256 == scan.sha256):
            self._at_the_archive[scan.id] = replace(scan, sha256=held.sha256, bytes=held.bytes or scan.bytes)
        else:
            self._left_out.add(scan.id)
        self.cleaned.pop(scan.id, None)
        if isinstance(file := self._files.pop(scan.id, None), Staged):
            file.path.unlink(missing_ok=True)

    def _is_at_the_archive(self, record: Record, scan: ScanFile) -> bool:
        return self.held(packed_path(record, scan)) is not None

    def _fate(self, record: Record, scan: ScanFile) -> str:
        """What becomes of a scan whose file is not as it was: two sentences where the archive has a good one."""
        return f"It is left out. {_KEPT}" if self._is_at_the_archive(record, scan) else "It is left out."

    @property
    def _way_out(self) -> str:
        return "" if self.take_changed else " --changed-scans hands it over as it is now."

    @property
    def _part(self) -> str:
        return "open" if self.is_open else "closed"

    def _take(self, scan: ScanFile, path: Path, *, bare: bool, staged: bool) -> str:
        """Take the file that is to be packed. Returns the SHA-256 of the keeper's own.

        Raises _Uncleanable where it cannot be taken apart, _UnreadableScan, CouldNot where the disk takes no more.
        """
        name = next(self._names)
        target = self.work / f"{name}{path.suffix}"
        try:
            source = open_regular(path)
        except OSError as error:
            raise _UnreadableScan(str(could_not(error, path, reading=True))) from error
        try:
            with source:
                if not staged and not (bare and _holds_more(source)):
                    self._files[scan.id] = _Later(scan, source.seek(0, os.SEEK_END))
                    return _digest(source, path)
                source.seek(0)
                copied = stage(source, target, self._copied, to_pack=not bare)
        except OSError as error:
            _digest_at(path)  # whose error is it: the scan's, or that of the disk to which it is copied?
            raise could_not(error, target) from error
        self._files[scan.id] = self._alone(scan, copied, self.work / f"{name}-alone{path.suffix}") if bare else copied
        return copied.digests["sha256"]

    def _copied(self, count: int) -> None:
        """So many bytes more are copied. Raises CouldNot if the person asked to stop."""
        go_on(self.progress)

    def _alone(self, scan: ScanFile, copied: Staged, target: Path) -> Staged:
        """The copy of a scan with its picture alone. Raises _Uncleanable, or CouldNot where the disk takes no more."""
        try:
            with open(copied.path, "r+b") as source:
                rewritten = picture_files.bare_picture(source)
                if picture_files.is_whole(rewritten, source):
                    os.fsync(source.fileno())
                    return hashed(copied.path)
                with open(target, "w+b") as out:
                    write_pieces(rewritten.pieces, source, out)
                    picture_files.prove_bare(source, out)
                    out.flush()
                    os.fsync(out.fileno())
            file = hashed(target)
        except ByteFault as fault:
            target.unlink(missing_ok=True)
            copied.path.unlink()
            raise _Uncleanable(fault, copied.digests["sha256"]) from fault
        except OSError as error:
            raise could_not(error, target) from error
        copied.path.unlink()
        self.cleaned[scan.id] = Cleaned(replace(scan, sha256=file.digests["sha256"], bytes=file.size), scan.sha256)
        return file

    def _find(self, severity: Severity, message: str, is_struck: bool) -> None:
        source = STRUCK if is_struck else SOURCE
        self.findings.append(Finding(rule="scan.bare", severity=severity, message=message, source=source))


_KEPT = "The archive keeps the one that it has."


def missing_finding(words: str) -> Finding:
    """What is said of a scan that is not there."""
    return make_finding("scan.missing", Severity.ERROR, words, FIXITY)


def _holds_more(source: BinaryIO) -> bool:
    """Whether a scan holds more than its picture, or cannot be taken apart."""
    try:
        return not picture_files.is_whole(picture_files.bare_picture(source), source)
    except ByteFault:
        return True


def _digest(source: BufferedReader, path: Path) -> str:
    """The SHA-256 of an open scan, from its beginning. Raises _UnreadableScan."""
    try:
        source.seek(0)
        return hashlib.file_digest(source, "sha256").hexdigest()
    except OSError as error:
        raise _UnreadableScan(str(could_not(error, path, reading=True))) from error


def _digest_at(path: Path) -> str:
    """The SHA-256 of a scan. Raises _UnreadableScan."""
    try:
        return sha256_of(path)
    except CouldNot as error:
        raise _UnreadableScan(str(error)) from error


@dataclass(eq=False)
class _Uncleanable(Exception):
    """A scan that cannot be taken apart, why, and the SHA-256 of what was read."""

    fault: ByteFault
    sha256: str


@dataclass(eq=False)
class _UnreadableScan(Exception):
    """A scan that cannot be read, and why."""

    why: str
