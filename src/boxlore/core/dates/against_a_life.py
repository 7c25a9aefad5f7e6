"""A picture's date beside a life: two ranges for each date, and three answers.

**core** is what a date says, qualifiers ignored; **possible** is the core widened on the parts that are
qualified: `~` or `?` five years either side of a year or a decade (Yale, *Rhode Island Furniture Archive*: “ca.”
is five years either side), three months of a month, one day of a day, and `%` twice that (ours).
A date is called wrong only if both it and the life's date are unqualified and cannot meet; everything less sure
is a question. A picture after a death is always a question: a copy, a grave, a late print.
"""

from enum import StrEnum

from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.edtf_values import Date, Day, Edtf, month_length

DayRange = tuple[Day | None, Day | None]
"""First and last day; None is unbounded."""

YEARS, MONTHS, DAYS = 5, 3, 1
_BOTH_WINTERS = ("24", "28", "30")
"""Seasons that reach over New Year: people mean either of the two."""


class Comparison(StrEnum):
    """What comes of comparing two dates."""

    ERROR = "error"
    ASK = "ask"
    SILENT = "silent"


def core(edtf: Edtf) -> DayRange:
    """What a date says, qualifiers ignored; a season over New Year may be either one."""
    return _over(edtf, widened=False)


def possible(edtf: Edtf) -> DayRange:
    """The core, widened on the qualified parts only."""
    return _over(edtf, widened=True)


def before_birth(picture: Edtf, born: Edtf) -> Comparison:
    """Whether a picture of someone lies before their birth."""
    if not _before(core(picture), core(born)):
        return Comparison.SILENT
    return Comparison.ASK if picture.qualified or born.qualified else Comparison.ERROR


def after_death(picture: Edtf, died: Edtf) -> Comparison:
    """Whether a picture of someone lies after their death: asked, never refused."""
    return Comparison.ASK if _before(core(died), core(picture)) else Comparison.SILENT


def _before(first: DayRange, second: DayRange) -> bool:
    return first[1] is not None and second[0] is not None and first[1] < second[0]


def _over(edtf: Edtf, *, widened: bool) -> DayRange:
    firsts = [_edge(first, last=False, widened=widened) if first else None for first, _ in edtf.parts]
    lasts = [_edge(last, last=True, widened=widened) if last else None for _, last in edtf.parts]
    first = None if None in firsts else min(day for day in firsts if day)
    last = None if None in lasts else max(day for day in lasts if day)
    return first, last


def _edge(date: Date, *, last: bool, widened: bool) -> Day:
    day = date.bounds[1 if last else 0]
    way = 1 if last else -1
    if date.month in _BOTH_WINTERS and not last:
        day = Day(day.year - 1, day.month, day.day)
    if not widened:
        return day
    years, months, days = (_times(mark) * size for mark, size in zip(date.own, (YEARS, MONTHS, DAYS), strict=True))
    count = day.year * 12 + day.month - 1 + way * (12 * years + months)
    year, month = count // 12, count % 12 + 1
    whole_month = day.day == month_length(day.year, day.month)
    length = month_length(year, month)
    moved = Day(year, month, length if last and whole_month else min(day.day, length))
    return _shift(moved, way * days)


def _times(mark: str) -> int:
    return {"": 0, "%": 2}.get(mark, 1)


def _shift(day: Day, days: int) -> Day:
    if days == 0 or not 1 <= day.year < 9999:
        return day
    return from_number(to_number(*day) + days)
