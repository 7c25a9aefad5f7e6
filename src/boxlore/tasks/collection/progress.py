"""How a long task tells how far it is, and hears that it should stop.

Both fronts pass one in. A task asks `stopped()` between items only: finished items stay finished.
"""

import os
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from typing import Protocol

from boxlore.core.errors import CouldNot


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


def go_on(progress: Progress) -> None:
    """Raise CouldNot if the person asked to stop, in a task that leaves all or nothing."""
    if progress.stopped():
        raise CouldNot("Stopped; nothing half-made is left.")


@contextmanager
def workers() -> Iterator[ThreadPoolExecutor]:
    """Context: threads for work on pictures. After an interruption they are not waited for; after a fault, or
    where whoever takes the results lets them go, they are, as the collection that they read is closed next."""
    pool = ThreadPoolExecutor(os.cpu_count() or 2)
    try:
        yield pool
    except (Exception, GeneratorExit):
        pool.shutdown(cancel_futures=True)  # none of them writes on after the fault is said
        raise
    except BaseException:
        pool.shutdown(wait=False, cancel_futures=True)
        raise
    pool.shutdown()


def counting(progress: Progress) -> Callable[[str, int, int], None]:
    """A function of (label, done, total) that moves the progress, for a task that counts its own steps.

    `done` is the count so far, not the steps since the last call; each new label begins a new stage.
    """
    counts: dict[str, int] = {}

    def heard(label: str, done: int, total: int) -> None:
        go_on(progress)
        if label not in counts:
            progress.begin(label, total)
        progress.step(done - counts.get(label, 0))
        counts[label] = done

    return heard
