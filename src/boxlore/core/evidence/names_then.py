"""Clues of names that somebody bore only from a day on: a married name, and a rank.

Only what stands on the thing itself is taken: whoever tells of somebody today calls them as they were called last. It
may have been written years later, so that it is a guess. A name at birth bounds nothing: whoever knows a family writes
it of a married woman too, and in many lands she keeps it. Nor does the name of a city that was renamed: families,
emigrants and strangers used the old name and the new one for decades on both sides of a decree.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cache
from typing import NamedTuple

from boxlore.core.evidence.claims import Claim, of_event, of_item
from boxlore.core.evidence.network import Limit
from boxlore.core.evidence.told_dates import told
from boxlore.core.evidence.weddings import Weddings, day_of
from boxlore.core.findings import one_line
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.statements import Said, Sure, fold


class Promotion(NamedTuple):
    """An event (its id) by which somebody (the id) came to a rank, in the forms of its word."""

    event: str
    person: str
    rank: frozenset[str]


def clues(
    record: Record,
    people: Registry,
    born_as: Mapping[str, set[str]],
    weddings: Weddings,
    promotions: Sequence[Promotion] = (),
) -> Iterator[Claim]:
    """`born_as` are the names at birth that are told, by the person's id."""
    for shown in record.shown():
        person = people.get(shown.person)
        if person and shown.told.source.said is Said.INSCRIPTION and (day := weddings.of(person.id)):
            yield from _married(record, person, shown.told, (day, born_as.get(person.id, set())))
    for view in record.all("inscription"):
        if view.source.said is Said.INSCRIPTION:
            titled = list(_titled(record, view, people, weddings))
            yield from titled
            said = {limit for claim in titled for limit in claim.limits}  # “Mrs Edith Wall” says one thing, told once
            yield from (
                claim for claim in _named(record, view, people, (born_as, weddings)) if said.isdisjoint(claim.limits)
            )
            yield from _ranked(record, view, people, promotions)


def _married(record: Record, person: Person, view: StatementView, then: tuple[str, set[str]]) -> Iterator[Claim]:
    day, born_as = then
    written = _words(view.words)
    names = [name for name in person.surnames if _words(name) <= written]
    if names and born_as and not born_as & set(names):
        yield replace(
            told(view, f"{person.name} is called {names[0]} on {record.number}, a name of after the wedding"),
            sure=Sure.GUESS,
            limits=(Limit(day, of_item(record.id), 0),),
        )


def _named(
    record: Record, view: StatementView, people: Registry, then: tuple[Mapping[str, set[str]], Weddings]
) -> Iterator[Claim]:
    """“Nancy Reid, 1918” on the back: first name and married name of somebody who is in the picture."""
    born_as, weddings = then
    plain = fold(view.words)
    for person in (person for shown in record.shown() if (person := people.get(shown.person)) is not None):
        calls = [fold(call) for call in person.calls if " " not in call]
        whole = {f"{call} {fold(name)}" for call in calls for name in person.surnames}
        if day := _by_marriage(person, plain, people, then):
            words = f"{person.name} is called “{one_line(view.words)}” on {record.number}, a name of after the wedding"
            yield replace(told(view, words), sure=Sure.GUESS, limits=(Limit(day, of_item(record.id), 0),))
            continue
        if (day := weddings.of(person.id)) and _any_in(whole, plain):
            yield from _married(record, person, view, (day, born_as.get(person.id, set())))


def _by_marriage(person: Person, plain: str, people: Registry, then: tuple[Mapping[str, set[str]], Weddings]) -> str:
    """The day of the one wedding by which somebody got the name that is written: the family name of whom she married,
    and neither of her parents nor hers by birth, behind her own; or all of the husband's with the Hungarian ending."""
    born_as, weddings = then
    parents = [people[ident] for ident in person.parents if ident in people]
    by_birth = {fold(name) for name in born_as.get(person.id, ())} | {name for each in parents for name in _own(each)}
    days = set()
    for couple in weddings.couples_of(person.id):
        for other in (people[ident] for ident in couple if ident != person.id and ident in people):
            taken = _own(other) - by_birth
            if not by_birth and _own(person) <= taken:
                taken -= _own(person)  # she may have been born with it
            names = {f"{fold(call)} {name}" for call in person.calls for name in taken}
            names |= {f"{name} {fold(call)}ne" for call in other.calls for name in _own(other)}
            if _any_in(names, plain, but=_MISS):
                days.add(day_of(couple))
    return days.pop() if len(days) == 1 else ""


def _any_in(names: Iterable[str], plain: str, but: re.Pattern[str] | None = None) -> bool:
    """Whether one of the names is written, and not behind what `but` matches."""
    found = (re.search(rf"(?<!\w){re.escape(name)}(?!\w)", plain) for name in names)
    return any(match and not (but and but.search(plain[: match.start()])) for match in found)


_UNMARRIED = "miss|fraulein|frl|preili|prl|neiti|froken|mademoiselle|mlle|senorita|srta|signorina|panna"
"""What an unmarried woman is called before her name, folded."""
_MISS = re.compile(rf"\b(?:{_UNMARRIED})\.? $")


def _ranked(record: Record, view: StatementView, people: Registry, promotions: Sequence[Promotion]) -> Iterator[Claim]:
    """“Sergeant W. Reid” was written after he was made one, and the picture was, as a rule, taken after it too."""
    written = _words(view.words)
    for promotion in promotions:
        is_shown = any(
            people[shown.person].id == promotion.person for shown in record.shown() if shown.person in people
        )
        names = {fold(name) for name in (*people[promotion.person].surnames, *people[promotion.person].calls)}
        if is_shown and written & promotion.rank and written & names:
            words = f"{people[promotion.person].name} is called “{one_line(view.words)}” on {record.number}"
            limits = (Limit(of_event(promotion.event), of_item(record.id), 0),)
            yield replace(told(view, words), sure=Sure.GUESS, limits=limits)


RANKS = tuple(
    frozenset(forms.split())
    for forms in (
        "corporal cpl|sergeant sgt serjeant feldwebel seersant sergent sargento|lieutenant lt lieut leutnant leitnant|"
        "captain capt hauptmann kapten kapitän capitaine capitán|major maj|colonel col oberst kolonel|"
        "general gen kindral|doctor dr doktor docteur|reverend rev pastor pfarrer vicar õpetaja|professor prof|"
        "nurse sister schwester|matron|bishop bischof piiskop|mayor bürgermeister linnapea|judge richter"
    ).split("|")
)
"""Ranks and offices in their forms, each one whose beginning a family may tell (common practice, no source)."""


def promotions_of(happened: Iterable[FamilyEvent], people: Registry) -> list[Promotion]:
    """The events of the time line by which somebody came to a rank (“William was made sergeant”)."""
    found = []
    for event in happened:
        words = _words(event.name)
        ranks = [rank for rank in _ranks() if rank & words]
        if not event.own or len(ranks) != 1:
            continue  # most
        called = {person.id for person in people.values() if words & {fold(call) for call in person.calls}}
        if len(called) == 1:
            found.append(Promotion(event.id, called.pop(), ranks[0]))
    return found


@cache
def _ranks() -> tuple[frozenset[str], ...]:
    return tuple(frozenset(map(fold, rank)) for rank in RANKS)


_TITLED = re.compile(
    rf"\b(?:(?P<miss>{_UNMARRIED})|(?P<mrs>mrs|frau|proua|pr|rouva|fru|madame|mme|senora|sra|signora|pani))\b\.? "
    r"(?P<name>\w+(?: \w+)?)\b(?!['’]s| \w+['’]s)"
)
"""What an unmarried and a married woman is called before her name, folded."""


def _titled(record: Record, view: StatementView, people: Registry, weddings: Weddings) -> Iterator[Claim]:
    """“Miss Ana Saar” was written before she married, and the picture was taken before that; “Mrs” may be written on an
    older one, and is a guess."""
    shown = [person for each in record.shown() if (person := people.get(each.person)) is not None]
    for match in _TITLED.finditer(fold(view.words)):
        first, *second = match["name"].split()
        called = [person for person in shown if first in {fold(call) for call in person.calls}]
        if match["mrs"] and not called and not _ADDRESSED.search(fold(view.words)[: match.start()]):
            called = [person for person in shown if first in _calls_of_spouses(person, people)] or [
                person
                for person in shown
                if not set(second) - _BESIDE and first in _names_of_spouses(person, people) - _own(person)
            ]
        if match["miss"] and called and set(second) & _names_of_spouses(called[0], people):
            continue  # a slip, or written by a name of later
        if len(called) != 1 or not (day := weddings.of(called[0].id)):
            continue
        limit = Limit(of_item(record.id), day, 0) if match["miss"] else Limit(day, of_item(record.id), 0)
        words = f"{called[0].name} is called “{one_line(view.words)}” on {record.number}"
        yield replace(told(view, words), sure=Sure.LIKELY if match["miss"] else Sure.GUESS, limits=(limit,))


_ADDRESSED = re.compile(r"[^\W\d_] *$")
"""Words before a name, which may be of a letter or a gift: “copy for Mrs William McKay” is nobody in the picture."""


_BESIDE = frozenset("with and mit und ja koos avec et con y med och og".split())


def _own(person: Person) -> set[str]:
    return {fold(name) for name in person.surnames}


def _calls_of_spouses(person: Person, people: Registry) -> set[str]:
    return {fold(call) for ident in person.spouses if ident in people for call in people[ident].calls}


def _names_of_spouses(person: Person, people: Registry) -> set[str]:
    return {fold(name) for ident in person.spouses if ident in people for name in people[ident].surnames}


def _words(text: str) -> set[str]:
    return set(re.findall(r"\w+", fold(text)))
