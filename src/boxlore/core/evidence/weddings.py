"""Weddings as days: one of each couple, whoever tells of it, and what is known of every wedding.

Nobody marries after death: that is sure. Both are twelve at least (`YOUNGEST`), in any land: common practice, no
source; it is likely. (The law of England and that of the Catholic Church had fourteen for a man and twelve for a woman,
until 1929 and 1917, from memory; later laws have more.)
"""

from collections.abc import Iterable, Iterator, Sequence

from boxlore.core.evidence.claims import Claim, dated, of_birth, of_death, of_event
from boxlore.core.evidence.even_years import YEAR
from boxlore.core.evidence.network import Limit
from boxlore.core.findings import one_line
from boxlore.core.people.person import Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.statements import Sure

YOUNGEST = 12
AS_A_RULE = "common practice, no source"


class Weddings:
    """The couples of a registry and of the time line, each with its day."""

    def __init__(self, people: Registry, happened: Iterable[FamilyEvent]) -> None:
        self.events = [event for event in happened if event.own and event.kind == "marriage" and event.people]
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
    for event in weddings.events:
        day = day_of(_couple(people, event.people))
        yield Claim(
            words=f"{event.name} is their wedding",
            source=event.said or "the family's time line",
            limits=(Limit(of_event(event.id), day, 0), Limit(day, of_event(event.id), 0)),
        )
    for couple in weddings.couples:
        for ident in couple:
            if ident in people:
                yield from _of_their_lives(people[ident].id, people[ident].name, day_of(couple))


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
