"""Marks and numbers (rules of our own, no outside source)."""

import pytest
from tests.every_row import every_row

from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import (
    Mark,
    bare_label,
    check_label,
    label_key,
    looks_like_number,
    number_text,
    short_form,
)

BOTH_WAYS = [
    (Mark((("box", "3"), ("folder", "12")), 4), "Box 3 / Folder 12 / Item 4", "3/12/4"),
    (Mark((("album", "Blue"),), 7), "Album Blue / Item 7", "Blue/7"),
    (Mark((("box", "1"),)), "Box 1", "1"),
]


@pytest.mark.parametrize(("mark", "long", "short"), BOTH_WAYS)
def test_marks_are_written_and_read(mark: Mark, long: str, short: str) -> None:
    assert (mark.long, str(mark), mark.short) == (long, long, short)
    assert short_form(long) == short
    assert short_form(short) == short


def test_an_item_lies_in_the_containers_of_its_mark() -> None:
    marks = [*(mark for mark, _, _ in BOTH_WAYS), None]
    paths = [Record(id="a", number="TRA-0001", mark=mark).container_path for mark in marks]
    assert paths == [(("box", "3"), ("folder", "12")), (("album", "Blue"),), (("box", "1"),), ()]


@pytest.mark.parametrize(
    ("kind", "written", "label"),
    [
        ("box", "Box 1", "1"), ("box", " 1 ", "1"), ("folder", "folder  12", "12"), ("box", "box", "box"),
        ("folder", "Box 1", "Box 1"), ("box", "boxwood", "boxwood"),
    ],
)  # fmt: skip
def test_a_label_may_be_written_with_its_kind(kind: str, written: str, label: str) -> None:
    assert bare_label(kind, written) == label


def test_labels_by_kind() -> None:
    assert BOTH_WAYS[0][0].label("folder") == "12"
    assert BOTH_WAYS[0][0].label("album") == ""


def test_an_empty_step_is_refused() -> None:
    with pytest.raises(WrongUse, match="“3//4” is no mark") as refused:
        short_form("3//4")
    assert refused.value.what_to_do == "Write it like 3/12/4 or Box 3 / Folder 12 / Item 4."


@every_row(
    ("text", "is_number"),
    [
        ("TRA-0042", True),
        (" tra-0042 ", True),
        ("TR2A-0001", True),
        ("t22222a-0001", True),
        ("3/12/4", False),
        ("TRA-42", False),
        ("2TA-0042", False),
        ("T-0042", False),
    ],
)
def test_numbers_are_known_by_their_shape(text: str, is_number: bool) -> None:
    assert looks_like_number(text) is is_number


def test_numbers_grow_past_four_digits() -> None:
    assert number_text("TR", "A", 42) == "TRA-0042"
    assert number_text("TR", "A", 12345) == "TRA-12345"


@pytest.mark.parametrize("label", ["7/1", "/", "...", "", " "])
def test_what_is_no_label(label: str) -> None:
    with pytest.raises(WrongUse, match="is no label: it must have letters or figures"):
        check_label(label)


def test_labels() -> None:
    for label in ("7", "A-1", "Memm’s tin", "木"):
        check_label(label)


def test_labels_stand_as_they_are_counted() -> None:
    assert sorted(["b", "10", "a", "2", "1"], key=label_key) == ["1", "2", "10", "a", "b"]
