"""Sheets and telephone pictures of prints, made with known outlines: what finding prints is measured on.

Six kinds: prints on a light bed, on a dark one, white prints on a white bed, prints with a deckle edge, prints that
touch, and a telephone's picture of one print on a table. All are tilted by up to 15 degrees. What is on the prints is
made of shades, shapes and lines, some of which run from edge to edge. Nothing is read from outside.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

import cv2
import numpy as np

KINDS = ("light bed", "dark bed", "white on white", "deckle edge", "touching", "telephone")
WIDE, HIGH = 1400, 1000
MOST_TILT = 15.0

Array = Any
"""An array of numpy, whose types OpenCV does not tell."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """A picture (RGB, 8 bits) and the outlines of its prints: four corners each, in pixels, clockwise."""

    kind: str
    pixels: Array
    outlines: tuple[Array, ...]


def sheets(each: int, seed: int = 1, kinds: Sequence[str] = KINDS) -> Iterator[Sheet]:
    """So many sheets of each kind; the same for the same seed."""
    for kind in kinds:
        for at in range(each):
            chance = np.random.default_rng([seed, KINDS.index(kind), at])
            yield _telephone(chance) if kind == "telephone" else _flat(kind, chance)


def overlap(first: Array, second: Array) -> float:
    """The area in both quadrilaterals, as a part of that in either (intersection over union)."""
    both, _ = cv2.intersectConvexConvex(first.astype(np.float32), second.astype(np.float32))
    either = cv2.contourArea(first.astype(np.float32)) + cv2.contourArea(second.astype(np.float32)) - both
    return float(both) / max(float(either), 1.0)


def _smooth(chance: Any, high: int, wide: int, cells: int, spread: float) -> Array:
    grid = chance.normal(0, spread, (cells, cells)).astype(np.float32)
    return cv2.resize(grid, (wide, high), interpolation=cv2.INTER_CUBIC)


def _photo(chance: Any, wide: int, high: int) -> Array:
    """What a print shows: a scene of shades with people, a horizon and straight things, grey, brown or coloured."""
    base = chance.uniform(60, 200)
    grey = (
        np.full((high, wide), base, np.float32)
        + _smooth(chance, high, wide, 4, 30)
        + _smooth(chance, high, wide, 12, 14)
    )
    line = int(high * chance.uniform(0.3, 0.7))
    grey[:line] += chance.uniform(-50, 60)
    for _ in range(int(chance.integers(2, 6))):
        at = (int(chance.uniform(0.1, 0.9) * wide), int(chance.uniform(0.3, 0.9) * high))
        size = (int(wide * chance.uniform(0.03, 0.1)), int(high * chance.uniform(0.1, 0.3)))
        cv2.ellipse(grey, at, size, 0, 0, 360, float(chance.uniform(10, 240)), -1)
    for _ in range(int(chance.integers(0, 3))):
        left = int(chance.uniform(0, 0.8) * wide)
        cv2.rectangle(
            grey, (left, line - high // 4), (left + wide // 6, line + high // 8), float(chance.uniform(20, 230)), -1
        )
    grey += chance.normal(0, 4, grey.shape).astype(np.float32)
    tint = [(1, 1, 1), (1.05, 0.97, 0.82), (1, 0.96, 0.9)][int(chance.integers(0, 3))]
    rgb = np.stack([grey * part for part in tint], -1)
    if chance.random() < 0.3:
        rgb += np.stack([_smooth(chance, high, wide, 3, 25) for _ in range(3)], -1)
    return rgb


def _print(chance: Any, kind: str, wide: int, high: int) -> Array:
    rgb = _photo(chance, wide, high)
    always = kind in ("white on white", "deckle edge")
    if always or chance.random() < 0.6:
        edge = max(4, int(min(wide, high) * chance.uniform(0.03, 0.07)))
        white = chance.uniform(238, 252) if kind != "dark bed" else chance.uniform(215, 250)
        frame = np.ones((high, wide), bool)
        frame[edge:-edge, edge:-edge] = False
        rgb[frame] = (white, white - 2, white - chance.uniform(2, 12))
    return rgb


def _mask(chance: Any, kind: str, wide: int, high: int, pad: int) -> Array:
    """Where the print is, within `pad` pixels of nothing; a deckle edge goes in and out in waves."""
    mask = np.zeros((high + 2 * pad, wide + 2 * pad), np.float32)
    if kind != "deckle edge":
        mask[pad : pad + high, pad : pad + wide] = 1
        return mask
    deep = max(2.0, min(wide, high) * 0.012)
    points = []
    for start, end, along in (((0, 0), (wide, 0), wide), ((wide, 0), (wide, high), high),
                              ((wide, high), (0, high), wide), ((0, high), (0, 0), high)):  # fmt: skip
        for step in np.linspace(0, 1, max(8, along // 6), endpoint=False):
            inward = deep * (0.5 + 0.5 * np.sin(step * along / 5 + chance.uniform(-0.6, 0.6)))
            x, y = start[0] + (end[0] - start[0]) * step, start[1] + (end[1] - start[1]) * step
            normal = (-(end[1] - start[1]) / along, (end[0] - start[0]) / along)
            points.append((x + normal[0] * inward + pad, y + normal[1] * inward + pad))
    cv2.fillPoly(mask, [np.array(points, np.int32)], 1.0)
    return mask


def _corners(centre: tuple[float, float], wide: float, high: float, tilt: float) -> Array:
    turn = np.deg2rad(tilt)
    across, down = np.array([np.cos(turn), np.sin(turn)]), np.array([-np.sin(turn), np.cos(turn)])
    half = [(-wide, -high), (wide, -high), (wide, high), (-wide, high)]
    return np.array([np.array(centre) + across * x / 2 + down * y / 2 for x, y in half], np.float32)


def _bed(chance: Any, kind: str) -> Array:
    shade = {"dark bed": chance.uniform(15, 45), "white on white": chance.uniform(240, 250)}.get(
        kind, chance.uniform(205, 246)
    )
    return np.full((HIGH, WIDE, 3), shade, np.float32) + _smooth(chance, HIGH, WIDE, 3, 2)[..., None]


def _lay(bed: Array, rgb: Array, mask: Array, pad: int, corners: Array, shadow: float, soft: float) -> None:
    """Lay a print on the bed at its corners, with its shadow to the right and below."""
    high, wide = rgb.shape[:2]
    whole = np.zeros((*mask.shape, 3), np.float32)
    whole[pad : pad + high, pad : pad + wide] = rgb
    source = np.array([(pad, pad), (pad + wide, pad), (pad + wide, pad + high), (pad, pad + high)], np.float32)
    matrix = cv2.getPerspectiveTransform(source, corners.astype(np.float32))
    laid = cv2.warpPerspective(whole, matrix, (bed.shape[1], bed.shape[0]), flags=cv2.INTER_LINEAR)
    cover = cv2.warpPerspective(mask, matrix, (bed.shape[1], bed.shape[0]), flags=cv2.INTER_LINEAR)
    moved = cv2.warpAffine(cover, np.array([[1, 0, soft], [0, 1, soft]], np.float32), (bed.shape[1], bed.shape[0]))
    bed -= (cv2.GaussianBlur(moved, (0, 0), soft) * shadow)[..., None]
    edge = cover - cv2.erode(cover, np.ones((3, 3)))
    bed *= 1 - cover[..., None]
    bed += laid * (cover / np.maximum(cover, 1e-3))[..., None] * cover[..., None]
    bed -= (np.clip(edge, 0, 1) * shadow * 0.6)[..., None]


def _finished(chance: Any, bed: Array) -> Array:
    noisy = bed + chance.normal(0, 1.6, bed.shape).astype(np.float32)
    pixels = np.clip(noisy, 0, 255).astype(np.uint8)
    _, packed = cv2.imencode(".jpg", pixels[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, 88])
    return cv2.imdecode(packed, cv2.IMREAD_COLOR)[..., ::-1].copy()


def _flat(kind: str, chance: Any) -> Sheet:
    bed = _bed(chance, kind)
    shadow = float(chance.uniform(8, 22) if kind == "white on white" else chance.uniform(10, 45))
    places = _touching(chance) if kind == "touching" else _apart(chance)
    outlines = []
    for corners in places:
        wide, high = (int(np.linalg.norm(corners[1] - corners[0])), int(np.linalg.norm(corners[3] - corners[0])))
        pad = 8
        _lay(bed, _print(chance, kind, wide, high), _mask(chance, kind, wide, high, pad), pad, corners, shadow,
             float(chance.uniform(1.5, 5)))  # fmt: skip
        outlines.append(corners)
    return Sheet(kind, _finished(chance, bed), tuple(outlines))


def _apart(chance: Any) -> list[Array]:
    """Prints in the cells of a grid, none of which reaches into another's."""
    columns, rows = [(2, 1), (2, 2), (3, 2), (1, 1), (3, 1)][int(chance.integers(0, 5))]
    places = []
    for row in range(rows):
        for column in range(columns):
            cell = (WIDE / columns, HIGH / rows)
            tilt = float(chance.uniform(-MOST_TILT, MOST_TILT))
            shape = float(chance.uniform(0.62, 1.6))
            turn = abs(np.deg2rad(tilt))
            high = min(
                cell[0] / (shape * np.cos(turn) + np.sin(turn)), cell[1] / (shape * np.sin(turn) + np.cos(turn))
            ) * chance.uniform(0.7, 0.93)
            wide = high * shape
            centre = ((column + 0.5) * cell[0], (row + 0.5) * cell[1])
            places.append(_corners(centre, wide, high, tilt))
    return places


def _touching(chance: Any) -> list[Array]:
    """Two or three prints, edge to edge, of one tilt; of the same height or not."""
    tilt = float(chance.uniform(-MOST_TILT, MOST_TILT))
    turn = np.deg2rad(tilt)
    across, down = np.array([np.cos(turn), np.sin(turn)]), np.array([-np.sin(turn), np.cos(turn)])
    count = int(chance.integers(2, 4))
    wide, high = chance.uniform(260, 360), chance.uniform(260, 420)
    start = np.array([WIDE / 2, HIGH / 2]) - across * wide * count / 2
    places = []
    for at in range(count):
        own = high if chance.random() < 0.5 else high * chance.uniform(0.7, 1.0)
        centre = start + across * wide * (at + 0.5) + down * (own - high) / 2
        places.append(_corners((float(centre[0]), float(centre[1])), wide, own, tilt))
    return places


def _telephone(chance: Any) -> Sheet:
    """One print on a table with a grain, held not quite level, in light that falls off to one side."""
    table = np.zeros((HIGH, WIDE, 3), np.float32) + np.array(
        [(120, 84, 52), (70, 52, 40), (178, 150, 118), (88, 96, 104)][int(chance.integers(0, 4))], np.float32
    )
    grain = cv2.resize(chance.normal(0, 7, (HIGH, 24)).astype(np.float32), (WIDE, HIGH), interpolation=cv2.INTER_LINEAR)
    table += cv2.GaussianBlur(grain, (0, 0), 1.2)[..., None]
    tilt, shape = float(chance.uniform(-MOST_TILT, MOST_TILT)), float(chance.uniform(0.65, 1.55))
    high = min(WIDE * 0.8 / shape, HIGH * 0.78) * chance.uniform(0.7, 0.95)
    corners = _corners(
        (WIDE / 2 + chance.uniform(-40, 40), HIGH / 2 + chance.uniform(-30, 30)), high * shape, high, tilt
    )
    corners += chance.uniform(-0.05, 0.05, (4, 2)).astype(np.float32) * high
    size = (int(high * shape), int(high))
    _lay(table, _print(chance, "telephone", *size), _mask(chance, "telephone", *size, 8), 8, corners,
         float(chance.uniform(10, 40)), float(chance.uniform(3, 9)))  # fmt: skip
    light = 1 + np.linspace(-0.18, 0.18, WIDE, dtype=np.float32)[None, :, None] * chance.uniform(-1, 1)
    light = light + np.linspace(-0.12, 0.12, HIGH, dtype=np.float32)[:, None, None] * chance.uniform(-1, 1)
    return Sheet("telephone", _finished(chance, table * light), (corners,))
