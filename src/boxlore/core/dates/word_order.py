"""Words that stand within a date though they are of the whole of it: put behind it, where the grammar has them."""

from boxlore.core.dates.assembly import SLOTS
from boxlore.core.dates.lexicon import Sense

_STYLES = frozenset(("old_style", "new_style"))
_BEHIND = frozenset(("about_behind", "eve_behind", "after_behind", "until_behind", "since_behind"))
_YEARS = frozenset(("year", "short"))


def in_order(words: list[Sense]) -> list[Sense]:
    """The words with those of the whole date behind it."""
    return _behind_the_year(_calendar_last(words))


def _calendar_last(words: list[Sense]) -> list[Sense]:
    """`27 February old style 1917`: the calendar behind the whole date, where it is told once within one."""
    styles = [sense for sense in words if sense.kind in _STYLES]
    if len(styles) != 1 or words[0] in styles or any(sense.kind not in SLOTS for sense in words if sense not in styles):
        return words
    return [*(sense for sense in words if sense not in styles), *styles]


def _behind_the_year(words: list[Sense]) -> list[Sense]:
    """`mardipäeva paiku 1930`, `pääsiäisen aattona 1930`: a word that stands behind its day, before the year."""
    if len(words) < 3 or words[-2].kind not in _BEHIND or words[-1].kind not in _YEARS:
        return words
    if any(sense.kind not in SLOTS or sense.kind in _YEARS for sense in words[:-2]):
        return words
    return [*words[:-2], words[-1], words[-2]]
