"""What is left of a date where days are told at which it was not: “not 1940, but after Dunkirk”.

A choice never holds what the teller ruled out: what lies within it is none, and a stretch about it is cut.
"""

from collections.abc import Iterable

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.edtf_values import Day, month_length
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import the_one_beside


def without(told: str, denied: Iterable[str]) -> tuple[str, ...]:
    """What is left of EDTF, each stretch by itself; none where all of it is ruled out."""
    left: tuple[str, ...] = (told,)
    for text in denied:
        left = tuple(part for whole in left for part in _without_one(whole, text))
    return left


def _without_one(told: str, denied: str) -> tuple[str, ...]:
    if told[0] in "[{" and ".." not in told:
        members = [text for text in told[1:-1].split(",") if _without_one(text, denied)]
        return (f"{told[0]}{','.join(members)}{told[-1]}",) if len(members) > 1 else tuple(members)
    whole, gone = standard.parsed(told), standard.parsed(denied)
    first, last = whole.earliest, whole.latest
    if gone.earliest is None or gone.latest is None or "XXXX" in told + denied:
        return (told,)
    if (last is not None and last < gone.earliest) or (first is not None and gone.latest < first):
        return (told,)
    left: list[str] = []
    if (first or _FIRST) < gone.earliest:
        left.append(stretch(first, _next(gone.earliest, -1)))
    if gone.latest < (last or _LAST):
        left.append(stretch(_next(gone.latest, 1), last))
    return tuple(left)


_FIRST, _LAST = Day(1, 1, 1), Day(9999, 12, 31)
"""The days before and after which there is none of EDTF."""


def _next(day: Day, side: int) -> Day:
    return from_number(to_number(*day) + side)


def stretch(first: Day | None, last: Day | None) -> str:
    """The days from one to another as one of a set, each end as short as it can be."""
    begin, end = _short(first, start=True), _short(last, start=False)
    if first and last and {len(begin), len(end)} == {len("1938"), len("1938-04")}:
        begin, end = f"{first.year:04d}-{first.month:02d}", f"{last.year:04d}-{last.month:02d}"
    return begin if begin == end else f"[{begin}..{end}]"


def _short(day: Day | None, *, start: bool) -> str:
    if day is None:
        return ""
    if (day.month, day.day) == ((1, 1) if start else (12, 31)):
        return f"{day.year:04d}"
    if day.day == (1 if start else month_length(day.year, day.month)):
        return f"{day.year:04d}-{day.month:02d}"
    return str(day)


def years_beside(denied: tuple[str, ...], tokens: list[Token], words: str) -> tuple[str, ...]:
    """The years that may be meant where only one year is ruled out and a year is spoken of beside it: “not 1945, this
    is the year after”, “não foi em 1950, foi no ano seguinte”. None where no word says on which side of it."""
    told = [str(sense.value) for token in tokens for sense in token.senses if sense.kind == "year"]
    years = denied or tuple(told)  # “nicht 1945, sondern im Jahr danach”: put right by what is no date
    year = years[0] if len(years) == 1 else ""
    if not (len(year) == len("1945") and year.isdigit() and any(map(_is_year, tokens[-2:]))):
        return ()
    sides = {_SIDES[sense.kind] for token in tokens for sense in token.senses if sense.kind in _SIDES}
    side_of = the_one_beside()  # “seguinte”
    sides |= {side_of[name] for token in tokens if (name := words[token.start : token.end].casefold()) in side_of}
    return tuple(f"{int(year) + side:04d}" for side in sides) if len(sides) == 1 else ()


_SIDES = {"before": -1, "before_behind": -1, "after": 1, "after_behind": 1, "beyond_later": 1, "beyond_earlier": -1}


def _is_year(token: Token) -> bool:
    return any(sense.kind == "unit" and sense.value == "year" for sense in token.senses)
