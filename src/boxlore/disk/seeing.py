"""The door to what looks at pictures: the optional extra `see`, which is loaded only where somebody asks for it."""

from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.disk.outlines import LONGEST, Quad
from boxlore.disk.pictures import small_pixels


def need_eyes() -> None:
    """Raises CouldNot, saying what to do, where the extra is not installed."""
    try:
        import cv2  # noqa: F401
        import numpy  # noqa: F401
    except ImportError as error:
        raise CouldNot(
            "The part that finds prints in a picture is not installed.",
            "Install it (`pip install boxlore[see]`), or give the parts by a table: intake --example-table shows one.",
        ) from error


def outlines_in(path: Path) -> list[Quad]:
    """The outlines of the prints in a picture's file, in the order of reading. Raises CouldNot."""
    need_eyes()
    import numpy as np

    from boxlore.disk.print_outlines import find_outlines

    wide, high, data = small_pixels(path, LONGEST, LONGEST)
    return find_outlines(np.frombuffer(data, np.uint8).reshape(high, wide, 3))
