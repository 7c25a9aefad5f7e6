"""Pairs of people who may be one: each is asked about with its reasons, and an answer of no is remembered."""

from typing import Any, Protocol

from textual.app import App

from boxlore.core.errors import BoxloreError
from boxlore.tasks.people.registry import apart, duplicates, merge
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.telling.undoing import Done
from boxlore.tui.screens.cards import Choice, Choices

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

        async def answer(outcome: str) -> None:
            try:
                if outcome == "same":
                    act = merge(collection, first, second)
                    host.sitting.steps.remember(Done(act, f"{second.name} is {first.name}", ""))
                elif outcome == "two" and (act := apart(collection, first, second)):
                    host.sitting.steps.remember(Done(act, f"{first.name} and {second.name} are two", ""))
            except BoxloreError as error:
                host.say(str(error), bad=True)
                return
            await ask_pairs(host)

        below = f"{', '.join(pair.because)}. No words are lost either way, and Ctrl+Z takes it back."
        ways = [
            Choice("same", "The same person", f"called {first.name}"),
            Choice("two", "Two people", "proposed no more"),
            Choice("later", "Not sure", "it stays on the list"),
        ]
        await host.app.push_screen(Choices(f"{first.name} and {second.name}?", ways, answer, below=below))

    await host.app.push_screen(Choices("Perhaps the same person", choices, chosen))
