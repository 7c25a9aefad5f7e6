"""Days counted in years of 366 days: held against the calendar of the standard library."""

from datetime import date

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn

from boxlore.core.evidence.even_years import YEAR, days, first_day, last_day, number_of

DAYS = st.dates()


def number(day: date) -> int:
    return number_of(day.year, day.month, day.day)


@given(DAYS, DAYS)
@drawn(300)
def test_the_order_is_the_calendars_and_a_distance_is_never_less(one: date, other: date) -> None:
    earlier, later = sorted((one, other))
    apart = (later - earlier).days
    assert apart <= number(later) - number(earlier) <= days(apart)
    assert str(first_day(number(one))) == str(one) == str(last_day(number(one)))


@given(st.dates(max_value=date(9000, 1, 1)), st.integers(1, 900))
@drawn(300)
def test_a_day_so_many_years_on_is_the_same_day(day: date, years: int) -> None:
    later = number(day) + years * YEAR
    if (day.month, day.day) != (2, 29):
        same = day.replace(year=day.year + years)
        assert str(first_day(later)) == str(same) == str(last_day(later))
    else:
        assert str(first_day(later))[5:] in ("02-29", "03-01") and str(last_day(later))[5:] in ("02-29", "02-28")


def test_the_empty_day_of_a_common_year_is_the_one_beside_it() -> None:
    birthday = number_of(1904, 2, 29) + 21 * YEAR
    assert (str(first_day(birthday)), str(last_day(birthday))) == ("1925-03-01", "1925-02-28")
