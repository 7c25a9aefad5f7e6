"""Sharp pictures: made to fit cells, in the terminal's language (our own contract; the languages: `tests/formats`)."""

import io
import re
from base64 import b64decode
from pathlib import Path

import pytest
from PIL import Image

from boxlore.core.records.item_record import ScanFile
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.sitting.sharp_picture import (
    KEEP,
    MOST_SIXELS,
    Graphics,
    Language,
    SharpPictures,
    marker_sent,
    pixels_of,
)

CELL = 8, 16


def test_a_picture_is_made_once_and_fits_its_cells(tmp_path: Path) -> None:
    start(tmp_path / "c", Settings(title="Tamm", prefix="TR"))
    Image.new("RGB", (300, 200), "#806040").save(tmp_path / "c" / "scans" / "a.jpg")
    (tmp_path / "c" / "scans" / "b.jpg").write_bytes(b"no picture")
    scan, broken = (
        ScanFile(id=name, path=f"scans/{name}.jpg", sha256="", bytes=0, width=300, height=200, media_type="image/jpeg")
        for name in "ab"
    )
    graphics = Graphics(Language.ITERM, CELL)
    with open_collection(tmp_path / "c", write=False) as collection:
        sharp = SharpPictures(collection)
        assert sharp.kept(scan, graphics, 30, 20) is None and sharp.kept(None, graphics, 30, 20) is None
        picture = sharp.of(scan, graphics, 30, 20)
        assert picture is not None and sharp.kept(scan, graphics, 30, 20) is picture is sharp.of(scan, graphics, 30, 20)
        assert (picture.width, picture.height, picture.columns, picture.rows) == (240, 160, 30, 10)
        told = re.fullmatch("\x1b]1337;File=(.*):(.*)\x07", picture.sequence)
        assert told and "width=30;height=10;" in told[1]
        with Image.open(io.BytesIO(b64decode(told[2]))) as sent:
            assert sent.size == (240, 160)
        assert sharp.of(broken, graphics, 30, 20) is None, "its glimpse says why"
        for columns in range(2, KEEP + 3):
            sharp.of(scan, graphics, columns, 20)
        assert sharp.kept(scan, graphics, 30, 20) is None, "the last few are remembered"


@pytest.mark.parametrize(
    ("graphics", "cells", "room"),
    [
        (Graphics(Language.KITTY, CELL), (100, 50), (800, 800)),
        (Graphics(Language.SIXEL, CELL, largest=(1000, 300)), (50, 50), (400, 300)),
        (Graphics(Language.SIXEL, CELL), (0, 0), CELL),
    ],
)
def test_the_room_is_what_the_terminal_allows(
    graphics: Graphics, cells: tuple[int, int], room: tuple[int, int]
) -> None:
    assert pixels_of(graphics, *cells) == room


def test_sixels_are_lessened_to_what_is_made_in_time() -> None:
    wide, high = pixels_of(Graphics(Language.SIXEL, (10, 20)), 200, 58)
    assert 0.98 * MOST_SIXELS < wide * high <= MOST_SIXELS and abs(wide / high - 2000 / 1160) < 0.01


def test_a_marker_is_a_picture_in_the_language_that_has_letters_below_pictures() -> None:
    for sign in (" 7 ", "╋"):
        sent = re.fullmatch("\x1b_G(.*?);(.*?)\x1b\\\\", marker_sent(5, sign, CELL))
        assert sent and "i=5," in sent[1]
        with Image.open(io.BytesIO(b64decode(sent[2]))) as shown:
            assert shown.size == (CELL[0] * len(sign), CELL[1]) and len(shown.convert("RGB").getcolors() or []) > 1
