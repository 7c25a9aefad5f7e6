"""Dates of which each word fills a slot of its own: `1938`, `June 1938`, `12 June 1938`, `summer 1960`, `Easter ’64`.

Most that are told are such. No number is open there, so that nothing has to be settled: they are what an assembly of
the same senses comes to (`core.dates.assembly`), at a third of its cost.
"""

from typing import Any

from boxlore.core.dates.assembly import SLOTS
from boxlore.core.dates.lexicon import Sense
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.short_years import LAST_DAY

PLAIN_ROWS = frozenset(
    (*before, year)
    for year in ("year", "short")
    for before in (
        ("month",), ("season",), ("feast",),
        *(row for day in ("day", "ordinal") for row in ((day, "month"), ("month", day))),
    )
) | {("year",)}  # fmt: skip
"""The kinds of their words."""

GOING_ON = frozenset((*SLOTS, "about", "doubt", "query", "comma", "dash", "slash"))
"""The kinds of words with which a date may go on; any other ends it."""


def plain_date(senses: list[Sense]) -> Partial | None:
    """The date of senses of one of PLAIN_ROWS; None for a number that is no day, which an assembly settles."""
    date = Partial()
    languages = -1
    for sense in senses:
        kind = sense.kind
        value: Any = sense.value
        languages &= sense.languages
        if kind == "month":
            date.month = value
        elif kind == "day" or kind == "ordinal":
            date.day, date.is_ordinal = (value[0], False) if kind == "day" else (value, True)
            if not 1 <= date.day <= LAST_DAY:
                return None
        elif kind == "season":
            date.season = value
        elif kind == "feast":
            date.feast = value
        else:
            date.year = value
    date.languages = languages
    return date
