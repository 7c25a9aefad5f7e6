"""Places and occasions as they were told: which words stand on which items, and the same words corrected everywhere."""

from collections.abc import Iterator
from dataclasses import dataclass

from boxlore.core.errors import WrongUse
from boxlore.core.fields.language import language_tag
from boxlore.core.places.reading import READER_VERSION, Place, PlaceReading, full_name
from boxlore.core.statements import Kind, Reading, Statement, Subject, fold
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.statements import Telling

IN_QUESTION = ("check", "perhaps", "choices")
"""Kinds of readings of a place that ask which is meant."""


@dataclass(frozen=True, slots=True)
class WordsTold:
    """The same words in one field: as they were told first, and the items with them, (id, number) by number."""

    field: str
    words: str
    items: tuple[tuple[str, str], ...]


def words_told(collection: Collection, field: str) -> list[WordsTold]:
    """Everything told of items in this field, the same words together, by their letters."""
    spelled: dict[str, str] = {}
    items: dict[str, dict[str, str]] = {}
    for ident, _, words in collection.store.words_of((field,)):
        if words.strip() and (number := collection.store.number_of(ident)):
            key = " ".join(fold(words).split())
            spelled.setdefault(key, words.strip())
            items.setdefault(key, {})[ident] = number
    return [
        WordsTold(field, spelled[key], tuple(sorted(items[key].items(), key=lambda item: (len(item[1]), item[1]))))
        for key in sorted(items)
    ]


def _told(collection: Collection, group: WordsTold) -> Iterator[tuple[Statement, Reading | None]]:
    """Every answer that has these words, with how it is read."""
    wanted = " ".join(fold(group.words).split())
    for item, _ in group.items:
        for statement, reading in collection.store.statements(Subject(Kind.ITEM, item)):
            if statement.field == group.field and " ".join(fold(statement.words).split()) == wanted:
                yield statement, reading


def place_read(collection: Collection, group: WordsTold) -> PlaceReading | None:
    """Which place these words are read as, by the first answer that has them; None where they are read as nothing."""
    _, reading = next(_told(collection, group), (None, None))
    value = reading.value if reading is not None else None
    return value if isinstance(value, PlaceReading) else None


def places_called(sitting: Sitting, words: str) -> tuple[Place, ...]:
    """The places that other words may mean, the likeliest first. Raises WrongUse where there is none."""
    understood = sitting.teller.understanding.read("place", words)
    value = understood.reading.value if understood is not None else None
    if not isinstance(value, PlaceReading) or not value.choices:
        raise WrongUse(
            f"“{words[:40]}” is not in the list of places.",
            "Write the nearest town, and its region or country: Milton, Otago.",
        )
    return value.choices if value.kind in IN_QUESTION else value.choices[:1]


def mean_everywhere(sitting: Sitting, group: WordsTold, place: Place | None) -> int:
    """Keep that these words mean this place wherever they were told, or with None no place on a map; the words stay.
    One act. Returns how many answers."""
    called = f"place: {full_name(place)[:40]}" if place else f"no place on a map: {group.words[:40]}"
    act = sitting.collection.act(called)
    for statement, reading in _told(sitting.collection, group):
        findings = reading.value.findings if reading and isinstance(reading.value, PlaceReading) else ()
        kind, choices = ("match", (place,)) if place else ("kept", ())
        value = PlaceReading(statement.words, kind, choices, findings)
        act.readings.append((statement.id, Reading("place", value, READER_VERSION, confirmed=True)))
    sitting.finish(act, group.items[0][0])
    return len(act.readings)


def rewrite(sitting: Sitting, group: WordsTold, words: str) -> int:
    """Other words in place of these on every item, by the same sources; one act. Returns how many statements."""
    if not words.strip():
        raise WrongUse("There are no words.", "Write what it should be called.")
    act = sitting.collection.act(f"{group.field}: {group.words[:30]} is called {words.strip()[:30]}")
    for statement, _ in _told(sitting.collection, group):
        how = Telling(
            source=statement.source, sure=statement.sure, audience=statement.audience,
            language=language_tag(statement.language), sitting=sitting.id,
        )  # fmt: skip
        sitting.teller.add(act, statement.subject, group.field, words, how, replaces=statement.id)
    count = sum(1 for statement in act.statements if statement.field == group.field)
    if count:
        sitting.finish(act, group.items[0][0])
    return count
