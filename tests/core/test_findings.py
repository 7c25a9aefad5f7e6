"""A count in a sentence: the rule of English grammar, from memory. A kind of fault told once: a rule of our own."""

import pytest

from boxlore.core.findings import faults_told, several

COUNTS = [
    ((0, "item"), "0 items"),
    ((1, "item"), "1 item"),
    ((2, "item"), "2 items"),
    ((1200, "scan"), "1,200 scans"),
    ((1, "person", "people"), "1 person"),
    ((2, "person", "people"), "2 people"),
    ((1, "copy is", "copies are"), "1 copy is"),
    ((0, "copy is", "copies are"), "0 copies are"),
]


@pytest.mark.parametrize(("said", "words"), COUNTS)
def test_one_is_one_and_all_others_are_several(said: tuple[int, str], words: str) -> None:
    assert several(*said) == words


NO_ITEM = "There is no photograph TRA-{} here. boxlore find shows what there is."


def test_few_faults_are_told_each_in_the_order_of_their_lines() -> None:
    faults = [(2, NO_ITEM.format("0002")), (3, "“storey” is no field."), (4, NO_ITEM.format("0004"))]
    assert faults_told(faults) == [f"Line {line}: {why}" for line, why in faults]
    assert faults_told([]) == []


def test_many_of_one_kind_are_told_once_with_their_count() -> None:
    faults = [(line, NO_ITEM.format(f"{line:05d}")) for line in range(3, 80_003)]
    faults.insert(1, (4, "“storey” is no field."))
    assert faults_told(faults) == [
        f"Line 3: {NO_ITEM.format('00003')} It is so in 79,999 more lines: 4, 5, 6, 7, 8, 9, …",
        "Line 4: “storey” is no field.",
    ]


def test_all_lines_are_named_where_they_are_few() -> None:
    faults = [(line, f"“{line}th field” is no field.") for line in (2, 5, 7, 9)]
    assert faults_told(faults) == ["Line 2: “2th field” is no field. It is so in 3 more lines: 5, 7, 9"]
