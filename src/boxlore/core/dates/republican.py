"""Days of the French Republican calendar, as registers of 1793 to 1805 and tree files have them: `3 floréal an XII`.

A year begins on the autumn equinox of Paris, has twelve months of thirty days, and five or six days behind them. Its
years I to XIV were in use; on which day each began: from memory, checked in the tests against an independent library.
Codes are those of FamilySearch GEDCOM 7.0.18, appendix “French Republican calendar”.
"""

import re

from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.lexicon import ROMAN, plain

_BEGAN = (22, 22, 22, 23, 22, 22, 22, 23, 23, 23, 23, 24, 23, 23)
"""The day of September on which each year from I (1792) on began."""

_LEAP = (3, 7, 11)
_MONTHS = (
    "vendemiaire vend", "brumaire brum", "frimaire frim", "nivose nivo", "pluviose pluv", "ventose vent",
    "germinal germ", "floreal flor", "prairial prai", "messidor mess", "thermidor ther", "fructidor fruc", "comp",
)  # fmt: skip
_NUMBERS = {name: number for number, names in enumerate(_MONTHS, 1) for name in names.split()}
_DAY = re.compile(
    r"(?:@#dfrench r@ |d?french[_ ]r |le )?(?P<day>\d{1,2})(?:er|e)? (?P<month>[^\W\d_]+)\.?,? "
    r"(?:(?:de )?l['’]an |an |year )?(?P<year>\d{1,2}|[ivx]+)\.?",
    re.IGNORECASE,
)


def republican_day(words: str) -> str:
    """The Gregorian day as EDTF; empty for other words, and for a day that there was not."""
    match = _DAY.fullmatch(words)
    month = _NUMBERS.get(plain(match["month"].lower()), 0) if match else 0
    if match is None or not month:
        return ""
    told = match["year"].lower()
    year, day = int(told) if told.isdigit() else ROMAN.get(told, 0), int(match["day"])
    if not 1 <= year <= len(_BEGAN) or not 1 <= day <= (30 if month < 13 else 6 if year in _LEAP else 5):
        return ""
    return str(from_number(to_number(1791 + year, 9, _BEGAN[year - 1]) + 30 * (month - 1) + day - 1))
