"""A static repository: one XML file from which a gateway answers OAI-PMH, of simple Dublin Core.

Specification for an OAI Static Repository and an OAI Static Repository Gateway, 2.0 (2004): Identify, then
ListMetadataFormats, then ListRecords; datestamps by day, no sets, no deleted records. A record is known by its UUID.
"""

from collections.abc import Callable, Iterable
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk.dublin_core import CollectionFacts, oai_dc
from boxlore.core.records.item_record import Record, every_told
from boxlore.exports.dublin_core import DC, OAI_DC, XSI, dc_element
from boxlore.exports.escaping import clean

STATIC = "http://www.openarchives.org/OAI/2.0/static-repository"
OAI = "http://www.openarchives.org/OAI/2.0/"
_NSMAP = {None: STATIC, "oai": OAI, "oai_dc": OAI_DC, "dc": DC, "xsi": XSI}
_FORMAT = ("oai_dc", "http://www.openarchives.org/OAI/2.0/oai_dc.xsd", OAI_DC)


def write_static_repository(
    records: Callable[[], Iterable[Record]], facts: CollectionFacts, out: BinaryIO, path: str
) -> None:
    """Write the repository to `out`. `records` gives the records anew each time; `facts.archive` must have an address,
    a gateway and a mailbox; `path` is where the file lies below the address."""
    first = min((datestamp(record, facts) for record in records()), default=facts.on_day.isoformat())
    with etree.xmlfile(out, encoding="utf-8") as file:
        file.write_declaration()
        schema = {f"{{{XSI}}}schemaLocation": f"{STATIC} http://www.openarchives.org/OAI/2.0/static-repository.xsd"}
        with file.element(f"{{{STATIC}}}Repository", schema, nsmap=_NSMAP):
            file.write("\n", _identify(facts, first, path), "\n", _formats())
            with file.element(f"{{{STATIC}}}ListRecords", {"metadataPrefix": "oai_dc"}):
                for record in records():
                    file.write("\n", _record(record, facts))
    out.write(b"\n")


def datestamp(record: Record, facts: CollectionFacts) -> str:
    """The day on which the newest of what is told in the record was told (OAI-PMH 2.0, 2.7.1)."""
    days = [view.recorded_at[:10] for view in every_told(record) if view.recorded_at]
    return min(max(days, default=facts.on_day.isoformat()), facts.on_day.isoformat())


def _add(parent: etree._Element, name: str, words: str = "") -> etree._Element:
    child = etree.SubElement(parent, f"{{{OAI}}}{name}")
    child.text = clean(words) or None
    return child


def _base_url(facts: CollectionFacts, path: str) -> str:
    """The address at which harvesters ask: the gateway's, and behind it the file's own without `https://` (Static
    Repository, 2.3 and 4.1, from memory)."""
    own = f"{facts.archive.base_url.rstrip('/')}/{path}".partition("://")[2]
    return f"{facts.archive.gateway.rstrip('/')}/{own}"


def _identify(facts: CollectionFacts, first: str, path: str) -> etree._Element:
    """OAI-PMH 2.0, 4.2; a static repository says no deleted records and days (Static Repository, 4.1)."""
    identify = etree.Element(f"{{{STATIC}}}Identify", nsmap=_NSMAP)  # type: ignore[arg-type]  # lxml keys the default by None
    for name, words in (
        ("repositoryName", facts.archive.repository or facts.title),
        ("baseURL", _base_url(facts, path)),
        ("protocolVersion", "2.0"),
        ("adminEmail", facts.archive.email),
        ("earliestDatestamp", first),
        ("deletedRecord", "no"),
        ("granularity", "YYYY-MM-DD"),
    ):
        _add(identify, name, words)
    return identify


def _formats() -> etree._Element:
    formats = etree.Element(f"{{{STATIC}}}ListMetadataFormats", nsmap=_NSMAP)  # type: ignore[arg-type]  # as above
    metadata = _add(formats, "metadataFormat")
    for name, words in zip(("metadataPrefix", "schema", "metadataNamespace"), _FORMAT, strict=True):
        _add(metadata, name, words)
    return formats


def _record(record: Record, facts: CollectionFacts) -> etree._Element:
    element = etree.Element(f"{{{OAI}}}record", nsmap=_NSMAP)  # type: ignore[arg-type]  # as above
    header = _add(element, "header")
    _add(header, "identifier", f"urn:uuid:{record.id}")
    _add(header, "datestamp", datestamp(record, facts))
    _add(element, "metadata").append(dc_element(oai_dc(record, facts)))
    return element
