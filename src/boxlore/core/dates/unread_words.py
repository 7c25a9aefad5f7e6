"""What is asked of words that are not read: about an event of the family, about the day on which “yesterday” was said.
Nothing here is a reading."""

import re

from boxlore.core.dates.context import DateContext, Outcome
from boxlore.core.dates.event_question import when_was
from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.lexer import Token, lex
from boxlore.core.dates.lexicon import ANY_LANGUAGE, LANGUAGE_BITS, Sense

_RECKONED = frozenset(("month", "season", "feast", "weekday", "unit"))
"""What may be the last one before the day on which it is told."""


_DATED = frozenset(("month", "season", "feast"))
_ADDS_NOTHING = frozenset(("noise", "comma"))


def so_long_ago(tokens: list[Token], context: DateContext) -> Outcome | None:
    """“Vor vierzig Jahren”, “forty years ago”: reckoned from the year in which it was said, which is asked; None for
    other words."""
    kinds = [token.kinds for token in tokens]
    counts = [sense.value for token in tokens for sense in token.senses if sense.kind == "day"]
    numbers = sum(bool(here & {"day", "decade"}) for here in kinds)
    if numbers != 1 or not counts or any(not here & _OF_LONG_AGO for here in kinds):
        return None
    first = next((token for token in tokens if not token.kinds <= _ADDED), tokens[0])
    ago = 0
    for token in tokens:
        for sense in token.senses:
            ago |= sense.languages if sense.kind == "today" or (sense.kind == "before" and token is first) else 0
    if not any(_is_of_years(sense, context) and sense.languages & ago for token in tokens for sense in token.senses):
        return None
    years = counts[0][0]  # type: ignore[index]  # a number and its count of digits
    choices = (f"{context.this_year - years:04d}~",) if 0 < years < _OLDEST else ()
    return Outcome(None, f"“{context.text}”: counted from which year?", choices)


def _is_of_years(sense: Sense, context: DateContext) -> bool:
    """Whether a word is “years”; with a full stop among them, a word for decades is none (“pirms 40. gadiem”)."""
    return (sense.kind == "unit" and sense.value in ("year", "years")) or (
        sense.kind == "decades" and "." not in context.text
    )


_ADDED = frozenset(("noise", "about", "doubt"))
_OF_LONG_AGO = frozenset((*_ADDED, "day", "decade", "unit", "decades", "today", "before", "about_behind", "few"))
_OLDEST = 200


_DAY_TOLD = frozenset(("weekday", "ordinal"))


_SIDES = frozenset(
    "before after until since at_latest at_earliest from to between season feast month ordinal last not few day unit "
    "weekday before_behind after_behind until_behind since_behind or_later or_earlier eve morrow today undated".split()
)


def is_said_without_a_side(words: str, language: str, event: str) -> bool:
    """Whether words of a language may name an event and tell nothing of when it was beside that, nor of anything else:
    “on the voyage out, on the Rangiora”, which its name tells too; the day of it is the same."""
    own = LANGUAGE_BITS.get(language, ANY_LANGUAGE)
    tokens, named = lex(words), event.casefold()
    if any(
        token.senses[0].kind == "name" and words[token.start : token.end].casefold() not in named for token in tokens
    ):
        return False
    senses = (sense for token in tokens for sense in token.senses if sense.languages & own)
    return not any(sense.kind in _SIDES and sense.value != "day" for sense in senses)


def told_from(tokens: list[Token], words: str) -> Outcome | None:
    """“Yesterday”, “last Christmas”: reckoned from the day on which it was said, which nobody knows here."""
    kinds = {sense.kind for token in tokens for sense in token.senses}
    if len(tokens) == 2 and all(token.is_any(_DAY_TOLD) for token in tokens) and kinds >= _DAY_TOLD:
        return Outcome(None, f"“{words}”: of which month and year?")  # “Mon 5th”
    if kinds & {"name", "year", "dates", "short", "years"} or not (
        "today" in kinds or {"undated", "day"} <= kinds or ("last" in kinds and kinds & _RECKONED)
    ):
        return None
    return Outcome(None, f"“{words}”: of which year?")


def _is_article(token: Token, words: str) -> bool:
    """Whether a lone letter stands without a full stop: “a dozen eggs” has no “a.”, which is a year in Estonian."""
    return token.end == token.start + 1 and words[token.end : token.end + 1] != "."


_POSITION = re.compile(r"\b(?:from|on|at|to) (?:the )?(?:left|right)\b", re.IGNORECASE)


def asked_for_event(tokens: list[Token], words: str) -> Outcome | None:
    """An event of the family that has no date yet: it is asked when it was."""
    while tokens and tokens[-1].senses[0].kind in _ADDS_NOTHING:
        tokens = tokens[:-1]  # “before I was born, anyway”
    words = words[: tokens[-1].end] if tokens else words
    kinds = [token.kinds for token in tokens]
    if any(here & {"year", "short", "dates", "years", "event"} for here in kinds):
        return None
    if any(sense.kind == "feast" and came_once(str(sense.value)) for token in tokens for sense in token.senses):
        return None  # “VE Day street party” is of a day that everybody knows
    if any(here & _DATED for here in kinds) and any(here & {"day", "ordinal"} for here in kinds):
        return None  # “le jour de la mobilisation, août 14” has more of a date in it
    names = [at for at, here in enumerate(kinds) if here & {"name", "life"}]
    if not names or any(words[token.start].isdigit() for token in tokens if token.senses[0].kind == "name"):
        return None
    if _POSITION.search(words):
        return None  # “third from left” is where somebody stands
    if "when" in kinds[0]:
        return Outcome(None, f"“{words}”: when was that?")
    before = [
        at
        for at in range(names[0])
        if kinds[at] & {"unit", "season", "before", "after", "weekday"} and not _is_article(tokens[at], words)
    ]
    if before == [0] and "weekday" in kinds[0]:
        return None  # “Sunday best” is no Sunday of an event
    if not before and not any("life" in here for here in kinds):
        return None
    if before and not any(kinds[at] & {"unit", "season", "weekday"} for at in before):
        return (
            None
            if not any("life" in here for here in kinds)
            else Outcome(None, when_was(words[tokens[before[-1] + 1].start :]))
        )
    return Outcome(None, when_was(words[tokens[before[-1] + 1 if before else 0].start :]))
