"""Parts of one date that are told beside each other, each readable alone: “Christmas Eve, the first one of the war”,
“jaanipäev or thereabouts, vers 1937”.

A part without its year is of the only year that the others tell; a how-manieth behind a comma counts what stands before
it. Nothing here is a reading: it is all offered in a question.
"""

import itertools
import re
from collections.abc import Callable
from dataclasses import replace
from functools import cache

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.context import qualified
from boxlore.core.dates.edtf_values import month_length
from boxlore.core.dates.lexer import Token, lex
from boxlore.core.dates.lexicon import Sense, the_one_beside

Dates = Callable[[list[Token]], tuple[str, ...]]
"""What words come to, and what else they may mean, as EDTF."""

_NAMED = frozenset(("feast", "feast_day", "month", "season"))
_OF_A_DAY = _NAMED | {"day", "ordinal", "weekday", "noise", "part"}
_APART = frozenset(("comma",))
_YEARS = frozenset(("year", "short", "years", "dates", "decade", "decade_digits", "dual", "span", "event"))
_ORDINAL, _NOISE = frozenset(("ordinal", "last")), frozenset(("noise",))
_ONE = frozenset(("either", "day"))
_BESIDE = frozenset(("span", "event"))
_MARKS = "?~%"


def counted_behind(tokens: list[Token], dates: Dates) -> tuple[str, ...]:
    """“Christmas Eve, the first one of the war”, “17. mai, den første etter krigen”: the first of those that are told
    before the comma; none for other words."""
    comma = next((at for at, token in enumerate(tokens) if token.is_any(_APART)), 0)
    head, tail = tokens[:comma], tokens[comma + 1 :]
    if not any(token.is_any(_NAMED) for token in head) or not all(token.is_any(_OF_A_DAY) for token in head):
        return ()
    while tail and tail[0].is_any(_NOISE) and not tail[0].is_any(_ORDINAL):
        tail = tail[1:]
    if not tail or not tail[0].is_any(_ORDINAL) or not any(token.is_any(_BESIDE) for token in tail):
        return ()
    behind = tail[2:] if tail[1].is_any(_ONE) else tail[1:]
    return tuple(text for text in dates([tail[0], *head, *behind]) if "XXXX" not in text)


def of_the_year_beside(tokens: list[Token], pieces: list[tuple[str, ...]], dates: Dates) -> tuple[list[str], set[int]]:
    """A day, a month or a season told without its year, of the only year that the other pieces tell; and the places of
    its words."""
    told = [standard.parsed(text) for texts in pieces for text in texts if "XXXX" not in text]
    years = {day.year for edtf in told for day in (edtf.earliest, edtf.latest) if day}
    if len(years) != 1:
        return [], set()
    marks = {edtf.text[-1] if edtf.text[-1] in _MARKS else "" for edtf in told}
    mark = marks.pop() if len(marks) == 1 else ""
    composed: list[str] = []
    read: set[int] = set()
    for first, last in between_commas(tokens):
        part = tokens[first:last]
        if any(token.is_any(_YEARS) or token.senses[0].kind == "name" for token in part):
            continue
        if any(token.senses[0].kind in _NAMED for token in part) and all("XXXX" in text for text in dates(part)):
            year = Token((Sense("year", f"{min(years):04d}"),), part[-1].end, part[-1].end)
            texts = [qualified(text, mark) for text in dates([*part, year]) if "XXXX" not in text]
            composed += texts
            read |= set(range(first, last)) if texts else set()
    return composed, read


def named_behind(tokens: list[Token], words: str) -> str:
    """“The other Easter, the Greek one, 1954”: the words with the name that both parts make (“Greek Easter, 1954”);
    empty where they make none."""
    for (first, last), (begin, end) in itertools.pairwise(between_commas(tokens)):
        feasts = [token for token in tokens[first:last] if token.is_any(_FEAST)]
        while feasts and begin < end and tokens[begin].is_any(_NOISE):
            begin += 1
        if len(feasts) == 1 and begin < end:  # “New Year’s Eve, the one going into 1960”
            joined = f"{words[feasts[0].start : feasts[0].end]} {words[tokens[begin].start :]}"
            if lex(joined)[0].end > feasts[0].end - feasts[0].start:
                return f"{words[: feasts[0].start]}{joined}"
        for which in tokens[begin:end] if len(feasts) == 1 else ():
            if which.senses[0].kind == "name":
                name = f"{words[which.start : which.end]} {words[feasts[0].start : feasts[0].end]}"
                made = lex(name)
                if len(made) == 1 and made[0].is_any(_FEAST):
                    return f"{name}{words[tokens[end - 1].end :]}"
    return ""


_FEAST = frozenset(("feast",))


def of_a_day_in_a_year(tokens: list[Token]) -> tuple[str, ...]:
    """“Friday the 13th, 1953”: the days of that year that fit, where a day of the week stands with a number and no
    month is told; none for other words."""
    named = [token for token in tokens if token.kinds == _WEEKDAY and token.end - token.start > _SHORTEST_DAY]
    days = [token for token in tokens if token.is_any(_NUMBER)]
    years = [sense.value for token in tokens for sense in token.senses if sense.kind == "year"]
    if len(named) != 1 or len(days) != 1 or len(years) != 1 or any(token.is_any(_OTHERWISE) for token in tokens):
        return ()
    weekday = named[0].senses[0].value
    value = next(sense.value for sense in days[0].senses if sense.kind in _NUMBER)
    day, year = value[0] if isinstance(value, tuple) else value, str(years[0])
    if not isinstance(day, int) or not 1 <= day <= _LAST_DAY or not year.isdigit():
        return ()
    months = (month for month in range(1, 13) if day <= month_length(int(year), month))
    return tuple(
        f"{year}-{month:02d}-{day:02d}" for month in months if (to_number(int(year), month, day) - 1) % 7 == weekday
    )


_SHORTEST_DAY = 2
"""“St” is a day of the week in Czech, and a saint or a street."""
_WEEKDAY, _NUMBER = frozenset(("weekday",)), frozenset(("day", "ordinal"))
_OTHERWISE = frozenset("month feast span event unit before after season".split())
_LAST_DAY = 31


def _a_day_beside(tokens: list[Token], dates: Dates) -> tuple[str, ...]:
    """“12 June 1938 or the day before”: one of the two, and each."""
    joins = [at for at, token in enumerate(tokens) if token.is_any(_OR)]
    if not joins:
        return ()  # most
    if len(tokens) - joins[-1] > _YEAR_BEHIND and tokens[-1].is_any(_ONE_YEAR) and tokens[-2].is_any(_APART):
        tokens = [*tokens[: joins[-1]], tokens[-1], *tokens[joins[-1] : -2]]  # “Boxing Day or the day after, 1948”
        joins[-1] += 1
    saying = [token for token in tokens if not token.is_any(_NOISE)]
    if len(saying) < _FEWEST or not any(sense.value == "day" for sense in saying[-2].senses):
        return ()
    side = next((side for side, kinds in _SIDES.items() if saying[-1].is_any(kinds)), 0)
    told = dates(tokens[: joins[-1]]) if side else ()
    beside = (
        (text, str(from_number(to_number(*map(int, text.split("-"))) + side))) for text in told if _DAY.fullmatch(text)
    )
    return tuple(text for both in beside for text in (f"[{','.join(sorted(both))}]", *both))


_FEWEST, _YEAR_BEHIND = 4, 4
_ONE_YEAR = frozenset(("year", "short"))
_OR, _DAY = frozenset(("or",)), re.compile(r"\d{4}-\d\d-\d\d")
_SIDES = {-1: frozenset(("before",)), 1: frozenset(("after",))}


@cache
def _last_words() -> frozenset[str]:
    return frozenset(form.rpartition(" ")[2] for form in the_one_beside())


def ends_with_the_one_beside(words: str) -> str:
    """The words for the one next to what was told, where these end with such; else nothing."""
    bare = words.casefold().rstrip(" .!?”’")
    if bare[bare.rfind(" ") + 1 :] not in _last_words():
        return ""  # most
    return next((form for form in the_one_beside() if bare.endswith(f" {form}")), "")


def the_one_beside_it(tokens: list[Token], words: str, dates: Dates) -> tuple[str, ...]:
    """“Xmas 1938, but Des reckons it was the one before”: what is told, a year before or after; none where the words do
    not end so."""
    if a_day_away := _a_day_beside(tokens, dates):
        return a_day_away
    if not (ends := ends_with_the_one_beside(words)):
        return ()  # most
    years = [(at, sense) for at, token in enumerate(tokens) for sense in token.senses if sense.kind == "year"]
    if len(years) != 1 or not str(years[0][1].value).isdigit():
        return ()
    at, year = years[0][0], int(str(years[0][1].value)) + the_one_beside()[ends]
    first = at
    while first and tokens[first - 1].senses[0].kind != "name" and not tokens[first - 1].is_any(_APART):
        first -= 1
    beside = replace(tokens[at], senses=(Sense("year", f"{year:04d}"),))
    both = (*dates([*tokens[first:at], beside]), *dates(tokens[first : at + 1]))
    return tuple(dict.fromkeys(text for text in both if "XXXX" not in text))


def between_commas(tokens: list[Token]) -> list[tuple[int, int]]:
    """The first places of the parts between commas, and the places behind their last."""
    ends = [-1, *(at for at, token in enumerate(tokens) if token.is_any(_APART)), len(tokens)]
    return [(before + 1, end) for before, end in itertools.pairwise(ends) if before + 1 < end]
