"""One day told by both calendars, the second in brackets with its name: “24. veebruar 1918 (vkj 11. veebruar)”,
“11 February 1918 (24 February new style)”.

It is read where both are the same day by reckoning; else it stays what it is asked as without this.
"""

import re
from collections.abc import Callable

from boxlore.core.dates.calendars import from_julian
from boxlore.core.dates.lexer import Token

Dates = Callable[[list[Token]], tuple[str, ...]]
"""What words come to, and what else they may mean, as EDTF."""

_DAY = re.compile(r"\d{4}-\d\d-\d\d")
_OLD, _NEW = frozenset(("old_style",)), frozenset(("new_style",))
_MONTH, _YEAR = frozenset(("month",)), frozenset(("year",))


def in_two_styles(tokens: list[Token], words: str, dates: Dates) -> str:
    """The Gregorian day that both are; empty for other words, and where they are no one day."""
    bracket = words.rfind("(")
    if bracket < 1 or not words.endswith(")"):
        return ""
    outer = [token for token in tokens if token.start < bracket]
    inner = [token for token in tokens if token.start > bracket]
    bare = [token for token in inner if not token.is_any(_OLD | _NEW)]
    if len(bare) == len(inner) or not bare or any(token.is_any(_OLD | _NEW) for token in outer):
        return ""
    is_old = any(token.is_any(_OLD) for token in inner)
    years = [token for token in outer if token.is_any(_YEAR)]
    months = [token for token in outer if token.is_any(_MONTH)]
    told = _days(dates(outer))
    beside = {day for more in ([], years, [*months, *years]) for day in _days(dates([*bare, *more]))}
    for day in told:
        for other in beside:
            julian, gregorian = (other, day) if is_old else (day, other)
            if str(from_julian(*map(int, julian.split("-")))) == gregorian:
                return gregorian
    return ""


def _days(texts: tuple[str, ...]) -> list[str]:
    return [text for text in texts if _DAY.fullmatch(text)]
