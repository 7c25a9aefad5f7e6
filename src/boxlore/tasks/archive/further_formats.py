"""Files of a transfer that an archive may ask for besides: a table for ingest, METS with PREMIS, OAI-PMH, IIIF."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from mimetypes import guess_type

from boxlore.core.crosswalk.beside_dublin_core import id_of_file
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import is_blank
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.disk.digests import sha256_of
from boxlore.exports.dc_table import dc_rows
from boxlore.exports.iiif import has_manifest, iiif_pages, page_bytes
from boxlore.exports.inventory import as_table
from boxlore.exports.mets import FileEvent, MetsSource, write_mets
from boxlore.exports.oai_static import write_static_repository
from boxlore.tasks.archive.making import Making
from boxlore.tasks.scans import fixity_events

IIIF, OAI, METS, TABLE = "iiif", "oai-static", "mets", "dc-csv"
OAI_FILE = "metadata/oai-static.xml"
_NEEDS = {IIIF: ("base_url",), OAI: ("base_url", "gateway", "email")}


def check_settings(making: Making) -> None:
    """Raises WrongUse where an archive asks for what needs an address and has told none."""
    for what, names in _NEEDS.items():
        if making.archive.wants(what):
            for name in names:
                if is_blank(getattr(making.archive, name)):
                    raise WrongUse(f"{what} needs {name}, which the archive has not said.", "Write it in archive.toml.")


def make_further(making: Making) -> None:
    """Write those that are asked for; what is for the web is in the open part alone."""
    if not making.holding.items:
        return
    if making.archive.wants(TABLE):
        rows = as_table(dc_rows(making.records, making.facts, making.goes))
        making.put("metadata/dc.csv", "simple Dublin Core as a table, its columns named by DCMI", rows)
    if making.archive.wants(METS):
        with making.open("metadata/mets.xml", "the scans in METS, with PREMIS") as out:
            write_mets(_mets(making), out)
    if not making.seen.to.is_public:
        return
    if making.archive.wants(OAI):
        with making.open(OAI_FILE, "an OAI-PMH static repository, for a gateway") as out:
            write_static_repository(making.records, making.facts, out, OAI_FILE)
    if making.archive.wants(IIIF):
        _iiif(making)


def _iiif(making: Making) -> None:
    """The pictures for viewers, and the items whose scans go without any that such a viewer can show as it is."""
    without: list[str] = []

    def noted() -> Iterator[Record]:
        for record in making.records():
            goes = any(making.goes(packed_path(record, scan)) for scan in record.open_scans)
            if goes and not has_manifest(record, making.goes):
                without.append(record.number)
            yield record

    for path, page in iiif_pages(noted, making.facts, making.goes):
        words = "the pictures for viewers on the web (IIIF)" if path.endswith("collection.json") else ""
        making.put(path, words, [page_bytes(page)])
    making.findings += _not_shown(without)


MOST_NAMED = 10
"""So many items are named by their numbers: archives often have all their scans as TIFF."""


def _not_shown(without: Sequence[str]) -> Iterator[Finding]:
    """What is said of the items of these numbers."""
    if without:
        more = [f"{len(without) - MOST_NAMED} more"] if len(without) > MOST_NAMED else []
        words = (
            f"IIIF shows nothing of {ENGLISH.listed([*without[:MOST_NAMED], *more])}: browsers show no TIFF. The "
            "archive can make pictures of them, which its own image service shows."
        )
        yield make_finding("iiif.not_shown", Severity.NOTE, words, "IIIF Presentation 3.0, Image")


def _mets(making: Making) -> MetsSource:
    events: dict[str, list[FileEvent]] = defaultdict(list)
    of_beside: dict[str, list[FileEvent]] = defaultdict(list)
    handed_otherwise = dict(making.not_as_taken_in())
    for row in fixity_events.events(making.collection):
        if row["scan"]:
            handed = handed_otherwise.get(row["scan"])
            of_what = f" (of {handed.before.format('this')})" if handed else ""
            events[row["scan"]].append(FileEvent(row["Event"], row["When"], f"{row['Outcome']}{of_what}"))
        elif row["sound"]:
            of_beside[row["File"]].append(FileEvent(row["Event"], row["When"], row["Outcome"]))
    for scan, otherwise in handed_otherwise.items():
        events[scan].append(FileEvent(otherwise.event, making.made, otherwise.outcome))
    beside = list(_files_beside(making))
    events |= {file.id: of_beside[held.path] for held, file in beside}
    return MetsSource(making.ident, making.made, making.records(), making.facts, making.goes, events, beside)


def _files_beside(making: Making) -> Iterator[tuple[Beside, ScanFile]]:
    """Recordings and papers with their files: those that go, and those that the archive has already."""
    for held in making.facts.beside:
        source = making.beside.get(held.path, making.collection.folder / held.path)
        known = making.earlier.files.get(held.path) if making.earlier and held.path in making.kept else None
        yield (
            held,
            ScanFile(
                id=id_of_file(held, making.facts),
                path=held.path,
                sha256=known.sha256 if known else sha256_of(source),
                bytes=known.bytes if known else source.stat().st_size,
                width=0,
                height=0,
                media_type=guess_type(held.path)[0] or "application/octet-stream",
            ),
        )
