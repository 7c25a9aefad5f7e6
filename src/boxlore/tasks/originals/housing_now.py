"""The house as it is now: its locations, its containers, and where each item is in them.

Read from the log by `house_of`; `tasks.originals.housing_changes` writes what changes.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.originals import KEPT_WORDS, SIZE_WORDS, Kept
from boxlore.core.fields.plain_values import COUNT_WORDS
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.originals.moves import KEPT, MoveStep, doubles, gaps, outward
from boxlore.core.records.marks import Container, looks_like_number, short_form
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.tasks.collection.items_by_mark import find_item
from boxlore.tasks.collection.opening import Collection

OURS = "common practice, no source"
NAMED = 20
"""So many boxes and folders are named where one is asked for that is not there."""


@dataclass(frozen=True, slots=True)
class Location:
    """A house, room or shelf. `inside` is the id of the location around it, `path` the names from the house inward."""

    id: str
    kind: str
    name: str
    inside: str
    path: tuple[str, ...]
    surroundings: frozenset[str]


@dataclass(slots=True)
class House:
    """All locations and containers by id, and the position of each item that has one (`holding`), as they are now."""

    locations: dict[str, Location]
    containers: dict[str, Container]
    holding: dict[str, Kept]
    numbers: dict[str, str]
    """Item id -> its number."""

    @property
    def labels(self) -> dict[str, str]:
        """Container id -> its label."""
        return {ident: container.label for ident, container in self.containers.items()}

    @property
    def inside(self) -> dict[str, str]:
        """Container id -> the container that it is in; only for those that are in one.

        A location is not part of a mark: two boxes with one label have the same mark wherever they stand.
        """
        return {
            ident: container.inside
            for ident, container in self.containers.items()
            if container.inside in self.containers
        }

    def named(self, text: str) -> Container:
        """The container at a mark (`3/12`, `Box 3 / Folder 12`), or with a label that only one container has.

        Raises WrongUse if there is none, or several.
        """
        short = short_form(text).casefold()
        containers = self.containers.values()
        matching = [container for container in containers if container.mark.short.casefold() == short]
        matching = matching or [container for container in containers if container.label.casefold() == short]
        if len(matching) != 1:
            count = f"are {len(matching)} containers" if matching else "is no box or folder"
            raise WrongUse(f"There {count} {text[:60]}.", self._marks_there)
        return matching[0]

    @property
    def _marks_there(self) -> str:
        """What boxes and folders there are, by their marks; of many the first ones."""
        marks = [container.mark.short for container in self.containers.values()]
        if not marks:
            return "There is none yet: boxlore housing box MARK notes one."
        more = f" and {len(marks) - NAMED} more" if len(marks) > NAMED else ""
        return f"There are {', '.join(marks[:NAMED])}{more}."

    def location(self, text: str) -> Location:
        """The location of a name, or of several names from outside inward (`House / Hall / Shelf 2`).

        Raises WrongUse if there is none, or several.
        """
        names = tuple(part.strip().casefold() for part in text.split("/"))
        matching = [
            location
            for location in self.locations.values()
            if tuple(part.casefold() for part in location.path[-len(names) :]) == names
        ]
        outermost = [location for location in matching if len(location.path) == len(names)]
        matching = outermost if len(outermost) == 1 else matching
        if not matching:
            raise WrongUse(f"There is no location “{text[:60]}”.", "boxlore housing place NAME makes one.")
        if len(matching) > 1:
            raise WrongUse(
                f"There are {len(matching)} locations “{text[:60]}”.",
                f"Say which one: {'; '.join(' / '.join(location.path) for location in matching[:6])}.",
            )
        return matching[0]


def house_of(collection: Collection) -> House:
    """Read all locations, containers and positions from the log."""
    store = collection.store
    facts = {kind: {s: _facts(rows) for s, rows in store.subjects(kind)} for kind in ("location", "container")}
    locations = {ident: _location(ident, facts["location"]) for ident in facts["location"]}
    numbers = {ident: number for number, ident in store.items()}
    holding: dict[str, Kept] = {}
    for item, place in store.kept_in():
        if item in numbers and place.container in facts["container"]:
            holding[item] = place
    return House(locations, _containers(facts["container"], locations, holding), holding, numbers)


def _facts(rows: Iterable[tuple[Statement, Reading | None]]) -> dict[str, list[str]]:
    """Field -> the words of its statements in force, oldest first."""
    by_field: defaultdict[str, list[str]] = defaultdict(list)
    for statement, _ in rows:
        by_field[statement.field].append(statement.words)
    return by_field


def _last(facts: Mapping[str, list[str]], name: str) -> str:
    """The last words of a field; '' without any."""
    return facts[name][-1] if facts.get(name) else ""


def _outward(ident: str, facts: Mapping[str, Mapping[str, list[str]]]) -> list[str]:
    """The id of a location or container and the ids of what it is inside, innermost first; a cycle ends it."""
    steps: list[str] = []
    while ident in facts and ident not in steps:
        steps.append(ident)
        ident = _last(facts[ident], "inside")
    return steps


def _location(ident: str, facts: Mapping[str, Mapping[str, list[str]]]) -> Location:
    path = _outward(ident, facts)
    return Location(
        id=ident,
        kind=_last(facts[ident], "kind") or "room",
        name=_last(facts[ident], "name"),
        inside=_last(facts[ident], "inside"),
        path=tuple(_last(facts[ident], "name") for ident in reversed(path)),
        surroundings=frozenset(words for ident in path for words in facts[ident].get("surroundings", ())),
    )


def _containers(
    facts: Mapping[str, Mapping[str, list[str]]], locations: Mapping[str, Location], holding: Mapping[str, Kept]
) -> dict[str, Container]:
    inner: defaultdict[str, list[str]] = defaultdict(list)
    items: defaultdict[str, list[tuple[int, str]]] = defaultdict(list)
    for ident, container_facts in facts.items():
        inner[_last(container_facts, "inside")].append(ident)
    for item, place in holding.items():
        items[place.container].append((place.position, item))
    containers: dict[str, Container] = {}
    for ident, container_facts in facts.items():
        path = _outward(ident, facts)
        location = locations.get(_last(facts[path[-1]], "inside"))
        around = {words for outer in path for words in facts[outer].get("surroundings", ())}
        size = SIZE_WORDS.or_none(_last(container_facts, "size"))
        containers[ident] = Container(
            id=ident,
            kind=_last(container_facts, "kind") or "box",
            label=_last(container_facts, "label") or "?",
            path=tuple(_step(facts[outer]) for outer in reversed(path)),
            inside=_last(container_facts, "inside"),
            location=location.path if location else (),
            materials=_last(container_facts, "materials"),
            tested=_last(container_facts, "tested"),
            size_mm=size.sides if size else (),
            capacity=COUNT_WORDS.or_none(_last(container_facts, "capacity")) or 0,
            fullness=_last(container_facts, "fullness"),
            surroundings=frozenset(around | (location.surroundings if location else frozenset())),
            items=tuple(item for _, item in sorted(items[ident])),
            others=tuple(inner[ident]),
        )
    return containers


def _step(facts: Mapping[str, list[str]]) -> tuple[str, str]:
    """(kind, label) of a container: one step of the path of a mark."""
    return _last(facts, "kind") or "box", _last(facts, "label") or "?"


# finding items


def items_named(collection: Collection, texts: Sequence[str]) -> list[Subject]:
    """The items of these numbers and marks; the mark of a container stands for all that is in it. Raises WrongUse."""
    house = house_of(collection)
    subjects: list[Subject] = []
    for text in texts:
        inner = [] if looks_like_number(text) else _in_container(house, text)
        subjects += [Subject(Kind.ITEM, item) for item in inner] or [find_item(collection, text)]
    return list(dict.fromkeys(subjects))


def _in_container(house: House, text: str) -> list[str]:
    container = _container_at(house, text)
    return everything_in(house, container) if container else []


def _container_at(house: House, text: str) -> Container | None:
    short = "" if looks_like_number(text) else short_form(text).casefold()
    return next(
        (container for container in house.containers.values() if container.mark.short.casefold() == short), None
    )


def check_not_into_itself(house: House, texts: Sequence[str], into: Container) -> None:
    """Raises WrongUse if one of these marks is of a container that `into` is, or lies in: what else lies in it would go
    there too."""
    around = set(outward(into.id, house.inside))
    for text in texts:
        container = _container_at(house, text)
        if container is not None and container.id in around:
            target = "itself" if container.id == into.id else into.mark.long
            raise WrongUse(
                f"{container.mark.long} cannot be moved into {target}.",
                "Name the items, or the folder, that are to go there; boxlore housing what MARK lists them.",
            )


def everything_in(house: House, container: Container) -> list[str]:
    """The ids of the items in a container and in all containers inside it, in order."""
    items = list(container.items)
    for inner in container.others:
        items += everything_in(house, house.containers[inner])
    return items


# saying


def shown(house: House, step: MoveStep) -> str:
    """A step of a plan in words: `TRA-0042: 3/12/4 → 3/13/1`."""
    if step.field == KEPT:
        return f"{house.numbers[step.subject]}: {_mark(house, step.before)} → {_mark(house, step.after)}"
    container = house.containers[step.subject]
    if step.field == "inside":
        return f"{container.mark.long} → into {house.containers[step.after].mark.long}"
    return f"{container.mark.long} → {container.kind} {step.after}"


def _mark(house: House, words: str) -> str:
    place = KEPT_WORDS.or_none(words)
    container = house.containers.get(place.container) if place else None
    if place is None or container is None:
        return "no place"
    return f"{container.mark.short}/{place.position}" if place.position else container.mark.short


def place_findings(house: House) -> list[Finding]:
    """Findings about positions: one that several items have, free ones in between, and items that have none."""
    findings = [
        make_finding(
            "kept.double",
            Severity.ERROR,
            f"Place {position} of {container.mark.long} is said to hold {_numbers(house, items)}.",
            OURS,
            about=container.id,
        )
        for container in house.containers.values()
        for position, items in doubles(_positions(house, container)).items()
    ]
    for container in house.containers.values():
        free = gaps(position for _, position in _positions(house, container))
        if free:
            message = f"In {container.mark.long} nothing is noted at place {_listed(free)}: missing, or never there?"
            findings.append(make_finding("kept.gap", Severity.ASK, message, OURS, about=container.id))
    for item, number in house.numbers.items():
        if item not in house.holding:
            findings.append(make_finding("kept.nowhere", Severity.ASK, f"{number} lies in no box.", OURS, about=item))
    return findings


def _positions(house: House, container: Container) -> list[tuple[str, int]]:
    return [(item, house.holding[item].position) for item in container.items]


def _numbers(house: House, items: Iterable[str]) -> str:
    return " and ".join(house.numbers[item] for item in items)


def _listed(places: Sequence[int], limit: int = 12) -> str:
    """`3, 5, 9 and 2 more`: the numbers, `limit` of them at most."""
    further = f" and {len(places) - limit} more" if len(places) > limit else ""
    return ", ".join(map(str, places[:limit])) + further
