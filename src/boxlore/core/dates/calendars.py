"""Calendars: Julian and Hebrew days in the Gregorian calendar, Easter, and when each country changed over.

Day numbers are Rata Die (1 is 1 January of year 1, Gregorian), after E. Reingold and N. Dershowitz,
*Calendrical Calculations*. Easter by the anonymous Gregorian method (J. Meeus, *Astronomical Algorithms*, ch. 8).
"""

from datetime import date

from boxlore.core.dates.context import NoSuchDate
from boxlore.core.dates.edtf_values import Day, month_length

MEAN_YEAR = 365.2425
"""Days of a mean year in the Gregorian calendar."""


def to_number(year: int, month: int, day: int) -> int:
    """Rata Die of a proleptic Gregorian day; years may be zero or negative."""
    before = year - 1
    number = 365 * before + before // 4 - before // 100 + before // 400
    return number + sum(month_length(year, earlier) for earlier in range(1, month)) + day


_LAST_NUMBER = date.max.toordinal()
OUTSIDE = "That is outside the years 1 to 9999. When was it?"
"""What is asked of a day of another year, which EDTF and the calendars here do not have."""


def from_number(number: int) -> Day:
    """The proleptic Gregorian day of a Rata Die in years 1 to 9999. Raises NoSuchDate for one of other years."""
    if not 1 <= number <= _LAST_NUMBER:
        raise NoSuchDate(OUTSIDE)
    day = date.fromordinal(number)
    return Day(day.year, day.month, day.day)


def julian_month_length(year: int, month: int) -> int:
    """Days in a month of the Julian calendar."""
    return 29 if month == 2 and year % 4 == 0 else month_length(2001, month)


def from_julian(year: int, month: int, day: int) -> Day:
    """The Gregorian day of a Julian one. Raises ValueError for a day that the Julian calendar lacks."""
    if not (1 <= month <= 12 and 1 <= day <= julian_month_length(year, month)):
        raise ValueError(f"the Julian calendar has no {year}-{month:02d}-{day:02d}")
    before = year - 1
    number = 365 * before + before // 4 - 2
    return from_number(
        number + sum(julian_month_length(year, earlier_month) for earlier_month in range(1, month)) + day
    )


_HEBREW_EPOCH = -1373427
HEBREW_MONTHS = {
    "nisan": 1, "iyyar": 2, "iyar": 2, "sivan": 3, "tammuz": 4, "av": 5, "ab": 5, "elul": 6, "tishri": 7,
    "tishrei": 7, "cheshvan": 8, "heshvan": 8, "marcheshvan": 8, "kislev": 9, "tevet": 10, "teveth": 10,
    "shevat": 11, "shvat": 11, "adar": 12, "adar sheni": 13, "adar ii": 13,
}  # fmt: skip
HEBREW_MONTHS |= dict(
    zip(
        "tsh csh ksl tvt shv adr ads nsn iyr svn tmz aav ell".split(),
        (7, 8, 9, 10, 11, 12, 13, 1, 2, 3, 4, 5, 6),
        strict=True,
    )
)
"""Names and the codes of FamilySearch GEDCOM 7.0.18, appendix “Hebrew calendar”, to Nisan-based months."""


def hebrew_leap(year: int) -> bool:
    """Whether a Hebrew year has thirteen months."""
    return (7 * year + 1) % 19 < 7


def _hebrew_elapsed(year: int) -> int:
    months = (235 * year - 234) // 19
    parts = 12084 + 13753 * months
    days = 29 * months + parts // 25920
    return days + 1 if 3 * (days + 1) % 7 < 3 else days


def _hebrew_new_year(year: int) -> int:
    last, this, following = _hebrew_elapsed(year - 1), _hebrew_elapsed(year), _hebrew_elapsed(year + 1)
    delay = 2 if following - this == 356 else 1 if this - last == 382 else 0
    return _HEBREW_EPOCH + this + delay


def _hebrew_month_length(year: int, month: int) -> int:
    days = _hebrew_new_year(year + 1) - _hebrew_new_year(year)
    short = month in (2, 4, 6, 10, 13)
    short = short or (month == 12 and not hebrew_leap(year))
    short = short or (month == 8 and days not in (355, 385)) or (month == 9 and days in (353, 383))
    return 29 if short else 30


def from_hebrew(year: int, month: int, day: int) -> Day:
    """The Gregorian day of a Hebrew one (months from Nisan). Raises ValueError for a day that there is not."""
    last = 13 if hebrew_leap(year) else 12
    if not (1 <= month <= last and 1 <= day <= _hebrew_month_length(year, month)):
        raise ValueError(f"the Hebrew calendar has no day {day} of month {month} in {year}")
    order = [*range(7, last + 1), *range(1, 7)]
    before = sum(_hebrew_month_length(year, earlier_month) for earlier_month in order[: order.index(month)])
    return from_number(_hebrew_new_year(year) + before + day - 1)


_ISLAMIC_EPOCH = 227015


def from_islamic(year: int, month: int, day: int) -> Day:
    """The Gregorian day of one of the civil (reckoned) Islamic calendar; the moon as seen may be a day off."""
    before = (year - 1) * 354 + (3 + 11 * year) // 30 + 29 * (month - 1) + month // 2
    return from_number(_ISLAMIC_EPOCH - 1 + before + day)


def easter(year: int) -> date:
    """Western Easter Sunday, from 1583 on."""
    golden, century = year % 19, year // 100
    epact = (century - century // 4 - (8 * century + 13) // 25 + 19 * golden + 15) % 30
    moon = epact - epact // 28 * (1 - 29 // (epact + 1) * ((21 - golden) // 11))
    weekday = (year + year // 4 + moon + 2 - century + century // 4) % 7
    after = moon - weekday
    month = 3 + (after + 40) // 44
    return date(year, month, after + 28 - 31 * (month // 4))


def orthodox_easter(year: int) -> date:
    """Orthodox Easter Sunday as a Gregorian day (Julian reckoning)."""
    moon = (19 * (year % 19) + 15) % 30
    weekday = (2 * (year % 4) + 4 * (year % 7) - moon + 34) % 7
    month, day = divmod(moon + weekday + 114, 31)
    easter = from_julian(year, month, day + 1)
    return date(*easter)
