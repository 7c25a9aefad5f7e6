"""Letters that are written otherwise: as references and escapes, between tags and marks, and figures for letters.

Whoever copies words out of a web page or an address has `M&#97;eve`, `Ma&shy;eve` and `M%61eve` (HTML, character
references; RFC 3986, 2.1; RFC 8259, 7), out of a note `Ma**eve**`; a reading of print by machine, and people who hide a
name, have `Penha11ow` and `Pen.hallow`.
"""

import html
import re
from collections.abc import Iterator
from urllib.parse import unquote

from boxlore.core.people.names_in_text.text_normalising import Change, is_unseen

_REFERENCE = re.compile(r"&(?:#\d{2,6}|#[xX][0-9a-fA-F]{2,5}|[A-Za-z]{2,8}\d?);|(?:%[0-9A-Fa-f]{2})+|\\u[0-9a-fA-F]{4}")
_TAG = re.compile(r"(?:(?<=[^\W\d_])|(?=<[^<>\n]{1,40}>[^\W\d_]))</?[A-Za-z][^<>\n]{0,40}>")
"""A tag of HTML or XML with a letter beside it: what is read of `<b>Ma</b>eve` is one word."""
_MARKS = re.compile(
    r"(?:(?<=[^\W\d_]{2})[*_~`.·•|^]{1,3}(?=[^\W\d_]))|(?:(?<=[^\W\d_])[*_~`.·•|^]{1,3}(?=[^\W\d_]{2}))"
)
"""What parts a word that nobody writes so; not `p.m.`, nor initials."""
_TURNED = re.compile("\u202e[^\u202c\n]+")
_WITH_FIGURES = re.compile(r"(?<![^\W_])(?=[^\W_]{5})[^\W\d_]*(?:[013458]{1,2}[^\W\d_]+){1,2}(?![^\W_])")
"""A word of five signs and more with figures before letters; a digest has more of them."""
_FIGURE = re.compile(r"[013458]")
_LIKE = ({"0": "o", "1": "l", "3": "e", "4": "a", "5": "s", "8": "b"}, {"1": "i"})


def turned_in(words: str) -> list[Change]:
    """What is written from right to left behind U+202E (UAX #9), as it is seen."""
    return [(match.start(), match.end(), match[0][:0:-1]) for match in _TURNED.finditer(words)]


def tags_in(words: str) -> list[Change]:
    """The tags beside letters, with nothing instead."""
    return [(match.start(), match.end(), "") for match in _TAG.finditer(words)] if "<" in words else []


def marks_in(words: str) -> list[Change]:
    """The marks and points within words, with nothing instead."""
    return [(match.start(), match.end(), "") for match in _MARKS.finditer(words)]


def references_in(words: str) -> list[Change]:
    """Each reference and escape that is a letter, with it, and each that nobody sees, with nothing."""
    if not any(sign in words for sign in "&%\\"):
        return []
    letters = [(match.start(), match.end(), _letter(match[0])) for match in _REFERENCE.finditer(words)]
    return [
        (start, end, "" if all(map(is_unseen, letter)) else letter)
        for start, end, letter in letters
        if letter.isalpha() or all(map(is_unseen, letter))
    ]


def _letter(reference: str) -> str:
    if reference.startswith("\\"):
        return chr(int(reference[2:], 16))
    return html.unescape(reference) if reference.startswith("&") else unquote(reference)


def as_read(words: str) -> list[Change]:
    """References and tags together, as a reader sees a text of the web: `Ma<b>e</b>&shy;ve`."""
    return sorted([*references_in(words), *tags_in(words)])


def figures_in(words: str) -> Iterator[list[Change]]:
    """The figures within words as the letters that they look like: 1 as l, and once more as i."""
    places = [
        match.start() + figure.start()
        for match in _WITH_FIGURES.finditer(words)
        for figure in _FIGURE.finditer(match[0])
    ]
    for like in (_LIKE[0], _LIKE[0] | _LIKE[1]) if any(words[at] == "1" for at in places) else _LIKE[:1]:
        if places:
            yield [(at, at + 1, like[words[at]]) for at in places]
