"""How far a date may be wrong, told beside it: “give or take two years”, “a year or two either way”, “within a few
years of 1920”.

The words that say so stand before an amount, behind it or on both sides; the amount is any count of years, of which the
greatest holds: “a year or two” are two, “a few” six, as elsewhere. One year is said as “about”, by words of the
languages.
"""

import re
from datetime import MAXYEAR, MINYEAR
from functools import cache

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.lexer import Token, lex
from boxlore.core.dates.lexicon import EITHER_WAY, GIVE_OR_TAKE, trie
from boxlore.core.dates.pieces import normal

_SIGNS = ("±", "+/-", "+-")
_BEFORE, _BEHIND = ("|".join(map(re.escape, words)) for words in ((*GIVE_OR_TAKE, *_SIGNS), EITHER_WAY))
_TOLD_BEFORE = re.compile(rf"(?P<date>.*?\S)[ ,(]+(?:{_BEFORE}) *(?P<amount>.+)", re.IGNORECASE)
_TOLD_BEHIND = re.compile(
    rf"(?P<date>.*?\d\S*)(?: or so)?(?:,| -| \()? (?:à )?(?P<amount>[^,\d]+?|\d{{1,2}} [^,\d]+?) (?:{_BEHIND})",
    re.IGNORECASE,
)
_WITHIN = re.compile(
    r"(?:within|to within) (?P<amount>[^\d]+?|\d{1,2} [^\d]+?) (?:of|either side of|each side of) (?P<date>.+)",
    re.IGNORECASE,
)
_WITHIN_MUCH = re.compile(r"(?:within|to within) (?P<amount>[^\d]+|\d{1,2} [^\d]+) of (?P<date>.+)", re.IGNORECASE)
_EACH_SIDE = re.compile(
    r"(?P<amount>[^\d,]+?|\d{1,2} [^\d,]+?) (?:on )?(?:either side|each side|both sides|either way) (?:of|from) "
    r"(?P<date>.+)",
    re.IGNORECASE,
)
_SIGN_AND_YEARS = re.compile(r"(?P<date>.*[^ ±+/-]) *(?:±|\+/-|\+-) *(?P<count>\d{1,2})")
_WORDS_AND_YEARS = re.compile(
    rf"(?P<date>(?:(?:about|around|circa|ca|c|etwa|um|vers|umbes)\.? ?)?\d{{4}})[ ,(]+"
    rf"(?:{'|'.join(map(re.escape, GIVE_OR_TAKE))}) (?P<count>\d{{1,2}})",
    re.IGNORECASE,
)
_YEARS = frozenset(("year", "years"))
MOST_YEARS = 30
_COUNTS = {"couple": 2, "few": 6}
_OF_AN_AMOUNT = frozenset(("day", "noise", "or", "comma", "dash", "to", "to_open", "about", "doubt", "few", "unit"))
_AT_ENDS = " ,()"


def give_or_take(words: str) -> tuple[str, int] | None:
    """The words without a tolerance told beside them, and how many years it is, from two on; None for other words."""
    sign = _SIGN_AND_YEARS.fullmatch(words) if "±" in words or "+" in words else None
    if sign is None and words[-1:].isdigit():
        sign = _WORDS_AND_YEARS.fullmatch(words)  # “1936 plus or minus 5”
    if sign and int(sign["count"]):
        return sign["date"].rstrip(_AT_ENDS), int(sign["count"])
    told = words.rstrip(_AT_ENDS)
    last = normal(told[told.rfind(" ") + 1 :])
    is_behind = last in _LAST_BEHIND
    if not is_behind and last not in _last_of_amounts():
        return None  # most
    for way in (_TOLD_BEFORE, _TOLD_BEHIND) if is_behind else (_TOLD_BEFORE,):
        match = way.fullmatch(told)
        years = _years_of(match["amount"]) if match else 0
        by_a_sign = years == 1 and any(sign in told for sign in _SIGNS)  # “1947 +/- a year”
        if match and (by_a_sign or 1 < years <= MOST_YEARS):
            return match["date"].strip(_AT_ENDS), years
    return None


def within(words: str) -> tuple[str, int] | None:
    """“Within a year or two of 1910”: the date and the years, from one on; None for other words."""
    for way in (_WITHIN, _WITHIN_MUCH, _EACH_SIDE):  # “within a couple of years of 1938”
        match = way.fullmatch(words)
        years = _years_of(match["amount"]) if match else 0
        if match and 0 < years <= MOST_YEARS:
            return match["date"], years
    return None


def _years_of(amount: str) -> int:
    """How many years an amount is at most; 0 for other words."""
    tokens = lex(amount.strip(_AT_ENDS))
    if not any(_is_of_years(token) for token in tokens) or not all(token.is_any(_OF_AN_AMOUNT) for token in tokens):
        return 0
    return max((_count(token) for token in tokens), default=0) or 1


def _is_of_years(token: Token) -> bool:
    return any(sense.kind == "unit" and sense.value in _YEARS for sense in token.senses)


def _count(token: Token) -> int:
    for sense in token.senses:
        if sense.kind == "day" and isinstance(sense.value, tuple):
            return int(sense.value[0])
        if sense.kind == "few":
            return _COUNTS.get(str(sense.value), _COUNTS["few"])
    return 0


_LAST_BEHIND = frozenset(way.rpartition(" ")[2] for way in EITHER_WAY)
"""The last words of those that stand behind an amount."""


@cache
def _last_of_amounts() -> frozenset[str]:
    """The words with which an amount may end: those for years and for numbers, of all languages, as the lexer has
    them."""
    kinds = {word: node.senses for word, node in trie().following.items()}
    return frozenset(
        word
        for word, senses in kinds.items()
        for sense in senses
        if sense.kind == "number" or sense.kind == "day" or (sense.kind == "unit" and sense.value in _YEARS)
    )


def spread(edtf: Edtf, years: int) -> Edtf | None:
    """So many years to each side of a date: one of them; None for what is open on a side, has no year, or comes to
    one outside 1 to 9999."""
    if edtf.earliest is None or edtf.latest is None or edtf.text.startswith("XXXX"):
        return None
    first, last = edtf.earliest.year - years, edtf.latest.year + years
    return standard.parsed(f"[{first:04d}..{last:04d}]") if MINYEAR <= first <= last <= MAXYEAR else None
