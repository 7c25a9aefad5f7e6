"""Marks through time (rules of our own, no outside source)."""

import pytest

from boxlore.core.originals.location_history import PastMark, Places, Spell, Stated, Withdrawn, rows_with_mark, spells
from boxlore.core.records.marks import Mark


def said(subject: str, field: str, words: str, at: str, *, act: str = "", replaces: str = "") -> Stated:
    return Stated(subject, field, f"{subject}{field}{at}", act or at, words, at, replaces)


ONE = [said("i", "kept", "x 1", "01"), said("i", "kept", "y 2", "03", replaces="ikept01")]


def test_a_value_holds_until_it_is_replaced() -> None:
    assert spells(ONE, Withdrawn()) == [Spell("x 1", "01", "03"), Spell("y 2", "03")]


def test_an_undone_change_held_for_a_while() -> None:
    undone = Withdrawn([("05", "03", "05")])
    assert spells(ONE, undone) == [Spell("x 1", "01", "03"), Spell("y 2", "03", "05"), Spell("x 1", "05")]


def test_done_again_it_holds_again() -> None:
    again = Withdrawn([("05", "03", "05"), ("07", "05", "07")])
    assert [one.words for one in spells(ONE, again)] == ["x 1", "y 2", "x 1", "y 2"]
    assert again.at("03", "06") and not again.at("03", "07")


def test_the_same_words_again_are_one_spell() -> None:
    again = [*ONE[:1], said("i", "kept", "x 1", "03", replaces="ikept01")]
    assert spells(again, Withdrawn()) == [Spell("x 1", "01")]


def test_a_value_taken_back_leaves_a_time_without_one() -> None:
    rows = [ONE[0], said("i", "kept", "y 2", "05")]
    assert spells(rows, Withdrawn([("03", "01", "03")])) == [Spell("x 1", "01", "03"), Spell("y 2", "05")]
    assert spells(ONE[:1], Withdrawn([("03", "01", "03")])) == [Spell("x 1", "01", "03")]


CONTAINERS = [
    said("x", "label", "3", "00"),
    said("x", "kind", "box", "00"),
    said("y", "label", "4", "00"),
    said("y", "inside", "room", "00"),
    said("x", "label", "7", "02", replaces="xlabel00"),
]


def test_a_renumbered_box_changes_the_marks_of_what_is_in_it() -> None:
    places = Places(CONTAINERS, Withdrawn())
    assert [(one.mark.short, one.since, one.until) for one in places.past_marks("i", ONE)] == [
        ("3/1", "01", "02"),
        ("7/1", "02", "03"),
        ("4/2", "03", ""),
    ]
    assert places.ever_labelled("3") == places.ever_labelled("7") == ["x"]


def test_an_item_in_a_container_without_a_label_has_no_mark_yet() -> None:
    later = Places([said("x", "label", "3", "02")], Withdrawn())
    assert [(one.mark.short, one.since) for one in later.past_marks("i", ONE[:1])] == [("3/1", "02")]
    assert later.past_marks("i", [said("i", "kept", "", "01")]) == []


def test_a_mark_that_goes_on_is_told_once() -> None:
    """The box is said to be a box only later; its mark is the same."""
    places = Places([said("x", "label", "3", "00"), said("x", "kind", "box", "02")], Withdrawn())
    assert [(one.mark.short, one.since, one.until) for one in places.past_marks("i", ONE[:1])] == [("3/1", "01", "")]


def test_a_circle_of_containers_ends() -> None:
    places = Places(
        [
            said("x", "label", "3", "00"),
            said("x", "inside", "y", "00"),
            said("y", "label", "4", "00"),
            said("y", "inside", "x", "00"),
        ],
        Withdrawn(),
    )
    assert [one.mark.short for one in places.past_marks("i", ONE[:1])] == ["4/3/1"]


@pytest.mark.parametrize("asked", ["3/1", "Blue/1", "blue/1"])
def test_those_of_now_come_first(asked: str) -> None:
    mark = Mark((("box", asked.split("/")[0].capitalize()),), 1)
    rows = [PastMark("a", mark, "01", "02"), PastMark("b", mark, "03"), PastMark("c", mark, "02", "03")]
    assert [one.item for one in rows_with_mark(asked, rows)] == ["b", "c", "a"]


def test_words_that_no_mark_can_be_read_from_are_passed_over() -> None:
    """An older collection may hold them; `boxlore check` names them."""
    places = Places([said("x", "label", "3", "00")], Withdrawn())
    rows = [ONE[0], said("i", "kept", "x one two", "05", replaces="ikept01")]
    assert [past.mark.short for past in places.past_marks("i", rows)] == ["3/1"]
