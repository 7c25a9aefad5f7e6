"""Dates told by an age or a birthday: “when Ruth was five”, “aged 5”, “on her 21st”, “als ich sechs war”.

An age is one number beside words of age, in any order; whatever else is said must be the person. The narrator is “I”;
“she”, “he” or nobody is the one person in the picture; where several are, it is asked who.
"""

import re
from collections.abc import Callable
from dataclasses import replace
from functools import reduce
from operator import or_
from typing import NamedTuple

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext, Life, NoSuchDate
from boxlore.core.dates.edtf_values import Day, month_length
from boxlore.core.dates.event_question import when_born
from boxlore.core.dates.holidays import holiday
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import DATIVE, ROMANCE, Sense
from boxlore.core.dates.parts_within import DECADE_PARTS
from boxlore.core.dates.relative import (
    about_age,
    about_age_in,
    about_ages,
    at_age,
    at_age_in,
    birthday,
    bounds,
    in_years,
    just_turned,
    moved,
    not_yet_at,
    past_age,
    past_age_in,
    past_no_age,
    probably_of_age,
    probably_turning,
    seasons_about,
    year_of_age,
    year_of_birthday,
)  # fmt: skip

STAGES = frozenset(("infant", "small", "alive"))
"""Kinds of words for a stage of a life."""

_AGE = frozenset(
    "when was aged at_years years_old birthday possessive i they about about_behind noise unit comma dash doubt or "
    "genitive not_yet older".split()
)


_OF_A_CHILD = ("day", "week", "month")
NUMBERS = frozenset(("day", "ordinal", "decade"))
"""Kinds of numbers: without one no age is told."""

AGE_WORDS = frozenset("when was genitive aged at_years years_old birthday possessive not_yet".split())
"""Kinds of words without which no age is told."""


def age(tokens: list[Token], text: str, context: DateContext) -> str | None:
    """The EDTF of an age, or None if none is told. Raises NoSuchDate where it is not known when the person was born."""
    words = _words_of_age(tokens, text)
    if words is None:
        return None
    kinds, numbers, lives, unknown, units, parts = words
    if (
        not numbers
        or not all(0 < value <= (MOST_MONTHS if units == ["month"] else MOST_YEARS) for value, _ in numbers)
        or len(lives) > 1
        or (unknown and (lives or "i" in kinds))
    ):
        return None
    if len(numbers) == 2 and "nearly" in kinds and numbers[1][0] == numbers[0][0] + 1:
        del numbers[0]  # “I was 3 going on 4”
    said = sum(not token.kinds & _ADDED for token in tokens)
    if units and lives and said == _PERSON_AND_AGE and ("comma" in kinds or "(" in text):
        kinds.add("aged")  # “Ruth, 3 months”
    only_at = "at_years" in kinds and not units and not kinds & _OF_YEARS
    if only_at and said > 1 + len(numbers) + bool(lives or "i" in kinds):
        return None  # “Ruth at no. 18”
    may_be_a_clock = only_at and max(numbers)[0] <= LAST_HOUR
    reckon: Callable[[str, int], str] | None
    if units:
        reckon = _of_a_child(units[0], kinds, len(numbers), known=bool(lives))
    else:
        if unknown:
            kinds.discard("old")  # “the house, 16 years old”
        elif _of_one_language(tokens):
            kinds.add("old")  # “tenía siete años”
        elif _is_dative_age(tokens):
            kinds.add("old")
        elif _is_romance_age(tokens):
            kinds.add("birthday" if "whole_year" in kinds else "old")
        reckon = _reckoner(kinds, {kind for _, kind in numbers}, bool(lives), len(numbers))
    if parts and reckon is in_years and len(parts) == 1:
        reckon = _in_part_of_years(parts[0])  # “in her early twenties”
    elif parts:
        return None
    if reckon is None:
        return None

    def reckoned(birth: str) -> str:
        values = [value for value, _ in numbers]
        if reckon is at_age and len(values) == 2 and values[1] == values[0] + 1:
            return at_age(birth, *values)
        texts = [reckon(birth, value) for value in values]
        return texts[0] if len(texts) == 1 else f"[{','.join(map(_within_a_list, texts))}]"

    life = _life(lives, unknown, kinds, text, context) or _of_the_pictured(text, context, reckoned)
    if not life.born:
        whose = next(token for token in tokens if token.senses[0].kind == "person")
        raise NoSuchDate(when_born(text[whose.start : whose.end]))
    told = _within(life, reckoned(life.born), text)
    if may_be_a_clock:
        raise NoSuchDate(f"“{text}”: is that an age, or a time of day?", (told,))
    return told


class _WordsOfAge(NamedTuple):
    """The kinds of words beside an age, its numbers with their kinds, whoever is known and whoever is not, the units of
    a child's age, and the parts of ten years."""

    kinds: set[str]
    numbers: list[tuple[int, str]]
    lives: list[Life]
    unknown: list[Token]
    units: list[str]
    parts: list[str]


def _words_of_age(tokens: list[Token], text: str) -> _WordsOfAge | None:
    """The words as those of an age; None where one is no such word."""
    kinds: set[str] = set()
    numbers: list[tuple[int, str]] = []
    lives: list[Life] = []
    unknown: list[Token] = []
    units: list[str] = []
    parts: list[str] = []
    counted = -1  # the place behind the last number
    for at, token in enumerate(tokens):
        here = token.kinds
        if here & _AGE and not (here := here - _not_meant(at, tokens, text)) & _AGE:
            unknown.append(token)  # “when Ma was thirty”, though “ma” is Estonian for “I”
            continue
        number = _number_of(token, tokens[at - 1 : at] if at else [], tokens[at + 1 : at + 2])
        if number is not None:
            value = number.value[0] if isinstance(number.value, tuple) else number.value
            numbers.append((int(str(value)), number.kind))
            counted = at + 1
        elif token.senses[0].kind == "person":
            lives.append(token.senses[0].value)  # type: ignore[arg-type]  # a life, by its kind
        elif token.senses[0].kind == "unit" and (unit := _unit(token)) != "year":
            if unit not in _OF_A_CHILD or units or (counted != at and (unit != "day" or not at)):
                return None
            if counted == at:
                units.append(unit)
            else:
                kinds.add("birthday")  # “le jour de mes 20 ans”
        elif text[token.start : token.end].casefold() in _TODAY:
            kinds.add("today")
        elif "part" in here and not here & _AGE and token.senses[0].value in DECADE_PARTS:
            parts.append(str(token.senses[0].value))
        elif here & _AGE:
            kinds |= (here & _AGE) | _said_more(token, tokens, kinds)
        elif here == {"name"} or here <= STAGES:
            unknown.append(token)  # “the baby is six months old”
        else:
            return None
    return _WordsOfAge(kinds, numbers, lives, unknown, units, parts)


def _number_of(token: Token, before: list[Token], behind: list[Token]) -> Sense | None:
    """The sense of a token as a number. “Veinte” is twenty years of a life only behind “her”, and where no word for
    years follows: “en sus veinte”, but “mis veinte años”, “cumplí veinte”."""
    senses = [sense for sense in token.senses if sense.kind in NUMBERS]
    if len(senses) < 2:
        return senses[0] if senses else None
    of_a_life = any(near.is_any(_OWNING) for near in before) and not any(near.is_any(_YEARS_OLD) for near in behind)
    return next((sense for sense in senses if (sense.kind == "decade") == of_a_life), senses[0])


_OWNING = frozenset(("possessive", "genitive"))


def _is_dative_age(tokens: list[Token]) -> bool:
    """“Мне тут шесть лет”, `man te seši gadi`: whether a word for “to me” stands with one for years, both of one of the
    languages that tell an age so."""
    senses = _senses(tokens)
    return _languages_with("i", senses) & _languages_with("years_old", senses) & DATIVE != 0


def _is_romance_age(tokens: list[Token]) -> bool:
    """“Mes vingt ans”, “sus 20 años”, “i suoi vent'anni”: whether a word for “my” or “her” stands before a number with
    a word for years, both of one of the languages that tell an age so."""
    senses = _senses(tokens)
    return _languages_with("possessive", senses) & _languages_with("years_old", senses) & ROMANCE != 0


def _of_one_language(tokens: list[Token]) -> bool:
    """Whether a word for “was” and one for “years” are of one language (“war” of “two years into the war” is not)."""
    surely = [token.senses[0] for token in tokens]
    return _languages_with("was", surely) & _languages_with("years_old", _senses(tokens)) != 0


def _senses(tokens: list[Token]) -> list[Sense]:
    return [sense for token in tokens for sense in token.senses]


def _languages_with(kind: str, senses: list[Sense]) -> int:
    """The languages, as bits, of the senses of a kind."""
    return reduce(or_, (sense.languages for sense in senses if sense.kind == kind), 0)


_TODAY = frozenset(
    "today heute aujourd'hui hoy oggi hoje vandaag täna tänään idag сегодня dziś dzisiaj šodien šiandien dnes".split()
)
"""“Maire 21 today!”"""

MOST_YEARS, MOST_MONTHS = 120, 120 * 12


def with_halves(tokens: list[Token]) -> list[Token]:
    """The tokens with “two and a half”, of years, as about so many months: “Helen at two and a half”; without the half
    where it is of weeks or months, or no other word tells an age (“Helen, two and a half”)."""
    for at in range(1, len(tokens) - 1):
        half = at + 1 + tokens[at + 1].is_any(_ARTICLE) if at + 2 < len(tokens) else at + 1
        if tokens[at].is_any(_AND) and tokens[half].is_any(_HALF) and (count := _count(tokens[at - 1])):
            rest = tokens[half + 1 :]
            has_unit = bool(rest) and rest[0].senses[0].kind == "unit"
            of_an_age = any(token.is_any(_OF_AN_AGE) for token in (*tokens[: at - 1], *rest))
            if not of_an_age or (has_unit and not _is_unit(rest[0], "year")):
                return [*tokens[:at], *rest]
            begin, end = tokens[at - 1].start, tokens[half].end
            of_months = (Sense("about"),), (Sense("day", (count * 12 + 6, 0)),), (Sense("unit", "months"),)
            return [*tokens[: at - 1], *(Token(senses, begin, end) for senses in of_months), *rest[has_unit:]]
    return tokens


_OF_AN_AGE = frozenset(("aged", "was", "at_years", "years_old"))
_AND, _ARTICLE, _HALF = frozenset(("and",)), frozenset(("noise",)), frozenset(("fraction",))


def in_months(tokens: list[Token]) -> list[Token]:
    """The tokens with an age of years and months as one of months: “2 years and 3 months”."""
    for at in range(len(tokens) - 3):
        behind = at + 2 + bool(tokens[at + 2].kinds & _JOINED)
        run = [*tokens[at : at + 2], *tokens[behind : behind + 2]]
        counts = [_count(token) for token in run[::2]]
        if len(run) == _YEARS_AND_MONTHS and all(counts) and _is_unit(run[1], "year") and _is_unit(run[3], "month"):
            months = Token((Sense("day", (counts[0] * 12 + counts[1], 0)),), run[0].start, run[2].end)
            return [*tokens[:at], months, *tokens[behind + 1 :]]
    return tokens


_JOINED = frozenset(("and", "comma"))
_YEARS_AND_MONTHS = 4


def _count(token: Token) -> int:
    """The number that a token is; 0 for none."""
    return next((sense.value[0] for sense in token.senses if sense.kind == "day"), 0)  # type: ignore[index]


def _is_unit(token: Token, unit: str) -> bool:
    return any(sense.kind == "unit" and str(sense.value).removesuffix("s") == unit for sense in token.senses)


def _in_part_of_years(part: str) -> Callable[[str, int], str]:
    begin, end = DECADE_PARTS[part]
    return lambda birth, decade: about_ages(birth, decade + begin, decade + end)


_OF_YEARS = frozenset(("when", "was", "aged", "years_old", "birthday", "not_yet"))
_ADDED = frozenset(("comma", "dash", "about", "doubt", "or"))
_PERSON_AND_AGE = 3
"""So many words say whose age it is, how many and of what: “Ruth, 3 months”."""

LAST_HOUR = 12
"""“Ruth at seven” may be in the evening; “Ruth at sixteen” is an age."""


def nth_feast(tokens: list[Token], words: str, context: DateContext) -> str | None:
    """The EDTF of “Ruth’s first Christmas”, “Ruth's first summer”, “my first Christmas”: the how-manieth after the
    birth; of “Mum's last Christmas”, the one before the death; of “her last year”, that up to it; None for other words.
    Raises NoSuchDate where it must be asked."""
    lives: list[Life] = []
    counts: list[int] = []
    feasts: list[str] = []
    seasons: list[int] = []
    is_year = False
    whose: set[str] = set()
    for token in tokens:
        whose |= token.kinds & _WHOSE
        kinds = {sense.kind: sense.value for sense in token.senses}
        if kinds.get("unit") == "year":
            is_year = True
        elif "feast" in kinds:
            feasts.append(str(kinds["feast"]))
        elif "season" in kinds:
            seasons.append(int(str(kinds["season"])))
        elif "ordinal" in kinds:
            counts.append(int(str(kinds["ordinal"])))
        elif "last" in kinds:
            counts.append(-1)
        elif "person" in kinds:
            lives.append(kinds["person"])  # type: ignore[arg-type]  # a life, by its kind
        elif not kinds.keys() & {"noise", "genitive", "possessive", "alive"}:
            return None
    if len(lives) > 1 or len(counts) != 1 or len(feasts) + len(seasons) + is_year != 1 or not counts[0]:
        return None
    life, (count,) = lives[0] if lives else _of_hers(whose, words, context), counts
    if life is None:
        return None
    if is_year:
        return _last_year(life) if count < 0 and life.died else None
    if count < 0:
        return _last_of(life, feasts, seasons, context)
    if not life.born:
        return None
    if seasons:
        return _season_after(bounds(life.born), context.season_code(seasons[0]), count)
    days = [_feast_after(day, feasts[0], count, context) for day in bounds(life.born)]
    return days[0] if days[0] == days[1] else f"[{','.join(map(_within_a_list, days))}]"


def _of_hers(whose: set[str], words: str, context: DateContext) -> Life | None:
    """Whose life it is by “my” or “her”, where that is known: of the only one in the picture. “Their first Christmas”
    may be that of two who married."""
    if not whose or _OF_SEVERAL.search(words):
        return None
    try:
        return _life([], [], whose, words, context) or _of_the_pictured(words, context, str)
    except NoSuchDate:
        return None


_WHOSE = frozenset(("possessive", "i"))
_OF_SEVERAL = re.compile(r"\b(?:their|ihr\w*|nende|oma|leurs?|loro)\b", re.IGNORECASE)


def _season_after(born: tuple[Day, Day], code: int, count: int) -> str:
    """The how-manieth season of a life; one that was running at the birth may count or not."""
    texts: list[str] = []
    for day in born:
        rows = [row for row in seasons_about(code, day.year) if row[2] >= day]
        is_running = rows[0][1] < day
        texts += [f"{rows[0][0] + more}-{code}" for more in range(count - 1, count + is_running)]
    texts = list(dict.fromkeys(texts))
    if len(texts) > 1:
        raise NoSuchDate("Which year’s is meant?", tuple(texts))
    return texts[0]


def _last_year(life: Life) -> str:
    """The year up to a death."""
    first, last = bounds(life.died)
    return f"[{moved(first, 'year', -1)}..{last}]"


def _last_of(life: Life, feasts: list[str], seasons: list[int], context: DateContext) -> str | None:
    """The last feast or season that began before a death; None where that is not known."""
    if not life.died:
        return None
    texts: list[str] = []
    for day in bounds(life.died):
        if seasons:
            code = context.season_code(seasons[0])
            texts.append([f"{row[0]}-{code}" for row in seasons_about(code, day.year) if row[1] <= day][-1])
        else:
            there = [_feast_in(day.year + years, feasts[0], context) for years in (-1, 0)]
            begun = standard.parsed(there[1]).earliest
            texts.append(there[1] if begun is not None and begun <= day else there[0])
    return texts[0] if texts[0] == texts[1] else f"[{','.join(map(_within_a_list, texts))}]"


def birthday_in_year(tokens: list[Token]) -> str | None:
    """The EDTF of “Elsie's birthday 1945”: the day of the birth in that year; None for other words, or a birth that is
    not known to the day."""
    lives: list[Life] = []
    years: list[str] = []
    said = False
    for token in tokens:
        kinds = {sense.kind: sense.value for sense in token.senses}
        if "person" in kinds:
            lives.append(kinds["person"])  # type: ignore[arg-type]  # a life, by its kind
        elif "year" in kinds:
            years.append(str(kinds["year"]))
        elif "birthday" in kinds:
            said = True
        elif not kinds.keys() & {"noise", "genitive", "comma"}:
            return None
    if not said or len(lives) != 1 or len(years) != 1 or not years[0].isdigit() or not lives[0].born:
        return None
    try:
        first, last = bounds(lives[0].born)
    except NoSuchDate:
        return None
    year = int(years[0])
    is_one = first == last and first.year <= year and first.day <= month_length(year, first.month)
    return f"{year:04d}-{first.month:02d}-{first.day:02d}" if is_one else None


def with_hundreds(tokens: list[Token], words: str) -> list[Token]:
    """The tokens with a number of three digits as one that somebody's years may be: “her 100th birthday”."""
    return [
        replace(token, senses=(Sense("day", (int(told), 3)),)) if _HUNDREDS.fullmatch(told) else token
        for token in tokens
        for told in (words[token.start : token.end],)
    ]


_HUNDREDS = re.compile("1[01][0-9]|120")


def with_birthdays(tokens: list[Token]) -> list[Token]:
    """The tokens with a day and a month for somebody's birthday that is told without its number: “a week after [14
    May] in 1940”, “[14 May] the year before the wedding”; the same ones where none is."""
    for at in range(len(tokens) - 1):
        behind = next((end for end in range(at + 1, len(tokens)) if not tokens[end].is_any(_OF_WHOM)), at)
        ends = (tokens[at], tokens[behind])
        persons = [token.senses[0].value for token in ends if token.senses[0].kind == "person"]
        beside = [*tokens[max(at - 1, 0) : at], *tokens[behind + 1 : behind + 2]]
        if len(persons) != 1 or not any(map(_is_birthday, ends)) or any(token.is_any(NUMBERS) for token in beside):
            continue
        born = standard.parsed(persons[0].born) if persons[0].born else None  # type: ignore[attr-defined]  # a life
        if born and born.earliest and born.earliest == born.latest:
            day = Token((Sense("day", (born.earliest.day, 2)),), ends[0].start, ends[0].end)
            month = Token((Sense("month", born.earliest.month),), ends[1].start, ends[1].end)
            return [*tokens[:at], day, month, *tokens[behind + 1 :]]
    return tokens


def _is_birthday(token: Token) -> bool:
    """Whether a word is a birthday, and says no more (“just turned”)."""
    return any(sense.kind == "birthday" and sense.value is None for sense in token.senses)


_OF_WHOM = frozenset(("genitive", "noise", "from"))


def _feast_after(birth: Day, feast: str, count: int, context: DateContext) -> str:
    """The how-manieth time that a feast came after a birth. Raises NoSuchDate where that must be asked."""
    days = [_feast_in(birth.year + years, feast, context) for years in range(count + 1)]
    begun = standard.parsed(days[0]).latest
    return days[count if begun is not None and begun < birth else count - 1]


def _feast_in(year: int, feast: str, context: DateContext) -> str:
    found = holiday(feast, f"{year:04d}", context.countries, context.hemisphere)
    if found.ask:  # whose feast, or in which years it was kept
        raise NoSuchDate(found.ask, found.alternatives)
    return found.edtf


_TOLD_APART = frozenset(("i", "they", "possessive", "doubt"))
_CORE = frozenset(("when", "was", "aged", "birthday"))
_YEARS_OLD = frozenset(("years_old",))


def _not_meant(at: int, tokens: list[Token], text: str) -> set[str]:
    """What a word is in none of the languages of the words of age beside it: “kai” is Lithuanian for “when”, and
    “perhaps” in Finnish; “mit” is German for “at”, and “my” in Danish. A word that is written as a name is one, unless
    it is of the language of these words: “when Con was six”, “when Anni was six”, “kui Mina oli kuuene”."""
    token = tokens[at]
    if "span" in token.kinds and any("was" in other.kinds for other in tokens if other is not token):
        return set(_AGE)  # “before the war, when I was seven”, though “war” is German for “was”
    beside = _languages_beside(token, tokens, _CORE)
    if not beside and not token.kinds & _CORE:
        beside = _languages_beside(token, tokens, _YEARS_OLD)
    as_name = text[token.start : token.start + 1].isupper()
    if not beside:
        is_day = as_name and "weekday" in token.kinds  # “Mon 5th” is no French “my”
        return {"i", "possessive"} if is_day else set()
    told_apart = _AGE if as_name else _TOLD_APART
    own = {sense.kind for sense in token.senses if sense.kind in told_apart and sense.languages & beside}
    if as_name and at and token.end - token.start > 1:
        own -= {"i", "possessive"}
    return {sense.kind for sense in token.senses if sense.kind in told_apart} - own


def _languages_beside(token: Token, tokens: list[Token], kinds: frozenset[str]) -> int:
    beside = 0
    for near in tokens:
        for sense in near.senses if near is not token else ():
            beside |= sense.languages if sense.kind in kinds else 0
    return beside


def _said_more(token: Token, tokens: list[Token], kinds: set[str]) -> set[str]:
    """What a word of age says by its place or value: “nearly”; the year of a birthday (“the year Ruth turned ten”), or
    of a life (“in her tenth year”)."""
    senses = token.senses
    if senses[0].value in ("nearly", "at_most", "just"):
        return {str(senses[0].value)}
    if any(sense.kind == "years_old" and sense.value == "about" for sense in senses):
        return {"about", "old"}
    if "years_old" in token.kinds and "unit" not in token.kinds:
        return {"old"}
    if senses[0].kind != "unit" or senses[0].value != "year":
        return set()
    before = tokens[tokens.index(token) - 1] if token is not tokens[0] else None
    counts = {sense.kind for sense in before.senses} & NUMBERS if before else set()
    return {"nth_year"} if counts == {"ordinal"} else set() if counts else {"whole_year"}


def _within(life: Life, text: str, words: str) -> str:
    """The same, up to the death where it is open. Raises NoSuchDate for what is after it."""
    if not life.died:
        return text
    told, died = standard.parsed(text), standard.parsed(life.died)
    if told.earliest and died.latest and told.earliest > died.latest:
        raise NoSuchDate(f"“{words}”: that is after the death. When was it?", (text,))
    return f"{text[:-1]}{died.latest}]" if text.endswith("..]") and died.latest else text


def with_ages(tokens: list[Token], text: str, context: DateContext) -> list[Token] | None:
    """The tokens with the longest run that tells an age or a birthday as one event: “the day after [my 21st birthday]”;
    None where no run does. What stands beside it must be no part of it: no name, number or unit."""
    for size in range(len(tokens) - 1, 1, -1):
        for first in range(len(tokens) - size + 1):
            run = tokens[first : first + size]
            beside = [*tokens[max(first - 1, 0) : first], *tokens[first + size : first + size + 1]]
            if any(_may_belong(token) for token in beside) or not any(_may_begin(token) for token in run):
                continue
            try:
                edtf = age(run, text, context)
            except NoSuchDate:
                continue
            if edtf:
                event = Token((Sense("event", edtf),), run[0].start, run[-1].end)
                return [*tokens[:first], event, *tokens[first + size :]]
    return None


def _may_belong(token: Token) -> bool:
    return token.senses[0].kind in ("name", "person", *NUMBERS) or any(
        sense.kind == "unit" and token.senses[0].kind == "unit" and str(sense.value).endswith("s")
        for sense in token.senses
    )


def _may_begin(token: Token) -> bool:
    return any(sense.kind in AGE_WORDS for sense in token.senses)


def _unit(token: Token) -> str:
    return str(token.senses[0].value).removeprefix("one_").removesuffix("s")


def _of_a_child(unit: str, kinds: set[str], count: int, *, known: bool) -> Callable[[str, int], str] | None:
    """An age in days, weeks or months; None if the words tell none."""
    told = (
        {"aged", "years_old"} & kinds or ("at_years" in kinds and known) or ("was" in kinds and (known or "i" in kinds))
    )
    if count != 1 or not told or {"birthday", "not_yet"} & kinds:
        return None
    if "older" in kinds:
        return lambda birth, value: past_age_in(birth, unit, value)
    if {"about", "about_behind"} & kinds:
        return lambda birth, value: about_age_in(birth, unit, value)
    return lambda birth, value: at_age_in(birth, unit, value)


def _reckoner(kinds: set[str], numbers: set[str], born: bool, count: int) -> Callable[[str, int], str] | None:
    """How an age is reckoned: a birthday, ten years of life (“in her twenties”), or a year; None if it is no age."""
    person = born or "i" in kinds or "they" in kinds
    if numbers == {"decade"} and "birthday" in kinds:
        return None  # “Mary's birthday in the forties”
    if numbers == {"decade"}:
        return in_years if count == 1 and ("possessive" in kinds or "genitive" in kinds) else None
    if count > 2 or (count == 2 and not kinds & {"or", "dash"}) or "decade" in numbers:
        return None
    if "not_yet" in kinds:
        reckon = past_no_age if "at_most" in kinds else not_yet_at
        return reckon if person and numbers == {"day"} and count == 1 else None
    whose = born or bool(kinds & {"possessive", "genitive"})
    if numbers == {"ordinal"} and "nth_year" in kinds:
        return year_of_age if whose else None
    if "today" in kinds:
        return birthday if born and numbers == {"day"} else None
    if "birthday" in kinds or (numbers == {"ordinal"} and kinds & {"possessive", "genitive"}):
        if "nearly" in kinds:
            return year_of_age
        if "just" in kinds:
            return just_turned
        return year_of_birthday if "whole_year" in kinds else birthday
    if "ordinal" in numbers:
        return None
    by_itself = person and "at_years" in kinds and numbers == {"day"}  # “me at sixteen”
    by_itself = by_itself or (born and "older" in kinds)  # “Mary over eighty”
    aged = by_itself or kinds & {"aged", "old"} or {"when", "was"} <= kinds or {"at_years", "years_old"} <= kinds
    if not aged and not (person and "was" in kinds) and not (born and "years_old" in kinds):
        return None
    if "nearly" in kinds:
        return year_of_age
    if "older" in kinds:
        return past_age if count == 1 else None
    if kinds & {"about", "about_behind"}:
        return about_age
    if "doubt" in kinds:
        return probably_turning if "whole_year" in kinds else probably_of_age
    return at_age


def _within_a_list(text: str) -> str:
    return text.strip("[]").replace("/", "..")


def _life(lives: list[Life], unknown: list[Token], kinds: set[str], text: str, context: DateContext) -> Life | None:
    """Whose age it is, where that is said; None where it is of who is in the picture."""
    if lives:
        return lives[0]
    if unknown:
        name = text[unknown[0].start : unknown[-1].end]
        raise NoSuchDate(when_born(name.removesuffix("’s").removesuffix("'s")))
    if "i" in kinds or ("possessive" in kinds and " my " in f" {text.casefold()} "):
        if not context.narrator:
            raise NoSuchDate(when_born())
        return Life(context.narrator)
    return None


def _of_the_pictured(text: str, context: DateContext, reckoned: Callable[[str], str]) -> Life:
    """The birth of the one person in the picture. Raises NoSuchDate, with what it is for each of several."""
    if not context.pictured:
        raise NoSuchDate("Who was that, and when were they born?")
    (name, birth), *others = context.pictured.items()
    if not others and birth:
        return Life(birth, context.deaths.get(name.casefold(), ""))
    if not others:
        raise NoSuchDate(when_born(name))
    known = {name: reckoned(birth) for name, birth in context.pictured.items() if birth}
    unknown = [name for name in context.pictured if name not in known]
    names = [*known, *unknown]
    ask = f"“{text}”: is {', '.join(names[:-1])} or {names[-1]} meant?"
    if unknown:
        ask += f" The birth of {' and of '.join(unknown)} is not told."
    raise NoSuchDate(ask, tuple(known.values()))
