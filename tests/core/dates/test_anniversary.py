"""The same day in another year (Gregorian calendar: 1900 was no leap year, 2000 was)."""

from datetime import date

from tests.every_row import every_row

from boxlore.core.dates.anniversary import years_on

YEARS_ON = [
    ("1912-05-12", 100, "2012-05-12"),
    ("1912-05-12", 0, "1912-05-12"),
    ("1912-05-12", -12, "1900-05-12"),
    ("1904-02-29", 4, "1908-02-29"),
    ("1904-02-29", -4, "1900-02-28"),
    ("2000-02-29", 0, "2000-02-29"),
    ("1904-02-28", 1, "1905-02-28"),
    ("1904-03-29", 1, "1905-03-29"),
    ("1904-02-29", 1, "1905-02-28"),
    ("0011-06-01", -10, "0001-06-01"),
    ("0010-06-01", -10, None),
    ("9989-06-01", 10, "9999-06-01"),
    ("9989-06-01", 11, None),
]


@every_row(("day", "years", "then"), YEARS_ON)
def test_the_same_day_in_another_year(day: str, years: int, then: str | None) -> None:
    assert years_on(date.fromisoformat(day), years) == (date.fromisoformat(then) if then else None)
