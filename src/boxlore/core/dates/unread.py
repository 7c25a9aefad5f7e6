"""What is asked of words that are not read: about an event of the family, about the one whole date among words that
nobody knows, about the day on which “yesterday” was said. Nothing here is a reading."""

import re
from collections.abc import Callable

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.asking import when_was
from boxlore.core.dates.context import DateContext, Outcome
from boxlore.core.dates.display import display
from boxlore.core.dates.lexer import Token

_RECKONED = frozenset(("month", "season", "feast", "weekday", "unit"))
"""What may be the last one before the day on which it is told."""

_BESIDE_A_DATE = frozenset(
    "name event person noise comma dash clock at_years genitive possessive they i was and day doubt about".split()
)
"""Kinds of words that may stand beside a date without making it another one."""

_WITH_A_YEAR = ("year", "dates", "short")
_WHOLE = re.compile(r"\d{4}-\d\d(?:-\d\d)?[?~%]?")


def proposed(
    tokens: list[Token], context: DateContext, decided: Callable[[list[Token]], Outcome | None]
) -> Outcome | None:
    """The day or month that stands among words of which nobody knows any: never read, only asked about."""
    proposed: dict[str, tuple[str, ...]] = {}
    for first, last in _stretches(tokens):
        if not any(sense.kind in _WITH_A_YEAR for token in tokens[first:last] for sense in token.senses):
            continue
        outcome = decided(tokens[first:last])
        if outcome is None or outcome.edtf is None:
            continue
        texts = [*([outcome.edtf.text] if outcome.edtf.kind == "date" else ()), *outcome.alternatives]
        beside = all(_is_beside(token) for token in (*tokens[:first], *tokens[last:]))
        if beside and texts and all(_WHOLE.fullmatch(text) for text in texts):
            proposed.setdefault(texts[0], tuple(texts))
    if len(proposed) != 1:
        return None
    (choices,) = proposed.values()
    return Outcome(None, f"“{context.text}”: is {display(standard.parsed(choices[0]))} meant?", choices)


def _is_beside(token: Token) -> bool:
    return any(sense.kind in _BESIDE_A_DATE for sense in token.senses)


def _stretches(tokens: list[Token]) -> list[tuple[int, int]]:
    """Where known words stand together, between unknown ones; and between commas."""
    stretches: dict[tuple[int, int], None] = {}
    for parting in ({"name"}, {"name", "comma", "dash"}):
        first = 0
        for at in range(len(tokens) + 1):
            if at == len(tokens) or tokens[at].senses[0].kind in parting:
                if at > first and (first, at) != (0, len(tokens)):
                    stretches[first, at] = None
                first = at + 1
    return list(stretches)


def told_from(tokens: list[Token], words: str) -> Outcome | None:
    """“Yesterday”, “last Christmas”: reckoned from the day on which it was said, which nobody knows here."""
    kinds = {sense.kind for token in tokens for sense in token.senses}
    if kinds & {"name", "year", "dates", "short", "years"} or not (
        "today" in kinds or ("last" in kinds and kinds & _RECKONED)
    ):
        return None
    return Outcome(None, f"“{words}”: of which year?")


def asked_for_event(tokens: list[Token], words: str) -> Outcome | None:
    """An event of the family that has no date yet: it is asked when it was."""
    kinds = [{sense.kind for sense in token.senses} for token in tokens]
    if any(here & {"year", "short", "dates", "years", "event"} for here in kinds):
        return None
    names = [at for at, here in enumerate(kinds) if here & {"name", "life"}]
    if not names or any(words[token.start].isdigit() for token in tokens if token.senses[0].kind == "name"):
        return None
    if "when" in kinds[0]:
        return Outcome(None, f"“{words}”: when was that?")
    before = [at for at in range(names[0]) if kinds[at] & {"unit", "season", "before", "after", "weekday"}]
    if not before and not any("life" in here for here in kinds):
        return None
    if before and not any(kinds[at] & {"unit", "season", "weekday"} for at in before):
        return (
            None
            if not any("life" in here for here in kinds)
            else Outcome(None, when_was(words[tokens[before[-1] + 1].start :]))
        )
    return Outcome(None, when_was(words[tokens[before[-1] + 1 if before else 0].start :]))
