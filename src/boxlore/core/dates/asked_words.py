"""Dates in the sentence of a question: as the family writes them, in English, since questions are in English."""

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.context import DateContext
from boxlore.core.dates.family_display import FamilyWay, family_display


def asked(text: str, context: DateContext) -> str:
    """The date of EDTF as it stands in a question, in the collection's order of day and month."""
    return family_display(standard.parsed(text), FamilyWay("en", context.order or ""))
