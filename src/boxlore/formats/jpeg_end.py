"""Whether a JPEG has its end: a decoder fills up what is missing from a file that was cut off and padded with zeros."""

import mmap
from typing import BinaryIO

from boxlore.core.errors import ByteFault
from boxlore.formats import jpeg


def has_end(file: BinaryIO) -> bool:
    """Whether an end-of-image marker stands behind the first start of scan (ITU-T T.81, B.2.1); True for no JPEG."""
    try:
        _, tail = jpeg.split(file)
    except ByteFault:
        return True
    with mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ) as data:
        return data.rfind(bytes((0xFF, jpeg.EOI)), tail) >= 0
