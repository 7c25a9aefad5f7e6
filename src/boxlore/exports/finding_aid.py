"""The finding aid: EAD3 1.1.1 with the DACS minimum, or EAD 2002 for whoever still asks for it; streamed.

DACS 2.1-2.6, 3.1, 4.1, 4.5 and 8.2 stand at the top. Each folder, album or bundle is a component of level `file`
with its arrangement; each item in it carries its containers, since a box is a place and no level. Where the family
keeps the originals and hands over scans, `originalsloc` (DACS 6.1) stands instead of a container of theirs. Every
component is held against our own schema before it is written; EDTF stays out of the attributes for plain dates.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from dataclasses import field as starts
from itertools import groupby
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.archives import CollectionFacts, access_words, rights_of, who_said
from boxlore.core.crosswalk.extent import Extent, packed_path
from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.description import custody_lines, physical_lines
from boxlore.core.records.in_force import Record
from boxlore.exports.dublin_core import plain_fault
from boxlore.exports.ead_elements import Dialect


@dataclass(slots=True)
class FindingAid:
    """One finding aid of one collection, in one dialect. `findings` name what could not be written."""

    facts: CollectionFacts
    holding: Extent
    dialect: Dialect
    schema: bytes
    findings: list[Finding] = starts(default_factory=list)

    def write(self, records: Iterable[Record], out: BinaryIO) -> None:
        """Write the whole. `records` come in the order of their containers."""
        check = etree.RelaxNG(etree.fromstring(self.schema))
        top = self.dialect.top(self.facts, self.holding)
        if not check.validate(top):
            self.findings.append(_fault("The finding aid", check))
        archdesc = top[-1]
        with etree.xmlfile(out, encoding="utf-8") as file:
            file.write_declaration()
            with file.element(top.tag, nsmap=top.nsmap):
                for child in list(top)[:-1]:
                    file.write("\n", child)
                with file.element(archdesc.tag, {str(k): str(v) for k, v in archdesc.attrib.items()}):
                    for child in archdesc:
                        file.write("\n", child)
                    with file.element(self.dialect.tag("dsc"), self.dialect.dsc):
                        for part in self._components(records, check):
                            file.write("\n", part)
        out.write(b"\n")

    def _components(self, records: Iterable[Record], check: etree.RelaxNG) -> Iterator[etree._Element]:
        """A component for each innermost container; items that lie nowhere yet stand by themselves."""
        for path, inside in groupby(records, key=lambda one: one.mark.path if one.mark else ()):
            holder = self._folder(path) if path else None
            found_in: dict[str, None] = {}
            for record in inside:
                item = item_component(record, self.facts, self.dialect)
                if not check.validate(item):
                    self.findings.append(_fault(record.number, check, record.id))
                elif holder is None:
                    yield item
                else:
                    found_in |= {record.found_in: None} if record.found_in else {}
                    holder.append(item)
            if holder is not None and len(holder) > 1:
                self._arranged(holder, list(found_in))
                yield holder

    def _folder(self, path: tuple[tuple[str, str], ...]) -> etree._Element:
        kept = " / ".join(f"{kind.capitalize()} {label}" for kind, label in path)
        holder = self.dialect.element("c", level="file")
        did = self.dialect.add(holder, "did")
        self.dialect.add(did, "unittitle", kept)
        if self.facts.originals:
            for kind, label in path:
                self.dialect.container(did, kind, label)
        return holder

    def _arranged(self, holder: etree._Element, found_in: list[str]) -> None:
        """The original order goes into the arrangement, before the items."""
        count = len(holder) - 1
        words = f"{count} item{'' if count == 1 else 's'} in the order of their places in the container."
        if found_in:
            words += f" Before rehousing they were found in: {'; '.join(found_in)}."
        note = self.dialect.paragraphs("arrangement", [words])
        holder.insert(1, note)


def item_component(record: Record, facts: CollectionFacts, dialect: Dialect) -> etree._Element:
    """One item as a component."""
    item = dialect.element("c", level="item", id=f"id-{record.id}")
    did = dialect.add(item, "did")
    for kind, label in (*record.mark.path, ("item", str(record.mark.item))) if record.mark and facts.originals else ():
        if label != "0":
            dialect.container(did, kind, label)
    dialect.unitid(did, record.number, record.id)
    for told in record.all("archive_reference"):
        dialect.add(did, "unitid", told.words, **dialect.label("the archive's reference"))
    dialect.add(did, "unittitle", captions.title(record, brackets=facts.brackets))
    dialect.date(did, record)
    dialect.extent(did, record)
    if takers := record.shown("photographer"):
        dialect.origination(did, takers, facts)
    if record.told.get("inscription"):
        dialect.note(did, captions.inscription_line(record))
    if not record.closed_scans:
        dialect.scans(did, [(packed_path(record, scan), scan.side) for scan in record.scans])
    _described(item, record, facts, dialect)
    dialect.access_points(item, record, facts)
    return item


def _described(item: etree._Element, record: Record, facts: CollectionFacts, dialect: Dialect) -> None:
    if access := access_words(record, facts):
        item.append(dialect.paragraphs("accessrestrict", access))
    item.append(dialect.paragraphs("userestrict", [rights_of(record, facts), *_rights_holders(record)]))
    words = [captions.caption(record, "sheet"), *(told.words for told in record.all("story"))]
    words += [f"Date as told: “{told.words}” ({told.sure})" for told in record.all("date")]
    if said := who_said(record):
        words.append(f"Who said so: {said}")
    if record.conflicts:
        words.append("Sources disagree: " + "; ".join(sorted({one.why for one in record.conflicts})))
    if record.withheld:
        words.append(f"{record.withheld} statements are withheld from this description.")
    item.append(dialect.paragraphs("scopecontent", [one for one in words if one.strip()] or ["Not yet described."]))
    if physical := physical_lines(record):
        item.append(dialect.paragraphs("phystech", physical))
    moves = custody_lines(record)
    moves += [f"Found in: {record.found_in}"] if record.found_in else []
    if moves := [*moves, *facts.moves_of(record)]:
        item.append(dialect.paragraphs("custodhist", moves))


def _rights_holders(record: Record) -> list[str]:
    return [f"Rights holder: {told.words}" for told in record.all("rights_holder")]


def _fault(what: str, check: etree.RelaxNG, about: str = "") -> Finding:
    why = plain_fault(str(check.error_log.last_error.message))
    return Finding(
        rule="export.invalid",
        severity=Severity.ERROR,
        message=f"{what} cannot be written as a valid finding aid: {why}.",
        source="our own schema of EAD",
        about=about,
    )
