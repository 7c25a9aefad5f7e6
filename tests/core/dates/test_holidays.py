"""Holidays against the `holidays` package (0.109), which was written from the same statutes by others.

Each row: our name, its country and part, its English name there, the years compared. New Zealand's King's
Birthday of 1911 is left out: the package has 9 November, the new king's day was 3 June.
"""

import holidays
import pytest
from tests.every_row import every_row

from boxlore.core.dates.calendars import OUTSIDE
from boxlore.core.dates.context import NoSuchDate
from boxlore.core.dates.edtf import State, check
from boxlore.core.dates.holidays import day_of, holiday, reckoned
from boxlore.core.dates.holidays_table import HOLIDAYS

SAME = [
    ("christmas", "GB", "ENG", "Christmas Day", range(1872, 2026)),
    ("boxing day", "GB", "ENG", "Boxing Day", range(1872, 2026)),
    ("good friday", "GB", "ENG", "Good Friday", range(1872, 2026)),
    ("easter monday", "GB", "ENG", "Easter Monday", range(1872, 2026)),
    ("whit monday", "GB", "ENG", "Pentecost Monday", range(1872, 1971)),
    ("spring bank holiday", "GB", "ENG", "Spring Bank Holiday", range(1971, 2026)),
    ("august bank holiday", "GB", "ENG", "Late Summer Bank Holiday", range(1971, 2026)),
    ("early may bank holiday", "GB", "ENG", "May Day", range(1978, 2026)),
    ("st patrick's day", "IE", None, "Saint Patrick's Day", range(1923, 2026)),
    ("august bank holiday", "IE", None, "August Bank Holiday", range(1923, 2026)),
    ("june bank holiday", "IE", None, "June Bank Holiday", range(1973, 2026)),
    ("october bank holiday", "IE", None, "October Bank Holiday", range(1977, 2026)),
    ("may bank holiday", "IE", None, "May Bank Holiday", range(1994, 2026)),
    ("labour day", "NZ", None, "Labour Day", range(1900, 2026)),
    ("king's birthday", "NZ", None, "King's Birthday", [*range(1902, 1910), *range(1912, 1936), *range(1938, 1952)]),
    ("queen's birthday", "NZ", None, "Queen's Birthday", range(1952, 2023)),
    ("anzac day", "NZ", None, "Anzac Day", range(1921, 2026)),
    ("waitangi day", "NZ", None, "Waitangi Day", range(1977, 2026)),
    ("matariki", "NZ", None, "Matariki", range(2022, 2026)),
    ("australia day", "AU", "VIC", "Australia Day", range(1935, 2026)),
    ("foundation day", "AU", "VIC", "Anniversary Day", range(1901, 1935)),
    ("anzac day", "AU", "VIC", "ANZAC Day", range(1921, 2026)),
    ("melbourne cup day", "AU", "VIC", "Melbourne Cup Day", range(2009, 2026)),
    ("german unity day", "DE", None, "German Unity Day", range(1991, 2026)),
    ("buß- und bettag", "DE", None, "Repentance and Prayer Day", range(1991, 1995)),
    ("pentecost", "EE", None, "Pentecost", range(1994, 2026)),
    ("iseseisvuspäev", "EE", None, "Independence Day", range(1991, 2026)),
    ("võidupüha", "EE", None, "Victory Day", range(1991, 2026)),
    ("jaanipäev", "EE", None, "Midsummer Day", range(1991, 2026)),
    ("taasiseseisvumispäev", "EE", None, "Independence Restoration Day", range(1998, 2026)),
    ("labour day", "CA", None, "Labor Day", range(1894, 2026)),
    ("canada day", "CA", None, "Canada Day", range(1983, 2026)),
    ("dominion day", "CA", None, "Dominion Day", range(1879, 1982)),
    ("victoria day", "CA", "ON", "Victoria Day", range(1953, 2026)),
    ("thanksgiving", "CA", "ON", "Thanksgiving Day", range(1957, 2026)),
    ("thanksgiving", "US", None, "Thanksgiving Day", range(1870, 2026)),
    ("memorial day", "US", None, "Memorial Day", range(1888, 2026)),
    ("labor day", "US", None, "Labor Day", range(1894, 2026)),
    ("martin luther king day", "US", None, "Martin Luther King Jr. Day", range(1986, 2026)),
    ("columbus day", "US", None, "Columbus Day", range(1970, 2026)),
    ("pyhäinpäivä", "FI", None, "All Saints' Day", range(1955, 2026)),
    ("alla helgons dag", "SE", None, "All Saints' Day", range(1953, 2026)),
    ("loppiainen", "FI", None, "Epiphany", range(1950, 2026)),
    ("helatorstai", "FI", None, "Ascension Day", range(1950, 2026)),
    ("italian republic day", "IT", None, "Republic Day", range(1950, 2026)),
    ("veterans day", "US", None, "Veterans Day", range(1954, 2026)),
]


@every_row(("name", "country", "part", "theirs", "years"), SAME)
def test_the_same_day_as_an_independent_library(
    name: str, country: str, part: str | None, theirs: str, years: range
) -> None:
    found = holidays.country_holidays(country, subdiv=part, years=years, observed=False, language="en_US")
    kept = {(day.year, title.strip()): day for day, titles in found.items() for title in titles.split(";")}
    different = {}
    for year in years:
        ours = holiday(name, str(year), (country,))
        assert ours is not None
        if ours.edtf != str(kept[(year, theirs)]):
            different[year] = (ours.edtf, str(kept[(year, theirs)]))
    assert not different


def test_every_row_gives_a_day_in_its_first_and_last_year_and_has_a_source() -> None:
    for _, _, first, last, rule, source in HOLIDAYS:
        for year in (first or 1900, last or 2026):
            for hemisphere in ("north", "south"):
                days = reckoned(rule, year, hemisphere)
                assert days and all(check(day).state is State.VALID for day in days), rule
        assert source


@pytest.mark.parametrize("year", ["0000", "0001", "0100", "9999", "10000"])
def test_a_feast_of_any_year_is_of_edtf_or_asked_about(year: str) -> None:
    """EDTF and the calendars have the years 1 to 9999."""
    outside = 0
    for names, *_ in HOLIDAYS:
        for hemisphere in ("north", "south"):
            try:
                found = holiday(names[0], year, (), hemisphere)
            except NoSuchDate as none:
                assert none.ask == OUTSIDE
                outside += 1
                continue
            days = [day for day in (found.edtf, *found.alternatives) if day not in ("", year)]
            assert all(check(day).state is State.VALID for day in days), (names[0], days)
    assert bool(outside) == (year != "0100")


def test_a_row_of_an_unknown_kind_is_refused() -> None:
    with pytest.raises(AssertionError, match="no such rule"):
        day_of(("moon", 3), 1950)


ONCE = [  # “in 1968 and 1969 bank holiday Monday fell in September” (accounts of the trial of 1965-1970)
    ("august bank holiday", "1964", "1964-08-03"),
    ("august bank holiday", "1968", "1968-09-02"),
    ("august bank holiday", "1969", "1969-09-01"),
    ("otago anniversary", "2025", "2025-03-24"),  # the `holidays` package, NZ-OTA
    ("fête des mères", "2015", "2015-05-31"),  # calendars of the year: last Sunday of May
    ("fête des mères", "2020", "2020-06-07"),  # Pentecost was on 31 May
    ("koninginnedag", "1967", "1967-05-01"),  # the `holidays` package, NL with days moved
    ("koninginnedag", "1989", "1989-04-29"),  # the same
    ("koningsdag", "2014", "2014-04-26"),  # the same
    ("koningsdag", "2015", "2015-04-27"),  # the same
    ("first advent", "2022", "2022-11-27"),  # calendars of the year; the earliest day it can be
    ("first advent", "2023", "2023-12-03"),  # and the latest
]


@pytest.mark.parametrize(("name", "year", "day"), ONCE)
def test_single_days(name: str, year: str, day: str) -> None:
    found = holiday(name, year, ("GB", "NZ"))
    assert found is not None
    assert found.edtf == day


@pytest.mark.parametrize(("year", "days"), [(1939, (23, 30)), (1940, (21, 28)), (1941, (20, 27))])
def test_thanksgiving_is_asked_about_while_the_states_were_split(year: int, days: tuple[int, int]) -> None:
    """The President named the last Thursday but one; about half of the states kept the last one, until the joint
    resolution of 26 December 1941 (55 Stat. 862)."""
    found = holiday("thanksgiving", str(year), ("US",))
    assert (found.edtf, *found.alternatives) == tuple(f"{year}-11-{day}" for day in days)
    assert found.ask == "Which Thanksgiving is meant?"


def test_whose_holiday_is_asked_where_it_matters() -> None:
    found = holiday("thanksgiving", "1963")
    assert found is not None
    assert found.ask == "Whose Thanksgiving? (US, CA)"
    assert found.alternatives == ("1963-10-14",)


def test_whit_saturday_is_the_eve_or_the_last_day_of_the_week() -> None:
    """Easter was on 12 April 1936, Whit Sunday on 31 May; common practice, no source for the name."""
    found = holiday("whit saturday", "1936")
    assert (found.edtf, found.alternatives) == ("1936-05-30", ("1936-06-06",))
    assert found.ask == "Which Whit Saturday is meant?"


def test_a_holiday_before_it_was_kept_is_asked_about() -> None:
    found = holiday("new zealand day", "1950")
    assert found is not None
    assert (found.edtf, bool(found.ask)) == ("", True)
