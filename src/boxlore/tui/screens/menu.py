"""The menu: the long tasks, and the action of every F-key for keyboards that have none."""

from typing import Any, Protocol

from textual.app import App

from boxlore.tasks.collection.progress import Progress
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.jobs import TASKS
from boxlore.tui.screens.cards import Choice, Choices, Form
from boxlore.tui.screens.working import WorkingScreen


class MenuHost(Protocol):
    """What the menu needs of the screen below it."""

    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...

    def task_done(self, *, wrote: bool) -> None:
        """A long task is over; `wrote` says that it may have changed the collection."""


HERE = (
    # (action of `tui.screens.item`, its name, its key and a few words)
    ("viewing", "Page for the teller", "its address and code"),
    ("guide", "Guide", "F1"),
    ("picture", "Large picture", "F2  front and back"),
    ("find", "List and find", "F3"),
    ("said", "Who says so", "F4  history, audience, settle, strike"),
    ("not_known", "Asked, not known", "F5"),
    ("audience", "Who may see it", "F6"),
    ("sure", "How sure they are", "F7"),
    ("same", "Same as before", "F8  people, day, place"),
    ("ask_later", "Ask later", "F9  or ask someone else"),
    ("set_aside", "Set aside", "not today, not with this teller"),
    ("relate", "Related to another", "same picture, negative, attached to"),
    ("prompts", "The questions asked", "a file to edit and translate"),
    ("course", "This sitting", "agreement, rest, recording, close"),
)

LIGHT, LEAVE, SURVEY, BACKUPS = "light", "leave", "survey", "backups"


async def open_menu(screen: MenuHost) -> None:
    """Show the menu over the sitting's screen, and do what is chosen."""
    choices = [Choice(f"task:{key}", task.name, task.about) for key, task in TASKS.items()]
    choices.append(Choice(SURVEY, "Survey a box", "sleeves, tape, damage: one key each"))
    choices += [Choice(action, name, key) for action, name, key in HERE]
    choices += [
        Choice("language", "Language told in", f"Ctrl+L  now “{screen.sitting.language}”"),
        Choice(LIGHT, "Light or dark colours"),
        Choice(BACKUPS, "Bring back a backup", "as the collection was before"),
        Choice(LEAVE, "Leave", "Ctrl+Q"),
    ]

    async def answer(value: str) -> None:
        kind, _, name = value.partition(":")
        if kind == "task":
            await start(screen, name)
        elif value == SURVEY:
            from boxlore.tui.screens.survey import ask_box

            await ask_box(screen)
        elif value == BACKUPS:
            await screen.app.run_action(BACKUPS, default_namespace=screen.app)
        elif value == LIGHT:
            screen.app.theme = "paper" if screen.app.theme == "lamp" else "lamp"
        else:
            await screen.app.run_action(value, default_namespace=screen.app.screen)

    await screen.app.push_screen(Choices("Menu", choices, answer))


async def start(screen: MenuHost, name: str) -> None:
    """Ask for what a task needs with a form, then run it on a card of its own."""
    task = TASKS[name]
    collection = screen.sitting.collection
    if task.writes and not screen.sitting.writable:
        screen.say("Open for reading only; nothing can be changed.", bad=True)
        return

    async def run(answers: dict[str, str]) -> str:
        def job(progress: Progress) -> list[str]:
            return task.job(collection, answers, progress)

        await screen.app.push_screen(WorkingScreen(task.name, job, lambda: screen.task_done(wrote=task.writes)))
        return ""

    blanks = task.blanks(collection)
    if blanks:
        await Form(task.name, blanks, run).open(screen.app)
    else:
        await run({})
