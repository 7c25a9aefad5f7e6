"""The day that a holiday's name and a year come to; whose holiday is asked where it matters."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from boxlore.core.dates.calendars import easter, orthodox_easter
from boxlore.core.dates.holidays_table import HOLIDAYS, HolidayRow, Reckoning


@dataclass(frozen=True, slots=True)
class HolidayDate:
    """EDTF of the day, a question, and the days it would be elsewhere."""

    edtf: str
    ask: str | None = None
    alternatives: tuple[str, ...] = ()


_NAMES: dict[str, list[HolidayRow]] = {}
for _row in HOLIDAYS:
    for _name in _row[0]:
        _NAMES.setdefault(_name, []).append(_row)


def holiday(name: str, year: str, countries: Sequence[str] = ()) -> HolidayDate | None:
    """The date of a holiday; without a year only a fixed day can be given, and asks. None for a name unknown."""
    rows = _NAMES.get(name.strip().replace("the 4", "the fourth").replace("4 of july", "fourth of july"))
    if rows is None:
        return None
    if not year and all(row[4][0] == "on" for row in rows):
        year = str(rows[0][4][1])[:4]  # a day that came once in history
    if not year:
        days = {row[4] for row in rows if row[4][0] == "fixed"}
        if len(days) != 1:
            return HolidayDate("", f"In which year was that {name.title()}?")
        (rule,) = days
        return HolidayDate(f"XXXX-{rule[1]:02d}-{rule[2]:02d}", "In which year?")  # type: ignore[misc]  # a fixed rule has both
    full = f"19{year[1:]}" if year.startswith("'") else year
    asks = f"Is {full} meant?" if year.startswith("'") else None
    day_by_country = _by_country(rows, int(full))
    if not day_by_country:
        return HolidayDate("", f"{name.title()} was not kept in {full}, as far as the table knows. Which year?")
    wanted = [day for country, day in day_by_country.items() if not country or country in countries]
    days_there = list(dict.fromkeys(wanted or day_by_country.values()))
    only_somewhere = len(day_by_country) > 1 and not wanted and len(set(day_by_country.values())) > 1
    if only_somewhere:
        asks = f"Whose {name.title()}? ({', '.join(country for country in day_by_country if country)})"
    first = str(days_there[0])
    return HolidayDate(first, asks, tuple(str(day) for day in days_there[1:]))


def _by_country(rows: Sequence[HolidayRow], year: int) -> dict[str, date]:
    """The day in each country; the first row that covers the year holds."""
    day_by_country: dict[str, date] = {}
    for _, country, first, last, rule, _ in rows:
        if country not in day_by_country and (not first or first <= year) and (not last or year <= last):
            day_by_country[country] = day_of(rule, year)
    return day_by_country


def day_of(rule: Reckoning, year: int) -> date:
    """The day a rule gives in a year."""
    match rule:
        case ("fixed", int(month), int(day)):
            return date(year, month, day)
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
