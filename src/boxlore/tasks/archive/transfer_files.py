"""The files of one part of a transfer, made in one folder before they are bagged: every one from the crosswalk.

Records are read anew for each file, item by item, so that memory stays flat for any number of them.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.dublin_core import CollectionFacts, access_words, headings
from boxlore.core.crosswalk.receiving_archive import NOT_SAID
from boxlore.core.crosswalk.rights_statements import rights_label
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.sound import counted
from boxlore.core.findings import Finding, Severity, several
from boxlore.core.records.closing_dates import Closes, Closing
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import Kind
from boxlore.core.wording.catalogue import ENGLISH
from boxlore.disk.shipped import shipped
from boxlore.exports.collection_description import reference_code
from boxlore.exports.dublin_core import FULL, SIMPLE, Flavour, write_records
from boxlore.exports.ead_dialects import EAD3, EAD2002, Dialect
from boxlore.exports.finding_aid import FindingAid
from boxlore.exports.inventory import as_table, inventory_rows
from boxlore.exports.rdf import MOST_FOR_TURTLE, write_triples
from boxlore.exports.required_fields import read_required
from boxlore.exports.turtle_text import as_turtle
from boxlore.sheets.transfer_papers import NOTHING_AGREED, Deed, InventoryLine, consent_pdf, gift_pdf, inventory_pdf
from boxlore.tasks.archive.archive_settings import IN_A_BAG
from boxlore.tasks.archive.archive_settings import as_toml as archive_as_toml
from boxlore.tasks.archive.climate_kept import TABLE as CLIMATE_TABLE
from boxlore.tasks.archive.climate_kept import climate_rows
from boxlore.tasks.archive.closed_part_rights import SCHEMA, TABLE, consents_words, rights_rows, rights_schema
from boxlore.tasks.archive.counting import count_items
from boxlore.tasks.archive.making import Making
from boxlore.tasks.archive.originals_asked_back import asked_in_the_deed
from boxlore.tasks.archive.receipt import IN_A_BAG as RECEIPT
from boxlore.tasks.archive.receipt import blank_rows
from boxlore.tasks.archive.recording_chapters import chapter_files
from boxlore.tasks.archive.remarks_answered import REMARKS, remark_rows
from boxlore.tasks.archive.restrictions import restriction_lines
from boxlore.tasks.archive.sittings_held import not_to_be_heard
from boxlore.tasks.archive.sound_handed import consents_since, sound_of, speakers
from boxlore.tasks.archive.struck_fields import TABLE as STRUCK_TABLE
from boxlore.tasks.archive.struck_fields import struck_rows
from boxlore.tasks.archive.transfer_context import container_lines, thing_lines, things_told, with_contact
from boxlore.tasks.archive.transfer_updates import (
    TRANSFERS,
    URN,
    transfer_rows,
)
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.prompts import FILE_NAME as PROMPTS
from boxlore.tasks.collection.records_for_outputs import (
    keepers_alone,
    never_named_outside,
)
from boxlore.tasks.collection.settings import FILE_NAME, as_toml
from boxlore.tasks.scans import fixity_events
from boxlore.tasks.sitting.recordings import of_sitting

MOST_PRINTED = 5000
"""Items up to which the inventory is printed too; a longer one is for reading on a screen."""


SETTINGS = f"metadata/{FILE_NAME}"


def make_files(making: Making, closing: Closing) -> None:
    """Count and choose first, then write each file that the archive takes."""
    count_items(making)
    if not making.holding.items:
        return
    making.work_out_dates()
    making.facts = replace(making.facts, beside=sound_of(making, closing))
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
        if making.has_sittings and making.is_whole and making.archive.wants("recordings"):
            climate = list(climate_rows(making.collection, making.seen, {*making.beside, *making.kept}))
            if len(climate) > 1:
                making.put(CLIMATE_TABLE, "the climate where it is kept: logs, and readings by hand", as_table(climate))
        remarks = list(remark_rows(making))
        if len(remarks) > 1:
            making.put(REMARKS, "what the archive has remarked, and what the family answers", as_table(remarks))
        prompts = making.collection.folder / PROMPTS
        if prompts.is_file() and not prompts.is_symlink():
            making.put(f"metadata/{PROMPTS}", "what its sittings ask", [prompts.read_bytes()])
    chosen = transfer_rows(
        making.earlier,
        making.ident,
        making.made,
        making.selection,
        originals=making.facts.originals,
        is_public=making.seen.to.is_public,
    )
    if making.archive != NOT_SAID:
        said = [archive_as_toml(making.archive).encode()]
        making.put(IN_A_BAG, "what the archive has said of itself, and what it takes", said)
    making.put(TRANSFERS, "this transfer, and those before it", as_table(chosen))
    facts = making.facts
    given = (rec for rec in making.records() if rec.id not in facts.not_given or facts.asked_back(rec.id))
    idents = {path: ident for ident, path in making.collection.store.containers()}
    boxes = [(f"{URN}{idents[path]}", path) for path in making.containers if path in idents] if facts.originals else []
    receipt = blank_rows(given, facts, boxes)
    making.put(RECEIPT, "to fill in and send back", as_table(receipt))
    making.put("metadata/fixity.csv", "when each file was hashed and checked", as_table(_fixity(making)))


def _rights(making: Making) -> None:
    """What was consented to and what is closed, with the schema of the table."""
    closures = ((record, making.facts.closure_of(record)) for record in making.records())
    never_named, beside = never_named_outside(making.collection), making.facts.beside
    rows = rights_rows(making.collection, making.seen, closures, never_named, beside)
    making.put(TABLE, "consents, and what is closed until when and why (rights records)", as_table(rows))
    making.put(SCHEMA, "what the columns of that table mean", [rights_schema()])


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
        aid.write(making.records(making.by_series()), out)
    making.findings += aid.findings


def _linked_data(making: Making) -> None:
    table = read_required(_schema("required.csv").decode())
    with making.open("metadata/records.nt", "linked data, everything that this part holds") as out:
        items: list[str] = []
        making.findings += write_triples(_noted(making.records(), items), making.facts, out, table)
        for line in restriction_lines(making.collection, making.seen, items):
            out.write(f"{line}\n".encode())
        for line in container_lines(making.collection, making.seen, making.containers):
            out.write(f"{line}\n".encode())
        for line in thing_lines(making.collection, making.seen, making.told_people, making.sittings):
            out.write(f"{line}\n".encode())
    making.put("metadata/terms.ttl", "what our own terms in the linked data mean", [_schema("terms.ttl")])
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
    for kept, inside in groupby(making.records(), key=lambda record: record.container_path):
        heading = Mark(kept).long or "Not yet in a container"
        groups.append((heading, [_line(record, making.facts) for record in inside]))
    summary = f"{making.holding.words}; {making.holding.years}."
    settings = making.collection.settings
    day = making.facts.on_day
    pdf = inventory_pdf(settings.title, summary, groups, paper=settings.paper, printed_on=day)
    making.put("metadata/inventory.pdf", "the inventory by box and folder, to print", [pdf])


def _line(record: Record, facts: CollectionFacts) -> InventoryLine:
    title = captions.title(record, captions.Style(brackets=facts.brackets))
    place = record.mark.short if record.mark else ""
    number = " ".join((record.number, *(f"({view.words})" for view in record.all("archive_reference"))))
    return InventoryLine(number, place, title, record.formal_date, " ".join(access_words(record, facts)))


def _forms(making: Making) -> None:
    """A deed of gift; a consent form for each interview in the closed part, since it names the narrator."""
    facts, settings = making.facts, making.collection.settings
    deed = Deed(
        donor=with_contact(facts.holder, facts.contact),
        recipient=with_contact(making.archive.repository, making.archive.contact),
        title=f"{facts.title} ({reference_code(facts)})",
        description=f"{_given(making)}. Transfer {making.ident} of {facts.on_day}.",
        originals=facts.originals,
        but_for=making.holding.lent_words,
        access=" ".join((making.archive.access, *_restrictions(making))).strip(),
        copyright=_copyright(making),
        amends=_amends(making),
        use=making.archive.use,
        terms=making.archive.terms,
        is_extract=making.seen.to.is_public,
        on_day=facts.on_day,
    )
    words = "an extract of the deed of gift, which is in the closed part" if deed.is_extract else _DEED
    making.put("forms/deed-of-gift.pdf", words, [gift_pdf(deed, paper=settings.paper)])
    if not making.seen.to.is_closed_part:
        return
    for at, (sitting, views) in enumerate(_interviews(making).items(), 1):
        known = _of_the_interview(making.collection, sitting, views) | {"kept": facts.holder}
        known |= consents_since(making, speakers(making, views))
        pdf = consent_pdf(known, on_day=facts.on_day, paper=settings.paper)
        making.put(f"forms/consent-{at}.pdf", "a narrator's consent, filled as far as known", [pdf])


def _interviews(making: Making) -> dict[str, list[StatementView]]:
    """What is told of each sitting whose consent lies beside the deed: not of one in which somebody speaks who is kept
    from archives."""
    unheard = not_to_be_heard(making.collection, making.seen.recipient)
    told = things_told(making.collection, making.seen, Kind.SITTING)
    return {sitting: views for sitting, views in told.items() if sitting not in unheard}


def _copyright(making: Making) -> str:
    """What is stated of the whole, and who took the pictures, as far as this part may name them."""
    makers = headings(making.holding.creators.values(), making.facts.people)
    took = f" Photographers and studios that are named: {ENGLISH.listed(makers)}." if makers else ""
    return f"Stated of the whole: {rights_label(making.facts.rights)}. {_OWN_RIGHTS}{took}"


def _amends(making: Making) -> str:
    """To which deed that of an update is an addendum."""
    if making.earlier is None:
        return ""
    first = making.earlier.bags[0]
    return (
        f"The deed for the transfer {first.transfer} of {first.made[:10]} stays in force. Once both have signed this "
        "one, it holds in the place of what that deed says of how much is given, of access and of consents."
        f"{asked_in_the_deed(making.earlier, making.facts)}"
    )


def _given(making: Making) -> str:
    """What is given: how much of each kind. The dates are in the deed that is signed, and not in its extract, which
    knows only of those in its own part."""
    dates = making.holding.years if making.seen.to.is_closed_part else ""
    return "; ".join(filter(None, (making.holding.words_with(counted(making.facts.beside)), dates)))


def _of_the_interview(collection: Collection, sitting: str, views: Sequence[StatementView]) -> dict[str, str]:
    """What a consent says of its interview, as far as it is known: the day too, and which recordings there are."""
    known = {name: "; ".join(view.words for view in views if view.field == name) for name in _CONSENT}
    known["agreement"] = known["agreement"] or NOTHING_AGREED
    noted = min((view.recorded_at[:10] for view in views), default="")
    known["place"] = ", ".join(words for words in (known.pop("date") or noted, known["place"]) if words)
    known["recording"] = "; ".join(recording.path for recording in of_sitting(collection, sitting))
    return known


_OWN_RIGHTS = "Items with a statement of their own have it in the inventory; it goes before this one."
_CLOSED = (
    (Closes.ITEM, "{} as a whole"),
    (Closes.SCANS, "the scans of {}, with part of what is told"),
    (Closes.WORDS, "part of what is told of {}, and no scan"),
    (Closes.TELLER, "of {} nothing but who told it"),
)
_DEED = "a deed of gift, filled as far as known"


def _restrictions(making: Making) -> list[str]:
    """What the deed says of restrictions and consents, counted as the tables of this part tell them one by one."""
    lines = ["The open part may be shown; the closed part from the dates in its records."]
    if making.seen.to.is_closed_part:
        closures = [closure for record in making.records() if (closure := making.facts.closure_of(record))]
        closed = Counter(closure.what for closure in closures)
        parts = [words.format(several(closed[what], "item")) for what, words in _CLOSED if closed[what]]
        beside = [(held, held.closure.until) for held in making.facts.beside if held.closure]
        parts += [f"{counted(held for held, _ in beside)} as a whole"] if beside else []
        if parts:
            last = max([*(closure.until for closure in closures), *(until for _, until in beside)])
            lines.append(f"Closed: {'; '.join(parts)}; the last until {last}. {TABLE} tells each, and why.")
        lines.append(consents_words(making.seen.people().values()))
        if interviews := _interviews(making):
            more = f" to forms/consent-{len(interviews)}.pdf" if len(interviews) > 1 else ""
            lines.append(f"Consents to interviews are beside this deed: forms/consent-1.pdf{more}.")
            agreed = [any(view.field == "agreement" for view in views) for views in interviews.values()]
            if silent := agreed.count(False):
                lines.append(f"Of {several(silent, 'interview')} nothing is noted as agreed; see there.")
    return lines


def _chapters(making: Making) -> None:
    """Chapters of the recordings, where the recordings are."""
    if not making.has_sittings:
        return
    for name, text in chapter_files(making.collection, making.seen, making.sittings):
        if not making.seen.recipient.may_read(f"{name} {text}"):
            words = f"The chapters {name} were left out: they name someone who is withheld from this part."
            making.findings.append(
                Finding(rule="chapters.name", severity=Severity.NOTE, message=words, source="audience of this part")
            )
            continue
        making.put(f"metadata/{name}", "which item was out when, beside a recording (WebVTT)", [text.encode()])


_CONSENT = ("narrator", "interviewer", "date", "place", "agreement")


def _fixity(making: Making) -> Iterator[list[str]]:
    """Fixity events of the files that this part holds, under the names that they have in it.

    A scan that goes as another file than was taken in has an event of its own; those before are of the other file.
    """
    yield list(fixity_events.COLUMNS)
    packed = {
        scan.id: packed_path(record, scan)
        for record in making.records()
        for scan in record.open_scans
        if packed_path(record, scan) in making.scans
    }
    handed_otherwise = dict(making.not_as_taken_in())
    beside = {*making.beside, *making.kept}
    for event in fixity_events.events(making.collection, by_manifest=True):
        is_going = event["File"] in beside if event["sound"] else not event["scan"]
        if is_going or event["scan"] in packed:
            name = packed.get(event["scan"], event["File"])
            if (handed := handed_otherwise.get(event["scan"])) is not None:
                name = handed.before.format(name)
            yield [name, *(event[column] for column in fixity_events.COLUMNS[1:])]
    for scan, handed in handed_otherwise.items():
        if scan in packed:
            yield [packed[scan], handed.scan.sha256, handed.event, making.made, handed.outcome]
