"""EDTF expressions as values: dates with their parts as written, their bounds, comparison, plain forms.

Library of Congress, Extended Date/Time Format Specification, 4 February 2019. Bounds ignore qualifiers; an
open or unknown end is unbounded. Seasons are northern meteorological months, winter reaching into the next year.
"""

import datetime
import re
from dataclasses import dataclass
from functools import cache
from typing import NamedTuple


class Day(NamedTuple):
    """A day of the proleptic Gregorian calendar; `year` is astronomical (0 is 1 BC) and may have any size."""

    year: int
    month: int
    day: int

    @property
    def calendar_date(self) -> datetime.date | None:
        """The same day as a `date`, or None outside the years 1 to 9999."""
        return datetime.date(*self) if 1 <= self.year <= 9999 else None

    def __str__(self) -> str:
        sign, year = ("-" if self.year < 0 else ""), abs(self.year)
        return f"{'Y' if year > 9999 else ''}{sign}{year:04d}-{self.month:02d}-{self.day:02d}"


_LENGTHS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)


def month_length(year: int, month: int) -> int:
    """Days in a month (Gregorian)."""
    leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    return 29 if month == 2 and leap else _LENGTHS[month - 1]


SEASONS: dict[int, tuple[int, int]] = {
    21: (3, 3), 22: (6, 3), 23: (9, 3), 24: (12, 3),
    25: (3, 3), 26: (6, 3), 27: (9, 3), 28: (12, 3),
    29: (9, 3), 30: (12, 3), 31: (3, 3), 32: (6, 3),
    33: (1, 3), 34: (4, 3), 35: (7, 3), 36: (10, 3),
    37: (1, 4), 38: (5, 4), 39: (9, 4),
    40: (1, 6), 41: (7, 6),
}  # fmt: skip
"""Sub-year groupings (specification, Level 2): first month and number of months. 29-32 are southern."""


@dataclass(frozen=True, slots=True)
class Date:
    """One date: parts as written (`156X`, `06`, ``), qualifiers by part, and significant digits.

    `marks` holds for year, month and day how it is qualified (`?`, `~`, `%` or nothing); `own` says at which
    part each qualifier was written, for widening.
    """

    year: str
    month: str = ""
    day: str = ""
    time: str = ""
    marks: tuple[str, str, str] = ("", "", "")
    own: tuple[str, str, str] = ("", "", "")
    significant: int = 0
    level: int = 0

    @property
    def bounds(self) -> tuple[Day, Day]:
        """The first and the last real day."""
        return (edge(self, last=False), edge(self, last=True))


@dataclass(frozen=True, slots=True)
class Edtf:
    """A whole expression. `parts` are (first, last) pairs: None on a side is unbounded.

    `kind` is date, interval, one (one of a set) or all (all of a set).
    """

    text: str
    level: int
    kind: str
    parts: tuple[tuple[Date | None, Date | None], ...]

    @property
    def earliest(self) -> Day | None:
        """The first day it can mean, qualifiers ignored; None if unbounded."""
        if len(self.parts) == 1:
            first = self.parts[0][0]
            return edge(first, last=False) if first else None
        firsts = [edge(first, last=False) if first else None for first, _ in self.parts]
        return None if None in firsts else min(day for day in firsts if day)

    @property
    def latest(self) -> Day | None:
        """The last day it can mean, qualifiers ignored; None if unbounded."""
        if len(self.parts) == 1:
            last = self.parts[0][1]
            return edge(last, last=True) if last else None
        lasts = [edge(last, last=True) if last else None for _, last in self.parts]
        return None if None in lasts else max(day for day in lasts if day)

    @property
    def qualified(self) -> bool:
        """Whether any part is uncertain or approximate."""
        return any(date is not None and any(date.marks) for pair in self.parts for date in pair)

    @property
    def single(self) -> Date | None:
        """The date, if it is one date."""
        return self.parts[0][0] if self.kind == "date" else None


def fits(pattern: str, digits: str) -> bool:
    return len(pattern) == len(digits) and all(
        sign in ("X", digit) for sign, digit in zip(pattern, digits, strict=True)
    )


def _years(pattern: str, significant: int) -> tuple[int, int]:
    """The lowest and the highest year of a part as written."""
    if significant:
        value = abs(int(pattern))
        step = 10 ** max(len(str(value)) - significant, 0)
        low, high = value // step * step, value // step * step + step - 1
    else:
        digits = pattern.lstrip("-")
        low, high = int(digits.replace("X", "0")), int(digits.replace("X", "9"))
    return (-high, -low) if pattern.startswith("-") else (low, high)


@cache
def _fitting(pattern: str, last: int) -> tuple[int, ...]:
    """The numbers from 1 to `last` that a pattern of two digits fits."""
    return tuple(number for number in range(1, last + 1) if fits(pattern, f"{number:02d}"))


def edge(date: Date, *, last: bool) -> Day:
    """The first or last real day of a date. Raises ValueError with a sentence if there is none."""
    if date.significant or not date.year.isdigit():
        low, high = _years(date.year, date.significant)
    else:
        low = high = int(date.year)
    if not date.month:
        return Day(high, 12, 31) if last else Day(low, 1, 1)
    if date.month.isdigit():
        month = int(date.month)
        if month > 12:
            return _season(month, high if last else low, last=last)
        if low == high and month >= 1:  # most dates: no digit is open
            if not date.day:
                return Day(low, month, month_length(low, month) if last else 1)
            if date.day.isdigit() and 1 <= int(date.day) <= month_length(low, month):
                return Day(low, month, int(date.day))
    months = _fitting(date.month, 12)
    if not date.day:
        year, month = (high, months[-1]) if last else (low, months[0])
        return Day(year, month, month_length(year, month) if last else 1)
    return _edge_of_days(date, low, high, months, last=last)


def _edge_of_days(date: Date, low: int, high: int, months: tuple[int, ...], *, last: bool) -> Day:
    """The same for a date whose day is told, with open digits or not."""
    days = _fitting(date.day, 31)
    if days[0] > max(month_length(2000, month) for month in months):
        raise ValueError(f"There is no day {date.day} in that month")
    step = -1 if last else 1
    for year in range(high if last else low, (low - 1) if last else (high + 1), step):
        if not fits_year(date.year, year):
            continue
        for month in months[::step]:
            for day in days[::step]:
                if day <= month_length(year, month):
                    return Day(year, month, day)
    raise ValueError(f"There is no day {date.day} of that month in any such year")


def fits_year(pattern: str, year: int) -> bool:
    return "X" not in pattern or fits(pattern.lstrip("-"), f"{abs(year):04d}")


def _season(code: int, year: int, *, last: bool) -> Day:
    month, months = SEASONS[code]
    if not last:
        return Day(year, month, 1)
    end = month + months - 1
    year, end = (year + 1, end - 12) if end > 12 else (year, end)
    return Day(year, end, month_length(year, end))


def plain_iso(edtf: Edtf) -> str | None:
    """YYYY, YYYY-MM or YYYY-MM-DD if it is one calendar date (qualifiers left off), else None."""
    date = edtf.single
    if date is None or date.significant or date.time or not re.fullmatch(r"\d{4}", date.year, re.ASCII):
        return None
    if not date.month.isdigit():
        return date.year if not date.month else None
    if int(date.month) > 12 or (date.day and not date.day.isdigit()):
        return None
    return "-".join(part for part in (date.year, date.month, date.day) if part)


def iso_range(edtf: Edtf) -> str | None:
    """`first/last` as ISO days if it is bounded on both sides within four-digit years, else None."""
    first, last = edtf.earliest, edtf.latest
    if first is None or last is None or not (0 <= first.year <= 9999 and 0 <= last.year <= 9999):
        return None
    return f"{first}/{last}"
