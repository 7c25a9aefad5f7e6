"""Captioned copies from a collection: every field of the map read back by others, and what happens to odd files.

Readers that are not ours: pyexiv2 and exiv2 (Exiv2), the XMP Toolkit (python-xmp-toolkit), Pillow. The map is the
IPTC Photo Metadata Standard 2025.1 with IIM 4.2, MWG Guidelines 2.0 and the Family History Metadata Working Group.
"""

import errno
import io
import json
import os
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date
from pathlib import Path

import exiv2
import pyexiv2
import pytest
from PIL import Image, ImageCms
from tests.made_once import CopyOf

from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import ScanFile
from boxlore.core.statements import Kind, Said, Source, Subject, Sure
from boxlore.disk import writing
from boxlore.disk.digests import sha256_of
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import Selection, record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.outputs.copies import Copied, copies
from boxlore.tasks.outputs.copies_contents import read_contents
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.statements import Teller, Telling

ON = date(2026, 11, 25)
SETTINGS = Settings(title="Tamm and Rourke photographs", prefix="TR", holder="Mia Rourke, Port Chalmers")
PROFILE = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
IPTC_EXT = "http://iptc.org/std/Iptc4xmpExt/2008-02-29/"


def exif(orientation: int = 1) -> bytes:
    made = Image.Exif()
    made[0x010E], made[0x013B], made[0x8298], made[0x0112] = "SCAN0001", "scanner", "none", orientation
    made.get_ifd(0x8769)[0x9003] = "2026:03:01 12:00:00"
    made.get_ifd(0x8825)[1], made.get_ifd(0x8825)[2] = "S", (45.0, 52.0, 28.0)
    return made.tobytes()


def scan(path: Path, kind: str = "JPEG", shade: int = 90, **more: object) -> Path:
    image = Image.radial_gradient("L").resize((120, 80)).convert("RGB")
    image.putpixel((0, 0), (shade, 0, 0))
    image.save(path, kind, **more)
    return path


Home = tuple[Path, Path]


def make_home(top: Path) -> Home:
    folder = top / "family"
    start(folder, SETTINGS, on_day=ON)
    front = scan(top / "nets_f.jpg", exif=exif(), icc_profile=PROFILE, dpi=(300, 300))
    back = scan(top / "nets_b.jpg", shade=10)
    take(folder, Planned(key="nets", sides=(ScanSide(front), ScanSide(back, "verso")), box="1", folder="2"))
    return folder, top / "copies"


@pytest.fixture
def home(copy_of: CopyOf) -> Home:
    """A collection with one print, front and back, in box 1, folder 2, and a folder for its copies."""
    return copy_of(make_home)


def take(folder: Path, *plan: Planned, copy: bool = True) -> None:
    with open_collection(folder, on_day=ON) as collection:
        taken = take_in(collection, plan, IntakeOptions(copy=copy))
        assert {one.state for one in taken} == {"taken"}, taken


@contextmanager
def telling(folder: Path) -> Iterator[tuple[Collection, Teller, Subject]]:
    with open_collection(folder, on_day=ON) as collection:
        yield collection, Teller(collection), find_item(collection, "TRA-0001")


def tell(folder: Path, name: str, words: str, **how: object) -> None:
    with telling(folder) as (_, teller, item):
        teller.tell(item, name, words, Telling(**how))  # type: ignore[arg-type]  # as the test spells them


def mark(folder: Path, words: str, area: list[float]) -> None:
    """A marker on the front with who it is."""
    with telling(folder) as (collection, teller, item):
        front = next(one for one in record_of(collection, item.id).scans if one.side == "recto")
        act = collection.act("a marker")
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", front.id)
        act.state(marker, "area", " ".join(map(str, area)))
        teller.add(act, marker, "person", words, Telling())
        act.done()


def make(home: Home, **more: object) -> list[Copied]:
    with open_collection(home[0], write=False, on_day=ON) as collection:
        return list(copies(collection, home[1], **more))  # type: ignore[arg-type]  # as the test spells them


def states(made: list[Copied]) -> list[str]:
    return [one.state for one in made]


FRONT = "box-1/folder-2/TRA-0001_f.jpg"


def tell_everything(folder: Path) -> None:
    with telling(folder) as (collection, _, _):
        act = collection.act("a narrator")
        leida = act.new(Kind.PERSON)
        act.state(leida, "name", "Leida Rourke")
        act.done()
    mark(folder, "Anna Tamm", [0.1, 0.2, 0.3, 0.4])
    mark(folder, "Helmi Tamm", [0.7, 0.5])
    for name, words, how in (
        ("title", "Võrgud kuivavad", {"language": "et"}),
        ("person", "Jaan Tamm", {"sure": Sure.GUESS}),
        ("named", "Leida Rourke", {}),
        ("photographer", "Karl Akel", {}),
        ("date", "14 June 1912", {}),
        ("place", "Haapsalu", {}),
        ("occasion", "Midsummer", {}),
        ("story", "The nets “dried” on poles.", {"source": Source(Said.NARRATOR, leida.id)}),
        ("keyword", "nets", {}),
        ("rights", "© Mia Rourke. https://rightsstatements.org/vocab/InC/1.0/", {}),
        ("care", "Ask the family before it is shown.", {}),
        ("process", "gelatin silver print", {}),
        ("inscription", "Haapsalu 1912", {"source": Source(Said.INSCRIPTION, "verso")}),
    ):
        tell(folder, name, words, **how)


XMP = {
    "Xmp.dc.title": {'lang="x-default"': "Võrgud kuivavad", 'lang="et"': "Võrgud kuivavad"},
    "Xmp.dc.subject": ["nets", "Anna Tamm", "Helmi Tamm", "Jaan Tamm"],
    "Xmp.dc.creator": ["Karl Akel"],
    "Xmp.dc.identifier": "TRA-0001",
    "Xmp.dc.source": "Mia Rourke, Port Chalmers; Tamm and Rourke photographs; TRA-0001; Box 1 / Folder 2 / Item 1",
    "Xmp.dcterms.created": "1912-06-14",
    "Xmp.photoshop.DateCreated": "1912-06-14",
    "Xmp.photoshop.City": "Haapsalu",
    "Xmp.photoshop.Country": "Estonia",
    "Xmp.photoshop.Credit": "Mia Rourke, Port Chalmers",
    "Xmp.photoshop.Source": "Tamm and Rourke photographs",
    "Xmp.photoshop.Instructions": "Ask the family before it is shown.",
    "Xmp.photoshop.CaptionWriter": "Leida Rourke",
    "Xmp.iptc.Location": "Haapsalu",
    "Xmp.iptc.CountryCode": "EE",
    "Xmp.iptcExt.PersonInImage": ["Anna Tamm", "Helmi Tamm", "perhaps Jaan Tamm"],
    "Xmp.iptcExt.DigitalSourceType": "http://cv.iptc.org/newscodes/digitalsourcetype/print",
    "Xmp.iptcExt.LocationShown[1]/Iptc4xmpExt:City": "Haapsalu",
    "Xmp.iptcExt.LocationShown[1]/Iptc4xmpExt:CountryCode": "EE",
    "Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOSourceInvNo": "TRA-0001; Box 1 / Folder 2 / Item 1",
    "Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOSource": "Mia Rourke, Port Chalmers",
    "Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOCircaDateCreated": "1912-06-14",
    "Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:rbShape": "rectangle",
    "Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:rbUnit": "relative",
    "Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:rbX": "0.10000",
    "Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:rbH": "0.40000",
    "Xmp.iptcExt.ImageRegion[2]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:rbShape": "circle",
    "Xmp.iptcExt.ImageRegion[3]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:rbW": "1",
    "Xmp.mwg-rs.Regions/mwg-rs:AppliedToDimensions/stDim:w": "120",
    "Xmp.mwg-rs.Regions/mwg-rs:RegionList[1]/mwg-rs:Name": "Anna Tamm",
    "Xmp.mwg-rs.Regions/mwg-rs:RegionList[1]/mwg-rs:Type": "Face",
    "Xmp.mwg-rs.Regions/mwg-rs:RegionList[1]/mwg-rs:Area/stArea:x": "0.25000",
    "Xmp.mwg-rs.Regions/mwg-rs:RegionList[1]/mwg-rs:Area/stArea:unit": "normalized",
    "Xmp.mwg-coll.Collections[1]/mwg-coll:CollectionName": "Tamm and Rourke photographs",
    "Xmp.xmpRights.WebStatement": "https://rightsstatements.org/vocab/InC/1.0/",
    "Xmp.xmpRights.Marked": "True",
    "Xmp.xmp.CreatorTool": "Boxlore",
}

IPTC = {
    "Iptc.Application2.ObjectName": "Võrgud kuivavad",
    "Iptc.Application2.Keywords": ["nets", "Anna Tamm", "Helmi Tamm", "Jaan Tamm"],
    "Iptc.Application2.DateCreated": "1912-06-14",
    "Iptc.Application2.Byline": ["Karl Akel"],
    "Iptc.Application2.City": "Haapsalu",
    "Iptc.Application2.SubLocation": "Haapsalu",
    "Iptc.Application2.CountryCode": "EST",
    "Iptc.Application2.CountryName": "Estonia",
    "Iptc.Application2.Credit": "Mia Rourke, Port Chalmers",
    "Iptc.Application2.Source": "Tamm and Rourke photographs",
    "Iptc.Application2.Writer": ["Leida Rourke"],
    "Iptc.Application2.SpecialInstructions": "Ask the family before it is shown.",
}

ALTERNATIVES = {
    "Xmp.iptc.AltTextAccessibility": ("alt", "Anna Tamm, Helmi Tamm and Jaan Tamm (perhaps)"),
    "Xmp.dc.description": ("caption", "The nets “dried” on poles."),
    "Xmp.dc.rights": ("rights", "© Mia Rourke."),
    "Xmp.xmpRights.UsageTerms": ("terms", "© Mia Rourke."),
    "Xmp.iptcExt.Event": ("event", "Midsummer"),
    "Xmp.iptcExt.LocationShown[1]/Iptc4xmpExt:LocationName": ("place", "Haapsalu"),
    "Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:PersonInImageWDetails[1]/Iptc4xmpExt:PersonName": ("person", "Anna Tamm"),
    "Xmp.iptcExt.ImageRegion[4]/Iptc4xmpExt:rRole[1]/Iptc4xmpExt:Name": ("role", "named, not shown"),
    "Xmp.iptcExt.ImageRegion[5]/Iptc4xmpExt:rRole[1]/Iptc4xmpExt:Name": ("role", "photographer"),
    "Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOTitle": ("object", "Võrgud kuivavad"),
    "Xmp.iptcExt.ArtworkOrObject[1]/Iptc4xmpExt:AOPhysicalDescription": ("object", "gelatin silver print"),
}


def make_told(top: Path) -> Path:
    home = make_home(top)
    tell_everything(home[0])
    assert states(make(home)) == ["written", "written"]
    return home[1] / FRONT


@pytest.fixture
def told(home: Home, copy_of: CopyOf) -> Path:
    """The copy of a print of which everything is told, in the folders of `home`."""
    shutil.rmtree(home[0])
    return copy_of(make_told)


def test_every_field_reads_back_by_pyexiv2(told: Path) -> None:
    with pyexiv2.Image(str(told)) as image:
        xmp, iptc, text = image.read_xmp(), image.read_iptc(), image.read_exif()
    assert {name: xmp.get(name) for name in XMP} == XMP
    assert {name: iptc.get(name) for name in IPTC} == IPTC
    for name, (_, words) in ALTERNATIVES.items():
        assert words in xmp[name]['lang="x-default"'], name
    assert xmp["Xmp.dc.description"]['lang="x-default"'] == iptc["Iptc.Application2.Caption"]
    assert text["Exif.Image.ImageDescription"] == iptc["Iptc.Application2.Caption"]
    assert text["Exif.Image.Artist"] == "Karl Akel"
    assert text["Exif.Image.Copyright"].startswith("© Mia Rourke.")
    assert "Exif.GPSInfo.GPSLatitude" not in text
    assert "Exif.Photo.DateTimeOriginal" not in text
    assert text["Exif.Photo.DateTimeDigitized"] == "2026:03:01 12:00:00"


def test_every_field_reads_back_by_exiv2(told: Path) -> None:
    image = exiv2.ImageFactory.open(str(told))
    image.readMetadata()
    found = {datum.key(): datum.toString() for datum in image.xmpData()}
    for name, value in XMP.items():
        words = value if isinstance(value, str) else ", ".join(value) if isinstance(value, list) else None
        assert words is None or found[name] == words, name
    iptc: dict[str, list[str]] = {}
    for datum in image.iptcData():
        iptc.setdefault(datum.key(), []).append(datum.toString())
    assert {name: iptc[name] for name in IPTC} == {
        name: value if isinstance(value, list) else [value] for name, value in IPTC.items()
    }


def test_every_field_reads_back_by_the_xmp_toolkit(told: Path) -> None:
    try:
        from libxmp import XMPFiles  # noqa: PLC0415  # its import fails where the Debian library is missing
    except Exception as missing:  # noqa: BLE001  # it raises its own error, not ImportError
        pytest.skip(f"libexempi is not there: {missing}")
    file = XMPFiles(file_path=str(told))
    read = file.get_xmp()
    uris = {
        "dc": "http://purl.org/dc/elements/1.1/",
        "dcterms": "http://purl.org/dc/terms/",
        "photoshop": "http://ns.adobe.com/photoshop/1.0/",
        "iptc": "http://iptc.org/std/Iptc4xmpCore/1.0/xmlns/",
        "iptcExt": IPTC_EXT,
        "mwg-rs": "http://www.metadataworkinggroup.com/schemas/regions/",
        "mwg-coll": "http://www.metadataworkinggroup.com/schemas/collections/",
        "xmpRights": "http://ns.adobe.com/xap/1.0/rights/",
        "xmp": "http://ns.adobe.com/xap/1.0/",
    }
    for name, value in XMP.items():
        _, prefix, path = name.split(".", 2)
        if isinstance(value, str):
            assert read.get_property(uris[prefix], path) == value, name
        elif isinstance(value, list):
            assert [read.get_array_item(uris[prefix], path, at + 1) for at in range(len(value))] == value
    assert read.get_localized_text(uris["dc"], "title", None, "et") == "Võrgud kuivavad"
    file.close_file()


def test_every_field_reads_back_by_pillow(told: Path) -> None:
    with Image.open(told) as image:
        found = image.getxmp()["xmpmeta"]["RDF"]["Description"]
        assert found["DateCreated"] == "1912-06-14"
        assert found["identifier"] == "TRA-0001"
        assert [one["rId"].startswith("boxlore-") for one in found["ImageRegion"]["Bag"]["li"]] == [True] * 5
        assert image.info["icc_profile"] == PROFILE


def test_the_back_says_that_it_is_the_back_and_shows_nobody(told: Path) -> None:
    with pyexiv2.Image(str(told.with_name("TRA-0001_b.jpg"))) as image:
        xmp, iptc = image.read_xmp(), image.read_iptc()
    assert xmp["Xmp.dc.description"]['lang="x-default"'] == "The back. Written on it: “Haapsalu 1912”."
    assert iptc["Iptc.Application2.Caption"] == xmp["Xmp.dc.description"]['lang="x-default"']
    assert not any("ImageRegion" in name or "PersonInImage" in name or "Regions" in name for name in xmp)


def test_what_the_scan_says_and_the_record_does_not_stays_but_for_its_day_and_place(home: Home) -> None:
    path = home[0] / "scans" / "TRA-0001_f.jpg"
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp(
            {
                "Xmp.dc.creator": ["A scanner's owner"],
                "Xmp.photoshop.DateCreated": "2026-03-01",
                "Xmp.photoshop.City": "Dunedin",
                "Xmp.exif.GPSLatitude": "45,52.47S",
                "Xmp.xmp.Label": "theirs",
            }
        )
        image.modify_iptc({"Iptc.Application2.DateCreated": "2026-03-01", "Iptc.Application2.Writer": "Somebody"})
    with open_collection(home[0], on_day=ON) as collection:
        fake_scan_size(collection, path)
    assert states(make(home)) == ["written", "written"]
    with pyexiv2.Image(str(home[1] / FRONT)) as image:
        xmp, iptc = image.read_xmp(), image.read_iptc()
    assert (xmp["Xmp.dc.creator"], xmp["Xmp.xmp.Label"]) == (["A scanner's owner"], "theirs")
    assert iptc["Iptc.Application2.Writer"] == ["Somebody"]
    assert not {"Xmp.photoshop.DateCreated", "Xmp.photoshop.City", "Xmp.exif.GPSLatitude"} & set(xmp)
    assert "Iptc.Application2.DateCreated" not in iptc


def fake_scan_size(collection: Collection, path: Path) -> None:
    """The scan is registered anew, as if these had been its bytes at intake."""
    item = find_item(collection, "TRA-0001")
    front = next(one for one in record_of(collection, item.id).scans if one.side == "recto")
    statement = next(one for one, _ in collection.store.statements(Subject(Kind.SCAN, front.id)) if one.field == "file")
    facts = json.loads(statement.words) | {"bytes": path.stat().st_size, "sha256": sha256_of(path)}
    act = collection.act("registered anew")
    act.state(Subject(Kind.SCAN, front.id), "file", json.dumps(facts), replaces=statement.id)
    act.done()


def test_a_second_run_changes_nothing_and_the_page_lists_each_copy(told: Path, home: Home) -> None:
    before = {path: path.read_bytes() for path in home[1].rglob("*") if path.is_file()}
    assert states(make(home)) == ["same", "same"]
    assert {path: path.read_bytes() for path in home[1].rglob("*") if path.is_file()} == before
    lines = read_contents(home[1])
    assert [(one.number, one.mark, one.copy, one.made_for) for one in lines] == [
        ("TRA-0001", "1/2/1", FRONT.replace("_f", "_b"), "family"),
        ("TRA-0001", "1/2/1", FRONT, "family"),
    ]
    with open_collection(home[0], write=False) as collection:
        scans = {facts.path: facts.sha256 for _, facts in collection.store.scans()}
    assert {one.scan: one.sha256_of_scan for one in lines} == scans


def test_the_page_has_what_the_archive_calls_an_item_once_it_has_said_so(home: Home) -> None:
    """A rule of our own: whoever has the copies alone finds the item at the archive."""
    make(home)
    assert {one.reference for one in read_contents(home[1])} == {""}
    tell(home[0], "archive_reference", "P-991")
    tell(home[0], "archive_reference", "MS 12/4")
    make(home)
    assert {one.reference for one in read_contents(home[1])} == {"P-991; MS 12/4"}


def test_the_newest_statement_is_the_metadata_date(told: Path, home: Home) -> None:
    with open_collection(home[0], write=False) as collection:
        record = record_of(collection, find_item(collection, "TRA-0001").id)
    with pyexiv2.Image(str(told)) as image:
        assert image.read_xmp()["Xmp.xmp.MetadataDate"] == record.changed_at


def test_only_what_changed_is_written_and_a_title_moves_no_name(told: Path, home: Home) -> None:
    scan(home[0].parent / "boat_f.jpg", shade=33)
    take(home[0], Planned(key="boat", sides=(ScanSide(home[0].parent / "boat_f.jpg"),), box="1", folder="2"))
    assert states(make(home)) == ["same", "same", "written"]
    tell(home[0], "title", "Nets drying")
    assert states(make(home)) == ["written", "written", "same"]
    assert len(list(home[1].rglob("*.jpg"))) == 3
    chosen = make(home, selection=Selection(items=("TRA-0002",)))
    assert states(chosen) == ["same"] and len(read_contents(home[1])) == 3


def edit_by_pyexiv2(path: Path) -> None:
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp({"Xmp.xmp.Rating": "3", "Xmp.dc.description": {'lang="fr"': "Filets"}})


def edit_by_exiv2(path: Path) -> None:
    image = exiv2.ImageFactory.open(str(path))
    image.readMetadata()
    data = image.xmpData()
    data["Xmp.xmp.Rating"] = "3"
    data["Xmp.dc.description"] = "lang=fr Filets"
    image.setXmpData(data)
    image.writeMetadata()


@pytest.mark.parametrize("edit", [edit_by_pyexiv2, edit_by_exiv2])
def test_what_another_program_put_into_a_copy_is_kept_from_run_to_run(
    edit: Callable[[Path], None], told: Path, home: Home
) -> None:
    edit(told)
    for title in ("", "Nets drying", ""):
        if title:
            tell(home[0], "title", title)
        front = next(one for one in make(home) if one.copy == FRONT)
        assert "what it added was kept" in front.why
        with pyexiv2.Image(str(told)) as image:
            found = image.read_xmp()
        assert found["Xmp.xmp.Rating"] == "3"
        assert found["Xmp.dc.description"]['lang="fr"'] == "Filets"
        assert "poles" in found["Xmp.dc.description"]['lang="x-default"']
        assert found["Xmp.dc.title"]['lang="x-default"'] == (title or found["Xmp.dc.title"]['lang="x-default"'])
    assert set(states(make(home))) == {"same"}, [one.copy for one in make(home)]


def test_a_copy_for_outside_that_was_changed_is_refused(home: Home) -> None:
    assert states(make(home, to=To.OUTSIDE)) == ["written", "written"]
    edit_by_pyexiv2(home[1] / FRONT)
    tell(home[0], "title", "Nets drying")
    front = next(one for one in make(home, to=To.OUTSIDE) if one.scan.endswith("_f.jpg"))
    assert front.state == "refused" and "may not be for outside" in front.why
    assert f"An earlier copy is still there: {FRONT}." in front.why


def test_a_folder_holds_copies_for_one_audience(told: Path, home: Home) -> None:
    with pytest.raises(WrongUse, match="holds copies for family"):
        make(home, to=To.OUTSIDE)


def test_a_file_that_is_not_ours_is_never_touched(home: Home) -> None:
    for other in (b"a letter", Image.new("RGB", (4, 4))):
        target = home[1] / FRONT
        target.parent.mkdir(parents=True, exist_ok=True)
        if isinstance(other, bytes):
            target.write_bytes(other)
        else:
            other.save(target)
        before = target.read_bytes()
        front = next(one for one in make(home) if one.scan.endswith("_f.jpg"))
        assert front.state == "refused" and "another file of that name" in front.why
        assert target.read_bytes() == before


def test_what_was_typed_into_the_contents_page_is_not_lost_unasked(home: Home) -> None:
    """A line at its end, a cell, a column of somebody's own (our own rule): Boxlore writes all lines anew."""
    make(home)
    page = home[1] / "contents.csv"
    written = page.read_bytes()
    for typed in (written + b"my,own,line\n", written.replace(b"1/2/1", b"my box", 1), b"seen," + written):
        page.write_bytes(typed)
        with pytest.raises(WrongUse, match=r"contents\.csv .* was changed since"):
            make(home)
        assert page.read_bytes() == typed
    make_over(home)
    assert page.read_bytes() == written


def make_over(home: Home, **options: object) -> list[Copied]:
    with open_collection(home[0], write=False, on_day=ON) as collection:
        collection.over = True
        return list(copies(collection, home[1], **options))  # type: ignore[arg-type]


@pytest.mark.parametrize("longest", [0, 100])
def test_a_file_in_the_way_is_replaced_only_where_that_is_asked(home: Home, longest: int) -> None:
    target = home[1] / (FRONT if not longest else FRONT.replace("_f.", "_f_100."))
    target.parent.mkdir(parents=True)
    target.write_bytes(b"a letter")
    assert "--over" in make(home, longest=longest)[0].why
    front = make_over(home, longest=longest)[0]
    assert (front.state, "took the place of another file" in front.why) == ("written", True)
    with Image.open(target) as picture:
        picture.load()
    assert [copied.state for copied in make(home, longest=longest)] == ["same", "same"]


def test_a_public_copy_that_another_program_changed_is_replaced_where_that_is_asked(home: Home) -> None:
    outside = (home[0], home[1].with_name("outside"))
    clean = [copied.line for copied in make(outside, to=To.OUTSIDE)]
    edit_by_pyexiv2(outside[1] / FRONT)
    assert make(outside, to=To.OUTSIDE)[0].state == "refused"
    assert [copied.line for copied in make_over(outside, to=To.OUTSIDE)] == clean


def test_a_long_label_is_cut_in_the_name_of_its_folder_and_stops_nothing(home: Home) -> None:
    """Names on most disks have at most 255 bytes (POSIX NAME_MAX, from memory); two long labels stay two folders."""
    long = "Pööning " + "õ" * 122
    pictures = [scan(home[0].parent / f"{at}.png", "PNG", shade=at) for at in (1, 2)]
    take(
        home[0],
        Planned(key="first", sides=(ScanSide(pictures[0]),), box=long + "1", folder=long),
        Planned(key="second", sides=(ScanSide(pictures[1]),), box=long + "2"),
    )
    made = make(home)
    assert [copied.state for copied in made] == ["written"] * 4
    assert all(len(part.encode()) < 100 for copied in made for part in Path(copied.copy).parts)
    assert len({Path(copied.copy).parts[0] for copied in made}) == 3
    assert ["too long for a disk" in copied.why for copied in made] == [False, False, True, True]


def test_an_error_at_one_item_stops_no_other(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    asked = Path.is_relative_to

    def failing(path: Path, *others: Path) -> bool:
        if (path / "TRA-0001_f.jpg").parent.name == "folder-2" and others:
            raise OSError(errno.EIO, "Input/output error")
        return asked(path, *others)

    monkeypatch.setattr(Path, "is_relative_to", failing)
    assert [copied.state for copied in make(home)] == ["refused", "refused"]


def test_a_folder_where_a_copy_should_be_is_said(home: Home) -> None:
    (home[1] / FRONT).mkdir(parents=True)
    front = next(one for one in make(home) if one.scan.endswith("_f.jpg"))
    assert front.state == "refused" and "A folder stands where a file is wanted" in front.why


def test_a_run_that_was_cut_short_goes_on_where_it_stopped(home: Home) -> None:
    with open_collection(home[0], write=False, on_day=ON) as collection:
        running = copies(collection, home[1])
        first = next(running)
        running.close()  # type: ignore[attr-defined]  # a generator
    assert [one.copy for one in read_contents(home[1])] == [first.copy]
    assert sorted(states(make(home))) == ["same", "same"]
    assert len(read_contents(home[1])) == 2


def test_copies_without_their_contents_page_are_taken_up_again(told: Path, home: Home) -> None:
    (home[1] / "contents.csv").unlink()
    assert states(make(home)) == ["same", "same"]
    (home[1] / "contents.csv").unlink()
    tell(home[0], "title", "Nets drying")
    assert states(make(home)) == ["written", "written"]


def test_stopping_leaves_what_is_done(home: Home) -> None:
    class Stopped:
        def begin(self, what: str, total: int) -> None: ...
        def step(self, done: int = 1) -> None: ...
        def stopped(self) -> bool:
            return True

    assert make(home, progress=Stopped()) == []
    assert not home[1].exists()


def test_after_a_move_the_copy_lies_at_the_new_place_alone(told: Path, home: Home) -> None:
    with telling(home[0]) as (collection, _, item):
        act = collection.act("moved")
        box = act.new(Kind.CONTAINER)
        act.state(box, "kind", "box")
        act.state(box, "label", "9")
        kept = next(one for one, _ in collection.store.statements(item) if one.field == "kept")
        act.state(item, "kept", f"{box.id} 4", replaces=kept.id)
        act.done()
    (home[1] / FRONT.replace("_f", "_b")).write_bytes(b"changed by hand")
    made = make(home)
    assert sorted(path.name for path in (home[1] / "box-9").iterdir()) == ["TRA-0001_b.jpg", "TRA-0001_f.jpg"]
    assert not told.exists()
    assert {one.scan[-6:]: one.why for one in made if "before" in one.why} == {
        "_f.jpg": next(one.why for one in made if one.copy.endswith("_f.jpg"))
    }
    assert "was changed and is left" in next(one.why for one in made if one.copy.endswith("_b.jpg"))


def fails(number: int) -> Callable[..., None]:
    def fail(*more: object) -> None:
        raise OSError(number, os.strerror(number))

    return fail


@pytest.mark.parametrize(("number", "said"), [(errno.ENOSPC, "The disk is full"), (errno.EROFS, "can only be read")])
def test_a_disk_that_takes_no_more_ends_the_run_with_a_sentence(
    number: int, said: str, home: Home, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(writing.os, "fsync", fails(number))
    with pytest.raises(CouldNot, match=said):
        make(home)
    monkeypatch.undo()
    assert [path for path in home[1].rglob("*") if path.is_file()] == []
    assert states(make(home)) == ["written", "written"]


def test_a_scan_that_went_or_grew_is_said_and_the_others_are_made(home: Home) -> None:
    (home[0] / "scans" / "TRA-0001_f.jpg").unlink()
    with open(home[0] / "scans" / "TRA-0001_b.jpg", "ab") as file:
        file.write(b"more")
    made = {one.scan[-6:]: one for one in make(home)}
    assert "There is no such file" in made["_f.jpg"].why
    assert "had" in made["_b.jpg"].why and "at its intake" in made["_b.jpg"].why
    assert {one.state for one in made.values()} == {"refused"}


@pytest.mark.parametrize("where", ["scans", "scans/inner", "."])
def test_copies_never_go_among_the_scans(where: str, home: Home) -> None:
    with pytest.raises(WrongUse, match="among the scans"):
        make((home[0], home[0] / where))


def test_nor_through_a_linked_folder_among_the_copies(home: Home) -> None:
    (home[1] / "box-1").mkdir(parents=True)
    (home[1] / "box-1" / "folder-2").symlink_to(home[0] / "scans", target_is_directory=True)
    before = sorted(path.name for path in (home[0] / "scans").iterdir())
    made = make(home)
    assert states(made) == ["refused", "refused"] and "does not write through links" in made[0].why
    assert sorted(path.name for path in (home[0] / "scans").iterdir()) == before


def test_nor_beside_scans_that_lie_elsewhere(home: Home, tmp_path: Path) -> None:
    there = tmp_path / "elsewhere"
    there.mkdir()
    take(home[0], Planned(key="boat", sides=(ScanSide(scan(there / "boat.jpg", shade=33)),)), copy=False)
    made = make((home[0], there))
    assert [one.state for one in made if one.number == "TRA-0002"] == ["refused"]
    assert sorted(path.name for path in there.iterdir() if path.is_file()) == ["boat.jpg", "contents.csv"]


def test_a_file_for_a_folder_is_said(home: Home) -> None:
    home[1].write_text("not a folder")
    with pytest.raises(WrongUse, match="is a file"):
        make(home)


def test_scans_are_never_opened_for_writing(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    before = {path: (path.read_bytes(), path.stat().st_mtime_ns) for path in (home[0] / "scans").iterdir()}
    for path in before:
        path.chmod(0o444)
    make(home)
    make((home[0], home[1].with_name("small")), longest=64)
    assert {path: (path.read_bytes(), path.stat().st_mtime_ns) for path in (home[0] / "scans").iterdir()} == before


def test_a_smaller_copy_says_so_keeps_the_profile_and_stands_upright(home: Home, tmp_path: Path) -> None:
    turned = scan(tmp_path / "turned_f.jpg", shade=7, exif=exif(6), icc_profile=PROFILE, dpi=(300, 300))
    with open_collection(home[0], on_day=ON) as collection:
        take_in(collection, [Planned(key="turned", sides=(ScanSide(turned),))], IntakeOptions(copy=True))
        item = find_item(collection, "TRA-0002")
        front = record_of(collection, item.id).scans[0]
        act = collection.act("a marker")
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", front.id)
        act.state(marker, "area", "0.1 0.2 0.3 0.4")
        Teller(collection).add(act, marker, "person", "Anna Tamm", Telling())
        act.done()
    made = make(home, longest=64)
    assert states(made) == ["written"] * 3
    path = home[1] / "TRA-0002_f_64.jpg"
    with Image.open(path) as image:
        assert image.size == (43, 64)
        assert image.info["icc_profile"] == PROFILE
        assert image.info["dpi"] == (160, 160)
    with pyexiv2.Image(str(path)) as image:
        found = image.read_xmp()
    assert "at most 64 pixels" in found["Xmp.xmpMM.History[1]/stEvt:parameters"]
    boundary = "Xmp.iptcExt.ImageRegion[1]/Iptc4xmpExt:RegionBoundary/Iptc4xmpExt:"
    assert [float(found[boundary + name]) for name in ("rbX", "rbY", "rbW", "rbH")] == [0.4, 0.1, 0.4, 0.3]
    assert found["Xmp.mwg-rs.Regions/mwg-rs:AppliedToDimensions/stDim:h"] == "64"
    assert states(make(home, longest=64)) == ["same"] * 3
    whole = next(one for one in make(home) if one.number == "TRA-0002")
    assert "stored turned (Exif 6)" in whole.why
    assert len(read_contents(home[1])) == 6


def test_a_part_cut_out_says_so_and_its_regions_lie_in_it(home: Home, tmp_path: Path) -> None:
    page = scan(tmp_path / "page.png", "PNG", shade=55)
    take(home[0], Planned(key="left", sides=(ScanSide(page, area=(0.0, 0.0, 0.5, 1.0)),)))
    made = [one for one in make(home) if one.number == "TRA-0002"]
    assert states(made) == ["cut"]
    with Image.open(home[1] / made[0].copy) as image:
        assert image.size == (60, 80)
    assert states([one for one in make(home) if one.number == "TRA-0002"]) == ["same"]
    edit_by_pyexiv2(home[1] / made[0].copy)
    again = [one for one in make(home) if one.number == "TRA-0002"]
    assert "what it added was kept" in again[0].why
    (home[1] / made[0].copy).write_bytes(b"something else")
    assert states([one for one in make(home) if one.number == "TRA-0002"]) == ["refused"]


def test_two_scans_of_one_side_have_two_names(home: Home) -> None:
    with telling(home[0]) as (collection, _, item):
        other = scan(home[0] / "scans" / "second.jpg", shade=77)
        act = collection.act("a second scan")
        new = act.new(Kind.SCAN)
        facts = {"path": "scans/second.jpg", "sha256": sha256_of(other), "bytes": other.stat().st_size, "width": 120}
        act.state(new, "file", json.dumps(facts | {"height": 80, "ppi": 0, "media_type": "image/jpeg"}))
        act.state(new, "shows", json.dumps({"item": item.id, "side": "recto", "area": None}))
        act.done()
    made = make(home)
    assert sorted(Path(one.copy).name for one in made) == ["TRA-0001_b.jpg", "TRA-0001_f-2.jpg", "TRA-0001_f.jpg"]


def test_a_suffix_that_lies_is_put_right(home: Home, tmp_path: Path) -> None:
    take(home[0], Planned(key="lie", sides=(ScanSide(scan(tmp_path / "lie.jpg", "PNG", shade=44)),)))
    assert [one.copy for one in make(home) if one.number == "TRA-0002"] == ["TRA-0002_f.png"]


def others(tmp_path: Path) -> list[Path]:
    gif, jp2, bad = tmp_path / "one.gif", tmp_path / "two.jp2", tmp_path / "three.jpg"
    scan(gif, "GIF", shade=1)
    Image.new("RGB", (40, 30), "brown").save(jp2, "JPEG2000")
    whole = scan(bad, shade=3, exif=exif()).read_bytes()
    bad.write_bytes(whole[:2] + b"\xff\xfe\x00\x04ok" + b"junk" + whole[2:])
    return [gif, jp2, bad]


def test_what_cannot_carry_a_caption_gets_one_beside_it(home: Home, tmp_path: Path) -> None:
    files = others(tmp_path)
    with open_collection(home[0], on_day=ON) as collection:
        plan = [Planned(key=path.name, sides=(ScanSide(path),)) for path in files[:2]]
        assert {one.state for one in take_in(collection, plan, IntakeOptions(copy=True))} == {"taken"}
    made = [one for one in make(home) if one.number != "TRA-0001"]
    assert states(made) == ["sidecar"] * 2
    assert "GIF" in made[0].why and "JPEG 2000" in made[1].why and "--longest" in made[1].why
    for one, path in zip(made, files, strict=False):
        assert (home[1] / one.copy).read_bytes() == path.read_bytes()
        packet = (home[1] / f"{one.copy}.xmp").read_text(encoding="utf-8")
        assert f"<dc:identifier>{one.number}</dc:identifier>" in packet
    assert states([one for one in make(home) if one.number != "TRA-0001"]) == ["sidecar"] * 2
    outside = [one for one in make((home[0], tmp_path / "out"), to=To.OUTSIDE) if one.number != "TRA-0001"]
    assert states(outside) == ["refused"] * 2
    smaller = [one for one in make((home[0], tmp_path / "s"), longest=64, to=To.OUTSIDE) if one.number != "TRA-0001"]
    assert states(smaller) == ["written"] * 2
    (home[1] / made[0].copy).write_bytes(b"something else")
    assert [one.state for one in make(home) if one.number == made[0].number] == ["refused"]


OLD_PACKET = (
    "<x:xapmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
    "<rdf:Description about='uuid:1' xmlns:photoshop='http://ns.adobe.com/photoshop/1.0/'>"
    "<photoshop:Headline>The quay</photoshop:Headline></rdf:Description>"
    "<rdf:Description about='uuid:2' xmlns:dc='urn:own' dc:note='kept' xmlns:e='http://purl.org/dc/elements/1.1/'>"
    "<e:format>image/jpeg</e:format></rdf:Description></rdf:RDF></x:xapmeta>"
)
"""As writers made it before 2002, with `dc` for another namespace, and two descriptions that differ in `about`."""


def test_a_scan_with_an_old_packet_gets_a_copy_that_strict_readers_take(home: Home, tmp_path: Path) -> None:
    path = scan(tmp_path / "old.jpg", xmp=OLD_PACKET.encode())
    take(home[0], Planned(key="old", sides=(ScanSide(path),)))
    made = [one for one in make(home) if one.number == "TRA-0002"]
    assert states(made) == ["written"]
    image = exiv2.ImageFactory.open(str(home[1] / made[0].copy))
    image.readMetadata()
    xmp = {datum.key(): datum.toString() for datum in image.xmpData()}
    assert xmp["Xmp.dc.identifier"] == "TRA-0002"
    assert (xmp["Xmp.photoshop.Headline"], xmp["Xmp.dc.format"]) == ("The quay", "image/jpeg")
    assert "kept" in xmp.values()


def heic(size: tuple[int, int] = (64, 48)) -> bytes:
    """Boxes of ISO/IEC 23008-12 with an image extent and the Exif that a telephone writes, without a picture."""
    extent = b"\x00\x00\x00\x14ispe" + bytes(4) + size[0].to_bytes(4, "big") + size[1].to_bytes(4, "big")
    head = b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic"
    return head + extent + b"\x00\x00\x00\x06" + exif() + b"mdat" + bytes(50)


def test_a_telephone_picture_is_taken_in_and_its_place_does_not_travel(home: Home, tmp_path: Path) -> None:
    path = tmp_path / "visit.heic"
    path.write_bytes(heic())
    take(home[0], Planned(key="visit", sides=(ScanSide(path),)))
    with open_collection(home[0], write=False) as collection:
        front: ScanFile = record_of(collection, find_item(collection, "TRA-0002").id).scans[0]
    assert (front.width, front.height, front.media_type) == (64, 48, "image/heic")
    made = [one for one in make(home) if one.number == "TRA-0002"]
    assert states(made) == ["sidecar"] and "HEIC" in made[0].why
    data = (home[1] / made[0].copy).read_bytes()
    assert len(data) == path.stat().st_size
    block = Image.Exif()
    block.load(data[data.index(b"Exif\x00\x00") :])
    assert not block.get_ifd(0x8825)
    small = [one for one in make(home, longest=64) if one.number == "TRA-0002"]
    assert small[0].state == "refused" and small[0].why.startswith("TRA-0002_f.heic")  # there is no picture in it


def test_a_telephone_picture_becomes_a_jpeg_where_the_library_is_there(home: Home, tmp_path: Path) -> None:
    heif = pytest.importorskip("pillow_heif", reason="the optional library for telephone pictures is not installed")
    path = tmp_path / "visit.heic"
    heif.from_pillow(Image.radial_gradient("L").resize((200, 100)).convert("RGB")).save(path, exif=exif())
    take(home[0], Planned(key="visit", sides=(ScanSide(path),)))
    made = [one for one in make(home, longest=100) if one.number == "TRA-0002"]
    assert states(made) == ["written"]
    with Image.open(home[1] / made[0].copy) as image:
        assert image.size == (100, 50)
        assert not image.getexif().get_ifd(0x8825)


@pytest.mark.parametrize("mode", ["L", "CMYK", "RGBA", "I;16", "P", "1", "LA", "F"])
def test_pictures_of_every_kind_become_smaller_jpegs(mode: str, home: Home, tmp_path: Path) -> None:
    image = Image.radial_gradient("L").resize((120, 80)).convert("I" if mode == "I;16" else mode)
    path = tmp_path / "odd.tif"
    (image.convert("I;16") if mode == "I;16" else image).save(path)
    take(home[0], Planned(key="odd", sides=(ScanSide(path),)))
    made = [one for one in make(home, longest=64) if one.number == "TRA-0002"]
    assert states(made) == ["written"], made
    with Image.open(home[1] / made[0].copy) as small:
        assert small.size == (64, 43)
        assert small.mode == {"L": "L", "CMYK": "CMYK", "I;16": "L", "1": "L", "F": "L"}.get(mode, "RGB")


def test_a_damaged_picture_cannot_be_made_smaller_and_it_is_said(home: Home, tmp_path: Path) -> None:
    data = scan(tmp_path / "cut.png", "PNG", shade=8).read_bytes()
    (tmp_path / "cut.png").write_bytes(data[: len(data) // 2])
    take(home[0], Planned(key="cut", sides=(ScanSide(tmp_path / "cut.png"),)))
    made = [one for one in make(home, longest=64) if one.number == "TRA-0002"]
    assert made[0].state == "refused" and "damaged" in made[0].why


def test_a_damaged_file_is_copied_with_its_caption_beside_it(home: Home, tmp_path: Path) -> None:
    with open_collection(home[0], on_day=ON) as collection:
        bad = others(tmp_path)[2]
        taken = take_in(collection, [Planned(key="bad", sides=(ScanSide(bad),))], IntakeOptions(copy=True))
    if taken[0].state == "taken":
        made = [one for one in make(home) if one.number == "TRA-0002"]
        assert states(made) == ["sidecar"] and "junk" in made[0].why
        with io.BytesIO((home[1] / made[0].copy).read_bytes()) as copy:
            assert b"Exif" in copy.getvalue() and len(copy.getvalue()) == bad.stat().st_size
