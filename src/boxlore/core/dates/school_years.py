"""The months of a school year, by country (`core.dates.school_table`); in the south within one year."""

from boxlore.core.dates.context import DateContext, NoSuchDate
from boxlore.core.dates.school_table import ANYWHERE, IN_THE_SOUTH, SCHOOL_YEARS

Months = tuple[int, int]
_AUTUMN = 8
"""From this month on a school year begins in autumn."""


def school_year(part: str, years: tuple[int, int], both_told: bool, context: DateContext) -> str:
    """The EDTF of a school year that began in the first of two years, or of a part of it. Raises NoSuchDate where the
    end of one is meant and only one year was told, and where schools of a country had two kinds of years."""
    first, last = years
    if context.hemisphere == "south":
        return _part_of(part, first, first, IN_THE_SOUTH)
    kept = _kept(first, context.countries)
    if part == "late" and not both_told:  # which of the two that it touches?
        ends = tuple(_part_of(part, of - 1, of, months) for of in years for months in kept)
        raise NoSuchDate("When did that school year end?", ends)
    of_each = tuple(_part_of(part, first, last, months) for months in kept)
    if len(of_each) > 1:
        raise NoSuchDate("Did that school year begin at Easter, or in autumn?", of_each)
    return of_each[0]


def _kept(first: int, countries: tuple[str, ...]) -> list[Months]:
    """The first and the last month of a school year that began in a year, where the countries had it: those that began
    after Easter; and all that began in autumn as one, from the first of them to the end of the last."""
    months: list[Months] = []
    for country in countries or ("",):
        rows = [row[3:] for row in SCHOOL_YEARS if country[:2] in row[0].split() and row[1] <= first <= row[2]]
        months += rows or [ANYWHERE]
    in_autumn = [(begin, end) for begin, end in months if begin >= _AUTUMN]
    whole = (min(begin for begin, _ in in_autumn), max(end for _, end in in_autumn))
    return [*(each for each in months if each not in in_autumn), whole]


def _part_of(part: str, first: int, last: int, months: Months) -> str:
    begin, end = (first, months[0]), (last, months[1])
    if part == "early":
        end = (first, months[0] + 1)
    if part == "late":
        begin = (last, months[1] - 1)
    return f"{begin[0]}-{begin[1]:02d}/{end[0]}-{end[1]:02d}"
