"""Dublin Core as XML: simple (oai_dc) and full (dcterms), streamed, every record checked before it is written.

OAI-PMH 2.0 oai_dc; DCMI “Guidelines for implementing Dublin Core in XML” for xsi:type. An XSD lets empty records
and empty elements pass, so each record is held against our own schema (RELAX NG) first, a batch at a time; one
that cannot be valid is named with what is missing and left out.
"""

import re
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from dataclasses import field as starts
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk.archives import CollectionFacts, DcValue, dcterms, oai_dc
from boxlore.core.findings import Finding, Severity
from boxlore.core.records.in_force import Record
from boxlore.exports.markup import xml_attribute, xml_text
from boxlore.exports.required import Required, missing

RECORDS = "urn:boxlore:records:1"
OAI_DC = "http://www.openarchives.org/OAI/2.0/oai_dc/"
DC = "http://purl.org/dc/elements/1.1/"
DCTERMS = "http://purl.org/dc/terms/"
XSI = "http://www.w3.org/2001/XMLSchema-instance"
BATCH = 100

Elements = Callable[[Record, CollectionFacts], Iterator[tuple[str, DcValue]]]


@dataclass(frozen=True, slots=True)
class Flavour:
    """One way of writing: the record's own element, the prefix of its fields, the namespaces, and the crosswalk."""

    record: str
    prefix: str
    namespaces: str
    elements: Elements
    output: str
    """What the table of required fields calls it."""


SIMPLE = Flavour("oai_dc:dc", "dc", f'xmlns:oai_dc="{OAI_DC}" xmlns:dc="{DC}"', oai_dc, "oai_dc")
FULL = Flavour("record", "dcterms", f'xmlns:dcterms="{DCTERMS}" xmlns:xsi="{XSI}"', dcterms, "dcterms")


@dataclass(slots=True)
class RecordsWriter:
    """Takes records one by one and writes those that are valid by `schema` (RELAX NG); `findings` name the others."""

    out: BinaryIO
    facts: CollectionFacts
    schema: bytes
    flavour: Flavour
    table: Required = ()
    findings: list[Finding] = starts(default_factory=list)
    _batch: list[tuple[Record, str]] = starts(default_factory=list)
    _check: etree.RelaxNG = starts(init=False)
    _parser: etree.XMLParser = starts(init=False)
    _beside: ThreadPoolExecutor = starts(init=False)
    _waiting: Future[tuple[bytes, list[Finding]]] | None = None

    def __post_init__(self) -> None:
        self._check = etree.RelaxNG(etree.fromstring(self.schema))
        self._parser = etree.XMLParser(huge_tree=True, resolve_entities=False, no_network=True, collect_ids=False)
        self._beside = ThreadPoolExecutor(1, "checking")
        self.out.write(f"<?xml version='1.0' encoding='UTF-8'?>\n{self._top}".encode())

    @property
    def _top(self) -> str:
        return f'<records xmlns="{RECORDS}" {self.flavour.namespaces}>\n'

    def add(self, record: Record) -> None:
        """Take one record; it is checked and written with its batch."""
        self._batch.append((record, record_text(record, self.facts, self.flavour)))
        if len(self._batch) == BATCH:
            self._flush()

    def close(self) -> None:
        """Write what is left, and the end."""
        self._flush()
        self._write_checked()
        self._beside.shutdown()
        self.out.write(b"</records>\n")

    def _flush(self) -> None:
        """Hand a batch over to be checked, on another core where there is one, while the next is made."""
        self._write_checked()
        self._waiting = self._beside.submit(self._checked, self._batch)
        self._batch = []

    def _write_checked(self) -> None:
        if self._waiting is not None:
            valid, findings = self._waiting.result()
            self.out.write(valid)
            self.findings += findings

    def _checked(self, batch: list[tuple[Record, str]]) -> tuple[bytes, list[Finding]]:
        """The valid records of a batch as bytes, and a finding for each of the others."""
        texts = [text for _, text in batch]
        if not texts or not self._fault(texts):
            return "".join(texts).encode(), []
        faults = [self._fault([text]) for text in texts]
        findings = [
            _invalid(one, self._lacking(one) or why) for (one, _), why in zip(batch, faults, strict=True) if why
        ]
        return "".join(text for text, why in zip(texts, faults, strict=True) if not why).encode(), findings

    def _lacking(self, record: Record) -> str:
        """What of the required fields a record lacks, in words."""
        elements = [(name, value.words) for name, value in self.flavour.elements(record, self.facts)]
        lacks = missing(elements, self.flavour.output, self.table)
        return f"it lacks {' and '.join(lacks)}" if lacks else ""

    def _fault(self, texts: list[str]) -> str:
        """What is wrong with these records together, or an empty string."""
        whole = etree.fromstring(f"{self._top}{''.join(texts)}</records>".encode(), self._parser)
        return "" if self._check.validate(whole) else plain_fault(str(self._check.error_log.last_error.message))


def write_records(
    records: Iterable[Record],
    facts: CollectionFacts,
    out: BinaryIO,
    schema: bytes,
    flavour: Flavour,
    table: Required = (),
) -> list[Finding]:
    """Write every record that is valid by `schema` (RELAX NG); returns a finding for each that is not."""
    writer = RecordsWriter(out, facts, schema, flavour, table)
    for record in records:
        writer.add(record)
    writer.close()
    return writer.findings


def record_text(record: Record, facts: CollectionFacts, flavour: Flavour) -> str:
    """One record as text on a line of its own."""
    parts = [f"<{flavour.record}>"]
    prefix = flavour.prefix
    for name, (words, language, scheme) in flavour.elements(record, facts):
        if scheme:
            attribute = f' xsi:type="{scheme}"'
        elif language:
            attribute = f' xml:lang="{xml_attribute(language.replace("_", "-"))}"'
        else:
            attribute = ""
        parts.append(f"<{prefix}:{name}{attribute}>{xml_text(words)}</{prefix}:{name}>")
    parts.append(f"</{flavour.record}>\n")
    return "".join(parts)


def plain_fault(message: str) -> str:
    """A validator's message with the namespaces left off."""
    return re.sub(r"\{[^}]*\}", "", message).rstrip(".")


def _invalid(record: Record, why: str) -> Finding:
    return Finding(
        rule="export.invalid",
        severity=Severity.ERROR,
        message=f"{record.number} cannot be written as a valid record: {why}.",
        source="required fields of our own schema",
        about=record.id,
    )
