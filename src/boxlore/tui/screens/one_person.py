"""Two entries that may be one person: both are told, and whether they are one, and called what, is asked."""

from collections.abc import Awaitable, Callable
from typing import Any

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.core.people.person import Person
from boxlore.tasks.sitting import people_corrections
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.from_inside import from_inside
from boxlore.tui.screens.cards import Choice, Choices, Notice

Then = Callable[[str], Awaitable[None] | None]
"""Called with what was done, in a sentence; '' where nothing was."""


async def ask_if_one(
    app: App[Any],
    sitting: Sitting,
    pair: tuple[Person, Person],
    then: Then,
    *,
    title: str = "",
    two: Callable[[], str] | None = None,
    because: str = "",
) -> None:
    """Ask whether a pair is one person. `two` does what two people mean, if not that they are proposed no more."""
    first, second = sorted(pair, key=lambda person: not person.name[:1].isupper())  # a name before “the tall man”
    collection = sitting.collection

    def apart() -> str:
        people_corrections.two_people(sitting, first, second)
        return f"{second.name} is somebody else."

    def merged(keep: Person, gone: Person) -> str:
        people_corrections.same_person(sitting, keep, gone)
        return f"{gone.name} and {keep.name} are one person now, called {keep.name}."

    do: dict[str, Callable[[], str]] = {
        "same": lambda: merged(first, second),
        "second": lambda: merged(second, first),
        "two": two or apart,
        "later": str,
    }

    async def answer(value: str) -> None:
        try:
            words = do[value]()
        except BoxloreError as error:
            await app.push_screen(Notice("This could not be done", from_inside(str(error))))
            return
        done = then(words)
        if done is not None:
            await done

    choices = [
        Choice("same", "The same person", f"called {first.name}"),
        Choice("two", "Two people", "proposed no more"),
        Choice("later", "Not sure", "all stays as it is"),
    ]
    if first.name != second.name:
        choices.append(Choice("second", "The same, other name", f"called {second.name}"))
    told = "\n".join(people_corrections.in_short(collection, person) for person in pair)
    below = f"{told}\n{because + '. ' if because else ''}No words are lost either way, and Ctrl+Z takes it back."
    await app.push_screen(Choices(title or f"{first.name} and {second.name}?", choices, answer, below=below))
