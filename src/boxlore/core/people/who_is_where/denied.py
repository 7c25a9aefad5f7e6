"""Somebody told not to be who is seen, with whoever it is instead: `not Grandad but his brother Wilf`.

    denied = "not" somebody ("but" / mark ["but"] verb / mark "but") somebody

Whoever is denied is a note of the one who is told instead, and nobody in the picture.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.item_words import begins_person
from boxlore.core.people.who_is_where.small_words_table import BUT, DENY
from boxlore.core.people.who_is_where.tokens import PLACES, Element

_MARKS = ("comma", "end", "dash")
_ENDS = (*_MARKS, "and", "with", "note", "colon", "position", "from the right", *PLACES)
_LONGEST = 4


def with_denied(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, whoever is denied as a note behind the one told instead."""
    kept: list[Element] = []
    waiting: Element | None = None
    at = 0
    while at < len(elements):
        element = elements[at]
        end = _end(elements, at)
        if end and waiting is None:
            waiting = replace(element, kind="note", text=text[element.start : elements[end - 1].end], inside=())
            at = _behind(elements, end)
            continue
        if waiting is not None and element.kind in _ENDS and kept and kept[-1].kind != "verb":
            kept.append(waiting)
            waiting = None
        kept.append(element)
        at += 1
    return kept if waiting is None else [*kept, waiting]


def _end(elements: Sequence[Element], at: int) -> int:
    """Behind the one who is denied here; 0 where nobody is."""
    if elements[at].plain not in DENY or not begins_person(elements[at + 1 :]):
        return 0
    for end in range(at + 2, min(at + 2 + _LONGEST, len(elements))):
        element = elements[end]
        if element.plain in BUT and not element.is_large:
            return end if begins_person(elements[end + 1 :]) else 0
        if element.kind in _MARKS:
            behind = elements[_behind(elements, end) :]
            says = elements[end + 1 : end + 2] and elements[end + 1].plain in BUT
            leads = behind[:1] != [] and behind[0].kind == "verb"
            return end if (says or leads) and begins_person(behind[leads:]) else 0
    return 0


def _behind(elements: Sequence[Element], end: int) -> int:
    """Behind the mark and the word for `but`."""
    while end < len(elements) and (elements[end].kind in _MARKS or elements[end].plain in BUT):
        end += 1
    return end
