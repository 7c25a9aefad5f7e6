"""The vocabularies of our linked data, and how names, literals and nodes are written in N-Triples (RDF 1.1).

Published ones first: DCMI Metadata Terms, FOAF, WGS84, Web Annotation, PROV-O, SKOS, schema.org, PREMIS 3 and W3C's
Exif vocabulary (the last three from memory). What none of them has a term for is ours, and stands in
`schemas/terms.ttl` with what it means.
"""

from functools import lru_cache

from boxlore.core.fields.language import language_tag
from boxlore.exports.escaping import literal

EDTF = "http://id.loc.gov/datatypes/edtf/EDTF"
TERMS = "tag:boxlore.example,2026:terms#"
"""Our own namespace (RFC 4151). The project has no domain: a name under `.example` (RFC 2606) is nobody else's."""
EARLIER_TERMS = "urn:boxlore:terms:"
"""What it was in earlier versions, whose transfers are still read."""

PREFIXES: dict[str, str] = {
    "rdf": "http://www.w3.org/1999/02/22-rdf-syntax-ns#",
    "rdfs": "http://www.w3.org/2000/01/rdf-schema#",
    "xsd": "http://www.w3.org/2001/XMLSchema#",
    "dcterms": "http://purl.org/dc/terms/",
    "dcmitype": "http://purl.org/dc/dcmitype/",
    "foaf": "http://xmlns.com/foaf/0.1/",
    "geo": "http://www.w3.org/2003/01/geo/wgs84_pos#",
    "oa": "http://www.w3.org/ns/oa#",
    "prov": "http://www.w3.org/ns/prov#",
    "skos": "http://www.w3.org/2004/02/skos/core#",
    "schema": "https://schema.org/",
    "premis": "http://www.loc.gov/premis/rdf/v3/",
    "exif": "http://www.w3.org/2003/12/exif/ns#",
    "bx": TERMS,
}


@lru_cache(256)
def prefixed(name: str) -> str:
    """A prefixed name, such as `dcterms:title`, as an IRI in its angle brackets."""
    prefix, _, local = name.partition(":")
    return f"<{PREFIXES[prefix]}{local}>"


RDF_TYPE = prefixed("rdf:type")


def urn(ident: str) -> str:
    """The node of one of our ids (a UUID)."""
    return f"<urn:uuid:{ident}>"


def text_literal(words: str, language: str = "") -> str:
    """Words as a literal, with the language tag if that is well-formed (RDF 1.1 N-Triples, LANGTAG)."""
    return f"{literal(words)}@{tag}" if (tag := language_tag(language)) else literal(words)


def typed_literal(words: str, datatype: str) -> str:
    """Words as a literal of a datatype, which is an IRI in its angle brackets."""
    return f"{literal(words)}^^{datatype}"


def number_literal(value: float) -> str:
    """A number as a literal: an xsd:integer, or an xsd:decimal."""
    kind = "integer" if isinstance(value, int) else "decimal"
    return typed_literal(str(value), prefixed(f"xsd:{kind}"))
