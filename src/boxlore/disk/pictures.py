"""Looking at pictures with Pillow: size, a JPEG for print or screen, and a hash of how it looks.

Nothing here writes to a scan; every picture handed out is made afresh, without embedded data.
"""

import io
import math
import re
from dataclasses import dataclass
from pathlib import Path
from typing import cast

from PIL import Image, ImageCms, ImageOps, TiffImagePlugin

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


HEIF_BRANDS = (b"heic", b"heix", b"hevc", b"mif1", b"msf1", b"heim", b"heis")


def _is_heif(path: Path) -> bool:
    """By content: a box `ftyp` with a brand of ISO/IEC 23008-12."""
    with open(path, "rb") as file:
        head = file.read(12)
    return head[4:8] == b"ftyp" and head[8:12] in HEIF_BRANDS


def _open(path: Path) -> Image.Image:
    try:
        if _is_heif(path):
            return _open_heif(path)
        return Image.open(path)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise CouldNot(f"{path.name} cannot be opened as a picture.", "Look at the file, or scan it again.") from error


def _open_heif(path: Path) -> Image.Image:
    """With the optional library for telephone pictures. Raises CouldNot where it is not installed."""
    try:
        from pillow_heif import register_heif_opener
    except ImportError as error:
        raise CouldNot(
            f"{path.name} is a HEIC picture, and the part that reads them is not installed.",
            "Install it (`pip install boxlore[heif]`), or let the telephone hand the picture on as JPEG.",
        ) from error
    register_heif_opener()
    return Image.open(path)


_EXTENT = re.compile(rb"\x00\x00\x00\x14ispe\x00\x00\x00\x00(.{4})(.{4})", re.DOTALL)


def _heif_size(path: Path) -> tuple[int, int] | None:
    """A HEIC's pixels by the largest of its image extents (ISO/IEC 23008-12, 6.5.3); None for other files."""
    try:
        if not _is_heif(path):
            return None
        with open(path, "rb") as file:
            extents = _EXTENT.findall(file.read(1 << 20))
    except OSError:
        return None  # whoever opens it next says why
    found = [(int.from_bytes(across, "big"), int.from_bytes(down, "big")) for across, down in extents]
    return max(found, default=None, key=lambda size: size[0] * size[1])


def look(path: Path) -> Look:
    """Read the header only. Raises CouldNot for what is no picture."""
    if (size := _heif_size(path)) is not None:
        return Look(*size, 0.0, "image/heic")
    with _open(path) as image:
        ppi = image.info.get("dpi", (0, 0))[0]
        width, height = image.size
        kind = MEDIA_TYPES.get(image.format or "", f"image/{(image.format or 'unknown').lower()}")
    return Look(width, height, 0.0 if not ppi or math.isnan(float(ppi)) else round(float(ppi), 2), kind)


@dataclass(frozen=True, slots=True)
class Deeper:
    """What else the header says: bits a channel, channels, whether a colour profile is in it, Exif orientation."""

    bits: int
    colours: int
    profile: bool
    turned: int


def look_deeper(path: Path) -> Deeper:
    """Read the header only. Raises CouldNot for what is no picture."""
    with _open(path) as image:
        told = image.tag_v2.get(258) if isinstance(image, TiffImagePlugin.TiffImageFile) else None
        bits = told[0] if isinstance(told, tuple) and told else told
        if not isinstance(bits, int):
            bits = 1 if image.mode == "1" else 16 if image.mode.startswith("I;16") else 8
        try:
            turned = int(image.getexif().get(274) or 0)
        except (OSError, ValueError, SyntaxError):  # an Exif block that is damaged says nothing
            turned = 0
        return Deeper(bits, len(image.getbands()), bool(image.info.get("icc_profile")), turned)


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


@dataclass(frozen=True, slots=True)
class ForUse:
    """A newly encoded JPEG: its bytes and pixels, and the Exif orientation that it was turned upright from."""

    data: bytes
    width: int
    height: int
    turned: int


def make_for_use(path: Path, longest: int = 0, *, area: tuple[float, ...] = (), quality: int = 92) -> ForUse:
    """A JPEG, upright, at most `longest` pixels on its long side (0: as it is), with the scan's colour profile.

    `area` is x, y, w, h in 0..1 of the stored picture. Raises CouldNot for a damaged picture.
    """
    try:
        with _open(path) as image:
            profile = image.info.get("icc_profile")
            ppi = image.info.get("dpi", (0, 0))[0]
            turned = int(image.getexif().get(0x0112, 1))
            image.load()
            picture = ImageOps.exif_transpose(_crop(image, area)) if turned != 1 else _crop(image, area)
            before = max(picture.size)
            picture = _in_eight_bits(picture)
            if longest:
                picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=3.0)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise CouldNot(f"{path.name} is damaged and cannot be read.", "Scan it again if you can.") from error
    more: dict[str, object] = {"icc_profile": profile} if profile else {}
    if ppi and not math.isnan(float(ppi)):
        scaled = max(1, round(float(ppi) * max(picture.size) / before))
        more["dpi"] = (scaled, scaled)
    out = io.BytesIO()
    picture.save(out, "JPEG", quality=quality, **more)
    return ForUse(out.getvalue(), *picture.size, turned if 1 <= turned <= 8 else 1)


def _in_eight_bits(image: Image.Image) -> Image.Image:
    """The picture as JPEG can hold it, colours not converted where the profile is to stay right."""
    if image.mode.startswith("I;16") or image.mode == "I":
        image = image.point(lambda value: value * (1 / 256)).convert("L")
    if image.mode in ("RGBA", "LA", "PA") or "transparency" in image.info:
        white = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(white, image.convert("RGBA"))
    plain = image if image.mode in ("L", "RGB", "CMYK") else image.convert("L" if image.mode in ("1", "F") else "RGB")
    plain.info = {}
    return plain


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
