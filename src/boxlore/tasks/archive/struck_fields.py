"""Of what words were struck: a table in the closed part, so that a collection made of the transfer knows it too, and
no older table, worksheet or answer brings the words back there.

It holds no words and no name of whoever struck them: only which field of which thing, by the ids that the records have.
A marker, which gets a new id when a collection is made anew, stands under its name in the linked data.
"""

from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path

from boxlore.core.fields.cells import read_rows
from boxlore.core.statements import Kind
from boxlore.store.values import Struck
from boxlore.tasks.archive.transfer_updates import URN
from boxlore.tasks.collection.opening import Collection

TABLE = "metadata/struck.csv"
HEADING = ("Kind", "Identifier", "Field", "Statement", "When")
_KINDS = frozenset(map(str, Kind))


def struck_rows(
    collection: Collection, items: Iterable[str] | None = None, without: Iterable[str] = ()
) -> Iterator[list[str]]:
    """The rows, with their heading; of these items and what belongs to them, or of everything (None). `without` are
    items that are not told of."""
    yield list(HEADING)
    chosen, names = _named(collection, items)
    left_out, _ = _named(collection, without)
    for struck in collection.store.tombstones():
        if (items is None or struck.subject in chosen) and struck.subject not in left_out:
            name = names.get(struck.subject, f"{URN}{struck.subject}")
            yield [struck.kind, name, struck.field, struck.statement, struck.at]


def _named(collection: Collection, items: Iterable[str] | None) -> tuple[set[str], dict[str, str]]:
    """The ids of the items, their scans and markers; and what each marker is called in the linked data."""
    chosen: set[str] = set()
    names: dict[str, str] = {}
    for material in collection.store.about_items(ids=None if items is None else list(items)):
        chosen |= {material.id, *(scan.id for scan in material.scans), *(marker.id for marker in material.markers)}
        names |= {marker.id: f"{URN}{marker.scan}#marker-{marker.number}" for marker in material.markers}
    return chosen, names


def read_struck(metadata: Path, markers: Mapping[str, str], by: str) -> Iterator[Struck]:
    """What the table of a part says; `markers` are the new ids of markers by their names in the linked data."""
    table = metadata / Path(TABLE).name
    if not table.is_file():
        return
    with open(table, encoding="utf-8-sig", newline="") as file:
        for row in read_rows(file):
            name = row.get("Identifier") or ""
            kind, field = row.get("Kind") or "", row.get("Field") or ""
            if name and field and kind in _KINDS:
                subject = markers.get(name, name.removeprefix(URN))
                yield Struck(row.get("Statement") or "", kind, subject, field, row.get("When") or "", by)
