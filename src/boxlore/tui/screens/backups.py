"""The backups of a collection to choose from, and the question before one is brought back."""

from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any

from textual.app import App

from boxlore.tasks.collection.backups import ListedBackup, list_backups
from boxlore.tui.screens.cards import Choice, Choices, Notice

SHOWN = 30
"""As many as have a letter or digit; older ones come back with `boxlore restore`."""

OnChosen = Callable[[ListedBackup], Awaitable[None]]

_FIRST = "What is there now becomes a backup itself first, so this can be taken back. Words struck since stay struck."


async def choose_backup(app: App[Any], folder: Path, chosen: OnChosen) -> None:
    """Show the backups of the collection in `folder`; call `chosen` with the one that shall come back."""
    listed = list_backups(folder)
    if not listed:
        await app.push_screen(Notice("Backups", f"There are none in {folder / 'backups'} yet; closing makes one."))
        return
    names = {entry.name: entry for entry in listed[:SHOWN]}

    async def answer(name: str) -> None:
        await _ask(app, names[name], chosen)

    older = (
        f"{len(listed) - SHOWN} older ones: boxlore restore, at the shell, lists them." if len(listed) > SHOWN else ""
    )
    choices = [Choice(name, f"{entry.backup.day}  {entry.backup.why}", entry.contents) for name, entry in names.items()]
    await app.push_screen(Choices("Bring back a backup", choices, answer, below=older))


async def _ask(app: App[Any], wanted: ListedBackup, chosen: OnChosen) -> None:
    if wanted.holds is None:
        await app.push_screen(Notice("Backups", f"{wanted.backup.path} cannot be read. Take another one."))
        return

    async def answer(value: str) -> None:
        if value == "yes":
            await chosen(wanted)

    choices = [Choice("no", "No, leave everything as it is"), Choice("yes", "Yes, bring it back")]
    title = f"Bring back the backup of {wanted.backup.day} ({wanted.contents})?"
    await app.push_screen(Choices(title, choices, answer, below=_FIRST))
