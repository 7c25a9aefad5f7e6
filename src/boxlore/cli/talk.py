"""Writing to stderr: sentences for the person, and the progress bar. No bar is drawn unless stderr is a terminal."""

import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import TYPE_CHECKING

import click

from boxlore.cli import interrupts
from boxlore.cli.output import safe
from boxlore.core.findings import Finding

if TYPE_CHECKING:
    from rich.progress import Progress, TaskID


def say(words: str) -> None:
    """Write a sentence for the person; what could command a terminal is left out of each of its lines."""
    click.echo("\n".join(map(safe, words.split("\n"))), err=True)


def agreed(question: str, refused: str, *, default: bool | None = False) -> bool:
    """Ask yes or no on stderr, until it is answered where there is no `default`. Where Ctrl+C, or the end of what is
    typed, answers, `refused` is said (what did not happen) and the command ends. No bar may be drawn meanwhile: it
    would write over the question.
    """
    try:
        with interrupts.at_a_question():
            return click.confirm(question, default=default, err=True)
    except click.Abort as stopped:
        say(f"\n{refused}")
        was_interrupted = isinstance(stopped.__context__, KeyboardInterrupt)
        raise click.exceptions.Exit(interrupts.EXIT if was_interrupted else 1) from None


def say_findings(findings: Sequence[Finding]) -> int:
    """Write the sentence of each finding; the exit code, 1 if there are any."""
    for finding in findings:
        say(finding.message)
    return 1 if findings else 0


def say_warnings() -> None:
    """From now on, write what a task logs as a warning (it stopped nothing) as a sentence for the person."""
    import logging

    class Sentences(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            say(record.getMessage())

    logger = logging.getLogger("boxlore")
    if not logger.handlers:
        logger.addHandler(Sentences())


class Bar:
    """A `tasks.collection.progress.Progress` drawn as a bar; `shown` is rich's, or None to draw nothing."""

    def __init__(self, shown: "Progress | None") -> None:
        self._shown = shown
        self._task: TaskID | None = None
        self._stop = False
        self.looked = False
        """Whether the task has looked since it was asked to stop."""

    def begin(self, label: str, total: int) -> None:
        if self._shown is not None:
            self._task = self._shown.add_task(label, total=total or None)

    def step(self, steps: int = 1) -> None:
        if self._shown is not None and self._task is not None:
            self._shown.advance(self._task, steps)

    def stop(self) -> None:
        """Ask the task to stop after what it has at hand."""
        self._stop = True

    def stopped(self) -> bool:
        self.looked = self._stop
        return self._stop


@contextmanager
def progress() -> Iterator[Bar]:
    """Context: a bar for a long task. Ctrl+C asks the task to stop, as `interrupts` tells."""
    if not sys.stderr.isatty():
        bar = Bar(None)
        with interrupts.task(bar):
            yield bar
        return
    from rich.console import Console
    from rich.progress import Progress

    with Progress(console=Console(stderr=True), transient=True) as shown:
        bar = Bar(shown)
        with interrupts.task(bar):
            yield bar
