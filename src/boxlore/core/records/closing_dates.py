"""Until when something stays closed, and why: what the closed part of a transfer says of each item.

A living person's name is closed until 100 years from birth (the assumption of The National Archives, UK, for a
lifetime; `years` is a setting). Where no birth is told, the latest possible birth stands in, with its reasoning;
where nothing is known at all, the years count from the day of the transfer, which is the most careful.
Local law and the archive's own rules go before it.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from dataclasses import field as starts
from datetime import date

from boxlore.core.people.person import Person
from boxlore.core.records.audience import Life, To, Withheld, withhold
from boxlore.core.records.in_force import Record, StatementView
from boxlore.core.statements import read_audience

SOURCE = "100 years from birth: The National Archives (UK), closure periods; from memory"


@dataclass(frozen=True, slots=True)
class Closure:
    """Closed until the day `until`; `reasons` are sentences without a name of anyone living."""

    until: date
    reasons: tuple[str, ...]

    def __str__(self) -> str:
        return f"Closed until {self.until}: {'; '.join(self.reasons)}."


def years_after(day: date, years: int) -> date:
    """The same day so many years on (28 February for a leap day)."""
    leap = day.month == 2 and day.day == 29
    return day.replace(year=min(day.year + years, date.max.year), day=28 if leap else day.day)


@dataclass(slots=True, kw_only=True)
class Closing:
    """Works out the closure of each record. `latest` is the latest possible birth of a person, with its reason."""

    people: Mapping[str, Person]
    lives: Mapping[str, Life]
    withheld: Withheld
    latest: Mapping[str, tuple[date, str]]
    on_day: date
    years: int = 100
    _alone: dict[str, Withheld] = starts(default_factory=dict)

    def of(self, record: Record) -> Closure | None:
        """The closure of an item whose record is as the closed part sees it, or None if all of it is open."""
        found = [self._for_life(ident) for ident in sorted(self.named_in(record))]
        found += [one for told in every_told(record) if (one := self._for_audience(told))]
        if not found:
            return None
        return Closure(max(day for day, _ in found), tuple(dict.fromkeys(why for _, why in sorted(found))))

    def named_in(self, record: Record) -> set[str]:
        """Ids of the withheld people that an item shows, or whose names stand in its words."""
        told = list(every_told(record))
        found = {str(one.value.get("id", "")) for one in told} & self.withheld.people
        texts = [one.words for one in told] + [one.said_by for one in told] + [record.found_in]
        texts += [scan.embedded for scan in record.scans]
        hits = [text for text in texts if text and self.withheld.finds(text)]
        return found | {ident for ident in self.withheld.people for text in hits if self._only(ident).finds(text)}

    def _only(self, ident: str) -> Withheld:
        """A search for the names of one person alone."""
        if ident not in self._alone:
            self._alone[ident] = withhold([self.people[ident]], self.lives, To.OUTSIDE)
        return self._alone[ident]

    def _for_life(self, ident: str) -> tuple[date, str]:
        born = _day(self.people[ident].born.get("latest"))
        if born is not None:
            return years_after(born, self.years), f"names someone taken as living, {self.years} years from birth"
        if ident in self.latest:
            day, why = self.latest[ident]
            reason = f"names someone taken as living, birth not told, born by {day.year} at the latest ({why})"
            return years_after(day, self.years), reason
        why = f"names someone taken as living of whom no birth is told, {self.years} years from this transfer"
        return years_after(self.on_day, self.years), why

    def _for_audience(self, told: StatementView) -> tuple[date, str] | None:
        until = read_audience(told.audience).until
        if until is None or until <= self.on_day:
            return None
        return until, "closed until that day at the wish of whoever told it"


def every_told(record: Record) -> Iterable[StatementView]:
    """Every statement that a record rests on, each once: its fields, its people, the sides of its conflicts."""
    found = {told.statement: told for rows in record.told.values() for told in rows}
    found |= {one.told.statement: one.told for one in record.people}
    found |= {told.statement: told for conflict in record.conflicts for told in conflict.told}
    return found.values()


def _day(value: object) -> date | None:
    try:
        return date.fromisoformat(str(value)) if value else None
    except ValueError:
        return None
