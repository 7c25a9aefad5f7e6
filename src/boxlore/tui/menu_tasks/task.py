"""What a task of the menu is, and the lines that several of their forms share."""

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path
from typing import Any, Protocol

from textual.app import App

from boxlore.core.errors import WrongUse
from boxlore.core.records.audience import To
from boxlore.core.records.marks import looks_like_number
from boxlore.tasks.collection.opening import Collection
from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.collection.records_for_outputs import Selection
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.forms import Blank
from boxlore.tui.widgets.form_lines import typed_path
from boxlore.tui.widgets.plain_text import short

FormAnswers = Mapping[str, str]
MenuTask = Callable[[Collection, FormAnswers, Progress], list[str]]
"""Returns the lines of its report; raises BoxloreError."""


NOT_YET = "nothing is changed yet"
"""What the first line of a report says that only shows what would be done: a key does it then."""
YES_NO = (("yes", "yes"), ("no", "no"))
"""The choices of a line of a form."""


class Group(StrEnum):
    """What one wants to do: the first menu. The value is what the menu calls it."""

    TAKE_IN = "Take in"
    SIT = "Sit"
    PUT_RIGHT = "Put right"
    PRINT = "Print"
    HAND_ON = "Hand on"
    KEEP_SAFE = "Keep safe"


@dataclass(frozen=True, slots=True)
class Task:
    """A long task: its group in the menu, its name and a few words about it, the lines of its form, and the function
    to run."""

    group: Group
    name: str
    about: str
    blanks: Callable[[Collection], list[Blank]]
    job: MenuTask
    writes: bool = False
    """Whether it changes the collection, so that the list of items is read again after it."""
    is_step: bool = False
    """Whether all that it writes is one step of the sitting, which Ctrl+Z takes back."""


class TaskHost(Protocol):
    """What a task of the menu needs of the screen below it."""

    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...

    def task_done(self, *, wrote: bool) -> None:
        """A long task is over; `wrote` says that it may have changed the collection."""


def path_of(collection: Collection, text: str, default: str) -> Path:
    """The path in a form's answer ('' gives the default): `~` is home, a relative path begins at the collection. It is
    whole, so that a report says where something went, and its folder can be opened."""
    return typed_path(text.strip() or default, collection.folder).absolute()


def given_file(collection: Collection, text: str) -> Path:
    """The file named in a form. Raises WrongUse if none is named or there."""
    if not text.strip():
        raise WrongUse("No file is named.", "Write its path, or look for it with F3.")
    path = path_of(collection, text, "")
    if not path.is_file():
        raise WrongUse(f"There is no file {path}.", "Tab completes a path, F3 looks through the folders.")
    return path


def parted(words: str) -> list[str]:
    """Numbers, marks or paths written in one line, with ; or , between them."""
    return [part.strip() for part in words.replace(",", ";").split(";") if part.strip()]


def audience_of(answers: FormAnswers) -> To:
    """For whom, as the line `FOR` answers it."""
    return To(answers["to"])


def selection_of(answers: FormAnswers) -> Selection:
    """Which items, as the lines of `which` answer it. Raises WrongUse where a kind is chosen and not which."""
    kind, words = answers["which"], answers["of"].strip()
    if kind == "all" and words and all(map(looks_like_number, parted(words))):
        kind = "items"
    if kind == "all" and words:
        raise WrongUse(
            f"“Which photographs?” says all of them, and “{short(words, 40)}” stands below.",
            "Choose above what that is (a box, a person, numbers), or empty the line.",
        )
    if kind == "all":
        return Selection()
    if not words:
        raise WrongUse("It is not said which one.", "Write it in the line below “Which photographs?”.")
    if kind == "items":
        return Selection(items=tuple(parted(words)))
    if kind == "box":
        box, _, folder = words.partition("/")
        return Selection(box=box.strip(), folder=folder.strip())
    return {
        "person": Selection(person=words),
        "event": Selection(event=words),
        "words": Selection(words=words),
    }[kind]


def names_first(run: MenuTask) -> MenuTask:
    """A task that makes something: before it is made for anyone, the keeper's answers about names are taken and what
    stays out is listed; its lines come last. A form without the line `FOR` is always for outside."""

    def run_with_names(collection: Collection, answers: FormAnswers, progress: Progress) -> list[str]:
        from boxlore.tasks.archive.names_asked import left_out

        lines = left_out(collection, To(answers.get("to", To.OUTSIDE)), selection_of(answers))
        return [*run(collection, answers, progress), *lines]

    return run_with_names


FOR = Blank(
    "to", "For whom?", "family", "For anyone, the living are left out.",
    choices=(("family", "the family"), ("outside", "anyone")),
)  # fmt: skip


def to_anyone() -> Blank:
    """The same line, beginning with anyone."""
    return Blank("to", FOR.label, "outside", FOR.hint, choices=FOR.choices)


def which() -> list[Blank]:
    """The two lines that choose items; see `selection_of`."""
    kinds = (
        ("all", "all of them"),
        ("box", "a box"),
        ("person", "a person"),
        ("event", "an occasion"),
        ("words", "words in them"),
        ("items", "these numbers"),
    )
    return [
        Blank("which", "Which photographs?", "all", "", choices=kinds),
        Blank(
            "of",
            "Which boxes, people, numbers?",
            "",
            "3 for a box, 3/12 for a folder, names, numbers; empty for all. Numbers alone choose.",
        ),
    ]


def folder_blank(collection: Collection, name: str, label: str, text: str, hint: str = "") -> Blank:
    """A line for a folder; a relative path begins at the collection."""
    return Blank(name, label, text, hint, path="folder", base=collection.folder)


def file_blank(collection: Collection, name: str, label: str, text: str = "", hint: str = "") -> Blank:
    """A line for a file; a relative path begins at the collection."""
    return Blank(name, label, text, hint, path="file", base=collection.folder)


def counted(states: Counter[str]) -> str:
    """“3 taken, 1 refused”."""
    return ", ".join(f"{count} {state}" for state, count in states.most_common()) or "nothing"
