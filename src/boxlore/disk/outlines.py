"""Outlines of prints, and how large the picture is in which they are looked for."""

LONGEST = 1000
"""Pixels of the longer side of a picture that are looked at."""

Quad = tuple[tuple[float, float], tuple[float, float], tuple[float, float], tuple[float, float]]
"""Four corners in 0..1 of the upright picture, clockwise from the one nearest its upper left."""
