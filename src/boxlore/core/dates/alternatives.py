"""What dates say together that stand as alternatives: one day in two calendars, one of another year, a day that two
months share, one season of two years."""

import itertools

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import from_julian, julian_month_length
from boxlore.core.dates.context import DateContext, NoSuchDate
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.writing import written

LAST_JULIAN = 1923
"""The last year in which a land changed from the Julian calendar to the Gregorian one: Greece (from memory)."""


def in_two_calendars(dates: list[Partial], context: DateContext, pick: int) -> str:
    """`29 March / 11 April 1905`: the Gregorian day, where that is the second date and the first the same day in the
    Julian calendar; else empty. Of `25 December / 7 January 1911` the first is of the year before. Raises NoSuchDate
    where no land had the Julian calendar any more."""
    if len(dates) != 2 or not all(_is_plain_day(date) for date in dates):
        return ""
    julian, gregorian = dates
    day = written(gregorian, context, pick)
    for year in (int(julian.year), int(julian.year) - 1) if julian.year_from_right else (int(julian.year),):
        length = julian_month_length(year, julian.month)
        if julian.day <= length and str(from_julian(year, julian.month, julian.day)) == day:
            if int(day[:4]) <= LAST_JULIAN:
                return day
            both = ",".join(written(date, context, pick) for date in dates)
            raise NoSuchDate("Is that one day in two calendars, or one of two days?", (day, f"[{both}]"))
    return ""


def _is_plain_day(date: Partial) -> bool:
    told = date.day and date.month and date.year.isdigit()
    return bool(told) and not (date.short or date.mark or date.calendar)


def in_order(dates: list[Partial], context: DateContext, pick: int) -> None:
    """“Christmas or New Year 1938”: where the year was said with the later of two, the earlier may be of another
    year."""
    for left, right in itertools.pairwise(dates):
        if left.year_from_right and right.year and not right.year_from_right:
            first, last = (standard.parse(written(date, context, pick)) for date in (left, right))
            if first.earliest and last.earliest and first.earliest > last.earliest:
                raise NoSuchDate("Of which year is the first of these?", (first.text, last.text))
        if left.year.isdigit() and right.year_from_left and right.year == left.year:
            first, last = (standard.parse(written(date, context, pick)) for date in (left, right))
            if first.text.endswith("-12-31") and last.text.endswith("-01-01"):
                right.year = right.shifted(1).year  # “New Year's Eve 1958, or New Year's Day”


def with_shared_day(dates: list[Partial]) -> list[Partial]:
    """The dates with the days of the first month in each month behind it: “3 or 4 February or March 1922” may be four
    days. None where no day is told before such a month, or every month has its own."""
    days = [date for date in dates if date.month and (date.day or date.nth)]
    months = [date for date in dates if date.month and not (date.day or date.nth)]
    if not days or not months or dates[: len(days)] != days or not all(day.year_from_right for day in days):
        return []
    shared = list(days)
    for month in months:
        for day in days:
            date = day.copy()
            date.take_month(month)
            date.year = month.year
            shared.append(date)
    return shared


def with_years(first: Partial, last: Partial) -> Partial:
    """One season of two years: `winter 1938-1939`, `winter 41 to 42`."""
    season = first.copy()
    season.years, season.year = (int(first.year), int(last.year)), ""
    if len(first.year) == len(last.year) == 2:
        season.years, season.assumed = (1900 + int(first.year), 1900 + int(last.year)), True
    return season


def of_two_years(first: Partial, last: Partial) -> Partial | None:
    """`winter '46/'47`: one season, where the years follow each other."""
    same = first.season and first.season == last.season and first.year.isdigit() and last.year.isdigit()
    follow = same and len(first.year) == len(last.year) and int(last.year) == int(first.year) + 1
    return with_years(first, last) if follow else None
