"""Dates of tree files, out and in again (FamilySearch GEDCOM 7.0.18, “Date”)."""

import pytest

from boxlore.core.dates.edtf import parse
from boxlore.core.dates.gedcom import to_gedcom
from boxlore.core.dates.phrases import read

BOTH_WAYS = [
    ("1900", "1900"),
    ("1900-03", "MAR 1900"),
    ("1900-03-03", "3 MAR 1900"),
    ("1900~", "ABT 1900"),
    ("[..1900]", "BEF 1900"),
    ("[1900..]", "AFT 1900"),
    ("[1900..1910]", "BET 1900 AND 1910"),
    ("[1900-01..1910-03]", "BET JAN 1900 AND MAR 1910"),
    ("1900/1910", "FROM 1900 TO 1910"),
    ("1900/..", "FROM 1900"),
    ("../1910", "TO 1910"),
    ("-0043", "44 BCE"),
]


@pytest.mark.parametrize(("text", "value"), BOTH_WAYS)
def test_out_and_in_again(text: str, value: str) -> None:
    assert to_gedcom(parse(text)) == (value, "")
    back = read(value).edtf
    assert back is not None
    assert back.text == text


SAYS_LESS = [
    ("1948?", "EST 1948", "probably 1948"),
    ("195X", "BET 1950 AND 1959", "1950s"),
    ("1962-22", "BET 1 JUN 1962 AND 31 AUG 1962", "1962 summer"),
    ("[1892,1893]", "BET 1892 AND 1893", "1892 or 1893"),
    ("{1960,1961}", "", "1960 and 1961"),
    ("XXXX-07-04", "", "4 July"),
]


@pytest.mark.parametrize(("text", "value", "phrase"), SAYS_LESS)
def test_what_the_format_cannot_say_is_in_the_phrase(text: str, value: str, phrase: str) -> None:
    assert to_gedcom(parse(text)) == (value, phrase)
