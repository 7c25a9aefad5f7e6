"""What was worked out of a day, as a date that may be proposed: EDTF and words, with its reasons."""

from dataclasses import dataclass

from boxlore.core.dates.against_a_life import possible
from boxlore.core.dates.conflicts import is_narrower
from boxlore.core.dates.edtf import parsed
from boxlore.core.dates.edtf_values import month_length
from boxlore.core.dates.reading import DateReading
from boxlore.core.evidence.claims import Claim
from boxlore.core.evidence.even_years import YEAR, first_day, last_day, number_of
from boxlore.core.evidence.told_dates import LAST_YEAR
from boxlore.core.evidence.working_out import Circle, WorkedOut


@dataclass(frozen=True, slots=True)
class Proposal:
    """The earliest and the latest day that a date can be, None for no bound, why, and what cannot all be so."""

    first: int | None
    last: int | None
    because: tuple[Claim, ...]
    circles: tuple[Circle, ...]

    @property
    def edtf(self) -> str:
        """`[1921..1926]`, as EDTF says of one day among many; '' where nothing bounds it."""
        return edtf_between(self.first, self.last)

    @property
    def display(self) -> str:
        """`between 1921 and 1926`, as DACS 2.4 has it; supplied by whoever describes, it leaves in square brackets."""
        return DateReading.from_edtf(self.edtf).display if self.edtf else ""

    @property
    def years(self) -> float | None:
        """How many years it leaves open, None for no end."""
        return _years(self.first, self.last)

    def is_told(self, edtf: str) -> bool:
        """Whether a date is told (EDTF, '' for none) and this says no more than it, or both say no more than a year."""
        if not edtf or self.years is None or self.edtf == edtf:
            return bool(edtf)
        told, worked = parsed(edtf), parsed(self.edtf)
        if self.years < UP_TO_A_YEAR:
            told_years = _years(*[number_of(*day) if day else None for day in possible(told)])
            return told_years is not None and told_years < UP_TO_A_YEAR
        # the told date may be what is wrong where not all can be so
        return not self.circles and (possible(told) == possible(worked) or is_narrower(told, worked))


UP_TO_A_YEAR = 1.1
"""Years that count as one: a winter, or a year of another calendar, ends in the next."""


def _years(first: int | None, last: int | None) -> float | None:
    return None if first is None or last is None else (last - first + 1) / YEAR


FIRST_DAY, LAST_DAY = number_of(1, 1, 1), number_of(LAST_YEAR, 12, 31)
"""The days that a date can be; a life beside the year 50 or 9950, which is a slip, may come to others, and what may be
in a year to come, as the longest life of somebody, has no end yet."""


def proposal(worked: WorkedOut, day: str) -> Proposal:
    first, last = worked.bounds(day)
    first = first if first is not None and first >= FIRST_DAY else None
    last = last if last is not None and last <= LAST_DAY else None
    return Proposal(first, last, worked.because(day), worked.circles_of(day))


def edtf_between(first: int | None, last: int | None) -> str:
    """Every day from the first to the last: in whole years where they lie in several, else to the day."""
    if first is None and last is None:
        return ""
    begins = first_day(first) if first is not None else None
    ends = last_day(last) if last is not None else None
    if begins is not None and begins == ends:
        return str(begins)
    if begins is None or ends is None:
        return f"[{f'{begins.year:04d}' if begins else ''}..{f'{ends.year:04d}' if ends else ''}]"
    if begins.year != ends.year:
        return f"[{begins.year:04d}..{ends.year:04d}]"
    if (begins.month, begins.day, ends.month, ends.day) == (1, 1, 12, 31):
        return f"{begins.year:04d}"
    if begins.month == ends.month and (begins.day, ends.day) == (1, month_length(ends.year, ends.month)):
        return f"{begins.year:04d}-{begins.month:02d}"
    return f"[{begins}..{ends}]"
