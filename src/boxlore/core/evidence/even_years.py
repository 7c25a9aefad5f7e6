"""Days counted in years of 366 days each, so that “five years after” is the same number from every day.

A network of days knows differences alone (`network`), and a year is 365 days or 366: a limit in years would have to
allow for both, and a day too many at the turn of a year widens what is worked out by a whole year. Most limits of lives
are told in years. So every year has the 366 days of a leap year here, of which 29 February stays empty in the others.
What is told in days, weeks or months may cross one such day a year (`days`).
"""

from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.edtf_values import Day

YEAR = 366
_LEAP = 2000
_NEW_YEAR = to_number(_LEAP, 1, 1)
_EMPTY = to_number(_LEAP, 2, 29) - _NEW_YEAR


def number_of(year: int, month: int, day: int) -> int:
    return year * YEAR + to_number(_LEAP, month, day) - _NEW_YEAR


def first_day(number: int) -> Day:
    """The day of a number, which begins something: the empty day is 1 March."""
    return _day(number, 1)


def last_day(number: int) -> Day:
    """The day of a number, which ends something: the empty day is 28 February."""
    return _day(number, -1)


def _day(number: int, way: int) -> Day:
    year, place = divmod(number, YEAR)
    if place == _EMPTY and not _has_leap_day(year):
        place += way
    _, month, day = from_number(_NEW_YEAR + place)
    return Day(year, month, day)


def _has_leap_day(year: int) -> bool:
    return year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)


def days(count: int) -> int:
    """The most that a number of real days can come to here: each year has at most one empty day."""
    return count + count // 365 + 1 if count else 0
