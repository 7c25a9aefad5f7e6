"""The same day in another year."""

from calendar import isleap
from datetime import MAXYEAR, MINYEAR, date


def years_on(day: date, years: int) -> date | None:
    """The same day so many years later (earlier, where `years` is negative); None outside the years 1 to 9999.

    29 February becomes 28 February in a common year (common practice, no source).
    """
    year = day.year + years
    if not MINYEAR <= year <= MAXYEAR:
        return None
    leap_day = (day.month, day.day) == (2, 29)
    return day.replace(year=year, day=28 if leap_day and not isleap(year) else day.day)
