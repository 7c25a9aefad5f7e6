"""One date among the words of a sentence, with the qualifiers and the calendar that stand with it.

    operand      = qualifiers partial qualifiers [ calendar ]

What changes the words behind it is made plain first (“can't have been later than” is “by”).
"""

from boxlore.core.dates.assembly import Assembly
from boxlore.core.dates.lexicon import Sense
from boxlore.core.dates.partial import ABOUT, DOUBT, Partial
from boxlore.core.dates.plain_dates import GOING_ON, plain_date
from boxlore.core.dates.wars_table import UNNAMED

MARKING = ("about", "doubt", "query")
_QUALIFIERS = {"about": ABOUT, "doubt": DOUBT, "query": DOUBT, "about_behind": ABOUT}
ENDS = ("", "comma", "or", "and", "dash", "to", "to_open", "slash", "query", "about", "doubt")
"""What may follow a qualifier that stands behind its date."""


def _normal(senses: list[Sense]) -> list[Sense]:
    """“Can't have been later than 1931” is by 1931, “it wasn't before 1931” from then on; “the first Easter after” and
    “the last Christmas before” are those next to it."""
    said: list[Sense] = []
    for sense in _with_half_years(senses):
        if len(said) > 1 and said[-1].kind in _MAY_BE_NEXT and _is_next(said[-2], sense.kind):
            del said[-2]
        if sense.kind == "of_war" and said and said[-1].kind in _WHICH:  # “im ersten Kriegswinter”
            of_it: tuple[str, object] = sense.value  # type: ignore[assignment]  # the kind and the value of it alone
            said += [Sense(*of_it, languages=sense.languages), Sense("span", UNNAMED, sense.languages)]
            continue
        if sense.kind in _PARTS_OF_A_WAR and len(said) > 1 and said[-1].kind in _WHICH and said[-2].kind == "span":
            said[-2:] = [said[-1], sense, said[-2]]  # `krigens første vinter`
            continue
        denied = bool(said) and said[-1].kind == "not" and sense.kind in DENIED
        if denied:
            said.pop()
        said.append(Sense(DENIED[sense.kind]) if denied else sense)
    return said


_WHICH = ("ordinal", "last")
_PARTS_OF_A_WAR = ("unit", "season", "feast")
_AND_A_HALF = ["day", "and", "fraction", "unit"]


def _with_half_years(senses: list[Sense]) -> list[Sense]:
    """“Two and a half years before the fire” is thirty months before it."""
    for at in range(len(senses) - 3):
        count, _, half, unit = run = senses[at : at + 4]
        if [sense.kind for sense in run] == _AND_A_HALF and half.value == "half" and unit.value == "years":
            months = 12 * count.value[0] + 6  # type: ignore[index]  # a number and its count of digits
            return [*senses[:at], Sense("day", (months, 2)), Sense("unit", "months", unit.languages), *senses[at + 4 :]]
    return senses


_TWO = 2
_OR, _NUMBERS = ("or", "slash"), ("day", "ordinal")


def _with_paired_days(senses: list[Sense]) -> list[Sense]:
    """“Saturday or Sunday, 11 or 12 June”, “Sat/Sun 11/12 June”: each day of the week with its number."""
    at = next(place for place, sense in enumerate(senses) if sense.kind == "weekday")
    comma = len(senses) > at + 3 and senses[at + 3].kind == "comma"
    run = [*senses[at : at + 3], *senses[at + 3 + comma : at + 6 + comma]]
    forms = (("weekday",), _OR, ("weekday",), _NUMBERS, _OR, _NUMBERS)
    if len(run) < len(forms) or any(sense.kind not in kinds for sense, kinds in zip(run, forms, strict=True)):
        return senses
    first, join, last, day, _, other = run
    return [*senses[:at], first, day, join, last, other, *senses[at + 6 + comma :]]


_MAY_BE_NEXT = ("feast", "season", "weekday")


def _is_next(sense: Sense, side: str) -> bool:
    return (sense.kind, sense.value, side) == ("ordinal", 1, "after") or (sense.kind, side) == ("last", "before")


DENIED = {"after": "at_latest", "before": "at_earliest"}
_CHANGING = frozenset(("not", "ordinal", "last", "fraction"))
"""Kinds of words that change what stands behind them: without one of them all is as it is told."""


class NoForm(Exception):
    """These senses in this order are no date."""


class Operands:
    """Goes through one list of senses from left to right, `at` the next one."""

    def __init__(self, senses: list[Sense]) -> None:
        kinds = [sense.kind for sense in senses]
        if not _CHANGING.isdisjoint(kinds):
            senses = _normal(senses)
            kinds = [sense.kind for sense in senses]
        if kinds.count("weekday") == _TWO:
            senses = _with_paired_days(senses)
            kinds = [sense.kind for sense in senses]
        self.senses = senses
        self.count = len(senses)
        self.kinds = [*kinds, "", "", ""]
        self.at = 0
        self._first_mark = self._last_mark = 0
        self._doubted = False

    def _operand(self) -> Partial:
        """operand = qualifiers partial qualifiers [ calendar ]"""
        kind = self.kinds[self.at]
        mark = self._marks() if kind in ("about", "doubt") else 0
        style = self._style()
        if self.kinds[self.at] == "year" and self.kinds[self.at + 1] not in GOING_ON:
            date, at = plain_date(self.senses[self.at : self.at + 1]), self.at + 1  # most
        else:
            date, at = Assembly(self.senses).run(self.at)
        if date is None:
            raise NoForm
        self.at = at
        if at == self.count:  # most dates end here
            date.mark |= mark
            date.old_style = date.old_style or style == "old_style"
            date.new_style = style == "new_style"
            self._last_mark = 0
            return date
        behind = 0
        while self._is_behind():
            behind |= _QUALIFIERS.get(self.kinds[self.at], 0)
            self.at += 1
        self._last_mark = behind
        if self.kinds[self.at] == "comma" and self.kinds[self.at + 1] in ("old_style", "new_style"):
            self.at += 1
        style = self._style() or style
        date.old_style, date.new_style = style == "old_style", style == "new_style"
        date.mark |= mark | behind
        return date

    def _is_behind(self) -> bool:
        """Whether a qualifier, or the comma before one, stands behind the date and not before the next one."""
        kind, following = self.kinds[self.at], self.kinds[self.at + 1]
        if kind == "comma":
            return following in ("doubt", "about_behind") and self.kinds[self.at + 2] in ENDS
        return kind in ("query", "about_behind") or (kind in ("about", "doubt") and following in ENDS)

    def _style(self) -> str:
        """The words that say whether the day is Julian (old_style) or Gregorian (new_style); empty for none."""
        kind = self.kinds[self.at]
        if kind not in ("old_style", "new_style"):
            return ""
        self.at += 1
        return kind

    def _marks(self) -> int:
        mark = 0
        while self.kinds[self.at] in MARKING:
            mark |= _QUALIFIERS[self.kinds[self.at]]
            self.at += 1
            if self.kinds[self.at] in ("comma", "dash"):
                self.at += 1
        return mark
