"""Dublin Core as XML: simple (oai_dc) and full (dcterms), written record by record.

Written from OAI-PMH 2.0 (oai_dc) and the DCMI “Guidelines for implementing Dublin Core in XML” (xsi:type). The
published XSD accepts empty records and empty elements, so records are first checked against our own schema (RELAX
NG), in batches. A record that is not valid is left out, and a finding says what it lacks.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass, field
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk.beside_dublin_core import full_beside, simple_beside
from boxlore.core.crosswalk.dublin_core import CollectionFacts, DcValue, dcterms, oai_dc
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.fields.language import language_tag
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.records.item_record import Record
from boxlore.exports.escaping import clean, xml_text
from boxlore.exports.required_fields import Required, missing

RECORDS = "tag:boxlore.example,2026:records:1"
OAI_DC = "http://www.openarchives.org/OAI/2.0/oai_dc/"
DC = "http://purl.org/dc/elements/1.1/"
DCTERMS = "http://purl.org/dc/terms/"
XSI = "http://www.w3.org/2001/XMLSchema-instance"
BATCH = 100
"""How many records are checked at a time."""

Elements = Callable[[Record, CollectionFacts], Iterator[tuple[str, DcValue]]]
ElementsBeside = Callable[[Beside, CollectionFacts], Iterator[tuple[str, DcValue]]]


@dataclass(frozen=True, slots=True)
class Flavour:
    """One way of writing Dublin Core.

    `record` is the name of a record's element, `prefix` that of its fields, `namespaces` the declarations at the top,
    `elements` the crosswalk of items, `beside` that of what lies beside them.
    """

    record: str
    prefix: str
    namespaces: str
    elements: Elements
    beside: ElementsBeside
    output: str
    """Its name in the table of required fields."""


SIMPLE = Flavour("oai_dc:dc", "dc", f'xmlns:oai_dc="{OAI_DC}" xmlns:dc="{DC}"', oai_dc, simple_beside, "oai_dc")
FULL = Flavour("record", "dcterms", f'xmlns:dcterms="{DCTERMS}" xmlns:xsi="{XSI}"', dcterms, full_beside, "dcterms")


@dataclass(frozen=True, slots=True)
class _Written:
    """A record as it will stand in the file: what it is called in a finding, its id, its elements, its text."""

    called: str
    ident: str
    elements: Sequence[tuple[str, DcValue]]
    text: str


@dataclass(slots=True)
class RecordsWriter:
    """Takes records one by one and writes the valid ones to `out`; `findings` name the others.

    `schema` is the bytes of a RELAX NG schema, `table` the required fields. While one batch is checked in another
    thread, the next is made. Call `close` at the end.
    """

    out: BinaryIO
    facts: CollectionFacts
    schema: bytes
    flavour: Flavour
    table: Required = ()
    findings: list[Finding] = field(default_factory=list)
    _batch: list[_Written] = field(default_factory=list)
    _validator: etree.RelaxNG = field(init=False)
    _parser: etree.XMLParser = field(init=False)
    _executor: ThreadPoolExecutor = field(init=False)
    _being_checked: Future[tuple[bytes, list[Finding]]] | None = None

    def __post_init__(self) -> None:
        self._validator = etree.RelaxNG(etree.fromstring(self.schema))
        self._parser = etree.XMLParser(huge_tree=True, resolve_entities=False, no_network=True, collect_ids=False)
        self._executor = ThreadPoolExecutor(1, "checking")
        self.out.write(f"<?xml version='1.0' encoding='UTF-8'?>\n{self._top}".encode())

    @property
    def _top(self) -> str:
        return f'<records xmlns="{RECORDS}" {self.flavour.namespaces}>\n'

    def add(self, record: Record) -> None:
        """Take the record of one item. It is checked and written with its batch."""
        self._take(record.number, record.id, list(self.flavour.elements(record, self.facts)))

    def add_beside(self, held: Beside) -> None:
        """Take one recording or paper, in the same way."""
        self._take(held.path, held.sitting, list(self.flavour.beside(held, self.facts)))

    def _take(self, called: str, ident: str, elements: Sequence[tuple[str, DcValue]]) -> None:
        self._batch.append(_Written(called, ident, elements, record_text(elements, self.flavour)))
        if len(self._batch) == BATCH:
            self._flush()

    def close(self) -> None:
        """Write the last batch and the end of the file."""
        self._flush()
        self._write_checked()
        self._executor.shutdown()
        self.out.write(b"</records>\n")

    def _flush(self) -> None:
        """Write the batch that was being checked, and give the current one to be checked in the other thread."""
        self._write_checked()
        self._being_checked = self._executor.submit(self._checked, self._batch)
        self._batch = []

    def _write_checked(self) -> None:
        if self._being_checked is not None:
            valid, findings = self._being_checked.result()
            self.out.write(valid)
            self.findings += findings

    def _checked(self, batch: list[_Written]) -> tuple[bytes, list[Finding]]:
        """The valid records of a batch as bytes, and a finding for each of the others.

        The whole batch is checked at once; only if it has a fault is each record checked alone.
        """
        texts = [written.text for written in batch]
        if not texts or not self._fault(texts):
            return "".join(texts).encode(), []
        faults = [self._fault([text]) for text in texts]
        invalid = [(written, why) for written, why in zip(batch, faults, strict=True) if why]
        findings = [_invalid(written, self._lacking(written) or why) for written, why in invalid]
        return "".join(text for text, why in zip(texts, faults, strict=True) if not why).encode(), findings

    def _lacking(self, written: _Written) -> str:
        """The required fields that a record lacks, in words; empty if it lacks none."""
        elements = [(name, value.words) for name, value in written.elements]
        lacks = missing(elements, self.flavour.output, self.table)
        return f"it lacks {' and '.join(lacks)}" if lacks else ""

    def _fault(self, texts: list[str]) -> str:
        """The validator's message about the first fault in these records; empty if there is none."""
        document = etree.fromstring(f"{self._top}{''.join(texts)}</records>".encode(), self._parser)
        if self._validator.validate(document):
            return ""
        return plain_fault(str(self._validator.error_log.last_error.message))


def write_records(
    records: Iterable[Record],
    facts: CollectionFacts,
    out: BinaryIO,
    schema: bytes,
    flavour: Flavour,
    table: Required = (),
) -> list[Finding]:
    """Write every valid record, those of what lies beside the items last. Returns a finding for each that is not valid;
    see `RecordsWriter`."""
    writer = RecordsWriter(out, facts, schema, flavour, table)
    for record in records:
        writer.add(record)
    for held in facts.beside:
        writer.add_beside(held)
    writer.close()
    return writer.findings


def dc_element(values: Iterable[tuple[str, DcValue]]) -> etree._Element:
    """One record of simple Dublin Core as an element, for formats that hold it within. It names its schema, as OAI-PMH
    2.0 (3.4, 4.5, from memory) asks of each part of metadata."""
    element = etree.Element(f"{{{OAI_DC}}}dc", nsmap={"oai_dc": OAI_DC, "dc": DC, "xsi": XSI})
    element.set(f"{{{XSI}}}schemaLocation", f"{OAI_DC} http://www.openarchives.org/OAI/2.0/oai_dc.xsd")
    for name, value in values:
        child = etree.SubElement(element, f"{{{DC}}}{name}")
        child.text = clean(value.words)
        if value.language and (tag := language_tag(value.language)):
            child.set("{http://www.w3.org/XML/1998/namespace}lang", tag)
    return element


def record_text(elements: Iterable[tuple[str, DcValue]], flavour: Flavour) -> str:
    """One record as XML on one line."""
    parts = [f"<{flavour.record}>"]
    prefix = flavour.prefix
    for name, (words, language, scheme) in elements:
        if scheme:
            attribute = f' xsi:type="{scheme}"'
        elif tag := language_tag(language):
            attribute = f' xml:lang="{tag}"'
        else:
            attribute = ""
        parts.append(f"<{prefix}:{name}{attribute}>{xml_text(words)}</{prefix}:{name}>")
    parts.append(f"</{flavour.record}>\n")
    return "".join(parts)


def plain_fault(message: str) -> str:
    """A validator's message without namespaces and the full stop."""
    return re.sub(r"\{[^}]*\}", "", message).rstrip(".")


def _invalid(written: _Written, why: str) -> Finding:
    message = f"{written.called} cannot be written as a valid record: {why}."
    return make_finding(
        "export.invalid", Severity.ERROR, message, "required fields of our own schema", about=written.ident
    )
