"""Texts of a picture that stand in slots which say what they are, beside XMP, IIM and the captions of Exif.

Keywords of PNG (W3C PNG 3rd ed., 11.3.3.1), the comment of a JPEG (ITU-T T.81, B.2.4.5), UserComment of Exif (CIPA
DC-008, 4.6.5) and the texts that Windows writes (from memory of its own tags). A comment is often a machine's own
line: which version of what made the file. That is no caption, and so is none that names a number of a version.
"""

import re
from collections.abc import Iterator
from contextlib import suppress
from typing import BinaryIO

from boxlore.core.errors import ByteFault
from boxlore.formats import exif, jpeg, picture_files, png, png_texts, tiff, webp
from boxlore.formats.binary import decoded
from boxlore.formats.said import USER_COMMENT, comment_texts
from boxlore.formats.tiff_directories import Tiff

NUL = b"\x00"
_OF_PNG = {"title": "title", "description": "caption", "comment": "caption", "author": "by", "copyright": "rights"}
_OF_WINDOWS = {0x9C9B: "title", 0x9C9C: "caption", 0x9C9D: "by", 0x9C9E: "keywords", 0x9C9F: "caption"}
"""XPTitle, XPComment, XPAuthor, XPKeywords, XPSubject."""
_VERSION = re.compile(r"\d\.\d|=|://|©|\(c\)|^(created|made|written|optimi[sz]ed|edited) (with|by)\b", re.IGNORECASE)
"""What stands in a machine's own line: a version, a setting, an address, a right."""


def slots(file: BinaryIO) -> Iterator[tuple[str, str]]:
    """(title, caption, keywords, by or rights, text) of each such slot, as far as the file can be read."""
    with suppress(ByteFault):
        file.seek(0)
        kind = picture_files.sniff(file.read(16))
        for name, text in _SLOTS[kind](file) if kind in _SLOTS else ():
            apart = text.replace(";", "; ") if name == "keywords" else text
            words = " ".join(apart.replace("\x00", " ").split())
            is_a_machines = name == "caption" and (_VERSION.search(words) or " " not in words)
            if any(letter.isalpha() for letter in words) and "\ufffd" not in words and not is_a_machines:
                yield name, words


def _of_jpeg(file: BinaryIO) -> Iterator[tuple[str, str]]:
    segments, _ = jpeg.split(file)
    for block in jpeg.exif_blocks(segments):
        yield from _of_exif(block)
    yield from (("caption", decoded(segment.payload)) for segment in segments if segment.marker == jpeg.COM)


def _of_png(file: BinaryIO) -> Iterator[tuple[str, str]]:
    for chunk in png.split(file):
        if chunk.type == b"eXIf":
            yield from _of_exif(png.data_of(file, chunk))
        elif chunk.type in (b"tEXt", b"zTXt", b"iTXt") and not png.is_packet(file, chunk):
            with suppress(ByteFault):
                head, text, _ = png_texts.parted(chunk.type, png.data_of(file, chunk))
                name = _OF_PNG.get(decoded(head.partition(NUL)[0]).casefold())
                yield from [(name, decoded(text))] if name else ()


def _of_webp(file: BinaryIO) -> Iterator[tuple[str, str]]:
    for block in webp.exif_of(file):
        yield from _of_exif(block)


def _of_tiff(file: BinaryIO) -> Iterator[tuple[str, str]]:
    structure, _ = tiff.opened(file)
    yield from _of_directories(structure)


def _of_exif(block: bytes) -> Iterator[tuple[str, str]]:
    with suppress(ByteFault):
        yield from _of_directories(exif.block(block.removeprefix(exif.MARK)))


def _of_directories(structure: Tiff) -> Iterator[tuple[str, str]]:
    for directory in exif.all_directories(structure, chain=False):
        for entry in directory.entries:
            with suppress(ByteFault):
                if entry.tag in _OF_WINDOWS:
                    yield _OF_WINDOWS[entry.tag], structure.value(entry).decode("utf-16-le", "replace")
                elif entry.tag == USER_COMMENT:
                    yield from (("caption", text) for text in comment_texts(structure.value(entry)))


_SLOTS = {
    picture_files.FileFormat.JPEG: _of_jpeg,
    picture_files.FileFormat.PNG: _of_png,
    picture_files.FileFormat.TIFF: _of_tiff,
    picture_files.FileFormat.WEBP: _of_webp,
}
