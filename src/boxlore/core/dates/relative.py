"""Dates told by their distance from another: “the summer before the wedding”, “three years after we moved”, “aged 5”.

Whatever is reckoned is reckoned from both bounds of the date it leans on; where these lead to different answers, or the
date is known too loosely, it is asked. What lies at a distance from a family's event is approximate (`~`); the year,
the month or the season in which it was is as sure as its own date.
"""

from dataclasses import dataclass, replace

from boxlore.core.dates import edtf as standard
from boxlore.core.dates.anniversary import years_on
from boxlore.core.dates.before_and_after import not_far
from boxlore.core.dates.calendars import from_number, to_number
from boxlore.core.dates.context import DateContext, NoSuchDate
from boxlore.core.dates.edtf_values import SEASONS, Day, month_length
from boxlore.core.dates.weeks import stretch_of

A_FEW, NEXT_TO_IT, A_COUPLE = -1, -2, -3
"""Counts that are no number: two to six, those next to the date, about two."""

_FRIDAY = 4
DAYS_OF = {"day": 1, "week": 7, "fortnight": 14, "month": 30}


@dataclass(frozen=True, slots=True)
class Distance:
    """How far before (-1) or after (1) a date. `unit` is day, night, week, fortnight, month, year, season or weekday;
    `count` how many (0: the one next to it), or a few, a couple, those next to it; `value` the season or the day of the
    week; `event` whether it is the family's; `exact` that it is told to the day; `more` that it is farther away (1)
    or less far (-1)."""

    side: int
    unit: str
    count: int = 0
    value: int = 0
    event: bool = False
    exact: bool = False
    more: int = 0


def bounds(text: str) -> tuple[Day, Day]:
    """The first and the last day of EDTF. Raises NoSuchDate where one of them is open."""
    edtf = standard.parsed(text)
    if edtf.earliest is None or edtf.latest is None:
        raise NoSuchDate("When exactly was that? It is known on one side only.")
    return edtf.earliest, edtf.latest


def near(text: str, distance: Distance, context: DateContext) -> str:
    """The EDTF of what lies at a distance from a date. Raises NoSuchDate with a question."""
    first, last = bounds(text)
    if (last.year, last.month, last.day) > (first.year + 1, first.month, first.day):
        raise NoSuchDate("When exactly was that? It is only known within some years.")
    if distance.exact and distance.unit == "year":
        begin, end = (_later(day, distance.side * max(distance.count, 1)) for day in (first, last))
        return str(begin) if begin == end else f"[{begin}..{end}]"
    if distance.exact and distance.unit == "month":
        begin, end = (_so_old(day, "month", distance.side * max(distance.count, 1)) for day in (first, last))
        return str(begin) if begin == end else f"[{begin}..{end}]"
    if context.whole and (distance.count > 0 or distance.unit == "fortnight"):
        return _stretch(first, last, distance)
    if distance.count == A_COUPLE and distance.unit in ("year", "month"):
        distance = replace(distance, count=2, event=True)
    if distance.unit == "night":  # “ööl vastu 14. juunit”: that of two days
        if first != last:
            raise NoSuchDate("The night to which day?", (text,))
        return f"{from_number(to_number(*first) - 1)}/{first}"
    if distance.unit == "season":
        return _season_near(first, last, distance, context)
    if distance.unit == "fortnight":  # two weeks, to about a day
        distance = replace(distance, count=distance.count or 1)
    if distance.unit == "year":
        return _years_near(first, last, distance)
    if distance.unit == "month" and distance.count >= 0 and (distance.count or first != last):
        return _months_near(first, last, distance)
    return _days_near(first, last, distance)


def _stretch(first: Day, last: Day, distance: Distance) -> str:
    """“The fortnight before Easter”: every day up to a date, or from it on. About an event that is known loosely, from
    its first day or to its last one."""
    count, side = max(distance.count, 1), distance.side
    far = moved(first if side < 0 else last, distance.unit, side * count)
    near_by = first if (side < 0) is not distance.event else last
    next_to_it = from_number(to_number(*near_by) + side)
    return days_of(far, next_to_it) if side < 0 else days_of(next_to_it, far)


def outermost(text: str, distance: Distance) -> str:
    """The first (side 1) or the last (-1) days, weeks, months or years of a date. Raises NoSuchDate where it has not so
    many."""
    first, last = bounds(text)
    if text.startswith("XXXX"):
        raise NoSuchDate("In which year?")
    far = moved(first if distance.side > 0 else last, distance.unit, distance.side * distance.count)
    inner = from_number(to_number(*far) - distance.side)
    if not first <= inner <= last:
        raise NoSuchDate("It has not so many days. When was it?", (text,))
    return days_of(first, inner) if distance.side > 0 else days_of(inner, last)


def outermost_year(text: str, nth: int) -> str:
    """The how-manieth year of a war from its first month on, or its last one (-1). Raises NoSuchDate where it had not
    so many."""
    first, last = bounds(text)
    if nth < 0:
        begin, end = max(from_number(to_number(*_later(last, -1)) + 1), first), last
    else:
        begin = _later(first, nth - 1)
        end = min(from_number(to_number(*_later(first, nth)) - 1), last)
    if begin > end:
        raise NoSuchDate("It had not so many. When was it?")
    return f"{begin.year:04d}-{begin.month:02d}/{end.year:04d}-{end.month:02d}"


def days_of(begin: Day, end: Day) -> str:
    """All days from one to another, as months or years where these are whole."""
    if begin.day != 1 or end.day != month_length(end.year, end.month):
        return f"[{begin}..{end}]"
    if (begin.month, end.month) == (1, 12):
        return f"[{begin.year:04d}..{end.year:04d}]"
    return f"[{begin.year:04d}-{begin.month:02d}..{end.year:04d}-{end.month:02d}]"


def moved(day: Day, unit: str, count: int) -> Day:
    """The day so many days, weeks, months or years on; before it, where `count` is negative."""
    return _later(day, count) if unit == "year" else _so_old(day, unit, count)


def _years_near(first: Day, last: Day, distance: Distance) -> str:
    mark = "~" if distance.event else ""
    if distance.count < 0:
        near_by, far = sorted((first.year + 2 * distance.side, last.year + 6 * distance.side))
        return f"[{near_by}..{far}]"
    shift = distance.side * (distance.count or 1)
    if first.year == last.year:
        return f"{first.year + shift}{mark}"
    return f"[{first.year + shift}{mark},{last.year + shift}{mark}]"


def _months_near(first: Day, last: Day, distance: Distance) -> str:
    within_one = (first.year, first.month) == (last.year, last.month)
    if not within_one and not distance.count:
        return f"{first.year}~"
    moved = (_so_old(day, "month", distance.side * (distance.count or 1)) for day in (first, last))
    begin, end = (f"{day.year:04d}-{day.month:02d}" for day in moved)
    if within_one:
        return f"{begin}~" if first == last else begin
    return f"[{begin}..{end}]"


def _days_near(first: Day, last: Day, distance: Distance) -> str:
    start, end = to_number(*first), to_number(*last)
    if distance.unit == "weekend":
        if start == end and (start - 1) % 7 > _FRIDAY:
            own = start - (start - 1) % 7 + _FRIDAY + 1
            raise NoSuchDate("Which weekend is meant?", _weekends((own, own + 7 * distance.side)))
        if start != end:
            raise NoSuchDate("Which weekend is meant?")
        saturday = start - (start - 1) % 7 + _FRIDAY + 1 - (7 if distance.side < 0 else 0)
        return f"{from_number(saturday)}/{from_number(saturday + 1)}"
    if distance.unit == "weekday":
        if start != end:
            raise NoSuchDate("On which day exactly was that?", _of_each_day(start, end, distance))
        step = (distance.value - (start - 1)) % 7 or 7
        further = 7 * (max(distance.count, 1) - 1)
        if distance.side > 0:
            return str(from_number(start + step + further))
        return str(from_number(start + step - (7 if step < 7 else 14) - further))
    days = DAYS_OF[distance.unit]
    if end - start > 200:
        if not distance.event:
            raise NoSuchDate("On which day exactly was that?")
        return f"{first.year}~"
    if distance.count > 0:
        shift = distance.side * days * distance.count
        moved = sorted((from_number(start + shift), from_number(end + shift)))
        exact = distance.unit == "day" or distance.exact
        return f"{moved[0]}{'' if exact else '~'}" if start == end else f"[{moved[0]}..{moved[1]}]"
    if distance.unit == "month" and distance.count < 0:
        low, high = (_so_old(day, "month", distance.side * count) for day, count in _few(first, last, distance.side))
        return f"[{low}..{high}]"
    spread = {A_FEW: (2 * days, 6 * days), NEXT_TO_IT: (2, 6 * days), A_COUPLE: (days, 3 * days)}
    nearest, farthest = spread.get(distance.count, (1, days))
    if distance.side > 0:
        low, high = from_number(start + nearest), from_number(end + farthest)
    else:
        low, high = from_number(start - farthest), from_number(end - nearest)
    return str(low) if low == high else f"[{low}..{high}]"


def _weekends(saturdays: tuple[int, ...]) -> tuple[str, ...]:
    return tuple(f"{from_number(saturday)}/{from_number(saturday + 1)}" for saturday in saturdays)


def _of_each_day(start: int, end: int, distance: Distance) -> tuple[str, ...]:
    """The days of the week that are meant if an event was on one of these days: “the Monday before we moved”, of a move
    that is known to the month; none where they are too many."""
    if end - start > _MOST_DAYS:
        return ()
    days = dict.fromkeys(_days_near(day, day, distance) for day in map(from_number, range(start, end + 1)))
    return (f"[{','.join(days)}]",)


_MOST_DAYS = 31


def _few(first: Day, last: Day, side: int) -> tuple[tuple[Day, int], tuple[Day, int]]:
    """The day and the months from it at which a few months (two to six) begin, and those at which they end."""
    return ((first, 2), (last, 6)) if side > 0 else ((first, 6), (last, 2))


def seasons_about(code: int, year: int) -> list[tuple[int, Day, Day]]:
    """A season in the years about a year: the year it is named by, its first and its last day."""
    month, months = SEASONS[code]
    rows = []
    for named in range(year - 2, year + 3):
        end = month + months - 1
        last_year, last_month = (named + 1, end - 12) if end > 12 else (named, end)
        rows.append((named, Day(named, month, 1), Day(last_year, last_month, month_length(last_year, last_month))))
    return rows


def _season_near(first: Day, last: Day, distance: Distance, context: DateContext) -> str:
    """The last season that began before, or the first that ends after; one that is running is asked about."""
    code = context.season_code(distance.value)
    meant = []
    for day in (first, last):
        rows = seasons_about(code, day.year)
        if distance.side < 0:
            meant.append([row for row in rows if row[1] < day][-1])
        else:
            meant.append(next(row for row in rows if row[2] > day))
    further = distance.count - 1 if distance.count > 0 else 0
    years = [year + distance.side * further for year, _, _ in meant]
    if distance.count == A_FEW:
        raise NoSuchDate("How many was that?", tuple(f"{years[0] + distance.side * more}-{code}" for more in (1, 2, 3)))
    if distance.count > 1 or distance.count == A_COUPLE:  # whether the one next to it is among those counted
        nearer = years[0] + (distance.side if distance.count == A_COUPLE else 0)
        raise NoSuchDate("Which year’s is meant?", (f"{nearer}-{code}", f"{nearer + distance.side}-{code}"))
    texts = list(dict.fromkeys(f"{year}-{code}" for year in years))
    if len(texts) > 1:
        raise NoSuchDate("Which year’s is meant?", tuple(texts))
    return texts[0]


def is_running(text: str, day_text: str) -> bool:
    """Whether a day lies within a season: then “the summer before” may be this one or the one before it."""
    (begin, end), (first, last) = bounds(text), bounds(day_text)
    return begin <= last and first <= end


def of_event(text: str, unit: str, season: int, context: DateContext) -> str:
    """`the year of the wedding`, `the summer Joe came home`: those that hold the event's own date, with its doubt."""
    first, last = bounds(text)
    mark = text[-1] if text[-1] in "?~%" else ""
    if season:
        code = context.season_code(season)
        rows = seasons_about(code, first.year)
        holding = [row for row in rows if row[1] <= first and last <= row[2]]
        within = [row for row in rows if first <= row[1] and row[2] <= last]
        if not holding and within:  # “the winter I was six”
            if len(within) > 1:
                raise NoSuchDate("Which year’s is meant?", tuple(f"{row[0]}-{code}" for row in within))
            holding = within
        if not holding and first.year != last.year:
            raise NoSuchDate("When exactly was that?")
        if not holding and (first.year, first.month) == (last.year, last.month):  # the day lies in another season
            beside = (f"{named}-{code}~" for _, named in sorted(_days_to(row, first) for row in rows)[:2])
            raise NoSuchDate("That day was in another season. Which year’s is meant?", tuple(beside))
        return f"{holding[0][0]}-{code}{mark}" if holding else f"{first.year}-{code}~"
    if unit == "year" or (unit and first.month != last.month):
        if first.year != last.year:
            raise NoSuchDate("When exactly was that? It is only known within some years.")
        return f"{first.year}{mark}"
    if unit == "month" or first != last:
        return f"{first.year:04d}-{first.month:02d}{mark}"
    return stretch_of(str(first), unit) if unit == "week" else f"{first}{mark}"


def _days_to(season: tuple[int, Day, Day], day: Day) -> tuple[int, int]:
    """How many days lie between a day and a season, and the year of the season."""
    named, begin, end = season
    away = (to_number(*begin) - to_number(*day), to_number(*day) - to_number(*end))
    return max(away), named


def at_age(born: str, years: int, last_years: int = 0) -> str:
    """The days on which someone is so many years old: from the birthday to the day before the next, where the birth is
    known to the day or the month. About the year for a year of birth; the years between for a looser one. `last_years`
    is the later of two ages, one after the other (“five or six”)."""
    until = (last_years or years) + 1
    first, last = _birth(born)
    if last.year > first.year or first.month != last.month:
        return _about_age(first, last, years, until - 1)
    if first == last:
        begin, following = _later(first, years), _later(last, until)
        return f"[{begin}..{from_number(to_number(*following) - 1)}]"
    return f"[{first.year + years:04d}-{first.month:02d}..{first.year + until:04d}-{first.month:02d}]"


def at_age_in(born: str, unit: str, count: int) -> str:
    """The days on which a child is so many days, weeks or months old, from both bounds of the birth."""
    first, last = _birth(born)
    begin, end = _so_old(first, unit, count), _so_old(last, unit, count + 1)
    until = from_number(to_number(*end) - 1)
    return str(begin) if begin == until else f"[{begin}..{until}]"


def about_age_in(born: str, unit: str, count: int) -> str:
    """About so many days, weeks or months old: from one less to one more."""
    first, last = _birth(born)
    begin, end = _so_old(first, unit, max(count - 1, 0)), _so_old(last, unit, count + 2)
    return f"[{begin}~..{from_number(to_number(*end) - 1)}~]"


def _so_old(day: Day, unit: str, count: int) -> Day:
    """The day on which a child is so old: in months the same day of the month, or its last one."""
    if unit != "month":
        return from_number(to_number(*day) + count * DAYS_OF[unit])
    months = day.year * 12 + day.month - 1 + count
    year, month = months // 12, months % 12 + 1
    return Day(year, month, min(day.day, month_length(year, month)))


def not_yet_at(born: str, years: int) -> str:
    """“I hadn't turned five”: from the birth to the day before the birthday."""
    first, last = _birth(born)
    return f"[{first}..{from_number(to_number(*_later(last, years)) - 1)}]"


def past_no_age(born: str, years: int) -> str:
    """“No more than five”: from the birth to the last day of that age."""
    return not_yet_at(born, years + 1)


def probably_of_age(born: str, years: int) -> str:
    """About the year in which someone is so many years old."""
    return _about_age(*_birth(born), years, years)


def probably_turning(born: str, years: int) -> str:
    """“Would have been fifty that year”: about the year in which someone turns so many years old."""
    first, last = _birth(born)
    return f"{first.year + years}~" if first.year == last.year else _about_age(first, last, years, years)


def about_age(born: str, years: int) -> str:
    """About so many years old: from a year younger to a year older, where the birth is known to the month."""
    first, last = _birth(born)
    if (first.year, first.month) != (last.year, last.month):
        return _about_age(first, last, years, years)
    return f"[{first.year + years - 1}~..{first.year + years + 2}~]"


def about_ages(born: str, years: int, last_years: int) -> str:
    """About from one age to another: “in her early twenties”."""
    first, last = _birth(born)
    return f"{first.year + years}~/{last.year + last_years + 1}~"


def past_age(born: str, years: int) -> str:
    """“Over fifty”: from that birthday on."""
    return past_age_in(born, "year", years)


def past_age_in(born: str, unit: str, count: int) -> str:
    """“At least six weeks old”: from that age on."""
    return f"[{moved(_birth(born)[0], unit, count)}..]"


def year_of_age(born: str, years: int) -> str:
    """“In her tenth year”, “nearly ten”: from the birthday before the one that is told to the day before that one."""
    return at_age(born, years - 1)


def year_of_birthday(born: str, years: int) -> str:
    """The year of a birthday: “the year Ruth turned ten”."""
    text = birthday(born, years)
    return text if "[" in text or "/" in text else text[:4]


def _about_age(first: Day, last: Day, years: int, last_years: int) -> str:
    if last.year > first.year:
        return f"{first.year + years}/{last.year + last_years}"
    begin, end = (_middle_year(first, last, age) for age in (years, last_years))
    return f"{begin}~" if begin == end else f"[{begin}~,{end}~]"


def _middle_year(first: Day, last: Day, years: int) -> int:
    """The year in the middle of the days that somebody may be so old."""
    return from_number((to_number(*_later(first, years)) + to_number(*_later(last, years + 1)) - 1) // 2).year


def _birth(born: str) -> tuple[Day, Day]:
    first, last = bounds(born)
    if last.year - first.year > 10:
        raise NoSuchDate("When exactly was the birth? It is only known within many years.")
    return first, last


def in_years(born: str, decade: int) -> str:
    """`in her twenties`: from the birthday that begins the ten years to the one that ends them."""
    first, last = _birth(born)
    begin = FIRST_TEEN if decade == 10 else decade
    return f"{first.year + begin}/{last.year + decade + 10}"


FIRST_TEEN = 13
"""“In my teens” begins at thirteen."""


def birthday(born: str, years: int) -> str:
    """The birthday itself where the day of birth is known, else as `at_age`."""
    first, last = bounds(born)
    if first == last:
        return str(_later(first, years))
    if first.month == last.month and first.year == last.year:
        return f"{first.year + years:04d}-{first.month:02d}"
    return str(first.year + years) if first.year == last.year else at_age(born, years)


def just_turned(born: str, years: int) -> str:
    """“Peter just turned five”: about a month from the birthday on, where its day is known."""
    return not_far(birthday(born, years), 1, of_years=False)


def _later(day: Day, years: int) -> Day:
    """The same day so many years on. Raises NoSuchDate beyond the year 9999."""
    later = years_on(day.calendar_date, years) if day.calendar_date else None
    if later is None:
        raise NoSuchDate("When exactly was the birth?")
    return Day(later.year, later.month, later.day)
