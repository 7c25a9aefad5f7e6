"""Climate: the dew point against published figures, the category and rate against their sources, rules at their edges.

Worked checks: 20 °C 50 % → 9.3 °C and 21 °C 65 % → 14.2 °C (Alduchov and Eskridge 1996, Magnus); 80 °F against 68 °F
= 2^1.2 = 2.3 (NEDCC 5.3); mean 20 °C is ROOM and 12 °C is COOL (Image Permanence Institute, FilmCare).
"""

import math
from datetime import datetime, timedelta

import pytest
from tests.every_row import every_row

from boxlore.core.originals.climate import (
    Measurement,
    category,
    celsius_of,
    climate_findings,
    decay_rate,
    dew_point,
    fahrenheit,
    figures_of,
    longest_run,
)

START = datetime(2026, 3, 2)


def log(*values: tuple[float, float], hours: float = 1) -> list[Measurement]:
    return [(START + timedelta(hours=hours) * at, t, rh) for at, (t, rh) in enumerate(values)]


def rules(readings: list[Measurement]) -> list[str]:
    return [one.rule.removeprefix("climate.") for one in climate_findings(figures_of(readings))]


@pytest.mark.parametrize(("t", "rh", "dew"), [(20, 50, 9.3), (21, 65, 14.2), (20, 100, 20.0)])
def test_the_dew_point_is_the_published_one(t: float, rh: float, dew: float) -> None:
    assert round(dew_point(t, rh), 1) == dew


@every_row("t", [-10, 0, 12.5, 35])
@every_row("rh", [5, 40, 99])
def test_the_dew_point_gives_back_the_humidity(t: float, rh: float) -> None:
    """The vapour pressure at the dew point is that of the air (the same paper, eq. 21: es = 6.1094 exp(...))."""

    def pressure(celsius: float) -> float:
        return 6.1094 * math.exp(17.625 * celsius / (243.04 + celsius))

    assert pressure(dew_point(t, rh)) == pytest.approx(pressure(t) * rh / 100, rel=1e-9)


@pytest.mark.parametrize(
    ("mean", "name"),
    [(20, "ROOM"), (12, "COOL"), (4, "COLD"), (0, "FROZEN"), (-18, "FROZEN"), (0.1, "FROZEN"), (16.1, "ROOM")],
)
def test_categories(mean: float, name: str) -> None:
    assert category(mean) == name


def test_the_rate_doubles_every_ten_fahrenheit() -> None:
    assert round(decay_rate(celsius_of(80)), 1) == 2.3
    assert decay_rate(celsius_of(78)) == pytest.approx(2)
    assert decay_rate(20) == pytest.approx(1)
    assert fahrenheit(celsius_of(71.5)) == pytest.approx(71.5)


@pytest.mark.parametrize(
    "readings",
    [[], log((20, 50)), log(*[(20, 90)] * 7, hours=24), log(*[(20, 90)] * 20, hours=1)],
)
def test_too_short_a_log_gets_no_verdict(readings: list[Measurement]) -> None:
    assert rules(readings) == ["short"]


@pytest.mark.parametrize(("days", "whole"), [(349, False), (350, True)])
def test_a_log_of_less_than_a_year_says_so(days: int, whole: bool) -> None:
    """350 days count as a year (common practice, no source)."""
    (found,) = climate_findings(figures_of(log(*[(18.0, 40.0)] * (days * 24 + 1))))
    assert ("less than a year: the other seasons are not in it" in found.because) is not whole


STEADY = [(18.0, 40.0)] * 30


@every_row(
    ("values", "rule"),
    [
        ([*STEADY, (18, 75.1)], "damp"),
        ([(18, 65)] * 48, "mould"),
        ([*STEADY, (18, 60)], "moist"),
        ([*STEADY, (18, 29.9)], "dry"),
        ([*STEADY, (18, 14.9)], "brittle"),
        ([(18, 40)] * 25 + [(18, 50.1)], "unstable"),
        ([*STEADY, (24.1, 40)], "warm"),
        ([*STEADY, (18, 85)], "condensation"),
    ],
)
def test_each_rule_fires_and_a_steady_cool_dry_room_asks_nothing(values: list[tuple[float, float]], rule: str) -> None:
    assert rule in rules(log(*values))
    assert rules(log(*STEADY)) == ["category"]


@pytest.mark.parametrize(
    ("values", "rule"),
    [
        ([*STEADY, (18, 75)], "damp"),
        ([(18, 65)] * 47, "mould"),
        ([*STEADY, (18, 59.9)], "moist"),
        ([*STEADY, (18, 30)], "dry"),
        ([(18, 40)] * 25 + [(18, 50)], "unstable"),
        ([*STEADY, (24, 40)], "warm"),
    ],
)
def test_at_its_edge_a_rule_is_quiet(values: list[tuple[float, float]], rule: str) -> None:
    assert rule not in rules(log(*values))


def test_a_gap_ends_a_damp_run() -> None:
    damp = log(*[(18, 70)] * 30)
    later = [(when + timedelta(hours=60), t, rh) for when, t, rh in damp]
    run = longest_run([*damp, *later], 65, timedelta(hours=1))
    assert run is not None and run.lasts == timedelta(hours=30)
    assert longest_run(log(*STEADY), 65, timedelta(hours=1)) is None


def test_the_computation_is_shown() -> None:
    found = {one.rule: one for one in climate_findings(figures_of(log(*[(celsius_of(80), 70)] * 72)))}
    assert "2^((80.0 - 68) / 10) = 2.3" in found["climate.warm"].because[0]
    assert found["climate.mould"].because == ("from 2026-03-02 00:00 to 2026-03-05 00:00",)
    assert "72 readings over 71 hours, longest gap 1 hours" in found["climate.category"].because[0]
    assert "doctor" in found["climate.mould"].message
