"""Linked data read by rdflib and held against our shapes by pyshacl, both independent of us."""

import io
from datetime import date
from pathlib import Path
from unittest import mock

import pytest
import rdflib
from hypothesis import given
from rdflib import Graph, Literal, Namespace, URIRef
from rdflib.namespace import DC, DCMITYPE, DCTERMS, FOAF, PROV, RDF, RDFS, SDO, SKOS, WGS
from tests.drawn import drawn, some
from tests.exports.strategies import RECORDS

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.fields.areas import Area
from boxlore.core.people.reference import PersonRef
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView
from boxlore.core.statements import KEEPER, Sure
from boxlore.disk.shipped import shipped
from boxlore.exports.rdf import read_triples, write_triples
from boxlore.exports.rdf_files import fragment, shown_of
from boxlore.exports.rdf_terms import EDTF, PREFIXES, TERMS
from boxlore.exports.required_fields import read_required

FACTS = CollectionFacts(id="01a214af-f06c-7bb4-925d-b49412c6fff7", title="Tamm & Rourke", on_day=date(2026, 11, 25))
OA = Namespace("http://www.w3.org/ns/oa#")
pytestmark = pytest.mark.filterwarnings(
    "ignore:.*is deprecated:DeprecationWarning"
)  # pyshacl calls rdflib's older names
TABLE = read_required((shipped("schemas") / "required.csv").read_text(encoding="utf-8"))
SHAPES = shipped("schemas") / "records.shacl.ttl"


def triples(record: Record) -> bytes:
    out = io.BytesIO()
    assert write_triples([record], FACTS, out, TABLE) == []
    return out.getvalue()


@drawn(25)
@given(RECORDS)
def test_what_is_written_is_what_rdflib_reads_and_what_we_read(record: Record) -> None:
    data = triples(record)
    with mock.patch.object(rdflib, "NORMALIZE_LITERALS", False):  # rdflib would respell times
        graph = Graph().parse(data=data, format="nt")
    ours = {(s, p, o) for s, p, o in read_triples(data.decode().split("\n"))}
    assert {(str(s), str(p), str(o)) for s, p, o in graph} == ours
    assert (URIRef(f"urn:uuid:{record.id}"), DCTERMS.identifier, Literal(record.number)) in graph
    if record.edtf:
        created = (URIRef(f"urn:uuid:{record.id}"), DCTERMS.created, Literal(record.edtf, datatype=URIRef(EDTF)))
        assert created in graph


def faults(graph: Graph) -> str:
    """What pySHACL reports against our shapes, nothing if the graph conforms."""
    from pyshacl import validate  # noqa: PLC0415  # it makes the grammar of SPARQL as it is loaded

    conforms, _, words = validate(graph, shacl_graph=str(SHAPES), shacl_graph_format="turtle")
    return "" if conforms else str(words)


@drawn(4)
@given(RECORDS)
def test_odd_records_keep_to_our_shapes(record: Record) -> None:
    graph = Graph().parse(data=triples(record), format="nt")
    assert faults(graph) == ""


@pytest.mark.parametrize("part", ["open", "closed"])
def test_the_demos_linked_data_keep_to_our_shapes(demo: Path, part: str) -> None:
    home = demo / "transfer" / part / "data" / "metadata"
    graph = Graph().parse(home / "records.nt", format="nt")
    assert faults(graph) == ""
    assert len(set(graph.subjects(RDF.type, URIRef("https://schema.org/ArchiveComponent")))) == 37
    turtle = Graph().parse(home / "records.ttl", format="turtle")
    assert set(turtle) == set(graph)


REGISTERED = (
    "http://www.w3.org/", "http://purl.org/dc/", "http://xmlns.com/foaf/0.1/", "https://schema.org/",
    "http://www.loc.gov/premis/rdf/v3/",
)  # fmt: skip
"""How the namespaces of published vocabularies begin."""


@pytest.mark.parametrize("part", ["open", "closed"])
def test_terms_are_published_ones_or_ours_and_told(demo: Path, part: str) -> None:
    """RFC 8141, 5: a URN's namespace is registered; ours are tag URIs (RFC 4151), told in `schemas/terms.ttl`."""
    graph = Graph().parse(demo / "transfer" / part / "data" / "metadata" / "records.nt", format="nt")
    told = set(Graph().parse(shipped("schemas") / "terms.ttl", format="turtle").subjects(RDF.type, RDF.Property))
    used = {predicate for predicate in graph.predicates() if not str(predicate).startswith(REGISTERED)}
    assert used <= told and all(str(term).startswith(TERMS) for term in told)
    nodes = {str(node) for triple in graph for node in triple if isinstance(node, URIRef)}
    assert {node.split(":")[1] for node in nodes if node.startswith("urn:")} == {"uuid"}
    own = sum(str(predicate) in set(map(str, told)) for predicate in graph.predicates())
    assert own < len(graph) / 6, (own, len(graph))  # it was one in three


def test_no_fact_of_a_file_or_a_sitting_is_json_in_a_string(demo: Path) -> None:
    graph = Graph().parse(demo / "transfer" / "closed" / "data" / "metadata" / "records.nt", format="nt")
    texts = [value for value in graph.objects() if isinstance(value, Literal) and str(value).startswith(("{", "["))]
    odd = [value for value in texts if value.datatype not in (RDF.JSON, URIRef(EDTF))]
    assert odd == [] and any(value.datatype == RDF.JSON for value in texts)


@pytest.mark.parametrize("part", ["open", "closed"])
def test_each_date_is_edtf_for_an_independent_validator(demo: Path, part: str) -> None:
    """PyPI `edtf-validate` 2.0.0; it takes no season in a set, which EDTF (ISO 8601-2, level 2) does not forbid."""
    from edtf_validate.valid_edtf import is_valid  # noqa: PLC0415  # it makes its grammar as it is loaded

    graph = Graph().parse(demo / "transfer" / part / "data" / "metadata" / "records.nt", format="nt")
    dates = {str(value) for value in graph.objects() if isinstance(value, Literal) and value.datatype == URIRef(EDTF)}
    assert len(dates) > 10
    assert [date for date in dates if not is_valid(date) and not (date.startswith("[") and date.endswith("-21]"))] == []


def test_a_date_worked_out_is_derived_from_statements_that_are_there(demo: Path) -> None:
    """PROV-O, 3.1: an entity was derived from others."""
    graph = Graph().parse(demo / "transfer" / "open" / "data" / "metadata" / "records.nt", format="nt")
    worked_out = list(graph.objects(None, URIRef(f"{TERMS}date_worked_out")))
    derived = [of for entity in worked_out for of in graph.objects(entity, PROV.wasDerivedFrom)]
    assert worked_out and derived
    assert [of for of in derived if (of, RDF.type, URIRef("http://www.w3.org/ns/oa#Annotation")) not in graph] == []


PLANTED = [
    ("no title", "<http://purl.org/dc/terms/title>"),
    ("no rights, so no item", "<http://purl.org/dc/terms/isPartOf>"),
    ("no name of a person", "<http://xmlns.com/foaf/0.1/name>"),
    ("no one who said it", "<http://www.w3.org/ns/prov#wasAttributedTo>"),
    ("no degree of sureness", "<tag:boxlore.example,2026:terms#sure>"),
]


@pytest.mark.parametrize(("trap", "lost"), some(PLANTED))
def test_shapes_refuse_what_lacks_something(demo: Path, trap: str, lost: str) -> None:
    lines = (demo / "transfer" / "closed" / "data" / "metadata" / "records.nt").read_text(encoding="utf-8").split("\n")
    left = [line for line in lines if f" {lost} " not in line]
    assert len(left) < len(lines)
    graph = Graph().parse(data="\n".join(left), format="nt")
    assert faults(graph)


def test_a_record_without_what_is_required_is_named_and_left_out() -> None:
    out = io.BytesIO()
    facts = CollectionFacts(id="a", title="", rights="", on_day=date(2026, 11, 25))
    findings = write_triples([Record(id="b", number="TRA-0001")], facts, out, TABLE)
    assert "TRA-0001 cannot be written as linked data: it lacks rights" in findings[0].message
    assert b"TRA-0001" not in out.getvalue()


def test_people_shown_are_depicted_and_statements_are_annotations(demo: Path) -> None:
    graph = Graph().parse(demo / "transfer" / "closed" / "data" / "metadata" / "records.nt", format="nt")
    assert len(set(graph.objects(None, FOAF.depicts))) > 15
    assert len(set(graph.subjects(RDF.type, OA.Annotation))) > 150


def test_only_who_is_surely_shown_is_depicted_and_the_others_are_annotations_with_their_certainty() -> None:
    """FOAF: depicts asserts; Web Annotation Vocabulary, 3.3: identifying, the motivation of saying who it is."""
    one, other = (
        StatementView(
            statement=f"{ident}1111111-1111-7111-8111-111111111111", field="person", words=name, language="et",
            source=KEEPER, said_by="", sure=sure, audience="anyone", recorded_at="2026-11-25T00:00:00.000Z",
            value=PersonRef(ident),
        )
        for ident, name, sure in (("a", "Leida", Sure.SURE), ("b", "Liisi", Sure.GUESS))
    )  # fmt: skip
    people = tuple(PersonShown(told=told, name=told.words, person=told.meant) for told in (one, other))
    record = Record(id="c" * 36, number="TRA-0001", people=people)
    graph = Graph().parse(data=triples(record), format="nt")
    assert list(graph.objects(URIRef(f"urn:uuid:{record.id}"), FOAF.depicts)) == [URIRef("urn:uuid:a")]
    for told in (one, other):
        annotation = URIRef(f"urn:uuid:{told.statement}")
        assert (annotation, OA.motivatedBy, OA.identifying) in graph
        assert (annotation, DCTERMS.references, URIRef(f"urn:uuid:{told.meant}")) in graph
        assert (annotation, URIRef(f"{TERMS}sure"), URIRef(f"{TERMS}sure/{told.sure}")) in graph
        assert list(graph.objects(annotation + "#body", RDF.value)) == [Literal(told.words, lang="et")]


FRAGMENTS: list[tuple[tuple[float, ...], tuple[int, int], str]] = [
    ((0.25, 0.5, 0.5, 0.25), (400, 200), "xywh=100,100,200,50"),
    ((1.0, 0.0), (400, 200), "xywh=399,0,1,1"),
    ((0.1, 0.1, 0.0001, 0.5), (400, 200), "xywh=40,20,1,100"),
    ((0.25, 0.5), (0, 0), "xywh=percent:25,50,1,1"),
]


@pytest.mark.parametrize(("area", "size", "words"), FRAGMENTS)
def test_a_part_of_a_picture_is_told_in_whole_pixels(
    area: tuple[float, ...], size: tuple[int, int], words: str
) -> None:
    """W3C, Media Fragments URI 1.0, 4.2.2: x, y, width and height are digits; a point is a box of one pixel."""
    assert fragment(Area(*area), size) == words


VOCABULARIES = (DC, DCMITYPE, DCTERMS, FOAF, PROV, RDF, RDFS, SDO, SKOS, WGS)
BY_HAND = {
    "premis": "size originalName",
    "oa": "Annotation TextualBody SpecificResource FragmentSelector hasBody hasTarget hasSource hasSelector "
    "motivatedBy",
    "exif": "imageWidth imageLength xResolution",
    "geo": "lat long",
}


@pytest.mark.parametrize("part", ["open", "closed"])
def test_every_published_term_is_in_its_vocabulary(demo: Path, part: str) -> None:
    """As rdflib ships DCMI, FOAF, PROV-O, SKOS, schema.org and RDF itself; those of PREMIS 3 (Library of Congress,
    2018), WGS84, Web Annotation (W3C, 2017) and EXIF (W3C, 2003) by hand from their lists of terms."""
    graph = Graph().parse(demo / "transfer" / part / "data" / "metadata" / "records.nt", format="nt")
    used = {term for term in (*graph.predicates(), *graph.objects(None, RDF.type)) if not str(term).startswith(TERMS)}
    by_hand = {URIRef(PREFIXES[prefix] + name) for prefix, names in BY_HAND.items() for name in names.split()}
    assert [term for term in used - by_hand if not any(term in space for space in VOCABULARIES)] == []


@pytest.mark.parametrize("line", ["<a> <b> .", "<a> <b> _:c .", '<a> <b> "c', "words"])
def test_what_is_no_triple_of_ours_is_refused(line: str) -> None:
    """RDF 1.1 N-Triples, grammar; blank nodes, which we do not write."""
    with pytest.raises(ValueError, match="line 1 is no triple"):
        list(read_triples([line]))


def test_the_corners_of_what_lies_aslant_are_kept_as_our_shapes_have_them() -> None:
    corners = (0.1, 0.2, 0.7, 0.1, 0.8, 0.6, 0.2, 0.9)
    scan = ScanFile(
        id="01a214af-f06c-7bb4-925d-b49412c6ff01", path="scans/a.jpg", sha256="0" * 64, bytes=1, width=300, height=200,
        media_type="image/jpeg", area=(0.1, 0.1, 0.7, 0.8), corners=corners, turn=90,
    )  # fmt: skip
    record = Record(id="01a214af-f06c-7bb4-925d-b49412c6ff02", number="TRA-0001", scans=(scan,))
    graph = Graph().parse(data=triples(record), format="nt")
    assert faults(graph) == ""
    (part,) = graph.subjects(OA.hasSource, URIRef(f"urn:uuid:{scan.id}"))
    kept = {name: [str(value) for value in graph.objects(part, URIRef(TERMS + name))] for name in ("area", "corners")}
    shows = shown_of({f"bx:{name}": values for name, values in kept.items()} | {"bx:side": ["recto"]}, "item")
    assert shows.corners == corners and shows.area == Area(0.1, 0.1, 0.7, 0.8)
    with pytest.raises(ValueError):
        shown_of({"bx:area": kept["area"], "bx:corners": ["0 0 1 1"]}, "item")
