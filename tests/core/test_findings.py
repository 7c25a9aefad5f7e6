"""A count in a sentence: the rule of English grammar, from memory."""

import pytest

from boxlore.core.findings import several

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
