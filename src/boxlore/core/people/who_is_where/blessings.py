"""What is wished to somebody dead, or to anybody, behind the name: `Dad, God rest him, on the right`.

    blessing = word of blessing {word of blessing}      ; between two marks, or a mark and an `and`; two words at least

All its words are of blessing in one language or another and one of them says what is wished (rest, peace, soul), so
that it names nobody: it becomes a note of whoever was told before it, and what stands behind it goes on with her.
Common practice of the languages, from memory; no source.
"""

from collections.abc import Sequence
from dataclasses import replace

from boxlore.core.people.who_is_where.small_words_table import BLESSED_WITH, BLESSINGS
from boxlore.core.people.who_is_where.tokens import Element, each_as_one, note_over
from boxlore.core.statements import fold

_MARKS = ("comma", "end", "colon", "dash", "and")
_FEWEST = 2
_ALONE = frozenset("rip r.i.p r.i.p. buonanima selig zaliger salig q.e.p.d.".split())
"""Wishes of one word."""
_BEGIN = frozenset("god rip r.i.p. gott dios deus dieu que may bless rest jumal царство царствие".split())
"""Words with which a wish begins that stands behind the name without a mark: `Uncle Arthur God rest him`."""


def with_blessings(elements: Sequence[Element], text: str) -> list[Element]:
    """The elements, each blessing as a note of whoever stands before it: behind a comma or a dash, or at once."""
    return each_as_one(elements, _end, lambda told: replace(note_over(told[told[0].kind in _MARKS :], text), phrase=""))


def _end(elements: Sequence[Element], at: int) -> int:
    """Behind the blessing that begins here, with its comma or its dash or without one, and ends at a mark; 0 where
    none does."""
    behind_mark = at > 0 and elements[at].kind in ("comma", "dash")
    behind_name = at > 0 and elements[at - 1].kind == "word" and elements[at - 1].is_large
    if not behind_mark and not (behind_name and fold(elements[at].text) in _BEGIN):
        return 0
    start = at + behind_mark
    end = next((end for end in range(start, len(elements)) if _is_mark(elements[end])), len(elements))
    words = [word for element in elements[start:end] for word in fold(element.text).split()]
    is_blessing = len(words) >= _FEWEST or not _ALONE.isdisjoint(words)
    plains = {word.strip(".!'’") for word in words}
    return end if is_blessing and plains <= BLESSINGS and not plains.isdisjoint(BLESSED_WITH) else 0


def _is_mark(element: Element) -> bool:
    return element.kind in _MARKS and not (element.kind == "and" and fold(element.text) in BLESSINGS)
