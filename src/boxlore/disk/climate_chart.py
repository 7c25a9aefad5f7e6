"""The chart of a climate log as a PNG (PNG, third edition), drawn from the same ranges as the chart in the terminal."""

import io
from collections.abc import Sequence
from datetime import datetime
from typing import Any

from PIL import Image, ImageDraw, ImageFont

from boxlore.core.originals.climate import Measurement
from boxlore.core.originals.climate_chart import PANELS, Band, Panel, bounds, ranges

WIDE, HIGH = 1500, 900
"""Size of the picture in pixels."""
LEFT, TOP, BETWEEN, BELOW = 90, 70, 60, 60
"""Pixels left of the panels, above them, between the two, and below them."""
INK, SOFT, LINE = (34, 34, 34), (110, 110, 110), (214, 210, 202)
COLOURS = ((161, 58, 36), (37, 84, 124))


def climate_png(readings: Sequence[Measurement], title: str) -> bytes:
    """The bytes of a PNG file: one panel for temperature above one for humidity, with the first and the last time."""
    image = Image.new("RGB", (WIDE, HIGH), "white")
    draw = ImageDraw.Draw(image)
    draw.text((LEFT, 22), title, fill=INK, font=_font(26))
    high = (HIGH - TOP - BETWEEN - BELOW) // 2
    columns = WIDE - LEFT - 30
    for index, (panel, colour) in enumerate(zip(PANELS, COLOURS, strict=True)):
        _panel(draw, panel, ranges(readings, panel.index, columns), TOP + index * (high + BETWEEN), high, colour)
    if readings:
        _dates(draw, readings[0][0], readings[-1][0])
    encoded = io.BytesIO()
    image.save(encoded, "PNG", optimize=True)
    return encoded.getvalue()


def _font(size: int) -> Any:
    return ImageFont.load_default(size)


def _panel(
    draw: Any, panel: Panel, bands: Sequence[Band | None], top: int, high: int, colour: tuple[int, int, int]
) -> None:
    """Draw one panel: its scale, and for each pixel of its width a line from the lowest to the highest value."""
    low_bound, high_bound = bounds(bands)

    def y(value: float) -> float:
        return top + high - (value - low_bound) / (high_bound - low_bound) * high

    draw.text((LEFT, top - 26), f"{panel.name}, {panel.unit}", fill=SOFT, font=_font(18))
    for line in sorted({low_bound, high_bound, *(line for line in panel.lines if low_bound < line < high_bound)}):
        draw.line((LEFT, y(line), LEFT + len(bands), y(line)), fill=LINE, width=2)
        draw.text((LEFT - 12, y(line)), f"{line:.0f}", fill=SOFT, font=_font(18), anchor="rm")
    for at, band in enumerate(bands):
        if band is not None:
            draw.line((LEFT + at, y(band[0]) + 1, LEFT + at, y(band[1]) - 1), fill=colour, width=2)


def _dates(draw: Any, first: datetime, last: datetime) -> None:
    draw.text((LEFT, HIGH - 40), f"{first:%Y-%m-%d %H:%M}", fill=SOFT, font=_font(18))
    draw.text((WIDE - 30, HIGH - 40), f"{last:%Y-%m-%d %H:%M}", fill=SOFT, font=_font(18), anchor="ra")
