"""A logger's CSV → readings: its columns, units, decimal sign, order of day and month, gaps and clock changes.

Loggers differ in all of these; the heading says most of it, the values the rest, and what neither says is asked,
never guessed in silence. A reading that is no reading (empty, text, out of bounds) is counted and left out.
"""

import csv
import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise
from statistics import median

from boxlore.core.errors import WrongUse
from boxlore.core.originals.climate import Measurement, celsius_of

HEADING_WITHIN = 60
"""Lines at the top in which a heading is looked for: loggers print their settings first."""

_TIME = re.compile(r"\b(?:date|time|timestamp|datetime|datum|zeit|fecha|kuupäev|aeg)\b|date.?time", re.IGNORECASE)
_CLOCK = re.compile(r"^\W*(?:time|zeit|aeg|clock)\b", re.IGNORECASE)
_TEMPERATURE = re.compile(r"temp|celsius|fahrenheit|[°º]\s*[cf]\b", re.IGNORECASE)
_HUMIDITY = re.compile(r"humid|\brh\b|%\s*rh|r\.h\.|feuchte|niiskus", re.IGNORECASE)
_OTHER = re.compile(r"dew|min\b|max\b|minimum|maximum|alarm|battery|host|setting", re.IGNORECASE)
_UNIT_F = re.compile(r"fahrenheit|[°º]\s*f\b|\bf\b|_f\b|\(f\)", re.IGNORECASE)
_UNIT_C = re.compile(r"celsius|[°º]\s*c\b|\bc\b|_c\b|\(c\)", re.IGNORECASE)
_NUMBER = re.compile(r"-?\d+(?:[.,]\d+)?")
_WHEN = re.compile(
    r"(\d{1,4})[-./](\d{1,2})[-./](\d{1,4})[T ,]*(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*([AaPp]\.?[Mm]\.?)?"
    r"\s*(Z|[+-]\d{2}:?\d{2})?\Z"
)
HOUR = timedelta(hours=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Columns:
    """Where a log's columns are, and how its values are written. `clock` is -1 where the date column holds both."""

    heading: int
    delimiter: str
    day: int
    clock: int
    temperature: int
    humidity: int
    unit: str
    named: tuple[str, str, str]


@dataclass(frozen=True, slots=True, kw_only=True)
class ClimateLog:
    """A log as read. `notes` say what was understood and what was left out, in words."""

    readings: tuple[Measurement, ...]
    unit: str
    order: str
    left_out: int
    gaps: tuple[tuple[datetime, timedelta], ...]
    clock_changes: tuple[datetime, ...]
    notes: tuple[str, ...]


def read_log(text: str, *, unit: str = "", order: str = "") -> ClimateLog:
    """Read a logger's CSV. `unit` (C, F) and `order` (dmy, mdy) hold where the file does not say.

    Raises WrongUse where there is no heading to know columns by, or where the order of day and month stays open.
    """
    lines = text.lstrip("\ufeff").splitlines()
    columns = _columns(lines)
    rows = list(csv.reader(lines[columns.heading + 1 :], delimiter=columns.delimiter))
    raw, left_out = _raw(rows, columns)
    order = _order([when for when, _, _ in raw], order)
    read = _reader(order)
    readings: list[Measurement] = []
    for when, temperature, humidity in raw:
        try:
            readings.append((read(when), temperature, humidity))
        except ValueError:
            left_out += 1
    unit, why = _unit(columns, readings, unit)
    if unit == "F":
        readings = [(when, celsius_of(temperature), humidity) for when, temperature, humidity in readings]
    plausible = [one for one in readings if -60 <= one[1] <= 80]
    left_out += len(readings) - len(plausible)
    steady, changes = _steadied(plausible)
    found = _gaps(steady)
    return ClimateLog(
        readings=tuple(steady),
        unit=unit,
        order=order,
        left_out=left_out,
        gaps=tuple(found),
        clock_changes=tuple(changes),
        notes=tuple(_notes(columns, why, left_out, found, changes)),
    )


def _columns(lines: Sequence[str]) -> Columns:
    for at, line in enumerate(lines[:HEADING_WITHIN]):
        for delimiter in ("\t", ";", ","):
            cells = [cell.strip() for cell in next(csv.reader([line], delimiter=delimiter), [])]
            found = _known(cells)
            if found is not None:
                day, clock, temperature, humidity = found
                heading = cells[temperature]
                unit = "F" if _UNIT_F.search(heading) else "C" if _UNIT_C.search(heading) else ""
                return Columns(
                    heading=at,
                    delimiter=delimiter,
                    day=day,
                    clock=clock,
                    temperature=temperature,
                    humidity=humidity,
                    unit=unit,
                    named=(cells[day], heading, cells[humidity]),
                )
    raise WrongUse(
        "No line of this file names columns for time, temperature and humidity.",
        "Its heading should hold words such as: Time, Temperature (°C), Humidity (%).",
    )


def _known(cells: Sequence[str]) -> tuple[int, int, int, int] | None:
    """The columns of day, clock (or -1), temperature and humidity, if the cells are a heading."""
    if len(cells) < 3:
        return None
    plain = [at for at, cell in enumerate(cells) if not _OTHER.search(cell)]
    temperatures = [at for at in plain if _TEMPERATURE.search(cells[at]) and not _HUMIDITY.search(cells[at])]
    humidities = [at for at in plain if _HUMIDITY.search(cells[at])]
    times = [at for at in plain if _TIME.search(cells[at]) and at not in (*temperatures, *humidities)]
    if not (times and temperatures and humidities):
        return None
    clocks = [at for at in times if _CLOCK.search(cells[at])]
    days = [at for at in times if at not in clocks]
    if days and clocks:
        return days[0], clocks[0] if "time" not in cells[days[0]].casefold() else -1, temperatures[0], humidities[0]
    return times[0], -1, temperatures[0], humidities[0]


def _raw(rows: Iterable[Sequence[str]], columns: Columns) -> tuple[list[tuple[str, float, float]], int]:
    """Times as text with both values; how many rows were no reading. Humidity is above 0 and at most 100."""
    found: list[tuple[str, float, float]] = []
    left_out = 0
    comma = columns.delimiter != ","
    for row in rows:
        if not any(row):
            continue
        try:
            when = row[columns.day] if columns.clock < 0 else f"{row[columns.day]} {row[columns.clock]}"
            temperature, humidity = (_number(row[at], comma=comma) for at in (columns.temperature, columns.humidity))
        except (IndexError, ValueError):
            left_out += 1
            continue
        if 0 < humidity <= 100:
            found.append((when.strip(), temperature, humidity))
        else:
            left_out += 1
    return found, left_out


def _number(text: str, *, comma: bool) -> float:
    """A value, with its unit or without. Raises ValueError for none."""
    try:
        return float(text)
    except ValueError:
        match = _NUMBER.match(text.strip().replace("\N{MINUS SIGN}", "-"))
        if match is None:
            raise
        return float(match[0].replace(",", ".") if comma else match[0])


def _order(times: Sequence[str], wanted: str) -> str:
    """The order of day and month: what the values allow, else the order in which time runs on, else what is wanted."""
    parts = [(int(match[1]), int(match[2]), len(match[1])) for text in times if (match := _WHEN.match(text))]
    if not parts:
        raise WrongUse("No time in this file could be read.", "Times look like 2026-03-01 14:10 or 1.3.2026 14:10.")
    if all(wide == 4 for _, _, wide in parts):
        return "ymd"
    could = [
        order
        for order, day, month in (("dmy", 0, 1), ("mdy", 1, 0))
        if all(one[month] <= 12 and one[day] <= 31 for one in parts)
    ]
    if len(could) > 1 and wanted not in could:
        could = [order for order in could if _runs_on(times, order)] or could
    if wanted in could:
        return wanted
    if len(could) == 1:
        return could[0]
    if not could:
        raise WrongUse("Days and months are mixed in this file.", "Mend the dates that differ from the others.")
    raise WrongUse("Which of the two figures is the day?", "Say --order dmy or --order mdy.")


def _runs_on(times: Sequence[str], order: str) -> bool:
    """Whether the times, so read, never jump back by more than a clock change nor ahead by more than a fortnight."""
    read = _reader(order)
    values: list[datetime] = []
    for text in times:
        try:
            values.append(read(text))
        except ValueError:
            return False
    return all(-2 * HOUR < after - before < timedelta(days=14) for before, after in pairwise(values))


def _reader(order: str) -> Callable[[str], datetime]:
    """A function from a time's text to the local time. Raises ValueError for no time."""
    year, month, day = (order.index(letter) + 1 for letter in "ymd")

    def read(text: str) -> datetime:
        match = _WHEN.match(text)
        if match is None:
            raise ValueError(text)
        hour = int(match[4])
        if match[7]:
            hour = hour % 12 + (12 if match[7][0] in "Pp" else 0)
        full = int(match[year])
        full += 2000 if full < 100 else 0
        return datetime(full, int(match[month]), int(match[day]), hour, int(match[5]), int(match[6] or 0))

    return read


def _unit(columns: Columns, readings: Sequence[Measurement], wanted: str) -> tuple[str, str]:
    """The unit and why: what the heading says, what was asked for, else what the values can only be."""
    if wanted:
        return wanted, "as asked"
    if columns.unit:
        return columns.unit, f"the heading “{columns.named[1]}”"
    if readings and median(one[1] for one in readings) > 45:
        return "F", "the heading does not say; nobody keeps a house above 45 °C"
    return "C", "the heading does not say; as °F it would be below freezing or nearly (say --unit F if it is)"


def _steadied(readings: Sequence[Measurement]) -> tuple[list[Measurement], list[datetime]]:
    """Times that only go on: where the clock was put back an hour, what follows is put on again, until it is
    put forward. A log whose newest reading stands first is turned round."""
    if len(readings) > 1 and readings[0][0] > readings[-1][0]:
        readings = readings[::-1]
    interval = _interval(readings)
    offset = timedelta()
    found: list[Measurement] = []
    changes: list[datetime] = []
    before: datetime | None = None
    for when, temperature, humidity in readings:
        step = when - before if before is not None else interval
        if -HOUR <= step <= timedelta() and abs(step + HOUR - interval) <= interval / 2:
            offset += HOUR
            changes.append(when)
        elif abs(step - HOUR - interval) <= interval / 2 and interval < HOUR and _may_change(when):
            offset -= HOUR
            changes.append(when)
        if not found or when + offset > found[-1][0]:
            found.append((when + offset, temperature, humidity))
        before = when
    return found, changes


def _may_change(when: datetime) -> bool:
    """The hours in which clocks are put forward: a Sunday's first four, in March, April, September or October."""
    return when.weekday() == 6 and when.hour <= 4 and when.month in (3, 4, 9, 10)


def _interval(readings: Sequence[Measurement]) -> timedelta:
    steps = [(after[0] - before[0]).total_seconds() for before, after in pairwise(readings)]
    return timedelta(seconds=median(steps)) if steps else timedelta()


def _gaps(readings: Sequence[Measurement]) -> list[tuple[datetime, timedelta]]:
    limit = max(_interval(readings) * 2.5, HOUR)
    return [(before[0], step) for before, after in pairwise(readings) if (step := after[0] - before[0]) > limit]


def _notes(
    columns: Columns,
    unit: str,
    left_out: int,
    found: Sequence[tuple[datetime, timedelta]],
    changes: Sequence[datetime],
) -> Iterator[str]:
    yield "columns: " + ", ".join(f"“{name}”" for name in columns.named)
    yield f"unit by {unit}"
    if left_out:
        yield f"{left_out} rows are no reading and were left out"
    for when, lasting in found[:3]:
        yield f"a gap of {lasting.total_seconds() / 3600:.1f} hours after {when:%Y-%m-%d %H:%M}"
    if len(found) > 3:
        yield f"{len(found) - 3} further gaps"
    for when in changes:
        yield f"the clock was changed at {when:%Y-%m-%d %H:%M}; times from there on are counted without a break"
