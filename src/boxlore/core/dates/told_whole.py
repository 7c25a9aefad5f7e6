"""What is asked of words that are not understood as one whole: the choices that use most of what was told.

The problem: of two parts that are each readable alone, one is lost where the whole is none (“about 1950, before
August” asked in which year, “19th cent., last quarter” offered the century). The idea: the words fall into parts, at
commas and at words that nobody knows; the parts are read together in another order, cut by one another, and each named
part with each year. What comes of it stands before what was offered without it.

What always holds: it is only ever a question; nothing that was offered is lost; where every told part is in what is
offered, nothing is changed.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import chain, permutations
from typing import NamedTuple

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages_beside_words import of_age
from boxlore.core.dates.asked_words import NOT_UNDERSTOOD, listed, which_is_meant
from boxlore.core.dates.context import DateContext, Outcome, qualified
from boxlore.core.dates.deciding import decided
from boxlore.core.dates.edtf_values import Day, Edtf, month_length
from boxlore.core.dates.event_question import asked_event
from boxlore.core.dates.lexer import Token, lex
from boxlore.core.dates.lexicon import LANGUAGE_BITS, Node, Sense, languages_of
from boxlore.core.dates.proposing import MOST_CHOICES, before_because, datable, is_datable, is_to_come, is_valid
from boxlore.core.dates.relative import days_of
from boxlore.core.dates.ruled_out import stretch
from boxlore.core.dates.spelling import one_mended
from boxlore.core.dates.stamped import with_its_century
from boxlore.core.dates.told_apart import counted_behind, named_behind, of_a_day_in_a_year, the_one_beside_it
from boxlore.core.dates.wars_table import DAYS_OF_A_LAND
from boxlore.core.dates.years_of_lives import of_a_life

MOST_TOKENS, MOST_PARTS = 16, 3
_ENDS = frozenset(("comma", "dash", "correction", "at_a_distance"))
_DASH = frozenset(("dash",))
_PASSED_OVER = frozenset(("noise", "comma", "dash", "query", "at_a_distance"))
_SAYS_NOTHING = frozenset(("noise", "comma", "dash", "query"))
_YEAR = frozenset(("year", "short", "years", "dates", "decade", "decade_digits", "century", "hundreds"))
_NAMED = frozenset(("month", "season", "feast", "season_part"))
_OF_A_WHOLE = frozenset(("part", "fraction"))
_I = frozenset(("i", "person"))
_WHO = _I | {"noise", "and"}
_DENYING = frozenset(("not", "undated", "no_such"))
_JOINING = frozenset(("or", "about", "about_behind", "doubt", "either", "noise", "correction", "query"))


class _Part(NamedTuple):
    """Words between commas and unknown ones, and what they may mean, as EDTF."""

    tokens: tuple[Token, ...]
    texts: tuple[str, ...]

    def has(self, kinds: frozenset[str]) -> bool:
        """Whether one of its words is of these kinds."""
        return any(token.is_any(kinds) for token in self.tokens)

    @property
    def named(self) -> list[Token]:
        """Its words that are a month, a season or a feast and nothing else."""
        return [token for token in self.tokens if token.kinds <= _NAMED]

    @property
    def dated(self) -> tuple[str, ...]:
        """What it may mean with its year."""
        return tuple(text for text in self.texts if "XXXX" not in text)


def with_all_told(
    outcome: Outcome | None, context: DateContext, own: Node | None, lexed: Mapping[str, list[Token]]
) -> Outcome | None:
    """The question with all that was told in its choices; the same one where nothing told is lost, or no more can be
    made of it. `lexed` are tokens of words that are known already."""
    ask, words = outcome.ask or "" if outcome else "", with_its_century(context.text)
    about_event = bool(ask) and bool(asked_event(ask))
    if ask and not about_event and not ask.endswith(_OPEN_ENDS) and not _OPEN.match(ask):
        return outcome
    if about_event and not (context.events or context.narrator or any(map(str.isdigit, words))):
        return outcome  # no year is told, nor anything that has one
    tokens = datable(lexed.get(words) or lex(words, own), words)
    mended, slip = one_mended(tokens, words, LANGUAGE_BITS.get(context.language, 0))
    if mended:
        words, tokens = mended, datable(lex(mended, own), mended)
    if outcome and (beside := the_one_beside_it(tokens, words, lambda part: _texts(part, context))):
        if beside[0][0] == "[":
            return Outcome(None, which_is_meant(beside, context), beside)
        choices = tuple(dict.fromkeys((*beside, *outcome.choices)))
        return Outcome(None, which_is_meant(choices, context, outcome.unread), choices, outcome.unread)
    tokens = _without_a_reason(tokens)
    if not mended and outcome and outcome.choices and _is_one_part_alone(tokens):
        return outcome
    if len(tokens) > MOST_TOKENS or any(map(_is_denying, tokens)) or of_a_life(tokens, words):
        return outcome
    if named_behind(tokens, words):
        return outcome
    parts = _parts(_with_next_but_one(tokens), words, context)
    offered = outcome.choices if outcome else ()
    told = [text for text in offered if "XXXX" not in text]
    counted = () if told else counted_behind(tokens, lambda part: _texts(part, context))
    if counted:
        return Outcome(None, which_is_meant(counted, context), counted)
    if not mended and NOT_UNDERSTOOD not in ask and told and _all_in(parts, told):
        return outcome
    if outcome and ask.endswith(_RIGHT):
        missed = [text for part in parts if part.has(_YEAR) for text in part.dated if text not in offered]
        return replace(outcome, alternatives=(*missed, *outcome.alternatives))
    if outcome is None and not any(part.has(_YEAR) for part in parts):
        return None
    beside_age = {text for part in parts if part.has(_YEAR) for text in part.dated} if _has_age(tokens) else set()
    better: list[str] = []
    alone: list[str] = []
    made = chain(_made(parts, context), of_a_day_in_a_year(tokens))
    for into, texts in ((better, made), (alone, _each_alone(parts))):
        for text in texts:
            so_far = (*told, *better, *alone)
            known = text in so_far if text in beside_age else any(_holds(text, of) for of in so_far)
            if not known and "XXXX" not in text and not is_to_come(text, context):
                is_finer = len(parts) == 1 or any(_holds(of, text) for of in told)
                (better if is_finer else into).append(text)
    if not better and not alone:
        return outcome
    open_year = [] if any(part.has(_YEAR) for part in parts) else [text for text in offered if text not in told]
    choices = tuple([*better, *told, *alone, *open_year][:MOST_CHOICES])
    read = {token.start for part in parts for token in part.tokens}
    left = [token for token in tokens if token.start not in read and not token.is_any(_PASSED_OVER)]
    runs = [run for run in (outcome.unread if outcome else ()) if run != slip]
    unread = [run for run in runs if any(words[token.start : token.end] in run for token in left)]
    return Outcome(None, which_is_meant(choices, context, unread), choices, tuple(unread))


_RIGHT = "Which is right?"
_OPEN = re.compile(
    r"“.*”: (?:is|are|which of these is) .*meant\?|In which year(?: was that [\w ]+)?\?$",
    re.DOTALL,
)
_OPEN_ENDS = (": of which year?", _RIGHT)
"""The questions of which more may be told than they say; others name what does not fit."""


def _without_a_reason(tokens: list[Token]) -> list[Token]:
    """“Easter of 1951, because the twins weren't born till June”: the tokens before a reason, where a year is told;
    else all of them."""
    told = before_because(tokens)
    return told if any(token.is_any(_YEAR) for token in told) else tokens


def _is_one_part_alone(tokens: list[Token]) -> bool:
    """“Reval harbour, 1908”: whether all that says something is one part, a year and what is told with it."""
    kinds = [token.senses[0].kind for token in tokens]
    saying = [at for at, kind in enumerate(kinds) if kind not in _BESIDE_A_DATE]
    if not saying or len(saying) != saying[-1] - saying[0] + 1:
        return False
    return all(kinds[at] in _PLAINLY_DATED for at in saying)


_BESIDE_A_DATE = frozenset(("name", "comma", "dash", "noise"))
_PLAINLY_DATED = frozenset(("year", "month", "season", "dates"))


def _is_denying(token: Token) -> bool:
    return token.is_any(_DENYING) or token.senses[0].kind == "correction"


def _is_somebody(token: Token) -> bool:
    """Whether a word is who an age is of: “mit” is “my” in Danish, and “at” in German."""
    return token.is_any(_I) and token.kinds <= _WHO


def _has_age(tokens: list[Token]) -> bool:
    return any(map(_is_somebody, tokens))


def _all_in(parts: Sequence[_Part], told: Sequence[str]) -> bool:
    """Whether each part that tells days is a choice, or holds one, and none tells a month or a feast of no year."""
    dated = [part for part in parts if part.dated]
    if any(part.named and not part.has(_OF_ITS_YEAR) and not part.dated for part in parts):
        return False
    return all(any(_is_in(text, of) for text in part.dated for of in told) for part in dated)


def _is_in(text: str, choice: str) -> bool:
    """Whether a choice is within a date, or is a set or an interval that holds it."""
    several = ("," in choice or "/" in choice) and ".." not in choice
    return _holds(text, choice) or (several and _holds(choice, text))


def _holds(whole: str, inner: str) -> bool:
    """Whether every day of a date is one of another, or both are the same."""
    first, last = (standard.parsed(text) for text in (whole, inner))
    begins = first.earliest is None or (last.earliest is not None and first.earliest <= last.earliest)
    return begins and (first.latest is None or (last.latest is not None and last.latest <= first.latest))


def _with_next_but_one(tokens: list[Token]) -> list[Token]:
    """“The Tuesday week after the wedding”: the second one after it."""
    for at in range(len(tokens) - 2):
        day, week, _ = (token.senses[0] for token in tokens[at : at + 3])
        if day.kind == "weekday" and (week.kind, week.value) == ("unit", "week"):
            second = replace(tokens[at + 1], senses=(Sense("ordinal", 2),))
            return [*tokens[:at], second, tokens[at], *tokens[at + 2 :]]
    return tokens


def _parts(tokens: list[Token], words: str, context: DateContext) -> list[_Part]:
    """The parts that say something, each with what it may mean; an age among them by whoever it is of."""
    runs: list[list[Token]] = [[]]
    for token in tokens:
        is_within = token.is_any(_DASH) and words[token.start - 1 : token.start].strip()  # “1938-1939-1940”
        if token.senses[0].kind == "name" or (token.is_any(_ENDS) and not is_within):
            runs.append([])
        else:
            runs[-1].append(token)
    told_age = _has_age(tokens)
    unknown = any(token.senses[0].kind == "name" and token.end - token.start > _SHORT for token in tokens)
    parts: list[_Part] = []
    for at, run in enumerate(runs):
        if at and run and run[0].is_any(_WAS) and all(token.is_any(_OF_AN_AGE) for token in run):
            continue  # “the Christmas Walter was sixteen” is of no year
        while run and run[-1].kinds <= _SAYS_NOTHING:
            run = run[:-1]
        while run and run[0].kinds <= _SAYS_NOTHING:
            run = run[1:]
        if run:
            parts.append(_part(run, words, context, told_age=told_age, may_be_years=told_age or not unknown))
    return parts


_SHORT = 4
"""“So”, “also”: a longer word that nobody knows may be what a number counts (“Route 66”)."""


def _part(run: list[Token], words: str, context: DateContext, *, told_age: bool, may_be_years: bool) -> _Part:
    part = _Part(tuple(run), _texts(run, context) if any(map(is_datable, run)) else ())
    if part.texts:
        return part
    if any(map(_is_somebody, run)) and (aged := of_age(run, words, context)) and not aged.ask:
        return _Part(part.tokens, aged.choices)
    if part.has(_YEAR) and part.has(_OF_A_WHOLE):  # “19. sajandi viimane veerand”
        turned = ([*run[at:], *run[:at]] for at in range(1, len(run)))
        return next((_Part(tuple(turn), texts) for turn in turned if (texts := _texts(turn, context))), part)
    if may_be_years and (years := _with_years(run, told_age=told_age)):
        return _Part(tuple(years), _texts(years, context))
    return part


def _with_years(run: list[Token], *, told_age: bool) -> list[Token]:
    """“So thirty-seven or thirty-eight”, “por el 23 o el 24”: the words with years of two digits for their numbers,
    where nothing else is told; none for other words."""
    days = [at for at, token in enumerate(run) if token.is_any(_DAY)]
    values = [next(sense.value for sense in run[at].senses if sense.kind == "day") for at in days]
    years = [value[0] for value in values if isinstance(value, tuple)]
    if not years or not all(_FIRST_YEAR <= year < _CENTURY for year in years):
        return []
    if not all(token.is_any(_JOINING) for at, token in enumerate(run) if at not in days):
        return []
    if len(days) == 1 and not (told_age or any(token.is_any(_SAYING_WHEN) for token in run)):
        return []  # “38” may be any number
    if min(years) <= _LAST_DAY and (len(years) == 1 or years[-1] != years[0] + len(years) - 1):
        return []  # one that may be a day
    short = dict(zip(days, years, strict=True))
    return [
        replace(token, senses=(Sense("short", f"{short[at]:02d}"),))
        if at in short
        else replace(token, senses=_OR)
        if token.is_any(_QUERY) and at - 1 in short and at + 1 in short  # “fifty-eight? fifty-nine?”
        else token
        for at, token in enumerate(run)
    ]


_OR, _QUERY = (Sense("or"),), frozenset(("query",))
_DAY = frozenset(("day",))
_SAYING_WHEN = frozenset(("about", "about_behind", "doubt"))
_FIRST_YEAR, _LAST_DAY, _CENTURY = 13, 31, 100


def _made(parts: list[_Part], context: DateContext) -> Iterator[str]:
    """What the parts come to together: those without a year with the one of another, all of them read in one of their
    orders, those with years cut by each other, each named word with the only year."""
    dated = [part for part in parts if part.dated]
    with_year = [part for part in dated if part.has(_YEAR) and not _is_open(part)]
    years = [token for part in with_year for token in part.tokens if token.is_any(_YEAR)]
    without = [part for part in parts if part.named and not part.has(_YEAR)] if len(years) == 1 else []
    others = [part for part in dated if part not in with_year]
    for part in without:
        composed = _texts([*part.tokens, *years], context)
        for text in composed:
            is_open = ".." in text  # and is none of a year before it
            yield from _cut_by(text, dated if is_open else others)
        for name in part.named if not composed else ():
            yield from _texts([name, *years], context)
    incomplete = [part for part in parts if not part.texts and part not in without and part.has(_OF_A_WHOLE)]
    one_date = all("," not in text for part in dated for text in part.dated)
    if incomplete and dated and one_date and len(parts) <= MOST_PARTS:
        for order in permutations([*incomplete, *dated]):
            for text in _texts([token for part in order for token in part.tokens], context):
                yield from _cut_by(text, dated)
    for limit in dated:
        if limit.tokens[0].is_any(_AFTER) and limit.has(_EVENT):  # “after Grandad died, maybe that Christmas”
            after = Token((Sense("after"),), limit.tokens[0].start, limit.tokens[0].end)
            for part in parts:
                if part.named and not part.has(_OF_ITS_YEAR):
                    yield from _texts([*part.tokens, after, *limit.tokens[1:]], context)
    plain = [part for part in dated if not part.has(_SPAN)]
    for at, part in enumerate(plain):
        for other in plain[at + 1 :]:
            yield from filter(None, (both(text, of) for text in part.dated for of in other.dated))


def _each_alone(parts: list[_Part]) -> Iterator[str]:
    """What each part is by itself; of several days without a year those that can be with a year that is told."""
    years = [text for part in parts if part.has(_YEAR) for text in part.dated]
    for part in parts:
        several = len(part.dated) > 1 and not part.has(_YEAR)
        for text in part.dated if part.has(_YEAR) or not part.has(_SPAN) else ():
            if not several or not years or any(both(text, of) for of in years):
                yield text


_SPAN = frozenset(("span",))
_WAS = frozenset(("was",))
_OF_AN_AGE = frozenset(("was", "day", "noise", "about", "years_old"))
_AFTER, _EVENT = frozenset(("after", "since")), frozenset(("event",))
_OF_ITS_YEAR = _YEAR | _EVENT


def _is_open(part: _Part) -> bool:
    """Whether a part is a limit: a month of “after 1920” is of no year."""
    dates = [standard.parsed(text) for text in part.dated]
    return any(edtf.earliest is None or edtf.latest is None for edtf in dates)


def _cut_by(text: str, dated: list[_Part]) -> Iterator[str]:
    """A reading of all parts, cut by each part that tells days by itself; none where it cannot be with one of them."""
    for part in dated:
        text = next((cut for of in part.dated if (cut := both(text, of))), "")
        if not text:
            return
    yield text


def both(text: str, other: str) -> str:
    """The days that both dates mean, with the qualifier of either; empty where there are none."""
    one, two = standard.parsed(text), standard.parsed(other)
    begins = [day for day in (one.earliest, two.earliest) if day]
    ends = [day for day in (one.latest, two.latest) if day]
    if not begins or not ends or max(begins) > min(ends):
        return ""
    for inner, outer in ((one, two), (two, one)):
        if (inner.earliest, inner.latest) == (max(begins), min(ends)):
            return qualified(inner.text, _mark(outer))
    begin, end = max(begins), min(ends)
    both = stretch(begin, end)
    if ".." in both:
        both = f"{begin.year:04d}-{begin.month:02d}" if _is_month(begin, end) else days_of(begin, end)
    return qualified(both, _mark(one) or _mark(two))


def _is_month(begin: Day, end: Day) -> bool:
    same = (begin.year, begin.month) == (end.year, end.month)
    return same and (begin.day, end.day) == (1, month_length(end.year, end.month))


def _mark(edtf: Edtf) -> str:
    return next((mark for mark in "%~?" if mark in edtf.text), "")


def _texts(tokens: Sequence[Token], context: DateContext) -> tuple[str, ...]:
    """What words come to, as EDTF."""
    outcome = decided([*tokens], context) if tokens else None
    if outcome and outcome.edtf and any(token.is_any(_WITHOUT_CENTURY) for token in tokens):
        return (outcome.edtf.text,)
    return tuple(text for text in outcome.choices if is_valid(text)) if outcome else ()


_WITHOUT_CENTURY = frozenset(("short", "decade"))


_IS_ONE = re.compile(r"“.*”: is (?:a year of )?(?:the )?\d{4}s? meant\?", re.DOTALL)


def in_full(outcome: Outcome, context: DateContext, own: Node | None) -> Outcome:
    """The outcome with all members of a set in its question (“is 1936 or 1937 meant?”); and with the day of a land's
    history that its words may mean (“depois do 25 de Abril”)."""
    text = outcome.edtf.text if outcome.edtf else ""
    if "XXXX" in text:
        return _of_its_land(outcome, text, context, own)
    if text[:1] != "[" or ".." in text or not _IS_ONE.fullmatch(outcome.ask or ""):
        return outcome  # most
    members = text[1:-1].split(",")
    if len({member[:4] for member in members}) == 1:
        return outcome
    bare = [re.sub("[?~%]", "", member) for member in members]
    return replace(outcome, ask=f"“{context.text}”: is {listed(bare, context)} meant?")


def _of_its_land(outcome: Outcome, text: str, context: DateContext, own: Node | None) -> Outcome:
    match = _DAY_WITHOUT_YEAR.search(text)
    if match is None or outcome.alternatives:
        return outcome  # most
    tokens = lex(context.text, own)
    common = -1
    for token in tokens:
        common &= languages_of(token.senses) or -1  # figures are of any
    lands = [land for bit, land in _LANDS.items() if common & bit]
    years = [of[match[1]] for land in lands if match[1] in (of := DAYS_OF_A_LAND.get(land, {}))]
    end = tokens[-1].end
    told = (text for year in years for text in _texts([*tokens, Token((Sense("year", year),), end, end)], context))
    return replace(outcome, alternatives=tuple(dict.fromkeys(told)))


_DAY_WITHOUT_YEAR = re.compile(r"XXXX-(\d\d-\d\d)")
_LANDS = {
    LANGUAGE_BITS[code]: land
    for code, land in zip(
        "pt it es da nb pl de ru et lv lt cs hu nl fr fi".split(),
        "PT IT ES DK NO PL DE RU EE LV LT CZ HU NL FR FI".split(),
        strict=True,
    )
}
"""The land whose history is meant by a day told in a language, where nobody says another."""
