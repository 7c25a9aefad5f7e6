"""A decoded picture in a mode that JPEG, the screen and paper have: grey, RGB or CMYK in eight bits a channel."""

import io
import math
from typing import cast

from PIL import Image, ImageCms

_SRGB = ImageCms.createProfile("sRGB")
_LAB = ImageCms.createProfile("LAB")

_PLAIN = ("L", "RGB", "CMYK", "RGBA", "LA")


def in_plain_mode(image: Image.Image) -> Image.Image:
    """The picture in L, LA, RGB, RGBA or CMYK, eight bits a channel.

    Its colour profile stays in `info` where it still fits the colours: those of Lab become sRGB, and lose it.
    """
    info = dict(image.info)
    if image.mode == "LAB":
        plain = cast(Image.Image, ImageCms.profileToProfile(image, _LAB, _SRGB, outputMode="RGB"))
        info.pop("icc_profile", None)
    elif image.mode[0] in "IF":
        plain = _in_eight_bits(image)
        info.pop("transparency", None)
    elif "transparency" in info or image.mode in ("PA", "RGBa", "La"):
        plain = (image.convert("LA") if image.mode == "La" else image).convert("RGBA")
        info.pop("transparency", None)
    elif image.mode in _PLAIN:
        return image
    else:
        plain = image.convert("L" if image.mode == "1" else "RGB")
    plain.info = info
    return plain


def _in_eight_bits(image: Image.Image) -> Image.Image:
    """Grey of 16 or 32 bits, or of floating numbers, in eight bits.

    16 bits lose the lower eight. Numbers say nothing of their range, so that it is guessed from the largest: 0 to 1,
    0 to 255, 0 to 65,535, or 0 to the largest (common practice, no source).
    """
    wide = image if image.mode in ("I", "F", "I;16") else image.convert("I")
    largest = float(cast(tuple[float, float], wide.getextrema())[1])
    if wide.mode == "F" and largest <= 255:
        scale = 255.0 if largest <= 1 else 1.0
    else:
        scale = 1 / 256 if largest <= 65_535 or not math.isfinite(largest) else 255.0 / largest
    return wide.point(lambda value: value * scale + 0).convert("L")


def on_white(image: Image.Image) -> Image.Image:
    """A picture with transparent parts on white; any other as it is."""
    if image.mode not in ("RGBA", "LA"):
        return image
    white = Image.new("RGBA", image.size, "white")
    plain = Image.alpha_composite(white, image.convert("RGBA")).convert("RGB")
    plain.info = dict(image.info)
    return plain


def in_srgb(image: Image.Image) -> Image.Image:
    """A picture in one of the modes of `in_plain_mode` as sRGB or grey, by its colour profile where that is usable."""
    profile = image.info.get("icc_profile")
    image = on_white(image)
    if profile and image.mode in ("RGB", "CMYK"):
        try:
            source = ImageCms.ImageCmsProfile(io.BytesIO(profile))
            image = cast(Image.Image, ImageCms.profileToProfile(image, source, _SRGB, outputMode="RGB"))
        except (ImageCms.PyCMSError, OSError, TypeError):
            image = image.convert("RGB")
    plain = image if image.mode in ("L", "RGB") else image.convert("RGB")
    plain.info = {}
    return plain
