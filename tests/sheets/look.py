"""The README's pictures of the album and of the family's pages, made of a demo: `python -m tests.sheets.look DEMO OUT`.

It needs Debian's chromium and poppler-utils. `DEMO` is what `boxlore demo` made, `OUT` the folder of the pictures.
"""

import base64
import io
import subprocess
import sys
import tempfile
from pathlib import Path

from PIL import Image
from tests.sheets.conftest import Browser

COLOURS = 160
"""Of a picture in the README: no eye tells more, and the file stays small."""

PAGE = 4
"""The album's page that is shown: a back beside its front, and a group."""

DRAWN = "Promise.all([...document.images].filter(i => i.getBoundingClientRect().top < 1350).map(i => i.decode()))"
"""Waits until every picture in the window is drawn: a busy machine takes its time."""


def album(demo: Path) -> bytes:
    """One page of the album, 80 pixels to the inch."""
    numbers = ["-f", str(PAGE), "-l", str(PAGE), "-r", "80"]
    pdf = str(demo / "print" / "album.pdf")
    return subprocess.run(["pdftoppm", "-png", *numbers, pdf], check=True, capture_output=True).stdout


def pages(demo: Path) -> bytes:
    """The first page of the family's own pages, as a window of a desk shows it."""
    with tempfile.TemporaryDirectory() as home:
        browser = Browser(Path(home))
        browser.open(demo / "pages-family" / "index.html", width=1080)
        browser.send("Emulation.setDeviceMetricsOverride", width=1080, height=1350, deviceScaleFactor=1, mobile=False)
        browser.look(DRAWN)
        shot = browser.send("Page.captureScreenshot")["data"]
        browser.close()
    return base64.b64decode(shot)


def main() -> None:
    """Make both."""
    demo, out = map(Path, sys.argv[1:3])
    for name, picture in (("album.png", album(demo)), ("pages.png", pages(demo))):
        with Image.open(io.BytesIO(picture)) as image:
            image.convert("RGB").quantize(COLOURS).save(out / name, optimize=True)


if __name__ == "__main__":
    main()
