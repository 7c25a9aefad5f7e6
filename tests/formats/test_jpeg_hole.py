"""Holes in a JPEG. Outside truths: whole files that Pillow's libjpeg-turbo writes, in all its ways, have none; of those
with a hole the decoded picture is another."""

from pathlib import Path

import pytest
from PIL import Image, ImageChops

from boxlore.formats.jpeg_hole import has_hole

WAYS = [{}, {"optimize": True}, {"quality": 30}, {"subsampling": 0, "quality": 95}, {"restart_marker_blocks": 3},
        {"progressive": True}]  # fmt: skip


def pictures() -> dict[str, Image.Image]:
    busy = Image.effect_noise((320, 240), 60)
    half = Image.new("L", (640, 480), 255)
    half.paste(busy, (0, 240))
    return {
        "busy": busy.convert("RGB"), "grey": busy, "blank": Image.new("RGB", (900, 900), "white"),
        "black": Image.new("L", (900, 900)), "half blank": half,
        "gradient": Image.linear_gradient("L").resize((900, 900)),
        "one bit": Image.effect_noise((400, 400), 60).convert("1").convert("L"),
    }  # fmt: skip


@pytest.mark.parametrize("way", WAYS, ids=str)
def test_whole_files_have_no_hole_and_one_amid_a_busy_picture_is_seen(tmp_path: Path, way: dict[str, object]) -> None:
    for name, image in pictures().items():
        path = tmp_path / "a.jpg"
        image.save(path, **way)
        with path.open("rb") as file:
            assert not has_hole(file), (name, way)
        if name not in ("busy", "grey") or way in ({"progressive": True}, {"optimize": True}):
            continue
        data = bytearray(path.read_bytes())
        data[len(data) // 2 : len(data) // 2 + 400] = bytes(400)
        (tmp_path / "hole.jpg").write_bytes(data)
        with (tmp_path / "hole.jpg").open("rb") as file:
            assert has_hole(file), (name, way)
        with Image.open(tmp_path / "hole.jpg") as broken, Image.open(path) as whole:
            assert ImageChops.difference(broken, whole).getbbox()


@pytest.mark.parametrize("data", [b"", b"\xff\xd8", b"\x89PNG", b"\xff\xd8\xff\xc0\x00\x02\xff\xda"])
def test_what_is_no_whole_jpeg_has_none(tmp_path: Path, data: bytes) -> None:
    (tmp_path / "a").write_bytes(data)
    with (tmp_path / "a").open("rb") as file:
        assert not has_hole(file)
