"""An age beside another part of what is told: “my last year at school, I'd have been fourteen”, `до войны, мне было лет
семь`.

Each part may be readable alone. Where the age and a date of the other part can both be, the narrower one is offered,
else each of them; words that are not understood are named. It is all a question, never a reading.
"""

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages_beside_words import of_age
from boxlore.core.dates.asked_words import MOST_NAMED, asked, not_understood
from boxlore.core.dates.conflicts import can_both_be, is_narrower
from boxlore.core.dates.context import DateContext, Outcome
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.proposing import Decided, proposed
from boxlore.core.dates.told_apart import between_commas


def age_beside_a_part(tokens: list[Token], words: str, context: DateContext, decided: Decided) -> Outcome | None:
    """The question which of both is meant, where one part between commas is an age and the rest is none; None for other
    words."""
    parts = [tokens[first:last] for first, last in between_commas(tokens)]
    if len(parts) < 2 or not any(token.is_any(_I) for token in tokens):
        return None
    outcomes = [of_age(part, words, context) for part in parts]
    ages = [outcome.edtf if outcome and not outcome.ask else None for outcome in outcomes]
    told_ages = [edtf for edtf in ages if edtf]
    if len(told_ages) != 1 or sum(outcome is not None for outcome in outcomes) > 1:
        return None
    (age,) = told_ages
    rest = [part for part, edtf in zip(parts, ages, strict=True) if not edtf]
    unread: list[str] = []
    dates: list[Edtf] = []
    for part in rest:
        told = decided(part) or proposed(part, words, context, decided)
        if told and told.choices:
            dates += map(standard.parsed, told.choices)
            unread += told.unread
        else:
            unread.append(words[part[0].start : part[-1].end])
    choices = _that_fit(age, dates)
    shown = [asked(text, context) for text in choices]
    which = "which of these is" if len(shown) > MOST_NAMED else f"is {' or '.join(shown)}"
    return Outcome(None, f"“{context.text}”: {which} meant?{not_understood(unread)}", choices)


def _that_fit(age: Edtf, dates: list[Edtf]) -> tuple[str, ...]:
    """The dates that say more than the age and can be with it, then the age; all of them where none can be with it."""
    fitting = [edtf for edtf in dates if can_both_be(edtf, age)]
    if not fitting:
        return tuple(dict.fromkeys((age.text, *(edtf.text for edtf in dates))))
    finer = [edtf.text for edtf in fitting if not is_narrower(age, edtf)]
    return tuple(dict.fromkeys((*finer, age.text)))


_I = frozenset(("i",))
