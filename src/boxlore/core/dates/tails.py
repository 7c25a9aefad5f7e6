"""Where words behind a date begin that say nothing of it: “Xmas 1951 at Gran's”, “12 June 1938, Whitby”.

They begin with a comma, or with a word for “at”, “in” or “with” before a name with a capital letter. None of them may
be of a date, a doubt or a denial in any language, a number, a question mark, or say something of the date itself; and
each word that nobody knows must be written as a name is: any other may say what turns the date about.
"""

from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import PIECE, beginnings_of_the_date

_OF_NO_DATE = frozenset(("name", "comma", "noise", "genitive", "possessive", "to", "to_open", "from", "at_years"))
_UNKNOWN, _DOUBTING = frozenset(("name",)), "?"
_BEFORE_A_NAME = frozenset(("name", "noise", "at_years", "from", "to", "genitive"))
_NAMED_THERE = frozenset(("name", "person", "possessive"))
WITH = frozenset("with mit avec con com met med kanssa koos с z s ar su".split())
"""Words before a companion, in the languages."""
_AT_OR_WITH = WITH | frozenset(
    "at in outside on im bei auf à chez dans en a na em no bij te op hos på i ved в на у w u v ve se pie prie "
    "juures".split()
)
"""Those, and words before a place."""
_ENDING = 3
"""Letters of an ending at most (common practice, no source)."""


def where_a_tail_begins(tokens: list[Token], words: str) -> int:
    """The place of the first token of such words; 0 where there are none."""
    comma = next((at for at, token in enumerate(tokens) if token.senses[0].kind == "comma"), 0)
    begin = comma or _before_a_name(tokens, words)
    behind = tokens[begin + 1 :]
    if not begin or words[tokens[begin].start] == ";" or any(not token.kinds <= _OF_NO_DATE for token in behind):
        return 0
    told = words[tokens[begin].end :]
    if comma and any(map(_is_of_each_year, tokens[:begin])) and not _is_led(tokens, begin + 1, words):
        return 0  # “Easter 1951, Serbian”
    if any(token.is_any(_UNKNOWN) and not _is_name(words[token.start : token.end]) for token in behind):
        return 0
    is_doubted = any(letter.isdigit() or letter in _DOUBTING for letter in told)
    return 0 if is_doubted or any(map(_is_of_the_date, PIECE.findall(told.casefold()))) else begin


def _is_of_each_year(token: Token) -> bool:
    return any(sense.kind == "feast" and not came_once(str(sense.value)) for sense in token.senses)


def _is_led(tokens: list[Token], at: int, words: str) -> bool:
    """Whether a word for “at”, “in” or “with” stands here, or somebody of the family."""
    told = words[tokens[at].start : tokens[at].end].casefold() if at < len(tokens) else ""
    return told in _AT_OR_WITH or (bool(told) and tokens[at].senses[0].kind == "person")


def _is_name(word: str) -> bool:
    """Whether a word that nobody knows is written as a name is, or is one before a place or a companion."""
    return word[0].isupper() or not word[0].isalpha() or word.casefold() in _AT_OR_WITH


def _is_of_the_date(word: str) -> bool:
    """Whether a word says something of the date itself: no longer by more than an ending than how such words begin
    (“greek”, not “greektown”)."""
    return any(word.startswith(begun) and len(word) <= len(begun) + _ENDING for begun in beginnings_of_the_date())


def _before_a_name(tokens: list[Token], words: str) -> int:
    """Where “at”, “in” or “with” stands before the last names with a capital letter; 0 where it stands nowhere."""
    for at in range(len(tokens) - 2, 0, -1):
        told = words[tokens[at].start : tokens[at].end].casefold()
        if told not in _AT_OR_WITH and not tokens[at].kinds <= _BEFORE_A_NAME:
            return 0
        named = tokens[at + 1]
        is_led = told in _AT_OR_WITH and words[tokens[at].end : named.start].isspace()  # and no “a.” of a year
        if is_led and named.kinds <= _NAMED_THERE and words[named.start].isupper():
            return at
    return 0
