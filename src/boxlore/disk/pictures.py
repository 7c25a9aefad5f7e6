"""Pictures read with Pillow: size and pixel format, JPEGs for print or screen, and a hash of the look.

Nothing here writes to a scan. Every picture returned is newly encoded, without the scan's metadata.
"""

import io
import math
import re
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from PIL import Image, TiffImagePlugin

from boxlore.core.errors import CouldNot
from boxlore.core.fields.quads import corners_of, mapping_of
from boxlore.core.records.marker_positions import turned_by
from boxlore.disk.colour_modes import in_plain_mode, in_srgb, on_white
from boxlore.disk.decoding import SURELY_FITS, is_heif, load, opened, refuse_too_many_pixels
from boxlore.disk.previews import LONGEST, SLOW, Previews
from boxlore.disk.regular_file import open_regular
from boxlore.disk.rows_in_place import Box, rows_in_place

MEDIA_TYPES = {
    "JPEG": "image/jpeg",
    "MPO": "image/jpeg",  # a JPEG with further pictures behind it
    "TIFF": "image/tiff",
    "PNG": "image/png",
    "WEBP": "image/webp",
    "JPEG2000": "image/jp2",
    "PSD": "image/vnd.adobe.photoshop",
}
ORIENTATION = 274
"""The tag of the orientation (Exif 3.0, 4.6.4, table 4)."""

FLAT = 8
"""A picture whose spots differ by less, of 255, is blank. Common practice, no source."""

_TURNS = {
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_270,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_90,
}
"""What sets a picture of each Exif orientation upright (Exif 3.0, 4.6.5.1.5)."""


@dataclass(frozen=True, slots=True)
class PictureHeader:
    """From a picture's header: width and height in pixels as stored, pixels an inch (0 if not given), media type, and
    the Exif orientation (1 if none is given)."""

    width: int
    height: int
    ppi: float
    media_type: str
    orientation: int = 1


_EXTENT = re.compile(rb"\x00\x00\x00\x14ispe\x00\x00\x00\x00(.{4})(.{4})", re.DOTALL)
_TURN = re.compile(rb"\x00\x00\x00\x09irot(.)", re.DOTALL)


def _heif_size(path: Path) -> tuple[int, int] | None:
    """The size of a HEIC in pixels as every reader shows it: the largest of its image extents (ISO/IEC 23008-12,
    6.5.3), turned by its quarter turns (6.5.10), which all images of a file share; None for another file."""
    try:
        if not is_heif(path):
            return None
        with open_regular(path) as file:
            boxes = file.read(1 << 20)
    except OSError:
        return None  # opening it, which follows, raises with the reason
    sizes = [(int.from_bytes(across, "big"), int.from_bytes(down, "big")) for across, down in _EXTENT.findall(boxes)]
    size = max(sizes, default=None, key=lambda size: size[0] * size[1])
    turn = _TURN.search(boxes)
    return size[::-1] if size and turn and turn[1][0] & 1 else size


def read_header(path: Path) -> PictureHeader:
    """Read the header alone. Raises CouldNot for a file that is no picture."""
    if (size := _heif_size(path)) is not None:
        refuse_too_many_pixels(path, *size)
        return PictureHeader(*size, 0.0, "image/heic")
    with opened(path) as image:
        kind = MEDIA_TYPES.get(image.format or "", f"image/{(image.format or 'unknown').lower()}")
        return PictureHeader(image.width, image.height, round(_ppi(image), 2), kind, _orientation(image) or 1)


def _ppi(image: Image.Image) -> float:
    """Pixels an inch by the header; 0 where it gives none that can be."""
    try:
        ppi = float(image.info.get("dpi", (0, 0))[0])
    except (TypeError, ValueError, IndexError, ZeroDivisionError, OverflowError):
        return 0.0
    return ppi if math.isfinite(ppi) and ppi > 0 else 0.0


def _orientation(image: Image.Image) -> int:
    """The Exif orientation, 1 to 8; 0 where none is given or the Exif block is damaged."""
    try:
        orientation = int(image.getexif().get(ORIENTATION) or 0)
    except Exception:  # noqa: BLE001  # a damaged Exif block raises anything, and takes nothing from the picture
        return 0
    return orientation if 1 <= orientation <= 8 else 0


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
    with opened(path) as image:
        bits_tag = image.tag_v2.get(258) if isinstance(image, TiffImagePlugin.TiffImageFile) else None
        bits = bits_tag[0] if isinstance(bits_tag, tuple) and bits_tag else bits_tag
        if not isinstance(bits, int):
            bits = 1 if image.mode == "1" else 16 if image.mode.startswith("I;16") else 8
        return PixelFormat(bits, len(image.getbands()), bool(image.info.get("icc_profile")), _orientation(image))


def turn_of(path: Path) -> int:
    """The Exif orientation of a picture (1 to 8); 1 (upright) where none is given or the file cannot be read."""
    try:
        with opened(path) as image:
            return _orientation(image) or 1
    except CouldNot:
        return 1


def make_jpeg(
    path: Path,
    longest: int,
    *,
    area: tuple[float, ...] = (),
    turn: int = 0,
    quality: int = 88,
    previews: Previews | None = None,
) -> bytes:
    """A JPEG in sRGB or grey, at most `longest` pixels on its longer side, without colour profile or metadata.

    `area` is the part to show: x, y, width, height as fractions (0 to 1) of the stored picture, and of what lies aslant
    its corners, between which it is straightened (see `core.fields.quads`); empty for all of it. It is set upright as
    its file asks, and then turned by `turn` degrees to the right. For a screen a preview of `previews` may stand in for
    the file. Raises CouldNot for a damaged picture.
    """
    return make_jpegs(path, ((longest, quality),), area=area, turn=turn, previews=previews)[0]


def make_jpegs(
    path: Path,
    sizes: Sequence[tuple[int, int]],
    *,
    area: tuple[float, ...] = (),
    turn: int = 0,
    previews: Previews | None = None,
) -> list[bytes]:
    """The same in several sizes, the largest first, each with its quality; the picture is decoded once."""
    made = []
    with _shown(path, sizes[0][0], area, turn, previews) as picture:
        for longest, quality in sizes:
            picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=1.5)
            encoded = io.BytesIO()
            picture.save(encoded, "JPEG", quality=quality)
            made.append(encoded.getvalue())
    return made


@contextmanager
def _shown(
    path: Path, longest: int, area: tuple[float, ...], turn: int, previews: Previews | None
) -> Iterator[Image.Image]:
    """The picture, or the part of it, as `make_jpeg` has it, before it is encoded; the block is guarded too."""
    if previews is not None:
        path = previews.instead_of(path, longest, area)
    with opened(path, "is damaged and cannot be shown") as image:
        left, top, right, bottom = _box(image, area)
        part = longest / max(right - left, bottom - top)  # a JPEG can be decoded at a fraction of its size: quicker
        image.draft(None, (math.ceil(image.width * part), math.ceil(image.height * part)))
        picture = _small_part(path, image, area, longest, previews)  # not every mode can be scaled
        picture = _turned(_straightened(picture, area), turned_by(_orientation(image), turn))
        picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=2.0)
        yield in_srgb(picture)


def small_pixels(
    path: Path,
    wide: int,
    high: int,
    *,
    area: tuple[float, ...] = (),
    turn: int = 0,
    previews: Previews | None = None,
) -> tuple[int, int, bytes]:
    """(width, height, RGB bytes) of the upright picture, at most `wide` by `high` pixels, its shape kept.

    `area`, `turn` and `previews` are as in `make_jpeg`. Raises CouldNot for a file that cannot be read as a picture.
    """
    with _shown(path, 2 * max(wide, high), area, turn, previews) as picture:
        scale = min(wide / picture.width, high / picture.height)
        size = (max(1, round(picture.width * scale)), max(1, round(picture.height * scale)))
        fitted = picture.convert("RGB").resize(size, Image.Resampling.LANCZOS)
        return fitted.width, fitted.height, fitted.tobytes()


@dataclass(frozen=True, slots=True)
class UprightJpeg:
    """A newly encoded JPEG that stands upright: its bytes, its size in pixels, and the orientation that it had before:
    the scan's own by Exif, with the turn that was asked for."""

    data: bytes
    width: int
    height: int
    orientation: int


def make_upright_jpeg(
    path: Path, longest: int = 0, *, area: tuple[float, ...] = (), turn: int = 0, quality: int = 92
) -> UprightJpeg:
    """An upright JPEG, at most `longest` pixels on its longer side (0: not scaled), with the scan's colour profile.

    `area` and `turn` are as in `make_jpeg`. Raises CouldNot for a damaged picture.
    """
    with opened(path, "is damaged and cannot be read") as image:
        ppi = _ppi(image)
        orientation = turned_by(_orientation(image), turn)
        load(path, image)
        left, _, right, _ = _box(image, area)
        part = _plain_part(image, area, longest)
        straight = _straightened(part, area)
        full_length = max(straight.size) * (right - left) / part.width  # of the print, which the box around it is not
        picture = on_white(_turned(straight, orientation))
        profile = picture.info.get("icc_profile")
        picture.info = {}
        if longest:
            picture.thumbnail((longest, longest), Image.Resampling.LANCZOS, reducing_gap=3.0)
        options: dict[str, object] = {"icc_profile": profile} if profile else {}
        if ppi:
            scaled = min(max(1, round(ppi * max(picture.size) / full_length)), 65_535)  # 16 bits in a JFIF header
            options["dpi"] = (scaled, scaled)
        encoded = io.BytesIO()
        picture.save(encoded, "JPEG", quality=quality, **options)
        return UprightJpeg(encoded.getvalue(), *picture.size, orientation)


def _straightened(picture: Image.Image, area: tuple[float, ...]) -> Image.Image:
    """What lies between the corners of a part that was cut out, as if it had lain straight; any other part as it is."""
    if len(area) != 12:
        return picture
    left, top, wide, high = area[:4]
    within = [(min(max((x - left) / wide, 0), 1), min(max((y - top) / high, 0), 1)) for x, y in corners_of(area[4:])]
    places = [(x * picture.width, y * picture.height) for x, y in within]
    sides = [math.dist(places[at], places[at - 3]) for at in range(4)]
    width, height = max(1, round(max(sides[0], sides[2]))), max(1, round(max(sides[1], sides[3])))
    a, b, c, d, e, f, g, h = mapping_of([part for place in places for part in place])
    told = (a / width, b / height, c, d / width, e / height, f, g / width, h / height)
    info = picture.info
    straight = picture.transform((width, height), Image.Transform.PERSPECTIVE, told, Image.Resampling.BICUBIC)
    straight.info = info
    return straight


def _turned(image: Image.Image, orientation: int) -> Image.Image:
    """The picture upright. Exif's own orientations, as a damaged Exif block is no reason not to show a picture."""
    turn = _TURNS.get(orientation)
    return image.transpose(turn) if turn is not None else image


def _box(image: Image.Image, area: tuple[float, ...]) -> tuple[int, int, int, int]:
    """Left, top, right and bottom of the part in pixels, at least one wide and high; of all for an empty area."""
    if not area:
        return (0, 0, image.width, image.height)
    x, y, w, h = area[:4]
    left, top = round(x * image.width), round(y * image.height)
    return left, top, max(round((x + w) * image.width), left + 1), max(round((y + h) * image.height), top + 1)


_QUICK = frozenset({"JPEG", "MPO"})
"""Formats that are decoded at a part of their size: they open at once as they are."""
_IN_BANDS = frozenset({"1", "L", "LA", "P", "PA", "RGB", "RGBA", "CMYK", "YCbCr"})
"""Modes whose pixels become plain ones by themselves, whatever the rest of the picture holds."""
BAND = 16_000_000
"""Pixels of a band."""
BAND_IN_PLACE = 1_000_000
"""The same of a band that is read from the file: so few stay in the processor's cache."""


def _small_part(
    path: Path, image: Image.Image, area: tuple[float, ...], longest: int, previews: Previews | None
) -> Image.Image:
    """The same of a picture that is not loaded yet. Of a large one, only the rows that are looked at are read, if they
    lie plainly in the file; of one that must be decoded whole a preview is kept."""
    if image.width * image.height > SURELY_FITS:
        with open_regular(path) as file:
            if (cut := rows_in_place(image, file)) is not None:
                return _plain_part(image, area, longest, cut)
    load(path, image)
    _keep_preview(path, image, previews)
    return _plain_part(image, area, longest)


def _keep_preview(path: Path, image: Image.Image, previews: Previews | None) -> None:
    """Keep a preview of a very large picture that is loaded. It lies as the file does, and says how it is turned."""
    if previews is None or image.width * image.height < SLOW or image.format in _QUICK:
        return
    orientation = _orientation(image)
    small = _plain_part(image, (), LONGEST)
    small.thumbnail((LONGEST, LONGEST), Image.Resampling.LANCZOS, reducing_gap=2.0)
    small = in_srgb(small)
    exif = Image.Exif()
    if orientation:
        exif[ORIENTATION] = orientation
    previews.keep(path, lambda out: small.save(out, "JPEG", quality=90, exif=exif))


def _plain_part(
    image: Image.Image, area: tuple[float, ...], longest: int, cut: Callable[[Box], Image.Image] | None = None
) -> Image.Image:
    """The part of the picture in a plain mode (see `modes`). Where much more than `longest` pixels are there, a large
    one is reduced band by band, to twice as many at least, so that no second picture of its size fills the memory.
    `cut` gives a part of a picture that is not loaded.
    """
    left, top, right, bottom = _box(image, area)
    factor = max(right - left, bottom - top) // (2 * longest) if longest else 1
    if factor < 2 or image.mode not in _IN_BANDS or image.width * image.height <= SURELY_FITS:
        whole_of_it = cut is None and (left, top, right, bottom) == (0, 0, *image.size)
        return in_plain_mode(image if whole_of_it else (cut or image.crop)((left, top, right, bottom)))
    rows = max((BAND_IN_PLACE if cut else BAND) // image.width // factor, 1) * factor
    cut = cut or image.crop
    whole: Image.Image | None = None
    for at in range(top, bottom, rows):
        plain = in_plain_mode(cut((left, at, right, min(at + rows, bottom))))
        band = plain.reduce(factor)
        if whole is None:
            whole = Image.new(band.mode, (band.width, math.ceil((bottom - top) / factor)))
            whole.info = dict(plain.info)
        whole.paste(band, (0, (at - top) // factor))
    assert whole is not None  # a box is at least a pixel high
    return whole


def looks_hash(path: Path, previews: Previews | None = None) -> int:
    """A difference hash of the picture: 64 bits, each saying which of two neighbouring spots is brighter.

    The picture is reduced to 9 by 8 grey spots; a blank one, whose spots hardly differ, has 0. Two
    prints of the same picture differ in few bits; see `bits_apart`. All bytes of the picture are decoded for it, and
    every page of a TIFF, so that this is also where a damaged file is found: raises Damaged for one, CouldNot where
    the machine cannot read it. Of a very large one a preview is kept in `previews`.
    """
    with opened(path) as image:
        image.draft("L", (64, 64))
        load(path, image)
        _keep_preview(path, image, previews)
        small = _plain_part(image, (), 256).convert("L").resize((9, 8), Image.Resampling.BOX)
        pixels = small.tobytes()
        for page in range(1, image.n_frames if isinstance(image, TiffImagePlugin.TiffImageFile) else 1):
            image.seek(page)
            refuse_too_many_pixels(path, image.width, image.height)
            load(path, image)
    if max(pixels) - min(pixels) < FLAT:
        return 0
    bits = 0
    for row in range(8):
        for column in range(8):
            left, right = pixels[row * 9 + column], pixels[row * 9 + column + 1]
            bits = bits << 1 | (left > right)
    return bits


def bits_apart(first_hash: int, second_hash: int) -> int:
    """In how many of the 64 bits two hashes differ."""
    return (first_hash ^ second_hash).bit_count()
