"""Ages that are told (“about five years old”), compared with the person's birth and the picture's date.

Derived: an age in whole years is the time from birth to picture, give or take a year for the birthday; “about” allows
two years more (common practice, no source). The age is taken to be that of the person named last before it in the
same sentence, else of the only person in the picture; if there are several, nothing is said, nor where anything else
stands between (“the dog was five years old”, “my brother Jack, aged five”, “in her 5 year old coat”), or an age is
denied or compared. An age in months, weeks or days is not read.

    age    = [about] ("age" / "aged" / "at age" / "at the age of") [about] number
           / "look" ["s" / "ed" / "ing"] about number
           / [about] number ("years old" / "year-old" / "years of age" / ...)
    about  = "about" / "around" / "some" / "perhaps" / "nearly" / "almost"
    number = digits / "one" ... "twenty"

Example: a picture of 1912 with the story `Aino, about five years old`; if Aino was born in 1899, she was 12 or 13 and
it is asked which is right.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from boxlore.core.dates import against_a_life
from boxlore.core.dates.anniversary import years_on
from boxlore.core.dates.calendars import MEAN_YEAR, to_number
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.table import OWN
from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.people.person import Person
from boxlore.core.records.item_record import Record, StatementView
from boxlore.core.records.living import BornFrom
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
    + r"|look(?:s|ed|ing)? (?P<about3>about |around )"
    + _NUMBER.format("looks")
    + r"|"
    + _NUMBER.format("before")
    + r"[ -](?:years?[ -]old|year-old|years? of age))\b(?! years? (?:older|younger)| (?:months?|weeks?|days?|hours?)\b)"
)
_OF_A_THING = re.compile(r"\b(?:in|on|at) (?:an?|the|this|that|his|her) $")
"""Words right before an age that is of a thing: “in a 100 years old house”."""
_OF_WHAT_FOLLOWS = re.compile(
    r",? (?:(?:was|is|looks) )?(?:the|an?|my|our|his|her|their|that|this) "
    r"(?!(?:day|time|year|summer|winter|last|first)\b)\w"
)
"""How it goes on behind an age that leads its sentence and is of what follows: “ten years old, the pony was”."""
_OF_SOMEBODY_ELSE = re.compile(
    r"\b(?:beside|behind|with|near|by|for|to|from|than|like|holding|hugging|next to|in front of|and|"
    r"(?<!picture )(?<!photo )(?<!photograph )(?<!portrait )(?<!snap )of)\s*$"
)
"""Words right before a name that make somebody else the one of whom something is told: “the man beside Ivy”."""
_OF_THE_TELLER = re.compile(r"\bi (?:was|am|must|may|might|would|will|could|look|looked)\b")
_PLAIN = frozenset(
    "a about all already always and around as at be been but could even for had has have he her here him his i in is "
    "just looks looked may me might must of on only perhaps photo photograph picture she still taken that the then "
    "there this was were when who will would year".split()
)
"""Words that may stand between a name and the age of its bearer: none of them names anybody or anything else."""
_TOLD = ("story", "inscription", "occasion", "title", "note")


@dataclass(frozen=True, slots=True)
class AgeTold:
    """An age found in words: the years told, how many more or fewer they may be, and where in the words it stands."""

    years: int
    slack: int
    at: int
    words: str


def ages_told(record: Record, people: Mapping[str, Person]) -> Iterator[Finding]:
    """A finding for each age told of an item that does not fit the person's birth and the item's date."""
    date_view = record.first("date")
    span = _days(date_view.date) if date_view else None
    if span is None:
        return
    for _, age, person in whose_ages(record, people):
        if (born := _days(person.born)) is None:
            continue
        fewest, oldest = (span[0] - born[1]) / MEAN_YEAR, (span[1] - born[0]) / MEAN_YEAR
        if age.years + 1 + age.slack < fewest or age.years - age.slack > oldest:
            yield _age_finding(record, person, age, max(int(fewest), 0), int(oldest))


def whose_ages(record: Record, people: Mapping[str, Person]) -> Iterator[tuple[StatementView, AgeTold, Person]]:
    """Every age that is told in the words of an item, with the person whose it is, where that is clear."""
    registered = [person for shown in record.shown() if (person := people.get(shown.person)) is not None]
    for name in (*_TOLD, *(name for name in record.told if name.startswith(OWN))):
        for view in record.all(name):
            for age in _ages(view.words):
                if (person := whose(view.words, age.at, registered, age.at + len(age.words))) is not None:
                    yield view, age, person


ABOUT = ((12, 3), (19, 4), (39, 8), (200, 12))
"""Up to an age in years, how many years more somebody may be who is said to look about so old: as wide as an estimate
may be wrong (common practice, no source), for from it follows that somebody may live."""


def born_from_ages(record: Record, people: Mapping[str, Person]) -> Iterator[tuple[str, BornFrom]]:
    """By the id of each of whom an age is told in a dated picture: the earliest day on which she can have been born."""
    view = record.first("date")
    taken = view.date.earliest_day if view is not None and view.date is not None else None
    if taken is None:
        return
    for _, age, person in whose_ages(record, people):
        older = next((years for oldest, years in ABOUT if age.years <= oldest), ABOUT[-1][1]) if age.slack else 0
        if (born := years_on(taken, -(age.years + 1 + older))) is not None:
            because = f"“{age.words.strip()}” is told of {record.number}, {record.date_display}"
            yield person.id, BornFrom(born, because)


def _ages(words: str) -> Iterator[AgeTold]:
    folded = fold(words)
    for match in _AGE.finditer(folded):
        text = match["after"] or match["looks"] or match["before"]
        years = int(text) if text.isdigit() else _WORDS.index(text) + 1
        about = match["about"] or match["about2"] or match["about3"]
        yield AgeTold(years, 2 if about else 0, match.start(), match[0])


def whose(words: str, at: int, registered: list[Person], ends: int = 0) -> Person | None:
    """The person of whom something is told at a place in words (see the top of the file), up to where it `ends` there;
    None if that is not clear."""
    folded = fold(words)
    before = re.split(r"[.;!?]", folded[:at])[-1]
    if _OF_A_THING.search(before) or (ends and not before.strip() and _OF_WHAT_FOLLOWS.match(folded[ends:])):
        return None
    named = [
        (match.end(), person)
        for person in registered
        for call in (*person.calls, person.name)
        for form in (call, call.split()[0] if call else "")
        if form
        for match in re.finditer(rf"(?<!\w){re.escape(fold(form))}(?!\w)", before)
    ]
    ends, person = max(named, key=lambda pair: pair[0], default=(0, registered[0] if len(registered) == 1 else None))
    if person and ends and _OF_SOMEBODY_ELSE.search(_up_to_the_name(before, ends, person)):
        return None
    if _OF_THE_TELLER.search(before[ends:]):
        return None  # it is hers or his, and who that is these words do not say
    return person if _PLAIN.issuperset(re.findall(r"\w+", before[ends:])) else None


def _up_to_the_name(before: str, ends: int, person: Person) -> str:
    """What stands before the name that ends there."""
    forms = {fold(form) for call in (*person.calls, person.name) for form in (call, call.split()[0] if call else "")}
    return min((before[: ends - len(form)] for form in forms if form and before[:ends].endswith(form)), key=len)


def _days(date: DateReading | None) -> tuple[int, int] | None:
    """The first and the last day that a date may mean, as numbers of days; None if either is open."""
    if date is None or date.edtf is None:
        return None
    first, last = against_a_life.possible(date.edtf)
    if first is None or last is None:
        return None
    return to_number(*first), to_number(*last)


def _age_finding(record: Record, person: Person, age: AgeTold, youngest: int, oldest: int) -> Finding:
    then = f"{youngest} to {oldest}" if youngest != oldest else str(oldest)
    if oldest < 0:
        then = "not yet born"
    message = f"“{age.words.strip()}” is told of {person.name}, who was {then} ({record.date_display}): which is it?"
    source = "derived; one year for the birthday, two more for “about”: common practice, no source"
    because = [f"born {person.born.display}"] if person.born else []
    return make_finding("date.age-told", Severity.ASK, message, source, *because)
