"""The album caption sheet: photographs with all that is known of each, then long stories and the indexes.

Beside every picture stand its number and its place in the box, at the foot of every page the day of printing.
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import PersonShown, Record
from boxlore.core.statements import fold
from boxlore.sheets.figure import Room, Shelf, figure, folder_of, has_numbers
from boxlore.sheets.print_run import Printing, in_language, shared
from boxlore.sheets.safe_words import isolated, language_of, paragraphs
from boxlore.sheets.typesetting import make_pdf, texts

MOST_STORY = 260
"""The most letters of stories under a picture. Longer stories are printed at the end of the album."""

POINT = 25.4 / 72
"""A typographic point in millimetres."""

BEGINNING = 150
"""How many letters of a long story stand under its picture, as its beginning."""

WORDS = {
    "stories": "Stories",
    "goes_on": "The story is on page",
    "advice": "Printing and keeping this sheet",
}


def make_sheet(
    records: Sequence[Record], pictures: Mapping[str, Path], printing: Printing
) -> tuple[bytes, list[Finding]]:
    """The sheet as a PDF, and findings about what could not be printed. `pictures` maps `picture_key` to a JPEG."""
    with tempfile.TemporaryDirectory(dir=folder_of(pictures)) as folder:
        shelf = Shelf(pictures, Path(folder), [])
        entries = [_entry(record, shelf, printing) for record in records]
        data = {
            **shared(printing, "album"),
            "subtitle": isolated(_subtitle(records)),
            "entries": entries,
            "stories": [_long(record, printing) for record in records if _goes_on(record)],
            "words": WORDS,
            "indexes": [
                {"title": "People", "groups": _people_index(records, printing)},
                {"title": "Places", "groups": _places_index(records)},
            ],
            "left_out": left_out_words(records, printing),
        }
        pdf, findings = make_pdf("album.typ", data, printing.theme, Path(folder), printing.printed_on)
    return pdf, [*shelf.findings, *findings]


def left_out_words(records: Sequence[Record], printing: Printing) -> str:
    """A sentence saying how many statements and items are not for this audience; empty if there are none."""
    withheld = sum(record.withheld for record in records)
    parts = [
        f"{count} {noun}{'s' if count != 1 else ''}"
        for count, noun in ((withheld, "statement"), (printing.left_out, "item"))
        if count
    ]
    verb = "is" if withheld + printing.left_out == 1 else "are"
    return f"{' and '.join(parts)} {verb} left out of this copy." if parts else ""


def _subtitle(records: Sequence[Record]) -> str:
    boxes = list(dict.fromkeys(label for record in records if record.mark and (label := record.mark.label("box"))))
    box_names = f"box{'es' if len(boxes) > 1 else ''} {captions.listed(boxes)}"
    where_kept = f", kept in {box_names}" if 0 < len(boxes) < 5 else ""
    return f"{len(records)} photograph{'s' if len(records) != 1 else ''}{where_kept}"


def _entry(record: Record, shelf: Shelf, printing: Printing) -> dict[str, Any]:
    """One photograph as the template takes it."""
    theme = printing.theme
    lines = captions.lines(record, "sheet", replace(printing.style, numbers=has_numbers(record)))
    endings = captions.own_lines(record)
    endings += [captions.sentence(line_of(record)) for line_of in (captions.inscription_line, captions.source_line)]
    people = " ".join(lines[part] for part in ("who", "named", "taker") if part in lines)
    number_wide = max(theme.size * 0.4, 3.2)
    entry = {
        "number": record.number,
        "reference": isolated(captions.reference(record)),
        "title": isolated(captions.title(record, brackets=printing.style.brackets)),
        "occasion": isolated(lines.get("occasion", "")),
        "people": isolated(people),
        "place_date": isolated(lines.get("where_when", "")),
        "stories": _short(record, printing),
        "goes_on": _goes_on(record),
        "more": isolated(" ".join(part for part in endings if part)),
        "number_wide": number_wide,
    }
    room = Room(printing.room(theme.columns), theme.picture_height, number_wide)
    return {**entry, "breaks": _breaks(entry, printing), **figure(record, shelf, room)}


def _breaks(entry: Mapping[str, Any], printing: Printing) -> bool:
    """Whether the caption may be too long to fit on a page with its picture, by a high estimate of its lines."""
    theme = printing.theme
    letters = sum(map(len, texts(entry)))
    letters_in_line = printing.room(theme.columns) / (theme.size * POINT * 0.42)
    lines = letters / letters_in_line * (1.6 if len(entry["people"]) > 200 else 1.1) + 6
    return theme.picture_height + lines * theme.size * POINT * (theme.leading + 0.75) > printing.page[1] * 0.82


def _goes_on(record: Record) -> bool:
    """Whether the stories are too long to stand under the picture."""
    return sum(len(story.words) for story in record.all("story")) > MOST_STORY


def _short(record: Record, printing: Printing) -> list[dict[str, str]]:
    """The stories under the picture: whole if they are short, else the beginning of the first."""
    stories = record.all("story")
    if not _goes_on(record):
        return [in_language(story, captions.sentence(story.words), printing) for story in stories]
    words = captions.one_line(stories[0].words)
    beginning = words if len(words) <= BEGINNING else f"{words[:BEGINNING].rsplit(' ', 1)[0]} …"
    return [in_language(stories[0], captions.sentence(beginning), printing)]


def _long(record: Record, printing: Printing) -> dict[str, Any]:
    """The stories of one photograph for the end of the album, whole."""
    return {
        "number": record.number,
        "title": isolated(captions.title(record, brackets=printing.style.brackets)),
        "reference": isolated(captions.reference(record)),
        "stories": [
            {
                "paragraphs": paragraphs(story.words),
                "language": language_of(story.language) or language_of(printing.language) or "en",
                "by": isolated(story.said_by),
            }
            for story in record.all("story")
        ],
    }


TableRows = list[dict[str, Any]]
"""Rows of an index: a `name` and the numbers of its `items`."""


def _people_index(records: Sequence[Record], printing: Printing) -> list[dict[str, Any]]:
    """The index of people, in two groups: those with a name, and those only described (“a dock hand”)."""
    named = {record.number: [_sorted_name(person, printing) for person in record.people] for record in records}
    rows = _index(named)
    with_name = [row for row in rows if is_name(row["name"])]
    return _groups([("", with_name), ("Without a name", [row for row in rows if row not in with_name])])


def _sorted_name(person: PersonShown, printing: Printing) -> str:
    return captions.one_line(printing.sort_names.get(person.person, person.name))


def is_name(words: str) -> bool:
    """Whether these words are a name, not only a description (“a dock hand”): no small first letter, no `?`."""
    first_letter = next((letter for letter in words if letter.isalpha()), "a")
    return not first_letter.islower() and "?" not in words


def _places_index(records: Sequence[Record]) -> list[dict[str, Any]]:
    return _groups([("", _index({record.number: _places(record) for record in records}))])


def _places(record: Record) -> list[str]:
    place = captions.place_line(record)
    return [captions.capital(place)] if place else []


def _index(names_by_item: Mapping[str, Sequence[str]]) -> TableRows:
    """Names in folded order, with the numbers of their items. The template finds the pages of these items."""
    items_by_name: dict[str, list[str]] = {}
    for number, names in names_by_item.items():
        for name in names:
            if number not in items_by_name.setdefault(name, []):
                items_by_name[name].append(number)
    rows = sorted(items_by_name.items(), key=lambda row: fold(row[0]))
    return [{"name": isolated(name), "items": items} for name, items in rows]


def _groups(groups: Sequence[tuple[str, TableRows]]) -> list[dict[str, Any]]:
    return [{"title": title, "rows": rows} for title, rows in groups if rows]
