"""Letters: whether words show anything, and what no words that somebody tells may hold."""

import re
import unicodedata

from boxlore.core.errors import WrongUse

_NONCHARACTERS = "\ufdd0-\ufdef" + "".join(
    f"{chr(plane + 0xFFFE)}{chr(plane + 0xFFFF)}" for plane in range(0, 0x110000, 0x10000)
)
"""Codes that are never given to a letter (The Unicode Standard, 23.7), for the inside of a pattern."""

_UNSEEN = re.compile(
    "[\u034f\u115f\u1160\u17b4\u17b5\u180b-\u180f\u2065\u2800\u3164\ufe00-\ufe0f\uffa0\ufff0-\ufff8\U000e0000-\U000e0fff"
    f"{_NONCHARACTERS}]"
)
"""Letters that show nothing though their category is that of letters or marks, or none: Default_Ignorable_Code_Point of
Unicode's DerivedCoreProperties.txt without Cf, the empty pattern of Braille, and what is no character."""

_NOTHING = frozenset(("Cc", "Cf", "Zs", "Zl", "Zp"))

_QUESTION_MARKS = "?\uff1f\u061f"
"""QUESTION MARK, its full-width form and the Arabic one (Unicode's names)."""

_CONTROL = re.compile(f"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f{_NONCHARACTERS}]")
"""Control characters (category Cc) but tabs and the ends of lines; and what is no character, which XML 1.0 (2.2) and
type do not take."""


FIRST_STRONG, POP = "\u2068", "\u2069"
"""First Strong Isolate and Pop Directional Isolate (Unicode Standard Annex 9, 2.5)."""

_RIGHT_TO_LEFT = frozenset(("R", "AL", "AN"))


def is_blank(words: str) -> bool:
    """Whether nothing of the words can be seen: they are empty, or blanks and invisible letters alone."""
    return all(unicodedata.category(letter) in _NOTHING or _UNSEEN.match(letter) for letter in words)


def is_noncharacter(letter: str) -> bool:
    """Whether it is a code that is never given to a letter."""
    return 0xFDD0 <= ord(letter) <= 0xFDEF or ord(letter) & 0xFFFE == 0xFFFE


def is_question(words: str) -> bool:
    """Whether somebody wrote a question mark and nothing else: asked, and not known."""
    marks = "".join(words.split())
    return bool(marks) and all(mark in _QUESTION_MARKS for mark in marks)


def says_nothing(words: str) -> bool:
    """Whether there is no letter, figure or sign in the words: they are blank, or `,` `...` `-` and the like."""
    return all(is_blank(letter) or _is_mark(letter) for letter in words)


def _is_mark(letter: str) -> bool:
    category = unicodedata.category(letter)
    return category[0] == "P" or (category[0] == "S" and letter.isascii())


def isolated(words: str) -> str:
    """Words with letters that are written from right to left in an isolate: so no neighbour joins their direction.

    Two such names in a list would else be one run, and the second stand left of the first (UAX #9, 3.3.3: N1).
    """
    if all(unicodedata.bidirectional(letter) not in _RIGHT_TO_LEFT for letter in words):
        return words
    return f"{FIRST_STRONG}{words}{POP}"


def without_controls(words: str) -> str:
    """The words without control characters, such as a terminal sends for its keys."""
    return _CONTROL.sub("", words)


def check_typed(words: str) -> None:
    """Raises WrongUse for words that somebody writes in which nothing can be seen, or with a control character."""
    if is_blank(words):
        raise WrongUse("There are no words to keep.", "Say something, or that it is not known.")
    if control := _CONTROL.search(words):
        raise WrongUse(
            f"Character {control.start() + 1} of these words is no letter (U+{ord(control[0]):04X}).",
            "Write them again without it.",
        )
