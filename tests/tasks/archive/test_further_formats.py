"""What an archive may ask for besides, read by the standards and not by ours.

METS 1.12 and PREMIS (Library of Congress); Specification for an OAI Static Repository (2004) and OAI-PMH 2.0; IIIF
Presentation API 3.0 and W3C Web Annotation; RFC 4180 and the Dublin Core Metadata Element Set. What is said of static
repositories and IIIF is from memory of their clauses, as no schema of theirs is here, and so is what is said of METS
beyond its published schema, which is looked for among the others; PREMIS is held against its published schema of
version 2.1, whose units of these names 3.0 has kept.
"""

import csv
import hashlib
import json
import re
import shutil
from copy import deepcopy
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from lxml import etree
from PIL import Image
from tests.every_row import every_row
from tests.exports import published
from tests.tasks.archive.a_sitting import a_sitting

from boxlore.core.crosswalk.receiving_archive import Archive
from boxlore.core.errors import WrongUse
from boxlore.core.statements import Kind
from boxlore.tasks.archive.archive_settings import doubtful_codes, read_archive
from boxlore.tasks.archive.transfer import TransferOrder, transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_table
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
WANTS = ("dublin-core", "rdf", "scans", "recordings", "dc-csv", "mets", "oai-static", "iiif")
MUSEUM = Archive(
    repository="Port Chalmers Museum", base_url="https://museum.example/tamm/",
    gateway="https://gateway.example/oai", email="archive@museum.example", takes=WANTS,
)  # fmt: skip
NAMES = {
    "m": "http://www.loc.gov/METS/", "p": "http://www.loc.gov/premis/v3",
    "o": "http://www.openarchives.org/OAI/2.0/", "d": "http://www.openarchives.org/OAI/2.0/oai_dc/",
    "dc": "http://purl.org/dc/elements/1.1/",
}  # fmt: skip


@pytest.fixture(scope="module")
def package(small_family: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A transfer of the small family, with a recording, in every format."""
    home = tmp_path_factory.mktemp("further") / "home"
    shutil.copytree(small_family, home)
    with open_collection(home, on_day=ON) as collection:
        a_sitting(collection, home / "in")
        transfer(collection, home / "transfer", order=TransferOrder(archive=MUSEUM))
    return home / "transfer"


def test_no_format_calls_rights_unknown_that_somebody_withheld_holds(small_family: Path, tmp_path: Path) -> None:
    """DACS 4.4 (from memory). Whose rights somebody living holds goes out with a warning, not a name."""
    shutil.copytree(small_family, tmp_path / "home")
    with open_collection(tmp_path / "home", on_day=ON) as collection:
        item = find_item(collection, "TRA-0001")
        Teller(collection).tell(item, "rights_holder", "Mia Rourke, who took it", Telling(audience="anyone"))
        takes = replace(MUSEUM, takes=(*WANTS, "ead3", "ead2002", "inventory"))
        transfer(collection, tmp_path / "out", order=TransferOrder(archive=takes))
    names = ("oai_dc.xml", "dcterms.xml", "finding-aid.ead3.xml", "finding-aid.ead2002.xml", "records.nt",
             "inventory.csv", "dc.csv", "mets.xml", "../iiif/TRA-0001.json")  # fmt: skip
    for part, words in (
        ("open", "A rights holder is known, and is not named here"),
        ("closed", "Mia Rourke, who took"),
    ):
        for name in names:
            if part == "closed" and "iiif" in name:
                continue  # what is closed has no manifest
            assert words in (tmp_path / "out" / part / "data/metadata" / name).read_text("utf-8"), (part, name)


def test_what_no_viewer_can_show_is_said(small_family: Path, tmp_path: Path) -> None:
    """IIIF Presentation 3.0, painting annotations: a picture as it lies there is shown where browsers show its kind."""
    shutil.copytree(small_family, tmp_path / "home")
    with open_collection(tmp_path / "home", on_day=ON) as collection:
        with Image.open(next((tmp_path / "home/scans").rglob("*_f.jpg"))) as picture:
            picture.resize((30, 20)).save(tmp_path / "new.tif")
        take_in(
            collection,
            by_table([(2, {"item": "new", "file": "new.tif", "side": "recto"})], tmp_path),
            IntakeOptions(copy=True),
        )
        made = transfer(collection, tmp_path / "out", order=TransferOrder(archive=MUSEUM))
    (said,) = [found.message for found in made.findings if found.rule == "iiif.not_shown"]
    assert said.startswith("IIIF shows nothing of TRA-0004: browsers show no TIFF.")


def test_the_table_for_ingest_says_what_simple_dublin_core_says(package: Path) -> None:
    for part in ("open", "closed"):
        data = package / part / "data" / "metadata"
        with open(data / "dc.csv", encoding="utf-8-sig", newline="") as file:
            heading, *rows = csv.reader(file, strict=True)
        assert set(heading) <= {
            "contributor", "coverage", "creator", "date", "description", "format", "identifier", "language",
            "publisher", "relation", "rights", "source", "subject", "title", "type", "hasFormat",
        }  # fmt: skip
        said = [
            sorted((etree.QName(value).localname, value.text) for value in record)
            for record in etree.parse(data / "oai_dc.xml").getroot()
        ]
        told = [sorted((name, cell) for name, cell in zip(heading, row, strict=True) if cell) for row in rows]
        assert [[pair for pair in row if pair[0] != "hasFormat"] for row in told] == said
        files = {cell for row in told for name, cell in row if name == "hasFormat"}
        assert files == {path.relative_to(data.parent).as_posix() for path in packed_in(data.parent)}
        assert any(path.startswith("recordings/") for path in files) == (part == "closed")


def packed_in(data: Path) -> list[Path]:
    """The scans and recordings of a part."""
    return [path for name in ("scans", "recordings") for path in (data / name).glob("*")]


def test_the_table_for_ingest_names_no_file_that_does_not_go(small_family: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    shutil.copytree(small_family, home)
    with open_collection(home, on_day=ON) as collection:
        transfer(collection, tmp_path / "t", order=TransferOrder(archive=Archive(takes=("dublin-core", "dc-csv"))))
    for part in ("open", "closed"):
        with open(tmp_path / "t" / part / "data" / "metadata" / "dc.csv", encoding="utf-8-sig", newline="") as file:
            assert "hasFormat" not in next(csv.reader(file))


@pytest.mark.parametrize("part", ["open", "closed"])
def test_mets_holds_together_and_its_digests_are_those_of_the_files(package: Path, part: str) -> None:
    data = package / part / "data"
    root = etree.parse(data / "metadata" / "mets.xml").getroot()
    order = [etree.QName(child).localname for child in root]
    assert [name for at, name in enumerate(order) if order[at - 1] != name or at == 0] == [
        "metsHdr", "dmdSec", "amdSec", "fileSec", "structMap",
    ]  # fmt: skip
    ids = [each.get("ID") for each in root.iter() if isinstance(each.tag, str) and each.get("ID")]
    assert len(ids) == len(set(ids)) and all(re.fullmatch(r"[A-Za-z_][\w.-]*", ident) for ident in ids)
    used = [each.get(name) for each in root.iter() for name in ("DMDID", "ADMID", "FILEID") if each.get(name)]
    assert used and set(used) <= set(ids)
    files = root.xpath("//m:file", namespaces=NAMES)
    assert {each[0].get("{http://www.w3.org/1999/xlink}href") for each in files} == {
        f"../{path.relative_to(data).as_posix()}" for path in packed_in(data)
    }
    uses = [group.get("USE") for group in root.xpath("//m:fileGrp", namespaces=NAMES)]
    assert uses == {"open": ["scans"], "closed": ["scans", "recordings"]}[part]
    for file in files:
        scan = (data / "metadata" / file[0].get("{http://www.w3.org/1999/xlink}href")).resolve().read_bytes()
        assert file.get("CHECKSUM") == hashlib.sha256(scan).hexdigest()
        assert int(file.get("SIZE")) == len(scan)
    assert len(root.xpath("//m:div[@TYPE='item']", namespaces=NAMES)) == 3


@pytest.mark.parametrize("part", ["open", "closed"])
def test_mets_is_valid_by_its_published_schema(package: Path, part: str) -> None:
    """METS 1.12.1 (Library of Congress). PREMIS within is held against its own; here its objects have no type."""
    published.wanted("mets/mets.xsd")
    root = etree.parse(package / part / "data" / "metadata" / "mets.xml").getroot()
    for unit in root.iterfind(".//p:object", NAMES):
        del unit.attrib["{http://www.w3.org/2001/XMLSchema-instance}type"]
    check = published.xsd("mets/mets.xsd")
    assert check.validate(root), check.error_log
    root[0].tag = f"{{{NAMES['m']}}}header"
    assert not check.validate(root)


def _premis() -> etree.XMLSchema:
    """The published schema without XLink's attributes, whose schema is not here, and which we do not write."""
    tree = etree.parse(published.folder() / "premis" / "premis-v2-1.xsd")
    schema = "{http://www.w3.org/2001/XMLSchema}"
    for element in [*tree.iter(f"{schema}import"), *tree.iter(f"{schema}attributeGroup")]:
        if "xlink" in f"{element.get('ref')}{element.get('namespace')}":
            element.getparent().remove(element)
    return etree.XMLSchema(tree)


def test_premis_in_mets_is_valid_by_its_published_schema(package: Path) -> None:
    schema = _premis()
    root = etree.parse(package / "closed" / "data" / "metadata" / "mets.xml").getroot()
    second = "info:lc/xmlns/premis-v2"
    sections = root.findall("m:amdSec", NAMES)
    assert sections and root.findall(".//p:event", NAMES)
    for kind in root.iterfind(".//p:eventType", NAMES):  # that version has no vocabularies yet
        assert kind.get("valueURI", "").startswith("http://id.loc.gov/vocabulary/preservation/eventType/")
        kind.attrib.clear()
    agents = {name.text for name in root.iterfind(".//p:agentIdentifierValue", NAMES)}
    did = root.findall(".//p:linkingAgentIdentifierValue", NAMES)
    assert {each.text for each in did} == agents and len(did) == len(root.findall(".//p:event", NAMES))
    events = {section.get("ID"): len(section.findall(".//p:event", NAMES)) for section in sections}
    assert {ident for ident, count in events.items() if not count} == {"A-SOFTWARE"}
    whole = etree.Element(f"{{{second}}}premis", version="2.1", nsmap={"premis": second})
    for name in ("object", "event", "agent"):
        whole.extend(deepcopy(unit) for unit in root.iterfind(f".//p:{name}", NAMES))
    text = etree.tostring(whole).replace(NAMES["p"].encode(), second.encode())
    assert schema.validate(etree.fromstring(text)), schema.error_log


def test_a_static_repository_has_what_a_gateway_needs(package: Path) -> None:
    assert not (package / "closed" / "data" / "metadata" / "oai-static.xml").exists()
    root = etree.parse(package / "open" / "data" / "metadata" / "oai-static.xml").getroot()
    assert [etree.QName(child).localname for child in root] == ["Identify", "ListMetadataFormats", "ListRecords"]
    identify = {etree.QName(child).localname: child.text for child in root[0]}
    assert list(identify) == [
        "repositoryName", "baseURL", "protocolVersion", "adminEmail", "earliestDatestamp", "deletedRecord",
        "granularity",
    ]  # fmt: skip
    assert identify["baseURL"] == "https://gateway.example/oai/museum.example/tamm/metadata/oai-static.xml"
    said = (identify["protocolVersion"], identify["deletedRecord"], identify["granularity"])
    assert said == ("2.0", "no", "YYYY-MM-DD")
    records = root[2].findall("o:record", NAMES)
    stamps = [record.findtext("o:header/o:datestamp", namespaces=NAMES) for record in records]
    assert len(records) == 3 and identify["earliestDatestamp"] == min(stamps)
    assert all(re.fullmatch(r"\d{4}-\d{2}-\d{2}", stamp) for stamp in stamps)
    check = published.xsd("oai/oai_dc.xsd")
    where = "{http://www.w3.org/2001/XMLSchema-instance}schemaLocation"  # OAI-PMH 2.0, 3.4: the metadata part says it
    for record in records:
        described = record.find("o:metadata/d:dc", NAMES)
        assert described.get(where).split() == [NAMES["d"], "http://www.openarchives.org/OAI/2.0/oai_dc.xsd"]
        assert check.validate(etree.fromstring(etree.tostring(described))), check.error_log


def test_manifests_have_what_viewers_need(package: Path) -> None:
    """Presentation 3.0, 3.1 to 3.4, 5.1 to 5.6."""
    assert not (package / "closed" / "data" / "iiif").exists()
    data = package / "open" / "data"
    pages = {path.name: json.loads(path.read_text("utf-8")) for path in (data / "iiif").iterdir()}
    collection = pages.pop("collection.json")
    assert collection["type"] == "Collection" and collection["@context"].endswith("/presentation/3/context.json")
    assert {member["id"] for member in collection["items"]} == {page["id"] for page in pages.values()} != set()
    languages = {language for page in pages.values() for row in page["metadata"] for language in row["value"]}
    assert {"en", "none"} <= languages  # 4.1: a language where it is known
    for page in (collection, *pages.values()):
        (provider,) = page["provider"]  # 3.1: an Agent with its homepage
        assert (provider["type"], provider["label"]) == ("Agent", {"none": ["Port Chalmers Museum"]})
        assert [home["id"] for home in provider["homepage"]] == [provider["id"]] == ["https://museum.example/tamm/"]
    for name, page in pages.items():
        labels = [words for row in page["metadata"] for words in row["label"]["en"]]
        assert "Number" in labels and not {"Title", "Rights", "Type"} & set(labels)  # properties of their own say these
        assert page["id"] == f"https://museum.example/tamm/iiif/{name}" and page["type"] == "Manifest"
        assert page["rights"].startswith("http://rightsstatements.org/vocab/")
        assert all(isinstance(words, list) for words in page["label"].values())
        for canvas in page["items"]:
            assert canvas["type"] == "Canvas" and "#" not in canvas["id"] and canvas["width"] > 0 < canvas["height"]
            (painting,) = canvas["items"][0]["items"]
            assert (painting["motivation"], painting["target"]) == ("painting", canvas["id"])
            body = painting["body"].get("source", painting["body"])
            assert body["type"] == "Image"
            assert (data / body["id"].removeprefix("https://museum.example/tamm/")).is_file()


def test_markers_are_annotations_of_the_canvas(small_family: Path, tmp_path: Path) -> None:
    """Web Annotation Data Model, 4.2.1; Media Fragments URI 1.0, 4.2.2: xywh in pixels."""
    home = tmp_path / "home"
    shutil.copytree(small_family, home)
    with open_collection(home, on_day=ON) as collection:
        item = find_item(collection, "TRA-0002")
        before = record_of(collection, item.id)
        scan = before.scans[0]
        act = collection.act("a marker")
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", scan.id)
        act.state(marker, "area", "0.25 0.25 0.5 0.5")
        Teller(collection).add(act, marker, "person", "Kristjan Tamm", Telling(audience="anyone"))
        act.done()
        transfer(collection, tmp_path / "t", order=TransferOrder(archive=MUSEUM))
    page = json.loads((tmp_path / "t" / "open" / "data" / "iiif" / "TRA-0002.json").read_text("utf-8"))
    (told,) = page["items"][0]["annotations"][0]["items"]
    assert told["motivation"] == "identifying" and told["body"]["value"] == "Kristjan Tamm"
    x, y, width, height = map(int, told["target"]["selector"]["value"].removeprefix("xywh=").split(","))
    assert told["target"]["source"] == page["items"][0]["id"]
    assert (x, y) == (round(scan.width / 4), round(scan.height / 4)) and width >= 1 <= height


NEEDS = [
    ("iiif", "", "", "", "base_url"),
    ("oai-static", "https://a.example", "", "a@a.example", "gateway"),
    ("oai-static", "https://a.example", "https://g.example", "", "email"),
]


@every_row(("what", "base_url", "gateway", "email", "lacks"), NEEDS)
def test_what_needs_an_address_says_so(
    what: str, base_url: str, gateway: str, email: str, lacks: str, small_family: Path, tmp_path: Path
) -> None:
    archive = Archive(takes=("dublin-core", what), base_url=base_url, gateway=gateway, email=email)
    with (
        open_collection(small_family, write=False, on_day=ON) as collection,
        pytest.raises(WrongUse, match=f"{what} needs {lacks}, which the archive has not said"),
    ):
        transfer(collection, tmp_path / what, order=TransferOrder(archive=archive))


FAULTS = [
    ('base_url = "museum.example"', "It must begin with https://"), ('email = "archive"', "Write it like archive@"),
    ('language = "English please"', "English please"),
]  # fmt: skip


@every_row(("line", "words"), FAULTS)
def test_an_archives_address_is_looked_at(line: str, words: str, tmp_path: Path) -> None:
    path = tmp_path / "archive.toml"
    path.write_text(line, "utf-8")
    with pytest.raises(WrongUse, match=words):
        read_archive(path)


CODES = [
    ("NZ-PCM", "NZ", ""), ("EE-TLA/1", "", ""), ("OCLC-NPM", "NZ", ""), ("", "NZ", ""),
    ("xx", "NZ", "is no ISIL"), ("NZ-", "NZ", "is no ISIL"), ("NZ-PCM Museum", "NZ", "is no ISIL"),
    ("EE-PCM", "NZ", "is one of another country than NZ"),
]  # fmt: skip
"""ISO 15511, 3 and 4 (from memory): codes of agencies, the country that stands beside, and what is said."""


@every_row(("agency", "country", "said"), CODES)
def test_a_code_that_is_no_isil_is_asked_about(agency: str, country: str, said: str) -> None:
    found = [finding.message for finding in doubtful_codes(Archive(agency=agency, country=country))]
    assert len(found) == bool(said) and all(said in message for message in found)


def test_addresses_in_mets_lead_into_the_bags_that_hold_the_files(small_family: Path, tmp_path: Path) -> None:
    """METS, FLocat: an address is to be resolved; of a package in several parts METS says nothing (from memory)."""
    home = tmp_path / "home"
    shutil.copytree(small_family, home)
    with open_collection(home, on_day=ON) as collection:
        archive = Archive(takes=("dublin-core", "scans", "mets"))
        transfer(collection, tmp_path / "t", order=TransferOrder(archive=archive, split=200_000))
    bags = sorted((tmp_path / "t").glob("closed-*"))
    assert len(bags) > 1
    (described,) = [path for bag in bags if (path := bag / "data" / "metadata" / "mets.xml").is_file()]
    root = etree.parse(described).getroot()
    files = root.xpath("//m:file", namespaces=NAMES)
    assert len(files) == 6
    for file in files:
        scan = described.parent / file[0].get("{http://www.w3.org/1999/xlink}href")
        assert file.get("CHECKSUM") == hashlib.sha256(scan.read_bytes()).hexdigest()
