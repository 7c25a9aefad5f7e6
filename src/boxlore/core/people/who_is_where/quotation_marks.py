"""Quotation marks around several names, as copied from the paper: `'Em, Lottie, Mr. Crabbe'`; they part nothing.

A mark that opens what stands behind it, and the one that closes it behind a comma or a point, are left out. Those
around one name or a part of one stay, for they tell what somebody is called (`Bill “Tiny” Rusk`).
"""

from collections.abc import Sequence

from boxlore.core.people.who_is_where.tokens import Element

_CLOSES = {"'": "'", '"': '"', "‘": "’", "“": "”", "„": "“”", "«": "»", "»": "«", "’": "’", "”": "”"}
"""A mark that opens -> those that close it."""

_PARTS = ("comma", "end", "and", "colon")


def without_marks_around(elements: Sequence[Element]) -> list[Element]:
    """The elements without quotation marks that stand around several names."""
    left_out: set[int] = set()
    for at, element in enumerate(elements):
        if at in left_out or element.text not in _CLOSES or (at and elements[at - 1].kind == "word"):
            continue
        closes = (end for end in range(at + 1, len(elements)) if elements[end].text in _CLOSES[element.text])
        end = next(closes, 0)
        if any(inside.kind in _PARTS for inside in elements[at + 1 : end]):
            left_out |= {at, end}
    return [element for at, element in enumerate(elements) if at not in left_out]
