"""A claim: one thing that somebody or something says, as far as it bears on days. Nothing is told anew here.

A clue reader makes claims of what is told; each keeps the words and who says so, so that everything that follows can be
shown with its reasons. Days are numbers of days (`even_years`), named by `of_item` and its like.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.against_a_life import possible
from boxlore.core.dates.edtf_values import Day, Edtf
from boxlore.core.evidence.even_years import YEAR, number_of
from boxlore.core.evidence.network import ORIGIN, Limit
from boxlore.core.statements import SURENESS, Sure

Choice = tuple[int, int]
"""The first and the last number of days of one of several spans."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Claim:
    """`words` say it in a plain sentence's part, `source` who says so, or the publication. `choices` are spans of
    which the day `chosen` lies in one. `teller` is the id of the person who told it, empty where nobody did;
    `statement` that of what was told, empty where it is no statement."""

    words: str
    source: str
    sure: Sure = Sure.SURE
    limits: tuple[Limit, ...] = ()
    chosen: str = ""
    choices: tuple[Choice, ...] = ()
    teller: str = ""
    statement: str = field(default="", compare=False)


def of_item(ident: str) -> str:
    """The day on which an item's picture was taken."""
    return f"item {ident}"


def is_of_an_item(day: str) -> bool:
    return day.startswith(of_item(""))


def of_birth(ident: str) -> str:
    return f"birth {ident}"


def of_death(ident: str) -> str:
    return f"death {ident}"


def of_event(ident: str) -> str:
    return f"event {ident}"


def not_before(day: str, number: int) -> Limit:
    return Limit(ORIGIN, day, -number)


def not_after(day: str, number: int) -> Limit:
    return Limit(day, ORIGIN, number)


def after(later: str, earlier: str, least: int | None, most: int | None) -> tuple[Limit, ...]:
    """`later` comes `least` to `most` days after `earlier`, None for no bound."""
    from_below = (Limit(earlier, later, -least),) if least is not None else ()
    return (*from_below, Limit(later, earlier, most)) if most is not None else from_below


def years_after(later: str, earlier: str, least: int, most: int) -> tuple[Limit, ...]:
    """The same in years: from the day so many years on to the last day before `most` years are full."""
    return after(later, earlier, least * YEAR, most * YEAR - 1)


def weaker(first: Sure, second: Sure) -> Sure:
    return min(first, second, key=SURENESS.__getitem__)


def dated(claim: Claim, day: str, edtf: Edtf, *, is_pictured: bool = True, beside: int = 0) -> Claim:
    """The claim, with what a date says of a day: qualified parts widened, one of a set as choices, and all of it by the
    days that something may lie `beside` it. What the teller doubts is a guess.

    A date that has neither a beginning nor an end limits nothing. What `is_pictured` was so in one of the photographic
    years, where no year is told; somebody may have been born or have died before them.
    """
    if any(mark in "?%" for pair in edtf.parts for date in pair if date for mark in date.marks if mark):
        claim = replace(claim, sure=Sure.GUESS)
    parts = edtf.parts if edtf.kind == "one" else ()
    spans = [_numbers(replace(edtf, kind="interval", parts=(part,))) for part in parts]
    if len(spans) > 1 and all(None not in span for span in spans):
        choices = tuple(sorted((first, last) for first, last in spans if first is not None and last is not None))
        return replace(claim, chosen=day, choices=choices)
    if choices := _any_year(edtf, is_pictured=is_pictured):
        return replace(claim, chosen=day, choices=choices)
    first, last = _numbers(edtf)
    limits = [not_before(day, first - beside)] if first is not None else []
    limits += [not_after(day, last + beside)] if last is not None else []
    return replace(claim, limits=(*claim.limits, *limits))


def any_of(claim: Claim, day: str, meant: Sequence[Edtf]) -> Claim:
    """The claim, that a day is in one of several dates; it limits nothing where one of them has no end. Where two
    seasons over New Year may be meant both are among them, so each is the one that began in its year."""
    spans: list[Choice] = []
    for edtf in meant:
        one = dated(Claim(words="", source=""), day, edtf)
        first, last = _numbers(edtf) if edtf.qualified else (_number(edtf.earliest), _number(edtf.latest))
        if one.choices:
            spans += one.choices
        elif first is None or last is None:
            return claim
        else:
            spans.append((first, last))
    return replace(claim, chosen=day, choices=tuple(sorted(spans)))


def _numbers(edtf: Edtf) -> tuple[int | None, int | None]:
    first, last = possible(edtf)
    return _number(first), _number(last)


def _number(day: Day | None) -> int | None:
    return number_of(*day) if day is not None and 0 < day.year < 9999 else None


PHOTOGRAPHIC_YEARS = range(1826, 2100)
"""Years in which a photograph can have been taken: the oldest kept is of 1826 or 1827 (Harry Ransom Center, *The Niépce
Heliograph*)."""


def _any_year(edtf: Edtf, *, is_pictured: bool) -> tuple[Choice, ...]:
    """The spans of a month or a day whose year is not told or not told whole (`XXXX-07-04`, `192X-22`).

    Of what need not have been pictured, only where its century is told.
    """
    date = edtf.single
    if date is None or "X" not in date.year or not date.month.isdigit():
        return ()
    if not is_pictured and not date.year[:2].isdigit():
        return ()
    behind = edtf.text.lstrip("?~%")[4:]
    spans: list[Choice] = []
    for year in PHOTOGRAPHIC_YEARS if is_pictured else range(1, PHOTOGRAPHIC_YEARS.stop):
        if all(sign in ("X", digit) for sign, digit in zip(date.year, f"{year:04d}", strict=True)):
            checked = standard.check(f"{year:04d}{behind}")
            if checked.state is standard.State.VALID:
                first, last = _numbers(standard.parse(f"{year:04d}{behind}"))
                spans += [(first, last)] if first is not None and last is not None else []
    return tuple(spans)
