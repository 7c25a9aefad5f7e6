"""Draws the second dozen of the demo's pictures: `python later.py OUT [FONTS [PICTURE …]]`, beside `make.py`.

Prints the boxes of the heads, from which the markers in statements.csv come.
"""

import itertools
import json
import math
import random
import sys
from dataclasses import replace

from aging import mount, tone, white_border
from figures import backdrop, hills, person, sky, soft
from heads import Look
from make import (
    BOY,
    GIRL,
    GIRL_BOB,
    HEADS,
    MAN,
    OLD_MAN,
    OUT,
    WOMAN,
    back,
    canvas,
    colours,
    ground,
    group,
    house,
    keep,
    ship,
    small,
    studio,
    tree,
    water,
    write,
)
from PIL import ImageDraw


def shape(image, points, shade, blur=3):
    soft(image, lambda d: d.polygon(points, fill=255), None, shade, blur)


def oval(image, box, shade, blur=3):
    soft(image, lambda d: d.ellipse(box, fill=255), None, shade, blur)


def boat_on_stocks(image, x, y, size):
    """A hull being built: keel, ribs, the lower strakes planked, shores against it, a ladder."""
    draw = ImageDraw.Draw(image)
    for k in range(9):  # the blocks under the keel
        bx = x - size + k * size / 4
        draw.rectangle((bx - 16, y - 22, bx + 16, y + 30), fill=52 + k % 3 * 8)
    draw.line([(x - size * 1.04, y - 34), (x + size * 1.02, y - 34)], fill=46, width=22)
    for k in range(15):
        part = (k - 7) / 7.4
        rx, tall = x + size * part, size * 0.56 * (1 + 0.22 * part * part)
        lean = 60 * part
        draw.line([(rx, y - 34), (rx + lean, y - 34 - tall)], fill=92 - k % 2 * 12, width=15)
    for k in range(5):  # planks from the keel up, bent as the hull is
        low = 40 + k * 38
        line = [
            (x + size * part / 10 * (1 + k * 0.012), y - low - 60 * (part / 10) ** 2 * (1 + k * 0.35))
            for part in range(-10, 11)
        ]
        draw.line(line, fill=118 + (k * 13) % 30, width=36, joint="curve")
        draw.line([(px, py + 18) for px, py in line], fill=70, width=3, joint="curve")
    for at in (-0.72, -0.2, 0.34, 0.8):
        draw.line([(x + size * at, y - size * 0.30), (x + size * at - 90, y + 60)], fill=58, width=12)
    draw.line([(x + size * 1.0, y - 34), (x + size * 1.22, y - size * 0.80)], fill=50, width=24)


def bicycle(image, x, y, size, shade=34):
    """A bicycle of its day, seen from its side; its wheels stand at y."""
    draw = ImageDraw.Draw(image)
    r = size * 0.5
    left, right, hub = (x - size * 0.78, y - r), (x + size * 0.78, y - r), (x - size * 0.06, y - r * 0.72)
    for cx, cy in (left, right):
        draw.ellipse((cx - r, cy - r, cx + r, cy + r), outline=shade, width=9)
        draw.ellipse((cx - r + 9, cy - r + 9, cx + r - 9, cy + r - 9), outline=150, width=3)
        for k in range(14):
            turn = math.pi * k / 7
            draw.line([(cx, cy), (cx + (r - 8) * math.cos(turn), cy + (r - 8) * math.sin(turn))], fill=118, width=2)
        draw.ellipse((cx - 12, cy - 12, cx + 12, cy + 12), fill=shade)
    seat, head = (x - size * 0.26, y - size * 1.08), (x + size * 0.50, y - size * 1.10)
    for first, last in ((left, hub), (left, seat), (seat, hub), (hub, head), (seat, head), (head, right)):
        draw.line([first, last], fill=shade, width=11)
    draw.ellipse((hub[0] - 34, hub[1] - 34, hub[0] + 34, hub[1] + 34), outline=shade, width=8)
    draw.line([(hub[0] - 30, hub[1] + 44), (hub[0] + 34, hub[1] - 40)], fill=shade, width=9)
    draw.line([seat, (seat[0] - 8, seat[1] - size * 0.12)], fill=shade, width=10)
    draw.ellipse((seat[0] - 70, seat[1] - size * 0.18, seat[0] + 46, seat[1] - size * 0.10), fill=shade)
    bars = [head, (head[0] - 10, head[1] - size * 0.16), (head[0] - 80, head[1] - size * 0.19)]
    draw.line(bars, fill=shade, width=10, joint="curve")


def liner(image, x, y, size, shade=70):
    """The side of a ship at a quay: hull with portholes, white houses above, a funnel, a gangway."""
    draw = ImageDraw.Draw(image)
    shape(image, [(x, y), (x - 30, y - size * 0.42), (x + size * 2, y - size * 0.50), (x + size * 2, y)], shade, 3)
    draw.line([(x - 26, y - size * 0.40), (x + size * 2, y - size * 0.48)], fill=206, width=9)
    for row, top in ((0, 0.30), (1, 0.18)):
        for k in range(15):
            px, py = x + 60 + k * size * 0.13 + row * 30, y - size * (top + 0.0045 * k)
            draw.ellipse((px - 13, py - 13, px + 13, py + 13), fill=24, outline=150, width=4)
    for k, (inset, low, high) in enumerate(((0.12, 0.43, 0.60), (0.26, 0.60, 0.74))):
        box = [
            (x + size * inset, y - size * low), (x + size * inset, y - size * high),
            (x + size * 2, y - size * (high + 0.06)), (x + size * 2, y - size * (low + 0.06)),
        ]  # fmt: skip
        shape(image, box, 214 - k * 8, 2)
        for w in range(11):
            wx = x + size * (inset + 0.08) + w * size * 0.13
            draw.rectangle((wx, y - size * (high - 0.05), wx + 26, y - size * (low + 0.05)), fill=70)
    shape(image, [(x + size * 0.8, y - size * 0.76), (x + size * 0.83, y - size * 1.2),
                  (x + size * 1.12, y - size * 1.22), (x + size * 1.15, y - size * 0.78)], 96, 4)  # fmt: skip
    shape(image, [(x + size * 0.828, y - size * 1.1), (x + size * 0.83, y - size * 1.2),
                  (x + size * 1.12, y - size * 1.22), (x + size * 1.127, y - size * 1.12)], 40, 3)  # fmt: skip
    foot, top = (x - size * 0.34, y + 20), (x + size * 0.34, y - size * 0.42)
    for side in (0, 46):
        draw.line([(foot[0], foot[1] - side), (top[0], top[1] - side)], fill=196 if side else 150, width=9)
    for k in range(10):
        gx, gy = foot[0] + (top[0] - foot[0]) * k / 9, foot[1] + (top[1] - foot[1]) * k / 9
        draw.line([(gx, gy), (gx, gy - 46)], fill=190, width=5)


def rail(image, y, slope, shade=230, step=250):
    """A ship's rail across the picture."""
    draw, wide = ImageDraw.Draw(image), image.width
    for k in range(4):
        draw.line([(0, y + k * 50), (wide, y + slope + k * 52)], fill=shade, width=8 if k else 16)
    for px in range(90, wide, step):
        py = y + slope * px / wide
        draw.line([(px, py), (px - 5, py + 250)], fill=shade, width=12)


def bathing_carts(image, x, y, size, count):
    """Carts to change in at the edge of the sea."""
    draw = ImageDraw.Draw(image)
    for k in range(count):
        cx, cy, s = x + k * size * 1.5, y - k * 12, size * (1 - k * 0.06)
        draw.rectangle((cx, cy - s, cx + s, cy - s * 0.16), fill=196 - k * 8, outline=120, width=4)
        for line in range(1, 7):
            draw.line([(cx + s * line / 7, cy - s), (cx + s * line / 7, cy - s * 0.16)], fill=166 - k * 6, width=3)
        draw.polygon([(cx - 12, cy - s), (cx + s / 2, cy - s * 1.34), (cx + s + 12, cy - s)], fill=104)
        draw.rectangle((cx + s * 0.36, cy - s * 0.78, cx + s * 0.64, cy - s * 0.16), fill=72)
        for wheel in (0.22, 0.78):
            wx = cx + s * wheel
            draw.ellipse((wx - s * 0.15, cy - s * 0.24, wx + s * 0.15, cy + s * 0.06), outline=60, width=7)


def palm(image, x, y, size, seed):
    """A palm by the water."""
    rng, draw = random.Random(seed), ImageDraw.Draw(image)
    top = (x + size * 0.10, y - size)
    draw.line([(x, y), (x + size * 0.03, y - size * 0.5), top], fill=84, width=int(size * 0.05), joint="curve")
    for k in range(11):
        turn = math.pi * (0.02 + 0.096 * k) + rng.uniform(-0.06, 0.06)
        reach = size * rng.uniform(0.36, 0.48)
        frond = [
            (top[0] + reach * part * math.cos(turn), top[1] - reach * part * math.sin(turn) + reach * 0.62 * part**2)
            for part in (0, 0.25, 0.5, 0.75, 1.0)
        ]
        draw.line(frond, fill=66 + k % 3 * 8, width=int(size * 0.022), joint="curve")
        for (ax, ay), (bx, by) in itertools.pairwise(frond):
            for part in (0.2, 0.5, 0.8):
                lx, ly = ax + (bx - ax) * part, ay + (by - ay) * part
                draw.line([(lx, ly), (lx + rng.uniform(-6, 6), ly + size * 0.085)], fill=78, width=4)


def mountains(image, base, height, shade, seed):
    """Peaks with snow on them."""
    rng = random.Random(seed)
    w, h = image.size
    x, peaks = -w * 0.05, []
    while x < w * 1.05:
        peaks.append((x, h * (base - height * rng.uniform(0.45, 1.0))))
        x += w * rng.uniform(0.10, 0.19)
    line = []
    for (ax, ay), (bx, by) in itertools.pairwise(peaks):
        line += [(ax, ay), ((ax + bx) / 2, max(ay, by) + h * height * rng.uniform(0.25, 0.5))]
    shape(image, [(-40, h * base), *line, peaks[-1], (w + 40, h * base)], shade, 5)
    for px, py in peaks:
        run = [
            (px + rng.uniform(-9, 9) + side * 26, py + down)
            for side, down in ((-2.2, 84), (-1, 56), (0, 96), (1.1, 60), (2.3, 96))
        ]
        shape(image, [(px, py), *reversed(run)], 232, 4)


def boulders(image, seed):
    """Great round stones on a beach, cracked in plates."""
    rng = random.Random(seed)
    for bx, by, r in ((420, 1010, 210), (1590, 980, 170), (1840, 1090, 240), (170, 1150, 150), (1290, 930, 90)):
        oval(image, (bx - r * 1.1, by + r * 0.55, bx + r * 1.5, by + r * 1.0), 70, 26)
        for k in range(14):
            part = 1 - k / 15
            cx, cy, cr = bx - r * 0.30 * (1 - part), by - r * 0.32 * (1 - part), r * part
            oval(image, (cx - cr, cy - cr * 0.93, cx + cr, cy + cr * 0.93), 74 + k * 6, 3)
        draw = ImageDraw.Draw(image)
        for _ in range(9):
            turn, reach = rng.uniform(0, 6.28), r * rng.uniform(0.1, 0.6)
            px, py = bx + reach * math.cos(turn), by + reach * math.sin(turn) * 0.9
            for _ in range(3):
                qx, qy = px + rng.uniform(-0.22, 0.22) * r, py + rng.uniform(-0.2, 0.2) * r
                draw.line([(px, py), (qx, qy)], fill=62, width=3)
                px, py = qx, qy


def shipwrights():
    image = canvas(1000, 680)
    sky(image, 186, 226, 0.5, 201)
    hills(image, 0.56, 0.10, 138, 201)
    water(image, 0.50, 184, 150, 201)
    ground(image, 0.60, 168, 108, 201)
    boat_on_stocks(image, 1080, 1010, 720)
    heads = [
        person(image, 330, 720, 96, replace(OLD_MAN, cloth=46), 6.2),
        person(image, 1010, 800, 94, Look(style="suit", cloth=84, hair=48, hairdo="cap", moustache=True), 5.6),
        person(image, 1700, 740, 96, Look(style="suit", cloth=58, hair=60, hairdo="cap"), 6.2),
    ]
    card = mount(tone(small(image), "albumen", 201, 7), (64, 58, 64, 70), (222, 204, 168), 201)
    keep("shipwrights_1894.jpg", card, heads, (64, 58))


def cabinet():
    picture, heads = studio(Look(style="suit", cloth=44, hair=46, moustache=True), 211, 470, 640, size=0.20)
    card = mount(
        tone(small(picture), "gold", 211),
        (56, 52, 56, 132),
        (58, 66, 58),
        211,
        "R. Kalnin · Riga",
        write,
        (206, 178, 110),
    )
    keep("cabinet_juhan_f.jpg", card, heads, (56, 52))

    def imprint(card):
        draw, ink = ImageDraw.Draw(card), (150, 96, 60)
        w, h = card.size
        draw.ellipse((w * 0.36, h * 0.12, w * 0.64, h * 0.31), outline=ink, width=4)
        draw.ellipse((w * 0.38, h * 0.135, w * 0.62, h * 0.295), outline=ink, width=2)
        write(card, w / 2, h * 0.205, "R K", h * 0.07, ink, "print")
        for at, (words, size) in enumerate(
            (("R. Kalnin", 0.055), ("Photographisches Atelier", 0.034), ("Riga, Kalkstrasse 7", 0.034))
        ):
            write(card, w / 2, h * (0.40 + 0.075 * at), words, h * size, ink, "print")
        write(card, w / 2, h * 0.93, "Die Platten werden aufbewahrt.", h * 0.024, ink, "print")
        write(card, w * 0.5, h * 0.76, "Emale, Juhan 1906", h * 0.06, (58, 52, 70), angle=1.4)

    keep("cabinet_juhan_b.jpg", back((582, 824), [], 212, extra=imprint))


def seaside():
    image = canvas(1040, 660)
    sky(image, 200, 238, 0.5, 221)
    water(image, 0.40, 204, 164, 221)
    shape(image, [(0, 1320), (0, 940), (2080, 700), (2080, 1320)], 186, 6)
    ship(image, 1500, 470, 110, 96)
    bathing_carts(image, 250, 900, 230, 4)
    heads = [
        person(image, 1560, 840, 66, Look(style="blouse", cloth=210, hair=60, hairdo="bun"), 6.4),
        person(image, 1690, 830, 68, Look(style="suit", cloth=150, hair=56), 6.6),
        person(image, 1800, 950, 50, GIRL, 5.4),
    ]
    front = white_border(tone(small(image), "selenium", 221, 8), 20, 221)
    write(front, 250, front.height - 60, "Pernau. Am Strande", 32, (245, 240, 230))
    keep("postcard_pernau_r.jpg", front, heads, (34, 34))

    def card_back(card):
        draw, ink = ImageDraw.Draw(card), (96, 84, 74)
        w, h = card.size
        draw.line([(w / 2, h * 0.18), (w / 2, h * 0.94)], fill=ink, width=3)
        write(card, w / 2, h * 0.09, "Postkarte – Открытое письмо", h * 0.046, ink, "print")
        stamp = (w * 0.84, h * 0.10, w * 0.95, h * 0.33)
        draw.rectangle(stamp, fill=(150, 76, 60), outline=(232, 220, 200), width=5)
        draw.ellipse((w * 0.74, h * 0.14, w * 0.885, h * 0.36), outline=(60, 56, 66), width=4)
        write(card, w * 0.812, h * 0.25, "PERNAU 2 VIII 13", h * 0.022, (60, 56, 66), "print")
        for at, words in enumerate(("Mari Tamm", "Kärdla", "Hiiumaa")):
            write(card, w * 0.56, h * (0.52 + 0.13 * at), words, h * 0.078, (52, 48, 88), centre=False)

    lines = [("", 0.05), ("Kallis ema!", 0.08), ("Vesi on soe, Juhan", 0.07), ("ujub iga päev.", 0.07), ("Helmi", 0.08)]
    keep("postcard_pernau_v.jpg", back((1040, 668), lines, 222, (52, 48, 88), card_back))


def wheel():
    image = canvas(960, 700)
    sky(image, 190, 222, 0.45, 231)
    hills(image, 0.54, 0.2, 132, 231)
    house(image, 1120, 960, 700, 250, 176, 96, 231, "verandah")
    tree(image, 240, 960, 700, 78, 231)
    ground(image, 0.62, 160, 98, 231)
    for k in range(13):  # a paling fence
        ImageDraw.Draw(image).rectangle((300 + k * 62, 800, 322 + k * 62, 940), fill=206 - k % 3 * 9)
    ImageDraw.Draw(image).line([(280, 850), (1100, 850)], fill=190, width=9)
    heads = [person(image, 1090, 590, 122, Look(style="suit", cloth=92, hair=56, hairdo="cap"), 6.2)]
    bicycle(image, 800, 1290, 330)
    keep("bicycle_1915.jpg", white_border(tone(small(image), "sepia", 231, 10), 28, 231), heads, (42, 42))


def team():
    image = canvas(1040, 720)
    sky(image, 180, 214, 0.45, 241)
    hills(image, 0.50, 0.12, 130, 241)
    ground(image, 0.50, 160, 104, 241)
    draw = ImageDraw.Draw(image)
    for px in (180, 560):  # the posts
        draw.rectangle((px, 130, px + 20, 830), fill=222)
    draw.rectangle((180, 470, 580, 488), fill=222)
    jersey = Look(style="suit", cloth=96, hair=54)
    rows = [
        (
            560, 112, 6.4,
            [(420 + 300 * k, replace(jersey, hair=(44, 70, 90, 52, 60)[k], moustache=k == 3)) for k in range(5)],
        ),
        (
            860, 118, 5.4,
            [(560, replace(jersey, seated=True)), (870, replace(jersey, hair=80, seated=True)),
             (1190, replace(jersey, hair=48, seated=True)), (1500, replace(jersey, hair=66, seated=True))],
        ),
    ]  # fmt: skip
    heads = group(image, rows)
    oval(image, (980, 1270, 1080, 1350), 104, 3)
    draw.line([(990, 1310), (1070, 1310)], fill=60, width=4)
    card = mount(
        tone(small(image), "silver", 241),
        (60, 54, 60, 110),
        (206, 200, 188),
        241,
        "Athletic F.C. · 1923",
        write,
        (90, 84, 74),
    )
    keep("team_1923.jpg", card, heads, (60, 54))


def stones():
    image = canvas(980, 680)
    sky(image, 196, 230, 0.45, 251)
    water(image, 0.40, 196, 160, 251)
    hills(image, 0.42, 0.09, 150, 252)
    shape(image, [(0, 1360), (0, 880), (980, 800), (1960, 830), (1960, 1360)], 180, 8)
    boulders(image, 251)
    heads = [
        person(image, 820, 740, 100, Look(style="frock", cloth=176, hair=34, hairdo="bob", skin=172), 5.8),
        person(image, 1080, 760, 98, Look(style="frock", cloth=120, hair=32, hairdo="long", skin=170), 5.8),
    ]
    keep("boulders_1926.jpg", white_border(tone(small(image), "sepia", 251, 10), 26, 251, True), heads, (40, 40))


def birthday():
    image = canvas(640, 820)
    backdrop(image, 190, 100, 261)
    shape(image, [(0, 0), (250, 0), (170, 760), (230, 1640), (0, 1640)], 92, 30)
    heads = [
        person(image, 800, 470, 176, Look(style="suit", cloth=50, hair=52), 6.2),
        person(image, 480, 800, 172, Look(style="dress", cloth=150, hair=58, hairdo="bun", seated=True), 5.0),
        person(image, 566, 1130, 92, Look(style="baby", cloth=238, hair=150, skin=214, collar=240), 3.4),
    ]
    keep("birthday_1942.jpg", white_border(tone(small(image), "silver", 261, 6, 0.04), 30, 261), heads, (44, 44))


def quay():
    image = canvas(1000, 700)
    sky(image, 176, 208, 0.6, 271)
    water(image, 0.60, 150, 120, 271)
    liner(image, 700, 960, 740)
    shape(image, [(0, 1400), (0, 1010), (2000, 930), (2000, 1400)], 158, 4)
    draw, rng = ImageDraw.Draw(image), random.Random(271)
    for k in range(8):
        draw.line([(0, 1050 + k * 46), (2000, 972 + k * 52)], fill=140, width=4)
    for k, look in enumerate((MAN, WOMAN, replace(MAN, hairdo="cap"), WOMAN)):
        person(
            image, 1240 + k * 190 + rng.uniform(-30, 30), 850 + k % 2 * 20, 52, replace(look, cloth=60 + k * 20), 6.2
        )
    for bx, by, size in ((210, 1290, 190), (390, 1310, 130), (120, 1330, 110)):  # all that they have
        draw.rectangle((bx - size / 2, by - size * 0.6, bx + size / 2, by), fill=84, outline=48, width=6)
        draw.line([(bx - size * 0.2, by - size * 0.6), (bx - size * 0.2, by)], fill=52, width=8)
    heads = [
        person(image, 640, 780, 96, Look(style="frock", cloth=110, hair=70, hairdo="bob"), 5.8),
        person(image, 830, 950, 80, GIRL, 4.9),
    ]
    keep("quay_1949.jpg", white_border(tone(small(image), "silver", 271, 12, 0.08), 24, 271), heads, (38, 38))


def canal():
    image = canvas(1000, 700)
    sky(image, 226, 244, 0.5, 281)
    shape(image, [(0, 640), (0, 520), (420, 470), (900, 520), (1400, 460), (2000, 530), (2000, 640)], 206, 6)
    water(image, 0.44, 196, 150, 281)
    for at, size in ((240, 250), (420, 210), (1560, 260), (1760, 200)):
        palm(image, at, 630, size, at)
    for k in range(3):
        house(image, 760 + k * 190, 628, 150 - k * 16, 74, 224, 170, k)
    shape(image, [(0, 1400), (0, 1120), (2000, 1180), (2000, 1400)], 150, 3)
    rail(image, 930, 50)
    heads = [
        person(image, 560, 720, 104, Look(style="frock", cloth=214, hair=70, hairdo="bob"), 5.8),
        person(image, 800, 900, 82, replace(GIRL, cloth=222), 4.9),
        person(image, 1080, 930, 80, replace(BOY, cloth=120), 4.7),
        person(image, 1340, 690, 106, Look(style="suit", cloth=170, hair=60), 6.0),
    ]
    keep("canal_1949.jpg", white_border(tone(small(image), "silver", 281, 9, 0.10), 24, 281), heads, (38, 38))


def landfall():
    image = canvas(1000, 700)
    sky(image, 150, 206, 0.45, 291)
    hills(image, 0.46, 0.26, 130, 291)
    hills(image, 0.48, 0.16, 100, 293)
    for k in range(18):
        rng = random.Random(k)
        house(image, 80 + k * 105, 660 - rng.uniform(0, 90), 70, 40, rng.randint(190, 226), rng.randint(90, 130), k)
    water(image, 0.47, 176, 120, 291)
    shape(image, [(0, 1400), (0, 1130), (2000, 1050), (2000, 1400)], 120, 3)
    rail(image, 960, -60, 214)
    for k in range(5):
        look = (MAN, WOMAN, replace(MAN, hairdo="cap"), GIRL_BOB, WOMAN)[k]
        person(image, 1080 + k * 190, 820 + (120 if k == 3 else 0), 84, replace(look, cloth=50 + k * 18), 5.8)
    heads = [
        person(image, 520, 760, 112, Look(style="suit", cloth=70, hair=60), 5.9),
        person(image, 780, 960, 86, GIRL, 4.8),
    ]
    keep("landfall_1949.jpg", white_border(tone(small(image), "silver", 291, 10, 0.06), 24, 291), heads, (38, 38))


def dancers():
    image = canvas(1000, 760)
    backdrop(image, 186, 120, 301)
    draw = ImageDraw.Draw(image)
    shape(image, [(0, 1180), (2000, 1180), (2000, 1520), (0, 1520)], 92, 3)
    for k in range(12):
        draw.line([(k * 190, 1180), (k * 250 - 330, 1520)], fill=78, width=4)
    for k in range(21):  # a garland
        gx = 60 + k * 94
        gy = 120 + 60 * math.sin(k / 20 * math.pi * 3) ** 2
        draw.ellipse((gx - 22, gy - 16, gx + 22, gy + 16), fill=70 + k % 4 * 12)
    stripes = Look(style="blouse", cloth=170, hair=60, hairdo="plaits")
    heads = [
        person(image, 430, 560, 126, Look(style="suit", cloth=60, hair=60), 6.2),
        person(image, 820, 590, 122, replace(stripes, hairdo="bun"), 6.2),
        person(image, 1210, 560, 128, Look(style="suit", cloth=78, hair=110), 6.2),
        person(image, 1600, 590, 122, stripes, 6.2),
    ]
    for bx in (820, 1600):  # the stripes of their skirts
        for k in range(9):
            shade = 60 if k % 2 else 230
            draw.line([(bx - 60 + k * 15, 1010), (bx - 150 + k * 37, 1330)], fill=shade, width=9)
    keep("dancers_1956.jpg", white_border(tone(small(image), "selenium", 301, 7, 0.04), 28, 301), heads, (42, 42))


def lake():
    image = canvas(800, 800)
    sky(image, 196, 226, 0.42, 311)
    mountains(image, 0.46, 0.30, 120, 311)
    hills(image, 0.47, 0.07, 100, 312)
    water(image, 0.46, 170, 130, 311)
    ground(image, 0.66, 170, 116, 311)
    heads = [
        person(image, 500, 620, 132, Look(style="frock", cloth=190, hair=120, hairdo="bob"), 6.0),
        person(image, 700, 1120, 88, Look(style="baby", cloth=232, hair=160, skin=214, collar=236), 3.2),
        person(image, 1040, 590, 136, Look(style="suit", cloth=120, hair=66), 6.0),
    ]
    layers = (
        (0, (128, 172, 220)), (0.30, (196, 208, 222)), (0.36, (150, 160, 186)), (0.45, (96, 124, 128)),
        (0.47, (70, 128, 160)), (0.64, (88, 140, 156)), (0.67, (168, 158, 112)), (0.85, (128, 122, 78)),
    )  # fmt: skip
    print_ = colours(image, 311, layers, ((216, 96, 96), (250, 244, 226), (84, 112, 84)))
    keep("lake_1967.jpg", white_border(print_, 26, 311), heads, (40, 40))


PICTURES = (
    shipwrights, cabinet, seaside, wheel, team, stones, birthday, quay, canal, landfall, dancers, lake,
)  # fmt: skip


if __name__ == "__main__":
    OUT.mkdir(exist_ok=True, parents=True)
    for picture in PICTURES:
        if len(sys.argv) < 4 or picture.__name__ in sys.argv[3:]:
            picture()
    print(json.dumps(HEADS, indent=1))
