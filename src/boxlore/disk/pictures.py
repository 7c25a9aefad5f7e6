"""Pictures read with Pillow: size and pixel format, JPEGs for print or screen, and a hash of the look.

Nothing here writes to a scan. Every picture returned is newly encoded, without the scan's metadata.
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
class PictureHeader:
    """From a picture's header: width and height in pixels as stored, pixels an inch (0 if not given), media type."""

    width: int
    height: int
    ppi: float
    media_type: str


HEIF_BRANDS = (b"heic", b"heix", b"hevc", b"mif1", b"msf1", b"heim", b"heis")
"""Brands of a `ftyp` box (ISO/IEC 23008-12)."""


def _is_heif(path: Path) -> bool:
    """Whether the file begins with a `ftyp` box of a HEIF brand."""
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
    """Open a HEIC with the optional library for it. Raises CouldNot if that is not installed."""
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
    """The size of a HEIC in pixels: the largest of its image extents (ISO/IEC 23008-12, 6.5.3); else None."""
    try:
        if not _is_heif(path):
            return None
        with open(path, "rb") as file:
            extents = _EXTENT.findall(file.read(1 << 20))
    except OSError:
        return None  # opening it, which follows, raises with the reason
    sizes = [(int.from_bytes(across, "big"), int.from_bytes(down, "big")) for across, down in extents]
    return max(sizes, default=None, key=lambda size: size[0] * size[1])


def read_header(path: Path) -> PictureHeader:
    """Read the header alone. Raises CouldNot for a file that is no picture."""
    if (size := _heif_size(path)) is not None:
        return PictureHeader(*size, 0.0, "image/heic")
    with _open(path) as image:
        ppi = image.info.get("dpi", (0, 0))[0]
        width, height = image.size
        kind = MEDIA_TYPES.get(image.format or "", f"image/{(image.format or 'unknown').lower()}")
    return PictureHeader(width, height, 0.0 if not ppi or math.isnan(float(ppi)) else round(float(ppi), 2), kind)


@dataclass(frozen=True, slots=True)
class PixelFormat:
    """From the header: bits a channel, number of channels, whether it has a colour profile, and the Exif orientation.

    The orientation is 1 to 8, and 0 where none is given.
    """

    bits: int
    colours: int
    profile: bool
    orientation: int


def read_pixel_format(path: Path) -> PixelFormat:
    """Read the header alone. Raises CouldNot for a file that is no picture."""
    with _open(path) as image:
        bits_tag = image.tag_v2.get(258) if isinstance(image, TiffImagePlugin.TiffImageFile) else None
        bits = bits_tag[0] if isinstance(bits_tag, tuple) and bits_tag else bits_tag
        if not isinstance(bits, int):
            bits = 1 if image.mode == "1" else 16 if image.mode.startswith("I;16") else 8
        try:
            orientation = int(image.getexif().get(274) or 0)
        except (OSError, ValueError, SyntaxError):  # a damaged Exif block gives no orientation
            orientation = 0
        return PixelFormat(bits, len(image.getbands()), bool(image.info.get("icc_profile")), orientation)


def make_jpeg(
    path: Path, longest: int, *, area: tuple[float, ...] = (), quality: int = 88, upright: bool = True
) -> bytes:
    """A JPEG in sRGB or grey, at most `longest` pixels on its longer side, without colour profile or metadata.

    `area` is the part to show: x, y, width, height as fractions (0 to 1) of the stored picture; empty for all of it.
    Raises CouldNot for a damaged picture.
    """
    try:
        with _open(path) as image:
            if not area:  # a JPEG can be decoded at a fraction of its size, which is quicker
                part = longest / max(image.size)
                image.draft(None, (math.ceil(image.width * part), math.ceil(image.height * part)))
            image.load()
            picture = _crop(image, area)
            picture = ImageOps.exif_transpose(picture) if upright else picture
            picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=2.0)
            picture = _to_srgb(picture)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise CouldNot(f"{path.name} is damaged and cannot be shown.", "Scan it again if you can.") from error
    encoded = io.BytesIO()
    picture.save(encoded, "JPEG", quality=quality)
    return encoded.getvalue()


@dataclass(frozen=True, slots=True)
class UprightJpeg:
    """A newly encoded JPEG that stands upright: its bytes, its size in pixels, and the scan's Exif orientation."""

    data: bytes
    width: int
    height: int
    orientation: int


def make_upright_jpeg(path: Path, longest: int = 0, *, area: tuple[float, ...] = (), quality: int = 92) -> UprightJpeg:
    """An upright JPEG, at most `longest` pixels on its longer side (0: not scaled), with the scan's colour profile.

    `area` is as in `make_jpeg`. Raises CouldNot for a damaged picture.
    """
    try:
        with _open(path) as image:
            profile = image.info.get("icc_profile")
            ppi = image.info.get("dpi", (0, 0))[0]
            orientation = int(image.getexif().get(0x0112, 1))
            image.load()
            picture = ImageOps.exif_transpose(_crop(image, area)) if orientation != 1 else _crop(image, area)
            full_length = max(picture.size)
            picture = _in_eight_bits(picture)
            if longest:
                picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=3.0)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError) as error:
        raise CouldNot(f"{path.name} is damaged and cannot be read.", "Scan it again if you can.") from error
    options: dict[str, object] = {"icc_profile": profile} if profile else {}
    if ppi and not math.isnan(float(ppi)):
        scaled = max(1, round(float(ppi) * max(picture.size) / full_length))
        options["dpi"] = (scaled, scaled)
    encoded = io.BytesIO()
    picture.save(encoded, "JPEG", quality=quality, **options)
    return UprightJpeg(encoded.getvalue(), *picture.size, orientation if 1 <= orientation <= 8 else 1)


def _in_eight_bits(image: Image.Image) -> Image.Image:
    """The picture in a mode that JPEG has. Colours are not converted, so that the colour profile stays right."""
    if image.mode.startswith("I;16") or image.mode == "I":
        image = image.point(lambda value: value * (1 / 256)).convert("L")
    if image.mode in ("RGBA", "LA", "PA") or "transparency" in image.info:
        white = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(white, image.convert("RGBA"))
    plain = image if image.mode in ("L", "RGB", "CMYK") else image.convert("L" if image.mode in ("1", "F") else "RGB")
    plain.info = {}
    return plain


def _crop(image: Image.Image, area: tuple[float, ...]) -> Image.Image:
    """The part of the picture, at least one pixel wide and high; all of it for an empty area."""
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
    """The picture in sRGB or grey, converted by its colour profile where it has a usable one."""
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
    """A difference hash of the picture: 64 bits, each saying which of two neighbouring spots is brighter.

    The picture is reduced to 9 by 8 grey spots. Two prints of the same picture differ in few bits; see `bits_apart`.
    """
    with _open(path) as image:
        image.draft("L", (64, 64))
        small = image.convert("L").resize((9, 8), Image.Resampling.BOX)
        pixels = small.tobytes()
    bits = 0
    for row in range(8):
        for column in range(8):
            left, right = pixels[row * 9 + column], pixels[row * 9 + column + 1]
            bits = bits << 1 | (left > right)
    return bits


def bits_apart(first_hash: int, second_hash: int) -> int:
    """In how many of the 64 bits two hashes differ."""
    return (first_hash ^ second_hash).bit_count()
