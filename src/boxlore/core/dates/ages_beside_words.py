"""Ages as they are told, alone and beside other words: “Grete mit 14, zur Konfirmation”, “when Tom was nobbut three”.

What is told beside an age and not understood makes a question of it; where that is a date, no age is asked about.
"""

from dataclasses import replace
from itertools import groupby

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.ages import NUMBERS, age, in_months, nth_feast
from boxlore.core.dates.ages_in_captions import ages_told
from boxlore.core.dates.context import DateContext, NoSuchDate, Outcome
from boxlore.core.dates.edtf_values import Edtf
from boxlore.core.dates.guards import guarded, is_meant
from boxlore.core.dates.lexer import Token
from boxlore.core.dates.proposing import NOT_UNDERSTOOD, Decided


def age_with_a_word(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    """“When Tom was nobbut three”: the question whether the age is meant, where one word that nobody knows stands
    between “was” and its number."""
    for at in range(1, len(tokens) - 1):
        unknown = tokens[at].kinds == {"name"} and words[tokens[at].start].islower()
        if unknown and tokens[at - 1].is_any(_WAS) and tokens[at + 1].is_any(NUMBERS):
            outcome = of_age([*tokens[:at], *tokens[at + 1 :]], words, context)
            if outcome and outcome.edtf:
                told = words[tokens[at].start : tokens[at].end]
                ask = f"{is_meant(outcome.edtf, context)} {NOT_UNDERSTOOD}: “{told}”."
                return Outcome(None, ask, (outcome.edtf.text,))
    return None


_WAS = frozenset(("was",))


def age_beside_words(tokens: list[Token], words: str, context: DateContext, decided: Decided) -> Outcome | None:
    """“Grete mit 14, zur Konfirmation”, “Leida leeripäev, ta oli siis 18”: the question whether the one age is meant
    that is told between commas, of the one person who is named; None where another part is a date."""
    persons = [token for token in tokens if token.senses[0].kind == "person"]
    parts = [list(part) for is_comma, part in groupby(tokens, _is_comma) if not is_comma]
    if len(persons) != 1 or len(parts) < 2:
        return None
    ages: list[Edtf] = []
    left: list[str] = []
    for part in parts:
        if persons[0] not in part:
            part = [replace(token, senses=persons[0].senses) if token.is_any(_THEY) else token for token in part]
        outcome = of_age(part, words, context)
        if outcome and outcome.edtf:
            ages.append(outcome.edtf)
        elif (told := decided(part)) and told.edtf:
            return None
        else:
            left.append(words[part[0].start : part[-1].end])
    if len(ages) != 1:
        return None
    unread = ", ".join(f"“{run}”" for run in left)
    return Outcome(None, f"{is_meant(ages[0], context)} {NOT_UNDERSTOOD}: {unread}.", (ages[0].text,))


def _is_comma(token: Token) -> bool:
    return token.senses[0].kind == "comma"


_THEY = frozenset(("they",))


def of_age(tokens: list[Token], words: str, context: DateContext) -> Outcome | None:
    """What words come to that tell an age, the ages of several or a feast by its number; None for other words."""
    tokens = in_months(tokens)
    try:
        text = nth_feast(tokens, context) or age(tokens, words, context) or ages_told(tokens, words, context)
    except NoSuchDate as none:
        return Outcome(None, none.ask, none.choices)
    return guarded(Outcome(standard.parsed(text)), context) if text else None
