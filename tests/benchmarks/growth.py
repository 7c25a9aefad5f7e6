"""How the work of each command grows: four times the items may cost at most 4.6 times the processor time.

    python tests/benchmarks/growth.py [--items 1000] [--at-most 4.6]

Collections of a few, of ITEMS and of four times ITEMS are made and worked on in one process, the smallest first, so
that what is loaded once is loaded then. Commands on scans have a tenth of the items; one story names a tenth as many
people, in what reads like one sentence. What is measured is the time of the processor, all threads and children, which
other programs on the machine hardly change; below QUICK seconds it is noise, so that a shorter time counts as that. CI
runs it at 1,000 and 4,000 items with a wide margin, for it is to find what grows with the square of the items (16
times), not a slow day.
"""

import argparse
import csv
import os
import random
import resource
import shutil
import sys
import tempfile
import time
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path

from PIL import Image

from boxlore.cli.main import boxlore

QUICK = 0.3
GIVEN = "Kristjan Mari Juhan Helmi Aino Arvo Liisi Peeter Leida Ann Patrick Edmund Jane Michael Frank Hana".split()
PARTS = "ta mm rou rke le pik mä gi kuu sk ka fly nn he riot pa ra saar kõ iv õu na puu lo ve to rn".split()
PLACES = "Reval|Tallinn|Port Chalmers|Dunedin|Hapsal|Oamaru, New Zealand|Pernau|Dorpat|Lyttelton|Narva".split("|")
DATES = "about {}|{}|summer {}|before {}|May {}|probably {}|12 May {}|Christmas {}".split("|")


@dataclass(frozen=True, slots=True)
class Job:
    """One command; in its arguments HOME is the collection, OUT a folder elsewhere, MADE one with what goes in."""

    name: str
    arguments: str
    with_scans: bool = False


JOBS = (
    Job("new", "new HOME --prefix TR"),
    Job("intake-without-scan", "-c HOME intake --without-scan COUNT --box 1 --folder 1 --yes"),
    Job("tree", "-c HOME people import MADE/tree.ged"),
    Job("tell", "-c HOME tell --from MADE/told.csv"),
    Job("tell-again", "-c HOME tell --from MADE/told.csv"),
    Job("tell-wrong", "-c HOME tell --from MADE/wrong.csv"),
    Job("check", "-c HOME check"),
    Job("evidence", "-c HOME evidence --why"),
    Job("find", "-c HOME find harbour winter"),
    Job("show", "-c HOME show TRA-0005"),
    Job("people", "-c HOME people list"),
    Job("duplicates", "-c HOME people duplicates"),
    Job("events", "-c HOME events list"),
    Job("housing", "-c HOME housing what"),
    Job("housing-scans", "-c HOME housing scans"),
    Job("survey", "-c HOME survey --work OUT/work.csv"),
    Job("labels", "-c HOME labels OUT/labels.pdf"),
    Job("offer", "-c HOME offer OUT/offer"),
    Job("tell-long", "-c HOME tell --from MADE/long.csv"),
    Job("transfer-long", "-c HOME transfer OUT/long --item TRA-0001 --originals yes --yes"),
    Job("new", "new HOME --prefix TR", with_scans=True),
    Job("intake", "-c HOME intake MADE/scans --copy --box 1 --folder 1 --yes", with_scans=True),
    Job("tree", "-c HOME people import MADE/tree.ged", with_scans=True),
    Job("tell", "-c HOME tell --from MADE/told.csv", with_scans=True),
    Job("intake-again", "-c HOME intake MADE/scans --copy --yes", with_scans=True),
    Job("scan-turn", "-c HOME scan turn TRA-0005", with_scans=True),
    Job("verify", "-c HOME verify", with_scans=True),
    Job("copies", "-c HOME copies OUT/copies", with_scans=True),
    Job("copies-again", "-c HOME copies OUT/copies", with_scans=True),
    Job("copies-outside", "-c HOME copies OUT/outside --for outside", with_scans=True),
    Job("sheet", "-c HOME sheet OUT/album.pdf", with_scans=True),
    Job("slips", "-c HOME slips OUT/slips.pdf", with_scans=True),
    Job("worksheet", "-c HOME worksheet OUT/worksheet.pdf", with_scans=True),
    Job("pages", "-c HOME pages OUT/pages", with_scans=True),
    Job("transfer", "-c HOME transfer OUT/transfer --originals yes --yes", with_scans=True),
)


def make(folder: Path, count: int, *, with_scans: bool) -> None:
    """What goes into a collection of so many items: a tree file, tables of statements, scans that look different."""
    folder.mkdir(parents=True)
    chance = random.Random(7)
    families = ["".join(chance.choices(PARTS, k=chance.randint(2, 3))).capitalize() for _ in range(count // 40 + 5)]
    people = [(chance.choice(GIVEN), chance.choice(families), chance.randint(1850, 2015)) for _ in range(count // 10)]
    tree = ["0 HEAD", "1 GEDC", "2 VERS 5.5.1", "1 CHAR UTF-8"]
    for at, (given, family, born) in enumerate(people):
        tree += [f"0 @I{at}@ INDI", f"1 NAME {given} /{family}/", "1 BIRT", f"2 DATE {born}"]
        tree += ["1 DEAT", f"2 DATE {born + 60}"] if born < 1930 and at % 3 else []
    (folder / "tree.ged").write_text("\n".join([*tree, "0 TRLR", ""]), encoding="utf-8")
    with ExitStack() as stack:
        told, wrong, long = (
            csv.writer(stack.enter_context(open(folder / f"{name}.csv", "w", encoding="utf-8", newline="")))
            for name in ("told", "wrong", "long")
        )
        for rows in (told, wrong, long):
            rows.writerow(("item", "field", "text", "audience"))
        each = (f"{given} {family} and I were at the harbour in {at}." for at, (given, family, _) in enumerate(people))
        long.writerow(("TRA-0001", "story", " ".join(each), "anyone"))
        for at in range(1, count + 1):
            number, (shown, named) = f"TRA-{at:04d}", chance.choices(people, k=2)
            says = f" {named[0]} {named[1]} said so." if at % 4 == 0 else ""
            for field, words in (
                ("title", f"Harbour {at}, with the ships in"),
                ("date", chance.choice(DATES).format(chance.randint(1880, 1990))),
                ("place", chance.choice(PLACES)),
                ("person", f"{shown[0]} {shown[1]}"),
                ("story", f"You could walk across the harbour on the decks in winter {at}.{says}"),
            ):
                told.writerow((number, field, words, "anyone"))
            wrong.writerow((number, "storey", "On the decks.", "anyone"))
    if with_scans:
        (folder / "scans").mkdir()
        for at in range(count):
            small = Image.frombytes("L", (9, 8), chance.randbytes(72))
            small.resize((48, 32), Image.Resampling.NEAREST).save(folder / "scans" / f"{at:06d}.jpg")


def worked() -> float:
    """Seconds of the processor so far, of this process and of its children that have ended."""
    children = resource.getrusage(resource.RUSAGE_CHILDREN)
    return time.process_time() + children.ru_utime + children.ru_stime


def quietly(words: list[str]) -> float:
    """The processor time of a command, what it says going nowhere."""
    kept = [os.dup(1), os.dup(2)]
    nowhere = os.open(os.devnull, os.O_WRONLY)
    sys.stdout.flush()
    try:
        os.dup2(nowhere, 1)
        os.dup2(nowhere, 2)
        begun = worked()
        boxlore(words, standalone_mode=False)
        return worked() - begun
    finally:
        sys.stdout.flush()
        for stream, was in enumerate(kept, 1):
            os.dup2(was, stream)
            os.close(was)
        os.close(nowhere)


def scanned(items: int) -> int:
    """How many items a collection with scans has."""
    return max(20, items // 10)


def measure(top: Path, items: int) -> dict[Job, float]:
    """Seconds of each job, on a collection of so many items, or on one of a tenth with their scans."""
    times: dict[Job, float] = {}
    for with_scans in (False, True):
        count = scanned(items) if with_scans else items
        folder = top / f"{items}-{with_scans}"
        make(folder / "made", count, with_scans=with_scans)
        (folder / "out").mkdir()
        places = {"HOME": folder / "home", "OUT": folder / "out", "MADE": folder / "made", "COUNT": count}
        for job in JOBS:
            if job.with_scans == with_scans:
                words = [str(Path(*(str(places.get(part, part)) for part in Path(word).parts)))
                         for word in job.arguments.split()]  # fmt: skip
                times[job] = quietly(words)
        shutil.rmtree(folder)
    return times


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--items", type=int, default=1000)
    parser.add_argument("--at-most", type=float, default=4.6)
    options = parser.parse_args()
    sizes = (60, options.items, 4 * options.items)
    with tempfile.TemporaryDirectory() as folder:
        _, few, many = (measure(Path(folder), size) for size in sizes)
    too_fast: list[str] = []
    print(f"{'':22}{'items':>8}{'seconds':>9}{'seconds at 4 times as many':>28}{'growth':>8}{'ms an item':>12}")
    for job, seconds in many.items():
        count = scanned(options.items) if job.with_scans else options.items
        growth = max(seconds, QUICK) / max(few[job], QUICK)
        each = seconds / count / 4 * 1000
        print(f"{job.name:22}{count:8,}{few[job]:9.2f}{seconds:28.2f}{growth:8.1f}{each:12.2f}")
        too_fast += [f"{job.name} {growth:.1f}"] if growth > options.at_most else []
    print(f"{resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB at most")
    if too_fast:
        sys.exit(f"more than {options.at_most} times the work for four times the items: {', '.join(too_fast)}")


if __name__ == "__main__":
    main()
