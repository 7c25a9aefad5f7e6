"""Text → pieces: numbers as people write them together (`7/4/52`, `1938.6.14`, `1932-33`), words, signs."""

import re

from boxlore.core.dates.numbers_in_digits import NUMERAL, PLAIN_NUMBERS

Piece = tuple[str, str | None, int, int]
"""What it says, which of the groups of PIECE it is, where it begins and where it ends."""

_SPELLED_OTHERWISE = str.maketrans(
    {"–": "-", "—": "-", "‒": "-", "−": "-", "‐": "-", "‑": "-", "’": "'", "‘": "'", "ʼ": "'", "`": "'", "´": "'",
     "“": '"', "”": '"', "„": '"', "«": '"', "»": '"', "\u00a0": " ", "\u202f": " ", "\u2009": " ", "½": " ",
     "ѣ": "е", "і": "и", "ѳ": "ф", "ѵ": "и"}
)  # fmt: skip
"""Dashes, quotes and blanks as the one that the tables have, and letters of the Russian spelling before 1918."""

PIECE = re.compile(rf"(?P<word>[^\W\d_]+)|(?P<numeral>(?=[\d'])(?:{NUMERAL}))|(?P<digits>\d+)|(?P<sign>[^\w\s]|_)")

_AND_A_HALF = re.compile(r"(?<=\d) 1/2(?= [^\W\d])")


def normal(text: str) -> str:
    """The working copy: small letters, one kind of dash and quote, one spelling; each letter stays where it is."""
    if " 1/2 " in text:
        text = _AND_A_HALF.sub("    ", text)  # “4 1/2 years” as “4½ years”
    if text.isascii():
        return text.lower().replace("`", "'")
    lowered = text.lower()
    return (lowered if len(lowered) == len(text) else text).translate(_SPELLED_OTHERWISE)


def pieces_of(words: str) -> list[Piece]:
    """The pieces of a text in its working copy."""
    return plain_pieces(words) or [(match[0], match.lastgroup, *match.span()) for match in PIECE.finditer(words)]


_WITH_NUMBERS = frozenset("and am pm uhr h hr hrs xx stc ndc rdc thc".split())
"""Words that belong to a number of one or two digits before them, with a blank between or none."""
_DIGITS, _ROMAN = "0123456789", "ivx"


def plain_pieces(words: str) -> list[Piece] | None:
    """The pieces of a text of words and numbers with single blanks between, as most are, and no number beside
    another; letters may stand at a number, a comma or a full stop behind both. None for any other text, and where a
    full stop stands between a number and no plain word. They are those of PIECE, found at a third of its cost."""
    pieces: list[Piece] = []
    at = digits = 0  # how many digits stand before
    behind = ""
    for piece in words.split(" "):
        end = at + len(piece)
        if behind == "." and not (piece.isalpha() and piece.strip(_ROMAN)) and pieces[-2][1] == "digits":
            return None  # “24. ix 1936” is one piece
        behind = ""
        if piece in PLAIN_NUMBERS and not digits:  # most that are no word
            pieces.append((piece, "digits", at, end))
            digits, at = len(piece), end + 1
            continue
        if not piece.isalpha():
            if not piece.isalnum():
                behind, piece = piece[-1:], piece[:-1]
                end -= 1
                if behind not in (",", ".") or not piece.isalnum():
                    return None
            letters = piece.lstrip(_DIGITS)
            if told := len(piece) - len(letters):
                if digits or told > 4 or (letters and (told == 3 or not letters.isalpha())):
                    return None
                pieces.append((piece[:told], "digits", at, at + told))
                digits, piece, at = told, letters, at + told
            elif not letters.isalpha():
                return None
        if piece:
            if 0 < digits < 3 and piece in _WITH_NUMBERS:
                return None
            pieces.append((piece, "word", at, end))
            digits = 0
        if behind:
            pieces.append((behind, "sign", end, end + 1))
            digits, end = 0, end + 1
        at = end + 1
    return pieces
