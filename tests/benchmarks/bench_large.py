"""How long a picture of two hundred megapixels takes to be seen, and what memory that costs.

    python tests/benchmarks/bench_large.py [MEGAPIXELS]          (on Linux, which tells the memory)

Each file is looked at in a process of its own, as large as a screen (1,600 pixels), as a terminal's cells, and a tenth
of it closer; the time is that of the processor, the memory what is held on top of Python and Pillow. The peer is
Pillow, which decodes the whole and makes it small. Wanted: the screen within a second. JPEG and uncompressed TIFF are;
what is packed as one stream (PNG, LZW, Deflate) must be unpacked from its first byte on, and takes as long as Pillow.
"""

import subprocess
import sys
import tempfile
from pathlib import Path

from PIL import Image

MADE = (
    ("JPEG", "a.jpg", {"quality": 90}),
    ("TIFF, plain", "plain.tif", {}),
    ("TIFF, LZW", "lzw.tif", {"compression": "tiff_lzw"}),
    ("PNG", "a.png", {"compress_level": 3}),
)
LOOK = """
import re, sys, time
from pathlib import Path
from PIL import Image
from boxlore.disk.pictures import make_jpeg, small_pixels
Image.init()
path, how = Path(sys.argv[1]), sys.argv[2]
def memory(): return int(re.search(r"VmHWM:\\s*(\\d+)", Path("/proc/self/status").read_text())[1]) / 1024
before, began = memory(), time.process_time()
if how == "screen": make_jpeg(path, 1600)
elif how == "terminal": small_pixels(path, 160, 100)
elif how == "closer": make_jpeg(path, 1600, area=(0.4, 0.4, 0.1, 0.1))
else:
    with Image.open(path) as image:
        image.load()
        image.thumbnail((1600, 1600))
print(time.process_time() - began, memory() - before)
"""


def main() -> None:
    megapixels = float(sys.argv[1]) if len(sys.argv) > 1 else 200
    wide = round((megapixels * 1e6 * 4 / 3) ** 0.5)
    noise = Image.effect_noise((1000, 750), 40).convert("RGB").resize((4000, 3000), Image.Resampling.BICUBIC)
    picture = Image.new("RGB", (wide, wide * 3 // 4))
    for left in range(0, picture.width, noise.width):
        for top in range(0, picture.height, noise.height):
            picture.paste(noise, (left, top))
    with tempfile.TemporaryDirectory() as folder:
        for kind, name, how_saved in MADE:
            path = Path(folder, name)
            picture.save(path, **how_saved)  # type: ignore[arg-type]  # options by name
            took = {}
            for how in ("screen", "terminal", "closer", "Pillow"):
                done = subprocess.run(
                    [sys.executable, "-c", LOOK, path, how], capture_output=True, text=True, check=True
                )
                took[how] = tuple(map(float, done.stdout.split()))
            path.unlink()
            words = "; ".join(f"{how} {seconds:.2f} s, {mb:.0f} MB" for how, (seconds, mb) in took.items())
            print(f"{kind:12} {words}; ratio to Pillow {took['screen'][0] / took['Pillow'][0]:.2f}")


if __name__ == "__main__":
    main()
