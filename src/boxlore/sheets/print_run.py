"""What all printed outputs of one run share: the collection's title, the paper, the theme, the day, the audience."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from boxlore.core.crosswalk.captions import Style
from boxlore.core.records.item_record import StatementView
from boxlore.sheets.handling_advice import advice_for
from boxlore.sheets.safe_words import isolated, language_of
from boxlore.sheets.theme import Theme

PAPERS = {"a4": ("a4", 210.0, 297.0), "letter": ("us-letter", 215.9, 279.4)}
"""Paper -> (its name in typst, width and height in millimetres) (ISO 216; ANSI/ASME Y14.1)."""

_MONTHS = (
    "January February March April May June July August September October November December".split()
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Printing:
    """How and for whom something is printed. `sort_names` gives the name under which a person is indexed, by id."""

    title: str
    printed_on: date
    audience: str = ""
    language: str = "en"
    paper: str = "a4"
    theme: Theme = field(default_factory=Theme)
    style: Style = field(default_factory=Style)
    sort_names: Mapping[str, str] = field(default_factory=dict)
    left_out: int = 0
    """How many items were asked for but may not be shown to this audience."""

    @property
    def page(self) -> tuple[float, float]:
        """Width and height of the paper in millimetres, upright."""
        return PAPERS[self.paper][1:]

    def room(self, columns: int = 1, gutter: float = 8.0) -> float:
        """The width of one of so many columns, in millimetres; `gutter` is the space between two."""
        return (self.page[0] - 2 * self.theme.margin_side - gutter * (columns - 1)) / columns


def shared(printing: Printing, output: str) -> dict[str, Any]:
    """The data that every template reads; `output` is a key of `handling_advice.ADVICE`."""
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
    """The day as `25 November 2026`."""
    return f"{day.day} {_MONTHS[day.month - 1]} {day.year}"


def in_language(statement: StatementView, words: str, printing: Printing) -> dict[str, str]:
    """These words, made safe to print, with the language of the statement they come from."""
    language = language_of(statement.language) or language_of(printing.language) or "en"
    return {"words": isolated(words), "language": language}
