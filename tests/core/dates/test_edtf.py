"""EDTF against the Library of Congress specification (4 February 2019) and two independent libraries.

The strings, levels and refusals are those of the specification's own tables; bounds in brackets there are its.
"""

import pytest
from edtf_validate.valid_edtf import is_valid
from hypothesis import given, settings
from hypothesis import strategies as st

from boxlore.core.dates import edtf
from boxlore.core.dates.edtf_values import iso_range, plain_iso
from boxlore.core.errors import TextFault

LEVELS = {
    0: """1985-04-12 1985-04 1985 1985-04-12T23:20:30 1985-04-12T23:20:30Z 1985-04-12T23:20:30-04
          1985-04-12T23:20:30+04:30 1964/2008 2004-06/2006-08 2004-02-01/2005-02-08 2004-02-01/2005-02
          2004-02-01/2005 2005/2006-02""",
    1: """Y170000002 Y-170000002 2001-21 1984? 2004-06~ 2004-06-11% 201X 20XX 2004-XX 1985-04-XX 1985-XX-XX
          1985-04-12/.. 1985-04/.. 1985/.. ../1985-04-12 ../1985-04 ../1985 1985-04-12/ 1985-04/ 1985/
          /1985-04-12 /1985-04 /1985 -1985""",
    2: """Y-17E7 1950S2 Y171010000S3 Y3388E2S3 2001-34 [1667,1668,1670..1672] [..1760-12-03] [1760-12..]
          [1760-01,1760-02,1760-12..] [1667,1760-12] [..1984] {1667,1668,1670..1672} {1960,1961-12} {..1984}
          2004-06~-11 2004?-06-11 ?2004-06-~11 2004-%06-11 156X-12-25 15XX-12-25 XXXX-12-XX 1XXX-XX 1XXX-12
          1984-1X 2004-06-~01/2004-06-~20 2004-06-XX/2004-07-03""",
}
EXAMPLES = [(text, level) for level, texts in LEVELS.items() for text in texts.split()]


@pytest.mark.parametrize(("text", "level"), EXAMPLES)
def test_every_example_of_the_specification(text: str, level: int) -> None:
    assert edtf.parse(text).level == level
    assert edtf.check(text).state is edtf.State.VALID


def test_how_many_examples_ran() -> None:
    assert [len(texts.split()) for texts in LEVELS.values()] == [13, 24, 26]


@pytest.mark.parametrize("text", [text for text, _ in EXAMPLES])
def test_no_beginning_of_a_valid_date_is_called_wrong(text: str) -> None:
    for length in range(len(text)):
        assert edtf.check(text[:length]).state is not edtf.State.WRONG, text[:length]


REFUSED = """1985-02-29 1900-02-29 2100-02-29 1985-13 1985-04-31 1985-04T10:00:00 Y17E0 1950S0 1955-02-30~
             195X-02-30 1985u y1985 １９８５ 2008/1964 [1960..1950] -0000 1985-04-12T24:20:30 [..1984,..1985]
             [1984..,1985] ../.. 1985-00 1985-04-00 1985-42 1985-21-01 [] 1985//1986 Y12345S9 1985-04-12T10:00:00/1986
             """.split()
BLANKS = ["1985 ", " 1985", "1985\n", "1985\t", "1984 ?", "[1667, 1668]"]


@pytest.mark.parametrize("text", [*REFUSED, *BLANKS])
def test_what_is_no_date_is_wrong_at_a_column(text: str) -> None:
    found = edtf.check(text)
    assert found.state is edtf.State.WRONG
    assert 1 <= found.column <= len(text)
    with pytest.raises(TextFault, match=r"\^"):
        raise_again(text)


def raise_again(text: str) -> None:
    try:
        edtf.parse(text)
    except TextFault as fault:
        raise TextFault(fault.text, fault.start, fault.end, str(fault)) from None


@pytest.mark.parametrize(
    "text", ["", "85", "985", "1985-", "1985-04-12T23:20", "19", "[1667", "Y17E", "1985-04-12T", "Y1985"]
)
def test_what_may_still_become_a_date_is_incomplete(text: str) -> None:
    assert edtf.check(text).state is edtf.State.INCOMPLETE


@pytest.mark.parametrize("text", ["2008/1964", "[1960..1950]", "1985-02-29", "195X-02-30", "-0000"])
def test_impossible_is_said_in_other_words_than_ill_formed(text: str) -> None:
    with pytest.raises(edtf.ImpossibleDate):
        edtf.parse(text)


BOUNDS = [
    ("1950S2", "1900-01-01", "1999-12-31"),
    ("Y171010000S3", "Y171000000-01-01", "Y171999999-12-31"),
    ("Y3388E2S3", "Y338000-01-01", "Y338999-12-31"),
    ("2001-34", "2001-04-01", "2001-06-30"),
    ("1984-1X", "1984-10-01", "1984-12-31"),
    ("195X-02-29", "1952-02-29", "1956-02-29"),
    ("2001-24", "2001-12-01", "2002-02-28"),
    ("2001-32", "2001-06-01", "2001-08-31"),
    ("156X-12-25", "1560-12-25", "1569-12-25"),
    ("1985/..", "1985-01-01", None),
    ("/1985", None, "1985-12-31"),
    ("[..1760-12-03]", None, "1760-12-03"),
    ("[1667,1760-12]", "1667-01-01", "1760-12-31"),
    ("1948~", "1948-01-01", "1948-12-31"),
    ("-0043", "-0043-01-01", "-0043-12-31"),
    ("1956-0X", "1956-01-01", "1956-09-30"),
    ("-198X", "-1989-01-01", "-1980-12-31"),
    ("2001-40", "2001-01-01", "2001-06-30"),
]


@pytest.mark.parametrize(("text", "first", "last"), BOUNDS)
def test_bounds(text: str, first: str | None, last: str | None) -> None:
    made = edtf.parse(text)
    assert (made.earliest and str(made.earliest), made.latest and str(made.latest)) == (first, last)


MARKS = [
    ("1984?", ("?", "", "")),
    ("2004-06-11%", ("%", "%", "%")),
    ("2004-06~-11", ("~", "~", "")),
    ("2004?-06-11", ("?", "", "")),
    ("?2004-06-~11", ("?", "", "~")),
    ("2004-%06-11", ("", "%", "")),
    ("2004?-06~", ("%", "~", "")),
]


@pytest.mark.parametrize(("text", "marks"), MARKS)
def test_what_a_qualifier_covers(text: str, marks: tuple[str, str, str]) -> None:
    """Specification, Level 2, “Qualification”: to the right of a part it covers all to its left too."""
    date = edtf.parse(text).single
    assert date is not None and date.marks == marks


PLAIN = [("1985-04~", "1985-04"), ("1985", "1985"), ("1985-XX", None), ("1985-21", None), ("1985/1986", None)]


@pytest.mark.parametrize(("text", "iso"), PLAIN)
def test_plain_calendar_dates(text: str, iso: str | None) -> None:
    assert plain_iso(edtf.parse(text)) == iso


def test_ranges() -> None:
    assert iso_range(edtf.parse("195X")) == "1950-01-01/1959-12-31"
    assert iso_range(edtf.parse("1950/..")) is None


digits = st.sampled_from("0123456789X")
dates = st.from_regex(
    r"[0-2][0-9X]{3}(-(0[1-9]|1[0-2]|1X|0X|XX|2[1-4])(-([0-2][0-9X]|3[01]|XX))?)?[?~%]?", fullmatch=True
)


@settings(max_examples=300)
@given(dates)
def test_properties_of_generated_dates(text: str) -> None:
    if edtf.check(text).state is not edtf.State.VALID:
        return
    made = edtf.parse(text)
    assert made.earliest is not None and made.latest is not None
    assert made.earliest <= made.latest
    assert all(edtf.check(text[:length]).state is not edtf.State.WRONG for length in range(len(text)))
    bare = text.rstrip("?~%")
    if "-" in bare:
        coarser = bare.rsplit("-", 1)[0]
        if coarser and "X" not in bare and "-2" not in bare[4:6]:
            whole = edtf.parse(coarser)
            assert whole.earliest is not None and whole.latest is not None
            assert whole.earliest <= made.earliest and made.latest <= whole.latest


@settings(max_examples=300)
@given(st.text(alphabet="0123456789X-?~%[]{}./,YEST:Z+ é", max_size=24))
def test_nothing_crashes(text: str) -> None:
    edtf.check(text)


KNOWN_DIFFERENCES = {
    "1985-02-29": "edtf-validate 2.0.0 takes 29 February in a year that had none",
    "1900-02-29": "the same",
    "2100-02-29": "the same",
    "1955-02-30~": "the same for 30 February with a qualifier",
    "1985-04T10:00:00": "edtf-validate takes a time after a month",
    "1985\n": "edtf-validate takes a newline or tab at the end",
    "1985\t": "the same",
    "[1960..1950]": "edtf-validate does not compare the ends of a range in a set",
    "../..": "edtf-validate takes an interval without any date",
    "Y12345S9": "edtf-validate takes more significant digits than the year has",
}


@pytest.mark.parametrize("text", [*(text for text, _ in EXAMPLES), *REFUSED, *BLANKS])
def test_against_an_independent_validator(text: str) -> None:
    """PyPI `edtf-validate` 2.0.0; where it is known to be wrong, KNOWN_DIFFERENCES says why."""
    ours = edtf.check(text).state is edtf.State.VALID
    if text not in KNOWN_DIFFERENCES:
        assert ours == bool(is_valid(text))
