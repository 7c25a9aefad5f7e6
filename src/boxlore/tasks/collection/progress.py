"""How a long task tells how far it is, and hears that it should stop.

Both fronts pass one in. A task asks `stopped()` between items only: finished items stay finished.
"""

from collections.abc import Callable
from typing import Protocol


class Progress(Protocol):
    """What a task needs of whoever watches it."""

    def begin(self, what: str, total: int) -> None:
        """A stage begins: its name in plain words, how many steps it has (0 if unknown)."""

    def step(self, done: int = 1) -> None:
        """So many steps are done."""

    def stopped(self) -> bool:
        """Whether the person asked to stop."""


class Quiet:
    """Nobody watches."""

    def begin(self, what: str, total: int) -> None:
        """Nothing to show."""

    def step(self, done: int = 1) -> None:
        """Nothing to show."""

    def stopped(self) -> bool:
        return False


QUIET = Quiet()


def counting(progress: Progress) -> Callable[[str, int, int], None]:
    """A function of (label, done, total) that moves the progress, for a task that counts its own steps.

    `done` is the count so far, not the steps since the last call; each new label begins a new stage.
    """
    counts: dict[str, int] = {}

    def heard(label: str, done: int, total: int) -> None:
        if label not in counts:
            progress.begin(label, total)
        progress.step(done - counts.get(label, 0))
        counts[label] = done

    return heard
