"""The latest day on which someone can have been born, worked out from pictures, marriages and children.

Rule kept: it errs towards living. An approximate date counts with five years either side, an approximate and
uncertain one with ten (“ca.” as five years: Yale, Rhode Island Furniture Archive note). A parent is taken to be at
least ten years older than a child (below ten a mother's age is edited as not stated: CDC/NCHS, Health, United
States, sources and definitions: Age), someone who marries at least twelve (England to 1929: girls 12, boys 14).
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from boxlore.core.dates.anniversary import years_on
from boxlore.core.dates.reading import DateReading
from boxlore.core.people.person import Person, Registry

YOUNGEST_PARENT = 10
YOUNGEST_MARRIED = 12

Latest = dict[str, tuple[date, str]]


@dataclass(frozen=True, slots=True)
class Pictured:
    """Someone in, or behind, a dated picture, or wed on a day; `where` says which picture, or what day."""

    person: str
    when: DateReading
    where: str


def latest_births(people: Registry, seen: Iterable[Pictured], weddings: Iterable[Pictured] = ()) -> Latest:
    """For each person of whom anything follows: the day, and the sentence that says why."""
    latest: Latest = {}
    for pictured in seen:
        _lower(latest, people, pictured.person, pictured.when.latest_day, f"shown in {pictured.where}")
    for wedding in weddings:
        _lower(
            latest,
            people,
            wedding.person,
            _before(wedding.when.latest_day, YOUNGEST_MARRIED),
            f"married {wedding.where}",
        )
    for person in people.values():
        for wedding_date in person.married:
            day = _before(wedding_date.latest_day, YOUNGEST_MARRIED)
            _lower(latest, people, person.id, day, f"married {wedding_date.display}")
    _through_children(latest, people)
    return latest


def _through_children(latest: Latest, people: Registry) -> None:
    """From children to parents, and on upwards, as long as anything moves; loops end because days only go down
    by whole steps and each person is lowered at most once a generation of the registry."""
    waiting = [person for person in people.values() if person.parents]
    for _ in range(40):
        moved: dict[str, Person] = {}
        for child in waiting:
            day, why = _born_by(latest, child)
            for parent in child.parents:
                if parent in people and parent not in child.ids:
                    because = f"parent of {child.name}, {why}"
                    if _lower(latest, people, parent, _before(day, YOUNGEST_PARENT), because):
                        moved[parent] = people[parent]
        if not moved:
            return
        waiting = [person for person in moved.values() if person.parents]


def _born_by(latest: Latest, person: Person) -> tuple[date | None, str]:
    latest_told = person.born.latest_day if person.born else None
    inferred = latest.get(person.id)
    if person.born and latest_told is not None and (inferred is None or latest_told <= inferred[0]):
        return latest_told, f"born {person.born.display}"
    return inferred or (None, "")


def _lower(latest: Latest, people: Registry, ident: str, day: date | None, why: str) -> bool:
    if day is None or ident not in people:
        return False
    ident = people[ident].id
    if ident in latest and latest[ident][0] <= day:
        return False
    latest[ident] = (day, why)
    return True


def _before(day: date | None, years: int) -> date | None:
    return years_on(day, -years) if day else None
