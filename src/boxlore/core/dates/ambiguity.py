"""Every reading of a text, and what is made of them: one that asks nothing, a question with its choices, or none.

The problem: the same words may mean several dates (7/4/52, 1904-05, “na 1950”), and a wrong date that nobody asks
about is the worst that a reader can do. The idea: words become tokens with all their senses (`core.dates.lexer`);
every choice of senses is read by one grammar (`core.dates.grammar`), and only then it is decided.

What always holds: every token is used, or nothing is read; what is passed over stands in a language's row `noise`. If
one language has all the words, other languages' senses do not count. Different dates from one text are a question. So
are a century that was not said, a year to come, a day of the week that does not fit, a feast that differs by country,
a war whose years do, a season that is still running.

An example: “winter 1946-47” is a season and a numeral; the numeral may be a span of years or, for 1904-05, a month.
With a season only the span fits the grammar, and a winter of two years that follow each other is the one over New
Year: 1946-24.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import product

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages import AGE_WORDS, NUMBERS, STAGES, birthday_in_year, with_ages
from boxlore.core.dates.ages_beside_words import age_beside_words, age_with_a_word, of_age
from boxlore.core.dates.asked_words import asked
from boxlore.core.dates.assembly import Assembly
from boxlore.core.dates.centuries import FIRST_PORTRAITS, settle_century
from boxlore.core.dates.conflicts import can_both_be
from boxlore.core.dates.context import NOT_TOGETHER, DateContext, NoSuchDate, Outcome
from boxlore.core.dates.double_meanings import (
    before_on,
    doubted,
    give_or_take,
    is_month_or_day,
    spread,
    without_letter_of_lab,
)
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.expressions import Expression
from boxlore.core.dates.grammar import Grammar, NoForm
from boxlore.core.dates.guards import guarded, is_before, is_meant, to_come
from boxlore.core.dates.lexer import Token, balanced, lex
from boxlore.core.dates.lexicon import (
    ANY_LANGUAGE,
    ENGLISH,
    ITALIAN,
    LANGUAGE_BITS,
    ONLY_MAORI,
    WITH_ORDINAL_O,
    Node,
    Sense,
    languages_of,
    stretch_words,
)
from boxlore.core.dates.numbers_in_digits import is_day_first, is_day_first_there, without_open_parts
from boxlore.core.dates.outer_parts import outer_part
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.proposing import proposed
from boxlore.core.dates.regnal import BesideEra, beside_era, regnal_year
from boxlore.core.dates.relative import is_running
from boxlore.core.dates.republican import republican_day
from boxlore.core.dates.short_years import with_short_years, with_spoken_years
from boxlore.core.dates.spelling import ORDINAL_O, as_meant, as_typed, months_mended, repairs
from boxlore.core.dates.stages import ask_of_stage
from boxlore.core.dates.stamped import as_printed, in_plain_words
from boxlore.core.dates.tails import where_a_tail_begins
from boxlore.core.dates.unread_words import asked_for_event, so_long_ago, told_from
from boxlore.core.dates.word_order import (
    CORRECTING_OR_DOUBT,
    PASSED_OVER,
    QUALIFYING,
    SHOULD_BE,
    YEARS_TOLD,
    arranged,
)
from boxlore.core.dates.writing import question, year_of
from boxlore.core.errors import TextFault

MOST_READINGS = 96
"""So many choices of senses are tried; words with more are no date that anyone would say."""

MOST_TOKENS = 40

_NO_DATE = frozenset(("undated", "noise", "query", "clock"))
_UNDATED, _MEASURED = frozenset(("undated",)), frozenset(("measured",))
_NOT_KNOWING = frozenset(("undated", "noise", "doubt", "unit", "i"))
_AGO, _OF_YEARS = frozenset(("today", "before")), frozenset(("unit", "decades"))
_BREAKS = frozenset(("comma", "dash"))
_AROUND = " ()[]"
_ASKED = {
    "no_such": "There is no day like that in “{}”. Which is meant?",
    "other_month": "“{}”: of which month and year?",
    "republican": "A French Republican date: kept as told, not read.",
}
"""Kinds of words with which nothing is read, and what is said then."""
_WITH_YEAR = frozenset(("year", "dates"))

_RANGING = ("until", "dash", "to", "to_open")
_HEMISPHERES = frozenset(("south", "north"))
_TOLD_OTHERWISE = AGE_WORDS | STAGES | _ASKED.keys() | _HEMISPHERES | _OF_YEARS | {"season", "person"}
"""Kinds of words with which more than the grammar has to be asked."""

_LITTLE_SAID = frozenset((*PASSED_OVER, "clock", "clock_part", "clock_behind", "at_years", "part", "unit"))
"""Kinds of words without which the date would be the same, or no less certain."""


_DOUBT = Sense("doubt")
_SURE_DAY = re.compile(r"\d{4}-(?:0\d|1[0-2])-\d\d")
_SURE = re.compile(r"\d{4}-(?:0\d|1[0-2])(?:-\d\d)?(?:/\d{4}-(?:0\d|1[0-2])(?:-\d\d)?)?")
"""Days and months in digits, and a stretch of them."""

_MARKS = "?~%"
_QUOTES = "'‘’"
_EDTF = re.compile(r"[-\dYX\[{/.?~%][-\dXYETSZ:+?~%\[\]{},./]*", re.ASCII)
_A_DIGIT_GONE = re.compile(r"1[5-9][?_]\d|20[?_]\d", re.ASCII)
"""`19?6`: a year of which the tens cannot be read."""

_DASH_AND_YEAR = re.compile(r"-(?:1[5-9]|20)\d\d")
"""“-1938” of an album is no year before Christ."""
_TWO = re.compile(r"\d{4}-(?:0[1-9]|1[0-2]|2[1-9]|3\d|4[01])\??|\d{4}-\d{4}|\d{4}/\d\d?")
"""Two years, or a year and its month; the last two forms are no EDTF at all."""


def understood(text: str, context: DateContext, own: Node | None = None) -> Outcome | None:
    """What a text comes to; None if it is no date. `own` is the trie of the family's people and events."""
    words = text.strip(' \t"“”,;')
    if words[:1] in _QUOTES and words[-1:] in _QUOTES and len(words) > 1:
        words = words[1:-1].strip()
    if " " not in words:
        if (literal := _literal(words)) is not None:
            return guarded(Outcome(literal), context)
        if told := without_open_parts(words, context.order):
            return understood(told, context, own)
        if not words:
            return None
    if (meant := as_typed(words)) != words and (slip := _mistyped(words, meant, context, own)):
        return slip
    if (not words[-1].isdigit() or "+" in words or "±" in words) and (whole := _of_whole(words, context, own)):
        return whole
    tokens = lex(words, own)
    kinds = {sense.kind for token in tokens for sense in token.senses}
    if kinds <= _NO_DATE:
        return None
    if "undated" in kinds and (told := _told_nevertheless(tokens, words)):
        return _not_known(understood(told, context, own), context)
    if len(tokens) > MOST_TOKENS or not balanced(words):
        return proposed(tokens, words, context, lambda stretch: _decided(stretch, context))
    if _is_surely_day_first(tokens, words, context):
        context = context._replace(order="dmy")
    if not kinds.isdisjoint(_TOLD_OTHERWISE):
        asks, tokens, context = _told_otherwise(tokens, kinds, words, context)
        if asks:
            return asks
    outcome = _decided(tokens, context)
    if "span" in kinds and "unit" in kinds and (reign := regnal_year(words)):
        return Outcome(standard.parsed(reign))  # “in the 4th year of the reign of George V”
    if outcome and outcome.edtf:
        if outcome.ask and "roman" in kinds and (plainly := in_plain_words(words)):
            return understood(plainly, context, own)
        if "measured" in kinds and _may_be_measure(tokens, words):
            return Outcome(None, f"“{words}”: is a year meant, or a measure?", (outcome.edtf.text,))
        return doubted(outcome, context)
    if kinds & AGE_WORDS and kinds & NUMBERS and (leaning := with_ages(tokens, words, context)):
        outcome = _decided(leaning, context) or outcome
        if outcome and (outcome.edtf or outcome.alternatives):
            return outcome
    if reign := regnal_year(words):
        return Outcome(standard.parsed(reign))
    if outcome is None and (spoken := with_spoken_years(tokens)) is not tokens:
        tokens, outcome = spoken, _decided(spoken, context)
    return (
        outcome
        or _stamped(words, context, own)
        or _as_meant(words, context, own)
        or (_of_named_person(tokens, words, context) if "person" in kinds else None)
        or asked_for_event(tokens, words)
        or _repaired(tokens, words, own, context)
        or told_from(tokens, words)
        or _before_a_tail(tokens, words, context)
        or _proposed(tokens, words, context, own)
    )


def _of_whole(words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """A date with something behind it that is of the whole of it, and is known by how it is written: “on”, the letter
    of a laboratory, “give or take two years”, a year of an era; None for other words. Of all these only years after
    ± or +- end in a digit."""
    begun = understood(date, context, own) if (date := before_on(words)) else None
    if begun and begun.edtf and begun.edtf.kind == "date":
        return understood(f"{date} onwards", context, own)
    if date := without_letter_of_lab(words):
        stamped = understood(date, context, own)
        if stamped and is_month_or_day(stamped.edtf):
            return stamped
    if (wide := give_or_take(words)) and (middle := understood(wide[0], context, own)) and middle.edtf:
        return guarded(Outcome(spread(middle.edtf, wide[1]), middle.ask), context)
    era = beside_era(words)
    return _of_both(era, context, own) if era else None


def _told_otherwise(
    tokens: list[Token], kinds: set[str], words: str, context: DateContext
) -> tuple[Outcome | None, list[Token], DateContext]:
    """What words come to with which more than the grammar is asked: an age, a stage of a life, a count of years ago;
    else the words that are left to the grammar, and what they say of where they were told."""
    if "unit" in kinds and _is_stretch(tokens, words):
        context = context._replace(whole=True)
    if kinds & _OF_YEARS and kinds & _AGO and (ago := so_long_ago(tokens, context)):
        return ago, tokens, context
    if kinds & STAGES and (asks := _of_stage(tokens, words, context)):
        return asks, tokens, context
    if "birthday" in kinds and "person" in kinds and (day := birthday_in_year(tokens)):
        return guarded(Outcome(standard.parsed(day)), context), tokens, context
    may_be_age = kinds & NUMBERS and (kinds & AGE_WORDS or "person" in kinds)
    if may_be_age and (outcome := of_age(tokens, words, context)):
        return outcome, tokens, context
    if "republican" in kinds and (day := republican_day(words)):
        return guarded(Outcome(standard.parsed(day)), context), tokens, context
    for kind, ask in _ASKED.items():
        numbered = kind == "no_such" and "numbered" in kinds  # “Phone 19 48 52”
        if kind in kinds and not (numbered or (kind == "other_month" and kinds & _WITH_YEAR)):
            return Outcome(None, ask.format(words)), tokens, context
    if kinds & _HEMISPHERES:
        tokens, context = _hemisphere(tokens, context)
    elif "season" in kinds and any(map(_is_maori, tokens)):
        context = context._replace(hemisphere="south")
    return None, tokens, context


def _proposed(tokens: list[Token], words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """The question whether a piece of these words is the date, a month's name with a slip among them."""
    if mended := months_mended(tokens, words):
        tokens, words = lex(mended, own), mended
    return proposed(tokens, words, context, lambda stretch: _doubted(_decided(stretch, context), context))


def _before_a_tail(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    """What a month, a feast or a day with its year comes to before words that say nothing of the date, where it asks
    nothing. A year alone may be a number (“1912, rue de la Gare”), a season is not the same everywhere."""
    head = tokens[: where_a_tail_begins(tokens, words)]
    if not head:
        return None
    outcome = _doubted(_decided(head, context), context)
    if outcome is None and any(token.senses[0].kind == "person" for token in head):  # “Peter's 18th, in the Institute”
        aged = of_age(head, words[: head[-1].end], context)
        return aged if aged and aged.edtf and not aged.ask else None
    if outcome is None or outcome.edtf is None or outcome.ask or outcome.alternatives:
        return None
    of_a_year = _SURE_DAY.fullmatch(outcome.edtf.text) or any(token.is_any(YEARS_TOLD) for token in head)
    return outcome if of_a_year and _SURE.fullmatch(outcome.edtf.text) else None


def _of_both(era: BesideEra, context: DateContext, own: Node | None) -> Outcome | None:
    """A date with a year of an era beside it, which it must be in; else that is asked where the era is named."""
    if not era.has_year:
        return _within_era(era, context, own)
    outcome = understood(era.date, context, own)
    if outcome is None or outcome.edtf is None:
        return outcome if era.is_named else None
    if can_both_be(outcome.edtf, standard.parsed(era.year)):
        return outcome
    if not era.is_named:
        return None
    return Outcome(None, NOT_TOGETHER, (outcome.edtf.text, era.year))


def _within_era(era: BesideEra, context: DateContext, own: Node | None) -> Outcome | None:
    """`15 agosto XVI E.F.`: the day of the two years that lies in the year of the era, which is that of Italy, so that
    an Italian word must be there where it is not named. On its own turn, 28 October, it is asked."""
    if not era.is_named and not any(languages_of(token.senses) & ~ENGLISH == ITALIAN for token in lex(era.date)):
        return None
    dates = [understood(f"{era.date} {year}", context, own) for year in era.years]
    told = [outcome.edtf for outcome in dates if outcome is not None and outcome.edtf and not outcome.ask]
    within = [edtf for edtf in told if can_both_be(edtf, standard.parsed(era.year))]
    if len(within) != 1:
        return None
    if within[0].text.endswith("-10-28"):
        choices = tuple(edtf.text for edtf in reversed(told))
        return Outcome(None, f"“{context.text}”: of which year?", choices)
    return Outcome(within[0])


def _told_nevertheless(tokens: list[Token], words: str) -> str:
    """“Don't know, before I was born anyway”: the words beside those of not knowing, where a comma stands between;
    empty where there are none."""
    for first in (0, -1):
        step = 1 if first == 0 else -1
        at = first
        while abs(at) < len(tokens) and tokens[at].is_any(_NOT_KNOWING):
            at += step
        passed = tokens[:at] if step > 0 else tokens[at + 1 :] if at < -1 else []
        if abs(at) < len(tokens) and tokens[at].is_any(_BREAKS) and any(token.is_any(_UNDATED) for token in passed):
            return (words[tokens[at].end :] if step > 0 else words[: tokens[at].start]).strip(_AROUND)
    return ""


def _not_known(outcome: Outcome | None, context: DateContext) -> Outcome | None:
    """What is told beside “don't know”: a year alone is asked about; a limit, doubt or more than a year stands."""
    if outcome is None or outcome.edtf is None or outcome.ask or not outcome.edtf.text.isdigit():
        return outcome
    return replace(outcome, ask=is_meant(outcome.edtf, context))


def _may_be_measure(tokens: list[Token], words: str) -> bool:
    """“1850 m”: whether a word behind a number may be a measure, as well as a word for a year that no other word of its
    language stands with, nor a full stop behind."""
    for at in range(1, len(tokens)):
        token = tokens[at]
        if (
            not token.is_any(_MEASURED)
            or not words[tokens[at - 1].start].isdigit()
            or words[token.end : token.end + 1] == "."
        ):
            continue
        others = (sense for other in tokens if other is not token for sense in other.senses)
        if not languages_of(token.senses) & languages_of(others):
            return True
    return False


def _doubted(outcome: Outcome | None, context: DateContext) -> Outcome | None:
    return outcome and doubted(outcome, context)


def _mistyped(words: str, meant: str, context: DateContext, own: Node | None) -> Outcome | None:
    """What it is with digits for letters that look like them, as `meant` has it, asked; None for an ordinal of a
    language that writes it so (`1o de mayo`)."""
    senses = [sense for token in lex(words, own) for sense in token.senses]
    ordinal = any(sense.kind == "month" and sense.languages & WITH_ORDINAL_O for sense in senses)
    if ordinal and ORDINAL_O.search(words):
        return None
    outcome = understood(meant, context, own)
    if outcome is None or outcome.edtf is None:
        return None
    return replace(outcome, ask=outcome.ask or is_meant(outcome.edtf, context))


def _is_surely_day_first(tokens: list[Token], words: str, context: DateContext) -> bool:
    """Whether figures are day first for all that the collection says of its order."""
    if context.order == "mdy":
        return is_day_first(words) or _is_told_day_first(tokens)
    return not context.order and is_day_first_there(words, context.countries)


def _is_told_day_first(tokens: list[Token]) -> bool:
    """Whether a word beside numerals is of no English: of the languages here, only English is written with the month
    first (CLDR, the short dates of en-US)."""
    return any(sense.kind == "dates" for token in tokens for sense in token.senses) and any(
        not any(sense.languages & ENGLISH or sense.kind == "name" for sense in token.senses) for token in tokens
    )


def _is_maori(token: Token) -> bool:
    """Whether a token is a season in Māori only: its seasons are those of the south, wherever the words are read."""
    return all(sense.kind == "season" and sense.languages == ONLY_MAORI for sense in token.senses)


def _stamped(words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """What a date in the form of a machine, a message or a stone comes to; what is not told so in one piece is
    asked about."""
    if plainly := in_plain_words(words):
        return understood(plainly, context, own)
    date = as_printed(words)
    outcome = understood(date, context, own) if date else None
    if outcome is None or outcome.edtf is None or date in words:
        return outcome
    return replace(outcome, ask=outcome.ask or is_meant(outcome.edtf, context))


def _as_meant(words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """What it would be with brackets within words left out, and digits for letters that look like them; that is
    asked."""
    meant = as_meant(words)
    outcome = understood(meant, context, own) if meant != words else None
    if outcome is None or outcome.edtf is None:
        return outcome
    return replace(outcome, ask=outcome.ask or is_meant(outcome.edtf, context))


def _repaired(tokens: list[Token], words: str, own: Node | None, context: DateContext) -> Outcome | None:
    """What it would be if its one unknown word is a slip; that is asked, however sure it looks, with what it is without
    that word beside it, or the year alone: the word may be none of a date."""
    outcomes: dict[str, Outcome] = {}
    for repair in repairs(tokens, words):
        outcome = _decided(lex(repair, own), context)
        if outcome is not None and outcome.edtf is not None:
            outcomes.setdefault(outcome.edtf.text, outcome)
    if not outcomes:
        return None
    known = [token for token in tokens if token.senses[0].kind != "name"]
    without = _decided(known, context)
    years = [str(sense.value) for token in tokens for sense in token.senses if sense.kind == "year"]
    if without is not None and without.edtf is not None:
        years = [without.edtf.text]
    only_year = tuple(years) if len(years) == 1 and years[0] not in outcomes else ()
    if len(outcomes) > 1:
        several = _several(list(outcomes), order=False, context=context)
        return replace(several, alternatives=(*several.alternatives, *only_year))
    (outcome,) = outcomes.values()
    assert outcome.edtf is not None  # it is kept by it
    return replace(outcome, ask=is_meant(outcome.edtf, context), alternatives=(*outcome.alternatives, *only_year))


def _literal(words: str) -> Edtf | None:
    """EDTF as it stands, but not what people write the same way: `1904-05`, `[1867?]`."""
    if words[:1].isalpha() and words[0] not in "XY":
        return None  # most
    if _A_DIGIT_GONE.fullmatch(words):
        return standard.parsed(words.replace("?", "X").replace("_", "X"))
    if _EDTF.fullmatch(words) is None or _TWO.fullmatch(words):
        return None
    if ((words[0] == "[" and "," not in words) or "." in words) and ".." not in words:
        return None
    if words.count("/") > 1 or (words[0] in _MARKS and words[-1] in _MARKS):
        return None  # “?1926?” is doubted, and no form of the standard's
    if _DASH_AND_YEAR.fullmatch(words):
        return None
    try:
        return standard.parsed(words)
    except TextFault:
        return None


def _hemisphere(tokens: list[Token], context: DateContext) -> tuple[list[Token], DateContext]:
    """`the southern summer of 1962`: the words that say which half of the world is meant."""
    said = [token for token in tokens if token.senses[0].kind in _HEMISPHERES]
    rest = [token for token in tokens if token not in said]
    return rest, context._replace(hemisphere=said[0].senses[0].kind if said else context.hemisphere)


def _is_stretch(tokens: list[Token], words: str) -> bool:
    """Whether “the” or “in” stands before a count of days, weeks or years, or before a fortnight: then all of them are
    meant (“the three days before Christmas”), and without it the day so far away."""
    for at in range(1, len(tokens)):
        led = words[tokens[at - 1].start : tokens[at - 1].end].casefold() in stretch_words()
        counted = [sense.value for token in tokens[at : at + 2] for sense in token.senses if sense.kind == "unit"]
        number = any(sense.kind == "day" for sense in tokens[at].senses)
        if led and counted and (number or counted[0] == "fortnight"):
            return True
    return False


def _of_stage(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    try:
        ask_of_stage(tokens, words, context)
    except NoSuchDate as none:
        return Outcome(None, none.ask, none.choices)
    return None


def _of_named_person(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    return (
        _before_a_tail(tokens, words, context)
        or age_beside_words(tokens, words, context, lambda part: _decided(part, context))
        or age_with_a_word(tokens, words, context)
    )


def _ways(tokens: list[Token]) -> list[list[Sense]]:
    """The choices of senses: of the languages that have all the words, or of all languages where none has."""
    common = -1
    only: list[Sense] = []
    for token in tokens:
        if len(token.senses) > 1:
            break
        (sense,) = token.senses
        only.append(sense)
        common &= sense.languages
    else:
        return [only] if common or _belongs(only) else []
    senses = [token.senses for token in tokens]
    common = -1
    for here in senses:
        languages = 0
        for sense in here:
            languages |= sense.languages
        common &= languages
    if common:
        return _chosen([[sense for sense in here if sense.languages & common] for here in senses])
    return [choice for choice in _chosen(senses) if _belongs(choice)]


def _belongs(choice: list[Sense]) -> bool:
    """Whether the words that are passed over are of the languages of the words that say something: “Con, June 1938” has
    a name before it, and no Spanish word."""
    said, one, months = 0, ANY_LANGUAGE, 0
    for sense in choice:
        months |= sense.languages if sense.kind == "month" else 0
        if sense.kind == "day" and sense.value == _SPOKEN_ONE:
            one &= sense.languages
        if sense.kind not in _LITTLE_SAID and sense.languages != ANY_LANGUAGE:
            said |= sense.languages
    if months and not months & one:
        return False  # “um ano mais tarde”: “um” is one in Portuguese, and “mais” in May in Estonian
    return all(sense.kind not in _LITTLE_SAID or sense.languages & said for sense in choice)


_SPOKEN_ONE = (1, 0)
"""The value of a number that is told as a word, which may be an article."""


def _chosen(senses: Sequence[Sequence[Sense]]) -> list[list[Sense]]:
    count = 1
    for here in senses:
        count *= len(here)
    return [list(choice) for choice in product(*senses)] if count <= MOST_READINGS else []


def _decided(tokens: list[Token], context: DateContext) -> Outcome | None:
    """What tokens come to by all their readings: one date, the question which of several, or none. Where all words are
    of the collection's own language, and a date in it, other languages do not count."""
    choices = _ways(tokens)
    if len(choices) == 1:
        expression = _read(choices[0], context)
        return _outcome(expression, context) if expression else None
    bit = LANGUAGE_BITS.get(context.language, 0)
    own = [choice for choice in choices if all(sense.languages & bit for sense in choice)] if bit else []
    if own and len(own) < len(choices):
        outcome = _of_several(own, context)
        if outcome is not None and outcome.edtf:
            return outcome
    outcome = _of_several(choices, context)
    if own and len(own) < len(choices) and outcome is not None and outcome.edtf and not outcome.ask:
        return _of_another_language(outcome.edtf, context)
    return outcome


def _of_several(choices: list[list[Sense]], context: DateContext) -> Outcome | None:
    outcomes: dict[str, Outcome] = {}
    none: Outcome | None = None
    order = False
    for senses in _with_all_operators(choices):
        expression = _read(senses, context)
        if expression is None:
            continue
        orders = {date.order for date in expression.leaves() if date.order}
        if len(orders) > 1:
            continue  # nobody changes the order of days and months within a phrase
        outcome = _outcome(expression, context)
        if outcome.edtf is None:
            none = none or outcome
            continue
        order = order or bool(orders)
        known = outcomes.get(outcome.edtf.text)
        if known is None or (known.ask and not outcome.ask):
            outcomes[outcome.edtf.text] = outcome
    if len(outcomes) > 1:
        outcomes = _most_doubtful(outcomes)
    if len(outcomes) > 1:
        return _several(list(outcomes), order, context)
    return next(iter(outcomes.values()), none)


def _of_another_language(edtf: Edtf, context: DateContext) -> Outcome:
    """What is a date in another language only, though all words are of the collection's: “1938, no” (which is “in”
    in Polish), “ago 1948”. It is asked about; a month may be none, so that the year alone is a choice too."""
    year, month = edtf.text[:4], edtf.text[4:]
    if not is_month_or_day(edtf) or len(month) != len("-08"):
        return Outcome(edtf, is_meant(edtf, context))
    ask = f"“{context.text}”: is {year} or {asked(edtf.text, context)} meant?"
    return Outcome(None, ask, (year, edtf.text))


def _with_all_operators(choices: list[list[Sense]]) -> list[list[Sense]]:
    """The choices, but where a word may be “from” or add nothing and stands before a qualifier, those with “from”: the
    qualifier is of the first date only (“von ca. 1917 bis 1919”)."""
    first = {choice[0].kind for choice in choices}
    if not {"from", "noise"} <= first:
        return choices
    ranges = [
        choice
        for choice in choices
        if choice[0].kind == "from"
        and len(choice) > 1
        and choice[1].kind in QUALIFYING
        and any(sense.kind in _RANGING for sense in choice)
    ]
    return ranges or choices


def _most_doubtful(outcomes: dict[str, Outcome]) -> dict[str, Outcome]:
    """Where readings differ only by qualifiers, the one with more of them: doubt is never lost."""
    kept: dict[str, str] = {}
    for text in outcomes:
        bare = re.sub("[?~%]", "", text)
        kept[bare] = max(kept.get(bare, ""), text, key=len)
    return {text: outcomes[text] for text in kept.values()}


def _read(senses: list[Sense], context: DateContext) -> Expression | None:
    """One choice of senses by the grammar; None if they are no date."""
    kinds = tuple([sense.kind for sense in senses])
    if "correction" in kinds:
        kinds = tuple([SHOULD_BE if sense.value in CORRECTING_OR_DOUBT else sense.kind for sense in senses])
    row = arranged(kinds)
    if row is None or ("dates" in kinds and any(_is_of_another_order(sense, context) for sense in senses)):
        return None
    words = [senses[place] for place in row.places] if row.is_moved else senses
    if row.has_unit and "feast" in kinds:
        words = _with_weekends(words)
    if row.doubted:
        words = [_DOUBT, *words[1:]]
    if row.may_be_short:
        words = with_short_years(words, is_behind=kinds[0] == "noise")
    if row.is_one_date and not (row.has_unit and outer_part(words)):  # no operator: one date, or none
        date, at = Assembly(words).run(0)
        if date is None or at < len(words) or not date.is_settled:
            return None
        date.season_alone = True
        return Expression("one", [date])
    try:
        expression = Grammar(words).said()
    except NoForm:
        return None
    if not expression.filled():
        return None
    dates = expression.leaves()
    in_sets = expression.kind in ("any", "all") and expression.beside != "slash" and not any(map(_has_years, dates))
    if expression.kind == "one" or (in_sets and len({date.season for date in dates}) == 1):
        for date in dates:
            date.season_alone = True
    return expression


def _has_years(date: Partial) -> bool:
    return date.years is not None


def _with_weekends(words: list[Sense]) -> list[Sense]:
    """“Bank Holiday w/e”: behind a feast it is the weekend, and no week that ends then."""
    return [
        Sense("unit", "weekend", word.languages)
        if at >= 0 and word.value == "week_to" and words[at].kind == "feast"
        else word
        for at, word in enumerate(words, -1)
    ]


def _is_of_another_order(sense: Sense, context: DateContext) -> bool:
    """Whether a numeral is taken in an order that is not the collection's."""
    return bool(context.order) and sense.kind == "dates" and sense.value.order not in ("", context.order)  # type: ignore[attr-defined]


def _outcome(expression: Expression, context: DateContext) -> Outcome:
    """What an expression comes to. Its other choices are worked out where it asks."""
    if context.narrator or context.pictured:
        for date in expression.leaves():
            if date.short or (date.years and date.assumed):
                settle_century(date, context)
    try:
        edtf = standard.parsed(expression.text(context))
        ask = expression.question(context)
    except NoSuchDate as none:
        which_century = _with_years_of_wars(expression, context) if expression.kind == "within" else ""
        choices = _by_other_wars(expression, context) if expression.kind == "within" else ()
        if choices:  # “summer 1939, before the war”: one war fits
            if len(choices) == 1:
                return guarded(Outcome(standard.parsed(choices[0]), which_century or None), context)
            return Outcome(None, which_century or expression.question(context) or none.ask, choices)
        if whole := _of_each_war(expression, context):
            return Outcome(None, expression.question(context) or none.ask, whole)
        if whole := _with_each(expression, none, context):
            return Outcome(None, none.ask, whole)
        return Outcome(None, none.ask, none.choices)
    except TextFault as fault:
        if others := _by_other_wars(expression, context):  # “from 1925 until the war”: the next one
            return Outcome(None, f"“{context.text}”: which of these is meant?", others)
        return Outcome(None, f"There is no such date: {fault.why[0].lower()}{fault.why[1:]}. Which is meant?")
    if not ask:
        outcome = Outcome(edtf)
        return guarded(_running(expression, outcome, context) if expression.kind == "near" else outcome, context)
    first = "" if to_come(edtf, context.this_year) else edtf.text
    further = [_choice(expression, context, pick) for pick in range(1, expression.choices(context))]
    choices = tuple(dict.fromkeys(filter(None, [first, *further])))
    if expression.kind != "known" and any(len(date.span) > 1 for date in expression.leaves()):
        return Outcome(None, ask, choices)
    return guarded(Outcome(edtf, ask, tuple(choice for choice in choices if choice != edtf.text)), context)


def _of_each_war(expression: Expression, context: DateContext) -> tuple[str, ...]:
    """“Two summers before the war”: what may be meant by each of the wars; none where it lies beside no war."""
    dates = expression.leaves()
    of_any_year = expression.kind == "within" and not dates[0].year  # “one August before the war”
    if not (of_any_year or expression.kind in ("near", "nth")) or not any(date.span for date in dates):
        return ()
    texts: dict[str, None] = {}
    for pick in range(expression.choices(context)):
        try:
            texts[expression.text(context, pick)] = None
        except NoSuchDate as none:
            texts.update(dict.fromkeys(none.choices))
    return tuple(texts)


def _with_each(expression: Expression, none: NoSuchDate, context: DateContext) -> tuple[str, ...]:
    """What the whole comes to by each of the days of which one of its dates has to be asked (“before war broke out”);
    none where it is that date, or where something else is asked."""
    for date in expression.leaves() if expression.kind != "one" and none.choices else ():
        try:
            Expression("one", [date]).text(context)
        except (NoSuchDate, TextFault) as asked_of_it:
            if getattr(asked_of_it, "choices", ()) != none.choices:
                continue
            told = date.copy()
            whole: dict[str, None] = {}
            for choice in none.choices:
                date.become(Partial(event=choice, mark=told.mark))
                whole[_choice(expression, context, 0)] = None
            date.become(told)
            return tuple(filter(None, whole))
    return ()


def _with_years_of_wars(expression: Expression, context: DateContext) -> str:
    """“Summer ’41, before the war”: the question which century is meant, where one is not told beside a war; the years
    are then those of the world wars' century."""
    dates = expression.leaves()
    short = [date for date in dates if date.short] if any(len(date.span) > 1 for date in dates) else []
    ask = question(short[0], context) if short else ""
    for date in short:
        date.year, date.assumed = year_of(date, 0), False
    return ask


def _by_other_wars(expression: Expression, context: DateContext) -> tuple[str, ...]:
    """What it comes to by other wars than the first that may be meant; none where something else is not known (“Easter
    after the war”)."""
    if not any(date.span for date in expression.leaves()):
        return ()
    picks = range(1, expression.choices(context))
    return tuple(dict.fromkeys(filter(None, (_choice(expression, context, pick) for pick in picks))))


def _choice(expression: Expression, context: DateContext, pick: int) -> str:
    """What it is by another choice; empty if it is no date then, or one to come."""
    try:
        text = expression.text(context, pick)
        edtf = standard.parsed(text)
        of_a_century = pick > 0 and any(date.short or date.calendar == "turn" for date in expression.leaves())
        too_early = of_a_century and context.first_year > 0 and is_before(edtf, FIRST_PORTRAITS)
        return "" if too_early or to_come(edtf, context.this_year) else text
    except (NoSuchDate, TextFault):
        return ""


def _running(expression: Expression, outcome: Outcome, context: DateContext) -> Outcome:
    """“The summer before” a day in summer may be that summer or the one before it."""
    distance, (anchor,), edtf = expression.distance, expression.leaves(), outcome.edtf
    if distance is None or distance.unit != "season" or edtf is None:
        return outcome
    if not is_running(edtf.text, Expression("one", [anchor]).text(context)):
        return outcome
    year, code = edtf.text.split("-")
    beside = f"{int(year) + distance.side}-{code}"
    which = "before" if distance.side < 0 else "after"
    return Outcome(edtf, f"“{context.text}”: the season of that day, or the one {which} it?", (beside,))


def _several(texts: list[str], order: bool, context: DateContext) -> Outcome:
    """Different dates from the same words: the choices, and all of them as one of a set where they are plain dates."""
    dates = [standard.parsed(text) for text in sorted(texts)]
    edtf = standard.parsed(texts[0])
    if all(date.kind == "date" and not date.qualified for date in dates):
        edtf = standard.parsed(f"[{','.join(date.text for date in dates)}]")
    if order:
        ask = "Day or month first?"
    else:
        shown = [asked(date.text, context) for date in dates]
        ask = f"“{context.text}”: is {', '.join(shown[:-1])} or {shown[-1]} meant?"
    return Outcome(edtf, ask, tuple(date.text for date in dates))
