"""How far a task in a thread is, which the screen reads, and that it should stop, which the task reads."""

import threading


class Watch:
    """A `tasks.collection.progress.Progress`: the task writes it from its thread, the screen reads it every 0.1 s."""

    def __init__(self) -> None:
        self.label, self.done, self.total = "", 0, 0
        self._stop = threading.Event()

    def begin(self, label: str, total: int) -> None:
        self.label, self.done, self.total = label, 0, total

    def step(self, steps: int = 1) -> None:
        self.done += steps

    def stopped(self) -> bool:
        return self._stop.is_set()

    def stop(self) -> None:
        """Ask the task to stop after the item that it is working on."""
        self._stop.set()
