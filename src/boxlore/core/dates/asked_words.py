"""Dates in the sentence of a question: as the family writes them, in English, since questions are in English."""

from collections.abc import Sequence

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext
from boxlore.core.dates.family_display import FamilyWay, family_display

NOT_UNDERSTOOD = "Not understood"
"""How a question begins what it says of words that are left over."""

MOST_NAMED = 3
"""So many choices stand in the question itself; more are only numbered."""


def asked(text: str, context: DateContext) -> str:
    """The date of EDTF as it stands in a question, in the collection's order of day and month."""
    return family_display(standard.parsed(text), FamilyWay("en", context.order or ""))


def listed(texts: Sequence[str], context: DateContext) -> str:
    """Dates of EDTF as a question has them one after another: “1938, 1939 or 1940”."""
    *before, last = [asked(text, context) for text in texts]
    return f"{', '.join(before)} or {last}" if before else last


def which_is_meant(texts: Sequence[str], context: DateContext, unread: Sequence[str] = ()) -> str:
    """The question which of these dates is meant, or whether the one is, with the runs of words that are left over."""
    named = [text for text in texts if not _is_all_of(text, texts)]
    which = "which of these is" if len(named) > MOST_NAMED else f"is {listed(named, context)}"
    return f"“{context.text}”: {which} meant?{not_understood(unread)}"


def _is_all_of(text: str, texts: Sequence[str]) -> bool:
    """Whether a date is a set of others among these, which are named by themselves."""
    return text[0] == "[" and "," in text and set(text[1:-1].split(",")) <= {other.strip("[]") for other in texts}


def not_understood(runs: Sequence[str]) -> str:
    """What a question says of the runs of words that are left over, behind a blank; nothing where there are none."""
    return f" {NOT_UNDERSTOOD}: {', '.join(f'“{run}”' for run in runs)}." if runs else ""
