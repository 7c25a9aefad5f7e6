"""Shapes in the round, and how they are looked at: distances to round bodies, marched along parallel rays and lit.

Lengths are in heads (1 is from the crown to the chin), x to the right, y down, z towards the camera; the middle of the
head is at 0, 0, 0. A shape is a function of points (n, 3) to distances (n,), negative within; distances may be too
small, never much too large ("sphere tracing", J. C. Hart 1996; the blends are the usual polynomial ones).
"""

from dataclasses import dataclass, field

import numpy as np

SUN = np.array([-0.52, -0.62, 0.59], np.float32)
FILL = np.array([0.55, -0.15, 0.82], np.float32)

CLOTH, FLESH, HAIR = range(3)
"""What a part is of, for prints in colour; shoes, chairs and eyes go with hair."""


def vec(*numbers):
    return np.array(numbers, np.float32)


def ball(p, centre, radii):
    """An ellipsoid, nearly."""
    q = p - vec(*centre)
    r = vec(*radii)
    inner = np.linalg.norm(q / r, axis=1)
    outer = np.linalg.norm(q / (r * r), axis=1)
    return inner * (inner - 1) / np.maximum(outer, 1e-6)


def limb(p, a, b, ra, rb):
    """From a to b, its thickness going from ra to rb, with round ends."""
    a, b = vec(*a), vec(*b)
    q, along = p - a, b - a
    t = np.clip(q @ along / max(float(along @ along), 1e-9), 0, 1)
    return np.linalg.norm(q - t[:, None] * along, axis=1) - (ra + (rb - ra) * t)


def blend(a, b, k):
    """Both, grown together over k."""
    h = np.clip(0.5 + 0.5 * (b - a) / k, 0, 1)
    return b + (a - b) * h - k * h * (1 - h)


def without(a, b, k):
    """a, with b taken out softly."""
    return -blend(-a, b, k)


def grown(first, *others, k):
    for other in others:
        first = blend(first, other, k)
    return first


def turned(p, yaw=0.0, tilt=0.0, nod=0.0, about=(0, 0, 0)):
    """The points as somebody sees them who has turned (radians): to her left, over her shoulder, down."""
    q = p - vec(*about)
    for a, i, j in ((yaw, 0, 2), (tilt, 0, 1), (nod, 2, 1)):
        if a:
            c, s = np.float32(np.cos(a)), np.float32(np.sin(a))
            q = q.copy()
            q[:, i], q[:, j] = c * q[:, i] - s * q[:, j], s * q[:, i] + c * q[:, j]
    return q + vec(*about)


@dataclass
class Part:
    """A shape of one stuff. `shade` gives its greys 0 to 1 at points of its skin; `box` holds all of it."""

    shape: object
    shade: object
    box: tuple
    gloss: float = 0.0
    kind: int = CLOTH


@dataclass
class Scene:
    """Some parts, and how far they are."""

    parts: list = field(default_factory=list)

    def add(self, shape, shade, low, high, gloss=0.0, kind=CLOTH):
        self.parts.append(Part(shape, shade, (vec(*low), vec(*high)), gloss, kind))

    def distance(self, p, which=None):
        """How far each point is from what is nearest; with `which`, fills in the number of that part."""
        best = np.full(len(p), 9.0, np.float32)
        for number, part in enumerate(self.parts):
            low, high = part.box
            away = np.linalg.norm(np.maximum(np.maximum(low - p, p - high), 0), axis=1)
            near = away < 0.05
            far = ~near & (away < best)
            best[far] = away[far] + 0.02
            if near.any():
                at = np.flatnonzero(near)
                d = part.shape(p[at])
                closer = d < best[at]
                best[at[closer]] = d[closer]
                if which is not None:
                    which[at[closer]] = number
        return best


def look_at(scene, low, high, scale, pitch=0.07):
    """The scene from in front, a little from above: greys in 0 to 1, whether anything is there, and its kind.

    Each is (rows, columns). `low` and `high` are the corners (x, y) of the view, `scale` the pixels of a head.
    """
    wide, tall = int((high[0] - low[0]) * scale), int((high[1] - low[1]) * scale)
    xs = low[0] + (np.arange(wide, dtype=np.float32) + 0.5) / scale
    ys = low[1] + (np.arange(tall, dtype=np.float32) + 0.5) / scale
    start = np.stack([*(g.ravel() for g in np.meshgrid(xs, ys)), np.full(wide * tall, 2.6, np.float32)], axis=1)
    c, s = np.float32(np.cos(pitch)), np.float32(np.sin(pitch))

    def placed(p):
        return np.stack([p[:, 0], c * p[:, 1] + s * p[:, 2], c * p[:, 2] - s * p[:, 1]], axis=1)

    ray = placed(vec(0, 0, -1)[None])[0]
    origin = placed(start)
    depth = np.zeros(len(origin), np.float32)
    live = np.arange(len(origin))
    hit = np.zeros(len(origin), bool)
    for _ in range(90):
        d = scene.distance(origin[live] + depth[live, None] * ray)
        found = d < 0.004
        hit[live[found]] = True
        depth[live] += np.where(found, 0, d * 0.85)
        live = live[~found & (depth[live] < 5.2)]
        if not len(live):
            break
    at = np.flatnonzero(hit)
    grey = np.zeros(len(origin), np.float32)
    kinds = np.zeros(len(origin), np.float32)
    if len(at):
        grey[at], which = lit(scene, origin[at] + depth[at, None] * ray, -ray)
        kinds[at] = np.array([part.kind for part in scene.parts], np.float32)[which]
    return tuple(part.reshape(tall, wide).astype(np.float32) for part in (grey, hit, kinds))


def lit(scene, p, eye):
    """What light comes from points of the skin, and of which part each is: the sun's with its soft shadows, a paler one
    from the other side, and the sky's, less of it in hollows."""
    which = np.zeros(len(p), int)
    scene.distance(p, which)
    e = 0.006
    corners = vec(1, -1, -1), vec(-1, -1, 1), vec(-1, 1, -1), vec(1, 1, 1)
    normal = sum(corner * scene.distance(p + e * corner)[:, None] for corner in corners)
    normal /= np.maximum(np.linalg.norm(normal, axis=1, keepdims=True), 1e-6)
    hollow = np.zeros(len(p), np.float32)
    for step in (0.04, 0.10, 0.22, 0.45):
        hollow += np.clip(step - scene.distance(p + step * normal), 0, step) / step * 0.25
    open_sky = np.clip(1 - 0.85 * hollow, 0.15, 1)
    shadow = np.ones(len(p), np.float32)
    along = np.full(len(p), 0.05, np.float32)
    for _ in range(16):
        d = scene.distance(p + normal * 0.012 + along[:, None] * SUN)
        shadow = np.minimum(shadow, np.clip(0.5 + 6 * d / along, 0, 1))
        along += np.clip(d, 0.03, 0.30)
    sun = np.clip(normal @ SUN, 0, 1) * shadow
    fill = np.clip(normal @ FILL, 0, 1)
    half = SUN + eye
    half /= np.linalg.norm(half)
    shine = np.clip(normal @ half, 0, 1)
    grey = np.zeros(len(p), np.float32)
    for number, part in enumerate(scene.parts):
        own = np.flatnonzero(which == number)
        if len(own):
            stuff = np.clip(part.shade(p[own], normal[own]), 0, 1) ** 2.2
            light = 0.78 * sun[own] + (0.26 * fill[own] + 0.24 * (1.0 - 0.5 * normal[own, 1])) * open_sky[own]
            grey[own] = stuff * light + part.gloss * shine[own] ** 24 * sun[own]
    return np.clip(grey, 0, 1) ** (1 / 2.2), which
