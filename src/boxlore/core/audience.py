"""Who may see what, decided in one place. Every output takes a record only through `visible`.

An audience is written `keeper`, `family`, `archive:2060-01-01` (closed until that day, then anyone) or
`anyone`. Family outputs hold family and anyone; outside outputs and the open part of a transfer hold
anyone; the closed part adds what waits for its day, never keeper's or family's.
A living person is withheld from outside: every statement whose words hold any form of the name is left
out whole and counted, never rewritten (common practice, no source, for the default of 100 years).
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from functools import lru_cache

from boxlore.core.errors import WrongUse
from boxlore.core.people import Person
from boxlore.core.record import Record, Told
from boxlore.core.statements import fold


class To(StrEnum):
    """For whom an output is made."""

    KEEPER = "keeper"
    FAMILY = "family"
    OUTSIDE = "outside"
    ARCHIVE = "archive"
    """The closed part of a transfer."""


@dataclass(frozen=True, slots=True)
class Audience:
    """Who may see a statement: `level` is keeper, family, archive or anyone; `until` only with archive."""

    level: str
    until: date | None = None

    def __str__(self) -> str:
        return f"archive:{self.until}" if self.until else self.level


def read_audience(text: str) -> Audience:
    """`archive:2060-01-01` → Audience. Raises WrongUse, saying what may be written."""
    level, _, day = text.strip().lower().partition(":")
    if level in ("keeper", "family", "anyone") and not day:
        return Audience(level)
    try:
        if level == "archive":
            return Audience(level, date.fromisoformat(day.strip()))
    except ValueError:
        pass
    raise WrongUse(f"“{text[:40]}” is no audience.", "Use keeper, family, archive:YYYY-MM-DD or anyone.")


_SEES = {
    To.KEEPER: ("keeper", "family", "archive", "anyone"),
    To.FAMILY: ("family", "anyone"),
    To.OUTSIDE: ("anyone",),
    To.ARCHIVE: ("archive", "anyone"),
}


@lru_cache(1024)
def may_see(text: str, to: To, on_day: date) -> bool:
    """Whether that audience's words may go to `to` on that day."""
    audience = read_audience(text)
    opened = audience.until is not None and audience.until <= on_day
    return ("anyone" if opened else audience.level) in _SEES[to]


@dataclass(frozen=True, slots=True)
class Life:
    """Whether someone counts as living, and why."""

    living: bool
    because: str


def life_of(person: Person, on_day: date, years: int = 100, latest_birth: tuple[date, str] | None = None) -> Life:
    """Dead known, dead presumed, else living.

    Presumed dead: born more than `years` years ago at the latest. `latest_birth` is the latest day the
    person can have been born as inferred from pictures, marriages and children, with its reason.
    """
    if person.died or person.living == "no":
        return Life(False, "a death is told" if person.died else "said to have died")
    if person.living == "yes":
        return Life(True, "said to be living")
    if (born := _day(person.born.get("latest"))) is not None:
        if _years_before(on_day, years) >= born:
            return Life(False, f"born {person.born.get('display') or born} at the latest, over {years} years ago")
        return Life(True, f"born {person.born.get('display') or born}, no death told")
    if latest_birth is not None and _years_before(on_day, years) >= latest_birth[0]:
        return Life(False, f"{latest_birth[1]}, over {years} years ago")
    return Life(True, "no birth or death told, so taken as living")


def _day(value: object) -> date | None:
    try:
        return date.fromisoformat(str(value)) if value else None
    except ValueError:
        return None


def _years_before(day: date, years: int) -> date:
    leap = day.month == 2 and day.day == 29
    return day.replace(year=day.year - years, day=28 if leap else day.day)


@dataclass(frozen=True, slots=True)
class Withheld:
    """Whose names may not go out: person ids, and a pattern that finds any form of any of the names."""

    people: frozenset[str] = frozenset()
    pattern: re.Pattern[str] | None = None

    def finds(self, words: str) -> bool:
        """Whether the words hold any form of a withheld name (case and accents folded, whole words)."""
        return bool(self.pattern and self.pattern.search(fold(words)))


NOBODY = Withheld()


def withhold(people: Iterable[Person], lives: Mapping[str, Life], to: To) -> Withheld:
    """The people withheld from that audience: the living, for outside; nobody, for the others."""
    if to is not To.OUTSIDE:
        return NOBODY
    living = [person for person in people if lives[person.id].living]
    forms = {fold(form) for person in living for form in (*person.forms, *person.calls, person.name)}
    spelled = sorted((_with_endings(form) for form in forms if len(form) > 1), key=len, reverse=True)
    pattern = re.compile(rf"(?<!\w)(?:{'|'.join(spelled)})(?!\w)") if spelled else None
    return Withheld(frozenset(person.id for person in living), pattern)


def _with_endings(form: str) -> str:
    """A name as a pattern; one of four letters and more may carry a case ending (Estonian “Leidalt”, from Leida)."""
    return re.escape(form) + (r"\w{0,4}" if len(form) >= 4 else "")


def visible(record: Record, to: To, on_day: date, withheld: Withheld = NOBODY) -> Record:
    """The record as that audience may see it on that day; what is left out is counted in `withheld`."""

    def allowed(told: Told) -> bool:
        return (
            may_see(told.audience, to, on_day)
            and str(told.value.get("id", "")) not in withheld.people
            and not withheld.finds(told.words)
        )

    def nameless(told: Told) -> Told:
        """The statement without the name of a narrator who is withheld; that a narrator said it stays."""
        return replace(told, said_by="") if told.said_by and told.source.ref in withheld.people else told

    if withheld is NOBODY and not record.conflicts and all(map(allowed, _told_in(record))):
        return record
    told = {name: tuple(map(nameless, filter(allowed, rows))) for name, rows in record.told.items()}
    people = tuple(
        replace(one, told=nameless(one.told))
        for one in record.people
        if allowed(one.told) and one.person not in withheld.people
    )
    lost = sum(len(rows) for rows in record.told.values()) - sum(len(rows) for rows in told.values())
    lost += sum(1 for one in record.people if one.number) - sum(1 for one in people if one.number)
    hidden_words = withheld.finds(record.found_in)
    return replace(
        record,
        told={name: rows for name, rows in told.items() if rows},
        people=people,
        conflicts=tuple(c for c in record.conflicts if all(map(allowed, c.told))),
        found_in="" if hidden_words else record.found_in,
        withheld=record.withheld + lost + hidden_words,
        closed_scans=record.closed_scans or _closes_scans(record, withheld),
    )


def _told_in(record: Record) -> list[Told]:
    return [told for rows in record.told.values() for told in rows] + [one.told for one in record.people]


def _closes_scans(record: Record, withheld: Withheld) -> bool:
    """Whether picture, back or embedded text carry someone withheld."""
    if any(one.person in withheld.people or withheld.finds(one.told.words) for one in record.shown()):
        return True
    written = [one.words for one in record.all("inscription")] + [scan.embedded for scan in record.scans]
    return any(map(withheld.finds, written))
