"""Leaving the program by a signal, as when a window is closed or the system shuts down, or when the terminal is gone.

It always ends: drawing on a terminal that is gone can block for ever, and reading from one returns nothing at once, for
ever. So a watchdog ends the program in any case, after PATIENCE, or after GONE where no terminal is left to tidy up.
A signal can be missed (`nohup`, a connection that dropped), so the terminal itself is looked at too: it answers no
question about its settings any more (POSIX, tcgetattr: EIO).
"""

import asyncio
import os
import signal
import sys
import threading
from collections.abc import Callable
from contextlib import suppress
from typing import Any

try:
    import termios
except ImportError:  # on Windows, where a window that is closed ends the program
    termios = None  # type: ignore[assignment]  # the module is there or not

PATIENCE = 3.0
"""Seconds after a signal until the program ends in any case; what was typed is on the disk as drafts."""
GONE = 1.2
"""The same where the terminal is gone."""
LOOK = 0.4
"""Seconds between two looks at the terminal."""

SIGNALS = ("SIGTERM", "SIGHUP", "SIGINT")


class Leaving:
    """Handles the signals while an app runs, and sees when its terminal is gone.

    Then `leave` is called in the app's loop. If the program has not ended some seconds later, `last` is called in a
    thread of its own, and the program ends. The handlers are Python's own and not the loop's, for they run even while
    the loop is blocked.
    """

    def __init__(self, leave: Callable[[], None], last: Callable[[], None] = lambda: None) -> None:
        self._leave, self._last = leave, last
        self._before: dict[int, Any] = {}
        self._over = threading.Event()

    def hear(self, *, draws: bool) -> None:
        """Begin to handle the signals, and if the app draws on a terminal to look at that; call it in the app's loop.

        It may be gone already, as loading takes a moment.
        """
        loop = asyncio.get_running_loop()

        def heard(number: int, frame: object) -> None:
            self._end_in(GONE if number == getattr(signal, "SIGHUP", None) else PATIENCE)
            loop.call_soon_threadsafe(self._leave)

        for name in SIGNALS:
            with suppress(AttributeError, ValueError):  # no such signal on Windows; none outside the main thread
                number = getattr(signal, name)
                self._before[number] = signal.signal(number, heard)
        if draws and termios is not None:
            threading.Thread(target=self._watch, args=(loop,), name="boxlore-terminal", daemon=True).start()

    def stop(self) -> None:
        """Put the former handlers back."""
        self._over.set()
        for number, handler in self._before.items():
            signal.signal(number, handler)

    def _watch(self, loop: asyncio.AbstractEventLoop) -> None:
        while not self._over.wait(LOOK):
            if not _has_terminal():
                self._end_in(GONE)
                with suppress(RuntimeError):  # the loop has ended meanwhile
                    loop.call_soon_threadsafe(self._leave)
                return

    def _end_in(self, seconds: float) -> None:
        watchdog = threading.Timer(seconds, self._end)
        watchdog.daemon = True
        watchdog.start()

    def _end(self) -> None:
        try:
            self._last()
        finally:
            os._exit(0)


def _has_terminal() -> bool:
    """Whether the terminal that the program reads from is still there."""
    try:
        termios.tcgetattr(sys.__stdin__.fileno() if sys.__stdin__ is not None else 0)
    except (OSError, ValueError, termios.error):
        return False
    return True
