"""A picture file of any format that can carry a caption: recognised by its content, read, rewritten and verified.

`rewrite` does not write. It gives the pieces of the copy: new bytes, or runs of the source to be copied untouched.
The caller writes them one after the other, so memory does not grow with the size of the file.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from io import BytesIO
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import PLACE_TAKEN_OUT, Embedding, ExistingMetadata
from boxlore.core.errors import ByteFault
from boxlore.formats import (
    exif,
    iim,
    jpeg,
    jpeg_places,
    jpeg_proof,
    picture_alone,
    places_in_texts,
    places_unread,
    png,
    tiff,
    webp,
    xmp,
    xmp_merging,
    xmp_places,
    xmp_strict,
)
from boxlore.formats import image_resources as resources
from boxlore.formats.binary import Piece, patched, read_at, same_bytes, size_of


class FileFormat(StrEnum):
    """The file formats that we write into."""

    JPEG = "image/jpeg"
    PNG = "image/png"
    TIFF = "image/tiff"
    WEBP = "image/webp"


def sniff(head: bytes) -> FileFormat | None:
    """The format, told from the first 16 bytes of the file; None for a format that we do not write into."""
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
"""The suffixes a copy may have, by format. The first replaces a scan's own suffix where that belongs to another."""

NOT_WRITTEN_INTO = (
    (b"ftyp", 4, "a HEIC or another ISO media file"),
    (b"\x00\x00\x00\x0cjP  ", 0, "a JPEG 2000"),
    (b"\xff\x4f\xff\x51", 0, "a JPEG 2000 codestream"),
    (b"GIF8", 0, "a GIF"),
    (b"BM", 0, "a BMP"),
)
"""Formats that we recognise, to name them in the error, but do not write into: (first bytes, their offset, name)."""


def suffix_for(file: BinaryIO, suffix: str) -> str:
    """The suffix for a copy of the file: `suffix` where it fits the content, else the first one of the true format."""
    file.seek(0)
    file_format = sniff(file.read(16))
    return suffix if file_format is None or suffix in SUFFIXES[file_format] else SUFFIXES[file_format][0]


_PLAIN = Embedding()
_WRITERS = {
    FileFormat.JPEG: jpeg.rewrite,
    FileFormat.PNG: png.rewrite,
    FileFormat.TIFF: tiff.rewrite,
    FileFormat.WEBP: webp.rewrite,
}


@dataclass(frozen=True, slots=True)
class Rewrite:
    """A copy to be written: its pieces in order, and sentences for the keeper about texts cut short or replaced."""

    pieces: tuple[Piece, ...]
    reports: tuple[str, ...]


def _sniffed(file: BinaryIO) -> FileFormat | None:
    file.seek(0)
    return sniff(file.read(16))


def _format_of(file: BinaryIO) -> FileFormat:
    file_format = _sniffed(file)
    if file_format is None:
        file.seek(0)
        head = file.read(16)
        foreign = next((name for signature, at, name in NOT_WRITTEN_INTO if head[at:].startswith(signature)), "")
        why = f"This is {foreign}, no JPEG, PNG, TIFF or WebP" if foreign else "This is no JPEG, PNG, TIFF or WebP"
        raise ByteFault(0, why, "the first bytes of the file")
    return file_format


def rewrite(file: BinaryIO, embedding: Embedding) -> Rewrite:
    """The copy of `file` that carries `embedding`. Raises ByteFault for a file that must not be written into."""
    pieces, reports = _WRITERS[_format_of(file)](file, embedding)
    return Rewrite(tuple(pieces), tuple(reports))


def verify(source: BinaryIO, copy: BinaryIO, embedding: Embedding) -> list[str]:
    """Sentences about what is wrong with a copy; an empty list if it is right.

    The picture's bytes must equal the source's, and every property of the embedding must be read back as it was given.
    What is in the copy must also be what strict readers take: see `unreadable`.
    """
    if _format_of(source) is FileFormat.TIFF and _format_of(copy) is FileFormat.TIFF:
        problems = _tiff_differences(source, copy, embedding)
    else:
        problems = same_picture(source, copy, embedding)
    return [*problems, *misread(copy, embedding)]


def misread(copy: BinaryIO, embedding: Embedding) -> list[str]:
    """Sentences about what of the embedding the copy lacks, and what strict readers do not take (see `unreadable`)."""
    differing = [f"{name} does not read back" for name in differing_properties(copy, embedding)]
    return [*differing, *unreadable(copy, embedding)]


def unreadable(copy: BinaryIO, embedding: Embedding | None = None) -> list[str]:
    """Sentences about what strict readers would refuse in a copy of ours, or miss of the embedding: XMP, IIM, Exif."""
    embedding = embedding or Embedding()
    packet, further = packets(copy)
    problems = [sentence for body in (packet, *further) for sentence in xmp_strict.faults(body)]
    file_format = _format_of(copy)
    if file_format is FileFormat.JPEG:
        segments, _ = jpeg.split(copy)
        problems += resources.faults(jpeg.resource_block(segments), embedding)
        problems += _exif_faults(jpeg.exif_blocks(segments))
    elif file_format is FileFormat.TIFF:
        _, block, _, structure = tiff.texts_of(copy)
        problems += exif.faults(structure)
        problems += iim.faults(block, embedding.iim) if block or embedding.iim else []
    elif file_format is FileFormat.PNG:
        problems += _exif_faults(png.data_of(copy, chunk) for chunk in png.split(copy) if chunk.type == b"eXIf")
    else:
        problems += _exif_faults(webp.exif_of(copy))
    return problems


def _exif_faults(blocks: Iterable[bytes]) -> list[str]:
    try:
        structures = [exif.block(data.removeprefix(b"Exif\x00\x00")) for data in blocks]
        return [sentence for structure in structures for sentence in exif.faults(structure)]
    except ByteFault as fault:
        return [f"The Exif is damaged: {fault.why}."]


def _tiff_differences(source: BinaryIO, copy: BinaryIO, embedding: Embedding) -> list[str]:
    """As `same_picture`, but stricter: in the copy of a TIFF every byte that we did not replace keeps its offset."""
    if tiff.picture_runs(source) != tiff.picture_runs(copy):
        return ["the parts of the picture are not as they were"]
    runs = tiff.kept_runs(source, embedding)
    if not all(same_bytes(source, at, copy, at, length) for at, length in runs):
        return ["another byte than ours has changed"]
    return []


def same_picture(source: BinaryIO, copy: BinaryIO, embedding: Embedding = _PLAIN) -> list[str]:
    """Sentences about how the picture of a copy differs from that of its source; empty if all its bytes are equal.

    With `drop_text` the copy may lack other segments and what stands behind the picture. It must still have everything
    that the picture is decoded by.
    """
    file_format = _format_of(source)
    if _format_of(copy) is not file_format:
        return ["the copy is of another format"]
    if file_format is FileFormat.JPEG:
        differences, runs = jpeg_proof.differences(source, copy, embedding)
    else:
        runs_of = {FileFormat.PNG: png, FileFormat.TIFF: tiff, FileFormat.WEBP: webp}[file_format].picture_runs
        before, after = runs_of(source), runs_of(copy)
        if [length for _, length in before] != [length for _, length in after]:
            return ["the parts of the picture are not as they were"]
        differences, runs = (
            [],
            [(source_at, copy_at, length) for (source_at, length), (copy_at, _) in zip(before, after, strict=True)],
        )
    if not all(same_bytes(source, source_at, copy, copy_at, length) for source_at, copy_at, length in runs):
        differences.append("the picture's bytes are not equal")
    return differences


def differing_properties(copy: BinaryIO, embedding: Embedding) -> list[str]:
    """The names of the embedding's properties that the file lacks or holds with another value."""
    return xmp.read_back(xmp.tree(*packets(copy)), embedding)


def differing_in_packet(packet: bytes, embedding: Embedding) -> list[str]:
    """As `differing_properties`, for the XMP packet of a sidecar file."""
    return xmp.read_back(xmp.tree(packet), embedding)


def identifier_in(packet: bytes) -> str:
    """The number of the item that an XMP packet is about, '' where it says none. Raises ByteFault for no XMP."""
    return xmp.values(xmp.tree(packet)).get("dc:identifier", "")


def strikes_in(packet: bytes) -> str:
    """Which strikes the caption of an XMP packet has heard of (see `additions.STRUCK`), '' where it says none."""
    return xmp.values(xmp.tree(packet)).get("boxlore:struck", "")


def unreadable_packet(packet: bytes) -> list[str]:
    """As `unreadable`, for the XMP packet of a sidecar file."""
    return xmp_strict.faults(packet)


def packets(file: BinaryIO) -> tuple[bytes, tuple[bytes, ...]]:
    """The XMP packet of a file (empty if it has none), and the further packets whose properties belong to it."""
    match _format_of(file):
        case FileFormat.JPEG:
            jpeg_packets = jpeg.packets_of(jpeg.split(file)[0])
            return jpeg_packets.standard, jpeg_packets.to_join
        case FileFormat.PNG:
            packet, *further = png.packets_of(file, png.split(file)) or [b""]
            return packet, tuple(further)
        case FileFormat.TIFF:
            return tiff.texts_of(file)[0], ()
    return webp.packet_of(file, webp.split(file)[0]), ()


def read(file: BinaryIO) -> ExistingMetadata:
    """The captions and dates that the file carries already. Raises ByteFault for a file that cannot be read."""
    file_format = _format_of(file)
    problems: list[str] = []
    block, facts = b"", exif.Facts({}, 1, False)
    packet, extended = packets(file)
    if file_format is FileFormat.JPEG:
        segments, _ = jpeg.split(file)
        problems += jpeg.packets_of(segments).problems
        image_resources, _ = resources.split(jpeg.resource_block(segments))
        block, digest_problems = resources.iim_of(image_resources)
        problems += digest_problems
        facts = _exif(jpeg.exif_blocks(segments))
    elif file_format is FileFormat.TIFF:
        _, block, digest_problems, structure = tiff.texts_of(file)
        problems += digest_problems
        facts = exif.facts(structure)
    elif file_format is FileFormat.PNG:
        facts = _exif(png.data_of(file, chunk) for chunk in png.split(file) if chunk.type == b"eXIf")
    else:
        facts = _exif(webp.exif_of(file))
    texts, guesses = iim.texts(iim.split(block))
    return ExistingMetadata(
        xmp=xmp.values(xmp.tree(packet, extended)),
        iim=texts,
        exif=facts.texts,
        orientation=facts.orientation,
        has_gps=facts.has_gps,
        problems=(*problems, *guesses),
    )


def _exif(blocks: Iterable[bytes]) -> exif.Facts:
    """The facts of the first Exif block that can be read; empty facts if there is none."""
    for data in blocks:
        try:
            return exif.facts(exif.block(data.removeprefix(b"Exif\x00\x00")))
        except ByteFault:
            continue  # no reader reads it either
    return exif.Facts({}, 1, False)


def copy_without_place(file: BinaryIO) -> Rewrite:
    """A copy of a file that we cannot write a caption into: unchanged, but without the place where it was made.

    Its caption is written to a file beside it (see `sidecar`).
    """
    if _sniffed(file) is FileFormat.PNG:
        return without_place(file)  # its texts may be compressed
    size = size_of(file)
    patches = places_unread.patches(file, 0, size)
    return Rewrite(tuple(patched(0, size, patches)), _about_places(file, patches))


def without_place(file: BinaryIO) -> Rewrite:
    """The file without what says where it was made, and with everything else; for any format.

    `is_whole` tells whether anything in the file said it. Raises ByteFault where it cannot be taken out.
    """
    file_format = _sniffed(file)
    if file_format is FileFormat.PNG:
        pieces, reports = png.rewrite(file, PLACE_TAKEN_OUT)
        return Rewrite(tuple(pieces), (*reports, *_about_places(file, [])))
    if file_format is FileFormat.JPEG:
        try:
            pieces, reports = jpeg_places.rewrite(file)
            return Rewrite(tuple(pieces), tuple(reports))
        except ByteFault:
            pass  # a damaged one is cleaned where it can be, like a file of a format that we do not know
    size = size_of(file)
    patches = places_unread.patches(file, 0, size, only_place=True)
    if file_format is FileFormat.TIFF:
        patches = places_in_texts.joined(patches, tiff.named_places(file))
    elif file_format is FileFormat.WEBP:
        patches = places_in_texts.joined(patches, places_unread.patches(file, webp.split(file)[1], size, alone=True))
    return Rewrite(tuple(patched(0, size, patches)), _about_places(file, patches))


def _about_places(file: BinaryIO, patches: list[places_unread.Patch]) -> tuple[str, ...]:
    """Sentences about what a person may have written, and was taken out with the place, by patches where it stands."""
    try:
        trees = [xmp.parse(body) for body in packets(file)[:1]] if _sniffed(file) is not None else []
    except ByteFault:
        trees = []
    reports = [sentence for tree in trees for sentence in xmp_places.taken_out(tree).reports]
    blanked = any(not new.strip(b" \x00") and b" " in new for _, new in patches)
    return (*reports, *([places_in_texts.said("a text of the file")] if blanked else []))


_BARE = {
    FileFormat.JPEG: picture_alone.of_jpeg,
    FileFormat.PNG: picture_alone.of_png,
    FileFormat.TIFF: picture_alone.of_tiff,
    FileFormat.WEBP: picture_alone.of_webp,
}


def bare_picture(file: BinaryIO) -> Rewrite:
    """The file with its picture, colours, resolution and orientation, and nothing else (see `bare`).

    `is_whole` tells whether it was so already. Raises ByteFault for a file that cannot be taken apart to its end.
    """
    return Rewrite(tuple(_BARE[_format_of(file)](file)), ())


def prove_bare(source: BinaryIO, copy: BinaryIO) -> None:
    """Raises ByteFault unless the copy is what `bare_picture` makes of the source, and nothing more can be taken."""
    if not matches(bare_picture(source), source, copy) or not is_whole(bare_picture(copy), copy):
        raise ByteFault(0, "It cannot be cleaned of what stands beside its picture", "the source's own bytes")


def is_whole(rewritten: Rewrite, source: BinaryIO) -> bool:
    """Whether what would be written from `source` is `source` itself, byte for byte."""
    at = 0
    for piece in rewritten.pieces:
        if isinstance(piece, bytes):
            source.seek(at)
            if source.read(len(piece)) != piece:
                return False
            at += len(piece)
        elif piece[0] != at:
            return False
        else:
            at += piece[1]
    return at == size_of(source)


def sidecar(embedding: Embedding) -> bytes:
    """The `.xmp` file for a picture that cannot carry its caption itself (XMP Specification Part 3, 1.3)."""
    return xmp.serialize(xmp_merging.captioned(b"", embedding)[0], padding=0)


def captioned(data: bytes, embedding: Embedding) -> bytes:
    """The bytes of a small file, such as a part that was cut out of a scan, with the caption put in."""
    pieces = rewrite(BytesIO(data), embedding).pieces
    return b"".join(piece if isinstance(piece, bytes) else data[piece[0] : sum(piece)] for piece in pieces)


def size_after(rewritten: Rewrite) -> int:
    """The size of the copy in bytes."""
    return sum(len(piece) if isinstance(piece, bytes) else piece[1] for piece in rewritten.pieces)


def matches(rewritten: Rewrite, source: BinaryIO, copy: BinaryIO) -> bool:
    """Whether `copy` already equals, byte for byte, what would be written from `source`."""
    if size_of(copy) != size_after(rewritten):
        return False
    at = 0
    for piece in rewritten.pieces:
        length = len(piece) if isinstance(piece, bytes) else piece[1]
        if isinstance(piece, bytes):
            if read_at(copy, at, length, "our own copy") != piece:
                return False
        elif not same_bytes(source, piece[0], copy, at, length):
            return False
        at += length
    return True
