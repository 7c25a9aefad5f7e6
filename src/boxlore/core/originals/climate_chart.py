"""A climate log as a chart of text; `ranges` and `bounds` also serve the chart that is a picture.

Each column shows the lowest and the highest value in its stretch of time. A stretch without readings stays empty, so
that a gap is seen.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from boxlore.core.originals.climate import DAMP, Measurement

Band = tuple[float, float]
"""The lowest and the highest value in a stretch of time."""


@dataclass(frozen=True, slots=True)
class Panel:
    """One of the two charts: name and unit, the index of its value in a Measurement, and the lines drawn across."""

    name: str
    unit: str
    index: int
    lines: tuple[float, ...]


PANELS = (Panel("Temperature", "°C", 1, (0, 12, 20, 24)), Panel("Humidity", "% RH", 2, (15, 30, 50, DAMP, 75)))
"""The lines are at the bounds that the findings use (`core.originals.climate`)."""


def ranges(readings: Sequence[Measurement], index: int, columns: int) -> list[Band | None]:
    """The band in each of `columns` equal stretches of time; None where a stretch has no reading."""
    bands: list[Band | None] = [None] * columns
    if not readings:
        return bands
    start = readings[0][0].timestamp()
    wide = max(readings[-1][0].timestamp() - start, 1)
    for reading in readings:
        at = min(int((reading[0].timestamp() - start) / wide * columns), columns - 1)
        value = float(reading[index])  # type: ignore[arg-type]  # index is 1 or 2
        before = bands[at]
        bands[at] = (value, value) if before is None else (min(before[0], value), max(before[1], value))
    return bands


def bounds(bands: Sequence[Band | None]) -> Band:
    """The scale of a chart: the multiples of five below and above all values."""
    low = min((band[0] for band in bands if band), default=0.0)
    high = max((band[1] for band in bands if band), default=1.0)
    return float(int(low // 5) * 5), float(-int(-high // 5) * 5 if high > low else int(high // 5) * 5 + 5)


def text_chart(readings: Sequence[Measurement], width: int = 72, height: int = 8) -> list[str]:
    """Both charts as lines of text, at most `width` letters wide, each chart `height` lines high."""
    lines: list[str] = []
    columns = max(width - 8, 8)
    for panel in PANELS:
        bands = ranges(readings, panel.index, columns)
        low, high = bounds(bands)
        lines.append(f"{panel.name}, {panel.unit}")
        lines += [_row(bands, panel, low, high, row, height) for row in reversed(range(height))]
    if readings:
        first, last = f"{readings[0][0]:%Y-%m-%d}", f"{readings[-1][0]:%Y-%m-%d}"
        lines.append(" " * 7 + first + last.rjust(max(columns - len(first), len(last) + 1)))
    return lines


def _row(bands: Sequence[Band | None], panel: Panel, low: float, high: float, row: int, height: int) -> str:
    """One line of a chart; row 0 is the lowest. The topmost line also takes values that equal its upper end."""
    bottom = low + (high - low) * row / height
    top = low + (high - low) * (row + 1) / height
    across = any(bottom <= line < top for line in panel.lines)
    cells = ["█" if band and band[0] < top and band[1] >= bottom else "·" if across else " " for band in bands]
    if row == height - 1:
        cells = ["█" if band and band[1] >= bottom else cell for band, cell in zip(bands, cells, strict=True)]
    label = f"{top if row == height - 1 else bottom:5.0f} "
    return f"{label}│{''.join(cells)}".rstrip()
