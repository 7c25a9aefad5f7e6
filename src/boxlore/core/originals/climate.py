"""What a log of temperature and humidity says of a place, with the computation shown.

Dew point by the Magnus formula with the constants of Alduchov and Eskridge (1996): g = ln(RH/100) +
17.625 T / (243.04 + T), Td = 243.04 g / (17.625 - g). Categories by the anchor points of the Image Permanence
Institute (FilmCare: Storage Suitability). Rate: decay about doubles per 10 °F (NEDCC 5.3). A log that is too short
gets no verdict. Temperatures are in °C, humidity in percent; times are the log's own local times.
"""

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import groupby, pairwise
from operator import itemgetter
from statistics import fmean, median

from boxlore.core.findings import Finding, Severity

Measurement = tuple[datetime, float, float]
"""When, °C, % RH."""

ANCHORS = (("FROZEN", 0.0), ("COLD", 4.0), ("COOL", 12.0), ("ROOM", 20.0))
"""IPI: 32, 40, 54 and 68 °F; a mean at or below 0 °C is FROZEN, else the nearest anchor."""

FEWEST = 8
SHORTEST = timedelta(hours=24)
FULL_YEAR = timedelta(days=350)
DAMP_RUN = timedelta(hours=48)
"""A run at 65 % that is watched for mould; 48 hours is from memory: common practice, no source."""
COLD_WALL = 3.0
"""Between air and dew point, °C; from memory: common practice, no source."""
WARM = 24.0
"""75 °F, a home limit widely repeated from the National Archives."""


def dew_point(celsius: float, humidity: float) -> float:
    """The dew point in °C; humidity above 0."""
    gamma = math.log(humidity / 100) + 17.625 * celsius / (243.04 + celsius)
    return 243.04 * gamma / (17.625 - gamma)


def fahrenheit(celsius: float) -> float:
    return celsius * 9 / 5 + 32


def celsius_of(degrees: float) -> float:
    """°F → °C."""
    return (degrees - 32) * 5 / 9


def category(mean: float) -> str:
    """The IPI category of a mean temperature in °C."""
    if mean <= 0:
        return "FROZEN"
    return min(ANCHORS, key=lambda anchor: abs(anchor[1] - mean))[0]


def rate(celsius: float) -> float:
    """How much faster than at 68 °F (20 °C) things decay: 2 to the power of (°F - 68) / 10."""
    return float(2 ** ((fahrenheit(celsius) - 68) / 10))


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of readings without a gap."""

    since: datetime
    until: datetime

    @property
    def lasts(self) -> timedelta:
        return self.until - self.since


@dataclass(frozen=True, slots=True, kw_only=True)
class Climate:
    """What a log comes to. `swing` is the widest daily range of humidity with its day; `margin` the least
    distance of air from dew point, with when."""

    count: int
    since: datetime
    until: datetime
    interval: timedelta
    longest_gap: timedelta
    mean_t: float
    low_t: float
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
        return self.until - self.since

    @property
    def judged(self) -> bool:
        """Whether there is enough to judge."""
        return self.count >= FEWEST and self.spans >= SHORTEST


def summed(readings: Sequence[Measurement]) -> Climate | None:
    """The figures of a log in the order of its times; None for an empty one."""
    if not readings:
        return None
    steps = [after[0] - before[0] for before, after in pairwise(readings)]
    interval = timedelta(seconds=median(step.total_seconds() for step in steps)) if steps else timedelta()
    temperatures = [one[1] for one in readings]
    humidities = [one[2] for one in readings]
    dews = [dew_point(t, rh) for _, t, rh in readings]
    margin, at = min((t - dew, when) for (when, t, _), dew in zip(readings, dews, strict=True))
    swing, day = max(_swings(readings))
    return Climate(
        count=len(readings),
        since=readings[0][0],
        until=readings[-1][0],
        interval=interval,
        longest_gap=max(steps, default=timedelta()),
        mean_t=fmean(temperatures),
        low_t=min(temperatures),
        high_t=max(temperatures),
        mean_rh=fmean(humidities),
        low_rh=min(humidities),
        high_rh=max(humidities),
        mean_dew=fmean(dews),
        damp=longest_run(readings, 65, interval),
        swing=swing,
        swing_on=day,
        margin=margin,
        margin_at=at,
    )


def _swings(readings: Sequence[Measurement]) -> Iterator[tuple[float, str]]:
    for day, some in groupby(readings, key=lambda one: one[0].date()):
        values = list(map(itemgetter(2), some))
        yield max(values) - min(values), day.isoformat()


def is_gap(step: timedelta, interval: timedelta) -> bool:
    """Whether two readings lie so far apart that nothing is known between them: over 2½ intervals and an hour."""
    return step > max(interval * 2.5, timedelta(hours=1))


def longest_run(readings: Sequence[Measurement], at_least: float, interval: timedelta) -> Stretch | None:
    """The longest stretch with humidity at or above a bound; a gap ends it. The last reading counts its interval."""
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


def _longer(one: Stretch | None, other: Stretch) -> Stretch:
    return other if one is None or other.lasts > one.lasts else one


def climate_findings(one: Climate | None) -> list[Finding]:
    """Every finding, hazards first in RULES; none but its shortness for a log that is too short."""
    if one is None or not one.judged:
        count = one.count if one else 0
        span = _lasting(one.spans) if one else "no time"
        because = f"{count} readings over {span}; at least {FEWEST} over 24 hours are needed"
        message = "This log is too short to judge; a full year is wanted."
        return [_finding("climate.short", Severity.NOTE, message, "common practice, no source", because)]
    return [finding for rule in RULES for finding in rule(one)]


def _category(one: Climate) -> Iterator[Finding]:
    name = category(one.mean_t)
    message = f"On average {_degrees(one.mean_t)}: the category {name}."
    because = [f"{one.count} readings over {_lasting(one.spans)}, longest gap {_lasting(one.longest_gap)}"]
    if one.spans < FULL_YEAR:
        because.append("less than a year: the other seasons are not in it")
    source = "Image Permanence Institute, FilmCare: anchors 20, 12, 4 and 0 °C"
    yield _finding("climate.category", Severity.NOTE, message, source, *because)


def _damp(one: Climate) -> Iterator[Finding]:
    if one.high_rh > 75:
        message = f"Damp: humidity reached {one.high_rh:.0f} %. Act now: move the boxes, find the water, dry the room."
        source = "CCI, Michalski, Incorrect Relative Humidity: damp is over 75 %"
        yield _finding("climate.damp", Severity.ASK, message, source, f"highest reading {one.high_rh:.1f} %")


MOULD_CAUTION = (
    "Mould is a health hazard: if you see any, bag it, do not brush it, and call a photograph conservator, "
    "and a doctor if anyone feels ill."
)


def _mould(one: Climate) -> Iterator[Finding]:
    if one.damp is not None and one.damp.lasts >= DAMP_RUN:
        lasting = _lasting(one.damp.lasts)
        message = f"Mould watch: {lasting} at 65 % or more without a break. Look at the boxes. {MOULD_CAUTION}"
        because = f"from {one.damp.since:%Y-%m-%d %H:%M} to {one.damp.until:%Y-%m-%d %H:%M}"
        source = (
            "no mould below 65 % RH: Image Permanence Institute’s risk rule; 48 hours: common practice, from memory"
        )
        yield _finding("climate.mould", Severity.ASK, message, source, because)


def _moist(one: Climate) -> Iterator[Finding]:
    if 60 <= one.high_rh < 65:
        message = f"Humidity reached {one.high_rh:.0f} %: above 60 % decay goes faster."
        source = "Library of Congress (2008 text); British Library, Conservation advice for the public"
        yield _finding("climate.moist", Severity.NOTE, message, source, f"mean {one.mean_rh:.0f} %")


def _dry(one: Climate) -> Iterator[Finding]:
    if one.low_rh < 15:
        message = f"Humidity fell to {one.low_rh:.0f} %: prints are brittle now, do not flex them."
        source = "home limits widely repeated from the National Archives: above 15 % RH"
        yield _finding("climate.brittle", Severity.ASK, message, source, f"lowest reading {one.low_rh:.1f} %")
    elif one.low_rh < 30:
        message = f"Humidity fell to {one.low_rh:.0f} %, below the band of 30 to 50 %: watch for curl and flaking."
        source = "ISO 18920 and Library of Congress: 30-50 % and 30-40 %; NARA quotes 35-50 %"
        yield _finding("climate.dry", Severity.NOTE, message, source, f"lowest reading {one.low_rh:.1f} %")


def _unstable(one: Climate) -> Iterator[Finding]:
    if one.swing > 10:
        message = f"Unstable: humidity swung {one.swing:.0f} points within one day ({one.swing_on})."
        source = "±5 % RH in 24 hours, the ISO daily limit: from memory; Clark 1990 as cited: 5 %"
        yield _finding("climate.unstable", Severity.NOTE, message, source, "highest less lowest of that day, over 10")


def _warm(one: Climate) -> Iterator[Finding]:
    if one.mean_t > WARM or one.high_t > WARM:
        at = one.mean_t if one.mean_t > WARM else one.high_t
        what = "on average" if one.mean_t > WARM else "at its warmest"
        because = f"2^(({fahrenheit(at):.1f} - 68) / 10) = {rate(at):.1f}"
        message = f"Warm: {_degrees(at)} {what}; things decay {rate(at):.1f} times as fast as at 68 °F (20 °C)."
        yield _finding("climate.warm", Severity.NOTE, message, "NEDCC 5.3: decay about doubles per 10 °F", because)


def _condensation(one: Climate) -> Iterator[Finding]:
    if one.margin < COLD_WALL:
        message = f"Water may settle on cold walls: the air came within {one.margin:.1f} °C of its dew point."
        because = f"{one.margin_at:%Y-%m-%d %H:%M}; dew point by Magnus, mean {one.mean_dew:.1f} °C"
        source = "Alduchov and Eskridge 1996 for the dew point; the margin of 3 °C: common practice, from memory"
        yield _finding("climate.condensation", Severity.ASK, message, source, because)


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


def _finding(rule: str, severity: Severity, message: str, source: str, *because: str) -> Finding:
    return Finding(rule=rule, severity=severity, message=message, because=because, source=source)
