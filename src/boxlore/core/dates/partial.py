"""A date that is not whole yet: slots that words have filled, and slots that a neighbour or a question may fill.

Words fill slots in any order. Only when every slot that can be filled is filled does a partial date become EDTF
(`core.dates.writing`): so “June or July 1952” gives June its year, and doubt told of one part stays with that part.
"""

import itertools
from dataclasses import dataclass, fields
from operator import attrgetter

from boxlore.core.dates.holidays import came_once
from boxlore.core.dates.holidays_table import WEEKS

DOUBT, ABOUT = 1, 2
MARKS = ("", "?", "~", "%")
"""EDTF's qualifier for doubt (1) and approximation (2) together (3)."""


@dataclass(slots=True, eq=False)
class Partial:
    """Slots of a date.

    `year` is four digits or X, or two digits (the century is asked); `month` 1-12; `day`; `season` 21-24 as said,
    before the hemisphere is looked at; `grouping` a code of EDTF as written; `feast` a name; `weekday` 0-6 or -1,
    with `nth` the which-th of a month (-1: last); `part` early, mid or late; `unit` day, week, month or year of an
    event, or the week or weekend of a day; `part_of_decade` that its part is of the decade (“Christmas, mid-1930s”);
    `bare` a number whose slot is open, with its count of digits; the marks are 1 doubt, 2 approximation, 3
    both, for the whole or a part; `span` wars or reigns (`core.dates.wars_table`); `years` first and last year;
    `event` the EDTF of a date already told; `old_style` says that it is Julian, `calendar` that it is of another one;
    `order` how numerals were taken (dmy, mdy); `ask` a question of its own; `assumed` that the century of a decade
    was not said; `hundreds` that it ends in 00s; `no_year` that the teller said there is none; `year_from_right` that
    the year was told with the date after it, `year_from_left` with the one before it;
    `plain_year` the year that a word for years stands with: “in the years
    1930 to 1938” is no decade; `is_ordinal` that the day was told as an ordinal: “the first or second week of June”;
    `of_season` the season beside which its month was told (“summer of ’55, August”), and `year_of_month` that its year
    is told with that month (“winter, January 1947”);
    `day_behind` that its day of two digits was told behind its month, and no year, so that it may be one (“août 14”);
    `month_behind` that its month was told behind its year and a comma (“or 1939, August”);
    `season_alone` that it is all that is told: “winter 1946” may have begun the year before; `languages` of its words,
    as bits; `new_style` that it is told to be Gregorian; `instead` what else it may be: a day of two digits behind a
    whole date may be a year (“12 June 1926 or 27”); `counted_part` that its part is told by its number (“first third”).
    """

    year: str = ""
    month: int = 0
    day: int = 0
    season: int = 0
    grouping: int = 0
    feast: str = ""
    weekday: int = -1
    nth: int = 0
    part: str = ""
    part_of_decade: bool = False
    unit: str = ""
    bare: tuple[int, int] | None = None
    mark: int = 0
    year_mark: int = 0
    month_mark: int = 0
    day_mark: int = 0
    span: tuple[tuple[tuple[str, str, str], ...], ...] = ()
    years: tuple[int, int] | None = None
    event: str = ""
    old_style: bool = False
    calendar: str = ""
    order: str = ""
    ask: str = ""
    assumed: bool = False
    hundreds: bool = False
    no_year: bool = False
    year_from_right: bool = False
    year_from_left: bool = False
    plain_year: str = ""
    is_ordinal: bool = False
    season_alone: bool = False
    month_behind: bool = False
    day_behind: bool = False
    of_season: int = 0
    year_of_month: bool = False
    languages: int = -1
    new_style: bool = False
    instead: "Partial | None" = None
    counted_part: bool = False

    def copy(self) -> "Partial":
        """Another one with the same slots."""
        return Partial(*_every_slot(self))

    def become(self, other: "Partial") -> None:
        """Fill every slot as another one has it."""
        for field in fields(self):
            setattr(self, field.name, getattr(other, field.name))

    def ordered(self, order: str) -> "Partial":
        """The same, made by taking numerals in an order."""
        self.order = order
        return self

    @classmethod
    def of(cls, year: str, month: int = 0, day: int = 0) -> "Partial":
        """A day, a month or a year."""
        return cls(year, month, day)

    def shifted(self, years: int) -> "Partial":
        """The same in another year: its year is digits."""
        same = self.copy()
        same.year = f"{int(self.year) + years:0{len(self.year)}d}"
        return same

    @property
    def short(self) -> bool:
        """Whether the century of its year was not said."""
        return len(self.year) == 2 or self.assumed

    @property
    def is_hebrew_year(self) -> bool:
        """Whether its year is one of the Hebrew calendar: ours reach from 1239 to 2239."""
        return "5000" <= self.year <= "5999"

    @property
    def within_a_year(self) -> bool:
        """Whether a slot finer than the year is filled."""
        return bool(self.month or self.day or self.season or self.grouping or self.feast or self.weekday >= 0)

    @property
    def whole_year(self) -> bool:
        """Whether it is a year and no more."""
        return bool(self.year) and not (self.within_a_year or self.part or self.bare)

    @property
    def is_day_of_week(self) -> bool:
        """Whether it is a day of the week within a feast that is a week: “Tuesday in Holy Week”."""
        return self.weekday >= 0 and self.feast in WEEKS

    @property
    def is_part_of_year(self) -> bool:
        """Whether it is early, mid or late in a year or a month that is told."""
        return bool(self.part) and self.year.isdigit() and not (self.season or self.feast or self.day)

    @property
    def is_odd_decade(self) -> bool:
        """Whether a word for decades stands with a year that begins none: `1938-luku`."""
        return self.plain_year == self.year != "" and not self.year.endswith("0") and not self.within_a_year

    @property
    def is_settled(self) -> bool:
        """Whether no slot is open that no question can fill."""
        if self.bare is not None or (self.day and not self.month and self.calendar != "bce"):
            return False
        return not self.part or bool(self.year or self.month or self.season or self.feast or self.span)

    def take_month(self, neighbour: "Partial") -> None:
        """Fill the month from a neighbour, with its calendar (`14 or 15 Adar`)."""
        self.month = neighbour.month
        self.languages &= neighbour.languages
        if neighbour.calendar == "hebrew":
            self.calendar = "hebrew"

    def take_year(self, neighbour: "Partial") -> None:
        """Fill the year from a neighbour; a dual year stays one (`3 or 4 March 1648/49`), and what came only once has
        its own (`from the Armistice to spring 1919`)."""
        if self.feast and (years := came_once(self.feast)) and neighbour.year not in years:
            return
        self.year, self.assumed = neighbour.year, neighbour.assumed
        if neighbour.calendar == "dual":
            self.calendar = "dual"

    def take_finer(self, neighbour: "Partial") -> None:
        """Fill the slots below the year from a neighbour (`June 1938 or 1939`), of its calendar's years only."""
        if neighbour.calendar == "hebrew":
            if not self.is_hebrew_year:
                return  # “15 Nisan 5703 or 1944”
            self.calendar = "hebrew"
        for slot in ("month", "day", "season", "feast", "part", "weekday", "nth"):
            setattr(self, slot, getattr(neighbour, slot))
        self.languages &= neighbour.languages


_every_slot = attrgetter(*(field.name for field in fields(Partial)))


MOST_YEARS_BETWEEN, MOST_YEARS_BACK = 10, 3
"""So many years later, and earlier, a second year is told beside a first one, where it may be a day as well."""


def fill(parts: list[Partial], *, span: bool) -> bool:
    """Fill open slots of dates that stand together from their neighbours; False if a slot stays open that must not.

    From the right come the coarser slots (`June or July 1952`, `3 to 5 June`), then from the left the coarser ones
    (`1940 or 41`, `June 1938 or July`); between alternatives also the finer ones (`June 1938 or 1939`), never in a
    span.
    """
    if len(parts) == 1:
        return parts[0].is_settled
    whole_years = [part.year for part in parts if part.whole_year]
    if any(year.isdigit() for year in whole_years):
        for part in parts:
            part.year = part.plain_year or part.year
    if (
        len(whole_years) == len(parts)
        and all(len(year) == 4 for year in whole_years)
        and not any(part.assumed for part in parts)
    ):
        return True  # nothing is open: 1915 and 1918
    for left, right in zip(parts[-2::-1], parts[:0:-1], strict=True):
        _from_right(left, right)
        if right.years and right.feast and left.feast and not left.year:  # Christmas to New Year 1958-59
            left.years = left.years or right.years
        elif left.years and right.years:  # winter 1938/39 or 1939/40
            left.season = right.season = left.season or right.season
    for left, right in itertools.pairwise(parts):
        _from_left(right, left)
        if not span and right.whole_year and left.within_a_year and left.year:
            right.take_finer(left)
    return all(part.is_settled for part in parts)


def _from_right(part: Partial, right: Partial) -> None:
    only_a_part = bool(part.part) and not part.year and not part.within_a_year
    if part.bare is not None and not part.year and right.day:
        part.day, part.bare = part.bare[0], None
    elif (
        part.bare is not None
        and not part.within_a_year
        and part.bare[1] == 2
        and len(right.year) == 2
        and right.whole_year
    ):
        part.year, part.bare = f"{part.bare[0]:02d}", None
    if part.bare is not None and not part.within_a_year and (decade := _decade_beside(part.bare[0], right)):
        part.year, part.assumed, part.bare = decade, right.assumed, None
    if part.day and not part.month and not part.feast:
        if part.is_ordinal and right.nth:
            part.nth, part.day, part.weekday, part.unit = part.day, 0, right.weekday, right.unit
        elif part.unit:  # “the week of 3 or 10 May”
            right.unit = right.unit or part.unit
        part.take_month(right)
    if not part.year and not part.no_year and (part.within_a_year or part.part):
        part.take_year(right)
        part.year_from_right = bool(right.year)
    elif part.short and len(right.year) == 4 and not right.assumed:
        _take_century(part, right.year)
    if only_a_part:  # “Anfang bis Mitte Juni 1938”
        part.month, part.season = right.month, right.season


def _take_century(part: Partial, full: str) -> None:
    part.year, part.assumed = full[:2] + part.year[-2:], False


def _from_left(part: Partial, left: Partial) -> None:
    if part.bare is not None:
        _place_bare(part, *part.bare, left)
    if part.short and len(left.year) == 4 and not left.short:
        _take_century(part, left.year)
    if part.day and not part.month:
        part.take_month(left)
    if not part.year and not part.no_year and part.within_a_year:
        part.take_year(left)
        part.year_from_left = bool(part.year)
    if part.part and not part.year and not part.within_a_year:
        part.year, part.assumed, part.month, part.season = left.year, left.assumed, left.month, left.season


def _decade_beside(value: int, beside: "Partial") -> str:
    """“Lat 20. i 30.”: the decade of a number beside a decade; empty where it is none."""
    is_decade = beside.year[3:] == "X" and beside.year[2:3].isdigit() and not beside.within_a_year
    return f"{beside.year[:2]}{value // 10}X" if is_decade and value % 10 == 0 and 10 <= value <= 90 else ""


def _place_bare(part: Partial, value: int, digits: int, left: Partial) -> None:
    """`41` after 1940 is 1941, `9` after 1908 is 1909, `4` after 3 June is the 4th, `39` after June 1938 is 1939."""
    if left.day and 1 <= value <= 31:
        part.day, part.bare = value, None
        if digits == 2 and left.year.isdigit() and not left.year_from_right:
            later = value - int(left.year[-2:])
            if later and -MOST_YEARS_BACK <= later <= MOST_YEARS_BETWEEN:
                part.instead = left.shifted(later)
        return
    if not part.year and digits == 2 and left.year[2:] == f"{value // 10}X":  # “the 50s, probably 56”
        part.year, part.assumed, part.bare = left.year[:2] + f"{value:02d}", left.assumed, None
        return
    if not part.year and (decade := _decade_beside(value, left)):
        part.year, part.assumed, part.bare = decade, left.assumed, None
        return
    if part.year or not left.year.isdigit():
        return
    if digits < 2 and value < 10 and len(left.year) in (2, 4) and int(left.year[-1]) < value:
        part.year, part.assumed, part.bare = left.year[:-1] + str(value), left.assumed, None
    elif (digits == 2 or value > 9) and value != int(left.year[-2:]) and value + MOST_YEARS_BACK >= int(left.year[-2:]):
        part.year, part.bare = f"{left.year[:-2]}{value:02d}", None
