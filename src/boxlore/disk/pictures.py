"""Looking at pictures with Pillow: size, a JPEG for print or screen, and a hash of how it looks.

Nothing here writes to a scan; every picture handed out is made afresh, without embedded data.
"""

import io
import math
from dataclasses import dataclass
from pathlib import Path
from typing import cast

from PIL import Image, ImageCms, ImageOps

from boxlore.core.errors import CouldNot

Image.MAX_IMAGE_PIXELS = 1_000_000_000  # a 60 MB scan is no bomb; a gigapixel file is refused

MEDIA_TYPES = {"JPEG": "image/jpeg", "TIFF": "image/tiff", "PNG": "image/png", "WEBP": "image/webp"}
_SRGB = ImageCms.createProfile("sRGB")


@dataclass(frozen=True, slots=True)
class Look:
    """What the header says: pixels as stored, pixels an inch (0 if not said), media type."""

    width: int
    height: int
    ppi: float
    media_type: str


def _open(path: Path) -> Image.Image:
    try:
        return Image.open(path)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise CouldNot(f"{path.name} cannot be opened as a picture.", "Look at the file, or scan it again.") from error


def look(path: Path) -> Look:
    """Read the header only. Raises CouldNot for what is no picture."""
    with _open(path) as image:
        ppi = image.info.get("dpi", (0, 0))[0]
        width, height = image.size
        kind = MEDIA_TYPES.get(image.format or "", f"image/{(image.format or 'unknown').lower()}")
    return Look(width, height, 0.0 if not ppi or math.isnan(float(ppi)) else round(float(ppi), 2), kind)


def make_jpeg(
    path: Path, longest: int, *, area: tuple[float, ...] = (), quality: int = 88, upright: bool = True
) -> bytes:
    """A plain sRGB or grey JPEG, at most `longest` pixels on its long side, without embedded data.

    `area` is x, y, w, h in 0..1 of the stored picture. Raises CouldNot for a damaged picture.
    """
    try:
        with _open(path) as image:
            if not area:  # a JPEG is decoded no larger than it need be, never below what is asked for
                part = longest / max(image.size)
                image.draft(None, (math.ceil(image.width * part), math.ceil(image.height * part)))
            image.load()
            picture = _crop(image, area)
            picture = ImageOps.exif_transpose(picture) if upright else picture
            picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=2.0)
            picture = _to_srgb(picture)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise CouldNot(f"{path.name} is damaged and cannot be shown.", "Scan it again if you can.") from error
    out = io.BytesIO()
    picture.save(out, "JPEG", quality=quality)
    return out.getvalue()


def _crop(image: Image.Image, area: tuple[float, ...]) -> Image.Image:
    if len(area) != 4:
        return image
    x, y, w, h = area
    return image.crop(
        (
            round(x * image.width),
            round(y * image.height),
            max(round((x + w) * image.width), round(x * image.width) + 1),
            max(round((y + h) * image.height), round(y * image.height) + 1),
        )
    )


def _to_srgb(image: Image.Image) -> Image.Image:
    profile = image.info.get("icc_profile")
    if image.mode in ("I;16", "I;16B", "I", "F"):
        image = image.point(lambda value: value * (1 / 256)).convert("L")
    if profile and image.mode in ("RGB", "CMYK"):
        try:
            source = ImageCms.ImageCmsProfile(io.BytesIO(profile))
            image = cast(Image.Image, ImageCms.profileToProfile(image, source, _SRGB, outputMode="RGB"))
        except (ImageCms.PyCMSError, OSError):
            image = image.convert("RGB")
    if image.mode in ("RGBA", "LA", "PA") or "transparency" in image.info:
        white = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(white, image.convert("RGBA"))
    plain = image if image.mode in ("L", "RGB") else image.convert("L" if image.mode == "1" else "RGB")
    plain.info = {}
    return plain


def looks_hash(path: Path) -> int:
    """64 bits of how the picture looks: which of 8 × 8 neighbours is brighter (difference hash).

    Two prints of one picture differ in few bits; compare with `bits_apart`.
    """
    with _open(path) as image:
        image.draft("L", (64, 64))
        small = image.convert("L").resize((9, 8), Image.Resampling.BOX)
        pixels = small.tobytes()
    bits = 0
    for row in range(8):
        for column in range(8):
            here, there = pixels[row * 9 + column], pixels[row * 9 + column + 1]
            bits = bits << 1 | (here > there)
    return bits


def bits_apart(one: int, other: int) -> int:
    """How many of the 64 bits differ."""
    return (one ^ other).bit_count()
