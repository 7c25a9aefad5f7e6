"""“Before 1914” ends in 1913, “after 1945” begins in 1946: the last date before one, the first after one.

Said of a day, a month, a season, a year, a decade or a century, it is the neighbour of the same size, so that EDTF
says no more than was told, with the qualifier that it had.
"""

import re

from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.context import qualified

_PLAIN = re.compile(r"(\d{4}|\d{3}X|\d\dXX)(?:-(\d\d)(?:-(\d\d))?)?([?~%]?)", re.ASCII)
_FULL_DAY = re.compile(r"\d{4}-\d\d-\d\d", re.ASCII)
_A_MONTH = 30
_SEASONS = (21, 22, 23, 24), (31, 32, 29, 30)
"""Seasons in the order in which they begin in a year, in the north and in the south."""


def beside(text: str, side: int) -> str:
    """The date next to one of EDTF: before it (-1) or after it (1). What has no neighbour is itself."""
    match = _PLAIN.fullmatch(text)
    if match is None:
        return text
    year, month, day, mark = match.groups()
    if "X" in year:
        return text if month else f"{int(year.replace('X', '0' if side < 0 else '9')) + side:04d}{mark}"
    neighbour = _neighbour(int(year), int(month or 0), int(day or 0), side)
    return f"{neighbour}{mark}" if neighbour else text


def not_far(end: str, side: int, *, of_years: bool) -> str:
    """“Just before Christmas 1936”, “shortly after 1900”: about a month up to a day or from it, about a year beside a
    stretch of years, else about the date beside it (common practice, no source)."""
    bare = end.rstrip("?~%")
    far = ""
    if of_years:
        far = f"{int(bare[:4]) + side:04d}{bare[4:]}"
    elif _FULL_DAY.fullmatch(bare):
        far = str(from_number(to_number(*map(int, bare.split("-"))) + side * _A_MONTH))
    stretch = f"[{'..'.join(sorted((bare, far)))}]" if far else bare
    return qualified(qualified(stretch, "~"), end[len(bare) :])


def left_out(text: str) -> str:
    """The date that “before” or “after” leaves out: 1910 of `[..1909]`; empty for what is no limit on one side."""
    if "," in text or text.count("..") != 1:
        return ""
    if text.startswith("[.."):
        return beside(text[3:-1], 1)
    return beside(text[1:-3], -1) if text.endswith("..]") else ""


def _neighbour(year: int, month: int, day: int, side: int) -> str:
    """Empty for a code that is no season."""
    if day:
        return str(from_number(to_number(year, month, day) + side))
    if not month:
        return f"{year + side:04d}"
    if month <= 12:
        count = year * 12 + month - 1 + side
        return f"{count // 12:04d}-{count % 12 + 1:02d}"
    for seasons in _SEASONS:
        if month in seasons:
            count = year * 4 + seasons.index(month) + side
            return f"{count // 4:04d}-{seasons[count % 4]}"
    return ""
