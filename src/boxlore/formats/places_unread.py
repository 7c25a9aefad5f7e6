"""Taking the place of capture out of bytes whose format we do not read: a HEIC, a JPEG 2000, what follows a JPEG.

The place where a file was made is often somebody's home. Whatever can say it is looked for by its own first bytes,
wherever it stands, and patched by as many bytes:

- a TIFF structure, behind the mark `Exif` or without it, as HEIF, Photoshop and JPEG 2000 keep it: its GPS directories
  are emptied and unlinked (see `exif`);
- an XMP packet: its coordinates are taken out, and the room is filled with spaces (ISO 16684-1, 7.3);
- a point in words or figures, as comments, captions and keywords have it, becomes spaces (see `places_in_texts`);
- a film's location: the figures of `©xyz` and of every text of ISO 6709 become 0, the numbers of `loci` too (QuickTime
  File Format; 3GPP TS 26.244, 8.2).

A file that says a place in another way is refused; so is one whose metadata is compressed (ISO/IEC 14496-12, 8.11.6;
ISO/IEC 18181-2, 9.8), for it cannot be looked into.
"""

import re
from collections.abc import Iterator
from io import BytesIO
from typing import BinaryIO

from lxml import etree

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, places_in_texts, xmp, xmp_places
from boxlore.formats.binary import read_at
from boxlore.formats.tiff_directories import open_tiff

CLAUSE = "Exif, CIPA DC-008, 4.6.6"
WINDOW, OVERLAP, MOST_PACKET = 4 << 20, 512, 4 << 20

Patch = tuple[int, bytes]

_SIGNS = (
    b"II*\x00", b"MM\x00*", b"\xa9xyz", b"loci\x00\x00\x00\x00", b"ISO6709", b"pmeta", b":RDF", b"<RDF",
    b"rdf+xml\x00", b"brob",
    b"atitude", b"ongitude", b"ATITUDE", b"a\x00t\x00i\x00t\x00u\x00d\x00e",
)  # fmt: skip
"""Bytes of which one stands in every match below; looking for each is far quicker than the pattern."""

_PLACES = re.compile(
    rb"(?P<structure>II\*\x00|MM\x00\*)"
    rb"|\xa9xyz....(?P<film>[+-][0-9.]+[+-][0-9.]+)"
    rb"|(?P<text>[+-][0-9]{2}\.[0-9]+[+-][0-9]{3}\.[0-9]+(?:[+-][0-9.]+)?/)"
    rb"|loci\x00{4}..[^\x00]*\x00.(?P<numbers>.{12})"
    rb"|<(?P<packet>(?:[A-Za-z]+:)?x[am]pmeta|(?:[A-Za-z]+:)?RDF)[\s>]"
    rb"|rdf\+xml\x00(?:deflate|gzip|br|compress)|brob(?:Exif|xml )"
    rb"|GPS(?:Dest)?L(?:at|ong)itude|G\x00P\x00S\x00L\x00(?:a\x00t|o\x00n\x00g)\x00i\x00t\x00u\x00d\x00e",
    re.DOTALL | re.IGNORECASE,
)


def patches(file: BinaryIO, start: int, end: int, *, only_place: bool = False, alone: bool = False) -> list[Patch]:
    """(offset in the file, new bytes) for every place of capture between two offsets, sorted.

    But with `only_place` the dates of Exif blocks are set too, as in every copy. For `alone` see
    `places_in_texts.spans`. Raises ByteFault for a place that no
    patch can take out.
    """
    changes = dict(_patches(file, start, end, only_place=only_place))
    return places_in_texts.joined(changes.items(), _written(file, start, end, alone=alone))


def cleaned(data: bytes, *, only_place: bool = False, texts: bool = True, alone: bool = False) -> bytes:
    """The bytes without a place of capture; the very same where there is none. Raises ByteFault as `patches`.

    Without `texts` points that are written into texts stay: those of a caption that we have put in.
    """
    file, end = BytesIO(data), len(data)
    changes = (
        patches(file, 0, end, only_place=only_place, alone=alone)
        if texts
        else list(_patches(file, 0, end, only_place=only_place, texts=False))
    )
    return exif.apply(data, changes) if changes else data


def _written(file: BinaryIO, start: int, end: int, *, alone: bool) -> Iterator[Patch]:
    """Patches over points in texts, window by window as in `_patches`."""
    for at in range(start, end, WINDOW):
        window = read_at(file, at, min(WINDOW + OVERLAP, end - at), CLAUSE)
        changes = places_in_texts.patches(window, alone=alone)
        yield from ((at + offset, new) for offset, new in changes if offset < WINDOW)


def _patches(file: BinaryIO, start: int, end: int, *, only_place: bool, texts: bool = True) -> Iterator[Patch]:
    """The patches window by window; windows overlap, so that a mark on the border of two is seen whole."""
    at, done = start, start
    reached: set[int] = set()
    while at < end:
        window = read_at(file, at, min(WINDOW + OVERLAP, end - at), CLAUSE)
        for match in _PLACES.finditer(window) if any(sign in window for sign in _SIGNS) else ():
            found_at = at + match.start()
            if match.start() >= WINDOW or found_at < done:
                continue  # it belongs to the next window, or stands in a packet that is done
            if match["structure"]:
                marked = window[max(0, match.start() - len(exif.MARK)) : match.start()] == exif.MARK
                yield from _emptied(file, found_at, end, reached, full=marked and not only_place, texts=texts)
            elif match["packet"]:
                name = match["packet"]
                packet = _packet(read_at(file, found_at, min(MOST_PACKET, end - found_at), CLAUSE), name)
                done = found_at + len(packet)
                yield from ((found_at, new) for new in _without_place(packet, found_at))
            else:
                yield at + _figures_at(match), _zeros(match, found_at)
        at += WINDOW


def _figures_at(match: re.Match[bytes]) -> int:
    return match.start(match.lastgroup or 0)


def _zeros(match: re.Match[bytes], found_at: int) -> bytes:
    """The figures of a film's place as zeros. Raises ByteFault for a name of GPS that stands in no packet, and for
    compressed metadata.
    """
    if match["numbers"]:
        return bytes(12)
    figures = match["film"] or match["text"]
    if not figures:
        raise ByteFault(found_at, "It says where it was made in a way that cannot be emptied", CLAUSE)
    return re.sub(rb"[0-9]", b"0", figures)


def _emptied(file: BinaryIO, block: int, end: int, reached: set[int], *, full: bool, texts: bool) -> Iterator[Patch]:
    """The patches of an Exif block, or of another TIFF structure, that begins at `block`.

    `reached` gathers where its directories stand in the file. One that stands there already is a page of the structure
    before: some writers put a header before each page, whose offsets still count from the file's begin.
    """
    size = end - block
    try:
        tiff = open_tiff(lambda at, length: read_at(file, block + at, min(length, size - at), CLAUSE), size)
        if block + tiff.first in reached or not exif.is_block(tiff):
            return
        reached.update(block + directory.at for directory in exif.all_directories(tiff))
        try:
            changes = exif.patches(tiff, Embedding()) if full else exif.place_patches(tiff)
        except ByteFault:
            changes = exif.place_patches(tiff)
    except ByteFault:
        return  # it is no Exif, so no reader finds a place in it
    changes = places_in_texts.joined(changes, exif.text_patches(tiff) if texts else ())
    yield from ((block + at, new) for at, new in changes if at + len(new) <= size)


def _packet(data: bytes, name: bytes) -> bytes:
    """The packet up to its closing tag; all of `data` where it has none."""
    closed = data.find(b"</" + name + b">")
    return data[: closed + len(name) + 3] if closed >= 0 else data


def _without_place(packet: bytes, at: int) -> Iterator[bytes]:
    """The packet without coordinates, of the same length; nothing where it has none."""
    try:
        root = xmp.parse_as_written(packet)
    except ByteFault:
        if xmp_places.NAMES_IN_BYTES.search(packet):
            raise ByteFault(at, "It says where it was made in XMP that is damaged", CLAUSE) from None
        return
    if xmp_places.taken_out(root).gone:
        written: bytes = etree.tostring(root, encoding="utf-8")
        if len(written) > len(packet):
            raise ByteFault(at, "It says where it was made in a way that cannot be emptied", CLAUSE)
        yield written.ljust(len(packet))
