"""Who may see what, decided in one place. Every output takes a record only through `visible`.

An audience is written `keeper`, `family`, `archive:2060-01-01` (closed until that day, then anyone) or
`anyone`. Family outputs hold family and anyone; outside outputs and the open part of a transfer hold
anyone; the closed part adds what waits for its day, never keeper's or family's.
A living person is withheld from outside: every statement whose words hold any form of the name is left
out whole and counted, never rewritten (common practice, no source, for the default of 100 years), unless she
has consented to be named. Someone, or an item, may also be kept to the keeper or the family by the keeper's word.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from dataclasses import field as starts
from datetime import date
from enum import StrEnum
from functools import lru_cache

from boxlore.core.people.consent import Matter, allows
from boxlore.core.people.latest_birth import latest_day
from boxlore.core.people.names import sought_forms
from boxlore.core.people.person import Person
from boxlore.core.records.in_force import Record, StatementView
from boxlore.core.statements import Said, Source, fold, read_audience


class To(StrEnum):
    """For whom an output is made."""

    KEEPER = "keeper"
    FAMILY = "family"
    OUTSIDE = "outside"
    ARCHIVE = "archive"
    """The closed part of a transfer."""


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
    if person.dead or person.died or person.living == "no":
        return Life(False, "said to have died" if person.living == "no" and not person.died else "a death is told")
    if person.living == "yes":
        return Life(True, "said to be living")
    limit = _years_before(on_day, years)
    born = latest_day(person.born)
    if born is not None and limit >= born:
        return Life(False, f"born {person.born.get('display') or born} at the latest, over {years} years ago")
    if latest_birth is not None and limit >= latest_birth[0]:
        return Life(False, f"{latest_birth[1]}, so born by {latest_birth[0].year}, over {years} years ago")
    if born is not None:
        return Life(True, f"born {person.born.get('display') or born}, no death told")
    return Life(True, "no birth or death told, so taken as living")


def _years_before(day: date, years: int) -> date:
    leap = day.month == 2 and day.day == 29
    return day.replace(year=day.year - years, day=28 if leap else day.day)


@dataclass(frozen=True, slots=True)
class Withheld:
    """Whose names may not go out: ids of people, and every form of their names, by its first word.

    `hidden_pictures` are people who may be named but not shown.
    """

    people: frozenset[str] = frozenset()
    forms: Mapping[str, tuple[tuple[str, ...], ...]] = starts(default_factory=dict)
    hidden_pictures: frozenset[str] = frozenset()

    def finds(self, words: str) -> bool:
        """Whether the words hold any form of a withheld name (case, accents and points aside, whole words)."""
        if not self.forms:
            return False
        tokens = _TOKEN.findall(fold(words))
        return any(self._stands_at(tokens, at) for at in range(len(tokens)))

    def _stands_at(self, tokens: list[str], at: int) -> bool:
        if any((cut,) in self.forms.get(cut, ()) for cut in _without_ending(tokens[at])):
            return True
        return any(
            len(form) > 1
            and tokens[at : at + len(form) - 1] == list(form[:-1])
            and at + len(form) <= len(tokens)
            and form[-1] in _without_ending(tokens[at + len(form) - 1])
            for form in self.forms.get(tokens[at], ())
        )


_TOKEN = re.compile(r"[^\W_]+")


def _without_ending(token: str) -> list[str]:
    """A word, and what is left without a case ending (Estonian “Leidalt”, from Leida): never under four letters."""
    return [token, *(token[:-cut] for cut in range(1, 5) if len(token) - cut >= 4)]


NOBODY = Withheld()


def withhold(people: Iterable[Person], lives: Mapping[str, Life], to: To, on_day: date | None = None) -> Withheld:
    """The people withheld from that audience: from outside the living who have not consented to be named; from
    each, whoever the keeper keeps from it."""
    everyone = list(people)
    hidden = [one for one in everyone if _hidden(one, lives, to, on_day or date.min)]
    by_id = {ident: one for one in everyone for ident in one.ids} if hidden else {}
    out_of_sight = {one.id for one in hidden}
    seen = [one for one in everyone if hidden and one.id not in out_of_sight]
    shared = {fold(name) for one in seen for name in (*one.surnames, *one.name.split()[-1:])}
    forms: dict[str, set[tuple[str, ...]]] = {}
    for person in hidden:
        for form in _forms_of(person, by_id) | _own_surnames(person, shared):
            if tokens := tuple(_TOKEN.findall(form)):
                forms.setdefault(tokens[0], set()).add(tokens)
    faces = {
        ident
        for one in everyone
        if to is To.OUTSIDE and lives[one.id].living and not allows(one.consents, Matter.PICTURE)
        for ident in one.ids
    }
    if not hidden and not faces:
        return NOBODY
    return Withheld(
        frozenset(ident for person in hidden for ident in person.ids),
        {first: tuple(found) for first, found in forms.items()},
        frozenset(faces),
    )


def _hidden(person: Person, lives: Mapping[str, Life], to: To, on_day: date) -> bool:
    if person.audience != "anyone" and not may_see(person.audience, to, on_day):
        return True
    return to is To.OUTSIDE and lives[person.id].living and not allows(person.consents, Matter.NAME)


def _own_surnames(person: Person, shared: set[str]) -> set[str]:
    """Family names that nobody who may be named bears: they point to the withheld even alone."""
    return {fold(name) for name in person.surnames} - shared


def _forms_of(person: Person, by_id: Mapping[str, Person]) -> set[str]:
    """Every form someone would be found by; a wife also as “Mrs Tom Rourke”."""
    found = sought_forms((*person.forms, person.name), person.calls, person.surnames)
    if person.sex[:1].lower() != "m":
        for spouse in (by_id[one] for one in person.spouses if one in by_id):
            for form in (spouse.name, *spouse.forms):
                found |= {f"mrs {fold(form)}", f"mrs. {fold(form)}"} if "," not in form else set()
    return found


def visible(record: Record, to: To, on_day: date, withheld: Withheld = NOBODY) -> Record:
    """The record as that audience may see it on that day; what is left out is counted in `withheld`."""

    if withheld is NOBODY and _for_anyone(record):
        return record
    of_fields = dict(one.split("=", 1) for one in record.audiences if "=" in one)
    if not all(may_see(one, to, on_day) for one in record.audiences if "=" not in one):
        return _closed(record)

    def allowed(told: StatementView) -> bool:
        return (
            may_see(told.audience, to, on_day)
            and may_see(of_fields.get(told.field, "anyone"), to, on_day)
            and str(told.value.get("id", "")) not in withheld.people
            and not withheld.finds(told.words)
        )

    def nameless(told: StatementView) -> StatementView:
        """The statement without a name in who or what says it; that a narrator or a document said it stays."""
        source = told.source
        if source.said is Said.NARRATOR and told.said_by:
            return replace(told, said_by="") if source.ref in withheld.people else told
        unknown = source.said is Said.NARRATOR and to is To.OUTSIDE
        if source.ref and (unknown or withheld.finds(source.ref)):
            return replace(told, source=Source(source.said))
        return told

    if (
        withheld is NOBODY
        and not record.conflicts
        and all(allowed(one) and nameless(one) is one for one in _told_in(record))
    ):
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
    hidden_mark = record.mark is not None and withheld.finds(record.mark.long)
    return replace(
        record,
        told={name: rows for name, rows in told.items() if rows},
        people=people,
        conflicts=tuple(
            replace(one, told=tuple(map(nameless, one.told))) for one in record.conflicts if all(map(allowed, one.told))
        ),
        found_in="" if hidden_words else record.found_in,
        mark=None if hidden_mark else record.mark,
        withheld=record.withheld + lost + hidden_words + hidden_mark,
        closed_scans=record.closed_scans or _closes_scans(record, withheld),
    )


def _closed(record: Record) -> Record:
    """An item that is not for this audience: its number and mark stay, so that it is counted and can be asked for."""
    lost = sum(len(rows) for rows in record.told.values()) + len(record.people)
    return Record(
        id=record.id,
        number=record.number,
        kind=record.kind,
        mark=record.mark,
        scans=record.scans,
        changed_at=record.changed_at,
        withheld=record.withheld + lost,
        closed_scans=True,
    )


def _for_anyone(record: Record) -> bool:
    """Whether all that is told may go to everybody: most records, told at a glance."""
    if record.audiences or record.conflicts:
        return False
    for rows in record.told.values():
        for told in rows:
            if not _plain(told):
                return False
    return all(_plain(one.told) for one in record.people)


def _plain(told: StatementView) -> bool:
    """For anyone, and not by a narrator whom nobody knows (who may be living)."""
    return told.audience == "anyone" and bool(told.said_by or told.source.said is not Said.NARRATOR)


def _told_in(record: Record) -> list[StatementView]:
    return [told for rows in record.told.values() for told in rows] + [one.told for one in record.people]


def _closes_scans(record: Record, withheld: Withheld) -> bool:
    """Whether picture, back or embedded text carry someone withheld, or someone who may not be shown."""
    not_shown = withheld.people | withheld.hidden_pictures
    if any(one.person in not_shown or withheld.finds(one.told.words) for one in record.shown()):
        return True
    written = [one.words for one in record.all("inscription")] + [scan.embedded for scan in record.scans]
    return any(map(withheld.finds, written))
