"""The bag's pictures as METS with PREMIS: what describes each, what it is, what happened to it, and where it lies.

METS 1.12 (Library of Congress): header, descriptive and administrative sections, files, a physical structure of boxes,
folders, items and sides. PREMIS Data Dictionary 3.0: an object of category file for each scan, its fixity events, and
the agent that carried them out; recordings and papers follow, each with its file.
The dictionaries are from memory but for what their schemas say; a MIX section for pixels is not made. A file's address
leads out of `metadata/` to `scans/`; where a transfer was split, into the bag beside it that holds the file
(`tasks.archive.transfer_bags`). Of an update it may lie in an earlier bag: there the address leads to it once the
folders `data` of both are laid into one.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.beside_dublin_core import simple_beside
from boxlore.core.crosswalk.dublin_core import CollectionFacts, DcValue, oai_dc, rights_notes, rights_of
from boxlore.core.crosswalk.rights_statements import rights_label
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.records.marks import Mark
from boxlore.exports.dublin_core import DC, OAI_DC, XSI, dc_element
from boxlore.exports.ead_dialects import SOFTWARE
from boxlore.exports.escaping import clean

METS = "http://www.loc.gov/METS/"
PREMIS = "http://www.loc.gov/premis/v3"
XLINK = "http://www.w3.org/1999/xlink"
_NSMAP = {"mets": METS, "premis": PREMIS, "xlink": XLINK, "xsi": XSI, "oai_dc": OAI_DC, "dc": DC}


_VOCABULARY = "http://id.loc.gov/vocabulary/preservation/"
_EVENTS = {"message digest calculation": "mes", "fixity check": "fix", "replication": "rep", "ingestion": "ing"}
"""Codes of the Library of Congress's vocabulary of preservation events, by its labels; from memory."""
_SOFTWARE_ID = "SOFTWARE"


@dataclass(frozen=True, slots=True)
class FileEvent:
    """One fixity event of a file: its kind, when it was, what came of it."""

    kind: str
    when: str
    outcome: str


@dataclass(frozen=True, slots=True)
class MetsSource:
    """What a METS file is made of. `records` come in the order of their containers; `goes` says whether a scan is in
    the package; `events` are those of a scan, a recording or a paper by its id."""

    ident: str
    made: str
    records: Iterable[Record]
    facts: CollectionFacts
    goes: Callable[[str], bool]
    events: Mapping[str, list[FileEvent]]
    beside: Sequence[tuple[Beside, ScanFile]] = ()
    """Recordings and papers, each with its file."""

    def packed(self, record: Record) -> Iterator["_Packed"]:
        """The scans of a record that are in the package."""
        for scan in record.open_scans:
            if self.goes(path := packed_path(record, scan)):
                yield _Packed(scan, path, record.id, _rights_words(record, self.facts))


@dataclass(frozen=True, slots=True)
class _Packed:
    """A scan of the package: its path, and the id and rights of its item."""

    scan: ScanFile
    path: str
    item: str
    rights: str


def _rights_words(record: Record, facts: CollectionFacts) -> str:
    return "; ".join((rights_label(rights_of(record, facts)), *rights_notes(record, facts)))


def write_mets(source: MetsSource, out: BinaryIO) -> None:
    """Write the METS file to `out`, section by section. What stands behind the descriptions is gathered meanwhile."""
    packed: dict[str, _Packed] = {}
    structure = _element("structMap", TYPE="physical")
    whole = _add(structure, "div", TYPE="collection", LABEL=clean(source.facts.title))
    with etree.xmlfile(out, encoding="utf-8") as file:
        file.write_declaration()
        attributes = {"OBJID": source.ident, "TYPE": "collection", "LABEL": clean(source.facts.title)}
        with file.element(f"{{{METS}}}mets", attributes, nsmap=_NSMAP):
            file.write("\n", _header(source))
            for path, inside in groupby(source.records, key=lambda record: record.container_path):
                container = _add(whole, "div", TYPE=path[-1][0], LABEL=clean(Mark(path).long)) if path else whole
                for record in inside:
                    file.write("\n", _description(record, source.facts))
                    scans = list(source.packed(record))
                    _item(container, record, scans, source.facts)
                    for held in scans:  # one that shows several items stands once, by the first of them
                        packed.setdefault(held.scan.id, held)
            for lying, scan in source.beside:
                file.write("\n", _described_as(scan.id, simple_beside(lying, source.facts)))
                packed[scan.id] = _Packed(scan, lying.path, scan.id, rights_label(source.facts.rights))
                div = _add(whole, "div", TYPE=lying.kind, LABEL=clean(lying.title), DMDID=f"D-{scan.id}")
                _add(div, "fptr", FILEID=f"F-{scan.id}")
            for held in packed.values():
                file.write("\n", _administration(held, source.events.get(held.scan.id, ())))
            if packed:
                file.write("\n", _software())
                file.write("\n", _files(packed.values()))
            file.write("\n", structure)
    out.write(b"\n")


def _element(name: str, **attributes: str) -> etree._Element:
    return etree.Element(f"{{{METS}}}{name}", attributes, nsmap=_NSMAP)


def _add(parent: etree._Element, name: str, words: str = "", **attributes: str) -> etree._Element:
    child = etree.SubElement(parent, f"{{{METS}}}{name}", attributes)
    child.text = clean(words) or None
    return child


def _premis(parent: etree._Element, name: str, words: str = "") -> etree._Element:
    child = etree.SubElement(parent, f"{{{PREMIS}}}{name}")
    child.text = clean(words) or None
    return child


def _header(source: MetsSource) -> etree._Element:
    header = _element("metsHdr", CREATEDATE=source.made, LASTMODDATE=source.made)
    facts = source.facts
    is_person = any(person.name == facts.holder for person in facts.people.values())
    agent = _add(header, "agent", ROLE="CREATOR", TYPE="INDIVIDUAL" if is_person else "ORGANIZATION")
    _add(agent, "name", source.facts.holder or source.facts.title)
    if source.facts.archive.repository:
        archive = _add(header, "agent", ROLE="CUSTODIAN", TYPE="ORGANIZATION")
        _add(archive, "name", source.facts.archive.repository)
    return header


def _description(record: Record, facts: CollectionFacts) -> etree._Element:
    return _described_as(record.id, oai_dc(record, facts))


def _described_as(ident: str, values: Iterable[tuple[str, DcValue]]) -> etree._Element:
    section = _element("dmdSec", ID=f"D-{ident}")
    _data_in(section, "DC").append(dc_element(values))
    return section


def _data_in(section: etree._Element, kind: str) -> etree._Element:
    """The element of a section that takes metadata of another standard."""
    return _add(_add(section, "mdWrap", MDTYPE=kind, MIMETYPE="text/xml"), "xmlData")


def _administration(held: _Packed, events: Iterable[FileEvent]) -> etree._Element:
    """The PREMIS object of a scan, its rights as a note, and its events."""
    scan = held.scan
    section = _element("amdSec", ID=f"A-{scan.id}")
    _object(_data_in(_add(section, "techMD", ID=f"T-{scan.id}"), "PREMIS:OBJECT"), scan, held.path)
    rights = _data_in(_add(section, "rightsMD", ID=f"R-{scan.id}-{held.item}"), "DC")
    etree.SubElement(rights, f"{{{DC}}}rights").text = clean(held.rights)
    for at, event in enumerate(events, 1):
        _event(_data_in(_add(section, "digiprovMD", ID=f"E-{scan.id}-{at}"), "PREMIS:EVENT"), scan, event, at)
    return section


def _software() -> etree._Element:
    """The PREMIS agent of the events: the program that made the digests, compared them and copied the files."""
    section = _element("amdSec", ID=f"A-{_SOFTWARE_ID}")
    told = _premis(_data_in(_add(section, "digiprovMD", ID=f"P-{_SOFTWARE_ID}"), "PREMIS:AGENT"), "agent")
    ident = _premis(told, "agentIdentifier")
    _premis(ident, "agentIdentifierType", "local")
    _premis(ident, "agentIdentifierValue", SOFTWARE)
    _premis(told, "agentName", SOFTWARE)
    _premis(told, "agentType", "software")
    return section


def _object(parent: etree._Element, scan: ScanFile, path: str) -> None:
    found = _premis(parent, "object")
    found.set(f"{{{XSI}}}type", "premis:file")
    ident = _premis(found, "objectIdentifier")
    _premis(ident, "objectIdentifierType", "UUID")
    _premis(ident, "objectIdentifierValue", f"urn:uuid:{scan.id}")
    known = _premis(found, "objectCharacteristics")
    _premis(known, "compositionLevel", "0")
    fixity = _premis(known, "fixity")
    _premis(fixity, "messageDigestAlgorithm", "SHA-256")
    _premis(fixity, "messageDigest", scan.sha256)
    _premis(known, "size", str(scan.bytes))
    designation = _premis(_premis(known, "format"), "formatDesignation")
    _premis(designation, "formatName", scan.media_type)
    _premis(found, "originalName", path)


def _event(parent: etree._Element, scan: ScanFile, event: FileEvent, at: int) -> None:
    told = _premis(parent, "event")
    ident = _premis(told, "eventIdentifier")
    _premis(ident, "eventIdentifierType", "local")
    _premis(ident, "eventIdentifierValue", f"{scan.id}-{at}")
    kind = _premis(told, "eventType", event.kind)
    if code := _EVENTS.get(event.kind):
        kind.set("authority", "eventType")
        kind.set("authorityURI", f"{_VOCABULARY}eventType")
        kind.set("valueURI", f"{_VOCABULARY}eventType/{code}")
    _premis(told, "eventDateTime", event.when)
    _premis(_premis(told, "eventOutcomeInformation"), "eventOutcome", event.outcome)
    by = _premis(told, "linkingAgentIdentifier")
    _premis(by, "linkingAgentIdentifierType", "local")
    _premis(by, "linkingAgentIdentifierValue", SOFTWARE)
    _premis(by, "linkingAgentRole", "executing program")
    linked = _premis(told, "linkingObjectIdentifier")
    _premis(linked, "linkingObjectIdentifierType", "UUID")
    _premis(linked, "linkingObjectIdentifierValue", f"urn:uuid:{scan.id}")


def _files(packed: Iterable[_Packed]) -> etree._Element:
    section = _element("fileSec")
    groups: dict[str, etree._Element] = {}
    for held in packed:
        scan, use = held.scan, held.path.partition("/")[0]
        group = groups[use] if use in groups else groups.setdefault(use, _add(section, "fileGrp", USE=use))
        file = _add(
            group, "file", ID=f"F-{scan.id}", ADMID=f"A-{scan.id}", MIMETYPE=scan.media_type, SIZE=str(scan.bytes),
            CHECKSUM=scan.sha256, CHECKSUMTYPE="SHA-256",
        )  # fmt: skip
        located = _add(file, "FLocat", LOCTYPE="URL")
        located.set(f"{{{XLINK}}}href", f"../{held.path}")
    return section


def _item(container: etree._Element, record: Record, scans: Iterable[_Packed], facts: CollectionFacts) -> None:
    """An item in its place, and its sides."""
    title = clean(captions.title(record, captions.Style(brackets=facts.brackets)))
    item = _add(container, "div", TYPE="item", LABEL=f"{record.number}: {title}", DMDID=f"D-{record.id}")
    for held in scans:
        side = _add(item, "div", TYPE="front" if held.scan.side == "recto" else "back")
        _add(side, "fptr", FILEID=f"F-{held.scan.id}")
