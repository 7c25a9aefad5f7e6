"""The neighbour of a date of its own size (arithmetic of the calendar; seasons in their order)."""

from tests.every_row import every_row

from boxlore.core.dates.before_and_after import beside, left_out

NEIGHBOURS = [
    ("1938", "1937", "1939"),
    ("1938?", "1937?", "1939?"),
    ("1938~", "1937~", "1939~"),
    ("193X", "1929", "1940"),
    ("19XX%", "1899%", "2000%"),
    ("1938-01", "1937-12", "1938-02"),
    ("1938-12", "1938-11", "1939-01"),
    ("1938-03-01", "1938-02-28", "1938-03-02"),
    ("1936-02-28", "1936-02-27", "1936-02-29"),
    ("1938-12-31", "1938-12-30", "1939-01-01"),
    ("1938-21", "1937-24", "1938-22"),
    ("1938-24", "1938-23", "1939-21"),
    ("1938-31", "1937-30", "1938-32"),
    ("1938-30", "1938-29", "1939-31"),
    ("193X-06", "193X-06", "193X-06"),
    ("1938-34", "1938-34", "1938-34"),
    ("XXXX-06-12", "XXXX-06-12", "XXXX-06-12"),
    ("1938~-22", "1938~-22", "1938~-22"),
]


@every_row(("date", "before", "after"), NEIGHBOURS)
def test_the_dates_next_to_one(date: str, before: str, after: str) -> None:
    assert (beside(date, -1), beside(date, 1)) == (before, after)


LEFT_OUT = [
    ("[..1909]", "1910"), ("[1946..]", "1945"), ("[..1938-05-11?]", "1938-05-12?"), ("[1946..1948]", ""),
    ("[..1935,1941..]", ""), ("1938/..", ""), ("1938", ""), ("[1938,1939]", ""),
]  # fmt: skip


@every_row(("limit", "date"), LEFT_OUT)
def test_the_date_that_a_limit_leaves_out(limit: str, date: str) -> None:
    assert left_out(limit) == date
