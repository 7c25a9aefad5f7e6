"""Forms of one date: a day, a month, a year, a decade, a season, a century, a feast, a day of another calendar."""

import re
from dataclasses import replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.calendars import HEBREW_MONTHS, from_hebrew, from_julian, to_number
from boxlore.core.dates.context import DateContext, MaybeProposed, Proposed, ReadPart
from boxlore.core.dates.edtf_values import Day, month_length
from boxlore.core.dates.holidays import holiday as day_of_holiday
from boxlore.core.dates.words import SEASON_OF, WEEKDAY_OF, month_of
from boxlore.core.dates.words_table import DECADES
from boxlore.core.errors import TextFault


def full_year(text: str) -> tuple[str, MaybeProposed]:
    """A year as four digits; one of two digits is of the 1900s, and asks."""
    if text.startswith("'"):
        year = f"19{text[1:]}"
        return year, Proposed(year, f"Is {year} meant?", (f"18{text[1:]}", f"20{text[1:]}"))
    return text, None


def dated(year: str, rest: str) -> Proposed:
    """Year and the rest of a date, with the question that a two-digit year raises."""
    full, asks = full_year(year)
    if asks is None:
        return Proposed(full + rest)
    return Proposed(full + rest, asks.ask, tuple(other + rest for other in asks.alternatives))


def iso(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    text = match[0].upper()
    span = re.fullmatch(r"(\d\d)(\d\d)-(\d\d)", text)
    if span and int(span[3]) > 12 and 0 < int(span[3]) - int(span[2]) <= 12:
        return None
    try:
        return Proposed(standard.parse(text).text)
    except TextFault:
        return None


def year_alone(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return dated(match["year"], "")


def day_month_year(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    month, day = month_of(match["month"]), int(match["day"])
    return real(match["year"], month, day)


def real(year: str, month: int, day: int) -> Proposed:
    made = dated(year, f"-{month:02d}-{day:02d}")
    length = month_length(int(full_year(year)[0]), month) if 1 <= month <= 12 else 0
    if 1 <= day <= length:
        return made
    return Proposed("", f"There is no day {day} in that month. Which is meant?")


def month_year(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return dated(match["year"], f"-{month_of(match['month']):02d}")


def day_month(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    month, day = month_of(match["month"]), int(match["day"])
    if not 1 <= day <= month_length(2000, month):
        return Proposed("", f"There is no day {day} in that month. Which is meant?")
    return Proposed(f"XXXX-{month:02d}-{day:02d}", "In which year?")


def month_alone(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return Proposed(f"XXXX-{month_of(match['month']):02d}", "In which year?")


def weekday(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    if inner is None or not re.fullmatch(r"\d{4}-\d\d-\d\d", inner.edtf):
        return None
    day = single(inner.edtf)
    told, real = WEEKDAY_OF[match["weekday"]], (number(day) - 1) % 7
    if told == real or inner.ask:
        return inner
    names = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
    return replace(inner, ask=f"{inner.edtf} was a {names[real]}, not a {names[told]}. Which is right?")


def single(text: str) -> Day:
    earliest = standard.parse(text).earliest
    assert earliest is not None  # one date is bounded
    return earliest


def number(day: Day) -> int:
    return to_number(*day)


def numbers(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """7/4/52: by the collection's day order; without one, both readings and a question."""
    first, second, year = int(match["one"]), int(match["two"]), match["year"]
    year = f"'{year}" if len(year) == 2 else year
    dmy, mdy = real(year, second, first), real(year, first, second)
    if context.order == "dmy" or (first > 12 and dmy.edtf):
        return dmy
    if context.order == "mdy" or (second > 12 and mdy.edtf):
        return mdy
    if not (dmy.edtf and mdy.edtf):
        return dmy if dmy.edtf else mdy
    if dmy.edtf == mdy.edtf:
        return dmy
    return Proposed(f"[{','.join(sorted((dmy.edtf, mdy.edtf)))}]", "Day or month first?", (dmy.edtf, mdy.edtf))


def decade(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    digits = match["decade"].replace("'", "")
    if len(digits) == 4:
        return Proposed(f"{digits[:3]}X")
    return Proposed(f"19{digits[0]}X", f"The 19{digits[0]}0s?", (f"18{digits[0]}X",))


def decade_word(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    tens = DECADES[match["word"]] // 10
    century = match["century"]
    if century and (found := re.fullmatch(r"(nineteen|eighteen|seventeen|18|19|17)", century)):
        first = {"nineteen": "19", "eighteen": "18", "seventeen": "17"}.get(found[0], found[0])
        return Proposed(f"{first}{tens}X")
    return Proposed(f"19{tens}X", f"The 19{tens}0s?", (f"18{tens}X",))


_PARTS = {"early": (0, 3), "mid": (4, 6), "middle": (4, 6), "late": (7, 9), "beginning": (0, 3), "end": (7, 9)}


def part_of_decade(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    if inner is None or not re.fullmatch(r"\d{3}X", inner.edtf):
        return None
    first, last = _PARTS[match["part"]]
    return replace(inner, edtf=spread(inner.edtf, first, last), alternatives=())


def spread(decade: str, first: int, last: int) -> str:
    return f"{decade[:3]}{first}~/{decade[:3]}{last}~"


def season(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    code = SEASON_OF[match["season"]]
    full, asks = full_year(match["year"])
    if context.hemisphere == "south":
        code += 8
    return Proposed(f"{full}-{code}", asks.ask if asks else None)


def southern(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return read(match["rest"], replace(context, hemisphere=match["side"]))


def century(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    number = int(match["century"]) - 1
    part = match["part"]
    if not part:
        return Proposed(f"{number:02d}XX")
    low, high = {"early": (0, 33), "mid": (34, 66), "late": (67, 99)}[part[:5].rstrip("-").replace("middl", "mid")]
    return Proposed(f"{number:02d}{low:02d}~/{number:02d}{high:02d}~")


def turn(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return Proposed("1895~/1905~", "The turn to 1900?", ("1795~/1805~", "1995~/2005~"))


def julian(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    inner = read(match["rest"], context)
    if inner is None or not inner.edtf:
        return None
    if not re.fullmatch(r"\d{4}-\d\d-\d\d", inner.edtf):
        return replace(inner, note="old style; only a full day can be reckoned over", ask="On which day, old style?")
    year, month, day = (int(part) for part in inner.edtf.split("-"))
    return Proposed(str(from_julian(year, month, day)), None, (inner.edtf,), "reckoned over from the Julian calendar")


def julian_29(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """29 February of a century year is a day in the Julian calendar only."""
    rest = re.fullmatch(r"(29) (\w+\.?) (\d\d00)", match["rest"])
    if rest is None or month_of(rest[2]) != 2:
        return None
    return Proposed(str(from_julian(int(rest[3]), 2, 29)))


def hebrew(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    try:
        made = from_hebrew(int(match["year"]), HEBREW_MONTHS[match["hebrew"]], int(match["day"]))
    except ValueError:
        return Proposed("", "The Hebrew calendar has no such day. Which is meant?")
    return Proposed(str(made), None, (), "reckoned over from the Hebrew calendar")


def school_year(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    first, last = match["first"], match["last"] or str(int(match["first"]) + 1)
    if context.hemisphere == "south":
        return Proposed(f"{first}-02/{first}-12")
    return Proposed(f"{first}-09/{first[:2] + last if len(last) == 2 else last}-06")


def catalogue(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    """197- is a decade, 19-- a century (cataloguers' brackets)."""
    return Proposed(match[0].replace("-", "X"))


def bce(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return Proposed(f"-{int(match['years']) - 1:04d}" if int(match["years"]) > 1 else "0000")


def not_read(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    return Proposed("", "A French Republican date: kept as told, not read.")


def holiday(match: re.Match[str], context: DateContext, read: ReadPart) -> MaybeProposed:
    found = day_of_holiday(match["name"], match["year"], context.countries)
    return Proposed(found.edtf, found.ask, found.alternatives) if found else None
