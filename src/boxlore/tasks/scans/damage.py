"""The scans that were cut off or broken when they were taken in: nothing is lost of them, and each is named.

`look_closer` notes what it could not decode; the finding itself is a rule about the record (`core.rules.of_record`).
"""

from collections.abc import Sequence

from boxlore.core.fields.pictures import LOOKS_WORDS
from boxlore.core.findings import Finding
from boxlore.core.rules.of_record import damaged_scans
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.records import EVERYTHING, Selection, records


def damage_findings(collection: Collection, numbers: Sequence[str] | None = None) -> list[tuple[str, Finding]]:
    """(item's number, finding) of each damaged scan in whose place no whole one came; of these items, or of all."""
    damaged = [words for _, _, words in collection.store.words_of(("looks",)) if LOOKS_WORDS.or_none(words) is None]
    if not damaged or (numbers is not None and not numbers):
        return []
    chosen = EVERYTHING if numbers is None else Selection(items=tuple(numbers))
    return [(record.number, finding) for record in records(collection, chosen) for finding in damaged_scans(record, {})]
