"""What all printed outputs of one run share: the collection's title, the paper, the theme, the day, the audience."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from boxlore.core.crosswalk.captions import Style
from boxlore.core.dates.edtf import parse
from boxlore.core.dates.family_display import FamilyWay, family_display
from boxlore.core.records.item_record import StatementView
from boxlore.core.wording.catalogue import Say
from boxlore.sheets.handling_advice import advice_for
from boxlore.sheets.printable_words import isolated, language_of, printable
from boxlore.sheets.theme import Theme

PAPERS = {"a4": ("a4", 210.0, 297.0), "letter": ("us-letter", 215.9, 279.4)}
"""Paper -> (its name in typst, width and height in millimetres) (ISO 216; ANSI/ASME Y14.1)."""

BOOK_SIZES = {name: paper[1:] for name, paper in PAPERS.items()} | {"a5": (148.0, 210.0), "square": (210.0, 210.0)}
"""Size of an album's page -> its width and height in millimetres (A5: ISO 216; square: common practice, no source)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Printing:
    """How and for whom something is printed. `sort_names` gives the name under which a person is indexed, by id."""

    title: str
    printed_on: date
    audience: str = ""
    author: str = ""
    """Who holds the originals, as this audience may know: the author that a PDF names."""
    language: str = "en"
    """Of our own words, of lists and dates: a BCP 47 tag. Where there is no catalogue for it our words are English."""
    told_in: str = ""
    """The language of told words that have none of their own; else that of our own words."""
    paper: str = "a4"
    bleed: float = 0.0
    """Millimetres by which the colour of the pages runs over the edge of the paper, where a print shop cuts it; with 0
    the pages are white."""
    theme: Theme = field(default_factory=Theme)
    style: Style = field(default_factory=Style)
    sort_names: Mapping[str, str] = field(default_factory=dict)
    lives: Mapping[str, str] = field(default_factory=dict)
    """Person id -> the years of the life as an index gives them: `1888–1962`."""
    lives_worked_out: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    """Person id -> sentences on a birth or a death that nobody has told and that follows from what is told."""
    other_names: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    """Person id -> further names in the form of an index, such as that of birth."""
    family: Sequence[tuple[int, str]] = ()
    """The lines of a small family tree: how far in each stands, from 0, and its words."""
    left_out: int = 0
    """How many items were asked for but are not shown."""
    held: int = 0
    """How many of these have a picture that this audience may not see."""

    @property
    def say(self) -> Say:
        """Says our own words."""
        return self.style.say

    @property
    def page(self) -> tuple[float, float]:
        """Width and height of the paper in millimetres, upright."""
        return BOOK_SIZES[self.paper]

    def room(self, columns: int = 1, gutter: float = 8.0) -> float:
        """The width of one of so many columns, in millimetres; `gutter` is the space between two."""
        return (self.page[0] - 2 * self.theme.margin_side - gutter * (columns - 1)) / columns


def shared(printing: Printing, output: str = "") -> dict[str, Any]:
    """The data that every template reads; `output` is a key of `handling_advice.ADVICE`, or empty for no advice."""
    return {
        "title": isolated(printing.title),
        "author": printable(printing.author),
        "language": language_of(printing.language) or "en",
        "page": printing.page,
        "bleed": printing.bleed,
        "audience": isolated(printing.audience),
        "printed": printing.say("Printed {day}", day=day_in_words(printing)),
        "advice": advice_for(output, printing.say) if output else [],
    }


def day_in_words(printing: Printing) -> str:
    """The day of printing as the family writes a date: `25 November 2026`."""
    way = printing.style.dates or FamilyWay(printing.say.language)
    return family_display(parse(printing.printed_on.isoformat()), way)


def told_language(tag: str, printing: Printing) -> str:
    """The language of told words, as two or three letters, by its tag, which may be empty."""
    return language_of(tag) or language_of(printing.told_in or printing.language) or "en"


def in_language(statement: StatementView, words: str, printing: Printing) -> dict[str, str]:
    """These words, made safe to print, with the language of the statement they come from."""
    return {"words": isolated(words), "language": told_language(statement.language, printing)}
