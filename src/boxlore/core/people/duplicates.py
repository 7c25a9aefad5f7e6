"""People who may be one and the same: proposed with reasons, never merged.

Pairs are sought among those whose family names sound alike (Soundex) and whose given names may be one person's
(the same, a pet form, an initial, a slip). For and against are weighed by a table of our own (common practice, no
source); what excludes it (dates that cannot both be so, different sexes, parent and child, side by side in a
picture, the keeper's word) ends it.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from itertools import islice

from boxlore.core.dates.reading import DateReading
from boxlore.core.people.names.forms import close, may_be_called, parts_of, short_rows, soundex
from boxlore.core.people.person import Person

ENOUGH = 5

WEIGHTS = {
    "same name": 3,
    "same given name": 2,
    "pet form": 2,
    "slip in the given name": 1,
    "initial": 1,
    "same family name": 2,
    "family name sounds alike": 1,
    "born the same day": 4,
    "born the same year": 2,
    "dates can be the same": 0,
    "died the same year": 2,
    "same parent": 3,
    "same spouse": 3,
    "same child": 3,
}
"""What speaks for it, and how much."""

LARGEST = 400
"""People who sound alike beyond whom only same given names are compared, each with so many next to it by name."""


@dataclass(frozen=True, slots=True)
class Proposal:
    """Two people who may be one, how much speaks for it, and what."""

    one: str
    other: str
    weight: int
    because: tuple[str, ...]


def propose(people: Iterable[Person], together: Iterable[tuple[str, str]] = ()) -> list[Proposal]:
    """Every pair that enough speaks for, the likeliest first. `together`: pairs seen in one picture."""
    everyone = {person.id: person for person in people}
    apart = {frozenset(pair) for pair in together}
    children: dict[str, set[str]] = {}
    for person in everyone.values():
        for parent in person.parents:
            children.setdefault(parent, set()).add(person.id)
    seen: set[tuple[str, str]] = set()
    proposals: list[Proposal] = []
    for person, candidate in _pairs(everyone.values()):
        pair = (min(person.id, candidate.id), max(person.id, candidate.id))
        if pair in seen:
            continue
        seen.add(pair)
        if frozenset(pair) in apart or excluded(person, candidate):
            continue
        because = list(_for(person, candidate, everyone, children))
        weight = sum(WEIGHTS[reason] for reason in because)
        if weight >= ENOUGH:
            proposals.append(Proposal(*pair, weight, tuple(because)))
    return sorted(proposals, key=lambda p: (-p.weight, p.one, p.other))


def _pairs(people: Iterable[Person]) -> Iterator[tuple[Person, Person]]:
    groups: dict[str, list[Person]] = {}
    for person in people:
        for key in {soundex(name) for name in _families(person)} - {""}:
            groups.setdefault(key, []).append(person)
        if not person.surnames:
            groups.setdefault(f"={' '.join(parts_of(person.name))}", []).append(person)
    for members in groups.values():
        for group in [members] if len(members) <= LARGEST else _split(members):
            ordered = sorted(group, key=lambda person: (person.name, person.id))
            for at, person in enumerate(ordered):
                for candidate in islice(ordered, at + 1, at + 1 + LARGEST):
                    if _years_meet(person, candidate):
                        yield person, candidate


def _families(person: Person) -> tuple[str, ...]:
    return person.surnames or tuple(parts_of(person.name)[-1:] if len(parts_of(person.name)) > 1 else ())


def _split(members: list[Person]) -> Iterator[list[Person]]:
    """A large group by given name (a pet form stands with its full ones), and then by decade of birth."""
    groups: dict[tuple[object, int], list[Person]] = {}
    for member in members:
        given = _given(member)
        year = _year(member.born)
        keys: set[object] = set(short_rows(given)) or {soundex(given)}
        for key in keys:
            for decade in {(year - 2) // 10, (year + 2) // 10} if year else {0}:
                groups.setdefault((key, decade), []).append(member)
    yield from groups.values()


def _given(person: Person) -> str:
    parts = parts_of(person.calls[0] if person.calls else person.name)
    return parts[0] if parts else ""


def _year(date: DateReading | None) -> int:
    return date.first_year or 0 if date else 0


def _years_meet(person: Person, candidate: Person) -> bool:
    a, b = _year(person.born), _year(candidate.born)
    return not a or not b or abs(a - b) <= 2 or not (_exact(person.born) and _exact(candidate.born))


def _exact(date: DateReading | None) -> bool:
    return date is not None and date.exact


def excluded(person: Person, candidate: Person) -> bool:
    """Whether they cannot be one person."""
    if {person.sex[:1].lower(), candidate.sex[:1].lower()} == {"f", "m"}:
        return True
    if candidate.id in person.different or person.id in candidate.different:
        return True
    if {person.id} & {*candidate.parents, *candidate.spouses} or {candidate.id} & {*person.parents, *person.spouses}:
        return True
    return any(
        _exclude(date, candidate_date)
        for date, candidate_date in ((person.born, candidate.born), (person.died, candidate.died))
    )


def _exclude(date: DateReading | None, other_date: DateReading | None) -> bool:
    """Whether two dates cannot both be so; an approximate one may be five years out."""
    slack = 0 if _exact(date) and _exact(other_date) else 5
    a, b = _span(date), _span(other_date)
    return bool(a and b and (a[1] + slack < b[0] or b[1] + slack < a[0]))


def _span(date: DateReading | None) -> tuple[int, int] | None:
    if date is None or date.first_year is None or date.last_year is None:
        return None
    return date.first_year, date.last_year


def _for(
    person: Person, candidate: Person, people: Mapping[str, Person], children: Mapping[str, set[str]]
) -> Iterator[str]:
    given = _given_likeness(_given(person), _given(candidate))
    if not given:
        return
    if parts_of(person.name) == parts_of(candidate.name):
        yield "same name"
    else:
        yield given
    mine = {part for name in _families(person) for part in [" ".join(parts_of(name))]}
    theirs = {part for name in _families(candidate) for part in [" ".join(parts_of(name))]}
    if mine & theirs:
        yield "same family name"
    elif mine and theirs:
        yield "family name sounds alike"
    yield from _dates(person, candidate)
    for reason, a, b in (
        ("same parent", person.parents, candidate.parents),
        ("same spouse", person.spouses, candidate.spouses),
        ("same child", children.get(person.id, set()), children.get(candidate.id, set())),
    ):
        if _same_kin(a, b, people):
            yield reason


def _given_likeness(name: str, other_name: str) -> str:
    if not name or not other_name or not may_be_called(name, other_name):
        return ""
    if name == other_name:
        return "same given name"
    if min(len(name), len(other_name)) == 1:
        return "initial"
    return "slip in the given name" if close(name, other_name) else "pet form"


def _dates(person: Person, candidate: Person) -> Iterator[str]:
    born = person.born.edtf if person.born else None
    if born and candidate.born and born == candidate.born.edtf:
        yield "born the same day" if len(born.text) == 10 else "born the same year"
    elif _year(person.born) and _year(person.born) == _year(candidate.born):
        yield "born the same year"
    if _year(person.died) and _year(person.died) == _year(candidate.died):
        yield "died the same year"


def _same_kin(mine: Iterable[str], theirs: Iterable[str], people: Mapping[str, Person]) -> bool:
    """The same person, or two of one name (a file doubled brings its parents doubled)."""
    theirs = set(theirs)
    names = {tuple(parts_of(people[ident].name)) for ident in theirs if ident in people} - {("someone",)}
    return any(ident in theirs or (ident in people and tuple(parts_of(people[ident].name)) in names) for ident in mine)
