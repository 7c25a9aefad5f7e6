"""The chart as text (our own drawing, no outside source)."""

from datetime import datetime, timedelta

from boxlore.core.originals.climate import Measurement
from boxlore.core.originals.climate_chart import bounds, ranges, text_chart

LOG: list[Measurement] = [(datetime(2026, 1, 1) + timedelta(hours=at), 15 + at % 10, 40.0) for at in range(100)]


def test_a_stretch_has_its_lowest_and_highest_value_and_a_gap_is_empty() -> None:
    assert ranges(LOG, 1, 10)[0] == (15, 24)
    gap = [*LOG[:10], *LOG[-10:]]
    assert ranges(gap, 1, 10)[5] is None
    assert ranges([], 1, 3) == [None] * 3


def test_the_scale_holds_every_value() -> None:
    assert bounds(ranges(LOG, 1, 10)) == (15, 25)
    assert bounds([(40.0, 40.0)]) == (40, 45)
    assert bounds([(-3.0, 4.0)]) == (-5, 5)


def test_both_panels_are_drawn_within_the_width() -> None:
    lines = text_chart(LOG, 60, 6)
    assert len(lines) == 2 * 7 + 1 and max(map(len, lines)) <= 60
    assert lines[0] == "Temperature, °C" and lines[7] == "Humidity, % RH"
    assert all("█" in lines[at] for at in range(1, 7))
    assert "2026-01-01" in lines[-1] and "2026-01-05" in lines[-1]
    assert text_chart([])[0] == "Temperature, °C"
