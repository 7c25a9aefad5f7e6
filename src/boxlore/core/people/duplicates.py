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
from boxlore.core.people.names import close, may_be_called, parts_of, short_rows, soundex
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
    everyone = {one.id: one for one in people}
    apart = {frozenset(pair) for pair in together}
    children: dict[str, set[str]] = {}
    for one in everyone.values():
        for parent in one.parents:
            children.setdefault(parent, set()).add(one.id)
    seen: set[tuple[str, str]] = set()
    found: list[Proposal] = []
    for one, other in _pairs(everyone.values()):
        pair = (min(one.id, other.id), max(one.id, other.id))
        if pair in seen:
            continue
        seen.add(pair)
        if frozenset(pair) in apart or excluded(one, other):
            continue
        because = list(_for(one, other, everyone, children))
        weight = sum(WEIGHTS[reason] for reason in because)
        if weight >= ENOUGH:
            found.append(Proposal(*pair, weight, tuple(because)))
    return sorted(found, key=lambda p: (-p.weight, p.one, p.other))


def _pairs(people: Iterable[Person]) -> Iterator[tuple[Person, Person]]:
    groups: dict[str, list[Person]] = {}
    for one in people:
        for key in {soundex(name) for name in _families(one)} - {""}:
            groups.setdefault(key, []).append(one)
        if not one.surnames:
            groups.setdefault(f"={' '.join(parts_of(one.name))}", []).append(one)
    for members in groups.values():
        for group in [members] if len(members) <= LARGEST else _split(members):
            ordered = sorted(group, key=lambda one: (one.name, one.id))
            for at, one in enumerate(ordered):
                for other in islice(ordered, at + 1, at + 1 + LARGEST):
                    if _years_meet(one, other):
                        yield one, other


def _families(person: Person) -> tuple[str, ...]:
    return person.surnames or tuple(parts_of(person.name)[-1:] if len(parts_of(person.name)) > 1 else ())


def _split(members: list[Person]) -> Iterator[list[Person]]:
    """A large group by given name (a pet form stands with its full ones), and then by decade of birth."""
    groups: dict[tuple[object, int], list[Person]] = {}
    for one in members:
        given = _given(one)
        year = _year(one.born)
        keys: set[object] = set(short_rows(given)) or {soundex(given)}
        for key in keys:
            for decade in {(year - 2) // 10, (year + 2) // 10} if year else {0}:
                groups.setdefault((key, decade), []).append(one)
    yield from groups.values()


def _given(person: Person) -> str:
    parts = parts_of(person.calls[0] if person.calls else person.name)
    return parts[0] if parts else ""


def _year(date: DateReading | None) -> int:
    return date.first_year or 0 if date else 0


def _years_meet(one: Person, other: Person) -> bool:
    a, b = _year(one.born), _year(other.born)
    return not a or not b or abs(a - b) <= 2 or not (_exact(one.born) and _exact(other.born))


def _exact(date: DateReading | None) -> bool:
    return date is not None and date.exact


def excluded(one: Person, other: Person) -> bool:
    """Whether they cannot be one person."""
    if {one.sex[:1].lower(), other.sex[:1].lower()} == {"f", "m"}:
        return True
    if other.id in one.different or one.id in other.different:
        return True
    if {one.id} & {*other.parents, *other.spouses} or {other.id} & {*one.parents, *one.spouses}:
        return True
    return any(_exclude(one_, other_) for one_, other_ in ((one.born, other.born), (one.died, other.died)))


def _exclude(one: DateReading | None, other: DateReading | None) -> bool:
    """Whether two dates cannot both be so; an approximate one may be five years out."""
    slack = 0 if _exact(one) and _exact(other) else 5
    a, b = _span(one), _span(other)
    return bool(a and b and (a[1] + slack < b[0] or b[1] + slack < a[0]))


def _span(date: DateReading | None) -> tuple[int, int] | None:
    if date is None or date.first_year is None or date.last_year is None:
        return None
    return date.first_year, date.last_year


def _for(one: Person, other: Person, people: Mapping[str, Person], children: Mapping[str, set[str]]) -> Iterator[str]:
    given = _given_likeness(_given(one), _given(other))
    if not given:
        return
    if parts_of(one.name) == parts_of(other.name):
        yield "same name"
    else:
        yield given
    mine = {part for name in _families(one) for part in [" ".join(parts_of(name))]}
    theirs = {part for name in _families(other) for part in [" ".join(parts_of(name))]}
    if mine & theirs:
        yield "same family name"
    elif mine and theirs:
        yield "family name sounds alike"
    yield from _dates(one, other)
    for reason, a, b in (
        ("same parent", one.parents, other.parents),
        ("same spouse", one.spouses, other.spouses),
        ("same child", children.get(one.id, set()), children.get(other.id, set())),
    ):
        if _same_kin(a, b, people):
            yield reason


def _given_likeness(one: str, other: str) -> str:
    if not one or not other or not may_be_called(one, other):
        return ""
    if one == other:
        return "same given name"
    if min(len(one), len(other)) == 1:
        return "initial"
    return "slip in the given name" if close(one, other) else "pet form"


def _dates(one: Person, other: Person) -> Iterator[str]:
    born = one.born.edtf if one.born else None
    if born and other.born and born == other.born.edtf:
        yield "born the same day" if len(born.text) == 10 else "born the same year"
    elif _year(one.born) and _year(one.born) == _year(other.born):
        yield "born the same year"
    if _year(one.died) and _year(one.died) == _year(other.died):
        yield "died the same year"


def _same_kin(mine: Iterable[str], theirs: Iterable[str], people: Mapping[str, Person]) -> bool:
    """The same person, or two of one name (a file doubled brings its parents doubled)."""
    theirs = set(theirs)
    names = {tuple(parts_of(people[ident].name)) for ident in theirs if ident in people} - {("someone",)}
    return any(ident in theirs or (ident in people and tuple(parts_of(people[ident].name)) in names) for ident in mine)
