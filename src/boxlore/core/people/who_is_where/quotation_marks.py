"""Quotation marks: around several names, as copied from the paper (`'Em, Lottie, Mr. Crabbe'`), they part nothing.

A mark that opens what stands behind it, and the one that closes it behind a comma or a point, are left out. Those
around one name or a part of one stay, for they tell what somebody is called (`Bill “Tiny” Rusk`).
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.tokens import Element, each_as_one

_CLOSES = {"'": "'", '"': '"', "‘": "’", "“": "”", "„": "“”", "«": "»", "»": "«", "’": "’", "”": "”"}
"""A mark that opens -> those that close it."""

_PARTS = ("comma", "end", "and", "colon")


def without_marks_around(elements: Sequence[Element]) -> list[Element]:
    """The elements without quotation marks that stand around several names."""
    left_out = {
        near
        for at, element in enumerate(elements[1:-1], 1)
        if element.kind == "and" and element.text.lower() == "n"
        for near in (at - 1, at + 1)
        if elements[near].text in _CLOSES  # `Dot 'n' Sid`
    }
    for at, element in enumerate(elements):
        if at in left_out or element.text not in _CLOSES or (at and elements[at - 1].kind == "word"):
            continue
        closes = (end for end in range(at + 1, len(elements)) if elements[end].text in _CLOSES[element.text])
        end = next(closes, 0)
        if any(inside.kind in _PARTS for inside in elements[at + 1 : end]):
            left_out |= {at, end}
    return [element for at, element in enumerate(elements) if at not in left_out]


def with_nicknames_whole(elements: Sequence[Element]) -> list[Element]:
    """The elements, a short quotation behind a name as one word of it: `Knut «Bamse» Haugen`."""
    return each_as_one(elements, _end_of_nickname, _nickname)


def _nickname(told: Sequence[Element]) -> Element:
    return replace(told[-2], kind="word", start=told[0].start, end=told[-1].end)


_LONGEST_NICKNAME = 4


def _end_of_nickname(elements: Sequence[Element], at: int) -> int:
    """Behind the mark that closes a quotation within a name: a large word stands before it and behind it; 0 where none
    begins here."""
    if at == 0 or not _is_of_a_name(elements[at - 1]):
        return 0
    closing = _CLOSES.get(elements[at].text, "")
    ends = (
        end for end in range(at + 2, min(at + _LONGEST_NICKNAME + 1, len(elements))) if elements[end].text in closing
    )
    end = next(ends, 0) if closing else 0
    inside, behind = elements[at + 1 : end], elements[end + 1 : end + 2]
    is_told = bool(inside) and inside[-1].is_large and not any(piece.kind in _PARTS for piece in inside)
    return end + 1 if is_told and behind and _is_of_a_name(behind[0]) else 0


def _is_of_a_name(word: Element) -> bool:
    return word.kind == "word" and word.is_large
