"""The door to what looks at pictures: the optional extra `see`, which is loaded only where somebody asks for it."""

from pathlib import Path

from boxlore.core.errors import CouldNot
from boxlore.disk.outlines import LONGEST, LONGEST_OF_HEADS, Found, Head
from boxlore.disk.pictures import read_header, small_pixels

BY_TABLE = (
    "draw them by hand (boxlore intake --find-prints hand), or give the parts by a table "
    "(boxlore intake --example-table)"
)


def need_eyes(does: str = "finds prints in a picture", instead: str = BY_TABLE) -> None:
    """Raises CouldNot, saying what to do, where the extra is not installed."""
    try:
        import cv2  # noqa: F401
        import numpy  # noqa: F401
    except ImportError as error:
        raise CouldNot(
            f"The part that {does} is not installed.", f"Install it (`pip install boxlore[see]`), or {instead}."
        ) from error


def outlines_in(path: Path) -> Found:
    """The outlines of the prints in a picture's file, and what is in doubt about them. Raises CouldNot."""
    need_eyes()
    import numpy as np

    from boxlore.disk.print_outlines import find_outlines

    wide, high, data = small_pixels(path, LONGEST, LONGEST)
    return find_outlines(np.frombuffer(data, np.uint8).reshape(high, wide, 3))


def heads_in(path: Path, *, area: tuple[float, ...] = (), turn: int = 0) -> list[Head]:
    """The faces in a picture's file, or in the part of it, set upright and turned as in `pictures.make_jpeg`; nothing
    but their places. Raises CouldNot."""
    need_eyes("looks for heads", "set the markers by hand")
    import numpy as np

    from boxlore.disk.heads import find_heads

    header = read_header(path)
    part = area[2:4] or (1.0, 1.0)
    longest = min(LONGEST_OF_HEADS, max(1, round(max(header.width * part[0], header.height * part[1]))))
    wide, high, data = small_pixels(path, longest, longest, area=area, turn=turn)
    grey = np.frombuffer(data, np.uint8).reshape(high, wide, 3).mean(-1).astype(np.uint8)
    return find_heads(grey)
