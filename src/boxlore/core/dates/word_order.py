"""What the kinds of words alone say of them, whatever they mean: which add nothing and are passed over, where a word of
the whole date belongs, and whether an operator is told at all.

Times of day are left out, a calendar or “about” is put behind the year, where the grammar has it. Since only kinds
count here, it is worked out once for each row of them (“12 June 1938” and “3 May 1911” are one).
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from boxlore.core.dates.assembly import SLOTS
from boxlore.core.dates.plain_dates import PLAIN_ROWS
from boxlore.core.dates.short_years import may_have_short_years

_STYLES = frozenset(("old_style", "new_style"))
_BEHIND = frozenset(
    ("about_behind", "eve_behind", "before_behind", "after_behind", "until_behind", "since_behind", "between_behind")
)
_YEARS = frozenset(("year", "short"))
_MAY_BE_YEARS = _YEARS | {"day"}


_TIMES = frozenset(("clock", "clock_part", "clock_behind"))

_BEFORE_A_TIME = frozenset(("about", "before", "after", "from", "between", "part", "night_to"))
_BETWEEN_TIMES = frozenset(("until", "to", "to_open", "dash", "and", "or"))
"""What a time of day may stand behind and takes with it (“after midnight, 1 January” is that day, “early evening, May
1938” in that month), and what stands between two of them."""

_OCCASIONS = ("occasion", "occasion_ahead")
"""Holidays; in languages where “early” stands behind what it is of, they are ahead of it."""

_OF_WHAT_FOLLOWS = frozenset(
    ("before", "after", "since", "until", "about", "at_latest", "at_earliest", "part", "last", "ordinal", "unit")
)
"""What leaves no date before an occasion that has none of its own: “after the holidays, 1950”."""

_AT_WHICH = frozenset(("month", "season", "season_part", "feast", "feast_day", "weekday"))
"""What a word like “at” may stand before; before a year it is a time of day."""

QUALIFYING = ("about", "doubt", "query")
YEARS_TOLD = frozenset(("year", "short", "years", "dates", "decade", "decade_digits", "dual"))
_THE_SAME_BEHIND = ("comma", "event", "feast", "after_behind", "before_behind")
_NO_COMMA_AFTER = ("comma", "between", "before", "at_latest", "after", "at_earliest", "either", "about", "doubt")
_SIDES = ("before", "after")
_BESIDE_A_DATE = ("unit", "season", "feast")
PASSED_OVER = ("noise", "calculated", "hebrew", "when", *_OCCASIONS)
"""Words that add nothing: of a language's list, “calculated” of a tree file, the name of a calendar, and holidays."""

SHOULD_BE = "should_be"
"""The kind, here, of a correction that is doubt where nothing stands before it: “it should be 1938”."""

LIKELIER = "likelier"
"""The value of a correction that is not sure: “1952, more like 1953”."""

CORRECTING_OR_DOUBT = (SHOULD_BE, LIKELIER)
"""The values of corrections that are doubt where nothing stands before them."""

MOST_OF_ONE_DATE = 4


class PlacedKind(NamedTuple):
    """A word by its kind alone, and the place where it is told."""

    kind: str
    place: int


@dataclass(frozen=True, slots=True)
class Arranged:
    """What is read of a row of words: the places of those that stay, in the grammar's order; whether all stay as they
    are told; whether the first of them is doubt, what the last of them is where its own kind is another one, whether a
    number of them may be a year without its century, whether a unit is among them, whether they are all slots of one
    date, and whether each of them fills its own."""

    places: tuple[int, ...]
    is_as_told: bool
    doubted: bool
    last: str
    may_be_short: bool
    has_unit: bool
    is_one_date: bool
    is_plain: bool


@lru_cache(4096)
def arranged(kinds: tuple[str, ...]) -> Arranged | None:
    """What stays of words of these kinds; None where they are no date. Each kind is that of its sense, or SHOULD_BE."""
    words = _that_say_something(kinds)
    if not words:
        return None
    words = without_times(words)
    words = words if len(words) < 3 else in_order(words)
    told = {word.kind for word in words}
    if not words or ("at_years" in kinds and told.isdisjoint(_AT_WHICH)):
        return None  # “at 1938”, and a name that is such a word somewhere: “Con, 12.6.1938”
    places, row = tuple(word.place for word in words), tuple(word.kind for word in words)
    doubted = words[0].kind == "doubt" and kinds[words[0].place] == SHOULD_BE
    last = row[-1] if row[-1] in _BEYOND.values() and kinds[words[-1].place] in _BEYOND else ""
    may_be_short, has_unit = may_have_short_years(told, len(kinds)), "unit" in told
    return Arranged(
        places,
        is_as_told=places == tuple(range(len(kinds))) and not (doubted or last or may_be_short or has_unit),
        doubted=doubted,
        last=last,
        may_be_short=may_be_short,
        has_unit=has_unit,
        is_one_date=len(words) <= MOST_OF_ONE_DATE
        and told <= SLOTS.keys()
        and ("event" not in told or len(words) == 1)
        and sum(word.kind == "part" for word in words) < 2
        and not ("span" in told and len(words) > 2),
        is_plain=row in PLAIN_ROWS,
    )


def _that_say_something(kinds: tuple[str, ...]) -> list[PlacedKind]:
    """Each word that is not passed over; none where a word is among them with which nothing is a date."""
    words: list[PlacedKind] = []
    before = ""
    for place, kind in enumerate(kinds):
        if kind == "from" and before in ("noise", "clock"):
            continue  # “the photo is from 1926”
        if before in _OCCASIONS and (kind in _BEHIND or (kind == "part" and before == "occasion_ahead")):
            return []  # `loman jälkeen 1950`, `loman lopussa 1950`
        if kind in _OCCASIONS and words and words[-1].kind in _OF_WHAT_FOLLOWS:
            return []  # “before the holidays, 1950”, and not before 1950; “the end of the holidays”
        before = kind
        if kind == "when" and len(words) > 1 and words[-1].kind == "comma" and words[-2].kind in _BESIDE_A_DATE:
            words.pop()  # “im Jahr, als Otto geboren wurde”
        if kind in PASSED_OVER or kind == "at_years":
            continue
        if kind == "dash" and kinds[0] != "dash" and (not words or words[-1].kind == kind):
            continue
        if kind == "name":
            return []
        if kind == "same" and (not words or words[-1].kind not in _THE_SAME_BEHIND):
            continue  # “the same summer as the wedding”
        if kind == "as" and "same" in kinds:
            continue
        if kind == "undated":
            if words or not any(other in QUALIFYING for other in kinds):
                return []
            continue  # “n.d., but about 1925”
        if kind == SHOULD_BE:
            words.append(PlacedKind("correction" if words else "doubt", place))  # behind a date it corrects it
            continue
        if kind == "comma" and len(words) > 1 and words[-1].kind in _SIDES and words[-2].kind in _BESIDE_A_DATE:
            words.append(PlacedKind(kind, place))  # “the year after, 1934” may be that year
            continue
        if kind == "comma" and (not words or words[-1].kind in _NO_COMMA_AFTER):
            continue
        if kind == "either" and words and words[-1].kind not in _NO_COMMA_AFTER:
            continue  # “Christmas in either 1938 or 1939”
        if kind == "either" and words and words[-1].kind == "comma" and not YEARS_TOLD & {word.kind for word in words}:
            words.pop()  # “New Year’s Day, either 1938 or 1939”
            continue
        if kind in ("or_earlier", "or_later") and words and words[-1].kind == "or":
            words.pop()  # “1935, o quizá antes”
        if kind == "about_behind" and words and words[-1].kind == "dash":
            words.pop()  # “June-ish”
        words.append(PlacedKind(kind, place))
    if words and words[-1].kind == "comma":
        words.pop()
    return _with_what_is_beyond(words) if words and words[-1].kind in _BEYOND else words


_BEYOND = {
    "beyond_earlier": "or_earlier", "before": "or_earlier", "beyond_later": "or_later", "after": "or_later",
}  # fmt: skip
_LEADING_BEYOND = ("doubt", "or", "either")


def _with_what_is_beyond(words: list[PlacedKind]) -> list[PlacedKind]:
    """“1935, könnte aber auch früher sein”, “1935, kanskje før”: a word for “earlier” behind a date and doubt is “or
    earlier”; elsewhere it is none of a date."""
    at = len(words) - 1
    last = words[at]
    while at and words[at - 1].kind in ("and", "correction", *_LEADING_BEYOND):
        at -= 1
    if (
        at < 1
        or not any(word.kind in (*_LEADING_BEYOND, "and") for word in words[at:-1])
        or words[at - 1].kind in _OF_WHAT_FOLLOWS
    ):
        return [] if last.kind.startswith("beyond") else words
    if words[at - 1].kind == "comma":
        at -= 1
    return [*words[:at], PlacedKind(_BEYOND[last.kind], last.place)]


def without_times(words: list[PlacedKind]) -> list[PlacedKind]:
    """The words without the times of day: `about 3 pm`, `half past nine`, `nine o'clock`, `just before midnight`."""
    if not any(word.kind in _TIMES for word in words):
        return words
    rest: list[PlacedKind] = []
    before, told = "", False
    for at, word in enumerate(words):
        if word.kind == "clock_behind" and rest and rest[-1].kind == "day":
            rest.pop()
        if word.kind == "clock_part" and at + 1 < len(words) and words[at + 1].kind not in ("day", "ordinal", *_TIMES):
            return []  # “halb 1938”
        if word.kind in _TIMES:
            if [kept.kind for kept in rest[-2:]] == ["part", "dash"]:
                rest.pop()  # “mid-afternoon”
            while rest and (rest[-1].kind in _BEFORE_A_TIME or (told and rest[-1].kind in _BETWEEN_TIMES)):
                rest.pop()
            told = True
        elif not (before == "clock_part" and word.kind == "day") and not (before == "clock" and word.kind in _BEHIND):
            rest.append(word)
        before = word.kind
    while rest and rest[-1].kind == "comma":
        rest.pop()
    return rest[1:] if rest and rest[0].kind == "comma" else rest


def in_order(words: list[PlacedKind]) -> list[PlacedKind]:
    """The words with those of the whole date behind it."""
    return _behind_the_year(_calendar_last(words))


def _calendar_last(words: list[PlacedKind]) -> list[PlacedKind]:
    """`27 February old style 1917`: the calendar behind the whole date, where it is told once within one."""
    styles = [word for word in words if word.kind in _STYLES]
    if len(styles) != 1 or words[0] in styles or any(word.kind not in SLOTS for word in words if word not in styles):
        return words
    return [*(word for word in words if word not in styles), *styles]


def _behind_the_year(words: list[PlacedKind]) -> list[PlacedKind]:
    """`mardipäeva paiku 1930`, `pääsiäisen aattona 1930`: a word that stands behind its day, before the year."""
    if len(words) < 3 or words[-1].kind not in _MAY_BE_YEARS:
        return words
    at = -3 if words[-2].kind == "comma" else -2  # “7 April or thereabouts, 1941”
    joins = ("and",) if words[at].kind == "between_behind" else ()  # `jõulude ja uusaasta vahel 1955`
    slots = (word.kind in SLOTS or word.kind in joins for word in words[:at])
    if words[at].kind not in _BEHIND or not all(slots) or any(word.kind in _YEARS for word in words[:at]):
        return words
    return [*words[:at], words[-1], words[at]]
