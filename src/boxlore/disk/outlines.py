"""Outlines of prints, and heads: what is found on a picture, and how large the picture is that is looked at."""

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
