"""Rows of a large uncompressed TIFF, read where they lie in the file: its whole is never in memory.

Archives keep their largest scans so (TIFF 6.0, section 3: strips of whole rows, one behind the other or apart). What
is packed, laid in tiles, or in planes apart, is decoded as a whole by Pillow.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import BinaryIO

from PIL import Image, ImageFile, TiffImagePlugin

from boxlore.core.errors import CouldNot

_BYTES = {"L": 1, "RGB": 3, "RGBA": 4, "RGBX": 4, "CMYK": 4, "RGB;16L": 6, "RGB;16B": 6}
"""Bytes of a pixel in the file, by Pillow's name of how it lies there."""

Box = tuple[int, int, int, int]
"""Left, top, right, bottom in pixels."""


@dataclass(frozen=True, slots=True)
class _Strip:
    """Whole rows, from `first` to before `end`, plainly in the file from `offset` on."""

    first: int
    end: int
    offset: int
    raw_mode: str


def _strip_of(tile: ImageFile._Tile, width: int) -> _Strip | None:
    """A piece of a picture as Pillow found it; None where it is packed, or no strip of whole rows."""
    if tile.codec_name != "raw" or tile.extents is None or not isinstance(tile.args, tuple):
        return None
    raw_mode, gap, order = tile.args
    left, first, right, end = tile.extents
    is_plain = (left, right) == (0, width) and not gap and order == 1
    return _Strip(first, end, tile.offset, raw_mode) if is_plain else None


def rows_in_place(image: Image.Image, file: BinaryIO) -> Callable[[Box], Image.Image] | None:
    """What reads a part of a picture that was opened and not loaded; None where its rows do not lie plainly.

    `file` is the picture's own, read as long as what is returned is used.
    """
    if not isinstance(image, TiffImagePlugin.TiffImageFile):
        return None
    strips = [strip for tile in image.tile if (strip := _strip_of(tile, image.width)) is not None]
    raw_modes = {strip.raw_mode for strip in strips}
    if not strips or len(strips) != len(image.tile) or len(raw_modes) != 1 or not raw_modes <= _BYTES.keys():
        return None
    (raw_mode,) = raw_modes
    mode, width, length = image.mode, image.width, image.width * _BYTES[raw_mode]
    info = dict(image.info)

    def cut(box: Box) -> Image.Image:
        """The part within a box. Raises CouldNot where the file ends before it."""
        left, top, right, bottom = box
        data = bytearray((bottom - top) * length)
        filled, room = 0, memoryview(data)
        for strip in strips:
            start, stop = max(strip.first, top), min(strip.end, bottom)
            if start < stop:
                file.seek(strip.offset + (start - strip.first) * length)
                piece, at = file.read((stop - start) * length), (start - top) * length
                room[at : at + len(piece)] = piece
                filled += len(piece)
        if filled < len(data):
            raise CouldNot("The file ends before its picture does.", "Copy it again from where it comes.")
        rows = Image.frombytes(mode, (width, bottom - top), data, "raw", raw_mode)
        rows.info = dict(info)
        return rows if (left, right) == (0, width) else rows.crop((left, 0, right, bottom - top))

    return cut
