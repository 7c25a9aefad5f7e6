"""Weddings as days: one of each couple, whoever tells of it, and what is known of every wedding.

Nobody marries after death: that is sure. Both are twelve at least (`YOUNGEST`), in any land: common practice, no
source; it is likely. (The law of England and that of the Catholic Church had fourteen for a man and twelve for a woman,
until 1929 and 1917, from memory; later laws have more.)
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from functools import cached_property

from boxlore.core.evidence.claims import Claim, dated, of_birth, of_death, of_event
from boxlore.core.evidence.even_years import YEAR
from boxlore.core.evidence.network import Limit
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.statements import Sure, fold

YOUNGEST = 12
AS_A_RULE = "common practice, no source"


class Weddings:
    """The couples of a registry and of the time line, each with its day."""

    def __init__(self, people: Registry, happened: Sequence[FamilyEvent]) -> None:
        called = _Called(people)
        self.events = [
            wedding
            for event in happened
            if event.own and event.kind == "marriage"
            if (wedding := event if event.people else called.with_who_married(event)).people
        ]
        self.told = {event.id for event in happened if event.people}
        """The events of which it is told who married; of others their names say it."""
        couples: dict[tuple[str, ...], None] = {}
        for person in people.values():
            spouses = {people[ident].id for ident in person.spouses if ident in people} - {person.id}
            couples |= dict.fromkeys(tuple(sorted((person.id, spouse))) for spouse in spouses)
        for event in self.events:
            couples[_couple(people, event.people)] = None
        paired = {ident for couple in couples for ident in couple}
        alone = [(person.id,) for person in people.values() if person.married and person.id not in paired]
        self.couples = (*couples, *alone)
        self._of: dict[str, list[tuple[str, ...]]] = {}
        for couple in self.couples:
            for ident in couple:
                self._of.setdefault(ident, []).append(couple)

    def of(self, ident: str) -> str:
        """The day of somebody's one wedding; empty where there is none, or several."""
        couples = self._of.get(ident, ())
        return day_of(couples[0]) if len(couples) == 1 else ""

    def couples_of(self, ident: str) -> Sequence[tuple[str, ...]]:
        return self._of.get(ident, ())


class _Called:
    """Everybody by what they are called, made where it is asked for first."""

    def __init__(self, people: Registry) -> None:
        self._people = people

    @cached_property
    def _by_start(self) -> dict[str, list[tuple[str, Person]]]:
        rows: dict[str, list[tuple[str, Person]]] = {}
        for person in self._people.values():
            for call in {fold(call) for call in person.calls}:
                rows.setdefault(call[:_START], []).append((call, person))
        return rows

    def with_who_married(self, event: FamilyEvent) -> FamilyEvent:
        """A wedding with the couple that its name tells of: “wedding of Ivy and Tom”, where the family has one Ivy and
        one Tom, or one of each by the names that stand there whole."""
        told = [word for word in _WORD.findall(fold(event.name)) if len(word) > 1]
        meant: list[set[str]] = []
        for word in told:
            persons = [person for call, person in self._by_start.get(word[:_START], ()) if _is_called(word, call)]
            whole = [person for person in persons if _is_whole(person, told)]
            meant += [{person.id for person in whole or persons}] if persons else []
        couple = tuple(dict.fromkeys(ident for ids in meant if len(ids) == 1 for ident in ids))
        is_clear = len(couple) == len(meant) == len(_OF_A_COUPLE)
        return replace(event, people=couple) if is_clear else event


_START = 3
_OF_A_COUPLE = ("one", "the other")
_WORD = re.compile(r"[^\W\d_]+")
MOST_OF_AN_ENDING = 2
"""Letters of an ending that a name may have in a language of cases (“Juhani ja Miina pulmad”)."""


def _is_called(word: str, call: str) -> bool:
    longer = len(word) - len(call)
    return word == call or (0 < longer <= MOST_OF_AN_ENDING < len(call) and word.startswith(call))


def _is_whole(person: Person, told: Sequence[str]) -> bool:
    """Whether a family name of somebody stands there too."""
    return any(_is_called(word, fold(name)) for name in person.surnames for word in told)


def day_of(couple: tuple[str, ...]) -> str:
    """The day on which two married, or one of whom nobody tells the other."""
    return f"wedding {' '.join(couple)}"


def _couple(people: Registry, idents: Iterable[str]) -> tuple[str, ...]:
    return tuple(sorted({people[ident].id if ident in people else ident for ident in idents}))


def clues_of_weddings(weddings: Weddings, people: Registry) -> Iterator[Claim]:
    for person in people.values():
        if len(person.married) == 1 and (edtf := person.married[0].edtf) and (day := weddings.of(person.id)):
            claim = Claim(
                words=f"{person.name} married “{one_line(person.married[0].text)}”", source="the family's time line"
            )
            yield dated(claim, day, edtf)
    told = weddings.told
    for event in weddings.events:
        day = day_of(_couple(people, event.people))
        yield Claim(
            words=f"“{event.name}” is the wedding of {_names(event, people)}",
            sure=Sure.SURE if event.id in told else Sure.LIKELY,
            source=event.said or "the family's time line",
            limits=(Limit(of_event(event.id), day, 0), Limit(day, of_event(event.id), 0)),
        )
    for couple in weddings.couples:
        for ident in couple:
            if ident in people:
                yield from _of_their_lives(people[ident].id, people[ident].name, day_of(couple))


def _names(event: FamilyEvent, people: Registry) -> str:
    return " and ".join(people[ident].name for ident in event.people if ident in people)


def _of_their_lives(ident: str, name: str, day: str) -> Iterator[Claim]:
    yield Claim(
        words=f"{name} was {YOUNGEST} at least at the wedding",
        source=AS_A_RULE,
        sure=Sure.LIKELY,
        limits=(Limit(of_birth(ident), day, -YOUNGEST * YEAR),),
    )
    yield Claim(
        words=f"{name} was alive at the wedding",
        source="by what the word means",
        limits=(Limit(day, of_death(ident), 0),),
    )
