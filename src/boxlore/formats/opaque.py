"""Bytes that we do not read as a format (what stands behind a JPEG's picture, a HEIC, a JPEG 2000): their places.

Where the file was made is somebody's home, so every Exif block found in such a run has its GPS directory emptied,
and a film's location atom (`©xyz`, ISO 6709 text; QuickTime File Format) its figures set to nought; all by patches
of the same length. A place that stands there in another way refuses the file.
"""

import re
from collections.abc import Iterator
from typing import BinaryIO

from boxlore.core.crosswalk.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif
from boxlore.formats.binary import read_at

CLAUSE = "Exif, CIPA DC-008, 4.6.6"
WINDOW, OVERLAP, MOST_BLOCK = 4 << 20, 256, 1 << 18

_PLACES = re.compile(
    rb"Exif\x00\x00(?=II\*\x00|MM\x00\*)|\xa9xyz....(?P<film>[+-][0-9.]+[+-][0-9.]+)|GPSL(?:at|ong)itude", re.DOTALL
)


def patches(file: BinaryIO, start: int, end: int) -> list[tuple[int, bytes]]:
    """(offset in the file, new bytes) for every place of capture in a run. Raises ByteFault for one left over."""
    return sorted(dict(_found(file, start, end)).items())


def _found(file: BinaryIO, start: int, end: int) -> Iterator[tuple[int, bytes]]:
    at, begun = start, start
    while at < end:
        window = read_at(file, at, min(WINDOW + OVERLAP, end - at), CLAUSE)
        for match in _PLACES.finditer(window):
            if match.start() >= WINDOW or at + match.start() < begun:
                continue  # the next window sees it whole; the last has seen it
            if match["film"]:
                where = match.start("film")
                yield at + where, re.sub(rb"[0-9]", b"0", match["film"])
            elif match[0].startswith(b"GPS"):
                raise ByteFault(at + match.start(), "It says where it was made in a way that cannot be emptied", CLAUSE)
            else:
                block = at + match.end()
                begun = block
                for inner, new in _emptied(read_at(file, block, min(MOST_BLOCK, end - block), CLAUSE)):
                    yield block + inner, new
        at += WINDOW


def _emptied(data: bytes) -> list[exif.Patch]:
    try:
        return exif.patches(exif.block(data), Embedding())
    except ByteFault:
        return []  # nobody can read it as Exif either
