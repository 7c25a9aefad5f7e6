"""What is proposed of words that are not wholly understood: the dates among them, only ever as a question.

The problem: “the year the ferry sank, 1931 I believe” is no date by the grammar, since nobody knows its other words;
to keep it in silence loses the year, to read it makes a fact of a guess. The idea: each stretch of words that is a date
by itself is a piece, and so may be all the words that mean something, read with the others passed over (“before [the
railway came in] 1874”). The pieces are the choices of a question, which names the words that were not read.

What always holds: no proposal is a reading (`edtf` is None); a piece with a year is worth more than one without; words
without any piece are proposed nothing.
"""

import re
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.asked_words import which_is_meant
from boxlore.core.dates.assembly import SLOTS
from boxlore.core.dates.conflicts import can_both_be
from boxlore.core.dates.context import NOT_THEN, DateContext, Outcome
from boxlore.core.dates.edtf_values import SEASONS
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import Sense
from boxlore.core.dates.no_day import number_of_no_day
from boxlore.core.dates.ruled_out import without, years_beside
from boxlore.core.dates.spelling import is_short_for
from boxlore.core.dates.told_apart import counted_behind, of_the_year_beside
from boxlore.core.dates.years_of_lives import OfALife, age_in_words, choices_beside, of_a_life

Decided = Callable[[list[Token]], Outcome | None]

_YEARS = frozenset(
    ("year", "dates", "short", "years", "decade", "decade_digits", "hundreds", "century", "dual", "roman")
)
_NAMED = frozenset(("month", "season", "season_part", "feast", "feast_day", "span", "hebrew_month", "turn", "event"))
"""Kinds of words of which a piece has at least one of these or of those."""

_SAYING = frozenset(
    (
        *SLOTS,
        *"about about_behind doubt query or and either between between_behind before before_behind at_latest after "
        "after_behind at_earliest since since_behind until until_behind from to to_open or_later or_earlier few "
        "eve eve_behind night_to or_year_after or_year_before morrow not correction old_style new_style comma dash "
        "slash no_such".split(),
    )
)
"""Kinds of words that the grammar has a use for; the others are passed over where a whole is read."""

_PART = frozenset(("comma", "dash", "noise", "query"))
"""Kinds of words that say nothing by themselves: they are not named as not read."""
_BEGINNING = _SAYING - _PART

_NAMED_OF_A_YEAR = frozenset(("month", "season", "season_part", "feast", "feast_day"))
_ONE_YEAR = frozenset(("year", "short", "years"))
_DAY_OR_PART = frozenset(("day", "ordinal", "part"))
_OF_A_PART = frozenset(("part", "last"))
_DENYING = frozenset(("not",))
_TO = frozenset(("to", "to_open"))
_FEAST, _EVENT = frozenset(("feast",)), frozenset(("event",))
_ORDINAL = frozenset(("ordinal", "last"))
_MAY_BE_NAMES = frozenset(("month", "season", "roman"))
_MONTH_OF_A_YEAR = re.compile(r"\d{4}-\d\d[?~%]?")
_YEAR_ALONE = re.compile(r"\d{4}(?:/\d{4})?")
_SURE_DAY = re.compile(r"\d{4}-\d\d-\d\d")
_YEARLESS_DAY = re.compile(r"XXXX-\d\d-\d\d")
_YEARLESS_MONTH = re.compile(r"XXXX-\d\d|\{XXXX-\d\d(?:,XXXX-\d\d)*\}|\[XXXX-\d\d(?:,XXXX-\d\d)*\]")

_PASSED_OVER = frozenset(("noise",))
_NUMBERED, _MEASURED = frozenset(("numbered",)), frozenset(("measured",))
_STREET = frozenset(("street",))
_STREET_OF = frozenset(("street_of",))
_OF_ITS_NAME = frozenset(("day", "ordinal", "from", "noise"))
_MONTH = frozenset(("month",))
_DASH, _COMMA = frozenset(("dash",)), frozenset(("comma",))
_FLOOR = frozenset(("day", "ordinal"))
_COUNTING = _NUMBERED | _MEASURED | _STREET | _STREET_OF
_NUMBERS = frozenset(("year", "day", "short", "dates", "years", "decade_digits"))

_YEAR_WITHIN = re.compile(r"(?<!\d)1[89]\d\d(?!\d)|(?<!\d)20\d\d(?!\d)")
"""The year in what is no date by its form: `negative 1938/17`."""

_SCORE = re.compile(
    r"(?<![\w/.-])(?:\d{1,3}(?: for |[-/])\d{1,2} dec(?:l|lared)?\b(?!\.? ?[\d'])"
    r"|\d{1,3}\*? not out\b|\d{1,3}/(?:\d{1,2}|-) (?:(?:a|the) (?:dozen|pair|pound|yard|piece|head|score)|per|each)\b"
    r"|£?(?:\d{1,3} )?\d{1,2}s\.? ?\d{1,2}d\b|f ?/ ?\d{1,2}(?:\.\d)?\b|at 1/\d{2,4}\b)",
    re.IGNORECASE,
)
"""A score at cricket (“312 for 8 dec.”, “48 not out”), money (“£19 3s 6d”, “2/6 a dozen”), an aperture and an
exposure (“f/8 at 1/60”)."""

MOST_WORDS = 12
"""The longest piece that is looked for."""

MOST_CHOICES = 6


def proposed(tokens: list[Token], words: str, context: DateContext, decided: Decided) -> Outcome | None:
    """The question whether a piece of these words is the date; None where there is none."""
    if context.perhaps:
        tokens = [_as_name(token) if token.is_any(_EVENT) else token for token in tokens]
    tokens = datable(tokens, words)
    counts = any(token.is_any(_COUNTING) for token in tokens)
    life = of_a_life(tokens, words)
    if life and (beside := _beside_a_life(life, tokens, words, context, decided)):
        return beside
    pieces, read, denied = _pieces(tokens, decided) if any(map(is_datable, tokens)) else ([], set(), None)
    if not pieces and denied is not None:
        return Outcome(None, NOT_THEN, denied.instead or years_beside(denied.dates, tokens, words))
    if not pieces and not counts and (spanned := _between_bare(tokens)):
        pieces = [(spanned,)]
    if _is_of_names(tokens, pieces):
        return None
    if not pieces and not counts:
        pieces = [(year,) for year in dict.fromkeys(_YEAR_WITHIN.findall(words))]
    with_year = {text: None for texts in pieces for text in texts if not text.startswith("XXXX")}
    choices = list(with_year) or [text for texts in pieces for text in texts]
    choices = [*_with_its_year(pieces), *choices]
    whole = [] if denied else _whole(tokens, decided, choices)
    if _is_of_no_name(tokens, words):  # “the summer we had the measles, 1938”
        whole.sort(key=lambda text: text.isdigit())
    apart = () if denied or set(whole) - set(choices) else _apart(tokens, decided, choices)
    choices = list(dict.fromkeys((*_before_a_reason(tokens, decided), *whole, *apart, *choices)))
    choices = [text for text in choices if not _says_no_more(text, choices)]
    of_year, composed = of_the_year_beside(tokens, pieces, lambda part: _dates(part, decided))
    if with_year:
        read |= composed
        days = {text[5:10] for text in (*of_year, *choices)}
        yearless = [texts[0] for texts in pieces if all(map(_YEARLESS_DAY.match, texts))]
        alone = [text for text in yearless if text[5:10] not in days]
        first, then = (choices, of_year) if any(map(_SURE_DAY.fullmatch, choices)) else (of_year, choices)
        choices = [*list(dict.fromkeys((*first, *then)))[: MOST_CHOICES - len(alone)], *alone]
    if counted := counted_behind(tokens, lambda part: _dates(part, decided)):
        choices, read = list(counted), read | set(range(len(tokens)))
    if denied is not None:
        choices = list(dict.fromkeys(left for text in choices for left in without(text, denied.dates)))
    if places := number_of_no_day(tokens, words):  # “baby 4 mths May 1950”
        months = _pieces([*tokens[: places[0]], *tokens[places[1] :]], decided)[0]
        choices = list(dict.fromkeys((*(text for texts in months for text in texts), *choices)))
    if (elsewhere := _elsewhere(choices, context)) and any(_may_be_place(token, words) for token in tokens):
        choices += [text for text in elsewhere if text not in choices]
    named = any(token.senses[0].kind == "name" for token in tokens)
    if named and _beside_a_name(tokens):
        choices += [text[:4] for text in choices if _MONTH_OF_A_YEAR.fullmatch(text) and text[:4] not in choices][:1]
    if named and _part_beside_a_name(tokens):  # “Cup Final 1938” is no end of the year
        years = [text for texts in _pieces(_with_parts_as_names(tokens), decided)[0] for text in texts]
        choices += [year for year in years if year not in choices]
    if named:
        choices = list(dict.fromkeys(date for text in choices for date in _with_its_begin(text)))
    choices = [text for text in choices if not is_to_come(text, context)][:MOST_CHOICES]
    if not choices:
        return None
    if not with_year and all(text.startswith("XXXX") for text in choices):
        return Outcome(None, f"“{context.text}”: of which year?", tuple(choices))
    joined = [text for text in ([] if denied else _joined(pieces)) if text not in choices and "X" not in text]
    left = tuple(_left_over(tokens, read, words))
    return Outcome(None, which_is_meant(choices, context, left), (*choices, *joined), left)


def datable(tokens: list[Token], words: str) -> list[Token]:
    """The tokens with names for what is no date by its form: numbers that count something, and scores."""
    tokens = [_with_its_kind(token, words) for token in tokens]
    if any(token.is_any(_COUNTING) for token in tokens):
        tokens = _without_counted(tokens, words)
    for score in _SCORE.finditer(words):
        inside = range(*score.span())
        tokens = [_as_name(token) if token.start in inside else token for token in tokens]
    return tokens


def _with_its_kind(token: Token, words: str) -> Token:
    """“Fernspr. 4 19 38”: a word that nobody knows, short for one before a number that counts, as such a word."""
    is_short = token.senses[0].kind == "name" and words[token.end : token.end + 1] in (".", ":")
    if not is_short or not is_short_for(words[token.start : token.end].lower(), "numbered"):
        return token
    return replace(token, senses=(Sense("numbered"),))


def _beside_a_life(
    life: OfALife, tokens: list[Token], words: str, context: DateContext, decided: Decided
) -> Outcome | None:
    """The question whether another date is meant than that of a birth or a death, which is told among these words;
    what follows from it where there is no other one."""
    others = [token for token in (*tokens[: life.first], *tokens[life.last :]) if token.is_any(_YEARS)]
    if others:
        named = [_as_name(token) if life.first <= at < life.last else token for at, token in enumerate(tokens)]
        found = proposed(named, words, context, decided)
        aged = age_in_words(life, others, words, _dates(tokens[life.first : life.last], decided))
        if found is None or not aged:
            return found
        choices = [text for text in dict.fromkeys((aged, *found.alternatives)) if is_valid(text)]
        return Outcome(None, which_is_meant(choices, context), tuple(choices))
    told = _dates(tokens[life.first : life.last], decided)
    choices = list(filter(is_valid, choices_beside(life, told[0], tokens))) if told else []
    return Outcome(None, which_is_meant(choices, context), tuple(choices)) if choices else None


def is_to_come(text: str, context: DateContext) -> bool:
    """Whether a choice is a year that has not begun: “engine 4472” is no picture’s."""
    year = text[:4].replace("X", "0")
    return year.isdigit() and int(year) > context.this_year


def _without_counted(tokens: list[Token], words: str) -> list[Token]:
    """The tokens with names for numbers that count something or are one of a row: “print no. 1938”, “£19 10s”, “1950 ft
    above the sea”. A year may be told with a full stop as a measure is not: “1937 m. liepos 5 d.”."""
    kept = list(tokens)
    for at, token in enumerate(tokens):
        is_short = len(token.senses) > 1 and words[token.end : token.end + 1] == "."
        if token.is_any(_MEASURED) and at and tokens[at - 1].is_any(_NUMBERS) and not is_short:
            kept[at - 1] = _as_name(tokens[at - 1])
        if token.is_any(_STREET):
            kept = _without_number_of_house(kept, at)
        if token.is_any(_STREET_OF):
            kept = _without_number_in_street(_without_day_of_street(kept, at), at)
        if token.is_any(_NUMBERED):
            kept = _without_number_behind(kept, at)
    return kept


def _without_number_behind(tokens: list[Token], at: int) -> list[Token]:
    """“No. 1936”, “Tel. Shipley 1938”, “car reg. MAY 53”."""
    which = next(sense.value for sense in tokens[at].senses if sense.kind == "numbered")
    following = at + 1
    while which == "exchange" and following < len(tokens) and _is_of_an_exchange(tokens, following, at):
        following += 1
    counted = _NUMBERS | _MONTH if which == "plate" else _NUMBERS
    last = following
    while last < len(tokens) and tokens[last].is_any(counted):
        last += 1
    return [*tokens[:following], *map(_as_name, tokens[following:last]), *tokens[last:]]


def _is_of_an_exchange(tokens: list[Token], place: int, word: int) -> bool:
    """Whether a name, or a dash behind one, stands before a telephone's number: “Tel. Shipley 1938”, “437-1952”."""
    is_dash = place > word + 1 and tokens[place].is_any(_DASH)
    return is_dash or tokens[place].senses[0].kind == "name"


def _without_number_of_house(tokens: list[Token], street: int) -> list[Token]:
    """“1920 Elm Street”: a number, and names between it and the street."""
    first = street - 1
    while first > 0 and tokens[first].senses[0].kind == "name":
        first -= 1
    if first < 0 or first == street - 1 or not tokens[first].is_any(_NUMBERS):
        return tokens
    return [*tokens[:first], _as_name(tokens[first]), *tokens[first + 1 :]]


def _without_day_of_street(tokens: list[Token], street: int) -> list[Token]:
    """“Calle 25 de Mayo”, “ul. 3 Maja”: a day and its month behind a word for a street are its name."""
    last = street + 1
    while last < len(tokens) and tokens[last].is_any(_OF_ITS_NAME):
        last += 1
    if last == street + 1 or last == len(tokens) or not tokens[last].is_any(_MONTH):
        return tokens
    return [*tokens[: street + 1], *map(_as_name, tokens[street + 1 : last + 1]), *tokens[last + 1 :]]


def _without_number_in_street(tokens: list[Token], street: int) -> list[Token]:
    """“Calle Mayor 1936, 2º izq.”: a number behind the name of a street, where that of a floor or a door follows."""
    at = street + 1
    while at < len(tokens) and (tokens[at].senses[0].kind == "name" or tokens[at].kinds <= _OF_ITS_NAME):
        at += 1
    behind = tokens[at + 1 : at + 4]
    if at == street + 1 or len(behind) < 3 or not tokens[at].is_any(_NUMBERS):
        return tokens
    comma, floor, door = behind
    if not (comma.is_any(_COMMA) and floor.is_any(_FLOOR) and door.senses[0].kind == "name"):
        return tokens
    return [*tokens[:at], _as_name(tokens[at]), comma, _as_name(floor), *tokens[at + 3 :]]


def _as_name(token: Token) -> Token:
    return replace(token, senses=(Sense("name"),))


def _with_its_begin(text: str) -> tuple[str, ...]:
    """“From a picture taken 1899” may be no time from then on: the date itself is a choice too."""
    return (text.removesuffix("/.."), text) if text.endswith("/..") else (text,)


def _with_its_year(pieces: list[tuple[str, ...]]) -> list[str]:
    """“5 May, the girls, 1936”: a day, and the one year that is told apart from it."""
    days = [texts[0] for texts in pieces if _YEARLESS_DAY.fullmatch(texts[0])]
    years = [text for texts in pieces for text in texts if text.isdigit()]
    if len(days) != 1 or not years or len(pieces) != 2:
        return []
    return [f"{year}{days[0][4:]}" for year in years if is_valid(f"{year}{days[0][4:]}")]


def _says_no_more(text: str, choices: list[str]) -> bool:
    """Whether a choice is one of a set of which each is a choice by itself."""
    return text[:1] == "[" and ".." not in text and set(text[1:-1].split(",")) <= set(choices)


def _beside_a_name(tokens: list[Token]) -> bool:
    """Whether a word for a month or a season stands beside one that nobody knows: “Mr April, 1931” may be a name."""
    months = [at for at, token in enumerate(tokens) if token.is_any(_MAY_BE_NAMES)]
    beside = (tokens[near] for at in months for near in (at - 1, at + 1) if 0 <= near < len(tokens))
    return any(token.senses[0].kind == "name" for token in beside)


def _may_be_place(token: Token, words: str) -> bool:
    """Whether a word that nobody knows is told as a name is, with a capital letter and no “’s” behind it, so that it
    may be a place of the other half of the world: “дача” and “Gran’s” are none."""
    behind = words[token.end : token.end + 2].casefold().replace("’", "'")
    return token.senses[0].kind == "name" and words[token.start].isupper() and behind != "'s"


def _elsewhere(choices: list[str], context: DateContext) -> list[str]:
    """The months of a season in the other half of the world, where a word that nobody knows may be a place there:
    “winter 1947 in Tartu” told in New Zealand."""
    season = next((match for text in choices if (match := _SEASON.fullmatch(text))), None)
    if season is None:
        return []
    code, year = int(season[2]), int(season[1])
    first, months = SEASONS[code + 8 if code < _OF_THE_SOUTH else code - 8]
    last = first + months - 1
    began = (year, year - 1) if last > _MONTHS else (year,)
    spans = (f"{of:04d}-{first:02d}/{of + last // (_MONTHS + 1):04d}-{(last - 1) % _MONTHS + 1:02d}" for of in began)
    return [text for text in spans if is_valid(text)]


_SEASON = re.compile(r"(\d{4})-(2[1-4]|29|3[0-2])")
_OF_THE_SOUTH, _MONTHS = 29, 12


def _part_beside_a_name(tokens: list[Token]) -> bool:
    """Whether a word for a part or the last one of something stands behind a word that nobody knows."""
    return any(token.is_any(_OF_A_PART) and tokens[at].senses[0].kind == "name" for at, token in enumerate(tokens[1:]))


def _with_parts_as_names(tokens: list[Token]) -> list[Token]:
    """The tokens with names for such words: of “kolhoosi algus, 1949 või 50” the years are left, one of the two."""
    return [
        _as_name(token) if at and token.is_any(_OF_A_PART) and tokens[at - 1].senses[0].kind == "name" else token
        for at, token in enumerate(tokens)
    ]


def _between_bare(tokens: list[Token]) -> str:
    """“Tra il 25 e il 28”: from one year of the last century to another, where only two numbers are told that may be
    years, with a word for “between” or “from” before them; empty for other words."""
    told = [token for token in tokens if token.kinds - _PASSED_OVER]
    if len(told) != len(_BETWEEN_TWO) or any(
        not here.is_any(kinds) for here, kinds in zip(told, _BETWEEN_TWO, strict=True)
    ):
        return ""
    first, last = (next(sense.value for sense in told[at].senses if sense.kind == "day") for at in (1, 3))
    if not _MAY_BE_YEARS <= first[0] < last[0] or first[0] % 10 == last[0] % 10 == 0:  # type: ignore[index]
        return ""  # “between 40 and 50” counts
    return f"[19{first[0]}..19{last[0]}]"  # type: ignore[index]


_MAY_BE_YEARS = 13
"""Lower numbers may be hours and months too (common practice, no source)."""
_BETWEEN = frozenset(("between", "from"))
_BETWEEN_TWO = (
    _BETWEEN, frozenset(("day",)), frozenset(("and", "until", "to", "to_open", "dash")), frozenset(("day",)),
)  # fmt: skip


def _is_of_names(tokens: list[Token], pieces: list[tuple[str, ...]]) -> bool:
    """“May was here with the twins”: months alone, told as names are, among words that nobody knows."""
    if not pieces or any(_YEARLESS_MONTH.fullmatch(text) is None for texts in pieces for text in texts):
        return False
    first = next((at for at, token in enumerate(tokens) if token.is_any(_NAMED)), 0)
    led = first > 0 and tokens[first - 1].senses[0].kind != "name"
    return not led and any(token.senses[0].kind == "name" for token in tokens)


def is_datable(token: Token) -> bool:
    """Whether a token is of a date by itself: “a” is a year or a century somewhere, but passed over elsewhere."""
    return token.is_any(_NAMED_OR_DECADES) or (token.is_any(_YEARS) and not token.is_any(_PASSED_OVER))


def _is_numbered_year(tokens: list[Token]) -> bool:
    """“Allá por el año 30”: whether a number stands behind a word for a year."""
    return any(
        first.is_any(_UNIT) and second.is_any(_DAY) and any(sense.value == "year" for sense in first.senses)
        for first, second in pairwise(tokens)
    )


_UNIT, _DAY = frozenset(("unit",)), frozenset(("day",))
_NAMED_OR_DECADES = _NAMED | {"decades"}
"""“Les années trente, Paris”: a word for decades, whose number is told as any other."""


class Denied(NamedTuple):
    """The dates at which it was not, as EDTF, and what may be meant instead of them."""

    dates: tuple[str, ...]
    instead: tuple[str, ...]


def _pieces(tokens: list[Token], decided: Decided) -> tuple[list[tuple[str, ...]], set[int], Denied | None]:
    """What each piece may mean, from left to right, the longest first; the places of the words that they use; and
    what is told of when it was not, which is no piece."""
    pieces: list[tuple[str, ...]] = []
    years: list[bool] = []
    read: set[int] = set()
    first = 0
    denied: Denied | None = None
    while first < len(tokens):
        last = _end_of_stretch(tokens, first)
        texts: tuple[str, ...] = ()
        is_not: Denied | None = None
        if tokens[first].is_any(_BEGINNING) and not _is_another_day(tokens, first, read):
            while last > first:
                stretch = tokens[first:last]
                texts = () if _cuts_off(tokens, last) else _dates(stretch, decided)
                if not texts and tokens[first].is_any(_DENYING):
                    is_not = _denied(stretch, decided)
                if texts or is_not:
                    break
                last -= 1
        if texts:
            pieces.append((*texts, *_without_what_is_beside(tokens[first:last], texts, decided)))
            years.append(any(token.is_any(_YEARS) for token in tokens[first:last]))
        if texts or is_not:
            read.update(range(first, last))
        first = last if texts or is_not else first + 1
        if is_not:
            denied = Denied((*denied.dates, *is_not.dates), is_not.instead) if denied else is_not
    return _that_fit(pieces, years), read, denied


def _without_what_is_beside(tokens: list[Token], texts: tuple[str, ...], decided: Decided) -> tuple[str, ...]:
    """“June 1940, Dunkirk [time]”: the date itself, which a war or a day behind its comma makes a shorter one."""
    comma = next((at for at, token in enumerate(tokens) if token.senses[0].kind in ("comma", "dash")), 0)
    if not comma or any(token.is_any(_YEARS) for token in tokens[comma:]) or not tokens[-1].is_any(_BESIDE):
        return ()
    return tuple(text for text in _dates(tokens[:comma], decided) if text not in texts)


_BESIDE = frozenset(("span", "feast", "event"))


def _that_fit(pieces: list[tuple[str, ...]], years: list[bool]) -> list[tuple[str, ...]]:
    """The pieces, but where a year is told apart from a war (“the day war broke out, 1939”): the year first, and of the
    wars those that fit it."""
    wars = [not year and not texts[0].startswith("XXXX") for texts, year in zip(pieces, years, strict=True)]
    told = [texts for texts, year in zip(pieces, years, strict=True) if year]
    if not told or not any(wars):
        return pieces
    dates = [standard.parsed(text) for texts in told for text in texts]
    fitting = list(told)
    for texts, is_war in zip(pieces, wars, strict=True):
        if is_war:
            those = tuple(text for text in texts if any(can_both_be(standard.parsed(text), date) for date in dates))
            fitting.append(those or texts)
    return fitting


def _cuts_off(tokens: list[Token], last: int) -> bool:
    """Whether a piece would end with the qualifier of the next date: “1976 of print c. | 1906”."""
    return last < len(tokens) and tokens[last - 1].senses[0].kind in ("about", "doubt") and is_datable(tokens[last])


def _is_another_day(tokens: list[Token], first: int, read: set[int]) -> bool:
    """Whether a feast stands behind an ordinal that no piece uses: the third day of Christmas is not its first."""
    if first == 0 or first - 1 in read or not tokens[first].is_any(_FEAST):
        return False
    return tokens[first - 1].is_any(_ORDINAL)


def _denied(tokens: list[Token], decided: Decided) -> Denied | None:
    outcome = decided(tokens)
    if outcome is None or outcome.ask != NOT_THEN:
        return None
    return Denied(_dates([token for token in tokens if not token.is_any(_DENYING)], decided), outcome.alternatives)


def _end_of_stretch(tokens: list[Token], first: int) -> int:
    last = first
    while last < len(tokens) and last - first < MOST_WORDS and tokens[last].senses[0].kind != "name":
        last += 1
    return last


def _dates(tokens: list[Token], decided: Decided) -> tuple[str, ...]:
    """What words come to, and what else they may mean, as EDTF; none where they are no date."""
    if not any(map(is_datable, tokens)) and not _is_numbered_year(tokens):
        return ()
    outcome = decided(tokens)
    if outcome is None:
        return ()
    if outcome.edtf is None:
        return tuple(text for text in outcome.alternatives if is_valid(text))
    own = outcome.edtf.text
    is_whole_set = own[0] == "[" and len(outcome.alternatives) > 1
    return (*outcome.alternatives, own) if is_whole_set else (own, *outcome.alternatives)


def is_valid(text: str) -> bool:
    """Whether a choice is a date by itself: one may still lack its century."""
    return standard.check(text).state is standard.State.VALID


def _whole(tokens: list[Token], decided: Decided, pieces: list[str]) -> list[str]:
    """What all words that say something come to, where the others are passed over: a limit or a span before the pieces
    that are within it, a date (which may take a name for a month) behind them."""
    saying = [token for at, token in enumerate(tokens) if token.is_any(_SAYING) and not _is_whither(tokens, at)]
    while saying and saying[-1].senses[0].kind == "comma":
        saying.pop()
    if len(saying) == len(tokens) or len(saying) > MOST_WORDS or _tells_an_age(tokens):
        return []
    texts = [text for text in _dates(saying, decided) if not text.startswith("XXXX")]
    is_limit = any(text[0] in "[{" or "/" in text for text in texts)
    return texts if is_limit else [*pieces, *texts]


def _tells_an_age(tokens: list[Token]) -> bool:
    """“The Christmas Walter was sixteen”: whether a number stands behind somebody and “was”, so that it is no year."""
    return any(
        who.senses[0].kind == "name" and was.is_any(_WAS) and number.is_any(_DAY)
        for who, was, number in zip(tokens, tokens[1:], tokens[2:], strict=False)
    )


_WAS = frozenset(("was",))


def _is_of_no_name(tokens: list[Token], words: str) -> bool:
    """Whether a season or a feast is told, and none of them beside a word with a capital that nobody knows, of whose
    name it may be (“Winter Gardens”)."""
    named = [at for at, token in enumerate(tokens) if token.is_any(_NO_NAME)]
    beside = (tokens[near] for at in named for near in (at - 1, at + 1) if 0 <= near < len(tokens))
    return bool(named) and not any(_may_be_place(token, words) for token in beside)


_NO_NAME = frozenset(("season", "season_part", "feast", "feast_day"))


def _before_a_reason(tokens: list[Token], decided: Decided) -> list[str]:
    """“Easter of 1951, because the twins weren't born till June”: what is told before a reason for it; none where
    nothing is."""
    told = before_because(tokens)
    pieces = _pieces(told, decided)[0] if told else []
    return [text for texts in pieces for text in texts if not text.startswith("XXXX")]


def before_because(tokens: list[Token]) -> list[Token]:
    """The tokens before the word that a reason begins with; none where there is no such word."""
    return tokens[: next((at for at, token in enumerate(tokens) if token.is_any(_BECAUSE)), 0)]


_BECAUSE = frozenset(("because",))


def _is_whither(tokens: list[Token], at: int) -> bool:
    """Whether a word for “to” stands between words that nobody knows: “before Arthur went to Canada in 1925”."""
    beside = tokens[max(at - 1, 0) : at + 2]
    return tokens[at].is_any(_TO) and [token.senses[0].kind == "name" for token in beside] == [True, False, True]


def _apart(tokens: list[Token], decided: Decided, pieces: list[str]) -> list[str]:
    """“The summer before I went to the Grammar, so ’32”: a season, a feast or a month, and the one year that is told
    apart from it."""
    named = [at for at, token in enumerate(tokens) if token.is_any(_NAMED_OF_A_YEAR)]
    years = [at for at, token in enumerate(tokens) if token.is_any(_ONE_YEAR)]
    if (
        len(years) != 1
        or not named
        or not any(_YEAR_ALONE.fullmatch(text) for text in pieces)
        or (len(named) > 1 and named[-1] - named[0] >= len(named))
    ):
        return []
    first = named[0]
    while first and tokens[first - 1].is_any(_DAY_OR_PART) and first - 1 not in years:
        first -= 1
    stretch = [*tokens[first : named[-1] + 1], tokens[years[0]]]
    return [text for text in _dates(stretch, decided) if not text.startswith("XXXX") and text not in pieces]


def _joined(pieces: list[tuple[str, ...]]) -> list[str]:
    """Of two sure pieces: one of the two, and from the first to the second."""
    sure = [texts[0] for texts in pieces if len(texts) == 1 and texts[0][:1].isdigit() and "/" not in texts[0]]
    if len(sure) != 2 or len(pieces) != 2 or sure[0] == sure[1]:
        return []
    first, last = (standard.parsed(text).earliest for text in sure)
    if sure[1].startswith(sure[0]) or sure[0].startswith(sure[1]):
        return []  # Christmas dinner in 1938, December 1938
    span = [f"{sure[0]}/{sure[1]}"] if first and last and first < last else []
    return [f"[{','.join(sure)}]", *span]


def _left_over(tokens: list[Token], read: set[int], words: str) -> list[str]:
    """The runs of words that no piece uses, as they were told; those that say nothing are not named."""
    runs: list[str] = []
    run: list[Token] = []
    for at, token in enumerate(tokens):
        if at not in read and not (not run and token.is_any(_PART)) and token.senses[0].kind not in ("comma", "dash"):
            run.append(token)
            continue
        _close(run, runs, words)
    _close(run, runs, words)
    return runs if runs != [words] else []


def _close(run: list[Token], runs: list[str], words: str) -> None:
    if any(not token.is_any(_PART) for token in run):
        runs.append(words[run[0].start : run[-1].end])
    run.clear()
