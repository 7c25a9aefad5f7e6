"""Changes to where the originals are: locations, containers, moves, loans, and what was attached to an original.

Every change is one act, which undo takes back whole. `tasks.originals.housing_now` reads what there is.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from boxlore.core.errors import WrongUse
from boxlore.core.fields.letters import check_typed, says_nothing
from boxlore.core.fields.originals import SIZE_WORDS, typed_size
from boxlore.core.fields.pictures import LINK_WORDS, Link
from boxlore.core.fields.plain_values import COUNT_WORDS, DAY_WORDS
from boxlore.core.fields.table import FIELDS
from boxlore.core.originals.moves import KEPT, Plan
from boxlore.core.records.marks import KINDS, LOCATION_KINDS, Container, check_label, number_text, short_form
from boxlore.core.statements import Kind, Subject, Sure
from boxlore.store.values import ActDone, Change
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.originals.housing_now import House, house_of

MOST_ITEMS = 100_000
"""More do not lie in one container."""


def put(act: Act, subject: Subject, name: str, words: str) -> None:
    """Set a field of one value; the statement before is replaced, and stays in the log.

    An empty string leaves the field as it is; so do the words that it has already.
    """
    stood = [statement for statement, _ in act.collection.store.statements(subject) if statement.field == name]
    if words and (not stood or stood[-1].words != words):
        act.state(subject, name, words, audience=FIELDS[name].audience, replaces=stood[-1].id if stood else "")


def gather(act: Act, subject: Subject, name: str, words: Iterable[str]) -> None:
    """Add words to a field of many; words that are there already are not stated again."""
    known_words = {
        statement.words for statement, _ in act.collection.store.statements(subject) if statement.field == name
    }
    for value in dict.fromkeys(words):
        if value and value not in known_words:
            act.state(subject, name, value, audience=FIELDS[name].audience)


def new_location(
    collection: Collection, name: str, *, kind: str = "room", inside: str = "", surroundings: Sequence[str] = ()
) -> str:
    """Make a location, or add surroundings to one of this name in the same place. Returns its id.

    Raises WrongUse for an unknown kind, or an unknown location in `inside`.
    """
    if kind not in LOCATION_KINDS:
        raise WrongUse(f"“{kind}” is no kind of location.", f"Use one of: {', '.join(LOCATION_KINDS)}.")
    house = house_of(collection)
    name = _location_name(name)
    around = house.location(inside) if inside else None
    outer = around.id if around else ""
    if around and name.casefold() in map(str.casefold, around.path):
        raise WrongUse(f"{name} cannot be inside itself.", "Name the house or room that it is in.")
    matching = [
        location
        for location in house.locations.values()
        if location.name.casefold() == name.casefold() and location.inside == outer
    ]
    act = collection.act(f"location {name}")
    subject = Subject(Kind.LOCATION, matching[0].id) if matching else act.new(Kind.LOCATION)
    if not matching:
        act.state(subject, "name", name)
        act.state(subject, "kind", kind)
        if outer:
            act.state(subject, "inside", outer)
    gather(act, subject, "surroundings", surroundings)
    act.done()
    return subject.id


def _location_name(name: str) -> str:
    """The name of a location. Raises WrongUse where it names nothing, or has the stroke that parts names."""
    name = name.strip()
    check_typed(name)
    if says_nothing(name) or "/" in name:
        raise WrongUse(
            f"“{name[:40]}” is no name of a location: it must have letters or figures, and no stroke (/).",
            "Say what it is in with --inside.",
        )
    return name


@dataclass(frozen=True, slots=True, kw_only=True)
class About:
    """What is noted of a container, as typed; '' for what is not said. See `core.records.marks.Container`."""

    materials: str = ""
    size: str = ""
    capacity: str = ""
    tested: str = ""
    fullness: str = ""
    at: str = ""
    surroundings: tuple[str, ...] = ()


def note_container(collection: Collection, mark: str, about: About, *, kind: str = "box") -> Container:
    """Describe the container at a mark. One that is not there yet is made; the ones that it is in must exist.

    Raises WrongUse for a kind, count, size or location that is none.
    """
    if kind not in KINDS:
        raise WrongUse(f"“{kind}” is no kind of container.", f"Use one of: {', '.join(KINDS)}.")
    house = house_of(collection)
    short = short_form(mark)
    for label in short.split("/"):
        check_label(label)
    matching = [
        container for container in house.containers.values() if container.mark.short.casefold() == short.casefold()
    ]
    kind = matching[0].kind if matching else kind
    about = replace(
        about,
        size=SIZE_WORDS.write(typed_size(about.size, 3 if kind == "box" else 2)) if about.size else "",
        capacity=_capacity(about.capacity) if about.capacity else "",
    )
    act = collection.act(f"container {short}")
    subject = Subject(Kind.CONTAINER, matching[0].id) if matching else _new_container(act, house, short, kind)
    for name in ("materials", "size", "capacity", "tested", "fullness"):
        put(act, subject, name, getattr(about, name))
    if about.at:
        if "/" in short:
            raise WrongUse(f"{short} stands in another container.", "Say where the outermost one stands.")
        put(act, subject, "inside", house.location(about.at).id)
    gather(act, subject, "surroundings", about.surroundings)
    act.done()
    return house_of(collection).containers[subject.id]


def _capacity(text: str) -> str:
    """The words of how many items a container holds. Raises WrongUse."""
    count = COUNT_WORDS.typed(text.strip())
    if not 1 <= count <= MOST_ITEMS:
        raise WrongUse(
            f"“{text.strip()[:40]}” is no number of items that a container holds.",
            f"Write a whole number from 1 to {MOST_ITEMS}, such as 40.",
        )
    return COUNT_WORDS.write(count)


def _new_container(act: Act, house: House, short: str, kind: str) -> Subject:
    outer, _, label = short.rpartition("/")
    around = house.named(outer).id if outer else ""
    container = act.new(Kind.CONTAINER)
    act.state(container, "kind", kind)
    act.state(container, "label", label)
    if around:
        act.state(container, "inside", around)
    return container


def carry_out(collection: Collection, plan: Plan) -> str:
    """Write a plan as one act, which undo takes back whole. Returns the act's id, '' if nothing changes.

    Raises WrongUse, with the problems, if the plan has any.
    """
    if plan.problems:
        raise WrongUse("This cannot be done as it stands.", " ".join(plan.problems))
    if not plan.steps:
        return ""
    collection.back_up_before("moving originals")
    act = collection.act(plan.title)
    for step in plan.steps:
        kind = Kind.ITEM if step.field == KEPT else Kind.CONTAINER
        put(act, Subject(kind, step.subject), step.field, step.after)
    act.done()
    return act.id


OF_HOUSING = (
    "move ", "merge", "renumber", "count the places", "location ", "container ", "on loan", "given back", "note taken",
    "letter taken", "survey of",
)  # fmt: skip
"""The title of an act about housing (`Act.what`) begins with one of these."""


def last_of_housing(collection: Collection) -> ActDone:
    """The last act about housing that was not taken back. Raises WrongUse where there is none."""
    acts = collection.store.last_acts(1000)
    last = next((act for act in acts if not act.withdrawn and act.what.startswith(OF_HOUSING)), None)
    if last is None:
        raise WrongUse("There is nothing of housing to take back.")
    return last


def undo(collection: Collection, act: str) -> None:
    """Withdraw one act, by its id."""
    clock = collection.clock
    undoing = clock.new_id()
    title = next((last.what for last in collection.store.last_acts(200) if last.id == act), "an act")
    collection.store.write(
        Change(act=undoing, what=f"taken back: {title}", by=collection.by, recorded_at=clock.now(), withdraws=(act,))
    )


# loans, and what was attached


def lend(
    collection: Collection, items: Sequence[Subject], lender: str, due: date | None, on: date | None = None
) -> str:
    """Note that items are on loan to us: by whom, and when they are due back.

    Returns the act's id, '' where all of that is noted already.
    """
    check_typed(lender)
    if due and on and due < on:
        raise WrongUse(f"Due back on {due}, and lent on {on}.", "Write a later day for --due, or the day of --on.")
    act = collection.act(f"on loan from {lender}")
    for item in items:
        put(act, item, "lender", lender)
        for statement, _ in collection.store.statements(item):
            if statement.field == "returned" and statement.words:  # lent again
                act.state(item, "returned", "", sure=Sure.NOT_KNOWN, replaces=statement.id)
        if due:
            put(act, item, "due_back", DAY_WORDS.write(due))
    act.done()
    return act.id if act.statements else ""


def give_back(collection: Collection, items: Sequence[Subject], on: date) -> None:
    """Note that items were given back to their lender. Raises WrongUse if one is not on loan."""
    act = collection.act("given back")
    for item in items:
        words = {statement.field: statement.words for statement, _ in collection.store.statements(item)}
        number = collection.store.number_of(item.id)
        if not words.get("lender"):
            raise WrongUse(f"{number} is not on loan.", "boxlore housing lend notes a loan.")
        if given_back := words.get("returned"):
            raise WrongUse(
                f"{number} was given back on {given_back}.", "boxlore housing lend notes it if it was lent again."
            )
        put(act, item, "returned", DAY_WORDS.write(on))
    act.done()


def take_off(collection: Collection, item: Subject, words: str, *, kind: str = "note") -> str:
    """Make an item of a note or letter that was taken off a print, and relate it by `attached_to`.

    `words` are what is written on it ('' for nothing). Returns the new item's number.
    """
    settings, store = collection.settings, collection.store
    act = collection.act(f"{kind} taken off {store.number_of(item.id)}")
    count = store.next_number_count(settings.prefix, settings.series)
    number = number_text(settings.prefix, settings.series, count)
    piece = act.new(Kind.ITEM)
    act.state(piece, "number", number)
    act.state(piece, "kind", kind)
    act.state(piece, "found_in", f"attached to {store.number_of(item.id)}")
    if words:
        act.state(piece, "inscription", words, language=settings.language)
    act.state(act.new(Kind.RELATION), "link", LINK_WORDS.write(Link(piece.id, item.id, "attached_to")))
    act.done()
    return number
