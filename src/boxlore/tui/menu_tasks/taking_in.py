"""Take in: scans, items without one, a table of items, a family tree, answers on paper, a list of places."""

from collections import Counter
from collections.abc import Container, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.core.statements import KEEPER, typed_source
from boxlore.tasks.collection.opening import Collection, is_of_collection
from boxlore.tasks.collection.progress import Progress, counting
from boxlore.tui.menu_tasks.task import YES_NO, FormAnswers, Group, Task, counted, file_blank, given_file, path_of
from boxlore.tui.screens.forms import Blank

if TYPE_CHECKING:
    from boxlore.tasks.scans.given_files import GivenFiles
    from boxlore.tasks.scans.intake import IntakeResult
    from boxlore.tasks.scans.pairing import Planned

MOST = 10_000
"""Items without a scan that one run makes at most."""


def _check_box(answers: FormAnswers) -> None:
    """Raise WrongUse where a folder is named and no box: its photographs would be marked as those of a box are."""
    if answers["folder"] and not answers["box"]:
        raise WrongUse(f"It is not said in which box folder “{answers['folder']}” is.", "Write the box too.")


def _given(collection: Collection, answers: FormAnswers) -> "tuple[GivenFiles, list[Planned]]":
    """The files of a folder, and the plan of their intake. Raises WrongUse where there are none."""
    from boxlore.tasks.scans import given_files as scan_files
    from boxlore.tasks.scans import pairing

    if not answers["path"]:
        raise WrongUse("No folder is named.", "Write its path, or look for it with F3.")
    given = scan_files.files_given([path_of(collection, answers["path"], "")])
    files = given.pictures
    if not files and not given.refused:
        held = f" It holds {'; '.join(scan_files.named_groups(given))}." if given.not_pictures else ""
        raise WrongUse(f"There are no pictures there.{held}", "JPEG, TIFF, PNG and WebP are taken in.")
    already_here = [path for path in files if (collection.folder / "scans") in path.resolve().parents]
    wanted = files if answers.get("replace") == "yes" else [path for path in files if path not in already_here]
    return given, pairing.alternating(wanted) if answers.get("pairs") == "alternating" else pairing.by_suffix(wanted)


def _take_in(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.scans import find_prints

    _check_box(answers)
    given, plan = _given(collection, answers)
    remarks: Sequence[str] = ()
    if answers["find_prints"] == "yes":
        plan, remarks = find_prints.with_prints(plan, progress)
    return carry_out(collection, plan, given, answers, progress, remarks)


def plan_of_sheets(collection: Collection, answers: FormAnswers) -> "tuple[GivenFiles, list[Planned]]":
    """The pictures on which outlines are to be drawn: of a folder or a file, or the front of an item that is here.
    Raises WrongUse."""
    from boxlore.tasks.collection.items_by_mark import find_item
    from boxlore.tasks.collection.records_for_outputs import record_of
    from boxlore.tasks.scans import given_files as scan_files
    from boxlore.tasks.scans import pairing

    _check_box(answers)
    words = answers["path"]
    if words and not path_of(collection, words, "").exists():
        record = record_of(collection, find_item(collection, words).id)
        fronts = [scan for scan in record.scans if scan.side == "recto"]
        if not fronts:
            raise WrongUse(f"{record.number} has no scan of its front.", "Name another, or the file of a sheet.")
        path = collection.folder / fronts[0].path
        return scan_files.GivenFiles(), [pairing.Planned(key=record.number, sides=(pairing.ScanSide(path),))]
    return _given(collection, answers)


def carry_out(
    collection: Collection,
    plan: "list[Planned]",
    given: "GivenFiles",
    answers: FormAnswers,
    progress: Progress,
    remarks: Sequence[str] = (),
) -> list[str]:
    """Take a plan in as the form says, `given` the files that it is of. Returns the lines of the report."""
    from boxlore.tasks.scans import camera_dates, damage, intake
    from boxlore.tasks.scans import given_files as scan_files

    options = intake.IntakeOptions(
        copy=answers["copy"] == "copy",
        box=answers["box"],
        folder=answers["folder"],
        found_in=answers["found_in"],
        backs=answers.get("backs", "ask"),
        own=answers.get("own") == "yes",
        replace=answers.get("replace") == "yes",
    )
    results = intake.take_in(collection, plan, options, progress)
    if not progress.stopped():
        damage.look_closer(collection, progress)
    taken = [result.number for result in results if result.state == "taken"]
    picture_dates = answers.get("camera_dates") == "picture"
    dates = camera_dates.camera_dates(collection, taken) if picture_dates else []
    if dates:
        camera_dates.tell_camera_dates(collection, dates)
    damaged = damage.intake_findings(collection, [result.number for result in results if result.number])
    results += intake.not_taken(collection, given.refused)
    lines = [_taken_in(results, {item.key for item in plan if len(item.sides) > 1}), *remarks]
    lines += [f"{Path(result.key).name}: {result.why}" for result in results if result.state in ("refused", "replaced")]
    if own_line := intake.own_line(results):
        lines.append(f"{own_line} Take the folder in again, and say that they are taken too, if you want them.")
    unsure = [result.why for result in results if result.state == "unsure"]
    lines += [f"{why} Take the folder in again, and say whether such backs join." for why in unsure]
    lines += [f"{number}: {finding.message}" for number, finding in damaged]
    lines += damage.unseen_lines(collection) if taken else []
    given.leave_out(lambda path: is_of_collection(collection.folder, path))
    lines += [f"No picture: {line}" for line in scan_files.named_groups(given)]
    return lines


_STATES = {"joined": "joined to one that was here", "replaced": "in the place of a scan that was here",
           "known": "here already", "refused": "refused",
           "own": "made by Boxlore itself", "unsure": "not taken, for it is not sure where it belongs"}  # fmt: skip


def _taken_in(results: "Sequence[IntakeResult]", with_backs: Container[str]) -> str:
    """“18 photographs taken in, 6 of them with backs; 2 here already.” `with_backs` are the keys of those with more
    than a front."""
    taken = [result.key for result in results if result.state == "taken"]
    backs = sum(key in with_backs for key in taken)
    states = Counter(result.state for result in results)
    rest = [f"{states[state]} {words}" for state, words in _STATES.items() if states[state]]
    of_them = f", {backs} of them with {'a back' if backs == 1 else 'backs'}" if backs else ""
    if backs == len(taken) and backs:
        of_them = ", with its back" if backs == 1 else ", all with their backs"
    told = f"{several(len(taken), 'photograph')} taken in{of_them}" if taken else "Nothing new taken in"
    return f"{'; '.join([told, *rest])}."


def _one_scan(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.items_by_mark import find_item
    from boxlore.tasks.scans.one_scan import damage_words, take_scan

    if not answers["number"]:
        raise WrongUse("No photograph is named.", "Write its number, or where it is kept.")
    number = collection.store.number_of(find_item(collection, answers["number"]).id)
    result = take_scan(
        collection,
        number,
        given_file(collection, answers["file"]),
        side="verso" if answers["what"] == "back" else "recto",
        altered=answers["what"] == "altered",
        better=answers["better"] != "no",
        markers=answers["better"] if answers["better"] in ("stay", "away") else "",
    )
    return [f"{number}: {result.why or 'taken in'}.", *damage_words(collection, number)]


def _without_scan(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.scans.intake import IntakeOptions, take_in
    from boxlore.tasks.scans.pairing import Planned

    if not answers["count"].isascii() or not answers["count"].isdigit() or not 1 <= int(answers["count"]) <= MOST:
        raise WrongUse(f"“{answers['count'][:20]}” is not how many.", f"Write a number from 1 to {MOST:,}.")
    plan = [Planned(key=f"without scan {at}") for at in range(1, int(answers["count"]) + 1)]
    _check_box(answers)
    options = IntakeOptions(box=answers["box"], folder=answers["folder"], found_in=answers["found_in"])
    results = [result for result in take_in(collection, plan, options, progress) if result.number]
    return [_numbered(results)] if results else []


def _numbered(results: "Sequence[IntakeResult]") -> str:
    """“3 photographs: TRA-0026 to TRA-0028.”"""
    first, last = results[0].number, results[-1].number
    return f"{several(len(results), 'photograph')}: {first}{f' to {last}' if last != first else ''}."


def _table(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.scans.intake import IntakeOptions, take_in
    from boxlore.tasks.scans.pairing import read_items

    table = given_file(collection, answers["table"])
    folder = path_of(collection, answers["path"], str(table.parent))
    results = take_in(collection, read_items(table, folder), IntakeOptions(copy=True), progress)
    lines = [f"{several(len(results), 'row')}: {counted(Counter(result.state for result in results))}."]
    return lines + [f"{result.key}: {result.why}" for result in results if result.state == "refused"]


def _tree(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.people.tree_import import import_tree

    report = import_tree(collection, given_file(collection, answers["file"]), progress=progress)
    lines = [f"{several(report.new, 'person', 'people')} new, {report.changed} changed, {report.same} as before; "
             f"{several(report.marriages, 'marriage')}."]  # fmt: skip
    lines += report.said
    lines += [f"Line {fault.number}: {fault.why}" for fault in report.faults]
    return lines + [
        f"Not understood: {gap.path}, {several(gap.count, 'line')}, first line {gap.line}: {gap.example}"
        for gap in report.left
    ]


def _answers(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.telling.statements import Telling
    from boxlore.tasks.telling.table import tell_from

    source = typed_source(f"narrator:{answers['by']}") if answers["by"] else KEEPER
    file, printed_here = given_file(collection, answers["file"]), answers["here"] == "yes"
    taken = tell_from(collection, file, Telling(source=source), printed_here=printed_here)
    known = f" {several(taken.known, 'was', 'were')} known already." if taken.known else ""
    return [
        f"{several(len(taken.told), 'answer')} taken in, told by {answers['by'] or 'you'}.{known}",
        *taken.unsaid,
        *taken.faults,
    ]


def _places(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.telling.places import gazetteer_of, take_gazetteer

    countries = [part.upper() for part in answers["countries"].replace(",", " ").split()]
    table = given_file(collection, answers["table"])
    count = take_gazetteer(collection, table, names=None, countries=countries, heard=counting(progress))
    gazetteer_of(collection, counting(progress))
    return [
        f"{several(count, 'place or area is', 'places and areas are')} known to this collection "
        f"now, beside the usual ones."
    ]


def where_blanks() -> list[Blank]:
    """The lines of a form for where things are kept, and how they were found."""
    return [
        Blank("box", "Box", "", "The number or name on the box they go into. Empty, if they are in none yet."),
        Blank("folder", "Folder in that box"),
        Blank("found_in", "How did they lie when found?", "", "For instance: in the shoebox, under the letters."),
    ]


COPY = Blank(
    "copy", "Where do the scans stay?", "copy",
    choices=(("copy", "copied into the collection"), ("place", "where they are now")),
)  # fmt: skip
"""Whether intake copies the files."""

TASKS = {
    "intake": Task(
        Group.TAKE_IN,
        "Scans",
        "a folder of pictures, front and back",
        lambda collection: [
            Blank("path", "Folder or file with the scans", "", "Yours are never changed.", path="file"),
            *where_blanks(),
            Blank("pairs", "How do fronts and backs belong together?", "suffix",
                  choices=(("suffix", "by name: _f, _b, _front, _back"), ("alternating", "by turns: front, back"))),
            Blank("backs", "Backs of photographs that are in already?", "ask", "",
                  choices=(("ask", "joined where sure"), ("join", "all joined"), ("apart", "numbers of their own"))),
            Blank("replace", "Scans of what is in already?", "no", "A better one, by the same name or number.",
                  choices=(("no", "not taken"), ("yes", "each takes its place"))),
            Blank("find_prints", "Several prints on one scan?", "no", "To put outlines right: “Prints on a sheet”.",
                  choices=(("no", "one photograph in each file"), ("yes", "find the prints on them"))),
            Blank("camera_dates", "The date a camera wrote into the files?", "scan",
                  "Of the picture only where a camera took it, and not of a print.",
                  choices=(("scan", "when it was scanned"), ("picture", "when the picture was taken"))),
            COPY,
            Blank("own", "Files that Boxlore made itself?", "no", "Such as copies, pages, packages.",
                  choices=(("no", "not taken"), ("yes", "taken too"))),
        ],
        _take_in,
        writes=True,
        is_step=True,
    ),
    "scan": Task(
        Group.TAKE_IN,
        "A scan for one photograph",
        "its back, a better one",
        lambda collection: [
            Blank("number", "Which photograph?", "", "Its number, or where it is kept: TRA-0042, or 3/12/4."),
            file_blank(collection, "file", "The file"),
            Blank("what", "What does it show?", "front",
                  choices=(("front", "its front"), ("back", "its back"), ("altered", "coloured or retouched"))),
            Blank("better", "In the place of the scan that is there?", "no",
                  "The earlier file stays where it is. On a picture of another shape, say what becomes of markers.",
                  choices=(*YES_NO, ("stay", "yes, markers stay"), ("away", "yes, markers go"))),
        ],
        _one_scan,
        writes=True,
    ),
    "without_scan": Task(
        Group.TAKE_IN,
        "Prints without a scan",
        "numbers for what is not scanned yet",
        lambda collection: [Blank("count", "How many?", "1"), *where_blanks()],
        _without_scan,
        writes=True,
        is_step=True,
    ),
    "table": Task(
        Group.TAKE_IN,
        "Scans from a table",
        "a spreadsheet of sides and parts",
        lambda collection: [
            file_blank(collection, "table", "The table", "", "A CSV with the column item; file, side, area and more."),
            Blank("path", "Folder of its files", "", "Empty, if they lie beside the table.", path="folder"),
        ],
        _table,
        writes=True,
        is_step=True,
    ),
    "tree": Task(
        Group.TAKE_IN,
        "A family tree",
        "a GEDCOM file; again, to update it",
        lambda collection: [file_blank(collection, "file", "The file", "", "GEDCOM 5.5.1 or 7.0, from any program.")],
        _tree,
        writes=True,
    ),
    "answers": Task(
        Group.TAKE_IN,
        "Answers on paper",
        "a worksheet typed up, or a table",
        lambda collection: [
            file_blank(collection, "file", "The file of answers", "", "worksheet-answers.txt, or a CSV."),
            Blank("by", "Who told them?", "", "The name of the teller. Empty: you."),
            Blank("here", "Was the worksheet printed from this collection?", "no",
                  "Yes, where the file does not say it: of an earlier version, or your own.", choices=YES_NO),
        ],
        _answers,
        writes=True,
    ),
    "gazetteer": Task(
        Group.TAKE_IN,
        "A bigger list of places",
        "a GeoNames file of a country",
        lambda collection: [
            file_blank(collection, "table", "The file", "", "19 columns, such as EE.txt. GeoNames data are CC BY 4.0."),
            Blank("countries", "Only these countries?", "", "Two letters each: EE, NZ. Empty for all."),
        ],
        _places,
        writes=True,
    ),
}  # fmt: skip
