"""Pictures that look alike: groups of items that may show the same picture.

After intake `look_closer` decodes each scan once, and notes 64 bits of how it looks (`disk.pictures.looks_hash`), or
that its file is damaged; it may be stopped, and goes on the next time. Two fronts that differ in at most MOST_APART
bits are proposed as the same picture, and a person decides. All that look alike, one to the next, are one group. A
group is not proposed if its items are related already, and blank pictures belong to none.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import combinations
from typing import Generic, TypeVar

from boxlore.core.errors import BoxloreError
from boxlore.core.fields.pictures import LOOKS_WORDS
from boxlore.core.records.item_record import AS_SCANNED, Record
from boxlore.core.statements import Kind, Subject
from boxlore.disk.decoding import Damaged
from boxlore.disk.pictures import bits_apart, looks_hash
from boxlore.disk.regular import open_regular
from boxlore.formats.jpeg_end import has_end
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import QUIET, Progress

Member = TypeVar("Member", str, int)

MOST_APART = 5
BATCH = 100

_CHUNKS = ((0, 11), (11, 11), (22, 11), (33, 11), (44, 10), (54, 10))
"""(start, length) of six runs of bits. If two hashes differ in at most five bits, at least one of the runs is equal in
both; so only pairs that share a run need to be compared."""


@dataclass(frozen=True, slots=True)
class Alike:
    """The numbers of the items whose fronts look alike, in order, and in how many of 64 bits neighbours differ at most.

    Each has a neighbour in the group that differs in at most MOST_APART bits.
    """

    numbers: tuple[str, ...]
    apart: int


def look_closer(collection: Collection, progress: Progress = QUIET) -> int:
    """Note how each scan looks, for those where it is not noted yet. Returns how many were looked at.

    What the machine cannot read now (a disk that is not there, a HEIC without its library) is tried again next time.
    """
    looked_at = _looked_at(collection)
    waiting = [(ident, facts.path) for ident, facts in collection.store.scans() if ident not in looked_at]
    progress.begin("Comparing pictures", len(waiting))
    count = 0
    for start in range(0, len(waiting), BATCH):
        act = collection.act("how the scans look")
        for ident, path in waiting[start : start + BATCH]:
            if progress.stopped():
                break
            if looks := _looks(collection, path):
                act.state(Subject(Kind.SCAN, ident), "looks", looks)
            progress.step()
            count += 1
        act.done()
        if progress.stopped():
            break
    return count


def _looks(collection: Collection, name: str) -> str:
    """The words of how a scan looks, '' where the machine cannot read it."""
    path = collection.folder / name
    try:
        bits = looks_hash(path)
        with open_regular(path) as file:
            return LOOKS_WORDS.write(bits if has_end(file) else None)
    except Damaged:
        return LOOKS_WORDS.write(None)
    except (BoxloreError, OSError):
        return ""


def _looked_at(collection: Collection) -> dict[str, int | None]:
    """How each scan looks that was looked at, by its id; None where its file is damaged."""
    return {
        ident: LOOKS_WORDS.read(statement.words)
        for ident, rows in collection.store.subjects(Kind.SCAN)
        for statement, _ in rows
        if statement.field == "looks"
    }


def alike(collection: Collection, records: Iterable[Record]) -> list[Alike]:
    """The groups of items whose whole fronts look alike, if not all of a group are related already."""
    looks = {ident: bits for ident, bits in _looked_at(collection).items() if bits is not None and not _blank(bits)}
    fronts: dict[str, int] = {}
    related: list[tuple[str, str]] = []
    for record in records:
        related += [(record.number, relation.number) for relation in record.related]
        for scan in record.scans:
            if scan.side == "recto" and scan.role == AS_SCANNED and not scan.area and scan.id in looks:
                fronts[record.number] = looks[scan.id]
    return _groups(fronts, related)


def _blank(bits: int) -> bool:
    """Whether the picture is blank, or shades off evenly: (nearly) all bits are the same, and any two look alike."""
    return not MOST_APART < bits.bit_count() < 64 - MOST_APART


def _groups(fronts: Mapping[str, int], related: Iterable[tuple[str, str]]) -> list[Alike]:
    """The groups among the numbers, given with their hashes, in the order of their first numbers."""
    numbers_by_look: dict[int, list[str]] = {}
    for number in sorted(fronts):
        numbers_by_look.setdefault(fronts[number], []).append(number)
    close = [pair for pair in _candidates(numbers_by_look) if bits_apart(*pair) <= MOST_APART]
    ties = _Ties(fronts)
    for first, second in related:
        if first in fronts and second in fronts:
            ties.join(first, second)
    apart: dict[int, int] = {}
    sets = _Ties(numbers_by_look)
    for first_look, second_look in close:
        sets.join(first_look, second_look)
    for first_look, second_look in close:
        root = sets.root(first_look)
        apart[root] = max(apart.get(root, 0), bits_apart(first_look, second_look))
    members: dict[int, list[str]] = {}
    for look, numbers in numbers_by_look.items():
        members.setdefault(sets.root(look), []).extend(numbers)
    return sorted(
        (
            Alike(tuple(sorted(numbers)), apart.get(root, 0))
            for root, numbers in members.items()
            if len({ties.root(number) for number in numbers}) > 1
        ),
        key=lambda group: group.numbers,
    )


class _Ties(Generic[Member]):
    """Members that are tied to each other, directly or through others, have one root (disjoint sets)."""

    def __init__(self, members: Iterable[Member]) -> None:
        self._above: dict[Member, Member] = {member: member for member in members}

    def root(self, member: Member) -> Member:
        while self._above[member] != member:
            self._above[member] = member = self._above[self._above[member]]
        return member

    def join(self, first: Member, second: Member) -> None:
        self._above[self.root(second)] = self.root(first)


def _candidates(looks: Iterable[int]) -> set[tuple[int, int]]:
    """The pairs of different hashes that share a run of bits; all pairs that are alike are among them."""
    pairs: set[tuple[int, int]] = set()
    for start, length in _CHUNKS:
        buckets: dict[int, list[int]] = {}
        for look in sorted(looks):
            buckets.setdefault(look >> start & (1 << length) - 1, []).append(look)
        for bucket in buckets.values():
            if len(bucket) < 400:  # a run that hundreds share says nothing of the picture
                pairs |= set(combinations(bucket, 2))
    return pairs
