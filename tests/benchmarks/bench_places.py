"""Place look-ups on the whole data: exact, by prefix, with a slip of the pen, hostile; and the first build.

Budgets, in processor time, so that other work on the machine does not count: exact 0.1 ms, prefix 1 ms, typo 15 ms,
each at the 95th percentile; the same again 0.01 ms; first build 10 s; hostile 50 ms; memory of a running sitting
+20 MB.
Peer: rapidfuzz over every name in a list.

    python tests/benchmarks/bench_places.py
"""

import random
import resource
import tempfile
from collections.abc import Callable
from pathlib import Path
from time import process_time

from rapidfuzz import process
from rapidfuzz.distance import OSA

from boxlore.core.places.taking_apart import fold_place
from boxlore.gazetteer.lookup import open_gazetteer
from boxlore.gazetteer.matching import exact


def percentile(run: Callable[[str], object], words: list[str]) -> float:
    taken = []
    for one in words:
        start = process_time()
        run(one)
        taken.append(process_time() - start)
    return sorted(taken)[len(taken) * 95 // 100] * 1000


def slip(name: str, rng: random.Random) -> str:
    at = rng.randrange(1, len(name) - 1)
    return name[:at] + name[at + 1] + name[at] + name[at + 2 :]


def main() -> None:
    rng = random.Random(1)
    with tempfile.TemporaryDirectory() as folder:
        start = process_time()
        gazetteer = open_gazetteer(Path(folder))
        print(f"first build {process_time() - start:.1f} s (budget 10)")
        before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
        db = gazetteer._db
        names = [row[0] for row in db.execute("SELECT name FROM place WHERE population > 20000 ORDER BY id")]
        some = rng.sample(names, 1000)
        longer = [slip(name, rng) for name in rng.sample([one for one in names if len(one) > 5], 300)]
        print(f"exact look-up {percentile(lambda one: exact(db, one), some):.3f} ms (budget 0.1)")
        print(f"whole reading {percentile(gazetteer.read, some):.2f} ms")
        home = frozenset({"NZ", "EE"})
        at_home = percentile(lambda one: gazetteer.read(one, year=1930, home=home), some)
        print(f"whole reading, mostly abroad, for a family of two countries {at_home:.2f} ms")
        print(f"prefix {percentile(lambda one: gazetteer.complete(one[:4]), some):.2f} ms (budget 1)")
        typo = percentile(gazetteer.read, longer)
        print(f"typo {typo:.1f} ms (budget 15)")
        print(f"typo again {percentile(gazetteer.read, longer):.3f} ms (budget 0.01)")
        hostile = ["a" * 10_000, "a b " * 90, "\u202e" * 300, "x" * 39, "," * 399, "near " * 80]
        print(f"hostile {max(percentile(gazetteer.read, [one]) for one in hostile):.1f} ms (budget 50)")
        after = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
        print(f"memory +{(after - before) / 1024:.0f} MB (budget 20)")
        every = [row[0] for row in db.execute("SELECT DISTINCT folded FROM name")]
        peer = percentile(
            lambda one: process.extract(fold_place(one), every, scorer=OSA.distance, limit=5), longer[:20]
        )
        print(f"peer: rapidfuzz over all {len(every):,} names {peer:.0f} ms; ratio {peer / typo:.1f}")


if __name__ == "__main__":
    main()
