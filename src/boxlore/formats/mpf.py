"""Several pictures in one JPEG (CIPA DC-007, Multi-Picture Format): their index kept right when the header grows.

The index lists each picture's size, and its offset from the index's own TIFF header (DC-007, 5.2.3.3). When bytes
are added or removed before the first picture's scan, the first picture's size changes by all of them, and the offset
of every other picture by those of them that stand behind the index.
"""

from collections.abc import Iterator

from boxlore.core.errors import ByteFault
from boxlore.formats.tiff_directories import Tiff, open_tiff

MARK = b"MPF\x00"
ENTRIES = 0xB002
ENTRY_SIZE = 16
CLAUSE = "CIPA DC-007, 5.2.3"


def moved(payload: bytes, *, grown: int, behind: int) -> bytes:
    """The payload of an MPF segment, adjusted to a first picture that grew by `grown` bytes.

    `behind` of these bytes stand behind the index; both are negative where bytes were removed. Raises ByteFault if
    the index cannot be read, because its offsets would then silently point to wrong bytes.
    """
    data = payload[len(MARK) :]
    written = bytearray(payload)
    try:
        tiff = open_tiff(lambda at, length: data[at : at + length], len(data))
        patches = list(_patches(tiff, grown, behind))
    except ByteFault as fault:
        raise ByteFault(
            fault.offset, f"The index of the pictures in this file is damaged: {fault.why}", CLAUSE
        ) from fault
    for at, new_bytes in patches:
        written[len(MARK) + at : len(MARK) + at + len(new_bytes)] = new_bytes
    return bytes(written)


def _patches(tiff: Tiff, grown: int, behind: int) -> Iterator[tuple[int, bytes]]:
    """(offset, new bytes) for each size and offset in the index.

    table = *entry                                        (DC-007, 5.2.3.3; 16 bytes an entry)
    entry = attributes size offset dependents             (4 bytes each; offset 0 is the first picture)
    """
    entry = tiff.directory(tiff.first).get(ENTRIES)
    if entry is None:
        return  # an index of one picture's attributes alone names no places
    table = tiff.value(entry)
    if len(table) % ENTRY_SIZE:
        raise ByteFault(entry.at, "The index of the pictures in this file is cut off", CLAUSE)
    for at in range(0, len(table), ENTRY_SIZE):
        size, offset = tiff.number(table[at + 4 : at + 8]), tiff.number(table[at + 8 : at + 12])
        is_first = offset == 0
        size, offset = (size + grown, 0) if is_first else (size, offset + behind)
        if not 0 <= size < 1 << 32 or not 0 <= offset < 1 << 32:
            raise ByteFault(entry.value_at + at, "The index of the pictures in this file has no room", CLAUSE)
        yield entry.value_at + at + 4, tiff.pack(size, 4) + tiff.pack(offset, 4)
