"""Every field of ours in each output of a transfer, one row a field: where an archive finds it.

The elements are those of ISO 15836 (oai_dc), DCMI Metadata Terms, EAD3 1.1.1 and the vocabularies of the linked
data; which field goes where is our own crosswalk.
"""

import io
from datetime import date

import pytest
from lxml import etree
from rdflib import Graph, URIRef

from boxlore.core.crosswalk.dublin_core import CNE, CollectionFacts
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.closing_dates import Closure, Reason
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import KEEPER, ReadingValue, Said, Source, Sure
from boxlore.disk.shipped import shipped
from boxlore.exports.dublin_core import FULL, SIMPLE, write_records
from boxlore.exports.ead_dialects import EAD3
from boxlore.exports.finding_aid import FindingAid
from boxlore.exports.rdf import write_triples
from boxlore.exports.rdf_terms import PREFIXES
from boxlore.exports.required_fields import read_required

LEIDA = Source(Said.NARRATOR, "11111111-1111-7111-8111-111111111111")


def told(
    field: str, words: str, source: Source = KEEPER, sure: Sure = Sure.SURE, value: ReadingValue | None = None
) -> StatementView:
    return StatementView(
        statement=f"22222222-2222-7222-8222-{abs(hash((field, words))) % 10**12:012d}", field=field, words=words,
        language="en", source=source, said_by="Leida Rourke" if source is LEIDA else "", sure=sure, audience="anyone",
        recorded_at="2026-11-25T10:15:30.250Z", value=value,
    )  # fmt: skip


TALLINN = Place(name="Tallinn", city="Tallinn", country="Estonia", lat=59.44, lon=24.75, radius_km=5,
                geonames=588409, called_then="Reval", country_then="Russian Empire")  # fmt: skip
RECORD = Record(
    id="33333333-3333-7333-8333-333333333333",
    number="TRA-0042",
    mark=Mark((("box", "3"), ("folder", "12")), 4),
    found_in="shoebox, under the letters",
    size_mm=(90, 60),
    scans=(
        ScanFile(id="44444444-4444-7444-8444-444444444444", path="scans/a.tif", sha256="a" * 64, bytes=9, width=30,
                 height=20, media_type="image/tiff"),
    ),
    people=(
        PersonShown(told=told("person", "Kristjan", sure=Sure.LIKELY), name="Kristjan Tamm", person="k"),
        PersonShown(told=told("photographer", "Atelier Lind"), name="Atelier Lind", role="photographer"),
    ),
    told={
        "title": (told("title", "The harbour"),),
        "story": (told("story", "Ships lay three deep.", LEIDA, Sure.LIKELY),),
        "inscription": (told("inscription", "Reval 1912", Source(Said.INSCRIPTION, "verso")),),
        "date": (told("date", "about 1912", LEIDA, value=DateReading.from_edtf("1912~")),),
        "place": (told("place", "Reval", value=PlaceReading("Reval", "match", (TALLINN,))),),
        "process": (told("process", "gelatin silver print"),),
        "series": (told("series", "1 The harbour years"),),
        "archive_reference": (told("archive_reference", "P-991"),),
        "rights_holder": (told("rights_holder", "the heirs of Lind"),),
        "file_name": (told("file_name", "Reval 1912/IMG_0042.tif", Source(Said.FILE)),),
    },
)  # fmt: skip
KRISTJAN = Person(
    id="k", name="Kristjan Tamm", sort_name="Tamm, Kristjan", forms=("Kristjan Tamm",), calls=("Kristjan",),
    born=DateReading.from_edtf("1868"), died=DateReading.from_edtf("1941-03-02"),
)  # fmt: skip
FACTS = CollectionFacts(
    id="55555555-5555-7555-8555-555555555555",
    title="Tamm and Rourke",
    holder="Rourke family",
    on_day=date(2026, 11, 25),
    people={"k": KRISTJAN},
    custody=("Came from Reval in a trunk.",),
    closure_of=lambda record: Closure((Reason(date(2061, 1, 1), "names someone taken as living"),)),
)


def schema(name: str) -> bytes:
    return (shipped("schemas") / name).read_bytes()


@pytest.fixture(scope="module")
def outputs() -> dict[str, object]:
    simple, full, aid_out, triples = io.BytesIO(), io.BytesIO(), io.BytesIO(), io.BytesIO()
    assert write_records([RECORD], FACTS, simple, schema("oai_dc.rng"), SIMPLE) == []
    assert write_records([RECORD], FACTS, full, schema("dcterms.rng"), FULL) == []
    holding = Extent()
    holding.add(RECORD)
    aid = FindingAid(FACTS, holding, EAD3, schema("finding-aid.ead3.rng"))
    aid.write([RECORD], aid_out)
    assert aid.findings == []
    assert write_triples([RECORD], FACTS, triples, read_required(schema("required.csv").decode())) == []
    return {
        "oai_dc": etree.fromstring(simple.getvalue()),
        "dcterms": etree.fromstring(full.getvalue()),
        "ead3": etree.fromstring(aid_out.getvalue()),
        "rdf": Graph().parse(data=triples.getvalue(), format="nt"),
    }


A = "http://vocab.getty.edu/aat/300128695"
ROWS = [
    ("collection", "relation=Tamm and Rourke", "isPartOf=Tamm and Rourke", "archdesc/did/unittitle=Tamm and Rourke",
     "dcterms:title=Tamm and Rourke"),
    ("box, folder, item", "source=Box 3 / Folder 12 / Item 4", "isPartOf=Box 3 / Folder 12",
     "did/container[@localtype='folder']=12", "dcterms:title=Folder 12"),
    ("series", "relation=Series: 1 The harbour years", "isPartOf=Series: 1 The harbour years",
     "c[@level='series']/did/unittitle=1 The harbour years", "rdf:value=1 The harbour years"),
    ("item number", "identifier=TRA-0042", "identifier=TRA-0042", "did/unitid=TRA-0042", "dcterms:identifier=TRA-0042"),
    ("archive's reference", "identifier=P-991", "identifier=P-991", "did/unitid=P-991", "dcterms:identifier=P-991"),
    ("title", "title=The harbour", "title=The harbour", "did/unittitle=The harbour", "dcterms:title=The harbour"),
    ("story", "description=Ships lay", "description=Ships lay", "scopecontent/p=Ships lay",
     "dcterms:description=Ships lay"),
    ("words on the back", "description=“Reval 1912”", "description=“Reval 1912”", "did/didnote=“Reval 1912”",
     "dcterms:description=“Reval 1912”"),
    ("date", "date=1912", "created=1912~", "did//datesingle[@notbefore]=approximately 1912", "dcterms:created=1912~"),
    ("date as told", "description=about 1912", "description=about 1912", "scopecontent/p=about 1912",
     "rdf:value=about 1912"),
    ("place", "coverage=Tallinn", "spatial=east=24.75; north=59.44; name=", "controlaccess/geogname/part=Tallinn",
     "geo:lat=59.44"),
    ("place then", "coverage=Reval", "spatial=Reval, Russian Empire",
     "controlaccess//geographiccoordinates=59.44,24.75",
     "rdfs:label=Reval"),
    ("people shown", "subject=Tamm, Kristjan, 1868-1941", "subject=Tamm, Kristjan, 1868-1941",
     "controlaccess/persname[@relator='depicted']/part=Tamm, Kristjan", "foaf:name=Kristjan Tamm"),
    ("photographer", "creator=Atelier Lind", "creator=Atelier Lind", "did/origination/corpname/part=Atelier Lind",
     "foaf:name=Atelier Lind"),
    ("who said it, how sure", "description=story by Leida Rourke (likely)",
     "description=story by Leida Rourke (likely)",
     "scopecontent/p=story by Leida Rourke (likely)", "bx:sure=tag:boxlore.example,2026:terms#sure/likely"),
    ("kind", "type=StillImage", "type=StillImage", "did/physdescstructured/unittype=photograph",
     "rdf:type=http://purl.org/dc/dcmitype/StillImage"),
    ("process", "format=gelatin silver print", f"medium={A}",
     "controlaccess/genreform[@source='aat']/part=gelatin silver print", f"dcterms:medium={A}"),
    ("size", "format=90 × 60 mm", "extent=90 × 60 mm", "did/physdescstructured/dimensions=90 × 60 mm",
     "dcterms:extent=90 × 60 mm"),
    ("name of the file", "source=IMG_0042.tif", "source=IMG_0042.tif", "scopecontent/p=IMG_0042.tif",
     "rdf:value=Reval 1912/IMG_0042.tif"),
    ("scan", "", "hasFormat=image/tiff", "did/dao[@daotype='derived']=recto", "dcterms:format=image/tiff"),
    ("custody", "", "provenance=in a trunk", "archdesc/custodhist/p=in a trunk", "dcterms:provenance=in a trunk"),
    ("found in", "description=shoebox", "provenance=shoebox", "arrangement/p=shoebox", "dcterms:provenance=shoebox"),
    ("rights", f"rights={CNE}", f"rights={CNE}", f"userestrict/p={CNE}", f"dcterms:rights={CNE}"),
    ("rights holder", "", "rightsHolder=the heirs", "userestrict/p=the heirs", "dcterms:rightsHolder=the heirs"),
    ("access", "rights=Closed until 2061-01-01", "accessRights=Closed until 2061-01-01",
     "accessrestrict/p=Closed until 2061-01-01", "dcterms:accessRights=Closed until 2061-01-01"),
    ("rights in the description", "", "", "control/rightsdeclaration/citation=CC0", ""),
]  # fmt: skip


def in_xml(root: etree._Element, path: str) -> list[str]:
    steps = "/".join(f"{{*}}{step}" if step else "" for step in path.split("/")) if path else ""
    return ["".join(one.itertext()) for one in root.findall(f".//{steps}")]


@pytest.mark.parametrize("row", ROWS, ids=[row[0] for row in ROWS])
def test_each_field_stands_where_the_map_says(outputs, row: tuple[str, ...]) -> None:  # type: ignore[no-untyped-def]
    for name, cell in zip(("oai_dc", "dcterms", "ead3"), row[1:4], strict=True):
        path, words = split(cell)
        assert not cell or any(words in one for one in in_xml(outputs[name], path)), (name, cell)
    predicate, words = split(row[4])
    if predicate:
        prefix, _, local = predicate.partition(":")
        found = [str(one) for one in outputs["rdf"].objects(None, URIRef(PREFIXES[prefix] + local))]
        assert any(words in one for one in found), (predicate, found)


def split(cell: str) -> tuple[str, str]:
    """`path=words`; an equals sign within brackets belongs to the path."""
    depth = 0
    for at, letter in enumerate(cell):
        depth += (letter == "[") - (letter == "]")
        if letter == "=" and not depth:
            return cell[:at], cell[at + 1 :]
    return cell, ""


def test_simple_dublin_core_has_one_date_and_a_uri_for_the_rights(outputs) -> None:  # type: ignore[no-untyped-def]
    assert in_xml(outputs["oai_dc"], "date") == ["1912"]
    assert CNE == "http://rightsstatements.org/vocab/CNE/1.0/"


def test_both_image_and_still_image_are_said(outputs) -> None:  # type: ignore[no-untyped-def]
    """DCMI Type Vocabulary: a still image is an image too."""
    assert in_xml(outputs["oai_dc"], "type") == ["Image", "StillImage"]
    assert in_xml(outputs["dcterms"], "type") == ["Image", "StillImage"]
