"""Two dates of one thing. Sets are EDTF level 2 (Library of Congress, 2019); “ca.” is five years (see lifetime)."""

import pytest
from tests.every_row import every_row

from boxlore.core.dates.conflicts import can_both_be, doubted, is_narrower, one_of
from boxlore.core.dates.edtf import parse

PAIRS = [
    ("1931", "1932", False),
    ("1932", "1931", False),
    ("1931", "1931-05", True),
    ("1931~", "1932", True),
    ("1931?", "1936", True),
    ("1931~", "1937", False),
    ("1931/1935", "1935-12-31", True),
    ("1931/..", "1975", True),
    ("../1930", "1931", False),
    ("1942-24", "1943-02", True),
    ("1942-24", "1943-07", False),
]


@every_row(("first", "second", "wanted"), PAIRS)
def test_whether_both_can_be(first: str, second: str, wanted: bool) -> None:
    assert can_both_be(parse(first), parse(second)) is wanted
    assert can_both_be(parse(second), parse(first)) is wanted


NARROWER = [
    ("1931-05", "1931", True),
    ("1931", "1931-05", False),
    ("1931", "1931", False),
    ("1932", "1931~", True),
    ("1932~", "193X", False),
    ("1931", "1931/..", True),
    ("1931", "../1931", True),
    ("1931/..", "1931/1932", False),
    ("../1931", "1930/1931", False),
    ("../1931", "../1932", True),
]


@every_row(("inner", "outer", "wanted"), NARROWER)
def test_which_says_more(inner: str, outer: str, wanted: bool) -> None:
    assert is_narrower(parse(inner), parse(outer)) is wanted


SETS = [
    (("1932", "1931"), "[1931,1932]"),
    (("1934", "1931-22", "1934"), "[1931-22,1934]"),
    (("1940", "1930/1935"), "[1930..1935,1940]"),
    (("[1930,1931]", "1940~"), "[1930,1931,1940~]"),
    (("../1930", "1940"), "[..1930,1940]"),
    (("1930", "1940/.."), "[1930,1940..]"),
    (("1931", "{1935,1936}"), "[1931-01-01..1936-12-31]"),
    (("1930/..", "../1920", "{1925,1926}"), None),
]


@every_row(("dates", "wanted"), SETS)
def test_one_of_several(dates: tuple[str, ...], wanted: str | None) -> None:
    date = one_of([parse(text) for text in dates])
    assert (date.text if date else None) == wanted


DOUBTED = [
    ("1931", "1931?"),
    ("1931-05-03", "1931-05-03?"),
    ("1931~", None),
    ("1931/1932", None),
    ("1985-04-12T23:20:30", None),
]


@pytest.mark.parametrize(("text", "wanted"), DOUBTED)
def test_a_date_marked_as_uncertain(text: str, wanted: str | None) -> None:
    date = doubted(parse(text))
    assert (date.text if date else None) == wanted
