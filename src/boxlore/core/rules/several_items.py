"""A rule over several records: the same day or occasion is told at two places that are far apart."""

from collections.abc import Iterable, Iterator

from boxlore.core.findings import Finding, Severity, make_finding
from boxlore.core.places.reading import distance_km
from boxlore.core.records.item_record import Record

FAR_KM = 300
"""In km: about a day's journey by rail. Places nearer than that raise no question (common practice, no source)."""

Where = tuple[str, str, tuple[float, float]]
"""An item's number, the name of its place, and (latitude, longitude) in degrees."""


class Together:
    """The rule, given record after record with `add`. It remembers only where each day and each occasion was."""

    def __init__(self) -> None:
        self._seen: dict[str, list[Where]] = {}

    def add(self, record: Record) -> Iterator[tuple[str, Finding]]:
        """(the item's number, finding) if an earlier record of the same day or occasion was far away."""
        place = record.place
        if place is None or (point := place.point) is None:
            return
        for key, when in _days(record):
            earlier = self._seen.setdefault(key, [])
            far = next((visit for visit in earlier if distance_km(point, visit[2]) > FAR_KM), None)
            if far is not None:
                yield record.number, _far_finding(when, place.name, far)
            if not any(visit[1] == place.name for visit in earlier):
                earlier.append((record.number, place.name, point))


def _days(record: Record) -> Iterable[tuple[str, str]]:
    """(key, words) of what must have been in one place: a day that is known exactly, an event of the family."""
    if len(record.edtf) == 10 and record.edtf.replace("-", "").isdigit():
        yield record.edtf, f"on {record.date_display}"
    occasion = record.first("occasion")
    if occasion is not None and occasion.meant:
        yield occasion.meant, f"at “{occasion.words[:60]}”"


def _far_finding(when: str, name: str, far: Where) -> Finding:
    number, far_name, _ = far
    message = f"{name} and {far_name} both {when}: which of the two was it, or was it another day?"
    because = f"{number} is told of {far_name}, more than {FAR_KM} km away"
    return make_finding("place.far", Severity.ASK, message, "common practice, no source", because)
