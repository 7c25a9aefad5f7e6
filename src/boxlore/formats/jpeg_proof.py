"""A copy of a JPEG held against its source: every segment that is not ours, and every byte from the first scan on."""

from typing import BinaryIO

from boxlore.core.crosswalk.metadata_values import Embedding
from boxlore.formats import jpeg, mpf
from boxlore.formats.binary import same_bytes, size_of


def differences(source: BinaryIO, copy: BinaryIO, embedding: Embedding) -> tuple[list[str], list[tuple[int, int, int]]]:
    """Sentences about segments that differ, and the runs still to be compared: (source offset, copy offset, length).

    Segments of ours are not compared; others as a copy with that embedding takes them over. With `drop_text` only those
    that the picture is decoded by are compared.
    """
    before, tail = jpeg.split(source)
    after, new_tail = jpeg.split(copy)
    problems = (
        [] if _compared(before, embedding) == _compared(after, embedding) else ["another segment than ours has changed"]
    )
    end = jpeg.picture_end(source, tail) if embedding.drop_text else size_of(source)
    if size_of(copy) - new_tail != end - tail:
        problems.append("the picture's bytes are not as many as before")
        return problems, []
    if same_bytes(source, tail, copy, new_tail, end - tail):
        return problems, []
    pieces = jpeg.from_first_scan(source, before, tail, embedding)  # a place behind the picture was taken out
    at, runs = new_tail, list[tuple[int, int, int]]()
    for piece in pieces:
        if isinstance(piece, tuple):
            runs.append((piece[0], at, piece[1]))
        at += len(piece) if isinstance(piece, bytes) else piece[1]
    return problems, runs


def _compared(segments: list[jpeg.Segment], embedding: Embedding) -> list[bytes]:
    """The segments that a copy and its source have in common, byte for byte, once both are without a place."""
    if embedding.drop_text:
        return [segment.raw for segment in segments if segment.marker < jpeg.APP0 or jpeg.needed(segment)]
    our_marks = (jpeg.XMP_MARK, jpeg.EXTENDED_MARK, jpeg.EXIF_MARK)
    others = [segment for segment in segments if not any(segment.starts(jpeg.APP1, mark) for mark in our_marks)]
    return [
        cleaned.raw
        for segment in others
        if not (segment.starts(jpeg.APP13, jpeg.PHOTOSHOP_MARK) or segment.starts(jpeg.APP2, mpf.MARK))
        for cleaned in jpeg.other_segment(segment, embedding)[0]
    ]
