"""“About five years old”: an age that is told, beside the birth and the picture's date.

Derived: an age in whole years is the years from birth to picture, one either way for a birthday; “about” gives two
more (common practice, no source). Whose age it is: whoever is named before it in the same sentence, else the only
person in the picture; otherwise nobody is asked about.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from boxlore.core.dates import lifetime
from boxlore.core.dates.calendars import to_number
from boxlore.core.dates.reading import DateReading
from boxlore.core.findings import Finding, Severity
from boxlore.core.people.person import Person
from boxlore.core.records.in_force import Record, StatementView
from boxlore.core.statements import fold

_WORDS = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen "
    "eighteen nineteen twenty"
).split()
_NUMBER = rf"(?P<{{0}}>\d{{{{1,3}}}}|{'|'.join(_WORDS)})"
_AGE = re.compile(
    r"\b(?P<about>about |around |some |perhaps |nearly |almost )?(?:"
    + r"(?:aged?|at the age of|at age) (?P<about2>about |around )?"
    + _NUMBER.format("after")
    + r"|"
    + _NUMBER.format("before")
    + r"[ -](?:years?[ -]old|year-old|years? of age))\b"
)
_TOLD = ("story", "inscription", "occasion", "title", "note")


@dataclass(frozen=True, slots=True)
class _Age:
    years: int
    slack: int
    at: int
    words: str


def ages_told(record: Record, people: Mapping[str, Person]) -> Iterator[Finding]:
    """Ages in what is told of an item that do not fit a birth and the item's date."""
    taken = record.first("date")
    span = _days(taken.date) if taken else None
    if span is None:
        return
    known = [person for one in record.shown() if (person := people.get(one.person)) is not None]
    for name in _TOLD:
        for told in record.all(name):
            for age in _ages(told.words):
                person = _whose(told, age, known)
                born = _days(person.born) if person else None
                if person is None or born is None:
                    continue
                least, most = (span[0] - born[1]) / 365.2425, (span[1] - born[0]) / 365.2425
                if age.years + 1 + age.slack < least or age.years - age.slack > most:
                    yield _finding(record, person, age, max(int(least), 0), int(most))


def _ages(words: str) -> Iterator[_Age]:
    folded = fold(words)
    for match in _AGE.finditer(folded):
        text = match["after"] or match["before"]
        years = int(text) if text.isdigit() else _WORDS.index(text) + 1
        about = match["about"] or match["about2"]
        yield _Age(years, 2 if about else 0, match.start(), match[0])


def _whose(told: StatementView, age: _Age, known: list[Person]) -> Person | None:
    before = re.split(r"[.;!?]", fold(told.words)[: age.at])[-1]
    named = [
        (before.rfind(fold(form)), one)
        for one in known
        for call in (*one.calls, one.name)
        for form in (call, call.split()[0] if call else "")
        if form and re.search(rf"(?<!\w){re.escape(fold(form))}(?!\w)", before)
    ]
    if named:
        return max(named, key=lambda pair: pair[0])[1]
    return known[0] if len(known) == 1 else None


def _days(date: DateReading | None) -> tuple[int, int] | None:
    if date is None or date.edtf is None:
        return None
    first, last = lifetime.possible(date.edtf)
    if first is None or last is None:
        return None
    return to_number(*first), to_number(*last)


def _finding(record: Record, person: Person, age: _Age, least: int, most: int) -> Finding:
    were = f"{least} to {most}" if least != most else str(most)
    if most < 0:
        were = "not yet born"
    return Finding(
        rule="date.age-told",
        severity=Severity.ASK,
        message=f"“{age.words.strip()}” is told of {person.name}, who was {were} ({record.date_display}): which is it?",
        because=(f"born {person.born.display}",) if person.born else (),
        source="derived; one year for the birthday, two more for “about”: common practice, no source",
    )
