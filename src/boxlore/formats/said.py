"""Everything that a scan says beside its picture, whichever slot of whichever carrier holds it.

The readers of `picture_files.read` know what a slot means; here every text counts alike, because a name in a region of
a face or in a comment says as plainly who is shown as one in a caption. What a machine writes of itself (its make, its
versions, ids and dates) is left out. A part that cannot be read is passed over: it is reported where it is opened.
"""

import re
from collections.abc import Iterable, Iterator
from contextlib import suppress
from typing import BinaryIO

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
from boxlore.formats.binary import decoded, read_at
from boxlore.formats.tiff_directories import Directory, Tiff

OF_MACHINES = frozenset((0x010F, 0x0110, 0x0131, 0x0132, 0x9003, 0x9004, 0x9010, 0x9011, 0x9012))
"""Make, Model, Software, and the dates and time zones of Exif (CIPA DC-008, tables 4 and 7)."""
NUL = b"\x00"
USER_COMMENT, CODE_SIZE = 0x9286, 8
WINDOWS_TEXTS = range(0x9C9B, 0x9CA0)
"""XPTitle to XPSubject, in UTF-16 with the least significant byte first (from memory of Windows' own tags)."""
_TAG = re.compile(rb"<[^<>]*>")
_OF_VERSIONS = (
    "http://ns.adobe.com/xap/1.0/mm/",
    "http://ns.adobe.com/xap/1.0/sType/Resource",
    "http://www.w3.org/XML/1998/namespace",
)
"""Namespaces of the history of a file, and of languages: ISO 16684-1, 8.4 and 8.6 (from memory)."""


def texts(file: BinaryIO) -> Iterator[str]:
    """Every text, each once, on one line; none of a file that is none of the four formats, or from a fault on."""
    return _each_once(_texts(file))


PERSONS, REGIONS = ("PersonName", "PersonDisplayName"), frozenset({"RegionList", "ImageRegion"})
"""Elements of XMP that name somebody shown, and those below which `Name` does: PersonInImageWDetails and ImageRegion of
IPTC Extension, MWG Guidelines 2.0, 5.9; PersonDisplayName is of Microsoft's regions (from memory)."""


def people_shown(file: BinaryIO) -> Iterator[str]:
    """The names of those whom the XMP of a picture says that it shows, each once; none from a fault on."""
    return _each_once(name for body in _packets(file) for name in _shown_by(body))


def profile_texts(file: BinaryIO) -> Iterator[str]:
    """Those of the texts that stand in the colour profile, which is the same in every scan of one machine."""
    return _each_once(text for text in _texts(file) if isinstance(text, _OfProfile))


class _OfProfile(str):
    """A text of a colour profile, or its name."""

    __slots__ = ()


def _each_once(texts: Iterable[str]) -> Iterator[str]:
    """Texts with letters in them, each once and on one line, as far as they can be read."""
    seen: set[str] = set()
    with suppress(ByteFault):
        for text in texts:
            line = " ".join(text.replace("\x00", " ").split())
            if line not in seen and any(letter.isalpha() for letter in line):
                seen.add(line)
                yield line


def _packets(file: BinaryIO) -> Iterator[bytes]:
    packet, further = picture_files.packets(file)
    yield from (packet, *further)


def _shown_by(packet: bytes) -> Iterator[str]:
    root = xmp.parse(packet) if packet.strip(b"\x00 \t\r\n") else None
    for node in root.iter() if root is not None else ():
        if not isinstance(node.tag, str):
            continue
        above = {_local(each.tag) for each in node.iterancestors() if isinstance(each.tag, str)}
        is_region = not above.isdisjoint(REGIONS)
        names = (*PERSONS, "Name") if is_region else PERSONS
        if _local(node.tag) in names or ("PersonInImage" in above and not len(node)):
            yield from (str(text) for text in node.itertext())
        yield from (str(value) for name, value in node.attrib.items() if _local(str(name)) in names)


def _local(name: str) -> str:
    return name.rpartition("}")[2]


def _texts(file: BinaryIO) -> Iterator[str]:
    file.seek(0)
    kind = picture_files.sniff(file.read(16))
    if kind is None:
        raise ByteFault(0, "This is no JPEG, PNG, TIFF or WebP", "the first bytes of the file")
    with suppress(ByteFault):
        for body in _packets(file):
            yield from _of_xmp(body)
    yield from _READERS[kind](file)


def _of_jpeg(file: BinaryIO) -> Iterator[str]:
    segments, _ = jpeg.split(file)
    yield from _of_resources(jpeg.resource_block(segments))
    for block in jpeg.exif_blocks(segments):
        yield from _of_exif(block)
    yield from (decoded(segment.payload) for segment in segments if segment.marker == jpeg.COM)
    yield from _of_profile(
        b"".join(segment.payload[14:] for segment in segments if segment.starts(jpeg.APP2, picture_alone.PROFILE))
    )


def _of_png(file: BinaryIO) -> Iterator[str]:
    for chunk in png.split(file):
        if chunk.type in (b"tEXt", b"zTXt", b"iTXt") and not png.is_packet(file, chunk):
            with suppress(ByteFault):
                head, text, _ = png_texts.parted(chunk.type, png.data_of(file, chunk))
                yield f"{decoded(head.partition(NUL)[0])}: {decoded(text)}"
        elif chunk.type == b"eXIf":
            yield from _of_exif(png.data_of(file, chunk).removeprefix(exif.MARK))
        elif chunk.type == b"iCCP":
            name, _, packed = png.data_of(file, chunk).partition(NUL)
            yield _OfProfile(decoded(name))
            with suppress(ByteFault):
                yield from _of_profile(png_texts.inflated(packed[1:], chunk.at))


def _of_webp(file: BinaryIO) -> Iterator[str]:
    for block in webp.exif_of(file):
        yield from _of_exif(block.removeprefix(exif.MARK))
    for chunk in webp.split(file)[0]:
        if chunk.type == b"ICCP":
            yield from _of_profile(read_at(file, chunk.at + 8, chunk.length, webp.CLAUSE))


def _of_tiff(file: BinaryIO) -> Iterator[str]:
    structure, chain = tiff.opened(file)
    yield from _of_directories(structure, {page.at: page for page in (*chain, *exif.all_directories(structure))})
    for page in chain:
        for entry in page.entries:
            if entry.tag == tiff.XMP_TAG:
                yield from _of_xmp(structure.value(entry))
            elif entry.tag == tiff.IIM_TAG:
                yield from _of_iim(structure.value(entry))
            elif entry.tag == tiff.RESOURCES_TAG:
                yield from _of_resources(structure.value(entry))
            elif entry.tag == picture_alone.TIFF_PROFILE:
                yield from _of_profile(structure.value(entry))


def _of_exif(block: bytes) -> Iterator[str]:
    with suppress(ByteFault):
        structure = exif.block(block)
        yield from _of_directories(structure, {page.at: page for page in exif.all_directories(structure)})


def _of_directories(structure: Tiff, directories: dict[int, Directory]) -> Iterator[str]:
    """The texts of directories, each once, by the types and tags of their entries."""
    for directory in directories.values():
        for entry in directory.entries:
            is_text = entry.type == exif.ASCII and entry.tag not in OF_MACHINES
            if not is_text and entry.tag != USER_COMMENT and entry.tag not in WINDOWS_TEXTS:
                continue
            with suppress(ByteFault):
                value = structure.value(entry)
                if entry.tag in WINDOWS_TEXTS:
                    yield value.decode("utf-16-le", "replace")
                elif entry.tag == USER_COMMENT:
                    yield from comment_texts(value)
                else:
                    yield decoded(value)


def comment_texts(value: bytes) -> Iterator[str]:
    """UserComment: a code of 8 bytes, and the text; in 16 bits either byte may stand first (DC-008, 4.6.5, table 9)."""
    code, text = value[:CODE_SIZE], value[CODE_SIZE:]
    if code.startswith(b"UNICODE"):
        yield max((text.decode(order, "replace") for order in ("utf-16-le", "utf-16-be")), key=_in_ascii)
    else:
        yield decoded(text)


def _of_xmp(packet: bytes) -> Iterator[str]:
    """Texts and attributes of every element, but of those that tell the versions of a file; of a packet that is no XMP
    all but its tags."""
    try:
        root = xmp.parse(packet) if packet.strip(b"\x00 \t\r\n") else None
    except ByteFault:
        yield decoded(_TAG.sub(b" ", packet))
        return
    for node in root.iter() if root is not None else ():
        if isinstance(node.tag, str) and not _is_of_versions(node.tag):
            yield from (str(value) for name, value in node.attrib.items() if not _is_of_versions(str(name)))
            yield node.text or ""


def _is_of_versions(name: str) -> bool:
    return name.startswith(tuple(f"{{{namespace}" for namespace in _OF_VERSIONS))


def _of_resources(block: bytes) -> Iterator[str]:
    with suppress(ByteFault):
        for part in image_resources.split(block)[0]:
            yield from _of_iim(part.data) if part.id == image_resources.IIM else ()


def _of_iim(block: bytes) -> Iterator[str]:
    with suppress(ByteFault):
        values_by_name, _ = iim.texts(iim.split(block))
        yield from (text for values in values_by_name.values() for text in values)


def _of_profile(profile: bytes) -> Iterator[str]:
    """Each text once, as the letters stand: both readings of a value are given, and one of them is no words."""
    with suppress(ByteFault):
        yield from map(_OfProfile, _plain(colour_profiles.texts(profile) if profile else ()))


def _plain(words: Iterable[str]) -> Iterator[str]:
    for text in words:
        kept = "".join(letter if letter.isprintable() else " " for letter in text)
        if _in_ascii(kept) * 2 > len(kept):
            yield kept


def _in_ascii(text: str) -> int:
    return sum(letter.isascii() for letter in text)


_READERS = {
    picture_files.FileFormat.JPEG: _of_jpeg,
    picture_files.FileFormat.PNG: _of_png,
    picture_files.FileFormat.TIFF: _of_tiff,
    picture_files.FileFormat.WEBP: _of_webp,
}
