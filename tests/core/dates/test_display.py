"""Dates as a person reads them: the examples of DACS 2.4 (Describing Archives: A Content Standard, Date)."""

from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.dates.display import ENGLISH, display
from boxlore.core.dates.edtf import parse

DACS = [
    ("1906-03-17", "1906 March 17"),
    ("1867?", "probably 1867"),
    ("1925~", "approximately 1925"),
    ("[..1867]", "not later than 1867"),
    ("[1867-01-05..]", "not earlier than 1867 January 5"),
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
    ("0001", "1"),
    ("0000", "1 BC"),
    ("1950S2", "between 1900 and 1999"),
    ("../1948", "until 1948"),
    ("1948~/..", "from approximately 1948"),
    ("../1948?", "until probably 1948"),
    ("1915~/1918~", "approximately 1915-1918"),
    ("1915~/1918", "approximately 1915 - 1918"),
    ("1915?/1918~", "probably 1915 - approximately 1918"),
    ("2004?-06-~11", "probably about 2004 June 11"),
    ("{1960,1961-12}", "1960 and 1961 December"),
    ("[1667,1668,1670..1672]", "1667, 1668 or between 1670 and 1672"),
    ("[..1760,1770..]", "not later than 1760 or not earlier than 1770"),
    ("1984-1X", "1984 (1X)"),
    ("1984-XX", "1984"),
    ("1984-XX-XX", "1984"),
    ("1984-12-XX", "1984 December"),
    ("1984-01-01", "1984 January 1"),
    ("XXXX-07-04", "4 July"),
    ("XXXX-07", "July"),
    ("1XXX", "1XXX"),
    ("156X-12-25", "1560s December 25"),
    ("-01XX", "-01XX"),
]
SUB_YEAR = [  # Library of Congress, EDTF 2019, Level 2, “Sub-year groupings”, 21 to 41 in order
    (21, "spring"), (22, "summer"), (23, "autumn"), (24, "winter"),
    (25, "spring"), (26, "summer"), (27, "autumn"), (28, "winter"),
    (29, "spring"), (30, "summer"), (31, "autumn"), (32, "winter"),
    (33, "first quarter"), (34, "second quarter"), (35, "third quarter"), (36, "fourth quarter"),
    (37, "first third"), (38, "second third"), (39, "third third"), (40, "first half"), (41, "second half"),
]  # fmt: skip


@every_row(("text", "shown"), [*DACS, *OURS])
def test_as_an_archive_writes(text: str, shown: str) -> None:
    assert display(parse(text)) == shown


@every_row(("code", "name"), SUB_YEAR)
def test_every_part_of_a_year_has_its_name(code: int, name: str) -> None:
    assert display(parse(f"2001-{code}")) == f"2001 {name}"


def test_another_language_is_another_table() -> None:
    assert display(parse("1920~"), words={**ENGLISH, "~": "umbes {}"}) == "umbes 1920"


MARKED = {name: f"<{words}>" for name, words in ENGLISH.items()}
OF_THE_TABLE = [
    ("../1948~", "<until <approximately 1948>>"),
    ("1948?/..", "<from <probably 1948>>"),
    ("1915~/1918~", "<approximately 1915-1918>"),
    ("195X/..", "<from <1950s>>"),
    ("../195X", "<until <1950s>>"),
    ("195X/19XX", "<1950s>-<1900s>"),
    ("1915?/195X~", "<probably 1915> - <approximately <1950s>>"),
    ("[..195X]", "<not later than <1950s>>"),
    ("[195X..]", "<not earlier than <1950s>>"),
    ("[195X..196X]", "<between <1950s> and <1960s>>"),
    ("[1948,195X,1960]", "1948, <1950s>< or >1960"),
    ("{195X,1960}", "<1950s>< and >1960"),
    ("1962-22%", "<probably about 1962 <summer>>"),
    ("2001-34", "2001 <second quarter>"),
    ("-0043", "<44 BC>"),
    ("1950S2", "<between 1900 and 1999>"),
]


@every_row(("text", "shown"), OF_THE_TABLE)
def test_every_word_comes_from_the_table(text: str, shown: str) -> None:
    assert display(parse(text), words=MARKED) == shown


PARTS = st.sampled_from("1920 1920-03 1920-03-17 195X 19XX 1962-22 XXXX-03-04 1920~ 1920? -0043 Y12345 1950S2".split())


@drawn(200)
@given(PARTS, PARTS, st.sampled_from(["{0}", "{0}/..", "../{0}", "[{0},{1}]", "[..{0}]", "{{{0},{1}}}"]))
def test_every_form_is_shown_without_its_code(one: str, other: str, shape: str) -> None:
    shown = display(parse(shape.format(one, other)))
    assert shown
    assert not set(shown) & set("[]{}~%?")
