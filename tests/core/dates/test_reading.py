"""The reading of a date: what follows from its expression, its JSON form both ways, and what is no such form."""

import json
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.every_row import every_row

from boxlore.core.dates.edtf import State, parse
from boxlore.core.dates.phrases import PhraseSettings, read, read_strict
from boxlore.core.dates.reading import DateReading

KEYS = ["text", "edtf", "state", "level", "earliest", "latest", "display", "ask", "alternatives", "error"]
"""The members and their order, as the command's JSON is published (our own form)."""

SAYS = [
    # The dates and levels are examples of the EDTF specification (2019); the display is DACS 2.4.
    ("1985-04-12", 0, "1985-04-12", "1985-04-12", "1985 April 12"),
    ("1984~", 1, "1984-01-01", "1984-12-31", "approximately 1984"),
    ("2001-21", 1, "2001-03-01", "2001-05-31", "2001 spring"),
    ("1985-04-12/..", 1, "1985-04-12", None, "from 1985 April 12"),
    ("[..1760-12-03]", 2, None, "1760-12-03", "not later than 1760 December 3"),
]


@pytest.mark.parametrize(("text", "level", "earliest", "latest", "display"), SAYS)
def test_what_follows_from_the_expression(
    text: str, level: int, earliest: str | None, latest: str | None, display: str
) -> None:
    assert DateReading.from_edtf(text).to_json() == {
        "text": text, "edtf": text, "state": "valid", "level": level, "earliest": earliest, "latest": latest,
        "display": display, "ask": None, "alternatives": [], "error": None,
    }  # fmt: skip


READINGS = [
    read("about 1920"), read("7/4/52"), read("Easter 1931"), read("nonsense"), read(""), read("31 June 1950"),
    read("the summer of 1960", PhraseSettings(hemisphere="south")), read_strict("1985-"), read_strict("1985-13"),
    read("between 1920 and 1925"), read_strict("Y-170000002"),
]  # fmt: skip


@every_row("reading", READINGS)
def test_both_ways(reading: DateReading) -> None:
    text = json.dumps(reading.to_json(), ensure_ascii=False)
    assert list(json.loads(text)) == KEYS
    assert DateReading.from_json(json.loads(text)) == reading


@given(st.lists(st.sampled_from("about 1920 june / 3 '51 or before the".split()), max_size=6).map(" ".join))
def test_whatever_is_read_goes_both_ways(words: str) -> None:
    assert DateReading.from_json(json.loads(json.dumps(read(words).to_json()))) == read(words)


def test_what_an_older_reading_leaves_out_follows_from_its_expression() -> None:
    reading = DateReading.from_json({"edtf": "1912~"})
    assert (reading.text, reading.display, str(reading.earliest)) == ("", "approximately 1912", "1912-01-01")


def test_an_older_reading_without_a_date_says_no_more_than_that() -> None:
    assert DateReading.from_json({"edtf": None, "text": "then"}) == DateReading("then")


def test_bounds_that_disagree_with_the_expression_are_not_believed() -> None:
    assert str(DateReading.from_json({"edtf": "1912", "latest": "1812-12-31"}).latest) == "1912-12-31"


REFUSALS: list[dict[str, Any]] = [
    {}, {"text": "1912"}, {"edtf": 1912}, {"edtf": "1912-13"}, {"edtf": "about 1912"}, {"edtf": ["1912"]},
    {"edtf": "1912", "text": 1912}, {"edtf": "1912", "ask": True}, {"edtf": "1912", "alternatives": "1913"},
    {"edtf": "1912", "alternatives": [1913]}, {"edtf": None, "error": "wrong"}, {"edtf": None, "state": "perhaps"},
    {"edtf": None, "state": "valid"},
    {"edtf": None, "error": {"message": 1}}, {"edtf": None, "error": {"message": "", "column": "1"}},
]  # fmt: skip


@every_row("data", REFUSALS)
def test_another_shape_is_refused(data: dict[str, Any]) -> None:
    with pytest.raises(ValueError, match=r"."):
        DateReading.from_json(data)


def test_no_date_says_so_everywhere() -> None:
    reading = read("nonsense")
    assert (reading.edtf, reading.display, reading.earliest, reading.latest) == (None, "", None, None)
    assert (reading.first_year, reading.last_year, reading.latest_day, reading.exact) == (None, None, None, False)
    assert reading.state is State.WRONG


YEARS = [("1912", 1912, 1912), ("191X", 1910, 1919), ("1912/..", 1912, None), ("../1912", None, 1912),
         ("-0044", None, None), ("Y10000", None, None), ("0000", 0, 0), ("9999", 9999, 9999)]  # fmt: skip


@every_row(("text", "first", "last"), YEARS)
def test_years(text: str, first: int | None, last: int | None) -> None:
    reading = DateReading.from_edtf(text)
    assert (reading.first_year, reading.last_year) == (first, last)


EXACT = [("1912", True), ("1912-05", True), ("1912-05-17", True), ("1912~", False), ("1912?", False), ("1912%", False),
         ("191X", False), ("[1912,1914]", False), ("{1912,1914}", False), ("1912/1914", False)]  # fmt: skip


@every_row(("text", "exact"), EXACT)
def test_exact(text: str, exact: bool) -> None:
    assert DateReading.from_edtf(text).exact is exact


LATEST_DAYS = [
    ("1921-12-31", date(1921, 12, 31)), ("1922~", date(1927, 12, 31)), ("1922?", date(1927, 12, 31)),
    ("1922%", date(1932, 12, 31)), ("191X", date(1919, 12, 31)), ("1912/..", None), ("1920-02-29", date(1920, 2, 29)),
    ("1920-02-29~", date(1925, 2, 28)), ("9998~", None), ("9999", date(9999, 12, 31)), ("0000", None), ("Y10000", None),
    ("-0044", None),
]  # fmt: skip


@every_row(("text", "day"), LATEST_DAYS)
def test_the_latest_day(text: str, day: date | None) -> None:
    """Five years for “ca.”: Yale, Rhode Island Furniture Archive note; ten for both: ours."""
    assert DateReading.from_edtf(text).latest_day == day


def test_all_that_may_be_meant_stands_in_the_order_of_likelihood() -> None:
    """What it was read as first, or last where that is all the others together (our own contract)."""
    both = DateReading("7/4/52", parse("[1952-04-07,1952-07-04]"), "?", ("1952-04-07", "1952-07-04"))
    assert both.choices == ("1952-04-07", "1952-07-04", "[1952-04-07,1952-07-04]")
    assert DateReading("’59", parse("1959"), "?", ("1859",)).choices == ("1959", "1859")
    assert DateReading("the house, 1912", None, "?", ("1912",)).choices == ("1912",)
