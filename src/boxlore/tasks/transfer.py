"""The transfer: records and scans for an archive in two bags, an open part and a closed part.

The open part holds what anyone may see: the names of people taken as living are withheld, with the scans that
show or name them. The closed part adds them, for the archive to keep closed. Before it is called done, the open
part is searched for every form of every withheld name.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path

from boxlore import __version__
from boxlore.core.audience import To
from boxlore.core.crosswalk import CollectionFacts
from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding, Severity
from boxlore.core.record import Record
from boxlore.disk.shipped import shipped
from boxlore.exports.bag import Payload, write_bag
from boxlore.exports.dublin_core import FULL, SIMPLE, write_records
from boxlore.tasks.opening import Collection
from boxlore.tasks.progress import QUIET, Progress
from boxlore.tasks.records import EVERYTHING, Seen, Selection, seen_by

FILES = (("metadata/oai_dc.xml", "oai_dc.rng", SIMPLE), ("metadata/dcterms.xml", "dcterms.rng", FULL))


@dataclass(frozen=True, slots=True)
class Part:
    """One bag: where it is, its records, scans, payload bytes."""

    path: Path
    records: int
    scans: int
    bytes: int


@dataclass(frozen=True, slots=True)
class Transferred:
    """The package: its parts, how many people are withheld from the open one, what was found."""

    parts: tuple[Part, ...]
    withheld: int
    findings: tuple[Finding, ...]


def transfer(
    collection: Collection, out: Path, *, selection: Selection = EVERYTHING, progress: Progress = QUIET
) -> Transferred:
    """Write `out/open` and `out/closed`. Raises CouldNot if a withheld name is left anywhere in the open part."""
    outside = seen_by(collection, To.OUTSIDE)
    findings: list[Finding] = []
    open_part = _bag(collection, outside, out / "open", selection, progress, findings)
    if left := list(names_left(outside, open_part.path)):
        raise CouldNot(
            f"The open part still names someone living: {left[0]}.",
            "It was not finished; tell Boxlore which words to withhold, and make it again.",
        )
    closed_part = _bag(collection, seen_by(collection, To.ARCHIVE), out / "closed", selection, progress, findings)
    return Transferred((open_part, closed_part), len(outside.withheld.people), tuple(findings))


def facts_of(collection: Collection) -> CollectionFacts:
    """What every record of an export shares."""
    settings = collection.settings
    return CollectionFacts(
        id=collection.id,
        title=settings.title,
        holder=settings.holder,
        language=settings.language,
        on_day=collection.clock.today(),
        brackets=settings.bracketed_titles,
    )


def _bag(
    collection: Collection, seen: Seen, folder: Path, selection: Selection, progress: Progress, findings: list[Finding]
) -> Part:
    records = list(seen.records(selection))
    if not records:
        raise CouldNot("There is nothing to transfer.", "Take items in first, or choose others.")
    facts = facts_of(collection)
    payload: list[Payload] = []
    for path, schema, flavour in FILES:
        body = BytesIO()
        findings += write_records(records, facts, body, (shipped("schemas") / schema).read_bytes(), flavour)
        payload.append(Payload(path, body.getvalue()))
    scans = dict(_scans(collection, records, findings))
    payload += [Payload(path, source) for path, source in scans.items()]
    progress.begin(f"Packing the {folder.name} part", sum(source.stat().st_size for source in scans.values()))
    size = write_bag(folder, payload, _info(collection, seen), progress.step)
    return Part(folder, len(records), len(scans), size)


def _scans(collection: Collection, records: list[Record], findings: list[Finding]) -> Iterator[tuple[str, Path]]:
    """Each scan once: one that shows several items goes only where all of them may go."""
    closed = {scan.id for record in records if record.closed_scans for scan in record.scans}
    for record in records:
        for scan in record.scans:
            path = collection.folder / scan.path
            if scan.id in closed:
                continue
            if not path.is_file():
                message = f"The scan {scan.path} of {record.number} is not there and is left out."
                source = "fixity of scans: common practice, no source"
                findings.append(Finding(rule="scan.missing", severity=Severity.ERROR, message=message, source=source))
                continue
            side = "f" if scan.side == "recto" else "b"
            name = f"{record.number}_{side}" if not scan.area else f"{scan.sha256[:12]}_sheet"
            yield f"scans/{name}{path.suffix.lower()}", path


def _info(collection: Collection, seen: Seen) -> dict[str, str]:
    settings = collection.settings
    part = "open part" if seen.to is To.OUTSIDE else "closed part: not to be shown before the dates in its records"
    return {
        "Source-Organization": settings.holder or settings.title,
        "External-Identifier": f"urn:uuid:{collection.id}",
        "External-Description": f"{settings.title}: photographs with what was told of them ({part})",
        "Bagging-Date": collection.clock.today().isoformat(),
        "Bag-Group-Identifier": f"urn:uuid:{collection.id}",
        "Bag-Software-Agent": f"Boxlore {__version__}",
    }


def names_left(seen: Seen, folder: Path) -> Iterator[str]:
    """Files of a package in whose names or bytes, folded, any form of a withheld name stands."""
    for path in sorted(folder.rglob("*")):
        if not path.is_file():
            continue
        text = path.read_bytes().decode("utf-8", "replace") if path.suffix in (".xml", ".txt", ".csv") else ""
        if seen.withheld.finds(path.name.replace("_", " ")) or seen.withheld.finds(text):
            yield path.relative_to(folder).as_posix()
