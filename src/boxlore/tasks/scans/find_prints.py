"""Prints found on flatbed sheets and on telephone pictures of prints, as the plan of an intake: one item for each.

Proposed, never decided: the plan is shown before anything is taken in, or written as a table whose areas can be put
right. The scan stays as it is; each item has the upright box around its print as its area, and of a print that lies
aslant its corners, between which it is straightened wherever it is seen. What shows no print, or nothing but one that
fills it, is one item as a whole; and so is what shows one in a frame as of its own border or mount, or one small thing
in what is no bed: cutting would lose, and leaving it whole loses nothing. Each is said.
"""

import math
from collections.abc import Iterable, Iterator
from dataclasses import replace
from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.core.fields.cells import write_row
from boxlore.core.fields.quads import is_quad
from boxlore.core.records.marker_positions import seen_at, stored_at
from boxlore.disk.outlines import Found, Quad
from boxlore.disk.pictures import turn_of
from boxlore.disk.seeing import need_eyes, outlines_in
from boxlore.tasks.collection.progress import QUIET, Progress
from boxlore.tasks.scans.pairing import Planned
from boxlore.tasks.telling.turned_scans import IN_WORDS

SLANTED = 2.0
"""From so many degrees on it is said that a print lies aslant."""
SLIGHT = 0.004
"""A print whose corners lie nearer to those of the box around it, as parts of the picture, lies straight."""
BY_HAND = "boxlore intake --find-prints hand"
WHOLE = 0.94
"""A box that is so wide and high, as part of the picture, is the whole picture."""


def with_prints(plan: Iterable[Planned], progress: Progress = QUIET) -> tuple[list[Planned], list[str]]:
    """The plan with an item for each print that the front of an item shows, and sentences about what to look at.

    Items with a back, or with a part of a picture already, stay as they are. Raises CouldNot where the part that looks
    at pictures is not installed.
    """
    need_eyes()
    planned = list(plan)
    items: list[Planned] = []
    remarks: list[str] = []
    progress.begin("Looking for prints", len(planned))
    for item in planned:
        if progress.stopped():
            break
        found = _found_on(item, remarks)
        items += found or [item]
        progress.step()
    return items, remarks


def _found_on(item: Planned, remarks: list[str]) -> list[Planned]:
    if len(item.sides) != 1 or item.sides[0].area:
        return []
    side = item.sides[0]
    try:
        found = outlines_in(side.path)
    except CouldNot:
        return []  # the intake, which follows, says what is wrong with the file
    turn = turn_of(side.path)
    parts = [part_at(quad, turn) for quad in found.quads]
    if not parts or (len(parts) == 1 and min(parts[0][2:4]) > WHOLE):
        return []
    if why := _why_whole(found):
        remarks.append(f"{side.path.name}: {why}")
        return []
    remarks += [f"{side.path.name}: {words}" for words in _remarks_on(found)]
    return parts_of(item, parts)


def _why_whole(found: Found) -> str:
    """Why the picture stays whole, though a print is found on it; '' where it does not."""
    if found.may_be_its_own_border:
        return f"kept whole, for what lies around the picture may be its own border or mount. To cut it off: {BY_HAND}."
    if found.may_be_a_scene:
        return f"kept whole, for the one small print on it may be a thing in a scene. To take it: {BY_HAND}."
    return ""


def _remarks_on(found: Found) -> Iterator[str]:
    """What is to be looked at, of the outlines that are taken."""
    places = dict(enumerate(found.quads, 1))
    if cut := [str(at) for at, quad in places.items() if quad in found.cut_off]:
        yield f"aslant and cut off by the edge of the picture, so not straightened: print {', '.join(cut)}."
    slanted = [at for at, quad in places.items() if abs(slant_of(quad)) >= SLANTED and quad not in found.cut_off]
    if slanted:
        yield f"aslant, and seen straightened: print {', '.join(map(str, slanted))}."
    for at in found.long:
        yield f"print {at + 1} is so long that it may be several in a row. To part it: {BY_HAND}."


def parts_of(item: Planned, parts: Iterable[tuple[float, ...]]) -> list[Planned]:
    """An item for each part of the one picture of another."""
    return [
        replace(item, key=f"{item.key} print {at}", sides=(replace(item.sides[0], area=part[:4], corners=part[4:]),))
        for at, part in enumerate(parts, 1)
    ]


_SQUARE = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))


def part_at(quad: Quad, turn: int) -> tuple[float, ...]:
    """The part of the stored picture (Exif orientation `turn`) that four corners of the upright one enclose: the box
    around them, and where they lie aslant themselves (`core.fields.quads`). What is no quadrilateral is its box."""
    area = area_of(quad, turn)
    seen = [quad[_SQUARE.index(seen_at(corner, (), turn))] for corner in _SQUARE]
    stored = [stored_at(corner, (), turn) for corner in seen]
    box = [(area[0] + area[2] * x, area[1] + area[3] * y) for x, y in _SQUARE]
    is_straight = all(
        max(abs(x - box_x), abs(y - box_y)) < SLIGHT for (x, y), (box_x, box_y) in zip(stored, box, strict=True)
    )
    corners = tuple(round(part, 5) for corner in stored for part in corner)
    return area if is_straight or not is_quad(corners) else (*area, *corners)


def area_of(quad: Quad, turn: int) -> tuple[float, float, float, float]:
    """The box around four corners of the upright picture, in parts of the stored one (Exif orientation `turn`)."""
    xs, ys = zip(*quad, strict=True)
    (first_x, first_y), (last_x, last_y) = (
        stored_at((x, y), (), turn) for x, y in ((min(xs), min(ys)), (max(xs), max(ys)))
    )
    left, top = min(first_x, last_x), min(first_y, last_y)
    return round(left, 4), round(top, 4), round(abs(last_x - first_x), 4), round(abs(last_y - first_y), 4)


def slant_of(quad: Quad) -> float:
    """By how many degrees the upper side of a print falls to the right; the corners are parts of a square picture."""
    (left, top), (right, low) = quad[0], quad[1]
    return math.degrees(math.atan2(low - top, right - left))


def as_table(plan: Iterable[Planned]) -> str:
    """The plan as a table for intake (CSV), with the areas to be put right: x y width height, and behind them the four
    corners of what lies aslant."""
    rows = [
        (
            Path(item.key).name,
            str(side.path.absolute()),
            IN_WORDS[side.side],
            " ".join(f"{part:g}" for part in (*side.area, *side.corners)),
        )
        for item in plan
        for side in item.sides
    ]
    return "".join(map(write_row, [("item", "file", "side", "area"), *rows]))
