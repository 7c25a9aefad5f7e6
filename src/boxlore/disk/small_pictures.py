"""A picture fitted into a few pixels, as plain bytes, for a screen made of letters."""

import io
from pathlib import Path

from PIL import Image

from boxlore.disk.pictures import make_jpeg

ORIENTATION = 274


def pixels(path: Path, wide: int, high: int, *, area: tuple[float, ...] = ()) -> tuple[int, int, bytes]:
    """(width, height, RGB bytes), upright, at most `wide` × `high` and of the picture's own shape.

    Raises CouldNot for what cannot be shown as a picture.
    """
    small = make_jpeg(path, 2 * max(wide, high), area=area, quality=92)
    with Image.open(io.BytesIO(small)) as image:
        scale = min(wide / image.width, high / image.height)
        size = (max(1, round(image.width * scale)), max(1, round(image.height * scale)))
        fitted = image.convert("RGB").resize(size, Image.Resampling.LANCZOS)
    return fitted.width, fitted.height, fitted.tobytes()


def turn_of(path: Path) -> int:
    """How the picture must be turned to stand upright (Exif orientation, 1 to 8); 1 where nothing is said."""
    try:
        with Image.open(path) as image:
            said = image.getexif().get(ORIENTATION, 1)
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        return 1
    return said if isinstance(said, int) and 1 <= said <= 8 else 1
