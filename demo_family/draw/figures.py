"""Figures, faces and clothes for the demo's pictures: soft shapes of light and shade, drawn large and made small.

Everything is drawn in greys on an `L` image at twice its size; toning and ageing come after (`aging.py`).
"""

import math
import random
from dataclasses import dataclass

from PIL import Image, ImageChops, ImageDraw, ImageFilter


@dataclass(frozen=True)
class Look:
    """How one person looks: sizes are parts of the head's height."""

    skin: int = 196
    hair: int = 60
    cloth: int = 70
    collar: int = 220
    style: str = "suit"  # suit, dress, blouse, uniform, child, baby, shawl
    hairdo: str = "short"  # short, bun, bob, long, cap, veil, bald, plaits
    beard: bool = False
    turn: float = 0.0
    old: bool = False


def soft(image: Image.Image, draw, box, shade: int, blur: float) -> None:
    """Paste a blurred shape: `draw(d)` draws it white on black."""
    mask = Image.new("L", image.size, 0)
    draw(ImageDraw.Draw(mask))
    image.paste(shade, (0, 0), mask.filter(ImageFilter.GaussianBlur(blur)))


def _shape(image: Image.Image, points, shade: int, blur: float = 2.0) -> None:
    soft(image, lambda d: d.polygon(points, fill=255), None, shade, blur)


def _oval(image: Image.Image, box, shade: int, blur: float = 2.0) -> None:
    soft(image, lambda d: d.ellipse(box, fill=255), None, shade, blur)


def _curve(*points, steps: int = 12):
    """A smooth outline through points (Catmull-Rom)."""
    found = []
    ring = list(points)
    for at in range(len(ring)):
        p0, p1, p2, p3 = (ring[(at + k - 1) % len(ring)] for k in range(4))
        for step in range(steps):
            t = step / steps
            found.append(
                tuple(
                    0.5
                    * (
                        2 * p1[a]
                        + (p2[a] - p0[a]) * t
                        + (2 * p0[a] - 5 * p1[a] + 4 * p2[a] - p3[a]) * t * t
                        + (3 * p1[a] - p0[a] - 3 * p2[a] + p3[a]) * t**3
                    )
                    for a in (0, 1)
                )
            )
    return found


def head(image: Image.Image, x: float, y: float, h: float, look: Look, light: float = -0.35) -> None:
    """A head whose middle is at x, y and whose height is h; light from the left for a negative `light`."""
    w = h * 0.74
    turn = look.turn * w * 0.16
    crop = (int(x - h * 1.2), int(y - h * 1.2), int(x + h * 1.2), int(y + h * 1.4))
    patch = image.crop(crop)
    ox, oy = x - crop[0], y - crop[1]
    if look.hairdo in ("bun", "long", "bob", "plaits"):
        back = {"bun": 0.60, "long": 0.72, "bob": 0.66, "plaits": 0.62}[look.hairdo]
        low = {"bun": 0.18, "long": 0.95, "bob": 0.42, "plaits": 0.30}[look.hairdo]
        _shape(
            patch,
            _curve(
                (ox - h * back * 0.78, oy),
                (ox, oy - h * 0.62),
                (ox + h * back * 0.78, oy),
                (ox + h * 0.42, oy + h * low),
                (ox - h * 0.42, oy + h * low),
            ),
            look.hair,
            h * 0.03,
        )
    _shape(
        patch,
        [
            (ox - w * 0.26, oy + h * 0.25),
            (ox + w * 0.26, oy + h * 0.25),
            (ox + w * 0.34, oy + h * 0.78),
            (ox - w * 0.34, oy + h * 0.78),
        ],
        int(look.skin * 0.78),
        h * 0.03,
    )
    face = _curve(
        (ox - w * 0.48, oy - h * 0.10),
        (ox - w * 0.36, oy - h * 0.42),
        (ox, oy - h * 0.50),
        (ox + w * 0.36, oy - h * 0.42),
        (ox + w * 0.48, oy - h * 0.10),
        (ox + w * 0.40, oy + h * 0.24),
        (ox + w * 0.16, oy + h * 0.47),
        (ox, oy + h * 0.50),
        (ox - w * 0.16, oy + h * 0.47),
        (ox - w * 0.40, oy + h * 0.24),
    )
    for side in (-1, 1):
        _oval(
            patch,
            (ox + side * w * 0.50 - w * 0.08, oy - h * 0.08, ox + side * w * 0.50 + w * 0.08, oy + h * 0.14),
            int(look.skin * 0.80),
            h * 0.015,
        )
    mask = Image.new("L", patch.size, 0)
    ImageDraw.Draw(mask).polygon(face, fill=255)
    mask = mask.filter(ImageFilter.GaussianBlur(h * 0.012))
    shade = Image.new("L", patch.size, look.skin)
    _oval(
        shade,
        (ox + (0.05 - light) * w, oy - h * 0.65, ox + (1.3 - light) * w, oy + h * 0.75),
        int(look.skin * 0.62),
        h * 0.13,
    )
    _oval(
        shade,
        (ox + (light - 0.28) * w, oy - h * 0.40, ox + (light + 0.42) * w, oy - h * 0.02),
        min(255, int(look.skin * 1.16)),
        h * 0.10,
    )
    _oval(shade, (ox - w * 0.30, oy + h * 0.36, ox + w * 0.30, oy + h * 0.62), int(look.skin * 0.72), h * 0.07)
    _features(shade, ox + turn, oy, w, h, look)
    patch.paste(shade, (0, 0), mask)
    _hair(patch, ox, oy, w, h, look)
    image.paste(patch, crop[:2])


def _features(shade: Image.Image, x: float, y: float, w: float, h: float, look: Look) -> None:
    dark = int(look.skin * 0.30)
    for side in (-1, 1):
        ex = x + side * w * 0.205
        _oval(shade, (ex - w * 0.135, y - h * 0.085, ex + w * 0.135, y + h * 0.045), int(look.skin * 0.72), h * 0.022)
        _oval(
            shade, (ex - w * 0.085, y - h * 0.040, ex + w * 0.085, y + h * 0.022), min(250, look.skin + 22), h * 0.006
        )
        _oval(shade, (ex - w * 0.042, y - h * 0.040, ex + w * 0.042, y + h * 0.024), 34, h * 0.006)
        _shape(
            shade,
            [(ex - w * 0.10, y - h * 0.030), (ex, y - h * 0.058), (ex + w * 0.10, y - h * 0.030), (ex, y - h * 0.044)],
            46,
            h * 0.006,
        )
        brow = min(look.hair + 20, 120) if not look.old else 150
        _shape(
            shade,
            [(ex - w * 0.13, y - h * 0.112), (ex, y - h * 0.138), (ex + w * 0.13, y - h * 0.112), (ex, y - h * 0.118)],
            brow,
            h * 0.009,
        )
    _shape(
        shade,
        [(x + w * 0.015, y - h * 0.04), (x + w * 0.085, y + h * 0.135), (x + w * 0.01, y + h * 0.150)],
        int(look.skin * 0.74),
        h * 0.016,
    )
    _oval(shade, (x - w * 0.035, y - h * 0.02, x + w * 0.010, y + h * 0.13), min(255, int(look.skin * 1.10)), h * 0.014)
    _oval(shade, (x - w * 0.075, y + h * 0.130, x + w * 0.085, y + h * 0.162), int(look.skin * 0.62), h * 0.011)
    _shape(
        shade,
        _curve(
            (x - w * 0.165, y + h * 0.262),
            (x - w * 0.05, y + h * 0.244),
            (x, y + h * 0.250),
            (x + w * 0.05, y + h * 0.244),
            (x + w * 0.165, y + h * 0.262),
            (x, y + h * 0.298),
        ),
        int(look.skin * 0.56),
        h * 0.008,
    )
    _shape(
        shade,
        [(x - w * 0.165, y + h * 0.262), (x, y + h * 0.270), (x + w * 0.165, y + h * 0.262), (x, y + h * 0.264)],
        dark,
        h * 0.005,
    )
    if look.old:
        for side in (-1, 1):
            _shape(
                shade,
                [
                    (x + side * w * 0.16, y + h * 0.13),
                    (x + side * w * 0.25, y + h * 0.27),
                    (x + side * w * 0.22, y + h * 0.28),
                ],
                int(look.skin * 0.70),
                h * 0.010,
            )
    if look.beard:
        _shape(
            shade,
            _curve(
                (x - w * 0.42, y + h * 0.10),
                (x - w * 0.20, y + h * 0.20),
                (x, y + h * 0.185),
                (x + w * 0.20, y + h * 0.20),
                (x + w * 0.42, y + h * 0.10),
                (x + w * 0.36, y + h * 0.42),
                (x, y + h * 0.58),
                (x - w * 0.36, y + h * 0.42),
            ),
            min(look.hair + 22, 190),
            h * 0.02,
        )
        _oval(shade, (x - w * 0.10, y + h * 0.245, x + w * 0.10, y + h * 0.282), int(look.skin * 0.60), h * 0.008)


def _hair(patch: Image.Image, x: float, y: float, w: float, h: float, look: Look) -> None:
    hair = 205 if look.old and look.hairdo != "cap" else look.hair
    if look.hairdo == "bald":
        for side in (-1, 1):
            _oval(
                patch,
                (x + side * w * 0.46 - w * 0.10, y - h * 0.22, x + side * w * 0.46 + w * 0.10, y + h * 0.06),
                hair,
                h * 0.02,
            )
        return
    if look.hairdo == "cap":
        _shape(
            patch,
            _curve(
                (x - w * 0.60, y - h * 0.24),
                (x - w * 0.50, y - h * 0.55),
                (x, y - h * 0.66),
                (x + w * 0.50, y - h * 0.55),
                (x + w * 0.60, y - h * 0.24),
                (x, y - h * 0.31),
            ),
            44,
            h * 0.015,
        )
        _shape(
            patch,
            _curve((x - w * 0.48, y - h * 0.25), (x, y - h * 0.30), (x + w * 0.48, y - h * 0.25), (x, y - h * 0.19)),
            22,
            h * 0.01,
        )
        return
    top = _curve(
        (x - w * 0.54, y + h * 0.02),
        (x - w * 0.52, y - h * 0.34),
        (x - w * 0.18, y - h * 0.58),
        (x + w * 0.22, y - h * 0.58),
        (x + w * 0.53, y - h * 0.33),
        (x + w * 0.54, y + h * 0.02),
        (x + w * 0.44, y - h * 0.20),
        (x + w * 0.12, y - h * 0.36),
        (x - w * 0.20, y - h * 0.33),
        (x - w * 0.44, y - h * 0.20),
    )
    _shape(patch, top, hair, h * 0.014)
    _shape(
        patch,
        _curve(
            (x - w * 0.36, y - h * 0.44),
            (x - w * 0.10, y - h * 0.53),
            (x + w * 0.05, y - h * 0.49),
            (x - w * 0.18, y - h * 0.41),
        ),
        min(255, hair + 46),
        h * 0.03,
    )
    if look.hairdo == "bun":
        _oval(patch, (x - w * 0.24, y - h * 0.76, x + w * 0.24, y - h * 0.46), hair, h * 0.015)
        _oval(patch, (x - w * 0.16, y - h * 0.73, x + w * 0.02, y - h * 0.60), min(255, hair + 40), h * 0.03)
    if look.hairdo == "plaits":
        for side in (-1, 1):
            for step in range(4):
                cy = y + h * (0.22 + 0.17 * step)
                cx = x + side * w * (0.50 + 0.03 * step)
                _oval(
                    patch,
                    (cx - w * 0.09, cy - h * 0.10, cx + w * 0.09, cy + h * 0.10),
                    hair + 10 * (step % 2),
                    h * 0.012,
                )
    if look.hairdo == "veil":
        _shape(
            patch,
            _curve(
                (x - w * 0.62, y - h * 0.15),
                (x, y - h * 0.70),
                (x + w * 0.62, y - h * 0.15),
                (x + w * 0.80, y + h * 1.1),
                (x + w * 0.58, y + h * 0.7),
                (x + w * 0.5, y - h * 0.1),
                (x, y - h * 0.46),
                (x - w * 0.5, y - h * 0.1),
                (x - w * 0.58, y + h * 0.7),
                (x - w * 0.80, y + h * 1.1),
            ),
            226,
            h * 0.03,
        )


def person(image: Image.Image, x: float, y: float, h: float, look: Look, length: float = 6.4, spread: float = 1.0):
    """A figure: head's middle at x, y, its height h, the body to y + length × h. Returns the head's box."""
    wide = {"suit": 1.12, "uniform": 1.15, "dress": 0.92, "blouse": 0.92, "child": 0.86, "baby": 0.8, "shawl": 1.1}[
        look.style
    ] * spread
    top, base = y + h * 0.62, y + h * length
    skirt = look.style in ("dress", "blouse", "shawl", "child")
    hem = wide * (1.18 if skirt else 0.94)
    body = _curve(
        (x - h * 0.30, top),
        (x - h * wide * 0.86, top + h * 0.30),
        (x - h * wide, top + h * 1.25),
        (x - h * wide * 0.86, top + h * 2.3),
        (x - h * hem, base),
        (x + h * hem, base),
        (x + h * wide * 0.86, top + h * 2.3),
        (x + h * wide, top + h * 1.25),
        (x + h * wide * 0.86, top + h * 0.30),
        (x + h * 0.30, top),
    )
    mask = Image.new("L", image.size, 0)
    ImageDraw.Draw(mask).polygon(body, fill=255)
    mask = mask.filter(ImageFilter.GaussianBlur(h * 0.03))
    cloth = Image.new("L", image.size, look.cloth)
    _folds(cloth, x, top, base, h, wide, look)
    image.paste(cloth, (0, 0), mask)
    _collar(image, x, top, h, look)
    head(image, x, y, h, look)
    return (x - h * 0.42, y - h * 0.60, x + h * 0.42, y + h * 0.56)


def _folds(cloth: Image.Image, x, top, base, h, wide, look: Look) -> None:
    rng = random.Random(int(x * 7 + top))
    lighter, darker = min(255, look.cloth + 34), max(0, look.cloth - 26)
    _shape(
        cloth,
        [
            (x - h * wide * 0.95, top),
            (x - h * wide * 0.35, top),
            (x - h * wide * 0.5, base),
            (x - h * wide * 1.1, base),
        ],
        lighter,
        h * 0.28,
    )
    _shape(
        cloth,
        [(x + h * wide * 0.45, top), (x + h * wide, top), (x + h * wide * 1.2, base), (x + h * wide * 0.6, base)],
        darker,
        h * 0.28,
    )
    for side in (-1, 1):
        arm = x + side * h * wide * 0.62
        _shape(
            cloth,
            [
                (arm - h * 0.02, top + h * 0.8),
                (arm + h * 0.03, top + h * 0.8),
                (arm + side * h * 0.05, top + h * 2.5),
                (arm, top + h * 2.5),
            ],
            darker,
            h * 0.035,
        )
    count = 7 if look.style in ("dress", "blouse", "shawl") else 3
    for _ in range(count):
        fx = x + rng.uniform(-0.7, 0.7) * h * wide
        _shape(
            cloth,
            [
                (fx, top + h * 2.0),
                (fx + h * 0.07, top + h * 2.0),
                (fx + h * rng.uniform(-0.1, 0.3), base),
                (fx - h * 0.05, base),
            ],
            rng.choice((lighter, darker)),
            h * 0.05,
        )


def _collar(image: Image.Image, x, top, h, look: Look) -> None:
    if look.style == "suit":
        _shape(
            image,
            [(x - h * 0.22, top - h * 0.02), (x + h * 0.22, top - h * 0.02), (x, top + h * 0.95)],
            look.collar,
            h * 0.012,
        )
        _shape(
            image,
            [
                (x - h * 0.06, top + h * 0.12),
                (x + h * 0.06, top + h * 0.12),
                (x + h * 0.09, top + h * 0.80),
                (x, top + h * 0.92),
                (x - h * 0.09, top + h * 0.80),
            ],
            max(20, look.cloth - 30),
            h * 0.012,
        )
        for side in (-1, 1):
            _shape(
                image,
                [
                    (x + side * h * 0.22, top),
                    (x + side * h * 0.40, top + h * 0.24),
                    (x + side * h * 0.10, top + h * 0.98),
                    (x + side * h * 0.02, top + h * 0.95),
                ],
                min(255, look.cloth + 22),
                h * 0.014,
            )
    elif look.style == "uniform":
        _shape(
            image,
            [
                (x - h * 0.26, top - h * 0.06),
                (x + h * 0.26, top - h * 0.06),
                (x + h * 0.28, top + h * 0.14),
                (x - h * 0.28, top + h * 0.14),
            ],
            max(15, look.cloth - 25),
            h * 0.012,
        )
        for step in range(5):
            cy = top + h * (0.35 + 0.38 * step)
            _oval(image, (x - h * 0.045, cy, x + h * 0.045, cy + h * 0.09), 212, h * 0.008)
    elif look.style in ("blouse", "dress"):
        _shape(
            image,
            _curve(
                (x - h * 0.30, top),
                (x, top + h * 0.16),
                (x + h * 0.30, top),
                (x + h * 0.34, top + h * 0.16),
                (x, top + h * 0.36),
                (x - h * 0.34, top + h * 0.16),
            ),
            look.collar,
            h * 0.02,
        )
        _oval(image, (x - h * 0.06, top + h * 0.24, x + h * 0.06, top + h * 0.36), 90, h * 0.008)
    elif look.style == "child":
        _shape(
            image,
            _curve(
                (x - h * 0.46, top + h * 0.04),
                (x, top + h * 0.02),
                (x + h * 0.46, top + h * 0.04),
                (x + h * 0.38, top + h * 0.38),
                (x, top + h * 0.44),
                (x - h * 0.38, top + h * 0.38),
            ),
            look.collar,
            h * 0.02,
        )


def hills(image: Image.Image, base: float, height: float, shade: int, seed: int, blur: float = 6) -> None:
    """A line of hills across the picture, its foot at `base` (parts of the height)."""
    rng = random.Random(seed)
    w, h = image.size
    points = [(0, h * base)]
    phase = [rng.uniform(0, 6) for _ in range(3)]
    for x in range(0, w + 1, 16):
        rise = sum(math.sin(x / w * (2.2 + 2.1 * k) + phase[k]) / (k + 1.4) for k in range(3))
        points.append((x, h * (base - height * (0.75 + 0.35 * rise))))
    points.append((w, h * base))
    _shape(image, points, shade, blur)


def sky(image: Image.Image, top: int, low: int, until: float, seed: int = 1) -> None:
    """A sky with soft clouds."""
    w, h = image.size
    for y in range(int(h * until)):
        ImageDraw.Draw(image).line((0, y, w, y), fill=int(top + (low - top) * y / (h * until)))
    rng = random.Random(seed)
    for _ in range(9):
        cx, cy, size = rng.uniform(0, w), rng.uniform(0, h * until * 0.8), rng.uniform(0.06, 0.2) * w
        _oval(image, (cx - size, cy - size * 0.18, cx + size, cy + size * 0.18), min(255, low + 14), size * 0.22)


def backdrop(image: Image.Image, light: int, dark: int, seed: int) -> None:
    """A studio's painted backdrop: a glow behind the sitter, mottled."""
    w, h = image.size
    image.paste(dark, (0, 0, w, h))
    _oval(image, (w * 0.08, h * 0.02, w * 0.92, h * 0.88), light, w * 0.16)
    rng = random.Random(seed)
    mottle = Image.effect_noise((w // 40 + 2, h // 40 + 2), 40).resize((w, h), Image.Resampling.BICUBIC)
    image.paste(ImageChops.blend(image, mottle, 0.16))
    for _ in range(3):
        x = rng.uniform(0, w)
        _oval(image, (x - w * 0.2, h * 0.75, x + w * 0.2, h * 1.2), dark, w * 0.1)
