"""Codes of a worksheet's lines (check character: ISO/IEC 7064)."""

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.sitting.worksheet_codes import (
    ASKED,
    CodedLine,
    WrittenAnswer,
    check_letter,
    own_number,
    read_answers,
    read_code,
    write_code,
)

PUBLISHED = [
    # The Global Release Identifier's own example (GRid standard, MOD 37,36): A1-2425G-ABC1234002-M; from memory.
    ("A12425GABC1234002", "M"),
]


@pytest.mark.parametrize(("text", "check"), PUBLISHED)
def test_the_check_character(text: str, check: str) -> None:
    assert check_letter(text) == check


LINES = [
    *(CodedLine("TRA-0042", field) for field in ASKED.values()),
    CodedLine("TRA-0001", "person", 3),
    CodedLine("TRB-12345", "person", 12),
    CodedLine("OURA-0007", "date"),
    CodedLine("TRXA-0007", "date"),  # a prefix that begins with ours
    CodedLine("TR2A-0042", "person", 3),
    CodedLine("W4D2A-0007", "date"),
]


@every_row("line", LINES)
def test_both_ways(line: CodedLine) -> None:
    code = write_code(line, "TR")
    assert read_code(code, "TR") == line
    assert read_code(code.lower().replace("-", " "), "TR") == line
    assert len(code) < 13


def test_a_code_is_short() -> None:
    assert write_code(CodedLine("TRA-0042", "person", 3), "TR")[:-1] == "A42-W3-"


def test_every_single_slip_of_the_pen_is_noticed() -> None:
    """What ISO/IEC 7064 promises: every single wrong character. No slip is read as another line."""
    good = "A42W3" + check_letter("A42W3")
    for at, letter in enumerate(good):
        for other in "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ":
            if other != letter:
                with pytest.raises(WrongUse):
                    read_code(good[:at] + other + good[at + 1 :], "TR")


@pytest.mark.parametrize("code", ["", "A42", "42-W3-K", "A42-X-K", "A42-D3-K", "A-W-K", "TRA-0042"])
def test_what_is_no_code(code: str) -> None:
    with pytest.raises(WrongUse, match="is no code of a worksheet"):
        read_code(code, "TR")


TEXT = """# TRA-0042
A42-D-X : summer 1931
a42 w3 k = Anna

A42-S-1: It rained.

Then it did not: never.
# a remark
A42-P-2:
"""


def test_plain_text() -> None:
    assert list(read_answers(TEXT)) == [
        WrittenAnswer(2, "A42-D-X", "summer 1931"),
        WrittenAnswer(3, "a42 w3 k", "Anna"),
        WrittenAnswer(5, "A42-S-1", "It rained.\n\nThen it did not: never."),
    ]
    assert list(read_answers("")) == []
    assert list(read_answers("A42-P-2: Leida")) == [WrittenAnswer(1, "A42-P-2", "Leida")]
    assert list(read_answers("\n\nA42-P-2: Leida")) == [WrittenAnswer(3, "A42-P-2", "Leida")]


STRAY = """A42-D-X: summer 1931
Anna by the door
A42-P-2: Haapsalu,
  on the pier
A42-S-1: It rained.
A42-O-Y Easter
B7-O-9:
Easter
and then Whitsun
more
"""


def test_a_line_without_a_code_goes_on_only_where_the_sheet_has_room_for_it() -> None:
    """Rule of our own; a line that begins with a blank is a folded line (RFC 5322, 2.2.3)."""
    assert list(read_answers(STRAY, lambda code: "-S-" in code)) == [
        WrittenAnswer(1, "A42-D-X", "summer 1931", (2, "Anna by the door")),
        WrittenAnswer(3, "A42-P-2", "Haapsalu,\n  on the pier"),
        WrittenAnswer(5, "A42-S-1", "It rained.", (6, "A42-O-Y Easter")),
        WrittenAnswer(7, "B7-O-9", "Easter\nmore", (9, "and then Whitsun")),
    ]


def test_words_before_any_code() -> None:
    with pytest.raises(WrongUse, match="Line 1 stands before any code"):
        list(read_answers("Anna\nA42-W3-K: Anna"))


def test_a_code_of_a_prefix_with_digits_is_found_in_a_text() -> None:
    code = write_code(CodedLine("TR2A-0042", "date"), "TR")
    assert code.startswith("TR2A42-D-")
    assert list(read_answers(f"{code}: 1931")) == [WrittenAnswer(1, code, "1931")]
    assert write_code(CodedLine("TR2A-0042", "date"), "TR2")[:-1] == "A42-D-"


OWN = ("own-clothes", "own-what-was-cooked")


@pytest.mark.parametrize("field", OWN)
def test_a_question_of_the_collections_own_has_a_code_that_stays(field: str) -> None:
    line = CodedLine("TRA-0042", field)
    code = write_code(line, "TR")
    assert code.startswith(f"A42-Q{own_number(field)}-")
    assert read_code(code, "TR", OWN) == read_code(code, "TR", (*reversed(OWN), "own-more")) == line
    assert list(read_answers(f"{code}: a hat")) == [WrittenAnswer(1, code, "a hat")]
    with pytest.raises(WrongUse, match=r"does not ask\. Put the question back into prompts\.toml"):
        read_code(code, "TR")


def test_a_code_of_two_questions_is_of_none() -> None:
    """There are 100,000 numbers; two fields that have the same one are found here by trying."""
    seen: dict[int, str] = {}
    for at in range(100_000):
        field = f"own-{at}"
        if (namesake := seen.setdefault(own_number(field), field)) != field:
            break
    assert namesake != field
    with pytest.raises(WrongUse, match="does not ask"):
        read_code(write_code(CodedLine("TRA-0042", field), "TR"), "TR", (field, namesake))


def test_a_question_without_its_number_is_no_code() -> None:
    with pytest.raises(WrongUse, match="is no code of a worksheet"):
        read_code("A42-Q-" + check_letter("A42Q"), "TR", OWN)


def test_the_last_line_may_be_left_empty() -> None:
    assert list(read_answers("A42-D-X: 1931\nA42-P-2:")) == [WrittenAnswer(1, "A42-D-X", "1931")]
