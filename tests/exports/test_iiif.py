"""Canvases of turned scans: their size and the places of people, held against Pillow's own turning.

IIIF Presentation 3.0, 5.3 (a canvas has the aspect of what is shown) and Web Annotation Data Model, 4.2.1 and 4.4, from
memory of their clauses; CIPA DC-008 (Exif), tag 274.
"""

from dataclasses import replace
from datetime import date

from PIL import Image, ImageOps
from tests.every_row import every_row

from boxlore.core.crosswalk.dublin_core import CollectionFacts
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView
from boxlore.core.statements import KEEPER, Sure
from boxlore.exports.iiif import iiif_pages

FACTS = CollectionFacts(id="01a214af-f06c-7bb4-925d-b49412c6fff7", title="Tamm & Rourke", on_day=date(2026, 11, 25))
WIDE, HIGH = 60, 40
FACE = (12, 8, 12 + 18, 8 + 4)
"""A white field on the stored picture, in pixels."""
AREAS = ((), (0.1, 0.1, 0.6, 0.8))


def turned_by_pillow(orientation: int, turn: int, area: tuple[float, ...]) -> tuple[Image.Image, Image.Image]:
    """The stored picture with its face as readers show the part of it, and as the keeper turned that."""
    image = Image.new("L", (WIDE, HIGH))
    image.paste(255, FACE)
    if area:
        x, y, wide, high = (round(part * side) for part, side in zip(area, (WIDE, HIGH) * 2, strict=True))
        image = image.crop((x, y, x + wide, y + high))
    image.getexif()[274] = orientation
    shown = ImageOps.exif_transpose(image)
    return shown, shown.rotate(-turn, expand=True)


@every_row(
    ("orientation", "turn", "area"),
    [(orientation, turn, area) for orientation in range(1, 9) for turn in (0, 90, 180, 270) for area in AREAS],
)
def test_size_and_places_follow_every_turn(orientation: int, turn: int, area: tuple[float, ...]) -> None:
    told = StatementView(
        statement="s", field="person", words="Helmi Tamm", language="et", source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="",
    )  # fmt: skip
    face = (FACE[0] / WIDE, FACE[1] / HIGH, (FACE[2] - FACE[0]) / WIDE, (FACE[3] - FACE[1]) / HIGH)
    scan = ScanFile(
        id="scan", path="scans/a.jpg", sha256="0", bytes=1, width=WIDE, height=HIGH, media_type="image/jpeg", area=area,
        orientation=orientation, turn=turn,
    )  # fmt: skip
    helmi = PersonShown(told=told, name="Helmi Tamm", scan="scan", area=face, number=1)
    record = Record(id="item", number="TRA-0001", scans=(scan,), people=(helmi,))
    pages = dict(iiif_pages(lambda: [record], FACTS, lambda path: True))
    (canvas,) = pages["iiif/TRA-0001.json"]["items"]
    shown, turned = turned_by_pillow(orientation, turn, area)
    assert (canvas["width"], canvas["height"]) == turned.size
    box = turned.getbbox()
    assert box is not None
    (person,) = canvas["annotations"][0]["items"]
    x, y, wide, high = box[0], box[1], box[2] - box[0], box[3] - box[1]
    assert person["target"]["selector"]["value"] == f"xywh={x},{y},{wide},{high}"
    painting = canvas["items"][0]["items"][0]
    assert ("stylesheet" in painting, "styleClass" in painting["body"]) == (bool(turn), bool(turn))
    image = painting["body"].get("source", painting["body"])
    if area:
        part = painting["body"]["selector"]["value"].removeprefix("xywh=").split(",")
        assert tuple(map(int, part[2:])) == shown.size
    else:
        assert (image["width"], image["height"]) == shown.size


def test_what_the_archive_calls_it_stands_beside_its_number() -> None:
    """Presentation 3.0, 3.1, metadata: pairs of a label and a value, here of no language (4.1); from memory."""
    scan = ScanFile(id="scan", path="a.jpg", sha256="0", bytes=1, width=60, height=40, media_type="image/jpeg")
    told = StatementView(
        statement="s", field="archive_reference", words="P-991", language="", source=KEEPER, said_by="", sure=Sure.SURE,
        audience="anyone", recorded_at="",
    )  # fmt: skip
    called = (told, replace(told, words="MS 12/4"))
    record = Record(id="item", number="TRA-0001", scans=(scan,), told={"archive_reference": called})
    pages = dict(iiif_pages(lambda: [record], FACTS, lambda path: True))
    said = {row["label"]["en"][0]: row["value"] for row in pages["iiif/TRA-0001.json"]["metadata"]}
    assert said["The archive's reference"] == {"none": ["P-991", "MS 12/4"]} and said["Number"] == {
        "none": ["TRA-0001"]
    }
