"""Reads the CSV of a temperature and humidity logger: columns, units, decimal sign, order of day and month, gaps.

Loggers differ in all of these. The heading tells most of it, the values tell the rest; what neither tells is asked of
the keeper, or assumed and then said in the notes. Rows that are no reading are counted and left out.

    log     = {setting} heading {row}               ; the heading stands in the first HEADING_WITHIN lines
    heading = cells that name a time, a temperature and a humidity, among any others
    row     = cells separated as in the heading, by tab, `;` or `,`
    time    = day [-./] month [-./] year, or year first; then hour:minute[:second] [am|pm] [Z|±hh:mm]
    value   = [-]digits[(. or ,)digits] and any unit   ; a comma only where it does not separate cells
"""

import csv
import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise
from statistics import median

from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
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
    """Where a log's columns are, and how its values are written.

    `heading` is the heading's line; `day`, `clock`, `temperature` and `humidity` are columns, all from 0. `clock` is -1
    where the column of the day holds the time too. `unit` is C, F or '' (not said). `named` are the headings of the
    columns of time, temperature and humidity.
    """

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
    """A log that was read, with its temperatures in °C.

    `unit` (C, F) and `order` (dmy, mdy, ymd) are those of the file; `left_out` counts rows that are no reading; `gaps`
    are (last time before, length); `clock_changes` are times; `notes` say all this in words.
    """

    readings: tuple[Measurement, ...]
    unit: str
    order: str
    left_out: int
    gaps: tuple[tuple[datetime, timedelta], ...]
    clock_changes: tuple[datetime, ...]
    notes: tuple[str, ...]


def read_log(text: str, *, unit: str = "", order: str = "") -> ClimateLog:
    """Read a logger's CSV. A `unit` given (C, F) is taken in any case, `order` (dmy, mdy) if the file leaves it open.

    Raises WrongUse if there is no heading to know the columns by, no time that can be read, or if the order of day
    and month stays open.
    """
    lines = text.lstrip("\ufeff").splitlines()
    columns = _columns(lines)
    # Each line is read alone, so that a quotation mark left open swallows none of the others.
    rows = [next(csv.reader([line], delimiter=columns.delimiter), []) for line in lines[columns.heading + 1 :]]
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
    plausible = [reading for reading in readings if -60 <= reading[1] <= 80]
    left_out += len(readings) - len(plausible)
    steady, changes = _steadied(plausible)
    gaps = _gaps(steady)
    return ClimateLog(
        readings=tuple(steady),
        unit=unit,
        order=order,
        left_out=left_out,
        gaps=tuple(gaps),
        clock_changes=tuple(changes),
        notes=tuple(_notes(columns, why, left_out, gaps, changes)),
    )


def _columns(lines: Sequence[str]) -> Columns:
    """Find the heading. Raises WrongUse if there is none."""
    for at, line in enumerate(lines[:HEADING_WITHIN]):
        for delimiter in ("\t", ";", ","):
            cells = [cell.strip() for cell in next(csv.reader([line], delimiter=delimiter), [])]
            indices = _column_indices(cells)
            if indices is not None:
                day, clock, temperature, humidity = indices
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


def _column_indices(cells: Sequence[str]) -> tuple[int, int, int, int] | None:
    """The columns of day, clock (-1 for none), temperature and humidity; None if the cells are no heading."""
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
    """(time as text, temperature, humidity) of each row, and how many rows are no reading.

    A reading has a humidity above 0 and at most 100.
    """
    raw: list[tuple[str, float, float]] = []
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
            raw.append((when.strip(), temperature, humidity))
        else:
            left_out += 1
    return raw, left_out


def _number(text: str, *, comma: bool) -> float:
    """A value with or without a unit; `comma` allows a decimal comma. Raises ValueError."""
    try:
        return float(text)
    except ValueError:
        match = _NUMBER.match(text.strip().replace("\N{MINUS SIGN}", "-"))
        if match is None:
            raise
        return float(match[0].replace(",", ".") if comma else match[0])


def _order(times: Sequence[str], preferred: str) -> str:
    """The order of day, month and year (ymd, dmy, mdy): the only one that the values allow; else the one preferred;
    else the one in which the times run on. Raises WrongUse if that leaves none or both."""
    parts = [(int(match[1]), int(match[2]), len(match[1])) for text in times if (match := _WHEN.match(text))]
    if not parts:
        raise WrongUse("No time in this file could be read.", "Times look like 2026-03-01 14:10 or 1.3.2026 14:10.")
    if all(wide == 4 for _, _, wide in parts):
        return "ymd"
    possible = [
        order
        for order, day, month in (("dmy", 0, 1), ("mdy", 1, 0))
        if all(figures[month] <= 12 and figures[day] <= 31 for figures in parts)
    ]
    if len(possible) > 1 and preferred not in possible:
        possible = [order for order in possible if _runs_on(times, order)] or possible
    if preferred in possible:
        return preferred
    if len(possible) == 1:
        return possible[0]
    if not possible:
        raise WrongUse("Days and months are mixed in this file.", "Mend the dates that differ from the others.")
    raise WrongUse("Which of the two figures is the day?", "Say --order dmy or --order mdy.")


def _runs_on(times: Sequence[str], order: str) -> bool:
    """Whether the times, read in this order, never jump back by two hours or more, nor ahead by two weeks or more."""
    read = _reader(order)
    values: list[datetime] = []
    for text in times:
        with suppress(ValueError):  # a row that is no reading is left out; it says nothing of the order
            values.append(read(text))
    return all(-2 * HOUR < after - before < timedelta(days=14) for before, after in pairwise(values))


def _reader(order: str) -> Callable[[str], datetime]:
    """The function that reads a time's text in this order, as local time. It raises ValueError."""
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


def _unit(columns: Columns, readings: Sequence[Measurement], asked_unit: str) -> tuple[str, str]:
    """The unit and why: what was asked for, else what the heading says, else F if the median is above 45."""
    if asked_unit:
        return asked_unit, "as asked"
    if columns.unit:
        return columns.unit, f"the heading “{columns.named[1]}”"
    if readings and median(reading[1] for reading in readings) > 45:
        return "F", "the heading does not say; nobody keeps a house above 45 °C"
    return "C", "the heading does not say; as °F it would be below freezing or nearly (say --unit F if it is)"


def _steadied(readings: Sequence[Measurement]) -> tuple[list[Measurement], list[datetime]]:
    """The readings in times that only go on, and the times of clock changes.

    Where the clock was put back an hour, an hour is added to all times after that, until it is put forward again. A
    log with the newest reading first is turned round.
    """
    if len(readings) > 1 and readings[0][0] > readings[-1][0]:
        readings = readings[::-1]
    interval = _interval(readings)
    offset = timedelta()
    steady: list[Measurement] = []
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
        if not steady or when + offset > steady[-1][0]:
            steady.append((when + offset, temperature, humidity))
        before = when
    return steady, changes


def _may_change(when: datetime) -> bool:
    """Whether clocks may be put forward at that hour: on a Sunday up to 4, in March, April, September or October."""
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
    gaps: Sequence[tuple[datetime, timedelta]],
    changes: Sequence[datetime],
) -> Iterator[str]:
    yield "columns: " + ", ".join(f"“{name}”" for name in columns.named)
    yield f"unit by {unit}"
    if left_out:
        yield f"{several(left_out, 'row is no reading and was', 'rows are no reading and were')} left out"
    for when, lasting in gaps[:3]:
        yield f"a gap of {lasting.total_seconds() / 3600:.1f} hours after {when:%Y-%m-%d %H:%M}"
    if len(gaps) > 3:
        yield several(len(gaps) - 3, "further gap")
    for when in changes:
        yield f"the clock was changed at {when:%Y-%m-%d %H:%M}; times from there on are counted without a break"
