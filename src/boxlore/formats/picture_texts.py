"""Every text that a picture file for outside may hold, each with the carrier that it stands in.

Rule kept: a picture for outside is bare (see `bare`) but for our caption, so each part of it is opened here or is no
text. One that holds anything more is not opened wholly: ByteFault, and it does not leave.
"""

import re
from collections.abc import Iterator
from typing import BinaryIO, NamedTuple

from boxlore.core.errors import ByteFault
from boxlore.formats import (
    colour_profiles,
    exif,
    iim,
    image_resources,
    jpeg,
    picture_alone,
    picture_files,
    png,
    png_texts,
    tiff,
    webp,
    xmp,
)
from boxlore.formats.binary import decoded, read_at, size_of

FOREIGN = "This picture holds more than itself and our caption"
_RUN = re.compile(rb"[\x20-\x7e\x80-\xff]{4,}")
_LETTERS = re.compile(r"[^\W\d_]{3}")


class Inside(NamedTuple):
    """One text of a file: the carrier, and the words."""

    where: str
    words: str


def texts(file: BinaryIO) -> Iterator[Inside]:
    """The texts of a JPEG, PNG, TIFF or WebP. Raises ByteFault for another file, and for one that holds more."""
    file.seek(0)
    readers = {
        picture_files.FileFormat.JPEG: _of_jpeg,
        picture_files.FileFormat.PNG: _of_png,
        picture_files.FileFormat.TIFF: _of_tiff,
        picture_files.FileFormat.WEBP: _of_webp,
    }
    file_format = picture_files.sniff(file.read(16))
    if file_format is None:
        raise ByteFault(0, "This is no JPEG, PNG, TIFF or WebP", "the first bytes of the file")
    yield from readers[file_format](file)


def _of_jpeg(file: BinaryIO) -> Iterator[Inside]:
    segments, tail = jpeg.split(file)
    if jpeg.picture_end(file, tail) != size_of(file):
        raise ByteFault(tail, FOREIGN, "T.81 B.2.1")
    for marker, at in jpeg.markers_behind(file, tail):
        if picture_alone.is_application(marker):
            raise ByteFault(at, FOREIGN, "T.81 B.2.4")
    for run in jpeg.runs(segments):
        yield from _of_segments(run)
    yield from _of_image_resources(jpeg.resource_block(segments))
    profile = b"".join(segment.payload[14:] for segment in segments if segment.starts(jpeg.APP2, picture_alone.PROFILE))
    yield from _of_profile(profile)


def _of_segments(run: list[jpeg.Segment]) -> Iterator[Inside]:
    """The texts of one of `jpeg.runs`; image resources and the profile, which may be spread, are read as a whole."""
    segment = run[0]
    if segment.starts(jpeg.APP1, jpeg.XMP_MARK):
        yield from of_xmp(segment.payload[len(jpeg.XMP_MARK) :])
    elif segment.starts(jpeg.APP1, jpeg.EXTENDED_MARK):
        yield from _of_runs("extended XMP", segment.payload[len(jpeg.EXTENDED_MARK) + 40 :])
    elif segment.starts(jpeg.APP1, jpeg.EXIF_MARK):
        yield from _of_exif(b"".join(part.payload[len(jpeg.EXIF_MARK) :] for part in run))
    elif segment.marker == jpeg.COM:
        yield Inside("comment", decoded(segment.payload))
    elif not segment.starts(jpeg.APP13, jpeg.PHOTOSHOP_MARK) and list(picture_alone.kept_of(run)) != [segment]:
        raise ByteFault(0, FOREIGN, "T.81 B.2.4.6")


def _of_png(file: BinaryIO) -> Iterator[Inside]:
    for chunk in png.split(file):
        if chunk.type in (b"tEXt", b"zTXt", b"iTXt"):
            data = png.data_of(file, chunk)
            head, text, _ = png_texts.parted(chunk.type, data)
            yield Inside("text of a PNG", decoded(head))
            yield from of_xmp(text) if data.startswith(png.KEYWORD) else [Inside("text of a PNG", decoded(text))]
        elif chunk.type == b"eXIf":
            yield from _of_exif(png.data_of(file, chunk))
        elif chunk.type == b"iCCP":
            name, _, packed = png.data_of(file, chunk).partition(b"\x00")
            yield Inside("name of the colour profile", decoded(name))
            yield from _of_profile(png_texts.inflated(packed[1:], chunk.at))
        elif chunk.type not in picture_alone.PNG:
            raise ByteFault(chunk.at, FOREIGN, png.CLAUSE)


def _of_webp(file: BinaryIO) -> Iterator[Inside]:
    chunks, end = webp.split(file)
    if end != size_of(file):
        raise ByteFault(end, FOREIGN, webp.CLAUSE)
    for chunk in chunks:
        if chunk.type in (webp.PACKET, webp.EXIF, b"ICCP"):
            data = read_at(file, chunk.at + 8, chunk.length, webp.CLAUSE)
            readers = {webp.PACKET: of_xmp, webp.EXIF: _of_exif, b"ICCP": _of_profile}
            yield from readers[chunk.type](data.removeprefix(exif.MARK))
        elif chunk.type in (b"ANIM", b"ANMF") or chunk.type not in (*webp.PICTURE, b"VP8X"):
            raise ByteFault(chunk.at, FOREIGN, webp.CLAUSE)


def _of_tiff(file: BinaryIO) -> Iterator[Inside]:
    """Values by their tags; and what stands between the parts, where an earlier directory of ours may lie."""
    structure, chain = tiff.opened(file)
    picture_alone.check_pages(structure, chain)
    spans = [(0, 8)]
    for page in chain:
        for entry in page.entries:
            value = structure.value(entry) if entry.tag not in picture_alone.TIFF else b""
            if entry.tag == tiff.XMP_TAG:
                yield from of_xmp(value)
            elif entry.tag == tiff.IIM_TAG:
                yield from _of_iim(value)
            elif entry.tag in exif.TEXT_TAGS:
                yield Inside(exif.TEXT_TAGS[entry.tag], decoded(value))
            elif entry.tag == picture_alone.TIFF_PROFILE:
                yield from _of_profile(structure.value(entry))
            elif value:
                raise ByteFault(entry.at, FOREIGN, tiff.CLAUSE)
            spans.append((entry.value_at, entry.length))
        spans += [(start, length) for start, length, _ in tiff.picture_parts(structure, page)]
    for at, end in picture_alone.gaps(spans, structure.size):
        for start in range(at, end, picture_alone.WINDOW):
            yield from _of_runs(
                "between the parts of the file", read_at(file, start, min(picture_alone.WINDOW, end - start), "")
            )


def of_xmp(packet: bytes) -> Iterator[Inside]:
    """Every text, attribute and comment of a packet, whatever its namespace and shape."""
    root = xmp.parse_as_written(packet) if packet.strip(b"\x00 \t\r\n") else None
    for node in root.iter() if root is not None else ():
        name = node.tag.rpartition("}")[2] if isinstance(node.tag, str) else "comment"
        values = [*(node.attrib.values() if isinstance(node.tag, str) else ()), node.text, node.tail]
        yield from (Inside(f"XMP {name}", str(value)) for value in values if value and str(value).strip())


def _of_image_resources(block: bytes) -> Iterator[Inside]:
    parts, tail = image_resources.split(block)
    if tail.strip(b"\x00") or any(
        part.id not in (image_resources.IIM, image_resources.DIGEST) or part.name for part in parts
    ):
        raise ByteFault(0, FOREIGN, image_resources.CLAUSE)
    for part in parts:
        yield from _of_iim(part.data) if part.id == image_resources.IIM else ()


def _of_iim(block: bytes) -> Iterator[Inside]:
    for record, number, value in iim.split(block):
        yield Inside(f"IIM {record}:{number:02d}", decoded(value))


def _of_exif(block: bytes) -> Iterator[Inside]:
    """The three texts that our caption writes into; a block with another tag than them and the looks holds more."""
    structure = exif.block(block)
    directories = exif.all_directories(structure)
    for entry in directories[0].entries:
        if entry.tag in exif.TEXT_TAGS:
            yield Inside(f"Exif {exif.TEXT_TAGS[entry.tag]}", decoded(structure.value(entry)))
        elif entry.tag not in exif.LOOKS:
            raise ByteFault(entry.at, FOREIGN, "CIPA DC-008, 4.6")
    if len(directories) > 1:
        raise ByteFault(directories[1].at, FOREIGN, "CIPA DC-008, 4.5.2")


def _of_profile(profile: bytes) -> Iterator[Inside]:
    for words in colour_profiles.texts(profile) if profile else ():
        yield Inside("colour profile", words)


def _of_runs(where: str, data: bytes) -> Iterator[Inside]:
    """What can be read in bytes of no known shape: runs of letters, in 8 and in 16 bits."""
    for plain in (data, data.replace(b"\x00", b"")):
        for match in _RUN.finditer(plain):
            if _LETTERS.search(words := decoded(match[0])):
                yield Inside(where, words)
