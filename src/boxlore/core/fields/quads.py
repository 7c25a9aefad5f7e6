"""Four corners of a print that lies aslant, and how a place between them is seen when it is straight.

A part of a picture is x, y, width and height in 0..1 of it; of what lies aslant, the eight numbers of its corners
follow: clockwise on the stored picture, from the one nearest its upper left. A place is mapped as perspective maps it
(a projective mapping of the unit square; P. Heckbert, Fundamentals of Texture Mapping, 1989, 2.2.3), so that the sides
of a print that was photographed from one side come out straight too.
"""

from collections.abc import Sequence

Mapping = tuple[float, float, float, float, float, float, float, float]
"""a to h of x = (a u + b v + c) / (g u + h v + 1), y = (d u + e v + f) / (g u + h v + 1)."""


def corners_of(numbers: Sequence[float]) -> tuple[tuple[float, float], ...]:
    """The four points of eight numbers."""
    return tuple(zip(numbers[::2], numbers[1::2], strict=True))


def is_quad(numbers: Sequence[float]) -> bool:
    """Whether eight numbers are four corners clockwise, none of them bent inward."""
    points = corners_of(numbers)
    turns = [
        (x2 - x1) * (y3 - y2) - (y2 - y1) * (x3 - x2)
        for (x1, y1), (x2, y2), (x3, y3) in zip(
            points, (*points[1:], *points[:1]), (*points[2:], *points[:2]), strict=True
        )
    ]
    return len(points) == 4 and min(turns) > 1e-9


def mapping_of(corners: Sequence[float]) -> Mapping:
    """From the unit square to four corners, its own corners to them in their order."""
    (x0, y0), (x1, y1), (x2, y2), (x3, y3) = corners_of(corners)
    across, down = (x1 - x2, y1 - y2), (x3 - x2, y3 - y2)
    over = (x0 - x1 + x2 - x3, y0 - y1 + y2 - y3)
    area = across[0] * down[1] - down[0] * across[1]
    g = (over[0] * down[1] - down[0] * over[1]) / area
    h = (across[0] * over[1] - over[0] * across[1]) / area
    return x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h


def from_straight(part: Sequence[float], u: float, v: float) -> tuple[float, float]:
    """Where on the picture the place (u, v) of a part lies, 0..1 of the part."""
    if len(part) != 12:
        left, top, wide, high = part[:4] or (0.0, 0.0, 1.0, 1.0)
        return left + u * wide, top + v * high
    a, b, c, d, e, f, g, h = mapping_of(part[4:])
    depth = g * u + h * v + 1
    return (a * u + b * v + c) / depth, (d * u + e * v + f) / depth


def to_straight(part: Sequence[float], x: float, y: float) -> tuple[float, float]:
    """Where in a part the place (x, y) of the picture is seen, beyond 0..1 outside; the other way round."""
    if len(part) != 12:
        left, top, wide, high = part[:4] or (0.0, 0.0, 1.0, 1.0)
        return (x - left) / (wide or 1), (y - top) / (high or 1)
    a, b, c, d, e, f, g, h = mapping_of(part[4:])
    u = (e - f * h) * x + (c * h - b) * y + b * f - c * e
    v = (f * g - d) * x + (a - c * g) * y + c * d - a * f
    depth = (d * h - e * g) * x + (b * g - a * h) * y + a * e - b * d
    return u / (depth or 1e-12), v / (depth or 1e-12)
