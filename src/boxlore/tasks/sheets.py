"""Printed outputs: the pictures prepared, the records as the audience may see them, the PDF written whole."""

import tempfile
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.audience import To
from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding
from boxlore.core.record import Record
from boxlore.disk.pictures import make_jpeg
from boxlore.disk.writing import write_whole
from boxlore.sheets.album import make_sheet, picture_key
from boxlore.tasks.opening import Collection
from boxlore.tasks.progress import QUIET, Progress
from boxlore.tasks.records import EVERYTHING, Selection, seen_by

LONGEST = 1100
"""Pixels on the long side of a printed picture: 300 an inch at 9 cm."""


@dataclass(frozen=True, slots=True)
class Made:
    """A printed output: where it is, how many items it shows, how many it left out, what to mend."""

    path: Path
    items: int
    left_out: int
    findings: tuple[Finding, ...] = ()


def sheet(
    collection: Collection,
    out: Path,
    *,
    to: To = To.FAMILY,
    selection: Selection = EVERYTHING,
    paper: str = "",
    progress: Progress = QUIET,
) -> Made:
    """The album caption sheet. Items whose scans may not go to the audience are left out and counted."""
    seen = list(seen_by(collection, to).records(selection))
    shown = [record for record in seen if record.scans and not record.closed_scans]
    if not shown:
        raise CouldNot("There is no picture to print.", "Take scans in first, or choose others.")
    with tempfile.TemporaryDirectory() as folder:
        pictures = prepare(collection, shown, Path(folder), progress)
        if progress.stopped():
            raise CouldNot("Stopped; no sheet was written.")
        data, findings = make_sheet(
            shown,
            pictures,
            title=collection.settings.title,
            language=collection.settings.language,
            paper=paper or collection.settings.paper,
            printed_on=collection.clock.today(),
            audience_label=f"for {to}",
            brackets=collection.settings.bracketed_titles,
        )
    write_whole(out, data)
    return Made(out, len(shown), len(seen) - len(shown), tuple(findings))


def prepare(collection: Collection, shown: Iterable[Record], folder: Path, progress: Progress) -> dict[str, Path]:
    """A JPEG for each scan that will be printed; a damaged one is left out, and the sheet says so."""
    scans = [(record.number, scan) for record in shown for scan in record.scans if scan.side == "recto"]
    progress.begin("Preparing pictures", len(scans))
    pictures: dict[str, Path] = {}
    for number, scan in scans:
        if progress.stopped():
            break
        try:
            data = make_jpeg(collection.folder / scan.path, LONGEST, area=scan.area)
        except CouldNot:
            data = b""
        if data:
            key = picture_key(scan)
            pictures[key] = folder / f"{number}-{len(pictures)}.jpg"
            pictures[key].write_bytes(data)
        progress.step()
    return pictures
