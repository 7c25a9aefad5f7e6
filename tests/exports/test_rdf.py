"""Linked data read by rdflib and held against our shapes by pyshacl, both independent of us."""

import io
from datetime import date
from pathlib import Path
from unittest import mock

import pytest
import rdflib
from hypothesis import given
from rdflib import Graph, Literal, Namespace, URIRef
from rdflib.namespace import DCTERMS, FOAF, RDF
from tests.drawn import drawn, some
from tests.exports.strategies import RECORDS

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.records.item_record import Record
from boxlore.disk.shipped import shipped
from boxlore.exports.rdf import read_triples, write_triples
from boxlore.exports.rdf_terms import EDTF, TERMS
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
    assert len(set(graph.subjects(RDF.type, URIRef("https://schema.org/ArchiveComponent")))) == 25
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
    assert len(set(graph.objects(None, FOAF.depicts))) > 20
    assert len(set(graph.subjects(RDF.type, OA.Annotation))) > 150


@pytest.mark.parametrize("line", ["<a> <b> .", "<a> <b> _:c .", '<a> <b> "c', "words"])
def test_what_is_no_triple_of_ours_is_refused(line: str) -> None:
    """RDF 1.1 N-Triples, grammar; blank nodes, which we do not write."""
    with pytest.raises(ValueError, match="line 1 is no triple"):
        list(read_triples([line]))
