"""What to ask next: the questions that only this teller can answer and that settle most, each about one thing.

A question is specific where that is possible: whether somebody was married when a picture was taken, whether somebody
was born or alive yet, whether it is before or after what the teller has told of herself, how old somebody looks; when
an event was on which pictures lean, or a birth; and only then when a picture was taken. Each answer that may be given
is supposed, and how many days that takes from all pictures is reckoned (`WorkedOut.gained`); nothing of it stays. Two
answers count by how likely each is of the years that are open; an answer is worth less where fewer can give it
(`_WORTH`, common practice, no source). What is open at one end counts as a hundred years.

Hers are pictures of her own years, or that she is in, and of people who are hers: she or her kin are in it, or
somebody whom she has told of, or nobody who is known, or she has told of it before; of older ones she can say how old
somebody looks. She is not asked again of a picture whose date she did not know, nor when one was taken that she has
dated, nor how old somebody looks whose age there she has told; but of one that she has dated, where something cannot
be so, how she knows. A death is asked about where few years are open. Where nothing of all that is left, she is asked
who is in those pictures of hers of which nobody has said it. The best for her minutes are chosen by what they settle,
one of each picture, and then put in order: the easy first (she is in it herself, then her nearest kin, then pictures
of nobody), the sad last; a question of a death is a sad one, and each is asked of one picture only.

She is never told what others have said: a question names pictures by their numbers, people whom the family may know of
by their names, the turns of their lives without a year, and no event but those that she or the keeper has told of.
"""

import re
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from boxlore.core.evidence.ages import SLACK
from boxlore.core.evidence.claims import (
    not_after,
    not_before,
    of_birth,
    of_death,
    of_event,
    of_item,
    years_after,
)
from boxlore.core.evidence.even_years import YEAR
from boxlore.core.evidence.leaning import pieces
from boxlore.core.evidence.network import Limit
from boxlore.core.evidence.sentences import teller_of
from boxlore.core.evidence.weddings import Weddings
from boxlore.core.evidence.working_out import WorkedOut, days_of
from boxlore.core.people.person import Person, Registry
from boxlore.core.records.events import FamilyEvent
from boxlore.core.records.item_record import Record
from boxlore.core.wording.catalogue import ENGLISH, Say

MINUTES = {"date": 4, "event": 3, "birth": 2, "age": 2, "married": 2, "born": 2, "alive": 2, "before-or-after": 2,
           "how-known": 3, "who": 2}  # fmt: skip
"""Minutes for a question of each kind (common practice, no source)."""
ALL_KINDS = frozenset(MINUTES)
_WORTH = {"date": 0.4, "event": 0.5, "birth": 0.7, "age": 0.8, "how-known": 0.6}
"""How often somebody can answer (common practice, no source); what is answered by yes or no counts whole."""
THE_KEEPER = "the keeper"
OPEN = 100 * YEAR
"""Days that count for a picture without an end."""
FROM_AGE = 4
"""Years from which on somebody remembers (common practice, no source)."""
PAPERS = ("album-page", "letter", "note", "document", "clipping", "envelope")
"""Kinds of items that are no picture: nobody is asked when they were taken."""
TOLD_BY_HER = 50
"""How near somebody is whom she has told of, and who is no kin of hers."""
FAR_FROM_HER = 99
"""How near a picture is that shows nobody who is known."""
SETTLED = YEAR
"""A picture whose days lie within so many is not asked about."""
KNOWN_BIRTH = 3 * YEAR
"""A birth that is known within so many days is enough to reckon an age from."""
MOST_OF_A_SAD_ONE = 40 * YEAR
"""Where more days than so many are open, nobody is asked whether somebody was alive (common practice, no source)."""
MOST_PICTURES = 60
"""Of so many pictures, those whose date would settle most, more specific questions are sought."""


@dataclass(frozen=True, slots=True)
class Question:
    """One question: of which picture (id and number, empty for one of an event or a life), its kind and its words, the
    years that an answer would settle in all pictures, how near to her it is, and whether it is a sad one. `about` is
    the id of the event, or of the person, that one without a picture is about."""

    item: str
    number: str
    settles: float
    nearness: int
    is_sad: bool
    words: str
    kind: str = "date"
    about: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Teller:
    """Who is asked: her id and name, and those whom she can tell of, by id, with how near they are (herself with 0)."""

    id: str
    name: str = ""
    kin: Mapping[str, int]


@dataclass(frozen=True, slots=True, kw_only=True)
class Family:
    """Whom and what questions may be of; `may_be_named` are the ids of those whom a family may know of."""

    people: Registry
    may_be_named: Collection[str] = ()
    happened: Sequence[FamilyEvent] = ()
    say: Say = ENGLISH
    """In which language they are asked."""


def what_to_ask(
    records: Iterable[Record], worked: WorkedOut, teller: Teller, family: Family, minutes: int
) -> list[Question]:
    """The questions in the order in which to ask them."""
    asking = _Asking(worked, teller, family)
    everything = list(records)
    dates = sorted(asking.dates(everything), key=lambda row: (-row[1].settles, row[1].number))
    found: list[Question] = []
    for record, date, kinds in dates[:MOST_PICTURES]:
        found.append(asking.best(record, date, kinds, but=[asked.words for asked in found if asked.kind == "alive"]))
    found += [date for _, date, kinds in dates[MOST_PICTURES:] if "date" in kinds]
    found = [question for question in (*found, *asking.events(), *asking.births()) if question.settles > 0]
    found = found or list(asking.who(everything))
    chosen: list[Question] = []
    left = minutes
    for question in sorted(found, key=lambda asked: (-asked.settles, asked.number, asked.words)):
        if MINUTES[question.kind] <= left or not chosen:
            chosen.append(question)
            left -= MINUTES[question.kind]
    return sorted(chosen, key=lambda asked: (asked.is_sad, asked.nearness, -asked.settles, asked.number))


class _Asking:
    def __init__(self, worked: WorkedOut, teller: Teller, family: Family) -> None:
        self._worked, self._teller, self._family = worked, teller, family
        self.say = family.say
        self._weddings = Weddings(family.people, family.happened)
        born, _ = worked.bounds(of_birth(teller.id))
        self._remembers = born + FROM_AGE * YEAR if born is not None else None
        hers = [claim for claim in worked.claims if claim.teller == teller.id and claim.limits]
        self._ages_told = {frozenset(days_of(claim)) for claim in hers if len(claim.limits) > 1}
        self._sides_told = {frozenset(days_of(claim)) for claim in hers}

    def _is_hers(self, record: Record) -> bool:
        shown = {person.person for person in record.shown()} - {""}
        is_of_hers = not shown or bool(shown & self._teller.kin.keys())
        return record.kind not in PAPERS and (is_of_hers or self._has_told(record))

    def _has_told(self, record: Record) -> bool:
        everything = (
            *(view for views in record.told.values() for view in views),
            *(each.told for each in record.people),
        )
        return any(teller_of(view) == self._teller.id for view in everything)

    def who(self, records: Iterable[Record]) -> Iterator[Question]:
        """Who is in pictures of which nobody has said it."""
        for record in records:
            if self._is_hers(record) and not record.people and not self._is_before_her(record):
                is_sad = bool(record.words("care"))
                words = self.say("Who is in this picture?")
                yield Question(record.id, record.number, 0, FAR_FROM_HER, is_sad, words, "who")

    def _is_before_her(self, record: Record) -> bool:
        _, last = self._worked.bounds(of_item(record.id))
        return last is not None and self._remembers is not None and last < self._remembers

    def dates(self, records: Iterable[Record]) -> Iterator[tuple[Record, Question, frozenset[str]]]:
        """The pictures that are hers, with the question when each was taken, and the kinds that she can be asked: of
        one from before her years only how old somebody looks, and of one that she has dated anything but its date."""
        for record in records:
            first, last = self._worked.bounds(of_item(record.id))
            if not self._is_hers(record):
                continue
            shown = {person.person for person in record.shown()} - {""}
            told = [view for view in record.all("date") if teller_of(view) == self._teller.id]
            if any(view.field == "date" and teller_of(view) == self._teller.id for view in record.asked):
                continue
            kinds = ALL_KINDS - {"date"} if told else ALL_KINDS
            if self._is_before_her(record) and self._teller.id not in shown:
                kinds = frozenset({"age", "how-known"})
            if first is not None and last is not None and last - first < SETTLED:
                continue
            nearest = TOLD_BY_HER if self._has_told(record) else FAR_FROM_HER
            nearness = min((self._teller.kin[ident] for ident in shown & self._teller.kin.keys()), default=nearest)
            settles = self._of_year(of_item(record.id)) * _WORTH["date"]
            words, is_sad = self.say("When was this taken, and what was going on?"), bool(record.words("care"))
            yield record, Question(record.id, record.number, settles, nearness, is_sad, words), kinds

    def best(self, record: Record, date: Question, kinds: frozenset[str], *, but: Collection[str]) -> Question:
        """The question of a picture that settles most, `but` none in these words."""
        first, last = _closed(*self._worked.bounds(of_item(record.id)))
        asked = [(date.settles, date.kind, date.words), *self._of_picture(record, first, last)]
        settles, kind, words = max(
            (row for row in asked if row[1] in kinds and row[2] not in but),
            key=lambda row: row[0],
            default=(0, "", ""),
        )
        sad = date.is_sad or kind == "alive"
        return Question(date.item, date.number, settles, date.nearness, sad, words, kind)

    def _of_picture(self, record: Record, first: int, last: int) -> Iterator[tuple[float, str, str]]:
        picture, say = of_item(record.id), self.say
        everybody = [person for shown in record.shown() if (person := self._named(shown.person)) is not None]
        shown = {person.id for person in everybody}
        dated = {view.statement for view in record.all("date") if teller_of(view) == self._teller.id}
        circles = self._worked.circles_of(picture)
        if any(claim.statement in dated for circle in circles for claim in circle.claims):
            yield (last - first) / YEAR * _WORTH["how-known"], "how-known", say("How do you know when this was taken?")
        for person in everybody:
            if wedding := self._weddings.of(person.id):
                words = (
                    say("Were you married when this was taken?")
                    if person.id == self._teller.id
                    else say("Was {name} married when this was taken?", name=person.name)
                )
                yield self._either(picture, wedding, (first, last)), "married", words
            near = [other for other in self._family.people.values() if person.id in other.parents]
            for child in near:
                if child.id not in {*shown, self._teller.id} and self._named(child.id):
                    words = say("Was {name} born yet when this was taken?", name=child.name)
                    yield self._either(picture, of_birth(child.id), (first, last)), "born", words
            for ident in dict.fromkeys((*person.parents, *person.spouses)) if self._is_narrow(picture) else ():
                if ident not in shown and (other := self._named(ident)) is not None and other.died:
                    words = say("Was {name} still alive when this was taken?", name=other.name)
                    yield self._either(picture, of_death(other.id), (first, last)), "alive", words
            if {picture, of_birth(person.id)} not in self._ages_told:
                words = (
                    say("How old do you look here, about?")
                    if person.id == self._teller.id
                    else say("How old does {name} look here, about?", name=person.name)
                )
                yield self._of_age(picture, person, (first + last) // 2), "age", words
        parents = {parent for person in everybody for parent in person.parents}
        for event in self._family.happened:
            is_of_parents = event.kind == "marriage" and not parents.isdisjoint(self._couple_of(event))
            if event.own and event.said in (self._teller.name, THE_KEEPER) and not is_of_parents:
                words = say("Is this before or after {event}?", event=_with_its_article(event.name))
                yield self._either(picture, of_event(event.id), (first, last)), "before-or-after", words

    def _is_narrow(self, picture: str) -> bool:
        """Whether a sad question is worth it: a death may well lie within the years of a picture, and nothing told of
        it is in doubt anyway."""
        first, last = self._worked.bounds(picture)
        is_closed = first is not None and last is not None and last - first <= MOST_OF_A_SAD_ONE
        return is_closed and not self._worked.circles_of(picture)

    def _couple_of(self, event: FamilyEvent) -> Collection[str]:
        """Who married, where an event is a wedding that is told of two."""
        words = set(pieces(event.name))
        for couple in self._weddings.couples:
            people = [self._family.people[ident] for ident in couple if ident in self._family.people]
            if len(people) > 1 and all(words & {*pieces(" ".join(person.calls))} for person in people):
                return couple
        return event.people

    def _named(self, ident: str) -> Person | None:
        """Somebody who may be named to her."""
        person = self._family.people.get(ident)
        return person if person and person.id in self._family.may_be_named and ident in self._teller.kin else None

    def events(self) -> Iterator[Question]:
        """When an event was that she or the keeper has told of and nobody has dated."""
        for event in self._family.happened:
            first, last = self._worked.bounds(of_event(event.id))
            is_wide = first is None or last is None or last - first > SETTLED
            if event.own and is_wide and not event.edtf and event.said in (self._teller.name, THE_KEEPER):
                settles = self._of_year(of_event(event.id)) * _WORTH["event"]
                words = self.say("When was {event}?", event=_with_its_article(event.name))
                yield Question("", "", settles, 0, False, words, "event", event.id)

    def births(self) -> Iterator[Question]:
        """When somebody of hers was born, which nobody has told."""
        for ident, nearness in self._teller.kin.items():
            person = self._named(ident)
            if person is not None and person.born is None:
                settles = self._of_year(of_birth(person.id)) * _WORTH["birth"]
                words = (
                    self.say("When were you born?")
                    if person.id == self._teller.id
                    else self.say("When was {name} born?", name=person.name)
                )
                yield Question("", "", settles, nearness, False, words, "birth", person.id)

    def _of_year(self, day: str) -> float:
        """The years that the year in the middle would take from all pictures together."""
        first, last = self._worked.bounds(day)
        begins, ends = _closed(first, last)
        middle = (begins + ends) // 2
        return self._gained((not_before(day, middle - SETTLED // 2), not_after(day, middle + SETTLED // 2))) or 0

    def _either(self, picture: str, other: str, open_years: tuple[int, int]) -> float:
        """The years that it settles whether a picture is before or after a day, by how likely each is."""
        first, last = open_years
        begins, ends = self._worked.bounds(other)
        has_told = {picture, other} in self._sides_told
        if has_told or begins is None or ends is None or ends <= first or begins >= last:
            return 0
        before, behind = (self._gained((limit,)) for limit in (Limit(picture, other, 0), Limit(other, picture, 0)))
        if before is None or behind is None:
            return 0
        share = min(max(((begins + ends) / 2 - first) / (last - first), 0), 1)
        return share * before + (1 - share) * behind

    def _of_age(self, picture: str, person: Person, middle: int) -> float:
        begins, ends = self._worked.bounds(of_birth(person.id))
        if begins is None or ends is None or ends - begins > KNOWN_BIRTH:
            return 0
        age = (middle - begins) // YEAR
        slack = next((years for oldest, years in SLACK if age <= oldest), SLACK[-1][1])
        limits = years_after(picture, of_birth(person.id), max(age - slack, 0), age + 1 + slack)
        return (self._gained(limits) or 0) * _WORTH["age"]

    def _gained(self, limits: Iterable[Limit]) -> float | None:
        gained = self._worked.gained(limits)
        if gained is None:
            return None
        return sum(min(days, OPEN) for name, days in gained.items() if name.startswith(of_item(""))) / YEAR


_BARE = re.compile(
    r"(?:wedding|marriage|engagement|birth|death|funeral|burial|christening|baptism|move|sailing|crossing)\b",
    re.IGNORECASE,
)


def _with_its_article(name: str) -> str:
    """“Wedding of Ivy and Tom” as it stands within a sentence; names of other languages, and clauses, are as told."""
    return f"the {name[:1].lower()}{name[1:]}" if _BARE.match(name) else name


def _closed(first: int | None, last: int | None) -> tuple[int, int]:
    begins = first if first is not None else (last or 0) - OPEN
    return begins, last if last is not None else begins + OPEN
