"""Heads proposed: a number for each face of a picture, so that whoever tells only has to say the names.

Where a face is, never whose: nothing of a face is compared, and nothing is kept but the places that the keeper takes,
as markers like those set by hand. Where a care note stands by a picture, nobody looks unless the keeper says so.
"""

from statistics import mean

from boxlore.core.errors import WrongUse
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.records.marker_positions import Point
from boxlore.disk.outlines import Head
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.telling.markers import Markers

ROW = 0.8
"""Heads are of one row where they lie no further apart, up or down, than this part of a head."""


def propose_heads(
    collection: Collection, markers: Markers, record: Record, scan: ScanFile, *, despite_care: bool = False
) -> list[Point]:
    """The places of faces that have no marker yet, in 0..1 of the picture as it is looked at, row by row from the back,
    each from the left. Takes seconds. Raises WrongUse for a picture with a care note, CouldNot without the extra."""
    if record.words("care") and not despite_care:
        raise WrongUse(f"{record.number} has a care note, and heads are not looked for on such a picture.")
    from boxlore.disk.seeing import heads_in

    heads = heads_in(collection.folder / scan.path, area=scan.part, turn=scan.turn)
    marked = [marker for marker in markers.of(record) if marker.scan == scan.id]
    free = [
        head
        for head in heads
        if not any(abs(mark.x - head.x) < head.width and abs(mark.y - head.y) < head.height for mark in marked)
    ]
    return [(head.x, head.y) for row in _rows(free) for head in sorted(row)]


def _rows(heads: list[Head]) -> list[list[Head]]:
    rows: list[list[Head]] = []
    for head in sorted(heads, key=lambda each: each.y):
        if rows and head.y - mean(each.y for each in rows[-1]) < ROW * head.height:
            rows[-1].append(head)
        else:
            rows.append([head])
    return rows
