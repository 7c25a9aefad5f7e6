"""The narrator's worksheet, for a relative who uses no computer: a picture and the lines about it together on a page.

Each line has a short code (`core.sitting.worksheet_codes`). An answer that is typed after its code is taken into the
right item and field. The type is sans-serif, 20 points, left-aligned, with lines one and a half apart (guidelines of
the Council of Citizens with Low Vision International, from memory: at least 18 points, better 20); with two or four
pictures a page it is smaller, for who sees well. Names are not printed, because a name that stands there leads whoever
is asked; they can be (oral history asks without leading: common practice, no source).
"""

import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from boxlore.core.crosswalk import captions, references
from boxlore.core.crosswalk.captions import Style
from boxlore.core.findings import Finding
from boxlore.core.records.item_record import PersonShown, Record, StatementView
from boxlore.core.sitting.worksheet_codes import CodedLine, write_code
from boxlore.core.sitting.worksheet_origin import NAME
from boxlore.core.statements import KEEPER, Sure
from boxlore.core.wording.catalogue import Say, to_say
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
"""The height of the picture in millimetres, at most."""

STORY_LINES = 2
"""At least; what is left of the page is ruled too."""


@dataclass(frozen=True, slots=True)
class PageForm:
    """How a page is laid out: the type in points; the lowest and the usual height of a line to write on, the lowest
    picture, and the diameter of a number on it, in millimetres."""

    size: float
    line: tuple[float, float]
    picture: float
    number: float


PAGE_FORMS = {
    1: PageForm(SIZE, (8.6, 13.0), 48.0, NUMBER),
    2: PageForm(14.0, (7.0, 9.0), 40.0, 6.0),
    4: PageForm(11.0, (6.0, 7.5), 30.0, 4.6),
}
"""Pictures a page -> its layout. Handwriting needs about 7 mm a line, an unsteady hand more (common practice, no
source)."""

SPARE = 3
"""How many lines there are for the people in the picture if nobody is told yet."""


@dataclass(frozen=True, slots=True)
class OwnQuestion:
    """A question of the collection's own: its field, its words, how many lines to write on."""

    field: str
    asks: str
    lines: int = 1


@dataclass(frozen=True, slots=True)
class WorksheetForm:
    """What a keeper chooses of a worksheet: how many pictures a page (a key of PAGE_FORMS), whether known names are
    printed, whether only what is unanswered is asked. `answers` is what the file of answers is called, `origin` the
    code of the collection that it begins with."""

    per_page: int = 1
    names: bool = False
    only_open: bool = False
    answers: str = "worksheet-answers.txt"
    origin: str = ""

    @property
    def first_line(self) -> str:
        """The line that says of which collection the answers are."""
        return f"{NAME}: {self.origin}" if self.origin else ""

    @property
    def order(self) -> str:
        """The command that takes the answers in."""
        return f'boxlore tell --from "{self.answers}" --by "narrator:NAME"'


USUAL = WorksheetForm()


@dataclass(frozen=True, slots=True)
class WorksheetLine:
    """One question of the worksheet: its code, the question, what is known so far, how many lines to write on."""

    code: str
    asks: str
    known: str = ""
    lines: int = 1
    field: str = ""
    is_open: bool = True
    """Whether nothing sure is told of it yet."""


def worksheet_theme(theme: Theme, per_page: int = 1) -> Theme:
    """The theme for a worksheet: this one with its type made large enough if it is a large-print theme, else ours.

    With several pictures a page the type is as small as these need.
    """
    base = theme if theme.size >= LARGE_PRINT.size else LARGE_PRINT
    size = max(base.size, SIZE) if per_page == 1 else PAGE_FORMS[per_page].size
    return replace(base, size=size, leading=max(base.leading, LEADING))


def make_worksheet(
    records: Sequence[Record],
    pictures: Mapping[str, Path],
    printing: Printing,
    prefix: str,
    own: Sequence[OwnQuestion] = (),
    form: WorksheetForm = USUAL,
) -> tuple[bytes, list[Finding]]:
    """The worksheet as a PDF, and findings about what could not be printed.

    `pictures` maps `picture_key` to a JPEG; `prefix` is that of the collection's numbers, `own` its own questions.
    """
    say = printing.say
    theme, layout = worksheet_theme(printing.theme, form.per_page), PAGE_FORMS[form.per_page]
    large = replace(printing, theme=theme)
    with tempfile.TemporaryDirectory(dir=folder_of(pictures)) as folder:
        shelf = Shelf(pictures, Path(folder), [])
        room = Room(large.room(), HIGH, layout.number)
        data = {
            **shared(large, "worksheet"),
            "number_wide": layout.number,
            "per_page": form.per_page,
            "line": layout.line,
            "least_picture": layout.picture,
            "words": {
                "heading": say("What do you remember?"),
                "how": say(
                    "Write on the lines, as much or as little as you like. “I do not know” helps too: "
                    "put a question mark. Nothing has to be right."
                ),
                "known": say("We have:"),
                "by": say("Told by"),
                "on": say("on"),
                "advice": say("For whoever types the answers in"),
                "typing": say(
                    "Type each answer after its code into the file {file}, such as A42-W3-B: the quay, "
                    "and take them in with “Take in”, “Answers on paper”, or with the command below.",
                    file=form.answers,
                )
                + _begin(form, say),
                "order": form.order,
            },
            "sheets": [
                _sheet(
                    record,
                    shelf,
                    room,
                    questions_of(record, prefix, own, only_open=form.only_open, style=printing.style),
                    form.names,
                    printing.style,
                )
                for record in records
            ],
        }
        pdf, findings = make_pdf("worksheet.typ", data, theme, Path(folder), printing.printed_on)
    return pdf, [*shelf.findings, *findings]


def _begin(form: WorksheetForm, say: Say) -> str:
    if not form.first_line:
        return ""
    return " " + say("A file of your own begins with the line {line}", line=form.first_line)


def _sheet(
    record: Record, shelf: Shelf, room: Room, questions: Sequence[WorksheetLine], names: bool, style: Style
) -> dict[str, Any]:
    """One item as the template takes it. Without `names` nobody is named, also not for whom the picture is read out."""
    return {
        "number": record.number,
        "reference": isolated(references.reference(record, style)),
        "asked": [
            {
                "code": line.code,
                "asks": isolated(line.asks),
                "known": isolated(line.known) if names or line.field != "person" else "",
                "lines": line.lines,
                "grows": line.field == "story",
            }
            for line in questions
        ],
        **figure(with_unnamed(record), shelf, room, style),
        "alt": isolated(captions.alt_text(record if names else replace(record, people=()), style)),
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


_QUESTIONS = (
    ("date", to_say("When was it?")),
    ("place", to_say("Where was it?")),
    ("occasion", to_say("What was going on?")),
)


def questions_of(
    record: Record,
    prefix: str,
    own: Sequence[OwnQuestion] = (),
    *,
    only_open: bool = False,
    style: Style = captions.PLAIN,
) -> list[WorksheetLine]:
    """The questions for one item: people by number, then when, where, what was going on, the collection's own, and
    room for a story. `only_open` leaves out what is answered."""
    lines = _all_questions(record, prefix, own, style)
    return [line for line in lines if line.is_open] if only_open else lines


def _all_questions(record: Record, prefix: str, own: Sequence[OwnQuestion], style: Style) -> list[WorksheetLine]:
    def line(field: str, asks: str, known: str = "", lines: int = 1, marker: int = 0) -> WorksheetLine:
        code = write_code(CodedLine(record.number, field, marker), prefix)
        return WorksheetLine(code, asks, known, lines, field, not record.words(field))

    say, plain = style.say, Style(say=style.say)
    front = front_of(record)
    everyone = with_unnamed(record).shown()
    marked = [person for person in everyone if person.number and front is not None and person.scan == front.id]
    others = [person for person in record.shown() if person not in marked]
    unmarked = say.listed(captions.names_of(others, plain))
    lines = [
        replace(
            line("person", _who(person, len(everyone) > 1, say), captions.name_of(person, plain), marker=person.number),
            is_open=not person.name or person.unsure,
        )
        for person in sorted(marked, key=lambda person: person.number)
    ]
    asks = say("Who else is in it?") if marked else say("Who is in it, from left to right?")
    who = line("person", asks, unmarked, lines=len(others) or (1 if marked else SPARE))
    lines.append(replace(who, is_open=not everyone or any(person.unsure for person in others)))
    for name, asks in _QUESTIONS:
        known = {"date": captions.date_line, "place": captions.place_line}.get(name, _occasion)(record, style)
        lines.append(line(name, say(asks), known or captions.bare(record.words(name))))
    for question in own:
        known = captions.bare(record.words(question.field))
        lines.append(line(question.field, question.asks, known, question.lines))
    lines.append(line("story", say("What else do you remember?"), lines=STORY_LINES))
    return lines


def _occasion(record: Record, style: Style) -> str:
    return captions.occasion_line(record)


def _who(person: PersonShown, numbered: bool, say: Say) -> str:
    return say("Who is number {number}?", number=person.number) if person.number and numbered else say("Who is it?")


def blank_answers(
    records: Sequence[Record],
    prefix: str,
    own: Sequence[OwnQuestion] = (),
    form: WorksheetForm = USUAL,
    style: Style = captions.PLAIN,
) -> str:
    """The text of a file to type the answers into: every code of the worksheet, with its question as a comment."""
    say = style.say
    lines = [
        "# "
        + say("Type each answer after its code; leave blank what was left blank. A question mark alone: not known."),
        "# " + say("An answer of several lines: begin each further line with a blank."),
        "# " + say("Then: {command}", command=form.order),
    ]
    if form.origin:
        lines += ["# " + say("The next line says of which photographs these are: leave it."), form.first_line]
    for record in records:
        lines += ["", f"# {references.reference(record, style)}"]
        for line in questions_of(record, prefix, own, only_open=form.only_open, style=style):
            known = f" {say('We have:')} {line.known}" if line.known else ""
            lines += [f"# {line.asks}{known}", f"{line.code}:"]
    return "\n".join(lines) + "\n"
