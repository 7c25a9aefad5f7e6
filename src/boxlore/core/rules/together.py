"""What records say only together: the same day or occasion at two places far apart."""

from collections.abc import Iterable, Iterator

from boxlore.core.findings import Finding, Severity
from boxlore.core.places.reading import distance_km
from boxlore.core.records.in_force import Record

FAR_KM = 300
"""A day's journey by rail before motorways (ours); nearer is nobody's business."""

Where = tuple[str, str, tuple[float, float]]


class Together:
    """Fed record after record; keeps only where each day and occasion was. Memory grows with days, not words."""

    def __init__(self) -> None:
        self._seen: dict[str, list[Where]] = {}

    def add(self, record: Record) -> Iterator[tuple[str, Finding]]:
        """The number of the item and the finding, where an earlier record of that day lay far away."""
        place = record.place
        if place is None or (point := place.point) is None:
            return
        for key, said in _days(record):
            earlier = self._seen.setdefault(key, [])
            far = next((one for one in earlier if distance_km(point, one[2]) > FAR_KM), None)
            if far is not None:
                yield record.number, _finding(said, place.name, far)
            if not any(one[1] == place.name for one in earlier):
                earlier.append((record.number, place.name, point))


def _days(record: Record) -> Iterable[tuple[str, str]]:
    """What must have been in one place: a day known exactly, an occasion of the family."""
    if len(record.edtf) == 10 and record.edtf.replace("-", "").isdigit():
        yield record.edtf, f"on {record.date_display}"
    occasion = record.first("occasion")
    if occasion is not None and occasion.meant:
        yield occasion.meant, f"at “{occasion.words[:60]}”"


def _finding(said: str, name: str, far: Where) -> Finding:
    return Finding(
        rule="place.far",
        severity=Severity.ASK,
        message=f"{name} and {far[1]} both {said}: which of the two was it, or was it another day?",
        because=(f"{far[0]} is told of {far[1]}, more than {FAR_KM} km away",),
        source="common practice, no source",
    )
