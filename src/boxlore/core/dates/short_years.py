"""Years of which the century is not said, told in words: `nel trentotto`, `в тридцать восьмом году`, `47 or 48`.

A number that can be no day is a year where no other year is told; one that can be a day is one only beside a word
for a year, or alone behind the words of a language that say when. Such a year asks which century, as `'38` does.
"""

from dataclasses import replace

from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import YEAR_BY_ORDINAL, Sense, words_before_a_year

_NUMBERS = ("day", "ordinal")
_OTHER_NUMBERS = frozenset(
    "year short dates years decade decades decade_digits century hundreds dual roman few years_old birthday aged "
    "person event before_christ hebrew_month term".split()
)
"""Kinds of words beside which a number is no year."""

_YEAR_UNITS = ("year",)
_SAME_YEAR = frozenset(
    "day ordinal unit month season feast span about about_behind doubt query or and not correction comma before after "
    "at_latest at_earliest since until either after_behind before_behind between from to to_open".split()
)
_RANGING = frozenset(("between", "from", "to", "to_open"))
LAST_DAY, LAST_MONTH = 31, 12


def may_have_short_years(kinds: set[str], told: int) -> bool:
    """Whether a number may be a year, by the kinds of the words; `told` is how many are told, with those that are
    passed over."""
    return told > 1 and not kinds.isdisjoint(_NUMBERS) and kinds.isdisjoint(_OTHER_NUMBERS) and kinds <= _SAME_YEAR


def with_short_years(words: list[Sense], *, is_behind: bool) -> list[Sense]:
    """The senses with short years for their numbers; `is_behind` where a word that is passed over is before them."""
    kinds = {sense.kind for sense in words}
    named = any(sense.kind == "unit" and sense.value in _YEAR_UNITS for sense in words)
    if any(sense.kind == "unit" and sense.value not in _YEAR_UNITS for sense in words):
        return words
    if kinds & _RANGING and not _is_range_of_years(words):
        return words
    behind = len(words) == 1 and is_behind
    dated, seasonal = "month" in kinds, "season" in kinds
    return [_short(sense, named=named or seasonal, behind=behind, dated=dated) for sense in words]


def _is_range_of_years(words: list[Sense]) -> bool:
    """“Between 49 and 52”: two numbers neither of which can be a day, nor is round, as counts are."""
    values = [sense.value[0] for sense in words if sense.kind == "day" and isinstance(sense.value, tuple)]
    return len(values) == 2 and all(value > LAST_DAY and value % 10 for value in values)


def _short(sense: Sense, *, named: bool, behind: bool, dated: bool) -> Sense:
    if sense.kind not in _NUMBERS:
        return sense
    value, digits = sense.value if isinstance(sense.value, tuple) else (sense.value, 0)
    if not isinstance(value, int) or not 10 <= value <= 99 or digits == 1:
        return sense
    is_spoken = digits == 0 and (sense.kind == "day" or not sense.languages & ~YEAR_BY_ORDINAL)
    if value > LAST_DAY:
        is_year = named or is_spoken or (not dated and not behind)
    else:
        is_alone = behind and digits == 0 and sense.kind == "day"
        is_year = not dated and value > LAST_MONTH and (named or is_alone)
    return Sense("short", f"{value:02d}", sense.languages) if is_year else sense


_BEFORE_A_YEAR = frozenset(("doubt", "about"))
_DATED = frozenset(("span", "season", "feast", "month", "event"))
_YEAR_TOLD = frozenset(("year", "short", "dates", "years", "decade_digits"))
_BEFORE_DIGITS = frozenset(("doubt", "about", "at_a_distance", "noise", "comma", "or", "correction"))
_OF_ANOTHER_NUMBER = frozenset(("unit", "measured", "years_old", "numbered", "decades"))


def _ends_a_part(tokens: list[Token], at: int) -> bool:
    """Whether two digits are the last of their part of the words: “nach dem Krieg, so 47, 48”."""
    return at + 1 == len(tokens) or tokens[at + 1].senses[0].kind in ("comma", "dash", "or", "query")


def is_led_into(words: str, at: int) -> bool:
    """Whether a word for “in” stands before a place in the words, with nothing but articles behind it: “back in 62”,
    “en el 62”."""
    led = words[:at].casefold().split()
    return any(" ".join(led[-count:]) in words_before_a_year() for count in (1, 2, 3) if count <= len(led))


def with_years_behind_in(tokens: list[Token], words: str) -> list[Token]:
    """“Back in 62”, “en el 62”: the tokens with a short year for two digits that can be no day, behind a word for “in”,
    where no other year is told; the same list where there is none."""
    if any(token.is_any(_YEAR_TOLD) for token in tokens):
        return tokens
    for at, token in enumerate(tokens):
        values = [sense.value for sense in token.senses if sense.kind == "day" and isinstance(sense.value, tuple)]
        value, digits = values[0] if values else (0, 0)
        behind = tokens[at + 1] if at + 1 < len(tokens) else token
        counts = behind.senses[0].kind == "name" and words[behind.start].islower()  # “in 62 boxes”
        followed = counts or behind.is_any(_OF_ANOTHER_NUMBER)
        if digits == len("62") and value > LAST_DAY and not followed and is_led_into(words, token.start):
            return [*tokens[:at], replace(token, senses=(Sense("short", f"{value:02d}"),)), *tokens[at + 1 :]]
    return tokens


def _is_century(token: Token) -> bool:
    """Whether a token is the first two digits of a year, and no more."""
    return token.end - token.start == len("19") and _number(token) in (18, 19, 20)


def _number(token: Token) -> int:
    return next((sense.value[0] for sense in token.senses if sense.kind == "day" and isinstance(sense.value, tuple)), 0)


def with_spoken_years(tokens: list[Token]) -> list[Token]:
    """“It must have been fifty-two, the King had just died”: the tokens with a short year for a spoken number that can
    be no day, behind a word of doubt or “about”, among words that nobody knows, or for two digits at the end of a part
    beside a season, a feast or a war (“nach dem Krieg, so 47, 48”); the same list where there is none."""
    beside = any(token.is_any(_DATED) for token in tokens) and not any(token.is_any(_YEAR_TOLD) for token in tokens)
    for at in range(1, len(tokens)):
        values = [sense.value for sense in tokens[at].senses if sense.kind == "day" and isinstance(sense.value, tuple)]
        value, digits = values[0] if values else (0, 1)
        followed = at + 1 < len(tokens) and tokens[at + 1].is_any(_OF_ANOTHER_NUMBER)
        may_be = not digits and tokens[at - 1].is_any(_BEFORE_A_YEAR)
        may_be = may_be or (
            beside and digits == len("46") and tokens[at - 1].is_any(_BEFORE_DIGITS) and _ends_a_part(tokens, at)
        )
        if not digits and LAST_MONTH < value < 100 and _is_century(tokens[at - 1]) and not followed:  # “19 forty seven”
            year = replace(
                tokens[at - 1], senses=(Sense("year", f"{_number(tokens[at - 1])}{value}"),), end=tokens[at].end
            )
            return [*tokens[: at - 1], year, *tokens[at + 1 :]]
        if LAST_DAY < value < 100 and may_be and not followed:
            return [*tokens[:at], replace(tokens[at], senses=(Sense("short", f"{value:02d}"),)), *tokens[at + 1 :]]
    return tokens
