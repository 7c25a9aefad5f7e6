"""Who told something, by name. A name that nobody has, and that is like somebody's, is asked about first."""

from collections.abc import Awaitable, Callable
from typing import Any

from textual.app import App

from boxlore.tasks.sitting.people_corrections import alike
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import Notice
from boxlore.tui.screens.which_new import ask_new

Take = Callable[[str], Awaitable[str]]
"""Takes a name. Returns '' or what is wrong with it."""


async def ask_which_teller(app: App[Any], sitting: Sitting, name: str, take: Take) -> str:
    """Go on with the name, or ask who is meant by it. Returns '' or what is wrong."""
    if not alike(sitting, name):
        return await take(name)

    async def chosen(meant: str) -> None:
        if fault := await take(meant):
            await app.push_screen(Notice("This could not be done", fault))

    await ask_new(app, sitting, name, chosen)
    return ""
