"""Why a file is not read as a picture (the pictures are Pillow's, cut and blanked as copies that broke off are)."""

import io
from pathlib import Path

import pytest
from PIL import Image
from tests.every_row import every_row

from boxlore.core.errors import CouldNot
from boxlore.disk.decoding import Damaged
from boxlore.disk.pictures import make_jpeg, read_header


def made(kind: str) -> bytes:
    out = io.BytesIO()
    Image.effect_noise((120, 90), 60).save(out, kind, **({"compression": "tiff_lzw"} if kind == "TIFF" else {}))
    return out.getvalue()


UNREAD = [
    ("cut.webp", made("WEBP")[:2000], "it begins as one, and is cut off or broken. Copy it again"),
    ("cut.tif", made("TIFF")[:2000], "it begins as one, and is cut off or broken. Copy it again"),
    ("page.jpg", b"<!doctype html><title>Not found</title>", "it is none, whatever its name says, or it is broken. "),
    ("zeros.tif", bytes(3_000_000), "it holds nothing but zeros, as where a copy was broken off. Copy it again"),
    ("quay.NEF", b"II*\x00\x08\x00\x00\x00", "it is a camera's raw file. Let a program of its maker"),
]


@every_row(("name", "data", "words"), UNREAD)
def test_what_is_wrong_is_said_with_what_to_do(tmp_path: Path, name: str, data: bytes, words: str) -> None:
    (tmp_path / name).write_bytes(data)
    with pytest.raises(Damaged) as met:
        read_header(tmp_path / name)
    assert str(met.value).startswith(f"{name} cannot be opened as a picture: ") and words in str(met.value)


def test_a_file_that_is_gone_is_not_called_damaged(tmp_path: Path) -> None:
    with pytest.raises(CouldNot, match="Look whether it is there") as met:
        make_jpeg(tmp_path / "gone.jpg", 100)
    assert not isinstance(met.value, Damaged)


def test_a_file_that_goes_while_it_is_looked_at_is_not_called_damaged(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its bytes were no picture, and now nobody can say why."""
    path = tmp_path / "quay.jpg"
    path.write_bytes(b"no picture")

    def goes(*_: object, **__: object) -> Image.Image:
        path.unlink()
        raise SyntaxError

    monkeypatch.setattr(Image, "open", goes)
    with pytest.raises(CouldNot) as met:
        read_header(path)
    assert not isinstance(met.value, Damaged)
