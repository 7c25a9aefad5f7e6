"""Dublin Core against the published schemas (OAI-PMH oai_dc.xsd, DCMI qualifieddc.xsd), on odd records too."""

import csv
import io
import xml.etree.ElementTree as ET
from datetime import date

import pytest
from hypothesis import given
from lxml import etree
from tests.drawn import drawn
from tests.exports import published
from tests.exports.strategies import RECORDS

from boxlore.core.crosswalk import dublin_core
from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import KEEPER, Sure
from boxlore.disk.shipped import shipped
from boxlore.exports.dublin_core import DCTERMS, FULL, SIMPLE, record_text, write_records
from boxlore.exports.required_fields import read_required

FACTS = CollectionFacts(id="01a214af-f06c-7bb4-925d-b49412c6fff7", title="Tamm & Rourke", on_day=date(2026, 11, 25))
NS = {"dc": "http://purl.org/dc/elements/1.1/"}


def schema(name: str) -> bytes:
    return (shipped("schemas") / name).read_bytes()


def written(record: Record, name: str, flavour) -> tuple[list, etree._Element]:  # type: ignore[no-untyped-def,type-arg]
    out = io.BytesIO()
    findings = write_records([record], FACTS, out, schema(name), flavour)
    return findings, etree.fromstring(out.getvalue(), etree.XMLParser(huge_tree=True))


@drawn(30)
@given(RECORDS)
def test_odd_records_are_valid_by_the_published_schemas(record: Record) -> None:
    """Every record is written and valid, or named with what is missing; nothing goes out that the XSDs refuse."""
    findings, root = written(record, "oai_dc.rng", SIMPLE)
    assert len(root) + len(findings) == 1
    for one in root:
        assert published.xsd("oai/oai_dc.xsd").validate(one), published.xsd("oai/oai_dc.xsd").error_log
    findings, root = written(record, "dcterms.rng", FULL)
    assert len(root) + len(findings) == 1
    for one in root:
        container = etree.Element("qualifieddc", nsmap={"dcterms": DCTERMS})
        container.extend(list(one))
        check = published.xsd("qdc/qualifieddc.xsd")
        assert check.validate(container), check.error_log


@pytest.mark.parametrize(("language", "tag"), [("et", "et"), ("en_NZ", "en-NZ"), ("no tag at all", None), ("", None)])
def test_a_language_that_is_no_tag_is_left_out(language: str, tag: str | None) -> None:
    """xml:lang holds a tag of BCP 47 (XML 1.0, 2.12); an older collection may hold words that are none."""
    view = StatementView(
        statement="s", field="title", words="Sadam", language=language, source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="2026-11-25T10:15:30.250Z",
    )  # fmt: skip
    record = Record(id="01a214af-f06c-7bb4-925d-b49412c6fff8", number="TRA-0001", told={"title": (view,)})
    findings, root = written(record, "dcterms.rng", FULL)
    assert findings == []
    (title,) = root.iter(f"{{{DCTERMS}}}title")
    assert (title.text, title.get("{http://www.w3.org/XML/1998/namespace}lang")) == ("Sadam", tag)


PLANTED = [
    ("no title", "<dcterms:title>x</dcterms:title>", "", "Did not expect element created"),
    ("an empty title", "<dcterms:title>x</dcterms:title>", "<dcterms:title> </dcterms:title>", "title"),
    ("no identifier", "<dcterms:identifier>1</dcterms:identifier>", "", "Did not expect element source"),
    ("EDTF typed as W3CDTF", "<dcterms:created>", '<dcterms:created xsi:type="dcterms:W3CDTF">~', "created"),
    (
        "a language beside a type",
        'type xsi:type="dcterms:DCMIType"',
        'type xml:lang="en" xsi:type="dcterms:DCMIType"',
        "lang",
    ),
    ("a language with an underscore", "<dcterms:title>", '<dcterms:title xml:lang="en_US">', "lang"),
    ("a type with its prefix", ">StillImage<", ">dcmitype:StillImage<", "type"),
    ("rubbish for a point", "north=", "up=", "spatial"),
    ("rubbish for a URI", ">http://rightsstatements.org/vocab/CNE/1.0/<", ">not a uri<", "rights"),
]
"""Trap, words of a good record, what is planted, what the fault names (traps of the published schemas: an XSD alone
lets empty records, empty elements and rubbish in Point and URI pass)."""

GOOD = f"""<record xmlns="tag:boxlore.example,2026:records:1" xmlns:dcterms="{DCTERMS}"
 xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dcterms:title>x</dcterms:title><dcterms:created>1912~</dcterms:created>
<dcterms:type xsi:type="dcterms:DCMIType">StillImage</dcterms:type><dcterms:identifier>1</dcterms:identifier>
<dcterms:source>s</dcterms:source><dcterms:isPartOf>c</dcterms:isPartOf>
<dcterms:spatial xsi:type="dcterms:Point">east=24.75; north=59.44; name=Tallinn</dcterms:spatial>
<dcterms:rights xsi:type="dcterms:URI">http://rightsstatements.org/vocab/CNE/1.0/</dcterms:rights></record>"""


@pytest.mark.parametrize(("trap", "good", "planted", "named"), PLANTED, ids=[row[0] for row in PLANTED])
def test_planted_faults_are_caught_before_writing(trap: str, good: str, planted: str, named: str) -> None:
    check = etree.RelaxNG(etree.fromstring(schema("dcterms.rng")))
    assert check.validate(etree.fromstring(GOOD)), check.error_log
    assert good in GOOD
    assert not check.validate(etree.fromstring(GOOD.replace(good, planted)))
    assert named in str(check.error_log)


URIS = [
    ("http://rightsstatements.org/vocab/InC/1.0/", True),
    ("https://creativecommons.org/publicdomain/mark/1.0/?lang=et#a%20b", True),
    ("http://rightsstatements.org/vocab/XXX/1.0/ \"Q\"", False),
    ("https://example.org/100%", False),
    ("http://", False),
    ("http://example.org/ <b>", False),
    ("http://example.org/see also", False),
]  # fmt: skip


@pytest.mark.parametrize(("words", "is_uri"), URIS)
def test_rights_that_are_more_than_an_address_are_words(words: str, is_uri: bool) -> None:
    """What a published validator takes for xs:anyURI decides (libxml2): a record with these rights is always valid."""
    facts = CollectionFacts(id="y", title="Reval", rights=words, on_day=date(2026, 11, 25))
    text = record_text(FULL.elements(Record(id="x", number="TRA-0001", kind="print"), facts), FULL)
    assert ('xsi:type="dcterms:URI">http' in text) is is_uri
    out = io.BytesIO()
    assert (
        write_records([Record(id="x", number="TRA-0001", kind="print")], facts, out, schema("dcterms.rng"), FULL) == []
    )


def test_a_record_that_cannot_be_valid_is_named_with_what_is_missing() -> None:
    table = read_required(schema("required.csv").decode())
    nameless = Record(id="x", number="TRA-0001", kind="")
    facts = CollectionFacts(id="y", title="", rights=" ", on_day=date(2026, 11, 25))
    out = io.BytesIO()
    findings = write_records([nameless], facts, out, schema("oai_dc.rng"), SIMPLE, table)
    assert findings[0].message == (
        "TRA-0001 cannot be written as a valid record: "
        "it lacks title (our own promise) and rights (rightsstatements.org)."
    )
    assert b"TRA-0001" not in out.getvalue()


def test_simple_records_read_by_another_library_give_the_same_values(demo) -> None:  # type: ignore[no-untyped-def]
    """xml.etree and csv of the standard library read both files; each row's title and number must agree."""
    home = demo / "transfer" / "closed" / "data" / "metadata"
    root = ET.parse(home / "oai_dc.xml").getroot()
    simple = {one.find("dc:identifier", NS).text: one.find("dc:title", NS).text for one in root}
    with open(home / "inventory.csv", encoding="utf-8-sig", newline="") as file:
        rows = [row for row in csv.DictReader(file) if row["Level of description"] == "item"]
    assert {row["Reference code"]: row["Title"] for row in rows} == simple
    assert sum("/" not in identifier for identifier in simple) == 37 and len(simple) > 37  # recordings too


def test_every_element_of_the_rows_is_a_published_one() -> None:
    """DCMI Metadata Terms and the fifteen elements, as the published schemas list them."""
    simple = (published.folder() / "oai" / "simpledc20021212.xsd").read_text()
    full = (published.folder() / "qdc" / "dcterms.xsd").read_text()
    for row in dublin_core.ROWS:
        assert not row.oai_dc or f'name="{row.oai_dc}"' in simple
        assert not row.dcterms or f'name="{row.dcterms}"' in full
