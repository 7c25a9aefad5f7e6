"""Dates for a tree file: EDTF → the date value and, where the value says less, a phrase beside it.

FamilySearch GEDCOM 7.0.18, “Date”. The way in is a form of `core.dates.forms`, as families write such words too.
"""

from boxlore.core.dates.display import display
from boxlore.core.dates.edtf_values import Date, Day, Edtf

_MONTHS = "JAN FEB MAR APR MAY JUN JUL AUG SEP OCT NOV DEC".split()


def to_gedcom(edtf: Edtf) -> tuple[str, str]:
    """(date value, phrase). The value is empty where the format has none; the phrase is empty where none is needed."""
    first, last = edtf.parts[0][0], edtf.parts[-1][1]
    if edtf.kind == "date" and first is not None:
        return _one(edtf, first)
    if edtf.kind == "all":
        return "", display(edtf)
    one, other = (_plain(date) if date else "" for date in (first, last))
    if (first and not one) or (last and not other):
        return _bounds(edtf)
    shapes = ("FROM {}", "TO {}", "FROM {} TO {}") if edtf.kind == "interval" else ("AFT {}", "BEF {}", "BET {} AND {}")
    phrase = display(edtf) if edtf.qualified or len(edtf.parts) > 1 else ""
    if one and other:
        return shapes[2].format(one, other), phrase
    return (shapes[0].format(one), phrase) if one else (shapes[1].format(other), phrase)


def _one(edtf: Edtf, date: Date) -> tuple[str, str]:
    plain = _plain(date)
    if not plain:
        return _bounds(edtf)
    if not edtf.qualified:
        return plain, ""
    about = all(mark in ("", "~") for mark in date.marks)
    return (f"ABT {plain}", "") if about else (f"EST {plain}", display(edtf))


def _bounds(edtf: Edtf) -> tuple[str, str]:
    """A decade, a season, a day with gaps: between its first and last day, with its name as the phrase."""
    first, last = edtf.earliest, edtf.latest
    if first is None or last is None or (first.year <= 0 and last.year >= 9000):
        return "", display(edtf)
    return f"BET {_day(first, start=True)} AND {_day(last, start=False)}", display(edtf)


def _day(day: Day, *, start: bool) -> str:
    if (day.month, day.day) == ((1, 1) if start else (12, 31)):
        return _year(day.year)
    return f"{day.day} {_MONTHS[day.month - 1]} {_year(day.year)}"


def _plain(date: Date) -> str:
    """`3 MAR 1900` if every part is given, else nothing."""
    if date.significant or date.time or "X" in date.year + date.month + date.day:
        return ""
    if date.month and int(date.month) > 12:
        return ""
    parts = [str(int(date.day))] if date.day else []
    parts += [_MONTHS[int(date.month) - 1]] if date.month else []
    return " ".join([*parts, _year(int(date.year))])


def _year(year: int) -> str:
    return str(year) if year > 0 else f"{1 - year} BCE"
