"""Rules about the dates of people and their kin: what cannot be, and what is worth asking. Nothing told is refused.

A finding is an error only if both dates are unqualified, and even their nearest days exclude it; else it asks.

Sources. A mother's age: published bounds 10-54, below 10 and from 55 on edited as not stated (CDC/NCHS, *Health,
United States*, sources and definitions: Age). The tighter limits, those of fathers, and nine months between siblings:
common practice, from memory. The longest life: Jeanne Calment, 21 February 1875 to 4 August 1997, 122 years and 164
days. Marriage: in England girls from 12, boys from 14 until the Age of Marriage Act 1929, then 16.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date

from boxlore.core.dates import against_a_life
from boxlore.core.dates.calendars import MEAN_YEAR, to_number
from boxlore.core.dates.edtf_values import Day
from boxlore.core.dates.reading import DateReading
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.people.kin import Kin
from boxlore.core.people.person import Person, Registry

CDC = "CDC/NCHS, Health, United States, sources and definitions: Age"
CALMENT = "Jeanne Calment, 1875-1997: 122 years and 164 days"
MEMORY = "common practice, from memory"
ENGLAND = "England: girls 12, boys 14 until the Age of Marriage Act 1929, then 16"

LONGEST_DAYS = 44724
"""Days of the longest life (CALMENT)."""
NINE_MONTHS = 270
"""Days; the least between two children of one mother (common practice, from memory)."""
TWINS = 3
"""Days; children born no further apart are taken as twins (common practice, from memory)."""


@dataclass(frozen=True, slots=True)
class Limits:
    """A parent's age in years at a child's birth: below `young` or over `old` it is asked about, below `never` or over
    `ever` it cannot be. `word` is the parent's name in a sentence."""

    word: str
    never: int
    young: int
    old: int
    ever: int
    source: str


MOTHER = Limits("mother", 10, 12, 50, 60, f"{CDC}; 12, 50 and 60: {MEMORY}")
FATHER = Limits("father", 12, 14, 70, 90, MEMORY)


@dataclass(frozen=True, slots=True)
class Wedding:
    """A marriage with its date: the ids of who married, and when."""

    partners: tuple[str, ...]
    when: DateReading


@dataclass(frozen=True, slots=True)
class _When:
    """A date as two numbers of days, its first and last likely day (`core.dates.against_a_life.core`; None where it is
    open), and whether any part of it is qualified."""

    first: int | None
    last: int | None
    qualified: bool
    display: str


def look_over_people(people: Registry, weddings: Iterable[Wedding] = ()) -> Iterator[Finding]:
    """Every finding about people, their kin and their weddings; `about` is the person's id.

    Weddings told of a person alone are added to those given.
    """
    kin = Kin(people)
    for ident in kin.own_ancestors():
        yield make_finding(
            "kin.loop",
            Severity.ERROR,
            f"{people[ident].name} would be their own ancestor.",
            "nobody descends from themselves: derived",
            about=ident,
        )
    for person in people.values():
        if person.name_asks:
            message = f"{person.name}: {person.name_asks}"
            yield make_finding("name.asks", Severity.ASK, message, f"orders of names: {MEMORY}", about=person.id)
        yield from _life(person)
        yield from _parents(person, people)
        yield from _siblings(person, people, kin)
        yield from _links(person, people, kin)
    for wedding in _weddings(people, weddings):
        yield from _wedding(wedding, people)


def _when(date: DateReading | None) -> _When | None:
    if date is None or date.edtf is None:
        return None
    first, last = against_a_life.core(date.edtf)
    return _When(_number(first), _number(last), date.edtf.qualified, date.display)


def _number(day: Day | None) -> int | None:
    return to_number(*day) if day is not None and -5000 < day.year < 9999 else None


def _gap(earlier: _When | None, later: _When | None) -> tuple[float, float] | None:
    """The fewest and the most years from one date to another, below 0 if it is earlier; None if either is open."""
    if earlier is None or later is None or None in (earlier.first, earlier.last, later.first, later.last):
        return None
    return (later.first - earlier.last) / MEAN_YEAR, (later.last - earlier.first) / MEAN_YEAR  # type: ignore[operator]  # none is None


def _sure(*dates: _When | None) -> Severity:
    """ERROR if all dates are known and unqualified, else ASK."""
    return Severity.ASK if any(when is None or when.qualified for when in dates) else Severity.ERROR


def _life(person: Person) -> Iterator[Finding]:
    born, died = _when(person.born), _when(person.died)
    gap = _gap(born, died)
    if gap is None or born is None or died is None:
        return
    because = (f"born {born.display}", f"died {died.display}")
    if gap[1] < 0:
        yield make_finding(
            "life.backwards",
            _sure(born, died),
            f"{person.name} would have died before being born.",
            "derived",
            *because,
            about=person.id,
        )
    elif gap[0] * MEAN_YEAR > LONGEST_DAYS:
        message = f"{person.name} would have lived {int(gap[0])} years, longer than anyone known."
        yield make_finding("life.too-long", _sure(born, died), message, CALMENT, *because, about=person.id)


def _parents(person: Person, people: Registry) -> Iterator[Finding]:
    if len(person.mothers) > 1 or len(person.parents) - len(person.mothers) > 1:
        names = ", ".join(people[parent_id].name for parent_id in person.parents if parent_id in people)
        yield make_finding(
            "kin.parents",
            Severity.ASK,
            f"{person.name} has too many parents by blood: "
            f"{names}. Is one a step or adoptive parent, or one person twice?",
            "derived",
            about=person.id,
        )
    born = _when(person.born)
    for ident in person.parents:
        parent = people.get(ident)
        if parent is None or parent.id == person.id:
            continue
        limits = MOTHER if ident in person.mothers or parent.sex[:1].lower() == "f" else FATHER
        yield from _parent_age(person, parent, limits, born)
        yield from _after_death(person, parent, limits, born)


def _parent_age(person: Person, parent: Person, limits: Limits, born: _When | None) -> Iterator[Finding]:
    theirs = _when(parent.born)
    gap = _gap(theirs, born)
    if gap is None or born is None or theirs is None:
        return
    because = (f"{parent.name} born {theirs.display}", f"{person.name} born {born.display}")
    age = f"{max(int(gap[0]), 0)} to {int(gap[1])}" if int(gap[0]) != int(gap[1]) else str(int(gap[1]))
    if gap[1] < 0:
        words = f"{parent.name} would be younger than {person.name}, whose {limits.word} they are told to be."
        yield make_finding(f"kin.{limits.word}-age", _sure(born, theirs), words, "derived", *because, about=person.id)
    elif gap[1] < limits.never or gap[0] > limits.ever:
        words = f"{parent.name} would have been {age} years old as {person.name}'s {limits.word}."
        yield make_finding(
            f"kin.{limits.word}-age", _sure(born, theirs), words, limits.source, *because, about=person.id
        )
    elif gap[1] < limits.young or gap[0] > limits.old:
        words = f"{parent.name} would have been {age} years old as {person.name}'s {limits.word}: is that so?"
        yield make_finding(f"kin.{limits.word}-age", Severity.ASK, words, limits.source, *because, about=person.id)


def _after_death(person: Person, parent: Person, limits: Limits, born: _When | None) -> Iterator[Finding]:
    """A finding if a child was born after the mother's death, or more than nine months after the father's."""
    died = _when(parent.died)
    gap = _gap(died, born)
    if gap is None or died is None or born is None:
        return
    allowed = 0.0 if limits is MOTHER else (NINE_MONTHS + 30) / MEAN_YEAR
    if gap[0] > allowed:
        later = "" if limits is MOTHER else "more than nine months "
        words = f"{person.name} would be born {later}after the death of {parent.name}, told as the {limits.word}."
        because = (f"{parent.name} died {died.display}", f"born {born.display}")
        yield make_finding(
            f"kin.{limits.word}-dead",
            _sure(born, died),
            words,
            f"derived; nine months: {MEMORY}",
            *because,
            about=person.id,
        )


def _siblings(person: Person, people: Registry, kin: Kin) -> Iterator[Finding]:
    """A finding for two children of one mother who are less than nine months apart, and no twins; each pair once."""
    born = _when(person.born)
    for ident in kin.siblings(person.id):
        sibling = people[ident]
        if sibling.id <= person.id or not set(person.mothers) & set(sibling.mothers):
            continue
        theirs = _when(sibling.born)
        gap = _gap(born, theirs)
        if gap is None or born is None or theirs is None or born.first != born.last or theirs.first != theirs.last:
            continue
        days = abs(round(gap[0] * MEAN_YEAR))
        if TWINS < days < NINE_MONTHS:
            words = (
                f"{person.name} and {sibling.name}, of one mother, would be born {days} days apart: is a date wrong?"
            )
            yield make_finding(
                "kin.siblings",
                Severity.ASK,
                words,
                f"nine months, twins aside: {MEMORY}",
                f"born {born.display}",
                f"born {theirs.display}",
                about=person.id,
            )


def _links(person: Person, people: Registry, kin: Kin) -> Iterator[Finding]:
    """A finding for two people who are told as married, and as parent and child."""
    for spouse in person.spouses:
        if spouse in people and (spouse in person.parents or person.id in people[spouse].parents):
            words = f"{person.name} and {people[spouse].name} are told as married and as parent and child."
            yield make_finding("kin.spouse", Severity.ERROR, words, "derived", about=person.id)


def _weddings(people: Registry, weddings: Iterable[Wedding]) -> Iterator[Wedding]:
    """The weddings given, then those of which only a date is told of one person."""
    yield from weddings
    for person in people.values():
        for when in person.married:
            yield Wedding((person.id,), when)


def _wedding(wedding: Wedding, people: Registry) -> Iterator[Finding]:
    day = _when(wedding.when)
    for ident in wedding.partners:
        person = people.get(ident)
        if person is None or day is None:
            continue
        born, died = _when(person.born), _when(person.died)
        because = (f"married {day.display}",)
        gap = _gap(born, day)
        if gap is not None and born is not None and gap[1] < 0:
            words = f"{person.name} would have married before being born ({born.display})."
            yield make_finding("marriage.age", _sure(born, day), words, "derived", *because, about=person.id)
        elif gap is not None and gap[1] < _youngest(person, day):
            words = f"{person.name} would have married at {int(gap[1])} or younger: is a date wrong?"
            yield make_finding("marriage.age", Severity.ASK, words, ENGLAND, *because, about=person.id)
        after = _gap(died, day)
        if after is not None and died is not None and after[0] > 0:
            words = f"{person.name} would have married after dying ({died.display})."
            yield make_finding("marriage.after-death", _sure(died, day), words, "derived", *because, about=person.id)


def _youngest(person: Person, day: _When) -> int:
    """The least age in years for a marriage on that day, by the law of England (ENGLAND)."""
    act = date(1929, 5, 10).toordinal()
    if day.first is not None and day.first >= act:
        return 16
    return 12 if person.sex[:1].lower() == "f" else 14
