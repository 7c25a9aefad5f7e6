"""Pictures that look alike: a second, resumable pass over the scans, and the pairs that may be one picture.

Each scan gets 64 bits of how it looks (`disk.pictures.looks_hash`). Two fronts that differ in at most MOST_APART
of them are proposed as the same picture; a person decides. Pairs already related are not proposed again.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import combinations

from boxlore.core.errors import BoxloreError
from boxlore.core.records.in_force import AS_SCANNED, Record
from boxlore.core.statements import Kind, Subject
from boxlore.disk.pictures import bits_apart, looks_hash
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress

MOST_APART = 5
BATCH = 100
UNREADABLE = "-"

_CHUNKS = ((0, 11), (11, 11), (22, 11), (33, 11), (44, 10), (54, 10))
"""Six runs of bits: of two hashes that differ in five at the most, one run at least is equal."""


@dataclass(frozen=True, slots=True)
class Alike:
    """Two items whose fronts look alike, and in how many of 64 bits they differ."""

    one: str
    other: str
    apart: int


def look_closer(collection: Collection, progress: Progress = QUIET) -> int:
    """Note how each scan looks that has not been looked at yet; returns how many were."""
    waiting = [
        (ident, path) for ident, told in _scans(collection) if (path := told.get("path", "")) and "looks" not in told
    ]
    progress.begin("Comparing pictures", len(waiting))
    done = 0
    for start in range(0, len(waiting), BATCH):
        act = collection.act("how the scans look")
        for ident, path in waiting[start : start + BATCH]:
            if progress.stopped():
                break
            act.state(Subject(Kind.SCAN, ident), "looks", _looks(collection, path))
            progress.step()
            done += 1
        act.done()
        if progress.stopped():
            break
    return done


def _looks(collection: Collection, path: str) -> str:
    try:
        return f"{looks_hash(collection.folder / path):016x}"
    except (BoxloreError, OSError):
        return UNREADABLE


def _scans(collection: Collection) -> Iterator[tuple[str, dict[str, str]]]:
    """Every scan's id with its path and, where it is known, how it looks."""
    paths = {ident: str(facts["path"]) for ident, facts in collection.store.scans()}
    for ident, rows in collection.store.subjects(Kind.SCAN):
        told = {one.field: one.words for one, _ in rows if one.field == "looks"}
        yield ident, {"path": paths.get(ident, ""), **told}


def alike(collection: Collection, records: Iterable[Record]) -> list[Alike]:
    """The pairs of items whose whole fronts look alike and that are not related yet."""
    looks = {ident: told["looks"] for ident, told in _scans(collection) if told.get("looks", UNREADABLE) != UNREADABLE}
    fronts: dict[str, int] = {}
    related: set[frozenset[str]] = set()
    for record in records:
        related |= {frozenset((record.number, one.number)) for one in record.related}
        for scan in record.scans:
            if scan.side == "recto" and scan.role == AS_SCANNED and not scan.area and scan.id in looks:
                fronts[record.number] = int(looks[scan.id], 16)
    return [
        Alike(one, other, apart)
        for one, other in sorted(_candidates(fronts))
        if (apart := bits_apart(fronts[one], fronts[other])) <= MOST_APART and frozenset((one, other)) not in related
    ]


def _candidates(fronts: dict[str, int]) -> set[tuple[str, str]]:
    """Pairs that share a run of bits: every pair near enough is among them."""
    pairs: set[tuple[str, str]] = set()
    for start, length in _CHUNKS:
        buckets: dict[int, list[str]] = {}
        for number, bits in fronts.items():
            buckets.setdefault(bits >> start & (1 << length) - 1, []).append(number)
        for bucket in buckets.values():
            if len(bucket) < 400:  # a run that hundreds share is a blank picture's
                pairs |= {(one, other) if one < other else (other, one) for one, other in combinations(bucket, 2)}
    return pairs
