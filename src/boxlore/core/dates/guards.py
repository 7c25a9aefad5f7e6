"""What is asked of a date whatever its words: whether it is meant at all, where it is to come or before photographs."""

from dataclasses import replace

from boxlore.core.dates.asked_words import which_is_meant
from boxlore.core.dates.context import DateContext, Outcome
from boxlore.core.dates.edtf_values import Edtf, edge


def is_meant(edtf: Edtf, context: DateContext) -> str:
    """The question whether a reading of words that are not quite those told is what is meant."""
    return which_is_meant((edtf.text,), context)


def guarded(outcome: Outcome, context: DateContext) -> Outcome:
    """A year to come is asked about, and one before there were photographs."""
    edtf = outcome.edtf
    if outcome.ask or edtf is None:
        return outcome
    year = edtf.text[:4]
    if edtf.kind == "date" and year.isdigit() and context.first_year <= int(year) < context.this_year:
        return outcome  # most dates
    if to_come(edtf, context):
        what = "year" if to_come(edtf, replace(context, today="")) else "day"
        return replace(outcome, ask=f"“{context.text}”: that is a {what} to come. Is it meant?")
    if is_before(edtf, context.first_year):
        return replace(outcome, ask=f"“{context.text}”: that is before there were photographs. Is it meant?")
    return outcome


def _year_that_begins(edtf: Edtf) -> int:
    """The year in which a date begins that is told by digits, or is a decade or a century; -1 for another one."""
    year = edtf.text[:4]
    if len(edtf.text) <= _YEAR_AND_MARK:
        year = year.replace("X", "0")
    return int(year) if year.isdigit() else -1


_YEAR_AND_MARK = 5


def is_before(edtf: Edtf, first_year: int) -> bool:
    """Whether one of the dates ends before a year."""
    for _, last in edtf.parts:
        if last is None or (last.year.isdigit() and int(last.year) >= first_year):
            continue
        if edge(last, last=True).year < first_year:
            return True
    return False


def to_come(edtf: Edtf, context: DateContext) -> bool:
    """Whether a date begins after the day, or the year, in which it is told."""
    this_year = context.this_year
    if edtf.kind == "date" and (year := _year_that_begins(edtf)) >= 0 and (year != this_year or not context.today):
        return year > this_year
    for pair in edtf.parts:
        for date in pair:
            if (
                date is not None
                and (not date.year.isdigit() or int(date.year) >= this_year)
                and (begins := edge(date, last=False)).year >= this_year
                and (begins.year > this_year or (context.today and str(begins) > context.today))
            ):
                return True
    return False
