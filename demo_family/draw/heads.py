"""Heads of invented people, with their hair and what is worn on it, sculpted (`sculpting.py`)."""

import random
from dataclasses import dataclass

import numpy as np
from sculpting import FLESH, HAIR, Scene, ball, blend, grown, limb, turned, vec, without


@dataclass(frozen=True)
class Look:
    """How one person looks. Greys are 0 to 255."""

    skin: int = 196
    hair: int = 60
    cloth: int = 70
    collar: int = 220
    style: str = "suit"  # suit, uniform, blouse, dress, frock, shawl, child, baby
    hairdo: str = "short"  # short, bun, bob, long, cap, veil, bald, plaits
    beard: bool = False
    moustache: bool = False
    turn: float = 0.0
    old: bool = False
    seated: bool = False
    boy: bool = False
    holds: str = ""  # flowers, accordion


SKIRTS = ("blouse", "dress", "frock", "shawl", "baby")
YOUNG = ("child", "baby")


class Head:
    """The head of one person, added to a scene; its middle is at 0, 0, 0."""

    def __init__(self, scene: Scene, look: Look, rng: random.Random) -> None:
        self.scene, self.look = scene, look
        self.young = look.style in YOUNG
        vary = rng.uniform
        self.broad = vary(0.95, 1.06)
        self.jaw = vary(0.92, 1.08) * (0.94 if look.style in SKIRTS or self.young else 1.03)
        self.nose = vary(0.82, 1.18) * (0.72 if self.young else 1)
        self.brow = vary(0.9, 1.2)
        self.yaw = look.turn * 0.5 + vary(-0.16, 0.16)
        self.tilt, self.nod = vary(-0.06, 0.06), vary(-0.03, 0.05)
        self._head()
        self._hair()

    def _at_head(self, p):
        return turned(p, self.yaw, self.tilt, self.nod, (0, 0.45, -0.1)) * vec(self.broad, 1, 1)

    def _face(self, p):
        """The head without its hair, of points turned as it is."""
        j, young = self.jaw, self.young
        q = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)  # both sides are alike
        skull = ball(p, (0, -0.09, -0.04), (0.355, 0.42, 0.43))
        jaw = ball(p, (0, 0.17, 0.08), (0.27 * j, 0.31, 0.30))
        chin = ball(p, (0, 0.415 if not young else 0.38, 0.285), (0.10 * j, 0.075, 0.08))
        cheek = ball(q, (0.185 * j, 0.10, 0.225), (0.11, 0.11, 0.10))
        d = grown(skull, jaw, k=0.12)
        d = grown(d, chin, k=0.10)
        d = grown(d, cheek, k=0.10 if young else 0.08)
        d = blend(d, limb(q, (0.05, -0.115, 0.355), (0.23, -0.10, 0.27), 0.04, 0.03), 0.07)
        d = without(d, ball(q, (0.158, -0.012, 0.42), (0.105, 0.072, 0.115)), 0.07)
        tip = (0, 0.125, 0.36 + 0.115 * self.nose)
        d = blend(d, limb(p, (0, -0.06, 0.355), tip, 0.034, 0.047 * self.nose), 0.045)
        d = blend(d, ball(q, (0.052 * self.nose, 0.145, 0.385), (0.036, 0.03, 0.042)), 0.028)
        d = blend(d, ball(p, (0, 0.262, 0.335), (0.125, 0.085, 0.075)), 0.08)
        d = blend(d, ball(p, (0, 0.2405, 0.392), (0.100, 0.021, 0.030)), 0.022)
        d = blend(d, ball(p, (0, 0.2825, 0.385), (0.082, 0.026, 0.034)), 0.022)
        d = without(d, limb(q, (0, 0.2605, 0.437), (0.112, 0.2625, 0.385), 0.011, 0.007), 0.012)
        if self.look.old:
            d = without(d, limb(q, (0.085, 0.15, 0.43), (0.165, 0.265, 0.375), 0.010, 0.008), 0.04)
            d = without(d, ball(q, (0.28, 0.21, 0.26), (0.035, 0.07, 0.04)), 0.12)
        ear = ball(turned(q, 0.35, 0.1, 0, (0.355, 0.02, -0.03)), (0.365, 0.02, -0.03), (0.035, 0.105, 0.07))
        d = blend(d, ear, 0.025)
        neck = 0.205 * (0.80 if self.young else 0.88 if self.look.style in SKIRTS else 1)
        return blend(d, limb(p, (0, 0.30, -0.09), (0, 0.95, -0.14), neck, neck * 1.1), 0.09)

    def _lids(self, p):
        q = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)
        ball_of_lid = np.linalg.norm(q - vec(0.158, -0.014, 0.258), axis=1) - 0.0955
        upper = q[:, 1] - self._lid_line(q)
        lower = (-0.014 + 0.030 - 2.5 * (q[:, 0] - 0.158) ** 2) - q[:, 1]
        return np.maximum(ball_of_lid, np.minimum(upper, lower))

    def _lid_line(self, q):
        """How high the upper lid's edge stands, an arch over the eye."""
        return -0.014 - 0.030 + 3.6 * (q[:, 0] - 0.162) ** 2

    def _head(self):
        look = self.look
        skin = look.skin / 255

        def face_shade(p, _normal):
            q = self._at_head(p)
            x, y, z = np.abs(q[:, 0]), q[:, 1], q[:, 2]
            grey = np.full(len(p), skin, np.float32)
            front = z > 0.15
            lips = front & ((x / 0.105) ** 2 + ((y - 0.262) / 0.044) ** 2 < 1)
            grey[lips] *= 0.80
            grey[front & (np.abs(y - 0.261) < 0.006) & (x < 0.105)] *= 0.55
            arch = -0.118 - 0.030 * np.sin(np.clip((x - 0.05) / 0.20, 0, 1) * 2.4)
            hairs = np.clip(1.5 - np.abs(y - arch) / (0.0125 * self.brow), 0, 1) * ((x > 0.058) & (x < 0.255) & front)
            brow = min(look.hair + 25, 150) / 255 if not look.old else 0.62
            grey += (brow - grey) * hairs * 0.8
            grey[front & (np.hypot(x - 0.155, (y - 0.02) * 1.6) < 0.12)] *= 0.955
            return grey

        self.scene.add(
            lambda p: self._face(self._at_head(p)), face_shade, (-0.5, -0.62, -0.6), (0.5, 1.2, 0.62), 0.03, kind=FLESH
        )

        def lid_shade(p, _normal):
            q = self._at_head(p)
            edge = (np.abs(q[:, 1] - self._lid_line(np.abs(q))) < 0.012) & (q[:, 1] < -0.02)
            return np.where(edge, skin * 0.42, skin * 0.93).astype(np.float32)

        box = (-0.4, -0.25, 0.0), (0.4, 0.2, 0.5)
        self.scene.add(lambda p: self._lids(self._at_head(p)), lid_shade, *box, kind=FLESH)

        def eyes(p):
            q = self._at_head(p)
            q = np.abs(q * vec(1, 0, 0)) + q * vec(0, 1, 1)
            return np.linalg.norm(q - vec(0.158, -0.014, 0.258), axis=1) - 0.089

        def eye_shade(p, _normal):
            q = self._at_head(p)
            side = np.sign(q[:, 0])
            off = np.hypot(q[:, 0] - side * 0.156 + self.yaw * 0.045, q[:, 1] + 0.012)
            grey = np.full(len(p), 0.80, np.float32)
            grey[off < 0.0405] = 0.30
            grey[(off < 0.0405) & (off > 0.034)] = 0.2
            grey[off < 0.019] = 0.04
            grey[np.hypot(q[:, 0] - side * 0.158 + 0.016, q[:, 1] + 0.026) < 0.0085] = 1.0
            return grey

        self.scene.add(eyes, eye_shade, *box, 0.10, HAIR)
        if look.beard or look.moustache:
            self._beard()

    def _beard(self):
        grey = (205 if self.look.old else self.look.hair + 12) / 255

        def beard(p):
            q = self._at_head(p)
            s = np.abs(q * vec(1, 0, 0)) + q * vec(0, 1, 1)
            full = grown(
                ball(q, (0, 0.46, 0.20), (0.225, 0.23, 0.19)),
                limb(s, (0.30, 0.02, 0.02), (0.20, 0.36, 0.16), 0.055, 0.10),
                k=0.10,
            )
            lip = limb(s, (0.012, 0.205, 0.418), (0.150, 0.275, 0.345), 0.034, 0.024)
            d = blend(full, lip, 0.03) if self.look.beard else lip
            return (
                d
                + 0.004 * np.sin(q[:, 0] * 60 + 2 * np.sin(q[:, 1] * 17))
                + 0.004 * np.sin(q[:, 0] * 23 - q[:, 1] * 31)
            )

        self.scene.add(
            beard, lambda p, _n: np.full(len(p), grey, np.float32), (-0.5, -0.1, -0.2), (0.5, 0.75, 0.6), 0, HAIR
        )

    # -- hair and what is worn on it

    def _hair(self):
        look = self.look
        grey = (212 if look.old and look.hairdo != "cap" else look.hair) / 255

        def strands(q):
            around = np.arctan2(q[:, 0], q[:, 2] + 0.25)
            return np.sin(around * 46 + 5 * np.sin(q[:, 1] * 9)) * 0.5 + np.sin(around * 91 + q[:, 1] * 13) * 0.3

        def hair(p):
            q = self._at_head(p)
            s = np.abs(q * vec(1, 0, 0)) + q * vec(0, 1, 1)
            cap = ball(q, (0, -0.125, -0.065), (0.40, 0.435, 0.445))
            low = {"short": 0.10, "cap": 0.08, "bald": 0.10}.get(look.hairdo, 0.22)
            d = np.maximum(cap, q[:, 1] - low - 0.9 * np.minimum(q[:, 2] + 0.05, 0) * -0.4)
            if look.hairdo == "bald":
                d = np.maximum(d, -(q[:, 1] + 0.14))
            # the face stays free: a hairline over the brow, down to the ears
            line = ball(q, (0.06, 0.10, 0.42), (0.335, 0.415, 0.46))
            temple = ball(s, (0.0, 0.16, 0.26), (0.345, 0.33, 0.30))
            d = without(d, np.minimum(line, temple), 0.05)
            if look.hairdo in ("bun", "veil"):
                d = blend(d, ball(q, (0, -0.20, -0.10), (0.43, 0.40, 0.40)), 0.02)
                d = without(d, line, 0.06)
                d = blend(d, ball(q, (0, -0.56, -0.20), (0.20, 0.15, 0.20)), 0.05)
            if look.hairdo in ("bob", "long"):
                to = 0.34 if look.hairdo == "bob" else 0.75
                side = limb(s, (0.37, -0.10, -0.06), (0.385, to, -0.06), 0.095, 0.085)
                behind = ball(q, (0, 0.10, -0.22), (0.38, 0.42 if to < 0.5 else 0.8, 0.24))
                fringe = ball(q, (0, -0.30, 0.24), (0.30, 0.11, 0.17)) if self.young else 9 + 0 * d
                d = grown(d, side, behind, fringe, k=0.06)
            if look.hairdo == "plaits":
                for step in range(6):
                    c = (0.36 + 0.012 * step, 0.16 + 0.125 * step, 0.02 + 0.035 * min(step, 3))
                    d = blend(d, ball(s, c, (0.072, 0.085, 0.07)), 0.02)
            return d - 0.0035 * strands(q)

        def hair_shade(p, _normal):
            q = self._at_head(p)
            return np.clip(grey * (1 + 0.12 * strands(q)) + 0.02, 0, 1).astype(np.float32)

        self.scene.add(hair, hair_shade, (-0.6, -0.8, -0.7), (0.6, 1.0, 0.6), 0.05, HAIR)
        if look.hairdo == "cap":
            self._cap()
        if look.hairdo == "veil":
            self._veil()

    def _cap(self):
        def cap(p):
            q = self._at_head(p)
            top = ball(q, (0, -0.47, -0.05), (0.50, 0.14, 0.50))
            band = np.maximum(ball(q, (0, -0.30, -0.06), (0.405, 0.60, 0.455)), np.abs(q[:, 1] + 0.34) - 0.09)
            peak = np.maximum(ball(q, (0, -0.235, 0.30), (0.33, 0.055, 0.26)), -(q[:, 2] - 0.18))
            return np.minimum(blend(top, band, 0.05), peak)

        def shade(p, _normal):
            q = self._at_head(p)
            grey = np.full(len(p), max(self.look.cloth - 14, 30) / 255, np.float32)
            grey[(q[:, 1] > -0.30) & (q[:, 2] > 0.2)] = 0.13
            grey[np.hypot(q[:, 0], q[:, 1] + 0.36) < 0.05] = 0.75
            return grey

        self.scene.add(cap, shade, (-0.6, -0.7, -0.7), (0.6, -0.1, 0.7), 0.05)

    def _veil(self):
        def veil(p):
            q = self._at_head(p)
            outer = ball(q, (0, -0.16, -0.16), (0.47, 0.50, 0.48))
            fall = limb(p, (0, 0.2, -0.40), (0, 2.4, -0.75), 0.42, 0.56) + 0.03 * np.sin(p[:, 0] * 13)
            d = blend(outer, fall, 0.12)
            return without(d, ball(q, (0, 0.10, 0.34), (0.40, 0.62, 0.52)), 0.03)

        wreath_shade = lambda p, _n: np.full(len(p), 0.93, np.float32)  # noqa: E731
        self.scene.add(veil, wreath_shade, (-1.3, -0.8, -1.5), (1.3, 3.6, 0.3))

        def wreath(p):
            q = self._at_head(p)
            around = np.arctan2(q[:, 0], q[:, 2])
            ring = np.hypot(np.hypot(q[:, 0], q[:, 2] + 0.05) - 0.39, q[:, 1] + 0.34 - 0.10 * q[:, 2]) - 0.045
            return ring + 0.014 * np.sin(around * 30)

        self.scene.add(wreath, wreath_shade, (-0.6, -0.6, -0.6), (0.6, 0.0, 0.6))
