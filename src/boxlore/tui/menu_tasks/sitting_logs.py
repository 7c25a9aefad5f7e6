"""Sit: what was told when in a sitting, and the chapters of its recording, written out."""

from collections import Counter

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.menu_tasks.task import FOR, FormAnswers, Group, Task, audience_of, folder_blank, path_of
from boxlore.tui.screens.forms import Blank

MOST = 20
"""So many sittings are to choose from, the last one first."""


def _which(collection: Collection) -> Blank:
    from boxlore.tasks.sitting.recordings import sittings

    held: Counter[str] = Counter()
    choices = []
    for ident, name in sittings(collection):
        held[name] += 1
        choices.append((ident, name if held[name] == 1 else f"{name}, no. {held[name]} of that day"))
    last = tuple(choices[-MOST:][::-1]) or (("", "there was none yet"),)
    return Blank("sitting", "Which sitting?", last[0][0], choices=last)


def _log(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.sitting.time_log import write_log

    if not answers["sitting"]:
        raise WrongUse("There was no sitting yet.", "“Sit”, “This sitting” begins one with its agreement.")
    written = write_log(
        collection, answers["sitting"], path_of(collection, answers["out"], "log"), audience_of(answers)
    )
    chapters = len(written) - 1
    sound = (
        "The chapters lie beside it: players of sound and pictures take them (WebVTT)."
        if chapters
        else "No recording of this sitting is kept, so there are no chapters."
    )
    return [f"{written[-1]}: what was told, line by line, with its time.", sound]


TASKS = {
    "log": Task(
        Group.SIT,
        "Log of a sitting",
        "what was told when; chapters",
        lambda collection: [_which(collection), folder_blank(collection, "out", "Into which folder?", "log"), FOR],
        _log,
    ),
}
