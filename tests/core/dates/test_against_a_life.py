"""Comparing pictures with lives.

The five years of “ca.” are Yale's (note on dates of the Rhode Island Furniture Archive); the rest is our own rule.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.dates.against_a_life import Comparison, after_death, before_birth, core, possible
from boxlore.core.dates.edtf import parse

RANGES = [  # date, possible first, possible last
    ("1920", "1920-01-01", "1920-12-31"),
    ("1920~", "1915-01-01", "1925-12-31"),
    ("1920?", "1915-01-01", "1925-12-31"),
    ("1920%", "1910-01-01", "1930-12-31"),
    ("195X~", "1945-01-01", "1964-12-31"),
    ("1920-06~", "1920-03-01", "1920-09-30"),
    ("1920-01?", "1919-10-01", "1920-04-30"),
    ("1920-06%", "1919-12-01", "1920-12-31"),
    ("1920-03-01~", "1920-02-29", "1920-03-02"),
    ("?2004-06-~11", "1999-06-10", "2009-06-12"),
    ("1956-02-29?", "1956-02-28", "1956-03-01"),
    ("1915~/1918", "1910-01-01", "1918-12-31"),
    ("[..1930]", "None", "1930-12-31"),
    ("1962-24", "1961-12-01", "1963-02-28"),
    ("1962-22~", "1962-03-01", "1962-11-30"),
]


@every_row(("text", "first", "last"), RANGES)
def test_the_possible_range(text: str, first: str, last: str) -> None:
    assert tuple(map(str, possible(parse(text)))) == (first, last)


BIRTHS = [  # picture, born, answer
    ("1930", "1930-05-04", Comparison.SILENT),
    ("1929", "1930-05-04", Comparison.ERROR),
    ("1929~", "1930", Comparison.ASK),
    ("1929", "1930?", Comparison.ASK),
    ("192X", "1930", Comparison.ERROR),
    ("1928/1931", "1930", Comparison.SILENT),
    ("[..1928]", "1930", Comparison.ERROR),
    ("[1928..]", "1930", Comparison.SILENT),
    ("1929-24", "1930-01-20", Comparison.SILENT),
    ("1930-24", "1930-12-20", Comparison.SILENT),
    ("1929-24", "1930-03-20", Comparison.ERROR),
    ("1930-05-03", "1930-05-04", Comparison.ERROR),
    ("1930-05-04", "1930-05-04", Comparison.SILENT),
    ("1928/1930-05-04", "1930-05-04", Comparison.SILENT),
    ("1929", "[..1930]", Comparison.SILENT),
]


@every_row(("picture", "born", "answer"), BIRTHS)
def test_before_birth(picture: str, born: str, answer: Comparison) -> None:
    assert before_birth(parse(picture), parse(born)) is answer


DEATHS = [  # picture, died, answer
    ("1950", "1948", Comparison.ASK),
    ("1950?", "1948?", Comparison.ASK),
    ("1948", "1948-02", Comparison.SILENT),
    ("1948-02-29", "1948-02-29", Comparison.SILENT),
    ("1948-03-01", "1948-02-29", Comparison.ASK),
    ("1948-03", "1948-02", Comparison.ASK),
    ("1950", "[1948..]", Comparison.SILENT),
]


@pytest.mark.parametrize(("picture", "died", "answer"), DEATHS)
def test_after_death_is_always_a_question(picture: str, died: str, answer: Comparison) -> None:
    assert after_death(parse(picture), parse(died)) is answer


YEARS = st.integers(1000, 2100).map(str)
MARKED = st.tuples(YEARS, st.sampled_from(["", "-06", "-06-15", "-02"]), st.sampled_from("?~%")).map("".join)


@drawn(200)
@given(MARKED)
def test_the_possible_range_holds_the_core(text: str) -> None:
    whole, inner = possible(parse(text)), core(parse(text))
    assert whole[0] is not None and whole[1] is not None and inner[0] is not None and inner[1] is not None
    assert whole[0] < inner[0] <= inner[1] < whole[1]
