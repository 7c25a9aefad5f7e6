"""Pixels in the forms in which terminals take pictures: few colours, or a PNG; and a marker to lay on one."""

import io

from PIL import Image, ImageDraw, ImageFont


def in_colours(width: int, height: int, rgb: bytes, most: int) -> tuple[bytes, list[tuple[int, int, int]]]:
    """RGB pixels as one palette index a pixel, and the palette of at most `most` (2 to 256) colours that suit them."""
    reduced = Image.frombytes("RGB", (width, height), rgb).quantize(most, dither=Image.Dither.NONE)
    levels = reduced.getpalette() or []
    palette = [(levels[at], levels[at + 1], levels[at + 2]) for at in range(0, len(levels) - 2, 3)]
    return reduced.tobytes(), palette


def as_png(width: int, height: int, rgb: bytes) -> bytes:
    """RGB pixels as a PNG, packed quickly rather than small: it goes no further than to the terminal."""
    encoded = io.BytesIO()
    Image.frombytes("RGB", (width, height), rgb).save(encoded, "PNG", compress_level=1)
    return encoded.getvalue()


def sign_png(sign: str, width: int, height: int) -> bytes:
    """A short sign, dark on amber, as a PNG of so many pixels: a marker to lay on a picture."""
    ground = Image.new("RGB", (width, height), "#f2c96b")
    font = ImageFont.load_default(max(8, round(height * 0.8)))
    ImageDraw.Draw(ground).text((width / 2, height / 2), sign, "#16120f", font=font, anchor="mm")
    return as_png(width, height, ground.tobytes())
