"""The family's time line as the log has it: events told by hand, marriages of a tree file, and the turns of lives."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.life_event_words import bare, kind_of
from boxlore.core.people.reference import PersonRef
from boxlore.core.records.events import FamilyEvent, in_order, of_lives
from boxlore.core.statements import NEARNESS, SURENESS, Kind, Reading, Said, Source, Statement, Subject
from boxlore.tasks.collection.opening import Collection

ToldRows = list[tuple[Statement, Reading | None]]

_LIFE_FIELDS: Mapping[str, tuple[str, ...]] = {
    "birth": ("born",), "death": ("died", "buried"), "marriage": ("married",),
}  # fmt: skip
"""Kind of an event -> the fields of a person that it follows from."""


def all_events(collection: Collection) -> list[FamilyEvent]:
    """Everything that a phrase may lean on, dated or not; a marriage told twice is one."""
    own = own_events(collection)
    pairs = {(frozenset(event.people), event.edtf) for event in own if event.kind == "marriage"}
    lives = (
        event
        for event in of_lives(collection.people())
        if event.kind != "marriage" or (frozenset(event.people), event.edtf) not in pairs
    )
    return [*own, *lives]


def time_line(collection: Collection) -> list[FamilyEvent]:
    """The time line as it is shown: in order, with who said so; a picture’s occasion without a date is left out."""
    names = collection.people().names()
    shown = [event for event in all_events(collection) if event.said or not event.own or event.edtf]
    return in_order(event if event.own else _with_source(collection, event, names) for event in shown)


def own_events(collection: Collection) -> list[FamilyEvent]:
    """Events with an entry of their own. Occasions of several pictures that are called the same are one event, if not
    told to have been at different times; `said` is empty for an occasion of which nothing else is told."""
    names = collection.people().names()
    by_name: dict[str, list[FamilyEvent]] = {}
    for ident, rows in collection.store.subjects(Kind.EVENT):
        event = _event(ident, rows, names)
        if event is not None:
            by_name.setdefault(bare(event.name), []).append(event)
    return [event for namesakes in by_name.values() for event in _told_apart(namesakes)]


def _told_apart(namesakes: list[FamilyEvent]) -> list[FamilyEvent]:
    """Those of one name: each date once, and without a date one that more is told of than a picture's occasion."""
    dated = {event.edtf: event for event in namesakes if event.edtf}
    return list(dated.values()) or [max(namesakes, key=lambda event: bool(event.said))]


def _event(ident: str, rows: ToldRows, names: Mapping[str, str]) -> FamilyEvent | None:
    rows = [(statement, reading) for statement, reading in rows if statement.words.strip()]
    called = tuple(statement.words.strip() for statement, _ in rows if statement.field == "name")
    if not called:
        return None
    kinds = [statement.words for statement, _ in rows if statement.field == "kind"]
    values = [reading.usable_value if reading else None for statement, reading in rows if statement.field == "partner"]
    dates = sorted(((statement, reading) for statement, reading in rows if statement.field == "date"), key=_rank)
    statement, reading = dates[-1] if dates else (None, None)
    value = reading.usable_value if reading else None
    source = statement.source if statement else next((row.source for row, _ in rows if row.field == "kind"), None)
    return FamilyEvent(
        id=ident,
        kind=kinds[-1] if kinds else kind_of(called[-1]),
        names=called,
        people=tuple(value.id for value in values if isinstance(value, PersonRef)),
        when=value if isinstance(value, DateReading) else None,
        words=statement.words if statement else "",
        said=source_words(source, names) if source else "",
    )


def _rank(row: tuple[Statement, Reading | None]) -> tuple[bool, int, int, str]:
    """What may be used goes before what asks; then as in a record: the surer, the nearer, the later."""
    statement, reading = row
    usable = reading is not None and reading.usable
    return usable, SURENESS[statement.sure], NEARNESS[statement.source.said], statement.recorded_at


def _with_source(collection: Collection, event: FamilyEvent, names: Mapping[str, str]) -> FamilyEvent:
    """An event that follows from a life, with who told that."""
    person = collection.people()[event.id]
    rows = [row for ident in person.ids for row in collection.store.statements(Subject(Kind.PERSON, ident))]
    said = [row for row, _ in rows if row.field in _LIFE_FIELDS[event.kind] and row.words == event.words]
    return replace(event, said=source_words(said[-1].source, names) if said else "")


def source_words(source: Source, names: Mapping[str, str]) -> str:
    """Who says so, in words; `names` are those of people by their ids."""
    usual = {
        Said.INSCRIPTION: "written on a picture",
        Said.KEEPER: "the keeper",
        Said.DOCUMENT: source.ref,
        Said.FILE: source.ref,
    }
    return usual.get(source.said) or names.get(source.ref, "") or str(source)


def called_so(events: Iterable[FamilyEvent], words: str) -> list[FamilyEvent]:
    """The events that are called so, else those whose name holds the words, else those whose id ends so."""
    asked = bare(words)
    everything = list(events)
    exact = [event for event in everything if asked == bare(event.name)]
    if exact or not asked:
        return exact
    part = [event for event in everything if asked in bare(event.name)]
    return part or [event for event in everything if len(asked) >= 8 and event.id.endswith(asked)]
