"""Copies proved: the picture against its scan, the caption against the record as it is today.

Nothing is written. What a copy says is held against what it would say if it were made now, for the audience that
it was made for; how it differs is said by the names of the properties.
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import BoxloreError, ByteFault, CouldNot
from boxlore.core.findings import Finding, Severity
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import ScanFile
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.disk.writing import could_not
from boxlore.formats import picture_files
from boxlore.formats.additions import STRUCK, WROTE
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.collection.records_for_outputs import seen_by
from boxlore.tasks.outputs.copies import CopyRun, carried_over, run_of
from boxlore.tasks.outputs.copies_contents import FILE_NAME, CopyLine, read_contents
from boxlore.tasks.outputs.copies_names import CopyJob, jobs_of

SOURCE = "the scan's own bytes, and SHA-256 (FIPS 180-4) noted when the copy was made"
ALWAYS_NEWER = "xmp:MetadataDate"
"""It follows every statement; alone it says nothing that a reader of the copy would miss."""

OF_THE_ENCODING = {"xmpMM:History", "mwg-rs:Regions", "Iptc4xmpExt:ImageRegion"}
"""What a newly encoded copy says differently from the record by right: how it was made, regions turned upright."""


@dataclass(frozen=True, slots=True)
class Proved:
    """One copy of the contents page, and what is wrong with it; nothing if it is as it should be."""

    line: CopyLine
    findings: tuple[Finding, ...]


def is_copies_folder(folder: Path) -> bool:
    """Whether a folder holds copies with their contents page."""
    return (folder / FILE_NAME).is_file()


def prove_copies(collection: Collection, folder: Path, progress: Progress = QUIET) -> Iterator[Proved]:
    """Every copy of the folder's contents page. Raises CouldNot where there is no page."""
    lines = read_contents(folder)
    if not lines:
        raise CouldNot(f"There is no contents page of copies in {folder}.", "`boxlore copies` writes one.")
    progress.begin("Reading copies", len(lines))
    to = To(lines[0].made_for)
    seen = seen_by(collection, to)
    runs = {language: run_of(seen, folder, 0, language or "en") for language in {line.language for line in lines}}
    left = {line.key: line for line in lines}
    by_item: defaultdict[tuple[str, str], list[CopyLine]] = defaultdict(list)
    for line in lines:
        by_item[line.number, line.longest].append(line)
    for longest in sorted({line.longest for line in lines}):
        for job in jobs_of(seen.records(), int(longest or 0)):
            if progress.stopped():
                return
            of_item = (line for line in by_item[job.record.number, longest] if line.key in left)
            scans_line = _line_of(list(of_item), job.scan)
            if scans_line is not None:
                del left[scans_line.key]
                yield Proved(scans_line, tuple(_findings(runs[scans_line.language], scans_line, job)))
                progress.step()
    for line in left.values():
        yield Proved(line, tuple(_findings(runs[line.language], line, None)))
        progress.step()


def _line_of(lines: Sequence[CopyLine], scan: ScanFile) -> CopyLine | None:
    """The line of a scan's copy: by the scan's bytes, the same wherever the file was moved, or else by its path."""
    by_path = [line for line in lines if line.scan == scan.path]
    by_bytes = [line for line in lines if line.sha256_of_scan == scan.sha256]
    return next(iter([line for line in by_path if line in by_bytes] or by_bytes or by_path), None)


def _findings(run: CopyRun, line: CopyLine, job: CopyJob | None) -> Iterator[Finding]:
    try:
        if sha256_of(run.out / line.copy) != line.sha256_of_copy:
            yield _note("changed", f"{line.copy} was changed by another program since it was made.")
        if job is None or job.record.closed_scans:
            yield _error("left-over", f"{line.copy} would not be made today for {line.made_for}; take it away.")
            return
        if line.how == "whole":
            yield from _picture(run, line, job)
        yield from _strictly(run, line)
        yield from _caption(run, line, job)
    except ByteFault as fault:
        yield _error("damaged", f"{line.copy} cannot be read: {fault}")
    except BoxloreError as error:
        yield _error("gone", str(error))


def _picture(run: CopyRun, line: CopyLine, job: CopyJob) -> Iterator[Finding]:
    scan = run.folder / job.scan.path
    try:
        bare = run.takes_bare(job.scan)
        with (
            open_regular(scan) as opened,
            open_regular(run.out / line.copy) as copy,
            carried_over(opened, bare=bare) as source,
        ):
            if wrong := picture_files.same_picture(source, copy, Embedding(drop_text=bare)):
                yield _error("picture", f"{line.copy} is not the picture of {line.scan}: {'; '.join(wrong)}.")
    except OSError as error:
        raise could_not(error, scan, reading=True) from error


def _strictly(run: CopyRun, line: CopyLine) -> Iterator[Finding]:
    """What strict readers do not take, be it ours or put in by another program; and a place beside a sidecar."""
    path = run.out / line.copy
    try:
        with open_regular(path) as copy:
            if line.how == "sidecar":
                faults = picture_files.unreadable_packet(path.with_name(path.name + ".xmp").read_bytes())
                says_place = not picture_files.is_whole(picture_files.without_place(copy), copy)
            else:
                faults, says_place = picture_files.unreadable(copy), False  # the place in our caption is the picture's
    except OSError as error:
        raise could_not(error, path, reading=True) from error
    if faults:
        words = f"Strict readers do not take what {line.copy} carries: {' '.join(faults)}"
        yield _error("unreadable", f"{words} Making the copies again puts it right.")
    if says_place:
        yield _error("place-told", f"{line.copy} says where it was scanned. Making the copies again takes it out.")


def _caption(run: CopyRun, line: CopyLine, job: CopyJob) -> Iterator[Finding]:
    apart = set(_apart(run.out / line.copy, run.embedding(job), beside=line.how == "sidecar")) - {WROTE, STRUCK}
    if line.how == "encoded":
        apart -= OF_THE_ENCODING
    if said := sorted(apart - {ALWAYS_NEWER}):
        words = f"{line.copy} says something else than the record does now: {', '.join(said)}."
        yield _note("caption", f"{words} Making the copies again puts it right.", tuple(said))
    if Path(line.copy).parent != job.name.parent:
        mark = job.record.mark.long if job.record.mark else "no box"
        yield _note("place", f"{line.copy} lies where the item was kept before; it is in {mark} now.")


def _apart(path: Path, embedding: Embedding, *, beside: bool) -> list[str]:
    """The properties of a copy that are not as wanted."""
    try:
        if beside:
            return picture_files.differing_in_packet(path.with_name(path.name + ".xmp").read_bytes(), embedding)
        with open_regular(path) as copy:
            return picture_files.differing_properties(copy, embedding)
    except OSError as error:
        raise could_not(error, path, reading=True) from error


def _note(rule: str, message: str, because: tuple[str, ...] = ()) -> Finding:
    return Finding(rule=f"copy.{rule}", severity=Severity.NOTE, message=message, because=because, source=SOURCE)


def _error(rule: str, message: str) -> Finding:
    return Finding(rule=f"copy.{rule}", severity=Severity.ERROR, message=message, source=SOURCE)
