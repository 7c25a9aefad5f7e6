"""A better scan under markers: each stays on its person. Outside truth: Pillow finds the red spot in whatever was made,
before and after."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image, ImageChops

from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.statements import Kind
from boxlore.disk.pictures import make_jpeg
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.registry import take_back
from boxlore.tasks.scans.carried_markers import AWAY, STAY
from boxlore.tasks.scans.damage import look_closer
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.one_scan import take_scan
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.telling.markers import Marked, Markers
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.turned_scans import turn_scan

WIDE, HIGH = 320, 240
SPOT = (0.7, 0.3)
BOX = (0.5, 0.1, 0.45, 0.6)
ASLANT = (*BOX, 0.55, 0.12, 0.93, 0.2, 0.9, 0.68, 0.52, 0.6)
OTHER = (0.0, 0.0, 0.4, 1.0)


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    start(tmp_path / "tamm", Settings(title="Tamm", prefix="TRA"))
    with open_collection(tmp_path / "tamm") as opened:
        yield opened


def picture(path: Path, orientation: int = 1, size: tuple[int, int] = (WIDE, HIGH)) -> Path:
    """Grey, with a red spot."""
    image = Image.new("RGB", size, (128, 128, 128))
    x, y = round(SPOT[0] * size[0]), round(SPOT[1] * size[1])
    image.paste((255, 0, 0), (x - 6, y - 6, x + 6, y + 6))
    exif = image.getexif()
    exif[274] = orientation
    path.parent.mkdir(exist_ok=True)
    image.save(path, quality=95, exif=exif)
    return path


def spot_in(path: Path) -> tuple[float, float]:
    """The middle of what is red, in 0..1 of the picture."""
    with Image.open(path) as image:
        red, green, _ = image.convert("RGB").split()
        left, top, right, low = ImageChops.subtract(red, green).point(lambda shade: 255 * (shade > 90)).getbbox() or ()
        return (left + right) / 2 / image.width, (top + low) / 2 / image.height


def taken(collection: Collection, path: Path, *areas: tuple[float, ...]) -> Record:
    """The first of the items of a scan, or of parts of it; Anna is marked where the red spot is."""
    plan = [
        Planned(key=f"print {at}", sides=(ScanSide(path, area=area[:4], corners=area[4:]),))
        for at, area in enumerate(areas or ((),))
    ]
    number = take_in(collection, plan, IntakeOptions(copy=True))[0].number
    record = of(collection, number)
    act = collection.act("a marker")
    marker = act.new(Kind.MARKER)
    act.state(marker, "scan", record.scans[0].id)
    act.state(marker, "area", f"{SPOT[0] - 0.02} {SPOT[1] - 0.02} 0.04 0.04")
    Teller(collection).add(act, marker, "person", "Anna", Telling())
    act.done()
    return of(collection, number)


def of(collection: Collection, number: str) -> Record:
    return record_of(collection, find_item(collection, number).id)


def better(collection: Collection, scan: ScanFile, path: Path, size: int = 600) -> Path:
    """What is seen of a scan, as a file of its own."""
    path.write_bytes(make_jpeg(collection.folder / scan.path, size, area=scan.part, turn=scan.turn))
    return path


def markers(collection: Collection, number: str) -> tuple[Marked, ...]:
    return Markers(collection).of(of(collection, number))


@pytest.mark.parametrize("area", [BOX, ASLANT], ids=["straight", "aslant"])
@pytest.mark.parametrize("orientation", [1, 6, 4])
@pytest.mark.parametrize("turned", [0, 90])
def test_one_print_of_a_sheet_gets_a_scan_of_its_own(
    collection: Collection, tmp_path: Path, area: tuple[float, ...], orientation: int, turned: int
) -> None:
    sheet = picture(tmp_path / "in" / "sheet.jpg", orientation)
    record = taken(collection, sheet, area, OTHER)
    if turned:
        act = collection.act("turned")
        turn_scan(act, record, record.scans[0], turned)
        act.done()
        record = of(collection, record.number)
    path = better(collection, record.scans[0], tmp_path / "in" / "Anna on the quay.jpg")
    result = take_scan(collection, record.number, path, side="recto", better=True)
    assert (result.state, result.why) == ("replaced", f"the front of {record.number} is this file now")
    (scan,) = of(collection, record.number).scans
    assert (scan.area, scan.turn, scan.path) == ((), 0, f"scans/{record.number}_f_2.jpg")
    (marker,) = markers(collection, record.number)
    assert (marker.x, marker.y) == pytest.approx(spot_in(path), abs=0.01) and marker.name == "Anna"
    assert of(collection, "TRAA-0002").scans[0].area == OTHER  # the sheet stays, and so does what else it shows
    assert {hit.field for hit in collection.store.search("quay")} == {"file_name"}


def test_a_sheet_of_which_a_print_was_replaced_is_known_again_and_its_undo_brings_it_back(
    collection: Collection, tmp_path: Path
) -> None:
    sheet = picture(tmp_path / "in" / "sheet.jpg")
    record = taken(collection, sheet, BOX, OTHER)
    path = better(collection, record.scans[0], tmp_path / "in" / "better.jpg")
    take_scan(collection, record.number, path, side="recto", better=True)
    plan = [Planned(key=f"{at}", sides=(ScanSide(sheet, area=area),)) for at, area in enumerate((BOX, OTHER))]
    assert {result.state for result in take_in(collection, plan, IntakeOptions(copy=True))} == {"known"}
    again = better(collection, of(collection, record.number).scans[0], tmp_path / "in" / "best.jpg", 300)
    assert take_scan(collection, record.number, again, side="recto", better=True).state == "replaced"
    (scan,) = of(collection, record.number).scans
    assert scan.path == f"scans/{record.number}_f_3.jpg"
    for name in ("file", "shows"):
        take_back(collection, collection.store.history(scan.id, name)[-1].statement.act)
    assert of(collection, record.number).scans == record.scans
    assert [(marker.x, marker.y) for marker in markers(collection, record.number)] == [
        pytest.approx(((SPOT[0] - BOX[0]) / BOX[2], (SPOT[1] - BOX[1]) / BOX[3]))
    ]


def test_a_whole_scan_that_lies_otherwise_keeps_its_markers_on_their_people(
    collection: Collection, tmp_path: Path
) -> None:
    record = taken(collection, picture(tmp_path / "in" / "a.jpg", 6))
    path = better(collection, record.scans[0], tmp_path / "in" / "b.jpg")
    take_scan(collection, record.number, path, side="recto", better=True)
    (marker,) = markers(collection, record.number)
    assert (marker.x, marker.y) == pytest.approx(spot_in(path), abs=0.01)
    assert of(collection, record.number).scans[0].id == record.scans[0].id


def test_on_a_picture_of_another_shape_it_is_asked_what_becomes_of_the_markers(
    collection: Collection, tmp_path: Path
) -> None:
    record = taken(collection, picture(tmp_path / "in" / "a.jpg"))
    tall = picture(tmp_path / "in" / "tall.jpg", size=(HIGH, WIDE))
    with pytest.raises(WrongUse, match=r"has 1 marker on the picture that is here, and this one has another shape"):
        take_scan(collection, record.number, tall, side="recto", better=True)
    assert of(collection, record.number).scans == record.scans
    assert len(list((collection.folder / "scans").iterdir())) == 1  # no copy of what was refused is left
    lying = picture(tmp_path / "in" / "lying.jpg", 6, (HIGH, WIDE))  # its file asks to be turned: the same shape
    assert take_scan(collection, record.number, lying, side="recto", better=True).state == "replaced"
    take_scan(collection, record.number, tall, side="recto", better=True, markers=STAY)
    assert len(markers(collection, record.number)) == 1
    wide = picture(tmp_path / "in" / "wide.jpg", size=(WIDE * 2, HIGH))
    take_scan(collection, record.number, wide, side="recto", better=True, markers=AWAY)
    assert not markers(collection, record.number)
    assert [person.name for person in of(collection, record.number).people] == ["Anna"]


def test_a_file_that_was_lost_or_damaged_on_the_disk_is_brought_back_by_the_same_bytes(
    collection: Collection, tmp_path: Path
) -> None:
    path = picture(tmp_path / "in" / "a.jpg")
    record = taken(collection, path)
    assert take_scan(collection, record.number, path, side="recto", better=True).state == "known"
    here = collection.folder / record.scans[0].path
    here.write_bytes(here.read_bytes()[:900])
    (known,) = take_in(collection, [Planned(key="a", sides=(ScanSide(path),))], IntakeOptions(copy=True))
    assert (known.state, "not as it was. To bring it back: boxlore scan replace TRAA-0001 FILE" in known.why) == (
        "known",
        True,
    )
    assert take_scan(collection, record.number, path, side="recto", better=True).state == "replaced"
    (scan,) = of(collection, record.number).scans
    assert (scan.id, scan.path) == (record.scans[0].id, f"scans/{record.number}_f_2.jpg")
    assert (collection.folder / scan.path).read_bytes() == path.read_bytes() and here.stat().st_size == 900
    (collection.folder / scan.path).unlink()
    assert take_scan(collection, record.number, path, side="recto", better=True).state == "replaced"
    assert (collection.folder / of(collection, record.number).scans[0].path).read_bytes() == path.read_bytes()


def test_a_broken_file_takes_the_place_of_no_scan(collection: Collection, tmp_path: Path) -> None:
    record = taken(collection, picture(tmp_path / "in" / "a.jpg"), BOX)
    whole = taken(collection, picture(tmp_path / "in" / "b.jpg", 3))
    broken = tmp_path / "in" / "broken.jpg"
    broken.write_bytes(picture(tmp_path / "in" / "c.jpg", 5).read_bytes()[:-400])
    for number in (record.number, whole.number):
        with pytest.raises(WrongUse, match="cut off or broken, so it takes the place of no scan"):
            take_scan(collection, number, broken, side="recto", better=True)
    assert len(list((collection.folder / "scans").iterdir())) == 2


def test_of_a_damaged_scan_and_the_whole_one_in_its_place_the_whole_one_is_replaced(
    collection: Collection, tmp_path: Path
) -> None:
    broken = tmp_path / "in" / "broken.jpg"
    broken.write_bytes(picture(tmp_path / "in" / "c.jpg", 5).read_bytes()[:-400])
    record = taken(collection, broken)
    look_closer(collection)
    whole = picture(tmp_path / "in" / "d.jpg")
    assert take_scan(collection, record.number, whole, side="recto").state == "joined"
    best = picture(tmp_path / "in" / "e.jpg", 3)
    assert take_scan(collection, record.number, best, side="recto", better=True).state == "replaced"
    (scan,) = of(collection, record.number).scans
    assert (collection.folder / scan.path).read_bytes() == best.read_bytes()
