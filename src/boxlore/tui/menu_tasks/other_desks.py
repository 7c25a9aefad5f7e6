"""Two desks: a working copy of the collection for somebody else, and what was told there taken in."""

from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.menu_tasks.task import FormAnswers, Group, Task, path_of
from boxlore.tui.screens.forms import Blank


def _folder(collection: Collection, answers: FormAnswers) -> Path:
    if not answers["folder"].strip():
        raise WrongUse("No folder is named.", "Write its path, or look for it with F3.")
    return path_of(collection, answers["folder"], "")


def _join(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.joining import join
    from boxlore.tasks.collection.said_of_joining import said_of_joining

    other = _folder(collection, answers)
    progress.begin("Taking in what was told there", 0)
    joined = join(collection, other, progress, new_numbers=answers["new_numbers"] == "yes")
    return said_of_joining(collection, other, joined)


def _working_copy(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.joining import working_copy_of
    from boxlore.tasks.collection.said_of_joining import said_of_working_copy

    folder = _folder(collection, answers)
    progress.begin("Copying all that is told, and the scans", 0)
    joined = working_copy_of(collection, folder, progress)
    later = "Later, “Take in”, “From another desk” brings together what was told in both: here with that folder, there "
    return [*said_of_working_copy(collection.folder, folder, joined), f"{later}with this one."]


TASKS = {
    "join": Task(
        Group.TAKE_IN,
        "From another desk",
        "what was told in a working copy",
        lambda collection: [
            Blank("folder", "Folder of the other working copy", "", "It stays as it is. Nothing told here is lost.",
                  path="folder"),
            Blank("new_numbers", "Photographs with the same number in both?", "no",
                  "New ones are for the later of the two; pencil them on its enclosure.",
                  choices=(("no", "stop and name them"), ("yes", "new numbers"))),
        ],
        _join,
        writes=True,
    ),
    "working_copy": Task(
        Group.HAND_ON,
        "A copy for another desk",
        "somebody works on it apart",
        lambda collection: [
            Blank("folder", "Into which folder?", "", "A new folder, such as one on a stick.", path="folder"),
        ],
        _working_copy,
        writes=True,
    ),
}  # fmt: skip
