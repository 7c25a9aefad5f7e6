"""The inventory as a CSV table.

The table is CSV in UTF-8 (`core.fields.cells`). Its columns are named after elements of DACS and ISAD(G); the
collection and each container have rows of their own.
"""

import codecs
from collections.abc import Iterable, Iterator, Mapping, Sequence

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.dublin_core import (
    CollectionFacts,
    access_words,
    authority_form,
    provenance,
    rights_of,
    size_words,
)
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.fields.cells import write_row
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import Mark
from boxlore.exports.collection_description import reference_code
from boxlore.exports.escaping import clean

COLUMNS = (
    "Level of description", "Reference code", "Identifier", "Title", "Date", "Date (EDTF)", "Extent", "Box", "Folder",
    "Item", "Where it lies", "Scope and content", "Name of creator", "Names", "Place", "Physical characteristics",
    "Custodial history", "Conditions governing access", "Closed until", "Conditions governing reproduction",
    "Location of originals", "The archive's reference", "Files",
)  # fmt: skip


def inventory_rows(records: Iterable[Record], facts: CollectionFacts, extent: Extent) -> Iterator[list[str]]:
    """The rows: the heading, the collection, then each container before its items.

    `records` must come in the order of their containers.
    """
    yield list(COLUMNS)
    yield _upper("collection", f"urn:uuid:{facts.id}", facts.title, extent.years, extent.words, facts)
    written: set[tuple[tuple[str, str], ...]] = set()
    for record in records:
        path = record.mark.path if record.mark else ()
        for depth in range(1, len(path) + 1):
            if (part := path[:depth]) not in written:
                written.add(part)
                yield _upper(part[-1][0], "", Mark(part).long, "", "", facts, dict(part))
        yield _item(record, facts)


def _upper(
    level: str,
    code: str,
    title: str,
    date: str,
    extent: str,
    facts: CollectionFacts,
    path: Mapping[str, str] | None = None,
) -> list[str]:
    """The row of the collection or of a container; `path` gives the container's labels by kind."""
    cells = dict.fromkeys(COLUMNS, "")
    cells |= {"Level of description": level, "Identifier": code, "Title": title, "Date": date, "Extent": extent}
    cells |= {"Box": (path or {}).get("box", ""), "Folder": (path or {}).get("folder", "")}
    cells["Reference code"] = reference_code(facts) if level == "collection" else ""
    cells["Location of originals"] = originals_words(facts)
    return [cells[name] for name in COLUMNS]


def originals_words(facts: CollectionFacts) -> str:
    """Where the originals are: handed over with the package, or kept by the family."""
    return "handed over with this package" if facts.originals else f"with {facts.holder or 'the family'}"


def _item(record: Record, facts: CollectionFacts) -> list[str]:
    """The row of one item."""
    mark, place, closure = record.mark, record.place, facts.closure_of(record)
    told_place = record.first("place")
    cells = (
        "item",
        record.number,
        f"urn:uuid:{record.id}",
        captions.title(record, brackets=facts.brackets),
        record.date_display,
        record.edtf,
        f"1 {captions.NATURE.get(record.kind, record.kind)}",
        mark.label("box") if mark else "",
        mark.label("folder") if mark else "",
        str(mark.item) if mark and mark.item else "",
        mark.long if mark else "",
        " ".join(
            [
                captions.caption(record, "sheet"),
                *(story.words for story in record.all("story")),
                *captions.own_lines(record),
            ]
        ).strip(),
        "; ".join(authority_form(photographer, facts.people) for photographer in record.shown("photographer")),
        "; ".join(
            authority_form(person, facts.people) for person in record.named_people if person.role != "photographer"
        ),
        full_name(place) if place else told_place.words if told_place else "",
        ", ".join(part for part in (record.words("process"), size_words(record)) if part),
        " ".join(provenance(record, facts)),
        " ".join(access_words(record, facts)),
        str(closure.until) if closure else "",
        rights_of(record, facts),
        originals_words(facts),
        "; ".join(reference.words for reference in record.all("archive_reference")),
        "; ".join(packed_path(record, scan) for scan in (() if record.closed_scans else record.scans)),
    )
    return list(cells)


def as_table(rows: Iterable[Sequence[str]]) -> Iterator[bytes]:
    """The same for people to open: with a byte order mark, by which spreadsheets know UTF-8 (RFC 3629, 6)."""
    yield codecs.BOM_UTF8
    yield from as_csv(rows)


def as_csv(rows: Iterable[Sequence[str]]) -> Iterator[bytes]:
    """The rows as lines of CSV in UTF-8 (`core.fields.cells`), without characters that no text may hold."""
    for row in rows:
        yield write_row(map(clean, row)).encode("utf-8")
