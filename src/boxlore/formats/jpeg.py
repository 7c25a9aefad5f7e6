"""JPEG (ITU-T T.81 | ISO/IEC 10918-1) as a list of segments before the picture, which is never decoded.

From the first start-of-scan marker to the end of the file, trailers too, the bytes are one run, untouched but for
the place of capture in what stands behind the picture (further pictures, a film).
Our packet stands after the leading APP0 and Exif segments (XMP Specification Part 3, 1.1.3), then the image
resources; every other segment and fill byte stays as it is, in its order.
"""

import hashlib
import re
from collections.abc import Collection, Iterable
from dataclasses import dataclass
from typing import BinaryIO

from boxlore.core.crosswalk.embedding import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import exif, merging, mpf, opaque, resources, xmp
from boxlore.formats.binary import Piece, patched, read_at, size_of

XMP_MARK = b"http://ns.adobe.com/xap/1.0/\x00"
EXTENDED_MARK = b"http://ns.adobe.com/xmp/extension/\x00"
EXIF_MARK = b"Exif\x00\x00"
PHOTOSHOP_MARK = b"Photoshop 3.0\x00"
XMP_MOST = 65502
EXTENDED_MOST = 65458
RESOURCES_MOST = 65533 - len(PHOTOSHOP_MARK)
EXIF_MOST = 65533 - len(EXIF_MARK)

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


@dataclass(frozen=True, slots=True)
class Packets:
    """The XMP of a file: the standard packet, the extended ones that belong to it (by GUID), further ones, problems."""

    standard: bytes
    extended: tuple[tuple[bytes, bytes], ...]
    further: tuple[bytes, ...]
    problems: tuple[str, ...]

    @property
    def more(self) -> tuple[bytes, ...]:
        """What is taken into the standard packet where it does not say the same already."""
        return (*(body for _, body in self.extended), *self.further)


def packets_of(segments: Iterable[Segment]) -> Packets:
    """What XMP there is; an extended packet is used only if it fits its own digest and is the one meant."""
    kept = list(segments)
    standard = [one.payload[len(XMP_MARK) :] for one in kept if one.starts(APP1, XMP_MARK)]
    problems = (
        [f"The file holds {len(standard)} XMP packets; they were joined, the first before the others."]
        if len(standard) > 1
        else []
    )
    chunks: dict[bytes, dict[int, bytes]] = {}
    for one in kept:
        if one.starts(APP1, EXTENDED_MARK):
            body = one.payload[len(EXTENDED_MARK) :]
            chunks.setdefault(body[:32], {})[int.from_bytes(body[36:40], "big")] = body[40:]
    whole: list[tuple[bytes, bytes]] = []
    for guid, parts in chunks.items():
        joined = b"".join(parts[at] for at in sorted(parts))
        if hashlib.md5(joined, usedforsecurity=False).hexdigest().upper().encode() != guid:
            problems.append("The extended XMP of the file does not fit its own digest; it was left as it is.")
        elif not standard or guid not in standard[0]:
            problems.append("The file holds extended XMP that its packet does not name; it was left as it is.")
        else:
            whole.append((guid, joined))
    return Packets(standard[0] if standard else b"", tuple(whole), tuple(standard[1:]), tuple(problems))


def _is_ours(one: Segment, guids: Collection[bytes]) -> bool:
    if one.starts(APP1, XMP_MARK) or one.starts(APP13, PHOTOSHOP_MARK):
        return True
    mark = len(EXTENDED_MARK)
    return one.starts(APP1, EXTENDED_MARK) and one.payload[mark : mark + 32] in guids


def resource_block(segments: Iterable[Segment]) -> bytes:
    """All image resource segments joined, as one that was too long is spread over several."""
    return b"".join(one.payload[len(PHOTOSHOP_MARK) :] for one in segments if one.starts(APP13, PHOTOSHOP_MARK))


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and sentences about what was cut or in conflict."""
    segments, tail = split(file)
    packets = packets_of(segments)
    root, reports = merging.captioned(packets.standard, embedding, packets.more)
    app1 = _xmp_segments(*xmp.divide(root, XMP_MOST, (name for name, _ in embedding.xmp)))
    block, _, cuts = resources.captioned(resource_block(segments), embedding)
    app13 = [segment(APP13, PHOTOSHOP_MARK + block[at : at + RESOURCES_MOST]) for at in _steps(block, RESOURCES_MOST)]
    kept = _kept(segments, embedding, [guid for guid, _ in packets.extended])
    lead = _leading(kept)
    header = _with_pictures_found(segments, [*kept[:lead], *app1, *app13, *kept[lead:]])
    rest = _rest(file, segments, tail, drop=embedding.drop_text)
    problems = packets.problems if not embedding.drop_text else ()
    return [b"\xff\xd8" + b"".join(one.raw for one in header), *rest], [*problems, *reports, *cuts]


def _steps(data: bytes, size: int) -> range:
    return range(0, len(data), size)


def _kept(segments: list[Segment], embedding: Embedding, guids: Collection[bytes]) -> list[Segment]:
    kept: list[Segment] = []
    for one in segments:
        if _is_ours(one, guids):
            continue
        if one.starts(APP1, EXIF_MARK):
            kept += _exif_segment(one, embedding)
        elif not embedding.drop_text or not (one.marker == COM or (APP0 < one.marker <= 0xEF and not _needed(one))):
            kept.append(one)
    return kept


def _needed(one: Segment) -> bool:
    """Colour profile and colour transform: without them the picture looks another."""
    return one.starts(APP2, b"ICC_PROFILE\x00") or one.starts(0xEE, b"Adobe")


def _exif_segment(one: Segment, embedding: Embedding) -> list[Segment]:
    data = one.payload[len(EXIF_MARK) :]
    if embedding.drop_text:
        made = exif.only_looks(data)
        return [segment(APP1, EXIF_MARK + made)] if made else []
    made = exif.captioned(data, embedding, EXIF_MOST)
    return [one if made == data else segment(APP1, EXIF_MARK + made)]


def _leading(segments: list[Segment]) -> int:
    """How many segments stand before ours: the first APP0s and Exif."""
    count = 0
    for one in segments:
        if not (one.marker == APP0 or one.starts(APP1, EXIF_MARK)):
            break
        count += 1
    return count


def _with_pictures_found(before: list[Segment], after: list[Segment]) -> list[Segment]:
    """The new header with the index of further pictures, if there is one, put right."""
    grown = sum(len(one.raw) for one in after) - sum(len(one.raw) for one in before)
    made: list[Segment] = []
    for at, one in enumerate(after):
        if one.starts(APP2, mpf.MARK):
            was = next(number for number, old in enumerate(before) if old is one)
            behind = sum(len(two.raw) for two in after[at + 1 :]) - sum(len(two.raw) for two in before[was + 1 :])
            made.append(segment(APP2, mpf.moved(one.payload, grown=grown, behind=behind)))
        else:
            made.append(one)
    return made


def _rest(file: BinaryIO, segments: list[Segment], tail: int, *, drop: bool) -> list[Piece]:
    """From the first scan on: for outside the picture alone; else all, without the place of its making."""
    size = size_of(file)
    if drop:
        return [(tail, picture_end(file, tail) - tail)]
    return patched(tail, size - tail, _places_behind(file, segments, tail))


def _places_behind(file: BinaryIO, segments: list[Segment], tail: int) -> list[tuple[int, bytes]]:
    """Patches of what stands behind the picture. It is looked for only where a file shows a sign of it."""
    size = size_of(file)
    signs = any(one.starts(APP2, mpf.MARK) or _has_place(one) for one in segments)
    if not signs and read_at(file, max(0, size - 2), min(2, size), "T.81 B.1.1.3") == b"\xff\xd9":
        return []
    return opaque.patches(file, picture_end(file, tail), size)


def _has_place(one: Segment) -> bool:
    try:
        return one.starts(APP1, EXIF_MARK) and exif.facts(exif.block(one.payload[len(EXIF_MARK) :])).has_gps
    except ByteFault:
        return True  # it cannot be read, so look


_MARKER = re.compile(rb"\xff+([^\x00\xff\xd0-\xd7])", re.DOTALL)
WINDOW = 1 << 20


def picture_end(file: BinaryIO, tail: int) -> int:
    """The offset behind the end of the first picture (EOI); the end of the file where it has none."""
    at, size = tail, size_of(file)
    while at < size:
        file.seek(at)
        window = file.read(WINDOW)
        found = _MARKER.search(window)
        if found is None:
            at += len(window) if window[-1] != 0xFF or len(window) == 1 else len(window) - 1
            continue
        marker, at = found[1][0], at + found.end()
        if marker == 0xD9:
            return at
        if marker not in ALONE:
            file.seek(at)
            at += max(2, int.from_bytes(file.read(2), "big"))
    return size


def _xmp_segments(packet: bytes, extended: bytes, guid: str) -> list[Segment]:
    head = EXTENDED_MARK + guid.encode() + len(extended).to_bytes(4, "big")
    chunks = [
        segment(APP1, head + at.to_bytes(4, "big") + extended[at : at + EXTENDED_MOST])
        for at in _steps(extended, EXTENDED_MOST)
    ]
    return [segment(APP1, XMP_MARK + packet), *chunks]


def differences(source: BinaryIO, copy: BinaryIO, *, outside: bool) -> tuple[list[str], list[tuple[int, int, int]]]:
    """What differs besides our segments, and the runs that must be equal: (source, copy, length).

    With `outside` only the segments that the picture is decoded by are held against each other.
    """
    before, tail = split(source)
    after, new_tail = split(copy)

    def others(segments: list[Segment]) -> list[bytes]:
        if outside:
            return [one.raw for one in segments if one.marker < APP0 or _needed(one)]
        apart = (XMP_MARK, EXTENDED_MARK, EXIF_MARK)
        found = [one for one in segments if not any(one.starts(APP1, mark) for mark in apart)]
        return [one.raw for one in found if not (one.starts(APP13, PHOTOSHOP_MARK) or one.starts(APP2, mpf.MARK))]

    found = [] if others(before) == others(after) else ["another segment than ours has changed"]
    end = picture_end(source, tail) if outside else size_of(source)
    if size_of(copy) - new_tail != end - tail:
        found.append("the picture's bytes are not as many as before")
        return found, []
    pieces = [(tail, end - tail)] if outside else _rest(source, before, tail, drop=False)
    at, runs = new_tail, list[tuple[int, int, int]]()
    for piece in pieces:
        if isinstance(piece, tuple):
            runs.append((piece[0], at, piece[1]))
        at += len(piece) if isinstance(piece, bytes) else piece[1]
    return found, runs
