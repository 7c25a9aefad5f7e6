"""Scans that are turned: the file untouched, and its markers with it in every output.

Outside truths: Pillow finds the red spot in whatever was made; exiv2 reads the regions of the copies.
"""

import hashlib
import io
from collections.abc import Callable
from pathlib import Path

import exiv2
import pytest
from PIL import Image, ImageChops

from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.core.statements import KEEPER, Kind, Subject
from boxlore.disk.pictures import make_jpeg
from boxlore.sheets.picture_on_paper import heads_of
from boxlore.tasks.archive.rebuild import rebuild
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection, open_collection
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.originals.housing_changes import undo
from boxlore.tasks.originals.housing_check import facts_of
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import Planned, ScanSide
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tasks.telling.markers import Markers
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.turned_scans import note_altered, scan_meant, turn_scan, turn_words

WIDE, HIGH = 160, 120
SPOT = (0.75, 0.25)
"""Where the red spot is in the stored picture."""


def picture(path: Path, orientation: int = 1) -> Path:
    """Grey, with a red spot."""
    image = Image.new("RGB", (WIDE, HIGH), (128, 128, 128))
    x, y = round(SPOT[0] * WIDE), round(SPOT[1] * HIGH)
    image.paste((255, 0, 0), (x - 6, y - 6, x + 6, y + 6))
    exif = image.getexif()
    exif[274] = orientation
    path.parent.mkdir(exist_ok=True)
    image.save(path, quality=95, **({"exif": exif} if orientation != 1 else {}))
    return path


def spot(jpeg: bytes) -> tuple[float, float]:
    """The middle of what is red, in 0..1, by Pillow."""
    with Image.open(io.BytesIO(jpeg)) as image:
        red, green, _ = image.convert("RGB").split()
        left, top, right, low = ImageChops.subtract(red, green).point(lambda v: 255 * (v > 120)).getbbox() or (0,) * 4
        return (left + right) / 2 / image.width, (top + low) / 2 / image.height


def taken(folder: Path, path: Path, area: tuple[float, ...] = ()) -> str:
    """The item of a scan, or of a part of it; somebody is marked where the red spot is."""
    with open_collection(folder) as collection:
        plan = [Planned(key=path.stem, sides=(ScanSide(path, "recto", area[:4], corners=area[4:]),))]  # type: ignore[arg-type]
        (result,) = take_in(collection, plan, IntakeOptions(copy=True, box="1"))
        record = record_of(collection, find_item(collection, result.number).id)
        act = collection.act("a marker")
        marker = act.new(Kind.MARKER)
        act.state(marker, "scan", record.scans[0].id)
        act.state(marker, "area", f"{SPOT[0]} {SPOT[1]}")
        act.done()
        teller = Teller(collection)
        act = collection.act("who")
        teller.add(act, marker, "person", "Leida Tamm", Telling(source=KEEPER))
        act.done()
        return result.number


def of(collection: Collection, number: str) -> Record:
    return record_of(collection, find_item(collection, number).id)


def turn(collection: Collection, number: str, by: int) -> int:
    record, act = of(collection, number), collection.act("turned")
    now = turn_scan(act, record, record.scans[0], by)
    act.done()
    return now


PART = (0.5, 0.0, 0.5, 0.75)
ASLANT = (0.5, 0.0, 0.5, 0.75, 0.6, 0.0, 1.0, 0.12, 0.9, 0.75, 0.5, 0.6)
"""A print in that part that lies aslant, by its corners."""


@pytest.mark.parametrize(
    ("by", "orientation", "area"),
    [
        (90, 1, ()),
        (180, 6, PART),
        (270, 2, PART),
        (90, 6, ()),
        (270, 1, PART),
        (90, 6, ASLANT),
        (180, 2, ASLANT),
    ],
)
def test_all_that_is_made_of_a_turned_scan_has_the_marker_where_the_spot_is(
    bare: Callable[[int], Path], tmp_path: Path, by: int, orientation: int, area: tuple[float, ...]
) -> None:
    folder, path = bare(0), picture(tmp_path / "in" / "a.jpg", orientation)
    number = taken(folder, path, area)
    with open_collection(folder) as collection:
        before = of(collection, number).scans[0]
        assert turn(collection, number, by) == by
        record = of(collection, number)
        (scan,) = record.scans
        assert (scan.id, scan.sha256, scan.turn, scan.area) == (before.id, before.sha256, by, area[:4])
        assert scan.part == area
        assert hashlib.sha256((folder / scan.path).read_bytes()).hexdigest() == before.sha256
        seen = spot(make_jpeg(folder / scan.path, 400, area=scan.part, turn=scan.turn))
        assert (record.people[0].number, record.people[0].name) == (1, "Leida Tamm")
        (marked,) = Markers(collection).of(record)
        assert (marked.x, marked.y) == pytest.approx(seen, abs=0.02)
        ((_, (x, y, w, h)),) = heads_of(record.shown(), scan)
        assert (x + w / 2, y + h / 2) == pytest.approx(seen, abs=0.02)
        showing = Showing(collection=collection)
        showing.show(record, [marked], "")
        shown = showing.picture(showing.view.sides[0].id, "screen")
        assert shown is not None and spot(shown) == pytest.approx(seen, abs=0.02)
        out = tmp_path / "copies"
        (copied,) = copies(collection, out)
        assert copied.state in ("written", "cut") and f"turned by {by}° to the right" in copied.why
        assert ("straightened, for it lay aslant" in copied.why) == (len(area) == 12)
        data = (out / copied.copy).read_bytes()
        assert (b"straightened, for it lay aslant" in data) == (len(area) == 12)
        assert spot(data) == pytest.approx(seen, abs=0.02)
        image = exiv2.ImageFactory.open(str(out / copied.copy))
        image.readMetadata()
        xmp = {str(datum.key()).partition("/")[2]: str(datum.toString()) for datum in image.xmpData()}
        at = [float(words) for ends in ("rbX", "rbY") for key, words in xmp.items() if key.endswith(ends)]
        assert at == pytest.approx(seen, abs=0.02)
        assert "Exif.Image.Orientation" not in {str(datum.key()) for datum in image.exifData()}
        (again,) = copies(collection, out)
        assert again.state == "same"


def test_a_turned_picture_is_another_one_for_the_tellers_page(bare: Callable[[int], Path], tmp_path: Path) -> None:
    """A browser that keeps a picture by its address would go on to show the old one."""
    folder = bare(0)
    number = taken(folder, picture(tmp_path / "in" / "a.jpg"))
    with open_collection(folder) as collection:
        showing = Showing(collection=collection)
        showing.show(of(collection, number), [], "")
        before = showing.view.sides[0].id
        turn(collection, number, 90)
        showing.show(of(collection, number), [], "")
        assert showing.view.sides[0].id != before and showing.picture(before, "screen") is None


def test_quarters_add_up_and_one_act_is_taken_back_alone(bare: Callable[[int], Path], tmp_path: Path) -> None:
    folder = bare(0)
    number = taken(folder, picture(tmp_path / "in" / "a.jpg"))
    with open_collection(folder) as collection:
        assert [turn(collection, number, by) for by in (90, 180, 90, 270)] == [90, 270, 0, 270]
        undo(collection, collection.store.last_acts(1)[0].id)
        assert of(collection, number).scans[0].turn == 0
        with pytest.raises(WrongUse, match="not by 45"):
            turn(collection, number, 45)
    assert turn_words(0) == "it is seen as it lies." and "by 90°" in turn_words(90)


def test_of_a_sheet_only_the_print_that_is_turned_is(bare: Callable[[int], Path], tmp_path: Path) -> None:
    folder, path = bare(0), picture(tmp_path / "in" / "sheet.jpg")
    first, second = taken(folder, path, (0.0, 0.0, 0.5, 1.0)), taken(folder, path, (0.5, 0.0, 0.5, 1.0))
    with open_collection(folder) as collection:
        turn(collection, second, 270)
        assert [of(collection, number).scans[0].turn for number in (first, second)] == [0, 270]


def test_a_turned_scan_stays_where_it_was_among_the_others(bare: Callable[[int], Path], tmp_path: Path) -> None:
    """Markers are numbered scan by scan, and the first front is the one that outputs show."""
    folder = bare(0)
    number = taken(folder, picture(tmp_path / "in" / "a.jpg"))
    with open_collection(folder) as collection:
        record = of(collection, number)
        second = picture(tmp_path / "in" / "b.jpg", 3)
        (other,) = take_in(collection, [Planned(key="b", sides=(ScanSide(second),))], IntakeOptions(copy=True))
        theirs = of(collection, other.number).scans[0]
        act = collection.act("a second front")
        act.state(Subject(Kind.SCAN, theirs.id), "shows", f'{{"item": "{record.id}", "side": "recto", "area": null}}')
        act.done()
        before = [scan.id for scan in of(collection, number).scans]
        assert len(before) == 2
        turn(collection, number, 90)
        turn(collection, number, 90)
        assert [scan.id for scan in of(collection, number).scans] == before
        with pytest.raises(WrongUse, match="has 2 scans of its front"):
            scan_meant(of(collection, number))
        with pytest.raises(WrongUse, match="has no back as-scanned: front"):
            scan_meant(of(collection, number), "verso")


def test_a_turn_and_what_the_file_asks_for_come_back_out_of_a_transfer(
    bare: Callable[[int], Path], tmp_path: Path
) -> None:
    folder = bare(0)
    number = taken(folder, picture(tmp_path / "in" / "a.jpg", 6))
    with open_collection(folder) as collection:
        turn(collection, number, 180)
        transfer(collection, tmp_path / "t")
    said = [path.read_text("utf-8") for path in (tmp_path / "t").rglob("*.xml")]
    assert any("to be turned by 180° to the right" in words for words in said)
    rebuild(tmp_path / "again", tmp_path / "t")
    with open_collection(tmp_path / "again", write=False) as collection:
        (scan,) = of(collection, number).scans
    assert (scan.turn, scan.orientation, scan.stands) == (180, 6, 8)


def test_a_scan_that_was_turned_lies_on_its_side_no_more(bare: Callable[[int], Path], tmp_path: Path) -> None:
    folder = bare(0)
    number = taken(folder, picture(tmp_path / "in" / "a.jpg"))
    with open_collection(folder) as collection:
        turn(collection, number, 90)
        record = of(collection, number)
        facts = facts_of(collection, record, record.scans[0])
    assert (facts.width, facts.height) == (HIGH, WIDE)


def test_a_scan_is_noted_as_altered_and_back(bare: Callable[[int], Path], tmp_path: Path) -> None:
    folder = bare(0)
    number = taken(folder, picture(tmp_path / "in" / "a.jpg"))
    with open_collection(folder) as collection:
        for altered, role in ((True, "altered"), (True, "altered"), (False, "as-scanned"), (False, "as-scanned")):
            act = collection.act("altered")
            record = of(collection, number)
            note_altered(act, record, record.scans[0], altered=altered)
            act.done()
            assert of(collection, number).scans[0].role == role
        assert scan_meant(of(collection, number)).role == "as-scanned"


def test_of_a_sheet_one_print_alone_is_noted_as_altered_and_so_it_is_handed_on(
    bare: Callable[[int], Path], tmp_path: Path
) -> None:
    folder, halves = bare(0), ((0.0, 0.0, 0.5, 1.0), (0.5, 0.0, 0.5, 1.0))
    path = picture(tmp_path / "in" / "sheet.jpg")
    plan = [Planned(key=f"{half}", sides=(ScanSide(path, "recto", half),)) for half in halves]
    with open_collection(folder) as collection:
        numbers = [one.number for one in take_in(collection, plan, IntakeOptions(copy=True, box="1"))]
        record = of(collection, numbers[1])
        act = collection.act("altered")
        note_altered(act, record, record.scans[0], altered=True)
        act.done()
        assert [of(collection, number).scans[0].role for number in numbers] == ["as-scanned", "altered"]
        transfer(collection, tmp_path / "t")
        note_altered(act := collection.act("not"), of(collection, numbers[1]), of(collection, numbers[1]).scans[0],
                     altered=False)  # fmt: skip
        act.done()
        assert of(collection, numbers[1]).scans[0].role == "as-scanned"
    rebuild(tmp_path / "again", tmp_path / "t")
    with open_collection(tmp_path / "again", write=False) as collection:
        assert [of(collection, number).scans[0].role for number in numbers] == ["as-scanned", "altered"]
