"""Draws the terminal interface as a picture, for looking at and for the README.

    python tests/tui/look.py COLLECTION OUT.png [--size 120x40] [--keys "tab,A,n,n"] [--light]

It works on a copy, so that nothing typed for the picture is kept. Textual exports SVG; a headless Chromium makes
the PNG, and Pillow reduces its colours. Not a test.
"""

import argparse
import asyncio
import io
import re
import shutil
import subprocess
import tempfile
from pathlib import Path
from typing import Any

from PIL import Image
from textual.pilot import Pilot

from boxlore.tasks.collection.opening import open_collection
from boxlore.tui.app import Boxlore

CHROMIUM = next((name for name in ("chromium", "chromium-browser", "google-chrome") if shutil.which(name)), "chromium")


async def draw(folder: Path, size: tuple[int, int], keys: list[str], narrator: str, light: bool) -> str:
    """The screen after these keys, as SVG."""
    with open_collection(folder, fallback_read_only=True) as collection:
        app = Boxlore(collection, narrator=narrator)
        app.theme = "paper" if light else "lamp"
        async with app.run_test(size=size) as pilot:
            await _at_rest(pilot)
            for key in keys:
                await pilot.press(key)
            return await _at_rest(pilot)


async def _at_rest(pilot: Pilot[Any]) -> str:
    """The screen as SVG, once it has not changed for a second; on a machine with much to do a picture comes late."""
    drawn = [""]
    while len(drawn) < 4 or (len(set(drawn[-3:])) > 1 and len(drawn) < 60):
        await pilot.pause(0.5)
        drawn.append(pilot.app.export_screenshot(title="Boxlore"))
    return drawn[-1]


def to_png(svg: str, out: Path, longest: int = 1600) -> None:
    """Through a headless browser; then fewer colours, so that the file stays small."""
    wide, high = (float(one) for one in re.search(r'viewBox="0 0 ([\d.]+) ([\d.]+)"', svg).groups())  # type: ignore[union-attr]  # always there
    with tempfile.TemporaryDirectory() as folder:
        page, shot = Path(folder) / "page.html", Path(folder) / "shot.png"
        page.write_text(f"<meta charset='utf-8'><body style='margin:0;background:#fff'>{svg}</body>", encoding="utf-8")
        size = f"{round(wide)},{round(high) + 8}"
        command = [CHROMIUM, "--headless", "--no-sandbox", "--disable-gpu", f"--window-size={size}"]
        subprocess.run([*command, f"--screenshot={shot}", str(page)], check=True, capture_output=True)
        image = Image.open(io.BytesIO(shot.read_bytes())).convert("RGB")
    image.thumbnail((longest, longest), Image.Resampling.LANCZOS)
    out.parent.mkdir(parents=True, exist_ok=True)
    image.quantize(96, dither=Image.Dither.NONE).save(out, optimize=True)


def main() -> None:
    """Read the arguments and draw."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("collection", type=Path)
    parser.add_argument("out", type=Path)
    parser.add_argument("--size", default="120x40")
    parser.add_argument("--keys", default="")
    parser.add_argument("--narrator", default="")
    parser.add_argument("--light", action="store_true")
    told = parser.parse_args()
    wide, high = told.size.split("x")
    keys = [key for key in told.keys.split(",") if key]
    with tempfile.TemporaryDirectory() as name:
        copy = Path(name) / told.collection.resolve().name
        shutil.copytree(told.collection, copy)
        svg = asyncio.run(draw(copy, (int(wide), int(high)), keys, told.narrator, told.light))
    to_png(svg, told.out)


if __name__ == "__main__":
    main()
