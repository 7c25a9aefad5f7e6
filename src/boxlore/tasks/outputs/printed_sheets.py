"""Printed outputs: the pictures prepared, the records as the audience may see them, the PDF written whole."""

import math
import os
import tempfile
from collections.abc import Iterable, Iterator, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from dataclasses import replace as with_more
from pathlib import Path

from boxlore.core.crosswalk.captions import Style
from boxlore.core.errors import CouldNot, WrongUse
from boxlore.core.fields.table import OWN
from boxlore.core.findings import Finding, several
from boxlore.core.people.person import Person
from boxlore.core.people.tree_lines import descent
from boxlore.core.records.audience import To
from boxlore.core.records.item_record import Record, ScanFile
from boxlore.core.sitting.worksheet_codes import own_number
from boxlore.core.sitting.worksheet_origin import write_origin
from boxlore.core.wording.catalogue import Say, say_in
from boxlore.disk.pictures import make_jpeg
from boxlore.sheets.album import area_of, make_sheet
from boxlore.sheets.album_chapters import BY as BY  # a command offers them
from boxlore.sheets.album_indexes import other_sort_names, years_of
from boxlore.sheets.labels import LABEL_SIZES as LABEL_SIZES  # a command and a form offer them
from boxlore.sheets.labels import make_labels
from boxlore.sheets.picture_on_paper import back_of, front_of, picture_key
from boxlore.sheets.print_run import BOOK_SIZES as BOOK_SIZES
from boxlore.sheets.print_run import Printing
from boxlore.sheets.slips import make_slips
from boxlore.sheets.theme import THEMES, Theme, read_theme
from boxlore.sheets.worksheet import HIGH as WORKSHEET_HIGH
from boxlore.sheets.worksheet import USUAL, OwnQuestion, blank_answers, make_worksheet, questions_of
from boxlore.sheets.worksheet import WorksheetForm as WorksheetForm  # a command makes them
from boxlore.tasks.collection.container_references import container_references
from boxlore.tasks.collection.gate import Gate, ask_of_settings
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.output_paths import check_pdf, is_as_written, write_output
from boxlore.tasks.collection.progress import QUIET, Progress, go_on, workers
from boxlore.tasks.collection.prompts import read_prompts
from boxlore.tasks.collection.records_for_outputs import (
    EVERYTHING,
    AudienceView,
    Selection,
    check_chosen,
    nothing_of,
    seen_by,
)
from boxlore.tasks.collection.settings import family_way
from boxlore.tasks.collection.unfinished import work_folder
from boxlore.tasks.people.evidence_for_outputs import WorkedOutFor, worked_out_for
from boxlore.tasks.people.kin_captions import kin_to
from boxlore.tasks.scans.unchanged import ScanCheck

PPI = 260
"""Of a printed picture: no eye tells more at reading distance (common practice, no source), and memory stays flat."""


@dataclass(frozen=True, slots=True)
class PrintedOutput:
    """A printed output: where it is, how many items it shows, how many it left out, what to mend.

    Of those left out, `held` have a picture that this audience may not see, and `answered` nothing left to ask.
    """

    path: Path
    items: int
    left_out: int
    findings: tuple[Finding, ...] = ()
    held: int = 0
    answered: int = 0

    @property
    def why_left_out(self) -> str:
        """`3 left out: 1 has no scan of its front, 2 may show somebody living, or are closed`."""
        whys = (
            (self.left_out - self.held - self.answered, "has no scan of its front", "have no scan of their front"),
            (self.held, "may show somebody living, or is closed", "may show somebody living, or are closed"),
            (self.answered, "has nothing unanswered", "have nothing unanswered"),
        )
        said = ", ".join(several(count, has, have) for count, has, have in whys if count)
        return f"{self.left_out} left out{f': {said}' if said else ''}"


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintOrder:
    """What is to be printed and how: for whom, which items, on which paper, in which theme."""

    to: To = To.FAMILY
    selection: Selection = EVERYTHING
    paper: str = ""
    theme: str = ""
    """The name of a theme, or the path of a theme file."""
    bleed: float = 0.0
    """Millimetres of colour over the edge of the pages, for a print shop that cuts them; 0 for white pages."""
    by: str = "decade"
    """What the album's chapters are made of: a key of `chapters.BY`."""
    kin_of: str = ""
    """Whose album it is: people are named with what they are to this one."""
    language: str = ""
    """In which language our own words are, a member of `catalogue.LANGUAGES`; else that of the collection."""
    in_order: tuple[str, ...] = ()
    """Ids of items: only these, in this order; empty for all, by their numbers."""


def theme_of(name: str) -> Theme:
    """A theme by name, or from a keeper's file; a folder of fonts that it names lies beside it."""
    if not name or name in THEMES:
        return THEMES[name or "plain"]
    path = Path(name)
    if not path.is_file():  # nor a pipe, whose reading may never end
        raise WrongUse(f"“{name}” is no theme and no file.", f"Use {', '.join(THEMES)} or a .toml file.")
    try:
        theme = read_theme(path.read_text(encoding="utf-8"), path.name)
    except UnicodeDecodeError:
        raise WrongUse(f"{path.name} is not in UTF-8.", "Save it as UTF-8.") from None
    if not theme.fonts_from:
        return theme
    folder = path.parent / theme.fonts_from
    if not folder.is_dir():
        raise WrongUse(f"{path.name}: there is no folder {theme.fonts_from} beside it.", "Put the fonts there.")
    return with_more(theme, fonts_from=str(folder.resolve()))


def printing_of(seen: AudienceView, order: PrintOrder) -> Printing:
    """What all printed outputs of one run share."""
    settings, people = seen.collection.settings, seen.people()
    language = order.language or settings.language
    say = say_in(language)
    return Printing(
        title=settings.title,
        printed_on=seen.collection.clock.today(),
        audience=say("for outside") if order.to.is_public else say("for family"),
        author=seen.holder,
        language=language,
        told_in=settings.language,
        paper=order.paper or settings.paper,
        bleed=order.bleed,
        theme=theme_of(order.theme),
        style=Style(
            brackets=settings.bracketed_titles,
            kin=kin_to(people, order.kin_of, order.to, say),
            dates=family_way(settings)._replace(language=language),
            say=say,
        ),
        sort_names={ident: person.sort_name for ident, person in people.items()},
        lives={ident: years_of(person, say) for ident, person in people.items()},
        other_names={ident: other_sort_names(person) for ident, person in people.items()},
    )


def seen_items(seen: AudienceView, order: PrintOrder) -> tuple[list[Record], int, int]:
    """The items with a picture that may be shown, how many of those asked for may not or have none, and how many of
    these may not."""
    asked_for = list(seen.records(order.selection, order.in_order or None))
    shown = [record for record in asked_for if front_of(record) is not None and not record.closed_scans]
    held = [record.number for record in asked_for if front_of(record) is not None and record.closed_scans]
    if held and not shown:
        raise CouldNot(
            f"Every picture asked for is held back from {order.to}: {held[0]}"
            f"{f' and {len(held) - 1} more' if len(held) > 1 else ''}.",
            "`boxlore transfer` lists in names-found.csv whom each names or shows, for you to answer."
            if order.to.is_public
            else "The keeper keeps them, or somebody whom they show or name: boxlore people audience.",
        )
    if not shown:
        why = f": {nothing_of(order.selection)}" if order.selection.asked else ""
        if asked_for:
            why = f": {several(len(asked_for), 'item asked for has', 'items asked for have')} no scan of the front"
        raise CouldNot(f"There is no picture to print{why}.", "Take scans in first, or choose others.")
    return shown, len(asked_for) - len(shown), len(held)


def with_dates_worked_out(
    seen: AudienceView, shown: Sequence[Record], order: PrintOrder
) -> tuple[list[Record], WorkedOutFor]:
    """The records, with the dates that follow from them where nobody has told one; and what follows."""
    worked = worked_out_for(seen, shown, is_whole=order.selection == EVERYTHING and not order.in_order)
    return [worked.beside(record) for record in shown], worked


PLAIN_ORDER = PrintOrder()


def sheet(
    collection: Collection,
    out: Path,
    order: PrintOrder = PLAIN_ORDER,
    *,
    to: To | None = None,
    progress: Progress = QUIET,
) -> PrintedOutput:
    """The album. Items whose scans may not go to the audience are left out and counted."""
    order = with_more(order, to=to) if to is not None else order
    printing, shown, gate = _begun(collection, order, out)
    shown = with_dates_worked_out(gate.seen, shown, order)[0]
    printing = with_more(printing, family=_family(gate.seen, shown, printing.say))
    area = area_of(printing)
    room = area.wide * 0.8, area.high * 0.5  # larger ones lose a little sharpness, and memory stays flat
    sides = [(record.number, side) for record in shown for side in (front_of(record), back_of(record))]
    check = ScanCheck(collection.folder)
    with prepared(check, sides, room, progress) as pictures:
        return _written(gate, out, shown, printing, make_sheet(shown, pictures, printing, order.by), check)


def _family(seen: AudienceView, shown: Iterable[Record], say: Say) -> list[tuple[int, str]]:
    """The family tree of those shown and their parents, as far as the audience may know them."""
    people, known = seen.people(), known_people(seen)
    wanted = {people[each.person].id for record in shown for each in record.people if each.person in people}
    return [
        (depth, say.listed([_with_years(known[ident], say) for ident in couple]))
        for depth, couple in descent(known, wanted)
    ]


def known_people(seen: AudienceView) -> dict[str, Person]:
    """Those of whose name, dates and kin nothing is kept from the audience, by id."""
    recipient = seen.recipient
    return {
        ident: person
        for ident, person in seen.people().items()
        if recipient.may_name(ident, person.name) and recipient.may_know_all_of(person)
    }


def _with_years(person: Person, say: Say) -> str:
    years = years_of(person, say)
    return f"{person.name} ({years})" if years else person.name


def slips(
    collection: Collection, out: Path, order: PrintOrder = PLAIN_ORDER, *, size: str = "4x6", length: str = "slip"
) -> PrintedOutput:
    """Caption slips for copy prints of one size."""
    printing, shown, gate = _begun(collection, order, out)
    check = ScanCheck(collection.folder, "What is printed was told of the right one.")
    check.look_at(shown)
    return _written(gate, out, shown, printing, make_slips(shown, printing, size, length), check)


def labels(collection: Collection, out: Path, order: PrintOrder = PLAIN_ORDER, *, size: str = "a6") -> PrintedOutput:
    """Labels for the boxes and folders of these items, scanned or not."""
    check_pdf(collection, out)
    check_chosen(collection, order.selection)
    seen = seen_by(collection, order.to)
    findings = ask_of_settings(seen)
    printing = printing_of(seen, order)
    kept = [record for record in seen.records(order.selection) if record.mark]
    if not kept:
        raise CouldNot("None of these items is in a box or folder.", "Say where they are kept first.")
    check = ScanCheck(collection.folder, "What is printed was told of the right one.")
    check.look_at(kept)
    told = container_references(collection, seen)
    archives = {path: printing.say.listed([view.words for view in views]) for path, views in told.items()}
    pdf, unprinted = make_labels(kept, printing, size, seen.holder, archives)
    return _written(Gate(seen), out, kept, printing, (pdf, [*findings, *unprinted]), check)


def worksheet(
    collection: Collection,
    out: Path,
    order: PrintOrder = PLAIN_ORDER,
    form: WorksheetForm = USUAL,
    *,
    progress: Progress = QUIET,
) -> tuple[PrintedOutput, Path]:
    """The narrator's worksheet, and beside it a text file to type the answers into; a filled one is never touched.

    Where only what is unanswered is asked, an item of which nothing is open is left out, and counted.
    """
    printing, shown, gate = _begun(collection, order, out)
    prefix, own = collection.settings.prefix, own_questions(collection)
    asked = [record for record in shown if questions_of(record, prefix, own, only_open=form.only_open)]
    if not asked:
        raise CouldNot("Of these photographs nothing is unanswered.", "Choose others, or ask all questions.")
    answered = len(shown) - len(asked)
    printing, shown = with_more(printing, left_out=printing.left_out + answered), asked
    answers = _free(collection, out.with_name(f"{out.stem}-answers.txt"))
    form = with_more(form, answers=answers.name, origin=write_origin(collection.id))
    blank = blank_answers(shown, prefix, own, form, printing.style).encode()
    gate.check_bytes(answers.name, blank)
    room = printing.room(), WORKSHEET_HIGH
    check = ScanCheck(collection.folder)
    with prepared(check, [(record.number, front_of(record)) for record in shown], room, progress) as pictures:
        pdf = make_worksheet(shown, pictures, printing, prefix, own, form)
        printed = _written(gate, out, shown, printing, pdf, check)
    write_output(collection, answers, blank)
    return with_more(printed, answered=answered), answers


def own_questions(collection: Collection) -> list[OwnQuestion]:
    """The collection's own questions as a worksheet asks them. Raises WrongUse for two that would have one code."""
    asked: dict[int, OwnQuestion] = {}
    for prompt in read_prompts(collection.folder, collection.settings.language):
        if prompt.field.startswith(OWN):
            question = OwnQuestion(prompt.field, prompt.question, prompt.lines)
            if (namesake := asked.setdefault(own_number(prompt.field), question)) is not question:
                raise WrongUse(
                    f"The questions {namesake.field} and {question.field} would have one code on paper.",
                    "Give one of them another field in prompts.toml.",
                )
    return list(asked.values())


def _free(collection: Collection, path: Path) -> Path:
    """The path, or the next with a number at which nothing lies that somebody may have written an answer into."""
    count = 1
    free = path
    while os.path.lexists(free) and not is_as_written(collection, free):
        count += 1
        free = path.with_name(f"{path.stem}-{count}{path.suffix}")
    return free


def _begun(collection: Collection, order: PrintOrder, out: Path) -> tuple[Printing, list[Record], Gate]:
    check_pdf(collection, out)
    check_chosen(collection, order.selection)
    seen = seen_by(collection, order.to)
    ask_of_settings(seen)  # only labels print the holder; elsewhere a PDF's author is left away without a word
    shown, left_out, held = seen_items(seen, order)
    return with_more(printing_of(seen, order), left_out=left_out, held=held), shown, Gate(seen)


def _written(
    gate: Gate,
    out: Path,
    shown: Sequence[Record],
    printing: Printing,
    pdf: tuple[bytes, list[Finding]],
    check: ScanCheck,
) -> PrintedOutput:
    data, findings = pdf
    gate.check_bytes(out.name, data)
    write_output(gate.seen.collection, out, data)
    return PrintedOutput(out, len(shown), printing.left_out, (*check.findings, *findings), printing.held)


def pixels(scan: ScanFile, room: tuple[float, float]) -> int:
    """The long side, at PPI, of a picture that fills a room (width and height in millimetres)."""
    wide, high = float(scan.width or 1), float(scan.height or 1)
    if len(scan.area) == 4:
        wide, high = wide * scan.area[2], high * scan.area[3]
    if high > wide:  # a picture may be stored on its side: the larger of both ways is enough
        wide, high = high, wide
    scale = max(min(room[0] / wide, room[1] / high), min(room[0] / high, room[1] / wide))
    return math.ceil(wide * scale / 25.4 * PPI)


@contextmanager
def prepared(
    check: ScanCheck, asked_for: Iterable[tuple[str, ScanFile | None]], room: tuple[float, float], progress: Progress
) -> Iterator[dict[str, Path]]:
    """A JPEG for each scan that will be printed, to fill a room of so many millimetres; one that is damaged, or not as
    it was at its intake, is left out. `asked_for` is (number of the item, scan).

    The folder they are in is gone afterwards.
    """
    scans = [(number, scan) for number, scan in asked_for if scan is not None]
    progress.begin("Preparing pictures", len(scans))
    with ExitStack() as stack:
        try:
            folder = stack.enter_context(work_folder(check.folder, check.folder / "pictures"))
        except CouldNot:  # a collection on a disc, or on a disk that is full
            folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))

        def prepare(at: int, side: tuple[str, ScanFile]) -> tuple[str, Path] | None:
            number, scan = side
            if progress.stopped():
                return None
            try:
                data = check.made(
                    scan, number, lambda file: make_jpeg(file, pixels(scan, room), area=scan.part, turn=scan.turn)
                )
            except CouldNot:
                return None
            if data is None:
                return None
            path = folder / f"{at}.jpg"
            path.write_bytes(data)
            return picture_key(scan), path

        pictures: dict[str, Path] = {}
        with workers() as pool:
            for picture in pool.map(prepare, range(len(scans)), scans):
                progress.step()
                if picture is not None:
                    pictures[picture[0]] = picture[1]
        go_on(progress)
        yield pictures
