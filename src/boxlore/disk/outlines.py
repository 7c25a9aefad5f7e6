"""Outlines of prints, and heads: what is found on a picture, and how large the picture is that is looked at."""

from dataclasses import dataclass

LONGEST = 1000
"""Pixels of the longer side of a picture that are looked at."""

LONGEST_OF_HEADS = 1400
"""The same where heads are looked for, which are smaller than prints."""

Quad = tuple[tuple[float, float], tuple[float, float], tuple[float, float], tuple[float, float]]
"""Four corners in 0..1 of the upright picture, clockwise from the one nearest its upper left."""


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


@dataclass(frozen=True, slots=True, order=True)
class Head:
    """A face: its middle, its width and its height, in 0..1 of the picture that is looked at."""

    x: float
    y: float
    width: float
    height: float
