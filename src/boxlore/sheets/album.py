"""The album caption sheet: six photographs a page with all that is known of each, then stories and indexes.

Every picture carries its number and its place in the box; every page the day it was printed.
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.findings import Finding
from boxlore.core.records.in_force import PersonShown, Record
from boxlore.core.statements import fold
from boxlore.sheets.figure import Room, Shelf, figure, needs
from boxlore.sheets.print_run import Printing, shared, told_words
from boxlore.sheets.safe_words import isolated, language_of, paragraphs
from boxlore.sheets.typesetting import made_pdf, texts

MOST_STORY = 260
"""Letters of the stories under a picture; longer ones flow on at the end of the album."""

POINT = 25.4 / 72
"""A typographic point in millimetres."""

BEGINNING = 150
"""Letters of a long story that stand under its picture."""

WORDS = {
    "stories": "Stories",
    "goes_on": "The story is on page",
    "advice": "Printing and keeping this sheet",
}


def make_sheet(
    records: Sequence[Record], pictures: Mapping[str, Path], printing: Printing
) -> tuple[bytes, list[Finding]]:
    """The sheet as a PDF, and what could not be shown. `pictures` maps `picture_key` to a plain JPEG."""
    with tempfile.TemporaryDirectory() as folder:
        shelf = Shelf(pictures, Path(folder), [])
        entries = [_entry(one, shelf, printing) for one in records]
        data = {
            **shared(printing, "album"),
            "subtitle": isolated(_subtitle(records)),
            "entries": entries,
            "stories": [_long(one, printing) for one in records if _goes_on(one)],
            "words": WORDS,
            "indexes": [
                {"title": "People", "groups": _people_index(records, printing)},
                {"title": "Places", "groups": _groups([("", _index({r.number: _places(r) for r in records}))])},
            ],
            "left_out": left_out_words(records, printing),
        }
        pdf, findings = made_pdf("album.typ", data, printing.theme, Path(folder), printing.printed_on)
    return pdf, [*shelf.findings, *findings]


def left_out_words(records: Sequence[Record], printing: Printing) -> str:
    """How much this audience does not see, in a sentence; empty if nothing."""
    withheld = sum(record.withheld for record in records)
    parts = [
        f"{count} {what}{'s' if count != 1 else ''}"
        for count, what in ((withheld, "statement"), (printing.left_out, "item"))
        if count
    ]
    verb = "is" if withheld + printing.left_out == 1 else "are"
    return f"{' and '.join(parts)} {verb} left out of this copy." if parts else ""


def _subtitle(records: Sequence[Record]) -> str:
    boxes = list(dict.fromkeys(label for r in records if r.mark and (label := r.mark.label("box"))))
    named = f"box{'es' if len(boxes) > 1 else ''} {captions.listed(boxes)}"
    kept = f", kept in {named}" if 0 < len(boxes) < 5 else ""
    return f"{len(records)} photograph{'s' if len(records) != 1 else ''}{kept}"


def _entry(record: Record, shelf: Shelf, printing: Printing) -> dict[str, Any]:
    theme = printing.theme
    said = captions.lines(record, "sheet", replace(printing.style, numbers=needs(record)))
    more = [captions.sentence(line(record)) for line in (captions.inscription_line, captions.source_line)]
    people = " ".join(said[part] for part in ("who", "named", "taker") if part in said)
    number_wide = max(theme.size * 0.4, 3.2)
    entry = {
        "number": record.number,
        "reference": isolated(captions.reference(record)),
        "title": isolated(captions.title(record, brackets=printing.style.brackets)),
        "occasion": isolated(said.get("occasion", "")),
        "people": isolated(people),
        "place_date": isolated(said.get("where_when", "")),
        "stories": _short(record, printing),
        "goes_on": _goes_on(record),
        "more": isolated(" ".join(part for part in more if part)),
        "number_wide": number_wide,
    }
    room = Room(printing.room(theme.columns), theme.picture_height, number_wide)
    return {**entry, "breaks": _breaks(entry, printing), **figure(record, shelf, room)}


def _breaks(entry: Mapping[str, Any], printing: Printing) -> bool:
    """Whether a caption is too long to stay on one page with its picture, estimated generously from its letters."""
    theme = printing.theme
    letters = sum(map(len, texts(entry)))
    line = printing.room(theme.columns) / (theme.size * POINT * 0.42)
    lines = letters / line * (1.6 if len(entry["people"]) > 200 else 1.1) + 6
    return theme.picture_height + lines * theme.size * POINT * (theme.leading + 0.75) > printing.page[1] * 0.82


def _goes_on(record: Record) -> bool:
    return sum(len(told.words) for told in record.all("story")) > MOST_STORY


def _short(record: Record, printing: Printing) -> list[dict[str, str]]:
    """The stories under the picture: whole if they are short, else how the first begins."""
    stories = record.all("story")
    if not _goes_on(record):
        return [told_words(told, captions.sentence(told.words), printing) for told in stories]
    words = captions.one_line(stories[0].words)
    begun = words if len(words) <= BEGINNING else f"{words[:BEGINNING].rsplit(' ', 1)[0]} …"
    return [told_words(stories[0], captions.sentence(begun), printing)]


def _long(record: Record, printing: Printing) -> dict[str, Any]:
    return {
        "number": record.number,
        "title": isolated(captions.title(record, brackets=printing.style.brackets)),
        "reference": isolated(captions.reference(record)),
        "stories": [
            {
                "paragraphs": paragraphs(told.words),
                "language": language_of(told.language) or language_of(printing.language) or "en",
                "by": isolated(told.said_by),
            }
            for told in record.all("story")
        ],
    }


TableRows = list[dict[str, Any]]


def _people_index(records: Sequence[Record], printing: Printing) -> list[dict[str, Any]]:
    """Names as they are sorted, then those who are only described (“a dock hand”)."""
    named = {r.number: [_sorted_name(one, printing) for one in r.people] for r in records}
    rows = _index(named)
    known = [row for row in rows if is_name(row["name"])]
    return _groups([("", known), ("Without a name", [row for row in rows if row not in known])])


def _sorted_name(one: PersonShown, printing: Printing) -> str:
    return captions.one_line(printing.sort_names.get(one.person, one.name))


def is_name(words: str) -> bool:
    """Whether someone is named, not only described (“a dock hand”)."""
    first = next((letter for letter in words if letter.isalpha()), "a")
    return not first.islower() and "?" not in words


def _places(record: Record) -> list[str]:
    place = captions.place_line(record)
    return [captions.capital(place)] if place else []


def _index(named: Mapping[str, Sequence[str]]) -> TableRows:
    """Names in folded order with the numbers of the items they stand at; the template finds the pages."""
    found: dict[str, list[str]] = {}
    for number, names in named.items():
        for name in names:
            if number not in found.setdefault(name, []):
                found[name].append(number)
    rows = sorted(found.items(), key=lambda row: fold(row[0]))
    return [{"name": isolated(name), "items": items} for name, items in rows]


def _groups(groups: Sequence[tuple[str, TableRows]]) -> list[dict[str, Any]]:
    return [{"title": title, "rows": rows} for title, rows in groups if rows]
