"""The finding aid: EAD3 1.1.1 with the minimum that DACS asks for, or EAD 2002; written component by component.

The elements of DACS's single-level optimum stand at the top (`collection_description`). The keeper's
own series stand first, with their items. Of what is in none of them each box is a series, and each folder, album or
bundle a component of level `file`, titled by what is in it: the keeper's own order is the arrangement.
Each item names its containers too.
If the family keeps the originals and hands over scans, `originalsloc` (DACS 6.1) stands instead of containers.
Every component is checked against our own schema before it is written.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from itertools import chain, groupby
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.beside_dublin_core import beside_identifier, id_of_file
from boxlore.core.crosswalk.dublin_core import (
    CollectionFacts,
    DcValue,
    access_words,
    disagreements,
    heading_of,
    headings,
    in_question,
    other_names,
    own_provenance,
    rights_notes,
    rights_of,
    who_said,
    worked_out,
)
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.crosswalk.receiving_archive import NOT_SAID
from boxlore.core.crosswalk.rights_statements import rights_label
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.series import series_key, series_words
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.findings import Finding, Severity, make_finding, several
from boxlore.core.originals.physical_description import physical_lines
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.records.marks import ContainerPath
from boxlore.exports.collection_description import (
    MOST_CREATORS,
    MOST_POINTS,
    collection_notes,
    container_code,
    folder_title,
    most_shown,
    reference_code,
)
from boxlore.exports.dublin_core import plain_fault
from boxlore.exports.ead_dialects import RELATORS, Dialect, codes_of

THE_ARCHIVES = "the archive's reference"
SERIES_OF = "box"
"""The kind of container that is a series."""
_ORDER = {
    True: "By folder or other container in the box, then by the items' places.",
    False: "In the order of their places in the container.",
}
"""How a series, or another container, is arranged."""
_OWN_ORDER = "In the order of the containers that the items lie in, and of their places there."


@dataclass(slots=True)
class FindingAid:
    """One finding aid of one collection, in one dialect.

    `schema` is the bytes of a RELAX NG schema; `findings` name the components that were not valid and are left out.
    """

    facts: CollectionFacts
    extent: Extent
    dialect: Dialect
    schema: bytes
    findings: list[Finding] = field(default_factory=list)

    def write(self, records: Iterable[Record], out: BinaryIO) -> None:
        """Write the finding aid to `out`. `records` must come in the order of the keeper's series (`series_key`), and
        of containers within each, and in none."""
        check = etree.RelaxNG(etree.fromstring(self.schema))
        top = whole_collection(self.dialect, self.facts, self.extent)
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
                        for component in chain(self._components(records, check), self._beside(check)):
                            file.write("\n", component)
        out.write(b"\n")

    def _components(self, records: Iterable[Record], check: etree.RelaxNG) -> Iterator[etree._Element]:
        """A series for each of the keeper's own, then what is in none of them."""
        for (is_in_none, *_), inside in groupby(records, key=lambda record: series_key(series_words(record))):
            if is_in_none:
                yield from self._by_box(inside, check)
            elif (series := self._own_series(inside, check)) is not None:
                yield series

    def _own_series(self, records: Iterable[Record], check: etree.RelaxNG) -> etree._Element | None:
        """A series of the keeper's own with its items, whatever containers they lie in; None where none is valid."""
        extent, words, items = Extent(not_given=self.facts.not_given), DcValue(""), []
        for record in records:
            if (item := self._item(record, check)) is not None:
                told = record.all("series")[0]
                words = words if words.words else DcValue(series_words(record), told.language)
                extent.add(record)
                items.append(item)
        if not items:
            return None
        series = self._unit("series", container_code((("series", words.words),), self.facts))
        self._described(series, extent, words)
        for item in items:
            series.append(item)
        return series

    def _item(self, record: Record, check: etree.RelaxNG) -> etree._Element | None:
        """The component of an item; None, with a finding, where it is not valid."""
        item = item_component(record, self.facts, self.dialect)
        if check.validate(item):
            return item
        self.findings.append(_fault(record.number, check, record.id))
        return None

    def _by_box(self, records: Iterable[Record], check: etree.RelaxNG) -> Iterator[etree._Element]:
        """A series for each box, with what lies in it; a component for each other container that lies in none, and one
        for each item that lies nowhere."""
        for outermost, inside in groupby(records, key=lambda record: record.container_path[:1]):
            if not (outermost and outermost[0][0] == SERIES_OF):
                for component, _ in self._containers(inside, check):
                    yield component
                continue
            series, extent = self._container(outermost, "series"), Extent(not_given=self.facts.not_given)
            for component, items in self._containers(inside, check, within=outermost):
                series.append(component)
                for record in items:
                    extent.add(record)
            if len(series) > 1:
                self._described(series, extent)
                yield series

    def _containers(
        self, records: Iterable[Record], check: etree.RelaxNG, within: ContainerPath = ()
    ) -> Iterator[tuple[etree._Element, list[Record]]]:
        """A component for each innermost container with its items, and one for each item that lies in none, or in the
        one that all lie `within`; each with the records of the items in it."""
        for path, inside in groupby(records, key=lambda record: record.container_path):
            component = None if path == within else self._container(path, "file")
            extent, items = Extent(not_given=self.facts.not_given), []
            for record in inside:
                item = self._item(record, check)
                if item is not None and component is None:
                    yield item, [record]
                elif item is not None and component is not None:
                    extent.add(record)
                    component.append(item)
                    items.append(record)
            if component is not None and items:
                self._described(component, extent)
                yield component, items

    def _beside(self, check: etree.RelaxNG) -> Iterator[etree._Element]:
        """A component for each recording and paper, after the items."""
        for held in self.facts.beside:
            component = beside_component(held, self.facts, self.dialect)
            if check.validate(component):
                yield component
            else:
                self.findings.append(_fault(held.path, check))

    def _container(self, path: ContainerPath, level: str) -> etree._Element:
        """The component of a container, still without items; `path` is (kind, label) from the box inwards."""
        return self._unit(level, container_code(path, self.facts), path)

    def _unit(self, level: str, code: str, lies_in: ContainerPath = ()) -> etree._Element:
        """A component with its code, that of the archive first, and what it lies in; still without items."""
        component = self.dialect.element("c", level=level)
        did = self.dialect.add(component, "did")
        for kind, label in lies_in if self.facts.originals else ():
            self.dialect.container(did, kind, label)
        own = codes_of(self.facts)
        if reference := self.facts.of_containers.get(lies_in, ""):
            self.dialect.add(did, "unitid", reference, **own, **self.dialect.label(THE_ARCHIVES))
            own = {}
        self.dialect.add(did, "unitid", code, **own)
        return component

    def _described(self, component: etree._Element, extent: Extent, title: DcValue | None = None) -> None:
        """Add what is in the unit, made of its items: title, where it has none of its own, dates, extent; their order,
        and where they were found before rehousing."""
        did = component[0]
        own = title or DcValue(folder_title(extent, self.facts))
        self.dialect.add(did, "unittitle", own.words, **self.dialect.marks(own.words, own.language))
        self.dialect.date_range(did, extent)
        self.dialect.extents(did, extent)
        order = _OWN_ORDER if title else _ORDER[component.get("level") == "series"]
        words = [order] * (extent.items > 1)
        words += [f"Of the dates: {extent.not_dated}."] if extent.not_dated and extent.range_words else []
        if extent.found_in:
            words.append(f"Before rehousing they were found in: {'; '.join(extent.found_in)}.")
        if words:
            component.insert(1, self.dialect.paragraphs("arrangement", [" ".join(words)]))


def whole_collection(dialect: Dialect, facts: CollectionFacts, extent: Extent) -> etree._Element:
    """The whole document but its components; its last child is `archdesc`."""
    ead = dialect.document(facts)
    archdesc = dialect.add(ead, "archdesc", level="collection")
    did = dialect.add(archdesc, "did")
    dialect.repository(did, facts)
    dialect.collection_id(did, reference_code(facts), facts)
    dialect.add(did, "unittitle", facts.title, **dialect.marks(facts.title, facts.language))
    dialect.date_range(did, extent)
    dialect.extents(did, extent)
    if facts.family:
        dialect.family(dialect.add(did, "origination", label="Creator"), facts.family)
    for heading in headings(extent.creators.values(), facts.people)[:MOST_CREATORS]:
        dialect.person(dialect.add(did, "origination", label="Photographer"), heading, "photographer")
    dialect.languages(did, [tag for tag, _ in extent.languages.most_common()] or [facts.language])
    for name, words in collection_notes(facts, extent):
        archdesc.append(dialect.paragraphs(name, words))
    _access_points(archdesc, facts, extent, dialect)
    return ead


def _access_points(archdesc: etree._Element, facts: CollectionFacts, extent: Extent, dialect: Dialect) -> None:
    """The names, places and processes by which the whole can be found (DACS, multilevel optimum)."""
    points = dialect.element("controlaccess")
    if facts.family:
        dialect.family(points, facts.family)
    for person, _ in most_shown(facts, extent)[:MOST_POINTS]:
        dialect.person(points, heading_of(person), RELATORS["person"])
    for place, _ in extent.places.most_common(MOST_POINTS):
        dialect.place(points, place)
    for process, term in list(extent.processes.items())[:MOST_POINTS]:
        dialect.genre(points, process, term)
    if len(points):
        archdesc.append(points)


def item_component(record: Record, facts: CollectionFacts, dialect: Dialect) -> etree._Element:
    """The component of one item, without parent."""
    item = dialect.element("c", level="item", id=f"id-{record.id}")
    did = dialect.add(item, "did")
    lies_there = record.mark and facts.originals and record.id not in facts.lent
    for kind, label in (*record.mark.path, ("item", str(record.mark.item))) if record.mark and lies_there else ():
        if label != "0":
            dialect.container(did, kind, label)
    references = record.all("archive_reference")
    for reference in references:
        dialect.add(did, "unitid", reference.words, **codes_of(facts), **dialect.label(THE_ARCHIVES))
    dialect.unitid(did, record.number, record.id, facts if not references else replace(facts, archive=NOT_SAID))
    told_title, title = record.first("title"), captions.title(record, captions.Style(brackets=facts.brackets))
    dialect.add(did, "unittitle", title, **dialect.marks(title, told_title.language if told_title else ""))
    dialect.date(did, record)
    dialect.extent(did, record)
    if takers := record.shown("photographer"):
        dialect.origination(did, takers, facts)
    if record.told.get("inscription"):
        dialect.note(did, captions.inscription_line(record))
    dialect.scans(did, [(packed_path(record, scan), side_words(scan)) for scan in record.open_scans])
    _described(item, record, facts, dialect)
    dialect.access_points(item, record, facts)
    return item


def beside_component(held: Beside, facts: CollectionFacts, dialect: Dialect) -> etree._Element:
    """The component of one recording or paper of a sitting, without parent."""
    item = dialect.element("c", level="item", id=f"id-{id_of_file(held, facts)}")
    did = dialect.add(item, "did")
    if held.reference:
        dialect.add(did, "unitid", held.reference, **codes_of(facts), **dialect.label(THE_ARCHIVES))
    dialect.add(did, "unitid", held.path, **dialect.label("its path in the closed part"))
    dialect.add(did, "unitid", beside_identifier(held, facts), **dialect.label("identifier"))
    dialect.add(did, "unittitle", held.title)
    dialect.day(did, held.day)
    dialect.one_extent(did, held.kind)
    dialect.scans(did, [(held.path, held.kind)])
    item.append(dialect.paragraphs("accessrestrict", [held.access]))
    item.append(dialect.paragraphs("userestrict", [rights_label(facts.rights)]))
    length = f" Length: {held.length_words}." if held.length_words else ""
    item.append(dialect.paragraphs("scopecontent", [f"{held.title}.{length}"]))
    return item


def _described(item: etree._Element, record: Record, facts: CollectionFacts, dialect: Dialect) -> None:
    """Add access, rights, scope, physical state and custody."""
    if access := access_words(record, facts):
        item.append(dialect.paragraphs("accessrestrict", access))
    item.append(
        dialect.paragraphs("userestrict", [rights_label(rights_of(record, facts)), *rights_notes(record, facts)])
    )
    caption = captions.caption(record, "sheet")
    said_already = {f"{said}.".casefold() for said in (record.date_display, record.words("date"))}
    words: list[str | DcValue] = [] if caption.casefold() in said_already else [caption]
    words += [DcValue(statement.words, statement.language) for statement in record.all("story")]
    words += [*other_names(record, facts.people), *in_question(record, facts)]
    words += captions.own_lines(record)
    words += [f"Date as told: “{statement.words}” ({statement.sure})" for statement in record.all("date")]
    if sources := who_said(record):
        words.append(f"Who said so: {sources}")
    words += [*worked_out(record), *disagreements(record)]
    words += [f"Original file name: {view.words}" for view in record.all("file_name")]
    if record.withheld:
        words.append(f"{several(record.withheld, 'statement is', 'statements are')} withheld from this description.")
    scope = [paragraph for paragraph in words if _words(paragraph).strip()] or ["Not yet described."]
    item.append(dialect.paragraphs("scopecontent", scope))
    if physical := physical_lines(record):
        item.append(dialect.paragraphs("phystech", physical))
    if custody := own_provenance(record, facts):
        item.append(dialect.paragraphs("custodhist", custody))


def _words(paragraph: str | DcValue) -> str:
    return paragraph if isinstance(paragraph, str) else paragraph.words


def side_words(scan: ScanFile) -> str:
    """`recto`, or which part of the picture is the item: `recto; the part 120, 80, 640, 480 (x, y, width, height in
    pixels)`."""
    if len(scan.area) < 4:
        return scan.side
    sides = (scan.width, scan.height) * 2
    pixels = ", ".join(str(round(part * side)) for part, side in zip(scan.area, sides, strict=True))
    return f"{scan.side}; the part {pixels} (x, y, width, height in pixels)"


def _fault(subject: str, check: etree.RelaxNG, about: str = "") -> Finding:
    why = plain_fault(str(check.error_log.last_error.message))
    message = f"{subject} cannot be written as a valid finding aid: {why}."
    return make_finding("export.invalid", Severity.ERROR, message, "our own schema of EAD", about=about)
