"""Whether a story says of somebody named in it that they are on the picture: `The boy on the left is Jaan.`

A sentence says who is seen where it has a place in the picture (`on the left`, `in front`, `second from the right`),
shows (`This is Jaan`), or points at the picture (`here`, `in this photo`); and where it tells nothing that was, or is
elsewhere now, as a caption does (`Jaan with the dog`, `told_of_past`). One word that is besides something else
(`left`, `right`, `back`) is no place. A rule of our own, which closes a scan where it does not know.
"""

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator
from functools import lru_cache

from boxlore.core.people.names_in_text.hits import Hit
from boxlore.core.people.who_is_where.position_words_table import WEAK
from boxlore.core.people.who_is_where.tokens import PLACES, Element, elements_of
from boxlore.core.people.who_is_where.told_of_past import is_elsewhere
from boxlore.core.statements import fold

_SENTENCE_ENDS = re.compile(r"(?<=\w{3})[.!?]+(?=\s)|\n")
_POINTS = re.compile(
    r"\b(?:here|pictured|seen|siin|siinsel|pildil|fotol|hier|ici|aqui|tassa|kuvassa|здесь|тут|снимке|фото|фотографии|"
    r"zdjeciu|tutaj|tu|(?:in|on) (?:this|the) (?:picture|photo|photograph|print|snap|card|slide))\b"
)


def names_seen(words: str, hits: Iterable[Hit]) -> Iterator[Hit]:
    """Those of the names in a story, in any order, whose sentence says that the bearer is seen."""
    ends = [0, *(match.end() for match in _SENTENCE_ENDS.finditer(words)), len(words)]
    for hit in hits:
        first = ends[bisect_right(ends, hit.start) - 1]
        last = ends[min(bisect_left(ends, hit.end), len(ends) - 1)]
        sentence, start, end = words[first:last], hit.start - first, hit.end - first
        is_said = any(told_end <= start or end <= told_start for told_start, told_end in _saying(sentence))
        if is_said or not is_elsewhere(sentence, start, end):
            yield hit


@lru_cache(1 << 12)
def _saying(sentence: str) -> tuple[tuple[int, int], ...]:
    """Where a sentence says that somebody is seen; a name itself says nothing: `Toivo`, Finnish third."""
    folded = "".join(plain if len(plain := fold(letter)) == 1 else letter for letter in sentence)
    points = (match.span() for match in _POINTS.finditer(folded))
    return *points, *((one.start, one.end) for one in elements_of(sentence) if _is_a_place(one))


def forget_sentences() -> None:
    """Forget every sentence that was read: a strike calls it."""
    _saying.cache_clear()


def _is_a_place(element: Element) -> bool:
    several = " " in element.text.strip()
    if element.kind == "verb":
        return several  # `This is`, `Das ist`
    is_place = element.kind in PLACES or element.kind == "position"
    return is_place and (several or fold(element.text) not in WEAK | {"left"})
