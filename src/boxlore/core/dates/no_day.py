"""A number before a month that may be none of its days: an hour (“kell 8 mai 1938”, “half acht mei 1940”), a count of
what is in the picture (“2 in May 1938”) or of pictures (“2nd print, May 1938”), or one apart by a sign (“(5)
May 1938”).

Read as the day it would be a day that nobody told: it is asked about, with the month alone and with that day.
"""

from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import words_before_a_year, words_before_an_hour

_MONTH, _DAY, _PASSED_OVER = frozenset(("month",)), frozenset(("day",)), frozenset(("noise", "from", "at_years"))
_NUMBER, _NOISE = frozenset(("day", "ordinal")), frozenset(("noise",))
_OF_A_MONTH = frozenset(
    "of in the i o el en de del du d' di do da das der den des dem im am av af van von dnia no na em a az te w".split()
)
"""All that stands between a day and its month (grammars of these languages, from memory). Whatever else is passed
over there is what the number counts: “2nd print, May 1931”, “2e photo, mai 1931”, “4 mths, May 1950”."""
_PLACING = frozenset(("at", "on", "im", "på"))
_OF_AN_AGE = ("months", "years")
_ORDINAL = frozenset(("ordinal",))
_SIGNS_AND_UNITS = frozenset(("dash", "comma", "unit"))
_SIGNS = (":", ")", " - ", " – ", " — ")


def number_of_no_day(tokens: list[Token], words: str) -> tuple[int, int] | None:
    """The places of the tokens, from the first to the one behind the last, without which a month is left of words in
    which a number before it may be none of its days; None for other words."""
    for at, token in enumerate(tokens):
        if not token.is_any(_NUMBER):
            continue
        if token.is_any(_DAY) and _stands_in_brackets(token, words) and not tokens[at - 1].is_any(_OTHERS):
            return at, at + 1  # “May 1938 (3)”
        month = next((place for place in range(at + 1, len(tokens)) if not _may_stand_before(tokens[place])), at)
        if tokens[month].is_any(_MONTH) and any(_is_counted(near, token, words) for near in tokens[at + 1 : month]):
            return at, month
        behind = next((place for place in range(at + 1, len(tokens)) if not _is_passed_over(tokens[place])), at)
        if behind == at or not tokens[behind].is_any(_MONTH) or not token.is_any(_DAY):
            continue
        if at and words[tokens[at - 1].start : tokens[at - 1].end].casefold() in words_before_an_hour():
            return at - 1, behind
        between = [words[near.start : near.end].casefold() for near in tokens[at + 1 : behind]]
        if any(word in _PLACING or word in words_before_a_year() for word in between):
            return at, behind
        if words[token.start].isdigit() and any(sign in words[token.end : tokens[behind].start] for sign in _SIGNS):
            return at, behind
    return None


def _is_counted(token: Token, number: Token, words: str) -> bool:
    """Whether a word between a number and a month is what the number counts: “6 wk May 1950” is an age, and “2nd wk” a
    week of the month."""
    units = [sense.value for sense in token.senses if sense.kind == "unit"]
    if units:
        return any(unit in _OF_AN_AGE or (unit == "week" and not number.is_any(_ORDINAL)) for unit in units)
    said = token.is_any(_NOISE) and not token.is_any(_NUMBER)
    return said and not _OF_A_MONTH.issuperset(words[token.start : token.end].casefold().split())


def _stands_in_brackets(token: Token, words: str) -> bool:
    return words[token.start - 1 : token.start] == "(" and words[token.end : token.end + 1] == ")"


_OTHERS = frozenset(("day", "ordinal", "slash"))
"""What stands before a day of the other calendar in brackets: “12 (25) June”."""


def _is_passed_over(token: Token) -> bool:
    return token.is_any(_PASSED_OVER) or token.senses[0].kind == "dash"


def _may_stand_before(token: Token) -> bool:
    return token.is_any(_PASSED_OVER) or token.senses[0].kind in _SIGNS_AND_UNITS
