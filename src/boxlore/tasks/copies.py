"""Captioned copies: the caption inside the file, the picture untouched, the scan never opened for writing.

A copy is named by number and side and lies in a folder by box and folder. It is written under a temporary
name, flushed, proved against its scan, and only then takes its name. A second run changes nothing.
"""

import csv
import io
import os
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

from boxlore.core.audience import To
from boxlore.core.crosswalk_embedding import Source, embedding_of
from boxlore.core.embedding import Embedding
from boxlore.core.errors import BoxloreError, ByteFault, CouldNot, WrongUse
from boxlore.core.record import Record, ScanFile
from boxlore.disk.fixity import sha256_of
from boxlore.disk.pictures import make_jpeg
from boxlore.disk.writing import could_not, replacing, write_pieces, write_whole
from boxlore.formats import carrier
from boxlore.tasks.opening import Collection
from boxlore.tasks.progress import QUIET, Progress
from boxlore.tasks.records import EVERYTHING, Selection, seen_by

CONTENTS = "contents.csv"


@dataclass(frozen=True, slots=True, kw_only=True)
class Copied:
    """One scan's copy. `state` is written, same, cut, sidecar or refused; `why` says what a person should know."""

    number: str
    mark: str
    scan: str
    copy: str
    state: str
    why: str = ""
    scan_sha256: str = ""


def copies(
    collection: Collection,
    out: Path,
    *,
    to: To = To.FAMILY,
    selection: Selection = EVERYTHING,
    progress: Progress = QUIET,
) -> Iterator[Copied]:
    """Make the copies, reporting each; a contents page is written at the end."""
    _refuse_scans_folder(collection, out)
    settings = collection.settings
    source = Source(
        collection=settings.title,
        holder=settings.holder,
        language=settings.language,
        brackets=settings.bracketed_titles,
        drop_text=to is To.OUTSIDE,
    )
    jobs = [(record, scan) for record in seen_by(collection, to).records(selection) for scan in record.scans]
    progress.begin("Copying", len(jobs))
    done: list[Copied] = []
    with ThreadPoolExecutor(max_workers=os.cpu_count() or 2) as pool:
        for start in range(0, len(jobs), 16):
            if progress.stopped():
                break
            batch = jobs[start : start + 16]
            for one in pool.map(lambda job: _copy(collection, out, job[0], job[1], source), batch):
                done.append(one)
                progress.step()
                yield one
    _contents(out, done)


def _refuse_scans_folder(collection: Collection, out: Path) -> None:
    scans = (collection.folder / "scans").resolve()
    target = out.resolve()
    if target in (scans, collection.folder.resolve()) or scans in target.parents:
        raise WrongUse(f"Copies cannot go among the scans ({out}).", "Choose another folder, such as copies.")


def place_of(record: Record, scan: ScanFile, suffix: str) -> Path:
    """`box-1/folder-2/TRA-0042_f.jpg`: by what never changes, number and side, in where the item is kept."""
    folder = Path()
    for kind, label in record.mark.path if record.mark else ():
        folder /= f"{kind}-{_safe(label)}"
    side = "f" if scan.side == "recto" else "b"
    altered = "" if scan.role == "as-scanned" else f"_{_safe(scan.role)}"
    return folder / f"{record.number}_{side}{altered}{suffix}"


def _safe(label: str) -> str:
    return "".join(letter if letter.isalnum() or letter in "-_" else "-" for letter in label) or "-"


def _copy(collection: Collection, out: Path, record: Record, scan: ScanFile, source: Source) -> Copied:
    mark = record.mark.short if record.mark else ""
    path = collection.folder / scan.path
    suffix = ".jpg" if scan.area else Path(scan.path).suffix.lower()
    copy = place_of(record, scan, suffix)

    def report(state: str, why: str = "", name: Path = copy) -> Copied:
        return Copied(
            number=record.number,
            mark=mark,
            scan=scan.path,
            copy="" if state == "refused" else name.as_posix(),
            state=state,
            why=why,
            scan_sha256=scan.sha256,
        )

    if record.closed_scans:
        return report("refused", "it shows or names someone living, and the copies are for outside")
    embedding = embedding_of(record, scan, source)
    try:
        if scan.area:
            data = _cut(path, scan, embedding)
            return report("cut" if write_whole(out / copy, data) else "same", "cut out of its scan, newly encoded")
        state, why = _write(path, out / copy, embedding)
        return report(state, why)
    except ByteFault as fault:
        try:
            return report("sidecar", str(fault), _beside(path, out / copy, embedding, copy))
        except BoxloreError as error:
            return report("refused", str(error))
    except BoxloreError as error:
        return report("refused", str(error))


def _write(path: Path, target: Path, embedding: Embedding) -> tuple[str, str]:
    """Write one copy and prove it before it takes its name."""
    try:
        source = open(path, "rb")  # noqa: SIM115  # the error of opening is said apart from those of writing
    except OSError as error:
        raise could_not(error, path) from error
    with source:
        made = carrier.rewrite(source, embedding)
        why = " ".join(made.reports)
        if _is_same(made, source, target):
            return "same", why
        with replacing(target) as out:
            write_pieces(made.pieces, source, out)
            out.flush()
            _prove(source, Path(out.name), embedding, target)
    return "written", why


def _is_same(made: carrier.Rewrite, source: BinaryIO, target: Path) -> bool:
    if not target.is_file():
        return False
    with open(target, "rb") as copy:
        return carrier.matches(made, source, copy)


def _prove(source: BinaryIO, part: Path, embedding: Embedding, target: Path) -> None:
    with open(part, "rb") as copy:
        if wrong := carrier.verify(source, copy, embedding):
            raise CouldNot(f"The copy {target.name} did not prove right: {'; '.join(wrong)}.", "It was not kept.")


def _cut(path: Path, scan: ScanFile, embedding: Embedding) -> bytes:
    """A part of a scan as a JPEG of its own, with its caption."""
    data = make_jpeg(path, max(scan.width, scan.height), area=scan.area, quality=95, upright=False)
    made = carrier.rewrite(io.BytesIO(data), embedding)
    return b"".join(one if isinstance(one, bytes) else data[one[0] : one[0] + one[1]] for one in made.pieces)


def _beside(path: Path, target: Path, embedding: Embedding, copy: Path) -> Path:
    """A file that cannot carry a caption: copied as it is, unless text must go, with the caption beside it."""
    if embedding.drop_text:
        raise CouldNot(
            "Its format cannot be cleared of what is embedded, and the copies are for outside.",
            "Convert the scan to TIFF or JPEG, and take that in.",
        )
    try:
        with open(path, "rb") as source:
            size = source.seek(0, 2)
            with replacing(target) as out:
                write_pieces([(0, size)], source, out)
    except OSError as error:
        raise could_not(error, path) from error
    write_whole(target.with_name(target.name + ".xmp"), carrier.sidecar(embedding))
    return copy


def _contents(out: Path, done: list[Copied]) -> None:
    """The contents page: copy, number, mark, SHA-256 of scan and copy."""
    if not done:
        return
    page = io.StringIO()
    rows = csv.writer(page)
    rows.writerow(["copy", "number", "mark", "scan", "sha256_of_scan", "sha256_of_copy"])
    for one in done:
        if one.copy:
            digest = sha256_of(out / one.copy)
            rows.writerow([one.copy, one.number, one.mark, one.scan, one.scan_sha256, digest])
    write_whole(out / CONTENTS, page.getvalue().encode())
