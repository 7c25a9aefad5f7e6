"""Senses that stand together → one partial date, its parts in any order: the second of the three steps.

    partial  = 1*( slot | filler )
    slot     = day | ordinal | month | year | season | feast | weekday | decade | century | part | span | …
    filler   = a comma or dash before a coarser slot, a qualifier of the next slot, “year” beside a year

A slot that is filled already ends the partial: what follows must then be joined to it by an operator.
"""

from collections.abc import Callable
from typing import Any

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.day_month_year import Gathered
from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.lexicon import DAYS_OF_A_WEEK, NTH_FRACTIONS, PART_BEHIND, SEVERAL, YEAR_NAMED_BEHIND, Sense
from boxlore.core.dates.partial import ABOUT, DOUBT, Partial
from boxlore.core.dates.short_years import LAST_MONTH
from boxlore.core.dates.weekday_counts import counts_weekdays

_QUALIFIERS = {"about": ABOUT, "doubt": DOUBT}


_OF_AN_EVENT = ("unit", "season")
_GO_ON = ("day", "month", "year", "short", "comma", "dash")
_COUNTED = ("days", "weeks")
"""What a number before counts: “3 days in May”."""
_PLURALS = ("days", "weeks", "months", "years")
_FINER = {
    "month": ("day", "ordinal", "feast", "dates", "weekday"),
    "year": ("feast", "dates", "weekday", "month", "season"),
}
"""What is finer than a unit and may follow it."""
_IN_A_DAY = ("month", "roman", "hebrew_month", "ordinal", "dash", "query")
_BEHIND_AN_ORDINAL = (*_IN_A_DAY, "weekday", "unit", "feast", "season", "fraction")
_NAMED_BY = {"year": ("year", "short"), "month": ("month",)}
"""What a unit may stand before behind a comma: “14 September, the year 1938”."""
_MONTH_OR_DAY = ("day", "ordinal", "month", "dates", "season", "feast")
_BEGIN_A_DAY = ("day", "ordinal", "month", "dates", "season", "feast", "part")


def _number(sense: Sense) -> tuple[int, int]:
    """The value and the count of digits of a number."""
    assert isinstance(sense.value, tuple)  # by its kind
    return sense.value


def only_year(text: str) -> str:
    """The year that holds all of a date of EDTF which is told without doubt; empty where there are several."""
    edtf = standard.parsed(text)
    first, last = edtf.earliest, edtf.latest
    one = first is not None and last is not None and first.year == last.year and not edtf.qualified
    return f"{first.year:04d}" if first is not None and one else ""


class Assembly(Gathered):
    """Fills one partial date from senses, from left to right."""

    __slots__ = ("at", "dashed", "languages", "latest", "pending", "senses", "sign")

    def __init__(self, senses: list[Sense]) -> None:
        super().__init__()
        self.senses = senses
        self.at = self.pending = 0
        self.latest = self.sign = ""
        self.dashed = False
        self.languages = -1

    def run(self, at: int) -> tuple[Partial | None, int]:
        """The partial date that begins at a sense, and the sense after it; None if there is none, or its slots do not
        fit."""
        begin, senses, count = at, self.senses, len(self.senses)
        while at < count:
            sense = senses[at]
            kind = sense.kind
            self.at = at
            put = SLOTS.get(kind)
            if put is not None:
                if (self.date.event and kind not in _OF_AN_EVENT) or not put(self, sense.value):
                    break
                self.pending, self.sign = 0, ""
                self.languages &= sense.languages
                self.taken.append(kind)
                if kind == "part":
                    self.part_behind = not sense.languages & ~PART_BEHIND
                at += 1
            elif (
                kind == "comma"
                and at + 2 < count
                and senses[at + 1].kind in _QUALIFIERS
                and self._filler(senses[at + 1].kind, senses[at + 2], [])
            ):
                at += 2
            elif at == begin or at + 1 >= count or not self._filler(kind, senses[at + 1], senses[at + 2 : at + 4]):
                break
            else:
                self.sign = kind
                at += 1
        if at == begin:
            return None, at
        self.date.languages = self.languages
        return (self.date if self.settled() else None), at

    def _filler(self, kind: str, following: Sense, beyond: list[Sense]) -> bool:
        """Whether a sign or qualifier within the words of one date stands before a slot that is still open."""
        date, ahead = self.date, following.kind
        year_ahead = ahead in ("year", "short") and not (date.year or self.decades)
        if kind in ("dash", "slash") and self.romans and (year_ahead or self._short_year_ahead(following)):
            return True  # VI-1938, XII/38
        if kind == "slash":
            return self._over_a_stroke(following, beyond, year_ahead=year_ahead)
        if kind == "comma":
            return self._over_a_comma(following, beyond, year_ahead=year_ahead)
        if kind == "dash":
            return self._over_a_dash(following, beyond, year_ahead=year_ahead)
        if kind in _QUALIFIERS and (year_ahead or (ahead == "month" and not date.month)):
            self.pending |= _QUALIFIERS[kind]
            return bool(self.numbers or self.ordinals or date.within_a_year)
        if kind == "query" and ahead == "unit" and date.year and not beyond:  # 1938 (?) г.
            date.mark |= DOUBT
            return True
        if kind == "query" and (year_ahead or (ahead == "month" and not date.month and bool(self.numbers or date.day))):
            setattr(self.date, f"{self.latest or 'day'}_mark", DOUBT)
            return self.latest in ("day", "month", "")
        return False

    def _over_a_stroke(self, following: Sense, beyond: list[Sense], *, year_ahead: bool) -> bool:
        """Whether the date goes on behind a stroke: `Xmas/35`, `1926/June`."""
        date, ahead = self.date, following.kind
        if self.dashed and date.month and self._may_be_year(following):
            return not date.year  # 12/Jun/1938
        begins = ahead == "month" and len(self.numbers) == 1 and not date.within_a_year
        if ahead == "day" and self.taken == ["month"] and beyond and beyond[0].kind in ("year", "short"):
            return True  # June/12/1938
        if begins and not date.year:
            self.dashed = len(beyond) > 1 and beyond[0].kind == "slash" and self._may_be_year(beyond[1])
            if self.dashed:
                return True
        if date.within_a_year and not (self.numbers or self.ordinals or date.day):
            return year_ahead or self._short_year_ahead(following)  # Xmas/35
        if ahead == "day" and date.month and len(self.numbers) == 1 and not date.year:
            value, digits = _number(following)  # “Aug 24/14”: no list of days goes back
            return digits == 2 and (value > 31 or value < self.numbers[0][0]) and not beyond
        return ahead in ("month", "roman") and self._is_only_a_year(beyond)

    def _over_a_comma(self, following: Sense, beyond: list[Sense], *, year_ahead: bool) -> bool:
        """Whether the date goes on behind a comma: “summer of ’55, August”, “1953, the year of the Coronation”."""
        date, ahead = self.date, following.kind
        if ahead == "unit":
            begun = self.numbers or self.ordinals or date.within_a_year or date.year
            named = _NAMED_BY.get(following.value, ())  # type: ignore[call-overload]  # a unit's value is a word
            if date.year and following.value == "year" and beyond and beyond[0].kind == "feast":
                return bool(came_once(str(beyond[0].value)))  # “1953, the year of the Coronation”
            return bool(begun and beyond and beyond[0].kind in named) and not (
                date.year if named[0] == "year" else date.month
            )
        begins = bool(beyond) and beyond[0].kind in (_IN_A_DAY if ahead == "day" else _BEHIND_AN_ORDINAL)
        if ahead == "month" and date.part and self.units == ["month"] and not date.month:
            return True  # “end of the month, October 1944”
        if ahead == "day" and self.taken == ["month"]:
            behind = [sense.kind for sense in beyond if sense.kind != "comma"][:1]  # “August, 12” asks as “August 12”
            return behind in ([], ["year"]) or self._short_year(following)
        if ahead in ("day", "ordinal") and self.latest == "year" and not (date.within_a_year or begins):
            return False  # “1921, 22 and 25”
        if date.part and self._says_more(ahead):
            date.part = ""  # “early in ’41, January”
        if ahead == "month" and self.taken == ["ordinal"]:
            return True  # “the 5th, June, ’48”
        if ahead == "month" and date.season and not self.numbers:
            of_two = bool(date.years) and self._of_two_years(int(str(following.value)))
            date.year_of_month = of_two or (not date.year and bool(beyond) and beyond[0].kind in ("year", "short"))
            if date.year.isdigit() or date.year_of_month:
                date.of_season, date.season, date.part = date.season, 0, ""  # “summer of ’55, August”
                return True
        if ahead == "season" and date.month and not (date.season or date.of_season):
            date.year_of_month = bool(date.year)
            return date.year_of_month or bool(
                beyond and beyond[0].kind in ("year", "short", "years")
            )  # “August, summer 1938”
        return (
            ((year_ahead or (ahead == "years" and date.season > 0)) and not date.span)
            or (date.within_a_year and not date.year and self._is_decade_ahead(following, beyond))
        ) or (self._after_comma(following) and not (date.year and self._short_year_ahead(following)))

    def _over_a_dash(self, following: Sense, beyond: list[Sense], *, year_ahead: bool) -> bool:
        """Whether the date goes on behind a dash: `mid-June 1938`, `1938-June-12`, `30-Jun-24`."""
        date, ahead = self.date, following.kind
        if ahead == "no_year":
            return True
        if self.taken[-1:] == ["part"] and not (date.year or self.numbers):
            return ahead in SLOTS and ahead != "part"  # mid-June 1938, Christmas mid-1930s
        if date.year and not (date.within_a_year or self.numbers) and ahead in ("month", "season", "feast"):
            told = not beyond or beyond[0].kind in ("dash", "day", "or")  # 1938 - summer, 1938-June-12
            date.part = "" if told and self._says_more(ahead) else date.part  # “early 1952 – January”
            return told
        if ahead == "month":
            self.dashed = bool(self.numbers) and not date.year
            return not date.month and bool(self.numbers or date.year) and not date.day
        if ahead == "day":
            if date.month and date.year and self.latest == "month" and not (self.numbers or date.day):
                return True  # 1938-June-12
            if self.dashed and len(self.numbers) == 1 and _number(following)[1] == 2:
                return date.month > 0 and not date.year and not (beyond and beyond[0].kind in _GO_ON)  # 30-Jun-24
            in_three = bool(beyond) and beyond[0].kind == "dash" and not (self.numbers or date.day)  # June-12-1938
            self.dashed = in_three
            return date.month > 0 and not date.year and (in_three or self._short_year(following))
        return (year_ahead and bool(date.month or date.season)) or (
            ahead in ("century", "decades", "decade", "hundreds")
        )

    def _is_only_a_year(self, beyond: list[Sense]) -> bool:
        """Whether a year stands alone before a stroke, and no other behind what follows it: 1926/June, 1926/VI/12."""
        date = self.date
        alone = date.year and not (date.within_a_year or self.numbers or self.ordinals or self.romans or date.part)
        return bool(alone) and not (beyond and beyond[0].kind in ("year", "short", "dates", "years"))

    def _says_more(self, ahead: str) -> bool:
        """Whether a month or a day follows a year alone: it says more than a part of the year."""
        plain_year = len(self.date.year) in (2, 4) and "X" not in self.date.year
        return plain_year and ahead in _MONTH_OR_DAY and not (self.date.within_a_year or self.numbers)

    def _after_comma(self, following: Sense) -> bool:
        """`Sunday, 12 June`, `1938, June`, `June 12, 38`, `12 June, Sunday`, `12 June, year unknown`."""
        date, ahead = self.date, following.kind
        if ahead == "no_year" or (ahead == "weekday" and date.weekday < 0):
            return True
        if ahead == "day" and date.month and not date.year and self._short_year(following):
            return True
        if date.feast and not date.month and ahead in ("day", "ordinal", "month", "dates", "weekday"):
            return True  # Christmas Day, 25 December
        if ahead == "feast" and date.month and not date.feast:
            return True
        begun = self.numbers or date.month or date.season or date.feast or date.day
        date.month_behind = ahead == "month" and bool(date.year) and not begun
        if ahead == "part" and date.part:
            return False  # “end of 1929, beginning of 1930”
        return not begun and bool(date.weekday >= 0 or date.year) and ahead in _BEGIN_A_DAY

    @staticmethod
    def _is_decade_ahead(following: Sense, beyond: list[Sense]) -> bool:
        """`Easter, 1950s`, `Easter, early 1950s`."""
        if following.kind == "part" and beyond[:1]:
            following = beyond[-1] if beyond[0].kind == "dash" else beyond[0]
        return following.kind in ("decade", "decade_digits")

    def _may_be_year(self, sense: Sense) -> bool:
        """Whether a sense is a year, or a number that can be no day."""
        return sense.kind in ("year", "short") or (sense.kind == "day" and self._short_year(sense))

    def _short_year_ahead(self, following: Sense) -> bool:
        """`1936, 38 or 39`: a number that can be no day begins the next date."""
        return following.kind == "day" and self._short_year(following)

    @staticmethod
    def _short_year(sense: Sense) -> bool:
        """Whether a number can be no day of a month."""
        value, digits = _number(sense)
        return digits != 1 and value > 31

    def _day(self, value: tuple[int, int]) -> bool:
        if len(self.numbers) + bool(self.date.day) >= 2 or (self.numbers and self.date.year and self.date.day):
            return False
        if self.numbers and not (self.date.month or self.date.feast or self.romans or self.decades or self.century):
            return False
        self.numbers.append(value)
        self.latest = "day"
        return True

    def _ordinal(self, value: int) -> bool:
        if self.taken[-1:] == ["ordinal"] and 1 <= value <= LAST_MONTH and not (self.date.month or self.numbers):
            return self._month(value)  # the 1st of the 5th
        if (self.ordinals and not self.decades) or (self.numbers and not self.date.month) or self.date.day:
            return False
        self.ordinals.append(value)
        self.latest = "day"
        return True

    def _last(self, value: object) -> bool:
        return self._ordinal(-1)

    def _month(self, value: int) -> bool:
        if self.date.month or self.date.season:
            return False
        if self.taken == ["part", "year"]:
            self.date.part = ""  # “end of 1931 (December)”
        self.date.month, self.date.month_mark, self.latest = value, self.pending, "month"
        return True

    def _hebrew_month(self, value: int) -> bool:
        self.date.calendar = "hebrew"
        return self._month(value)

    def _before_christ(self, value: object) -> bool:
        self.date.calendar = "bce"
        return True

    def _year(self, value: str) -> bool:
        if self.date.year or self.date.years or self.date.no_year:
            return False
        if value.endswith("XX") and self.ordinals in ([1], [2]) and self.taken == ["ordinal"]:
            self.date.part = "early" if self.ordinals.pop() == 1 else "second_half"  # “il primo Novecento”
        self.date.year, self.date.year_mark, self.latest = value, self.pending, "year"
        return True

    def _season(self, value: int) -> bool:
        if self.date.season or self.date.feast or self.date.of_season or (self.date.month and self.sign != "comma"):
            return False
        if self.date.month:
            self.date.of_season = value
            return True
        self.date.season, self.latest = value, "month"
        return True

    def _season_part(self, value: tuple[str, int]) -> bool:
        """“Frühsommer”, “loppukesä”."""
        return self._part(value[0]) and self._season(value[1])

    def _feast(self, value: str) -> bool:
        if self.date.season and not self.date.year and len(years := came_once(value)) == 1:
            (self.date.year,) = years  # the summer of the General Strike
            return True
        several = bool(self.date.season and came_once(value))  # “the autumn war broke out”: which war is asked
        if self.date.feast or (self.date.season and (self.date.year or not several)):
            return False
        self.date.feast, self.latest = value, "season" if several else "day"
        return True

    def _feast_day(self, value: str | None) -> bool:
        """“Zweiter Pfingsttag”; of a word that names no feast, one must stand beside it (“nelipühade teine püha”)."""
        if value is not None and not self._feast(value):
            return False
        self.feast_day, self.latest = True, "day"
        return True

    def _weekday(self, value: int) -> bool:
        if self.date.weekday >= 0 or value >= SEVERAL:
            return False
        ahead = value >= DAYS_OF_A_WEEK or (not self.date.month and self.latest == "day")
        if self.ordinals and (ahead or counts_weekdays(self.senses, self.at, self.languages)):
            self.date.nth = self.ordinals.pop()
        self.date.weekday = value % DAYS_OF_A_WEEK
        return True

    def _hundreds(self, value: object) -> bool:
        if not self.numbers or not 15 <= self.numbers[-1][0] <= 20 or self.date.year:
            return False
        self.date.hundreds, self.date.year = True, f"{self.numbers.pop()[0]}XX"
        return True

    def _decades(self, value: object) -> bool:
        if self.decades:
            return False
        self.decades = True
        return True

    def _century(self, value: object) -> bool:
        if self.century:
            return False
        self.century = True
        return True

    def _roman(self, value: int) -> bool:
        following = self.senses[self.at + 1 : self.at + 2]
        if self.romans and not (following and following[0].kind == "fraction"):  # “XX saj. I pool”
            return False
        self.romans.append(value)
        return True

    def _part(self, value: str) -> bool:
        if self.date.part:
            return False
        self.date.part = value
        return True

    def _fraction(self, value: str) -> bool:
        """“2. Hälfte”, “II poł.”, “last quarter”: the part that the ordinal or the number before it says."""
        before, nth = self.taken[-1:], 0
        if before in (["ordinal"], ["last"]):
            nth = self.ordinals.pop()
        elif before == ["day"]:
            nth = self.numbers.pop()[0]
        elif before == ["roman"]:
            nth = self.romans.pop()
        parts = NTH_FRACTIONS[value]
        if nth not in (-1, *range(1, len(parts) + 1)):
            return False
        self.taken.append("part")
        self.date.counted_part = True
        return self._part(parts[nth - 1 if nth > 0 else -1])

    def _span(self, value: object) -> bool:
        if self.date.span or self.date.within_a_year or self.date.year:
            return False
        self.date.span = value  # type: ignore[assignment]
        return True

    def _years(self, value: tuple[int, ...]) -> bool:
        if self.date.year or self.date.years:
            return False
        self.date.years, self.date.assumed = (value[0], value[1]), len(value) > 2
        if self.date.of_season and self._of_two_years(self.date.month):
            self.date.year_of_month = True
        return True

    def _of_two_years(self, month: int) -> bool:
        """“January, the winter of 1938-39”: the month's year of two that follow each other; whether they do."""
        first, last = self.date.years or (0, 0)
        if last == first + 1:
            self.date.years, self.date.year = None, f"{last if month < _JULY else first:04d}"
        return last == first + 1

    def _dual(self, value: tuple[int, int]) -> bool:
        if self.date.year:
            return False
        self.date.year, self.date.calendar = str(value[0]), "dual"
        return True

    def _dates(self, value: Partial) -> bool:
        date = self.date
        if self.numbers or self.ordinals or date.year or date.month or date.day or date.season:
            return False
        self.date, self.latest = value.copy(), "year"
        for slot in ("weekday", "part", "nth", "feast"):
            setattr(self.date, slot, getattr(date, slot))
        return True

    def _event(self, value: str) -> bool:
        date = self.date
        if date.within_a_year and self.units[-1:] == ["year"] and (year := only_year(value)):
            self.units.pop()
            return self._year(year)  # “Bonfire Night, the year we were married”
        if date.event or date.year or date.month or date.day or date.feast or date.years or self.numbers:
            return False
        self.date.event = value
        return True

    def _unit(self, value: str) -> bool:
        value = value.removeprefix("one_")
        behind_its_year = self.sign != "comma" and self.taken[-1:] in (["year"], ["short"])
        if value == "year" and behind_its_year and not self.senses[self.at].languages & ~YEAR_NAMED_BEHIND:
            return True  # `1949. aasta küüditamine`: of that year, and no year of a feast
        ahead = self.senses[self.at + 1].kind if self.at + 1 < len(self.senses) else ""
        if value == "year" and ahead in ("before", "after") and self.date.within_a_year and not self.date.year:
            return False  # “Whitsun the year before the flood”
        if value[0].isdigit():
            return False  # “half a century, 1930”: so long is no date
        if not self._names_what_follows(value) or (value in _COUNTED and self.taken[-1:] == ["day"]):
            return False  # “3 days in May 1936” are no 3 May
        spanned = self.date.years or any(sense.kind == "years" for sense in self.senses[self.at + 1 : self.at + 2])
        if value == "years" and not (self.ordinals or self.numbers or spanned):
            return False  # “anni '30” are ten years, and no year 1930
        if (
            value in _PLURALS
            and self.ordinals in ([1], [-1])
            and not (self.numbers or self.date.month or self.date.part)
        ):
            self.date.part = "early" if self.ordinals.pop() == 1 else "late"
            self.taken.append("part")
            return True  # the first days of June, the last years of the century
        if value in ("week", "weekend") and self.ordinals and not (self.numbers or self.date.month):
            self.date.nth = self.ordinals.pop()
        self.units.append(value.removesuffix("s"))
        return True

    def _names_what_follows(self, unit: str) -> bool:
        """Whether a month or a year that is named is not that of something finer: “the month of 3 May 1938”, “the year
        of Christmas 1938”."""
        finer = _FINER.get(unit, ())
        told = self.date.year or self.date.years or self.taken[-1:] in (["day"], ["ordinal"])
        if not finer or self.at + 1 == len(self.senses) or told:
            return True
        following = self.senses[self.at + 1]
        if unit == "year" and following.kind == "feast" and came_once(str(following.value)):
            return True  # the year of the Coronation
        ahead = [sense.kind for sense in self.senses[self.at + 1 : self.at + 3]]
        if unit == "year" and ahead[0] in ("day", "ordinal"):
            return ahead[-1] != "month"
        return ahead[0] not in finer or (unit == "month" and self.date.month > 0)

    def _term(self, value: object) -> bool:
        self.term = True
        return True

    def _turn(self, value: object) -> bool:
        self.date.calendar = "turn"
        return True

    def _no_year(self, value: object) -> bool:
        self.date.no_year = True
        return not self.date.year


_JULY = 7

SLOTS: dict[str, Callable[[Assembly, Any], bool]] = {
    "day": Assembly._day, "ordinal": Assembly._ordinal, "last": Assembly._last, "month": Assembly._month,
    "hebrew_month": Assembly._hebrew_month, "year": Assembly._year, "short": Assembly._year, "season":
    Assembly._season, "feast": Assembly._feast, "weekday": Assembly._weekday, "decade": Assembly._decade,
    "decade_digits": Assembly._decade_digits, "decades": Assembly._decades, "century": Assembly._century, "roman":
    Assembly._roman, "hundreds": Assembly._hundreds, "part": Assembly._part, "span": Assembly._span, "years":
    Assembly._years, "dates": Assembly._dates, "dual": Assembly._dual, "event": Assembly._event, "unit":
    Assembly._unit, "feast_day": Assembly._feast_day, "season_part": Assembly._season_part, "term":
    Assembly._term, "turn": Assembly._turn, "no_year": Assembly._no_year, "before_christ": Assembly._before_christ,
    "fraction": Assembly._fraction,
}  # fmt: skip
"""The kinds of senses that are slots, and what puts each into its slot; a value is of the kind's type."""
