"""Parts of a month, a year, a decade, a century → EDTF: early, mid, late; halves and quarters; the how-manieth week or
weekend of a month.

Conventions are ours unless a source is named: early, mid and late are a season's three months, a decade's years 0-3,
4-6 and 7-9, a century's and a year's thirds, a month's ten-day periods, of which the last goes to its end (the
“dekads” of World Meteorological Organization reports, from memory). Early in a century may be its first ten years too,
which is asked. All of these are approximate; halves and quarters are exact.
"""

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.context import NoSuchDate
from boxlore.core.dates.edtf_values import SEASONS, month_length
from boxlore.core.dates.lexicon import FRACTIONS
from boxlore.core.dates.partial import Partial

DECADE_PARTS = {
    "early": (0, 3), "mid": (4, 6), "late": (7, 9), "first_half": (0, 4), "second_half": (5, 9),
}  # fmt: skip
_FIRST_YEARS = (0, 9)
"""What the beginning of a century may mean too: it is asked."""
_CENTURY_PARTS = {"early": (0, 33), "mid": (34, 66), "late": (67, 99)}
_YEAR_PARTS = {"early": (1, 4), "mid": (5, 8), "late": (9, 12)}
_MONTH_PARTS = {"early": (1, 10), "mid": (11, 20), "late": (21, 31)}
_MONTHS_OF_SEASON = {"early": 0, "mid": 1, "late": 2}
_SATURDAY = 5


def part_of_month(part: str, month: str) -> str:
    """`early May 1938`: about its first ten days; its halves are exact; nobody speaks of its quarters."""
    length = month_length(int(month[:4]), int(month[5:]))
    if part in ("first_half", "second_half"):
        first, last = (1, 15) if part == "first_half" else (16, length)
        return f"[{month}-{first:02d}..{month}-{last}]"
    if part not in _MONTH_PARTS:
        return month
    first, last = _MONTH_PARTS[part]
    return f"[{month}-{first:02d}~..{month}-{min(last, length)}~]"


def part_of_stretch(part: str, text: str) -> str:
    """`end of Lent 1938`, `early in the May holidays`: about a third of the days or months of a feast; one day has
    none."""
    if part not in _MONTHS_OF_SEASON or ("/" not in text and len(text) != len("1938-05")):
        return text
    edtf = standard.parsed(text)
    assert edtf.earliest and edtf.latest  # a feast has both ends
    if "/" in text and len(text) == len("1938-05/1938-08"):
        months = [of.year * 12 + of.month - 1 for of in (edtf.earliest, edtf.latest)]
        begin, end = _third(part, *months)
        told = [f"{of // 12:04d}-{of % 12 + 1:02d}~" for of in dict.fromkeys((begin, end))]
        return told[0] if len(told) == 1 else f"[{told[0]}..{told[1]}]"
    begin, end = _third(part, *(to_number(*day) for day in (edtf.earliest, edtf.latest)))
    return f"[{from_number(begin)}~..{from_number(end)}~]"


def _third(part: str, first: int, last: int) -> tuple[int, int]:
    """The first, middle or last third of what is counted from one number to another; one at least."""
    third = max((last - first + 1) // 3, 1)
    if part == "mid":
        return min(first + third, last), max(last - third, first)
    return (first, first + third - 1) if part == "early" else (last - third + 1, last)


def part_of_season(part: str, year: str, code: int) -> str:
    """`late summer 1938`: about the last of its three months; nobody speaks of halves of a season."""
    season = f"{year}-{code}"
    if part not in _MONTHS_OF_SEASON or not year.isdigit():
        return season
    months = int(year) * 12 + SEASONS[code][0] - 1 + _MONTHS_OF_SEASON[part]
    return f"{months // 12:04d}-{months % 12 + 1:02d}~"


def nth_weekend(date: Partial, year: str) -> str:
    """`the second weekend of June 1950`: from its second Saturday on. A month that begins on a Sunday has two first
    weekends."""
    if not year.isdigit():
        raise NoSuchDate("In which year was that weekend?")
    first, length = to_number(int(year), date.month, 1), month_length(int(year), date.month)
    saturdays = [day for day in range(first, first + length) if (day - 1) % 7 == _SATURDAY]
    if date.nth > len(saturdays):
        raise NoSuchDate("That month has no such weekend. Which is meant?")
    saturday = saturdays[date.nth - 1] if date.nth > 0 else saturdays[-1]
    told = f"[{from_number(saturday)}..{from_number(saturday + 1)}]"
    if date.nth > 0 and (first - 1) % 7 == _SATURDAY + 1:
        before = f"[{from_number(saturday - 7)}..{from_number(saturday - 6)}]"
        raise NoSuchDate("That month begins on a Sunday. Which weekend is meant?", (told, before))
    return told


def nth_week(date: Partial, year: str) -> str:
    """`the third week of June 1938`: about its days 15 to 21; the last week: the last seven days."""
    if not year.isdigit():
        raise NoSuchDate("In which year was that week?")
    length = month_length(int(year), date.month)
    first = 7 * date.nth - 6 if date.nth > 0 else length - 6
    if not 1 <= first <= length:
        raise NoSuchDate("That month has no such week. Which is meant?")
    return f"[{year}-{date.month:02d}-{first:02d}~..{year}-{date.month:02d}-{min(first + 6, length):02d}~]"


def _fraction(year: str, nth: int, of: int) -> str:
    """`the second half of 1938`: months of a year, years of a decade or a century; a quarter of a decade is none."""
    if year.isdigit():
        months = 12 // of
        return f"[{year}-{months * nth + 1:02d}..{year}-{months * (nth + 1):02d}]"
    count = 100 if year.endswith("XX") else 10
    if count % of:
        return year
    first = int(year.replace("X", "0")) + count // of * nth
    return f"{first}/{first + count // of - 1}"


def is_early_in_century(date: Partial) -> bool:
    """Whether the beginning of a century is told: “ai primi del Novecento”, “early 20th century”."""
    told = date.part == "early" and not date.counted_part  # “first third” is no other
    return told and date.year.endswith("XX") and not date.within_a_year


def part_of(date: Partial, year: str, pick: int = 0) -> str:
    """What a part of a year, a decade or a century comes to; `pick` is which of what it may mean of a century."""
    if date.part in FRACTIONS:
        return _fraction(year, *FRACTIONS[date.part])
    if year.isdigit():
        first, last = _YEAR_PARTS[date.part]
        return f"[{year}-{first:02d}~..{year}-{last:02d}~]"
    if year.endswith("XX"):
        first, last = _FIRST_YEARS if pick and date.part == "early" else _CENTURY_PARTS[date.part]
        return f"{year[:2]}{first:02d}~/{year[:2]}{last:02d}~"
    first, last = DECADE_PARTS[date.part]
    return f"{year[:3]}{first}~/{year[:3]}{last}~"
