"""When an event of the family was, and when somebody was born: the questions, written and read in one place, so that
what they ask about can be answered."""

import re

_NOUNS = ("the", "a", "an", "my", "our", "his", "her", "their")
_POSSESSIVE = re.compile(r"\w[’']s? ")
_VERB = re.compile(
    r"\b(?:was|were|is|are|had|has|got|went|came|did|broke|began|ended|started|moved|died|left|lived|worked|opened|closed|sold|burned|burnt|retired|emigrated|sailed|flooded)\b",
    re.IGNORECASE,
)
_SENTENCE = re.compile(f",|{_VERB.pattern}", re.IGNORECASE)
"""What a noun does not hold: then it is shown as it was told."""

_LINKS = ("of ", "when ", "that ")
_WAS = re.compile(r"When was (.+)\?")
_SAID = re.compile(r"“(.+)”: when was that\?")
_BORN = re.compile(r"When (?:were you|was (.+)) born\?")


def when_was(name: str) -> str:
    """`When was the christening?`; of words that may be a sentence, `“we came to Dunedin”: when was that?`"""
    bare = name.strip(" .,?!")
    for link in _LINKS:
        bare = bare.removeprefix(link)
    first = bare.split(" ", 1)[0].casefold()
    is_noun = first in _NOUNS or _POSSESSIVE.search(" ".join(bare.split()[:2]) + " ")
    if is_noun and not _SENTENCE.search(bare):
        return f"When was {bare}?"
    return f"“{bare}”: when was that?"


def as_named(name: str) -> str:
    """An event's name within a question: `the christening`; a sentence in quotation marks, `“we came to Dunedin”`."""
    return f"“{name}”" if _VERB.search(name) and "“" not in name else name


def asked_event(ask: str) -> str:
    """The event that such a question asks about; empty for any other question, and for a birth."""
    match = None if _BORN.fullmatch(ask) else _WAS.fullmatch(ask) or _SAID.fullmatch(ask)
    return match[1].removeprefix("when ") if match else ""


def when_born(name: str = "") -> str:
    """`When was Joan born?`; of the teller, without a name, `When were you born?`"""
    return f"When was {name} born?" if name else "When were you born?"


def asked_birth(ask: str) -> str | None:
    """Whose birth such a question asks about: a name, '' for the teller's own; None for any other question."""
    match = _BORN.fullmatch(ask)
    return match and (match[1] or "")
