"""Leaving by a signal (a closed window, a system going down): always, even while drawing on a dead terminal blocks."""

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
    """Hears the signals while an app runs. `leave` runs in the app's loop; `last` in a thread of its own, at the end.

    The handlers are Python's own, not the loop's: they run even while the loop is held up.
    """

    def __init__(self, leave: Callable[[], None], last: Callable[[], None] = lambda: None) -> None:
        self._leave, self._last = leave, last
        self._before: dict[int, Any] = {}

    def hear(self) -> None:
        """Begin; call it in the app's loop."""
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
        """Give the signals back."""
        for number, handler in self._before.items():
            signal.signal(number, handler)

    def _end(self) -> None:
        try:
            self._last()
        finally:
            os._exit(0)
