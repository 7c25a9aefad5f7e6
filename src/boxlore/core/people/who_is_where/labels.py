"""Labels before names that count people without digits: `a) Anna b) Ruth`, `a. Anna, b. Ruth`, `i. Anna, ii. Ruth`.

A label counts only among labels that follow each other from the first on (`a`, `b`; `i`, `ii`), so that the initials of
`A. Finch` are none.
"""

import re

from boxlore.core.people.names.tokens import token_of

ROMANS = {"I": 1, "II": 2, "III": 3, "IV": 4, "V": 5, "VI": 6, "VII": 7, "VIII": 8, "IX": 9, "X": 10}

_LETTERED = re.compile(r"(?<![^\s,;:(])(?:([a-zA-Z])\)(?=\s|$)|([a-z])\.(?=\s))|(?<=\()([a-zA-Z])(?=\)\s)")
"""`a)`, `(a)`, and written small `a.` too, which is no initial."""

_MARKED = re.compile(r"(?:(?<=^)|(?<=[,;\n] ))([A-Z])(?::| ?=| ?[–—-])(?=\s)")
_POINTED = re.compile(r"(?:(?<=^)|(?<=[,;\n] ))([A-Z])\.(?=\s)")
"""Three and more, for two may be initials."""

_WORD = re.compile(r"\s*([^\W\d_]+)")
_ROMAN = re.compile(r"(?<![^\s,;:(])([ivx]+|[IVX]+)[.)](?=\s)|(?<=\()([ivx]+|[IVX]+)(?=\)\s)")


def labels_of(text: str) -> dict[int, tuple[int, int]]:
    """Where each label begins -> where it ends, and its number; none if they do not count from the first on."""
    lettered = {
        m.start(): (m.end(), ord((m[1] or m[2] or m[3]).lower()) - ord("a") + 1) for m in _LETTERED.finditer(text)
    }
    romans = {m.start(): (m.end(), ROMANS.get((m[1] or m[2]).upper(), 0)) for m in _ROMAN.finditer(text)}
    marked = {m.start(): (m.end(), ord(m[1]) - ord("A") + 1) for m in _MARKED.finditer(text)}
    pointed = {m.start(): (m.end(), ord(m[1]) - ord("A") + 1) for m in _POINTED.finditer(text)}
    behind = [_WORD.match(text, end) for end, _ in pointed.values()]
    names_given = any(word and token_of(word[1]).is_given for word in behind)
    if len(pointed) < 3 or not names_given:
        pointed = {}  # `A. Pell, B. Orr, C. Gedge` are told by initials
    for labels in (romans, lettered, marked, pointed):
        numbers = [number for _, number in labels.values()]
        if len(numbers) > 1 and numbers == list(range(1, len(numbers) + 1)):
            return labels
    return {}
