"""The files of one part of a transfer, made in one folder before they are bagged: every one from the crosswalk.

Records are read anew for each file, item by item, so that memory stays flat for any number of them.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from itertools import groupby
from pathlib import Path
from typing import BinaryIO

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.dublin_core import CollectionFacts, access_words
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.findings import Finding, Severity, several
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind
from boxlore.disk.digests import sha256_of
from boxlore.disk.shipped import shipped
from boxlore.exports.bag import Staged
from boxlore.exports.collection_description import reference_code, rights_label
from boxlore.exports.dublin_core import FULL, SIMPLE, Flavour, write_records
from boxlore.exports.ead_dialects import EAD3, EAD2002, Dialect
from boxlore.exports.finding_aid import FindingAid
from boxlore.exports.inventory import as_csv, as_table, inventory_rows
from boxlore.exports.rdf import MOST_FOR_TURTLE, write_triples
from boxlore.exports.required_fields import read_required
from boxlore.exports.turtle_text import as_turtle
from boxlore.sheets.transfer_papers import Deed, InventoryLine, consent_pdf, gift_pdf, inventory_pdf
from boxlore.tasks.archive.closed_part_rights import SCHEMA, TABLE, rights_rows, rights_schema
from boxlore.tasks.archive.receipt import blank_rows
from boxlore.tasks.archive.recording_chapters import chapter_files
from boxlore.tasks.archive.restrictions import restriction_lines
from boxlore.tasks.archive.scans_as_handed import Changed, Cleaned, HandedScans
from boxlore.tasks.archive.struck_fields import TABLE as STRUCK_TABLE
from boxlore.tasks.archive.struck_fields import struck_rows
from boxlore.tasks.archive.transfer_context import thing_lines, thing_views, things_told
from boxlore.tasks.archive.transfer_updates import (
    CHANGES,
    DESCRIBING,
    FILES,
    HEADING,
    STATE,
    TRANSFERS,
    Earlier,
    change_row,
    gone_rows,
    held_rows,
    rest_row,
    state_row,
    transfer_rows,
)
from boxlore.tasks.archive.withdrawing import HEADING as WITHDRAW_HEADING
from boxlore.tasks.archive.withdrawing import TABLE as WITHDRAW
from boxlore.tasks.archive.withdrawing import Withdrawing
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress, go_on
from boxlore.tasks.collection.prompts import FILE_NAME as PROMPTS
from boxlore.tasks.collection.records_for_outputs import (
    EVERYTHING,
    AudienceView,
    Selection,
    keepers_alone,
    never_named_outside,
)
from boxlore.tasks.collection.settings import FILE_NAME, as_toml
from boxlore.tasks.scans import fixity_events

MOST_PRINTED = 5000
"""Items up to which the inventory is printed too; a longer one is for reading on a screen."""


@dataclass(slots=True)
class Making:
    """One part in the making. `items` is the order of containers, and after counting the items of the part."""

    collection: Collection
    seen: AudienceView
    facts: CollectionFacts
    archive: Archive
    stage: Path
    earlier: Earlier | None = None
    items: list[str] = field(default_factory=list)
    selection: Selection = EVERYTHING
    """What was chosen for this transfer, or, of an update, for the one that it updates."""
    ident: str = ""
    """The identifier of the transfer."""
    made: str = ""
    """When it is made: UTC, ISO 8601."""
    holding: Extent = field(default_factory=Extent)
    scans: dict[str, Staged] = field(default_factory=dict)
    beside: dict[str, Path] = field(default_factory=dict)
    """Recordings and papers, by their paths below `data/`: the keeper's own files, which are copied."""
    findings: list[Finding] = field(default_factory=list)
    contents: list[tuple[str, str]] = field(default_factory=list)
    people: set[str] = field(default_factory=set)
    progress: Progress = QUIET
    handed_scans: HandedScans | None = None
    """In a part that takes scans: the scans as they are handed over."""
    kept: dict[str, str] = field(default_factory=dict)
    """Of an update: the files that the archive has and keeps, by path, with their SHA-256."""
    has_changed: bool = True
    """Of an update: whether anything is to be said or withdrawn."""
    left_out: list[str] = field(default_factory=list)
    """What is not in the part, as sentences."""

    @property
    def is_whole(self) -> bool:
        """Whether it is of everything, and so has the recordings, and everybody of the registry."""
        return self.selection == EVERYTHING

    def goes(self, path: str) -> bool:
        """Whether a scan is in this part, or in an earlier transfer that it updates."""
        return path in self.scans or path in self.kept

    def records(self) -> Iterator[Record]:
        """The records of the part. Raises CouldNot if the person asked to stop."""
        for record in self.seen.handed_over(EVERYTHING if self.earlier else self.selection, self.items):
            go_on(self.progress)
            yield self.handed_scans.record(record) if self.handed_scans else record

    def open(self, path: str, words: str) -> BinaryIO:
        """A new file of the part, noted in its table of contents."""
        target = self.stage / path
        target.parent.mkdir(parents=True, exist_ok=True)
        if words:
            self.contents.append((f"data/{path}", words))
        return open(target, "wb")

    def put(self, path: str, words: str, pieces: Iterable[bytes]) -> None:
        with self.open(path, words) as out:
            out.writelines(pieces)


SETTINGS = f"metadata/{FILE_NAME}"


def make_files(making: Making) -> None:
    """Count and choose first, then write each file that the archive takes."""
    _count(making)
    if not making.holding.items:
        return
    writers = (
        ("dublin-core", _dublin_core),
        ("ead3", lambda part: _finding_aid(part, EAD3)),
        ("ead2002", lambda part: _finding_aid(part, EAD2002)),
        ("rdf", _linked_data),
        ("inventory", _inventory),
        ("forms", _forms),
        ("recordings", _chapters),
    )
    progress = making.progress
    progress.begin(f"Writing the records of the {making.seen.to} part", len(writers))
    for what, write in writers:
        if making.archive.wants(what):
            write(making)
        progress.step()
    if making.seen.to.is_closed_part:
        settings = as_toml(making.collection.settings).encode()
        making.put(SETTINGS, "how this collection means its dates and seasons", [settings])
        _rights(making)
        items = None if making.is_whole else making.items
        rows = list(struck_rows(making.collection, items, keepers_alone(making.collection)))
        if len(rows) > 1:
            making.put(STRUCK_TABLE, "of what words were taken out for good, without the words", as_table(rows))
        prompts = making.collection.folder / PROMPTS
        if prompts.is_file() and not prompts.is_symlink():
            making.put(f"metadata/{PROMPTS}", "what its sittings ask", [prompts.read_bytes()])
    chosen = transfer_rows(
        making.earlier, making.ident, making.made, making.selection, is_public=making.seen.to.is_public
    )
    making.put(TRANSFERS, "this transfer, and those before it", as_table(chosen))
    making.put("metadata/receipt.csv", "to fill in and send back", as_table(blank_rows(making.records())))
    making.put("metadata/fixity.csv", "when each file was hashed and checked", as_table(_fixity(making)))


def _rights(making: Making) -> None:
    """What was consented to and what is closed, with the schema of the table."""
    closures = ((record, making.facts.closure_of(record)) for record in making.records())
    rows = rights_rows(making.collection, making.seen, closures, never_named_outside(making.collection))
    making.put(TABLE, "consents, and what is closed until when and why (rights records)", as_table(rows))
    making.put(SCHEMA, "what the columns of that table mean", [rights_schema()])


def _count(making: Making) -> None:
    """One pass over all: what there is, which scans go, how each item stands against an earlier transfer."""
    if making.earlier:
        _choose(making, making.earlier)
    withdrawing = Withdrawing(making.collection, making.earlier or Earlier(), making.seen.to.is_public)
    changes: list[list[str]] = []
    seen: set[str] = set()
    closed: set[str] = set()
    with making.open(STATE, "what this part says of each item, for a later update") as out:
        out.writelines(as_csv([HEADING]))
        for record in making.records():
            seen.add(record.id)
            closed |= {scan.id for scan in record.scans} if record.closed_scans else set()
            record = _taken(making, record)
            row = state_row(record, making.facts)
            out.writelines(as_csv([row]))
            withdrawing.compare(record.number, record.id, row[-1].split())
            _note_change(making, row, changes)
            making.holding.add(record)
            making.people |= {shown.person for shown in record.people if shown.person}
        people = None if making.is_whole else making.people
        things = thing_views(making.collection, making.seen, people)
        rest = rest_row(making.collection.id, [view.statement for _, _, views in things for view in views])
        out.writelines(as_csv([rest]))
        withdrawing.compare("", rest[1], rest[-1].split())
        if making.earlier and rest[1] in making.earlier.items:  # an older version did not note it
            _note_change(making, rest, changes)
    making.findings += making.handed_scans.findings if making.handed_scans else []
    making.items = [ident for ident in making.items if ident in seen]
    for record in making.records():
        _scans(making, record, closed)
    if making.earlier:
        _say_update(making, making.earlier, withdrawing, [*changes, *gone_rows(making.earlier, seen)], seen)


def _choose(making: Making, earlier: Earlier) -> None:
    """The items of an update: all that were handed over before, and what is chosen as it was then. What the archive
    did not get is no longer there only if it is in no selection either."""
    chosen = {record.id for record in making.seen.handed_over(making.selection, making.items)}
    making.items = [ident for ident in making.items if ident in chosen or ident in earlier.items]


def _taken(making: Making, record: Record) -> Record:
    """The record of an update with those of its scans taken that the archive has not got yet."""
    if making.earlier is None or making.handed_scans is None or record.closed_scans:
        return record
    if all(making.earlier.holds(packed_path(record, scan), scan.sha256) for scan in record.scans):
        return record
    return making.handed_scans.take(record)


def _note_change(making: Making, row: list[str], changes: list[list[str]]) -> None:
    if making.earlier:
        what, fields = making.earlier.changed(row)
        if what != "same":
            changes.append(change_row(making.collection, row, what, fields, making.earlier.time))


def _say_update(
    making: Making, earlier: Earlier, withdrawing: Withdrawing, changes: list[list[str]], seen: set[str]
) -> None:
    """The tables of an update: what changed, what the archive keeps, what it is to withdraw."""
    for path, held in earlier.files.items():
        if path.startswith(("recordings/", "papers/", "copies/")) and not making.archive.wants(_WANTED[path[:4]]):
            making.kept[path] = held.sha256  # it asks for no more of them, and may keep what it has
    files = {**making.kept, **{path: file.digests["sha256"] for path, file in making.scans.items()}}
    copied = {path.relative_to(making.stage).as_posix(): path for path in (making.stage / "copies").rglob("*.*")}
    files |= {path: sha256_of(source) for path, source in (*making.beside.items(), *copied.items())}
    for path in [path for path in (*making.beside, *copied) if earlier.holds(path, files[path])]:
        making.kept[path] = files[path]
        if path in copied:
            copied.pop(path).unlink()
        else:
            del making.beside[path]
    withdrawn = withdrawing.rows(seen, files)
    is_new = any(not path.startswith(DESCRIBING) for path in (*making.scans, *making.beside, *copied))
    making.has_changed = bool(changes or withdrawn or is_new)
    making.put(
        "metadata/changes.csv", "what changed since the earlier transfer, and why", as_table([CHANGES, *changes])
    )
    making.put(FILES, "files of earlier transfers that still belong to it", as_table(held_rows(earlier, making.kept)))
    words = "what of earlier transfers is to be deleted or replaced, and why"
    making.put(WITHDRAW, words, as_table([WITHDRAW_HEADING, *withdrawn]))


_WANTED = {"reco": "recordings", "pape": "recordings", "copi": "copies"}
"""The first letters of a folder of the payload -> the part of a transfer that an archive takes it by."""


def _scans(making: Making, record: Record, closed: set[str]) -> None:
    """Each scan once: one that shows several items goes only where all of them may go."""
    if not making.archive.wants("scans"):
        return
    for scan in record.scans:
        if scan.id in closed or making.handed_scans is None:
            continue
        path = packed_path(record, scan)
        if making.earlier and making.earlier.holds(path, scan.sha256):
            making.kept[path] = scan.sha256
            continue
        file = making.handed_scans.file(scan)
        if file is not None:
            making.scans[path] = file
            continue
        message = f"The scan {scan.path} of {record.number} is not there and is left out."
        source = "fixity of scans: common practice, no source"
        making.findings.append(Finding(rule="scan.missing", severity=Severity.ERROR, message=message, source=source))


def _schema(name: str) -> bytes:
    return (shipped("schemas") / name).read_bytes()


_DUBLIN_CORE: tuple[tuple[str, str, Flavour, str], ...] = (
    ("metadata/oai_dc.xml", "oai_dc.rng", SIMPLE, "simple Dublin Core, one record an item"),
    ("metadata/dcterms.xml", "dcterms.rng", FULL, "the full records in DCMI Metadata Terms"),
)


def _dublin_core(making: Making) -> None:
    table = read_required(_schema("required.csv").decode())
    for path, schema, flavour, words in _DUBLIN_CORE:
        with making.open(path, words) as out:
            making.findings += write_records(making.records(), making.facts, out, _schema(schema), flavour, table)


def _finding_aid(making: Making, dialect: Dialect) -> None:
    aid = FindingAid(making.facts, making.holding, dialect, _schema(f"finding-aid.{dialect.name}.rng"))
    with making.open(f"metadata/finding-aid.{dialect.name}.xml", "the finding aid") as out:
        aid.write(making.records(), out)
    making.findings += aid.findings


def _linked_data(making: Making) -> None:
    table = read_required(_schema("required.csv").decode())
    with making.open("metadata/records.nt", "linked data, everything that this part holds") as out:
        items: list[str] = []
        making.findings += write_triples(_noted(making.records(), items), making.facts, out, table)
        for line in restriction_lines(making.collection, making.seen, items):
            out.write(f"{line}\n".encode())
        for line in thing_lines(making.collection, making.seen, None if making.is_whole else making.people):
            out.write(f"{line}\n".encode())
    if making.holding.items <= MOST_FOR_TURTLE:
        with open(making.stage / "metadata" / "records.nt", encoding="utf-8", newline="\n") as lines:
            pieces = (piece.encode() for piece in as_turtle(lines))
            making.put("metadata/records.ttl", "the same linked data as Turtle, for reading", pieces)


def _noted(records: Iterable[Record], items: list[str]) -> Iterator[Record]:
    """The records as they come, with the id of each noted in `items`."""
    for record in records:
        items.append(record.id)
        yield record


def _inventory(making: Making) -> None:
    rows = inventory_rows(making.records(), making.facts, making.holding)
    making.put("metadata/inventory.csv", "the inventory as a table", as_table(rows))
    if making.holding.items > MOST_PRINTED:
        words = f"The inventory was not printed: it has more than {MOST_PRINTED:,} items. inventory.csv has them all."
        making.findings.append(
            Finding(rule="inventory.long", severity=Severity.NOTE, message=words, source="our own limit")
        )
        return
    groups: list[tuple[str, list[InventoryLine]]] = []
    for kept, inside in groupby(making.records(), key=lambda record: record.mark.path if record.mark else ()):
        heading = " / ".join(f"{kind.capitalize()} {label}" for kind, label in kept) or "Not yet in a container"
        groups.append((heading, [_line(record, making.facts) for record in inside]))
    summary = f"{making.holding.words}; {making.holding.years}."
    settings = making.collection.settings
    day = making.facts.on_day
    pdf = inventory_pdf(settings.title, summary, groups, paper=settings.paper, printed_on=day)
    making.put("metadata/inventory.pdf", "the inventory by box and folder, to print", [pdf])


def _line(record: Record, facts: CollectionFacts) -> InventoryLine:
    title = captions.title(record, brackets=facts.brackets)
    place = record.mark.short if record.mark else ""
    return InventoryLine(record.number, place, title, record.date_display, " ".join(access_words(record, facts)))


def _forms(making: Making) -> None:
    """A deed of gift; a consent form for each interview in the closed part, since it names the narrator."""
    facts, settings = making.facts, making.collection.settings
    deed = Deed(
        donor="\n".join(part for part in (facts.holder, facts.contact) if part),
        recipient=", ".join(part for part in (making.archive.repository, making.archive.contact) if part),
        title=f"{facts.title} ({reference_code(facts)})",
        description=f"{making.holding.words}; {making.holding.years}. Transfer {making.ident} of {facts.on_day}.",
        originals=facts.originals,
        access=" ".join((making.archive.access, *_restrictions(making))).strip(),
        copyright=" ".join((f"Stated of the whole: {rights_label(facts.rights)}.", making.archive.use)).strip(),
        terms=making.archive.terms,
        is_extract=making.seen.to.is_public,
        on_day=facts.on_day,
    )
    making.put(
        "forms/deed-of-gift.pdf", "a deed of gift, filled as far as known", [gift_pdf(deed, paper=settings.paper)]
    )
    if not making.seen.to.is_closed_part:
        return
    for at, views in enumerate(things_told(making.collection, making.seen, Kind.SITTING).values(), 1):
        known = {name: "; ".join(view.words for view in views if view.field == name) for name in _CONSENT}
        known["kept"] = facts.holder
        pdf = consent_pdf(known, on_day=facts.on_day, paper=settings.paper)
        making.put(f"forms/consent-{at}.pdf", "a narrator's consent, filled as far as known", [pdf])


def _restrictions(making: Making) -> list[str]:
    """What the deed says of restrictions and consents, counted as the tables of this part tell them one by one."""
    lines = ["The open part may be shown; the closed part from the dates in its records."]
    if making.seen.to.is_closed_part:
        closures = [closure for record in making.records() if (closure := making.facts.closure_of(record))]
        if closures:
            last = max(closure.until for closure in closures)
            lines.append(f"{several(len(closures), 'item is', 'items are')} closed, the last until {last}.")
        people = [person for person in making.seen.people().values() if person.consents]
        if people:
            lines.append(f"Consents of {several(len(people), 'person', 'people')} are in metadata/rights.csv.")
    return lines


def _chapters(making: Making) -> None:
    """Chapters of the recordings, with a whole transfer only, as the recordings are."""
    if not making.is_whole:
        return
    for name, text in chapter_files(making.collection, making.seen):
        if not making.seen.recipient.may_read(f"{name} {text}"):
            words = f"The chapters {name} were left out: they name someone who is withheld from this part."
            making.findings.append(
                Finding(rule="chapters.name", severity=Severity.NOTE, message=words, source="audience of this part")
            )
            continue
        making.put(f"metadata/{name}", "which item was out when, beside a recording (WebVTT)", [text.encode()])


_CONSENT = ("narrator", "interviewer", "place", "agreement", "recording")


def _fixity(making: Making) -> Iterator[list[str]]:
    """Fixity events of the files that this part holds, under the names that they have in it."""
    yield list(fixity_events.COLUMNS)
    packed = {
        scan.id: packed_path(record, scan)
        for record in making.records()
        for scan in (() if record.closed_scans else record.scans)
        if packed_path(record, scan) in making.scans
    }
    for event in fixity_events.events(making.collection):
        if event["scan"] in packed or not event["scan"]:
            name = packed.get(event["scan"], event["File"])
            yield [name, *(event[column] for column in fixity_events.COLUMNS[1:])]
    if making.handed_scans is None:
        return
    not_as_taken_in: dict[str, Cleaned | Changed] = {**making.handed_scans.cleaned, **making.handed_scans.changed}
    for scan, handed in not_as_taken_in.items():
        if scan in packed:
            yield [packed[scan], handed.scan.sha256, handed.event, making.collection.clock.now(), handed.outcome]
