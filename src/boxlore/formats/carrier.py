"""Any picture file as a carrier of captions: known by its content, read, rewritten, proved.

`rewrite` gives the pieces of the copy, bytes of ours or runs of the source to be copied untouched; whoever
writes them streams, so memory does not grow with the file.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from io import BytesIO
from typing import BinaryIO

from boxlore.core.crosswalk.embedding import Embedding, ExistingMetadata
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, jpeg, merging, opaque, png, resources, tiff, webp, xmp
from boxlore.formats.binary import Piece, patched, read_at, same_bytes, size_of


class FileFormat(StrEnum):
    """The file formats that we write into."""

    JPEG = "image/jpeg"
    PNG = "image/png"
    TIFF = "image/tiff"
    WEBP = "image/webp"


def sniff(head: bytes) -> FileFormat | None:
    """The container by the first bytes of the file (16 are enough), or None."""
    if head.startswith(b"\xff\xd8\xff"):
        return FileFormat.JPEG
    if head.startswith(png.SIGNATURE):
        return FileFormat.PNG
    if head[:4] in (b"II*\x00", b"MM\x00*", b"II+\x00", b"MM\x00+"):
        return FileFormat.TIFF
    if head[:4] == b"RIFF" and head[8:12] == b"WEBP":
        return FileFormat.WEBP
    return None


SUFFIXES = {
    FileFormat.JPEG: (".jpg", ".jpeg"),
    FileFormat.PNG: (".png",),
    FileFormat.TIFF: (".tif", ".tiff"),
    FileFormat.WEBP: (".webp",),
}
"""The endings that a copy may have; the first is given where a scan's own does not fit what it is."""

OTHERS = (
    (b"ftyp", 4, "a HEIC or another ISO media file"),
    (b"\x00\x00\x00\x0cjP  ", 0, "a JPEG 2000"),
    (b"\xff\x4f\xff\x51", 0, "a JPEG 2000 codestream"),
    (b"GIF8", 0, "a GIF"),
    (b"BM", 0, "a BMP"),
)
"""Formats that we know by their first bytes and do not write into: bytes, where, name."""


def suffix_for(file: BinaryIO, suffix: str) -> str:
    """The ending for a copy of the file: its own where it fits the content, else that of the content."""
    file.seek(0)
    kind = sniff(file.read(16))
    return suffix if kind is None or suffix in SUFFIXES[kind] else SUFFIXES[kind][0]


_WRITERS = {
    FileFormat.JPEG: jpeg.rewrite,
    FileFormat.PNG: png.rewrite,
    FileFormat.TIFF: tiff.rewrite,
    FileFormat.WEBP: webp.rewrite,
}


@dataclass(frozen=True, slots=True)
class Rewrite:
    """A copy to be written: its pieces in order, and sentences about what was cut or in conflict."""

    pieces: tuple[Piece, ...]
    reports: tuple[str, ...]


def _container(file: BinaryIO) -> FileFormat:
    file.seek(0)
    head = file.read(16)
    found = sniff(head)
    if found is None:
        other = next((name for mark, at, name in OTHERS if head[at:].startswith(mark)), "")
        why = f"This is {other}, no JPEG, PNG, TIFF or WebP" if other else "This is no JPEG, PNG, TIFF or WebP"
        raise ByteFault(0, why, "the first bytes of the file")
    return found


def rewrite(file: BinaryIO, embedding: Embedding) -> Rewrite:
    """The copy of `file` that carries `embedding`. Raises ByteFault for a file that must not be written into."""
    pieces, reports = _WRITERS[_container(file)](file, embedding)
    return Rewrite(tuple(pieces), tuple(reports))


def verify(source: BinaryIO, copy: BinaryIO, embedding: Embedding) -> list[str]:
    """What is wrong with a copy: the picture's bytes not equal, or our values not read back. Empty if nothing."""
    if _container(source) is FileFormat.TIFF and _container(copy) is FileFormat.TIFF:
        found = _same_places(source, copy, embedding)
    else:
        found = same_picture(source, copy, outside=embedding.drop_text)
    return [*found, *(f"{name} does not read back" for name in not_as(copy, embedding))]


def _same_places(source: BinaryIO, copy: BinaryIO, embedding: Embedding) -> list[str]:
    """Of a TIFF every byte of the source stands in the copy at the same place, but for ours, and is found there."""
    if tiff.picture_runs(source) != tiff.picture_runs(copy):
        return ["the parts of the picture are not as they were"]
    kept = tiff.kept_runs(source, embedding)
    if not all(same_bytes(source, at, copy, at, length) for at, length in kept):
        return ["another byte than ours has changed"]
    return []


def same_picture(source: BinaryIO, copy: BinaryIO, *, outside: bool = False) -> list[str]:
    """What differs between the picture of a scan and that of its copy, byte by byte; empty if nothing.

    A copy for outside has lost what stood behind the picture and around it, but not what it is decoded by.
    """
    kind = _container(source)
    if _container(copy) is not kind:
        return ["the copy is of another format"]
    if kind is FileFormat.JPEG:
        found, runs = jpeg.differences(source, copy, outside=outside)
    else:
        of = {FileFormat.PNG: png, FileFormat.TIFF: tiff, FileFormat.WEBP: webp}[kind].picture_runs
        before, after = of(source), of(copy)
        if [length for _, length in before] != [length for _, length in after]:
            return ["the parts of the picture are not as they were"]
        found, runs = [], [(at, there, length) for (at, length), (there, _) in zip(before, after, strict=True)]
    if not all(same_bytes(source, at, copy, there, length) for at, there, length in runs):
        found.append("the picture's bytes are not equal")
    return found


def not_as(copy: BinaryIO, embedding: Embedding) -> list[str]:
    """The names of our properties that the file does not hold as they are wanted."""
    return xmp.read_back(xmp.tree(*packets(copy)), embedding)


def packet_not_as(packet: bytes, embedding: Embedding) -> list[str]:
    """The same for the packet of a sidecar."""
    return xmp.read_back(xmp.tree(packet), embedding)


def packets(file: BinaryIO) -> tuple[bytes, tuple[bytes, ...]]:
    """The XMP packet of a file, or no bytes; and the extended ones that belong to it."""
    match _container(file):
        case FileFormat.JPEG:
            found = jpeg.packets_of(jpeg.split(file)[0])
            return found.standard, found.more
        case FileFormat.PNG:
            first, *more = png.packets_of(file, png.split(file)) or [b""]
            return first, tuple(more)
        case FileFormat.TIFF:
            return tiff.texts_of(file)[0], ()
    return webp.packet_of(file, webp.split(file)[0]), ()


def read(file: BinaryIO) -> ExistingMetadata:
    """What the file carries already. Raises ByteFault for a file that cannot be read."""
    kind = _container(file)
    problems: list[str] = []
    block, facts = b"", exif.Facts({}, 1, False)
    raw, more = packets(file)
    if kind is FileFormat.JPEG:
        segments, _ = jpeg.split(file)
        problems += jpeg.packets_of(segments).problems
        held, _ = resources.split(jpeg.resource_block(segments))
        block, further = resources.iim_of(held)
        problems += further
        facts = _exif(one.payload[6:] for one in segments if one.starts(jpeg.APP1, jpeg.EXIF_MARK))
    elif kind is FileFormat.TIFF:
        _, block, further, structure = tiff.texts_of(file)
        problems += further
        facts = exif.facts(structure)
    elif kind is FileFormat.PNG:
        facts = _exif(png.data_of(file, one) for one in png.split(file) if one.type == b"eXIf")
    else:
        facts = _exif(webp.exif_of(file))
    texts, guesses = iim.texts(iim.split(block))
    return ExistingMetadata(
        xmp=xmp.values(xmp.tree(raw, more)),
        iim=texts,
        exif=facts.texts,
        orientation=facts.orientation,
        has_gps=facts.has_gps,
        problems=(*problems, *guesses),
    )


def _exif(blocks: Iterable[bytes]) -> exif.Facts:
    for data in blocks:
        return exif.facts(exif.block(data.removeprefix(b"Exif\x00\x00")))
    return exif.Facts({}, 1, False)


def beside(file: BinaryIO) -> Rewrite:
    """A file that we do not write into, as it is but for the place of its making; its caption goes beside it."""
    size = size_of(file)
    return Rewrite(tuple(patched(0, size, opaque.patches(file, 0, size))), ())


def sidecar(embedding: Embedding) -> bytes:
    """An `.xmp` file for a picture that cannot carry its caption itself (XMP Specification Part 3, 1.3)."""
    return xmp.serialize(merging.captioned(b"", embedding)[0], padding=0)


def captioned(data: bytes, embedding: Embedding) -> bytes:
    """A small file in memory, such as a part that was cut out of a scan, with its caption."""
    pieces = rewrite(BytesIO(data), embedding).pieces
    return b"".join(one if isinstance(one, bytes) else data[one[0] : sum(one)] for one in pieces)


def size_after(made: Rewrite) -> int:
    """How many bytes the copy will have."""
    return sum(len(one) if isinstance(one, bytes) else one[1] for one in made.pieces)


def matches(made: Rewrite, source: BinaryIO, copy: BinaryIO) -> bool:
    """Whether a file holds just the copy that would be written."""
    if size_of(copy) != size_after(made):
        return False
    at = 0
    for piece in made.pieces:
        length = len(piece) if isinstance(piece, bytes) else piece[1]
        if isinstance(piece, bytes):
            if read_at(copy, at, length, "our own copy") != piece:
                return False
        elif not same_bytes(source, piece[0], copy, at, length):
            return False
        at += length
    return True
