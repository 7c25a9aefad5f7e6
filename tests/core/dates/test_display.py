"""Dates as a person reads them: the examples of DACS 2.4 (Describing Archives: A Content Standard, Date)."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from boxlore.core.dates.display import ENGLISH, display
from boxlore.core.dates.edtf import parse

DACS = [
    ("1906-03-17", "1906 March 17"),
    ("1867?", "probably 1867"),
    ("1925~", "approximately 1925"),
    ("[..1867]", "before 1867"),
    ("[1867-01-05..]", "after 1867 January 5"),
    ("[1892,1893]", "1892 or 1893"),
    ("189X", "1890s"),
    ("1849/1851", "1849-1851"),
]
OURS = [
    ("1920%", "probably about 1920"),
    ("1962-22", "1962 summer"),
    ("1962-30", "1962 summer"),
    ("19XX", "1900s"),
    ("-0043", "44 BC"),
    ("[1915..1918]", "between 1915 and 1918"),
    ("1900/..", "from 1900"),
    ("2001-34", "2001 second quarter"),
]


@pytest.mark.parametrize(("text", "shown"), [*DACS, *OURS])
def test_as_an_archive_writes(text: str, shown: str) -> None:
    assert display(parse(text)) == shown


@pytest.mark.parametrize(("text", "shown"), [("1906-03-17", "17 March 1906"), ("1962-22", "summer 1962")])
def test_as_a_family_writes(text: str, shown: str) -> None:
    assert display(parse(text), "family") == shown


def test_another_language_is_another_table() -> None:
    assert display(parse("1920~"), words={**ENGLISH, "~": "umbes {}"}) == "umbes 1920"


PARTS = st.sampled_from("1920 1920-03 1920-03-17 195X 19XX 1962-22 XXXX-03-04 1920~ 1920? -0043 Y12345 1950S2".split())


@settings(max_examples=200)
@given(PARTS, PARTS, st.sampled_from(["{0}", "{0}/..", "../{0}", "[{0},{1}]", "[..{0}]", "{{{0},{1}}}"]))
def test_every_form_is_shown_without_its_code(one: str, other: str, shape: str) -> None:
    shown = display(parse(shape.format(one, other)))
    assert shown
    assert not set(shown) & set("[]{}~%?")
