"""The latest day on which someone can have been born, worked out from pictures, marriages and children.

Rule kept: it errs towards living. An approximate date counts with five years either side, an approximate and
uncertain one with ten (“ca.” as five years: Yale, Rhode Island Furniture Archive note). A parent is taken to be at
least ten years older than a child (below ten a mother's age is edited as not stated: CDC/NCHS, Health, United
States, sources and definitions: Age), someone who marries at least twelve (England to 1929: girls 12, boys 14).
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from boxlore.core.dates.anniversary import years_on
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person, Registry

YOUNGEST_PARENT = 10
YOUNGEST_MARRIED = 12


class Sign(StrEnum):
    """What shows that somebody was born by then. Its value stands before the words of the picture or the day."""

    PICTURE = "shown in"
    WEDDING = "married"
    BIRTH = "born"


@dataclass(frozen=True, slots=True)
class BornBy:
    """The latest day of a birth, and what it follows from: a sign, of the person or of those below.

    `of` says which picture, or what day, as `TRA-0005, 1926`. `children` are the names on the way from the person down
    to whom the sign is of, the person's own child first; empty where it is of the person.
    """

    day: date
    sign: Sign
    of: str
    children: tuple[str, ...] = ()

    def in_words(self) -> str:
        """`parent of Mia Rourke, born 1966`: for the keeper, as it names the children."""
        return ", ".join((*(f"parent of {name}" for name in self.children), f"{self.sign} {self.of}"))

    def without_names(self) -> str:
        """The same for outside: what follows from a child may be told, and not whose."""
        return "from a child's birth" if self.children else self.in_words()


Latest = dict[str, BornBy]


@dataclass(frozen=True, slots=True)
class Pictured:
    """Someone in, or behind, a dated picture, or wed on a day; `where` says which picture, or what day."""

    person: str
    when: DateReading
    where: str


def latest_births(people: Registry, seen: Iterable[Pictured], weddings: Iterable[Pictured] = ()) -> Latest:
    """For each person of whom anything follows: the latest birth, and what it follows from."""
    latest: Latest = {}
    for pictured in seen:
        if day := pictured.when.latest_day:
            _lower(latest, people, pictured.person, BornBy(day, Sign.PICTURE, pictured.where))
    for wedding in weddings:
        if day := _before(wedding.when.latest_day, YOUNGEST_MARRIED):
            _lower(latest, people, wedding.person, BornBy(day, Sign.WEDDING, wedding.where))
    for person in people.values():
        for wedding_date in person.married:
            if day := _before(wedding_date.latest_day, YOUNGEST_MARRIED):
                _lower(latest, people, person.id, BornBy(day, Sign.WEDDING, wedding_date.display))
    _through_children(latest, people)
    return latest


def _through_children(latest: Latest, people: Registry) -> None:
    """From children to parents, and on upwards, as long as anything moves; loops end because days only go down
    by whole steps and each person is lowered at most once a generation of the registry."""
    waiting = [person for person in people.values() if person.parents]
    for _ in range(40):
        moved: dict[str, Person] = {}
        for child in waiting:
            born_by = _born_by(latest, child)
            day = _before(born_by.day, YOUNGEST_PARENT) if born_by else None
            if born_by is None or day is None:
                continue
            of_parent = replace(born_by, day=day, children=(child.name, *born_by.children))
            for parent in child.parents:
                if parent in people and parent not in child.ids and _lower(latest, people, parent, of_parent):
                    moved[parent] = people[parent]
        if not moved:
            return
        waiting = [person for person in moved.values() if person.parents]


def _born_by(latest: Latest, person: Person) -> BornBy | None:
    told = person.latest_born
    latest_told = told.latest_day if told else None
    inferred = latest.get(person.id)
    if told and latest_told is not None and (inferred is None or latest_told <= inferred.day):
        return BornBy(latest_told, Sign.BIRTH, told.display)
    return inferred


def _lower(latest: Latest, people: Registry, ident: str, born_by: BornBy) -> bool:
    """Whether this lowers the latest birth of somebody; it is then kept."""
    if ident not in people:
        return False
    ident = people[ident].id
    if ident in latest and latest[ident].day <= born_by.day:
        return False
    latest[ident] = born_by
    return True


def _before(day: date | None, years: int) -> date | None:
    return years_on(day, -years) if day else None
