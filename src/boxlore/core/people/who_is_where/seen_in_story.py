"""Whether a story says of somebody named in it that they are on the picture: `The boy on the left is Jaan.`

Most stories tell of people who are elsewhere. A sentence says who is seen where it has a place in the picture (`on the
left`, `in front`, `second from the right`), shows (`This is Jaan`), or points at the picture (`here`, `in this photo`).
One word that is besides something else (`left`, `right`, `back`) is no place. A rule of our own.
"""

import re

from boxlore.core.people.who_is_where.position_words_table import WEAK
from boxlore.core.people.who_is_where.tokens import PLACES, Element, elements_of
from boxlore.core.statements import fold

_SENTENCE_ENDS = re.compile(r"(?<=\w{3})[.!?]+(?=\s)|\n")
_POINTS = re.compile(
    r"\b(?:here|pictured|seen|siin|siinsel|pildil|fotol|hier|ici|aqui|tassa|kuvassa|здесь|тут|снимке|фото|фотографии|"
    r"zdjeciu|tutaj|tu|(?:in|on) (?:this|the) (?:picture|photo|photograph|print|snap|card|slide))\b"
)


def says_seen(words: str, start: int, end: int) -> bool:
    """Whether the sentence in which a name stands (from `start` to `end`) says that its bearer is seen."""
    ends = [0, *(match.end() for match in _SENTENCE_ENDS.finditer(words)), len(words)]
    first = max(at for at in ends if at <= start)
    last = min((at for at in ends if at >= end), default=len(words))
    before, after = words[first:start], words[end:last]
    if _POINTS.search(fold(before)) or _POINTS.search(fold(after)):
        return True
    elements = elements_of(words[first:last])
    return any(
        _is_a_place(element)
        for element in elements
        if element.end <= start - first or end - first <= element.start  # a name is no place: `Toivo`, Finnish third
    )


def _is_a_place(element: Element) -> bool:
    several = " " in element.text.strip()
    if element.kind == "verb":
        return several  # `This is`, `Das ist`
    is_place = element.kind in PLACES or element.kind == "position"
    return is_place and (several or fold(element.text) not in WEAK | {"left"})
