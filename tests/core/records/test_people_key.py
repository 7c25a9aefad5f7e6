"""The people key (captioning groups row by row, left to right: common practice, no source)."""

from dataclasses import replace

import pytest
from tests.every_row import every_row

from boxlore.core.records.item_record import PersonShown, StatementView
from boxlore.core.records.people_key import centre, key_of, unplaced
from boxlore.core.statements import KEEPER, Sure


def shown(name: str, *area: float, scan: str = "scan", sure: Sure = Sure.SURE) -> PersonShown:
    told = StatementView(
        statement=name, field="person", words=name, language="en", source=KEEPER, said_by="", sure=sure,
        audience="anyone", recorded_at="",
    )  # fmt: skip
    return PersonShown(told=told, name=name, scan=scan, area=area)


def rows(*people: PersonShown) -> list[tuple[str, str]]:
    return [(row.name, " ".join(one.name if one else "?" for one in row.people)) for row in key_of(people)]


def line(y: float, xs: str, names: str, size: float = 0.07) -> list[PersonShown]:
    return [shown(name, float(f"0.{x}"), y, size, size) for x, name in zip(xs, names, strict=True)]


CASES = [
    ("nobody is marked", [shown("A")], []),
    ("one", line(0.4, "5", "A"), [("", "A")]),
    ("a pair, the second marked first", line(0.4, "52", "BA"), [("", "A B")]),
    (
        "nine in two rows",
        line(0.5, "23456", "ABCDE") + line(0.3, "2357", "WXYZ"),
        [("back row", "W X Y Z"), ("front row", "A B C D E")],
    ),
    (
        "three rows",
        line(0.2, "345", "ABC") + line(0.4, "246", "DEF") + line(0.6, "35", "GH"),
        [("back row", "A B C"), ("middle row", "D E F"), ("front row", "G H")],
    ),
    (
        "four rows",
        line(0.1, "34", "AB") + line(0.3, "34", "CD") + line(0.5, "34", "EF") + line(0.7, "34", "GH"),
        [
            ("back row", "A B"), ("second row from the back", "C D"), ("third row from the back", "E F"),
            ("front row", "G H"),
        ],
    ),
    ("children beside them are no front row", line(0.4, "23", "AB") + line(0.55, "67", "CD"), [("", "A B C D")]),
    ("one child in front of two is no row", line(0.4, "26", "AC") + line(0.55, "4", "B"), [("", "A B C")]),
    (
        "one child in front of four is one",
        line(0.4, "2468", "ABCD") + line(0.6, "5", "E"),
        [("back row", "A B C D"), ("front row", "E")],
    ),
    ("heads of many heights in one line", line(0.40, "246", "ACE") + line(0.44, "357", "BDF"), [("", "A B C D E F")]),
    (
        "seven tenths of a head lower is the same row",
        line(0.40, "2468", "ACEG", size=0.1) + line(0.47, "357", "BDF", size=0.1),
        [("", "A B C D E F G")],
    ),
    (
        "nine tenths of a head lower is a row in front",
        line(0.40, "2468", "ABCD", size=0.1) + line(0.49, "357", "EFG", size=0.1),
        [("back row", "A B C D"), ("front row", "E F G")],
    ),
    (
        "points instead of boxes",
        [shown("A", 0.2, 0.3), shown("B", 0.4, 0.31), shown("C", 0.25, 0.6), shown("D", 0.45, 0.6)],
        [("back row", "A B"), ("front row", "C D")],
    ),
]  # fmt: skip


@every_row(("why", "people", "wanted"), CASES)
def test_rows(why: str, people: list[PersonShown], wanted: list[tuple[str, str]]) -> None:
    assert rows(*people) == wanted


def told_at(name: str, row: str, position: int) -> PersonShown:
    return replace(shown(name), row=row, position=position)


def test_places_that_were_told_without_a_marker() -> None:
    people = [told_at("Anna", "", 3), told_at("Ruth", "", 1), shown("Tui")]
    (row,) = key_of(people, [("", 2)])
    assert (row.name, [one.name if one else "?" for one in row.people]) == ("", ["Ruth", "?", "Anna"])
    assert [one.name for one in unplaced(people)] == ["Tui"]
    two = [
        told_at("Jane", "front", 1),
        told_at("Ann", "back", 2),
        told_at("Pat", "back", 1),
        told_at("Tom", "seated", 1),
    ]
    assert rows(*two) == [("back row", "Pat Ann"), ("seated", "Tom"), ("front row", "Jane")]
    assert key_of([], [("", 1)]) == ()


def test_nobody_is_lost() -> None:
    """Whatever the markers, each person stands in exactly one row, or among the unplaced."""
    people = [shown(str(at), (at * 37 % 90) / 100, (at * 53 % 80) / 100, 0.05, 0.05) for at in range(30)]
    people += [shown("someone"), shown("back", 0.1, 0.1, scan="verso")]
    found = [one.name for row in key_of(people) for one in row.people if one] + [one.name for one in unplaced(people)]
    assert sorted(found) == sorted(one.name for one in people)
    assert [one.name for one in unplaced(people)] == ["someone", "back"]


def test_the_middle_of_a_marker() -> None:
    assert centre((0.2, 0.4, 0.2, 0.1)) == pytest.approx((0.3, 0.45))
    assert centre((0.2, 0.4)) == (0.2, 0.4)
