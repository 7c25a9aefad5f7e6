"""Where the prints lie in a picture of several: on a flatbed's sheet, or photographed on a table.

Theory of operation
===================

1. The bed is what most of the picture's rim shows. A curved surface is laid through its shades, so that uneven light
   counts for nothing, and what differs from it by more than its own noise is a print or a print's edge.
2. Each connected thing gets the four straight sides that fit its outline (perspective makes them no rectangle).
3. A white print on a white bed differs from it by the thin line of its edge alone: each side is moved outward to the
   strongest straight line that runs along it, if there is one within the width of a print's border. What lies between
   is light, and nothing of another print: else it is bed, and the line is the neighbour's edge. No two prints lie over
   each other: of two that would, each ends at the first of its lines.
4. Two prints that touch are one thing, and so are two with a strip of bed between them that noise has closed. It falls
   apart where bed is seen between parts with four sides each; else it is cut along straight lines that run from side
   to side, where shade changes along nearly the whole length, or where the two parts fill their own four sides much
   better than the whole did.
5. Where the picture ends, a print that lies aslant does not: that side is none of its own, so that what is left of it
   is shown as it lies.

It proposes, and a person decides. OpenCV is the optional extra `see`.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

import cv2
import numpy as np

from boxlore.disk.outlines import LONGEST, Found, Quad, in_reading_order

SMALLEST = 0.012
"""Part of the picture that a print fills at least."""
LARGEST = 0.97
"""A thing that fills more of the picture is the picture itself: nothing lies around it."""
BORDER = 0.11
"""Part of a print's shorter side that its white border may take on each side, and a little more."""
FILLED = 0.88
"""Part of its four straight sides that a print fills at least."""
INWARD, SHADOW = 6, 13
"""Pixels by which an edge may lie inside what stands out from the bed, and to which a shadow reaches outside."""
NEIGHBOUR = 0.15
"""So much of a line lies on another print where that one begins."""
QUIET = 0.4
"""Part of an edge's change that a border has at its quietest."""
WHITE = 205
"""From this shade (L of CIE Lab, 0 to 255) on the border of a print is white."""
LIGHT = 170
"""The same of a border in a shadow: a strip that is darker is bed."""
REGULAR = 0.97
"""What fills so much of its four sides is cut along clear seams alone."""
SOLID = 0.6
"""The same of several prints that are one thing, at least."""
STANDS_APART, COVERED = 0.94, 0.9
"""Part of its four sides that each print with a strip of bed beside it fills, and part of the thing that they are."""
VALLEY, NARROW = 7, 0.4
"""A strip of bed of less than so many pixels is blurred, and still so much nearer to the bed than what lies beside."""
LEVELS, HALF = (2.0, 3.0, 5.0, 8.0), 0.5
"""How many times as far from the bed as it must be lies what is surely none; and least part of a thing that it is."""
RIM = 5.0
"""So near to the edge of the picture, in pixels, a side is none of a print but the end of the picture."""
SLIGHTLY = 4.0
"""A print whose corners lie nearer to those of the box around it, in pixels, lies straight."""
OVER = 0.006
"""Part of a print by which it may seem to lie over another."""
SEAM = 1.6
"""By how many shades a line is darker than both its sides, all along, where two prints touch."""

Array = Any
"""An array of numpy, whose types OpenCV does not tell."""


def find_outlines(pixels: Array) -> Found:
    """The outlines of the prints in an upright picture (height, width, RGB), in the order of reading."""
    scale = min(1.0, LONGEST / max(pixels.shape[:2]))
    if scale < 1:
        size = (round(pixels.shape[1] * scale), round(pixels.shape[0] * scale))
        pixels = cv2.resize(pixels, size, interpolation=cv2.INTER_AREA)
    look = _look(pixels)
    high, wide = pixels.shape[:2]
    things = list(_things(look))
    solid = np.maximum.reduce([np.zeros_like(look.mask), *filter(_solid, things)])
    found = (each for region in things for each in _prints_of(look, region, cv2.subtract(solid, region)))
    outlined = [_within(each, wide, high) for each in found]
    kept = [each for each in _apart(outlined) if _is_print(each.quad, wide, high)]
    inside = [each for each in kept if not any(_lies_in(each.quad, outer.quad) for outer in kept if outer is not each)]
    quads = [_in_parts(np.clip(each.quad / (wide, high), 0, 1)) for each in inside]
    return Found(
        tuple(in_reading_order(quads)),
        shape=wide / high,
        cut_off=frozenset(quad for quad, each in zip(quads, inside, strict=True) if each.is_cut_off),
        beside=_beside(look, [each.quad for each in inside]),
    )


@dataclass(frozen=True, slots=True)
class _Outlined:
    """One print: its corners, those of its nearest lines, and whether it reaches over the edge of the picture."""

    quad: Array
    close: Array | None
    is_cut_off: bool = False


@dataclass(frozen=True, slots=True)
class _Look:
    """A picture made ready: which pixels are no bed (0 or 1), with and without what noise has closed; how surely they
    are none (from 1 on); and its shades (CIE Lab), a little smoothed."""

    mask: Array
    sharp: Array
    surely: Array
    lab: Array


def _look(pixels: Array) -> _Look:
    lab = cv2.cvtColor(np.ascontiguousarray(pixels), cv2.COLOR_RGB2LAB).astype(np.float32)
    smooth = cv2.GaussianBlur(lab, (0, 0), 1.0)
    bed, noise = _bed_of(smooth)
    apart = np.sqrt((((smooth - bed) * (1.0, 1.2, 1.2)) ** 2).sum(-1))
    sharp = (apart > max(5.0, 4.5 * noise)).astype(np.uint8)
    mask = cv2.morphologyEx(sharp, cv2.MORPH_CLOSE, np.ones((5, 5), np.uint8))
    around = cv2.morphologyEx(apart.astype(np.float32), cv2.MORPH_CLOSE, np.ones((VALLEY, VALLEY), np.uint8))
    sharp = cv2.bitwise_and(sharp, (apart > NARROW * around).astype(np.uint8))
    return _Look(_whole(mask, 9), _whole(sharp, 3), apart / max(5.0, 4.5 * noise), smooth)


def _whole(mask: Array, least: int) -> Array:
    """A mask without its holes, and without what is narrower than so many pixels."""
    contours, _ = cv2.findContours(mask, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    filled = np.zeros_like(mask)
    cv2.drawContours(filled, contours, -1, 1, cv2.FILLED)
    return cv2.morphologyEx(filled, cv2.MORPH_OPEN, np.ones((least, least), np.uint8))


def _bed_of(lab: Array) -> tuple[Array, float]:
    """The bed's shade everywhere (a surface of the second order through what looks like it), and its noise."""
    high, wide = lab.shape[:2]
    rim = max(4, min(high, wide) // 40)
    ring = np.ones((high, wide), bool)
    ring[rim:-rim, rim:-rim] = False
    ys, xs = np.mgrid[0:high, 0:wide].astype(np.float32)
    x, y = xs / wide - 0.5, ys / high - 0.5
    terms = np.stack([np.ones_like(x), x, y, x * y, x * x, y * y], -1)
    shades = lab[ring]
    middle = np.median(shades, 0)
    near = np.abs(shades - middle).sum(-1)
    like = np.zeros((high, wide), bool)
    like[ring] = near <= np.quantile(near, 0.7)
    bed, noise = np.broadcast_to(middle, lab.shape), 2.0
    for turn in range(5):
        chosen = np.flatnonzero(like)[:: max(1, int(like.sum() // 20_000))]
        wanted = terms if turn > 1 else terms[..., :3]
        fit, *_ = np.linalg.lstsq(wanted.reshape(-1, wanted.shape[-1])[chosen], lab.reshape(-1, 3)[chosen], rcond=None)
        bed = wanted @ fit
        off = np.sqrt(((lab - bed) ** 2).sum(-1))
        noise = max(0.5, float(np.median(off.reshape(-1)[chosen])))
        like = off < 3.5 * noise + 1
    return bed, noise


def _things(look: _Look) -> Iterator[Array]:
    """A mask of each connected thing that is large enough to be a print."""
    count, labels, stats, _ = cv2.connectedComponentsWithStats(look.mask, connectivity=4)
    for label in range(1, count):
        if stats[label, cv2.CC_STAT_AREA] >= SMALLEST * 0.6 * look.mask.size:
            region = (labels == label).astype(np.uint8)
            yield from _without_bed(look, region) or [region]


def _without_bed(look: _Look, region: Array) -> list[Array]:
    """The prints in a thing that hangs together with the edge of the picture by what is hardly no bed, as a corner in
    another light; [] where it is no such thing: nothing there has four sides and lies free."""
    for level in LEVELS if _at_rim(region) else ():
        surely = cv2.bitwise_and((look.surely > level).astype(np.uint8), region)
        surely = _whole(cv2.morphologyEx(surely, cv2.MORPH_CLOSE, np.ones((5, 5), np.uint8)), 9)
        count, labels, stats, _ = cv2.connectedComponentsWithStats(surely, connectivity=4)
        large = [label for label in range(1, count) if stats[label, cv2.CC_STAT_AREA] >= SMALLEST * region.size]
        parts = [(labels == label).astype(np.uint8) for label in large]
        is_most = sum(int(part.sum()) for part in parts) >= HALF * int(region.sum())
        if is_most and all(not _at_rim(part) and _solid(part, REGULAR) for part in parts):
            return parts
    return []


def _at_rim(region: Array) -> bool:
    """Whether a thing reaches to the edge of the picture."""
    return bool(region[0].any() or region[-1].any() or region[:, 0].any() or region[:, -1].any())


def _solid(region: Array, least: float = SOLID) -> bool:
    """Whether a thing fills its four sides as prints do, or several side by side; a border's line and shadow do not."""
    quad = _four_sides(region)
    return quad is not None and _filled(region, quad) > least


def _prints_of(look: _Look, region: Array, others: Array, depth: int = 0) -> list[_Outlined]:
    """The outlines of the prints in one thing: its own, or those of the parts that it falls into. `others` is where
    other prints lie."""
    quad = _four_sides(region)
    if quad is None:
        return []
    parts = (_with_bed_between(look, region) or _parted(look, region, quad)) if depth < 6 else []
    if parts:
        every = np.maximum.reduce(parts)
        beside = [cv2.bitwise_or(others, cv2.subtract(every, part)) for part in parts]
        return [
            found
            for part, besides in zip(parts, beside, strict=True)
            for found in _prints_of(look, part, besides, depth + 1)
        ]
    grown = _grown(look, others, quad) if _filled(region, quad) >= FILLED else None
    return [] if grown is None else [_Outlined(grown, _grown(look, others, quad, reach=0.0))]


def _with_bed_between(look: _Look, region: Array) -> list[Array]:
    """The parts of a thing that stand apart where the bed between them is narrow; [] unless each has four sides."""
    count, labels, stats, _ = cv2.connectedComponentsWithStats(cv2.bitwise_and(look.sharp, region), connectivity=4)
    large = [label for label in range(1, count) if stats[label, cv2.CC_STAT_AREA] >= SMALLEST * region.size]
    parts = [(labels == label).astype(np.uint8) for label in large]
    if len(parts) < 2 or sum(int(part.sum()) for part in parts) < COVERED * int(region.sum()):
        return []
    quads = [_four_sides(part) for part in parts]
    whole = (quad is not None and _filled(part, quad) > STANDS_APART for part, quad in zip(parts, quads, strict=True))
    return parts if all(whole) else []


def _four_sides(region: Array) -> Array | None:
    """The four straight sides that fit a thing's outline; None for what is too small or has no four sides."""
    contours, _ = cv2.findContours(region, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    if not contours:
        return None
    contour = max(contours, key=cv2.contourArea)
    box = _clockwise(cv2.boxPoints(cv2.minAreaRect(contour)))
    points = contour[:, 0, :].astype(np.float32)
    lines = []
    for at in range(4):
        start, end = box[at], box[(at + 1) % 4]
        length = float(np.linalg.norm(end - start))
        if length < 12:
            return None
        along, normal = (end - start) / length, np.array([-(end - start)[1], (end - start)[0]]) / length
        where, off = (points - start) @ along / length, (points - start) @ normal
        deep = float(np.linalg.norm(box[(at + 2) % 4] - end))
        near = points[(where > 0.06) & (where < 0.94) & (off < deep * 0.2)]
        lines.append(_line_through(near, start, along))
    corners = [_crossing(lines[at - 1], lines[at]) for at in range(4)]
    return box if any(corner is None for corner in corners) else np.array(corners, np.float32)


def _line_through(points: Array, start: Array, along: Array) -> tuple[Array, Array]:
    """(point, direction) of the straight line along a side that most of its points lie on."""
    if len(points) < 8:
        return start, along
    for width in (6.0, 2.5):
        vx, vy, x, y = cv2.fitLine(points, cv2.DIST_HUBER, 0, 0.01, 0.01).ravel()
        off = np.abs((points - (x, y)) @ np.array([-vy, vx]))
        closer = points[off < max(width, float(np.quantile(off, 0.5)))]
        points = closer if len(closer) >= 8 else points
    vx, vy, x, y = cv2.fitLine(points, cv2.DIST_HUBER, 0, 0.01, 0.01).ravel()
    if abs(float(np.dot((vx, vy), along))) < 0.95:
        return start, along
    return np.array([x, y]), np.array([vx, vy])


def _crossing(line: tuple[Array, Array], next_line: tuple[Array, Array]) -> Array | None:
    (at, way), (other_at, other_way) = line, next_line
    matrix = np.array([way, -other_way]).T
    if abs(float(np.linalg.det(matrix))) < 0.2:
        return None
    return at + way * np.linalg.solve(matrix, other_at - at)[0]


def _clockwise(corners: Array) -> Array:
    """The corners clockwise (as seen on the screen), from the one nearest the upper left."""
    middle = corners.mean(0)
    turned = corners[np.argsort(np.arctan2(corners[:, 1] - middle[1], corners[:, 0] - middle[0]))]
    return np.roll(turned, -int(np.argmin(turned.sum(1))), axis=0).astype(np.float32)


def _filled(region: Array, quad: Array) -> float:
    """Which part of the quadrilateral and the thing together is in both."""
    shape: Array = np.zeros_like(region)
    corners: Array = np.round(quad).astype(np.int32)
    cv2.fillPoly(shape, [corners], 1)
    either = int(np.count_nonzero(cv2.bitwise_or(shape, region)))
    return int(np.count_nonzero(cv2.bitwise_and(shape, region))) / max(either, 1)


def _straightened(look: _Look, quad: Array) -> tuple[Array, Array]:
    """The part of a picture within four corners as an upright one, and the matrix that made it."""
    wide = max(8, int(max(np.linalg.norm(quad[1] - quad[0]), np.linalg.norm(quad[2] - quad[3]))))
    high = max(8, int(max(np.linalg.norm(quad[3] - quad[0]), np.linalg.norm(quad[2] - quad[1]))))
    target = np.array([(0, 0), (wide, 0), (wide, high), (0, high)], np.float32)
    matrix = cv2.getPerspectiveTransform(quad.astype(np.float32), target)
    return cv2.warpPerspective(look.lab, matrix, (wide, high), borderMode=cv2.BORDER_REPLICATE), matrix


def _parted(look: _Look, region: Array, quad: Array) -> list[Array]:
    """The parts of a thing that is several prints; [] for one."""
    contours, _ = cv2.findContours(region, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    box = _clockwise(cv2.boxPoints(cv2.minAreaRect(max(contours, key=cv2.contourArea))))
    upright, matrix = _straightened(look, box)
    high, wide = upright.shape[:2]
    shape = cv2.warpPerspective(region, matrix, (wide, high))
    before = _filled(region, quad)
    best: tuple[float, list[Array]] = (0.0, [])
    for axis, length in ((1, wide), (0, high)):
        for at, depth in _seams(upright, shape, axis):
            if not 0.12 * length < at < 0.88 * length or (depth < SEAM and before > REGULAR):
                continue
            parts = _cut(region, matrix, axis, at)
            if min(int(part.sum()) for part in parts) < SMALLEST * region.size:
                continue
            quads = [_four_sides(part) for part in parts]
            fills = [_filled(part, four) for part, four in zip(parts, quads, strict=True) if four is not None]
            if len(fills) < len(parts):
                continue
            areas = [float(part.sum()) for part in parts]
            gain = sum(fill * area for fill, area in zip(fills, areas, strict=True)) / sum(areas) - before
            if depth >= SEAM or (gain > 0.02 and max(fills) > 0.95 and min(fills) > 0.75):
                best = max(best, (min(depth, 8.0) + max(gain, 0.0) * 60, parts), key=lambda choice: choice[0])
    return best[1]


def _seams(upright: Array, shape: Array, axis: int) -> list[tuple[int, float]]:
    """(position, depth) of each line across the picture that may be a seam, the depth in shades (0 to 255).

    Where two prints touch, the shadow between them is darker than both (no horizon is, which is as dark as one of its
    sides); or a white border ends there; or the outline has a step where shade changes all along. Each counts by its
    weakest stretch, so that a line which fades out half-way is none.
    """
    lab, inside = (upright, shape > 0) if axis == 1 else (upright.transpose(1, 0, 2), shape.T > 0)
    light, wide = lab[..., 0], lab.shape[1]
    sides = [np.roll(light, by, 1) for by in (-4, 4)]
    darkest = np.minimum.reduce([np.roll(light, by, 1) for by in (-1, 0, 1)])
    depth = _all_along(np.minimum(*sides) - darkest, inside)
    change = np.abs(np.roll(lab, -2, 1) - np.roll(lab, 2, 1)).sum(-1)
    step = np.maximum.reduce([np.roll(_all_along(np.minimum(change, 20.0), inside), by) for by in (-1, 0, 1)])
    white = np.minimum(light - WHITE, 4.0)
    border = [_all_along(np.minimum(np.roll(white, -by, 1), np.roll(white, -2 * by, 1)), inside) for by in (4, -4)]
    by_border = np.where(np.maximum(*border) > 0, step / 6, 0.0)
    by_outline = np.where(_outline_steps(inside), step / 3, 0.0)
    score = np.maximum.reduce([depth, by_border, by_outline])
    score[:6], score[-6:] = 0, 0
    edges = np.abs(np.diff(inside.sum(0).astype(np.int32), prepend=0))
    candidates = {*np.argsort(score)[::-1][:10].tolist(), *np.argsort(edges)[::-1][:10].tolist()}
    return [(int(at), float(score[at])) for at in candidates if 0 < at < wide]


def _all_along(values: Array, inside: Array) -> Array:
    """For each line of a picture the least of the medians of its stretches, as far as the print reaches; else 0.

    The two ends are stretches of their own, no longer than a border is wide: what ends there is of one print's picture.
    """
    high = values.shape[0]
    ends = [slice(round(high * part), round(high * (part + 0.03))) for part in (0.015, 0.955)]
    cuts = np.linspace(0.1, 0.9, 6) * high
    weakest = np.full(values.shape[1], 99.0)
    for rows in (*ends, *(slice(round(cuts[at]), round(cuts[at + 1])) for at in range(5))):
        if rows.stop - rows.start > 2:
            held = inside[rows].mean(0) > 0.6
            weakest = np.where(held, np.minimum(weakest, np.median(values[rows], 0)), weakest)
    weakest[(inside.mean(0) < 0.3) | (weakest == 99.0)] = 0
    return weakest


def _outline_steps(inside: Array) -> Array:
    """Whether a thing's outline makes a step at each line: it is longer on one side by more than a deckle edge's waves,
    and even on both."""
    rows = inside.sum(0).astype(np.float32)
    near = np.stack([np.roll(rows, by) for by in range(-5, 6)])
    even = np.median(near, 0)
    before, after = np.roll(even, 9), np.roll(even, -9)
    flat = (np.abs(np.roll(even, 18) - before) < 4.0) & (np.abs(np.roll(even, -18) - after) < 4.0)
    jump = (np.abs(after - before) >= max(9.0, 0.04 * len(inside))) & flat
    jump[:20], jump[-20:] = False, False
    return np.maximum.reduce([np.roll(jump, by) for by in range(-3, 4)])


def _cut(region: Array, matrix: Array, axis: int, at: int) -> list[Array]:
    """The parts of a thing on the two sides of a line across its straightened picture."""
    ys, xs = np.nonzero(region)
    points = cv2.perspectiveTransform(np.stack([xs, ys], -1)[None].astype(np.float32), matrix)[0]
    first = points[:, 0 if axis == 1 else 1] < at
    parts = []
    for chosen in (first, ~first):
        part = np.zeros_like(region)
        part[ys[chosen], xs[chosen]] = 1
        parts.append(cv2.morphologyEx(part, cv2.MORPH_OPEN, np.ones((5, 5), np.uint8)))
    return parts


def _grown(look: _Look, others: Array, quad: Array, *, reach: float = BORDER) -> Array | None:
    """The corners with each side on the straight line that is a print's edge; None where fewer than three have one."""
    short = min(float(np.linalg.norm(quad[(at + 1) % 4] - quad[at])) for at in range(4))
    lines, clear = [], 0
    for at in range(4):
        start, end = quad[at], quad[(at + 1) % 4]
        length = float(np.linalg.norm(end - start))
        along = (end - start) / max(length, 1e-6)
        outward = np.array([along[1], -along[0]])
        by = _line_near(look, others, start, along, outward, length, short * reach)
        clear += by is not None
        lines.append((start + outward * (by or 0.0), along))
    corners = [_crossing(lines[at - 1], lines[at]) for at in range(4)]
    if clear < 3 or any(corner is None for corner in corners):
        return None
    return np.array(corners, np.float32)


def _line_near(
    look: _Look, others: Array, start: Array, along: Array, outward: Array, length: float, most: float
) -> float | None:
    """How far outside a side the edge of the print runs, in pixels (inside: below 0); None where no line is clear.

    The edge is the strongest line near the side; or a fainter one beyond, with a quiet light strip between the two, or
    as far off as no shadow reaches: then the first was where the picture ends, and a white border lies between.
    """
    steps = np.arange(-INWARD - 1, max(int(most), INWARD) + 8, dtype=np.float32)
    places = np.linspace(0.08, 0.92, max(16, int(length * 0.8)), dtype=np.float32) * length
    grid = start + outward * steps[:, None, None] + along * places[None, :, None]
    across, down = grid[..., 0].astype(np.float32), grid[..., 1].astype(np.float32)
    high, wide = look.mask.shape
    band = cv2.remap(look.lab, across, down, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    on_others = cv2.remap(others, across, down, cv2.INTER_NEAREST)[1:-1].mean(1) > NEIGHBOUR
    within = ((across > 1) & (across < wide - 2) & (down > 1) & (down < high - 2)).mean(1)[1:-1] > 0.7
    steps = steps[1:-1]
    change = np.quantile(np.abs(band[2:] - band[:-2]).sum(-1), 0.35, axis=1)
    quiet = float(np.median(change[steps > 6])) + 1e-3
    clear = (change > max(2.0 * quiet, quiet + 1.0)) & within
    neighbour = int(np.flatnonzero(on_others)[0]) if on_others.any() else len(steps) + INWARD
    near = np.flatnonzero(clear & (np.abs(steps) <= INWARD))
    near = near[near < max(neighbour - 1, INWARD + 2)]
    best: int | None = max(map(int, near), key=lambda at: float(change[at]), default=None)
    ends = neighbour - INWARD
    light = np.median(band[1:-1, :, 0], axis=1)
    outer = [int(at) for at in np.flatnonzero(clear) if steps[at] <= most + INWARD and at < ends]
    if best is None:
        outer = [at for at in outer if steps[at] > INWARD]
    else:
        outer = [at for at in outer if at > best + 2 and _is_border(change, light, best, at)]
    if outer:
        best = max((at for at in outer if outer[-1] - at < 5), key=lambda at: float(change[at]))
    return None if best is None else float(steps[best])


def _is_border(change: Array, light: Array, inner: int, outer: int) -> bool:
    """Whether what lies between two edges is light, and apart from them, as a border is; anything darker is bed."""
    return float(np.median(light[inner + 1 : outer])) > LIGHT and _is_apart(change, inner, outer)


def _is_apart(change: Array, inner: int, outer: int) -> bool:
    """Whether two edges have a quiet strip between them, as a white border is; a shadow fades out and has none."""
    return outer - inner > SHADOW or float(change[inner:outer].min()) < QUIET * float(change[outer])


def _within(each: _Outlined, wide: int, high: int) -> _Outlined:
    """A print; of one that lies aslant and reaches over the edge of the picture, the upright box around it."""
    at_rim = (each.quad < RIM) | (each.quad > (wide - 1 - RIM, high - 1 - RIM))
    box = np.array([each.quad.min(0), each.quad.max(0)])
    upright = np.array([box[0], (box[1][0], box[0][1]), box[1], (box[0][0], box[1][1])], np.float32)
    aslant = float(np.abs(each.quad - upright).max()) > SLIGHTLY
    over = any(at_rim[at, axis] and at_rim[at - 1, axis] for at in range(4) for axis in (0, 1))
    return _Outlined(upright, upright, is_cut_off=True) if over and aslant else each


def _apart(outlined: list[_Outlined]) -> list[_Outlined]:
    """The prints, each with its nearest lines where it would lie over another."""
    return [
        replace(each, quad=each.close)
        if each.close is not None and any(_over(each.quad, other.quad) for other in outlined if other is not each)
        else each
        for each in outlined
    ]


def _over(quad: Array, other: Array) -> bool:
    """Whether two prints lie over each other by more than their edges are sure, and neither lies in the other."""
    both, _ = cv2.intersectConvexConvex(quad.astype(np.float32), other.astype(np.float32))
    smaller = min(cv2.contourArea(quad.astype(np.float32)), cv2.contourArea(other.astype(np.float32)))
    return bool(OVER * smaller < both < 0.8 * smaller)


def _beside(look: _Look, quads: list[Array]) -> float:
    """Which part of the picture is neither bed nor one of these prints."""
    held = np.zeros_like(look.mask)
    for quad in quads:
        corners: Array = np.round(quad).astype(np.int32)
        cv2.fillPoly(held, [corners], 1)
    held = cv2.dilate(held, np.ones((9, 9), np.uint8))
    return int(np.count_nonzero(cv2.subtract(look.mask, held))) / int(look.mask.size)


def _is_print(quad: Array, wide: int, high: int) -> bool:
    """Whether four corners may be a print: large enough, not the whole picture, its sides about parallel."""
    area = abs(float(cv2.contourArea(quad.astype(np.float32))))
    sides = [float(np.linalg.norm(quad[(at + 1) % 4] - quad[at])) for at in range(4)]
    alike = min(sides[0], sides[2]) > 0.6 * max(sides[0], sides[2]) and min(sides[1], sides[3]) > 0.6 * max(
        sides[1], sides[3]
    )
    slim = min(sides) * 5 < max(sides)
    return (
        SMALLEST * wide * high <= area <= LARGEST * wide * high
        and alike
        and not slim
        and bool(cv2.isContourConvex(quad.astype(np.float32)))
    )


def _lies_in(quad: Array, outer: Array) -> bool:
    middle = quad.mean(0)
    smaller = cv2.contourArea(quad.astype(np.float32)) < cv2.contourArea(outer.astype(np.float32))
    return smaller and cv2.pointPolygonTest(outer.astype(np.float32), (float(middle[0]), float(middle[1])), False) > 0


def _in_parts(quad: Array) -> Quad:
    first, second, third, fourth = ((round(float(x), 5), round(float(y), 5)) for x, y in _clockwise(quad))
    return first, second, third, fourth
