"""Clues of lives: births and deaths that are told, the longest life, parents, and who is in a picture.

Sources. The longest life: Jeanne Calment, 21 February 1875 to 4 August 1997, 122 years and 164 days. A mother's age is
edited as not stated below 10 and from 55 on (CDC/NCHS, *Health, United States*, sources and definitions: Age); here a
mother is 12 to 54 years old at a birth, a father 12 to 70, and dead for at most ten months (common practice, from
memory). A picture of somebody after death is a copy, a grave or a mistake: that clue is likely, and never sure.
"""

import re
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass, replace

from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.claims import Claim, after, dated, of_birth, of_death, of_item, weaker, years_after
from boxlore.core.evidence.even_years import YEAR, days
from boxlore.core.evidence.network import Limit
from boxlore.core.evidence.told_dates import told
from boxlore.core.people.person import Person, Registry
from boxlore.core.people.reference import PersonRef
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.rules.people_and_kin import CALMENT
from boxlore.core.statements import SURENESS, ReadingValue, Sure, fold

YOUNGEST_PARENT, OLDEST = 12, {"mother": 54, "father": 70}
TEN_MONTHS = days(300)
LONGEST = 122 * YEAR + days(164)


@dataclass(frozen=True, slots=True, kw_only=True)
class ToldOfPerson:
    """A statement of a person's field, with what it was read as and who says it; `teller` is the id of who told it,
    `statement` its own."""

    person: str
    field: str
    words: str
    value: ReadingValue | None
    source: str
    sure: Sure
    teller: str = ""
    statement: str = ""


LIFE_FIELDS = ("born", "died", "buried")
PARENT_FIELDS = ("father", "mother")


def clues_of_lives(people: Registry, rows: Iterable[ToldOfPerson]) -> Iterator[Claim]:
    """What is told of births, deaths and parents."""
    for row in rows:
        person = people[row.person]
        claim = Claim(words="", source=row.source, sure=row.sure, teller=row.teller, statement=row.statement)
        if row.field in LIFE_FIELDS and isinstance(row.value, DateReading) and row.value.edtf:
            says = f"{person.name} {'was ' * (row.field != 'died')}{row.field} “{row.words}”"
            if row.field == "born":
                yield dated(replace(claim, words=says), of_birth(person.id), row.value.edtf, is_pictured=False)
            else:
                day = of_death(person.id)
                died = dated(replace(claim, words=says), day, row.value.edtf, is_pictured=False)
                yield _died(died, day, is_burial=row.field == "buried")
        elif row.field in PARENT_FIELDS and isinstance(row.value, PersonRef) and row.value.id in people:
            parent = people[row.value.id]
            if parent.id != person.id:
                yield _parent(claim, row.field, (parent.id, parent.name), (person.id, person.name))
    for person in people.values():
        if person.died:
            yield Claim(
                words=f"nobody lives longer than 122 years, {person.name} neither",
                source=CALMENT,
                limits=after(of_death(person.id), of_birth(person.id), 0, LONGEST),
            )


def _died(claim: Claim, day: str, *, is_burial: bool) -> Claim:
    """A burial says only the latest day of a death."""
    if not is_burial:
        return claim
    return replace(claim, choices=(), chosen="", limits=tuple(limit for limit in claim.limits if limit.later == day))


def _parent(claim: Claim, field: str, parent: tuple[str, str], child: tuple[str, str]) -> Claim:
    birth, death = of_birth(child[0]), of_death(parent[0])
    return replace(
        claim,
        words=f"{parent[1]} is the {field} of {child[1]}, and was {YOUNGEST_PARENT} to {OLDEST[field]} years old then",
        sure=weaker(claim.sure, Sure.LIKELY),
        limits=(
            *years_after(birth, of_birth(parent[0]), YOUNGEST_PARENT, OLDEST[field] + 1),
            Limit(birth, death, 0 if field == "mother" else TEN_MONTHS),
        ),
    )


_IN_A_FRAME = re.compile(
    r"\b(?:framed|in (?:the|a) (?:frame|picture on|portrait|painting|photo(?:graph)? on)|on the wall|bust of|"
    r"gravestone|headstone|grave of|im rahmen|an der wand|bild an der|seinal|raamis|au mur|encadrée?)\b",
    re.IGNORECASE,
)
"""Who is in a picture within the picture need not have been there, nor have lived (words of ours, no source)."""


_DENIED = re.compile(
    r"\b(?:not|isn['’]t|wasn['’]t|nicht|kein|mitte|pole|pas|no es|non e|inte|ikke|niet|ei ole) (?P<who>.+)"
)


def _denied(record: Record) -> list[tuple[PersonShown, str]]:
    """Who says that somebody is not in a picture (“it is not Salim Haddad, it is Jorge”), and what follows on that."""
    said = ((shown, _DENIED.search(fold(shown.told.words))) for shown in record.shown())
    return [(shown, match["who"]) for shown, match in said if match]


def _is_denied(denied: Iterable[tuple[PersonShown, str]], shown: PersonShown, person: Person) -> bool:
    """Whether somebody as sure says that it is not this one."""
    names = tuple(fold(name) for name in (person.name, *person.forms))
    return any(
        other.person != shown.person
        and SURENESS[other.told.sure] >= SURENESS[shown.told.sure]
        and any(re.match(rf"{re.escape(name)}\b", who) for name in names)
        for other, who in denied
    )


def clues_of_picture(record: Record, people: Registry, deaths: Collection[str]) -> Iterator[Claim]:
    """That whoever is in a picture was born, and had not died if the day of the death is one of `deaths`, those
    that are told."""
    day, denied = of_item(record.id), _denied(record)
    for shown in record.shown():
        person = people.get(shown.person)
        if person is None or _IN_A_FRAME.search(shown.told.words) or _is_denied(denied, shown, person):
            continue
        claim = replace(told(shown.told, ""), sure=shown.sure)
        yield replace(
            claim,
            words=f"{person.name} is in {record.number}, so was born",
            limits=(Limit(of_birth(person.id), day, 0),),
        )
        if of_death(person.id) in deaths:
            yield replace(
                claim,
                words=f"{person.name} is in {record.number}, so had not died",
                sure=weaker(shown.sure, Sure.LIKELY),
                limits=(Limit(day, of_death(person.id), 0),),
            )
