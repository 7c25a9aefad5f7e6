"""Regions (IPTC Photo Metadata Standard 2025.1; MWG Guidelines 2.0, 5.9); upright by Pillow's own turning."""

from PIL import Image, ImageOps
from tests.every_row import every_row

from boxlore.core.crosswalk.image_regions import faces, regions, upright
from boxlore.core.crosswalk.metadata_values import Bag, Struct, Text
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView
from boxlore.core.statements import KEEPER, Sure


def scan(**more: object) -> ScanFile:
    facts = {"path": "a", "sha256": "0", "bytes": 1, "width": 300, "height": 200, "media_type": "image/jpeg"}
    return ScanFile(id="scan", **{**facts, **more})  # type: ignore[arg-type]  # as the test spells them


def shown(name: str, area: tuple[float, ...] = (), *, words: str = "", role: str = "person") -> PersonShown:
    told = StatementView(
        statement=f"s-{name}",
        field="person",
        words=words or name,
        language="et",
        source=KEEPER,
        said_by="",
        sure=Sure.SURE,
        audience="anyone",
        recorded_at="",
    )
    return PersonShown(told=told, name=name, role=role, area=area, scan="scan" if area else "", person=f"p-{name}")


def fields(value: object, *path: str | int) -> object:
    for step in path:
        if isinstance(step, int):
            assert isinstance(value, Bag)
            value = value.items[step]
        else:
            assert isinstance(value, Struct)
            value = dict(value.fields)[step]
    return value


def boundary(found: object, at: int = 0) -> dict[str, str]:
    where = fields(found, at, "Iptc4xmpExt:RegionBoundary")
    assert isinstance(where, Struct)
    return {name.removeprefix("Iptc4xmpExt:"): value.words for name, value in where.fields if isinstance(value, Text)}


def record(*people: PersonShown) -> Record:
    return Record(id="item", number="TRA-0001", people=people)


@every_row("turned", range(1, 9))
def test_upright_is_where_pillow_turns_it(turned: int) -> None:
    """One white field of 60 × 40, found again after ImageOps.exif_transpose."""
    image = Image.new("L", (60, 40))
    image.paste(255, (12, 8, 12 + 18, 8 + 4))
    image.getexif()[0x0112] = turned
    after = ImageOps.exif_transpose(image)
    box = after.getbbox()
    assert box is not None
    x, y, w, h = upright((12 / 60, 8 / 40, 18 / 60, 4 / 40), turned)
    found = (x * after.width, y * after.height, (x + w) * after.width, (y + h) * after.height)
    assert [round(one) for one in found] == list(box)
    left, top = upright((12 / 60, 8 / 40), turned)
    assert round(left * after.width) in (box[0], box[2]) and round(top * after.height) in (box[1], box[3])


def test_nobody_has_no_region_and_nothing_is_turned() -> None:
    assert regions(record(), scan(), "en") is None
    assert faces(record(shown("Anna")), scan()) is None
    assert regions(record(shown("Anna")), scan(side="verso"), "en") is None
    assert upright((), 6) == ()


def test_a_place_not_known_is_the_whole_picture() -> None:
    found = regions(record(shown("Anna")), scan(), "en")
    assert boundary(found) == {
        "rbShape": "rectangle",
        "rbUnit": "relative",
        "rbX": "0",
        "rbY": "0",
        "rbW": "1",
        "rbH": "1",
    }


def test_a_marker_on_another_scan_is_no_place_on_this() -> None:
    found = regions(record(shown("Anna", (0.1, 0.1, 0.1, 0.1))), scan().__class__(**vars_of(scan(), id="other")), "en")
    assert boundary(found)["rbW"] == "1"


def vars_of(one: ScanFile, **more: object) -> dict[str, object]:
    return {name: getattr(one, name) for name in ScanFile.__slots__} | more


def test_a_box_on_a_part_is_given_on_the_part_and_cut_to_it() -> None:
    half = scan(area=(0.5, 0.0, 0.5, 1.0))
    found = regions(record(shown("Anna", (0.6, 0.2, 0.2, 0.4)), shown("Jaan", (0.4, 0.2, 0.2, 0.4))), half, "en")
    assert boundary(found, 0) | {"rbX": "0.20000", "rbW": "0.40000"} == boundary(found, 0)
    assert boundary(found, 1) | {"rbX": "0.00000", "rbW": "0.20000"} == boundary(found, 1)
    point = regions(record(shown("Anna", (0.75, 0.5))), half, "en")
    assert boundary(point) | {"rbShape": "circle", "rbX": "0.50000", "rbY": "0.50000"} == boundary(point)


def test_whoever_is_not_in_it_has_a_role() -> None:
    found = regions(record(shown("Karl", role="photographer"), shown("Leida", role="named")), scan(), "en")
    roles = [fields(found, at, "Iptc4xmpExt:rRole", 0, "Iptc4xmpExt:Name").words[0][1] for at in (0, 1)]  # type: ignore[attr-defined]
    assert roles == ["photographer", "named, not shown"]


def test_a_person_has_the_words_told_and_an_identifier() -> None:
    found = regions(record(shown("Anna Tamm", words="tädi Anna")), scan(), "en")
    person = fields(found, 0, "Iptc4xmpExt:PersonInImageWDetails", 0)
    assert fields(person, "Iptc4xmpExt:PersonDescription").words[0] == ("x-default", "tädi Anna")  # type: ignore[attr-defined]
    assert fields(person, "Iptc4xmpExt:PersonId", 0) == Text("urn:uuid:p-Anna Tamm")
    assert fields(found, 0, "Iptc4xmpExt:rId") == Text("boxlore-s-Anna Tamm")


def test_faces_are_centred_and_bear_our_mark() -> None:
    found = faces(record(shown("Anna", (0.1, 0.2, 0.3, 0.4))), scan())
    area = fields(found, "mwg-rs:RegionList", 0, "mwg-rs:Area")
    assert isinstance(area, Struct)
    assert dict(area.fields)["stArea:x"] == Text("0.25000") and dict(area.fields)["stArea:y"] == Text("0.40000")
    assert fields(found, "mwg-rs:AppliedToDimensions", "stDim:w") == Text("300")
    assert fields(found, "mwg-rs:RegionList", 0, "mwg-rs:Extensions", "Iptc4xmpExt:rId") == Text("boxlore-s-Anna")
