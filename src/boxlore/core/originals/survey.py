"""From what a survey noted to lists: what to do, what to buy, what to have scanned, each line with its items.

A line of the work list joins all items that ask for the same thing. Sleeves are bought by size: the smallest standard
size that is larger than the item by a margin on both sides (a sleeve larger than the item: a museum's guide; the margin
of 3 mm and the sizes are common practice, no source; an inch is 25.4 mm).
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from boxlore.core.findings import Finding
from boxlore.core.originals.scan_quality import guide_for, pixels

MARGIN = 3.0

SLEEVES: tuple[tuple[str, float, float], ...] = (
    ("2½ × 4¼ in", 63.5, 108.0),
    ("3½ × 5 in", 92.0, 130.0),
    ("4 × 5 in", 105.0, 130.0),
    ("4 × 6 in", 105.0, 156.0),
    ("4¼ × 6½ in", 112.0, 169.0),
    ("5 × 7 in", 131.0, 182.0),
    ("8 × 10 in", 207.0, 258.0),
    ("11 × 14 in", 283.0, 360.0),
)
"""Name of the print size, and what the sleeve for it measures inside, in mm, short side first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Surveyed:
    """One item as a survey left it, with its findings. `sides` are the sides already scanned."""

    number: str
    mark: str = ""
    kind: str = "print"
    size_mm: tuple[float, ...] = ()
    enclosure: str = ""
    sides: frozenset[str] = frozenset()
    writing: bool = False
    findings: tuple[Finding, ...] = ()


@dataclass(frozen=True, slots=True)
class WorkLine:
    """One line: what to do or buy, how many, for which items, and why."""

    what: str
    count: int
    items: tuple[str, ...]
    why: str


@dataclass(frozen=True, slots=True)
class ScanningLine:
    """One original in the order for a scanning shop. `sides` in words, `pixels` width by height of each side."""

    number: str
    mark: str
    kind: str
    size: str
    ppi: int
    sides: str
    pixels: str


WORK: tuple[tuple[str, str], ...] = (
    ("hazard.", "Leave it, keep it apart, and call"),
    ("housing.rubber-band", "Cut rubber bands away"),
    ("housing.fastener", "Take fasteners off"),
    ("housing.tape", "Leave tape to a conservator"),
    ("housing.note", "House notes beside their prints"),
    ("housing.shared-sleeve", "Unmount or part: one to a sleeve"),
    ("housing.board", "Lay paper between picture and board"),
    ("housing.magnetic-page", "Photograph the page, then lift the prints"),
    ("housing.plastic-damp", "Change plastic for paper, or the room"),
    ("housing.", "Change the enclosure"),
    ("scan.no-verso", "Scan the back"),
    ("scan.coarse", "Scan again"),
    ("loan.overdue", "Give back"),
    ("condition.", "Handle with care"),
)
"""The beginning of a finding's rule, and the line of the work list it goes to; the first that fits."""


def sleeve_for(size_mm: Sequence[float]) -> str:
    """The smallest standard size whose sleeve is larger than the item, or its own measure where none is."""
    if len(size_mm) < 2:
        return "size not noted: measure first"
    short, long = sorted(size_mm)[:2]
    for name, wide, high in SLEEVES:
        if short + MARGIN <= wide and long + MARGIN <= high:
            return name
    return f"made to measure, over {short:g} × {long:g} mm"


def work_list(items: Iterable[Surveyed]) -> list[WorkLine]:
    """What to do, in the order of WORK; what harms first."""
    found: defaultdict[str, list[tuple[str, str]]] = defaultdict(list)
    for item in items:
        for finding in item.findings:
            what = next((what for start, what in WORK if finding.rule.startswith(start)), "")
            if what:
                found[what].append((item.number, finding.message))
    jobs: list[WorkLine] = []
    for what in dict.fromkeys(what for _, what in WORK):
        if rows := found.get(what):
            numbers = tuple(dict.fromkeys(number for number, _ in rows))
            reasons = list(dict.fromkeys(why for _, why in rows))
            more = f" (and {len(reasons) - 1} other reasons)" if len(reasons) > 1 else ""
            jobs.append(WorkLine(what, len(numbers), numbers, reasons[0] + more))
    return jobs


FLAT = ("print", "card", "postcard", "photograph", "clipping", "note", "letter", "document")


def shop_list(items: Iterable[Surveyed]) -> list[WorkLine]:
    """Sleeves to buy: one for each flat item that has no enclosure, or one that must be changed, by size."""
    wanted: defaultdict[str, list[str]] = defaultdict(list)
    for item in items:
        bad = any(_changes(finding.rule) for finding in item.findings)
        if item.kind in FLAT and (bad or not item.enclosure or item.enclosure.casefold() in ("none", "no")):
            wanted[sleeve_for(item.size_mm)].append(item.number)
    order = {name: at for at, (name, _, _) in enumerate(SLEEVES)}
    why = "one item to a sleeve, larger than the item, of polyester or tested paper (ISO 18902, ISO 18916)"
    return [
        WorkLine(f"Sleeves, {size}", len(numbers), tuple(numbers), why)
        for size, numbers in sorted(wanted.items(), key=lambda row: (order.get(row[0], len(order)), row[0]))
    ]


def _changes(rule: str) -> bool:
    kept = ("housing.rubber-band", "housing.fastener", "housing.tape", "housing.note", "housing.untested")
    return rule.startswith("housing.") and rule not in kept


def scan_order(items: Iterable[Surveyed]) -> list[ScanningLine]:
    """What a scanning shop gets: every side that is not scanned yet or is too coarse. Items with a hazard stay home."""
    orders: list[ScanningLine] = []
    for item in items:
        rules = {finding.rule for finding in item.findings}
        if any(rule.startswith("hazard.") for rule in rules):
            continue
        again = "scan.coarse" in rules
        sides = [side for side in ("recto", "verso") if _wanted(item, side, again=again)]
        if sides:
            guide = guide_for(item.kind, item.size_mm)
            size = " × ".join(f"{value:g}" for value in item.size_mm)
            wide = " × ".join(str(pixels(value, guide.wanted)) for value in item.size_mm)
            words = "front and back" if len(sides) == 2 else {"recto": "front", "verso": "back"}[sides[0]]
            orders.append(ScanningLine(item.number, item.mark, item.kind, size, guide.wanted, words, wide))
    return orders


def _wanted(item: Surveyed, side: str, *, again: bool) -> bool:
    if side == "verso" and not item.writing and "verso" not in item.sides:
        return False
    return side not in item.sides or again
