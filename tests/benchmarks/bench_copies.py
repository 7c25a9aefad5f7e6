"""Captioned copies against `shutil.copyfile` and against pyexiv2, all flushed to the disk, ours proved as well.

    python tests/benchmarks/bench_copies.py [JPEGS] [TIFFS]

JPEGs of 6 MB and TIFFs of 60 MB. The last line of each is as `boxlore copies` works, on all cores.
Budgets: at least 0.6 of copying and flushing, at least 2 times pyexiv2.
"""

import os
import resource
import shutil
import sys
import tempfile
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pyexiv2
from PIL import Image

from boxlore.core.crosswalk.metadata_values import Embedding, Text, alternative
from boxlore.disk.writing import replacing, write_hashed, write_pieces
from boxlore.formats import picture_files

JPEGS = int(sys.argv[1]) if len(sys.argv) > 1 else 60
TIFFS = int(sys.argv[2]) if len(sys.argv) > 2 else 6

CAPTION = Embedding(
    xmp=(("dc:title", alternative("Nets drying", "en")), ("photoshop:DateCreated", Text("1912"))),
    iim=(((2, 5), ("Nets drying",)), ((2, 120), ("Nets drying at Haapsalu",))),
)


def flush(path: Path) -> None:
    handle = os.open(path, os.O_RDONLY)
    os.fsync(handle)
    os.close(handle)


def plain(source: Path, target: Path) -> None:
    shutil.copyfile(source, target)
    flush(target)


def by_pyexiv2(source: Path, target: Path) -> None:
    shutil.copyfile(source, target)
    with pyexiv2.Image(str(target)) as image:
        image.modify_xmp({"Xmp.dc.title": "Nets drying", "Xmp.photoshop.DateCreated": "1912"})
        image.modify_iptc({"Iptc.Application2.Caption": "Nets drying at Haapsalu"})
    flush(target)


def ours(source: Path, target: Path) -> None:
    """As `boxlore copies`: written beside and hashed, flushed, proved, and then named."""
    with open(source, "rb") as file, replacing(target) as out:
        write_hashed(picture_files.rewrite(file, CAPTION).pieces, file, out)
        out.flush()
        with open(out.name, "rb") as written:
            assert picture_files.verify(file, written, CAPTION) == []


def ours_unflushed(source: Path, target: Path) -> None:
    """The same bytes, proved, without waiting for the disk."""
    with open(source, "rb") as file:
        made = picture_files.rewrite(file, CAPTION)
        with open(target, "wb") as out:
            write_pieces(made.pieces, file, out)
        with open(target, "rb") as copy:
            assert picture_files.verify(file, copy, CAPTION) == []


def speed(name: str, do: Callable[[Path, Path], None], sources: list[Path], out: Path, workers: int = 1) -> float:
    shutil.rmtree(out, ignore_errors=True)
    out.mkdir()
    os.sync()
    start = time.perf_counter()
    if workers == 1:
        for path in sources:
            do(path, out / path.name)
    else:
        with ThreadPoolExecutor(workers) as pool:
            list(pool.map(lambda path: do(path, out / path.name), sources))
    taken = time.perf_counter() - start
    size = sum(path.stat().st_size for path in sources)
    print(f"  {name:18} {size / taken / 1e6:7.0f} MB/s")
    return size / taken


with tempfile.TemporaryDirectory(dir=os.environ.get("BENCH_FOLDER")) as folder:
    home = Path(folder)
    noise = Image.effect_noise((3000, 2200), 90)
    noise.save(home / "one.jpg", quality=97)
    Image.merge("RGB", [Image.effect_noise((5000, 4000), 60)] * 3).save(home / "one.tif")
    jpegs = [home / f"{at}.jpg" for at in range(JPEGS)]
    tiffs = [home / f"{at}.tif" for at in range(TIFFS)]
    for path in jpegs:
        shutil.copyfile(home / "one.jpg", path)
    for path in tiffs:
        shutil.copyfile(home / "one.tif", path)
    for kind, sources in (("JPEG", jpegs), ("TIFF", tiffs)):
        print(f"{kind}: {len(sources)} files, {sum(path.stat().st_size for path in sources) / 1e6:.0f} MB")
        speed("warming up", plain, sources, home / "out")
        copied = speed("copyfile + fsync", plain, sources, home / "out")
        exiv = speed("pyexiv2 + fsync", by_pyexiv2, sources, home / "out")
        speed("boxlore, one core", ours, sources, home / "out")
        mine = speed("boxlore, proved", ours, sources, home / "out", os.cpu_count() or 2)
        bare = speed("copyfile alone", lambda one, two: shutil.copyfile(one, two), sources, home / "out")
        loose = speed("boxlore, no fsync", ours_unflushed, sources, home / "out", os.cpu_count() or 2)
        print(f"  ratio without fsync {loose / bare:.2f}")
        print(f"  ratio {mine / copied:.2f} of copying (budget 0.6), {mine / exiv:.1f} times pyexiv2 (budget 2)")
    print(f"most memory: {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB")
