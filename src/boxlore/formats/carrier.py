"""Any picture file as a carrier of captions: known by its content, read, rewritten, proved.

`rewrite` gives the pieces of the copy, bytes of ours or runs of the source to be copied untouched; whoever
writes them streams, so memory does not grow with the file.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import BinaryIO

from boxlore.core.embedding import Embedding, Found
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, jpeg, png, resources, tiff, webp, xmp
from boxlore.formats.binary import Piece, read_at, same_bytes, size_of


class Container(StrEnum):
    """The file formats that we write into."""

    JPEG = "image/jpeg"
    PNG = "image/png"
    TIFF = "image/tiff"
    WEBP = "image/webp"


def sniff(head: bytes) -> Container | None:
    """The container by the first bytes of the file (16 are enough), or None."""
    if head.startswith(b"\xff\xd8\xff"):
        return Container.JPEG
    if head.startswith(png.SIGNATURE):
        return Container.PNG
    if head[:4] in (b"II*\x00", b"MM\x00*", b"II+\x00", b"MM\x00+"):
        return Container.TIFF
    if head[:4] == b"RIFF" and head[8:12] == b"WEBP":
        return Container.WEBP
    return None


_WRITERS = {
    Container.JPEG: jpeg.rewrite,
    Container.PNG: png.rewrite,
    Container.TIFF: tiff.rewrite,
    Container.WEBP: webp.rewrite,
}


@dataclass(frozen=True, slots=True)
class Rewrite:
    """A copy to be written: its pieces in order, and sentences about what was cut or in conflict."""

    pieces: tuple[Piece, ...]
    reports: tuple[str, ...]


def _container(file: BinaryIO) -> Container:
    file.seek(0)
    found = sniff(file.read(16))
    if found is None:
        raise ByteFault(0, "This is no JPEG, PNG, TIFF or WebP", "the first bytes of the file")
    return found


def rewrite(file: BinaryIO, embedding: Embedding) -> Rewrite:
    """The copy of `file` that carries `embedding`. Raises ByteFault for a file that must not be written into."""
    pieces, reports = _WRITERS[_container(file)](file, embedding)
    return Rewrite(tuple(pieces), tuple(reports))


def verify(source: BinaryIO, copy: BinaryIO, embedding: Embedding) -> list[str]:
    """What is wrong with a copy: the picture's bytes not equal, or our values not read back. Empty if nothing."""
    kind = _container(source)
    if _container(copy) is not kind:
        return ["the copy is of another format"]
    found: list[str] = []
    if kind is Container.JPEG:
        if not embedding.drop_text:
            found, run = jpeg.differences(source, copy)
        else:
            run = jpeg.tails(source, copy)
        runs: Iterator[tuple[int, int, int]] = iter([run])
    else:
        of = {Container.PNG: png, Container.TIFF: tiff, Container.WEBP: webp}[kind].picture_runs
        before, after = of(source), of(copy)
        if [length for _, length in before] != [length for _, length in after]:
            return ["the parts of the picture are not as they were"]
        runs = ((at, there, length) for (at, length), (there, _) in zip(before, after, strict=True))
    if not all(same_bytes(source, at, copy, there, length) for at, there, length in runs):
        found.append("the picture's bytes are not equal")
    lost = xmp.read_back(packet(copy), embedding)
    return [*found, *(f"{name} does not read back" for name in lost)]


def packet(file: BinaryIO) -> bytes:
    """The XMP packet of a file, or no bytes."""
    match _container(file):
        case Container.JPEG:
            return jpeg.packet_of(jpeg.split(file)[0])[0]
        case Container.PNG:
            return png.packet_of(file, png.split(file))
        case Container.TIFF:
            return tiff.texts_of(file)[0]
        case Container.WEBP:
            return webp.packet_of(file, webp.split(file)[0])


def read(file: BinaryIO) -> Found:
    """What the file carries already. Raises ByteFault for a file that cannot be read."""
    kind = _container(file)
    problems: list[str] = []
    block, facts, orientation, gps = b"", dict[str, str](), 1, False
    if kind is Container.JPEG:
        segments, _ = jpeg.split(file)
        raw, _, problems = jpeg.packet_of(segments)
        held, _ = resources.split(jpeg.resource_block(segments))
        block, more = resources.iim_of(held)
        problems += more
        blocks = [one.payload[6:] for one in segments if one.starts(jpeg.APP1, jpeg.EXIF_MARK)]
        if blocks:
            facts, orientation, gps = exif.facts(exif.block(blocks[0]))
    elif kind is Container.TIFF:
        raw, block, problems, structure = tiff.texts_of(file)
        facts, orientation, gps = exif.facts(structure)
    else:
        raw = packet(file)
    texts, guesses = iim.texts(iim.split(block))
    return Found(
        xmp=xmp.values(raw) if raw else {},
        iim=texts,
        exif=facts,
        orientation=orientation,
        has_gps=gps,
        problems=(*problems, *guesses),
    )


def sidecar(embedding: Embedding) -> bytes:
    """An `.xmp` file for a picture that cannot carry its caption itself (XMP Specification Part 3, 1.3)."""
    return xmp.serialize(xmp.merge(b"", embedding), padding=0)


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
