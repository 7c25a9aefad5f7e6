"""Leaving the program by a signal, as when a window is closed or the system shuts down.

It always ends: drawing on a terminal that is gone can block for ever, so a watchdog ends the program after PATIENCE.
"""

import asyncio
import os
import signal
import threading
from collections.abc import Callable
from contextlib import suppress
from typing import Any

PATIENCE = 3.0
"""Seconds after a signal until the program ends in any case; what was typed is on the disk as drafts."""

SIGNALS = ("SIGTERM", "SIGHUP", "SIGINT")


class Leaving:
    """Handles the signals while an app runs.

    On a signal `leave` is called in the app's loop. If the program has not ended PATIENCE seconds later, `last` is
    called in a thread of its own, and the program ends. The handlers are Python's own and not the loop's, for they
    run even while the loop is blocked.
    """

    def __init__(self, leave: Callable[[], None], last: Callable[[], None] = lambda: None) -> None:
        self._leave, self._last = leave, last
        self._before: dict[int, Any] = {}

    def hear(self) -> None:
        """Begin to handle the signals; call it in the app's loop."""
        loop = asyncio.get_running_loop()

        def heard(number: int, frame: object) -> None:
            watchdog = threading.Timer(PATIENCE, self._end)
            watchdog.daemon = True
            watchdog.start()
            loop.call_soon_threadsafe(self._leave)

        for name in SIGNALS:
            with suppress(AttributeError, ValueError):  # no such signal on Windows; none outside the main thread
                number = getattr(signal, name)
                self._before[number] = signal.signal(number, heard)

    def stop(self) -> None:
        """Put the former handlers back."""
        for number, handler in self._before.items():
            signal.signal(number, handler)

    def _end(self) -> None:
        try:
            self._last()
        finally:
            os._exit(0)
