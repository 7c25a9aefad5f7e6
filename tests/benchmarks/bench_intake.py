"""Intake's registering pass against plain SHA-256 of the same files. Budget: at least 0.8 of its speed.

    python tests/benchmarks/bench_intake.py [FILES]

Files of 6 MB, noise that does not compress, so that size is what counts; hashing for looks is reported apart.
"""

import hashlib
import sys
import tempfile
import time
from pathlib import Path

from PIL import Image

from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.damage import look_closer
from boxlore.tasks.scans.given_files import files_given
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix

FILES = int(sys.argv[1]) if len(sys.argv) > 1 else 60

with tempfile.TemporaryDirectory() as folder:
    home, scans = Path(folder) / "home", Path(folder) / "scans"
    scans.mkdir()
    Image.effect_noise((3000, 2200), 90).save(scans / "0.jpg", quality=97)
    first = (scans / "0.jpg").read_bytes()
    for at in range(FILES):
        (scans / f"{at}.jpg").write_bytes(first + at.to_bytes(4, "big"))
    total = sum(path.stat().st_size for path in scans.iterdir())

    begun = time.perf_counter()
    for path in scans.iterdir():
        digest = hashlib.sha256()
        with open(path, "rb") as file:
            while data := file.read(1 << 20):
                digest.update(data)
    peer = time.perf_counter() - begun

    start(home, Settings())
    with open_collection(home) as collection:
        plan = by_suffix(files_given([scans]).pictures)
        begun = time.perf_counter()
        taken = take_in(collection, plan, IntakeOptions())
        ours = time.perf_counter() - begun
        begun = time.perf_counter()
        looked = look_closer(collection)
        looking = time.perf_counter() - begun
    assert {one.state for one in taken} == {"taken"}
    print(
        f"{FILES} files, {total / 1e6:.0f} MB: SHA-256 {total / peer / 1e6:.0f} MB/s, "
        f"intake {total / ours / 1e6:.0f} MB/s, ratio {peer / ours:.2f} (budget 0.8); "
        f"looks: {looked / looking:.0f} files/s, a pass of its own"
    )
