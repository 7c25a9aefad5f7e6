"""Ids and times for the log: supplied here alone, and never earlier than the collection's newest.

A laptop's clock may jump back; the log's order may not. When it does, time goes on from the newest
statement, a millisecond at a time, until the clock has caught up.
"""

import os
import threading
import time
from datetime import UTC, date, datetime

from boxlore.core.statements import uuid7


class Clock:
    """Time and ids for one open collection. `on_day` fixes the day that outputs carry."""

    def __init__(self, newest: str = "", on_day: date | None = None) -> None:
        self._lock = threading.Lock()
        self._last = _milliseconds(newest) if newest else 0
        self._on_day = on_day

    def now(self) -> str:
        """UTC, ISO 8601 with milliseconds; later than every time given before."""
        return iso(self._tick())

    def new_id(self) -> str:
        """A version 7 UUID; ids made one after the other sort in that order."""
        return uuid7(self._tick(), os.urandom(10))

    def today(self) -> date:
        """The day outputs are made on: the one asked for, else the day by this machine's calendar."""
        return self._on_day or date.today()

    def _tick(self) -> int:
        with self._lock:
            self._last = max(self._last + 1, time.time_ns() // 1_000_000)
            return self._last


def iso(milliseconds: int) -> str:
    """Unix milliseconds → `2026-11-25T10:15:30.250Z`."""
    when = datetime.fromtimestamp(milliseconds // 1000, UTC)
    return f"{when:%Y-%m-%dT%H:%M:%S}.{milliseconds % 1000:03d}Z"


def _milliseconds(text: str) -> int:
    return round(datetime.fromisoformat(text.replace("Z", "+00:00")).timestamp() * 1000)
