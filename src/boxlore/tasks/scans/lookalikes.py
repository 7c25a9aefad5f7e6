"""Pictures that look alike: groups of items that may show the same picture.

How each scan looks is noted after intake as 64 bits (`damage.look_closer`, `disk.pictures.looks_hash`). Two fronts that
differ in at most MOST_APART bits are proposed as the same picture, and a person decides. All that look alike, one to
the next, are one group. A group is not proposed if its items are related already, and blank pictures belong to none.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import combinations
from typing import Generic, TypeVar

from boxlore.core.records.item_record import AS_SCANNED, Record
from boxlore.disk.pictures import bits_apart
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.scans.damage import looked_at

Member = TypeVar("Member", str, int)

MOST_APART = 5

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


def alike(collection: Collection, records: Iterable[Record]) -> list[Alike]:
    """The groups of items whose whole fronts look alike, if not all of a group are related already."""
    looks = {ident: bits for ident, bits in looked_at(collection).items() if bits is not None and not _blank(bits)}
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
