"""What a log of temperature and humidity means for originals, with the computation shown.

Units: °C, relative humidity in percent (% RH), and the log's own local times.

Dew point: the Magnus formula with the constants of Alduchov and Eskridge (1996): g = ln(RH/100) +
17.625 T / (243.04 + T), Td = 243.04 g / (17.625 - g). Categories: the anchor points of the Image Permanence
Institute (FilmCare: Storage Suitability). Rate: decay about doubles per 10 °F (NEDCC 5.3). A log that is too short
gets one finding that says so, and no other.
"""

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import groupby, pairwise
from operator import itemgetter
from statistics import fmean, median

from boxlore.core.findings import Finding, Severity, make_finding

Measurement = tuple[datetime, float, float]
"""(time, °C, % RH)."""

ANCHORS = (("FROZEN", 0.0), ("COLD", 4.0), ("COOL", 12.0), ("ROOM", 20.0))
"""IPI: 32, 40, 54 and 68 °F; a mean at or below 0 °C is FROZEN, else the nearest anchor."""

FEWEST = 8
"""The fewest readings of a log that is judged (common practice, no source)."""
SHORTEST = timedelta(hours=24)
"""The shortest time that they may span (common practice, no source)."""
FULL_YEAR = timedelta(days=350)
DAMP = 65
"""Relative humidity in per cent from which mould can grow (Image Permanence Institute’s risk rule)."""
DAMP_RUN = timedelta(hours=48)
"""How long humidity may stay at 65 % before mould is watched for; from memory: common practice, no source."""
COLD_WALL = 3.0
"""The least difference between air and dew point, in °C; from memory: common practice, no source."""
WARM = 24.0
"""In °C: 75 °F, a home limit widely repeated from the National Archives."""


def dew_point(celsius: float, humidity: float) -> float:
    """The dew point in °C. `humidity` must be above 0."""
    gamma = math.log(humidity / 100) + 17.625 * celsius / (243.04 + celsius)
    return 243.04 * gamma / (17.625 - gamma)


def fahrenheit(celsius: float) -> float:
    """Degrees Celsius in °F."""
    return celsius * 9 / 5 + 32


def celsius_of(degrees: float) -> float:
    """Degrees Fahrenheit in °C."""
    return (degrees - 32) * 5 / 9


def category(mean: float) -> str:
    """The IPI category of a mean temperature in °C."""
    if mean <= 0:
        return "FROZEN"
    return min(ANCHORS, key=lambda anchor: abs(anchor[1] - mean))[0]


def decay_rate(celsius: float) -> float:
    """How many times as fast as at 68 °F (20 °C) things decay: 2 to the power of (°F - 68) / 10."""
    return float(2 ** ((fahrenheit(celsius) - 68) / 10))


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of time with readings and without a gap."""

    since: datetime
    until: datetime

    @property
    def lasts(self) -> timedelta:
        """How long the stretch is."""
        return self.until - self.since


@dataclass(frozen=True, slots=True, kw_only=True)
class Climate:
    """The figures of a log: mean, lowest and highest temperature (t), humidity (rh) and mean dew point.

    `interval` is the usual time between readings; `damp` the longest stretch at 65 % or more; `swing` the widest range
    of humidity within one day, and `swing_on` that day; `margin` the least difference between air and dew point in °C,
    and `margin_at` its time.
    """

    count: int
    since: datetime
    until: datetime
    longest_gap: timedelta
    mean_t: float
    high_t: float
    mean_rh: float
    low_rh: float
    high_rh: float
    mean_dew: float
    damp: Stretch | None
    swing: float
    swing_on: str
    margin: float
    margin_at: datetime

    @property
    def spans(self) -> timedelta:
        """The time from the first reading to the last."""
        return self.until - self.since

    @property
    def judged(self) -> bool:
        """Whether there is enough to judge."""
        return self.count >= FEWEST and self.spans >= SHORTEST


def figures_of(readings: Sequence[Measurement]) -> Climate | None:
    """The figures of a log, whose readings stand in the order of their times; None for an empty log."""
    if not readings:
        return None
    steps = [after[0] - before[0] for before, after in pairwise(readings)]
    interval = timedelta(seconds=median(step.total_seconds() for step in steps)) if steps else timedelta()
    temperatures = [reading[1] for reading in readings]
    humidities = [reading[2] for reading in readings]
    dews = [dew_point(t, rh) for _, t, rh in readings]
    margin, at = min((t - dew, when) for (when, t, _), dew in zip(readings, dews, strict=True))
    swing, day = max(_swings(readings))
    return Climate(
        count=len(readings),
        since=readings[0][0],
        until=readings[-1][0],
        longest_gap=max(steps, default=timedelta()),
        mean_t=fmean(temperatures),
        high_t=max(temperatures),
        mean_rh=fmean(humidities),
        low_rh=min(humidities),
        high_rh=max(humidities),
        mean_dew=fmean(dews),
        damp=longest_run(readings, DAMP, interval),
        swing=swing,
        swing_on=day,
        margin=margin,
        margin_at=at,
    )


def _swings(readings: Sequence[Measurement]) -> Iterator[tuple[float, str]]:
    """(highest less lowest humidity, day in ISO 8601) for each day."""
    for day, of_day in groupby(readings, key=lambda reading: reading[0].date()):
        values = list(map(itemgetter(2), of_day))
        yield max(values) - min(values), day.isoformat()


def is_gap(step: timedelta, interval: timedelta) -> bool:
    """Whether two readings are so far apart that nothing is known between them: over 2½ intervals, and over an hour."""
    return step > max(interval * 2.5, timedelta(hours=1))


def longest_run(readings: Sequence[Measurement], at_least: float, interval: timedelta) -> Stretch | None:
    """The longest stretch with humidity of `at_least`; a gap ends it. It lasts one interval past its last reading."""
    longest: Stretch | None = None
    since: datetime | None = None
    last: datetime | None = None
    for when, _, humidity in readings:
        if since is not None and last is not None and (humidity < at_least or is_gap(when - last, interval)):
            longest = _longer(longest, Stretch(since, last + interval))
            since = None
        if humidity >= at_least:
            since = since or when
            last = when
    if since is not None and last is not None:
        longest = _longer(longest, Stretch(since, last + interval))
    return longest


def _longer(longest: Stretch | None, stretch: Stretch) -> Stretch:
    return stretch if longest is None or stretch.lasts > longest.lasts else longest


def climate_findings(climate: Climate | None) -> list[Finding]:
    """Every finding about a log, in the order of RULES, which has hazards first; only one if it is too short."""
    if climate is None or not climate.judged:
        count = climate.count if climate else 0
        span = _lasting(climate.spans) if climate else "no time"
        because = f"{count} readings over {span}; at least {FEWEST} over 24 hours are needed"
        message = "This log is too short to judge; a full year is wanted."
        return [make_finding("climate.short", Severity.NOTE, message, "common practice, no source", because)]
    return [finding for rule in RULES for finding in rule(climate)]


def _category(climate: Climate) -> Iterator[Finding]:
    name = category(climate.mean_t)
    message = f"On average {_degrees(climate.mean_t)}: the category {name}."
    because = [f"{climate.count} readings over {_lasting(climate.spans)}, longest gap {_lasting(climate.longest_gap)}"]
    if climate.spans < FULL_YEAR:
        because.append("less than a year: the other seasons are not in it")
    source = "Image Permanence Institute, FilmCare: anchors 20, 12, 4 and 0 °C"
    yield make_finding("climate.category", Severity.NOTE, message, source, *because)


def _damp(climate: Climate) -> Iterator[Finding]:
    if climate.high_rh > 75:
        message = (
            f"Damp: humidity reached {climate.high_rh:.0f} %. Act now: move the boxes, find the water, dry the room."
        )
        source = "CCI, Michalski, Incorrect Relative Humidity: damp is over 75 %"
        yield make_finding("climate.damp", Severity.ASK, message, source, f"highest reading {climate.high_rh:.1f} %")


MOULD_CAUTION = (
    "Mould is a health hazard: if you see any, bag it, do not brush it, and call a photograph conservator, "
    "and a doctor if anyone feels ill."
)


def _mould(climate: Climate) -> Iterator[Finding]:
    if climate.damp is not None and climate.damp.lasts >= DAMP_RUN:
        lasting = _lasting(climate.damp.lasts)
        message = f"Mould watch: {lasting} at {DAMP} % or more without a break. Look at the boxes. {MOULD_CAUTION}"
        because = f"from {climate.damp.since:%Y-%m-%d %H:%M} to {climate.damp.until:%Y-%m-%d %H:%M}"
        source = (
            "no mould below 65 % RH: Image Permanence Institute’s risk rule; 48 hours: common practice, from memory"
        )
        yield make_finding("climate.mould", Severity.ASK, message, source, because)


def _moist(climate: Climate) -> Iterator[Finding]:
    if 60 <= climate.high_rh < DAMP:
        message = f"Humidity reached {climate.high_rh:.0f} %: above 60 % decay goes faster."
        source = "Library of Congress (2008 text); British Library, Conservation advice for the public"
        yield make_finding("climate.moist", Severity.NOTE, message, source, f"mean {climate.mean_rh:.0f} %")


def _dry(climate: Climate) -> Iterator[Finding]:
    if climate.low_rh < 15:
        message = f"Humidity fell to {climate.low_rh:.0f} %: prints are brittle now, do not flex them."
        source = "home limits widely repeated from the National Archives: above 15 % RH"
        yield make_finding("climate.brittle", Severity.ASK, message, source, f"lowest reading {climate.low_rh:.1f} %")
    elif climate.low_rh < 30:
        message = f"Humidity fell to {climate.low_rh:.0f} %, below the band of 30 to 50 %: watch for curl and flaking."
        source = "ISO 18920 and Library of Congress: 30-50 % and 30-40 %; NARA quotes 35-50 %"
        yield make_finding("climate.dry", Severity.NOTE, message, source, f"lowest reading {climate.low_rh:.1f} %")


def _unstable(climate: Climate) -> Iterator[Finding]:
    if climate.swing > 10:
        message = f"Unstable: humidity swung {climate.swing:.0f} points within one day ({climate.swing_on})."
        source = "±5 % RH in 24 hours, the ISO daily limit: from memory; Clark 1990 as cited: 5 %"
        yield make_finding(
            "climate.unstable", Severity.NOTE, message, source, "highest less lowest of that day, over 10"
        )


def _warm(climate: Climate) -> Iterator[Finding]:
    if climate.mean_t > WARM or climate.high_t > WARM:
        celsius = climate.mean_t if climate.mean_t > WARM else climate.high_t
        when = "on average" if climate.mean_t > WARM else "at its warmest"
        rate = decay_rate(celsius)
        because = f"2^(({fahrenheit(celsius):.1f} - 68) / 10) = {rate:.1f}"
        message = f"Warm: {_degrees(celsius)} {when}; things decay {rate:.1f} times as fast as at 68 °F (20 °C)."
        yield make_finding("climate.warm", Severity.NOTE, message, "NEDCC 5.3: decay about doubles per 10 °F", because)


def _condensation(climate: Climate) -> Iterator[Finding]:
    if climate.margin < COLD_WALL:
        message = f"Water may settle on cold walls: the air came within {climate.margin:.1f} °C of its dew point."
        because = f"{climate.margin_at:%Y-%m-%d %H:%M}; dew point by Magnus, mean {climate.mean_dew:.1f} °C"
        source = "Alduchov and Eskridge 1996 for the dew point; the margin of 3 °C: common practice, from memory"
        yield make_finding("climate.condensation", Severity.ASK, message, source, because)


RULES: tuple[Callable[[Climate], Iterator[Finding]], ...] = (
    _damp,
    _mould,
    _condensation,
    _category,
    _warm,
    _moist,
    _dry,
    _unstable,
)


def _degrees(celsius: float) -> str:
    return f"{celsius:.1f} °C ({fahrenheit(celsius):.0f} °F)"


def _lasting(span: timedelta) -> str:
    hours = span.total_seconds() / 3600
    if hours < 1:
        return f"{hours * 60:.0f} minutes"
    return f"{hours:.0f} hours" if hours < 96 else f"{hours / 24:.0f} days"
