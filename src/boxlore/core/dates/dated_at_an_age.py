"""A month, a season or a feast beside an age: “Christmas, Tom was six”, “June, when Ada was three”.

The year is that in which it came while somebody was so old; where the birthday lies in it, or the age is told about, it
is asked which.
"""

from dataclasses import replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext, Outcome
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.lexicon import Sense
from boxlore.core.dates.proposing import Decided

_NAMED = frozenset(("month", "season", "feast"))
_BESIDE = frozenset("month season feast feast_day day ordinal part noise comma when weekday of dash".split())
_EVENT = frozenset(("event",))
_MOST_YEARS = 6
"""An age that leaves more years open says too little (common practice, no source)."""


def dated_at_an_age(tokens: list[Token], context: DateContext, decided: Decided) -> Outcome | None:
    """What such words come to, where the age stands among them as an event; None for other words."""
    rest = [token for token in tokens if not token.is_any(_EVENT)]
    if len(rest) + 1 != len(tokens) or not any(token.is_any(_NAMED) for token in rest):
        return None
    if any(not token.is_any(_BESIDE) for token in rest):
        return None
    text = next(str(sense.value) for token in tokens for sense in token.senses if sense.kind == "event")
    age = standard.parsed(text)
    first, last = age.earliest, age.latest
    if first is None or last is None or first[:2] == last[:2] or last.year - first.year > _MOST_YEARS:
        return None
    within: list[Edtf] = []
    beside: list[Edtf] = []
    for year in range(first.year - 1, last.year + 1):
        told = replace(rest[-1], senses=(Sense("year", f"{year:04d}"),), start=rest[-1].end)
        outcome = decided([*rest, told])
        if outcome is None or outcome.edtf is None or outcome.ask:
            continue
        begin, end = outcome.edtf.earliest, outcome.edtf.latest
        if begin is None or end is None or end < first or last < begin:
            continue
        (within if first <= begin and end <= last else beside).append(outcome.edtf)
    return _of_these(within, beside, context, sure=not age.qualified)


def _of_these(within: list[Edtf], beside: list[Edtf], context: DateContext, *, sure: bool) -> Outcome | None:
    if len(within) == 1 and not beside and sure:
        return Outcome(within[0])
    choices = tuple(edtf.text for edtf in (*within, *beside))
    return Outcome(None, f"“{context.text}”: which year’s is meant?", choices) if choices else None
