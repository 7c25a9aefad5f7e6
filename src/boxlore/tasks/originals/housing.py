"""Where the originals are: locations, containers, moves, every mark that ever was, and who owns what."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from boxlore.core.errors import WrongUse
from boxlore.core.fields.table import FIELDS
from boxlore.core.findings import Finding, Severity
from boxlore.core.originals.moves import KEPT, MoveStep, Plan, Position, doubles, gaps, read_place
from boxlore.core.records.containers import KINDS, LOCATION_KINDS, Container, looks_like_number, short_form
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.store.values import Change
from boxlore.tasks.collection.marks import find_item
from boxlore.tasks.collection.opening import Act, Collection

OURS = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Location:
    """A house, room or shelf; `path` is its names from the house inward."""

    id: str
    kind: str
    name: str
    inside: str
    path: tuple[str, ...]
    surroundings: frozenset[str]


@dataclass(slots=True)
class House:
    """All locations, containers and places of a collection, as they are now."""

    locations: dict[str, Location]
    containers: dict[str, Container]
    holding: dict[str, Position]
    numbers: dict[str, str]
    """Item id → number."""

    @property
    def labels(self) -> dict[str, str]:
        return {ident: one.label for ident, one in self.containers.items()}

    @property
    def inside(self) -> dict[str, str]:
        """Which container a container stands in. A location is none: two boxes of one label would be one mark
        wherever they stand."""
        return {ident: one.inside for ident, one in self.containers.items() if one.inside in self.containers}

    def named(self, text: str) -> Container:
        """The container of a mark without an item (`3/12`, `Box 3 / Folder 12`, or its last label if that is one)."""
        short = short_form(text).casefold()
        every = self.containers.values()
        found = [one for one in every if one.mark.short.casefold() == short]
        found = found or [one for one in every if one.label.casefold() == short]
        if len(found) != 1:
            said = "no container" if not found else f"{len(found)} containers"
            raise WrongUse(f"There is {said} {text}.", "boxlore housing what lists what there is.")
        return found[0]

    def location(self, text: str) -> Location:
        """The location of a name, or of names from the house inward (`House / Hall / Shelf 2`)."""
        wanted = tuple(part.strip().casefold() for part in text.split("/"))
        found = [
            one
            for one in self.locations.values()
            if tuple(part.casefold() for part in one.path[-len(wanted) :]) == wanted
        ]
        if len(found) != 1:
            said = "no location" if not found else f"{len(found)} locations"
            raise WrongUse(f"There is {said} “{text[:60]}”.", "boxlore housing place NAME makes one.")
        return found[0]


def house_of(collection: Collection) -> House:
    """Read everything about places."""
    store = collection.store
    facts = {kind: {s: _facts(rows) for s, rows in store.subjects(kind)} for kind in ("location", "container")}
    locations = {ident: _location(ident, facts["location"]) for ident in facts["location"]}
    numbers = {ident: number for number, ident in store.items()}
    holding: dict[str, Position] = {}
    for item, words in store.kept_in():
        place = read_place(words)
        if item in numbers and place.container in facts["container"]:
            holding[item] = place
    return House(locations, _containers(facts["container"], locations, holding), holding, numbers)


def _facts(rows: Iterable[tuple[Statement, Reading | None]]) -> dict[str, list[str]]:
    found: defaultdict[str, list[str]] = defaultdict(list)
    for statement, _ in rows:
        found[statement.field].append(statement.words)
    return found


def _last(facts: Mapping[str, list[str]], name: str) -> str:
    return facts[name][-1] if facts.get(name) else ""


def _outward(ident: str, facts: Mapping[str, Mapping[str, list[str]]]) -> list[str]:
    """A thing and what it is inside, innermost first; a circle ends where it began."""
    steps: list[str] = []
    while ident in facts and ident not in steps:
        steps.append(ident)
        ident = _last(facts[ident], "inside")
    return steps


def _location(ident: str, facts: Mapping[str, Mapping[str, list[str]]]) -> Location:
    way = _outward(ident, facts)
    return Location(
        id=ident,
        kind=_last(facts[ident], "kind") or "room",
        name=_last(facts[ident], "name"),
        inside=_last(facts[ident], "inside"),
        path=tuple(_last(facts[one], "name") for one in reversed(way)),
        surroundings=frozenset(words for one in way for words in facts[one].get("surroundings", ())),
    )


def _containers(
    facts: Mapping[str, Mapping[str, list[str]]], locations: Mapping[str, Location], holding: Mapping[str, Position]
) -> dict[str, Container]:
    inner: defaultdict[str, list[str]] = defaultdict(list)
    items: defaultdict[str, list[tuple[int, str]]] = defaultdict(list)
    for ident, told in facts.items():
        inner[_last(told, "inside")].append(ident)
    for item, place in holding.items():
        items[place.container].append((place.position, item))
    found: dict[str, Container] = {}
    for ident, told in facts.items():
        way = _outward(ident, facts)
        location = locations.get(_last(facts[way[-1]], "inside"))
        around = {words for one in way for words in facts[one].get("surroundings", ())}
        capacity = _last(told, "capacity")
        found[ident] = Container(
            id=ident,
            kind=_last(told, "kind") or "box",
            label=_last(told, "label") or "?",
            path=tuple(_step(facts[one]) for one in reversed(way)),
            inside=_last(told, "inside"),
            location=location.path if location else (),
            materials=_last(told, "materials"),
            tested=_last(told, "tested"),
            size_mm=_millimetres(_last(told, "size")),
            capacity=int(capacity) if capacity.isdigit() else 0,
            fullness=_last(told, "fullness"),
            surroundings=frozenset(around | (location.surroundings if location else frozenset())),
            items=tuple(item for _, item in sorted(items[ident])),
            others=tuple(inner[ident]),
        )
    return found


def _step(told: Mapping[str, list[str]]) -> tuple[str, str]:
    return _last(told, "kind") or "box", _last(told, "label") or "?"


def _millimetres(text: str) -> tuple[float, ...]:
    parts = text.replace("x", " ").replace("×", " ").split()
    return tuple(float(part) for part in parts if part.replace(".", "", 1).isdigit())


# writing


def put(act: Act, subject: Subject, name: str, words: str) -> None:
    """Set a field that holds one value: what stood there is replaced, never lost. Empty words withdraw nothing."""
    stood = [one for one, _ in act.collection.store.statements(subject) if one.field == name]
    if words and (not stood or stood[-1].words != words):
        act.state(subject, name, words, audience=FIELDS[name].audience, replaces=stood[-1].id if stood else "")


def gather(act: Act, subject: Subject, name: str, words: Iterable[str]) -> None:
    """Add to a field that holds many; what is there already is not said twice."""
    there = {one.words for one, _ in act.collection.store.statements(subject) if one.field == name}
    for one in dict.fromkeys(words):
        if one and one not in there:
            act.state(subject, name, one, audience=FIELDS[name].audience)


def new_location(
    collection: Collection, name: str, *, kind: str = "room", inside: str = "", surroundings: Sequence[str] = ()
) -> str:
    """Make a location, or add surroundings to one that is there. Returns its id."""
    if kind not in LOCATION_KINDS:
        raise WrongUse(f"“{kind}” is no kind of location.", f"Use one of: {', '.join(LOCATION_KINDS)}.")
    house = house_of(collection)
    outer = house.location(inside).id if inside else ""
    same = [one for one in house.locations.values() if one.name.casefold() == name.casefold() and one.inside == outer]
    act = collection.act(f"location {name}")
    subject = Subject(Kind.LOCATION, same[0].id) if same else act.new(Kind.LOCATION)
    if not same:
        act.state(subject, "name", name)
        act.state(subject, "kind", kind)
        if outer:
            act.state(subject, "inside", outer)
    gather(act, subject, "surroundings", surroundings)
    act.done()
    return subject.id


@dataclass(frozen=True, slots=True, kw_only=True)
class About:
    """What is noted of a container; empty for not said."""

    materials: str = ""
    size: str = ""
    capacity: str = ""
    tested: str = ""
    fullness: str = ""
    at: str = ""
    surroundings: tuple[str, ...] = ()


def note_container(collection: Collection, mark: str, about: About, *, kind: str = "box") -> Container:
    """Describe the container at a mark; one that is not there yet is made (its outer ones must be)."""
    if kind not in KINDS:
        raise WrongUse(f"“{kind}” is no kind of container.", f"Use one of: {', '.join(KINDS)}.")
    if about.capacity and not about.capacity.isdigit():
        raise WrongUse(f"“{about.capacity}” is no count of items.", "Write a whole number.")
    if about.size and not _millimetres(about.size):
        raise WrongUse(f"“{about.size}” is no size.", "Write millimetres: 380 x 260 x 130.")
    house = house_of(collection)
    short = short_form(mark)
    there = [one for one in house.containers.values() if one.mark.short.casefold() == short.casefold()]
    act = collection.act(f"container {short}")
    subject = Subject(Kind.CONTAINER, there[0].id) if there else _made(act, house, short, kind)
    for name in ("materials", "size", "capacity", "tested", "fullness"):
        put(act, subject, name, getattr(about, name))
    if about.at:
        if "/" in short:
            raise WrongUse(f"{short} stands in another container.", "Say where the outermost one stands.")
        put(act, subject, "inside", house.location(about.at).id)
    gather(act, subject, "surroundings", about.surroundings)
    act.done()
    return house_of(collection).containers[subject.id]


def _made(act: Act, house: House, short: str, kind: str) -> Subject:
    outer, _, label = short.rpartition("/")
    around = house.named(outer).id if outer else ""
    made = act.new(Kind.CONTAINER)
    act.state(made, "kind", kind)
    act.state(made, "label", label)
    if around:
        act.state(made, "inside", around)
    return made


def carry_out(collection: Collection, plan: Plan) -> str:
    """Write a plan as one act, which undo takes back whole. Returns the act's id, empty if nothing changes."""
    if plan.problems:
        raise WrongUse("This cannot be done as it stands.", " ".join(plan.problems))
    if not plan.steps:
        return ""
    act = collection.act(plan.title)
    for step in plan.steps:
        kind = Kind.ITEM if step.field == KEPT else Kind.CONTAINER
        put(act, Subject(kind, step.subject), step.field, step.after)
    act.done()
    return act.id


def undo(collection: Collection, act: str) -> None:
    """Take back one act."""
    clock = collection.clock
    made = clock.new_id()
    what = next((one.what for one in collection.store.last_acts(200) if one.id == act), "an act")
    collection.store.write(
        Change(act=made, what=f"taken back: {what}", by=collection.by, recorded_at=clock.now(), withdraws=(act,))
    )


def shown(house: House, step: MoveStep) -> str:
    """A step in words, for the plan that is shown first."""
    if step.field == KEPT:
        return f"{house.numbers[step.subject]}: {_mark(house, step.before)} → {_mark(house, step.after)}"
    one = house.containers[step.subject]
    if step.field == "inside":
        return f"{one.mark.long} → into {house.containers[step.after].mark.long}"
    return f"{one.mark.long} → {one.kind} {step.after}"


def _mark(house: House, words: str) -> str:
    place = read_place(words)
    one = house.containers.get(place.container)
    return "no place" if one is None else f"{one.mark.short}/{place.position}" if place.position else one.mark.short


# asking


def place_findings(house: House) -> list[Finding]:
    """Gaps, doubles and items with no place."""
    found = [
        _finding(
            "kept.double",
            Severity.ERROR,
            f"Place {position} of {one.mark.long} is said to hold {_numbers(house, items)}.",
            one.id,
        )
        for one in house.containers.values()
        for position, items in doubles(_positions(house, one)).items()
    ]
    for one in house.containers.values():
        free = gaps(position for _, position in _positions(house, one))
        if free:
            message = f"In {one.mark.long} nothing is noted at place {_listed(free)}: missing, or never there?"
            found.append(_finding("kept.gap", Severity.ASK, message, one.id))
    for item, number in house.numbers.items():
        if item not in house.holding:
            found.append(_finding("kept.nowhere", Severity.ASK, f"{number} has no place.", item))
    return found


def _positions(house: House, one: Container) -> list[tuple[str, int]]:
    return [(item, house.holding[item].position) for item in one.items]


def _numbers(house: House, items: Iterable[str]) -> str:
    return " and ".join(house.numbers[item] for item in items)


def _listed(places: Sequence[int], most: int = 12) -> str:
    more = f" and {len(places) - most} more" if len(places) > most else ""
    return ", ".join(map(str, places[:most])) + more


def _finding(rule: str, severity: Severity, message: str, about: str) -> Finding:
    return Finding(rule=rule, severity=severity, message=message, source=OURS, about=about)


# loans, and what was attached


def lend(collection: Collection, items: Sequence[Subject], lender: str, due: date | None) -> str:
    """Note that items are on loan to us: by whom, and when they are due back. Returns the act."""
    act = collection.act(f"on loan from {lender}")
    for item in items:
        put(act, item, "lender", lender)
        if due:
            put(act, item, "due_back", due.isoformat())
    act.done()
    return act.id


def give_back(collection: Collection, items: Sequence[Subject], on: date) -> None:
    """Note that items were given back."""
    act = collection.act("given back")
    for item in items:
        if not any(one.field == "lender" for one, _ in collection.store.statements(item)):
            raise WrongUse("Not all of these are on loan.", "boxlore housing lend notes a loan.")
        put(act, item, "returned", on.isoformat())
    act.done()


def take_off(collection: Collection, item: Subject, words: str, *, kind: str = "note") -> str:
    """Make an item of a note or letter that was taken off a print: `attached_to` it, found in its place.

    Returns the new item's number.
    """
    settings, store = collection.settings, collection.store
    act = collection.act(f"{kind} taken off {store.number_of(item.id)}")
    count = store.next_number_count(settings.prefix, settings.series)
    number = f"{settings.prefix}{settings.series}-{count:04d}"
    made = act.new(Kind.ITEM)
    act.state(made, "number", number)
    act.state(made, "kind", kind)
    act.state(made, "found_in", f"attached to {store.number_of(item.id)}")
    if words:
        act.state(made, "inscription", words, language=settings.language)
    act.state(act.new(Kind.RELATION), "link", f"{made.id} {item.id} attached_to")
    act.done()
    return number


def items_named(collection: Collection, texts: Sequence[str]) -> list[Subject]:
    """The items of numbers and marks; a mark of a container means all that is in it."""
    house = house_of(collection)
    found: list[Subject] = []
    for text in texts:
        inner = [] if looks_like_number(text) else _in_container(house, text)
        found += [Subject(Kind.ITEM, item) for item in inner] or [find_item(collection, text)]
    return list(dict.fromkeys(found))


def _in_container(house: House, text: str) -> list[str]:
    short = short_form(text).casefold()
    one = next((one for one in house.containers.values() if one.mark.short.casefold() == short), None)
    return everything_in(house, one) if one else []


def everything_in(house: House, one: Container) -> list[str]:
    """Items in a container and in all that stands in it, in order."""
    found = list(one.items)
    for inner in one.others:
        found += everything_in(house, house.containers[inner])
    return found
