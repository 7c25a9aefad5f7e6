"""What the file of a scan says, told of its item at intake. Written into the files by exiv2 (pyexiv2), not by us."""

from collections.abc import Iterator
from pathlib import Path

import pyexiv2
import pytest
from PIL import Image

from boxlore.core.crosswalk import captions
from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, record_of, records
from boxlore.tasks.collection.settings import Settings
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
