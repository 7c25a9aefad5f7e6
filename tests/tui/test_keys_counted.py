"""Usual tasks of a sitting and of putting right, the keys that each takes, and the fewest that it could take (counted
by ourselves; no source).

The fewest are: the letters that must be typed, one key for each thing that is decided (which question, which
task, which choice; a task of the menu is two, its group and itself), and one for the end of each answer. It is counted
from a photograph that is out with the cursor in the first question, to the moment when its result is kept.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from tests.tui.conftest import hands_on

from boxlore.tasks.collection.opening import Collection, open_collection

MOST = 1.3
"""How many times the fewest keys all the tasks together may take, and each that has an answer to type."""


@dataclass(frozen=True)
class Usual:
    """A task: the keys pressed, how many of them decide or end something at the fewest, what the screen says then;
    and the keys that go back to the first question of a photograph, which count for no task."""

    what: str
    keys: tuple[str, ...]
    fewest: int
    shown: str
    back: tuple[str, ...] = ()


STORY = "«The regatta, and Ida won.»"
TASKS = (
    Usual("a story, and the next photograph", (STORY, "pagedown"), 1, "2 of 8"),
    Usual("two names", ("tab", "«Kristjan Tamm»", "enter", "«Ida Moss»", "enter"), 3, "Kristjan Tamm · Ida Moss"),
    Usual("the day after them", ("tab", "«summer of 1952»", "tab"), 2, "= summer 1952"),
    Usual("the place after it", ("«Port Chalmers»", "tab"), 1, "= Port Chalmers"),
    Usual("the occasion after it is not known", ("f5",), 1, "Asked, not known.", ("pagedown",)),
    Usual("a name known before", ("tab", "«kri»", "tab"), 2, "Kristjan Tamm", ("shift+tab",)),
    Usual("the same place as before", ("f8", "3"), 2, "taken over from"),
    Usual("take that back", ("ctrl+z",), 1, "Taken back", ("pagedown",)),
    Usual("a story for the family only", ("«Ida drank.»", "f6"), 1, "for the family only"),
    Usual("it is a guess", ("f7", "f7"), 2, "a guess"),
    Usual("correct a word of it", ("backspace", "«, they say.»", "tab"), 2, "they say.", ("shift+tab",)),
    Usual("ask somebody later", ("f9", "«ask Joan»", "enter"), 2, "Noted: ask Joan."),
    Usual("the next with an open question", ("ctrl+n",), 1, "5 of 8"),
    Usual("which of two places is meant", ("«x»", "tab", "tab", "tab", "«Milton»", "enter", "ctrl+p", "1"), 5,
          "Noted: Milton", ("pagedown",)),
    Usual("a photograph by its number", ("f3", "«7»", "enter"), 2, "7 of 8"),
    Usual("one found by its words", ("f3", "«regatta»", "enter"), 2, "1 of 8"),
    Usual("one occasion for four", ("f3", "shift+down", "shift+down", "shift+down", "f8", "o", "«Regatta»", "enter"),
          7, "Occasion: “Regatta”, told of 4", ("escape",)),
    Usual("call somebody else everywhere", ("escape", "3", "2", "«ida»", "enter", "a", "1", "«Ida Pell»", "enter"), 6,
          "Ida Pell", ("escape", "escape")),
    Usual("a story of a person", ("escape", "2", "1", "t", "1", "«Ida Pell»", "enter", "«She swam.»", "enter"), 6,
          "The story is kept."),
    Usual("a place of the family's own", ("escape", "3", "9", "«the bach»", "enter", "«Port Chalmers»", "ctrl+s"), 4,
          "is a place of the family’s own now", ("enter",)),
    Usual("one person of two entries", ("escape", "3", "2", "«ida»", "enter", "a", "3", "«kri»", "tab", "enter", "1"),
          7, "are one person now"),
    Usual("two people again", ("a", "5"), 2, "They stand apart again."),
    Usual("a birth", ("a", "2", "1", "«about 1912»", "enter"), 4, "Kept: born, “about 1912”."),
    Usual("consent to name, picture and voice", ("a", "6", "«a»", "enter", "«y»", "enter", "«s»", "ctrl+s"), 5,
          "name, picture, voice. Ctrl+Z", ("escape", "escape")),
    Usual("that somebody else said it", ("f4", "enter", "2", "«Joan Moss»", "enter"), 4,
          "Said by Joan Moss from now on.", ("escape", "f3", "«2»", "enter")),
    Usual("somebody else is meant here", ("f4", "enter", "7", "«Ida Pell»", "enter"), 4, "shows Ida Pell."),
)  # fmt: skip


def typed(keys: tuple[str, ...]) -> int:
    """How many letters are among the keys."""
    return sum(len(key) - 2 for key in keys if key.startswith("«"))


def pressed(task: Usual) -> int:
    """How many keys a task takes."""
    return typed(task.keys) + sum(not key.startswith("«") for key in task.keys)


def fewest(task: Usual) -> int:
    """The fewest keys that it could take."""
    return typed(task.keys) + task.fewest


@pytest.fixture
def collection(folder: Path) -> Iterator[Collection]:
    with open_collection(folder) as opened:
        yield opened


def test_usual_tasks_take_few_keys_more_than_they_must(run: Callable[..., None], collection: Collection) -> None:
    async def sit() -> None:
        async with hands_on(collection, size=(120, 38)) as hands:
            for task in TASKS:
                await hands.press(*task.keys)
                if task.shown not in hands.text:
                    await hands.until(task.shown, 20)
                await hands.press(*task.back)

    run(sit())
    counted = {task.what: (pressed(task), fewest(task)) for task in TASKS}
    assert len(counted) == len(TASKS)
    assert {what: taken for what, taken in counted.items() if taken[0] > MOST * taken[1]} == {}
    assert sum(taken for taken, _ in counted.values()) <= MOST * sum(least for _, least in counted.values())
