"""The bag's pictures as METS with PREMIS: what describes each, what it is, what happened to it, and where it lies.

METS 1.12 (Library of Congress): header, descriptive and administrative sections, files, a physical structure of boxes,
folders, items and sides. PREMIS Data Dictionary 3.0: an object of category file for each scan, and its fixity events.
The dictionaries are from memory but for what their schemas say; a MIX section for pixels is not made.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from itertools import groupby
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.dublin_core import CollectionFacts, oai_dc, rights_of
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.exports.collection_description import rights_label
from boxlore.exports.dublin_core import DC, OAI_DC, dc_element
from boxlore.exports.escaping import clean

METS = "http://www.loc.gov/METS/"
PREMIS = "http://www.loc.gov/premis/v3"
XLINK = "http://www.w3.org/1999/xlink"
XSI = "http://www.w3.org/2001/XMLSchema-instance"
_NSMAP = {"mets": METS, "premis": PREMIS, "xlink": XLINK, "xsi": XSI, "oai_dc": OAI_DC, "dc": DC}


@dataclass(frozen=True, slots=True)
class FileEvent:
    """One fixity event of a scan: its kind, when it was, what came of it."""

    kind: str
    when: str
    outcome: str


@dataclass(frozen=True, slots=True)
class MetsSource:
    """What a METS file is made of. `records` gives the records anew each time, in the order of their containers; `goes`
    says whether a scan is in the package; `events` are those of a scan by its id."""

    ident: str
    made: str
    records: Callable[[], Iterable[Record]]
    facts: CollectionFacts
    goes: Callable[[str], bool]
    events: Mapping[str, list[FileEvent]]

    def scans(self) -> Iterable[tuple[Record, ScanFile, str]]:
        """Each scan of the package once, with the first record that has it, and its path."""
        seen: set[str] = set()
        for record in self.records():
            for scan in () if record.closed_scans else record.scans:
                path = packed_path(record, scan)
                if scan.id not in seen and self.goes(path):
                    seen.add(scan.id)
                    yield record, scan, path


def write_mets(source: MetsSource, out: BinaryIO) -> None:
    """Write the METS file to `out`, section by section."""
    with etree.xmlfile(out, encoding="utf-8") as file:
        file.write_declaration()
        attributes = {"OBJID": source.ident, "TYPE": "collection", "LABEL": clean(source.facts.title)}
        with file.element(f"{{{METS}}}mets", attributes, nsmap=_NSMAP):
            file.write("\n", _header(source))
            for record in source.records():
                file.write("\n", _description(record, source.facts))
            for record, scan, path in source.scans():
                file.write("\n", _administration(record, scan, path, source))
            scans = list(_files(source))
            if scans:
                section = _element("fileSec")
                group = _add(section, "fileGrp", USE="scans")
                group.extend(scans)
                file.write("\n", section)
            file.write("\n", _structure(source))
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
    agent = _add(header, "agent", ROLE="CREATOR", TYPE="ORGANIZATION")
    _add(agent, "name", source.facts.holder or source.facts.title)
    if source.facts.archive.repository:
        archive = _add(header, "agent", ROLE="CUSTODIAN", TYPE="ORGANIZATION")
        _add(archive, "name", source.facts.archive.repository)
    return header


def _description(record: Record, facts: CollectionFacts) -> etree._Element:
    section = _element("dmdSec", ID=f"D-{record.id}")
    wrapped = _add(section, "mdWrap", MDTYPE="DC", MIMETYPE="text/xml")
    _add(wrapped, "xmlData").append(dc_element(oai_dc(record, facts)))
    return section


def _wrapped(parent: etree._Element, name: str, ident: str, kind: str) -> etree._Element:
    section = _add(parent, name, ID=ident)
    return _add(_add(section, "mdWrap", MDTYPE=kind, MIMETYPE="text/xml"), "xmlData")


def _administration(record: Record, scan: ScanFile, path: str, source: MetsSource) -> etree._Element:
    """The PREMIS object of a scan, its rights as a note, and its events."""
    section = _element("amdSec", ID=f"A-{scan.id}")
    _object(_wrapped(section, "techMD", f"T-{scan.id}", "PREMIS:OBJECT"), scan, path)
    rights = _add(section, "rightsMD", ID=f"R-{scan.id}-{record.id}")
    wrapped = _add(rights, "mdWrap", MDTYPE="DC", MIMETYPE="text/xml")
    words = etree.SubElement(_add(wrapped, "xmlData"), f"{{{DC}}}rights")
    words.text = clean(rights_label(rights_of(record, source.facts)))
    for at, event in enumerate(source.events.get(scan.id, ()), 1):
        _event(_wrapped(section, "digiprovMD", f"E-{scan.id}-{at}", "PREMIS:EVENT"), scan, event, at)
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
    _premis(told, "eventType", event.kind)
    _premis(told, "eventDateTime", event.when)
    _premis(_premis(told, "eventOutcomeInformation"), "eventOutcome", event.outcome)
    linked = _premis(told, "linkingObjectIdentifier")
    _premis(linked, "linkingObjectIdentifierType", "UUID")
    _premis(linked, "linkingObjectIdentifierValue", f"urn:uuid:{scan.id}")


def _files(source: MetsSource) -> Iterable[etree._Element]:
    for _, scan, path in source.scans():
        file = _element(
            "file", ID=f"F-{scan.id}", ADMID=f"A-{scan.id}", MIMETYPE=scan.media_type, SIZE=str(scan.bytes),
            CHECKSUM=scan.sha256, CHECKSUMTYPE="SHA-256",
        )  # fmt: skip
        located = _add(file, "FLocat", LOCTYPE="URL")
        located.set(f"{{{XLINK}}}href", f"../{path}")
        yield file


def _structure(source: MetsSource) -> etree._Element:
    """Boxes and folders as they lie, their items, and the sides of each."""
    structure = _element("structMap", TYPE="physical")
    whole = _add(structure, "div", TYPE="collection", LABEL=clean(source.facts.title))
    for path, inside in groupby(source.records(), key=lambda record: record.mark.path if record.mark else ()):
        label = " / ".join(f"{kind.capitalize()} {label}" for kind, label in path)
        parent = _add(whole, "div", TYPE=path[-1][0], LABEL=clean(label)) if path else whole
        for record in inside:
            title = clean(captions.title(record, brackets=source.facts.brackets))
            item = _add(parent, "div", TYPE="item", LABEL=f"{record.number}: {title}", DMDID=f"D-{record.id}")
            for scan in () if record.closed_scans else record.scans:
                if source.goes(packed_path(record, scan)):
                    side = _add(item, "div", TYPE="front" if scan.side == "recto" else "back")
                    _add(side, "fptr", FILEID=f"F-{scan.id}")
    return structure
