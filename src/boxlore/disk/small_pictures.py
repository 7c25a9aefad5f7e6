"""A picture reduced to a few pixels, as plain bytes, to be drawn in a terminal."""

import io
from pathlib import Path

from PIL import Image

from boxlore.disk.pictures import make_jpeg

ORIENTATION = 274


def pixels(path: Path, wide: int, high: int, *, area: tuple[float, ...] = ()) -> tuple[int, int, bytes]:
    """(width, height, RGB bytes) of the upright picture, at most `wide` by `high` pixels, its shape kept.

    `area` is as in `pictures.make_jpeg`. Raises CouldNot for a file that cannot be read as a picture.
    """
    small = make_jpeg(path, 2 * max(wide, high), area=area, quality=92)
    with Image.open(io.BytesIO(small)) as image:
        scale = min(wide / image.width, high / image.height)
        size = (max(1, round(image.width * scale)), max(1, round(image.height * scale)))
        fitted = image.convert("RGB").resize(size, Image.Resampling.LANCZOS)
    return fitted.width, fitted.height, fitted.tobytes()


def turn_of(path: Path) -> int:
    """The Exif orientation of a picture (1 to 8); 1 (upright) where none is given or the file cannot be read."""
    try:
        with Image.open(path) as image:
            orientation = image.getexif().get(ORIENTATION, 1)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        return 1
    return orientation if isinstance(orientation, int) and 1 <= orientation <= 8 else 1
