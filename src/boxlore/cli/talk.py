"""What goes to stderr: words to the person, and the progress bar. Without a terminal no bar is drawn."""

import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from importlib import import_module
from typing import Any

import click

from boxlore.core.findings import Finding


def say(words: str) -> None:
    """A sentence to the person."""
    click.echo(words, err=True)


def findings(found: Sequence[Finding]) -> int:
    """Every finding in its sentence; the exit code that they come to."""
    for finding in found:
        say(finding.message)
    return 1 if found else 0


class Bar:
    """A progress bar that is a `tasks.collection.progress.Progress`; Ctrl+C asks to stop after the item at hand."""

    def __init__(self, shown: Any) -> None:
        self._shown = shown
        self._task: Any = None
        self._stop = False

    def begin(self, what: str, total: int) -> None:
        if self._shown is not None:
            self._task = self._shown.add_task(what, total=total or None)

    def step(self, done: int = 1) -> None:
        if self._shown is not None:
            self._shown.advance(self._task, done)

    def stop(self) -> None:
        """Ask the task to stop after what it has at hand."""
        self._stop = True

    def stopped(self) -> bool:
        return self._stop


@contextmanager
def progress() -> Iterator[Bar]:
    """A bar while the block runs, if a terminal is there to show it."""
    with _stop_on_interrupt() as set_bar:
        if not sys.stderr.isatty():
            bar = Bar(None)
            set_bar(bar)
            yield bar
            return
        rich = import_module("rich.progress")
        console = import_module("rich.console").Console(stderr=True)
        with rich.Progress(console=console, transient=True) as shown:
            bar = Bar(shown)
            set_bar(bar)
            yield bar


@contextmanager
def _stop_on_interrupt() -> Iterator[Any]:
    """The first Ctrl+C asks the task to stop; a second ends the program at once."""
    signal = import_module("signal")
    bars: list[Bar] = []

    def interrupted(number: int, frame: object) -> None:
        if not bars or bars[-1].stopped():
            raise KeyboardInterrupt
        bars[-1].stop()
        say("Stopping after the item at hand; once more stops at once.")

    try:
        before = signal.signal(signal.SIGINT, interrupted)
    except ValueError:  # not the main thread: whoever runs us hears the signal
        yield bars.append
        return
    try:
        yield bars.append
    finally:
        signal.signal(signal.SIGINT, before)


def counted(bar: Bar) -> Any:
    """The bar as a function of (what, done, total), for a builder that counts for itself."""
    seen: dict[str, int] = {}

    def heard(what: str, done: int, total: int) -> None:
        if what not in seen:
            bar.begin(what, total)
        bar.step(done - seen.get(what, 0))
        seen[what] = done

    return heard
