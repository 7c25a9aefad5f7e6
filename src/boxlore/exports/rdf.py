"""Linked data: N-Triples streamed record by record, and the same as Turtle for reading.

RDF 1.1 N-Triples and Turtle; DCMI Metadata Terms; FOAF (`depicts`); WGS84 (geo:lat, geo:long); Web Annotation and
PROV-O for who said what; SKOS for how sure; Media Fragments for a marker's box. Every statement is an annotation
with all that we hold of it, so that a collection can be rebuilt from these lines (`read_triples`).
"""

import json
import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import BinaryIO
from urllib.parse import quote

from boxlore.core.crosswalk.archives import AAT, CollectionFacts, DcValue, place_of, process_term, terms
from boxlore.core.crosswalk.extent import packed_path
from boxlore.core.findings import Finding, Severity
from boxlore.core.people.person import Person
from boxlore.core.places.reading import full_name
from boxlore.core.records.in_force import PersonShown, Record, ScanFile, StatementView, every_told
from boxlore.core.statements import SURENESS, Said, Source
from boxlore.exports.markup import iri, literal
from boxlore.exports.required import Required, missing

EDTF = "http://id.loc.gov/datatypes/edtf/EDTF"
TERMS = "urn:boxlore:terms:"
"""What no published vocabulary has a word for: our field, how sure, audience, the reading, facts of a file."""

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
FITS = 5000
"""Records up to which Turtle is made too: it is for reading, and a longer file nobody reads."""

_LANGUAGE = re.compile(r"[a-zA-Z]{2,8}(-[a-zA-Z0-9]{1,8})*\Z")


@lru_cache(256)
def _p(name: str) -> str:
    """A prefixed name as an IRI in its brackets."""
    prefix, _, local = name.partition(":")
    return f"<{PREFIXES[prefix]}{local}>"


A = _p("rdf:type")


_PLAIN = {
    name: _p(f"dcterms:{name}")
    for name in ("title", "description", "provenance", "accessRights", "rightsHolder", "extent", "identifier")
}
"""Terms that go over as they stand; the others have nodes of their own."""
_TERMS = terms((*_PLAIN, "created", "rights", "medium", "isPartOf"))


def urn(ident: str) -> str:
    return f"<urn:uuid:{ident}>"


def worded(words: str, language: str = "") -> str:
    """Words as a literal, with the language where it is one that RDF allows."""
    return f"{literal(words)}{_tag(language)}" if language else literal(words)


@lru_cache(256)
def _tag(language: str) -> str:
    tag = language.replace("_", "-")
    return f"@{tag}" if _LANGUAGE.match(tag) else ""


def typed(words: str, datatype: str) -> str:
    return f"{literal(words)}^^{datatype}"


def write_triples(records: Iterable[Record], facts: CollectionFacts, out: BinaryIO, table: Required) -> list[Finding]:
    """Write the collection's and every record's triples; a record that lacks what is required is named, left out."""
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
    return Finding(
        rule="export.invalid",
        severity=Severity.ERROR,
        message=message,
        source="table of required fields",
        about=record.id,
    )


def collection_triples(facts: CollectionFacts) -> list[str]:
    """The collection, and the three degrees of how sure a source is, as concepts."""
    me = urn(facts.id)
    lines = [
        f"{me} {A} {_p('dcmitype:Collection')} .",
        f"{me} {_p('dcterms:title')} {worded(facts.title, facts.language)} .",
        f"{me} {_p('dcterms:identifier')} {literal('urn:uuid:' + facts.id)} .",
    ]
    lines += [f"{me} {_p('dcterms:provenance')} {worded(words, 'en')} ." for words in facts.custody]
    lines.append(f"{me} {_p('bx:language')} {literal(facts.language)} .")
    if facts.holder:
        lines.append(f"{me} {_p('bx:holder')} {literal(facts.holder)} .")
    for sure in SURENESS:
        lines.append(f"{_sure(sure)} {A} {_p('skos:Concept')} .")
        lines.append(f"{_sure(sure)} {_p('skos:prefLabel')} {worded(sure.replace('-', ' '), 'en')} .")
    return lines


@lru_cache(16)
def _sure(sure: str) -> str:
    return f"<{TERMS}sure/{sure}>"


def record_triples(
    record: Record, facts: CollectionFacts, described: Iterable[tuple[str, DcValue]], containers: set[str]
) -> list[str]:
    """The triples of one item, `described` by its DCMI terms. `containers` remembers those that stand already."""
    me = urn(record.id)
    lines = [f"{me} {A} {_p('dcmitype:StillImage')} ."] if record.kind not in ("letter", "note") else []
    lines += list(_described(me, record, described))
    lines += _kept(me, record, facts, containers)
    lines += _place(me, record)
    for at, one in enumerate(record.people):
        lines += _person(me, one, at)
    for scan in () if record.closed_scans else record.scans:
        lines += _scan(me, record, scan)
    lines += [f"{me} {_p('bx:asked')} {literal(name)} ." for name in sorted(record.not_known)]
    lines += [
        f"{me} {_p('bx:related')} {literal(f'{one.kind} {one.number}')} ." for one in record.related if not one.reverse
    ]
    markers = {one.told.statement: one for one in record.people if one.area}
    for told in every_told(record):
        shown = markers.get(told.statement)
        lines.append(annotation(told, me if shown is None else _marked(shown)))
        if shown is not None:
            lines += _marker(me, shown)
    return lines


def _described(me: str, record: Record, described: Iterable[tuple[str, DcValue]]) -> Iterator[str]:
    for name, (words, language, scheme) in described:
        if predicate := _PLAIN.get(name):
            yield f"{me} {predicate} {worded(words, language)} ."
        elif name == "created":
            yield f"{me} {_p('dcterms:created')} {literal(words)}^^<{EDTF}> ."
        elif name == "rights":
            yield f"{me} {_p('dcterms:rights')} {iri(words) if scheme else worded(words, language)} ."
        elif name == "medium" and not scheme:
            yield from _process(me, record, words)
    yield f"{me} {_p('bx:kind')} {literal(record.kind)} ."
    for name, told in (("found_in", record.found_in), ("size", " ".join(f"{one:g}" for one in record.size_mm))):
        if told:
            yield f"{me} {_p(f'bx:{name}')} {literal(told)} ."


def _process(me: str, record: Record, words: str) -> Iterator[str]:
    term = process_term(record)
    if not term:
        yield f"{me} {_p('dcterms:medium')} {worded(words, 'en')} ."
        return
    yield f"{me} {_p('dcterms:medium')} <{term}> ."
    yield f"<{term}> {A} {_p('skos:Concept')} ."
    yield f"<{term}> {_p('skos:prefLabel')} {worded(words, 'en')} ."
    yield f"<{term}> {_p('skos:inScheme')} <{AAT}> ."


def _kept(me: str, record: Record, facts: CollectionFacts, containers: set[str]) -> list[str]:
    """The item is part of its folder, that of its box, that of the collection (also said as words)."""
    outer = urn(facts.id)
    if record.mark is None:
        return [f"{me} {_p('dcterms:isPartOf')} {outer} ."]
    lines: list[str] = []
    path: list[str] = []
    for kind, label in record.mark.path:
        path.append(f"{kind}-{label}")
        inner = f"<urn:uuid:{facts.id}#{quote('/'.join(path), safe='/')}>"
        if inner not in containers:
            containers.add(inner)
            lines.append(f"{inner} {_p('dcterms:isPartOf')} {outer} .")
            lines.append(f"{inner} {_p('dcterms:title')} {worded(f'{kind.capitalize()} {label}', 'en')} .")
            lines.append(f"{inner} {_p('bx:kind')} {literal(kind)} .")
            lines.append(f"{inner} {_p('bx:label')} {literal(label)} .")
        outer = inner
    lines.append(f"{me} {_p('dcterms:isPartOf')} {outer} .")
    lines.append(f"{me} {_p('bx:position')} {typed(str(record.mark.item), _p('xsd:integer'))} .")
    return lines


def _place(me: str, record: Record) -> list[str]:
    told = record.first("place")
    if told is None:
        return []
    node = f"{me[:-1]}#place>"
    lines = [f"{me} {_p('dcterms:spatial')} {node} .", f"{node} {A} {_p('dcterms:Location')} ."]
    lines.append(f"{node} {_p('rdfs:label')} {worded(told.words, told.language)} .")
    place = place_of(record)
    if place is None:
        return lines
    lines.append(f"{node} {_p('skos:altLabel')} {worded(full_name(place), 'en')} .")
    if place.lat is not None and place.lon is not None:
        lines.append(f"{node} {_p('geo:lat')} {typed(f'{place.lat:.2f}', _p('xsd:decimal'))} .")
        lines.append(f"{node} {_p('geo:long')} {typed(f'{place.lon:.2f}', _p('xsd:decimal'))} .")
    if place.geonames:
        lines.append(f"{node} {_p('skos:closeMatch')} <https://sws.geonames.org/{place.geonames}/> .")
    return lines


_ROLES = {"person": "foaf:depicts", "photographer": "dcterms:creator", "named": "dcterms:subject"}


def _person(me: str, one: PersonShown, at: int) -> list[str]:
    node = urn(one.person) if one.person else f"{me[:-1]}#person-{at}>"
    return [
        f"{me} {_p(_ROLES.get(one.role, 'dcterms:subject'))} {node} .",
        f"{node} {A} {_p('foaf:Person')} .",
        f"{node} {_p('foaf:name')} {literal(one.name)} .",
    ]


def _scan(me: str, record: Record, scan: ScanFile) -> list[str]:
    node = urn(scan.id)
    facts = {
        "path": packed_path(record, scan), "sha256": scan.sha256, "bytes": scan.bytes, "width": scan.width,
        "height": scan.height, "ppi": scan.ppi, "media_type": scan.media_type,
    }  # fmt: skip
    shows = {"item": record.id, "side": scan.side, **({"area": list(scan.area)} if scan.area else {})}
    return [
        f"{me} {_p('dcterms:hasFormat')} {node} .",
        f"{node} {A} {_p('dcmitype:StillImage')} .",
        f"{node} {_p('dcterms:format')} {literal(scan.media_type)} .",
        f"{node} {_p('dcterms:identifier')} {literal('sha256:' + scan.sha256)} .",
        f"{node} {_p('bx:role')} {literal(scan.role)} .",
        f"{node} {_p('bx:file')} {literal(json.dumps(facts, ensure_ascii=False))} .",
        f"{node} {_p('bx:shows')} {literal(json.dumps(shows))} .",
    ]


_ANNOTATION = " .\n".join(
    (
        f"%(me)s {A} {_p('oa:Annotation')}",
        f"%(me)s {_p('oa:hasTarget')} %(target)s",
        f"%(me)s {_p('oa:hasBody')} %(body)s",
        f"%(body)s {A} {_p('oa:TextualBody')}",
        f"%(body)s {_p('rdf:value')} %(words)s",
        f"%(me)s {_p('prov:wasAttributedTo')} %(agent)s",
        f'%(me)s {_p("prov:generatedAtTime")} "%(at)s"^^{_p("xsd:dateTime")}',
        f"%(me)s {_p('bx:sure')} %(sure)s",
        f'%(me)s {_p("bx:field")} "%(field)s"',
        f"%(me)s {_p('bx:source')} %(source)s",
        f'%(me)s {_p("bx:audience")} "%(audience)s" .',
    )
)
_as_json = json.JSONEncoder(ensure_ascii=False).encode
_LANGUAGE_OF, _READING = f"> {_p('dcterms:language')} ", f" {_p('bx:reading')} "


def annotation(told: StatementView, target: str) -> str:
    """One statement as a Web Annotation: what was said, of what, by whom, when, how sure, for whom, how read."""
    agent, source = _sayer(told.source.said, told.source.ref)
    me, body = f"<urn:uuid:{told.statement}>", f"<urn:uuid:{told.statement}#body"
    lines = _ANNOTATION % {
        "me": me,
        "target": target,
        "body": f"{body}>",
        "words": literal(told.words),
        "agent": agent,
        "at": told.recorded_at,
        "sure": _sure(told.sure),
        "field": told.field,
        "source": source,
        "audience": told.audience,
    }
    if told.language:
        lines += f"\n{body}{_LANGUAGE_OF}{literal(told.language)} ."
    if told.value:
        lines += f"\n{me}{_READING}{literal(_as_json(dict(told.value)))} ."
    return lines


@lru_cache(1024)
def _sayer(said: Said, ref: str) -> tuple[str, str]:
    """Who says it as a node, a narrator by the registry's id, and the source as we write it."""
    words = str(Source(said, ref))
    if said is Said.NARRATOR and re.fullmatch(r"[0-9a-f-]{36}", ref):
        return urn(ref), literal(words)
    return iri(f"{TERMS}source/{quote(words, safe=':')}"), literal(words)


def _marked(shown: PersonShown) -> str:
    return f"<urn:uuid:{shown.told.statement}#target>"


def _marker(me: str, shown: PersonShown) -> list[str]:
    """The numbered box on the scan that a name was said of (a point has no size)."""
    target, selector = _marked(shown), f"<urn:uuid:{shown.told.statement}#selector>"
    x, y, *size = (f"{100 * one:g}" for one in shown.area)
    where = f"xywh=percent:{x},{y},{','.join(size) or '0,0'}"
    return [
        f"{target} {A} {_p('oa:SpecificResource')} .",
        f"{target} {_p('oa:hasSource')} {urn(shown.scan)} .",
        f"{target} {_p('dcterms:isPartOf')} {me} .",
        f"{target} {_p('oa:hasSelector')} {selector} .",
        f"{selector} {A} {_p('oa:FragmentSelector')} .",
        f"{selector} {_p('dcterms:conformsTo')} <{MEDIA_FRAGMENTS}> .",
        f"{selector} {_p('rdf:value')} {literal(where)} .",
        f"{target} {_p('bx:number')} {typed(str(shown.number), _p('xsd:integer'))} .",
        f"{target} {_p('bx:area')} {literal(' '.join(map(repr, shown.area)))} .",
    ]


def thing_triples(
    kind: str, ident: str, told: Iterable[StatementView], facts: Iterable[tuple[str, str]] = ()
) -> list[str]:
    """A person, event, sitting or the collection itself: what is told of it, and plain `facts`."""
    me = urn(ident)
    lines = [f"{me} {_p('bx:thing')} {literal(kind)} ."]
    lines += [f"{me} {_p(f'bx:{name}')} {literal(words)} ." for name, words in facts]
    return lines + [annotation(one, me) for one in told]


def person_triples(person: Person) -> list[str]:
    """A person of the registry as FOAF has it."""
    return [
        f"{urn(person.id)} {A} {_p('foaf:Person')} .",
        f"{urn(person.id)} {_p('foaf:name')} {literal(person.name)} .",
    ]


def turtle(lines: Iterable[str]) -> Iterator[str]:
    """The same triples as Turtle, for reading: prefixes, and one paragraph for each run of a subject."""
    for prefix, namespace in PREFIXES.items():
        yield f"@prefix {prefix}: <{namespace}> .\n"
    before = ""
    for line in lines:
        subject, predicate, value = line.rstrip(" .\n").split(" ", 2)
        if subject != before:
            yield (" .\n" if before else "") + f"\n{subject}\n"
        yield f"{' ;' + chr(10) if subject == before else ''}  {_short(predicate)} {_short_value(value)}"
        before = subject
    yield " .\n" if before else ""


_LOCAL = re.compile(r"[A-Za-z][A-Za-z0-9_-]*\Z")
_NAMESPACES = {namespace: prefix for prefix, namespace in PREFIXES.items()}


@lru_cache(4096)
def _short(node: str) -> str:
    """An IRI in its brackets as a prefixed name where Turtle has one for it; `a` for the type."""
    if node == A:
        return "a"
    cut = max(node.rfind("#"), node.rfind("/"), node.rfind(":")) + 1
    prefix, local = _NAMESPACES.get(node[1:cut]), node[cut:-1]
    return f"{prefix}:{local}" if prefix and _LOCAL.match(local) else node


def _short_value(value: str) -> str:
    if value.startswith("<"):
        return _short(value)
    words, mark, datatype = value.rpartition('"^^')
    return f'{words}"^^{_short(datatype)}' if mark else value


_TRIPLE = re.compile(r'<([^>]*)> <([^>]*)> (?:<([^>]*)>|"((?:[^"\\]|\\.)*)"(?:@[\w-]+|\^\^<[^>]*>)?) \.\s*\Z')
_ESCAPED = re.compile(r"\\(u[0-9A-Fa-f]{4}|U[0-9A-Fa-f]{8}|.)")
_NAMED = {"n": "\n", "r": "\r", "t": "\t", "b": "\b", "f": "\f"}


def read_triples(lines: Iterable[str]) -> Iterator[tuple[str, str, str]]:
    """(subject, predicate, object) of N-Triples without blank nodes, which we do not write. Raises ValueError.

    Grammar: `'<' IRI '>' '<' IRI '>' ('<' IRI '>' | '"' string '"' ('@' tag | '^^<' IRI '>')?) '.'`
    """
    for number, line in enumerate(lines, 1):
        if not line.strip() or line.startswith("#"):
            continue
        match = _TRIPLE.match(line)
        if match is None:
            raise ValueError(f"line {number} is no triple: {line[:80]!r}")
        subject, predicate, node, text = match.groups()
        yield subject, predicate, node if node is not None else _ESCAPED.sub(_unescaped, text)


def _unescaped(match: re.Match[str]) -> str:
    letter = match[1]
    return chr(int(letter[1:], 16)) if len(letter) > 1 else _NAMED.get(letter, letter)
