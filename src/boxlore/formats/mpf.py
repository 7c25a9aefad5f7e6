"""Several pictures in one JPEG (CIPA DC-007, Multi-Picture Format): their places stay right when the header grows.

The MP index lists each picture's size and its offset from the index's own TIFF header (DC-007, 5.2.3.3). When
bytes are put in or taken out before the first picture's scans, its size changes, and offsets by what changed
behind the index. All by patches of the same length.
"""

from collections.abc import Iterator

from boxlore.core.errors import ByteFault
from boxlore.formats.directory import Tiff, open_tiff

MARK = b"MPF\x00"
ENTRIES = 0xB002
ENTRY_SIZE = 16
CLAUSE = "CIPA DC-007, 5.2.3"


def moved(payload: bytes, *, grown: int, behind: int) -> bytes:
    """The payload of an MPF segment after the first picture grew by `grown` bytes, `behind` of them after the index.

    Raises ByteFault where the index cannot be read, since its offsets would then point elsewhere unseen.
    """
    data = payload[len(MARK) :]
    out = bytearray(payload)
    try:
        tiff = open_tiff(lambda at, length: data[at : at + length], len(data))
        made = list(_patches(tiff, grown, behind))
    except ByteFault as fault:
        raise ByteFault(
            fault.offset, f"The index of the pictures in this file is damaged: {fault.why}", CLAUSE
        ) from fault
    for at, new in made:
        out[len(MARK) + at : len(MARK) + at + len(new)] = new
    return bytes(out)


def _patches(tiff: Tiff, grown: int, behind: int) -> Iterator[tuple[int, bytes]]:
    entry = tiff.directory(tiff.first).get(ENTRIES)
    if entry is None:
        return  # an index of one picture's attributes alone names no places
    table = tiff.value(entry)
    if len(table) % ENTRY_SIZE:
        raise ByteFault(entry.at, "The index of the pictures in this file is cut off", CLAUSE)
    for at in range(0, len(table), ENTRY_SIZE):
        size, offset = tiff.number(table[at + 4 : at + 8]), tiff.number(table[at + 8 : at + 12])
        first = offset == 0
        size, offset = (size + grown, 0) if first else (size, offset + behind)
        if not 0 <= size < 1 << 32 or not 0 <= offset < 1 << 32:
            raise ByteFault(entry.value_at + at, "The index of the pictures in this file has no room", CLAUSE)
        yield entry.value_at + at + 4, tiff.pack(size, 4) + tiff.pack(offset, 4)
