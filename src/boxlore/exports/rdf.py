"""Linked data: N-Triples, written record by record, and their reader.

The item is described in DCMI Metadata Terms, FOAF (`depicts`) and WGS84 (geo:lat, geo:long). Besides, every statement
is written as a Web Annotation: who said it in PROV-O, how sure in SKOS, a marker's box by Media Fragments. The
annotations hold all that we have of a statement, so that a collection can be rebuilt from them (`read_triples`).

In this module a `node` is the IRI of what a triple is about, in its angle brackets.
"""

import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import BinaryIO
from urllib.parse import quote

from boxlore.core.crosswalk.dublin_core import AAT, CollectionFacts, DcValue, process_term, terms
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.fields.areas import AREA_WORDS, Area
from boxlore.core.fields.language import language_tag
from boxlore.core.fields.originals import SIZE_WORDS, SizeMm
from boxlore.core.fields.pictures import EMBEDDED_WORDS, FILE_WORDS, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.people.firms import is_firm
from boxlore.core.people.person import Person
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView, every_told
from boxlore.core.records.readings import value_text
from boxlore.core.statements import SURENESS, Said, Source
from boxlore.exports.escaping import iri, literal
from boxlore.exports.required_fields import Required, missing

EDTF = "http://id.loc.gov/datatypes/edtf/EDTF"
TERMS = "urn:boxlore:terms:"
"""Our own namespace, for what no published vocabulary has a term for: our field, how sure, audience, the reading,
facts of a file."""

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
    "bx": TERMS,
}
MEDIA_FRAGMENTS = "http://www.w3.org/TR/media-frags/"
MOST_FOR_TURTLE = 5000
"""The most records for which a Turtle file is made too. It is meant for people, who will not read a longer one."""


@lru_cache(256)
def _p(name: str) -> str:
    """A prefixed name, such as `dcterms:title`, as an IRI in its angle brackets."""
    prefix, _, local = name.partition(":")
    return f"<{PREFIXES[prefix]}{local}>"


RDF_TYPE = _p("rdf:type")


_PLAIN = {
    name: _p(f"dcterms:{name}")
    for name in ("title", "description", "provenance", "accessRights", "rightsHolder", "extent", "identifier")
}
"""DCMI terms whose values are written as plain literals. The others need an IRI, a datatype or nodes of their own."""
_TERMS = terms((*_PLAIN, "created", "rights", "medium", "isPartOf"))


def urn(ident: str) -> str:
    """The node of one of our ids (a UUID)."""
    return f"<urn:uuid:{ident}>"


def text_literal(words: str, language: str = "") -> str:
    """Words as a literal, with the language tag if that is well-formed (RDF 1.1 N-Triples, LANGTAG)."""
    return f"{literal(words)}@{tag}" if (tag := language_tag(language)) else literal(words)


def typed_literal(words: str, datatype: str) -> str:
    """Words as a literal of a datatype, which is an IRI in its angle brackets."""
    return f"{literal(words)}^^{datatype}"


def write_triples(records: Iterable[Record], facts: CollectionFacts, out: BinaryIO, table: Required) -> list[Finding]:
    """Write the triples of the collection and of every record to `out`.

    A record that lacks a required field is left out, and returned as a finding.
    """
    findings: list[Finding] = []
    out.write("".join(line + "\n" for line in collection_triples(facts)).encode())
    containers: set[str] = set()
    for record in records:
        described = list(_TERMS(record, facts))
        if lacks := missing(((name, value.words) for name, value in described), "rdf", table):
            findings.append(_invalid(record, lacks))
            continue
        lines = record_triples(record, facts, described, containers)
        lines.append("")
        out.write("\n".join(lines).encode())
    return findings


def _invalid(record: Record, lacks: list[str]) -> Finding:
    message = f"{record.number} cannot be written as linked data: it lacks {' and '.join(lacks)}."
    return make_finding("export.invalid", Severity.ERROR, message, "table of required fields", about=record.id)


def collection_triples(facts: CollectionFacts) -> list[str]:
    """The triples of the collection, and of the degrees of sureness as SKOS concepts."""
    node = urn(facts.id)
    lines = [
        f"{node} {RDF_TYPE} {_p('dcmitype:Collection')} .",
        f"{node} {_p('dcterms:title')} {text_literal(facts.title, facts.language)} .",
        f"{node} {_p('dcterms:identifier')} {literal('urn:uuid:' + facts.id)} .",
    ]
    lines += [f"{node} {_p('dcterms:provenance')} {text_literal(words, 'en')} ." for words in facts.custody]
    lines.append(f"{node} {_p('bx:language')} {literal(facts.language)} .")
    if facts.holder:
        lines.append(f"{node} {_p('bx:holder')} {literal(facts.holder)} .")
    for sure in SURENESS:
        lines.append(f"{_sureness(sure)} {RDF_TYPE} {_p('skos:Concept')} .")
        lines.append(f"{_sureness(sure)} {_p('skos:prefLabel')} {text_literal(sure.replace('-', ' '), 'en')} .")
    return lines


@lru_cache(16)
def _sureness(sure: str) -> str:
    return f"<{TERMS}sure/{sure}>"


def record_triples(
    record: Record, facts: CollectionFacts, described: Iterable[tuple[str, DcValue]], containers: set[str]
) -> list[str]:
    """The triples of one item. `described` holds its DCMI terms; containers written are added to `containers`."""
    node = urn(record.id)
    lines = [f"{node} {RDF_TYPE} {_p('dcmitype:StillImage')} ."] if record.kind not in ("letter", "note") else []
    lines += list(_described(node, record, described))
    lines += _containers(node, record, facts, containers)
    lines += _place(node, record)
    for index, person in enumerate(record.people):
        lines += _person(node, person, index)
    for scan in () if record.closed_scans else record.scans:
        lines += _scan(node, record, scan)
    lines += [f"{node} {_p('bx:asked')} {literal(name)} ." for name in sorted(record.not_known)]
    lines += [
        f"{node} {_p('bx:related')} {literal(f'{relation.kind} {relation.number}')} ."
        for relation in record.related
        if not relation.reverse
    ]
    markers = {person.told.statement: person for person in record.people if person.area}
    for statement in every_told(record):
        marked_person = markers.get(statement.statement)
        if marked_person is None:
            lines.append(annotation(statement, node))
        else:
            target = _target_of(marked_person)
            lines.append(annotation(statement, f"<{target}>"))
            lines += _marker(node, target, marked_person.scan, marked_person.number, marked_person.area)
    for scan_id, number, area in () if record.closed_scans else record.unnamed:
        lines += _marker(node, f"urn:uuid:{scan_id}#marker-{number}", scan_id, number, area)
    return lines


def _described(node: str, record: Record, described: Iterable[tuple[str, DcValue]]) -> Iterator[str]:
    for name, (words, language, scheme) in described:
        if predicate := _PLAIN.get(name):
            yield f"{node} {predicate} {text_literal(words, language)} ."
        elif name == "created":
            yield f"{node} {_p('dcterms:created')} {literal(words)}^^<{EDTF}> ."
        elif name == "rights":
            yield f"{node} {_p('dcterms:rights')} {iri(words) if scheme else text_literal(words, language)} ."
        elif name == "medium" and not scheme:
            yield from _process(node, record, words)
    yield f"{node} {_p('bx:kind')} {literal(record.kind)} ."
    for name, fact in (
        ("found_in", record.found_in),
        ("size", SIZE_WORDS.write(SizeMm(record.size_mm)) if record.size_mm else ""),
    ):
        if fact:
            yield f"{node} {_p(f'bx:{name}')} {literal(fact)} ."


def _process(node: str, record: Record, words: str) -> Iterator[str]:
    term = process_term(record)
    if not term:
        yield f"{node} {_p('dcterms:medium')} {text_literal(words, 'en')} ."
        return
    yield f"{node} {_p('dcterms:medium')} <{term}> ."
    yield f"<{term}> {RDF_TYPE} {_p('skos:Concept')} ."
    yield f"<{term}> {_p('skos:prefLabel')} {text_literal(words, 'en')} ."
    yield f"<{term}> {_p('skos:inScheme')} <{AAT}> ."


def _containers(node: str, record: Record, facts: CollectionFacts, containers: set[str]) -> list[str]:
    """Triples saying that the item is part of its folder, the folder of its box, and the box of the collection.

    A container is described only once; `containers` holds the nodes of those described already.
    """
    outer = urn(facts.id)
    if record.mark is None:
        return [f"{node} {_p('dcterms:isPartOf')} {outer} ."]
    lines: list[str] = []
    path: list[str] = []
    for kind, label in record.mark.path:
        path.append(f"{kind}-{label}")
        inner = f"<urn:uuid:{facts.id}#{quote('/'.join(path), safe='/')}>"
        if inner not in containers:
            containers.add(inner)
            lines.append(f"{inner} {_p('dcterms:isPartOf')} {outer} .")
            lines.append(f"{inner} {_p('dcterms:title')} {text_literal(f'{kind.capitalize()} {label}', 'en')} .")
            lines.append(f"{inner} {_p('bx:kind')} {literal(kind)} .")
            lines.append(f"{inner} {_p('bx:label')} {literal(label)} .")
        outer = inner
    lines.append(f"{node} {_p('dcterms:isPartOf')} {outer} .")
    lines.append(f"{node} {_p('bx:position')} {typed_literal(str(record.mark.item), _p('xsd:integer'))} .")
    return lines


def _place(node: str, record: Record) -> list[str]:
    told_place = record.first("place")
    if told_place is None:
        return []
    place_node = f"{node[:-1]}#place>"
    lines = [f"{node} {_p('dcterms:spatial')} {place_node} .", f"{place_node} {RDF_TYPE} {_p('dcterms:Location')} ."]
    lines.append(f"{place_node} {_p('rdfs:label')} {text_literal(told_place.words, told_place.language)} .")
    place = record.place
    if place is None:
        return lines
    lines.append(f"{place_node} {_p('skos:altLabel')} {text_literal(full_name(place), 'en')} .")
    if place.lat is not None and place.lon is not None:
        lines.append(f"{place_node} {_p('geo:lat')} {typed_literal(f'{place.lat:.2f}', _p('xsd:decimal'))} .")
        lines.append(f"{place_node} {_p('geo:long')} {typed_literal(f'{place.lon:.2f}', _p('xsd:decimal'))} .")
    if place.link:
        lines.append(f"{place_node} {_p('skos:closeMatch')} <{place.link}> .")
    return lines


_ROLES = {"person": "foaf:depicts", "photographer": "dcterms:creator", "named": "dcterms:subject"}
"""Role of a person -> property that links the item to the person."""


def _person(node: str, person: PersonShown, index: int) -> list[str]:
    person_node = urn(person.person) if person.person else f"{node[:-1]}#person-{index}>"
    return [
        f"{node} {_p(_ROLES.get(person.role, 'dcterms:subject'))} {person_node} .",
        f"{person_node} {RDF_TYPE} {_p('foaf:Organization' if is_firm(person.name) else 'foaf:Person')} .",
        f"{person_node} {_p('foaf:name')} {literal(person.name)} .",
    ]


def _scan(node: str, record: Record, scan: ScanFile) -> list[str]:
    scan_node = urn(scan.id)
    facts = FileFacts(
        path=packed_path(record, scan), sha256=scan.sha256, bytes=scan.bytes, width=scan.width,
        height=scan.height, ppi=scan.ppi, media_type=scan.media_type,
    )  # fmt: skip
    shows = Shows(record.id, scan.side, Area(*scan.area) if scan.area else None)
    return [
        f"{node} {_p('dcterms:hasFormat')} {scan_node} .",
        f"{scan_node} {RDF_TYPE} {_p('dcmitype:StillImage')} .",
        f"{scan_node} {_p('dcterms:format')} {literal(scan.media_type)} .",
        f"{scan_node} {_p('dcterms:identifier')} {literal('sha256:' + scan.sha256)} .",
        f"{scan_node} {_p('bx:role')} {literal(scan.role)} .",
        f"{scan_node} {_p('bx:file')} {literal(FILE_WORDS.write(facts))} .",
        f"{scan_node} {_p('bx:shows')} {literal(SHOWS_WORDS.write(shows))} .",
        *(f"{scan_node} {_p('bx:struck')} {literal(digest)} ." for digest in (_struck_file(scan),) if digest),
    ]


def _struck_file(scan: ScanFile) -> str:
    """The SHA-256 of the keeper's own file, where what it says was struck: it is not to be read from it again."""
    return EMBEDDED_WORDS.read(scan.embedded).struck_file


_ANNOTATION = " .\n".join(
    (
        f"%(node)s {RDF_TYPE} {_p('oa:Annotation')}",
        f"%(node)s {_p('oa:hasTarget')} %(target)s",
        f"%(node)s {_p('oa:hasBody')} %(body)s",
        f"%(body)s {RDF_TYPE} {_p('oa:TextualBody')}",
        f"%(body)s {_p('rdf:value')} %(words)s",
        f"%(node)s {_p('prov:wasAttributedTo')} %(agent)s",
        f'%(node)s {_p("prov:generatedAtTime")} "%(at)s"^^{_p("xsd:dateTime")}',
        f"%(node)s {_p('bx:sure')} %(sure)s",
        f'%(node)s {_p("bx:field")} "%(field)s"',
        f"%(node)s {_p('bx:source')} %(source)s",
        f'%(node)s {_p("bx:audience")} "%(audience)s" .',
    )
)
_CONFIRMED = f' {_p("bx:confirmed")} "true"^^{_p("xsd:boolean")} .'
_LANGUAGE_OF, _READING = f"> {_p('dcterms:language')} ", f" {_p('bx:reading')} "


def annotation(statement: StatementView, target: str) -> str:
    """One statement as a Web Annotation of `target`: the words, who said them and when, how sure, for which audience,
    and how they are read.
    """
    agent, source = _agent_of(statement.source.said, statement.source.ref)
    node, body = f"<urn:uuid:{statement.statement}>", f"<urn:uuid:{statement.statement}#body"
    lines = _ANNOTATION % {
        "node": node,
        "target": target,
        "body": f"{body}>",
        "words": literal(statement.words),
        "agent": agent,
        "at": statement.recorded_at,
        "sure": _sureness(statement.sure),
        "field": statement.field,
        "source": source,
        "audience": statement.audience,
    }
    if statement.language:
        lines += f"\n{body}{_LANGUAGE_OF}{literal(statement.language)} ."
    if statement.value is not None:
        lines += f"\n{node}{_READING}{literal(value_text(statement.value))} ."
        lines += f"\n{node}{_CONFIRMED}" if statement.confirmed else ""
    return lines


@lru_cache(1024)
def _agent_of(said: Said, ref: str) -> tuple[str, str]:
    """The node of who said it (for a narrator of the registry, the person's), and the source as a literal."""
    words = str(Source(said, ref))
    if said is Said.NARRATOR and re.fullmatch(r"[0-9a-f-]{36}", ref):
        return urn(ref), literal(words)
    return iri(f"{TERMS}source/{quote(words, safe=':')}"), literal(words)


def _target_of(shown: PersonShown) -> str:
    """The name of the marked part of a scan that a name belongs to."""
    return f"urn:uuid:{shown.told.statement}#target"


def _marker(node: str, name: str, scan: str, number: int, area: tuple[float, ...]) -> list[str]:
    """The triples of a numbered box on a scan, `name`: a point is a box without size. Names and notes have it as
    their target."""
    target, selector = f"<{name}>", f"<{name}-selector>"
    x, y, *size = (f"{100 * fraction:g}" for fraction in area)
    selected = f"xywh=percent:{x},{y},{','.join(size) or '0,0'}"
    return [
        f"{target} {RDF_TYPE} {_p('oa:SpecificResource')} .",
        f"{target} {_p('oa:hasSource')} {urn(scan)} .",
        f"{target} {_p('dcterms:isPartOf')} {node} .",
        f"{target} {_p('oa:hasSelector')} {selector} .",
        f"{selector} {RDF_TYPE} {_p('oa:FragmentSelector')} .",
        f"{selector} {_p('dcterms:conformsTo')} <{MEDIA_FRAGMENTS}> .",
        f"{selector} {_p('rdf:value')} {literal(selected)} .",
        f"{target} {_p('bx:number')} {typed_literal(str(number), _p('xsd:integer'))} .",
        f"{target} {_p('bx:area')} {literal(AREA_WORDS.write(Area(*area)))} .",
    ]


def subject_triples(
    kind: str, ident: str, statements: Iterable[StatementView], facts: Iterable[tuple[str, str]] = ()
) -> list[str]:
    """The triples of a person, an event, a sitting or the collection: its statements, and `facts` as (name, words)."""
    node = urn(ident)
    lines = [f"{node} {_p('bx:thing')} {literal(kind)} ."]
    lines += [f"{node} {_p(f'bx:{name}')} {literal(words)} ." for name, words in facts]
    return lines + [annotation(statement, node) for statement in statements]


def person_triples(person: Person) -> list[str]:
    """A person of the registry in FOAF."""
    return [
        f"{urn(person.id)} {RDF_TYPE} {_p('foaf:Organization' if is_firm(person.name) else 'foaf:Person')} .",
        f"{urn(person.id)} {_p('foaf:name')} {literal(person.name)} .",
    ]


_TRIPLE = re.compile(r'<([^>]*)> <([^>]*)> (?:<([^>]*)>|"((?:[^"\\]|\\.)*)"(?:@[\w-]+|\^\^<[^>]*>)?) \.\s*\Z')
_ESCAPED = re.compile(r"\\(u[0-9A-Fa-f]{4}|U[0-9A-Fa-f]{8}|.)")
_ESCAPES = {"n": "\n", "r": "\r", "t": "\t", "b": "\b", "f": "\f"}


def read_triples(lines: Iterable[str]) -> Iterator[tuple[str, str, str]]:
    """(subject, predicate, object) of N-Triples; an object is an IRI or the unescaped text of a literal.

        triple = "<" IRI "> <" IRI "> " object " ."                   (RDF 1.1 N-Triples, 7; without blank nodes,
        object = "<" IRI ">" / quoted ["@" tag / "^^<" IRI ">"]        which we do not write)

    Raises ValueError for a line that is neither a triple, a comment nor blank.
    """
    for number, line in enumerate(lines, 1):
        if not line.strip() or line.startswith("#"):
            continue
        match = _TRIPLE.match(line)
        if match is None:
            raise ValueError(f"line {number} is no triple: {line[:80]!r}")
        subject, predicate, iri_object, text = match.groups()
        yield subject, predicate, iri_object if iri_object is not None else _ESCAPED.sub(_unescaped, text)


def _unescaped(match: re.Match[str]) -> str:
    letter = match[1]
    return chr(int(letter[1:], 16)) if len(letter) > 1 else _ESCAPES.get(letter, letter)
