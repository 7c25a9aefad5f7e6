"""The long tasks that the menu starts. Each gets the answers of a form, works in a thread, and returns its report.

The modules of the tasks load heavy libraries, so each is imported when its task is started.
"""

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.screens.cards import Blank

FormAnswers = Mapping[str, str]
MenuTask = Callable[[Collection, FormAnswers, Progress], list[str]]
"""Returns the lines of its report; raises BoxloreError."""


@dataclass(frozen=True, slots=True)
class Task:
    """A long task: its name and a few words about it in the menu, the lines of its form, and the function to run."""

    name: str
    about: str
    blanks: Callable[[Collection], list[Blank]]
    job: MenuTask
    writes: bool = False
    """Whether it changes the collection, so that the list of items is read again after it."""


def path_of(collection: Collection, text: str, default: str) -> Path:
    """The path in a form's answer ('' gives the default): `~` is home, a relative path begins at the collection."""
    path = Path(text.strip() or default).expanduser()
    return path if path.is_absolute() else collection.folder / path


def _audience(text: str) -> To:
    try:
        return {"family": To.FAMILY, "outside": To.OUTSIDE}[text.strip().lower() or "family"]
    except KeyError:
        raise WrongUse(f"“{text[:40]}” is neither.", "Write family or outside.") from None


_FOR = Blank("to", "For whom?", "family", "family, or outside: then living people are left out.")


def _counted(states: Counter[str]) -> str:
    return ", ".join(f"{count} {state}" for state, count in states.most_common()) or "nothing"


def _take_in(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.scans import files as scan_files
    from boxlore.tasks.scans import intake, pairing

    given = scan_files.files_given([path_of(collection, answers["path"], "")])
    files = given.pictures
    if not files and not given.refused:
        raise WrongUse("There are no pictures there.", "JPEG, TIFF, PNG and WebP are taken in.")
    already_here = [path for path in files if (collection.folder / "scans") in path.resolve().parents]
    plan = pairing.by_suffix([path for path in files if path not in already_here])
    options = intake.IntakeOptions(
        copy=True, box=answers["box"], folder=answers["folder"], found_in=answers["found_in"]
    )
    results = intake.take_in(collection, plan, options, progress)
    lines = [f"{len(files)} files: {_counted(Counter(result.state for result in results))}."]
    lines += [f"{Path(result.key).name}: {result.why}" for result in results if result.state == "refused"]
    unsure = [result.why for result in results if result.state == "unsure"]
    lines += [f"{why} boxlore intake --backs join or apart says which." for why in unsure]
    lines += [f"{scan_files.readable(path.name)}: {why}" for path, why in given.refused]
    lines += [f"Not pictures: {given.not_pictures}."] if given.not_pictures else []
    return lines


def _copies(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.copies import copies

    out = path_of(collection, answers["out"], "copies")
    results = list(copies(collection, out, to=_audience(answers["to"]), progress=progress))
    lines = [f"In {out}: {_counted(Counter(str(result.state) for result in results))}."]
    lines += [f"{result.number}: {result.why}" for result in results if result.state == "refused"]
    return lines


def _sheet(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.sheets import sheet

    printed = sheet(
        collection,
        path_of(collection, answers["out"], "print/album.pdf"),
        to=_audience(answers["to"]),
        progress=progress,
    )
    left_out = f", {printed.left_out} left out" if printed.left_out else ""
    return [f"{printed.path}: {printed.items} items{left_out}.", *[finding.message for finding in printed.findings]]


def _transfer(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.archive.transfer import transfer

    transferred = transfer(collection, path_of(collection, answers["out"], "transfer"), progress=progress)
    lines = [
        f"{part.path}: {part.records} records, {part.scans} scans, {part.bytes:,} bytes." for part in transferred.parts
    ]
    if transferred.withheld:
        lines.append(f"Names of {transferred.withheld} people taken as living are only in the closed part.")
    return [*lines, *[finding.message for finding in transferred.findings]]


def _check(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.check import check

    progress.begin("Looking at every item", collection.store.count("item"))
    lines: list[str] = []
    last = ""
    for located in check(collection):
        if progress.stopped():
            lines.append("Stopped.")
            break
        if located.number != last:
            progress.step()
            last = located.number
        lines.append(f"{located.number}  {located.finding.severity}: {located.finding.message}")
    return lines or ["Nothing to ask and nothing to mend."]


def _housing(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_check import check_housing

    progress.begin("Looking at every original", collection.store.count("item"))
    lines: list[str] = []
    for located in check_housing(collection):
        if progress.stopped():
            lines.append("Stopped.")
            break
        where = " ".join(part for part in (located.number, located.mark) if part)
        lines.append(f"{where}  {located.finding.message} ({located.finding.source})")
    return lines or ["Nothing to mend."]


def _lists(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.survey import lists, write_order, write_work

    todo = lists(collection)
    work = path_of(collection, answers["work"], "print/work.pdf")
    order = path_of(collection, answers["order"], "print/scanning.pdf")
    write_work(collection, todo, work)
    write_order(collection, todo, order)
    return [
        f"{work}: {len(todo.work)} lines to do, {len(todo.buy)} to buy.",
        f"{order}: {len(todo.scan)} originals to have scanned.",
    ]


TASKS: dict[str, Task] = {
    "intake": Task(
        "Take scans in",
        "fronts (_f) paired with backs (_b)",
        lambda collection: [
            Blank("path", "Folder or file with the scans", "", "They are copied; yours are never changed."),
            Blank("box", "Box", "", "The number or name on the box they go into; may be empty."),
            Blank("folder", "Folder in that box"),
            Blank("found_in", "How were they found?", "", "For instance: in the shoebox, under the letters."),
        ],
        _take_in,
        writes=True,
    ),
    "copies": Task(
        "Captioned copies",
        "the caption goes into the copy",
        lambda collection: [Blank("out", "Into which folder?", "copies"), _FOR],
        _copies,
    ),
    "sheet": Task(
        "Album sheet",
        "a PDF of pictures and captions",
        lambda collection: [Blank("out", "Name of the PDF", "print/album.pdf"), _FOR],
        _sheet,
    ),
    "transfer": Task(
        "Package for an archive",
        "records and scans, open and closed",
        lambda collection: [Blank("out", "Into which folder?", "transfer")],
        _transfer,
    ),
    "housing": Task("Originals", "sleeves, boxes, damp, hazards", lambda collection: [], _housing),
    "lists": Task(
        "Lists of the survey",
        "what to do, to buy, to have scanned",
        lambda collection: [
            Blank("work", "Name of the work list", "print/work.pdf", ".pdf or .csv"),
            Blank("order", "Name of the scanning order", "print/scanning.pdf", ".pdf or .csv"),
        ],
        _lists,
    ),
    "check": Task("Check", "what is missing, what cannot be so", lambda collection: [], _check),
}
