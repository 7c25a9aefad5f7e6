"""Keep safe: whether the scans are as they were, how good they are, and the backups of what is told."""

from boxlore.core.errors import WrongUse
from boxlore.core.findings import several
from boxlore.tasks.collection.backups import is_kept
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.from_inside import SIDES
from boxlore.tui.menu_tasks.task import FormAnswers, Group, Task, folder_blank, path_of, selection_of, which
from boxlore.tui.screens.forms import Blank


def _verify(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.log_check import log_findings, said_of_older
    from boxlore.tasks.outputs.struck_words_found import struck_findings
    from boxlore.tasks.scans.damage import damage_findings, look_closer
    from boxlore.tasks.scans.fixity import finding_of, register_again, verify_scans
    from boxlore.tasks.sitting.recordings import verify_kept

    look_in = (path_of(collection, answers["look_in"], ""),) if answers["look_in"] else ()
    wrong, count = [], 0
    lines = [f"{number} {finding.message}".strip() for number, finding in log_findings(collection)]
    lines += [finding.message for finding in struck_findings(collection)]
    lines += [words for words in (said_of_older(collection),) if words]
    for verified in verify_scans(collection, progress, look_in=look_in):
        count += 1
        if (finding := finding_of(verified)) is not None:
            wrong.append(verified)
            lines.append(finding.message)
    if progress.stopped():
        lines.append("Stopped; the next time it goes on from here.")
    if answers["mend"] == "yes" and (mended := register_again(collection, wrong)):
        lines.append(f"The new place of {several(mended, 'scan')} is noted.")
    lines += [finding.message for verified in verify_kept(collection) if (finding := finding_of(verified)) is not None]
    if not progress.stopped():
        look_closer(collection, progress)
    lines += [f"{number}: {finding.message}" for number, finding in damage_findings(collection)]
    head = f"{several(count, 'scan')} read; {len(wrong)} not as they were." if wrong else (
        f"{several(count, 'scan')} read; all as they were."
    )  # fmt: skip
    return [head, *lines]


def _scan_quality(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.originals.housing_check import check_scans, print_sizes

    selection = selection_of(answers)
    progress.begin("Looking at every scan", 0)
    if answers["what"] == "prints":
        return [
            f"{row.number} {SIDES.get(row.side, row.side)}: sharp up to {_by(row.sharp)} mm, usable up to "
            f"{_by(row.usable)} mm"
            for row in print_sizes(collection, selection)
        ] or ["There is no scan to print."]
    found = [f"{row.number}  {row.finding.message}" for row in check_scans(collection, selection)]
    return found or ["Every scan is as it should be."]


def _by(size: tuple[float, float]) -> str:
    return " × ".join(str(round(length)) for length in size)


def _backup(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    progress.begin("Making a backup", 0)
    was_kept = is_kept(collection.store)
    collection.back_up("asked for")
    if not is_kept(collection.store):
        return collection.unsaid[-1:]  # why none could be made
    made = "Nothing was told since the last backup, which lies" if was_kept else "A backup lies"
    return [
        f"{made} in {collection.folder / 'backups'}.",
        "It is on the same disk and holds no scans: “Copy all to another disk” takes them too.",
    ]


def _copy_away(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.on_another_disk import copy_away

    if not answers["into"]:
        raise WrongUse("No folder is named.", "Plug the disk in, and look for it with F3.")
    into = path_of(collection, answers["into"], "")
    if not into.is_dir():  # one that is made would lie on this disk, where the other one is not plugged in
        raise WrongUse(f"There is no folder {into}.", "Plug the disk in, and name its own folder, or one on it.")
    done = copy_away(collection, into, progress)
    there = f"; {done.same} were there already" if done.same else ""
    lines = [f"In {done.folder}: all that is told, and {several(done.copied, 'file')} copied and proved{there}."]
    if done.stopped:
        lines.append("Stopped before the last file; the next time it goes on from here.")
    lines += done.faults
    if done.outside:
        first = f"{several(len(done.outside), 'scan lies', 'scans lie')} outside the collection’s folder: "
        lines.append(f"{first}{done.outside[0]}{' …' * (len(done.outside) > 1)}. Copy such scans yourself.")
    if done.further:
        lines.append(
            f"{several(done.further, 'file lies', 'files lie')} there yet from an earlier copy, and here no longer. "
            "If words were struck since, look through them: they may still hold them."
        )
    if done.on_same_disk:
        lines.append("It is on the same disk as the collection: one on another disk outlives this one.")
    return [*lines, "To use the copy one day, copy its folder to a disk of a computer and open it there."]


TASKS = {
    "copy_away": Task(
        Group.KEEP_SAFE,
        "Copy all to another disk",
        "a stick: all that is told, and scans",
        lambda collection: [
            folder_blank(collection, "into", "Folder on the other disk", "",
                         f"A folder “{collection.folder.resolve().name}” is made there; later only what is new."),
        ],
        _copy_away,
    ),
    "backup": Task(
        Group.KEEP_SAFE, "Make a backup now", "of all that is told, without scans", lambda collection: [], _backup,
        writes=True,
    ),
    "verify": Task(
        Group.KEEP_SAFE,
        "Check the scans",
        "unchanged since they were taken in?",
        lambda collection: [
            folder_blank(collection, "look_in", "A further folder to look in", "", "For scans that are gone."),
            Blank("mend", "Note the new place of moved ones?", "yes", choices=(("yes", "yes"), ("no", "no"))),
        ],
        _verify,
        writes=True,
    ),
    "scans": Task(
        Group.KEEP_SAFE,
        "How good the scans are",
        "sharp, upright; how large to print",
        lambda collection: [
            *which(),
            Blank("what", "What is listed?", "faults",
                  choices=(("faults", "what could be better"), ("prints", "how large each may be printed"))),
        ],
        _scan_quality,
    ),
}  # fmt: skip
