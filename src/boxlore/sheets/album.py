"""The album: photographs as large as the page allows, with all that is known of each, in chapters; then long stories,
who is who, places, and where the words come from.

Beside every picture stand its number and its place in the box, at the foot of every page the day of printing. The
typesetter measures the words first; `album_layout` then says where everything stands.
"""

import re
import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import asdict, replace
from math import inf
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions, references
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import Record
from boxlore.core.records.marks import label_key
from boxlore.core.wording.catalogue import Say, to_say
from boxlore.sheets.album_chapters import Chapter, chapters, span_of
from boxlore.sheets.album_indexes import notes, people_index, places_index, sources
from boxlore.sheets.album_layout import Area, Piece, Slot, compose
from boxlore.sheets.picture_on_paper import (
    Room,
    Shelf,
    back_of,
    figure,
    folder_of,
    has_numbers,
    outline_key,
    shape_of,
    stacked_shape_of,
)
from boxlore.sheets.print_run import Printing, in_language, shared, told_language
from boxlore.sheets.printable_words import isolated, paragraphs
from boxlore.sheets.typesetting import letters_lacking, make_pdf, measured, texts

MOST_STORY, BEGINNING = (420, 420, 120), (200, 200, 90)
"""The most letters of stories under a picture, by how brief its words are; and how many letters of longer ones stand
there, as their beginning. Longer stories are printed at the end of the album.
"""

_END = re.compile(r"[.!?][”“»\"’)]*(?= )")
"""Where a sentence ends before another word."""

NO_NOTES = 1
"""How brief words must be that leave away what is written on a photograph and what is worked out: it stands at the end
then, with where the words come from.
"""

BESIDE_BACK = 2.0
"""Millimetres between the picture of a front and that of its back."""

FULL_PAGE = 210.0
"""The width in millimetres of the paper for which a theme tells its margins: on a narrower one they are narrower."""
LEAST_MARGIN = 8.0
"""Millimetres that a printer at home leaves white, and what a thumb needs (common practice, no source)."""

LEAST_PPI, SMALLEST = 60, 30.0
"""Pixels an inch below which a picture is coarse blocks (common practice, no source); and the least height in
millimetres to which a picture of few pixels is printed all the same."""

HEAD_SPACE = 5.0
"""Millimetres between a chapter's title and its first picture."""

WORDS = {
    "contents": to_say("Contents"),
    "stories": to_say("Stories"),
    "goes_on": to_say("The story is on page"),
    "family": to_say("The family"),
    "sources": to_say("Where the words come from"),
    "see": to_say("see"),
    "unsure": to_say("A ? behind a page: it is not sure that this is who is shown."),
}


def make_sheet(
    records: Sequence[Record], pictures: Mapping[str, Path], printing: Printing, by: str = "decade"
) -> tuple[bytes, list[Finding]]:
    """The album as a PDF, and findings about what could not be printed.

    `pictures` maps `picture_key` to a JPEG; `by` is what chapters are made of (`chapters.BY`).
    """
    with tempfile.TemporaryDirectory(dir=folder_of(pictures)) as folder:
        shelf = Shelf(pictures, Path(folder), [])
        parts = chapters(records, by, printing)
        ordered = [record for part in parts for record in part.records]
        printing = _fitting(printing)
        area = area_of(printing)
        data = _whole(parts, ordered, shelf, printing)
        letters = letters_lacking(texts(data), printing.theme)
        heights = measured("album.typ", {**data, "measuring": True}, printing.theme, Path(folder), letters)
        pieces = _pieces(data["photos"], ordered, shelf, heights, area)
        pages = compose(pieces, area)
        slots = [slot for page in pages for slot in page]
        for photo, record, piece, slot in zip(data["photos"], ordered, pieces, slots, strict=True):
            photo |= {**_with_picture(photo, record, slot, shelf, printing), "opening_high": piece.head}
        brief = {record.number: slot.brief for record, slot in zip(ordered, slots, strict=True)}
        data |= {
            "stories": [_long(record, printing) for record in ordered if _goes_on(record, brief[record.number])],
            "sources": sources(ordered, printing, {number for number, steps in brief.items() if steps >= NO_NOTES}),
            "pages": [[asdict(slot) for slot in page] for page in pages],
            "cover": _cover(ordered, shelf, area, printing),
        }
        pdf, findings = make_pdf("album.typ", data, printing.theme, Path(folder), printing.printed_on, letters)
    return pdf, [*shelf.findings, *findings]


def _fitting(printing: Printing) -> Printing:
    """The printing with the margins at the sides that fit its paper: on a narrow one they are narrower."""
    side = printing.theme.margin_side * min(1.0, printing.page[0] / FULL_PAGE)
    return replace(printing, theme=replace(printing.theme, margin_side=max(LEAST_MARGIN, side)))


def area_of(printing: Printing) -> Area:
    """The type area of this paper and theme. Words stand in columns of about 22 letters at least."""
    wide, high = printing.page
    theme = printing.theme
    return Area(
        wide=printing.room(),
        high=high - theme.margin_top - theme.margin_bottom - 1.0,
        paper=wide * high,
        narrowest=min(theme.size * 4.2, printing.room()),
    )


def _whole(parts: Sequence[Chapter], records: Sequence[Record], shelf: Shelf, printing: Printing) -> dict[str, Any]:
    """All that the template reads but the places and sizes of pictures."""
    area = area_of(printing)
    begins = {part.records[0].number: isolated(part.title) for part in parts}
    return {
        **shared(printing),
        "measuring": False,
        "room": (area.wide, area.high),
        "under_title": [isolated(words) for words in _under_title(records, printing.say) if words],
        "photos": [{**_words(record, shelf, printing), "chapter": begins.get(record.number, "")} for record in records],
        "widths": [area.width(count) for count in area.columns],
        "columns": 2 if area.width(3) >= area.narrowest * 1.3 else 1,
        "gutter": area.gutter,
        "gap": area.gap,
        "stories": [],
        "words": {name: printing.say(words) for name, words in WORDS.items()},
        "family": [{"depth": depth, "words": isolated(words)} for depth, words in printing.family],
        "indexes": [
            {"title": printing.say("People"), "groups": people_index(records, printing)},
            {"title": printing.say("Places"), "groups": places_index(records, printing)},
        ],
        "sources": [],
        "left_out": left_out_words(records, printing),
        "pages": [],
        "cover": {"picture": None},
    }


def _pieces(
    photos: Sequence[Mapping[str, Any]],
    records: Sequence[Record],
    shelf: Shelf,
    heights: Mapping[str, Sequence[Any]],
    area: Area,
) -> list[Piece]:
    """What the composer takes: shapes of pictures, heights of words and of chapters' titles."""
    pieces, rows = [], zip(photos, records, heights["words"], heights["chapters"], strict=True)
    for photo, record, words_high, title_high in rows:
        full, *briefer = (dict(zip(area.columns, high, strict=True)) for high in words_high)
        head = title_high + HEAD_SPACE if photo["chapter"] else 0.0
        stacked, most = stacked_shape_of(record, shelf), _most_high(record, shelf)
        pieces.append(Piece(shape_of(record, shelf), full, head, stacked, briefer, most))
    return pieces


def _most_high(record: Record, shelf: Shelf) -> float:
    """How high a picture may be printed before its pixels are seen as blocks."""
    path = shelf.front(record)
    return max(SMALLEST, shelf.size(path)[1] / LEAST_PPI * 25.4) if path is not None else inf


def _with_picture(
    photo: Mapping[str, Any], record: Record, slot: Slot, shelf: Shelf, printing: Printing
) -> dict[str, Any]:
    """The photograph's picture, and its back where it has one to show, in the size of its slot."""
    back = back_of(record)
    path = shelf.taken(back) if back is not None else None
    placed = {"brief": slot.brief, "stacked": slot.stacked}
    if path is None or shelf.front(record) is None:
        room = Room(slot.wide, slot.high, photo["number_wide"])
        return {**placed, **_shown(record, shelf, room, printing), "back": {"picture": None}}
    if slot.stacked:
        wide, high = slot.wide * (slot.high - BESIDE_BACK) / slot.high, slot.high
        where = printing.say("Below it is its back.")
    else:
        wide, high = slot.wide, slot.high * (slot.wide - BESIDE_BACK) / slot.wide
        where = printing.say("Beside it is its back.")
    shown = _shown(record, shelf, Room(wide, high, photo["number_wide"]), printing)
    alt = isolated(f"{captions.alt_text(record, printing.style)} {where}")
    return {**placed, **shown, "alt": alt, "back": shelf.fitted(path, Room(wide, high))}


def _shown(record: Record, shelf: Shelf, room: Room, printing: Printing) -> dict[str, Any]:
    """The picture. Where an outline key says who is who, no number covers anybody on it; where the picture is too small
    for its numbers, they are left out of it and of the words, which go by rows.
    """
    shown = figure(record, shelf, room, printing.style)
    if shown["outline"]:
        return {**shown, "numbers": []}
    return shown if shown["clear"] else {**shown, "numbers": [], **_people(record, printing.style)}


def _cover(ordered: Sequence[Record], shelf: Shelf, area: Area, printing: Printing) -> dict[str, Any]:
    """The picture of the title page: that with the most people."""
    for record in sorted(ordered, key=lambda record: -len(record.shown())):
        path = shelf.front(record)
        if path is not None:
            fitted = shelf.fitted(path, Room(area.wide * 0.62, area.high * 0.42))
            return {**fitted, "alt": isolated(captions.alt_text(record, printing.style))}
    return {"picture": None}


def left_out_words(records: Sequence[Record], printing: Printing) -> str:
    """A sentence saying how many statements and items are not for this audience; empty if there are none."""
    say, withheld = printing.say, sum(record.withheld for record in records)
    parts = [say.counted(withheld, "{count} statement", "{count} statements")] if withheld else []
    parts += [say.counted(printing.left_out, "{count} item", "{count} items")] if printing.left_out else []
    return say("Left out of this copy: {things}.", things=say.listed(parts)) if parts else ""


def _under_title(records: Sequence[Record], say: Say) -> list[str]:
    """What stands under the title: how many photographs, of which years, and where the prints are kept."""
    boxes = sorted({label for record in records if record.mark and (label := record.mark.label("box"))}, key=label_key)
    kept = say.counted(
        len(boxes),
        "The prints are kept in box {boxes}",
        "The prints are kept in boxes {boxes}",
        boxes=say.listed(boxes),
    )
    return [span_of(records, say), kept if 0 < len(boxes) < 5 else ""]


def _words(record: Record, shelf: Shelf, printing: Printing) -> dict[str, Any]:
    """The words of one photograph as the template takes them."""
    theme = printing.theme
    style = replace(printing.style, numbers=has_numbers(record))
    lines = captions.lines(record, "sheet", style)
    return {
        "number": record.number,
        "reference": isolated(references.reference(record, printing.style)),
        "title": isolated(captions.title(record, printing.style)),
        "occasion": isolated(lines.get("occasion", "")),
        **_people(record, style),
        "place_date": isolated(lines.get("where_when", "")),
        "ways": [_told(record, printing, brief) for brief in range(len(MOST_STORY))],
        "number_wide": theme.size * 0.6,
        **outline_key(record, shelf, theme.size),
    }


def _people(record: Record, style: captions.Style) -> dict[str, Any]:
    """Who is in it, named or took it, in one paragraph, and row by row."""
    beside = [captions.named_line(record, style), captions.taker_line(record, style)]
    rows = [captions.sentence(line) for line in (*captions.who_lines(record, style), *beside) if line]
    return {"people": isolated(" ".join(rows)), "rows": [isolated(row) for row in rows]}


def _told(record: Record, printing: Printing, brief: int) -> dict[str, Any]:
    """What is told beside who, where and when, so many steps briefer than the whole."""
    goes_on = _goes_on(record, brief)
    return {
        "stories": _short(record, printing, BEGINNING[brief] if goes_on else 0),
        "goes_on": goes_on,
        "more": isolated(
            " ".join([*captions.own_lines(record), *([] if brief >= NO_NOTES else notes(record, printing))])
        ),
    }


def _goes_on(record: Record, brief: int) -> bool:
    """Whether the stories are too long to stand under the picture."""
    return sum(len(story.words) for story in record.all("story")) > MOST_STORY[brief]


def _short(record: Record, printing: Printing, most: int) -> list[dict[str, str]]:
    """The stories under the picture: whole, or, where they go on elsewhere, so many letters of the first."""
    stories = record.all("story")
    if not most:
        return [in_language(story, captions.sentence(story.words), printing) for story in stories]
    words = captions.one_line(stories[0].words)
    beginning = words if len(words) <= most else f"{_begun(words[:most])} …"
    return [in_language(stories[0], captions.sentence(beginning), printing)]


def _begun(words: str) -> str:
    """The words to the end of a sentence, where they are a third of them at least; else to the end of a word."""
    sentences = [end.end() for end in _END.finditer(words)]
    at_end = sentences and sentences[-1] > len(words) / 3
    return words[: sentences[-1]] if at_end else words.rsplit(" ", 1)[0]


def _long(record: Record, printing: Printing) -> dict[str, Any]:
    """The stories of one photograph for the end of the album, whole."""
    return {
        "number": record.number,
        "title": isolated(captions.title(record, printing.style)),
        "reference": isolated(references.reference(record, printing.style)),
        "stories": [
            {
                "paragraphs": paragraphs(story.words),
                "language": told_language(story.language, printing),
                "by": isolated(story.said_by),
            }
            for story in record.all("story")
        ],
    }
