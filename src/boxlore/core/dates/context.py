"""What the steps of reading a date share: what a reading may lean on, and how a step says that there is no such
date."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple

from boxlore.core.dates.edtf_values import Edtf


@dataclass(slots=True)
class DateContext:
    """The words as told; the collection's settings; and dates already told (folded name → EDTF). Nobody changes one; it
    is not frozen for the reason that a token is not (`core.dates.lexer`).

    `this_year` is the year in which it is told: a later one is asked about, and so is one before `first_year`; `today`
    the day, as EDTF, empty where only the year counts.
    `narrator` is the birth of whoever tells, `pictured` are the people in the picture with their births, as EDTF, empty
    where one is not known; `births` and `deaths` are by folded name. `whole`: what lies at a distance is the whole
    stretch up to there. `perhaps`: one of `events` is only perhaps meant, so that all words must go with it.
    `language`: the code of the collection's, empty where it is not known. `eldest`: the year in which the first of the
    family was born, 0 where that is not known.
    """

    text: str
    order: str | None
    hemisphere: str
    countries: tuple[str, ...]
    births: Mapping[str, str]
    events: Mapping[str, str]
    narrator: str
    pictured: Mapping[str, str]
    this_year: int
    first_year: int
    deaths: Mapping[str, str]
    language: str
    whole: bool = False
    perhaps: bool = False
    eldest: int = 0
    today: str = ""

    def season_code(self, season: int) -> int:
        """EDTF's code of a season as it was said (21-24): one of the south is 29-32."""
        return season + (8 if self.hemisphere == "south" else 0)


class Life(NamedTuple):
    """The birth and the death of somebody, as EDTF; empty where one is not known."""

    born: str
    died: str = ""


@dataclass(slots=True)
class Outcome:
    """EDTF, or None for no date; the question, if there is one; what else may be meant, as EDTF; the runs of words that
    the question names as not understood, where somebody asks further with them. Nobody changes one; it is not frozen
    for the reason that a token is not (`core.dates.lexer`)."""

    edtf: Edtf | None
    ask: str | None = None
    alternatives: tuple[str, ...] = ()
    unread: tuple[str, ...] = ()

    @property
    def choices(self) -> tuple[str, ...]:
        """All that may be meant, as EDTF."""
        return (self.edtf.text, *self.alternatives) if self.edtf else self.alternatives


NOT_THEN = "That says when it was not. When was it?"
"""What is asked where only a date is told at which it was not."""
ONE_OR_BOTH = "Which of the two is meant, or both?"
"""What is asked where two months or seasons stand beside each other, and nothing says how."""
NOT_TOGETHER = "These two do not go together. Which is right?"
"""What is asked where two dates are told that cannot both be."""


class NoSuchDate(ValueError):
    """The words are about a date, but name none: `ask` is the question then, `choices` what may be meant, as EDTF."""

    def __init__(self, ask: str, choices: tuple[str, ...] = ()) -> None:
        super().__init__(ask)
        self.ask, self.choices = ask, choices


def qualified(edtf: str, mark: str) -> str:
    """The EDTF with a qualifier: on a date, on both ends of an interval, on every date of a set."""
    if not mark or not edtf:
        return edtf
    if edtf[0] in "[{":
        parts = [qualified_range(part, mark) for part in edtf[1:-1].split(",")]
        return f"{edtf[0]}{','.join(parts)}{edtf[-1]}"
    if "/" in edtf:
        return "/".join(qualified(end, mark) if end not in ("", "..") else end for end in edtf.split("/"))
    if edtf[-1] in "?~%":
        return edtf if edtf[-1] in (mark, "%") else f"{edtf[:-1]}%"
    return edtf + mark


def qualified_range(part: str, mark: str) -> str:
    """A part of a set (`1938..1940`, `..1950`) with a qualifier on each date."""
    return "..".join(qualified(end, mark) for end in part.split(".."))
