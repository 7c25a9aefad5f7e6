"""Every reading of a text, and what is made of them: one that asks nothing, a question with its choices, or none.

The problem: the same words may mean several dates (7/4/52, 1904-05, “na 1950”), and a wrong date that nobody asks
about is the worst that a reader can do. The idea: words become tokens with all their senses (`core.dates.lexer`);
every choice of senses is read by one grammar (`core.dates.grammar`), and only then it is decided
(`core.dates.deciding`).

What always holds: every token is used, or nothing is read; what is passed over stands in a language's row `noise`. If
one language has all the words, other languages' senses do not count. Different dates from one text are a question. So
are a century that was not said, a year to come, a day of the week that does not fit, a feast that differs by country,
a war whose years do, a season that is still running.

An example: “winter 1946-47” is a season and a numeral; the numeral may be a span of years or, for 1904-05, a month.
With a season only the span fits the grammar, and a winter of two years that follow each other is the one over New
Year: 1946-24.
"""

import re
from dataclasses import replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages import AGE_WORDS, NUMBERS, STAGES, birthday_in_year, with_ages, with_hundreds
from boxlore.core.dates.ages_beside_parts import age_beside_a_part
from boxlore.core.dates.ages_beside_words import (
    age_beside_words,
    age_with_a_word,
    beside_a_birthday,
    of_age,
    of_no_birth,
    of_the_teller,
    of_whom,
)
from boxlore.core.dates.ages_in_captions import ME
from boxlore.core.dates.asked_words import which_is_meant
from boxlore.core.dates.centuries import at_the_turn, with_last_decade, with_shared_century
from boxlore.core.dates.conflicts import can_both_be
from boxlore.core.dates.context import NOT_TOGETHER, DateContext, NoSuchDate, Outcome, qualified
from boxlore.core.dates.dated_at_an_age import dated_at_an_age
from boxlore.core.dates.deciding import decided
from boxlore.core.dates.double_meanings import (
    before_on,
    doubted,
    from_then_or_of_then,
    is_month_or_day,
    on_with_doubt,
    with_more_than,
    without_counted_summers,
    without_everyday_words,
    without_letter_of_lab,
    without_unknown_wars,
)
from boxlore.core.dates.each_year import of_each_year
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.guards import guarded, is_meant
from boxlore.core.dates.lexer import Token, balanced, lex
from boxlore.core.dates.lexicon import (
    ENGLISH,
    ITALIAN,
    ONLY_MAORI,
    WITH_ORDINAL_O,
    Node,
    languages_of,
    stretch_words,
)
from boxlore.core.dates.next_after import beside_an_event
from boxlore.core.dates.no_day import number_of_no_day
from boxlore.core.dates.numbers_in_digits import is_day_first, is_day_first_there, without_open_parts
from boxlore.core.dates.outcomes import one_of_several
from boxlore.core.dates.proposing import proposed
from boxlore.core.dates.regnal import BesideEra, beside_era, regnal_year
from boxlore.core.dates.republican import republican_day
from boxlore.core.dates.short_years import with_spoken_years, with_years_behind_in
from boxlore.core.dates.spelling import ORDINAL_O, as_meant, as_typed, months_mended, repairs
from boxlore.core.dates.stages import ask_of_stage, of_a_few
from boxlore.core.dates.stamped import as_printed, in_plain_words, with_its_century
from boxlore.core.dates.tails import where_a_tail_begins
from boxlore.core.dates.told_apart import ends_with_the_one_beside, named_behind
from boxlore.core.dates.tolerances import MOST_YEARS, give_or_take, spread, within
from boxlore.core.dates.two_styles import in_two_styles
from boxlore.core.dates.unread_words import asked_for_event, so_long_ago, told_from
from boxlore.core.dates.word_order import YEARS_TOLD
from boxlore.core.errors import TextFault

MOST_TOKENS = 40

_NAMED_OTHERWISE = frozenset(("feast", "season", "event", "person", "birthday"))
"""Kinds of words beside which a word of every day is no month: “our first Christmas out here”."""
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
_FROM = frozenset(("from",))
_NUMBERED_DAYS = frozenset(("day", "ordinal"))

_OF_SOMEBODY, _SOME_UNITS = frozenset(("person", "i")), frozenset(("unit", "years_old"))
_NUMBERED_AGES = NUMBERS | {"years_old", "tens"}
_OF_YEARS_OF_A_LIFE = frozenset(("birthday", "aged", "years_old"))
_HEMISPHERES = frozenset(("south", "north"))
_TOLD_OTHERWISE = AGE_WORDS | STAGES | _ASKED.keys() | _HEMISPHERES | _OF_YEARS | {"person"}
"""Kinds of words with which more than the grammar has to be asked."""

_SURE_DAY = re.compile(r"\d{4}-(?:0\d|1[0-2])-\d\d")
_SURE = re.compile(r"\d{4}-(?:0\d|1[0-2])(?:-\d\d)?(?:/\d{4}-(?:0\d|1[0-2])(?:-\d\d)?)?")
"""Days and months in digits, and a stretch of them."""

_MARKS = "?~%"
_QUOTES = "'‘’"
_EDTF = re.compile(r"[-\dYX\[{/.?~%][-\dXYETSZ:+?~%\[\]{},./]*", re.ASCII)
_A_DIGIT_GONE = re.compile(r"1[5-9][?_]\d|20[?_]\d", re.ASCII)
"""`19?6`: a year of which the tens cannot be read."""

_DASH_AND_YEAR = re.compile(r"\??-(?:1[5-9]|20)\d\d")
"""“-1938” of an album is no year before Christ."""
_TWO = re.compile(r"\d{4}-(?:0[1-9]|1[0-2]|2[1-9]|3\d|4[01])\??|\d{4}-\d{4}|\d{4}/\d\d?")
"""Two years, or a year and its month; the last two forms are no EDTF at all."""


def understood(
    text: str, context: DateContext, own: Node | None = None, lexed: dict[str, list[Token]] | None = None
) -> Outcome | None:
    """What a text comes to; None if it is no date. `own` is the trie of the family's people and events; `lexed` gets
    the words that are not read as one whole with their tokens, for whoever asks further with them."""
    words = text.strip(' \t"“”,;')
    if words[:1] in _QUOTES and words[-1:] in _QUOTES and len(words) > 1:
        words = words[1:-1].strip()
    if " " not in words:
        if (literal := _literal(words)) is not None:
            return guarded(Outcome(literal), context)
        if (words[4:5] in _SIGNS or words[-5:-4] in _SIGNS) and (asks := _in_figures(words, context)):
            return asks
        if told := without_open_parts(words, context.order):
            return understood(told, context, own)
        if not words:
            return None
    if words[:4].isdigit() and not words[-1].isdigit() and (begun := _TO_THE_PRESENT.fullmatch(words)):
        return guarded(Outcome(standard.parsed(f"[{begun[1]}..]")), context)
    if words[:2] in _DAY_UNKNOWN and (month := _behind_an_unknown_day(words)):
        return understood(month, context, own)
    if not words.isascii():
        words = with_its_century(words)
    if (meant := as_typed(words)) != words and (slip := _mistyped(words, meant, context, own)):
        return slip
    if (not words[-1].isdigit() or " " in words[-3:-1] or "+" in words or "±" in words) and (
        whole := _of_whole(words, context, own)
    ):
        return whole
    as_lexed = tokens = lex(words, own)
    kinds = {sense.kind for token in tokens for sense in token.senses}
    if kinds <= _NO_DATE:
        return None
    if "month" in kinds and not kinds.isdisjoint(_NAMED_OTHERWISE) and context.language:
        as_lexed = tokens = without_everyday_words(tokens, words, context.language)
    if "undated" in kinds and (told := _told_nevertheless(tokens, words)):
        return _not_known(understood(told, context, own), context)
    if len(tokens) > MOST_TOKENS or not balanced(words):
        return proposed(tokens, words, context, lambda stretch: decided(stretch, context))
    if context.order != "dmy" and _is_surely_day_first(tokens, words, context):
        context = replace(context, order="dmy")
    if not kinds.isdisjoint(_TOLD_OTHERWISE) or (context.narrator and _is_of_me(tokens, words)):
        asks, tokens, context = _told_otherwise(tokens, kinds, words, context)
        if asks:
            return asks
    if "season" in kinds and kinds.isdisjoint(_HEMISPHERES) and any(map(_is_maori, tokens)):
        context = replace(context, hemisphere="south")
    if "unit" in kinds and "season" in kinds:
        tokens = without_counted_summers(tokens)
    if "century" in kinds:
        if turns := at_the_turn(tokens, words):
            return _at_one_turn(turns, context)
        tokens = with_last_decade(with_shared_century(tokens))
    if "older" in kinds and "noise" in kinds:
        tokens = with_more_than(tokens)
    if "event" in kinds:
        tokens = beside_an_event(tokens, words)
    outcome = decided(tokens, context)
    if "span" in kinds and "unit" in kinds and (reign := regnal_year(words)):
        return Outcome(standard.parsed(reign))  # “in the 4th year of the reign of George V”
    if outcome and outcome.edtf and not (outcome.edtf.text[0] == "[" and _is_of_one_beside(outcome.edtf, words)):
        if outcome.ask and "roman" in kinds and (plainly := in_plain_words(words)):
            return understood(plainly, context, own)
        may_be_none = (
            not kinds.isdisjoint(_NUMBERED_DAYS)
            and "month" in kinds
            and len(tokens) > 1
            and not _is_day_and_month(tokens)
        )
        if may_be_none and (asks := _perhaps_no_day(tokens, words, outcome, context)):
            return asks
        if "measured" in kinds and _may_be_measure(tokens, words):
            return Outcome(None, f"“{words}”: is a year meant, or a measure?", (outcome.edtf.text,))
        if "from" in kinds and len(tokens) > 1 and tokens[0].is_any(_FROM):
            return from_then_or_of_then(outcome, tokens, context)
        return doubted(outcome, context)
    if "span" in kinds and "name" in kinds:
        as_lexed = tokens = without_unknown_wars(tokens, words)
    if lexed is not None:
        lexed[words] = as_lexed
    return _not_as_one_whole(None if outcome and outcome.edtf else outcome, tokens, kinds, words, context, own)


def _at_one_turn(turns: tuple[str, ...], context: DateContext) -> Outcome:
    """The years about the turn of two centuries; of one century it is asked which."""
    if len(turns) == 1:
        return guarded(Outcome(standard.parsed(turns[0])), context)
    return Outcome(None, which_is_meant(turns, context), turns)


_TO_THE_PRESENT = re.compile(
    r"(\d{4})(?: ?[-–—] ?| (?:to|till?|until|bis|à|a|tot|kuni|до|по|do|līdz|iki) )(?:the )?"
    r"(?:present|present day|now|today|heute|jetzt|aujourd['’]hui|hoy|oggi|hoje|heden|nu|nå|i ?dag|nyt|tänään|tänaseni"
    r"|сегодня|сих пор|dziś|dzisiaj|dneška|šodienai|šiandien)",
    re.IGNORECASE,
)
"""“1950–present”, “1950 bis heute”; not “1938 Anu”, a name."""
_DAY_UNKNOWN = frozenset(("??", "xx", "XX"))
"""What stands for a day that nobody knows (common practice, no source)."""


def _behind_an_unknown_day(words: str) -> str:
    """“?? May 1936”: the words from the month on; empty where no month stands behind the signs."""
    rest = words[3:] if words[2:3] == " " else ""
    tokens = lex(rest)
    return rest if tokens and tokens[0].is_any(_MONTHS) and not tokens[0].is_any(_NO_MONTH) else ""


_NO_MONTH = frozenset(("noise", "doubt", "about"))


def _perhaps_no_day(tokens: list[Token], words: str, outcome: Outcome, context: DateContext) -> Outcome | None:
    """The question whether a month is meant or a day of it, where the number before it may be none; None where it is
    its day, or asked about."""
    if not outcome.edtf or outcome.ask or not (places := number_of_no_day(tokens, words)):
        return None
    month = decided([*tokens[: places[0]], *tokens[places[1] :]], context)
    if month is None or month.edtf is None or month.edtf.text == outcome.edtf.text:
        return None
    choices = (month.edtf.text, outcome.edtf.text)
    return Outcome(None, which_is_meant(choices, context), choices)


def _is_of_me(tokens: list[Token], words: str) -> bool:
    """“Me, 17”: whether the teller stands before a number."""
    return words[: tokens[0].end].casefold() in ME


def _not_as_one_whole(
    outcome: Outcome | None, tokens: list[Token], kinds: set[str], words: str, context: DateContext, own: Node | None
) -> Outcome | None:
    """What words come to that are no date as they stand, or ask which: by whom they are of, by their form, by what they
    may be meant for, by pieces of them."""
    if "birthday" in kinds and ("person" in kinds or context.narrator):
        beside = beside_a_birthday(of_the_teller(tokens, context), context, lambda stretch: decided(stretch, context))
        if beside:
            return beside
    if "person" in kinds and "was" in kinds and (unknown := of_no_birth(tokens, words)):
        return unknown
    if kinds & AGE_WORDS and kinds & NUMBERS and (leaning := with_ages(of_whom(tokens), words, context)):
        outcome = (
            dated_at_an_age(leaning, context, lambda stretch: decided(stretch, context))
            or decided(leaning, context)
            or outcome
        )
        if outcome and (outcome.edtf or outcome.alternatives):
            return outcome
    if reign := regnal_year(words):
        return Outcome(standard.parsed(reign))
    if kinds & _STYLES and (day := in_two_styles(tokens, words, lambda part: _choices_of(part, context))):
        return guarded(Outcome(standard.parsed(day)), context)
    if outcome is None and (spoken := with_spoken_years(tokens)) is not tokens:
        tokens, outcome = spoken, decided(spoken, context)
    if outcome is None and (led := with_years_behind_in(tokens, words)) is not tokens:
        tokens, outcome = led, decided(led, context)
        if outcome and outcome.edtf and not outcome.ask:
            outcome = replace(outcome, ask=is_meant(outcome.edtf, context))
    return (
        outcome
        or _of_each_year(words, context, own)
        or _within(words, context, own)
        or _stamped(words, context, own)
        or _as_meant(words, context, own)
        or (_of_named_person(tokens, words, context) if "person" in kinds else None)
        or (_of_an_age_beside(tokens, words, context) if kinds & AGE_WORDS and kinds & NUMBERS else None)
        or asked_for_event(tokens, words)
        or _repaired(tokens, words, own, context)
        or told_from(tokens, words)
        or _before_a_tail(tokens, words, context)
        or (_of_somebody(tokens, context) if context.perhaps else None)
        or _proposed(tokens, words, context, own)
    )


def _of_each_year(words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """“Every Christmas from 1930 to 1935”: all of them, with the question that one of them asks."""
    told = [understood(of, context, own) for of in of_each_year(words)]
    dates = [outcome.edtf.text for outcome in told if outcome and outcome.edtf]
    if not told or len(dates) < len(told) or not all(_ONE.fullmatch(text) for text in dates):
        return None
    edtf = standard.parsed(f"{{{','.join(dates)}}}")
    return Outcome(edtf, is_meant(edtf, context) if any(outcome and outcome.ask for outcome in told) else None)


_ONE = re.compile(r"[-\d]+")
_STYLES = frozenset(("old_style", "new_style"))


def _choices_of(tokens: list[Token], context: DateContext) -> tuple[str, ...]:
    outcome = decided(tokens, context)
    return outcome.choices if outcome else ()


def _is_of_one_beside(edtf: Edtf, words: str) -> bool:
    """“Summer 1947, I’d say the one before”: whether all the days before or after one were read of such words."""
    is_limit = edtf.text.startswith("[..") or edtf.text.endswith("..]")
    return is_limit and " " in ends_with_the_one_beside(words)


def _of_somebody(tokens: list[Token], context: DateContext) -> Outcome | None:
    """`Zofia tuż przed ślubem`: what is told behind who it is of, where an event is only perhaps meant."""
    if tokens[0].senses[0].kind != "person":
        return None
    outcome = decided(tokens[1:], context)
    if outcome is None or outcome.edtf is None or outcome.ask:
        return None
    return Outcome(None, is_meant(outcome.edtf, context), (outcome.edtf.text,))


def _of_whole(words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """A date with something behind it that is of the whole of it, and is known by how it is written: “on”, the letter
    of a laboratory, “give or take two years”, a year of an era; None for other words. Of all these only counts of
    years (“± 5”, “plus or minus 5”) end in a digit."""
    begun = understood(date, context, own) if (date := before_on(words)) else None
    if begun and begun.edtf and begun.edtf.kind == "date":
        return understood(f"{date} onwards", context, own)
    if onwards := on_with_doubt(words):
        return understood(onwards, context, own)
    if date := without_letter_of_lab(words):
        stamped = understood(date, context, own)
        if stamped and is_month_or_day(stamped.edtf):
            return stamped
    if (wide := give_or_take(words)) and (middle := understood(wide[0], context, own)) and middle.edtf:
        spread_out = spread(middle.edtf, wide[1])
        if spread_out and wide[1] > MOST_YEARS:
            return Outcome(None, is_meant(spread_out, context), (spread_out.text,))
        return guarded(Outcome(spread_out, middle.ask), context)
    era = beside_era(words)
    return _of_both(era, context, own) if era else None


def _within(words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """“Within a year or two of 1910”: one of the years to each side of it; None for other words."""
    wide = within(words)
    middle = understood(wide[0], context, own) if wide else None
    edtf = spread(middle.edtf, wide[1]) if wide and middle and middle.edtf else None
    return guarded(Outcome(edtf, middle.ask), context) if edtf and middle else None


def _told_otherwise(
    tokens: list[Token], kinds: set[str], words: str, context: DateContext
) -> tuple[Outcome | None, list[Token], DateContext]:
    """What words come to with which more than the grammar is asked: an age, a stage of a life, a count of years ago;
    else the words that are left to the grammar, and what they say of where they were told."""
    if "unit" in kinds and _is_stretch(tokens, words):
        context = replace(context, whole=True)
    if kinds & _OF_YEARS and kinds & _AGO and (ago := so_long_ago(tokens, context)):
        return ago, tokens, context
    if kinds & STAGES and (asks := _of_stage(tokens, words, context)):
        return asks, tokens, context
    if "birthday" in kinds and "person" in kinds and (day := birthday_in_year(tokens)):
        return guarded(Outcome(standard.parsed(day)), context), tokens, context
    if kinds & _OF_YEARS_OF_A_LIFE and (hundreds := with_hundreds(tokens, words)) != tokens:
        tokens, kinds = hundreds, kinds | {"day"}
    told_of = bool(kinds & AGE_WORDS) or "person" in kinds or bool(context.narrator and _is_of_me(tokens, words))
    may_be_age = bool(kinds & _NUMBERED_AGES) and told_of
    if may_be_age and (outcome := of_age(tokens, words, context)):
        return outcome, tokens, context
    if kinds & _SOME_UNITS and kinds & _OF_SOMEBODY and (few := of_a_few(tokens, words, context)):
        return few, tokens, context
    if "republican" in kinds and (day := republican_day(words)):
        return guarded(Outcome(standard.parsed(day)), context), tokens, context
    for kind, ask in _ASKED.items():
        numbered = kind == "no_such" and "numbered" in kinds  # “Phone 19 48 52”
        if kind in kinds and not (numbered or (kind == "other_month" and kinds & _WITH_YEAR)):
            return Outcome(None, ask.format(words)), tokens, context
    if kinds & _HEMISPHERES:
        tokens, context = _hemisphere(tokens, context)
    return None, tokens, context


def _proposed(tokens: list[Token], words: str, context: DateContext, own: Node | None) -> Outcome | None:
    """The question whether a piece of these words is the date, a month's name with a slip among them."""
    if mended := months_mended(tokens, words):
        tokens, words = lex(mended, own), mended
    if whole := named_behind(tokens, words):
        outcome = understood(whole, context, own)
        if outcome and outcome.edtf:
            return Outcome(None, is_meant(outcome.edtf, context), outcome.choices)
    return proposed(tokens, words, context, lambda stretch: _doubted(decided(stretch, context), context))


def _before_a_tail(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    """What a month, a feast or a day with its year comes to before words that say nothing of the date, where it asks
    nothing. A year alone may be a number (“1912, rue de la Gare”), a season is not the same everywhere."""
    head = tokens[: where_a_tail_begins(tokens, words)]
    if not head:
        return None
    outcome = _doubted(decided(head, context), context)
    if outcome is None and any(token.senses[0].kind == "person" for token in head):  # “Peter's 18th, in the Institute”
        aged = of_age(head, words[: head[-1].end], context)
        return aged if aged and aged.edtf and not aged.ask else None
    if outcome is None or outcome.edtf is None or outcome.ask or outcome.alternatives:
        return None
    anywhere = decided(head, replace(context, countries=())) if context.countries else outcome
    if anywhere is None or anywhere.ask:
        return None  # “Mother’s Day 1961, England”, in a collection of New Zealand
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
    """Whether figures are day first for all that the collection says of its order, which is another one or none."""
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
    return token.senses[0].languages == ONLY_MAORI and all(
        sense.kind == "season" and sense.languages == ONLY_MAORI for sense in token.senses
    )


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
        outcome = decided(lex(repair, own), context)
        if outcome is not None and outcome.edtf is not None:
            outcomes.setdefault(outcome.edtf.text, outcome)
    if not outcomes:
        return None
    known = [token for token in tokens if token.senses[0].kind != "name"]
    without = decided(known, context)
    years = [str(sense.value) for token in tokens for sense in token.senses if sense.kind == "year"]
    if without is not None and without.edtf is not None:
        years = [without.edtf.text]
    only_year = tuple(years) if len(years) == 1 and years[0] not in outcomes else ()
    if len(outcomes) > 1:
        several = one_of_several(list(outcomes), order=False, context=context)
        return replace(several, alternatives=(*several.alternatives, *only_year))
    (outcome,) = outcomes.values()
    assert outcome.edtf is not None  # it is kept by it
    return replace(outcome, ask=is_meant(outcome.edtf, context), alternatives=(*outcome.alternatives, *only_year))


_TWO_MONTHS = re.compile(r"(\d{4})[-.](\d\d?)/(0?[1-9]|1[0-2])")


def _of_two_months(year: str, first: str, last: str, context: DateContext) -> Outcome | None:
    """“1938-05/06”: whether one of two months is meant, or a day."""
    months = f"{year}-{int(first):02d}", f"{year}-{int(last):02d}"
    day = f"{months[0]}-{int(last):02d}"
    texts = (f"[{','.join(months)}]",) if int(first) < int(last) else ()
    choices = tuple(text for text in (*texts, day) if standard.check(text).state is standard.State.VALID)
    return Outcome(None, which_is_meant(choices, context), choices) if choices else None


_MARKED_YEAR = re.compile(r"(\d{4})([?~%]?)-([?~%]?)(\d\d)([?~%]?)(?<!\d\d-\d\d)(?<!\d\d-\d\d[?~%])")
"""“1931?-35”, “1931~-34?”: two years, or a year with its month or season, with a mark behind the first or before the
second."""


def _of_a_marked_year(match: re.Match[str], context: DateContext) -> Outcome | None:
    """What the figures come to without their marks, with these on what they are of, and whatever was to be asked."""
    year, mark, before, last, behind = match.groups()
    bare = understood(f"{year}-{last}", context)
    if bare is None or not bare.choices:
        return None
    marks, mark_behind = mark or before or behind, before or behind
    told = [
        f"{begin}{mark}/{end}{mark_behind}" if end else qualified(begin, marks)
        for begin, _, end in (choice.partition("/") for choice in bare.choices)
        if begin[0] != "["
    ]
    first, *others = dict.fromkeys(told)
    edtf = standard.parsed(first)
    if not bare.ask and edtf.kind == "interval":
        return guarded(Outcome(edtf), context)
    return Outcome(edtf, which_is_meant((first, *others), context), tuple(others))


def _in_figures(words: str, context: DateContext) -> Outcome | None:
    """A year with an open dash, or two months of a year in figures, which are asked about; None for other words."""
    if open_end := _OPEN_SPAN.fullmatch(words):
        return _of_an_open_span(open_end, context)
    if marked := _MARKED_YEAR.fullmatch(words):
        return _of_a_marked_year(marked, context)
    if two_months := _TWO_MONTHS.fullmatch(words):
        return _of_two_months(two_months[1], two_months[2], two_months[3], context)
    return None


_SIGNS = frozenset("-–—.?~%")
_MONTHS = frozenset(("month", "roman"))


def _is_day_and_month(tokens: list[Token]) -> bool:
    """“12 June”, as most are: whether a month stands right behind the first word."""
    return tokens[1].start == tokens[0].end + 1 and tokens[1].senses[0].kind in _MONTHS


_OPEN_SPAN = re.compile(r"(?P<year>(?:1[5-9]|20)\d\d) ?[-–—]\??|\?? ?[-–—](?P<last>(?:1[5-9]|20)\d\d)")


def _of_an_open_span(match: re.Match[str], context: DateContext) -> Outcome | None:
    """“1938–”, “1938-?”, “–1938”: whether it is a year with a dash, or a time with an end that is not known."""
    year = match["year"] or match["last"]
    choices = (year, f"{year}/.." if match["year"] else f"../{year}")
    guard = guarded(Outcome(standard.parsed(year)), context)
    return Outcome(None, guard.ask or which_is_meant(choices, context), choices)


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
    if _DASH_AND_YEAR.fullmatch(words) or _MARKED_YEAR.fullmatch(words):
        return None
    try:
        return standard.parsed(words)
    except TextFault:
        return None


def _hemisphere(tokens: list[Token], context: DateContext) -> tuple[list[Token], DateContext]:
    """`the southern summer of 1962`: the words that say which half of the world is meant."""
    said = [token for token in tokens if token.senses[0].kind in _HEMISPHERES]
    rest = [token for token in tokens if token not in said]
    return rest, replace(context, hemisphere=said[0].senses[0].kind if said else context.hemisphere)


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
        or age_beside_words(tokens, words, context, lambda part: decided(part, context))
        or age_with_a_word(tokens, words, context)
    )


def _of_an_age_beside(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    return age_beside_a_part(tokens, words, context, lambda part: decided(part, context))
