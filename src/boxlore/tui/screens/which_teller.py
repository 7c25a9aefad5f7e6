"""Who told something, by name. A name that nobody has, and that is like somebody's, is asked about first."""

from collections.abc import Awaitable, Callable
from typing import Any

from textual.app import App

from boxlore.tasks.sitting.people_corrections import alike, in_short
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import Choice, Choices, Notice

Take = Callable[[str], Awaitable[str]]
"""Takes a name. Returns '' or what is wrong with it."""


async def ask_which_teller(app: App[Any], sitting: Sitting, name: str, take: Take) -> str:
    """Go on with the name, or ask who is meant by it. Returns '' or what is wrong."""
    people = alike(sitting, name)
    if not people:
        return await take(name)

    async def chosen(value: str) -> None:
        if fault := await take(value):
            await app.push_screen(Notice("This could not be done", fault))

    choices = [Choice(person.name, in_short(sitting.collection, person)) for person in people]
    choices.append(Choice(name, f"Somebody new: {name}"))
    await app.push_screen(Choices(f"Nobody here is called “{name}”. Who is meant?", choices, chosen))
    return ""
