"""Lists from what a survey noted: what to do, what to buy, what to have scanned. Each line names its items.

A line of the work list joins all items that need the same thing. Sleeves are bought by size: the smallest standard
size that is larger than the item by a margin on both sides (a sleeve larger than the item: a museum's guide; the margin
of 3 mm and the sizes are common practice, no source; an inch is 25.4 mm).
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from boxlore.core.findings import Finding
from boxlore.core.originals.scan_quality import guide_for, pixels

MARGIN = 3.0
"""In mm: how much larger than the item a sleeve must be, each way."""

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
"""Name of the print size, and what the sleeve for it measures inside: short side, long side, in mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Surveyed:
    """One item as it was surveyed, with its findings. `sides` are the sides already scanned (recto, verso).

    `size_mm` is width and height, empty if it was not noted; `writing` whether there is writing on the back.
    """

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
    """One line of a list: what to do or to buy, how many, for which items (numbers), and why."""

    what: str
    count: int
    items: tuple[str, ...]
    why: str


@dataclass(frozen=True, slots=True)
class ScanningLine:
    """One original in the order for a scanning shop. `sides` in words, `pixels` as `width × height` of each side."""

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
"""The beginning of a finding's rule -> the line of the work list for it; the first row that fits counts."""


def sleeve_for(size_mm: Sequence[float]) -> str:
    """The name of the smallest sleeve of SLEEVES that is large enough; for larger items, their own size in mm."""
    if len(size_mm) < 2:
        return "size not noted: measure first"
    short, long = sorted(size_mm)[:2]
    for name, wide, high in SLEEVES:
        if short + MARGIN <= wide and long + MARGIN <= high:
            return name
    return f"made to measure, over {short:g} × {long:g} mm"


def work_list(items: Iterable[Surveyed]) -> list[WorkLine]:
    """The lines of what to do, in the order of WORK, which has hazards first."""
    reasons_of: defaultdict[str, list[tuple[str, str]]] = defaultdict(list)
    for item in items:
        for finding in item.findings:
            job = next((job for start, job in WORK if finding.rule.startswith(start)), "")
            if job:
                reasons_of[job].append((item.number, finding.message))
    jobs: list[WorkLine] = []
    for job in dict.fromkeys(job for _, job in WORK):
        if rows := reasons_of.get(job):
            numbers = tuple(dict.fromkeys(number for number, _ in rows))
            reasons = list(dict.fromkeys(why for _, why in rows))
            further = f" (and {len(reasons) - 1} other reasons)" if len(reasons) > 1 else ""
            jobs.append(WorkLine(job, len(numbers), numbers, reasons[0] + further))
    return jobs


FLAT = ("print", "card", "postcard", "photograph", "clipping", "note", "letter", "document")


def shop_list(items: Iterable[Surveyed]) -> list[WorkLine]:
    """Sleeves to buy: one for each flat item that has no enclosure, or one that must be changed, by size."""
    by_size: defaultdict[str, list[str]] = defaultdict(list)
    for item in items:
        bad = any(_changes(finding.rule) for finding in item.findings)
        if item.kind in FLAT and (bad or not item.enclosure or item.enclosure.casefold() in ("none", "no")):
            by_size[sleeve_for(item.size_mm)].append(item.number)
    order = {name: at for at, (name, _, _) in enumerate(SLEEVES)}
    why = "one item to a sleeve, larger than the item, of polyester or tested paper (ISO 18902, ISO 18916)"
    return [
        WorkLine(f"Sleeves, {size}", len(numbers), tuple(numbers), why)
        for size, numbers in sorted(by_size.items(), key=lambda row: (order.get(row[0], len(order)), row[0]))
    ]


def _changes(rule: str) -> bool:
    """Whether a finding of this rule means that the item needs another enclosure."""
    without_change = ("housing.rubber-band", "housing.fastener", "housing.tape", "housing.note", "housing.untested")
    return rule.startswith("housing.") and rule not in without_change


def scan_order(items: Iterable[Surveyed]) -> list[ScanningLine]:
    """The order for a scanning shop: the sides not scanned yet, and those of too few pixels. Items with a hazard are
    not sent away."""
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
