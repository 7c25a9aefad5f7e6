"""Previews of very large pictures stand in for them on a screen, and nowhere else (our own contract)."""

import os
from pathlib import Path

import pytest
from PIL import Image, ImageChops

from boxlore.disk import pictures, previews
from boxlore.disk.previews import Previews

Made = tuple[int, int, bytes]


@pytest.fixture
def large(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A picture that counts as large, held sideways as its file says, with words in it."""
    monkeypatch.setattr(pictures, "SLOW", 1000)
    monkeypatch.setattr(pictures, "LONGEST", 300)
    monkeypatch.setattr(previews, "LONGEST", 300)
    grey = Image.radial_gradient("L").resize((600, 400))
    picture = Image.merge(
        "RGB", (grey, grey.transpose(Image.Transpose.FLIP_LEFT_RIGHT), grey.point(lambda at: 255 - at))
    )
    exif = Image.Exif()
    exif[274], exif[270] = 6, "WORDS IN THE FILE"
    picture.save(tmp_path / "sheet.png", exif=exif)
    return tmp_path / "sheet.png"


def difference(first: Made, second: Made) -> int:
    assert first[:2] == second[:2]
    one, other = (Image.frombytes("RGB", made[:2], made[2]) for made in (first, second))
    return max(high for _, high in ImageChops.difference(one, other).getextrema())


@pytest.mark.parametrize("area", [(), (0.2, 0.1, 0.5, 0.6)])
@pytest.mark.parametrize("turn", [0, 90])
def test_what_was_looked_at_once_opens_without_being_decoded_again(
    area: tuple[float, ...], turn: int, large: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept = Previews(tmp_path / "kept")
    whole = pictures.small_pixels(large, 60, 60, area=area, turn=turn)
    pictures.looks_hash(large, kept)
    (preview,) = (tmp_path / "kept").iterdir()
    assert b"WORDS IN THE FILE" not in preview.read_bytes()
    with Image.open(preview) as small:
        assert max(small.size) == 300
    decoded: list[Path] = []
    load = pictures.load
    monkeypatch.setattr(pictures, "load", lambda path, image: (decoded.append(path), load(path, image)))
    assert difference(pictures.small_pixels(large, 60, 60, area=area, turn=turn, previews=kept), whole) < 16
    assert decoded == [preview]
    pictures.make_jpeg(large, 400, previews=kept)
    pictures.make_jpeg(large, 200, turn=turn)
    assert decoded[1:] == [large, large], "more pixels than it has, and what is no screen, are made of the scan"


def test_one_opened_for_a_screen_gets_one_and_a_file_that_changed_has_none(large: Path, tmp_path: Path) -> None:
    kept = Previews(tmp_path / "kept")
    pictures.small_pixels(large, 60, 60, previews=kept)
    assert kept.instead_of(large, 300, ()) != large and kept.instead_of(large, 301, ()) == large
    os.utime(large, ns=(1, 1))
    assert kept.instead_of(large, 300, ()) == large
    Image.new("L", (20, 20)).save(tmp_path / "small.png")
    pictures.small_pixels(tmp_path / "small.png", 60, 60, previews=kept)
    assert kept.instead_of(tmp_path / "small.png", 10, ()) == tmp_path / "small.png"
    assert kept.instead_of(tmp_path / "gone.png", 10, ()) == tmp_path / "gone.png"


def test_so_many_are_kept_and_a_folder_that_takes_none_is_no_fault(
    large: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(previews, "MOST", 2)
    kept = Previews(tmp_path / "kept")
    for at in range(4):
        os.utime(large, ns=(at, at))
        pictures.looks_hash(large, kept)
    assert len(list((tmp_path / "kept").iterdir())) == 2 and kept.instead_of(large, 10, ()) != large
    (tmp_path / "file").write_text("")
    assert pictures.looks_hash(large, Previews(tmp_path / "file" / "kept")) == pictures.looks_hash(large)


@pytest.mark.parametrize("harm", [b"", b"\xff\xd8\xff", b"\0" * 4000])
def test_a_preview_that_a_disk_has_damaged_stands_in_for_nothing(harm: bytes, large: Path, tmp_path: Path) -> None:
    kept = Previews(tmp_path / "kept")
    whole = pictures.small_pixels(large, 60, 60, previews=kept)
    (preview,) = (tmp_path / "kept").iterdir()
    preview.write_bytes(harm)
    assert difference(pictures.small_pixels(large, 60, 60, previews=kept), whole) < 16
