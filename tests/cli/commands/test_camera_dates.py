"""The date that a camera writes into a file (Exif DateTimeOriginal, CIPA DC-008, 4.6.5.4), written here by Pillow."""

from pathlib import Path

import pytest
from PIL import Image

from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, records

EXIF_IFD, ORIGINAL = 0x8769, 0x9003


@pytest.fixture
def home(run, tmp_path: Path) -> Path:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm", "--prefix", "tra", "--title", "Tamm")[0] == 0
    return tmp_path / "tamm"


def pictures(folder: Path) -> Path:
    folder.mkdir()
    for at, day in enumerate(("2019:07:04 12:30:00", "2019:07:06 09:00:00", "", "0000:00:00 00:00:00")):
        exif = Image.Exif()
        exif.get_ifd(EXIF_IFD).update({ORIGINAL: day} if day else {})
        Image.radial_gradient("L").rotate(at * 9).save(folder / f"IMG_000{at}.jpg", exif=exif)
    return folder


def dates(home: Path) -> list[list[tuple[str, str]]]:
    with open_collection(home, write=False) as collection:
        return [
            [(view.words, str(view.source)) for view in record.all("date")]
            for record in records(collection, EVERYTHING)
        ]


def test_without_an_answer_it_is_the_day_of_the_scan_and_said_so(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, _, said = run("-c", home, "intake", pictures(tmp_path / "in"), "--copy", "--yes")
    assert code == 0 and dates(home) == [[], [], [], []]
    assert "2 pictures carry the date of the machine that made the file (2019-07-04 to 2019-07-06)." in said
    assert "--camera-dates picture makes it that of the picture." in said


def test_told_that_they_are_no_pictures_of_prints_it_is_the_day_of_the_picture(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    folder = pictures(tmp_path / "in")
    code, _, said = run("-c", home, "intake", folder, "--copy", "--yes", "--camera-dates", "picture")
    by_camera = "file:the camera's clock"
    assert code == 0 and dates(home) == [[("2019-07-04", by_camera)], [("2019-07-06", by_camera)], [], []]
    assert "2 dates of the camera told of the pictures." in said


def test_that_of_the_scan_alone_asks_and_says_nothing(run, home: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    _, _, said = run("-c", home, "intake", pictures(tmp_path / "in"), "--yes", "--camera-dates", "scan")
    assert "camera" not in said and dates(home) == [[], [], [], []]
