"""What is asked of words that are not read: about an event of the family, about the day on which “yesterday” was said.
Nothing here is a reading."""

from boxlore.core.dates.context import Outcome
from boxlore.core.dates.event_question import when_was
from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.lexer import Token

_RECKONED = frozenset(("month", "season", "feast", "weekday", "unit"))
"""What may be the last one before the day on which it is told."""


_DATED = frozenset(("month", "season", "feast"))
_ADDS_NOTHING = frozenset(("noise", "comma"))


def told_from(tokens: list[Token], words: str) -> Outcome | None:
    """“Yesterday”, “last Christmas”: reckoned from the day on which it was said, which nobody knows here."""
    kinds = {sense.kind for token in tokens for sense in token.senses}
    if kinds & {"name", "year", "dates", "short", "years"} or not (
        "today" in kinds or {"undated", "day"} <= kinds or ("last" in kinds and kinds & _RECKONED)
    ):
        return None
    return Outcome(None, f"“{words}”: of which year?")


def asked_for_event(tokens: list[Token], words: str) -> Outcome | None:
    """An event of the family that has no date yet: it is asked when it was."""
    while tokens and tokens[-1].senses[0].kind in _ADDS_NOTHING:
        tokens = tokens[:-1]  # “before I was born, anyway”
    words = words[: tokens[-1].end] if tokens else words
    kinds = [{sense.kind for sense in token.senses} for token in tokens]
    if any(here & {"year", "short", "dates", "years", "event"} for here in kinds):
        return None
    if any(sense.kind == "feast" and came_once(str(sense.value)) for token in tokens for sense in token.senses):
        return None  # “VE Day street party” is of a day that everybody knows
    if any(here & _DATED for here in kinds) and any(here & {"day", "ordinal"} for here in kinds):
        return None  # “le jour de la mobilisation, août 14” has more of a date in it
    names = [at for at, here in enumerate(kinds) if here & {"name", "life"}]
    if not names or any(words[token.start].isdigit() for token in tokens if token.senses[0].kind == "name"):
        return None
    if "when" in kinds[0]:
        return Outcome(None, f"“{words}”: when was that?")
    before = [at for at in range(names[0]) if kinds[at] & {"unit", "season", "before", "after", "weekday"}]
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
