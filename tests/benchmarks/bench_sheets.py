"""The album sheet and the family pages, from pictures on the disk to the finished file, each in a process of its own.

    python tests/benchmarks/bench_sheets.py [SHEET] [PAGES]

Each is a print of 10 × 15 cm scanned at 300 ppi: SHEET (500) go on a sheet, PAGES (2,000) into pages. The peer is a
plain Pillow loop that only shrinks the same pictures. Budgets: 500 on a sheet in 10 s and 800 MB; pages of 2,000 in
60 s.
"""

import io
import os
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from PIL import Image

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.telling.statements import Teller, Telling

SHEET = int(sys.argv[1]) if len(sys.argv) > 1 else 500
PAGES = int(sys.argv[2]) if len(sys.argv) > 2 else 2000
MAIN = "import sys; from boxlore.cli.main import main; main(sys.argv[1:])"
PEER = """
import sys
from PIL import Image
for path in sys.argv[2:]:
    with Image.open(path) as image:
        image.draft("RGB", (int(sys.argv[1]),) * 2)
        image.thumbnail((int(sys.argv[1]),) * 2, Image.Resampling.LANCZOS)
        image.convert("RGB").tobytes()
"""


def photographs(folder: Path, count: int, size: tuple[int, int]) -> list[Path]:
    """As many different JPEGs: one picture with grain in it, each with a comment of its own (T.81 B.2.4.5)."""
    folder.mkdir()
    grain = Image.merge("RGB", [Image.effect_noise(size, 40)] * 3)
    out = io.BytesIO()
    grain.save(out, "JPEG", quality=90)
    data = out.getvalue()
    paths = [folder / f"{at:05d}.jpg" for at in range(count)]
    for at, path in enumerate(paths):
        path.write_bytes(data[:2] + b"\xff\xfe\x00\x08" + b"%06d" % at + data[2:])
    return paths


def collection(home: Path, paths: list[Path]) -> None:
    start(home, Settings(prefix="BN"))
    with open_collection(home) as made:
        list(take_in(made, by_suffix(paths), IntakeOptions(box="1", folder="1")))
        teller = Teller(made)
        act = made.act("told")
        people = [act.new(Kind.PERSON) for _ in range(200)]
        for at, person in enumerate(people):
            act.state(person, "name", f"Person {at}")
        for at, (_, ident) in enumerate(made.store.items()):
            item, how = Subject(Kind.ITEM, ident), Telling()
            teller.add_words(act, item, "story", f"Story {at}. " + "It was a long summer by the sea. " * (at % 12), how)
            teller.add_words(act, item, "date", str(1900 + at % 70), how)
            teller.add_words(act, item, "person", f"Person {at % 200}", how)
        act.done()


def processor() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def timed(what: str, *arguments: str) -> float:
    began, busy = time.perf_counter(), processor()
    subprocess.run([sys.executable, "-c", *arguments], check=True, stderr=subprocess.DEVNULL)
    taken = time.perf_counter() - began
    print(f"  {what:34} {taken:6.2f} s, {processor() - busy:6.2f} s of processor")
    return taken


with tempfile.TemporaryDirectory(dir=os.environ.get("BENCH_FOLDER")) as folder:
    home = Path(folder)
    for count, size, longest, command, budget in (
        (SHEET, (1800, 1200), 880, ("sheet", "out.pdf"), 10),
        (PAGES, (1800, 1200), 1600, ("pages", "out"), 60),
    ):
        place = home / command[0]
        paths = photographs(place, count, size)
        collection(home / f"{command[0]}_family", paths)
        print(f"{count} photographs, {sum(path.stat().st_size for path in paths) / 1e6:.0f} MB, to {command[0]}")
        peer = timed("Pillow shrinks them, one core", PEER, str(longest), *map(str, paths))
        arguments = ["-c", str(home / f"{command[0]}_family"), command[0], str(home / command[1])]
        mine = timed(f"boxlore {command[0]}", MAIN, *arguments, "--for", "family", "--on", "2026-11-25")
        print(f"  ratio {mine / peer:.2f} of the plain loop (budget {budget} s for the whole)")
        peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
        print(f"  most memory of any process so far: {peak:.0f} MB")
