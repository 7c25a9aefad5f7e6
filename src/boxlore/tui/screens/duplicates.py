"""Pairs of people who may be one: each is asked about with its reasons, and an answer of no is remembered."""

from typing import Any, Protocol

from textual.app import App

from boxlore.tasks.people.registry import duplicates
from boxlore.tasks.sitting.session import Sitting
from boxlore.tui.screens.cards import Choice, Choices
from boxlore.tui.screens.one_person import ask_if_one

MOST = 30


class PairsHost(Protocol):
    """What the cards need of the screen below them."""

    sitting: Sitting

    @property
    def app(self) -> App[Any]: ...

    def say(self, words: str, *, bad: bool = False) -> None: ...


async def ask_pairs(host: PairsHost) -> None:
    """List the likeliest pairs; one that is chosen is asked about, then the list is shown again."""
    collection = host.sitting.collection
    people = collection.people()
    pairs = duplicates(collection)[:MOST]
    if not pairs:
        host.say("Nobody here looks like the same person twice.")
        return
    choices = [
        Choice(str(at), f"{people[pair.one].name} / {people[pair.other].name}", ", ".join(pair.because))
        for at, pair in enumerate(pairs)
    ]

    async def chosen(value: str) -> None:
        pair = pairs[int(value)]
        first, second = people[pair.one], people[pair.other]

        async def again(_: str) -> None:
            await ask_pairs(host)

        await ask_if_one(host.app, host.sitting, (first, second), again, because=", ".join(pair.because))

    await host.app.push_screen(Choices("Perhaps the same person", choices, chosen))
