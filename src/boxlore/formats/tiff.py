"""TIFF 6.0 and BigTIFF: the file copied whole, our values and a new first directory appended.

Only the pointer in the header changes; no picture byte moves. Refused: strips or tiles that end beyond the
file (appended bytes would become pixels), loops, unsorted directories, a classic file that would pass 4 GiB.
"""

from collections.abc import Iterable
from typing import BinaryIO

from boxlore.core.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, resources, xmp
from boxlore.formats.binary import Piece, patched, read_at, size_of
from boxlore.formats.directory import Directory, Entry, Tiff, open_tiff

XMP_TAG, IIM_TAG, RESOURCES_TAG = 700, 33723, 34377
STRIPS, STRIP_BYTES, TILES, TILE_BYTES = 273, 279, 324, 325
TEXTUAL = {269, 270, 285, 305, 306, 315, 316, 33432, XMP_TAG, IIM_TAG, RESOURCES_TAG, 37724, 0x8769, 0x8825}
RAW_TAGS = {50706, 33421}
CLAUSE = "TIFF 6.0, section 2"


def opened(file: BinaryIO) -> tuple[Tiff, list[Directory]]:
    """The structure and its directories, looked over. Raises ByteFault for what must not be appended to."""
    tiff = open_tiff(lambda at, length: read_at(file, at, length, CLAUSE), size_of(file))
    chain = tiff.chain()
    if not chain:
        raise ByteFault(4, "There is no picture in this file", CLAUSE)
    for directory in chain:
        if any(directory.get(tag) for tag in RAW_TAGS):
            raise ByteFault(directory.at, "This is a raw file of a camera, not a scan", CLAUSE)
        _look_over(tiff, directory)
    return tiff, chain


def _look_over(tiff: Tiff, directory: Directory) -> None:
    for offsets, counts in ((STRIPS, STRIP_BYTES), (TILES, TILE_BYTES)):
        where, sizes = directory.get(offsets), directory.get(counts)
        if where is None or sizes is None:
            continue
        for at, length in zip(tiff.numbers(where), tiff.numbers(sizes), strict=False):
            if at + length > tiff.size:
                raise ByteFault(at, "A strip or tile of the picture ends beyond the file", f"{CLAUSE}, page 40")
    for entry in directory.entries:
        if entry.value_at + entry.length > tiff.size:
            raise ByteFault(entry.at, f"The value of tag {entry.tag} lies outside the file", CLAUSE)


def _value(tiff: Tiff, directory: Directory, tag: int) -> bytes:
    entry = directory.get(tag)
    return tiff.value(entry) if entry is not None else b""


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and what was cut or in conflict."""
    tiff, chain = opened(file)
    main = chain[0]
    drop = embedding.drop_text
    packet = xmp.serialize(xmp.merge(b"" if drop else _value(tiff, main, XMP_TAG), embedding))
    old_iim = b"" if drop else _value(tiff, main, IIM_TAG)
    held, left = resources.split(b"" if drop else _value(tiff, main, RESOURCES_TAG))
    inner, problems = resources.iim_of(held)
    datasets, cuts = iim.merge(iim.split(old_iim or inner), embedding.iim)
    block = iim.join(datasets)
    new = {XMP_TAG: (1, packet), IIM_TAG: (7, block)}
    if held or left:
        new[RESOURCES_TAG] = (1, resources.join(resources.with_iim(held, block), left))
    patches = _patches(tiff, chain, embedding)
    kept = [one for one in main.entries if one.tag not in new and not (drop and one.tag in TEXTUAL)]
    kept = [one for one in kept if one.tag != exif.GPS_IFD]
    at = tiff.size + tiff.size % 2
    appended, first = _append(tiff, main, kept, new, at)
    if not tiff.big and at + len(appended) > 0xFFFFFFFF:
        raise ByteFault(tiff.size, "The copy would pass the 4 GiB that a TIFF may have", f"{CLAUSE}, page 13")
    header = (8, tiff.pack(first, 8)) if tiff.big else (4, tiff.pack(first, 4))
    pieces = patched(0, tiff.size, [header, *patches])
    return [*pieces, b"\x00" * (tiff.size % 2) + appended], [*problems, *cuts]


def _patches(tiff: Tiff, chain: list[Directory], embedding: Embedding) -> list[tuple[int, bytes]]:
    """The same care as in an Exif block, in every page; for outside, the old text is zeroed where it stood."""
    made: dict[int, bytes] = dict(exif.patches(tiff, embedding, unlink_gps=False))
    if embedding.drop_text:
        for directory in chain:
            for entry in directory.entries:
                if entry.tag in TEXTUAL and entry.tag not in (exif.EXIF_IFD, exif.GPS_IFD):
                    made[entry.value_at] = bytes(entry.length)
            for tag in (exif.EXIF_IFD,):
                pointer = directory.get(tag)
                if pointer is not None:
                    made.update(exif.emptied(tiff, pointer))
    return _apart(made)


def _apart(made: dict[int, bytes]) -> list[tuple[int, bytes]]:
    """The patches in order, a shorter one inside a longer one left out."""
    found: list[tuple[int, bytes]] = []
    for at, new in sorted(made.items(), key=lambda one: (one[0], -len(one[1]))):
        if not found or at >= found[-1][0] + len(found[-1][1]):
            found.append((at, new))
    return found


def _append(
    tiff: Tiff, main: Directory, kept: Iterable[Entry], new: dict[int, tuple[int, bytes]], at: int
) -> tuple[bytes, int]:
    """The bytes to append at an even offset: our values, then the directory. Returns them and its offset."""
    body = bytearray()
    entries: list[tuple[int, bytes]] = [(one.tag, one.raw) for one in kept]
    for tag, (kind, value) in new.items():
        place = at + len(body)
        body += value + b"\x00" * (len(value) % 2)
        raw = tiff.pack(tag, 2) + tiff.pack(kind, 2) + tiff.pack(len(value), tiff.offset_size)
        inline = value.ljust(tiff.offset_size, b"\x00") if len(value) <= tiff.offset_size else b""
        entries.append((tag, raw + (inline or tiff.pack(place, tiff.offset_size))))
    first = at + len(body)
    table = b"".join(raw for _, raw in sorted(entries))
    directory = tiff.pack(len(entries), tiff.count_size) + table + tiff.pack(main.next, tiff.offset_size)
    return bytes(body) + directory, first


def picture_runs(file: BinaryIO) -> list[tuple[int, int]]:
    """Where the strips and tiles of every page lie."""
    tiff, chain = opened(file)
    runs: list[tuple[int, int]] = []
    for directory in chain:
        for offsets, counts in ((STRIPS, STRIP_BYTES), (TILES, TILE_BYTES)):
            where, sizes = directory.get(offsets), directory.get(counts)
            if where is not None and sizes is not None:
                runs += zip(tiff.numbers(where), tiff.numbers(sizes), strict=False)
    return runs


def texts_of(file: BinaryIO) -> tuple[bytes, bytes, list[str], Tiff]:
    """The XMP packet, the IIM block, problems, and the structure."""
    tiff, chain = opened(file)
    held, _ = resources.split(_value(tiff, chain[0], RESOURCES_TAG))
    inner, problems = resources.iim_of(held)
    return _value(tiff, chain[0], XMP_TAG), _value(tiff, chain[0], IIM_TAG) or inner, problems, tiff
