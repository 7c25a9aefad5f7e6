"""The days that a feast's name and a year come to; whose holiday is asked where it matters."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cache, lru_cache

from boxlore.core.dates.calendars import (
    OUTSIDE,
    easter,
    from_hebrew,
    from_islamic,
    from_julian,
    hebrew_leap,
    orthodox_easter,
)  # fmt: skip
from boxlore.core.dates.context import NoSuchDate
from boxlore.core.dates.holidays_table import (
    END_OF_WAR,
    HOLIDAYS,
    NORTHERN_SUMMER,
    OUTBREAK_OF_WAR,
    SHARED,
    HolidayRow,
    Reckoning,
)


@dataclass(frozen=True, slots=True)
class HolidayDate:
    """EDTF of the day or days, a question, and what it would be elsewhere."""

    edtf: str
    ask: str | None = None
    alternatives: tuple[str, ...] = ()


_NAMES: dict[str, list[HolidayRow]] = {}
for _row in HOLIDAYS:
    for _name in _row[0]:
        _NAMES.setdefault(_name, []).append(_row)


def reckoned_by(name: str) -> frozenset[str]:
    """The kinds of rules by which a feast has been reckoned."""
    return frozenset(row[4][0] for row in _NAMES[name])


OF_SEVERAL_DAYS = frozenset(("span", "months", "easter span", "orthodox easter span", "advent"))
"""The kinds of rules of feasts that have a middle."""

OF_JULIAN = frozenset(name for name, rows in _NAMES.items() if rows[0][4][0] in ("julian", "orthodox easter"))
"""The feasts that are reckoned by the Julian calendar."""

LAST_OLD_STYLE = 1917
"""The last whole year in which Russia told its days by the Julian calendar."""

_SMALL = ("of", "the")
_INITIALS = ("ve", "vj", "v-e", "v-j", "d-day")

HOLIDAY_NAMES = frozenset(_NAMES)
"""Every name in the table, for the words of dates."""


@cache
def came_once(name: str) -> frozenset[str]:
    """The years of a day that came only then (the Armistice); none for a feast that comes every year."""
    rows = _NAMES[name]
    if all(row[4][0] == "on" for row in rows):
        return frozenset(str(row[4][1])[:4] for row in rows)
    return frozenset(str(row[2]) for row in rows) if all(row[2] == row[3] != 0 for row in rows) else frozenset()


def julian_day(name: str, year: int) -> str:
    """The Gregorian day of a feast with a fixed day in the Julian calendar, of a year of that calendar; empty for
    another feast."""
    match _NAMES[name][0][4]:
        case ("julian", int(month), int(day), *_):
            return str(from_julian(year, month, day))
    return ""


@lru_cache(2048)
def holiday(name: str, year: str, countries: tuple[str, ...] = (), hemisphere: str = "north") -> HolidayDate:
    """The date of a holiday in a year (four digits or X).

    Without a year, or in a decade, only a day that is the same each year can be given; without one it asks which year.
    """
    rows = _NAMES[name]
    if not year and (years := sorted(came_once(name))):
        if len(years) > 1:
            days = (reckoned(row[4], row[2] or int(str(row[4][1])[:4]), hemisphere)[0] for row in rows)
            return HolidayDate("", which(name), tuple(days))
        year = years[0]  # a day that came once in history
    if not year.isdigit():
        return _any_year(name, year, rows)
    days_by_country = _by_country(rows, int(year), hemisphere)
    if not days_by_country:
        if years := sorted(came_once(name)):
            days = (
                day
                for of in years
                for rows_days in _by_country(rows, int(of), hemisphere).values()
                for day in rows_days
            )
            return HolidayDate("", f"{titled(_called(name, rows))} was not in {year}. Which is right?", (*days, year))
        not_kept = f"{titled(name)} was not kept in {year}, as far as the table knows. Which year?"
        return HolidayDate("", not_kept, (year,))
    own = [days for country, days in days_by_country.items() if country and _is_in(country, countries)]
    wanted = own or [days for country, days in days_by_country.items() if not country]
    everywhere = list(dict.fromkeys(days for rows_days in (wanted or days_by_country.values()) for days in rows_days))
    ask = None
    if not wanted and (
        len(everywhere) > 1
        or (name in SHARED and len(days_by_country) > 1)
        or any(_is_in(country, countries) for row in rows for country in row[1].split())  # not yet kept there then
    ):
        lands = dict.fromkeys(country.partition("-")[0] for country in days_by_country if country)
        ask = f"Whose {titled(name)}? ({', '.join(lands)})"
    elif len(everywhere) > 1:
        ask = f"Which {titled(name)} is meant?"
    elif name in NORTHERN_SUMMER and hemisphere == "south":
        return HolidayDate(
            everywhere[0], f"Is {titled(name)} the northern one in June, or in December?", (f"{year}-12-21",)
        )
    return HolidayDate(everywhere[0], ask, tuple(everywhere[1:]))


def which(name: str) -> str:
    """The question which of the days is meant that have one name; one that tells what happened (“old king died”) stands
    as it is told."""
    called = _called(name, _NAMES[name])
    if _HAPPENED.intersection(called.split()):
        return f"Which day is meant by “{called}”?"
    return f"Which {titled(called)}?"


_HAPPENED = frozenset("died broke ended was were came began started fell abdicated finished declared".split())
"""Words of names that tell what happened."""


def _called(name: str, rows: Sequence[HolidayRow]) -> str:
    """How a question names a feast: an inflected name by the first of its row that differs in its ending alone."""
    for ways in (OUTBREAK_OF_WAR, END_OF_WAR):
        if name in ways:
            return ways[0]
    return next(other for other in rows[0][0] if other[:_ENDING] == name[:_ENDING] and len(other) == len(name))


_ENDING = -3


def is_within(told: str, feast: HolidayDate) -> bool:
    """Whether a day is that of a feast, or one of its days (Advent, the Christmas holidays)."""
    for days in (feast.edtf, *feast.alternatives):
        first, _, last = days.replace("~", "").partition("/")
        last = last or first
        if first[: len(told)] <= told and told[: len(last)] <= last:
            return True
    return False


def titled(name: str) -> str:
    """A name with capitals, as it is asked about."""
    return " ".join(
        word.upper() if word in _INITIALS else word if word in _SMALL else word[:1].upper() + word[1:]
        for word in name.split()
    )


def _any_year(name: str, year: str, rows: Sequence[HolidayRow]) -> HolidayDate:
    days = {row[4] for row in rows if row[4][0] == "fixed"}
    if len(days) != 1 or len({row[4] for row in rows}) != 1:
        return HolidayDate("", f"In which year was that {titled(name)}?")
    (rule,) = days
    ask = None if year else "In which year?"
    return HolidayDate(f"{year or 'XXXX'}-{rule[1]:02d}-{rule[2]:02d}", ask)  # type: ignore[misc]  # a fixed rule has both


def _is_in(country: str, countries: Sequence[str]) -> bool:
    return country in countries or country.partition("-")[0] in countries


def _by_country(rows: Sequence[HolidayRow], year: int, hemisphere: str) -> dict[str, list[str]]:
    """The days in each country, as EDTF; the first row that covers the year holds. Raises NoSuchDate for a day of
    another year than 1 to 9999: “Christmas 9999 or the year after”."""
    days_by_country: dict[str, list[str]] = {}
    for _, names, first, last, rule, _ in rows:
        for country in names.split() or [""]:
            if country not in days_by_country and (not first or first <= year) and (not last or year <= last):
                try:
                    days_by_country[country] = reckoned(rule, year, hemisphere)
                except (ValueError, OverflowError) as outside:
                    raise NoSuchDate(OUTSIDE) from outside
    return {country: days for country, days in days_by_country.items() if days}


def reckoned(rule: Reckoning, year: int, hemisphere: str = "north") -> list[str]:
    """The days that a rule gives in a year, as EDTF: mostly one; several where it comes twice, or may be meant
    twice."""
    match rule:
        case ("either", int(month), int(day), int(other_month), int(other_day)):
            return [str(date(year, month, day)), str(date(year, other_month, other_day))]
        case ("official", int(month), int(day)):
            kept = str(_nth(year, 6, 5, 2)) if year >= TROOPED_ON_SATURDAYS else _month(year, 6)
            return [kept, str(date(year, month, day))]
        case ("span", int(month), int(day), int(last_month), int(last_day)):
            return [
                f"{date(year, month, day)}/{date(year + ((last_month, last_day) < (month, day)), last_month, last_day)}"
            ]
        case ("julian", int(month), int(day)):
            return _of_julian(year, month, day)
        case ("julian", int(month), int(day), 0):
            of_the_church = _of_julian(year, month, day)
            return [of_the_church[0], str(date(year, month, day)), *of_the_church[1:]]
        case ("months", int(first), int(last), int(southern_first), int(southern_last)):
            begin, end = (southern_first, southern_last) if hemisphere == "south" else (first, last)
            if hemisphere == "south" and end < begin:  # as a summer there, it has the name of either year
                return [f"{_month(of, begin)}/{_month(of + 1, end)}" for of in (year, year - 1)]
            return [_months(year, begin, end)]
        case ("either months", int(first), int(last)):
            return [_month(year, first), _month(year, last)]
        case ("either spans", int(first), int(last), int(other_first), int(other_last)):
            return [_months(year, first, last), _months(year, other_first, other_last)]
        case ("turn of a year", _):
            return [f"{date(of, 12, 31)}/{date(of + 1, 1, 1)}" for of in (year, year - 1)]
        case ("advent", _):
            return [f"{day_of(('before', 12, 4, 6), year)}/{date(year, 12, 24)}"]
        case ("nth span", int(month), int(weekday), int(nth), int(first), int(last)):
            middle = _nth(year, month, weekday, nth)
            return [f"{middle + timedelta(first)}/{middle + timedelta(last)}"]
        case ("either easter", int(first), int(last)):
            return [str(easter(year) + timedelta(days)) for days in (first, last)]
        case ("easter span", int(first), int(last)):
            sunday = easter(year)
            return [f"{sunday + timedelta(first)}/{sunday + timedelta(last)}"]
        case ("orthodox easter span", int(first), int(last)):
            sunday = orthodox_easter(year)
            return [f"{sunday + timedelta(first)}/{sunday + timedelta(last)}"]
        case ("easter weeks", int(before), int(after)):
            return [
                f"{easter(year) + timedelta(first)}/{easter(year) + timedelta(first + 6)}" for first in (after, before)
            ]
        case ("hebrew", int(month), int(day), int(days)) if year >= HEBREW_YEARS:
            start = date(*from_hebrew(year, month or (13 if hebrew_leap(year) else 12), day))
            return _of_calendar([start], start.year, days, "")
        case ("either islamic", int(month), int(day), int(other_month), int(other_day)):
            return [
                text
                for of, on in ((month, day), (other_month, other_day))
                for text in reckoned(("islamic", of, on, 1), year, hemisphere)
            ]
        case ("hebrew", int(month), int(day), int(days)):
            return _of_calendar(
                [
                    date(*from_hebrew(lunar, month or (13 if hebrew_leap(lunar) else 12), day))
                    for lunar in (year + 3760, year + 3761)
                ],
                year,
                days,
                "",
            )
        case ("islamic", int(month), int(day), int(days)):
            near = (year - 622) * 33 // 32
            return _of_calendar(
                [date(*from_islamic(near + step, month, day)) for step in (-1, 0, 1, 2)], year, days, "~"
            )
    return [str(day_of(rule, year))]


def _month(year: int, month: int) -> str:
    return str(date(year, month, 1))[:7]


def _months(year: int, begin: int, end: int) -> str:
    """From one month to another, of the next year if that lies before it."""
    return _month(year, begin) + (f"/{_month(year + (end < begin), end)}" if begin != end else "")


HEBREW_YEARS = 5000
"""A year so late is one of the Hebrew calendar, where a feast of it is told: “Yom Kippur 5699”."""

TROOPED_ON_SATURDAYS = 1959
"""From this year on the sovereign's birthday is kept in Britain on a Saturday of June, mostly the second (from
memory)."""


def _of_julian(year: int, month: int, day: int) -> list[str]:
    """A day of the Julian calendar: in its own year while that was the civil one, in 1917 and before, and in the
    Gregorian year later, with the other behind it where these differ (Christmas Eve)."""
    own, before = (str(from_julian(one, month, day)) for one in (year, year - 1))
    if own[:4] == f"{year:04d}":
        return [own]
    return [own, before] if year <= LAST_OLD_STYLE else [before, own]


def _of_calendar(starts: list[date], year: int, days: int, mark: str) -> list[str]:
    texts = []
    for start in starts:
        if start.year == year:
            last = start + timedelta(days - 1)
            texts.append(f"{start}{mark}" if days == 1 else f"{start}{mark}/{last}{mark}")
    return texts


def day_of(rule: Reckoning, year: int) -> date:
    """The one day that a rule gives in a year."""
    match rule:
        case ("fixed", int(month), int(day)):
            return date(year, month, day)
        case ("end of the year before", _):
            return date(year - 1, 12, 31)
        case ("easter", int(days)):
            return easter(year) + timedelta(days)
        case ("orthodox easter", int(days)):
            return orthodox_easter(year) + timedelta(days)
        case ("nth", int(month), int(weekday), int(nth)):
            return _nth(year, month, weekday, nth)
        case ("nth", int(month), int(weekday), int(nth), int(days)):
            return _nth(year, month, weekday, nth) + timedelta(days)
        case ("near", int(month), int(day), int(weekday)):
            about = date(year, month, day)
            return about + timedelta((weekday - about.weekday() + 3) % 7 - 3)
        case ("before", int(month), int(day), int(weekday)):
            end = date(year, month, day) - timedelta(1)
            return end - timedelta((end.weekday() - weekday) % 7)
        case ("from", int(month), int(day), int(weekday)):
            begin = date(year, month, day)
            return begin + timedelta((weekday - begin.weekday()) % 7)
        case ("no sunday", int(month), int(day), int(days)):
            birthday = date(year, month, day)
            return birthday + timedelta(days) if birthday.weekday() == 6 else birthday
        case ("french mother's day", _):
            sunday = _nth(year, 5, 6, -1)
            return sunday + timedelta(7) if sunday == easter(year) + timedelta(49) else sunday
        case ("on", str(day)):
            return date.fromisoformat(day)
        case ("victoria", _):
            queens = date(year, 5, 24)
            return queens + timedelta(1) if queens.weekday() == 6 else queens
    raise AssertionError(f"no such rule: {rule}")


def _nth(year: int, month: int, weekday: int, nth: int) -> date:
    if nth < 0:
        end = date(year + month // 12, month % 12 + 1, 1) - timedelta(1)
        return end - timedelta((end.weekday() - weekday) % 7)
    start = date(year, month, 1)
    return start + timedelta((weekday - start.weekday()) % 7 + 7 * (nth - 1))
