"""Bodies, hands and clothes of invented people, sculpted (`sculpting.py`) below their heads (`heads.py`)."""

import random

import numpy as np
from heads import SKIRTS, YOUNG, Head, Look
from sculpting import CLOTH, FLESH, HAIR, Scene, ball, blend, grown, limb, turned, vec


class Person:
    """One person, in heads; `length` is from the middle of the head to the ground."""

    def __init__(self, look: Look, length: float, seed: int) -> None:
        self.look, self.length = look, length
        self.rng = random.Random(seed)
        self.young = look.style in YOUNG
        self.wide = {"suit": 1.0, "uniform": 1.0, "shawl": 0.94, "child": 0.66, "baby": 0.6}.get(look.style, 0.84)
        self.down = 0.80 if self.young else 1.0  # how much nearer shoulders and hips are to a child's head
        self.scene = Scene()
        Head(self.scene, look, self.rng)
        self._clothes()

    # -- the body and its clothes

    def _clothes(self):
        look, w, down = self.look, self.wide, self.down
        self.shoulder = (0.70 * w, 0.90 * down, -0.14)
        self.hip = 2.85 * down if not self.young else 2.2
        self.lap = self.length - 2.05 if look.seated and not self.young else self.hip
        if look.seated:
            self.hip = min(self.hip, self.lap)
        self._trunk()
        self._arms()
        if look.style in SKIRTS or (look.style == "child" and not look.boy):
            self._skirt()
        if look.style not in ("blouse", "dress", "shawl", "baby"):
            self._legs()

    def _trunk(self):
        look, w, hip = self.look, self.wide, self.hip
        sx, sy, sz = self.shoulder
        woman = look.style in ("blouse", "dress", "frock", "shawl")
        waist = sy + 0.60 * (hip - sy)

        def trunk(p):
            s = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)
            yoke = limb(s, (0, sy - 0.20, -0.15), (sx - 0.04, sy + 0.03, sz), 0.17 * w**0.5, 0.18 * w**0.5)
            at, wide = (sy - 0.1, sy + 0.45, waist, hip - 0.1, hip + 0.5), (0.50, 0.63, 0.565, 0.60, 0.62)
            if woman:
                at, wide = (sy - 0.1, sy + 0.40, waist - 0.15, hip - 0.1, hip + 0.5), (0.44, 0.58, 0.435, 0.60, 0.50)
            across = np.interp(p[:, 1], at, wide).astype(np.float32) * w
            column = (np.hypot(p[:, 0], (p[:, 2] + 0.10) / (0.62 * w**-0.4)) - across) * 0.75
            bottom = hip + (0.42 if look.style in ("suit", "uniform") else 0.12)
            column = np.maximum(column, np.maximum(sy - 0.10 - p[:, 1], p[:, 1] - bottom))
            d = blend(yoke, column, 0.16)
            if woman:
                d = blend(d, ball(s, (0.20, sy + 0.58, 0.10), (0.24, 0.26, 0.17)), 0.26)
            if look.style in ("suit", "uniform"):  # the coat goes on below the hips, its fronts over each other
                lapel = limb(s, (0.22, sy - 0.14, 0.12), (0.05, sy + 0.98, 0.36), 0.05, 0.03)
                d = blend(d, lapel, 0.06) if look.style == "suit" else d
            if look.style == "shawl":
                around = limb(s, (0.10, sy - 0.10, -0.02), (sx + 0.04, sy + 0.85, -0.02), 0.26, 0.22)
                d = blend(
                    d, blend(around, limb(s, (0.20, sy + 0.1, 0.20), (0.04, sy + 1.1, 0.36), 0.13, 0.10), 0.1), 0.05
                )
            fold = np.sin(p[:, 0] * 9 + p[:, 1] * 6) * np.sin(p[:, 1] * 7 - p[:, 0] * 4)
            return d - 0.010 * fold

        if look.style in ("suit", "blouse", "dress", "shawl", "uniform"):
            self._stand_up_collar(sy)
        self.scene.add(trunk, self._front(sy), (-1.3 * w, sy - 0.4, -0.8), (1.3 * w, hip + 0.75, 0.65))

    def _stand_up_collar(self, sy):
        """A collar around the neck, open a little in front."""
        look = self.look
        neck = (0.235 if look.style in ("suit", "uniform") else 0.20) + 0.02

        def collar(p):
            around = np.hypot(p[:, 0], (p[:, 2] + 0.12) * 0.95) - neck
            height = np.abs(p[:, 1] - (sy - 0.19) - 0.10 * (p[:, 2] + 0.1)) - 0.105
            gap = 0.03 + 0.25 * (p[:, 1] - sy + 0.30) - np.abs(p[:, 0])
            front = np.where(p[:, 2] > 0, gap, -1.0) if look.style == "suit" else np.float32(-1)
            return np.maximum(np.maximum(np.abs(around) - 0.018, height), front * 0.7)

        grey = (look.cloth if look.style in ("uniform", "shawl") else look.collar) / 255
        shade = lambda p, _n: np.full(len(p), grey, np.float32)  # noqa: E731
        self.scene.add(collar, shade, (-0.35, sy - 0.42, -0.45), (0.35, sy + 0.02, 0.25))

    def _front(self, sy):
        """The greys of what is worn above: shirts, ties, collars, buttons."""
        look = self.look
        cloth, collar = look.cloth / 255, look.collar / 255

        def shade(p, normal):
            x, y, z = p[:, 0], p[:, 1] - sy, p[:, 2]
            wide, front = np.abs(x), z > -0.05
            grey = np.full(len(p), cloth, np.float32)
            if look.style == "suit":
                opening = front & (y < 0.95) & (wide < 0.235 * (0.95 - y) / 1.05)
                grey[opening] = collar
                tie = opening & (wide < 0.045 + 0.04 * np.clip(y + 0.1, 0, 1)) & (y > -0.17)
                grey[tie] = max(look.cloth - 34, 18) / 255
                edge = front & ~opening & (y < 1.0) & (wide < 0.235 * (0.95 - y) / 1.05 + 0.16) & (y > -0.2)
                grey[edge] = min(cloth * 1.12 + 0.02, 1)
                grey[edge & (wide > 0.235 * (0.95 - y) / 1.05 + 0.145)] = cloth * 0.7
                grey[front & (y >= 0.95) & (np.abs(x - 0.03) < 0.012)] = cloth * 0.6
                for at in (1.08, 1.42):
                    grey[front & (np.hypot(x + 0.04, y - at) < 0.035)] = cloth * 0.5
            elif look.style == "uniform":
                grey[front & (np.abs(x - 0.02) < 0.012)] = cloth * 0.65
                for at in (0.12, 0.50, 0.88, 1.26):
                    grey[front & (np.hypot(x + 0.03, y - at) < 0.045)] = 0.78
                for side in (-1, 1):
                    pocket = front & (np.abs(x - side * 0.36) < 0.19) & (np.abs(y - 0.46) < 0.015)
                    grey[pocket] = cloth * 0.6
                    grey[front & (np.hypot(x - side * 0.36, y - 0.50) < 0.03)] = 0.7
                belt = front & (np.abs(y - 1.32) < 0.085)
                grey[belt] = 0.2
                grey[belt & (wide < 0.09)] = 0.7
                grey[(y < -0.10) & (wide < 0.3)] = cloth * 0.85
            elif look.style == "child":
                if look.boy:  # a sailor's collar and knot
                    grey[front & (y < 0.40 - wide * 0.35) & (wide < 0.36)] = collar
                    grey[front & (np.abs(y - 0.42) < 0.10) & (wide < 0.07)] = 0.2
                else:
                    grey[front & (np.hypot(wide - 0.16, y + 0.02) < 0.20)] = collar
            elif look.style == "baby":
                grey[front & (np.abs(y - 0.5) < 0.03)] = 0.8
            elif look.style == "shawl":
                fringe = 0.5 + 0.5 * np.sin(p[:, 0] * 30)
                grey[(y > 0.95) & (y < 1.15) & (wide < 0.35)] *= (
                    0.8 + 0.2 * fringe[(y > 0.95) & (y < 1.15) & (wide < 0.35)]
                )
                grey[front & (np.hypot(x, y + 0.06) < 0.07)] = 0.85
            else:
                band = (y < -0.10) & (wide < 0.34)
                grey[band] = collar
                lace = front & (np.hypot(wide - 0.10, (y + 0.05)) < 0.17)
                grey[lace] = collar
                grey[front & (np.hypot(x, y - 0.02) < 0.055)] = 0.25
                if look.style == "blouse":
                    for k in (-0.24, -0.12, 0.12, 0.24):
                        grey[front & (np.abs(x - k) < 0.012) & (y > 0.1)] *= 0.88
            return grey

        return shade

    def _arms(self):
        look, w = self.look, self.wide
        sx, sy, sz = self.shoulder
        arm = self.hip - sy
        thick = 0.185 * w**0.5 * (1.0 if look.style in ("suit", "uniform") else 0.86)
        for side in (-1, 1):
            elbow = vec(side * (sx + 0.17 * w), sy + 0.62 * arm, sz + 0.02)
            hand = vec(side * (sx + 0.10 * w), sy + 1.16 * arm, 0.16)
            if look.seated and not self.young:
                elbow = vec(side * (sx + 0.16 * w), sy + 0.62 * arm, 0.04)
                hand = vec(side * 0.30 * w, self.lap + 0.02, 0.86)
                if look.style in ("blouse", "dress", "shawl"):
                    hand = vec(side * 0.10, self.lap - 0.06, 0.80)
            elif look.holds or look.style in ("blouse", "dress", "shawl"):
                elbow = vec(side * (sx + 0.12 * w), sy + 0.66 * arm, sz + 0.04)
                hand = vec(side * 0.10, sy + 0.92 * arm, 0.52)
            elif self.young and look.seated:
                hand = vec(side * 0.24, sy + 1.0 * arm, 0.5)
            self._arm(side, vec(side * (sx - 0.04), sy + 0.12, sz), elbow, hand, thick)
        if look.holds == "flowers":
            self._flowers(vec(0.02, sy + 0.80 * arm, 0.66))
        if look.holds == "accordion":
            self._accordion(vec(0, sy + 0.72 * arm, 0.62))
        if look.seated:
            self._chair()

    def _arm(self, side, shoulder, elbow, hand, thick):
        look = self.look
        cloth, skin = look.cloth / 255, look.skin / 255
        puff = 1.45 if look.style == "blouse" else 1.0
        bare = look.style == "frock" or (look.style == "child" and not look.boy)

        def sleeve(p):
            upper = limb(p, shoulder, elbow, thick * 1.05 * puff, thick * 0.92)
            if bare:
                return np.maximum(
                    upper, (p - shoulder) @ (elbow - shoulder) / float(np.sum((elbow - shoulder) ** 2)) - 0.62
                )
            lower = limb(p, elbow, elbow + 0.93 * (hand - elbow), thick * 0.92, thick * 0.66)
            fold = np.sin(p[:, 1] * 17 + p[:, 0] * 8 * side)
            return blend(upper, lower, 0.08) - 0.008 * fold

        low = np.minimum(np.minimum(shoulder, elbow), hand) - 0.42
        high = np.maximum(np.maximum(shoulder, elbow), hand) + 0.42

        def sleeve_shade(p, _n):
            along = (p - elbow) @ (hand - elbow) / float(np.sum((hand - elbow) ** 2))
            cuff = collar if (collar := look.collar / 255) and look.style in ("suit", "blouse") else cloth * 0.9
            return np.where(along > 0.87, cuff, cloth).astype(np.float32)

        self.scene.add(sleeve, sleeve_shade, low, high)
        way = (hand - elbow) / np.linalg.norm(hand - elbow)
        size = 0.80 if self.young else 0.92 if look.style in SKIRTS else 1.0

        def flesh(p):
            d = limb(p, hand - 0.10 * way, hand + 0.02 * way, 0.085 * size, 0.10 * size)
            down = way * vec(1, 1, 1) + vec(0, 0.35, -0.15) if not look.seated else way * 0.6 + vec(0, 0.25, 0.75)
            down = down / np.linalg.norm(down)
            across = np.cross(down, vec(0.25 * side, 0, 1)) if abs(down[2]) < 0.8 else vec(1, 0, 0)
            across = across / np.linalg.norm(across)
            knuckle = hand + 0.15 * size * down
            d = blend(d, limb(p, hand, knuckle, 0.095 * size, 0.10 * size), 0.05)
            for k in (-1.5, -0.5, 0.5, 1.5):
                root = knuckle + across * k * 0.052 * size
                bent = root + (0.20 - 0.02 * abs(k)) * size * (down + vec(0, 0.10, -0.25))
                d = blend(d, limb(p, root, bent, 0.036 * size, 0.029 * size), 0.012)
            thumb = hand + 0.05 * size * down - across * side * 0.09 * size
            d = blend(
                d, limb(p, thumb, thumb + 0.15 * size * (down - across * side * 0.5), 0.040 * size, 0.032 * size), 0.02
            )
            if bare:
                d = blend(
                    d,
                    grown(
                        limb(p, shoulder, elbow, thick * 0.72, thick * 0.6),
                        limb(p, elbow, hand, thick * 0.6, thick * 0.46),
                        k=0.05,
                    ),
                    0.03,
                )
            return d

        self.scene.add(flesh, lambda p, _n: np.full(len(p), skin * 0.97, np.float32), low, high, 0.02, kind=FLESH)

    def _skirt(self):
        look, w = self.look, self.wide
        ground = self.length
        long = look.style in ("blouse", "dress", "shawl", "baby")
        hem = (
            self.hip + 1.5
            if look.style == "baby"
            else ground - 0.06
            if long
            else ground - (1.55 if look.style == "frock" else 1.35)
        )
        top = self.hip - 0.66 * self.down
        seated, lap = look.seated and not self.young, self.lap
        flare = {"blouse": 0.92, "dress": 0.86, "shawl": 0.90, "frock": 0.78, "child": 0.82, "baby": 0.72}[look.style]
        phase = self.rng.uniform(0, 6)

        def cone(p, top, hem, narrow, wide, depth, z):
            t = np.clip((p[:, 1] - top) / (hem - top), 0, 1)
            radius = narrow + (wide - narrow) * (1 - (1 - t) ** 2.6 if not seated else t)
            q = p - vec(0, 0, 1) * z
            around = np.arctan2(q[:, 2], q[:, 0])
            ripple = 0.035 * t * np.sin(around * 11 + phase) + 0.02 * t * np.sin(around * 19 + 2 * phase)
            r = np.hypot(q[:, 0], q[:, 2] / depth)
            return np.maximum((r - radius * (1 + ripple)) * 0.75, np.maximum(top - p[:, 1], p[:, 1] - hem))

        def skirt(p):
            if not seated:
                return cone(p, top, hem, 0.46 * w, flare * w, 0.80, -0.08)
            s = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)
            thigh = limb(s, (0.24, lap + 0.10, -0.1), (0.30, lap + 0.20, 0.82), 0.36, 0.29)
            fall = cone(p, lap + 0.12, hem, 0.58, 0.78 if long else 0.62, 0.45, 0.80)
            behind = cone(p, lap, hem, 0.5, 0.66, 0.6, 0.1)
            return grown(thigh, fall, behind, k=0.16)

        grey = look.cloth / 255 * (0.62 if look.style == "blouse" else 1.0)
        reach = 1.35 * max(w, 0.7)
        box = (-reach, top - 0.1, -1.1), (reach, hem + 0.1, 1.5)
        self.scene.add(skirt, lambda p, _n: np.full(len(p), grey, np.float32), *box)

    def _legs(self):
        look, w = self.look, self.wide
        ground, hip = self.length, self.hip
        trousers = look.style in ("suit", "uniform")
        thick = (0.30 if trousers else 0.30 if look.boy else 0.19) * w**0.6
        cloth = look.cloth / 255 * 0.88
        seated, lap = look.seated, self.lap
        apart = 0.30 * w + 0.03

        def legs(p):
            s = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)
            if seated:
                knee = (apart + 0.08, lap + 0.22, 0.80)
                thigh = limb(s, (apart, lap + 0.12, -0.1), knee, thick * 1.15, thick * 0.86)
                shin = limb(s, knee, (apart + 0.08, ground - 0.20, 0.72), thick * 0.80, thick * 0.55)
                return blend(thigh, shin, 0.08)
            knee = (apart, hip + 0.52 * (ground - hip), -0.06)
            thigh = limb(s, (apart * 0.86, hip + 0.1, -0.10), knee, thick * 1.1, thick * 0.80)
            calf = 0.80 if trousers else 0.56 if look.boy else 0.78
            shin = limb(s, knee, (apart, ground - 0.20, -0.12), thick * calf, thick * (0.62 if trousers else 0.42))
            return blend(thigh, shin, 0.05) - 0.008 * np.sin(p[:, 1] * 9 + p[:, 0] * 5)

        def shade(p, _n):
            if trousers:
                return np.full(len(p), cloth, np.float32)
            short = p[:, 1] < hip + 0.50 * (ground - hip)
            stocking = 0.24 if look.style == "child" else look.skin / 255 * 0.86
            return np.where(short & look.boy, cloth, stocking).astype(np.float32)

        kind = FLESH if look.style == "frock" else CLOTH
        self.scene.add(legs, shade, (-1.0, min(hip, lap) - 0.5, -0.7), (1.0, ground, 1.3), 0, kind)
        z = 0.86 if seated else 0.06
        x = apart + (0.10 if seated else 0.04)

        def shoes(p):
            s = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)
            foot = ball(
                turned(s, -0.25, 0, 0, (x, ground, z)), (x, ground - 0.10, z), (0.15 * w**0.4, 0.115, 0.33 * w**0.4)
            )
            return np.maximum(foot, p[:, 1] - ground)

        self.scene.add(
            shoes,
            lambda p, _n: np.full(len(p), 0.16, np.float32),
            (-0.9, ground - 0.4, -0.5),
            (0.9, ground + 0.05, 1.4),
            0.08,
            HAIR,
        )

    def _chair(self):
        seat = self.lap + 0.42 if not self.young else self.hip + 0.25
        ground = self.length

        def chair(p):
            q = np.abs(p * vec(1, 0, 0)) + p * vec(0, 1, 1)
            board = np.maximum(np.maximum(q[:, 0] - 0.62, np.abs(p[:, 1] - seat) - 0.07), np.abs(p[:, 2] - 0.1) - 0.55)
            legs = np.minimum(
                limb(q, (0.54, seat, 0.55), (0.58, ground, 0.60), 0.065, 0.05),
                limb(q, (0.54, seat - 1.5, -0.46), (0.58, ground, -0.60), 0.065, 0.05),
            )
            rail = limb(q, (0, seat - 1.5, -0.46), (0.54, seat - 1.42, -0.46), 0.08, 0.07)
            return np.minimum(np.minimum(board, legs), rail)

        shade = lambda p, _n: np.full(len(p), 0.25, np.float32)  # noqa: E731
        self.scene.add(chair, shade, (-0.75, seat - 1.7, -0.75), (0.75, ground + 0.05, 0.75), 0.06, HAIR)

    def _flowers(self, at):
        rng = random.Random(5)
        heads = [
            (vec(rng.gauss(0, 0.15), rng.gauss(0, 0.13), rng.gauss(0, 0.05)) + at, rng.uniform(0.07, 0.10))
            for _ in range(16)
        ]

        def flowers(p):
            d = ball(p, tuple(at + vec(0, 0.45, -0.05)), (0.10, 0.45, 0.06))
            for centre, r in heads:
                d = np.minimum(d, np.linalg.norm(p - centre, axis=1) - r)
            return d

        def shade(p, _n):
            return np.where(p[:, 1] > at[1] + 0.24, 0.35, 0.92 - 0.15 * (np.sin(p[:, 0] * 40) > 0.4)).astype(np.float32)

        self.scene.add(flowers, shade, at - 0.6, at + vec(0.6, 1.1, 0.5))

    def _accordion(self, at):
        def box(p):
            q = np.abs(turned(p, 0, 0.06, 0, at) - at)
            ripple = 0.022 * np.sin(q[:, 0] * 55)
            inside = np.maximum(np.maximum(q[:, 0] - 0.62, q[:, 1] - 0.42 - ripple), q[:, 2] - 0.20 - ripple)
            ends = np.maximum(np.maximum(np.abs(q[:, 0] - 0.70) - 0.10, q[:, 1] - 0.47), q[:, 2] - 0.24)
            return np.minimum(inside, ends) * 0.8

        def shade(p, _n):
            q = p - at
            grey = np.where(np.sin(np.abs(q[:, 0]) * 55) > 0.55, 0.55, 0.16)
            keys = (q[:, 0] > 0.62) & (np.sin(q[:, 1] * 52) > -0.35)
            return np.where(keys, 0.9, np.where(np.abs(q[:, 0]) > 0.6, 0.2, grey)).astype(np.float32)

        self.scene.add(box, shade, at - 1.0, at + 1.0)
