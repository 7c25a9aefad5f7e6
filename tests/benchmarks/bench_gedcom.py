"""A tree file of 50,000 people, read and taken in. Budget for reading: 3 s and 200 MB.

The peer is a plain loop over the same bytes that decodes and splits every line and keeps nothing.
Run: python tests/benchmarks/bench_gedcom.py [PEOPLE] [--import]
"""

import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

import ansel

from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.tree_file_opening import read_file
from boxlore.tasks.people.tree_import import import_tree

GIVEN = (
    "Kristjan Mari Juhan Helmi Aino Arvo Liisi Peeter Leida Ann Patrick Edmund Jane Michael Frank Hana Tom Con".split()
)
FAMILY = "Tamm Rourke Lepik Mägi Kuusk Kask Flynn Heriot Parata Saar Kõiv Õunapuu".split()


def lines(people: int) -> Iterator[str]:
    """Families of five: two parents, three children, each child married in the next family."""
    yield from ("0 HEAD", "1 SOUR bench", "1 GEDC", "2 VERS 5.5.1", "2 FORM LINEAGE-LINKED", "1 CHAR {char}")
    for at in range(people):
        born = 1700 + at * 250 // people
        yield from (
            f"0 @I{at}@ INDI", f"1 NAME {GIVEN[at % 17]} {GIVEN[at % 13]} /{FAMILY[at % 11]}{at % 700}/",
            f"1 SEX {'MF'[at % 2]}", "1 BIRT", f"2 DATE {1 + at % 28} MAY {born}", "2 PLAC Reval, Estonia",
            "1 DEAT", f"2 DATE ABT {born + 60}", "2 PLAC Port Chalmers, New Zealand", "1 OCCU farmer",
            f"1 FAMC @F{at // 5}@",
        )  # fmt: skip
    for at in range(people // 5 - 2):
        yield from (f"0 @F{at + 1}@ FAM", f"1 HUSB @I{at * 5}@", f"1 WIFE @I{at * 5 + 1}@", "1 MARR", "2 DATE 1720")
        yield from (f"1 CHIL @I{(at + 1) * 5 + child}@" for child in range(5))
    yield "0 TRLR"


def memory() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def read_only(path: Path) -> None:
    began, busy = time.perf_counter(), time.process_time()
    opened = read_file(path)
    tree, encoding = opened.tree, opened.encoding
    took, busy = time.perf_counter() - began, time.process_time() - busy
    print(f"{len(tree.individuals)} people, {encoding.codec}: {took:.2f} s, {busy:.2f} s busy (budget 3 s)", end="; ")
    print(f"{memory():.0f} MB at most (budget 200 MB)")


def peer(path: Path, codec: str) -> float:
    began = time.perf_counter()
    count = 0
    for line in path.read_bytes().split(b"\n"):
        count += len(line.decode(codec).split(" ", 2))
    return time.perf_counter() - began


def main() -> None:
    people = int(sys.argv[1]) if sys.argv[1:2] and sys.argv[1].isdigit() else 50_000
    ansel.register()
    with tempfile.TemporaryDirectory() as folder:
        for char, codec in (("UTF-8", "utf-8"), ("ANSEL", "gedcom")):
            path = Path(folder) / f"{codec}.ged"
            with open(path, "wb") as file:  # in pieces, so that the reader's memory is not hidden by ours
                for line in lines(people):
                    file.write(f"{line.replace('{char}', char)}\n".encode(codec))
            print(f"{path.stat().st_size / 1e6:.1f} MB", end="; ", flush=True)
            subprocess.run([sys.executable, __file__, "--read", str(path)], check=True)
            print(f"  peer, decoding and splitting only: {peer(path, codec):.2f} s")
        if "--import" not in sys.argv:
            return
        home = Path(folder) / "c"
        start(home, Settings())
        with open_collection(home) as collection:
            for what in ("taken in", "again"):
                began = time.perf_counter()
                taken = import_tree(collection, Path(folder) / "utf-8.ged", name="bench")
                took = time.perf_counter() - began
                print(f"{what}: {taken.new} new, {taken.same} as before, {taken.statements} statements, {took:.1f} s")
    print(f"{memory():.0f} MB at most with the import")


if __name__ == "__main__":
    if sys.argv[1:2] == ["--read"]:
        read_only(Path(sys.argv[2]))
    else:
        main()
