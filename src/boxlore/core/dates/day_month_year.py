"""What the numbers of a date are, once all its words are there: which is the day, which the year, a decade or a
century."""

from boxlore.core.dates.holidays import OF_SEVERAL_DAYS, came_once, reckoned_by
from boxlore.core.dates.holidays_table import DAYS_OF_FEASTS, OF_WEEKDAYS
from boxlore.core.dates.lexicon import FRACTIONS
from boxlore.core.dates.partial import Partial
from boxlore.core.dates.short_years import LAST_DAY
from boxlore.core.dates.weeks import OF_A_DAY

_SUNDAY = 6
_DECADES, _LAST_CENTURY = 10, 21


class Gathered:
    """A partial date with the numbers whose slots are not known yet (value and count of digits), ordinals, Roman
    numerals and units, the kinds of its words in their order, and whether words for a century, for decades, for a day
    of a feast or for a school year stand beside them, and “early” behind its date."""

    __slots__ = (
        "century", "date", "decades", "feast_day", "numbers", "ordinals", "part_behind", "romans", "taken", "term",
        "units",
    )  # fmt: skip

    def __init__(self) -> None:
        self.century = self.decades = self.feast_day = self.term = self.part_behind = False
        self.date = Partial()
        self.numbers: list[tuple[int, int]] = []
        self.ordinals: list[int] = []
        self.romans: list[int] = []
        self.units: list[str] = []
        self.taken: list[str] = []

    def settled(self) -> bool:
        """Put every number into its slot; False where the slots do not fit."""
        date = self.date
        if self.century and (self.decades or date.assumed):
            if not self._settle_decade_of_a_century():
                return False
        elif (self.century and not self._settle_century()) or (self.decades and not self._settle_decade()):
            return False
        if (self.feast_day or date.feast in DAYS_OF_FEASTS) and not self._settle_day_of_feast():
            return False
        if self.romans and not self._settle_roman():
            return False
        if (self.numbers or self.ordinals) and not self._settle_days():
            return False
        if date.calendar == "bce":
            return self._settle_before_christ()
        if date.calendar == "hebrew" and not (date.day and date.is_hebrew_year):
            return False
        if self.term:
            date.calendar = "school"
        if date.feast and date.day and date.month and not date.year and len(years := came_once(date.feast)) == 1:
            (date.year,) = years  # “D-Day, June 6th”
        if date.weekday >= 0 and not (date.month or date.day or date.feast or date.bare):
            return False
        return self._settle_units()

    def _settle_before_christ(self) -> bool:
        date = self.date
        if len(self.numbers) == 1:
            date.day, date.bare = self.numbers[0][0], None
        else:
            full = date.year.isdigit() and len(date.year) == 4
            date.day, date.year = (int(date.year), "") if full else (date.day, date.year)
        return date.day > 0 and not date.month

    def _settle_century(self) -> bool:
        values = [*self.romans, *self.ordinals, *(value for value, _ in self.numbers)]
        if not values and self.date.part and not (self.date.year or self.date.within_a_year or self.date.years):
            self.date.year, self.date.assumed = "19XX", True  # “principios de siglo”: which one is asked
            return True
        if len(values) != 1 or not 1 <= values[0] <= 21 or self.date.year or self.date.within_a_year:
            return False
        self.romans, self.ordinals, self.numbers = [], [], []
        self.date.year = f"{values[0] - 1:02d}XX"
        return True

    def _settle_decade_of_a_century(self) -> bool:
        """`the thirties of the 20th century`, `w latach 30. XX wieku`."""
        centuries = [*self.romans, *self.ordinals]
        if self.decades and self._settle_nth_decade(centuries):
            return True
        if len(centuries) != 1 or not 1 <= centuries[0] <= 21:
            return False
        self.romans, self.ordinals = [], []
        if self.decades and not self._settle_decade():
            return False
        self.date.year, self.date.assumed = f"{centuries[0] - 1:02d}{self.date.year[2:]}", False
        return len(self.date.year) == 4

    def _settle_nth_decade(self, centuries: list[int]) -> bool:
        """`the first decade of the 20th century`, `XX a. 4-asis dešimtmetis`."""
        told = [*(value for value, _ in self.numbers), *centuries]
        nths = [value for value in told if 1 <= value <= _DECADES]
        others = [value for value in told if _DECADES < value <= _LAST_CENTURY]
        if len(nths) != 1 or len(others) != 1 or len(told) != 2 or self.date.year:
            return False
        self.romans, self.ordinals, self.numbers = [], [], []
        self.date.year, self.date.assumed = f"{others[0] - 1}{nths[0] - 1}X", False
        return True

    def _settle_decade(self) -> bool:
        date = self.date
        if date.year.endswith("X"):
            return True  # “fünfziger Jahre” says it twice
        if date.years:
            return True  # “in the years 1936-38”
        if len(date.year) == 4 and date.year.isdigit():
            date.plain_year = date.year
            return self._restarted(date.year) if date.year.endswith("0") else True
        if date.year:
            value, date.year = int(date.year), ""
        else:
            value = self.numbers.pop()[0] if self.numbers else -1
        return value % 10 == 0 and 0 <= value <= 90 and self._decade(value)

    def _restarted(self, year: str) -> bool:
        self.date.year = ""
        return self._decade_digits(year)

    def _settle_day_of_feast(self) -> bool:
        """`the second day of Christmas`, `2. Pfingsttag`, `II jõulupüha`, `second Sunday of Advent`."""
        date = self.date
        days = DAYS_OF_FEASTS.get(date.feast, ())
        sunday = date.feast == "advent" and date.weekday == _SUNDAY and not date.month
        numbered = self.feast_day or sunday
        if sunday and date.nth:
            nth, date.nth = date.nth, 0
        elif self.ordinals and not date.month and (numbered or "day" in self.units or date.feast == "advent"):
            nth = self.ordinals.pop()
        elif numbered and (self.numbers or self.romans):
            nth = self.romans.pop() if self.romans else self.numbers.pop(0)[0]
        else:
            return bool(days)
        date.weekday = -1 if sunday else date.weekday
        if not 1 <= nth <= len(days):
            return False
        date.feast = days[nth - 1]
        return True

    def _settle_roman(self) -> bool:
        if self.date.month or self.date.season or self.date.feast or self.romans[0] > 12:
            return False
        self.date.month = self.romans[0]
        return True

    def _settle_days(self) -> bool:
        """`12 June 38`, `June 38`, `summer 62`: which number is the day and which the year."""
        date, numbers = self.date, self.numbers
        if self.ordinals:
            ordinal = self.ordinals[0]
            if ordinal == -1 and date.month and "day" in self.units and not (date.day or numbers or date.feast):
                date.nth = -1  # the last day of June
            elif (
                ordinal in (1, -1)
                and self.units == ["day"]
                and date.year.isdigit()
                and not (numbers or date.within_a_year)
            ):
                date.month, date.day = (1, 1) if ordinal == 1 else (12, 31)  # the first day of 1938
            elif date.day or not 1 <= ordinal <= 31 or (date.feast and not date.month) or date.season:
                return False
            else:
                date.day, date.is_ordinal = ordinal, True
        if not numbers:
            return True
        if date.month:
            days = [number for number in numbers if number[0] <= 31 and number[0] >= 1]
            if len(numbers) == 2:
                if date.year or not days or date.day:
                    return False
                first, second = numbers
                day, year = (first, second) if first in days else (second, first)
                date.day, date.year = day[0], f"{year[0]:02d}"
                return year[1] != 1
            in_parts = bool(date.part) and not date.year and numbers[0][1] == 2 and self.taken[-1:] == ["day"]
            if date.day or not days or in_parts:  # “early June 14” is of 1914
                return self._short_from(numbers[0])
            date.day = days[0][0]
            date.day_behind = not date.year and days[0][1] == 2 and self.taken in (["month", "day"], ["roman", "day"])
            return True
        if date.season or date.feast or date.part:
            if date.part and not (date.season or date.feast):
                value, digits = numbers[0]
                is_year = value > LAST_DAY and value % 10 and digits == 2 and not self.units  # “Ende 38”
                return self._short_from(numbers[0]) if is_year else self._bare(numbers)
            return len(numbers) == 1 and self._short_from(numbers[0])
        return self._bare(numbers)

    def _bare(self, numbers: list[tuple[int, int]]) -> bool:
        if self.date.year and 1 <= numbers[0][0] <= 31 and not self.date.day:
            self.date.day = numbers[0][0]
        else:
            self.date.bare = numbers[0]
        return True

    def _short_from(self, number: tuple[int, int]) -> bool:
        if self.date.year or number[1] == 1 or (number[0] < 10 and number[1] == 0):
            return False
        self.date.year = f"{number[0]:02d}"
        return True

    def _settle_units(self) -> bool:
        """`the month of June`, `the year 1938` say no more than the month and the year; a week of a day does."""
        for unit in self.units:
            of_event = self.date.event and unit in ("day", "week", "month", "year")
            of_month = unit in ("week", "weekend") and self.date.nth and self.date.month and not self.date.day
            if of_event or of_month or (unit in OF_A_DAY and (self.date.day or self.date.feast or self.date.bare)):
                self.date.unit = unit
            elif unit == "year" and self.date.feast and came_once(self.date.feast) and self._is_year_of_feast():
                self.date.unit = unit  # the year of the Coronation, “’53, Coronation year”
            elif unit == "fortnight" or unit in OF_A_DAY or not self._is_of(unit):
                return False
        date = self.date
        if date.part and date.within_a_year and date.year.endswith("X"):
            date.part_of_decade = self._is_part_of_decade()
        if not self._fits():
            return False
        whole = date.year or date.span or date.years or date.event or date.calendar or date.bare
        return bool(whole or date.part or date.within_a_year)

    def _is_year_of_feast(self) -> bool:
        """Whether “year” is told of a feast, and not before a year with its number."""
        if not self.date.year:
            return True
        at = self.taken.index("unit")
        return self.taken[at + 1 : at + 2] not in (["year"], ["short"])

    def _is_part_of_decade(self) -> bool:
        """Whether “early”, “mid” or “late” is told of the decade, and not of a month, a season or a feast: of what
        follows it, or what stands before it in some languages."""
        if "part" not in self.taken:
            return False  # “Spätherbst”: one word with its season
        at = self.taken.index("part")
        before, behind = self.taken[max(at - 1, 0) : at], self.taken[at + 1 : at + 2]
        beside = (before or behind) if self.part_behind else (behind or before)
        return beside[0] not in ("month", "season", "feast")

    def _is_of(self, unit: str) -> bool:
        """Whether a day, month or year that is named stands beside one that is told."""
        date = self.date
        if unit == "day":
            return bool(date.day or date.feast or date.nth or (date.part and date.part not in FRACTIONS))
        return bool(
            date.month if unit == "month" else date.year or date.years or date.bare or date.season or date.month
        )

    def _fits(self) -> bool:
        """Whether the slots that are filled go together: what would be passed over in writing is no date."""
        date = self.date
        more = date.part or date.nth or date.span or date.event or date.years or date.grouping
        if not (more or date.calendar):
            return True  # most: no more than a day, a month, a season or a feast, and a year
        parts = date.within_a_year or date.part or date.bare
        if date.feast and date.part not in ("", "early", "late") and not date.part_of_decade:
            return date.part == "mid" and bool(reckoned_by(date.feast) & OF_SEVERAL_DAYS)  # no mid-Christmas
        if date.part_of_decade and (date.year.endswith("XX") or date.part.endswith("quarter")):
            return False
        if date.nth and (date.day or (date.feast and date.feast not in OF_WEEKDAYS)):
            return False
        if date.span and date.part:
            return not (date.within_a_year or date.bare or date.year or date.years or date.event or date.calendar)
        if date.span or date.calendar == "turn":
            return not (parts or date.year or date.years or date.event or (date.span and date.calendar))
        if date.event:
            return not (
                date.month or date.day or date.feast or date.weekday >= 0 or date.year or date.part or date.bare
            )
        if date.years:
            named = date.season > 0 or (bool(date.feast) and not (date.month or date.part or date.bare))
            in_month = date.month > 0 and not (date.part or date.bare or date.nth or date.feast)
            return named or in_month or not parts
        if date.grouping:
            return not (date.month or date.day or date.feast or date.season or date.part or date.bare)
        if date.calendar in ("dual", "hebrew"):
            finer = date.season or date.feast or date.part or date.bare or date.weekday >= 0
            return date.year.isdigit() and not finer
        return date.calendar != "school" or not (date.within_a_year or date.bare)

    def _decade(self, value: int) -> bool:
        if self.date.year or self.date.years:
            return False
        century = self.numbers.pop()[0] if self.numbers and 15 <= self.numbers[-1][0] <= 20 else 0
        if century and self.century:
            century, self.century = century - 1, False  # “20. gadsimta 30. gadi”
        self.date.year, self.date.assumed = f"{century or 19}{value // 10}X", not century
        return True

    def _decade_digits(self, value: str) -> bool:
        if len(value) == 2:
            return self._decade(int(value))
        if self.date.year or self.date.years:
            return False
        self.date.hundreds = value.endswith("00")
        self.date.year = value[:2] + ("XX" if self.date.hundreds else f"{value[2]}X")
        return True
