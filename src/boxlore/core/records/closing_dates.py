"""Until when something stays closed, and why: what the closed part of a transfer says of each item.

A living person's name is closed until 100 years from birth (The National Archives, UK, closure periods: its assumption
of a lifetime, from memory; `years` is a setting). Where no birth is told, the latest possible birth stands in, with
its reasoning; where nothing is known at all, from the day on which somebody was first noted here, for whoever was told
of was born by then. So a day does not move from one transfer to the next, unless what is told does.
What somebody has closed until a day stays closed until that day. Local law and the archive's own rules go before it.

A statement is what closes an item. The reason says of what kind it is: that the item names or shows somebody, that it
may name somebody (which the keeper has not decided yet), or that only who told it must not be named. Each reason has a
day of its own; the item is closed until the latest. A reason that holds of several has the latest day of theirs.

Whatever the open part leaves out and the closed part holds has a day: both ask the same `Recipient`. How much of an
item each reason closes is said too (`Closes`): an item whose scans lie in the open part must not read as if nobody
might see it, and one that the family has closed for five years must not read as closed for a lifetime, since somebody
living told of it: after the five years only the teller's name is left out.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from boxlore.core.dates.anniversary import years_on
from boxlore.core.fields.audiences import AUDIENCE_WORDS
from boxlore.core.people.consent import Matter, allows, is_taken_back
from boxlore.core.people.latest_birth import BornBy
from boxlore.core.people.person import Person
from boxlore.core.records.audience import (
    EMBEDDED,
    OF_SCANS,
    SHOWN,
    TELLS_MORE,
    WHAT_IT_SHOWS,
    WHO_SAYS,
    Naming,
    Recipient,
)
from boxlore.core.records.audience_levels import closed_until, waits
from boxlore.core.records.item_record import Record, every_told, is_number_alone
from boxlore.core.records.living import Life
from boxlore.core.statements import day_in, day_of


class Closes(StrEnum):
    """How much of an item the open part does not have, the most first."""

    ITEM = "the whole item"
    SCANS = "its scans, and part of what is told of it"
    WORDS = "part of what is told of it"
    TELLER = "the name of whoever told it"


_OPEN = {Closes.ITEM: "", Closes.SCANS: " The rest is open."}
_MOST_FIRST = tuple(Closes)


class Reason(NamedTuple):
    """A day until which something is closed, what says of an item why (`names someone taken as living …`), and how much
    of the item it closes."""

    until: date
    why: str
    what: Closes = Closes.ITEM


@dataclass(frozen=True, slots=True)
class Closure:
    """Closed for `reasons`, each until its own day, the latest first, without a name of anyone living (DACS 4.1, and
    termOfRestriction of PREMIS 3.0, from memory)."""

    reasons: tuple[Reason, ...]

    @property
    def what(self) -> Closes:
        """How much of the item is closed, of all reasons together."""
        return _most(reason.what for reason in self.reasons)

    @property
    def until(self) -> date:
        """The day until which any of it is closed."""
        return self.reasons[0].until

    def __str__(self) -> str:
        """`Closed until 2031-06-30: the whole item, because …. Closed until 2039-12-31: the name of whoever told it,
        because …. The rest, with any scans, is open.`: a sentence for each part, the largest first, without what ends
        no later than a larger part."""
        sentences: list[str] = []
        said = date.min
        for what in _MOST_FIRST:
            own = [reason for reason in self.reasons if reason.what is what and reason.until > said]
            if own:
                sentences.append(f"Closed until {own[0].until}: {what}, because {_because(own)}.")
                said = max(said, own[0].until)
        return " ".join(sentences) + _OPEN.get(self.what, " The rest, with any scans, is open.")


def _because(reasons: Sequence[Reason]) -> str:
    """`it shows someone taken as living, …; it names someone …`, with the day of each where they differ."""
    has_one_day = reasons[-1].until == reasons[0].until
    return "; ".join(f"it {reason.why}" + ("" if has_one_day else f" (until {reason.until})") for reason in reasons)


@dataclass(frozen=True, slots=True, kw_only=True)
class Closing:
    """Works out the closure of each record, as the open part leaves things out: `outside` is for whom that is made.

    `people` is the registry, `lives` tells by the same ids who counts as living, `latest` the latest possible birth
    of a person, with its reason.
    """

    outside: Recipient
    people: Mapping[str, Person]
    lives: Mapping[str, Life]
    latest: Mapping[str, BornBy]
    years: int = 100
    kept_back: frozenset[str] = frozenset()
    """The ids of scans that the open part does not have, since they show another item too, which is closed."""

    def of(self, record: Record) -> Closure | None:
        """The closure of an item whose record is as the closed part sees it, or None if all of it is open."""
        latest: dict[tuple[str, Closes], date] = {}
        for until, why, what in sorted([*self._for_names(record), *self._for_audiences(record)]):
            latest[why, what] = until
        reasons = [Reason(until, why, what) for (why, what), until in latest.items()]
        if not reasons:
            return None
        gravest, least = _most(reason.what for reason in reasons), self._least(record)
        if _most((gravest, least)) is not gravest:
            reasons = [reason._replace(what=least) if reason.what is gravest else reason for reason in reasons]
        return Closure(tuple(sorted(reasons, key=_latest_first)))

    def _least(self, record: Record) -> Closes:
        """How much of the item the open part does not have at the least, whatever closes it."""
        outside = self.outside.seen(record)
        if is_number_alone(outside):
            return Closes.ITEM
        on_sheets = self.kept_back.intersection(scan.id for scan in record.scans)
        return Closes.SCANS if record.scans and (outside.closed_scans or on_sheets) else Closes.TELLER

    def of_sound(
        self, speakers: Iterable[Person], *, is_heard: bool = True, since: date | None = None, agreed: str = ""
    ) -> Closure:
        """The closure of a recording, or of a paper of a sitting (not `is_heard`), in which these people speak: as long
        as any of their voices is closed, and as names of the living are that nobody has looked for in it. `since` is
        when it was noted, or first handed over; without it, it is now. `agreed` is the audience that was agreed."""
        sought = "listened" if is_heard else "looked"
        why = f"may name people taken as living (nobody has {sought} for names in it)"
        reasons = [self._since(self._followed(since), why, _NOTED)]
        if until := closed_until(agreed, self.outside.on_day):
            reasons.append(Reason(until, _AGREED))
        elif waits(agreed):
            reasons.append(self._since(self._followed(since), f"{_AGREED} until it is asked again", _NOTED))
        for person in speakers if is_heard else ():
            if self.lives[person.id].living and not allows(person.consents, Matter.VOICE):
                reasons.append(self._for_life(person, _VOICE))
        return Closure(tuple(sorted(set(reasons), key=_latest_first)))

    def named_in(self, namings: Iterable[Naming]) -> list[Person]:
        """Everyone withheld from outside whom these places of an item name or show, each once, by their ids."""
        ids = {self.people[ident].id for naming in namings for ident in naming.people}
        return [self.people[ident] for ident in sorted(ids)]

    def _for_names(self, record: Record) -> Iterator[Reason]:
        verbs: dict[str, set[str]] = {}
        places: dict[str, set[str]] = {}
        unknown: dict[str, set[str]] = {}
        since: dict[str, list[date]] = {}
        for naming in self.outside.namings(record):
            if not naming.people:
                why = _UNKNOWN.get(naming.where, "names someone")
                unknown.setdefault(why, set()).add(naming.where)
                since.setdefault(why, []).append(self._followed(naming.noted_on or day_in(record.changed_at)))
            for ident in naming.people:
                verbs.setdefault(self.people[ident].id, set()).add(self._verb(naming, ident))
                places.setdefault(self.people[ident].id, set()).add(naming.where)
        if not verbs and not unknown:
            return
        has_closed_scans = bool(record.scans) and self.outside.seen(replace(record, audiences=())).closed_scans
        for ident, how in sorted(verbs.items()):
            person, verb = self.people[ident], next(verb for verb in _VERBS if verb in how)
            what = Closes.TELLER if verb == _TOLD_BY else _scans_or_words(places[ident], has_closed_scans)
            for reason in self._for_person(person, verb):
                yield reason._replace(what=what)
        for why, where in sorted(unknown.items()):
            what = Closes.TELLER if where == {WHO_SAYS} else _scans_or_words(where, has_closed_scans)
            noted = max(since.get(why) or [self.outside.on_day])
            yield self._since(noted, f"{why} of whom nothing is known", _NOTED)._replace(what=what)

    def _for_person(self, person: Person, verb: str) -> Iterator[Reason]:
        kept_for = (person.audience, *person.also_audiences)
        kept_until = max(filter(None, (closed_until(kept, self.outside.on_day) for kept in kept_for)), default=None)
        if verb == HIDDEN:
            yield self._for_hidden(person)
            return
        if kept_until:
            yield Reason(kept_until, f"{verb} someone whom the keeper keeps closed")
        if self.lives[person.id].living or not kept_until:
            yield self._for_life(person, verb)

    def _verb(self, naming: Naming, ident: str) -> str:
        if naming.where == WHO_SAYS:
            return _TOLD_BY
        if naming.where == SHOWN:
            return _SHOWS
        if self.people[ident].id in self.outside.withheld.by_answer:
            return HIDDEN
        if ident not in self.outside.withheld.people:
            return "may show"
        if ident in naming.doubtful:
            return "may name"
        return _SHOWS if naming.where == _PERSON else "names"

    def _for_hidden(self, person: Person) -> Reason:
        """For somebody who may be named elsewhere: no longer than if that were not allowed."""
        why = "names someone whom the keeper has answered to hide there"
        born = person.born.latest_day if person.born else None
        until = years_on(born, self.years) if born else None
        if until is None or until <= self.outside.on_day:
            return self._since(self._first_noted(person), why, _FIRST_NOTED)
        return Reason(until, f"{why}, {self.years} years from that person's birth")

    def _for_life(self, person: Person, verb: str) -> Reason:
        told_birth, inferred = person.born.latest_day if person.born else None, self.latest.get(person.id)
        whom = f"someone taken as living{_taken_back(person, verb)}"
        if told_birth is not None:
            day, why = told_birth, f"{verb} {whom}, {self.years} years from that person's birth"
        elif inferred is not None:
            day = inferred.day
            why = f"{verb} {whom}, birth not told, born by {day.year} at the latest ({inferred.without_names()})"
        else:
            return self._since(self._first_noted(person), f"{verb} {whom} of whom no birth is told", _FIRST_NOTED)
        until = years_on(day, self.years) or date.max
        if until <= self.outside.on_day:
            return self._since(self._first_noted(person), f"{verb} someone said to be living", _FIRST_NOTED)
        return Reason(until, why)

    def _first_noted(self, person: Person) -> date:
        """When the registry first had the person, under any entry."""
        return min(self._followed(day_of(ident)) for ident in person.ids)

    def _followed(self, noted: date | None) -> date:
        """A day on which something was noted, if a clock that was right can have said so; else that of the transfer."""
        return noted if noted and NO_EARLIER <= noted <= self.outside.on_day else self.outside.on_day

    def _since(self, day: date, why: str, what: str) -> Reason:
        return Reason(years_on(day, self.years) or date.max, f"{why}, {self.years} years from {what}")

    def _for_audiences(self, record: Record) -> Iterator[Reason]:
        for audience, why, what in self._audiences(record):
            if until := closed_until(audience, self.outside.on_day):
                yield Reason(until, why, what)
            elif waits(audience):
                noted = self._followed(day_in(record.changed_at))
                yield self._since(noted, f"{why} until it is asked again", _NOTED)._replace(what=what)

    def _audiences(self, record: Record) -> Iterator[tuple[str, str, Closes]]:
        """Every audience that a part of the record has, as its words, with why it is closed until the day in it, and
        how much of the item it closes."""
        for view in every_told(record):
            yield view.audience, "is in part closed at the wish of whoever told it", _of_field(view.field, record)
        for words in record.audiences:
            if kept := AUDIENCE_WORDS.or_none(words):
                what = _of_field(kept.field, record) if kept.field else Closes.ITEM
                yield str(kept.audience), "is kept closed by the keeper", what
        for person in (self.people[shown.person] for shown in record.people if shown.person in self.people):
            for audience in person.told_to:
                yield audience, "names someone of whom a part is closed", Closes.WORDS


def _taken_back(person: Person, verb: str) -> str:
    """`, who took the consent back on 2026-11-28`, if that is so of being named, shown or heard."""
    matter = _MATTERS.get(verb, Matter.NAME)
    days = [consent.day for consent in person.consents if matter in consent.matters and not consent.given]
    return f", who took the consent back on {days[-1]}" if is_taken_back(person.consents, matter) else ""


def _of_field(field: str, record: Record) -> Closes:
    """What a field closes that is kept back: a scan of the back shows what is written on it."""
    return Closes.SCANS if field == INSCRIPTION and record.scans else Closes.WORDS


def _scans_or_words(places: Iterable[str], has_closed_scans: bool) -> Closes:
    """What somebody closes who is named or shown in these places of an item."""
    return Closes.SCANS if has_closed_scans and CLOSES_SCANS.intersection(places) else Closes.WORDS


def _most(parts: Iterable[Closes]) -> Closes:
    """The one of these that closes most."""
    return min(parts, key=_MOST_FIRST.index)


def _latest_first(reason: Reason) -> tuple[int, str]:
    return -reason.until.toordinal(), reason.why


INSCRIPTION, _PERSON = "inscription", "person"
CLOSES_SCANS = frozenset({*OF_SCANS, *WHAT_IT_SHOWS, *TELLS_MORE, _PERSON})
"""Places of a record where a name that is held back closes the scans too, where they are closed for a name at all."""
HIDDEN = "is hidden"
"""Of somebody who may be named, but whom the keeper has answered to hide."""
_TOLD_BY, _SHOWS, _VOICE = "is told by", "shows", "has the voice of"
_MATTERS = {_SHOWS: Matter.PICTURE, _VOICE: Matter.VOICE}
_VERBS = (HIDDEN, _SHOWS, "names", "may name", "may show", _TOLD_BY)
"""What closes an item for one person, the first that holds: `may name` is a doubtful hit that nobody has decided, `may
show` a title that names somebody who may be named, but not shown."""


NO_EARLIER = date(2026, 11, 1)
"""Nothing was noted before there was a Boxlore: an earlier day is of a clock that was wrong."""
_AGREED = "is closed as was agreed with whoever told it"
_FIRST_NOTED, _NOTED = "when that person was first noted", "when that was noted"
_UNKNOWN = {WHO_SAYS: "names a teller", EMBEDDED: "shows someone", "person": "shows someone"}
