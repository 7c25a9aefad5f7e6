"""100,000 people: completing a name (budget 5 ms at the 95th percentile) and proposing duplicates (60 s).

The peer of completion is a scan of all names in memory. Run: python tests/benchmarks/bench_people.py [PEOPLE]
"""

import random
import resource
import sys
import tempfile
import time
from pathlib import Path

from boxlore.core.people.duplicates import propose
from boxlore.core.statements import Kind, fold
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.people.tree_import import read_tree_date
from boxlore.tasks.telling.understanding import date_reading, phrase_settings

GIVEN = (
    "Kristjan Mari Juhan Helmi Aino Arvo Liisi Peeter Leida Ann Patrick Edmund Jane Michael Frank Hana Tom Con".split()
)
PARTS = "ta mm rou rke le pik mä gi kuu sk ka fly nn he riot pa ra saar kõ iv õu na puu lo ve to rn".split()


def names(count: int, seed: int) -> list[tuple[str, str, int]]:
    chance = random.Random(seed)
    families = ["".join(chance.choices(PARTS, k=chance.randint(2, 3))).capitalize() for _ in range(8000)]
    made = [(chance.choice(GIVEN), chance.choice(families), chance.randint(1750, 2000)) for _ in range(count - 200)]
    return made + chance.sample(made, 200)


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    told = names(count, 7)
    with tempfile.TemporaryDirectory() as folder:
        start(Path(folder) / "c", Settings())
        with open_collection(Path(folder) / "c") as collection:
            settings = phrase_settings(collection.settings)
            began = time.perf_counter()
            for at in range(0, count, 1000):
                act = collection.act("people")
                for given, family, born in told[at : at + 1000]:
                    made = act.new(Kind.PERSON)
                    act.state(made, "given", given)
                    act.state(made, "family", family)
                    read = date_reading(read_tree_date(str(born), settings), settings)
                    act.readings.append((act.state(made, "born", str(born)).id, read))
                act.done()
            print(f"{count} people written in {time.perf_counter() - began:.0f} s")
            began = time.perf_counter()
            people = collection.people()
            print(f"the registry read in {time.perf_counter() - began:.1f} s")
            complete(collection, told)
            began = time.perf_counter()
            found = propose(people.values())
            print(f"{len(found)} proposals in {time.perf_counter() - began:.1f} s (budget 60)")
    print(f"{resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB at most")


def complete(collection, told: list[tuple[str, str, int]]) -> None:  # type: ignore[no-untyped-def]
    chance = random.Random(8)
    asked = [chance.choice(told)[chance.randint(0, 1)][: chance.randint(1, 5)] for _ in range(300)]
    times = []
    for one in asked:
        began = time.perf_counter()
        collection.store.complete_people(one, 8)
        times.append(time.perf_counter() - began)
    slow = sorted(zip(times, asked, strict=True))
    folded = [fold(f"{given} {family}") for given, family, _ in told]
    began = time.perf_counter()
    for one in asked[:20]:
        _ = [name for name in folded if name.startswith(fold(one)) or f" {fold(one)}" in name][:8]
    peer = (time.perf_counter() - began) / 20
    median, p95, worst = (slow[int(len(slow) * part)][0] * 1000 for part in (0.5, 0.95, 0.999))
    print(
        f"completion: {median:.2f} ms median, {p95:.2f} ms at the 95th percentile, {worst:.1f} ms at most "
        f"(“{slow[-1][1]}”); budget 5 ms; a scan in memory: {peer * 1000:.1f} ms, ratio {p95 / peer / 1000:.3f}"
    )


if __name__ == "__main__":
    main()
