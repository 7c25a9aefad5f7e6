"""A JPEG without the place of its making, and with everything else: what leaves for outside is no copy of ours.

Nothing is written anew but what said the place. A file in which nothing does comes out to the byte as it was.
"""

from collections.abc import Collection
from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import PLACE_TAKEN_OUT
from boxlore.core.errors import ByteFault
from boxlore.formats import image_resources, jpeg, places_in_texts, xmp, xmp_places
from boxlore.formats.binary import Piece
from boxlore.formats.jpeg import Segment


def rewrite(file: BinaryIO) -> tuple[list[Piece], list[str]]:
    """The pieces of the file without the place, and sentences about what was left out with it. Raises ByteFault."""
    segments, tail = jpeg.split(file)
    packets = jpeg.packets_of(segments)
    guids = [guid for guid, _ in packets.extended]
    old_app1 = [segment for segment in segments if _is_xmp(segment, guids)]
    old_app13 = [segment for segment in segments if segment.starts(jpeg.APP13, jpeg.PHOTOSHOP_MARK)]
    app1, xmp_reports = _xmp(packets, old_app1)
    app13, reports = _resources(old_app13)
    reports = [*xmp_reports, *reports]
    anew: dict[int, list[Segment]] = {}
    for old, new in ((old_app1, app1), (old_app13, app13)):
        if new is not old:
            anew |= {id(segment): [] for segment in old} | {id(old[0]): new}
    unsafe = jpeg.untrusted_with_place(segments, guids)
    reports += [jpeg.LEFT_OUT] if unsafe else []
    header: list[Segment] = []
    for run in jpeg.runs(segments):
        if id(run[0]) in anew:
            header += anew[id(run[0])]  # all of the new ones stand where the first of the old ones stood
        elif run[0] in old_app1 or run[0] in old_app13:
            header += run
        elif jpeg.guid_of(run[0]) not in unsafe:
            cleaned, problems = jpeg.carried_run(run, PLACE_TAKEN_OUT)
            header += cleaned
            reports += problems
    start = b"\xff\xd8" + b"".join(segment.raw for segment in jpeg.with_picture_index(segments, header))
    return [start, *jpeg.from_first_scan(file, segments, tail, PLACE_TAKEN_OUT)], reports


def _is_xmp(segment: Segment, guids: Collection[bytes]) -> bool:
    return segment.marker == jpeg.APP1 and jpeg.is_ours(segment, guids)


def _xmp(packets: jpeg.Packets, segments: list[Segment]) -> tuple[list[Segment], list[str]]:
    """The segments of the XMP without a place, the same where it has none; and sentences about what went with it."""
    try:
        root, _ = xmp.gathered(packets.standard, packets.to_join)
    except ByteFault:
        bodies = (packets.standard, *packets.to_join)
        says = any(xmp_places.NAMES_IN_BYTES.search(body) or places_in_texts.patches(body) for body in bodies)
        return ([], ["The XMP of the file is damaged and was left out."]) if says else (segments, [])
    gone, reports = xmp_places.taken_out(root)
    return (jpeg.xmp_segments(*xmp.divide(root, jpeg.XMP_MOST, ())) if gone else segments), reports


def _resources(segments: list[Segment]) -> tuple[list[Segment], list[str]]:
    """The segments of the image resources without a place, the same where there is none; and sentences."""
    block = jpeg.resource_block(segments)
    try:
        cleaned, reports = image_resources.without_place(block)
    except ByteFault as fault:
        return [], [f"The image resources of the file are damaged ({fault.why}) and were left out."]
    return (segments if cleaned == block else jpeg.resource_segments(cleaned)), reports
