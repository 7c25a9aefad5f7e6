"""Events of the family told by hand: added, dated, renamed, taken off; and what leans on them is read again.

“The summer after the christening” asks when that was, once for all pictures: as soon as the event has its date, every
date that leans on it is read by it, in the same act, so that one undo takes all of it back.
"""

from collections.abc import Callable
from dataclasses import dataclass

from boxlore.core.dates.event_question import asked_event
from boxlore.core.errors import WrongUse
from boxlore.core.people.life_event_words import KINDS, bare, kind_of
from boxlore.core.records.events import FamilyEvent
from boxlore.core.statements import Kind, Statement, Subject
from boxlore.tasks.collection.opening import Act, Collection
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tasks.telling.time_line import called_so, own_events, time_line
from boxlore.tasks.telling.understanding import NOTHING_AROUND

Write = Callable[[Act], None]
"""Writes an act: `Act.done`, or what makes it the last step of a sitting."""

_TYPED = {"wedding": "marriage", "house": "move", "war": "war service"}


@dataclass(frozen=True, slots=True)
class Waiting:
    """An event that pictures' dates lean on and that has no date yet: its name, and the ids of the items."""

    name: str
    items: tuple[str, ...]


def waiting(collection: Collection, teller: Teller) -> list[Waiting]:
    """The events that are to be asked about, each once, the one that most pictures wait for first."""
    items: dict[str, list[str]] = {}
    spelled: dict[str, str] = {}
    for item, words in teller.leaning_dates():
        ask = teller.understanding.date(words, NOTHING_AROUND)[0].ask or ""
        if name := asked_event(ask):
            items.setdefault(bare(name), []).append(item)
            spelled.setdefault(bare(name), name)
    rows = [Waiting(spelled[name], tuple(dict.fromkeys(idents))) for name, idents in items.items()]
    return sorted(rows, key=lambda row: (-len(row.items), row.name))


def find_event(collection: Collection, words: str) -> FamilyEvent:
    """The one event told by hand that is meant by a name, a part of one or the end of an id. Raises WrongUse."""
    matches = called_so(own_events(collection), words)
    if len(matches) == 1:
        return matches[0]
    if matches:
        names = "; ".join(f"{event.name} ({event.id[-12:]})" for event in matches[:6])
        raise WrongUse(
            f"“{words[:60]}” may be {len(matches)} events: {names}.", "Say more of the name, or the brackets."
        )
    if any(not event.own for event in called_so(time_line(collection), words)):
        raise WrongUse(
            f"“{words[:60]}” follows from what is told of a person.", "Put it right there: boxlore people tell."
        )
    raise WrongUse(f"No event here is called “{words[:60]}”.", "boxlore events list shows them all.")


def tell_event(teller: Teller, name: str, date: str, how: Telling, *, write: Write = Act.done) -> int:
    """Say when an event was, whether it was told of before without a date or not. Returns as `add_event` does."""
    told = [event for event in own_events(teller.collection) if bare(event.name) == bare(name)]
    if told and not told[0].edtf:
        return date_event(teller, told[0], date, how, write=write)
    return add_event(teller, name, date, how, write=write)


def add_event(teller: Teller, name: str, date: str, how: Telling, *, kind: str = "", write: Write = Act.done) -> int:
    """Tell of an event; `date` may be empty, then it is asked. Returns how many pictures' dates were read by it.

    Raises WrongUse for a name that is none or is there already, and for a kind that there is none of.
    """
    collection = teller.collection
    name = _named(teller, name)
    kind = _kind(kind) or kind_of(name)
    namesakes = called_so(own_events(collection), name)
    same = next((event for event in namesakes if bare(name) == bare(event.name)), None)
    if same is not None and same.said:
        raise WrongUse(f"“{same.name}” is there already.", "Give it a date with: boxlore events date.")
    act = collection.act(f"event: {name[:40]}")
    subject = Subject(Kind.EVENT, same.id) if same is not None else act.new(Kind.EVENT)
    source = teller.source(act, how.source)
    if same is None:
        act.state(subject, "name", name, source=source, sitting=how.sitting)
    act.state(subject, "kind", kind, source=source, sitting=how.sitting)
    if date.strip():
        teller.add(act, subject, "date", date, how)
    return _written(teller, act, write)


def date_event(teller: Teller, event: FamilyEvent, words: str, how: Telling, *, write: Write = Act.done) -> int:
    """Say when it was, in place of what the same source said before. Returns how many dates were read by it."""
    collection = teller.collection
    act = collection.act(f"{event.name[:40]}: {words.strip()[:40]}")
    source = teller.source(act, how.source)
    before = [row for row in _rows(collection, event) if row.field == "date" and row.source == source]
    teller.add(
        act, Subject(Kind.EVENT, event.id), "date", teller.typed(Kind.EVENT, "date", words), how,
        replaces=before[-1].id if before else "",
    )  # fmt: skip
    return _written(teller, act, write)


def rename_event(teller: Teller, event: FamilyEvent, name: str, how: Telling, *, write: Write = Act.done) -> int:
    """Call it something else; the pictures' own words stay, and what they mean by the earlier name is asked about.
    Returns how many dates were read again."""
    collection = teller.collection
    name = _named(teller, name)
    namesakes = [known for known in called_so(own_events(collection), name) if bare(name) == bare(known.name)]
    if any(known.id != event.id and known.said for known in namesakes):
        raise WrongUse(f"Another event is called “{name[:60]}”.", "Say what tells the two apart.")
    act = collection.act(f"{event.name[:40]} is called {name[:40]}")
    source = teller.source(act, how.source)
    act.state(Subject(Kind.EVENT, event.id), "name", name, source=source, sitting=how.sitting)
    return _written(teller, act, write)


def remove_event(teller: Teller, event: FamilyEvent, *, write: Write = Act.done) -> int:
    """Take it off the time line; what was told stays in the history. Returns how many dates are read otherwise."""
    act = teller.collection.act(f"not on the time line: {event.name[:40]}")
    for row in _rows(teller.collection, event):
        if row.field in ("kind", "date"):
            act.state(row.subject, row.field, "", source=row.source, replaces=row.id)
    return _written(teller, act, write)


def statements_of(collection: Collection, event: FamilyEvent) -> list[str]:
    """The ids of everything told of an event, for a strike."""
    return [row.id for row in _rows(collection, event)]


def _named(teller: Teller, typed: str) -> str:
    words = teller.typed(Kind.EVENT, "name", typed)
    if not any(map(str.isalnum, words)):
        raise WrongUse("An event needs a name.", "Say it as the family does: the wedding of Anna and Joe.")
    return words


def _kind(typed: str) -> str:
    words = _TYPED.get(typed.strip().casefold(), typed.strip().casefold())
    if words and words not in KINDS:
        kinds = ", ".join(sorted({*KINDS, *_TYPED} - {"marriage"}))
        raise WrongUse(f"“{typed[:40]}” is no kind of event.", f"Kinds: {kinds}.")
    return words


def _rows(collection: Collection, event: FamilyEvent) -> list[Statement]:
    return [row for row, _ in collection.store.statements(Subject(Kind.EVENT, event.id)) if row.words.strip()]


def _written(teller: Teller, act: Act, write: Write) -> int:
    """Write the act, then what leans on events is read again, as a further part of the same act."""
    before = {item: teller.understanding.date(words, NOTHING_AROUND)[0] for item, words in teller.leaning_dates()}
    act.done()
    further = Act(teller.collection, act.id, act.what)
    for item, words in teller.leaning_dates():
        if teller.understanding.date(words, NOTHING_AROUND)[0] != before.get(item):
            teller.read_again(further, Subject(Kind.ITEM, item), "date")
    write(further)
    return len(further.readings)
