"""A date as a family writes it: in its language and its order of day and month (“12 May 1912”, “12. mai 1912”).

Patterns and names are Unicode CLDR's (`display_patterns`), the words around them ours (`display_words`). Archives have
the form of DACS instead (`display`).
"""

from collections.abc import Mapping
from functools import lru_cache
from typing import NamedTuple

from boxlore.core.dates.display import ENGLISH, composed, grouping, season_of, year_words
from boxlore.core.dates.display_patterns import PATTERNS
from boxlore.core.dates.display_words import WORDS
from boxlore.core.dates.edtf_values import SEASONS, Date, Edtf

_SAME = {"no": "nb", "nn": "nb"}
"""Languages that are written as another one of the table."""


_FIRST_DAY = {"fr": "1er"}
"""The first day of a month, where only it is written as an ordinal (French; common practice, no source)."""


class FamilyWay(NamedTuple):
    """How a family writes its dates: a BCP 47 tag, and dmy, mdy or nothing for what is usual in that language."""

    language: str = "en"
    order: str = ""


@lru_cache(4096)
def family_display(edtf: Edtf, way: FamilyWay) -> str:
    """The date in words. A language that is not in the table is shown as English."""
    base = way.language.casefold().split("-", 1)[0]
    base = _SAME.get(base, base)
    if base not in WORDS:
        base = "en"
    american = way.order == "mdy" or (not way.order and way.language.casefold() == "en-us")
    code = base if base != "en" else "en-US" if american else "en-GB"
    words = {**ENGLISH, **WORDS["en"], **WORDS[base]}
    patterns = _Patterns(*PATTERNS[code])
    words["first-day"] = _FIRST_DAY.get(base, "1")
    words["bc"] = patterns.before_christ.replace("{y}", "{}")
    return composed(edtf, words, lambda date: _bare(date, words, patterns), patterns.span)


class _Patterns(NamedTuple):
    day: str
    month: str
    day_of_month: str
    span: str
    before_christ: str
    within: str
    alone: str
    quarters: str


def _bare(date: Date, words: Mapping[str, str], patterns: _Patterns) -> str:
    year = _year(date, words)
    if not date.month or set(date.month) == {"X"}:
        return year
    if not date.month.isdigit():
        return f"{year} ({date.month})"
    month = int(date.month)
    if month > 12:
        return _season(month, year, words, patterns)
    names = {"m": patterns.within.split("|")[month - 1], "s": patterns.alone.split("|")[month - 1], "y": year}
    day = str(int(date.day)) if date.day.isdigit() else ""
    day = words["first-day"] if day == "1" else day
    if set(date.year) == {"X"}:
        return patterns.day_of_month.format(d=day, **names) if day else names["s"]
    return (patterns.day if day else patterns.month).format(d=day, **names)


def _season(code: int, year: str, words: Mapping[str, str], patterns: _Patterns) -> str:
    season = season_of(code)
    if season <= 24:
        return words["season"].format(s=words[f"season-{season}"], y=_years_of_season(code, year))
    if 33 <= code <= 36:
        return f"{patterns.quarters.split('|')[code - 33]} {year}"
    return f"{grouping(code, words)} {year}"


def _years_of_season(code: int, year: str) -> str:
    """“1946–47” of a season that lies about New Year, as families say it: a winter in the north, a summer in the
    south."""
    first, months = SEASONS[code]
    return f"{year}–{(int(year) + 1) % 100:02d}" if first + months > _YEAR_ENDS and year.isdigit() else year


_YEAR_ENDS = 13
"""So many is the first month and how many there are of a season, where it ends with the year."""


def _year(date: Date, words: Mapping[str, str]) -> str:
    if date.year.endswith("X") and date.year[:3].isdigit() and not date.significant:
        first = int(f"{date.year[:3]}0")
        return words["decade"].format(first, first + 9)
    return year_words(date, words)
