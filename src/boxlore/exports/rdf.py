"""Linked data: N-Triples, written record by record, and their reader.

The item is described in DCMI Metadata Terms, FOAF (`depicts`) and WGS84 (geo:lat, geo:long). Besides, every statement
is written as a Web Annotation: who said it in PROV-O, how sure in SKOS, a marker's box by Media Fragments. The
annotations hold all that we have of a statement, so that a collection can be rebuilt from them (`read_triples`). The
vocabularies stand in `exports/rdf_terms.py`, files and sittings in `exports/rdf_files.py`.

In this module a `node` is the IRI of what a triple is about, in its angle brackets.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from typing import BinaryIO
from urllib.parse import quote, unquote

from boxlore.core.crosswalk.dublin_core import AAT, CollectionFacts, DcValue, process_term, terms
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.fields.areas import Area
from boxlore.core.fields.originals import SIZE_WORDS, SizeMm
from boxlore.core.fields.sittings import RecordingFacts, ShownAt
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.people.firms import is_firm
from boxlore.core.people.person import Person
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import PersonShown, Record, StatementView, every_told
from boxlore.core.records.marks import ContainerPath
from boxlore.core.records.readings import value_text
from boxlore.core.statements import SURENESS, Said, Source, Unreadable
from boxlore.exports.escaping import iri, literal
from boxlore.exports.rdf_dates import worked_out_triples
from boxlore.exports.rdf_files import part_triples, scan_triples, sitting_triples
from boxlore.exports.rdf_terms import (
    EDTF,
    RDF_TYPE,
    TERMS,
    number_literal,
    prefixed,
    text_literal,
    typed_literal,
    urn,
)
from boxlore.exports.required_fields import Required, missing

MOST_FOR_TURTLE = 5000
"""The most records for which a Turtle file is made too. It is meant for people, who will not read a longer one."""


_PLAIN = {
    name: prefixed(f"dcterms:{name}")
    for name in ("title", "description", "provenance", "accessRights", "rightsHolder", "extent", "identifier")
}
"""DCMI terms whose values are written as plain literals. The others need an IRI, a datatype or nodes of their own."""
_TERMS = terms((*_PLAIN, "created", "rights", "medium", "isPartOf"))


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
        f"{node} {RDF_TYPE} {prefixed('dcmitype:Collection')} .",
        f"{node} {prefixed('dcterms:title')} {text_literal(facts.title, facts.language)} .",
        f"{node} {prefixed('dcterms:identifier')} {literal('urn:uuid:' + facts.id)} .",
    ]
    lines += [f"{node} {prefixed('dcterms:provenance')} {text_literal(words, 'en')} ." for words in facts.custody]
    lines.append(f"{node} {prefixed('dcterms:language')} {literal(facts.language)} .")
    if facts.holder:
        lines.append(f"{node} {prefixed('bx:holder')} {literal(facts.holder)} .")
    for sure in SURENESS:
        lines.append(f"{_sureness(sure)} {RDF_TYPE} {prefixed('skos:Concept')} .")
        lines.append(f"{_sureness(sure)} {prefixed('skos:prefLabel')} {text_literal(sure.replace('-', ' '), 'en')} .")
    return lines


@lru_cache(16)
def _sureness(sure: str) -> str:
    return f"<{TERMS}sure/{sure}>"


def record_triples(
    record: Record, facts: CollectionFacts, described: Sequence[tuple[str, DcValue]], containers: set[str]
) -> list[str]:
    """The triples of one item. `described` holds its DCMI terms; containers written are added to `containers`."""
    node = urn(record.id)
    lines = [f"{node} {RDF_TYPE} {prefixed('schema:ArchiveComponent')} ."]
    if record.kind not in ("letter", "note"):
        lines.append(f"{node} {RDF_TYPE} {prefixed('dcmitype:StillImage')} .")
    lines += list(_described(node, record, described))
    lines += _containers(node, record, facts, containers)
    lines += _place(node, record)
    lines += worked_out_triples(node, record)
    for index, person in enumerate(record.people):
        lines += _person(node, person, index)
    rights = [value for name, value in described if name == "rights"]
    for scan in record.open_scans:
        title = f"{record.number}, {scan.side}"
        lines += scan_triples(record.id, scan, packed_path(record, scan), title)
        lines += [f"{urn(scan.id)} {prefixed('dcterms:rights')} {_rights(value)} ." for value in rights]
    lines += [f"{node} {prefixed('bx:asked')} {literal(name)} ." for name in sorted(record.not_known)]
    lines += [
        f"{node} {prefixed('bx:related')} {literal(f'{relation.kind} {relation.number}')} ."
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
            lines += _marker(node, target, record, marked_person.scan, marked_person.number, marked_person.area)
    for scan_id, number, area in () if record.closed_scans else record.unnamed:
        lines += _marker(node, f"urn:uuid:{scan_id}#marker-{number}", record, scan_id, number, area)
    return lines


def _described(node: str, record: Record, described: Iterable[tuple[str, DcValue]]) -> Iterator[str]:
    for name, value in described:
        if predicate := _PLAIN.get(name):
            yield f"{node} {predicate} {text_literal(value.words, value.language)} ."
        elif name == "created":
            yield f"{node} {prefixed('dcterms:created')} {literal(value.words)}^^<{EDTF}> ."
        elif name == "rights":
            yield f"{node} {prefixed('dcterms:rights')} {_rights(value)} ."
        elif name == "medium" and not value.scheme:
            yield from _process(node, record, value.words)
    yield f"{node} {prefixed('dcterms:type')} {literal(record.kind)} ."
    if record.found_in:
        yield f"{node} {prefixed('bx:found_in')} {literal(record.found_in)} ."
    if record.size_mm:
        yield f"{node} {prefixed('schema:size')} {literal(SIZE_WORDS.write(SizeMm(record.size_mm)) + ' mm')} ."


def _rights(value: DcValue) -> str:
    return iri(value.words) if value.scheme else text_literal(value.words, value.language)


def _process(node: str, record: Record, words: str) -> Iterator[str]:
    term = process_term(record)
    if not term:
        yield f"{node} {prefixed('dcterms:medium')} {text_literal(words, 'en')} ."
        return
    yield f"{node} {prefixed('dcterms:medium')} <{term}> ."
    yield f"<{term}> {RDF_TYPE} {prefixed('skos:Concept')} ."
    yield f"<{term}> {prefixed('skos:prefLabel')} {text_literal(words, 'en')} ."
    yield f"<{term}> {prefixed('skos:inScheme')} <{AAT}> ."


def _containers(node: str, record: Record, facts: CollectionFacts, containers: set[str]) -> list[str]:
    """Triples saying that the item is part of its folder, the folder of its box, and the box of the collection.

    A container is described only once; `containers` holds the nodes of those described already.
    """
    outer = urn(facts.id)
    if record.mark is None:
        return [f"{node} {prefixed('dcterms:isPartOf')} {outer} ."]
    lines: list[str] = []
    for depth, (kind, label) in enumerate(record.mark.path, 1):
        inner = container_node(facts.id, record.mark.path[:depth])
        if inner not in containers:
            containers.add(inner)
            lines.append(f"{inner} {prefixed('dcterms:isPartOf')} {outer} .")
            lines.append(f"{inner} {prefixed('dcterms:title')} {text_literal(f'{kind.capitalize()} {label}', 'en')} .")
            lines.append(f"{inner} {prefixed('dcterms:type')} {literal(kind)} .")
            lines.append(f"{inner} {prefixed('dcterms:identifier')} {literal(label)} .")
        outer = inner
    lines.append(f"{node} {prefixed('dcterms:isPartOf')} {outer} .")
    lines.append(f"{node} {prefixed('schema:position')} {number_literal(record.mark.item)} .")
    return lines


def container_node(collection: str, path: ContainerPath) -> str:
    """The IRI of a container of a collection (its id), by (kind, label) from the outermost inward."""
    steps = "/".join(f"{kind}-{label}" for kind, label in path)
    return f"<urn:uuid:{collection}#{quote(steps, safe='/')}>"


def _place(node: str, record: Record) -> list[str]:
    told_place = record.first("place")
    if told_place is None:
        return []
    place_node = f"{node[:-1]}#place>"
    lines = [
        f"{node} {prefixed('dcterms:spatial')} {place_node} .",
        f"{place_node} {RDF_TYPE} {prefixed('dcterms:Location')} .",
    ]
    lines.append(f"{place_node} {prefixed('rdfs:label')} {text_literal(told_place.words, told_place.language)} .")
    place = record.place
    if place is None:
        return lines
    lines.append(f"{place_node} {prefixed('skos:altLabel')} {text_literal(full_name(place), 'en')} .")
    if place.lat is not None and place.lon is not None:
        lines.append(
            f"{place_node} {prefixed('geo:lat')} {typed_literal(f'{place.lat:.2f}', prefixed('xsd:decimal'))} ."
        )
        lines.append(
            f"{place_node} {prefixed('geo:long')} {typed_literal(f'{place.lon:.2f}', prefixed('xsd:decimal'))} ."
        )
    if place.link:
        lines.append(f"{place_node} {prefixed('skos:closeMatch')} <{place.link}> .")
    return lines


_ROLES = {"person": "foaf:depicts", "photographer": "dcterms:creator", "named": "dcterms:subject"}
"""Role of a person -> property that links the item to whoever is surely the one; of anybody else the annotation says
it, with how sure it is."""


def _person(node: str, person: PersonShown, index: int) -> list[str]:
    person_node = urn(person.person) if person.person else f"{node[:-1]}#person-{index}>"
    links = [] if person.unsure or person.in_question else [_ROLES.get(person.role, "dcterms:subject")]
    return [
        *(f"{node} {prefixed(name)} {person_node} ." for name in links),
        *_foaf(person_node, person.name),
    ]


_ANNOTATION = " .\n".join(
    (
        f"%(node)s {RDF_TYPE} {prefixed('oa:Annotation')}",
        f"%(node)s {prefixed('oa:hasTarget')} %(target)s",
        f"%(node)s {prefixed('oa:motivatedBy')} %(motive)s",
        f"%(node)s {prefixed('oa:hasBody')} %(body)s",
        f"%(body)s {RDF_TYPE} {prefixed('oa:TextualBody')}",
        f"%(body)s {prefixed('rdf:value')} %(words)s",
        f"%(node)s {prefixed('prov:wasAttributedTo')} %(agent)s",
        f'%(node)s {prefixed("prov:generatedAtTime")} "%(at)s"^^{prefixed("xsd:dateTime")}',
        f"%(node)s {prefixed('bx:sure')} %(sure)s",
        f"%(node)s {prefixed('dcterms:type')} %(field)s",
        f'%(node)s {prefixed("dcterms:accessRights")} "%(audience)s" .',
    )
)
_CONFIRMED = f' {prefixed("bx:confirmed")} "true"^^{prefixed("xsd:boolean")} .'
_ASKS = f' {prefixed("bx:asks")} "true"^^{prefixed("xsd:boolean")} .'
_LANGUAGE_OF = f"> {prefixed('dcterms:language')} "


def annotation(statement: StatementView, target: str) -> str:
    """One statement as a Web Annotation of `target`: the words, who said them and when, how sure, for which audience,
    and how they are read.
    """
    node, body = f"<urn:uuid:{statement.statement}>", f"<urn:uuid:{statement.statement}#body"
    lines = _ANNOTATION % {
        "node": node,
        "target": target,
        "body": f"{body}>",
        "motive": prefixed("oa:identifying" if statement.meant else "oa:describing"),
        "words": text_literal(statement.words, statement.language),
        "agent": _agent_of(statement.source.said, statement.source.ref),
        "at": statement.recorded_at,
        "sure": _sureness(statement.sure),
        "field": _field(statement.field),
        "audience": statement.audience,
    }
    if statement.language:
        lines += f"\n{body}{_LANGUAGE_OF}{literal(statement.language)} ."
    if statement.value is not None:
        lines += f"\n{node} {_reading_of(statement)} ."
        lines += f"\n{node}{_CONFIRMED}" if statement.confirmed else ""
    elif statement.asks:
        lines += f"\n{node}{_ASKS}"
    if statement.date is not None and statement.date.edtf:
        lines += f"\n{node} {prefixed('dcterms:date')} {literal(statement.date.edtf.text)}^^<{EDTF}> ."
    return lines


def _reading_of(statement: StatementView) -> str:
    """How the words are understood: the person or event that they mean, else the whole reading as JSON (rdf:JSON)."""
    if statement.meant:
        return f"{prefixed('dcterms:references')} {urn(statement.meant)}"
    words = literal(value_text(statement.value)) if statement.value is not None else ""
    is_json = not isinstance(statement.value, Unreadable)
    return f"{prefixed('bx:reading')} {words}" + (f"^^{prefixed('rdf:JSON')}" if is_json else "")


@lru_cache(256)
def _field(name: str) -> str:
    """What a statement tells of, as a concept of ours."""
    return iri(f"{TERMS}field/{quote(name)}")


def field_of(concept: str) -> str:
    """The field whose concept an IRI is; '' for another."""
    name = concept.removeprefix(f"{TERMS}field/")
    return "" if name == concept else unquote(name)


@lru_cache(1024)
def _agent_of(said: Said, ref: str) -> str:
    """The node of who said it: for a narrator of the registry the person's, else the source itself, as `source_of`
    reads it."""
    if said is Said.NARRATOR and re.fullmatch(r"[0-9a-f-]{36}", ref):
        return urn(ref)
    return iri(f"{TERMS}source/{quote(str(Source(said, ref)), safe=':')}")


def source_of(agent: str) -> str:
    """The source of a statement as text, `narrator:ID` or `inscription:verso`, of the IRI that says who said it."""
    if agent.startswith("urn:uuid:"):
        return f"{Said.NARRATOR}:{agent.removeprefix('urn:uuid:')}"
    return unquote(agent.removeprefix(f"{TERMS}source/"))


def _target_of(shown: PersonShown) -> str:
    """The name of the marked part of a scan that a name belongs to."""
    return f"urn:uuid:{shown.told.statement}#target"


def _marker(node: str, name: str, record: Record, scan: str, position: int, area: tuple[float, ...]) -> list[str]:
    """The triples of a numbered box on a scan, `name`: a point is a box without size. Names and notes have it as
    their target."""
    target = f"<{name}>"
    size = next(((each.width, each.height) for each in record.scans if each.id == scan), (0, 0))
    return [
        f"{target} {RDF_TYPE} {prefixed('oa:SpecificResource')} .",
        f"{target} {prefixed('oa:hasSource')} {urn(scan)} .",
        f"{target} {prefixed('dcterms:isPartOf')} {node} .",
        f"{target} {prefixed('schema:position')} {number_literal(position)} .",
        *part_triples(target, Area(*area), size),
    ]


_TYPES = {"event": "schema:Event", "place": "schema:Place", "sitting": "prov:Activity"}
"""Classes of what is told of besides items; people and the collection have theirs where they are described."""


def subject_triples(
    kind: str,
    ident: str,
    statements: Iterable[StatementView],
    recordings: Iterable[RecordingFacts] = (),
    shown: Iterable[ShownAt] = (),
) -> list[str]:
    """The triples of a person, an event, a place, a sitting or the collection: its statements; of a sitting its
    recordings and what was shown too."""
    node = urn(ident)
    lines = [f"{node} {RDF_TYPE} {prefixed(_TYPES[kind])} ."] if kind in _TYPES else []
    lines += sitting_triples(ident, recordings, shown)
    return lines + [annotation(statement, node) for statement in statements]


def person_triples(person: Person, entry: str) -> list[str]:
    """A person of the registry in FOAF, by one entry: each that is the same person has the name that stands."""
    return _foaf(urn(entry), person.name)


def _foaf(node: str, name: str) -> list[str]:
    """Somebody or a firm, by name."""
    return [
        f"{node} {RDF_TYPE} {prefixed('foaf:Organization' if is_firm(name) else 'foaf:Person')} .",
        f"{node} {prefixed('foaf:name')} {literal(name)} .",
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
