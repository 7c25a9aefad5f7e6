"""The check of the originals: how each item and container is housed, condition and hazards, places, loans, scans."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from boxlore.core.errors import CouldNot
from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.condition import ConditionNoted, condition_findings
from boxlore.core.originals.housing import Housed, container_findings, housing_findings
from boxlore.core.originals.scan_quality import ScanFacts, largest_print, scan_findings, verso_missing
from boxlore.core.records.containers import Container
from boxlore.core.records.in_force import AS_SCANNED, Record, ScanFile
from boxlore.core.statements import Kind, Said, Subject
from boxlore.disk.pictures import read_pixel_format
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records import EVERYTHING, Selection, records
from boxlore.tasks.originals.climate import Judged, humidity_at, judged
from boxlore.tasks.originals.housing import House, house_of, place_findings


@dataclass(frozen=True, slots=True)
class HousingFound:
    """A finding with the item it is about, or the container (then `number` is empty)."""

    finding: Finding
    number: str
    mark: str


@dataclass(frozen=True, slots=True)
class Ground:
    """What the check of every item rests on, read once."""

    house: House
    climates: tuple[Judged, ...]


def ground_of(collection: Collection) -> Ground:
    """Read places and climate."""
    house = house_of(collection)
    return Ground(house, tuple(judged(collection, house)))


def check_housing(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[HousingFound]:
    """Everything about the originals: hazards first, then containers, places and climate, then item by item."""
    ground = ground_of(collection)
    later: list[HousingFound] = []
    for record in records(collection, selection):
        mark = record.mark.short if record.mark else ""
        for finding in item_findings(collection, record, ground):
            found = HousingFound(finding, record.number, mark)
            if finding.rule.startswith("hazard."):
                yield found
            else:
                later.append(found)
    if selection == EVERYTHING:
        yield from whole_findings(ground)
    yield from later


def whole_findings(ground: Ground) -> Iterator[HousingFound]:
    """About containers, places and climates, which belong to no one item."""
    house = ground.house
    for one in house.containers.values():
        for finding in container_findings(one):
            yield HousingFound(finding, "", one.mark.short)
    for finding in place_findings(house):
        container = house.containers.get(finding.about)
        number = house.numbers.get(finding.about, "")
        yield HousingFound(finding, number, container.mark.short if container else "")
    for judgement in ground.climates:
        for finding in judgement.findings:
            if finding.severity is not Severity.NOTE:
                yield HousingFound(finding, "", "")


def item_findings(collection: Collection, record: Record, ground: Ground) -> list[Finding]:
    """About one item: condition and hazards, housing, its loan, its back."""
    found = condition_findings(seen_of(record))
    found += housing_findings(housed_of(record, ground))
    found += _loan(collection, record)
    written = any(
        one.source.said is Said.INSCRIPTION and one.source.ref == "verso" for one in record.all("inscription")
    )
    found += verso_missing({scan.side for scan in record.scans}, written)
    return found


def housed_of(record: Record, ground: Ground) -> Housed:
    """What the rules of housing look at."""
    way = _way(record, ground.house)
    inner = way[0] if way else None
    return Housed(
        kind=record.kind,
        process=record.words("process"),
        enclosure=record.words("enclosure") or (inner.materials if inner and inner.kind == "sleeve" else ""),
        attached=tuple(one.words for one in record.all("attached")),
        containers=tuple(way),
        humidity=humidity_at(ground.climates, way[-1].location) if way else None,
        shares=len(inner.items) if inner and inner.kind == "sleeve" else 1,
    )


def _way(record: Record, house: House) -> list[Container]:
    place = house.holding.get(record.id)
    ident = place.container if place else ""
    way: list[Container] = []
    while (one := house.containers.get(ident)) is not None and one not in way:
        way.append(one)
        ident = one.inside
    return way


def seen_of(record: Record) -> ConditionNoted:
    """What the rules of condition look at."""
    when = record.first("date")
    value = when.value if when else {}
    return ConditionNoted(
        kind=record.kind,
        process=record.words("process"),
        condition=tuple(one.words for one in record.all("condition")),
        earliest=_year(value.get("earliest")),
        latest=_year(value.get("latest")),
    )


def _year(day: object) -> int:
    text = str(day or "")
    return int(text[:4]) if text[:4].isdigit() else 0


def _loan(collection: Collection, record: Record) -> list[Finding]:
    if not record.words("lender"):
        return []
    facts = {one.field: one.words for one, _ in collection.store.statements(Subject(Kind.ITEM, record.id))}
    due, today = facts.get("due_back", ""), collection.clock.today()
    if facts.get("returned") or not due or date.fromisoformat(due) >= today:
        return []
    message = f"On loan from {record.words('lender')}, and due back since {due}."
    return [Finding(rule="loan.overdue", severity=Severity.ASK, message=message, source="the receipt of the loan")]


def check_scans(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[HousingFound]:
    """The quality of every scan as scanned, its header read again: pixels an inch, depth, profile, which way up."""
    for record in records(collection, selection):
        mark = record.mark.short if record.mark else ""
        for scan in record.scans:
            if scan.role != AS_SCANNED:
                continue
            for finding in scan_findings(facts_of(collection, record, scan)):
                yield HousingFound(finding, record.number, mark)


@dataclass(frozen=True, slots=True)
class PrintSize:
    """How large a scan may be printed, in mm, at 300 pixels an inch (sharp in the hand) and at 200 (usable)."""

    number: str
    side: str
    sharp: tuple[float, float]
    usable: tuple[float, float]


def print_sizes(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[PrintSize]:
    """What print size each scan, and so its copy, allows without enlarging."""
    for record in records(collection, selection):
        for scan in record.scans:
            wide, high = (scan.area[2], scan.area[3]) if len(scan.area) == 4 else (1, 1)
            width, height = round(scan.width * wide), round(scan.height * high)
            sharp, usable = largest_print(width, height, 300), largest_print(width, height, 200)
            yield PrintSize(record.number, scan.side, sharp, usable)


def facts_of(collection: Collection, record: Record, scan: ScanFile) -> ScanFacts:
    """A scan's facts; what its file cannot say any more is left open."""
    try:
        deeper = read_pixel_format(collection.folder / scan.path)
    except CouldNot:
        deeper = None
    cut = len(scan.area) == 4
    return ScanFacts(
        side=scan.side,
        kind=record.kind,
        width=round(scan.width * (scan.area[2] if cut else 1)),
        height=round(scan.height * (scan.area[3] if cut else 1)),
        size_mm=record.size_mm,
        ppi=scan.ppi,
        bits=deeper.bits if deeper else 0,
        colours=deeper.colours if deeper else 3,
        profile=deeper.profile if deeper else None,
        turned=deeper.orientation if deeper else 0,
        cut=cut,
    )
