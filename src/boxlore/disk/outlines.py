"""Outlines of prints, and how large the picture is in which they are looked for."""

from dataclasses import dataclass

LONGEST = 1000
"""Pixels of the longer side of a picture that are looked at."""

Quad = tuple[tuple[float, float], tuple[float, float], tuple[float, float], tuple[float, float]]
"""Four corners in 0..1 of the upright picture, clockwise from the one nearest its upper left."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """The outlines of one picture; which of them is in hand (-1: none), and which corner of it (-1: all of it)."""

    outlines: tuple[Quad, ...] = ()
    outline: int = -1
    corner: int = -1

    @property
    def in_hand(self) -> Quad | None:
        """The outline in hand."""
        return self.outlines[self.outline] if 0 <= self.outline < len(self.outlines) else None
