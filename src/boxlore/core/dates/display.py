"""A date as archives, findings and questions read it: DACS 2.4 (year, month, day; no abbreviations).

The words stand in one table, so that another language is another table.
"""

import calendar
from collections.abc import Callable, Mapping

from boxlore.core.dates.edtf_values import Date, Edtf

ENGLISH: Mapping[str, str] = {
    "?": "probably {}",
    "~": "approximately {}",
    "%": "probably about {}",
    "decade": "{}s",
    "century": "{}s",
    "before": "not later than {}",
    "after": "not earlier than {}",
    "or": " or ",
    "and": " and ",
    "between": "between {} and {}",
    "bc": "{} BC",
    "unknown-start": "until {}",
    "unknown-end": "from {}",
    "season-21": "spring",
    "season-22": "summer",
    "season-23": "autumn",
    "season-24": "winter",
    "quarter": "{} quarter",
}

_MONTHS = calendar.month_name
_SOUTHERN = {29: 21, 30: 22, 31: 23, 32: 24}
_NTH = {1: "first", 2: "second", 3: "third", 4: "fourth"}


Bare = Callable[[Date], str]
"""Writes one date without its qualifiers."""


def display(edtf: Edtf, words: Mapping[str, str] = ENGLISH) -> str:
    """`1906 March 17`, with qualifiers spelled out."""
    return composed(edtf, words, lambda date: _bare(date, words))


def composed(edtf: Edtf, words: Mapping[str, str], bare: Bare, span: str = "{0}-{1}") -> str:
    """A whole expression in words, its dates written by `bare`; `span` joins the ends of an interval."""
    if edtf.kind == "interval":
        return _interval(edtf.parts[0], words, bare, span)
    if edtf.kind in ("one", "all"):
        return _set(edtf, words, bare)
    date = edtf.single
    assert date is not None  # a date has one
    return _marked(date, bare(date), words)


def _interval(pair: tuple[Date | None, Date | None], words: Mapping[str, str], bare: Bare, span: str) -> str:
    first, last = pair
    if first is None and last is not None:
        return words["unknown-start"].format(_marked(last, bare(last), words))
    if first is not None and last is None:
        return words["unknown-end"].format(_marked(first, bare(first), words))
    assert first is not None and last is not None  # an interval has a date at one end at least
    begin, end = bare(first), bare(last)
    years = begin.isdigit() and end.isdigit() and not any(map(str.isalpha, span))
    plain = "".join(span.split()) if years else span  # 1946–1947, but 12 May 1946 – 3 June 1946
    same = _mark(first) if _mark(first) == _mark(last) else ""
    if same:
        return words[same].format(plain.format(begin, end))
    if _mark(first) or _mark(last):
        return f"{_marked(first, begin, words)} - {_marked(last, end, words)}"
    return plain.format(begin, end)


def _set(edtf: Edtf, words: Mapping[str, str], bare: Bare) -> str:
    shown: list[str] = []
    for first, last in edtf.parts:
        begin, end = (bare(date) if date else "" for date in (first, last))
        if first is last:
            shown.append(begin)
        elif first is None or last is None:
            shown.append(words["after" if first else "before"].format(begin or end))
        else:
            shown.append(words["between"].format(begin, end))
    joined = words["or"] if edtf.kind == "one" else words["and"]
    return f"{', '.join(shown[:-1])}{joined}{shown[-1]}" if len(shown) > 1 else shown[0]


def _mark(date: Date) -> str:
    marks = [mark for mark in date.marks if mark]
    return "%" if len(set(marks)) > 1 or "%" in marks else (marks[0] if marks else "")


def _marked(date: Date, shown: str, words: Mapping[str, str]) -> str:
    mark = _mark(date)
    return words[mark].format(shown) if mark else shown


def _bare(date: Date, words: Mapping[str, str]) -> str:
    year = year_words(date, words)
    if not date.month or set(date.month) == {"X"}:
        return year
    if not date.month.isdigit():
        return f"{year} ({date.month})"
    month = int(date.month)
    name = _MONTHS[month] if month <= 12 else grouping(month, words)
    day = str(int(date.day)) if date.day.isdigit() else ""
    if set(date.year) == {"X"}:
        return f"{day} {name}".strip()
    return " ".join(part for part in (year, name, day) if part)


def season_of(code: int) -> int:
    """The season of any half of the world as one without it (21 to 24); another code is itself."""
    return _SOUTHERN.get(code, code - 4 if 25 <= code <= 28 else code)


def grouping(code: int, words: Mapping[str, str]) -> str:
    """`summer`, `second quarter`: what a code above 12 in the place of the month means."""
    season = season_of(code)
    if season <= 24:
        return words[f"season-{season}"]
    if 33 <= code <= 36:
        return words["quarter"].format(_NTH[code - 32])
    if 37 <= code <= 39:
        return f"{_NTH[code - 36]} third"
    return f"{_NTH[code - 39]} half"


def year_words(date: Date, words: Mapping[str, str]) -> str:
    """The year, the decade or the century of a date."""
    if date.significant:
        first, last = date.bounds
        return words["between"].format(first.year, last.year)
    text = date.year
    if text.endswith("XX") and text[:2].isdigit():
        return words["century"].format(f"{text[:2]}00")
    if text.endswith("X") and text[:3].isdigit():
        return words["decade"].format(f"{text[:3]}0")
    if "X" in text:
        return text
    value = int(text)
    return words["bc"].format(1 - value) if value <= 0 else str(value)
