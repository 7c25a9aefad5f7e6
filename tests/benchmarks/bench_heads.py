"""How many heads are proposed on the demo's drawn groups, and on pictures named here, and how many marks are false.

    python tests/benchmarks/bench_heads.py [FILE ...]

Of the demo the heads are known (the markers of statements.csv; of groups with others beside, counted by hand). Of a
FILE what is found is written, to be looked at.
"""

import csv
import sys
import time
from pathlib import Path

from boxlore.disk.outlines import Head
from boxlore.disk.seeing import heads_in

DEMO = Path(__file__).parents[2] / "demo_family"
COUNTED = {"school": 17, "team": 9, "quay": 6, "landfall": 7}
"""How many heads there are where not every one has a marker."""


def main() -> None:
    rows = list(csv.DictReader((DEMO / "intake.csv").open(encoding="utf-8")))
    items = {row["item"]: row for row in reversed(rows) if row["file"] and row["side"] == "recto"}
    marks: dict[str, list[tuple[float, ...]]] = {}
    for row in csv.DictReader((DEMO / "statements.csv").open(encoding="utf-8")):
        if row["marker"]:
            marks.setdefault(row["item"], []).append(tuple(map(float, row["marker"].split())))
    found = real = false = 0
    for item, boxes in marks.items():
        row = items[item]
        area = tuple(map(float, row["area"].split())) if row["area"] else ()
        began = time.process_time()
        heads = heads_in(DEMO / row["file"], area=area)
        seconds = time.process_time() - began
        hit = [box for box in boxes if any(_in(head, box, area) for head in heads)]
        wanted = COUNTED.get(item, len(boxes))
        right = min(len(heads), wanted) if item in COUNTED else len(hit)
        found, real, false = found + right, real + wanted, false + len(heads) - right
        print(f"{item:14} {right:2} of {wanted:2} found, {len(heads) - right} false, {seconds:.1f} s of the processor")
    print(f"all            {found} of {real} found ({found / real:.0%}), {false} false")
    for name in sys.argv[1:]:
        heads = heads_in(Path(name))
        print(name, len(heads), [(round(head.x, 3), round(head.y, 3), round(head.width, 3)) for head in heads])


def _in(head: Head, box: tuple[float, ...], area: tuple[float, ...]) -> bool:
    left, top, wide, high = area or (0.0, 0.0, 1.0, 1.0)
    x, y = left + head.x * wide, top + head.y * high
    return box[0] <= x <= box[0] + box[2] and box[1] <= y <= box[1] + box[3] * 1.3


if __name__ == "__main__":
    main()
