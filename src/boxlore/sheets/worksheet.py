"""The narrator's worksheet: for a relative who uses no computer. One picture a page, large, with lines to write on.

Each line has a short code (`core.sitting.worksheet_codes`); typed after its code, an answer finds its item and field.
Type is 20 points without serifs, lines one and a half apart, left-aligned, numbers of 14 points and more (guidelines of
the Council of Citizens with Low Vision International, from memory: at least 18 points, better 20).
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.findings import Finding
from boxlore.core.records.in_force import PersonShown, Record, StatementView
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.core.statements import KEEPER, Sure
from boxlore.sheets.figure import Room, Shelf, figure, front_of
from boxlore.sheets.print_run import Printing, shared
from boxlore.sheets.safe_words import isolated
from boxlore.sheets.theme import LARGE_PRINT, Theme
from boxlore.sheets.typesetting import made_pdf

SIZE = 20.0
LEADING = 0.8
"""Between the lines, with capitals of 0.7 em: one and a half lines."""

NUMBER = 8.4
"""Millimetres across a number on the picture: 15 points of type in it."""

HIGH = 112.0
"""Of the picture, in millimetres."""

STORY_LINES = 4

SPARE = 3
"""Lines for who is in it, where nobody is told yet."""


@dataclass(frozen=True, slots=True)
class WorksheetLine:
    """One line of the worksheet: its code, what is asked, what is known so far, how many lines to write on."""

    code: str
    asks: str
    known: str = ""
    lines: int = 1


def worksheet_theme(theme: Theme) -> Theme:
    """The theme with type large enough to be read by everyone; its own fonts and colours stay if it is large."""
    base = theme if theme.size >= LARGE_PRINT.size else LARGE_PRINT
    return replace(base, size=max(base.size, SIZE), leading=max(base.leading, LEADING), columns=1)


def make_worksheet(
    records: Sequence[Record], pictures: Mapping[str, Path], printing: Printing, prefix: str
) -> tuple[bytes, list[Finding]]:
    """The worksheet as a PDF. `prefix` is that of the collection's numbers."""
    theme = worksheet_theme(printing.theme)
    large = replace(printing, theme=theme)
    with tempfile.TemporaryDirectory() as folder:
        shelf = Shelf(pictures, Path(folder), [])
        room = Room(large.room(), HIGH, NUMBER)
        data = {
            **shared(large, "worksheet"),
            "number_wide": NUMBER,
            "words": {
                "heading": "What do you remember?",
                "how": "Write on the lines, as much or as little as you like. “I do not know” helps too: "
                "put a question mark. Nothing has to be right.",
                "known": "We have:",
                "by": "Told by",
                "on": "on",
                "advice": "For whoever types the answers in",
                "typing": "Type each answer after its code into a text file, such as A42-W3-B: Anna, and take them in "
                "with: boxlore tell --from FILE --by narrator:NAME",
            },
            "sheets": [_sheet(one, shelf, room, prefix) for one in records],
        }
        pdf, findings = made_pdf("worksheet.typ", data, theme, Path(folder), printing.printed_on)
    return pdf, [*shelf.findings, *findings]


def _sheet(record: Record, shelf: Shelf, room: Room, prefix: str) -> dict[str, Any]:
    return {
        "number": record.number,
        "reference": isolated(captions.reference(record)),
        "asked": [
            {"code": one.code, "asks": isolated(one.asks), "known": isolated(one.known), "lines": one.lines}
            for one in asked(record, prefix)
        ],
        **figure(with_unnamed(record), shelf, room),
        "alt": isolated(captions.alt_text(record)),
    }


_NOBODY = StatementView(
    statement="", field="person", words="", language="", source=KEEPER, said_by="", sure=Sure.SURE, audience="anyone",
    recorded_at="",
)  # fmt: skip


def with_unnamed(record: Record) -> Record:
    """The record with a nameless person at each marker that nobody is named at, so that it is asked for."""
    found = [
        PersonShown(told=_NOBODY, name="", scan=scan, number=number, area=area) for scan, number, area in record.unnamed
    ]
    return replace(record, people=(*record.people, *found))


_QUESTIONS = (("date", "When was it?"), ("place", "Where was it?"), ("occasion", "What was going on?"))


def asked(record: Record, prefix: str) -> list[WorksheetLine]:
    """The lines for one item: everyone by number, then when, where, what, and room for a story."""

    def line(field: str, asks: str, known: str = "", lines: int = 1, marker: int = 0) -> WorksheetLine:
        return WorksheetLine(write_code(CodedLine(record.number, field, marker), prefix), asks, known, lines)

    front = front_of(record)
    everyone = with_unnamed(record).shown()
    marked = [one for one in everyone if one.number and front is not None and one.scan == front.id]
    others = captions.listed([captions.name_of(one) for one in record.shown() if one not in marked])
    found = [
        line("person", _who(one, len(everyone) > 1), captions.name_of(one), marker=one.number)
        for one in sorted(marked, key=lambda one: one.number)
    ]
    asks = "Who else is in it?" if marked else "Who is in it, from left to right?"
    found.append(line("person", asks, others, lines=1 if marked or others else SPARE))
    for name, asks in _QUESTIONS:
        known = {"date": captions.date_line, "place": captions.place_line}.get(name, captions.occasion_line)(record)
        found.append(line(name, asks, known))
    found.append(line("story", "What else do you remember?", lines=STORY_LINES))
    return found


def _who(one: PersonShown, numbered: bool) -> str:
    return f"Who is number {one.number}?" if one.number and numbered else "Who is it?"


def blank_answers(records: Sequence[Record], prefix: str) -> str:
    """A text file to type the answers into: every code of the worksheet, ready for its words."""
    lines = [
        "# Type each answer after its code; leave blank what was left blank. A question mark alone: not known.",
        "# Then: boxlore tell --from THIS-FILE --by narrator:NAME",
    ]
    for record in records:
        lines += ["", f"# {captions.reference(record)}"]
        for one in asked(record, prefix):
            lines += [f"# {one.asks}{f' We have: {one.known}' if one.known else ''}", f"{one.code}:"]
    return "\n".join(lines) + "\n"
