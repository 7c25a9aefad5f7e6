"""What time and the trade do to a picture: toning, grain, vignette, mounts, borders, deckle edges, stains, writing."""

import random

from PIL import Image, ImageChops, ImageDraw, ImageFilter, ImageOps

TONES = {
    "sepia": ((38, 26, 18), (150, 112, 74), (246, 232, 204)),
    "selenium": ((30, 22, 28), (122, 108, 108), (240, 234, 226)),
    "silver": ((26, 26, 26), (124, 122, 118), (242, 240, 234)),
    "albumen": ((52, 30, 20), (166, 118, 76), (250, 234, 198)),
    "cyan": ((8, 26, 58), (70, 120, 168), (232, 242, 244)),
    "gold": ((40, 30, 16), (148, 118, 72), (250, 240, 212)),
}


def tone(image: Image.Image, name: str, seed: int, grain: float = 9, fade: float = 0.06) -> Image.Image:
    """Greys to a toned print with grain, a gentle vignette and faded shadows."""
    rng = random.Random(seed)
    w, h = image.size
    noise = Image.effect_noise((w, h), grain).filter(ImageFilter.GaussianBlur(0.6))
    grey = ImageChops.add(image, noise, 1, -128)
    corner = Image.radial_gradient("L").resize((w, h))
    grey = ImageChops.subtract(grey, corner.point(lambda v: max(0, v - 120) * 0.42))
    grey = grey.point(lambda v: int(255 * fade + v * (1 - fade * 1.4)))
    black, middle, white = TONES[name]
    toned = ImageOps.colorize(grey, black, white, middle)
    for _ in range(rng.randint(2, 6)):
        x, y, r = rng.uniform(0, w), rng.uniform(0, h), rng.uniform(1, 3.2)
        ImageDraw.Draw(toned).ellipse((x, y, x + r, y + r), fill=white)
    for _ in range(rng.randint(0, 3)):
        x, y = rng.uniform(0, w), rng.uniform(0, h)
        ImageDraw.Draw(toned).line((x, y, x + rng.uniform(-60, 60), y + rng.uniform(20, 140)), fill=white, width=1)
    return toned


def paper(size, colour=(238, 229, 208), seed: int = 1) -> Image.Image:
    """A sheet of old card, mottled and browned at the edges."""
    w, h = size
    base = Image.new("RGB", size, colour)
    mottle = Image.effect_noise((w // 6 + 2, h // 6 + 2), 26).resize(size, Image.Resampling.BICUBIC)
    fibres = Image.effect_noise(size, 8)
    base = ImageChops.multiply(base, Image.merge("RGB", [mottle.point(lambda v: 232 + v // 11)] * 3))
    base = ImageChops.add(base, Image.merge("RGB", [fibres] * 3), 1, -128)
    edge = Image.new("L", size, 0)
    ImageDraw.Draw(edge).rectangle((w * 0.03, h * 0.03, w * 0.97, h * 0.97), fill=255)
    edge = ImageOps.invert(edge.filter(ImageFilter.GaussianBlur(min(size) * 0.04)))
    base.paste(tuple(int(c * 0.80) for c in colour), (0, 0), edge.point(lambda v: v // 2))
    rng = random.Random(seed)
    for _ in range(7):
        x, y, r = rng.uniform(0, w), rng.uniform(0, h), rng.uniform(2, 9)
        spot = Image.new("L", size, 0)
        ImageDraw.Draw(spot).ellipse((x - r, y - r, x + r, y + r), fill=110)
        base.paste(tuple(int(c * 0.72) for c in colour), (0, 0), spot.filter(ImageFilter.GaussianBlur(r * 0.6)))
    return base


def mount(
    picture: Image.Image, margin, colour, seed: int, imprint: str = "", write=None, ink=(150, 110, 50)
) -> Image.Image:
    """A picture on a studio's card: rounded corners, a rule, the studio's name below."""
    left, top, right, bottom = margin
    size = (picture.width + left + right, picture.height + top + bottom)
    card = paper(size, colour, seed)
    shadow = Image.new("L", size, 0)
    ImageDraw.Draw(shadow).rectangle((left - 2, top - 2, left + picture.width + 4, top + picture.height + 5), fill=120)
    card.paste((60, 45, 30), (0, 0), shadow.filter(ImageFilter.GaussianBlur(4)))
    card.paste(picture, (left, top))
    draw = ImageDraw.Draw(card)
    draw.rectangle((left - 9, top - 9, left + picture.width + 8, top + picture.height + 8), outline=ink, width=2)
    if imprint and write is not None:
        write(card, size[0] / 2, top + picture.height + bottom * 0.34, imprint, bottom * 0.24, ink, "print")
    return card


def white_border(picture: Image.Image, width: int, seed: int, deckle: bool = False) -> Image.Image:
    """A snapshot's white border, with a deckle edge if wanted, on the scanner's dark lid."""
    size = (picture.width + 2 * width, picture.height + 2 * width)
    sheet = paper(size, (246, 242, 232), seed)
    sheet.paste(picture, (width, width))
    lid = Image.new("RGB", (size[0] + 28, size[1] + 28), (34, 33, 36))
    if not deckle:
        lid.paste(sheet, (14, 14))
        return lid
    mask = Image.new("L", size, 0)
    rng = random.Random(seed)

    def ragged(length):
        return [rng.uniform(0, 5) for _ in range(int(length / 7) + 2)]

    w, h = size
    outline = [(k * 7, d) for k, d in enumerate(ragged(w))] + [(w - d, k * 7) for k, d in enumerate(ragged(h))]
    outline += [(w - k * 7, h - d) for k, d in enumerate(ragged(w))] + [(d, h - k * 7) for k, d in enumerate(ragged(h))]
    ImageDraw.Draw(mask).polygon(outline, fill=255)
    lid.paste(sheet, (14, 14), mask)
    return lid
