"""The narrator's worksheet, for a relative who uses no computer: one large picture a page, with lines to write on.

Each line has a short code (`core.sitting.worksheet_codes`). An answer that is typed after its code is taken into the
right item and field. The type is sans-serif, 20 points, left-aligned, with lines one and a half apart (guidelines of
the Council of Citizens with Low Vision International, from memory: at least 18 points, better 20).
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import PersonShown, Record, StatementView
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.core.statements import KEEPER, Sure
from boxlore.sheets.picture_on_paper import Room, Shelf, figure, folder_of, front_of
from boxlore.sheets.print_run import Printing, shared
from boxlore.sheets.printable_words import isolated
from boxlore.sheets.theme import LARGE_PRINT, Theme
from boxlore.sheets.typesetting import make_pdf

SIZE = 20.0
LEADING = 0.8
"""The space between lines, in em. With capitals of 0.7 em the lines are one and a half apart."""

NUMBER = 8.4
"""The diameter of a number on the picture in millimetres; it holds type of 15 points."""

HIGH = 112.0
"""The height of the picture in millimetres."""

STORY_LINES = 4

SPARE = 3
"""How many lines there are for the people in the picture if nobody is told yet."""


@dataclass(frozen=True, slots=True)
class OwnQuestion:
    """A question of the collection's own: its field, its words, how many lines to write on."""

    field: str
    asks: str
    lines: int = 1


@dataclass(frozen=True, slots=True)
class WorksheetLine:
    """One question of the worksheet: its code, the question, what is known so far, how many lines to write on."""

    code: str
    asks: str
    known: str = ""
    lines: int = 1


def worksheet_theme(theme: Theme) -> Theme:
    """The theme for a worksheet: this one with its type made large enough if it is a large-print theme, else ours."""
    base = theme if theme.size >= LARGE_PRINT.size else LARGE_PRINT
    return replace(base, size=max(base.size, SIZE), leading=max(base.leading, LEADING))


def make_worksheet(
    records: Sequence[Record],
    pictures: Mapping[str, Path],
    printing: Printing,
    prefix: str,
    own: Sequence[OwnQuestion] = (),
) -> tuple[bytes, list[Finding]]:
    """The worksheet as a PDF, and findings about what could not be printed.

    `pictures` maps `picture_key` to a JPEG; `prefix` is that of the collection's numbers, `own` its own questions.
    """
    theme = worksheet_theme(printing.theme)
    large = replace(printing, theme=theme)
    with tempfile.TemporaryDirectory(dir=folder_of(pictures)) as folder:
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
            "sheets": [_sheet(record, shelf, room, questions_of(record, prefix, own)) for record in records],
        }
        pdf, findings = make_pdf("worksheet.typ", data, theme, Path(folder), printing.printed_on)
    return pdf, [*shelf.findings, *findings]


def _sheet(record: Record, shelf: Shelf, room: Room, questions: Sequence[WorksheetLine]) -> dict[str, Any]:
    return {
        "number": record.number,
        "reference": isolated(captions.reference(record)),
        "asked": [
            {"code": line.code, "asks": isolated(line.asks), "known": isolated(line.known), "lines": line.lines}
            for line in questions
        ],
        **figure(with_unnamed(record), shelf, room),
        "alt": isolated(captions.alt_text(record)),
    }


_NOBODY = StatementView(
    statement="", field="person", words="", language="", source=KEEPER, said_by="", sure=Sure.SURE, audience="anyone",
    recorded_at="",
)  # fmt: skip


def with_unnamed(record: Record) -> Record:
    """The record with a nameless person added at each marker without a name, so that it is asked for."""
    nameless = [
        PersonShown(told=_NOBODY, name="", scan=scan, number=number, area=area) for scan, number, area in record.unnamed
    ]
    return replace(record, people=(*record.people, *nameless))


_QUESTIONS = (("date", "When was it?"), ("place", "Where was it?"), ("occasion", "What was going on?"))


def questions_of(record: Record, prefix: str, own: Sequence[OwnQuestion] = ()) -> list[WorksheetLine]:
    """The questions for one item: people by number, then when, where, what was going on, the collection's own, and
    room for a story."""

    def line(field: str, asks: str, known: str = "", lines: int = 1, marker: int = 0) -> WorksheetLine:
        return WorksheetLine(write_code(CodedLine(record.number, field, marker), prefix), asks, known, lines)

    front = front_of(record)
    everyone = with_unnamed(record).shown()
    marked = [person for person in everyone if person.number and front is not None and person.scan == front.id]
    unmarked = captions.listed(captions.names_of([person for person in record.shown() if person not in marked]))
    lines = [
        line("person", _who(person, len(everyone) > 1), captions.name_of(person), marker=person.number)
        for person in sorted(marked, key=lambda person: person.number)
    ]
    asks = "Who else is in it?" if marked else "Who is in it, from left to right?"
    lines.append(line("person", asks, unmarked, lines=1 if marked or unmarked else SPARE))
    for name, asks in _QUESTIONS:
        known = {"date": captions.date_line, "place": captions.place_line}.get(name, captions.occasion_line)(record)
        lines.append(line(name, asks, known))
    for question in own:
        known = captions.bare(record.words(question.field))
        lines.append(line(question.field, question.asks, known, question.lines))
    lines.append(line("story", "What else do you remember?", lines=STORY_LINES))
    return lines


def _who(person: PersonShown, numbered: bool) -> str:
    return f"Who is number {person.number}?" if person.number and numbered else "Who is it?"


def blank_answers(records: Sequence[Record], prefix: str, own: Sequence[OwnQuestion] = ()) -> str:
    """The text of a file to type the answers into: every code of the worksheet, with its question as a comment."""
    lines = [
        "# Type each answer after its code; leave blank what was left blank. A question mark alone: not known.",
        "# An answer of several lines: begin each further line with a blank.",
        "# Then: boxlore tell --from THIS-FILE --by narrator:NAME",
    ]
    for record in records:
        lines += ["", f"# {captions.reference(record)}"]
        for line in questions_of(record, prefix, own):
            lines += [f"# {line.asks}{f' We have: {line.known}' if line.known else ''}", f"{line.code}:"]
    return "\n".join(lines) + "\n"
