"""Two parts of a phrase that is not understood as one whole, each read by itself: “the same year as the fire, or the
year after”, “in the year before the move, but after the wedding”, “12 June 1938 (posted 14 June)”.

They are parted at a comma, a bracket, “or” or “but”. A part that leans on the other is told out first: a side without
what it is beside (“or just after”) is beside the same, a number behind an event is a year of two digits (“the big snow,
48?”), one behind somebody an age, a day without a year is of the year of the other. Behind “or” each of both is meant,
else the days that both mean. Nothing here is a reading: it is all offered in a question.
"""

import re
from collections.abc import Callable, Iterator, Sequence
from typing import NamedTuple

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.lexer import Token, lex
from boxlore.core.dates.proposing import MOST_CHOICES, is_valid
from boxlore.core.dates.told_whole import both

Choices = Callable[[str], Sequence[str]]
"""What words may mean, as EDTF."""

_ENDS = frozenset(("comma", "or", "correction", "or_year_after", "or_year_before"))
_OR = frozenset(("or", "or_year_after", "or_year_before"))
_LEADING = frozenset(("comma", "or", "correction", "and"))
_DENYING = frozenset(("not", "undated", "no_such"))
_SIDES = {"before": -1, "after": 1, "or_year_before": -1, "or_year_after": 1}
_SIDE = frozenset(("before", "after"))
_NAMED = frozenset(("unit", "season", "feast", "month", "weekday"))
_BARE = frozenset(("noise", "doubt", "about", *_NAMED))
_NUMBERS = frozenset(("day",))
_HOW_SURE = frozenset(("about", "about_behind", "doubt", "or", "years_old"))
_OF_AN_AGE = _NUMBERS | _HOW_SURE | {"noise", "query", "dash", "unit"}
_MOST_ENDS, _MOST_TOKENS = 3, 30
_MOST_OF_ONE = 4
_AROUND = " ,;()[]"
_NUMBER = re.compile(r"(?<!['’\d])\b(\d\d)\b(?!\d)")
_PLAIN_NUMBERS = re.compile(r"\W*\d\d(?:\W+(?:\w{1,4}\W+)?\d\d)?\W*")
_LAST_NUMBER = re.compile(r"(.*[^\W\d]),? (\d\d\W{0,2})")
_YEAR = re.compile(r"\d{4}")
_OF_A_YEAR = re.compile(r"(\d{4})((?:-\d\d)?[?~%]?)")


class Halves(NamedTuple):
    """What both parts come to, the best first, and the part of which nothing was understood."""

    choices: tuple[str, ...]
    unread: str = ""


class _Parted(NamedTuple):
    head: str
    tail: str
    is_or: bool
    leaned: str
    """The tail with what it is beside."""
    years: int = 0
    """So many years from the head it is, “or the year after”."""


def by_halves(
    words: str, choices: Choices, events: Sequence[str], whom: str = "", *, is_event: bool = False
) -> Halves | None:
    """What the parts come to; None where neither tells a date. `events` are the words of the phrase that mean one of
    the family; `whom` is whose age a number may be; `is_event`: an event without a date is asked about, so that a
    number behind it is a year."""
    tokens = lex(words)
    if len(tokens) > _MOST_TOKENS or any(token.is_any(_DENYING) for token in tokens):
        return None
    alone: Halves | None = None
    for parted in _parted(tokens, words, events):
        heads = _dated(choices(parted.head))
        tails: tuple[str, ...] = ()
        aged = f"{whom} aged {parted.tail}" if whom and is_age(parted.tail) else ""
        for told in filter(None, (parted.leaned, aged, parted.tail, _with_years(parted.tail) if is_event else "")):
            tails = tails or _dated(choices(told))
        if not tails and heads:
            tails = _of_its_year(heads[0], choices(parted.tail))
        if parted.years and (beside := [_one_of(text, _years_on(text, parted.years)) for text in heads]):
            later = (_years_on(text, parted.years) for text in heads)
            return Halves(tuple(dict.fromkeys(filter(None, (*beside, *heads, *later))))[:MOST_CHOICES])
        if heads and tails:
            return Halves(_together(heads, tails, is_or=parted.is_or))
        if heads or tails:
            alone = alone or Halves(heads or tails, parted.tail if heads else parted.head)
    if alone is None and is_event and (numbered := _LAST_NUMBER.fullmatch(words)):  # “the year of the flood 36”
        years = _dated(choices(_with_years(numbered[2])))
        return Halves(years, numbered[1]) if years else None
    return alone


def _parted(tokens: list[Token], words: str, events: Sequence[str]) -> Iterator[_Parted]:
    """The two parts at each place where words may be parted."""
    ends = [at for at, token in enumerate(tokens) if at and (token.is_any(_ENDS) or _opens(token, words))]
    for at in [at for at in ends if at - 1 not in ends][:_MOST_ENDS]:
        begin, is_or = at, False
        while begin < len(tokens) and tokens[begin].is_any(_LEADING):
            is_or = is_or or tokens[begin].senses[0].kind == "or"
            begin += 1
        if begin == len(tokens):
            continue
        is_or = is_or or tokens[begin].is_any(_OR)
        head, tail = words[: tokens[at].start].strip(_AROUND), words[tokens[begin].start :].strip(_AROUND)
        leaned = _leaned(tokens[:at], tokens[begin:], words, events)
        yield _Parted(head, tail, is_or, leaned, _years_away(tokens[begin:]))


def is_age(words: str) -> bool:
    """Whether words are a number that may be somebody's years, and how sure it is: “about eight”, “nine or ten”."""
    tokens = lex(words)
    told = [any(token.is_any(kinds) for token in tokens) for kinds in (_NUMBERS, _HOW_SURE)]
    return all(told) and all(token.is_any(_OF_AN_AGE) for token in tokens)


def _opens(token: Token, words: str) -> bool:
    """Whether a bracket opens before a token."""
    return words[token.start - 1] in "(["


def _leaned(head: list[Token], tail: list[Token], words: str, events: Sequence[str]) -> str:
    """“Or the year after” behind “the same year as the fire”: the year after the fire; empty where a part tells no
    side, or what it is beside."""
    side = tail[-1]
    if not side.is_any(_SIDE) or not all(token.is_any(_BARE) for token in tail[:-1]):
        return ""
    sides = [token for token in head if token.is_any(_SIDE)]
    ahead = words[: head[-1].end]
    beside = (
        ahead[sides[-1].end :].strip() if sides else next((told for told in events if told in ahead.casefold()), "")
    )
    if not beside:
        return ""
    return f"{words[tail[0].start : side.end]} {beside}"


def _years_away(tail: list[Token]) -> int:
    """“Or the one after”, “or the year before”: whether a part is a year on or back from the other; 0 for none."""
    kind = next((sense.kind for sense in tail[-1].senses if sense.kind in _SIDES), "")
    units = [sense.value for token in tail[:-1] for sense in token.senses if sense.kind in _NAMED]
    is_year = kind in _OR or set(units) == {"year"}
    return _SIDES[kind] if kind and is_year and all(token.is_any(_BARE) for token in tail[:-1]) else 0


def _years_on(text: str, years: int) -> str:
    """A year, a month or a season some years on; empty for other dates."""
    match = _OF_A_YEAR.fullmatch(text)
    return f"{int(match[1]) + years:04d}{match[2]}" if match else ""


def _dated(texts: Sequence[str]) -> tuple[str, ...]:
    return tuple(text for text in texts if "XXXX" not in text and is_valid(text))[:_MOST_OF_ONE]


def _with_years(words: str) -> str:
    """“48?”, “31 or 32” as “'48?”, “'31 or '32”; empty for other words."""
    return _NUMBER.sub(r"'\1", words) if _PLAIN_NUMBERS.fullmatch(words) else ""


def _of_its_year(head: str, texts: Sequence[str]) -> tuple[str, ...]:
    """Days without a year in that of the other part: “(posted 14 June)” behind “12 June 1938”."""
    year = _YEAR.match(head)
    told = [text.replace("XXXX", year[0]) for text in texts if "XXXX" in text] if year else []
    return _dated(told)


def _together(heads: Sequence[str], tails: Sequence[str], *, is_or: bool) -> tuple[str, ...]:
    made: list[str] = []
    for head in heads:
        for tail in tails:
            made.append(_one_of(head, tail) if is_or else both(head, tail))
    return tuple(dict.fromkeys(text for text in (*made, *heads, *tails) if text and is_valid(text)))[:MOST_CHOICES]


def _one_of(head: str, tail: str) -> str:
    """The set of both; empty where one of them is an interval, or they are one."""
    texts = (head, tail)
    if not tail or head == tail or any(mark in text for text in texts for mark in ("/", "{", "[..")):
        return ""
    told = sorted(texts, key=lambda text: str(standard.parsed(text).earliest))
    return f"[{','.join(text.strip('[]') for text in told)}]"
