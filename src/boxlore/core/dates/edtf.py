"""EDTF, levels 0, 1 and 2 whole (Library of Congress, Extended Date/Time Format Specification, 4 February 2019).

Grammar, as this reader walks it (ASCII only; no blank anywhere):

    text     = interval | set | date [ "T" time ]
    interval = side "/" side            side = date | ".." | nothing
    set      = "[" list "]" | "{" list "}"
    list     = part *( "," part )       part = date [ ".." [ date ] ] | ".." date
    date     = long | [q] year [q] [ "-" [q] month [q] [ "-" [q] day [q] ] ]
    long     = "Y" ["-"] digits [ "E" digits ] [ "S" digits ] [q]
    year     = ["-"] four of 0-9 or X, [ "S" digits ]
    month    = two of 0-9 or X (01-12), or a season 21-41
    q        = "?" | "~" | "%"

A text is valid, incomplete so far, or wrong at a column; no beginning of a valid text is called wrong.
What an expression means is in `core.dates.edtf_values`.
"""

import re
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from boxlore.core.dates.edtf_values import SEASONS, Date, Edtf, edge, fits, month_length
from boxlore.core.errors import TextFault


class ImpossibleDate(TextFault):
    """Well-formed, but there is no such date."""


class IncompleteDate(TextFault):
    """So far so good; more must follow."""


class State(StrEnum):
    """What a text is while it is being typed."""

    VALID = "valid"
    INCOMPLETE = "incomplete"
    WRONG = "wrong"


@dataclass(frozen=True, slots=True)
class Checked:
    """The state of a text, and for one that is wrong the 1-based column and why."""

    state: State
    column: int = 0
    message: str = ""


def check(text: str) -> Checked:
    """Valid, incomplete so far, or wrong at a column."""
    try:
        parse(text)
    except IncompleteDate:
        return Checked(State.INCOMPLETE)
    except TextFault as fault:
        return Checked(State.WRONG, fault.column, fault.why)
    return Checked(State.VALID)


_COMMON = re.compile(
    r"(\d{4})(?:-(0[1-9]|1[0-2])(?:-(0[1-9]|[12]\d|3[01]))?)?([?~%]?)|(\d{4})-(2[1-4])([?~%]?)|(\d\d(?:\dX|XX))([?~%]?)",
    re.ASCII,
)
"""A year, month or day; a season; a decade or century; each with a qualifier or none. Most dates are of these forms."""

_AFTER_A_DATE = ("", "/", ",", "]", "}", ".")
"""What ends a date within a longer expression."""


def parse(text: str) -> Edtf:
    """Read an expression. Raises IncompleteDate, ImpossibleDate or TextFault, each with its place."""
    common = _COMMON.fullmatch(text)
    if common is not None:
        date = _common_date(common)
        if date is None:
            raise ImpossibleDate(text, 8, 10, f"There is no day {text[8:10]} in that month")
        return Edtf(text, date.level, "date", ((date, date),))
    return _Reader(text).whole()


def _common_date(match: re.Match[str]) -> Date | None:
    """The date of a common form; None for a day that its month lacks."""
    year, month, day, mark, of_season, season, season_mark, pattern, pattern_mark = match.groups("")
    if year:
        if day and int(day) > 28 and int(day) > month_length(int(year), int(month)):
            return None
        if not mark:
            return Date(year, month, day)
        marks = (mark, mark if month else "", mark if day else "")
        own = ("", "", mark) if day else ("", mark, "") if month else (mark, "", "")
        return Date(year, month, day, "", marks, own, 0, 1)
    if season:
        return Date(of_season, season, "", "", (season_mark, season_mark, ""), ("", season_mark, ""), 0, 1)
    return Date(pattern, "", "", "", (pattern_mark, "", ""), (pattern_mark, "", ""), 0, 1)


@lru_cache(4096)
def _date_of(common: str) -> Date | None:
    """The date that a text of a common form is within a set, kept: sets tell the same years."""
    match = _COMMON.fullmatch(common)
    assert match is not None  # whoever asks has found it by the same pattern
    return _common_date(match)


parsed = lru_cache(4096)(parse)
"""The same, kept: a collection tells the same days, years and decades over and over."""


class _Reader:
    """Walks the grammar in the module's docstring from left to right."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.at = 0

    def whole(self) -> Edtf:
        if self.peek() in ("[", "{"):
            return self._set()
        first = self._side()
        if isinstance(first, Date) and self.at == len(self.text):
            return Edtf(self.text, first.level, "date", ((first, first),))
        if isinstance(first, Date) and first.time:
            self.wrong("Nothing can follow a time")
        self.take("/", "A slash must follow, or nothing")
        last = self._side()
        self.end()
        return self._interval(first, last)

    def _interval(self, first: "Date | str", last: "Date | str") -> Edtf:
        ends = [end for end in (first, last) if isinstance(end, Date)]
        if not ends and last == "":
            raise IncompleteDate(self.text, self.at, self.at, "An interval needs at least one date")
        if not ends:
            raise TextFault(self.text, 0, len(self.text), "An interval needs at least one date")
        plain = len(ends) == 2 and all(end.level == 0 and not end.time for end in ends)
        if any(end.time for end in ends):
            raise TextFault(self.text, 0, len(self.text), "The ends of an interval are dates without a time")
        pair = (first if isinstance(first, Date) else None, last if isinstance(last, Date) else None)
        interval = Edtf(self.text, 0 if plain else max(1, *map(_in_interval, ends)), "interval", (pair,))
        if interval.earliest and interval.latest and interval.earliest > interval.latest:
            raise ImpossibleDate(self.text, 0, len(self.text), "This interval ends before it begins")
        return interval

    def _side(self) -> "Date | str":
        if self.at == len(self.text) and self.at and self.text[-1] == "/":
            return ""
        if self.peek() == "/":
            return ""
        if self.peek() == ".":
            self.take(".", "")
            self.take(".", "Two full stops mean an open end")
            return ".."
        return self._date()

    def _set(self) -> Edtf:
        closing = "]" if self.text[0] == "[" else "}"
        self.at = 1
        parts: list[tuple[Date | None, Date | None]] = []
        while True:
            plain = _COMMON.match(self.text, self.at)
            if plain is not None and self.text[plain.end() : plain.end() + 1] == "," and (date := _date_of(plain[0])):
                parts.append((date, date))  # most
                self.at = plain.end() + 1
                continue
            parts.append(self._part(first=not parts, closing=closing))
            if self.peek() == closing:
                break
            if parts[-1][1] is None:
                self.wrong("An open end must be the last of a set")
            self.take(",", f"A comma or {closing} must follow")
        self.at += 1
        self.end()
        return Edtf(self.text, 2, "one" if closing == "]" else "all", tuple(parts))

    def _part(self, *, first: bool, closing: str) -> tuple[Date | None, Date | None]:
        begin = self.at
        if self.peek() == ".":
            self.take(".", "")
            self.take(".", "Two full stops mean “or earlier”")
            if not first:
                self.at = begin
                self.wrong("Only the first of a set can be open towards the past")
            return (None, self._plain())
        start = self._plain()
        if self.peek() != ".":
            return (start, start)
        self.take(".", "")
        self.take(".", "Two full stops make a range")
        if self.peek() in (closing, ","):
            return (start, None)
        last = self._plain()
        if start.bounds[0] > last.bounds[1]:
            raise ImpossibleDate(self.text, begin, self.at, "This range ends before it begins")
        return (start, last)

    def _plain(self) -> Date:
        begin = self.at
        date = self._date()
        if date.time:
            raise TextFault(self.text, begin, self.at, "A set holds dates without a time")
        return date

    # one date

    def _date(self) -> Date:
        begin = self.at
        common = _COMMON.match(self.text, begin)
        if common is not None and self.text[common.end() : common.end() + 1] in _AFTER_A_DATE:
            date = _common_date(common)
            if date is not None:
                self.at = common.end()
                return date
        before = self._mark()
        if self.peek() == "Y" and not before:
            return self._long(begin)
        year = self._sign() + self._places(4, "A year has four digits")
        if year == "-0000":
            raise ImpossibleDate(self.text, begin, self.at, "There is no year minus zero; 0000 is 1 BC")
        if self.peek() == "S" and not before and "X" not in year:
            return self._significant(begin, int(year), 4)
        marks = [(before, self._mark())]
        month = day = time = ""
        if self.peek() == "-":
            self.at += 1
            before = self._mark()
            month = self._month()
            marks.append((before, self._mark()))
            if self.peek() == "-" and not (month.isdigit() and int(month) > 12):
                self.at += 1
                before = self._mark()
                day = self._day()
                marks.append((before, self._mark()))
                if self.peek() == "T" and not any(map(any, marks)) and (year + month + day).lstrip("-").isdigit():
                    time = self._time()
        return self._made(begin, (year, month, day), time, marks)

    def _made(self, begin: int, parts: tuple[str, str, str], time: str, marks: list[tuple[str, str]]) -> Date:
        filled = [*marks, ("", ""), ("", "")][:3]
        spread = [_both(before, after) for before, after in filled]
        for index in range(3):
            for later in range(index + 1, 3):
                spread[index] = _both(spread[index], filled[later][1]) if parts[index] else ""
        own = tuple(_both(before, after) for before, after in filled)
        level = _level(parts, filled)
        date = Date(*parts, time, (spread[0], spread[1], spread[2]), (own[0], own[1], own[2]), 0, level)
        self._real(begin, date)
        return date

    def _real(self, begin: int, date: Date) -> None:
        try:
            edge(date, last=False)
        except ValueError as error:
            raise ImpossibleDate(self.text, begin, self.at, str(error)) from None

    def _long(self, begin: int) -> Date:
        self.at += 1
        sign = self._sign()
        digits = self._number("A year after Y has five digits or more, or an exponent")
        exponent = 0
        if self.peek() == "E":
            self.at += 1
            exponent = int(self._number("A number must follow E"))
            if exponent > 4000:
                raise ImpossibleDate(self.text, begin, self.at, "That year lies beyond all reckoning")
        elif len(digits) < 5:
            if self.at == len(self.text):
                raise IncompleteDate(self.text, self.at, self.at, "A year after Y has more than four digits")
            self.wrong("A year after Y has more than four digits")
        value = int(sign + digits) * 10**exponent
        if self.peek() == "S":
            return self._significant(begin, value, len(str(abs(value))))
        mark = self._mark()
        level = 2 if exponent else 1
        return Date(str(value), "", "", "", (mark, "", ""), (mark, "", ""), 0, level)

    def _significant(self, begin: int, value: int, length: int) -> Date:
        self.at += 1
        digits = int(self._number("A number must follow S"))
        if digits > length:
            why = f"A year of {length} digits has no {digits} significant ones"
            raise ImpossibleDate(self.text, begin, self.at, why)
        mark = self._mark()
        return Date(str(value), "", "", "", (mark, "", ""), (mark, "", ""), digits, 2)

    def _month(self) -> str:
        begin = self.at
        month = self._places(2, "A month or season has two digits", first="01234X")
        if month.isdigit():
            known = 1 <= int(month) <= 12 or int(month) in SEASONS
        else:
            known = any(fits(month, f"{number:02d}") for number in range(1, 13))
        if not known:
            raise TextFault(self.text, begin, self.at, f"There is no month or season {month}")
        return month

    def _day(self) -> str:
        begin = self.at
        day = self._places(2, "A day has two digits", first="0123X")
        if not any(fits(day, f"{number:02d}") for number in range(1, 32)):
            raise TextFault(self.text, begin, self.at, f"There is no day {day}")
        return day

    def _time(self) -> str:
        begin = self.at
        self.at += 1
        for most, what in ((23, "hour"), (59, "minute"), (59, "second")):
            if what != "hour":
                self.take(":", "A colon must follow")
            self._clock(most, what)
        if self.peek() == "Z":
            self.at += 1
        elif self.peek() in ("+", "-"):
            self.at += 1
            self._clock(14, "hour of the offset")
            if self.peek() == ":":
                self.at += 1
                self._clock(59, "minute of the offset")
        return self.text[begin : self.at]

    def _clock(self, most: int, what: str) -> None:
        begin = self.at
        value = self._places(2, f"The {what} has two digits", letters="0123456789")
        if int(value) > most:
            raise TextFault(self.text, begin, self.at, f"There is no {what} {value}")

    # letters

    def peek(self) -> str:
        return self.text[self.at] if self.at < len(self.text) else ""

    def take(self, letter: str, why: str) -> None:
        if self.at == len(self.text):
            raise IncompleteDate(self.text, self.at, self.at, why)
        if self.text[self.at] != letter:
            self.wrong(why)
        self.at += 1

    def end(self) -> None:
        if self.at < len(self.text):
            self.wrong("Nothing more can follow")

    def wrong(self, why: str) -> None:
        raise TextFault(self.text, self.at, self.at + 1, why)

    def _sign(self) -> str:
        if self.peek() == "-":
            self.at += 1
            return "-"
        return ""

    def _mark(self) -> str:
        letter = self.peek()
        if letter and letter in "?~%":
            self.at += 1
            return letter
        return ""

    def _places(self, count: int, why: str, *, letters: str = "0123456789X", first: str = "") -> str:
        begin = self.at
        for place in range(count):
            if self.at == len(self.text):
                raise IncompleteDate(self.text, self.at, self.at, why)
            allowed = first if first and place == 0 else letters
            if self.text[self.at] not in allowed:
                self.wrong(why)
            self.at += 1
        return self.text[begin : self.at]

    def _number(self, why: str) -> str:
        begin = self.at
        while self.peek() and self.peek() in "0123456789":
            if self.at == begin and self.peek() == "0":
                self.wrong("This number cannot begin with zero")
            if self.at - begin == 4000:
                self.wrong("This number is too long")
            self.at += 1
        if self.at == begin:
            self.take("1", why)
        return self.text[begin : self.at]


def _both(first: str, second: str) -> str:
    """Two qualifiers of one part together: uncertain and approximate is `%`."""
    if not first or not second or first == second:
        return first or second
    return "%"


def _in_interval(date: Date) -> int:
    """The level of a date as the end of an interval: unspecified digits make it level 2 there."""
    return 2 if "X" in f"{date.year}{date.month}{date.day}" else date.level


_LEVEL_1_UNSPECIFIED = re.compile(r"-?\d{3}X|-?\d\dXX|-?\d{4}-XX|-?\d{4}-\d\d-XX|-?\d{4}-XX-XX", re.ASCII)


def _level(parts: tuple[str, str, str], marks: list[tuple[str, str]]) -> int:
    text = "-".join(part for part in parts if part)
    level = 1 if text.startswith("-") else 0
    if parts[1].isdigit() and int(parts[1]) > 12:
        level = 1 if int(parts[1]) <= 24 else 2
    if "X" in text:
        level = max(level, 1 if _LEVEL_1_UNSPECIFIED.fullmatch(text) else 2)
    given = sum(1 for part in parts if part)
    for index, (before, after) in enumerate(marks[:given]):
        if before or (after and index < given - 1):
            return 2
        if after:
            level = max(level, 1)
    return level
