"""A log as a chart: the range of values in each stretch of time, for a terminal as letters or for a picture.

Each column shows the lowest and highest value of its stretch; a stretch without readings is empty, so a gap is seen.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from boxlore.core.originals.climate import Measurement

Band = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Panel:
    """One value's chart: its name and unit, which value of a reading it is, and the lines drawn across it."""

    name: str
    unit: str
    index: int
    lines: tuple[float, ...]


PANELS = (Panel("Temperature", "°C", 1, (0, 12, 20, 24)), Panel("Humidity", "% RH", 2, (15, 30, 50, 65, 75)))
"""Lines at the bounds that the findings use."""


def ranges(readings: Sequence[Measurement], index: int, columns: int) -> list[Band | None]:
    """The lowest and highest value in each of so many equal stretches of time."""
    found: list[Band | None] = [None] * columns
    if not readings:
        return found
    start = readings[0][0].timestamp()
    wide = max(readings[-1][0].timestamp() - start, 1)
    for one in readings:
        at = min(int((one[0].timestamp() - start) / wide * columns), columns - 1)
        value = float(one[index])  # type: ignore[arg-type]  # index is 1 or 2
        before = found[at]
        found[at] = (value, value) if before is None else (min(before[0], value), max(before[1], value))
    return found


def bounds(some: Sequence[Band | None]) -> Band:
    """The scale: whole fives around all values."""
    low = min((one[0] for one in some if one), default=0.0)
    high = max((one[1] for one in some if one), default=1.0)
    return float(int(low // 5) * 5), float(-int(-high // 5) * 5 if high > low else int(high // 5) * 5 + 5)


def text_chart(readings: Sequence[Measurement], width: int = 72, height: int = 8) -> list[str]:
    """Both panels as lines of text, at most `width` letters wide."""
    lines: list[str] = []
    columns = max(width - 8, 8)
    for panel in PANELS:
        some = ranges(readings, panel.index, columns)
        low, high = bounds(some)
        lines.append(f"{panel.name}, {panel.unit}")
        lines += [_row(some, panel, low, high, row, height) for row in reversed(range(height))]
    if readings:
        first, last = f"{readings[0][0]:%Y-%m-%d}", f"{readings[-1][0]:%Y-%m-%d}"
        lines.append(" " * 7 + first + last.rjust(max(columns - len(first), len(last) + 1)))
    return lines


def _row(some: Sequence[Band | None], panel: Panel, low: float, high: float, row: int, height: int) -> str:
    bottom = low + (high - low) * row / height
    top = low + (high - low) * (row + 1) / height
    across = any(bottom <= line < top for line in panel.lines)
    cells = ["█" if one and one[0] < top and one[1] >= bottom else "·" if across else " " for one in some]
    if row == height - 1:
        cells = ["█" if one and one[1] >= bottom else cell for one, cell in zip(some, cells, strict=True)]
    label = f"{top if row == height - 1 else bottom:5.0f} "
    return f"{label}│{''.join(cells)}".rstrip()
