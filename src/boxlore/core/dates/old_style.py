"""Days told in the languages of the Russian empire before it changed its calendar: old style or new is asked.

There the Julian calendar was the civil one until 31 January 1918, after which came 14 February (decree of the Council
of People's Commissars of 24 January 1918; in the Baltic provinces in the same month; from memory), and the feasts of
the Lutherans there went by it too (common practice, no source). Whoever reads a day off a print of 1910 tells it in the
old style, whoever tells it from later papers in the new: so both are offered. A day of the week told with it may
decide. The days from 1 to 13 February 1918 never were: such a day is of the old style, or a slip.
"""

from datetime import date as calendar_date

from boxlore.core.dates.asked_words import listed
from boxlore.core.dates.calendars import easter, from_julian, julian_month_length, orthodox_easter, to_number
from boxlore.core.dates.context import DateContext
from boxlore.core.dates.edtf_values import month_length
from boxlore.core.dates.holidays import LAST_OLD_STYLE, holiday, reckoned_by
from boxlore.core.dates.lexicon import OLD_STYLE_LANGUAGES
from boxlore.core.dates.partial import Partial

_FIRST = 1700
"""The first year that Russia counted from the birth of Christ (decree of December 1699; from memory)."""
_LAST, _NO_DAY = (1918, 2, 13), (1918, 2, 1)
"""The last day that may have been told in the old style by habit, and the first that was no day of the new one."""
_IN_THE_EMPIRE = frozenset(("BY", "EE", "LT", "LV", "RU", "UA"))
"""A family's first country in which a day in numbers alone, `25.3.1910`, is of the old style as likely."""


def old_styles(date: Partial, context: DateContext) -> tuple[str, ...]:
    """The days that are meant in one style and in the other, as EDTF, the likelier first; one where only the old
    style has such a day, none where only the new one may be meant."""
    languages = date.languages
    if not (date.month or date.feast) or (languages >= 0 and (languages & ~OLD_STYLE_LANGUAGES or not languages)):
        return ()  # most
    if languages < 0 and not _IN_THE_EMPIRE.intersection(context.countries[:1]):
        return ()  # numbers alone are of every language: the family's own country tells
    if not context.first_year:
        return ()  # a birth or a death: thirteen days are little in a life, and ages are reckoned from it
    if (
        date.old_style
        or date.new_style
        or date.short
        or not date.year.isdigit()
        or not _FIRST <= int(date.year) <= _LAST[0]
    ):
        return ()
    if date.calendar or date.part or date.nth or date.unit or date.year_mark or date.month_mark or date.day_mark:
        return ()
    if date.feast:
        return () if date.month or date.day or date.weekday >= 0 else _of_feast(date.feast, int(date.year), context)
    return _of_day(date, int(date.year)) if date.day else ()


def style_question(date: Partial, styles: tuple[str, ...], context: DateContext) -> str:
    """The question which of them is meant."""
    if date.feast == "orthodox easter":
        return f"“{context.text}”: is {listed(styles, context)} meant? One is the Orthodox Easter."
    return f"“{context.text}”: is {listed(styles, context)} meant? Days were told there in the old style until 1918."


def _of_day(date: Partial, year: int) -> tuple[str, ...]:
    day = (year, date.month, date.day)
    if day > _LAST or date.day > julian_month_length(*day[:2]):
        return ()
    told, moved = f"{year:04d}-{date.month:02d}-{date.day:02d}", from_julian(*day)
    if date.day > month_length(*day[:2]):
        return (str(moved),)  # 29 February 1900, of the old calendar only
    if date.weekday < 0:
        return (told, str(moved)) if day < _NO_DAY else (str(moved), told)
    if (to_number(*moved) - 1) % 7 != date.weekday or (to_number(*day) - 1) % 7 == date.weekday:
        return ()
    return (str(moved), told)


def _of_feast(name: str, year: int, context: DateContext) -> tuple[str, ...]:
    """The feast by both calendars; the Orthodox Easter beside the western one."""
    kept = holiday(name, f"{year:04d}", context.countries, context.hemisphere)
    if kept.ask or year > LAST_OLD_STYLE:
        return ()
    if name == "orthodox easter":  # whose name is that of every church's Easter
        western = str(easter(year))
        return (kept.edtf, western) if western != kept.edtf else ()
    if reckoned_by(name) == {"fixed"}:
        return (kept.edtf, str(from_julian(year, int(kept.edtf[5:7]), int(kept.edtf[8:]))))
    if reckoned_by(name) <= {"easter", "easter span"}:
        later = orthodox_easter(year) - easter(year)
        moved = "/".join(str(calendar_date.fromisoformat(day) + later) for day in kept.edtf.split("/"))
        return (kept.edtf, moved) if later else ()
    return ()
