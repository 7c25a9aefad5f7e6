"""A name that nobody or nothing here has: a new one is made only where that is said."""

from collections.abc import Awaitable, Callable
from typing import Any

from textual.app import App

from boxlore.tasks.sitting.people_corrections import alike, in_short
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import NOWHERE, Choice, Choices
from boxlore.tui.widgets.plain_text import short

NEW = " "
"""The value of the line that makes a new one: no name."""


async def ask_new(
    app: App[Any],
    sitting: Sitting,
    name: str,
    take: Callable[[str], Awaitable[None]],
    *,
    kind: str = "person",
    back: Callable[[], Awaitable[None]] | None = None,
) -> None:
    """Ask who is meant by a name that nobody has, or whether it is a new event or place; `take` gets the name meant.
    `back` is where Esc goes."""
    people = alike(sitting, name) if kind == "person" else []
    choices = [Choice(person.name, in_short(sitting.collection, person)) for person in people]
    new = "Somebody new" if kind == "person" else f"A new {kind}"
    nobody = "Nobody here" if kind == "person" else f"No {kind} here"
    called = short(name, 40)

    async def answer(value: str) -> None:
        await take(name if value == NEW else value)

    choices.append(Choice(NEW, f"{new}: {called}", key="n"))
    title = f"{nobody} is called “{called}”. {'Who' if kind == 'person' else 'Which'} is meant?"
    await app.push_screen(Choices(title, choices, answer, back=back, at=NOWHERE))
