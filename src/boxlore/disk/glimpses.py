"""A picture fitted into a few pixels, as plain bytes, for a screen made of letters."""

import io
from pathlib import Path

from PIL import Image

from boxlore.disk.pictures import make_jpeg


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
