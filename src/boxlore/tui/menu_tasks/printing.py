"""Print: the album, slips, labels, worksheets, and the lists that a survey comes to."""

from collections.abc import Sequence

from boxlore.core.findings import Finding, several
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.menu_tasks.task import (
    FOR,
    FormAnswers,
    Group,
    Task,
    audience_of,
    file_blank,
    names_first,
    path_of,
    selection_of,
    which,
)
from boxlore.tui.screens.forms import Blank

THEMES = (
    ("plain", "plain"), ("large-print", "large print"), ("linen", "wide margins, brown ink"),
    ("slate", "a plain face, blue-grey ink"),
)  # fmt: skip
PAPERS = (("a4", "A4"), ("letter", "Letter"))


def _paper(collection: Collection, papers: tuple[tuple[str, str], ...] = PAPERS) -> list[Blank]:
    return [
        Blank("paper", "Paper", collection.settings.paper, choices=papers),
        Blank("theme", "Look", "plain", choices=THEMES),
    ]


def _messages(findings: Sequence[Finding]) -> list[str]:
    return [finding.message for finding in findings]


def _sheet(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.printed_sheets import PrintOrder, sheet

    order = PrintOrder(
        to=audience_of(answers), selection=selection_of(answers), paper=answers["paper"], theme=answers["theme"],
        kin_of=answers["kin_of"], by=answers["by"], bleed=float(answers["bleed"]),
    )  # fmt: skip
    printed = sheet(collection, path_of(collection, answers["out"], "print/album.pdf"), order, progress=progress)
    left_out = f"; {printed.why_left_out}" if printed.left_out else ""
    return [f"{printed.path}: {several(printed.items, 'photograph')}{left_out}.", *_messages(printed.findings)]


def _slips(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.printed_sheets import PrintOrder, slips

    order = PrintOrder(
        to=audience_of(answers), selection=selection_of(answers), paper=answers["paper"], theme=answers["theme"]
    )
    out = path_of(collection, answers["out"], "print/slips.pdf")
    printed = slips(collection, out, order, size=answers["size"], length=answers["length"])
    return [
        f"{printed.path}: {several(printed.items, 'slip')}. Mount them under copy prints, never on originals.",
        *_messages(printed.findings),
    ]


def _labels(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.printed_sheets import PrintOrder, labels

    order = PrintOrder(to=audience_of(answers), selection=selection_of(answers), paper=answers["paper"])
    out = path_of(collection, answers["out"], "print/labels.pdf")
    printed = labels(collection, out, order, size=answers["size"])
    return [
        f"{printed.path}: labels for {several(printed.items, 'photograph')}. "
        "They go on enclosures, never on originals.",
        *_messages(printed.findings),
    ]


def _chapters() -> tuple[tuple[str, str], ...]:
    from boxlore.tasks.outputs.printed_sheets import BY

    return tuple(BY.items())


def _label_sizes() -> tuple[tuple[str, str], ...]:
    from boxlore.tasks.outputs.printed_sheets import LABEL_SIZES

    return tuple(LABEL_SIZES.items())


def _worksheet(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.printed_sheets import PrintOrder, WorksheetForm, worksheet

    order = PrintOrder(
        to=audience_of(answers), selection=selection_of(answers), paper=answers["paper"], theme=answers["theme"]
    )
    out = path_of(collection, answers["out"], "print/worksheet.pdf")
    form = WorksheetForm(
        per_page=int(answers["per_page"]), names=answers["names"] == "yes", only_open=answers["asks"] == "open"
    )
    printed, file = worksheet(collection, out, order, form, progress=progress)
    left_out = f"; {printed.why_left_out}" if printed.left_out else ""
    return [
        f"{printed.path}: {several(printed.items, 'photograph')}{left_out}.",
        f"Type what comes back into {file}; then “Take in”, “Answers on paper”.",
        *_messages(printed.findings),
    ]


def _lists(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.survey import lists, write_order, write_work

    todo = lists(collection)
    work = path_of(collection, answers["work"], "print/work.pdf")
    order = path_of(collection, answers["order"], "print/scanning.pdf")
    write_work(collection, todo, work)
    write_order(collection, todo, order)
    return [
        f"{work}: {several(len(todo.work), 'line')} to do, {len(todo.buy)} to buy.",
        f"{order}: {several(len(todo.scan), 'original')} to have scanned.",
    ]


SIZES = (
    ("4x6", "4 x 6 inches"), ("5x7", "5 x 7 inches"), ("8x10", "8 x 10 inches"), ("10x15", "10 x 15 cm"),
    ("13x18", "13 x 18 cm"),
)  # fmt: skip

TASKS = {
    "sheet": Task(
        Group.PRINT,
        "Album",
        "a book of the photographs, with who is who",
        lambda collection: [
            file_blank(collection, "out", "Name of the PDF", "print/album.pdf"),
            FOR,
            *which(),
            Blank("by", "Chapters", "decade", choices=_chapters()),
            Blank("kin_of", "Kinship told from whose side?", "", "A name: people are then named as kin of this one."),
            *_paper(collection, (*PAPERS, ("a5", "A5"), ("square", "square"))),
            Blank("bleed", "Who prints it?", "0", "A shop cuts the pages: their colour runs 3 mm over the edge.",
                  choices=(("0", "at home"), ("3", "a print shop"))),
        ],
        names_first(_sheet),
    ),
    "slips": Task(
        Group.PRINT,
        "Caption slips",
        "to mount under copy prints",
        lambda collection: [
            file_blank(collection, "out", "Name of the PDF", "print/slips.pdf"),
            FOR,
            *which(),
            Blank("size", "Size of the copy prints", "4x6", choices=SIZES),
            Blank("length", "How much do they say?", "slip",
                  choices=(("slip", "a line or two"), ("sheet", "as in the album"), ("full", "everything"))),
            *_paper(collection),
        ],
        names_first(_slips),
    ),
    "labels": Task(
        Group.PRINT,
        "Labels",
        "for boxes and folders",
        lambda collection: [
            file_blank(collection, "out", "Name of the PDF", "print/labels.pdf"),
            FOR,
            *which(),
            Blank("size", "Size of a label", "a6", choices=_label_sizes()),
            Blank("paper", "Paper", collection.settings.paper, choices=PAPERS),
        ],
        names_first(_labels),
    ),
    "worksheet": Task(
        Group.PRINT,
        "Worksheets",
        "for a teller without a computer",
        lambda collection: [
            file_blank(collection, "out", "Name of the PDF", "print/worksheet.pdf"),
            FOR,
            *which(),
            Blank("asks", "What is asked?", "all", choices=(("all", "all"), ("open", "only what is unanswered"))),
            Blank("per_page", "Photographs on a page", "1", "One has type of 20 points; more have smaller type.",
                  choices=(("1", "one"), ("2", "two"), ("4", "four"))),
            Blank("names", "Print the names that are known?", "no", "A printed name suggests the answer.",
                  choices=(("no", "no"), ("yes", "yes"))),
            *_paper(collection),
        ],
        names_first(_worksheet),
    ),
    "lists": Task(
        Group.PRINT,
        "Lists of the survey",
        "what to do, to buy, to have scanned",
        lambda collection: [
            file_blank(collection, "work", "Name of the work list", "print/work.pdf", ".pdf or .csv"),
            file_blank(collection, "order", "Name of the scanning order", "print/scanning.pdf", ".pdf or .csv"),
        ],
        _lists,
    ),
}  # fmt: skip
