"""Words that stand within a date and are no part of it, or are of the whole of it: times of day are left out, a
calendar or “about” is put behind the year, where the grammar has it."""

from boxlore.core.dates.assembly import SLOTS
from boxlore.core.dates.lexicon import Sense

_STYLES = frozenset(("old_style", "new_style"))
_BEHIND = frozenset(("about_behind", "eve_behind", "before_behind", "after_behind", "until_behind", "since_behind"))
_YEARS = frozenset(("year", "short"))


_TIMES = frozenset(("clock", "clock_part", "clock_behind"))


def without_times(words: list[Sense]) -> list[Sense]:
    """The words without the times of day: `about 3 pm`, `half past nine`, `nine o'clock`."""
    if not any(sense.kind in _TIMES for sense in words):
        return words
    rest: list[Sense] = []
    before = ""
    for sense in words:
        if sense.kind == "clock_behind" and rest and rest[-1].kind == "day":
            rest.pop()
        if sense.kind in _TIMES:
            while rest and rest[-1].kind == "about":
                rest.pop()
        elif sense.kind != "day" or before != "clock_part":
            rest.append(sense)
        before = sense.kind
    while rest and rest[-1].kind == "comma":
        rest.pop()
    return rest[1:] if rest and rest[0].kind == "comma" else rest


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
    if len(words) < 3 or words[-1].kind not in _YEARS:
        return words
    at = -3 if words[-2].kind == "comma" else -2  # “7 April or thereabouts, 1941”
    if words[at].kind not in _BEHIND or any(sense.kind not in SLOTS or sense.kind in _YEARS for sense in words[:at]):
        return words
    return [*words[:at], words[-1], words[at]]
