"""Moves as plans: what would change is worked out and shown before a word of it is written.

Rule kept: an item is in one place or in none, no two items share a place, and a permanent number never changes.
A plan that would break this names its problems and may not be carried out (rules of our own, no outside source).
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

KEPT, LABEL, INSIDE = "kept", "label", "inside"


@dataclass(frozen=True, slots=True)
class Position:
    """An item's place: the container's id and the place in it, from 1 (0: none given)."""

    container: str
    position: int = 0

    @property
    def words(self) -> str:
        return f"{self.container} {self.position}"


@dataclass(frozen=True, slots=True)
class MoveStep:
    """One field of one thing that changes."""

    subject: str
    field: str
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class Plan:
    """What a change comes to. It may be carried out only if it has no problems."""

    what: str
    steps: tuple[MoveStep, ...] = ()
    problems: tuple[str, ...] = ()


Positions = Mapping[str, Position]
"""Every item's place, by the item's id; an item without a place is not in it."""


def read_place(words: str) -> Position:
    """`container-id place` as it is stored."""
    container, _, place = words.partition(" ")
    return Position(container, int(place) if place.isdigit() else 0)


def contents(holding: Positions, container: str) -> list[tuple[str, int]]:
    """(item, place) of what lies in a container directly, in the order of places."""
    found = [(item, place.position) for item, place in holding.items() if place.container == container]
    return sorted(found, key=lambda one: (one[1], one[0]))


def move(holding: Positions, items: Sequence[str], into: str, at: int = 0) -> Plan:
    """Put items into a container: from place `at` on, or after the last. A place that is taken is a problem."""
    what = f"move {len(items)} item{'s' if len(items) != 1 else ''}"
    staying = {position for item, position in contents(holding, into) if item not in items}
    start = at or max(staying, default=0) + 1
    wanted = {item: Position(into, start + step) for step, item in enumerate(dict.fromkeys(items))}
    taken = sorted(staying & {place.position for place in wanted.values()})
    problems = [f"Place {position} is taken." for position in taken]
    return Plan(what, tuple(_steps(holding, wanted)), tuple(problems))


def close_up(holding: Positions, container: str) -> Plan:
    """Count the places of a container anew from 1, in the order in which things lie."""
    order = [item for item, _ in contents(holding, container)]
    wanted = {item: Position(container, step) for step, item in enumerate(order, 1)}
    return Plan("count the places anew", tuple(_steps(holding, wanted)))


def merge(holding: Positions, source: str, into: str, inside: Mapping[str, str], labels: Mapping[str, str]) -> Plan:
    """Put everything in one container into another: its items after the last place, its containers beside the others.

    `inside` says what each container is inside, `labels` what it is labelled. A label that would stand twice in
    one container is a problem: the two would be one mark.
    """
    if source == into or source in _outward(into, inside):
        return Plan("merge", (), ("A container cannot be put into itself.",))
    items = [item for item, _ in contents(holding, source)]
    moved = move(holding, items, into)
    there = {labels.get(one, "") for one, outer in inside.items() if outer == into}
    inner = [one for one, outer in inside.items() if outer == source]
    problems = [
        f"There is a {labels.get(one, '')} in both; renumber one of them first."
        for one in inner
        if labels.get(one) in there
    ]
    steps = [*moved.steps, *(MoveStep(one, INSIDE, source, into) for one in inner)]
    return Plan("merge", tuple(steps), (*moved.problems, *problems))


def _outward(container: str, inside: Mapping[str, str]) -> set[str]:
    seen: set[str] = set()
    while container and container not in seen:
        seen.add(container)
        container = inside.get(container, "")
    return seen


def relabel(labels: Mapping[str, str], inside: Mapping[str, str], wanted: Mapping[str, str]) -> Plan:
    """Give containers new labels, all at once, so that two may change theirs with each other."""
    after = {**labels, **wanted}
    problems: list[str] = []
    seen: dict[tuple[str, str], str] = {}
    for one, label in after.items():
        key = (inside.get(one, ""), label.casefold())
        if (other := seen.setdefault(key, one)) != one and (one in wanted or other in wanted):
            problems.append(f"Two would be labelled {label}.")
        if not label.strip() or "/" in label:
            problems.append(f"“{label}” is no label: it must have letters or figures, and no stroke (/).")
    steps = [
        MoveStep(one, LABEL, labels.get(one, ""), label) for one, label in wanted.items() if labels.get(one) != label
    ]
    return Plan("renumber", tuple(steps), tuple(dict.fromkeys(problems)))


def carried_out(holding: Positions, plan: Plan) -> dict[str, Position]:
    """The holding after a plan (its steps about items)."""
    after = dict(holding)
    for step in plan.steps:
        if step.field == KEPT:
            after[step.subject] = read_place(step.after)
    return after


def _steps(holding: Positions, wanted: Mapping[str, Position]) -> Iterable[MoveStep]:
    for item, place in wanted.items():
        now = holding.get(item)
        if now != place:
            yield MoveStep(item, KEPT, now.words if now else "", place.words)


def gaps(positions: Iterable[int]) -> list[int]:
    """Places that are free between 1 and the last one taken."""
    taken = set(positions)
    return [place for place in range(1, max(taken, default=0)) if place not in taken]


def doubles(found: Iterable[tuple[str, int]]) -> dict[int, list[str]]:
    """Places that more than one item is said to lie at."""
    at: dict[int, list[str]] = {}
    for item, position in found:
        if position:
            at.setdefault(position, []).append(item)
    return {position: items for position, items in at.items() if len(items) > 1}
