"""The README's pictures, held against what the demo shows now: none is older than the program.

They are made by `python -m tests.sheets.look DEMO demo_family/looks`. Letters are drawn a little differently by another
version of a program that draws them, and a day printed is another: so small pictures are compared, by how far their
greys are apart.
"""

import io
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image, ImageChops, ImageStat
from tests.drawn import IN_CI
from tests.sheets import look

ROOT = Path(__file__).parents[2]
LOOKS = ROOT / "demo_family" / "looks"

SMALL = (90, 110)
"""Pixels: a line of words is a grey stripe, and whatever stands elsewhere is seen."""


def terminal(demo: Path) -> bytes:
    """The sitting, drawn by the command that DEVELOPERS.md has for its picture."""
    command = next(
        found[1].split()
        for found in re.finditer(r"`python (tests/tui/look\.py[^`]+)`", (ROOT / "DEVELOPERS.md").read_text("utf-8"))
    )
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "terminal.png"
        places = {"COLLECTION": str(demo), "demo_family/looks/terminal.png": str(out)}
        subprocess.run([sys.executable, *(places.get(word, word) for word in command)], check=True, cwd=ROOT)
        return out.read_bytes()


# Of 255. The same drawn on another day: 0.5; the album with the numbers of nine people on a page, or without: 5.3. A
# browser takes the fonts of its machine, whose letters are a little wider or narrower.
DRAWN = [
    ("album.png", "pdftoppm", look.album, 2.0), ("pages.png", "chromium", look.pages, 8.0),
    ("terminal.png", "chromium", terminal, 8.0),
]  # fmt: skip
"""The picture, the program that draws it, how, and how far apart it may be."""


def grey(data: bytes) -> Image.Image:
    with Image.open(io.BytesIO(data)) as picture:
        return picture.convert("L").resize(SMALL, Image.Resampling.BOX)


def apart(first: bytes, second: bytes) -> float:
    return float(ImageStat.Stat(ImageChops.difference(grey(first), grey(second))).rms[0])


@pytest.mark.parametrize(("name", "program", "make", "most"), DRAWN)
def test_no_picture_of_the_readme_is_older_than_the_program(
    name: str, program: str, make: Callable[[Path], bytes], most: float, demo: Path
) -> None:
    if name == "terminal.png" and not IN_CI:
        pytest.skip("it takes seconds to draw, and is drawn in CI")
    if not shutil.which(program):
        pytest.skip(f"Debian's {program} is not here to draw with")
    shown, now = (LOOKS / name).read_bytes(), make(demo)
    assert apart(shown, now) < most, "make it anew: python -m tests.sheets.look DEMO demo_family/looks"
