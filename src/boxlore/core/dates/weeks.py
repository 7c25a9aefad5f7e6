"""“The week of 3 May 1938”, “the weekend of 14 June 1936”: all days that a week or a weekend told by one day may have.

A week begins on Monday (ISO 8601, 2.2.8) or on Sunday, as the teller reckons: the days of both are given. One that is
told by its Monday, or by the day on which it began or ended, has seven days.
"""

import re

from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.context import NoSuchDate
from boxlore.core.dates.edtf_values import month_length

OF_A_DAY = ("week", "weekend", "week_from", "week_to")
"""Units that are told by one of their days."""

_DAY = re.compile(r"(\d{4})[?~%]?-[?~%]?(\d\d)-[?~%]?(\d\d)", re.ASCII)
_MONDAY, _FRIDAY, _SATURDAY, _SUNDAY = 0, 4, 5, 6


def stretch_of(text: str, unit: str, *, feast: bool = False) -> str:
    """The days of a week or weekend, one of them; what is no single day (a month, a day without its year) is itself.
    The weekend of a feast on a Sunday or a Monday is from Friday to Monday (common practice, no source). Raises
    NoSuchDate, with both weekends beside it, for the weekend of a day in the middle of a week."""
    match = _DAY.fullmatch(text)
    if match is None:
        return text
    day = to_number(*map(int, match.groups()))
    first, last = _weekend(day) if unit == "weekend" else _week(day, unit)
    if unit == "weekend" and feast and last == day:
        first, last = first - 1, last + ((day - 1) % 7 == _SUNDAY)
    return _days(first, last)


def _week(day: int, unit: str) -> tuple[int, int]:
    weekday = (day - 1) % 7
    if unit == "week_from" or (unit == "week" and weekday == _MONDAY):
        return day, day + 6
    if unit == "week_to":
        return day - 6, day
    from_monday, from_sunday = day - weekday, day - (weekday + 1) % 7
    return min(from_monday, from_sunday), max(from_monday, from_sunday) + 6


def days_that_fit(told: str, weekday: int) -> tuple[str, ...]:
    """Where a day was no such day of the week: the nearest one that was, and the same day of the nearest years in which
    it was. A slip is mostly of a day, or of the year."""
    year, month, day = (int(part) for part in told.split("-"))
    number = to_number(year, month, day)
    nearest = number + (weekday - (number - 1) + 3) % 7 - 3
    there = (_year_that_fits(year, step, month, day, weekday) for step in (-1, 1))
    return (str(from_number(nearest)), *(f"{other_year:04d}-{month:02d}-{day:02d}" for other_year in there))


def nth_weekday(days: str, weekday: int, nth: int) -> str:
    """“The first Friday of Lent”: the how-manieth such day of the week (-1: the last) from one day to another. Raises
    NoSuchDate."""
    first, last = (to_number(*map(int, day.split("-"))) for day in days.split("/"))
    fitting = [day for day in range(first, last + 1) if (day - 1) % 7 == weekday]
    if nth > len(fitting):
        raise NoSuchDate("There are not so many of these days. Which is meant?", (days,))
    return str(from_number(fitting[nth - 1] if nth > 0 else fitting[-1]))


def weekdays_within(days: str, weekday: int) -> str:
    """“Thursday, early August 1914”: such days of the week among one of some days; what is no such set (a month of
    which nobody says a quarter) is itself."""
    ends = days.strip("[]").replace("~", "").split("..")
    if len(ends) != 2:
        return days
    first, last = (to_number(*map(int, end.split("-"))) for end in ends)
    fitting = [str(from_number(day)) for day in range(first, last + 1) if (day - 1) % 7 == weekday]
    return fitting[0] if len(fitting) == 1 else f"[{','.join(fitting)}]"


def _year_that_fits(year: int, step: int, month: int, day: int, weekday: int) -> int:
    """The nearest year before (-1) or after (1) in which a day of the year is such a day of the week: within 12 years,
    or within 40 for 29 February."""
    while True:
        year += step
        if day <= month_length(year, month) and (to_number(year, month, day) - 1) % 7 == weekday:
            return year


def _weekend(day: int) -> tuple[int, int]:
    """Saturday and Sunday, with the Friday or the Monday that was told."""
    weekday = (day - 1) % 7
    saturday = day - (weekday - _SATURDAY if weekday != _MONDAY else 2)
    if weekday in (_MONDAY, _FRIDAY, _SATURDAY, _SUNDAY):
        return min(day, saturday), max(day, saturday + 1)
    beside = (_days(saturday - 7, saturday - 6), _days(saturday, saturday + 1))
    raise NoSuchDate("That day is in no weekend. Which one is meant?", beside)


def _days(first: int, last: int) -> str:
    return f"[{from_number(first)}..{from_number(last)}]"
