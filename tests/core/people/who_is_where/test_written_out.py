"""Who stands where, read and written back (front row first, left to right: common practice, no source)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawn import drawn
from tests.every_row import every_row

from boxlore.core.people.who_is_where.reader import read_who
from boxlore.core.people.who_is_where.written_out import ORDER, Placed, note_of, write_placed

BOTH_WAYS = [
    ("1 Ruth; 2 ?; 3 Anna (Ruth's cousin)",
     [Placed("Ruth", 1), Placed("", 2), Placed("Anna", 3, note="Ruth's cousin")]),
    ("front row, left to right: Tom, Mia?; back row, left to right: Anna, ?, the tall man",
     [Placed("Tom", 1, "front"), Placed("Mia", 2, "front", unsure=True), Placed("Anna", 1, "back"),
      Placed("", 2, "back"), Placed("the tall man", 3, "back")]),
    ("seated, left to right: Helmi; standing, left to right: Juhan, Arvo",
     [Placed("Helmi", 1, "seated"), Placed("Juhan", 1, "standing"), Placed("Arvo", 2, "standing")]),
    ("second from the right: Ruth; first from the right: ?", [Placed("Ruth", -2), Placed("", -1)]),
    ("back row, left to right: 12 Ruth; number 11 from the right: Anna; first from the right: Tom",
     [Placed("Ruth", 12, "back"), Placed("Anna", -11, "back"), Placed("Tom", -1, "back")]),
    ("back row, left to right: 2 Ruth; 5 Anna", [Placed("Ruth", 2, "back"), Placed("Anna", 5, "back")]),
]  # fmt: skip


def read_placed(text: str) -> list[Placed]:
    return list(read_who(text).people)


@pytest.mark.parametrize(("text", "people"), BOTH_WAYS)
def test_both_ways(text: str, people: list[Placed]) -> None:
    assert read_placed(text) == people
    assert write_placed(people) == text


SAID = [
    ("Back row, left to right: Anna, Ruth and Tom. Front row: Mia, unknown.",
     [("Anna", 1, "back"), ("Ruth", 2, "back"), ("Tom", 3, "back"), ("Mia", 1, "front"), ("", 2, "front")]),
    ("l. to r.: Ruth, Anna", [("Ruth", 1, ""), ("Anna", 2, "")]),
    ("From the left: Ruth & Anna", [("Ruth", 1, ""), ("Anna", 2, "")]),
    ("right to left: Ruth, Anna, Tom", [("Tom", 1, ""), ("Anna", 2, ""), ("Ruth", 3, "")]),
    ("1) Ruth; 3) Anna", [("Ruth", 1, ""), ("Anna", 3, "")]),
    ("Ruth, Anna (with Tom, her son), Con", [("Ruth", 1, ""), ("Anna", 2, ""), ("Con", 3, "")]),
    ("", []), ("?", [("", 1, "")]), ("(", [("(", 1, "")]), ("Frontier Jack", [("Frontier Jack", 1, "")]),
]  # fmt: skip


@every_row(("text", "people"), SAID)
def test_what_people_say(text: str, people: list[tuple[str, int, str]]) -> None:
    assert [(one.words, one.position, one.row) for one in read_placed(text)] == people


@pytest.mark.parametrize("text", ["Ruth", "the back of Tom's head", "Back then Ruth"])
def test_a_plain_name_is_in_no_row(text: str) -> None:
    assert read_placed(text) == [Placed(text, 1)]


NOTED = [("Anna (Ruth's cousin)", "Ruth's cousin"), ("Anna", ""), ("(only a note)", ""), (" Tom (her son) ", "her son")]


@pytest.mark.parametrize(("words", "note"), NOTED)
def test_the_note_behind_a_name(words: str, note: str) -> None:
    assert note_of(words) == note


WORD = st.sampled_from(["Ruth", "Õie Mägi", "the tall man", "Anna", "Con", "Mary-Ann Rourke"])
NOTES = st.sampled_from(["", "Ruth's cousin", "with Tom, her son", "aged 5"])
PEOPLE = st.lists(st.tuples(WORD | st.just(""), NOTES, st.booleans()), min_size=1, max_size=6)


@drawn(80)
@given(st.dictionaries(st.sampled_from(sorted(ORDER)), PEOPLE, min_size=1, max_size=3))
def test_what_is_written_is_read_back(rows: dict[str, list[tuple[str, str, bool]]]) -> None:
    if "" in rows:  # people in no row are numbered, and stand alone
        rows = {"": rows[""]}
    told = [
        Placed(words, at, row, note, unsure=unsure and bool(words))
        for row in sorted(rows, key=lambda one: ORDER[one])
        for at, (words, note, unsure) in enumerate(rows[row], 1)
    ]
    assert read_placed(write_placed(told)) == told


@drawn(80)
@given(st.text(max_size=60))
def test_any_text_gives_what_can_be_made_of_it(text: str) -> None:
    for one in read_placed(text):
        assert one.words == one.words.strip()
