"""A large picture made small takes little more memory than its own pixels (our own contract; pictures by Pillow)."""

import io
import subprocess
import sys
from pathlib import Path

import pytest
from PIL import Image, ImageChops, ImageOps, ImageStat

from boxlore.disk import pictures
from boxlore.disk.pictures import make_jpeg, make_jpegs

MEASURE = """
import re, sys
from pathlib import Path
from boxlore.disk.pictures import looks_hash
looks_hash(Path(sys.argv[1]))
print(re.search("VmHWM: *(.*) kB", Path("/proc/self/status").read_text().replace("\\t", " "))[1])
"""


@pytest.mark.skipif(sys.platform != "linux", reason="the system does not tell how much memory a process had")
def test_a_picture_of_a_bit_a_pixel_is_never_twice_in_memory(tmp_path: Path) -> None:
    path = tmp_path / "line.png"
    drawn = Image.new("1", (12_000, 12_000))
    drawn.paste(1, (3_000, 3_000, 9_000, 6_000))
    drawn.save(path, compress_level=1)
    measured = subprocess.run([sys.executable, "-c", MEASURE, path], capture_output=True, text=True, check=True)
    pixels, interpreter = 144_000, 80_000  # kilobytes: Pillow keeps a byte for each bit
    assert int(measured.stdout) < 2 * pixels + interpreter


@pytest.mark.parametrize("mode", ["1", "L", "LA", "P", "RGB", "RGBA", "CMYK", "YCbCr", "I;16", "F"])
@pytest.mark.parametrize("area", [(), (0.21, 0.13, 0.37, 0.5)])
def test_it_looks_the_same_in_bands(
    mode: str, area: tuple[float, ...], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    gradient = Image.radial_gradient("L").resize((601, 403))
    if mode == "I;16":
        picture = gradient.convert("I").point(lambda value: value * 257).convert("I;16")
    else:
        colours = Image.merge("RGB", (gradient, gradient.transpose(Image.Transpose.FLIP_LEFT_RIGHT), gradient))
        picture = (gradient if mode in ("1", "L", "LA", "F") else colours).convert(mode)
    path = tmp_path / "whole.tif"
    picture.save(path)
    whole = pictures.small_pixels(path, 30, 30, area=area)
    monkeypatch.setattr(pictures, "SURELY_FITS", 1)
    monkeypatch.setattr(pictures, "BAND", 5000)
    in_bands = pictures.small_pixels(path, 30, 30, area=area)
    assert in_bands[:2] == whole[:2]
    first, second = (Image.frombytes("RGB", made[:2], made[2]) for made in (whole, in_bands))
    assert max(high for _, high in ImageChops.difference(first, second).getextrema()) <= 24


def test_several_sizes_of_one_decoding_look_as_each_decoded_for_itself(tmp_path: Path) -> None:
    path = tmp_path / "a.jpg"
    ImageOps.expand(Image.linear_gradient("L").resize((1500, 1000)), 60, "white").save(path)
    large, small = (Image.open(io.BytesIO(data)) for data in make_jpegs(path, ((1200, 84), (480, 80))))
    alone = Image.open(io.BytesIO(make_jpeg(path, 480, quality=80)))
    assert (max(large.size), small.size) == (1200, alone.size)
    assert max(ImageStat.Stat(ImageChops.difference(small, alone)).mean) < 1
