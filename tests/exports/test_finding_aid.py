"""The finding aid against the published EAD3 (ead3.rng, ead3.xsd) and the date patterns of its schematron."""

import io
import re
from datetime import date

import pytest
from hypothesis import given
from lxml import etree
from tests.drawn import drawn
from tests.exports import published
from tests.exports.strategies import EDTF_FORMS, RECORDS, told  # noqa: F401  # strategies of one place

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import Record
from boxlore.core.statements import ReadingValue
from boxlore.disk.shipped import shipped
from boxlore.exports.ead_dialects import EAD3, EAD2002, Dialect
from boxlore.exports.finding_aid import FindingAid

FACTS = CollectionFacts(id="01a214af-f06c-7bb4-925d-b49412c6fff7", title="Tamm & Rourke", on_day=date(2026, 11, 25))
SCH = "{http://purl.oclc.org/dsdl/schematron}"
E3 = "{http://ead3.archivists.org/schema/}"


def schema(dialect: Dialect) -> bytes:
    return (shipped("schemas") / f"finding-aid.{dialect.name}.rng").read_bytes()


def written(records: list[Record], facts: CollectionFacts = FACTS, dialect: Dialect = EAD3):  # type: ignore[no-untyped-def]
    holding = Extent()
    for one in records:
        holding.add(one)
    aid = FindingAid(facts, holding, dialect, schema(dialect))
    out = io.BytesIO()
    aid.write(records, out)
    return aid.findings, etree.fromstring(out.getvalue(), etree.XMLParser(huge_tree=True))


def patterns() -> re.Pattern[str]:
    """The schematron's isoPattern (dates of datesingle, fromdate, todate)."""
    lets = {
        one.get("name"): one.get("value")
        for one in etree.parse(published.folder() / "ead3" / "ead3.sch").iter(SCH + "let")
    }
    pieces = re.findall(r"\$(\w+)|'([^']*)'", lets["isoPattern"])
    return re.compile("".join(lets[name].strip("'") if name else words for name, words in pieces))


@drawn(20)
@given(RECORDS)
def test_odd_records_are_valid_by_the_published_schema_and_ours(record: Record) -> None:
    findings, root = written([record])
    assert not findings or "cannot be written" in findings[0].message
    check = published.rng("ead3/ead3.rng")
    if not findings:
        assert check.validate(root), check.error_log
    findings, root = written([record], dialect=EAD2002)
    assert findings or etree.RelaxNG(etree.fromstring(schema(EAD2002))).validate(root)


@pytest.mark.parametrize("part", ["open", "closed"])
def test_the_demos_finding_aid_is_valid_by_the_published_schemas(demo, part: str) -> None:  # type: ignore[no-untyped-def]
    root = etree.parse(demo / "transfer" / part / "data" / "metadata" / "finding-aid.ead3.xml").getroot()
    for check in (published.rng("ead3/ead3.rng"), published.xsd("ead3/ead3.xsd")):
        assert check.validate(root), check.error_log
    iso = patterns()
    dates = [
        value
        for one in root.iter()
        for name, value in one.attrib.items()
        if name in ("standarddate", "notbefore", "notafter")
    ]
    assert len(dates) > 20
    assert all(iso.search(one) for one in dates)
    items = root.findall(f".//{E3}c[@level='item']")
    assert len(items) == 25
    for item in items:
        assert {one.get("localtype") for one in item.findall(f"{E3}did/{E3}container")} >= {"box", "item"}


def test_scans_only_say_where_the_originals_are_and_claim_no_shelf() -> None:
    """DACS 6.1: existence and location of originals."""
    record = Record(id="a", number="TRA-0001")
    facts = CollectionFacts(id="b", title="T", holder="Rourke family", originals=False, on_day=date(2026, 11, 25))
    findings, root = written([record], facts)
    assert not findings
    assert not root.findall(f".//{E3}container")
    assert "Rourke family" in root.find(f".//{E3}originalsloc/{E3}p").text


DACS_MINIMUM = [
    ("2.1", "archdesc/did/unitid"), ("2.2", "archdesc/did/repository/corpname/part"), ("2.3", "archdesc/did/unittitle"),
    ("2.4", "archdesc/did/unitdate"), ("2.5", "archdesc/did/physdescstructured/quantity"),
    ("3.1", "archdesc/scopecontent/p"),
    ("4.1", "archdesc/accessrestrict/p"), ("4.5", "archdesc/did/langmaterial/language"),
    ("8.2", "control/rightsdeclaration/citation"),
]  # fmt: skip


@pytest.mark.parametrize(("clause", "path"), DACS_MINIMUM)
def test_the_dacs_minimum_is_there(clause: str, path: str) -> None:
    """Describing Archives: A Content Standard, requirements of a single-level minimum."""
    _, root = written([Record(id="a", number="TRA-0001")])
    found = root.find("/".join(E3 + step for step in path.split("/")))
    assert found is not None and found.text


BAD = [
    ("a box as a level", 'level="item"', 'level="box"'),
    ("a type on a container", 'localtype="box"', 'type="box"'),
    ("a role on a name", 'relator="depicted"', 'role="depicted"'),
    ("a name without its part", "<part>Helmi</part>", "Helmi"),
    ("a scan of no type", 'daotype="derived" ', ""),
    ("EDTF among plain dates", 'standarddate="1912"', 'standarddate="1912~"'),
    ("no maintenance status", '<maintenancestatus value="new"/>', ""),
    ("an extent without coverage", 'physdescstructured coverage="whole" ', "physdescstructured "),
    ("coordinates of no system", ' coordinatesystem="WGS84"', ""),
    ("an empty title", "<unittitle>The wedding</unittitle>", "<unittitle> </unittitle>"),
]
"""Traps of EAD3: all but the date and the empty title are refused by the published schema too."""


def good() -> str:
    from boxlore.core.records.item_record import PersonShown, ScanFile, StatementView  # noqa: PLC0415
    from boxlore.core.records.marks import Mark  # noqa: PLC0415  # only here
    from boxlore.core.statements import KEEPER, Sure  # noqa: PLC0415

    def one(field: str, words: str, value: ReadingValue | None = None) -> StatementView:
        return StatementView(
            statement="s", field=field, words=words, language="en", source=KEEPER, said_by="", sure=Sure.SURE,
            audience="anyone", recorded_at="2026-11-25T00:00:00.000Z", value=value,
        )  # fmt: skip

    place = PlaceReading("Reval", "match", (Place(name="Tallinn", lat=59.4, lon=24.7),))
    scan = ScanFile(id="f", path="a.jpg", sha256="0", bytes=1, width=1, height=1, media_type="image/jpeg")
    record = Record(
        id="a",
        number="TRA-0001",
        mark=Mark((("box", "1"),), 2),
        scans=(scan,),
        people=(PersonShown(told=one("person", "Helmi"), name="Helmi"),),
        told={
            "title": (one("title", "The wedding"),),
            "date": (one("date", "1912", DateReading.from_edtf("1912")),),
            "place": (one("place", "Reval", place),),
        },
    )
    findings, root = written([record])
    assert not findings
    return etree.tostring(root, encoding="unicode")


@pytest.mark.parametrize(("trap", "right", "planted"), BAD, ids=[row[0] for row in BAD])
def test_planted_faults_are_caught_before_writing(trap: str, right: str, planted: str) -> None:
    check, text = etree.RelaxNG(etree.fromstring(schema(EAD3))), good()
    assert check.validate(etree.fromstring(text)), check.error_log
    assert right in text, text
    assert not check.validate(etree.fromstring(text.replace(right, planted)))


def test_every_form_of_edtf_keeps_out_of_plain_dates() -> None:
    iso = patterns()
    from boxlore.core.records.item_record import StatementView  # noqa: PLC0415
    from boxlore.core.statements import KEEPER, Sure  # noqa: PLC0415

    for edtf in EDTF_FORMS:
        date_told = StatementView(
            statement="s", field="date", words=edtf, language="", source=KEEPER, said_by="", sure=Sure.SURE,
            audience="anyone", recorded_at="", value=DateReading.from_edtf(edtf),
        )  # fmt: skip
        findings, root = written([Record(id="a", number="TRA-0001", told={"date": (date_told,)})])
        assert not findings, edtf
        for one in root.iter(f"{E3}datesingle"):
            for name in ("standarddate", "notbefore", "notafter"):
                assert one.get(name) is None or iso.search(one.get(name)), edtf
