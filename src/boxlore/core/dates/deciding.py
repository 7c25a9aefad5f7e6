"""What tokens come to by all their readings: every choice of senses is read by the grammar, and only then decided.

If one language has all the words, other languages' senses do not count; different dates from one text are a question.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import product

from boxlore.core.dates.alternatives import of_two_years
from boxlore.core.dates.asked_words import asked
from boxlore.core.dates.assembly import Assembly
from boxlore.core.dates.calendars import to_number
from boxlore.core.dates.context import NOT_THEN, ONE_OR_BOTH, DateContext, Outcome
from boxlore.core.dates.double_meanings import is_month_or_day
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.expressions import Expression
from boxlore.core.dates.grammar import Grammar
from boxlore.core.dates.guards import is_meant
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import ANY_LANGUAGE, LANGUAGE_BITS, SEASONS, Sense
from boxlore.core.dates.operands import NoForm
from boxlore.core.dates.outcomes import one_of_several, outcome_of
from boxlore.core.dates.outer_parts import outer_part
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.plain_dates import plain_date
from boxlore.core.dates.short_years import with_short_years
from boxlore.core.dates.word_order import CORRECTING_OR_DOUBT, PASSED_OVER, QUALIFYING, SHOULD_BE, Arranged, arranged

MOST_READINGS = 96
"""So many choices of senses are tried; words with more are no date that anyone would say."""

_RANGING = ("until", "dash", "to", "to_open")
_LITTLE_SAID = frozenset((*PASSED_OVER, "clock", "clock_part", "clock_behind", "at_years", "part", "unit"))
"""Kinds of words without which the date would be the same, or no less certain."""

_DOUBT = Sense("doubt")


def decided(tokens: list[Token], context: DateContext) -> Outcome | None:
    """What tokens come to by all their readings: one date, the question which of several, or none. Where all words are
    of the collection's own language, and a date in it, other languages do not count."""
    choices = _ways(tokens)
    if len(choices) == 1:
        expression = _read(choices[0], context)
        return outcome_of(expression, context) if expression else None
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


def _of_several(choices: list[list[Sense]], context: DateContext) -> Outcome | None:
    outcomes: dict[str, Outcome] = {}
    none: Outcome | None = None
    order = denied = False
    for senses in _with_all_operators(choices):
        expression = _read(senses, context)
        if expression is None:
            continue
        orders = {date.order for date in expression.leaves() if date.order}
        if len(orders) > 1:
            continue  # nobody changes the order of days and months within a phrase
        outcome = outcome_of(expression, context)
        if outcome.edtf is None:
            denied = denied or (outcome.ask == NOT_THEN and senses[0].kind == "not")
            none = none or outcome
            continue
        order = order or bool(orders)
        known = outcomes.get(outcome.edtf.text)
        if known is None or (known.ask and not outcome.ask):
            outcomes[outcome.edtf.text] = outcome
    if len(outcomes) > 1:
        outcomes = _most_doubtful(outcomes)
    if order and len(outcomes) > 1 and (told := _of_its_weekday(outcomes, choices)):
        return told  # “Sunday 12/6/38”
    if len(outcomes) > 1:
        several = one_of_several(list(outcomes), order, context)
        later = [text for outcome in outcomes.values() for text in outcome.alternatives if order and text[:2] == "20"]
        return replace(several, alternatives=tuple(dict.fromkeys((*several.alternatives, *later))))  # “3/4/05”
    if none is not None and none.ask == ONE_OR_BOTH:  # “Feb, Mar 1936”, though “mar” is Tuesday in Spanish
        return replace(none, alternatives=tuple(dict.fromkeys((*none.alternatives, *outcomes))))
    only = next(iter(outcomes.values()), none)
    if denied and only and only.edtf and not only.ask:  # “mitte 1950”: amid it in German, not then in Estonian
        return replace(only, ask=is_meant(only.edtf, context))
    return only


def _of_its_weekday(outcomes: dict[str, Outcome], choices: list[list[Sense]]) -> Outcome | None:
    """The only order of day and month with which a day of the week goes that is told beside it; None where both do, or
    neither, or none is told."""
    told = {int(str(sense.value)) for sense in choices[0] if sense.kind == "weekday"}
    if len(told) != 1:
        return None
    days = {text: outcome for text, outcome in outcomes.items() if _DAY.fullmatch(text)}
    fitting = [outcome for text, outcome in days.items() if (to_number(*map(int, text.split("-"))) - 1) % 7 in told]
    return fitting[0] if len(fitting) == 1 and len(days) == len(outcomes) else None


_DAY = re.compile(r"\d{4}-\d\d-\d\d")


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
    if row.last and senses[row.places[-1]].value:
        return None  # “late Victorian, or just after” is not open
    words = senses if row.is_as_told else _arranged_words(senses, row, kinds)
    if row.is_plain and (plain := plain_date(words)):
        plain.season_alone = True
        return Expression("one", [plain])
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
    if not _is_season_of_neighbours(expression, dates):
        for date in dates:
            date.season_alone = True
    return expression


def _arranged_words(senses: list[Sense], row: Arranged, kinds: tuple[str, ...]) -> list[Sense]:
    """The senses that stay, in the grammar's order, with what their neighbours make of them."""
    words = [senses[place] for place in row.places]
    if row.has_unit and "feast" in kinds:
        words = _with_weekends(words)
    if row.doubted:
        words = [_DOUBT, *words[1:]]
    if row.last:
        words = [*words[:-1], Sense(row.last)]
    return with_short_years(words, is_behind=kinds[0] == "noise") if row.may_be_short else words


def _is_season_of_neighbours(expression: Expression, dates: list[Partial]) -> bool:
    """Whether what stands beside a winter says which one it is: “winter 1941 to 1942”, “autumn/winter 1938”."""
    if expression.kind == "span" and dates[0].season and dates[-1].whole_year:
        return True
    if expression.beside == "slash" and len(dates) == 2 and of_two_years(*dates):
        return True
    together = expression.kind == "span" or expression.beside == "slash"
    autumn_first = [date.season for date in dates] == [SEASONS["autumn"], SEASONS["winter"]]
    return together and autumn_first and dates[0].year == dates[1].year


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
