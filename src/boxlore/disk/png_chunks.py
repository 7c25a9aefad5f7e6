"""The chunks of a PNG and their checksums (PNG Third Edition, 5.3): which are wrong, and the picture without its texts.

Nothing is decoded. A wrong checksum says that a byte changed since the file was written, even where the picture shows.
"""

import io
import zlib
from collections.abc import Iterator
from typing import BinaryIO, NamedTuple

SIGNATURE = b"\x89PNG\r\n\x1a\n"
WINDOW = 1 << 20


class Chunk(NamedTuple):
    """One chunk: its type, the offset of its data, their length, and whether its checksum is right."""

    type: bytes
    at: int
    length: int
    sound: bool


def chunks(file: BinaryIO) -> Iterator[Chunk]:
    """Every chunk up to IEND, of a file that begins as a PNG; none of another file, and none past a cut."""
    file.seek(0)
    if file.read(8) != SIGNATURE:
        return
    while len(head := file.read(8)) == 8:
        length, at = int.from_bytes(head[:4], "big"), file.tell()
        checksum, left = zlib.crc32(head[4:]), length
        while left and (data := file.read(min(WINDOW, left))):
            checksum, left = zlib.crc32(data, checksum), left - len(data)
        stored = file.read(4)
        if left or len(stored) < 4:
            return
        yield Chunk(head[4:], at, length, checksum == int.from_bytes(stored, "big"))
        file.seek(at + length + 4)
        if head[4:] == b"IEND":
            return


def is_sound(file: BinaryIO) -> bool:
    """Whether a PNG has its end (IEND, 11.2.5), and no chunk a wrong checksum; True for another file."""
    file.seek(0)
    if file.read(8) != SIGNATURE:
        return True
    last = b""
    for chunk in chunks(file):
        if not chunk.sound:
            return False
        last = chunk.type
    return last == b"IEND"


def picture_alone(file: BinaryIO) -> BinaryIO | None:
    """The PNG without the chunks beside its picture whose checksum is wrong; None where there are none such.

    A reader may pass over them (5.4), so the picture shows although they are damaged.
    """
    listed = list(chunks(file))
    left_out = [chunk for chunk in listed if not chunk.sound and chunk.type[:1].islower()]
    if not left_out:
        return None
    whole = io.BytesIO()
    whole.write(SIGNATURE)
    for chunk in listed:
        if chunk not in left_out:
            file.seek(chunk.at - 8)
            whole.write(file.read(chunk.length + 12))
    whole.seek(0)
    return whole
