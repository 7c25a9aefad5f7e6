"""Draws the demo's pictures: `python make.py OUT [FONTS]`. Invented people, places as they may have looked.

Prints the boxes of the heads of each picture (x y w h in 0..1), from which the markers in statements.csv come.
FONTS is a folder with a handwriting and a book face; the pictures, not the fonts, are shipped.
"""

import json
import random
import sys
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

from aging import mount, paper, tone, white_border
from figures import backdrop, hills, person, sky, soft
from heads import Look
from PIL import Image, ImageChops, ImageDraw, ImageFont, TiffImagePlugin

OUT = Path(sys.argv[1] if len(sys.argv) > 1 else "../scans")
FONTS = Path(sys.argv[2] if len(sys.argv) > 2 else "/usr/share/fonts/opentype/urw-base35")
HAND, BOOK = FONTS / "Z003-MediumItalic.otf", FONTS / "URWBookman-Light.otf"
HEADS: dict[str, list[list[float]]] = {}


def write(card, x, y, words, size, ink, face="hand", angle=0.0, centre=True):
    """Words on a card, in a hand or in type, a little uneven."""
    font = ImageFont.truetype(str(HAND if face == "hand" else BOOK), int(size))
    box = font.getbbox(words)
    layer = Image.new("L", (box[2] + 40, box[3] + 40), 0)
    draw, at, rng = ImageDraw.Draw(layer), 20.0, random.Random(words)
    for letter in words:
        jitter = rng.uniform(-0.03, 0.03) * size if face == "hand" else 0
        draw.text((at, 16 + jitter), letter, font=font, fill=255 if face != "hand" else rng.randint(190, 250))
        at += font.getlength(letter)
    layer = layer.rotate(angle, expand=True, resample=Image.Resampling.BICUBIC)
    corner = (int(x - layer.width / 2 if centre else x), int(y - layer.height / 2))
    card.paste(ink, corner, layer)


def canvas(w, h, shade=128):
    return Image.new("L", (w * 2, h * 2), shade)


def small(image):
    return image.resize((image.width // 2, image.height // 2), Image.Resampling.LANCZOS)


def keep(name, picture, heads=(), offset=(0, 0), scale=0.5, **how):
    """Save a picture and remember where its heads are in it."""
    w, h = picture.size
    HEADS[name] = [
        [
            round(((b[0] * scale + offset[0]) / w), 4),
            round((b[1] * scale + offset[1]) / h, 4),
            round((b[2] - b[0]) * scale / w, 4),
            round((b[3] - b[1]) * scale / h, 4),
        ]
        for b in heads
    ]
    path = OUT / name
    how.setdefault("dpi", (300, 300))
    if path.suffix == ".jpg":
        picture.save(path, quality=80, optimize=True, **how)
    elif path.suffix == ".tif":
        picture.save(path, compression="tiff_jpeg", quality=80, **how)
    else:
        picture.quantize(96, dither=Image.Dither.FLOYDSTEINBERG).save(path, optimize=True, **how)


def back(size, lines, seed, ink=(58, 52, 70), extra=None):
    """The back of a print with handwriting."""
    card = paper(size, (232, 221, 196), seed)
    w, h = size
    for at, (words, part) in enumerate(lines):
        write(
            card,
            w * 0.10,
            h * (0.16 + 0.13 * at),
            words,
            h * part,
            ink,
            angle=random.Random(seed + at).uniform(-1.2, 1.8),
            centre=False,
        )
    if extra:
        extra(card)
    return card


MAN = Look(style="suit", cloth=58, hair=50)
OLD_MAN = Look(style="suit", cloth=64, hair=120, beard=True, old=True)
SITTING_OLD_MAN = replace(OLD_MAN, seated=True)
WOMAN = Look(style="blouse", cloth=150, hair=56, hairdo="bun")
BRIDE = Look(style="dress", cloth=226, hair=58, hairdo="veil", collar=240, holds="flowers")
OLD_WOMAN = Look(style="shawl", cloth=52, hair=150, hairdo="bun", old=True)
SITTING_OLD_WOMAN = replace(OLD_WOMAN, seated=True)
GIRL = Look(style="child", cloth=178, hair=110, hairdo="plaits", skin=206)
BOY = Look(style="child", cloth=88, hair=70, skin=204, collar=230, boy=True)
SOLDIER = Look(style="uniform", cloth=104, hair=54, hairdo="cap")
GIRL_BOB = Look(style="child", cloth=200, hair=150, hairdo="bob", skin=210)


def group(image, rows):
    """Rows of people, back row first: (y, head height, length, [(x, look), …]); heads come front row first."""
    found = [[person(image, x, y, h, look, length) for x, look in people] for y, h, length, people in rows]
    return [box for row in reversed(found) for box in row]


def ground(image, top, light, dark, seed):
    w, h = image.size
    for y in range(int(h * top), h):
        part = (y - h * top) / (h - h * top)
        ImageDraw.Draw(image).line((0, y, w, y), fill=int(light + (dark - light) * part))
    rng = random.Random(seed)
    for _ in range(700):
        x, y = rng.uniform(0, w), rng.uniform(h * top, h)
        size = 3 + 16 * (y / h - top)
        ImageDraw.Draw(image).line(
            (x, y, x + rng.uniform(-size, size) * 0.4, y - size), fill=int(rng.uniform(dark - 12, light + 18)), width=2
        )


def ship(image, x, y, size, shade=60, sails=True):
    """A ship at her moorings, masts and rigging."""
    hull = [
        (x - size, y - size * 0.16),
        (x + size * 0.92, y - size * 0.18),
        (x + size * 0.78, y + size * 0.06),
        (x - size * 0.84, y + size * 0.06),
    ]
    soft(image, lambda d: d.polygon(hull, fill=255), None, shade, 3)
    draw = ImageDraw.Draw(image)
    draw.line([(x - size * 0.96, y - size * 0.12), (x + size * 0.88, y - size * 0.135)], fill=190, width=3)
    for at, tall in ((-0.55, 1.25), (-0.02, 1.5), (0.48, 1.2)):
        mx = x + size * at
        draw.line([(mx, y - size * 0.1), (mx + 3, y - size * tall)], fill=shade + 10, width=6)
        for step in (0.45, 0.7, 0.9):
            half = size * 0.28 * (1.25 - step * 0.7)
            my = y - size * tall * step
            draw.line([(mx - half, my), (mx + half, my - 4)], fill=shade + 8, width=4)
            if sails:
                soft(
                    image,
                    lambda d, a=mx, b=my, c=half: d.rectangle((a - c * 0.9, b, a + c * 0.9, b + 12), fill=255),
                    None,
                    205,
                    3,
                )
        for side in (-1, 1):
            draw.line(
                [(mx, y - size * tall * 0.92), (mx + side * size * 0.42, y - size * 0.12)], fill=shade + 40, width=2
            )
    draw.line([(x + size * 0.92, y - size * 0.18), (x + size * 1.25, y - size * 0.42)], fill=shade, width=5)


def house(image, x, y, w, h, wall, roof, seed=3, kind="farm"):
    """A house whose left foot is at x, y; `kind` is farm, verandah, school or barrack."""
    rng = random.Random(seed)
    draw = ImageDraw.Draw(image)
    soft(image, lambda d: d.rectangle((x, y - h, x + w, y), fill=255), None, wall, 2)
    rise, inset = {"farm": (0.75, 0.14), "verandah": (0.42, 0.10), "school": (0.34, 0.16), "barrack": (0.22, 0.01)}[
        kind
    ]
    ridge = y - h * (1 + rise)
    eaves = w * 0.03
    slope = [(x - eaves, y - h), (x + w * inset, ridge), (x + w * (1 - inset), ridge), (x + w + eaves, y - h)]
    soft(image, lambda d: d.polygon(slope, fill=255), None, roof, 2)
    for k in range(1, 9):  # courses of shingles or iron
        ry = ridge + (y - h - ridge) * k / 9
        part = (ry - ridge) / (y - h - ridge)
        reach = x + w * inset - (w * inset + eaves) * part, x + w * (1 - inset) + (w * inset + eaves) * part
        draw.line([(reach[0] + 4, ry), (reach[1] - 4, ry)], fill=roof + rng.randint(-12, 10), width=2)
    soft(image, lambda d: d.rectangle((x, y - h, x + w, y - h * 0.93), fill=150), None, max(0, wall - 70), 8)
    for k in range(int(w // 14)):
        draw.line([(x + k * 14, y - h), (x + k * 14, y)], fill=wall - rng.randint(4, 16), width=2)
    rows, count = {"farm": (1, 3), "verandah": (1, 4), "school": (2, 7), "barrack": (1, 9)}[kind]
    wide, high = w * 0.36 / count, h * (0.40 if rows == 1 else 0.27)
    for row in range(rows):
        top = y - h * (0.72 if rows == 1 else (0.86, 0.42)[row])
        for k in range(count):
            wx = x + w * (k + 0.5) / count - wide / 2
            if (kind, k) in (("verandah", 1), ("school", 3), ("farm", 1)) and row == rows - 1:
                draw.rectangle((wx, top, wx + wide, y), fill=64, outline=wall + 26, width=5)
                continue
            draw.rectangle((wx, top, wx + wide, top + high), fill=50, outline=min(255, wall + 30), width=5)
            soft(
                image,
                lambda d, a=wx, b=top: d.polygon(
                    [(a + 6, b + 6), (a + wide * 0.55, b + 6), (a + 6, b + high * 0.6)], fill=110
                ),
                None,
                130,
                3,
            )
            draw.line([(wx + wide / 2, top), (wx + wide / 2, top + high)], fill=wall + 30, width=3)
            draw.line([(wx, top + high / 2), (wx + wide, top + high / 2)], fill=wall + 30, width=3)
    if kind in ("farm", "school"):
        for part in (0.32, 0.68):
            cx = x + w * part
            draw.rectangle((cx, ridge - h * 0.16, cx + w * 0.035, ridge + h * 0.04), fill=roof + 24)
    if kind == "verandah":
        soft(
            image,
            lambda d: d.polygon(
                [
                    (x - w * 0.02, y - h * 0.93),
                    (x + w * 1.02, y - h * 0.93),
                    (x + w * 1.05, y - h * 0.76),
                    (x - w * 0.05, y - h * 0.76),
                ],
                fill=255,
            ),
            None,
            roof + 18,
            2,
        )
        for k in range(7):
            px = x - w * 0.04 + w * 1.08 * k / 6
            draw.rectangle((px - 8, y - h * 0.76, px + 8, y + h * 0.06), fill=min(255, wall + 26))
            for side in (-1, 1):  # the brackets of a post
                draw.arc(
                    (px + side * 34 - 34, y - h * 0.76, px + side * 34 + 34, y - h * 0.76 + 68),
                    180 if side > 0 else 270,
                    270 if side > 0 else 360,
                    fill=min(255, wall + 26),
                    width=6,
                )
        draw.rectangle((x - w * 0.06, y, x + w * 1.06, y + h * 0.07), fill=wall - 50)


def tree(image, x, y, size, shade, seed):
    """A tree in leaf: small bunches, the nearer and higher ones lighter."""
    rng = random.Random(seed)
    draw = ImageDraw.Draw(image)
    trunk = [
        (x - size * 0.035, y),
        (x - size * 0.018, y - size * 0.55),
        (x + size * 0.018, y - size * 0.55),
        (x + size * 0.04, y),
    ]
    soft(image, lambda d: d.polygon(trunk, fill=255), None, max(10, shade - 30), 2)
    for _ in range(7):
        bx, by = x + rng.gauss(0, size * 0.15), y - size * rng.uniform(0.6, 0.85)
        draw.line([(x, y - size * rng.uniform(0.30, 0.5)), (bx, by)], fill=max(10, shade - 26), width=int(size * 0.016))
    lobes = [(rng.gauss(0, 0.15), rng.uniform(0.56, 0.94), rng.uniform(0.10, 0.17)) for _ in range(11)]
    bunches = []
    for lx, ly, lr in lobes:
        for _ in range(120):
            dx, dy = rng.gauss(0, lr * 0.55), rng.gauss(0, lr * 0.5)
            light = (-dx * 0.5 + dy) / lr
            bunches.append((rng.random() + light, x + (lx + dx) * size, y - (ly + dy) * size, light))
    for _, cx, cy, light in sorted(bunches):
        r = size * rng.uniform(0.008, 0.020)
        grey = max(8, min(235, int(shade - 14 + 34 * light + rng.gauss(0, 9))))
        draw.ellipse((cx - r * 1.3, cy - r, cx + r * 1.3, cy + r), fill=grey)


def bonfire(image, x, y, size):
    """A fire of logs in the evening: tongues of flame, sparks, and its light on the ground."""
    rng = random.Random(12)
    glow = (x - size * 1.5, y - size * 0.16, x + size * 1.5, y + size * 0.3)
    soft(image, lambda d: d.ellipse(glow, fill=150), None, 205, size * 0.16)
    draw = ImageDraw.Draw(image)
    for k in range(7):
        lx = x + size * (k - 3) * 0.13
        draw.line([(lx, y + size * 0.06), (x - (lx - x) * 0.4, y - size * 0.30)], fill=36, width=int(size * 0.06))
    for k in range(26):
        fx = x + rng.gauss(0, size * 0.17)
        tall = size * max(0.15, 0.95 - abs(fx - x) / size * 1.9) * rng.uniform(0.55, 1.15)
        lean, wide = rng.uniform(-0.10, 0.14) * size, size * rng.uniform(0.03, 0.075)
        tongue = [
            (fx - wide, y),
            (fx - wide * 0.8, y - tall * 0.35),
            (fx + lean, y - tall),
            (fx + wide, y - tall * 0.3),
            (fx + wide, y),
        ]
        soft(image, lambda d, t=tongue: d.polygon(t, fill=190), None, 200 + k * 2, size * 0.018)
    for _ in range(60):
        sx, sy = x + rng.gauss(0, size * 0.22), y - size * rng.uniform(0.7, 1.7)
        draw.ellipse((sx, sy, sx + 4, sy + 4), fill=240)


def water(image, top, light, dark, seed):
    w, h = image.size
    rng = random.Random(seed)
    for y in range(int(h * top), h):
        part = (y / h - top) / (1 - top)
        ImageDraw.Draw(image).line((0, y, w, y), fill=int(light + (dark - light) * part))
    for _ in range(420):
        y = h * (top + (1 - top) * rng.random() ** 0.7)
        length = 14 + 110 * (y / h - top)
        x = rng.uniform(0, w)
        soft_shade = rng.choice((light + 26, dark - 14))
        ImageDraw.Draw(image).line(
            (x, y, x + length, y), fill=max(0, min(255, soft_shade)), width=2 + int(3 * (y / h - top))
        )


def colours(image, seed, layers, clothes):
    """A colour print that has faded: `layers` are (part of the height, colour), `clothes` the colour of each."""
    w, h = image.size
    tint = Image.new("RGB", image.size)
    draw = ImageDraw.Draw(tint)
    for (top, colour), (low, below) in pairwise((*layers, (1.0, layers[-1][1]))):
        for y in range(int(h * top), int(h * low)):
            part = (y / h - top) / (low - top)
            draw.line((0, y, w, y), fill=tuple(int(a + (b - a) * part) for a, b in zip(colour, below, strict=True)))
    for (corner, mask, flesh, hair), colour in zip(image.info["people"], clothes, strict=True):
        tint.paste(colour, corner, mask)
        tint.paste((246, 196, 166), corner, flesh)
        tint.paste((134, 116, 100), corner, hair)
    print_ = tone(small(image), "silver", seed, 7, 0.10)
    tinted = ImageChops.overlay(print_, small(tint))
    return ImageChops.multiply(Image.blend(print_, tinted, 0.75), Image.new("RGB", print_.size, (255, 238, 222)))


def harbour(seed, town=True):
    image = canvas(1180, 820)
    sky(image, 186, 226, 0.55, seed)
    hills(image, 0.56, 0.16 if town else 0.26, 150, seed)
    if not town:
        hills(image, 0.57, 0.13, 112, seed + 4)
    rng = random.Random(seed)
    if town:
        for k in range(26):
            x = k * 92 + rng.uniform(-20, 20)
            house(
                image,
                x,
                920,
                rng.uniform(70, 120),
                rng.uniform(50, 100),
                rng.randint(120, 190),
                rng.randint(70, 110),
                k,
            )
        for x, tall in ((520, 520), (980, 610), (1420, 470)):
            soft(
                image,
                lambda d, x=x, tall=tall: d.polygon(
                    [
                        (x - 34, 900),
                        (x - 30, 900 - tall * 0.6),
                        (x, 900 - tall),
                        (x + 30, 900 - tall * 0.6),
                        (x + 34, 900),
                    ],
                    fill=255,
                ),
                None,
                104,
                2,
            )
    else:
        for k in range(12):
            house(
                image,
                160 + k * 170 + rng.uniform(-50, 50),
                905 - rng.uniform(0, 130),
                rng.uniform(90, 130),
                rng.uniform(54, 76),
                rng.randint(170, 220),
                rng.randint(80, 130),
                k,
            )
    water(image, 0.555, 186, 118, seed)
    ship(image, 640, 1120, 330, 46)
    ship(image, 1690, 1010, 210, 66)
    ship(image, 1180, 960, 120, 84, sails=False)
    wharf = [(0, 1360), (1500, 1310), (1560, 1400), (0, 1640)]
    soft(image, lambda d: d.polygon(wharf, fill=255), None, 92, 3)
    for k in range(16):
        ImageDraw.Draw(image).line([(k * 100, 1350 - k * 3), (k * 100 - 40, 1640)], fill=70, width=5)
    boxes = [
        person(image, 260, 1190, 46, Look(style="suit", cloth=40, hairdo="cap"), 6.2),
        person(image, 350, 1196, 44, Look(style="shawl", cloth=60, hairdo="bun"), 6.2),
    ]
    return image, boxes


def studio(look, seed, w=470, h=660, at=(0.5, 0.34), size=0.20, light=176, dark=84, length=6.0):
    image = canvas(w, h)
    backdrop(image, light, dark, seed)
    box = person(image, image.width * at[0], image.height * at[1], image.height * size, look, length)
    return image, [box]


def main():  # one picture after the other; there is nothing to share
    OUT.mkdir(exist_ok=True, parents=True)

    picture, heads = harbour(3)
    print_ = tone(small(picture), "albumen", 3)
    card = mount(
        print_,
        (70, 62, 70, 120),
        (226, 210, 176),
        3,
        "J. Lind & Poeg · Reval",
        write,
        (120, 84, 40),
    )
    keep("reval_harbour_f.jpg", card, heads, (70, 62))
    keep(
        "reval_harbour_b.jpg",
        back((1000, 700), [("Reval, sadam. Isa laev läks siit.", 0.075), ("1908 või 09", 0.07)], 4),
    )

    picture, heads = studio(OLD_MAN, 8, size=0.215)
    card = mount(
        tone(small(picture), "albumen", 8),
        (60, 56, 60, 150),
        (90, 62, 44),
        8,
        "A. Saar  ·  Dorpat",
        write,
        (222, 186, 110),
    )
    keep("cabinet_kristjan_f.jpg", card, heads, (60, 56))
    keep("cabinet_kristjan_b.jpg", back((590, 866), [("Kristjan Tamm", 0.050), ("Jurjew 1899", 0.045)], 9))

    image = canvas(1180, 840)
    backdrop(image, 186, 96, 21)
    rows = [
        (
            430,
            148,
            6.6,
            [
                (560, replace(MAN, moustache=True)),
                (930, Look(style="suit", cloth=50, hair=44, beard=True)),
                (1420, Look(style="suit", cloth=64, hair=96, moustache=True)),
                (1800, WOMAN),
            ],
        ),
        (
            790,
            156,
            5.6,
            [
                (390, SITTING_OLD_WOMAN),
                (770, SITTING_OLD_MAN),
                (1180, replace(BRIDE, seated=True)),
                (1590, Look(style="suit", cloth=36, hair=48, seated=True)),
                (1990, Look(style="dress", cloth=96, hair=52, hairdo="bun", seated=True)),
            ],
        ),
    ]
    heads = group(image, rows)
    card = mount(
        tone(small(image), "sepia", 21),
        (80, 70, 80, 140),
        (214, 198, 168),
        21,
        "Atelier Lind · Reval",
        write,
        (110, 80, 44),
    )
    keep("wedding_1912-front.tif", card, heads, (80, 70))
    keep(
        "wedding_1912-back.jpg",
        back(
            (1100, 780),
            [
                ("Helmi ja Juhan pulmad", 0.080),
                ("29 aprill 1912 vana kalendri järgi", 0.064),
                ("Reval, Kaarli kirik", 0.07),
            ],
            22,
        ),
    )

    image = canvas(1200, 800)
    sky(image, 196, 220, 0.4, 5)
    house(image, 160, 1010, 2080, 620, 172, 92, 5, "school")
    ground(image, 0.62, 158, 104, 5)
    kids = [GIRL, BOY, GIRL_BOB, BOY, GIRL, BOY, GIRL_BOB, BOY]
    rows = [
        (700, 92, 5.6, [(330 + 230 * k, kids[(k + 1) % 8]) for k in range(8)]),
        (
            930,
            98,
            5.2,
            [(250 + 240 * k, kids[k % 8]) for k in range(8)] + [(2160, Look(style="suit", cloth=56, hair=60))],
        ),
    ]
    heads = group(image, rows)
    keep("school_class_1927.jpg", white_border(tone(small(image), "silver", 5), 34, 5), heads, (48, 48))

    picture, heads = studio(
        Look(style="blouse", cloth=90, hair=54, hairdo="bob"), 31, 330, 420, (0.5, 0.44), 0.30, 214, 190
    )
    keep("passbook_helmi.png", white_border(tone(small(picture), "silver", 31, 5, 0.02), 18, 31), heads, (32, 32))

    image = canvas(1160, 780)
    sky(image, 190, 232, 0.5, 14)
    hills(image, 0.55, 0.06, 128, 14)
    house(image, 1180, 1010, 760, 230, 140, 84, 14)
    tree(image, 330, 1020, 640, 84, 1)
    tree(image, 2120, 960, 480, 96, 2)
    ground(image, 0.60, 156, 96, 14)
    heads = [
        person(image, 760, 850, 86, OLD_WOMAN, 6.0),
        person(image, 960, 830, 88, Look(style="suit", cloth=70, hairdo="cap"), 6.6),
        person(image, 1130, 960, 66, GIRL, 5.4),
    ]
    keep("farm_hiiumaa_f.jpg", white_border(tone(small(image), "sepia", 14), 30, 14, True), heads, (44, 44))
    keep(
        "farm_hiiumaa_b.jpg",
        back(
            (1120, 760), [("Memm, Juhan ja väike Aino", 0.075), ("Kärdla lähedal, suvi 1931", 0.07)], 15, (70, 62, 60)
        ),
    )

    image = canvas(1080, 690)
    sky(image, 204, 236, 0.48, 9)
    water(image, 0.46, 206, 150, 9)
    soft(image, lambda d: d.polygon([(0, 1380), (0, 1120), (2160, 800), (2160, 1380)], fill=255), None, 176, 4)
    for k in range(5):
        tree(image, 200 + k * 430, 1120 - k * 62, 420 - k * 40, 92, k)
    heads = [
        person(image, 900, 880, 62, Look(style="frock", cloth=206, hair=60, hairdo="bob"), 6.4),
        person(image, 1010, 868, 64, Look(style="suit", cloth=74, hair=50), 6.6),
    ]
    front = white_border(tone(small(image), "selenium", 9), 22, 9)
    write(front, 300, front.height - 62, "Haapsalu. Promenaad", 34, (245, 240, 230))
    keep("postcard_haapsalu_r.jpg", front, heads, (36, 36))

    def postcard(card):
        draw = ImageDraw.Draw(card)
        w, h = card.size
        draw.line([(w / 2, h * 0.16), (w / 2, h * 0.92)], fill=(110, 90, 80), width=3)
        write(card, w / 2, h * 0.09, "POSTKAART – CARTE POSTALE", h * 0.05, (110, 90, 80), "print")
        draw.rectangle((w * 0.84, h * 0.10, w * 0.95, h * 0.30), outline=(110, 90, 80), width=3)
        draw.ellipse((w * 0.74, h * 0.12, w * 0.88, h * 0.32), outline=(70, 66, 80), width=3)
        write(card, w * 0.81, h * 0.22, "14 VII 29", h * 0.036, (70, 66, 80), "print")
        for at, words in enumerate(("Prl. Aino Tamm", "Tallinn", "Narva mnt. 27")):
            write(card, w * 0.56, h * (0.50 + 0.13 * at), words, h * 0.075, (60, 54, 96), centre=False)

    keep(
        "postcard_haapsalu_v.jpg",
        back(
            (1080, 700),
            [("", 0.05), ("Tervitus merelt!", 0.08), ("Ilm on ilus.", 0.08), ("Sinu Helmi", 0.08)],
            10,
            (60, 54, 96),
            postcard,
        ),
    )

    picture, heads = studio(
        Look(style="dress", cloth=60, hair=60, hairdo="bun", collar=210),
        41,
        300,
        430,
        (0.5, 0.27),
        0.165,
        184,
        120,
        6.6,
    )
    card = mount(
        tone(small(picture), "albumen", 41, 7),
        (26, 24, 26, 64),
        (240, 226, 196),
        41,
        "Quay Street Studio, Port Chalmers",
        lambda c, x, y, t, s, i, f: write(c, x, y, t, s * 0.85, i, f),
        (130, 90, 50),
    )
    keep("carte_ann_rourke_f.jpg", card, heads, (26, 24))
    keep(
        "carte_ann_rourke_b.jpg",
        back((352, 516), [("Ann Rourke", 0.075), ("Port Chalmers", 0.06), ("abt 1871", 0.06)], 42, (80, 60, 50)),
    )

    image = canvas(1160, 820)
    sky(image, 178, 214, 0.35, 51)
    house(image, 200, 1060, 1920, 620, 186, 104, 51, "verandah")
    ground(image, 0.64, 150, 96, 51)
    heads = group(
        image,
        [
            (
                640,
                108,
                6.2,
                [
                    (480, MAN),
                    (820, WOMAN),
                    (1200, Look(style="suit", cloth=54, hair=70, moustache=True)),
                    (1580, Look(style="dress", cloth=120, hair=66, hairdo="bun")),
                ],
            ),
            (
                900,
                112,
                5.6,
                [
                    (360, SITTING_OLD_WOMAN),
                    (760, BOY),
                    (1060, Look(style="baby", cloth=226, hair=150, skin=212, collar=236, seated=True)),
                    (1400, SITTING_OLD_MAN),
                    (1800, GIRL),
                ],
            ),
        ],
    )
    keep(
        "verandah_1898.jpg",
        mount(tone(small(image), "gold", 51), (70, 60, 70, 70), (206, 190, 160), 51),
        heads,
        (70, 60),
    )

    picture, heads = harbour(17, town=False)
    keep("port_chalmers_harbour.jpg", white_border(tone(small(picture), "selenium", 17), 26, 17), heads, (40, 40))

    picture, heads = studio(SOLDIER, 61, 480, 690, (0.5, 0.30), 0.185, 168, 92, 6.4)
    shot = small(picture)
    keep(
        "soldier_michael_f.jpg",
        mount(
            tone(shot, "sepia", 61),
            (50, 46, 50, 110),
            (188, 172, 146),
            61,
            "Zealandia Portraits, Dunedin",
            write,
            (96, 74, 46),
        ),
        heads,
        (50, 46),
    )
    keep(
        "soldier_michael_b.jpg",
        back((580, 846), [("Pte M. Rourke", 0.052), ("Otago Battn", 0.05), ("before sailing, Jan 1916", 0.046)], 62),
    )
    cut = shot.crop((40, 20, 440, 560))
    keep(
        "soldier_second_print.jpg",
        white_border(tone(cut, "silver", 63, 12, 0.12), 20, 63),
        [tuple(v - o for v, o in zip(heads[0], (80, 40, 80, 40), strict=True))],
        (34, 34),
    )

    image = canvas(1180, 800)
    sky(image, 150, 196, 0.5, 71)
    tree(image, 260, 980, 760, 60, 7)
    tree(image, 2150, 960, 700, 66, 8)
    ground(image, 0.58, 150, 84, 71)
    bonfire(image, 1270, 1180, 330)
    tall = Look(style="suit", cloth=60, hair=50, holds="accordion")
    heads = [
        person(image, 700, 560, 104, tall, 7.6),
        person(image, 930, 760, 92, Look(style="frock", cloth=190, hair=60, hairdo="plaits"), 6.2),
        person(image, 1620, 740, 94, MAN, 6.4),
        person(image, 1850, 790, 90, Look(style="frock", cloth=140, hair=56, hairdo="bun"), 6.2),
        person(image, 480, 960, 70, BOY, 5.2),
    ]
    keep("jaanipaev_1937.jpg", white_border(tone(small(image), "silver", 71, 13), 30, 71, True), heads, (44, 44))

    image = canvas(1100, 760)
    sky(image, 206, 232, 0.5, 81)
    water(image, 0.42, 180, 140, 81)
    funnel = [(1730, 900), (1760, 120), (2020, 100), (2060, 930)]
    soft(image, lambda d: d.polygon(funnel, fill=255), None, 120, 5)
    soft(image, lambda d: d.polygon([(1752, 240), (1760, 120), (2020, 100), (2030, 226)], fill=255), None, 50, 3)
    boat = [(90, 620), (640, 600), (590, 730), (160, 745)]
    soft(image, lambda d: d.polygon(boat, fill=255), None, 238, 3)
    ImageDraw.Draw(image).line([*boat, boat[0]], fill=150, width=4)
    for bx in (170, 570):
        ImageDraw.Draw(image).line([(bx, 900), (bx - 20, 560), (bx + 60, 520)], fill=80, width=12, joint="curve")
    soft(image, lambda d: d.polygon([(0, 1520), (0, 980), (2200, 1100), (2200, 1520)], fill=255), None, 152, 3)
    for k in range(5):
        ImageDraw.Draw(image).line([(0, 780 + k * 46), (2200, 870 + k * 50)], fill=226, width=7)
    for k in range(9):
        ImageDraw.Draw(image).line([(120 + k * 250, 780 + k * 11), (112 + k * 250, 1020 + k * 12)], fill=232, width=12)
    heads = [
        person(image, 760, 760, 104, Look(style="frock", cloth=110, hair=70, hairdo="bob"), 6.4),
        person(image, 1010, 930, 84, GIRL, 5.0),
        person(image, 1320, 740, 106, Look(style="suit", cloth=86, hair=60), 6.4),
    ]
    keep("on_deck_1949.png", white_border(tone(small(image), "silver", 81, 8), 26, 81), heads, (40, 40))

    image = canvas(1000, 700)
    sky(image, 190, 216, 0.4, 91)
    house(image, 1380, 740, 900, 170, 138, 84, 92, "barrack")
    house(image, -60, 850, 1900, 290, 158, 88, 91, "barrack")
    ground(image, 0.60, 164, 120, 91)
    heads = [
        person(image, 420 + 270 * k, 760 + (k % 2) * 40, 92, (GIRL, BOY, GIRL_BOB, BOY, GIRL)[k], 5.4) for k in range(5)
    ]
    keep("geislingen_1946.jpg", white_border(tone(small(image), "silver", 91, 16, 0.12), 22, 91), heads, (36, 36))

    image = canvas(1040, 820)
    backdrop(image, 196, 110, 95)
    groom = Look(style="suit", cloth=44, hair=66)
    heads = [person(image, 830, 560, 190, BRIDE, 6.2), person(image, 1270, 520, 196, groom, 6.4)]
    keep("wedding_1964_f.jpg", white_border(tone(small(image), "selenium", 95, 6, 0.03), 30, 95), heads, (44, 44))
    keep(
        "wedding_1964_b.jpg",
        back(
            (1080, 840), [("Leida and Tom, Easter '64", 0.07), ("Iona Church, Port Chalmers", 0.065)], 96, (40, 50, 110)
        ),
    )

    image = canvas(900, 900)
    sky(image, 214, 240, 0.42, 101)
    hills(image, 0.43, 0.12, 150, 101)
    water(image, 0.42, 200, 168, 101)
    soft(image, lambda d: d.rectangle((0, 1180, 1800, 1800), fill=255), None, 214, 20)
    heads = [
        person(image, 480, 900, 128, Look(style="frock", cloth=190, hair=120, hairdo="bob"), 5.6),
        person(image, 800, 860, 130, Look(style="suit", cloth=150, hair=90, collar=232), 6.2),
        person(image, 1130, 1080, 104, GIRL_BOB, 4.6),
        person(image, 1390, 1110, 100, replace(BOY, cloth=160, collar=170), 4.6),
    ]
    exif = Image.Exif()
    exif[0x010F], exif[0x0132] = "Flatbed", "2026:02:14 10:12:00"
    exif.get_ifd(0x8769)[0x9003] = "2026:02:14 10:12:00"
    exif.get_ifd(0x8825)[1], exif.get_ifd(0x8825)[2] = "S", (45.0, 49.0, 0.0)
    exif.get_ifd(0x8825)[3], exif.get_ifd(0x8825)[4] = "E", (170.0, 37.0, 12.0)
    keep(
        "christmas_beach_1968.jpg",
        white_border(
            colours(
                image,
                101,
                (
                    (0, (120, 168, 214)),
                    (0.40, (176, 200, 220)),
                    (0.42, (70, 140, 168)),
                    (0.63, (120, 176, 180)),
                    (0.67, (226, 196, 140)),
                ),
                ((196, 90, 84), (90, 104, 140), (236, 196, 92), (120, 170, 200)),
            ),
            26,
            101,
        ),
        heads,
        (40, 40),
        exif=exif,
    )

    image = canvas(1000, 720)
    sky(image, 200, 224, 0.4, 111)
    hills(image, 0.5, 0.2, 120, 111)
    ground(image, 0.48, 170, 118, 111)
    heads = [
        person(image, 420, 620, 108, Look(style="suit", cloth=150, hair=150, old=True), 5.8),
        person(image, 700, 640, 104, Look(style="frock", cloth=170, hair=130, hairdo="bob"), 5.8),
        person(image, 980, 800, 86, GIRL_BOB, 5.0),
        person(image, 1240, 640, 108, Look(style="suit", cloth=120, hair=60), 5.8),
        person(image, 1500, 830, 84, replace(BOY, cloth=130, collar=140), 5.0),
    ]
    keep(
        "picnic_1975.jpg",
        white_border(
            colours(
                image,
                111,
                (
                    (0, (150, 184, 220)),
                    (0.34, (200, 206, 214)),
                    (0.36, (92, 128, 104)),
                    (0.47, (104, 140, 92)),
                    (0.49, (134, 164, 74)),
                    (0.8, (96, 128, 52)),
                ),
                ((150, 120, 84), (210, 120, 110), (236, 210, 110), (84, 108, 150), (190, 92, 70)),
            ),
            24,
            111,
        ),
        heads,
        (38, 38),
    )

    bed = Image.new("RGB", (1500, 1000), (40, 39, 42))
    heads = []
    for at, (look, name, x, y, size) in enumerate(
        (
            (GIRL, "silver", 70, 80, (420, 560)),
            (Look(style="uniform", cloth=96, hairdo="cap"), "sepia", 560, 120, (400, 540)),
            (OLD_WOMAN, "selenium", 1030, 90, (400, 560)),
        )
    ):
        picture, boxes = studio(look, 120 + at, *size, (0.5, 0.36), 0.2)
        shot = white_border(tone(small(picture), name, 120 + at), 16, 120 + at).crop(
            (14, 14, size[0] + 46, size[1] + 46)
        )
        bed.paste(shot, (x, y))
        heads.append(tuple(b + 2 * o for b, o in zip(boxes[0], (x + 16, y + 16, x + 16, y + 16), strict=True)))
    keep("flatbed_three.jpg", bed, heads)

    letter = paper((900, 1240), (240, 233, 214), 131)
    lines = (
        "Port Chalmers, 3. juuni 1951",
        "Kallis Aino,",
        "jõudsime viimaks kohale. Leida on juba",
        "koolis ja räägib inglise keelt paremini",
        "kui meie. Siin on juunis talv!",
        "Maja on väike, aga aknast paistab",
        "sadam, nagu vanasti Revalis.",
        "Pildid pane karpi ja hoia kuivas.",
        "Sinu Helmi",
    )
    for at, words in enumerate(lines):
        write(letter, 90 if at not in (0,) else 430, 130 + at * 112, words, 47, (44, 48, 92), centre=False, angle=0.6)
    keep("letter_1951.jpg", letter)
    note = paper((620, 400), (246, 240, 206), 141)
    for at, words in enumerate(("Vasakult: tundmatu laps? –", "ei, see on Liisi tütar.", "Küsi Leidalt.")):
        write(note, 60, 90 + at * 104, words, 44, (90, 60, 60), centre=False, angle=-1.0)
    keep("clipped_note.png", note)
    print(json.dumps(HEADS, indent=1))


if __name__ == "__main__":
    TiffImagePlugin.STRIP_SIZE = 1 << 20
    main()
