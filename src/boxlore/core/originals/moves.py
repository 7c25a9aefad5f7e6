"""Moving items and containers, as plans: what would change is worked out and can be shown before it is written.

What always holds: an item is in one position or in none, no two items share a position, and a permanent number never
changes. A plan that would break this names its problems, and may not be carried out (rules of our own, no outside
source).
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.fields.originals import KEPT_WORDS, Kept
from boxlore.core.findings import several

KEPT, LABEL, INSIDE = "kept", "label", "inside"


@dataclass(frozen=True, slots=True)
class MoveStep:
    """One change: the words of one field of an item or a container, before and after."""

    subject: str
    field: str
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class Plan:
    """The steps of one change, with a title. It may be carried out only if it has no problems (whole sentences)."""

    title: str
    steps: tuple[MoveStep, ...] = ()
    problems: tuple[str, ...] = ()


Positions = Mapping[str, Kept]
"""Item id -> its position; an item without one is not in it."""


def contents(holding: Positions, container: str) -> list[tuple[str, int]]:
    """(item id, position) of the items directly in a container, in the order of positions."""
    lying = [(item, place.position) for item, place in holding.items() if place.container == container]
    return sorted(lying, key=lambda pair: (pair[1], pair[0]))


def move(holding: Positions, items: Sequence[str], into: str, at: int = 0) -> Plan:
    """Plan to put items into a container, from position `at` on, or (0) after the last one.

    A position that another item has is a problem.
    """
    title = f"move {several(len(items), 'item')}"
    staying = {position for item, position in contents(holding, into) if item not in items}
    start = at or max(staying, default=0) + 1
    targets = {item: Kept(into, start + step) for step, item in enumerate(dict.fromkeys(items))}
    clashes = sorted(staying & {place.position for place in targets.values()})
    problems = [f"Place {position} is taken." for position in clashes]
    return Plan(title, tuple(_steps(holding, targets)), tuple(problems))


def close_up(holding: Positions, container: str) -> Plan:
    """Plan to number the positions of a container again from 1 without gaps, in the present order."""
    order = [item for item, _ in contents(holding, container)]
    targets = {item: Kept(container, step) for step, item in enumerate(order, 1)}
    return Plan("count the places anew", tuple(_steps(holding, targets)))


def merge(holding: Positions, source: str, into: str, inside: Mapping[str, str], labels: Mapping[str, str]) -> Plan:
    """Plan to put everything in the container `source` into `into`: its items after the last position, its containers
    beside those that are there.

    `inside` says which container each container is in, `labels` what each is labelled (both by id). A label that
    would stand twice in one container is a problem, for two containers would have one mark.
    """
    if source == into or source in outward(into, inside):
        return Plan("merge", (), ("A container cannot be put into itself.",))
    items = [item for item, _ in contents(holding, source)]
    moved = move(holding, items, into)
    labels_there = {labels.get(container, "") for container, outer in inside.items() if outer == into}
    inner = [container for container, outer in inside.items() if outer == source]
    problems = [
        f"There is a {labels.get(container, '')} in both; renumber one of them first."
        for container in inner
        if labels.get(container) in labels_there
    ]
    steps = [*moved.steps, *(MoveStep(container, INSIDE, source, into) for container in inner)]
    return Plan("merge", tuple(steps), (*moved.problems, *problems))


def outward(container: str, inside: Mapping[str, str]) -> set[str]:
    """The container and all that it is inside of, outermost last; a cycle ends it."""
    outward: set[str] = set()
    while container and container not in outward:
        outward.add(container)
        container = inside.get(container, "")
    return outward


def relabel(labels: Mapping[str, str], inside: Mapping[str, str], new_labels: Mapping[str, str]) -> Plan:
    """Plan to give containers new labels (by id), all at once, so that two may exchange theirs."""
    after = {**labels, **new_labels}
    problems: list[str] = []
    bearers: dict[tuple[str, str], str] = {}
    for container, label in after.items():
        key = (inside.get(container, ""), label.casefold())
        if (bearer := bearers.setdefault(key, container)) != container and (
            container in new_labels or bearer in new_labels
        ):
            problems.append(f"Two would be labelled {label}.")
        if not label.strip() or "/" in label:
            problems.append(f"“{label}” is no label: it must have letters or figures, and no stroke (/).")
    steps = [
        MoveStep(container, LABEL, labels.get(container, ""), label)
        for container, label in new_labels.items()
        if labels.get(container) != label
    ]
    return Plan("renumber", tuple(steps), tuple(dict.fromkeys(problems)))


def _steps(holding: Positions, targets: Mapping[str, Kept]) -> Iterable[MoveStep]:
    for item, place in targets.items():
        now = holding.get(item)
        if now != place:
            yield MoveStep(item, KEPT, KEPT_WORDS.write(now) if now else "", KEPT_WORDS.write(place))


def gaps(positions: Iterable[int]) -> list[int]:
    """The free positions between 1 and the last one that is taken."""
    occupied = set(positions)
    return [place for place in range(1, max(occupied, default=0)) if place not in occupied]


def doubles(positions: Iterable[tuple[str, int]]) -> dict[int, list[str]]:
    """Kept -> items, for the positions that more than one item is said to have. Takes (item, position)."""
    items_at: dict[int, list[str]] = {}
    for item, position in positions:
        if position:
            items_at.setdefault(position, []).append(item)
    return {position: items for position, items in items_at.items() if len(items) > 1}
