"""Outlines of prints, and heads: what is found on a picture, and how large the picture is that is looked at."""

import math
from collections.abc import Iterable
from dataclasses import dataclass

LONGEST = 1000
"""Pixels of the longer side of a picture that are looked at."""

LONGEST_OF_HEADS = 1400
"""The same where heads are looked for, which are smaller than prints."""

Quad = tuple[tuple[float, float], tuple[float, float], tuple[float, float], tuple[float, float]]
"""Four corners in 0..1 of the upright picture, clockwise from the one nearest its upper left."""

IN_A_ROW = 0.5
"""Two prints stand in one row where so much of the height of the less high one is beside the other."""
SMALL, MUCH_BESIDE = 0.25, 0.015
"""Part of a picture that a print in a scene fills at most, and part of it that is no bed beside it at least."""
LONG = 2.3
"""So many times as long as high is a panorama, or several prints in a row. Common practice, no source."""
MARGIN, UNEVEN, LEVEL = 0.22, 0.04, 0.012
"""Widest margin around a print in its own border or mount, by how much the two at its sides may differ, and how little
it lies aslant; parts of the picture. The lower margin of a mount is often the widest. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Found:
    """What was found on an upright picture of that `shape` (width / height): the outlines of prints, in the order of
    reading. `cut_off` are those that lie aslant and reach over the edge of the picture; `beside` is which part of
    the picture is neither a print nor the bed."""

    quads: tuple[Quad, ...] = ()
    shape: float = 1.0
    cut_off: frozenset[Quad] = frozenset()
    beside: float = 0.0

    @property
    def may_be_its_own_border(self) -> bool:
        """Whether the one print lies in the picture as in a border or a mount of its own: straight, with a narrow
        margin on all sides, of one width to the left and right."""
        return len(self.quads) == 1 and _is_framed(self.quads[0])

    @property
    def may_be_a_scene(self) -> bool:
        """Whether the one small print may be a thing in a scene, a door or a picture on a wall: much beside it is no
        bed."""
        return len(self.quads) == 1 and self.beside > MUCH_BESIDE and _part_of(self.quads[0]) < SMALL

    @property
    def long(self) -> list[int]:
        """The places of the outlines that are longer than a print is: they may hold several."""
        return [at for at, quad in enumerate(self.quads) if _length(quad, self.shape) > LONG]


@dataclass(frozen=True, slots=True)
class Drawn:
    """The outlines of one picture; which of them is in hand (-1: none), and which corner of it (-1: all of it)."""

    outlines: tuple[Quad, ...] = ()
    outline: int = -1
    corner: int = -1
    owners: tuple[str, ...] = ()
    """Of the first outlines, the ids of the items that they show already; the others are new."""

    @property
    def in_hand(self) -> Quad | None:
        """The outline in hand."""
        return self.outlines[self.outline] if 0 <= self.outline < len(self.outlines) else None

    @property
    def held_at(self) -> tuple[float, float] | None:
        """Where the corner in hand is, or the middle of the outline in hand."""
        quad = self.in_hand
        return None if quad is None else quad[self.corner] if self.corner >= 0 else _middle(quad)

    @property
    def middles(self) -> list[tuple[float, float]]:
        """The middle of each outline."""
        return [_middle(quad) for quad in self.outlines]


@dataclass(frozen=True, slots=True, order=True)
class Head:
    """A face: its middle, its width and its height, in 0..1 of the picture that is looked at."""

    x: float
    y: float
    width: float
    height: float


def in_reading_order(quads: Iterable[Quad]) -> list[Quad]:
    """Row by row from above, each from the left. A print is in a row if it stands beside every other one in it."""
    rows: list[list[Quad]] = []
    for quad in sorted(quads, key=_heights):
        if rows and all(_is_beside(quad, other) for other in rows[-1]):
            rows[-1].append(quad)
        else:
            rows.append([quad])
    return [quad for row in rows for quad in sorted(row, key=_middle)]


def _middle(quad: Quad) -> tuple[float, float]:
    return sum(x for x, _ in quad) / 4, sum(y for _, y in quad) / 4


def _heights(quad: Quad) -> tuple[float, float]:
    ys = [y for _, y in quad]
    return min(ys), max(ys)


def _is_beside(quad: Quad, other: Quad) -> bool:
    (top, low), (other_top, other_low) = _heights(quad), _heights(other)
    return min(low, other_low) - max(top, other_top) > IN_A_ROW * min(low - top, other_low - other_top)


def _is_framed(quad: Quad) -> bool:
    (x0, y0), (x1, y1), (x2, y2), (x3, y3) = quad
    is_level = max(abs(x0 - x3), abs(x1 - x2), abs(y0 - y1), abs(y2 - y3)) < LEVEL
    left, right, top, low = max(x0, x3), 1 - min(x1, x2), max(y0, y1), 1 - min(y2, y3)
    return is_level and min(left, right, top, low) > 0 and max(left, right, top, low) < MARGIN and (
        abs(left - right) < UNEVEN and top < low + UNEVEN
    )  # fmt: skip


def _part_of(quad: Quad) -> float:
    """The part of the picture within four corners (the shoelace formula)."""
    return abs(sum(x * quad[at - 3][1] - quad[at - 3][0] * y for at, (x, y) in enumerate(quad))) / 2


def _length(quad: Quad, shape: float) -> float:
    """How many times as long as high an outline is, on a picture of that shape."""
    points = [(x * shape, y) for x, y in quad]
    sides = [math.dist(points[at], points[at - 3]) for at in range(4)]
    across, down = max(sides[0], sides[2]), max(sides[1], sides[3])
    return max(across, down) / max(min(across, down), 1e-6)
