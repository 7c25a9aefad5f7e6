"""“The first ten days of June 1940”, “the last fortnight of July”: how many days or weeks, and at which end."""

from boxlore.core.dates.lexicon import Sense
from boxlore.core.dates.relative import Distance

_COUNTED = ("day", "days", "week", "weeks", "fortnight", "month", "months", "year", "years")


def _is_first(sense: Sense) -> bool:
    return sense.kind == "ordinal" and sense.value == 1


def outer_part(senses: list[Sense]) -> int:
    """How many words say the first or the last days, weeks, months or years of what follows (“the last three days”,
    “les trois derniers jours”, “the first fortnight”); 0 where none do."""
    if len(senses) < 3 or "unit" not in (senses[1].kind, senses[2].kind):
        return 0  # most
    for length in (3, 2):
        words, following = senses[:length], senses[length : length + 1]
        if not following or following[0].kind in ("before", "after") or words[-1].kind != "unit":
            continue
        outer = [sense for sense in words[:-1] if _is_first(sense) or sense.kind == "last"]
        counts = [sense for sense in words[:-1] if sense.kind == "day"]
        counted = len(counts) == 1 if length == 3 else words[-1].value == "fortnight"
        if len(outer) == 1 and counted and str(words[-1].value) in _COUNTED:
            return length
    return 0


def outer_distance(words: list[Sense]) -> Distance:
    """How far the days of such words reach from the first (side 1) or back from the last one (-1)."""
    counts = [sense.value for sense in words if sense.kind == "day"]
    side = 1 if any(map(_is_first, words)) else -1
    count = counts[0][0] if counts else 1  # type: ignore[index]  # a number, by its kind
    return Distance(side, str(words[-1].value).removesuffix("s"), count)
