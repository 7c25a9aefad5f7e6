"""The check of the originals: housing, condition and hazards, gaps in positions, loans, and the quality of scans.

It reads what is noted and gives it to the rules of `core.originals`.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from boxlore.core.errors import CouldNot
from boxlore.core.fields.plain_values import DAY_WORDS
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.originals.condition import ConditionNoted, condition_findings
from boxlore.core.originals.housing_rules import Housed, container_findings, housing_findings
from boxlore.core.originals.scan_quality import ScanFacts, largest_print, scan_findings, verso_missing
from boxlore.core.records.item_record import AS_SCANNED, Record, ScanFile
from boxlore.core.records.marks import Container
from boxlore.core.statements import Kind, Said, Subject
from boxlore.disk.pictures import read_pixel_format
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records_for_outputs import EVERYTHING, Selection, records
from boxlore.tasks.originals.climate import Judged, humidity_at, judge_locations
from boxlore.tasks.originals.housing_now import House, house_of, place_findings


@dataclass(frozen=True, slots=True)
class HousingFound:
    """A finding, with the number and mark of the item it is about; for a container `number` is ''."""

    finding: Finding
    number: str
    mark: str


@dataclass(frozen=True, slots=True)
class Ground:
    """What the checks of all items need, read once: where everything is, and the climate of each location."""

    house: House
    climates: tuple[Judged, ...]


def ground_of(collection: Collection) -> Ground:
    """Read where everything is, and judge the climate of each location."""
    house = house_of(collection)
    return Ground(house, tuple(judge_locations(collection, house)))


def check_housing(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[HousingFound]:
    """Every finding about the originals: hazards first, then containers, positions and climate, then item by item.

    With a selection only the findings about those items.
    """
    ground = ground_of(collection)
    later: list[HousingFound] = []
    for record in records(collection, selection):
        mark = record.mark.short if record.mark else ""
        for finding in item_findings(collection, record, ground):
            located = HousingFound(finding, record.number, mark)
            if finding.rule.startswith("hazard."):
                yield located
            else:
                later.append(located)
    if selection == EVERYTHING:
        yield from general_findings(ground)
    yield from later


def general_findings(ground: Ground) -> Iterator[HousingFound]:
    """The findings about containers, positions and climate, which belong to no single item."""
    house = ground.house
    for container in house.containers.values():
        for finding in container_findings(container):
            yield HousingFound(finding, "", container.mark.short)
    for finding in place_findings(house):
        meant = house.containers.get(finding.about)
        number = house.numbers.get(finding.about, "")
        yield HousingFound(finding, number, meant.mark.short if meant else "")
    for judgement in ground.climates:
        for finding in judgement.findings:
            if finding.severity is not Severity.NOTE:
                yield HousingFound(finding, "", "")


def item_findings(collection: Collection, record: Record, ground: Ground) -> list[Finding]:
    """The findings about one item: condition and hazards, housing, a loan that is overdue, a back not scanned."""
    findings = condition_findings(condition_of(record))
    findings += housing_findings(housed_of(record, ground))
    findings += _loan(collection, record)
    written = any(
        view.source.said is Said.INSCRIPTION and view.source.ref == "verso" for view in record.all("inscription")
    )
    findings += verso_missing({scan.side for scan in record.scans}, written)
    return findings


def housed_of(record: Record, ground: Ground) -> Housed:
    """What the rules of `core.originals.housing_rules` need to know of an item."""
    containers = _containers_of(record, ground.house)
    inner = containers[0] if containers else None
    return Housed(
        kind=record.kind,
        process=record.words("process"),
        enclosure=record.words("enclosure") or (inner.materials if inner and inner.kind == "sleeve" else ""),
        attached=tuple(view.words for view in record.all("attached")),
        containers=tuple(containers),
        humidity=humidity_at(ground.climates, containers[-1].location) if containers else None,
        shares=len(inner.items) if inner and inner.kind == "sleeve" else 1,
    )


def _containers_of(record: Record, house: House) -> list[Container]:
    """The containers that an item is in, innermost first; a cycle ends it."""
    place = house.holding.get(record.id)
    ident = place.container if place else ""
    containers: list[Container] = []
    while (container := house.containers.get(ident)) is not None and container not in containers:
        containers.append(container)
        ident = container.inside
    return containers


def condition_of(record: Record) -> ConditionNoted:
    """What the rules of `core.originals.condition` need to know of an item."""
    view = record.first("date")
    date = view.date if view else None
    return ConditionNoted(
        kind=record.kind,
        process=record.words("process"),
        condition=tuple(view.words for name in ("condition", "archive_remark") for view in record.all(name)),
        earliest=date.first_year or 0 if date else 0,
        latest=date.last_year or 0 if date else 0,
    )


def _loan(collection: Collection, record: Record) -> list[Finding]:
    if not record.words("lender"):
        return []
    facts = {
        statement.field: statement.words for statement, _ in collection.store.statements(Subject(Kind.ITEM, record.id))
    }
    due, today = DAY_WORDS.or_none(facts.get("due_back", "")), collection.clock.today()
    if facts.get("returned") or due is None or due >= today:
        return []
    message = f"On loan from {record.words('lender')}, and due back since {due}."
    return [make_finding("loan.overdue", Severity.ASK, message, "the receipt of the loan")]


def check_scans(collection: Collection, selection: Selection = EVERYTHING) -> Iterator[HousingFound]:
    """The findings about the quality of every scan as scanned; each file's header is read again for it."""
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
    """How large each scan, and so its copy, may be printed without inventing pixels."""
    for record in records(collection, selection):
        for scan in record.scans:
            wide, high = (scan.area[2], scan.area[3]) if len(scan.area) == 4 else (1, 1)
            width, height = round(scan.width * wide), round(scan.height * high)
            sharp, usable = largest_print(width, height, 300), largest_print(width, height, 200)
            yield PrintSize(record.number, scan.side, sharp, usable)


def facts_of(collection: Collection, record: Record, scan: ScanFile) -> ScanFacts:
    """What the rules of `core.originals.scan_quality` need; what a file that cannot be read would tell is left open."""
    try:
        pixel_format = read_pixel_format(collection.folder / scan.path)
    except CouldNot:
        pixel_format = None
    cut = len(scan.area) == 4
    width = round(scan.width * (scan.area[2] if cut else 1))
    height = round(scan.height * (scan.area[3] if cut else 1))
    if scan.turn in (90, 270):
        width, height = height, width
    return ScanFacts(
        side=scan.side,
        kind=record.kind,
        width=width,
        height=height,
        size_mm=record.size_mm,
        ppi=scan.ppi,
        bits=pixel_format.bits if pixel_format else 0,
        colours=pixel_format.colours if pixel_format else 3,
        profile=pixel_format.profile if pixel_format else None,
        turned=pixel_format.orientation if pixel_format else 0,
        cut=cut,
    )
