"""Where a marker lies: on the picture as stored, and on the picture as it is looked at.

A marker is kept in 0..1 of the stored picture. What is looked at may be a part of it (`area`: x, y, w, h, and of what
lies aslant its corners; see `core.fields.quads`), turned upright as the file asks (Exif orientation, CIPA DC-008, tag
274, values 1 to 8), and then as the keeper turned it.
"""

from boxlore.core.fields.quads import from_straight, to_straight

Point = tuple[float, float]

TURNED = {
    1: (False, False, False),
    2: (False, True, False),
    3: (False, True, True),
    4: (False, False, True),
    5: (True, False, False),
    6: (True, True, False),
    7: (True, True, True),
    8: (True, False, True),
}
"""Orientation → whether x and y change places, then whether x, then y, is counted from the other side."""


def seen_at(stored: Point, area: tuple[float, ...] = (), turn: int = 1) -> Point:
    """Where a stored point is seen, in 0..1 of the picture looked at; beyond 0..1 where it lies outside `area`."""
    x, y = to_straight(area, *stored)
    swapped, flip_x, flip_y = TURNED.get(turn, TURNED[1])
    if swapped:
        x, y = y, x
    return (1 - x if flip_x else x), (1 - y if flip_y else y)


def stored_at(seen: Point, area: tuple[float, ...] = (), turn: int = 1) -> Point:
    """The stored point of one that is seen; the other way round of `seen_at`."""
    swapped, flip_x, flip_y = TURNED.get(turn, TURNED[1])
    x, y = (1 - seen[0] if flip_x else seen[0]), (1 - seen[1] if flip_y else seen[1])
    if swapped:
        x, y = y, x
    return from_straight(area, x, y)


_QUARTER_TURNS = {0: 1, 90: 6, 180: 3, 270: 8}
"""Degrees to the right -> the orientation that has a picture turned so."""
_ASKEW = (0.125, 0.25)
"""A point that each of the eight orientations puts somewhere else, and without rounding."""


def turned_by(orientation: int, degrees: int) -> int:
    """The orientation of a picture of this `orientation` that is then turned by 0, 90, 180 or 270 degrees to the right.

    What is mirrored stays mirrored: the two are done one after the other, and one of the eight does the same.
    """
    there = seen_at(seen_at(_ASKEW, turn=orientation), turn=_QUARTER_TURNS[degrees])
    return next(both for both in TURNED if seen_at(_ASKEW, turn=both) == there)


def middle(where: tuple[float, ...]) -> Point:
    """The middle of a marker's point or box."""
    return (where[0] + where[2] / 2, where[1] + where[3] / 2) if len(where) == 4 else (where[0], where[1])


def part_of(area: tuple[float, ...], window: tuple[float, float, float, float], turn: int = 1) -> tuple[float, ...]:
    """The stored part behind a window (x, y, w, h in 0..1) of the picture looked at."""
    x, y, wide, high = window
    if len(area) == 12:
        straight = part_of((), window, turn)
        left, top, right, low = straight[0], straight[1], straight[0] + straight[2], straight[1] + straight[3]
        places = [from_straight(area, *place) for place in ((left, top), (right, top), (right, low), (left, low))]
        xs, ys = zip(*places, strict=True)
        return (min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys), *(part for place in places for part in place))
    corner, opposite = stored_at((x, y), area, turn), stored_at((x + wide, y + high), area, turn)
    left, top = min(corner[0], opposite[0]), min(corner[1], opposite[1])
    return left, top, abs(opposite[0] - corner[0]), abs(opposite[1] - corner[1])
