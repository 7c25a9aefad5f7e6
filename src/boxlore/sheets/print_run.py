"""What all printed outputs of one run share: the collection, the paper, the look, the day, who it is for."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from boxlore.core.crosswalk.captions import Style
from boxlore.core.records.in_force import StatementView
from boxlore.sheets.handling_advice import advice_for
from boxlore.sheets.safe_words import isolated, language_of
from boxlore.sheets.theme import Theme

PAPERS = {"a4": ("a4", 210.0, 297.0), "letter": ("us-letter", 215.9, 279.4)}
"""Name for the engine, width and height in millimetres (ISO 216; ANSI/ASME Y14.1)."""

_MONTHS = (
    "January February March April May June July August September October November December".split()
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Printing:
    """How and for whom something is printed. `sort_names` is how a person stands in an index, by id."""

    title: str
    printed_on: date
    audience: str = ""
    language: str = "en"
    paper: str = "a4"
    theme: Theme = field(default_factory=Theme)
    style: Style = field(default_factory=Style)
    sort_names: Mapping[str, str] = field(default_factory=dict)
    left_out: int = 0
    """Items that were asked for and may not be shown."""

    @property
    def page(self) -> tuple[float, float]:
        """Width and height of the paper in millimetres, upright."""
        return PAPERS[self.paper][1:]

    def room(self, columns: int = 1, gutter: float = 8.0) -> float:
        """The width of one column in millimetres."""
        return (self.page[0] - 2 * self.theme.margin_side - gutter * (columns - 1)) / columns


def shared(printing: Printing, output: str) -> dict[str, Any]:
    """The data that every template reads."""
    return {
        "title": isolated(printing.title),
        "author": "",
        "language": language_of(printing.language) or "en",
        "paper": PAPERS[printing.paper][0],
        "audience": isolated(printing.audience),
        "printed": f"Printed {day_in_words(printing.printed_on)}",
        "advice": advice_for(output),
    }


def day_in_words(day: date) -> str:
    """`25 November 2026`."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"


def told_words(told: StatementView, words: str, printing: Printing) -> dict[str, str]:
    """Told words with the language they are in."""
    language = language_of(told.language) or language_of(printing.language) or "en"
    return {"words": isolated(words), "language": language}
