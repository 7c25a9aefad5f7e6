"""Calendars and holidays against convertdate, dateutil, the `holidays` package and published worked examples."""

from datetime import date

import convertdate.french_republican
import convertdate.hebrew
import convertdate.julian
import holidays
import pytest
from dateutil.easter import EASTER_ORTHODOX, EASTER_WESTERN
from dateutil.easter import easter as dateutil_easter
from tests.every_row import every_row

from boxlore.core.dates.calendars import easter, from_hebrew, from_julian, from_number, orthodox_easter, to_number
from boxlore.core.dates.holidays import holiday
from boxlore.core.dates.republican import republican_day


@every_row("year", range(1583, 2300))
def test_easter_against_dateutil(year: int) -> None:
    assert easter(year) == dateutil_easter(year, EASTER_WESTERN)
    assert orthodox_easter(year) == dateutil_easter(year, EASTER_ORTHODOX)


@every_row("year", [*range(1583, 2100, 7), 1700, 1800, 1900, 2000])
def test_julian_days_against_convertdate(year: int) -> None:
    for month, day in ((1, 1), (2, 28), (3, 1), (12, 31)):
        assert tuple(from_julian(year, month, day)) == convertdate.julian.to_gregorian(year, month, day)


@every_row("year", range(5500, 5800, 3))
def test_hebrew_days_against_convertdate(year: int) -> None:
    for month, day in ((1, 15), (6, 29), (7, 1), (10, 10), (11, 30)):
        assert tuple(from_hebrew(year, month, day)) == tuple(convertdate.hebrew.to_gregorian(year, month, day))


NUMBERS = [  # Reingold and Dershowitz, Calendrical Calculations, “Sample data” (from memory); 1, 0 and -365 by hand
    (-214193, (-586, 7, 24)),
    (-61387, (-168, 12, 5)),
    (-365, (0, 1, 1)),
    (0, (0, 12, 31)),
    (1, (1, 1, 1)),
    (25469, (70, 9, 24)),
    (253427, (694, 11, 10)),
    (470160, (1288, 4, 2)),
    (544676, (1492, 4, 9)),
    (645554, (1768, 6, 19)),
    (709580, (1943, 10, 7)),
    (728714, (1996, 2, 25)),
    (764652, (2094, 7, 18)),
]


@every_row(("number", "day"), NUMBERS)
def test_days_have_the_numbers_of_the_book(number: int, day: tuple[int, int, int]) -> None:
    assert to_number(*day) == number
    if number > 0:
        assert tuple(from_number(number)) == day


@every_row("year", range(5700, 5740))
def test_every_hebrew_month_ends_where_convertdate_ends_it(year: int) -> None:
    """Forty years hold every length of a year, 353 to 385 days, leap and common."""
    for month in range(1, convertdate.hebrew.year_months(year) + 1):
        last = convertdate.hebrew.month_length(year, month)
        for day in (1, last):
            assert tuple(from_hebrew(year, month, day)) == tuple(convertdate.hebrew.to_gregorian(year, month, day))
        with pytest.raises(ValueError, match=f"^the Hebrew calendar has no day {last + 1} of month {month} in {year}$"):
            from_hebrew(year, month, last + 1)


@pytest.mark.parametrize(("month", "day"), [(0, 1), (13, 1), (14, 1), (1, 0), (2, 30)])
def test_days_that_the_hebrew_calendar_lacks(month: int, day: int) -> None:
    """5709 is a common year of twelve months; Iyar has 29 days (rules of the calendar)."""
    with pytest.raises(ValueError, match=f"^the Hebrew calendar has no day {day} of month {month} in 5709$"):
        from_hebrew(5709, month, day)


WORKED = [
    ((1917, 12, 25), (1918, 1, 7)),
    ((1917, 10, 25), (1917, 11, 7)),
    ((1918, 2, 1), (1918, 2, 14)),
    ((1752, 9, 3), (1752, 9, 14)),
    ((1923, 2, 16), (1923, 3, 1)),
    ((1900, 2, 29), (1900, 3, 13)),
]


@pytest.mark.parametrize(("julian", "gregorian"), WORKED)
def test_worked_examples(julian: tuple[int, int, int], gregorian: tuple[int, int, int]) -> None:
    """Dates of the Russian decree of 1918, the British Act of 1750, Greece 1923 (Rundetaarn observatory's tables)."""
    assert tuple(from_julian(*julian)) == gregorian


def test_the_hebrew_worked_example() -> None:
    """5 Iyar 5708 is 14 May 1948 (Israel's declaration of independence)."""
    assert tuple(from_hebrew(5708, 2, 5)) == (1948, 5, 14)


@pytest.mark.parametrize(
    ("day", "shown"),
    [
        ((1901, 2, 29), "1901-02-29"),
        ((1900, 13, 1), "1900-13-01"),
        ((1900, 0, 1), "1900-00-01"),
        ((1900, 4, 31), "1900-04-31"),
        ((1900, 4, 0), "1900-04-00"),
    ],
)
def test_days_that_the_julian_calendar_lacks(day: tuple[int, int, int], shown: str) -> None:
    with pytest.raises(ValueError, match=f"^the Julian calendar has no {shown}$"):
        from_julian(*day)


HOLIDAYS = [
    ("thanksgiving", "1863", "US", "1863-11-26"),  # Lincoln's proclamation
    ("thanksgiving", "1865", "US", "1865-12-07"),  # Johnson's proclamation
    ("thanksgiving", "1869", "US", "1869-11-18"),  # Grant's proclamation
    ("thanksgiving", "1938", "US", "1938-11-24"),
    ("thanksgiving", "1939", "US", "1939-11-23"),  # US National Archives, Prologue
    ("thanksgiving", "1941", "US", "1941-11-20"),
    ("thanksgiving", "1944", "US", "1944-11-23"),  # joint resolution of 26 December 1941
    ("memorial day", "1970", "US", "1970-05-30"),  # Pub. L. 90-363
    ("memorial day", "1971", "US", "1971-05-31"),
    ("labor day", "1894", "US", "1894-09-03"),
    ("labor day", "1957", "US", "1957-09-02"),
    ("mother's day", "1914", "US", "1914-05-10"),  # Proclamation 1268
    ("veterans day", "1971", "US", "1971-10-25"),
    ("veterans day", "1977", "US", "1977-10-24"),
    ("veterans day", "1978", "US", "1978-11-11"),
    ("victoria day", "1914", "CA", "1914-05-25"),
    ("victoria day", "1953", "CA", "1953-05-18"),
    ("victoria day", "1954", "CA", "1954-05-24"),
    ("father's day", "1966", "US", "1966-06-19"),
    ("good friday", "1951", "", "1951-03-23"),
    ("pentecost", "1951", "", "1951-05-13"),
    ("ash wednesday", "1951", "", "1951-02-07"),
    ("ascension", "1951", "", "1951-05-03"),
]


@every_row(("name", "year", "country", "day"), HOLIDAYS)
def test_holidays_worked(name: str, year: str, country: str, day: str) -> None:
    found = holiday(name, year, (country,) if country else ())
    assert found is not None and found.edtf == day


CROSS = [
    ("US", "Thanksgiving Day", "thanksgiving"),
    ("US", "Memorial Day", "memorial day"),
    ("US", "Labor Day", "labor day"),
]


@pytest.mark.parametrize(("country", "theirs", "ours"), CROSS)
def test_holidays_against_the_holidays_package(country: str, theirs: str, ours: str) -> None:
    for year in range(1971, 2027):
        days = holidays.country_holidays(country, years=year).get_named(theirs, lookup="exact")
        found = holiday(ours, str(year), (country,))
        assert found is not None and [date.fromisoformat(found.edtf)] == days


def test_years_of_the_republican_calendar_while_it_was_in_use() -> None:
    """The first day, and one within the year, against PyPI `convertdate`: years I to XIV by the equinox."""
    for year in range(1, 15):
        for month, day in ((1, 1), (year % 12 + 1, 30)):
            told = f"{day} {REPUBLICAN[month - 1]} an {year}"
            gregorian = convertdate.french_republican.to_gregorian(year, month, day)
            assert republican_day(told) == "{:04d}-{:02d}-{:02d}".format(*gregorian), told


REPUBLICAN = (
    "vendémiaire brumaire frimaire nivôse pluviôse ventôse germinal floréal prairial messidor thermidor fructidor comp"
).split()


@pytest.mark.parametrize("words", ["6 comp an II", "31 nivôse an II", "1 nivôse an XV", "1 nivose", "12 juin an II"])
def test_what_is_no_day_of_the_republican_calendar(words: str) -> None:
    assert republican_day(words) == ""
