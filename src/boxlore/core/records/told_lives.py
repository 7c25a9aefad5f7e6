"""Lives that are told on the time line: “Mary Rourke was born”, “Grandfather James died”, “Tom and Mary were married”.

Whom an event's own name tells is looked for in the registry; who is not there is a person of the event alone, so that
ages, birthdays and “before Mary was born” lean on what was told, wherever it was told.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace
from functools import cache, lru_cache

from boxlore.core.people.life_event_words import JOINING, PERHAPS, WAYS, as_pattern, unled
from boxlore.core.people.person import Person
from boxlore.core.people.who_is_where.kin_words import own_relation
from boxlore.core.records.events import FamilyEvent

_OF_LIVES = ("birth", "death", "marriage")
_MOST_WORDS = 5
_ARTICLE = re.compile(r"^(?:the|la|le|les|el|los|il|lo|o|a|os|as|der|die|das|de|het|our|my) ", re.IGNORECASE)


def with_lives(
    people: Mapping[str, Person], events: Iterable[FamilyEvent]
) -> tuple[Mapping[str, Person], list[FamilyEvent]]:
    """The registry with those whom events tell, and the events with who they are of."""
    known = dict(people)
    told: list[FamilyEvent] = []
    for event in events:
        if event.own and not event.people and event.told_kind in _OF_LIVES and event.edtf:
            event = _of_somebody(event, known)
        told.append(event)
    return known, told


def _of_somebody(event: FamilyEvent, known: dict[str, Person]) -> FamilyEvent:
    """The event with the people whom its name tells; they are added to those known, with the turn of their life."""
    names = told_in(event)
    idents = [_found(name, known) for name in names]
    if not names or "?" in idents:
        return event
    for at, name in enumerate(names):
        ident = idents[at] or f"{event.id} {at}"
        idents[at] = ident
        person = known.get(ident) or Person(id=ident, name=name, sort_name=name, forms=(name,), calls=_calls(name))
        if event.told_kind == "birth" and person.born is None:
            person = replace(person, born=event.when)
        if event.told_kind == "death" and person.died is None:
            person = replace(person, died=event.when)
        known[ident] = person
    return replace(event, people=tuple(idents), kind=event.told_kind)


def told_in(event: FamilyEvent) -> tuple[str, ...]:
    """The names of those whom an event's name tells, without an article; none where it tells nobody."""
    return _told_in(event.name, event.told_kind)


@lru_cache(1 << 12)
def _told_in(name: str, kind: str) -> tuple[str, ...]:
    whole = unled(name).replace("’", "'")
    for way in _patterns(kind):
        match = way.fullmatch(whole) or way.fullmatch(_ARTICLE.sub("", whole))
        if match and len(match[1].split()) <= _MOST_WORDS:
            names = _JOINED.split(match[1]) if kind == "marriage" else [match[1]]
            return tuple(_ARTICLE.sub("", told) for told in names)
    return ()


@cache
def _patterns(kind: str) -> tuple[re.Pattern[str], ...]:
    """The ways to tell an event of a kind, the longest first (“were married” before “married”)."""
    ways = sorted((*WAYS[kind], *PERHAPS.get(kind, ())), key=len, reverse=True)
    return tuple(map(as_pattern, ways))


_JOINED = re.compile(rf" (?:{'|'.join(map(re.escape, JOINING))}) ")


def _found(name: str, known: Mapping[str, Person]) -> str:
    """The id of the one who is called so; empty for nobody, “?” for several."""
    folded = name.casefold()
    exactly = [ident for ident, person in known.items() if folded in _names(person)]
    found = exactly or [
        ident for ident, person in known.items() if folded in {call.casefold() for call in person.calls}
    ]
    return found[0] if len(found) == 1 else "?" if found else ""


def _names(person: Person) -> set[str]:
    return {told.casefold() for told in (person.name, *person.forms)}


def _calls(name: str) -> tuple[str, ...]:
    """The first name; of a word of kin and a name the name (“Grandfather James”)."""
    first, *others = name.split()
    return (others[0],) if others and own_relation(first) else (first,)
