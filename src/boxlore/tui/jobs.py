"""The long tasks that the menu starts. Each takes what a form told, works in a thread, and ends in a few sentences.

Their modules load heavy libraries, so each is loaded when it is asked for.
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


@dataclass(frozen=True, slots=True)
class Task:
    """A long task: its key in the menu, its name, what it does, the form before it, the work, what it needs."""

    name: str
    about: str
    blanks: Callable[[Collection], list[Blank]]
    job: MenuTask
    writes: bool = False
    """Whether it changes the collection, so that the list is read anew."""


def path_of(collection: Collection, text: str, default: str) -> Path:
    """A folder or file as told: `~` is home, what is relative starts at the collection's folder."""
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


def _take_in(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.scans import intake, pairing

    files = intake.picture_files([path_of(collection, told["path"], "")])
    if not files:
        raise WrongUse("There are no pictures there.", "JPEG, TIFF, PNG and WebP are taken in.")
    known = [one for one in files if (collection.folder / "scans") in one.resolve().parents]
    plan = pairing.by_suffix([one for one in files if one not in known])
    wanted = intake.IntakeOptions(copy=True, box=told["box"], folder=told["folder"], found_in=told["found_in"])
    taken = intake.take_in(collection, plan, wanted, progress)
    lines = [f"{len(files)} files: {_counted(Counter(one.state for one in taken))}."]
    lines += [f"{Path(one.key).name}: {one.why}" for one in taken if one.state == "refused"]
    return lines


def _copies(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.copies import copies

    out = path_of(collection, told["out"], "copies")
    made = list(copies(collection, out, to=_audience(told["to"]), progress=progress))
    lines = [f"In {out}: {_counted(Counter(str(one.state) for one in made))}."]
    lines += [f"{one.number}: {one.why}" for one in made if one.state == "refused"]
    return lines


def _sheet(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.outputs.sheets import sheet

    made = sheet(
        collection, path_of(collection, told["out"], "print/album.pdf"), to=_audience(told["to"]), progress=progress
    )
    left = f", {made.left_out} left out" if made.left_out else ""
    return [f"{made.path}: {made.items} items{left}.", *[finding.message for finding in made.findings]]


def _transfer(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.archive.transfer import transfer

    made = transfer(collection, path_of(collection, told["out"], "transfer"), progress=progress)
    lines = [f"{part.path}: {part.records} records, {part.scans} scans, {part.bytes:,} bytes." for part in made.parts]
    if made.withheld:
        lines.append(f"Names of {made.withheld} people taken as living are only in the closed part.")
    return [*lines, *[finding.message for finding in made.findings]]


def _check(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.check import check

    progress.begin("Looking at every item", collection.store.count("item"))
    lines: list[str] = []
    last = ""
    for found in check(collection):
        if progress.stopped():
            lines.append("Stopped.")
            break
        if found.number != last:
            progress.step()
            last = found.number
        lines.append(f"{found.number}  {found.finding.severity}: {found.finding.message}")
    return lines or ["Nothing to ask and nothing to mend."]


def _housing(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_check import check_housing

    progress.begin("Looking at every original", collection.store.count("item"))
    lines: list[str] = []
    for found in check_housing(collection):
        if progress.stopped():
            lines.append("Stopped.")
            break
        where = " ".join(part for part in (found.number, found.mark) if part)
        lines.append(f"{where}  {found.finding.message} ({found.finding.source})")
    return lines or ["Nothing to mend."]


def _lists(collection: Collection, told: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.survey import lists, write_order, write_work

    made = lists(collection)
    work = path_of(collection, told["work"], "print/work.pdf")
    order = path_of(collection, told["order"], "print/scanning.pdf")
    write_work(collection, made, work)
    write_order(collection, made, order)
    return [
        f"{work}: {len(made.work)} lines to do, {len(made.buy)} to buy.",
        f"{order}: {len(made.scan)} originals to have scanned.",
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
