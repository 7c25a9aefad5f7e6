"""A partial date whose slots are filled → EDTF, and the question that it raises.

Conventions are ours unless a source is named: seasons are northern codes (21-24), in the
south 29-32; two-digit years are of the 1900s, and ask.
"""

import re
from collections.abc import Iterator
from functools import lru_cache

from boxlore.core.dates.asked_words import asked
from boxlore.core.dates.calendars import from_hebrew, from_julian, from_number, julian_month_length, to_number
from boxlore.core.dates.context import DateContext, NoSuchDate, qualified
from boxlore.core.dates.edtf_values import SEASONS, month_length
from boxlore.core.dates.holidays import OF_JULIAN, HolidayDate, came_once, holiday, is_within, julian_day, titled, which
from boxlore.core.dates.old_style import old_styles, style_question
from boxlore.core.dates.partial import MARKS, Partial
from boxlore.core.dates.parts_within import (
    DECADE_PARTS,
    is_early_in_century,
    nth_week,
    nth_weekend,
    part_of,
    part_of_month,
    part_of_season,
    part_of_stretch,
)
from boxlore.core.dates.relative import of_event
from boxlore.core.dates.school_years import school_year
from boxlore.core.dates.wars_table import CALLED, NO_WARS, OF_LANDS, PLACE_BY_PLACE, UNNAMED, WARS_AT_HOME, Theatres
from boxlore.core.dates.weeks import OF_A_DAY, days_that_fit, nth_weekday, stretch_of, weekdays_within

CENTURIES = ("19", "18", "20")
DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
SEASON_NAMES = {21: "spring", 22: "summer", 23: "autumn", 24: "winter"}
_EASTER = ("easter", "easter sunday", "easter day", "orthodox easter")
_MONTHS_TOLD = re.compile(r"(?<=[\dX]{4}-)\d\d")
_FULL_DAY = re.compile(r"(\d{4})-(\d\d)-(\d\d)")


def written(date: Partial, context: DateContext, pick: int = 0) -> str:
    """The EDTF of a date; `pick` is the how-manieth of what it may mean. Raises NoSuchDate."""
    if date.instead is not None:
        as_day, as_year = date.copy(), date.instead.copy()
        as_day.instead, as_year.mark = None, date.mark
        raise NoSuchDate(f"Is {date.day} the day, or the year?", _day_or_year(as_day, as_year, context, pick))
    if pick and date.day_behind and not date.year:
        return f"{CENTURIES[0]}{date.day:02d}-{date.month:02d}"
    styles = old_styles(date, context)
    text = styles[pick] if pick < len(styles) else _unmarked(date, context, pick)
    if pick and not styles and (days := _other_days(date, context)):
        text = days[pick - 1] if pick <= len(days) else text
    part_marks = date.year_mark | date.month_mark | date.day_mark
    if part_marks and not (date.month and not date.calendar):
        if date.year_mark:
            text = re.sub(r"\b\d{4}(?=-)", rf"\g<0>{MARKS[date.year_mark]}", text)
        else:
            text = qualified(text, MARKS[part_marks])
    if date.old_style:
        text = _from_julian(date, text)
    if date.unit and date.unit in OF_A_DAY and not (date.event or date.nth or date.part_of_decade):
        text = qualified(stretch_of(text, date.unit, feast=bool(date.feast)), MARKS[part_marks])
    return qualified(text, MARKS[date.mark]) if date.mark else text


def _day_or_year(as_day: Partial, as_year: Partial, context: DateContext, pick: int) -> tuple[str, ...]:
    """What a corrected date is, by the number as its day and as its year; a day that the month has not comes behind,
    as the days about it: “1 April 1930, no, 31”."""
    of_year = written(as_year, context, pick)
    try:
        return (written(as_day, context, pick), of_year)
    except NoSuchDate as none:
        return (of_year, *none.choices)


def _unmarked(date: Partial, context: DateContext, pick: int) -> str:
    if date.event:
        return of_event(date.event, date.unit, date.season, context) if date.unit or date.season else date.event
    if date.calendar:
        return _of_calendar(date, context, pick)
    if date.span:
        return _span(date, context, pick)
    year = year_of(date, pick)
    if date.part_of_decade:
        return _in_part_of_decade(date, year, context)
    if date.years:
        return _of_years(date, context, pick)
    if date.feast and date.season:
        code = context.season_code(date.season)
        seasons = tuple(f"{of}-{code}" for of in sorted(came_once(date.feast)) if year in ("", of))
        if len(seasons) == 1:
            return seasons[0]
        raise NoSuchDate(which(date.feast), seasons)
    if date.feast and not date.day:
        days = _feast(date, context, year, pick).edtf
        if date.part and not date.part_of_decade:
            days = part_of_stretch(date.part, days)
        return nth_weekday(days, date.weekday, date.nth or 1) if date.nth or date.is_day_of_week else days
    if date.part and year and not date.within_a_year:
        return part_of(date, year, pick)
    if date.season:
        if not year:
            raise NoSuchDate(f"In which year was that {SEASON_NAMES[date.season]}?")
        if pick == (3 if date.short else 1) and _may_begin_before(date, context):
            year = f"{int(year) - 1:04d}"
        return part_of_season(date.part, year, context.season_code(date.season))
    if date.grouping:
        return f"{year}-{date.grouping}"
    if date.of_season:
        _ask_unless_in_season(date, year, context)
    text = _plain(date, year)
    if not text:
        raise NoSuchDate("Something here is no date. When was it?")  # “0” beside one
    return text


def _ask_unless_in_season(date: Partial, year: str, context: DateContext) -> None:
    """Of “winter 1946, January” the year of the month is asked, of “summer 1955, November” which of the two is meant;
    “summer of ’55, August” needs no question. Seasons of three months: common practice, no source."""
    code = context.season_code(date.of_season)
    first, months = SEASONS[code]
    month, last = f"{year}-{date.month:02d}", first + months - 1
    if first <= date.month <= last or (date.year_of_month and date.month <= last - 12):
        return
    other = f"{int(year) + 1:04d}-{date.month:02d}" if date.month <= last - 12 else f"{year}-{code}"
    raise NoSuchDate("Which of the two is meant?", (month, other))


def _plain(date: Partial, year: str) -> str:
    if not date.month:
        return year
    if date.unit in ("week", "weekend") and date.nth:
        return nth_week(date, year) if date.unit == "week" else nth_weekend(date, year)
    day = _day_in_month(date, year)
    after, before, mark = MARKS[date.year_mark], MARKS[date.month_mark], MARKS[date.day_mark]
    if not day:
        text = f"{year or 'XXXX'}{after}-{before}{date.month:02d}"
        if not date.part or not text[:4].isdigit() or len(text) != 7:
            return text
        days = part_of_month(date.part, text)
        return weekdays_within(days, date.weekday) if date.weekday >= 0 else days
    length_of = julian_month_length if date.old_style else month_length
    last = length_of(int(year) if year.isdigit() else 2000, date.month)
    if not 1 <= day <= last:
        whole_year = year or "XXXX"
        month = f"{whole_year}-{date.month:02d}"
        over = f"{whole_year}-{date.month + 1:02d}-{day - last:02d}" if date.month < 12 else ""  # 31 April, 1 May
        leap = _leap_years_beside(year) if (date.month, day) == (2, 29) else ()
        raise _no_such_day(day, () if date.old_style else tuple(filter(None, (f"{month}-{last}", over, month, *leap))))
    return f"{year or 'XXXX'}{after}-{before}{date.month:02d}-{mark}{day:02d}"


def _leap_years_beside(year: str) -> tuple[str, ...]:
    """29 February in the leap year that is nearest, or in the two that are as near."""
    for step in (1, 2, 3):
        near = [int(year) + way for way in (-step, step)]
        if days := tuple(f"{leap:04d}-02-29" for leap in near if month_length(leap, 2) == 29):
            return days
    return ()


def _no_such_day(day: int, choices: tuple[str, ...]) -> NoSuchDate:
    return NoSuchDate(f"There is no day {day} in that month. Which is meant?", choices)


def _day_in_month(date: Partial, year: str) -> int:
    """The day, or that of “the first Sunday in June 1938”; 0 for none."""
    if not date.nth:
        return date.day
    if not year.isdigit():
        return 0
    length = month_length(int(year), date.month)
    if date.weekday < 0:
        return length
    first = (date.weekday - (to_number(int(year), date.month, 1) - 1)) % 7 + 1
    days = list(range(first, length + 1, 7))
    if date.nth > len(days):
        ask = f"That month has no {date.nth}th {DAYS[date.weekday]}. Which is meant?"
        raise NoSuchDate(ask, (f"{int(year):04d}-{date.month:02d}",))
    return days[date.nth - 1] if date.nth > 0 else days[-1]


def year_of(date: Partial, pick: int) -> str:
    """The year as four digits or X; the century of a short one by `pick`."""
    if len(date.year) == 2:
        return CENTURIES[pick if pick < 3 else 0] + date.year
    if date.assumed and date.year:
        return CENTURIES[pick if pick < 3 else 0] + date.year[2:]
    if date.hundreds and pick == 1:
        return f"{date.year[:2]}0X"
    return date.year


def _in_part_of_decade(date: Partial, decade: str, context: DateContext) -> str:
    """`Christmas, mid-1930s`: that of each of the years, which are approximate as the part of a decade is. A day that
    some of the years do not have (29 February, a Sunday) is of the others."""
    texts, reason = [], None
    for one_year in _years_of_part(date, decade):
        try:
            text = _unmarked(one_year, context, 0)
        except NoSuchDate as none:
            reason = none
            continue
        if _weekday_question(one_year, context):
            continue
        if date.unit in OF_A_DAY:
            text = stretch_of(text, date.unit, feast=bool(date.feast))
        ends = text.strip("[]").replace("/", "..").split("..")
        texts.append("..".join(f"{end[:4]}~{end[4:]}" for end in ends))
    if not texts:
        raise reason or NoSuchDate("That day was another day of the week in all of these years. Which is right?")
    return f"[{','.join(texts)}]"


def _years_of_part(date: Partial, decade: str) -> Iterator[Partial]:
    begin = int(decade[:3]) * 10
    first, last = DECADE_PARTS[date.part]
    for year in range(begin + first, begin + last + 1):
        one_year = date.copy()
        one_year.part, one_year.part_of_decade, one_year.year, one_year.assumed = "", False, f"{year:04d}", False
        yield one_year


def _of_years(date: Partial, context: DateContext, pick: int) -> str:
    """`1932-33`: a span; `winter 1946-47` the one that reaches over New Year; the school year."""
    first, last = date.years or (0, 0)
    if date.assumed:
        shift = int(CENTURIES[pick if pick < 3 else 0]) * 100 - 1900
        first, last = first + shift, last + shift
    if date.feast:
        days = tuple(_feast(date, context, f"{year:04d}", 0).edtf for year in (first, last))
        if last == first + 1:  # “New Year 1911/12”, “Silvester 1928/29”: at the turn of the two
            if (days[0][5:7] == "12" and days[1][5:7] == "12") or f"/{last}-" in days[0]:
                return days[0]
            if days[1][5:7] == "01":
                return days[1]
        raise NoSuchDate("Of which year?", days)
    if date.month:  # “12 June 1926/27”
        raise NoSuchDate("Of which year?", tuple(_plain(date, f"{year:04d}") for year in (first, last)))
    if not date.season:
        return f"{first}/{last}"
    southern = context.hemisphere == "south"
    over_new_year = 22 if southern else 24
    if last == first + 1 and date.season == over_new_year:
        return f"{first}-{context.season_code(date.season)}"
    if last == first + 1 and date.season == 22:
        both = f"{{{first}-22,{last}-22}}"
        raise NoSuchDate("One summer of the south, or the summers of two years?", (f"{first}-30", both))
    code = context.season_code(date.season)
    both = f"{{{first}-{code},{last}-{code}}}"
    raise NoSuchDate(f"Is the {SEASON_NAMES[date.season]} of each year meant?", (both, f"{first}/{last}"))


def _of_calendar(date: Partial, context: DateContext, pick: int) -> str:
    if date.calendar == "dual":
        return _dual(date, pick)
    if date.calendar == "turn":
        return ("1895~/1905~", "1795~/1805~", "1995~/2005~")[pick if pick < 3 else 0]
    if date.calendar == "school":
        return _school_year(date, context, pick)
    if date.calendar == "bce":
        return f"-{date.day - 1:04d}" if date.day > 1 else "0000"
    try:
        return str(from_hebrew(int(date.year), date.month, date.day))
    except ValueError:
        raise NoSuchDate("The Hebrew calendar has no such day. Which is meant?") from None


def _dual(date: Partial, pick: int) -> str:
    """`10 February 1733/4`: of the second year, that day by the new calendar, or of the first year."""
    year = int(date.year) + 1
    rest = f"-{date.month:02d}" if date.month else ""
    if date.day and not 1 <= date.day <= julian_month_length(year, date.month):
        raise _no_such_day(date.day, (f"{date.year}{rest}", f"{year:04d}{rest}"))
    rest += f"-{date.day:02d}" if date.day else ""
    first, second = f"{date.year}{rest}", f"{year:04d}{rest}"
    reckoned = _from_julian(date, second) if date.day else second
    return (f"[{first},{second}]", second, reckoned, first)[min(pick, 3)]


def _school_year(date: Partial, context: DateContext, pick: int) -> str:
    if date.years:
        first, last = date.years
    else:
        year = year_of(date, pick)
        if not year.isdigit():
            raise NoSuchDate("Which school year?")
        first, last = int(year), int(year) + 1
    return school_year(date.part, (first, last), bool(date.years), context)


def _feast(date: Partial, context: DateContext, year: str, pick: int) -> HolidayDate:
    name = date.feast
    if date.old_style and name in _EASTER:
        name = "orthodox easter"
    if date.old_style and year.isdigit() and (julian := julian_day(name, int(year))):
        return HolidayDate(julian)
    feast = holiday(name, year, context.countries, context.hemisphere)
    if date.unit == "year" and (feast.edtf or not year):
        month = f"-{date.month:02d}" if date.month else ""  # “June, the year of the Armistice”
        years = list(dict.fromkeys(f"{day[:4]}{month}" for day in (feast.edtf, *feast.alternatives) if day))
        feast = HolidayDate(years[0]) if len(years) == 1 else HolidayDate("", feast.ask, tuple(years))
    if not feast.edtf:
        raise NoSuchDate(str(feast.ask), feast.alternatives)
    if date.month and not date.day:
        feast = _in_month(feast, date, context)
    if pick and not date.short and pick <= len(feast.alternatives):
        return HolidayDate(feast.alternatives[pick - 1])
    return feast


def _in_month(feast: HolidayDate, date: Partial, context: DateContext) -> HolidayDate:
    """`Corpus Christi, June 1938`: those of a feast's days that are in the month told with it. Raises NoSuchDate."""
    first, last = _months_of(feast.edtf)
    if date.month <= last < first:  # “Christmas holidays, January 1939” began in 1938
        feast = holiday(date.feast, f"{int(feast.edtf[:4]) - 1:04d}", context.countries, context.hemisphere)
    days = [day for day in (feast.edtf, *feast.alternatives) if _is_in_month(day, date.month)]
    if not days:
        month = f"{feast.edtf[:4]}-{date.month:02d}"
        told = f"{titled(date.feast)} was {asked(feast.edtf, context)}, not in {asked(month, context)}."
        raise NoSuchDate(f"{told} Which is right?", (feast.edtf, month))
    days = list(dict.fromkeys(_left_by_month(day, date.month) for day in days))
    days = [day for day in days if date.short or day.startswith(date.year)] or days  # of the year that is told
    return HolidayDate(days[0], feast.ask if len(days) > 1 or not feast.alternatives else None, tuple(days[1:]))


def _left_by_month(text: str, month: int) -> str:
    """Of a feast of several days or months those within the month that was told with it: “summer holidays, July 1955”
    is that July, since the narrower that is told is never lost."""
    first, _, last = text.partition("/")
    if not last or (first.endswith("-12-31") and last.endswith("-01-01")):
        return text  # a day, or the night between the years
    year = int(first[:4]) + (month < int(first[5:7]))
    told = f"{year:04d}-{month:02d}"
    begin = first if first.startswith(told) else f"{told}-01"
    end = last if last.startswith(told) else f"{told}-{month_length(year, month)}"
    whole = begin[:10] in (told, f"{told}-01") and end[:10] in (told, f"{told}-{month_length(year, month)}")
    return told if whole else f"{begin}/{end}"


def _months_of(text: str) -> tuple[int, int]:
    months = [int(month) for month in _MONTHS_TOLD.findall(text)]
    return months[0], months[-1]


def _is_in_month(text: str, month: int) -> bool:
    """Whether a feast's day or days are in a month, or reach into it."""
    first, last = _months_of(text)
    return first <= month <= last if first <= last else month >= first or month <= last


def _span(date: Partial, context: DateContext, pick: int) -> str:
    """A war by its theatre: the collection's country's, else the first, else as picked."""
    choices = spans_of(date, context)
    first, last = choices[pick if pick < len(choices) else 0]
    if not date.part:
        return f"{first}/{last}" if first != last else first
    begin, end = (int(month[:4]) * 12 + int(month[5:]) - 1 for month in (first, last))
    third = max(1, (end - begin + 1) // 3)
    begin, end = {
        "early": (begin, begin + third - 1), "mid": (begin + third, end - third), "late": (end - third + 1, end),
    }.get(date.part, (begin, end))  # fmt: skip
    return "/".join(f"{month // 12:04d}-{month % 12 + 1:02d}~" for month in (begin, max(begin, end)))


def spans_of(date: Partial, context: DateContext) -> tuple[tuple[str, str], ...]:
    """First and last month in each theatre that is possible for the collection's countries."""
    return _spans(date.span, context.countries)


@lru_cache(256)
def _spans(wars: tuple[Theatres, ...], countries: tuple[str, ...]) -> tuple[tuple[str, str], ...]:
    at_home = [(first, last) for theatres in _at_home(wars, countries) for _, first, last in theatres]
    own = [span for theatres in wars for span in _spans_in(theatres, countries, which=len(wars) > 1)]
    everywhere = [(first, last) for theatres in wars for _, first, last in theatres]
    return tuple(dict.fromkeys((*at_home, *((sorted(own) if len(wars) > 1 else own) or everywhere))))


def _at_home(wars: tuple[Theatres, ...], countries: tuple[str, ...]) -> tuple[Theatres, ...]:
    """The wars that “the war” means first in the collection's countries."""
    at_home = (WARS_AT_HOME.get(country, ()) for country in countries if wars == UNNAMED)
    return tuple(theatres for of_country in at_home for theatres in of_country)


def _spans_in(theatres: Theatres, countries: tuple[str, ...], *, which: bool) -> list[tuple[str, str]]:
    """A war in the collection's countries; none where it was in none of them. Where no war is named, and it came there
    in a later year than it began, as it was elsewhere too: “before the war” may be before either."""
    rows = (*theatres, *OF_LANDS.get(theatres, ()))
    own = [(first, last) for lands, first, last in rows if set(lands.split()) & set(countries)]
    began = [(first, last) for lands, first, last in theatres if not lands]
    later = which and own and began and min(own)[0][:4] > began[0][0][:4]
    return [*own, *began] if later else own


def _from_julian(date: Partial, text: str) -> str:
    """The Gregorian day of a Julian one; a month or a year cannot be reckoned over and stays, with a question."""
    if date.feast in _EASTER or date.feast in OF_JULIAN:
        return text
    match = _FULL_DAY.fullmatch(text)
    if match is None:
        return text
    year, month, day = map(int, match.groups())
    return str(from_julian(year, month, day))


def question(date: Partial, context: DateContext) -> str:
    """What must be asked of a date, or nothing."""
    if date.ask:
        return f"“{context.text}”: {date.ask[0].lower()}{date.ask[1:]}"
    if date.calendar == "dual":
        return "A dual year: old or new style?"
    if date.calendar == "turn":
        return f"“{context.text}”: is the turn to 1900 meant?"
    if date.span:
        return _war_question(date, context)
    if date.short:
        return _century_question(date, context)
    if len(styles := old_styles(date, context)) > 1:
        return style_question(date, styles, context)
    if date.hundreds:
        return f"“{context.text}”: is the century meant, or its first ten years?"
    if is_early_in_century(date):
        return f"“{context.text}”: is the first third of the century meant, or its first ten years?"
    if date.feast:
        return _feast_question(date, context)
    if not date.year and date.month:
        return "In which year?"
    if date.old_style and not date.day:
        return "On which day, old style?"
    if date.season and _may_begin_before(date, context):
        return (
            f"“{context.text}”: the {SEASON_NAMES[date.season]} that began in that year, or the one that ended in it?"
        )
    return _weekday_question(date, context) if date.weekday >= 0 else ""


def _may_begin_before(date: Partial, context: DateContext) -> bool:
    """Whether a season over New Year is all that was told, so that its year may be that in which it ended. A summer of
    the south is asked about always: most of it is in the year in which it ends (common practice, no source)."""
    southern = context.hemisphere == "south"
    over_new_year = 22 if southern else 24
    return (date.season_alone or southern) and date.season == over_new_year and date.year.isdigit()


def _century_question(date: Partial, context: DateContext) -> str:
    if date.years:
        return f"“{context.text}”: are {date.years[0]} to {date.years[1]} meant?"
    year = year_of(date, 0)
    if year.endswith("XX"):
        return f"“{context.text}”: is the century from {year[:2]}00 on meant?"
    if year.endswith("X"):
        return f"“{context.text}”: are the {year[:3]}0s meant?"
    if _may_begin_before(date, context):
        name = SEASON_NAMES[date.season]
        return (
            f"“{context.text}”: is {year} meant, and the {name} that began in that year, or the one that ended in it?"
        )
    return f"“{context.text}”: is {year} meant?"


def _feast_question(date: Partial, context: DateContext) -> str:
    if date.years:
        return ""  # at the turn of the two
    if date.part_of_decade:
        date = next(_years_of_part(date, year_of(date, 0)))
    feast = _feast(date, context, year_of(date, 0), 0)
    if date.day:
        told = _unmarked(date, context, 0)
        if not is_within(told, feast):
            return f"{titled(date.feast)} was {asked(feast.edtf, context)}, not {asked(told, context)}. Which is right?"
    elif feast.ask:
        return feast.ask
    return _weekday_question(date, context)


def _war_question(date: Partial, context: DateContext) -> str:
    if len(date.span) > 1:
        named = _wars_named(date.span, context.countries)
        return f"“{context.text}”: which is meant?" if NO_WARS.issuperset(date.span) else f"Which war?{named}"
    if len(spans_of(date, context)) < 2:
        return ""
    if date.span[0] in PLACE_BY_PLACE:
        return "When was that there? It came to one place after another."
    return "Whose war is meant? Its years differ by country."


@lru_cache(256)
def _wars_named(wars: tuple[Theatres, ...], countries: tuple[str, ...]) -> str:
    """“ The First World War, …”: the wars in the order in which they are choices, one that came to several lands in
    other years with its first; empty where one of them has no name of its own."""
    spans, meant = _spans(wars, countries), (*_at_home(wars, countries), *wars)
    names = []
    for span in spans:
        here = (theatres for theatres in meant if span in (row[1:] for row in (*theatres, *OF_LANDS.get(theatres, ()))))
        names.append(CALLED.get(next(here), ""))
    if not all(names):
        return ""
    shown = list(
        dict.fromkeys(
            f"{name} from {span[0][:4]}" if names.count(name) > 1 else name
            for span, name in zip(spans, names, strict=True)
        )
    )
    return f" {shown[0][0].upper()}{', '.join(shown[:-1])[1:]} or {shown[-1]}."


def _weekday_question(date: Partial, context: DateContext) -> str:
    if date.weekday < 0 or date.nth or old_styles(date, context):
        return ""
    match = _FULL_DAY.fullmatch(_unmarked(date, context, 0))
    if match is None:
        return ""
    number = to_number(*map(int, match.groups()))
    if date.old_style:
        number = to_number(*from_julian(*map(int, match.groups())))
    real = (number - 1) % 7
    if real == date.weekday:
        return ""
    return f"{asked(str(from_number(number)), context)} was a {DAYS[real]}, not a {DAYS[date.weekday]}. Which is right?"


def _other_days(date: Partial, context: DateContext) -> tuple[str, ...]:
    """What may be meant instead of a day that the feast or the day of the week told with it is not."""
    if date.feast and date.weekday >= 0 and not date.day:
        return _days_beside(date, context)
    if not date.day or not date.year.isdigit() or date.short or date.old_style:
        return ()
    if (date.weekday < 0 and not date.feast) or not question(date, context):
        return ()
    told = _unmarked(date, context, 0)
    if date.feast and not is_within(told, feast := _feast(date, context, date.year, 0)):
        return (feast.edtf, *feast.alternatives)
    return days_that_fit(told, date.weekday)


def _days_beside(date: Partial, context: DateContext) -> tuple[str, ...]:
    """“Whit Friday”, where the feast was no Friday: such a day of the week behind it, and before it."""
    if date.nth or date.is_day_of_week or date.short or not date.year.isdigit() or not _weekday_question(date, context):
        return ()
    told = _unmarked(date, context, 0)
    later = days_that_fit(told, date.weekday)[0]
    number = to_number(*map(int, later.split("-")))
    other = number + (-7 if later > told else 7)
    return tuple(str(from_number(day)) for day in sorted((number, other), reverse=True))


def choices_of(date: Partial, context: DateContext) -> int:
    """In how many ways it may be meant."""
    if styles := old_styles(date, context):
        return len(styles)
    if days := _other_days(date, context):
        return 1 + len(days)
    if date.span:
        return len(spans_of(date, context))
    if date.short or date.calendar == "turn":
        return 4 if _may_begin_before(date, context) else 3
    if date.calendar == "dual":
        return 4
    if date.hundreds or is_early_in_century(date):
        return 2
    if date.day_behind and not date.year:
        return 2
    if date.feast and not (date.day or date.part_of_decade or date.years):
        try:
            return 1 + len(_feast(date, context, year_of(date, 0), 0).alternatives)
        except NoSuchDate:
            return 1  # that itself is asked
    return 2 if _may_begin_before(date, context) else 1
