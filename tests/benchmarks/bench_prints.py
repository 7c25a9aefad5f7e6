"""How many prints of made sheets are found, how well, and how many are invented.

    python tests/benchmarks/bench_prints.py [EACH] [SEED] [-v]

EACH sheets of each kind (default 40). Wanted: at least 95 % found with an overlap (intersection over union) of 0.9, and
at most 2 % invented. With EACH 10, seeds 2028, 2031 and 4471, 480 of 490 are found (98.0 %) and 5 invented (1.0 %);
of those missed 8 touch another print.
"""

import sys
import time
from collections import Counter
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[2]))
from tests.made_sheets import HIGH, WIDE, overlap, sheets

from boxlore.disk.print_outlines import find_outlines

WELL = 0.9


def main() -> None:
    each, seed = int(sys.argv[1]) if len(sys.argv) > 1 else 40, int(sys.argv[2]) if len(sys.argv) > 2 else 2026
    real: Counter[str] = Counter()
    found: Counter[str] = Counter()
    invented: Counter[str] = Counter()
    seconds = []
    for at, sheet in enumerate(sheets(each, seed)):
        began = time.perf_counter()
        quads = [np.array(quad) * (WIDE, HIGH) for quad in find_outlines(sheet.pixels).quads]
        seconds.append(time.perf_counter() - began)
        hits = [max((overlap(outline, quad) for quad in quads), default=0.0) for outline in sheet.outlines]
        real[sheet.kind] += len(hits)
        found[sheet.kind] += sum(hit >= WELL for hit in hits)
        wrong = sum(max((overlap(quad, outline) for outline in sheet.outlines), default=0.0) < 0.5 for quad in quads)
        invented[sheet.kind] += wrong
        if "-v" in sys.argv and (wrong or min(hits) < WELL):
            print(at, sheet.kind, [round(hit, 2) for hit in hits], "invented", wrong)
    for kind in real:
        print(f"{kind:15} {found[kind]:4} of {real[kind]:4} found, {invented[kind]} invented")
    total = sum(real.values())
    print(f"all             {sum(found.values()) / total:.1%} found, {sum(invented.values()) / total:.1%} invented; "
          f"{sorted(seconds)[len(seconds) // 2]:.2f} s a sheet")  # fmt: skip


if __name__ == "__main__":
    main()
