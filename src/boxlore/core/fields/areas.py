"""Where something is on a picture: a point or a box, as an area."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from boxlore.core.fields.codec import Codec

EDGE = 0.001
"""By how much an area may stand over the edge of its picture: the rounding of pixels."""


@dataclass(frozen=True, slots=True)
class Area:
    """A point or a box on a picture as it is stored, in parts of its width and height, from 0 to 1.

    `x` and `y` are the point, or the left upper corner of a box of that `width` and `height`; a point has 0 for both.
    """

    x: float
    y: float
    width: float = 0.0
    height: float = 0.0

    @property
    def is_box(self) -> bool:
        return self.width > 0 or self.height > 0

    @property
    def numbers(self) -> tuple[float, ...]:
        """x and y, of a box also width and height."""
        return (self.x, self.y, self.width, self.height) if self.is_box else (self.x, self.y)


def area_of(numbers: Sequence[object]) -> Area:
    """The area of two numbers (a point) or four (a box). Raises ValueError for anything else."""
    if len(numbers) not in (2, 4):
        raise ValueError(numbers)
    parts = [float(part) for part in numbers if isinstance(part, int | float) and not isinstance(part, bool)]
    if len(parts) != len(numbers) or not all(math.isfinite(part) and -EDGE <= part <= 1 + EDGE for part in parts):
        raise ValueError(numbers)
    return Area(*parts)


def _write_area(area: Area) -> str:
    return " ".join(map(repr, area.numbers))


def _parse_area(words: str) -> Area:
    return area_of([float(part) for part in words.split()])


AREA_WORDS: Codec[Area] = Codec(
    "part of a picture",
    "Write x y, or x y width height, as parts of the picture from 0 to 1: 0.25 0.4",
    _write_area,
    _parse_area,
)
"""`x y` of a point, `x y width height` of a box, with blanks between."""
