"""Taking the place of capture out of bytes whose format we do not read: a HEIC, a JPEG 2000, what follows a JPEG.

The place where a file was made is often somebody's home. So every Exif block in such bytes has its GPS directory
emptied, and in a film's location atom (`©xyz`, ISO 6709 text; QuickTime File Format) every figure becomes 0, by
patches of the same length. A file that holds a place in another way is refused.
"""

import re
from collections.abc import Iterator
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif
from boxlore.formats.binary import read_at

CLAUSE = "Exif, CIPA DC-008, 4.6.6"
WINDOW, OVERLAP, MOST_BLOCK = 4 << 20, 256, 1 << 18

_PLACES = re.compile(
    rb"Exif\x00\x00(?=II\*\x00|MM\x00\*)|\xa9xyz....(?P<film>[+-][0-9.]+[+-][0-9.]+)|GPSL(?:at|ong)itude", re.DOTALL
)


def patches(file: BinaryIO, start: int, end: int) -> list[tuple[int, bytes]]:
    """(offset in the file, new bytes) for every place of capture between two offsets, sorted.

    Raises ByteFault for a place that no patch can take out.
    """
    return sorted(dict(_patches(file, start, end)).items())


def _patches(file: BinaryIO, start: int, end: int) -> Iterator[tuple[int, bytes]]:
    """The patches window by window; windows overlap, so that a mark on the border of two is seen whole."""
    at, block_from = start, start
    while at < end:
        window = read_at(file, at, min(WINDOW + OVERLAP, end - at), CLAUSE)
        for match in _PLACES.finditer(window):
            if match.start() >= WINDOW or at + match.start() < block_from:
                continue  # it belongs to the next window, or stands before an Exif block that is done
            if match["film"]:
                figures_at = match.start("film")
                yield at + figures_at, re.sub(rb"[0-9]", b"0", match["film"])
            elif match[0].startswith(b"GPS"):
                raise ByteFault(at + match.start(), "It says where it was made in a way that cannot be emptied", CLAUSE)
            else:
                block = at + match.end()
                block_from = block
                for patch_at, new_bytes in _emptied(read_at(file, block, min(MOST_BLOCK, end - block), CLAUSE)):
                    yield block + patch_at, new_bytes
        at += WINDOW


def _emptied(data: bytes) -> list[exif.Patch]:
    try:
        return exif.patches(exif.block(data), Embedding())
    except ByteFault:
        return []  # it is no Exif, so no reader finds a place in it
