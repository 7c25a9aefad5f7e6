"""Until when something stays closed, and why: what the closed part of a transfer says of each item.

A living person's name is closed until 100 years from birth (The National Archives, UK, closure periods: its assumption
of a lifetime, from memory; `years` is a setting). Where no birth is told, the latest possible birth stands in, with
its reasoning; where nothing is known at all, the years count from the day of the transfer, which is the most careful.
What somebody has closed until a day stays closed until that day. Local law and the archive's own rules go before it.

A statement is what closes an item. The reason says of what kind it is: that the item names or shows somebody, that it
may name somebody (which the keeper has not decided yet), or that only who told it must not be named. Each reason has a
day of its own; the item is closed until the latest. A reason that holds of several has the latest day of theirs.

Whatever the open part leaves out and the closed part holds has a day: both ask the same `Recipient`. How much of an
item is closed is said too (`Closes`): an item whose scans lie in the open part must not read as if nobody might see it.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from boxlore.core.dates.anniversary import years_on
from boxlore.core.fields.audiences import AUDIENCE_WORDS
from boxlore.core.people.latest_birth import BornBy
from boxlore.core.people.person import Person
from boxlore.core.records.audience import EMBEDDED, SHOWN, WHO_SAYS, Naming, Recipient
from boxlore.core.records.audience_levels import closed_until
from boxlore.core.records.item_record import Record, every_told, is_number_alone
from boxlore.core.records.living import Life


class Closes(StrEnum):
    """How much of an item the open part does not have."""

    ITEM = "the whole item"
    SCANS = "its scans, and part of what is told of it"
    WORDS = "part of what is told of it"


_OPEN = {Closes.ITEM: "", Closes.SCANS: " The rest is open.", Closes.WORDS: " The rest, with any scans, is open."}


class Reason(NamedTuple):
    """A day until which something is closed, and what says of an item why: `names someone taken as living …`."""

    until: date
    why: str


@dataclass(frozen=True, slots=True)
class Closure:
    """Closed for `reasons`, each until its own day, the latest first, without a name of anyone living (DACS 4.1, and
    termOfRestriction of PREMIS 3.0, from memory). `what` says how much of the item is closed."""

    reasons: tuple[Reason, ...]
    what: Closes = Closes.ITEM

    @property
    def until(self) -> date:
        """The day until which any of it is closed."""
        return self.reasons[0].until

    @property
    def because(self) -> str:
        """`it shows someone taken as living, …; it is told by someone …`, with the day of each where they differ."""
        has_one_day = self.reasons[-1].until == self.until
        return "; ".join(f"it {why}" + ("" if has_one_day else f" (until {day})") for day, why in self.reasons)

    def __str__(self) -> str:
        return f"Closed until {self.until}: {self.what}, because {self.because}.{_OPEN[self.what]}"


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
        days = {why: day for day, why in sorted([*self._for_names(record), *self._for_audiences(record)])}
        reasons = sorted((Reason(day, why) for why, day in days.items()), key=_latest_first)
        return Closure(tuple(reasons), self._what(record)) if reasons else None

    def _what(self, record: Record) -> Closes:
        """How much of the item the open part does not have."""
        outside = self.outside.seen(record)
        if is_number_alone(outside):
            return Closes.ITEM
        on_sheets = self.kept_back.intersection(scan.id for scan in record.scans)
        return Closes.SCANS if record.scans and (outside.closed_scans or on_sheets) else Closes.WORDS

    def named_in(self, namings: Iterable[Naming]) -> list[Person]:
        """Everyone withheld from outside whom these places of an item name or show, each once, by their ids."""
        ids = {self.people[ident].id for naming in namings for ident in naming.people}
        return [self.people[ident] for ident in sorted(ids)]

    def _for_names(self, record: Record) -> Iterator[Reason]:
        verbs: dict[str, set[str]] = {}
        unknown: set[str] = set()
        for naming in self.outside.namings(record):
            unknown |= set() if naming.people else {_UNKNOWN.get(naming.where, "names someone")}
            for ident in naming.people:
                verbs.setdefault(self.people[ident].id, set()).add(self._verb(naming, ident))
        for ident, how in sorted(verbs.items()):
            person, verb = self.people[ident], next(verb for verb in _VERBS if verb in how)
            kept_for = (person.audience, *person.also_audiences)
            kept_until = max(filter(None, (closed_until(kept, self.outside.on_day) for kept in kept_for)), default=None)
            if verb == HIDDEN:
                yield self._from_transfer("names someone whom the keeper has answered to hide there")
                continue
            if kept_until:
                yield Reason(kept_until, f"{verb} someone whom the keeper keeps closed")
            if self.lives[ident].living or not kept_until:
                yield self._for_life(person, verb)
        for why in sorted(unknown):
            yield self._from_transfer(f"{why} of whom nothing is known")

    def _verb(self, naming: Naming, ident: str) -> str:
        if naming.where == WHO_SAYS:
            return "is told by"
        if naming.where == SHOWN:
            return "shows"
        if self.people[ident].id in self.outside.withheld.by_answer:
            return HIDDEN
        if ident not in self.outside.withheld.people:
            return "may show"
        return "may name" if ident in naming.doubtful else "names"

    def _for_life(self, person: Person, verb: str) -> Reason:
        told_birth, inferred = person.born.latest_day if person.born else None, self.latest.get(person.id)
        if told_birth is not None:
            day, why = told_birth, f"{verb} someone taken as living, {self.years} years from that person's birth"
        elif inferred is not None:
            day = inferred.day
            why = f"{verb} someone taken as living, birth not told, born by {day.year} at the latest"
            why += f" ({inferred.without_names()})"
        else:
            return self._from_transfer(f"{verb} someone taken as living of whom no birth is told")
        until = years_on(day, self.years) or date.max
        if until <= self.outside.on_day:
            return self._from_transfer(f"{verb} someone said to be living")
        return Reason(until, why)

    def _from_transfer(self, why: str) -> Reason:
        until = years_on(self.outside.on_day, self.years) or date.max
        return Reason(until, f"{why}, {self.years} years from this transfer")

    def _for_audiences(self, record: Record) -> Iterator[Reason]:
        for audience, why in self._audiences(record):
            if until := closed_until(audience, self.outside.on_day):
                yield Reason(until, why)

    def _audiences(self, record: Record) -> Iterator[tuple[str, str]]:
        """Every audience that a part of the record has, as its words, with why it is closed until the day in it."""
        for view in every_told(record):
            yield view.audience, "is in part closed at the wish of whoever told it"
        for words in record.audiences:
            if kept := AUDIENCE_WORDS.or_none(words):
                yield str(kept.audience), "is kept closed by the keeper"
        for person in (self.people[shown.person] for shown in record.people if shown.person in self.people):
            for audience in person.told_to:
                yield audience, "names someone of whom a part is closed"


def _latest_first(reason: Reason) -> tuple[int, str]:
    return -reason.until.toordinal(), reason.why


HIDDEN = "is hidden"
"""Of somebody who may be named, but whom the keeper has answered to hide."""
_VERBS = (HIDDEN, "names", "shows", "may name", "may show", "is told by")
"""What closes an item for one person, the first that holds: `may name` is a doubtful hit that nobody has decided, `may
show` a title that names somebody who may be named, but not shown."""


_UNKNOWN = {WHO_SAYS: "names a teller", EMBEDDED: "shows someone", "person": "shows someone"}
