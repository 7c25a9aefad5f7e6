"""The inventory as a CSV table.

The table is CSV in UTF-8 (`core.fields.cells`). Its columns are named after elements of DACS and ISAD(G); the
collection and each container have rows of their own.
"""

import codecs
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import groupby

from boxlore.core.crosswalk import captions
from boxlore.core.crosswalk.beside_dublin_core import beside_identifier
from boxlore.core.crosswalk.dublin_core import (
    CollectionFacts,
    access_words,
    headings,
    in_question,
    of_the_whole,
    own_provenance,
    rights_notes,
    rights_of,
    size_words,
)
from boxlore.core.crosswalk.extent import Extent
from boxlore.core.crosswalk.scan_file_names import packed_path
from boxlore.core.crosswalk.series import series_words
from boxlore.core.crosswalk.sound import Beside
from boxlore.core.fields.cells import write_row
from boxlore.core.places.reading import full_name
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import ContainerPath, Mark
from boxlore.exports.collection_description import container_code, folder_title, reference_code
from boxlore.exports.escaping import clean

COLUMNS = (
    "Level of description", "Reference code", "Number", "Identifier", "Title", "Date", "Date (EDTF)", "Extent", "Box",
    "Folder", "Item", "Where it lies", "Series", "Scope and content", "Name of creator", "Names", "Place",
    "Physical characteristics", "Custodial history", "Conditions governing access", "Closed until",
    "Conditions governing reproduction", "Location of originals", "The archive's reference", "Files",
)  # fmt: skip


def inventory_rows(records: Iterable[Record], facts: CollectionFacts, extent: Extent) -> Iterator[list[str]]:
    """The rows: the heading, the collection, then each container before its items; a container with items is titled
    and dated as in the finding aid.

    `records` must come in the order of their containers.
    """
    yield list(COLUMNS)
    whole = {"Level of description": "collection", "Reference code": reference_code(facts), "Title": facts.title}
    whole |= {"Custodial history": " ".join(map(captions.sentence, of_the_whole(facts)))}
    yield _upper(
        whole | {"Identifier": f"urn:uuid:{facts.id}", "Date": extent.date_words, "Extent": extent.words}, facts
    )
    written: set[ContainerPath] = set()
    for _, inside in groupby(records, key=lambda record: record.container_path[:1]):
        counted: dict[ContainerPath, Extent] = {}
        items: list[tuple[ContainerPath, list[str]]] = []
        for record in inside:
            path = record.container_path
            items.append((path, _item(record, facts)))
            for depth in range(1, len(path) + 1):
                counted.setdefault(path[:depth], Extent(not_given=facts.not_given)).add(record)
        for path, row in items:
            for depth in range(1, len(path) + 1):
                if (part := path[:depth]) not in written:
                    written.add(part)
                    yield _container(part, counted[part], facts)
            yield row
    yield from (_beside(held, facts) for held in facts.beside)


def _beside(held: Beside, facts: CollectionFacts) -> list[str]:
    """The row of a recording or paper."""
    cells = {
        "Level of description": "item", "Reference code": held.reference or held.path, "Title": held.title,
        "Date": held.day, "Identifier": beside_identifier(held, facts), "The archive's reference": held.reference,
        "Extent": ", ".join(filter(None, (f"1 {held.kind}", held.length_words))), "Names": "; ".join(held.speakers),
        "Conditions governing access": held.access,
        "Closed until": str(held.closure.until) if held.closure else "", "Files": held.path,
    }  # fmt: skip
    return [cells.get(name, "") for name in COLUMNS]


def _container(path: ContainerPath, within: Extent, facts: CollectionFacts) -> list[str]:
    """The row of a container; `within` counts the items that lie in it, also in another inside it."""
    kind, labels = path[-1][0], dict(path)
    cells = {"Level of description": kind, "Where it lies": Mark(path).long}
    cells |= {"Box": labels.get("box", ""), "Folder": labels.get("folder", "")}
    own = facts.of_containers.get(path, "")
    cells |= {"Reference code": own or container_code(path, facts), "The archive's reference": own}
    extent = within.kinds_words or within.kept_words
    cells |= {"Title": folder_title(within, facts), "Date": within.date_words, "Extent": extent}
    facts = facts if within.given else replace(facts, originals=False)
    return _upper(cells, facts)


def _upper(told: Mapping[str, str], facts: CollectionFacts) -> list[str]:
    """The row of the collection or of a container: what is told of it, by column."""
    cells = {**dict.fromkeys(COLUMNS, ""), "Location of originals": originals_words(facts), **told}
    return [cells[name] for name in COLUMNS]


def originals_words(facts: CollectionFacts) -> str:
    """Where the originals are: handed over with the package, or kept by the family."""
    return "handed over with this package" if facts.originals else f"with {facts.held_by}"


def _original_of(record: Record, facts: CollectionFacts) -> str:
    """Where the original of an item is: what the family keeps may have been handed over before, and is asked back."""
    if day := facts.asked_back(record.id):
        return f"handed over on {day}, asked back by {facts.held_by}"
    if facts.originals and record.id in facts.lent and record.id not in facts.not_given:
        return "not handed over: it belongs to somebody who lent it"
    return f"with {facts.held_by}" if record.id in facts.not_given else originals_words(facts)


def _item(record: Record, facts: CollectionFacts) -> list[str]:
    """The row of one item."""
    mark, place, closure = record.mark, record.place, facts.closure_of(record)
    told_place = record.first("place")
    references = "; ".join(reference.words for reference in record.all("archive_reference"))
    cells = (
        "item",
        references or record.number,
        record.number,
        f"urn:uuid:{record.id}",
        captions.title(record, captions.Style(brackets=facts.brackets)),
        record.formal_date,
        record.edtf,
        f"1 {captions.nature_of(record)}",
        mark.label("box") if mark else "",
        mark.label("folder") if mark else "",
        str(mark.item) if mark and mark.item else "",
        mark.long if mark else "",
        series_words(record),
        " ".join(
            [
                captions.caption(record, "sheet"),
                *(story.words for story in record.all("story")),
                *captions.own_lines(record),
                *in_question(record, facts),
            ]
        ).strip(),
        "; ".join(headings(record.shown("photographer"), facts.people)),
        "; ".join(headings((shown for shown in record.named_people if shown.role != "photographer"), facts.people)),
        full_name(place) if place else told_place.words if told_place else "",
        ", ".join(part for part in (record.words("process"), size_words(record)) if part),
        " ".join(map(captions.sentence, own_provenance(record, facts))),
        " ".join(access_words(record, facts)),
        str(closure.until) if closure else "",
        "; ".join((rights_of(record, facts), *rights_notes(record, facts))),
        _original_of(record, facts),
        references,
        "; ".join(packed_path(record, scan) for scan in record.open_scans),
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
