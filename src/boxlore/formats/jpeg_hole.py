"""Whether a JPEG has a hole: bytes within its picture that became zeros, as where a disk or a card lost a sector.

Every decoder goes on behind such a hole, and paints what follows in wrong colours without a word that reaches us. Two
things tell of it in the data of a sequential picture (ITU-T T.81, F.1 and F.2):

- Zeros are codes like others. The code of zeros alone is the first of its table (C.2). Where it is that of the end of a
  block, zeros are blank blocks, and many may be so. In any other table they are 63 coefficients of -1 in block upon
  block, which is no picture.
- Restart markers count from 0 to 7 and begin again (E.1.4). Where one is left out, data are missing.

A progressive picture is not judged, for its later scans may hold zeros (G.1.2).
"""

import mmap
import re
from typing import BinaryIO

from boxlore.core.errors import ByteFault
from boxlore.formats import jpeg

ZEROS = bytes(64)
"""So many zeros would be some three blocks of nothing but -1."""
_DHT, _SEQUENTIAL = 0xC4, (0xC0, 0xC1)
_RESTART = re.compile(rb"\xff([\xd0-\xd7])")


def has_hole(file: BinaryIO) -> bool:
    """Whether bytes within the first scan of a sequential JPEG cannot be those of a picture; False for another file."""
    try:
        segments, at = jpeg.split(file)
    except ByteFault:
        return False
    if not any(segment.marker in _SEQUENTIAL for segment in segments):
        return False
    with mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ) as data:
        start = at + 2 + int.from_bytes(data[at + 2 : at + 4], "big")
        end = next((behind for _, behind in jpeg.markers_behind(file, start)), len(data))
        restarts = [match[1][0] & 7 for match in _RESTART.finditer(data, start, end)]
        if any(number != count % 8 for count, number in enumerate(restarts)):
            return True
        firsts = _first_symbols(segments)
        used = {table & 0x0F for table in data[at + 6 : start - 3 : 2]}  # behind each component's name (B.2.3)
        zeros_are_blank = all(firsts.get(table, 0) == 0 for table in used)
        return not zeros_are_blank and data.find(ZEROS, start, end) >= 0


def _first_symbols(segments: list[jpeg.Segment]) -> dict[int, int]:
    """Table -> the symbol that zeros alone stand for, of the tables for AC coefficients (T.81, B.2.4.2)."""
    firsts: dict[int, int] = {}
    for segment in segments:
        rest = segment.payload if segment.marker == _DHT else b""
        while len(rest) > 17:
            if rest[0] >> 4 == 1:
                firsts[rest[0] & 0x0F] = rest[17]
            rest = rest[17 + sum(rest[1:17]) :]
    return firsts
