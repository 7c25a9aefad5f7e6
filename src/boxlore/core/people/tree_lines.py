"""Generations below one another: the lines of a small family tree that can be read aloud.

A line is a couple or someone alone; below it, one step further in, stand their children. Everyone stands once, but for
who had children with, or married, several: once with each. Whoever has no link to another of those wanted is left out.
"""

from collections.abc import Collection, Iterator, Mapping, Set

from boxlore.core.people.kin import Kin
from boxlore.core.people.person import Person

DescentLine = tuple[int, tuple[str, ...]]
"""How far in a line stands, from 0, and the ids of those in it: one of the line first, then whom they had children
with or married.
"""


def descent(people: Mapping[str, Person], wanted: Collection[str]) -> list[DescentLine]:
    """The lines of those wanted and of their parents, the oldest first. Loops and unknown ids are borne."""
    kin = Kin(people)
    kept = {ident for ident in wanted if ident in people}
    kept |= {parent for ident in kept for parent in kin.parents(ident)}
    by_age = sorted(kept, key=lambda ident: _age(people[ident]))
    heads = [ident for ident in by_age if not any(_above(kin, partner, kept) for partner in _couple(kin, ident, kept))]
    lines: list[DescentLine] = []
    seen: set[str] = set()
    for ident in (*heads, *by_age):  # of a loop, nobody is a head
        lines += _below(kin, ident, kept, seen, 0, people)
    return [line for at, line in enumerate(lines) if _has_kin(lines, at)]


def _age(person: Person) -> tuple[int, str]:
    year = person.born.first_year if person.born else None
    return (year if year is not None else 9999, person.sort_name)


def _above(kin: Kin, ident: str, kept: Collection[str]) -> bool:
    return any(parent in kept for parent in kin.parents(ident))


def _couple(kin: Kin, ident: str, kept: Collection[str]) -> list[str]:
    """Someone, and those they married or had children with."""
    parents = (parent for child in kin.children(ident) if child in kept for parent in kin.parents(child))
    partners = dict.fromkeys((ident, *kin.spouses(ident), *parents))
    return [partner for partner in partners if partner in kept]


def _below(
    kin: Kin, ident: str, kept: Set[str], seen: set[str], depth: int, people: Mapping[str, Person]
) -> Iterator[DescentLine]:
    if ident in seen:
        return
    couple = tuple(_couple(kin, ident, kept))
    seen.update(couple)
    yield depth, couple
    children = {child for partner in couple for child in kin.children(partner) if child in kept}
    for child in sorted(children, key=lambda child: _age(people[child])):
        if kept & set(kin.parents(child)) <= set(couple):  # a stepchild stands below its own parents
            yield from _below(kin, child, kept, seen, depth + 1, people)
    for partner in couple[1:]:  # who was married to somebody else, too, stands there once more
        for other in _couple(kin, partner, kept):
            if not _above(kin, other, kept):  # else they stand below their own parents
                yield from _below(kin, other, kept, seen, depth, people)


def _has_kin(lines: list[DescentLine], at: int) -> bool:
    """Whether the line is a couple, has somebody above it, or a line of theirs below it."""
    depth, couple = lines[at]
    return depth > 0 or len(couple) > 1 or (at + 1 < len(lines) and lines[at + 1][0] > depth)
