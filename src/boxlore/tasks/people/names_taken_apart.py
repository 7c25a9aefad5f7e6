"""Names taken apart, before the keeper: every proposal, confirmed or corrected. The words stay as they were told."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from boxlore.core.errors import WrongUse
from boxlore.core.people.names.list_order import list_key
from boxlore.core.people.names.parts import PART_LABELS, NameParts
from boxlore.core.people.names.reader import READER_VERSION
from boxlore.core.people.person import Person, parts_of_name
from boxlore.core.statements import Kind, Reading, Statement, Subject
from boxlore.tasks.collection.opening import Collection


@dataclass(frozen=True, slots=True)
class NameTold:
    """One name told whole of a person, with its parts; `confirmed` by the keeper or not."""

    person: Person
    statement: Statement
    parts: NameParts
    confirmed: bool


def names_told(collection: Collection, person: Person | None = None) -> Iterator[NameTold]:
    """Every name told whole, of one person or of everyone; those that ask come first, then by sort form."""
    people = [person] if person else collection.people().values()
    names = [
        NameTold(named, statement, parts_of_name(statement, reading), bool(reading and reading.confirmed))
        for named in people
        for ident in named.ids
        for statement, reading in collection.store.statements(Subject(Kind.PERSON, ident))
        if statement.field == "name" and statement.words.strip()
    ]
    language = collection.settings.language
    yield from sorted(
        names, key=lambda name: (not name.parts.asks, list_key(name.person.sort_name, language), name.statement.id)
    )


def settle_name(collection: Collection, person: Person, corrections: Mapping[str, str]) -> NameParts:
    """Confirm how a person's name is taken apart, with `corrections` by part; an empty one takes the part away.

    Of several names told whole, the last is meant. Raises WrongUse for a part that is none, for words that are not in
    the name, and where no name is told whole.
    """
    names = sorted(names_told(collection, person), key=lambda name: name.statement.recorded_at)
    if not names:
        raise WrongUse(f"No name of {person.name} is told whole.", "Its parts are statements: boxlore people tell.")
    name = names[-1].statement
    for part, words in corrections.items():
        if part not in PART_LABELS:
            raise WrongUse(f"“{part[:40]}” is no part of a name.", f"Parts are: {', '.join(PART_LABELS)}.")
        if not set(words.split()) <= set(name.words.replace(",", " ").split()):
            raise WrongUse(f"“{words[:40]}” does not stand in “{name.words[:60]}”.", "Tell it: boxlore people tell.")
    corrected: dict[str, Any] = {**corrections, "asks": ""}
    parts = replace(names[-1].parts, **corrected)
    act = collection.act(f"the parts of {name.words[:40]}")
    act.readings.append((name.id, Reading("name", parts, READER_VERSION, confirmed=True)))
    act.done()
    return parts
