"""The inventory as a CSV table, and the page that explains the package and how to check it.

The table is CSV in UTF-8 (`core.fields.cells`). Its columns are named after elements of DACS and ISAD(G); the
collection and each container have rows of their own.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from html import escape

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
                title = " / ".join(f"{kind.capitalize()} {label}" for kind, label in part)
                yield _upper(part[-1][0], "", title, "", "", facts, dict(part))
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
    cells["Reference code"] = facts.accession if level == "collection" else ""
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


def as_csv(rows: Iterable[Sequence[str]]) -> Iterator[bytes]:
    """The rows as lines of CSV in UTF-8 (`core.fields.cells`), without characters that no text may hold."""
    for row in rows:
        yield write_row(map(clean, row)).encode("utf-8")


_CHECKS = (
    ("Linux, in a terminal opened in this folder", "sha512sum --quiet -c manifest-sha512.txt"),
    ("macOS, in Terminal opened in this folder", "shasum -a 512 -c manifest-sha512.txt"),
    (
        "Windows, in PowerShell opened in this folder",
        "Get-Content manifest-sha512.txt | % { $h, $f = $_ -split '  ', 2; "
        'if ((Get-FileHash $f -Algorithm SHA512).Hash -ne $h) { "CHANGED: $f" } }',
    ),
)
"""(system, command): how to check a bag with the tools that the system has already."""


def readme(facts: CollectionFacts, extent: Extent, part: str, contents: Sequence[tuple[str, str]]) -> bytes:
    """The HTML page to open first: what the package is, what each file is, how to check it without our program.

    `part` is the name of the package's folder, which begins with `closed` for the closed part; `contents` is (path,
    what the file is).
    """
    closed = (
        "<p><strong>This is the closed part.</strong> It names people taken as living. Each item says until when it "
        "is closed, and why. It is not to be shown before that day.</p>"
        if part.startswith("closed")
        else "<p>This is the open part: the names of people taken as living, and scans that show or name them, are "
        "left out. They are in the closed part.</p>"
    )
    rows = "".join(f"<tr><td><code>{escape(path)}</code></td><td>{escape(words)}</td></tr>" for path, words in contents)
    checks = "".join(f"<dt>{escape(system)}</dt><dd><pre>{escape(line)}</pre></dd>" for system, line in _CHECKS)
    whereabouts = (
        "handed over with it" if facts.originals else f"kept by {facts.holder or 'the family'}; these are scans only"
    )
    return f"""<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>{escape(clean(facts.title))}</title>
<style>body{{font:1rem/1.5 serif;max-width:46rem;margin:2rem auto;padding:0 1rem}}
td,dt{{vertical-align:top;padding-right:1rem}}pre{{white-space:pre-wrap}}</style></head><body>
<h1>{escape(clean(facts.title))}</h1>
<p>{escape(extent.words)}; {escape(extent.years)}.
The originals are {escape(clean(whereabouts))}. Made on {facts.on_day}.</p>
{closed}
<h2>What is here</h2><table>{rows}</table>
<h2>Is it whole?</h2>
<p>This folder is a bag (BagIt 1.0, RFC 8493). Every file below <code>data/</code> is listed with its SHA-512
in <code>manifest-sha512.txt</code>. To check it no program of ours is needed:</p>
<dl>{checks}</dl>
<p>Nothing said, or “OK” behind each file, means that every file is as it was packed.</p>
<h2>What to send back</h2>
<p>Please fill in <code>data/metadata/receipt.csv</code> (accession number, your own reference for each item)
and send it back; the family's copies and albums will carry your references from then on.</p>
<p>Rights statements and forms in this package state what the family knows. They are no legal advice.</p>
</body></html>
""".encode()
