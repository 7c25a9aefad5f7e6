"""JPEG (ITU-T T.81 | ISO/IEC 10918-1) as a list of segments and the picture behind them, which is never decoded.

From the first start-of-scan marker to the end of the file the bytes are copied as one run. Only a place of capture
is taken out of what may stand behind the picture (further pictures, a film).
In the copy our XMP packet stands behind the leading APP0 and Exif segments (XMP Specification Part 3, 1.1.3), and
the image resources behind it. Every other segment stays as it is and in its order, with its fill bytes.
"""

import hashlib
import re
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from io import BytesIO
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.core.errors import ByteFault
from boxlore.formats import (
    exif,
    exif_copied,
    image_resources,
    mpf,
    places_in_texts,
    places_unread,
    xmp,
    xmp_merging,
    xmp_places,
)
from boxlore.formats.binary import Piece, patched, read_at, size_of

XMP_MARK = b"http://ns.adobe.com/xap/1.0/\x00"
EXTENDED_MARK = b"http://ns.adobe.com/xmp/extension/\x00"
EXIF_MARK = exif.MARK
PHOTOSHOP_MARK = b"Photoshop 3.0\x00"
XMP_MOST = 65502
EXTENDED_MOST = 65458
RESOURCES_MOST = 65533 - len(PHOTOSHOP_MARK)
EXIF_MOST = 65533 - len(EXIF_MARK)
"""The most bytes that one segment holds behind its mark (XMP Specification Part 3, 1.1.3; T.81 B.1.1.4)."""

SOI, EOI, SOS, APP0, APP1, APP2, APP13, COM = 0xD8, 0xD9, 0xDA, 0xE0, 0xE1, 0xE2, 0xED, 0xFE
LEFT_OUT = "Extended XMP of the file that cannot be read says where it was made, and was left out."
WITHOUT_LENGTH = {0x01, *range(0xD0, 0xD8)}
"""TEM and RST0 to RST7: markers that stand alone, without length and payload (T.81 B.1.1.3)."""


@dataclass(frozen=True, slots=True)
class Segment:
    """One marker segment. `raw` is all of it with the fill bytes before it, `payload` what follows its length."""

    marker: int
    raw: bytes
    payload: bytes = b""

    def starts(self, marker: int, mark: bytes) -> bool:
        """Whether it has this marker and its payload begins with this mark."""
        return self.marker == marker and self.payload.startswith(mark)


def split(file: BinaryIO) -> tuple[list[Segment], int]:
    """The segments between SOI and the first scan, and the offset of that scan's marker. Raises ByteFault.

    file    = SOI *segment SOS …             (T.81 B.2.1; … is not looked at here)
    segment = marker [length payload]        (B.1.1.4; length is 2 bytes, big-endian, and counts itself)
    marker  = 1*FF code                      (B.1.1.2; every FF but the last is a fill byte)
    """
    if read_at(file, 0, 2, "T.81 B.1.1.3") != b"\xff\xd8":
        raise ByteFault(0, "This is no JPEG", "T.81 B.1.1.3")
    segments: list[Segment] = []
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
            return segments, at
        if marker in (0x00, SOI, 0xD9):
            raise ByteFault(at + fill, f"Marker FF{marker:02X} cannot stand here", "T.81 B.2.1")
        if marker in WITHOUT_LENGTH:
            segments.append(Segment(marker, head[: fill + 1]))
            at += fill + 1
            continue
        length = int.from_bytes(read_at(file, at + fill + 1, 2, "T.81 B.1.1.4"), "big")
        if length < 2:
            raise ByteFault(at + fill + 1, f"A segment cannot be {length} bytes long", "T.81 B.1.1.4")
        raw = read_at(file, at, fill + 1 + length, "T.81 B.1.1.4")
        segments.append(Segment(marker, raw, raw[fill + 3 :]))
        at += len(raw)


def new_segment(marker: int, payload: bytes) -> Segment:
    """A new segment with this payload. Raises ByteFault if the payload is longer than 65,533 bytes (T.81 B.1.1.4)."""
    if len(payload) > 65533:
        raise ByteFault(0, f"{len(payload)} bytes do not fit one segment", "T.81 B.1.1.4")
    return Segment(marker, bytes((0xFF, marker)) + (len(payload) + 2).to_bytes(2, "big") + payload, payload)


@dataclass(frozen=True, slots=True)
class Packets:
    """The XMP of a file, and sentences about problems (XMP Specification Part 3, 1.1.3.1).

    `extended` holds (GUID, packet) of the extended packets that the standard one names; `further` are standard
    packets behind the first, of which a sound file has none.
    """

    standard: bytes
    extended: tuple[tuple[bytes, bytes], ...]
    further: tuple[bytes, ...]
    problems: tuple[str, ...]

    @property
    def to_join(self) -> tuple[bytes, ...]:
        """The packets whose properties are added to the standard packet where it lacks them."""
        return (*(body for _, body in self.extended), *self.further)


def packets_of(segments: Iterable[Segment]) -> Packets:
    """The XMP packets among the segments.

        standard = XMP_MARK packet
        extended = EXTENDED_MARK guid length offset part     (32 hexadecimal digits, 4 and 4 bytes, the rest)

    The parts of one GUID are joined by their offsets. An extended packet is used only if its MD5 digest equals its
    GUID and the standard packet names that GUID (XMP Specification Part 3, 1.1.3.1).
    """
    header = list(segments)
    standard = [segment.payload[len(XMP_MARK) :] for segment in header if segment.starts(APP1, XMP_MARK)]
    problems = (
        [f"The file holds {len(standard)} XMP packets; they were joined, the first before the others."]
        if len(standard) > 1
        else []
    )
    chunks: dict[bytes, dict[int, bytes]] = {}
    for segment in header:
        if segment.starts(APP1, EXTENDED_MARK):
            body = segment.payload[len(EXTENDED_MARK) :]
            chunks.setdefault(body[:32], {})[int.from_bytes(body[36:40], "big")] = body[40:]
    named_packets: list[tuple[bytes, bytes]] = []
    for guid, parts in chunks.items():
        joined = b"".join(parts[offset] for offset in sorted(parts))
        if hashlib.md5(joined, usedforsecurity=False).hexdigest().upper().encode() != guid:
            problems.append("The extended XMP of the file does not fit its own digest; it was not read.")
        elif not standard or guid not in standard[0]:
            problems.append("The file holds extended XMP that its packet does not name; it was not read.")
        else:
            named_packets.append((guid, joined))
    return Packets(standard[0] if standard else b"", tuple(named_packets), tuple(standard[1:]), tuple(problems))


def is_ours(segment: Segment, guids: Collection[bytes]) -> bool:
    """Whether the segment is one that the copy gets anew: XMP, an extended packet of `guids`, or image resources."""
    if segment.starts(APP1, XMP_MARK) or segment.starts(APP13, PHOTOSHOP_MARK):
        return True
    return guid_of(segment) in guids


def resource_block(segments: Iterable[Segment]) -> bytes:
    """The image resources of all segments joined; a block too long for one segment is spread over several."""
    return b"".join(
        segment.payload[len(PHOTOSHOP_MARK) :] for segment in segments if segment.starts(APP13, PHOTOSHOP_MARK)
    )


def rewrite(file: BinaryIO, embedding: Embedding) -> tuple[list[Piece], list[str]]:
    """The pieces of the copy, and sentences about texts that were cut, replaced or left out."""
    segments, tail = split(file)
    packets = packets_of(segments)
    root, reports = xmp_merging.captioned(packets.standard, embedding, packets.to_join)
    app1 = xmp_segments(*xmp.divide(root, XMP_MOST, (name for name, _ in embedding.xmp)))
    block, _, cuts = image_resources.captioned(resource_block(segments), embedding)
    app13 = resource_segments(block)
    carried, left_out = carried_over(segments, embedding, [guid for guid, _ in packets.extended])
    before = leading(carried)
    header = with_picture_index(segments, [*carried[:before], *app1, *app13, *carried[before:]])
    picture = from_first_scan(file, segments, tail, embedding)
    problems = packets.problems if not embedding.drop_text else ()
    return [b"\xff\xd8" + b"".join(segment.raw for segment in header), *picture], [
        *problems,
        *reports,
        *cuts,
        *left_out,
    ]


def resource_segments(block: bytes) -> list[Segment]:
    """The segments of a block of image resources; one too long for a segment is spread over several."""
    return [
        new_segment(APP13, PHOTOSHOP_MARK + block[at : at + RESOURCES_MOST]) for at in _steps(block, RESOURCES_MOST)
    ]


def _steps(data: bytes, size: int) -> range:
    return range(0, len(data), size)


def carried_over(
    segments: list[Segment], embedding: Embedding, guids: Collection[bytes]
) -> tuple[list[Segment], list[str]]:
    """The segments that the copy takes from the source, with `drop_text` only those that the picture needs; and
    sentences about what was left out.
    """
    unsafe = untrusted_with_place(segments, guids)
    carried, reports = list[Segment](), [LEFT_OUT] if unsafe else []
    for run in runs(segments):
        if not is_ours(run[0], guids) and guid_of(run[0]) not in unsafe:
            cleaned, problems = carried_run(run, embedding)
            carried += cleaned
            reports += problems
    return carried, reports


def carried_run(run: list[Segment], embedding: Embedding) -> tuple[list[Segment], list[str]]:
    """What the copy takes from one of the `runs` of segments that are not ours; and sentences."""
    segment = run[0]
    if segment.starts(APP1, EXIF_MARK):
        return _exif_segments(run, embedding)
    if embedding.drop_text and (segment.marker == COM or (APP0 < segment.marker <= 0xEF and not needed(segment))):
        return [], []
    return other_segment(segment, embedding)


def guid_of(segment: Segment) -> bytes:
    """The GUID of a part of an extended packet; empty for another segment."""
    mark_length = len(EXTENDED_MARK)
    return segment.payload[mark_length : mark_length + 32] if segment.starts(APP1, EXTENDED_MARK) else b""


def untrusted_with_place(segments: list[Segment], guids: Collection[bytes]) -> set[bytes]:
    """The GUIDs of extended packets that are not among `guids`, and say a place in their parts."""
    untrusted = {guid for segment in segments if (guid := guid_of(segment)) and guid not in guids}
    return {
        guid
        for guid in untrusted
        if xmp_places.NAMES_IN_BYTES.search(
            b"".join(segment.payload[len(EXTENDED_MARK) + 40 :] for segment in segments if guid_of(segment) == guid)
        )
    }


def other_segment(segment: Segment, embedding: Embedding) -> tuple[list[Segment], list[str]]:
    """A segment that we do not read: as it is, without a place in it, or left out with a sentence."""
    if (
        not (segment.marker == COM or APP0 < segment.marker <= 0xEF)
        or segment.starts(APP2, mpf.MARK)
        or needed(segment)
    ):
        return [segment], []
    try:
        payload = places_unread.cleaned(segment.payload, only_place=embedding.only_place)
    except ByteFault as fault:
        return [], [f"A segment of the file was left out: {fault.why}."]
    if payload == segment.payload:
        return [segment], []
    where = "the comment of the file" if segment.marker == COM else "a text of the file"
    reports = [places_in_texts.said(where)] if places_in_texts.patches(segment.payload) else []
    return [new_segment(segment.marker, payload)], reports


def runs(segments: Iterable[Segment]) -> Iterator[list[Segment]]:
    """The segments one by one, but an Exif segment together with those that go on with its block.

    Some writers spread a block over several segments, each with its mark (common practice, no source).
    """
    run: list[Segment] = []
    for segment in segments:
        goes_on = segment.starts(APP1, EXIF_MARK) and segment.payload[len(EXIF_MARK) :][:4] not in exif.HEADERS
        if run and not (goes_on and run[0].starts(APP1, EXIF_MARK)):
            yield run
            run = []
        run.append(segment)
    if run:
        yield run


def exif_blocks(segments: Iterable[Segment]) -> list[bytes]:
    """The Exif blocks, each joined where it is spread over several segments."""
    return [_block_of(run) for run in runs(segments) if run[0].starts(APP1, EXIF_MARK)]


def _block_of(run: list[Segment]) -> bytes:
    return b"".join(segment.payload[len(EXIF_MARK) :] for segment in run)


def needed(segment: Segment) -> bool:
    """Whether it is the colour profile or the colour transform, without which the picture's colours change."""
    return segment.starts(APP2, b"ICC_PROFILE\x00") or segment.starts(0xEE, b"Adobe")


def _exif_segments(run: list[Segment], embedding: Embedding) -> tuple[list[Segment], list[str]]:
    """The Exif segments of the copy, and a sentence if they are left out; the very same objects if nothing changes."""
    data = _block_of(run)
    rewritten, reports = exif_copied.captioned_or_left_out(data, embedding, EXIF_MOST if len(run) == 1 else len(data))
    if rewritten == data or not rewritten:
        return (run if rewritten else []), reports
    lengths = [len(segment.payload) - len(EXIF_MARK) for segment in run[:-1]]
    starts = [min(sum(lengths[:at]), len(rewritten)) for at in range(len(run))]
    parts = [rewritten[at:end] for at, end in zip(starts, [*starts[1:], len(rewritten)], strict=True)]
    return [new_segment(APP1, EXIF_MARK + part) for part in parts if part], reports


def leading(segments: list[Segment]) -> int:
    """How many of the first segments are APP0 or Exif; ours are put behind them."""
    count = 0
    for segment in segments:
        if not (segment.marker == APP0 or segment.starts(APP1, EXIF_MARK)):
            break
        count += 1
    return count


def with_picture_index(before: list[Segment], after: list[Segment]) -> list[Segment]:
    """The new header, with the offsets in its index of further pictures (see `mpf`) adjusted to the new lengths."""
    grown = sum(len(segment.raw) for segment in after) - sum(len(segment.raw) for segment in before)
    header: list[Segment] = []
    for index, segment in enumerate(after):
        if segment.starts(APP2, mpf.MARK):
            index_before = next(number for number, old in enumerate(before) if old is segment)
            behind = sum(len(later.raw) for later in after[index + 1 :]) - sum(
                len(later.raw) for later in before[index_before + 1 :]
            )
            header.append(new_segment(APP2, mpf.moved(segment.payload, grown=grown, behind=behind)))
        else:
            header.append(segment)
    return header


def from_first_scan(file: BinaryIO, segments: list[Segment], tail: int, embedding: Embedding) -> list[Piece]:
    """The pieces from the first scan on. With `drop_text` they end with the picture, else with the file."""
    size = size_of(file)
    if embedding.drop_text:
        return [(tail, picture_end(file, tail) - tail)]
    return patched(tail, size - tail, _places_behind(file, segments, tail, only_place=embedding.only_place))


def _places_behind(file: BinaryIO, segments: list[Segment], tail: int, *, only_place: bool) -> list[tuple[int, bytes]]:
    """Patches that take the place of capture out of what stands between the scans and behind the picture.

    That is looked at only if there is a sign of it: an index of further pictures, a place in the file's Exif, another
    picture's first bytes, a segment of an application or a comment, or an end that is not EOI.
    """
    size = size_of(file)
    signs = any(segment.starts(APP2, mpf.MARK) or _has_place(segment) for segment in segments)
    ends = read_at(file, max(0, size - 2), min(2, size), "T.81 B.1.1.3") == b"\xff\xd9"
    if not signs and ends and not _another_picture(file, tail, size):
        return []
    runs, end = list[tuple[int, int]](), size
    for marker, at in markers_behind(file, tail):
        if marker >= APP0:
            runs.append((at, min(size, at + int.from_bytes(file.read(2), "big"))))
        elif marker == EOI:
            end = at
    runs.append((end, size))
    return [
        patch
        for start, stop in runs
        for patch in places_unread.patches(file, start, stop, only_place=only_place, alone=True)
    ]


def _another_picture(file: BinaryIO, at: int, size: int) -> bool:
    """Whether another JPEG begins anywhere behind `at` (SOI and a marker), the picture ends before the file does, or
    a segment of an application or a comment may stand there.
    """
    while at < size:
        file.seek(at)
        if _START.search(file.read(WINDOW + 2)):
            return True
        at += WINDOW
    return False


def _has_place(segment: Segment) -> bool:
    try:
        return segment.starts(APP1, EXIF_MARK) and exif.facts(exif.block(segment.payload[len(EXIF_MARK) :])).has_gps
    except ByteFault:
        return True  # it cannot be read and may hold one


_START = re.compile(rb"\xff(?:[\xe0-\xfe]|\xd8\xff|\xd9.)", re.DOTALL)
"""APPn, JPGn or COM, SOI and a marker, or an end with something behind it. Among bytes dense with FF it is
twice as quick as `in`."""
_MARKER = re.compile(rb"\xff+([^\x00\xff\xd0-\xd7])", re.DOTALL)
WINDOW = 1 << 20


def picture_end(file: BinaryIO, tail: int) -> int:
    """The offset behind the first picture's end (EOI), searched from `tail`; the size of the file if there is none."""
    return next((at for marker, at in markers_behind(file, tail) if marker == EOI), size_of(file))


def markers_behind(file: BinaryIO, tail: int) -> Iterator[tuple[int, int]]:
    """(marker, offset behind it) of each marker from `tail` to the picture's end, without those of restarts. The file
    stands at that offset then.
    """
    at, size = tail, size_of(file)
    while at < size:
        file.seek(at)
        window = file.read(WINDOW)
        match = _MARKER.search(window)
        if match is None:
            at += len(window) if window[-1] != 0xFF or len(window) == 1 else len(window) - 1
            continue
        marker, at = match[1][0], at + match.end()
        file.seek(at)
        yield marker, at
        if marker == EOI:
            return
        if marker not in WITHOUT_LENGTH:
            file.seek(at)
            at += max(2, int.from_bytes(file.read(2), "big"))


def markers_in(stream: bytes) -> Iterator[int]:
    """The markers of a stream inside another file, which may begin with SOI or be a part of one."""
    return (marker for marker, _ in markers_behind(BytesIO(stream), 2 if stream.startswith(b"\xff\xd8") else 0))


def xmp_segments(packet: bytes, extended: bytes, guid: str) -> list[Segment]:
    """The segments of a packet and its extended packet, which is split; see `packets_of` for their grammar."""
    head = EXTENDED_MARK + guid.encode() + len(extended).to_bytes(4, "big")
    chunks = [
        new_segment(APP1, head + at.to_bytes(4, "big") + extended[at : at + EXTENDED_MOST])
        for at in _steps(extended, EXTENDED_MOST)
    ]
    return [new_segment(APP1, XMP_MARK + packet), *chunks]
