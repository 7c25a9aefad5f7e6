"""What stands in the demo's pictures, drawn large and made small: people (`bodies.py`), skies, hills, backdrops.

Everything is drawn in greys on an `L` image at twice its size; toning and ageing come after (`aging.py`).
"""

import math
import random

import numpy as np
from bodies import Person
from heads import Look
from PIL import Image, ImageChops, ImageDraw, ImageFilter
from sculpting import FLESH, HAIR, look_at


def soft(image: Image.Image, draw, box, shade: int, blur: float) -> None:
    """Paste a blurred shape: `draw(d)` draws it white on black."""
    mask = Image.new("L", image.size, 0)
    draw(ImageDraw.Draw(mask))
    image.paste(shade, (0, 0), mask.filter(ImageFilter.GaussianBlur(blur)))


def _shape(image: Image.Image, points, shade: int, blur: float = 2.0) -> None:
    soft(image, lambda d: d.polygon(points, fill=255), None, shade, blur)


def _oval(image: Image.Image, box, shade: int, blur: float = 2.0) -> None:
    soft(image, lambda d: d.ellipse(box, fill=255), None, shade, blur)


def person(image: Image.Image, x: float, y: float, h: float, look: Look, length: float = 6.4):
    """Somebody in the picture: the head's middle at x, y, its height h, the feet at y + length × h. Returns the head's
    box."""
    low, high = (-1.45, -0.95), (1.45, min(length + 0.2, (image.height - y) / h + 0.02))
    scene = Person(look, length, seed=int(x * 7 + y)).scene
    grey, cover, kinds = look_at(scene, low, high, h * 0.75)
    size = (round((high[0] - low[0]) * h), round((high[1] - low[1]) * h))
    corner = (round(x + low[0] * h), round(y + low[1] * h))
    _shadow(image, x, y + length * h, h)
    greys, mask, flesh, hair = (
        Image.fromarray((part * 255).astype("uint8")).resize(size, Image.Resampling.BICUBIC)
        for part in (grey, cover, kinds == FLESH, kinds == HAIR)
    )
    greys = _spread(greys, mask, h)
    image.paste(greys, corner, mask.filter(ImageFilter.GaussianBlur(max(0.8, h * 0.008))))
    image.info.setdefault("people", []).append((corner, mask, flesh, hair))
    return (x - h * 0.42, y - h * 0.60, x + h * 0.42, y + h * 0.56)


def _spread(greys: Image.Image, mask: Image.Image, h: float) -> Image.Image:
    """The greys carried over their edge, so that no dark line stands around a person."""
    near = ImageFilter.GaussianBlur(max(1.5, h * 0.03))
    sums, weights = greys.filter(near), mask.filter(near)
    filled = Image.fromarray(
        np.clip(np.asarray(sums, np.float32) * 255 / np.maximum(np.asarray(weights, np.float32), 1), 0, 255).astype(
            "uint8"
        )
    )
    return Image.composite(greys, filled, mask.point(lambda v: 255 if v > 250 else 0))


def _shadow(image: Image.Image, x: float, ground: float, h: float) -> None:
    """The shadow on the ground, to the right of who stands in the light from the left."""
    if ground > image.height + h:
        return
    mask = Image.new("L", image.size, 0)
    ImageDraw.Draw(mask).ellipse((x - h * 0.9, ground - h * 0.20, x + h * 1.5, ground + h * 0.14), fill=120)
    image.paste(30, (0, 0), mask.filter(ImageFilter.GaussianBlur(h * 0.10)))


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
