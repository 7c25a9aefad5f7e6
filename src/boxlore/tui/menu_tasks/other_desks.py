"""Two who work apart: a working copy or a parcel for somebody else, and what was told there taken in."""

from pathlib import Path

from boxlore.core.errors import WrongUse
from boxlore.core.fields.plain_values import DAY_WORDS
from boxlore.core.records.audience import To
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tui.menu_tasks.task import FormAnswers, Group, Task, path_of
from boxlore.tui.screens.forms import Blank


def _folder(collection: Collection, answers: FormAnswers) -> Path:
    return _path(collection, answers, "folder")


def _path(collection: Collection, answers: FormAnswers, what: str) -> Path:
    if not answers[what].strip():
        raise WrongUse(f"No {what} is named.", "Write its path, or look for it with F3.")
    return path_of(collection, answers[what], "")


def _join(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.joining import join
    from boxlore.tasks.collection.said_of_joining import said_of_joining

    other = _folder(collection, answers)
    progress.begin("Taking in what was told there", 0)
    joined = join(collection, other, progress, new_numbers=answers["new_numbers"] == "yes")
    return said_of_joining(collection, other, joined)


def _meet(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.meeting import meet
    from boxlore.tasks.collection.said_of_meeting import said_of_meeting

    progress.begin("Meeting the other desks", 0)
    met = meet(
        collection,
        answers["address"].strip(),
        new_numbers=answers["new_numbers"] == "yes",
        wished="" if answers["wished"] == "later" else answers["wished"],
    )
    return said_of_meeting(collection, met)


def _working_copy(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.joining import working_copy_of
    from boxlore.tasks.collection.said_of_joining import said_of_working_copy

    folder = _folder(collection, answers)
    progress.begin("Copying all that is told, and the scans", 0)
    joined = working_copy_of(collection, folder, progress)
    later = "Later, “Take in”, “From a working copy” brings together what was told in both"
    return [
        *said_of_working_copy(collection.folder, folder, joined),
        f"{later}: here with that folder, there with this.",
    ]


def _take_in(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.parcels import passphrase_for, take_in
    from boxlore.tasks.collection.said_of_joining import said_of_taken_in

    parcel = _path(collection, answers, "file")
    passphrase = passphrase_for(parcel, lambda: answers["passphrase"])
    renumber = answers["new_numbers"] == "yes"
    taken = take_in(collection, parcel, passphrase, progress, new_numbers=renumber)
    return said_of_taken_in(collection, parcel, taken)


def _parcel(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
    from boxlore.tasks.collection.parcels import ParcelOrder, make_parcel
    from boxlore.tasks.collection.said_of_joining import said_of_parcel

    since = answers["since"].strip()
    order = ParcelOrder(
        since=DAY_WORDS.typed(since) if since else None,
        to=To(answers["to"]),
        with_files=answers["scans"] == "yes",
        new_copy=answers["new_copy"] == "yes",
        passphrase=answers["passphrase"],
    )
    made = make_parcel(collection, _path(collection, answers, "file"), order, progress)
    return said_of_parcel(made, order)


_SAME_NUMBER = Blank(
    "new_numbers", "Photographs with the same number in both?", "no",
    "New ones are for the later of the two; pencil them on its enclosure.",
    choices=(("no", "stop and name them"), ("yes", "new numbers")),
)  # fmt: skip

TASKS = {
    "join": Task(
        Group.TAKE_IN,
        "From a working copy",
        "what was told there",
        lambda collection: [
            Blank("folder", "Folder of the other working copy", "", "It stays as it is. Nothing told here is lost.",
                  path="folder"),
            _SAME_NUMBER,
        ],
        _join,
        writes=True,
    ),
    "meet": Task(
        Group.TAKE_IN,
        "From other desks",
        "what was told at a meeting place",
        lambda collection: [
            Blank("address", "Where do the desks meet?", collection.settings.meeting,
                  "postgresql://NAME@HOST/DATABASE, without a password. Once it is known here, an open sitting meets "
                  "there by itself."),
            Blank("wished", "What other desks wish struck, at a keeper's desk?", "later",
                  "It is hidden there until it is answered. Struck is struck for good.",
                  choices=(("later", "name it"), ("strike", "strike it"), ("refuse", "let it stand"))),
            _SAME_NUMBER,
        ],
        _meet,
        writes=True,
    ),
    "take_in_parcel": Task(
        Group.TAKE_IN,
        "From a parcel",
        "what somebody sent in one file",
        lambda collection: [
            Blank("file", "The parcel", "", "A file that was made by “Hand on”, “A parcel”.",
                  path="file"),
            Blank("passphrase", "Its passphrase", "", "Only for one that is locked. It is kept nowhere."),
            _SAME_NUMBER,
        ],
        _take_in,
        writes=True,
    ),
    "working_copy": Task(
        Group.HAND_ON,
        "A working copy",
        "somebody works on it apart",
        lambda collection: [
            Blank("folder", "Into which folder?", "", "A new folder, such as one on a stick.", path="folder"),
        ],
        _working_copy,
        writes=True,
    ),
    "parcel": Task(
        Group.HAND_ON,
        "A parcel",
        "what was told, in one file",
        lambda collection: [
            Blank("file", "Into which file?", "parcel.zip", "A new file. It may be sent, or carried on a stick.",
                  path="file"),
            Blank("to", "For whom?", To.KEEPER.value, "The family gets what it may see; another keeper all.",
                  choices=((To.KEEPER.value, "another keeper"), (To.FAMILY.value, "the family"))),
            Blank("new_copy", "Have they a working copy yet?", "no",
                  "Without one, a series letter is set aside for their new photographs.",
                  choices=(("no", "yes, they have"), ("yes", "not yet"))),
            Blank("since", "Told since which day?", "", "Such as 2026-11-01. Empty: all that was ever told."),
            Blank("scans", "With the scans?", "yes", choices=(("yes", "with them"), ("no", "words alone"))),
            Blank("passphrase", "Passphrase", "", "At least 8 letters, for a parcel that nobody else can read. "
                  "It is kept nowhere: tell it to them, not in the same message."),
        ],
        _parcel,
        writes=True,
    ),
}  # fmt: skip
