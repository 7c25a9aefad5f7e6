"""Dublin Core as XML: simple (oai_dc) and full (dcterms), streamed, each record checked before it is written.

OAI-PMH 2.0 oai_dc; DCMI “Guidelines for implementing Dublin Core in XML” for xsi:type. An XSD lets empty records
and empty elements pass, so each record is held against our own schema (RELAX NG) first; one that cannot be
valid is named with what is missing and left out.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, BinaryIO

from lxml import etree

from boxlore.core.crosswalk import CollectionFacts, Value, dcterms, oai_dc
from boxlore.core.findings import Finding, Severity
from boxlore.core.record import Record

RECORDS = "urn:boxlore:records:1"
OAI_DC = "http://www.openarchives.org/OAI/2.0/oai_dc/"
DC = "http://purl.org/dc/elements/1.1/"
DCTERMS = "http://purl.org/dc/terms/"
XSI = "http://www.w3.org/2001/XMLSchema-instance"
_LANG = "{http://www.w3.org/XML/1998/namespace}lang"

Elements = Callable[[Record, CollectionFacts], Iterator[tuple[str, Value]]]


@dataclass(frozen=True, slots=True)
class Flavour:
    """One way of writing: the record's own element, the namespace of its fields, prefixes, and the crosswalk."""

    record: str
    namespace: str
    prefixes: Mapping[Any, str]
    elements: Elements


SIMPLE = Flavour(f"{{{OAI_DC}}}dc", DC, {None: RECORDS, "oai_dc": OAI_DC, "dc": DC, "xsi": XSI}, oai_dc)
FULL = Flavour(f"{{{RECORDS}}}record", DCTERMS, {None: RECORDS, "dcterms": DCTERMS, "xsi": XSI}, dcterms)


def write_records(
    records: Iterable[Record], facts: CollectionFacts, out: BinaryIO, schema: bytes, flavour: Flavour
) -> list[Finding]:
    """Write every record that is valid by `schema` (RELAX NG); returns a finding for each that is not."""
    check = etree.RelaxNG(etree.fromstring(schema))
    findings: list[Finding] = []
    with etree.xmlfile(out, encoding="utf-8") as file:
        file.write_declaration()
        with file.element(f"{{{RECORDS}}}records", nsmap=flavour.prefixes):
            for record in records:
                element = record_element(record, facts, flavour)
                if check.validate(element):
                    file.write("\n", element)
                else:
                    findings.append(_invalid(record, str(check.error_log.last_error.message)))
            file.write("\n")
    out.write(b"\n")
    return findings


def record_element(record: Record, facts: CollectionFacts, flavour: Flavour) -> etree._Element:
    """One record as an element."""
    top = etree.Element(flavour.record, nsmap=flavour.prefixes)
    for name, value in flavour.elements(record, facts):
        child = etree.SubElement(top, f"{{{flavour.namespace}}}{name}")
        child.text = _clean(value.words)
        if value.scheme:
            child.set(f"{{{XSI}}}type", value.scheme)
        elif value.language:
            child.set(_LANG, value.language.replace("_", "-"))
    return top


_ALLOWED = frozenset("\t\n\r")


def _clean(words: str) -> str:
    """Words without the characters that XML 1.0 (2.2) has no place for."""
    if words.isprintable():
        return words
    return "".join(
        one
        for one in words
        if one in _ALLOWED or (one >= " " and not "\ud800" <= one <= "\udfff" and one not in "\ufffe\uffff")
    )


def _invalid(record: Record, why: str) -> Finding:
    return Finding(
        rule="export.invalid",
        severity=Severity.ERROR,
        message=f"{record.number} cannot be written as a valid record: {why}.",
        source="required fields of our own schema",
        about=record.id,
    )
