"""What dates say together that stand as alternatives: one day in two calendars, one of another year, a day that two
months share, one season of two years."""

import itertools

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import from_julian, julian_month_length, to_number
from boxlore.core.dates.context import DateContext, NoSuchDate
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.writing import written

LAST_JULIAN = 1923
"""The last year in which a land changed from the Julian calendar to the Gregorian one: Greece (from memory)."""

MOST_SLIP = 2
"""So many days apart two days may still have been meant as one in two calendars."""

NEAR_BY = 62
"""So many days from a date another one is meant to be near it: about two months."""


def in_two_calendars(dates: list[Partial], context: DateContext, pick: int) -> str:
    """`29 March / 11 April 1905`: the Gregorian day, where that is one of the dates and the other the same day in the
    Julian calendar; else empty. Of `25 December / 7 January 1911` the first is of the year before. Raises NoSuchDate
    where no land had the Julian calendar any more."""
    if len(dates) != 2 or not all(_is_plain_day(date) for date in dates):
        return ""
    first, last = dates
    return _of_two(first, last, context, pick) or _of_two(last, first, context, pick)


def _of_two(julian: Partial, gregorian: Partial, context: DateContext, pick: int) -> str:
    day = written(gregorian, context, pick)
    _ask_where_it_does_not_tally(julian, gregorian, day)
    for year in (int(julian.year), int(julian.year) - 1) if julian.year_from_right else (int(julian.year),):
        length = julian_month_length(year, julian.month)
        if julian.day <= length and str(from_julian(year, julian.month, julian.day)) == day:
            if int(day[:4]) <= LAST_JULIAN:
                return day
            both = ",".join(written(date, context, pick) for date in (julian, gregorian))
            raise NoSuchDate("Is that one day in two calendars, or one of two days?", (day, f"[{both}]"))
    return ""


def _ask_where_it_does_not_tally(julian: Partial, gregorian: Partial, day: str) -> None:
    """`12 (24) May 1903`: two days of one month as far apart as the calendars are, but for a slip of up to two days.
    Raises NoSuchDate with the day that the first is, what was told, and both as two days."""
    if (julian.year, julian.month) != (gregorian.year, gregorian.month) or int(julian.year) > LAST_JULIAN:
        return
    if julian.day > julian_month_length(int(julian.year), julian.month):
        return
    reckoned = str(from_julian(int(julian.year), julian.month, julian.day))
    slip = to_number(*map(int, reckoned.split("-"))) - to_number(*map(int, day.split("-")))
    if 0 < abs(slip) <= MOST_SLIP:
        ask = "These are no one day in two calendars. Which day is meant?"
        raise NoSuchDate(ask, (reckoned, day, f"[{day[:8]}{julian.day:02d},{day}]"))


def _is_plain_day(date: Partial) -> bool:
    told = date.day and date.month and date.year.isdigit()
    return bool(told) and not (date.short or date.mark or date.calendar or date.unit or date.feast)


def turned_about(dates: list[Partial], context: DateContext, pick: int) -> list[list[str]]:
    """The years that dates may have of which one stands behind a later one, the likeliest first; none where they are
    in order, or each was told with its own year. Common practice, no source.

    “Christmas 1938 or New Year” is the next New Year and “June 1938 or May” the May before it, since these are about
    two months away; “autumn 1938 or spring” may be both. Of “Christmas or New Year 1938” the year may be that of
    either.
    """
    offsets, gaps, told_last = [0], [], False
    for left, right in itertools.pairwise(dates):
        offsets.append(offsets[-1] if right.year_from_left or left.year_from_right else 0)
        if not (left.year_from_right or right.year_from_left) or not (left.year + right.year).isdigit():
            continue
        back, ahead = _days_between(left, right, context, pick)
        if back > 0:
            gaps.append((back, ahead))
            offsets[-1] += 1
            told_last = told_last or not right.year_from_left
    if not gaps:
        return []
    as_told = [date.year for date in dates]
    ahead_of_it, behind_it = (
        [_later(date, step - most) for date, step in zip(dates, offsets, strict=True)] for most in (0, max(offsets))
    )
    of_one_year = gaps[0][0] < gaps[0][1] and not any(date.day for date in dates)  # “July or June 1938”
    if len(gaps) == 1 and min(gaps[0]) <= NEAR_BY and (of_one_year or not told_last):
        return [as_told if gaps[0][0] < gaps[0][1] else ahead_of_it]
    return [ahead_of_it, behind_it, as_told] if told_last else [ahead_of_it, as_told]


def _later(date: Partial, years: int) -> str:
    return date.shifted(years).year if years and date.year.isdigit() else date.year


def _days_between(left: Partial, right: Partial, context: DateContext, pick: int) -> tuple[int, int]:
    """The days from the right date up to the left one, and from this to the right one a year later; 0 for the first
    where the right one is not before the left one, and nothing near for a season over New Year, which may be of two
    years, or two calendars."""
    first, last = (standard.parsed(written(date, context, pick)) for date in (left, right))
    begin, end, next_begin, next_end = first.earliest, first.latest, last.earliest, last.latest
    if not (begin and end and next_begin and next_end) or begin <= next_end:
        return 0, 0
    apart = NEAR_BY if begin.year != end.year or left.old_style != right.old_style else 0
    back = to_number(*begin) - to_number(*next_end)
    return back + apart, 365 + to_number(*next_begin) - to_number(*end) + apart


def with_shared_day(dates: list[Partial]) -> list[Partial]:
    """The dates with the days of the first month in each month behind it: “3 or 4 February or March 1922” may be four
    days. None where no day is told before such a month, or every month has its own."""
    days = [date for date in dates if date.month and (date.day or date.nth)]
    months = [date for date in dates if date.month and not (date.day or date.nth)]
    if not days or not months or dates[: len(days)] != days:
        return []
    if not all(day.year_from_right for day in days) and not (len(dates) == 2 and months[0].year_from_left):
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
