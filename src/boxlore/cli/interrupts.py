"""Ctrl+C: obeyed within a second wherever the program stands, said truly, with the exit code 130.

The problem: Python hears a signal between two of its own steps only, and a library may decode a picture or set an
album for many seconds in one step. The idea, in three degrees:

- The first Ctrl+C asks a task that has a bar to stop after the item at hand, so that what is finished is kept.
- If the task has not looked whether it should stop within LOOK seconds, it is interrupted where it stands, as a second
  Ctrl+C does at once: KeyboardInterrupt, on which everything that is half-made is taken away again.
- If the program is still there after LAST seconds, it ends there. That is no worse than a power cut, and all our
  writing bears one (`disk.unfinished`, and the database's own log): what is half-made lies under a name that says so.

The second and third degree are the work of a thread that hears the signal by a socket (`signal.set_wakeup_fd`), since
the system writes to that whatever the main thread does.

130 is 128 and the number of SIGINT, as shells show it (common practice; POSIX asks for more than 128).
"""

import os
import signal
import socket
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from typing import Protocol

EXIT = 130
LOOK = 0.4
"""Seconds in which a task has to look whether it should stop."""
LAST = 0.9
"""Seconds after which the program ends in any case."""

STOPPING = "Stopping after the item at hand; once more stops at once.\n"
AT_ONCE = "Stopped. What was finished is kept; what was half-made the next run removes.\n"


class Stoppable(Protocol):
    """What a bar lets us do with its task."""

    looked: bool
    """Whether the task has looked since it was asked to stop."""

    def stop(self) -> None: ...

    def stopped(self) -> bool: ...


class _Heard:
    """The state of one program: whether Ctrl+C was heard, and the bars of the tasks that run."""

    def __init__(self) -> None:
        self.at_all = False
        self.watching = False
        self.bars: list[Stoppable] = []


_heard = _Heard()


def was_heard() -> bool:
    """Whether the person pressed Ctrl+C since the program (or, in tests, this command) began."""
    return _heard.at_all


def begin() -> None:
    """A command begins."""
    _heard.at_all = False


@contextmanager
def watched() -> Iterator[None]:
    """Context: Ctrl+C is obeyed as told above; inside another one, and outside the main thread, it does nothing."""
    if _heard.watching or threading.current_thread() is not threading.main_thread():
        yield
        return
    reader, writer = socket.socketpair()
    writer.setblocking(False)
    over = threading.Event()
    before = signal.signal(signal.SIGINT, _interrupted)
    wakeup = signal.set_wakeup_fd(writer.fileno(), warn_on_full_buffer=False)
    threading.Thread(target=_watch, args=(reader, over), name="boxlore-interrupts", daemon=True).start()
    _heard.watching = True
    try:
        yield
    finally:
        _heard.watching = False
        over.set()
        signal.set_wakeup_fd(wakeup)
        signal.signal(signal.SIGINT, before)
        writer.close()  # which ends the thread


@contextmanager
def at_a_question() -> Iterator[None]:
    """Context: a question stands and nothing is at work, so that Ctrl+C is an answer, which `KeyboardInterrupt` gives,
    and the thread above does not end the program while that answer is obeyed."""
    if not _heard.watching or threading.current_thread() is not threading.main_thread():
        yield
        return
    before = signal.signal(signal.SIGINT, signal.default_int_handler)
    wakeup = signal.set_wakeup_fd(-1)
    try:
        yield
    finally:
        signal.set_wakeup_fd(wakeup, warn_on_full_buffer=False)
        signal.signal(signal.SIGINT, before)


@contextmanager
def task(bar: Stoppable) -> Iterator[None]:
    """Context: while it lasts, the first Ctrl+C asks the task of this bar to stop."""
    with watched():
        _heard.bars.append(bar)
        try:
            yield
        finally:
            _heard.bars.remove(bar)


def _interrupted(number: int, frame: object) -> None:
    _heard.at_all = True
    if not _heard.bars or _heard.bars[-1].stopped():
        raise KeyboardInterrupt
    _heard.bars[-1].stop()
    _say(STOPPING)


def _watch(reader: socket.socket, over: threading.Event) -> None:
    with reader:
        while number := reader.recv(1):
            if number[0] == signal.SIGINT:
                _be_patient(over)


def _be_patient(over: threading.Event) -> None:
    if over.wait(LOOK):
        return
    if any(not bar.looked for bar in _heard.bars):
        signal.pthread_kill(threading.main_thread().ident or 0, signal.SIGINT)
    if not over.wait(LAST - LOOK):
        _say(AT_ONCE)
        os._exit(EXIT)


def _say(words: str) -> None:
    """Write a sentence of ours to stderr. Not by `talk`: the main thread may be writing there just now."""
    cursor = "\x1b[?25h" if os.isatty(2) else ""  # which the bar had hidden
    with suppress(OSError):
        os.write(2, (cursor + words).encode())


def end(code: int) -> None:
    """End a program that was interrupted: threads that are still at work are not waited for."""
    with suppress(OSError, ValueError):
        sys.stdout.flush()
        sys.stderr.flush()
    if any(thread is not threading.main_thread() and not thread.daemon for thread in threading.enumerate()):
        os._exit(code)
