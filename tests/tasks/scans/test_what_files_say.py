"""What the file of a scan says, told of its item at intake. Written into the files by exiv2 (pyexiv2), not by us."""

import os
import sys
from collections.abc import Iterator
from pathlib import Path

import pyexiv2
import pytest
from PIL import Image
from PIL.PngImagePlugin import PngInfo
from tests.every_row import every_row

from boxlore.core.crosswalk import captions
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, record_of, records
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.given_files import readable
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide, by_suffix
from boxlore.tasks.scans.what_files_say import original_name
from boxlore.tasks.telling.statements import Teller, Telling


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "tamm", Settings(title="Tamm", prefix="TRA"))
    with open_collection(tmp_path / "tamm") as opened:
        yield opened


def picture(path: Path, *, exif: dict[str, str] | None = None, **xmp: object) -> Path:
    path.parent.mkdir(exist_ok=True, parents=True)
    Image.radial_gradient("L").rotate(len(str(path))).save(path)
    with pyexiv2.Image(str(path)) as image:
        image.modify_xmp({f"Xmp.{name.replace('__', '.')}": words for name, words in xmp.items()})
        image.modify_exif(exif or {})
    return path


def taken(collection: Collection, *paths: Path) -> Record:
    results = take_in(collection, by_suffix(paths), IntakeOptions(copy=True))
    return next(record for record in records(collection, EVERYTHING) if record.number == results[0].number)


def told(record: Record) -> list[tuple[str, str, str, str]]:
    return [(name, view.words, str(view.source), view.sure) for name, views in record.told.items() for view in views]


def test_all_that_a_file_says_of_the_picture_is_told_with_the_file_as_who_says_it(
    collection: Collection, tmp_path: Path
) -> None:
    path = picture(
        tmp_path / "in" / "a.jpg",
        dc__title={'lang="x-default"': "Picnic at the old mill", 'lang="et"': "Piknik veskil"},
        dc__description={'lang="x-default"': "Everyone came by cart."},
        dc__subject=["picnic", "mill"],
        photoshop__DateCreated="1932-06",
        photoshop__City="Haapsalu",
        photoshop__Country="Estonia",
        iptcExt__PersonInImage=["Aino Tamm"],
    )
    record = taken(collection, path)
    assert sorted(told(record)) == [
        ("date", "1932-06", "file", "sure"),
        ("file_name", "a.jpg", "file", "sure"),
        ("keyword", "mill", "file", "sure"),
        ("keyword", "picnic", "file", "sure"),
        ("person", "Aino Tamm", "file", "sure"),
        ("place", "Haapsalu, Estonia", "file", "sure"),
        ("story", "Everyone came by cart.", "file", "sure"),
        ("title", "Picnic at the old mill", "file", "sure"),
        ("title", "Piknik veskil", "file", "sure"),
    ]
    assert (captions.title(record), record.edtf) == ("Picnic at the old mill", "1932-06")
    assert [view.language for view in record.all("title")] == ["en", "et"]
    assert not collection.people()  # nobody is made of a name in a file
    assert [hit.field for hit in collection.store.search("mill")] == ["keyword", "title"]
    Teller(collection).tell(find_item(collection, record.number), "title", "Haymaking", Telling())
    assert captions.title(record_of(collection, record.id)) == "Haymaking"


def test_the_name_of_a_file_and_of_its_folder_are_kept_and_guessed_from(collection: Collection, tmp_path: Path) -> None:
    act = collection.act("a person")
    Teller(collection).add(act, act.new(Kind.PERSON), "name", "Leida Rourke", Telling())
    act.done()
    named = taken(collection, picture(tmp_path / "in" / "Leida Rourke, Port Chalmers 1956_f.jpg"))
    assert told(named) == [
        ("file_name", "Leida Rourke, Port Chalmers 1956_f.jpg", "file", "sure"),
        ("date", "1956", "file:file name", "guess"),
        ("person", "Leida Rourke", "file:file name", "guess"),
    ]
    assert named.people[0].name == "Leida Rourke" and named.people[0].unsure
    by_folder = taken(collection, picture(tmp_path / "Haapsalu summer 1932" / "IMG_0042.jpg"))
    assert captions.title(by_folder) == "Haapsalu summer 1932"
    assert told(by_folder) == [
        ("file_name", "Haapsalu summer 1932/IMG_0042.jpg", "file", "sure"),
        ("date", "summer 1932", "file:file name", "guess"),
    ]
    assert told(taken(collection, picture(tmp_path / "in" / "DSC0001.jpg"))) == [
        ("file_name", "DSC0001.jpg", "file", "sure")
    ]


def test_what_a_camera_writes_into_every_picture_is_no_caption(collection: Collection, tmp_path: Path) -> None:
    exif = {
        "Exif.Image.Make": "OLYMPUS IMAGING CORP.",
        "Exif.Image.ImageDescription": "OLYMPUS DIGITAL CAMERA",
        "Exif.Photo.DateTimeOriginal": "2019:07:04 12:30:00",
    }
    path = picture(
        tmp_path / "in" / "IMG_0042.jpg", exif=exif, photoshop__DateCreated="2019-07-04", dc__title="IMG_0042"
    )
    assert told(taken(collection, path)) == [("file_name", "IMG_0042.jpg", "file", "sure")]
    written = picture(tmp_path / "in" / "IMG_0043.jpg", exif={"Exif.Image.ImageDescription": "The regatta"})
    assert [view.words for view in taken(collection, written).all("story")] == ["The regatta"]


def test_a_part_of_a_sheet_says_only_how_the_sheet_is_called(collection: Collection, tmp_path: Path) -> None:
    sheet = picture(tmp_path / "in" / "page 3 1932.jpg", dc__title="Page three of the album")
    parts = [Planned(key=f"{at}", sides=(ScanSide(sheet, area=(at / 2, 0.0, 0.5, 1.0)),)) for at in range(2)]
    take_in(collection, parts, IntakeOptions(copy=True))
    assert [told(record) for record in records(collection, EVERYTHING)] == [
        [("file_name", "page 3 1932.jpg", "file", "sure")]
    ] * 2


def test_a_back_that_comes_later_adds_what_is_new_once(collection: Collection, tmp_path: Path) -> None:
    front = picture(tmp_path / "in" / "mill.jpg", dc__title="Picnic at the old mill")
    taken(collection, front)
    back = picture(tmp_path / "in" / "mill_b.jpg", dc__title="Picnic at the old mill", dc__subject=["mill", "?"])
    record = taken(collection, back)
    assert [(name, view.words) for name, views in record.told.items() for view in views] == [
        ("title", "Picnic at the old mill"),
        ("file_name", "mill.jpg"),
        ("file_name", "mill_b.jpg"),
        ("keyword", "mill"),
    ]


def test_a_folder_of_a_machine_is_no_part_of_a_name(tmp_path: Path) -> None:
    assert original_name(tmp_path / "Downloads" / "a.jpg") == "a.jpg"
    assert original_name(Path.home() / "a.jpg") == "a.jpg"
    assert original_name(tmp_path / "Regatta" / "a.jpg") == "Regatta/a.jpg"


RDF = (
    '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">'
    '<rdf:Description rdf:about="" xmlns:mwg-rs="http://www.metadataworkinggroup.com/schemas/regions/" '
    'xmlns:stArea="http://ns.adobe.com/xmp/sType/Area#" xmlns:stDim="http://ns.adobe.com/xap/1.0/sType/Dimensions#" '
    'xmlns:Iptc4xmpExt="http://iptc.org/std/Iptc4xmpExt/2008-02-29/">%s</rdf:Description></rdf:RDF></x:xmpmeta>'
)
FACES = (
    '<mwg-rs:Regions rdf:parseType="Resource">%s<mwg-rs:RegionList><rdf:Bag>%s</rdf:Bag></mwg-rs:RegionList>'
    "</mwg-rs:Regions>"
)
APPLIED = '<mwg-rs:AppliedToDimensions stDim:w="%d" stDim:h="%d" stDim:unit="pixel"/>'
BY_ATTRIBUTES = (
    '<rdf:li><rdf:Description mwg-rs:Name="%s" mwg-rs:Type="Face"><mwg-rs:Area stArea:x="0.3" stArea:y="0.4" '
    'stArea:w="0.1" stArea:h="0.2" stArea:unit="normalized"/></rdf:Description></rdf:li>'
)
BY_ELEMENTS = (
    '<rdf:li rdf:parseType="Resource"><mwg-rs:Area rdf:parseType="Resource"><stArea:x>0.3</stArea:x>'
    "<stArea:y>0.4</stArea:y><stArea:w>0.1</stArea:w><stArea:h>0.2</stArea:h><stArea:unit>normalized</stArea:unit>"
    "</mwg-rs:Area><mwg-rs:Name>%s</mwg-rs:Name><mwg-rs:Type>Face</mwg-rs:Type></rdf:li>"
)
BOUNDARY = (
    "<Iptc4xmpExt:ImageRegion><rdf:Bag><rdf:li rdf:parseType='Resource'><Iptc4xmpExt:RegionBoundary "
    "rdf:parseType='Resource'><Iptc4xmpExt:rbShape>%s</Iptc4xmpExt:rbShape><Iptc4xmpExt:rbUnit>%s</Iptc4xmpExt:rbUnit>"
    "%s</Iptc4xmpExt:RegionBoundary><Iptc4xmpExt:PersonInImage><rdf:Bag><rdf:li>Anna Tamm</rdf:li></rdf:Bag>"
    "</Iptc4xmpExt:PersonInImage></rdf:li></rdf:Bag></Iptc4xmpExt:ImageRegion>"
)


def _rb(**parts: float) -> str:
    return "".join(f"<Iptc4xmpExt:rb{name}>{value}</Iptc4xmpExt:rb{name}>" for name, value in parts.items())


HERE = (0.25, 0.3, 0.1, 0.2)
RECTANGLE = (
    "<MP:RegionInfo xmlns:MP='http://ns.microsoft.com/photo/1.2/' xmlns:R='http://ns.microsoft.com/photo/1.2/t/Region#'"
    " xmlns:I='http://ns.microsoft.com/photo/1.2/t/RegionInfo#' rdf:parseType='Resource'><I:Regions><rdf:Bag>%s"
    "</rdf:Bag></I:Regions></MP:RegionInfo>"
)
REGIONS = (
    (RECTANGLE % "<rdf:li R:Rectangle='0.25, 0.3, 0.1, 0.2' R:PersonDisplayName='Anna Tamm'/>", 1, HERE),
    (
        RECTANGLE % "<rdf:li rdf:parseType='Resource'><R:Rectangle>0.25, 0.3, 0.1, 0.2</R:Rectangle>"
        "<R:PersonDisplayName>Anna Tamm</R:PersonDisplayName></rdf:li>",
        1,
        HERE,
    ),
    (RECTANGLE % "<rdf:li R:Rectangle='0.25, 0.3' R:PersonDisplayName='Anna Tamm'/>", 1, ()),
    (FACES % ("", BY_ATTRIBUTES % "Anna Tamm"), 1, HERE),
    (FACES % ("", BY_ELEMENTS % "Anna Tamm"), 1, HERE),
    (FACES % ("", (BY_ATTRIBUTES % "Anna Tamm").replace("Face", "Pet")), 1, ()),
    (FACES % ("", (BY_ATTRIBUTES % "Anna Tamm").replace("0.1", "0.95").replace("0.2", "1")), 1, ()),
    (FACES % ("", (BY_ATTRIBUTES % "Anna Tamm").replace("0.1", "wide")), 1, ()),
    (FACES % ("", BY_ATTRIBUTES % "Anna Tamm"), 6, ()),  # on the stored picture, or as it is seen?
    (FACES % (APPLIED % (300, 200), BY_ATTRIBUTES % "Anna Tamm"), 6, HERE),
    (FACES % (APPLIED % (200, 300), BY_ATTRIBUTES % "Anna Tamm"), 6, (0.3, 0.65, 0.2, 0.1)),
    (BOUNDARY % ("rectangle", "relative", _rb(X=0.25, Y=0.3, W=0.1, H=0.2)), 1, HERE),
    (BOUNDARY % ("rectangle", "pixel", _rb(X=75, Y=60, W=30, H=40)), 1, HERE),
    (BOUNDARY % ("circle", "relative", _rb(X=0.3, Y=0.4, Rx=0.1)), 1, (0.2, 0.25, 0.2, 0.3)),
    (BOUNDARY % ("polygon", "relative", _rb(X=0.3, Y=0.4)), 1, ()),
    (BOUNDARY % ("rectangle", "relative", _rb(X=0.25, Y=0.3, W=0.1, H=0.2)), 8, ()),
)
"""What a file of 300 by 200 pixels says (MWG Guidelines 2.0, 5.9; IPTC Photo Metadata Standard 2025.1), its Exif
orientation, and where on the stored picture Anna is then."""


@every_row(("said", "orientation", "place"), REGIONS)
def test_whoever_is_seen_somewhere_by_the_file_gets_a_marker_there(
    tmp_path_factory: pytest.TempPathFactory, said: str, orientation: int, place: tuple[float, ...]
) -> None:
    folder = tmp_path_factory.mktemp("regions")
    start(folder / "tamm", Settings(title="Tamm", prefix="TRA"))
    image = Image.radial_gradient("L").resize((300, 200))
    exif = image.getexif()
    exif[274] = orientation
    image.save(folder / "a.jpg", xmp=(RDF % said).encode(), exif=exif)
    with open_collection(folder / "tamm") as collection:
        record = taken(collection, folder / "a.jpg")
        assert [(person.name, person.area, person.number) for person in record.people] == [
            ("Anna Tamm", pytest.approx(place), 1 if place else 0)
        ]
        assert [told for told in told_lines(record) if told[0] == "person"] == ([] if place else [PERSON])


PERSON = ("person", "Anna Tamm", "file", "sure")


def test_what_two_slots_of_a_file_say_otherwise_is_both_told(collection: Collection, tmp_path: Path) -> None:
    path = picture(
        tmp_path / "in" / "a.jpg", dc__title={'lang="x-default"': "Funeral of Jaan"}, photoshop__DateCreated="1931-02",
        dc__subject=["mill"], dc__description={'lang="x-default"': "They came by cart, all of them."},
    )  # fmt: skip
    with pyexiv2.Image(str(path)) as image:
        image.modify_iptc(
            {
                "Iptc.Application2.ObjectName": "Wedding of Anna",
                "Iptc.Application2.DateCreated": "1920-06-00",
                "Iptc.Application2.Caption": "They came by CART",
                "Iptc.Application2.Keywords": ["mill"],
            }
        )
    record = taken(collection, path)
    assert [line[:2] for line in told_lines(record) if line[0] != "file_name"] == [
        ("date", "1931-02"),
        ("date", "1920-06"),
        ("keyword", "mill"),
        ("story", "They came by cart, all of them."),
        ("title", "Funeral of Jaan"),
        ("title", "Wedding of Anna"),
    ]
    assert captions.title(record) == "Funeral of Jaan" and [one.field for one in record.conflicts] == ["date"]


def told_lines(record: Record) -> list[tuple[str, str, str, str]]:
    return sorted(told(record), key=lambda line: line[0])


def test_texts_that_stand_beside_xmp_are_read_and_lines_of_machines_are_not(
    collection: Collection, tmp_path: Path
) -> None:
    """Written by Pillow (PNG) and exiv2 (Exif)."""
    texts = PngInfo()
    for name, words in (("Title", "Haymaking"), ("Description", "At Grandfather’s"), ("Software", "Scan 3.1")):
        texts.add_itxt(name, words)
    texts.add_text("Comment", "Created with Some Editor")
    (tmp_path / "in").mkdir()
    Image.radial_gradient("L").save(tmp_path / "in" / "a.png", pnginfo=texts)
    record = taken(collection, tmp_path / "in" / "a.png")
    assert [line[:2] for line in told_lines(record)] == [
        ("file_name", "a.png"), ("story", "At Grandfather’s"), ("title", "Haymaking")
    ]  # fmt: skip
    exif = {
        "Exif.Image.XPTitle": "The regatta",
        "Exif.Image.XPKeywords": "boats;harbour",
        "Exif.Photo.UserComment": "charset=Unicode Our own cutter",
    }
    path = picture(tmp_path / "in" / "b.jpg", exif=exif)
    with pyexiv2.Image(str(path)) as image:
        image.modify_comment("CREATOR: gd-jpeg v1.0 (using IJG JPEG v62), quality = 90")
    assert [line[:2] for line in told_lines(taken(collection, path)) if line[0] != "file_name"] == [
        ("keyword", "boats"), ("keyword", "harbour"), ("story", "Our own cutter"), ("title", "The regatta")
    ]  # fmt: skip


@pytest.mark.skipif(sys.platform == "win32", reason="there a name is always Unicode")
def test_a_name_of_an_old_disk_is_kept_in_letters_as_far_as_they_are_plain(
    collection: Collection, tmp_path: Path
) -> None:
    """Windows-1252 by Python's own codec; a name of which most is not ASCII may be in any alphabet."""
    names = ("Grüße aus Reval".encode("cp1252"), "Таллин".encode("cp1251"), "Hr. Õ".encode("cp1252"))
    read = ("Grüße aus Reval.jpg", "\ufffd" * 6 + ".jpg", "Hr. \ufffd.jpg")
    assert [readable(os.fsdecode(name + b".jpg")) for name in names] == list(read)
    path = picture(tmp_path / "in" / "a.jpg")
    named = path.rename(path.with_name(os.fsdecode(names[0] + b".jpg")))
    assert ("file_name", read[0], "file", "guess") in told(taken(collection, named))
    assert [hit.field for hit in collection.store.search("Grüße")] == ["file_name"]
