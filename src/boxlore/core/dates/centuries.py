"""A century that was not said, where lives leave only one: “JUN 63”, told by somebody born in 1936, is no June 1863.

A picture is of no time before one of the people in it was born; and whoever tells of it has known nobody who was in a
picture a whole lifetime, seventy years, before her own birth, nor, where the generation before her is known, before the
first of the family was born (common practice, no source). Lives that leave several centuries, or none but another than
that of most photographs, settle nothing: it is asked.
"""

import re
from dataclasses import replace
from itertools import pairwise

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import FRACTIONS, Sense
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.writing import CENTURIES

FIRST_PORTRAITS = 1840
"""An earlier year is no choice for the century of a picture: before, nobody could sit still for so long (the
daguerreotype was published in August 1839; from memory)."""

LIFETIME, A_GENERATION = 70, 16


def settle_century(date: Partial, context: DateContext) -> None:
    """Give a year, a span of years or a decade without its century the only one that it can be of."""
    first_year = _first_year(context)
    if not first_year or date.year.endswith("XX") or date.hundreds:
        return
    possible = []
    for century in CENTURIES:
        if date.years:
            first, last = (int(century + f"{year:04d}"[2:]) for year in date.years)
        else:
            first, last = (int(century + date.year[-2:].replace("X", digit)) for digit in "09")
        if first_year <= last and first <= context.this_year:
            possible.append(century)
    if possible != [CENTURIES[0]]:
        return  # that of today is never taken for granted: a grandchild's birth may be told of the wrong picture
    if not date.years:
        date.year = CENTURIES[0] + date.year[-2:]
    date.assumed = False


def _first_year(context: DateContext) -> int:
    """The first year of which a picture can be, by the lives that are known; 0 where they say nothing of it."""
    if not context.first_year:
        return 0  # told of a life, not of a picture
    born = [year for birth in context.pictured.values() if (year := _year_of_birth(birth))]
    if context.narrator and (year := _year_of_birth(context.narrator)):
        born.append(year - LIFETIME)
        if 0 < context.eldest <= year - A_GENERATION:
            born.append(context.eldest)
    return max(FIRST_PORTRAITS, *born) if born else 0


def _year_of_birth(birth: str) -> int:
    """The first year in which a birth can be; 0 where none is known."""
    edtf = standard.parsed(birth) if birth else None
    if edtf is None or edtf.earliest is None:
        return 0
    return edtf.earliest.year - (WIDE if edtf.qualified else 0)


WIDE = 10
"""So many years a birth may be off that is told with doubt."""


def with_shared_century(tokens: list[Token]) -> list[Token]:
    """“Late 18th or early 19th century”: the tokens with the word behind the last of several ordinals behind each."""
    at = next((at for at, token in enumerate(tokens) if token.is_any(_CENTURY)), 0)
    if not at or any(token.is_any(_FINER) or token.senses[0].value in FRACTIONS for token in tokens):
        return tokens
    shared: list[Token] = []
    for place, token in enumerate(tokens):
        shared.append(token)
        if place + 1 < at and token.is_any(_NUMBERED) and tokens[place + 1].is_any(_JOINING):
            shared.append(Token(tokens[at].senses, token.start, token.end))
    return shared


def at_the_turn(tokens: list[Token], words: str) -> tuple[str, ...]:
    """“The turn of the 19th and 20th centuries”, “przełom XIX i XX wieku”: the years about it; of one century those
    about its begin and its end, since people mean either. None for other words."""
    if not _TURN.search(words) or any(token.senses[0].kind in _FINER for token in tokens):
        return ()
    numbered = [sense.value for token in tokens for sense in token.senses if sense.kind in _NUMBERED]
    values = [value[0] if isinstance(value, tuple) else value for value in numbered]
    told = [value for value in values if isinstance(value, int) and value >= _FIRST_CENTURY]
    if not told or len(told) > 2 or not told[0] <= told[-1] <= told[0] + 1:
        return ()
    turns = (told[0],) if len(told) == 2 else sorted((told[0] - 1, told[0]), key=lambda turn: abs(turn - _OF_MOST))
    return tuple(f"{turn * 100 - 5:04d}~/{turn * 100 + 5:04d}~" for turn in turns)


_FIRST_CENTURY, _OF_MOST = 15, 19
"""The first century of which a turn is told, and the one with whose end most pictures are."""
_TURN = re.compile(
    r"\b(?:turn of|turn between|wende v|wende z|przełom|přelom|рубеж|tournant|cavallo|vahetus|vaihte|skifte|fordul|"
    r"mijā|sandūr|virada|wisseling|paso del|cambio)",
    re.IGNORECASE,
)
"""How words for the time between two centuries begin (common practice, no source)."""


def with_last_decade(tokens: list[Token]) -> list[Token]:
    """“The last decade of the 19th century”: the tokens with the tenth for the last."""
    at = next(
        (at for at, (last, unit) in enumerate(pairwise(tokens)) if last.is_any(_LAST) and unit.is_any(_DECADES)), -1
    )
    return tokens if at < 0 else [*tokens[:at], replace(tokens[at], senses=_TENTH), *tokens[at + 1 :]]


_LAST, _DECADES, _TENTH = frozenset(("last",)), frozenset(("decades",)), (Sense("ordinal", 10),)
_CENTURY, _NUMBERED = frozenset(("century",)), frozenset(("ordinal", "day", "roman"))
_JOINING = frozenset(("or", "and", "to", "to_open", "until", "dash", "slash"))
_FINER = frozenset(("month", "season", "feast", "weekday", "year", "unit", "fraction", "decades", "event", "person"))
