"""Pictures that look alike: pairs of items that may show the same picture.

After intake `look_closer` notes 64 bits of how each scan looks (`disk.pictures.looks_hash`); it may be stopped, and
goes on the next time. Two fronts that differ in at most MOST_APART bits are proposed as the same picture, and a person
decides. Pairs that are related already are not proposed.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import combinations

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.pictures import LOOKS_WORDS
from boxlore.core.records.item_record import AS_SCANNED, Record
from boxlore.core.statements import Kind, Subject
from boxlore.disk.pictures import bits_apart, looks_hash
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress

MOST_APART = 5
BATCH = 100

_CHUNKS = ((0, 11), (11, 11), (22, 11), (33, 11), (44, 10), (54, 10))
"""(start, length) of six runs of bits. If two hashes differ in at most five bits, at least one of the runs is equal in
both; so only pairs that share a run need to be compared."""


@dataclass(frozen=True, slots=True)
class Alike:
    """The numbers of two items whose fronts look alike, and in how many of 64 bits they differ."""

    first: str
    second: str
    apart: int


def look_closer(collection: Collection, progress: Progress = QUIET) -> int:
    """Note how each scan looks, for those where it is not noted yet. Returns how many were noted."""
    looked_at = _looked_at(collection)
    waiting = [(ident, facts.path) for ident, facts in collection.store.scans() if ident not in looked_at]
    progress.begin("Comparing pictures", len(waiting))
    count = 0
    for start in range(0, len(waiting), BATCH):
        act = collection.act("how the scans look")
        for ident, path in waiting[start : start + BATCH]:
            if progress.stopped():
                break
            act.state(Subject(Kind.SCAN, ident), "looks", _looks(collection, path))
            progress.step()
            count += 1
        act.done()
        if progress.stopped():
            break
    return count


def _looks(collection: Collection, path: str) -> str:
    try:
        return LOOKS_WORDS.write(looks_hash(collection.folder / path))
    except (BoxloreError, OSError):
        return LOOKS_WORDS.write(None)


def _looked_at(collection: Collection) -> dict[str, int | None]:
    """How each scan looks that was looked at, by its id; None where its file could not be read."""
    return {
        ident: LOOKS_WORDS.read(statement.words)
        for ident, rows in collection.store.subjects(Kind.SCAN)
        for statement, _ in rows
        if statement.field == "looks"
    }


def alike(collection: Collection, records: Iterable[Record]) -> list[Alike]:
    """The pairs of items whose whole fronts look alike and that are not related yet."""
    looks = {ident: bits for ident, bits in _looked_at(collection).items() if bits is not None}
    fronts: dict[str, int] = {}
    related: set[frozenset[str]] = set()
    for record in records:
        related |= {frozenset((record.number, relation.number)) for relation in record.related}
        for scan in record.scans:
            if scan.side == "recto" and scan.role == AS_SCANNED and not scan.area and scan.id in looks:
                fronts[record.number] = looks[scan.id]
    return [
        Alike(first, second, apart)
        for first, second in sorted(_candidates(fronts))
        if (apart := bits_apart(fronts[first], fronts[second])) <= MOST_APART
        and frozenset((first, second)) not in related
    ]


def _candidates(fronts: dict[str, int]) -> set[tuple[str, str]]:
    """The pairs of numbers that share a run of bits; all pairs that are alike are among them."""
    pairs: set[tuple[str, str]] = set()
    for start, length in _CHUNKS:
        buckets: dict[int, list[str]] = {}
        for number, bits in fronts.items():
            buckets.setdefault(bits >> start & (1 << length) - 1, []).append(number)
        for bucket in buckets.values():
            if len(bucket) < 400:  # a run that hundreds share is a blank picture's
                pairs |= {
                    (first, second) if first < second else (second, first) for first, second in combinations(bucket, 2)
                }
    return pairs
