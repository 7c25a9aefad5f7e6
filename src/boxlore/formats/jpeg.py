"""JPEG (ITU-T T.81 | ISO/IEC 10918-1) as a list of segments before the picture, which is never decoded.

From the first start-of-scan marker to the end of the file, trailers too, the bytes are one untouched run.
Our packet stands after the leading APP0 and Exif segments (XMP Specification Part 3, 1.1.3), then the image
resources; every other segment and fill byte stays as it is, in its order.
"""

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass
from typing import BinaryIO

from boxlore.core.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, iim, resources, xmp
from boxlore.formats.binary import Piece, read_at, size_of

XMP_MARK = b"http://ns.adobe.com/xap/1.0/\x00"
EXTENDED_MARK = b"http://ns.adobe.com/xmp/extension/\x00"
EXIF_MARK = b"Exif\x00\x00"
PHOTOSHOP_MARK = b"Photoshop 3.0\x00"
MPF_MARK = b"MPF\x00"
XMP_MOST = 65502
EXTENDED_MOST = 65458
RESOURCES_MOST = 65533 - len(PHOTOSHOP_MARK)

SOI, SOS, APP0, APP1, APP2, APP13, COM = 0xD8, 0xDA, 0xE0, 0xE1, 0xE2, 0xED, 0xFE
ALONE = {0x01, *range(0xD0, 0xD8)}


@dataclass(frozen=True, slots=True)
class Segment:
    """One marker segment: `raw` is all of it with the fill bytes before, `payload` what follows the length."""

    marker: int
    raw: bytes
    payload: bytes = b""

    def starts(self, marker: int, mark: bytes) -> bool:
        return self.marker == marker and self.payload.startswith(mark)


def split(file: BinaryIO) -> tuple[list[Segment], int]:
    """The segments after SOI up to the first scan, and the offset where the untouched rest begins."""
    if read_at(file, 0, 2, "T.81 B.1.1.3") != b"\xff\xd8":
        raise ByteFault(0, "This is no JPEG", "T.81 B.1.1.3")
    found: list[Segment] = []
    at = 2
    while True:
        file.seek(at)
        head = file.read(64)
        fill = len(head) - len(head.lstrip(b"\xff"))
        if not fill:
            raise ByteFault(at, "There is junk between two segments", "T.81 B.1.1.2")
        if fill >= len(head):
            raise ByteFault(at, "There are too many fill bytes, or the file ends here", "T.81 B.1.1.2")
        marker = head[fill]
        if marker == SOS:
            return found, at
        if marker in (0x00, SOI, 0xD9):
            raise ByteFault(at + fill, f"Marker FF{marker:02X} cannot stand here", "T.81 B.2.1")
        if marker in ALONE:
            found.append(Segment(marker, head[: fill + 1]))
            at += fill + 1
            continue
        length = int.from_bytes(read_at(file, at + fill + 1, 2, "T.81 B.1.1.4"), "big")
        if length < 2:
            raise ByteFault(at + fill + 1, f"A segment cannot be {length} bytes long", "T.81 B.1.1.4")
        raw = read_at(file, at, fill + 1 + length, "T.81 B.1.1.4")
        found.append(Segment(marker, raw, raw[fill + 3 :]))
        at += len(raw)


def segment(marker: int, payload: bytes) -> Segment:
    """A new segment. Raises ByteFault if the payload is too long for one."""
    if len(payload) > 65533:
        raise ByteFault(0, f"{len(payload)} bytes do not fit one segment", "T.81 B.1.1.4")
    return Segment(marker, bytes((0xFF, marker)) + (len(payload) + 2).to_bytes(2, "big") + payload, payload)


def packet_of(segments: Iterable[Segment]) -> tuple[bytes, list[bytes], list[str]]:
    """The standard packet, the extended one in pieces joined (if its GUID fits), and problems."""
    kept = list(segments)
    standard = [one.payload[len(XMP_MARK) :] for one in kept if one.starts(APP1, XMP_MARK)]
    problems = [f"The file holds {len(standard)} XMP packets; the first was used."] if len(standard) > 1 else []
    chunks: dict[bytes, dict[int, bytes]] = {}
    for one in kept:
        if one.starts(APP1, EXTENDED_MARK):
            body = one.payload[len(EXTENDED_MARK) :]
            chunks.setdefault(body[:32], {})[int.from_bytes(body[36:40], "big")] = body[40:]
    whole: list[bytes] = []
    for guid, parts in chunks.items():
        joined = b"".join(parts[at] for at in sorted(parts))
        if hashlib.md5(joined, usedforsecurity=False).hexdigest().upper().encode() == guid:
            whole.append(joined)
        else:
            problems.append("The extended XMP of the file does not fit its own digest; it was left as it is.")
    return (standard[0] if standard else b""), whole, problems


def _is_ours(one: Segment, *, extended: bool) -> bool:
    if one.starts(APP1, XMP_MARK) or one.starts(APP13, PHOTOSHOP_MARK):
        return True
    return extended and one.starts(APP1, EXTENDED_MARK)


def resource_block(segments: Iterable[Segment]) -> bytes:
    """All image resource segments joined, as one that was too long is spread over several."""
    return b"".join(one.payload[len(PHOTOSHOP_MARK) :] for one in segments if one.starts(APP13, PHOTOSHOP_MARK))


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and sentences about what was cut or in conflict."""
    segments, tail = split(file)
    if any(one.starts(APP2, MPF_MARK) for one in segments) and not embedding.drop_text:
        raise ByteFault(0, "The file holds several pictures (MPF) whose places would move", "CIPA DC-007, 5.2.3")
    standard, extended, reports = packet_of(segments)
    tree = xmp.merge(standard, embedding)
    for packet in extended if not embedding.drop_text else ():
        xmp.absorb(tree, packet)
    app1 = _xmp_segments(*xmp.divide(tree, XMP_MOST, (name for name, _ in embedding.xmp)))
    held, left = resources.split(b"" if embedding.drop_text else resource_block(segments))
    old, problems = resources.iim_of(held)
    datasets, cuts = iim.merge(iim.split(old), embedding.iim)
    block = resources.join(resources.with_iim(held, iim.join(datasets)), left)
    app13 = [segment(APP13, PHOTOSHOP_MARK + block[at : at + RESOURCES_MOST]) for at in _steps(block, RESOURCES_MOST)]
    kept = _kept(segments, embedding, extended=bool(extended) or embedding.drop_text)
    lead = _leading(kept)
    header = b"".join(one.raw for one in [*kept[:lead], *app1, *app13, *kept[lead:]])
    rest = size_of(file) - tail
    return [b"\xff\xd8" + header, (tail, rest)], [*reports, *problems, *cuts]


def _steps(data: bytes, size: int) -> range:
    return range(0, len(data), size)


def _kept(segments: list[Segment], embedding: Embedding, *, extended: bool) -> list[Segment]:
    kept: list[Segment] = []
    for one in segments:
        if _is_ours(one, extended=extended):
            continue
        if one.starts(APP1, EXIF_MARK):
            one = _exif_segment(one, embedding)
        elif embedding.drop_text and (one.marker == COM or (APP0 < one.marker <= 0xEF and not _needed(one))):
            continue
        kept.append(one)
    return kept


def _needed(one: Segment) -> bool:
    """Colour profile and colour transform: without them the picture looks another."""
    return one.starts(APP2, b"ICC_PROFILE\x00") or one.starts(0xEE, b"Adobe")


def _exif_segment(one: Segment, embedding: Embedding) -> Segment:
    data = one.payload[len(EXIF_MARK) :]
    try:
        tiff = exif.block(data)
        if embedding.drop_text:
            return segment(APP1, EXIF_MARK + exif.only_orientation(exif.facts(tiff)[1]))
        return segment(APP1, EXIF_MARK + exif.apply(data, exif.patches(tiff, embedding)))
    except ByteFault:
        if embedding.drop_text:
            return segment(APP1, EXIF_MARK + exif.only_orientation(1))
        raise


def _leading(segments: list[Segment]) -> int:
    """How many segments stand before ours: the first APP0s and Exif."""
    count = 0
    for one in segments:
        if not (one.marker == APP0 or one.starts(APP1, EXIF_MARK)):
            break
        count += 1
    return count


def _xmp_segments(packet: bytes, extended: bytes, guid: str) -> list[Segment]:
    head = EXTENDED_MARK + guid.encode() + len(extended).to_bytes(4, "big")
    chunks = [
        segment(APP1, head + at.to_bytes(4, "big") + extended[at : at + EXTENDED_MOST])
        for at in _steps(extended, EXTENDED_MOST)
    ]
    return [segment(APP1, XMP_MARK + packet), *chunks]


def differences(source: BinaryIO, copy: BinaryIO) -> tuple[list[str], tuple[int, int, int]]:
    """What differs besides our segments, and the runs that must be equal: (source, copy, length)."""
    before, tail = split(source)
    after, new_tail = split(copy)

    def others(segments: list[Segment]) -> list[bytes]:
        mine = (EXIF_MARK, EXTENDED_MARK)
        return [
            one.raw
            for one in segments
            if not _is_ours(one, extended=True) and not any(one.starts(APP1, mark) for mark in mine)
        ]

    found = [] if others(before) == others(after) else ["another segment than ours has changed"]
    length, new_length = size_of(source) - tail, size_of(copy) - new_tail
    if length != new_length:
        found.append("the picture's bytes are not as many as before")
    return found, (tail, new_tail, min(length, new_length))


def tails(source: BinaryIO, copy: BinaryIO) -> tuple[int, int, int]:
    """The runs from the first scan on that must be equal: (source, copy, length)."""
    _, tail = split(source)
    _, new_tail = split(copy)
    return tail, new_tail, size_of(source) - tail
