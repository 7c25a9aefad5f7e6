"""Ids and times for the log: supplied here alone, never earlier than the collection's newest, never out of all reason.

A laptop's clock may jump back; the log's order may not. When it does, time goes on from the newest statement, a
millisecond at a time, until the clock has caught up. A clock may also jump ahead (a dead battery, 19 January 2038), and
a log that had followed it once could never come back. So one that is more than MOST_YEARS later than the newest
statement, and than this program, is not followed, neither by the log nor by the day that outputs carry: time goes on
as after a jump back. `fault` says either, and what to do. A day that somebody asks for with `--on` may be a year ahead
at most: by a day that is far ahead nobody lives any more, and everybody would be named.
"""

import os
import threading
import time
from datetime import UTC, date, datetime, timedelta

from boxlore.core.errors import WrongUse
from boxlore.core.statements import uuid7

RELEASED = "2026-11-01T00:00:00.000Z"
"""When this version was made: no clock that is right is earlier."""
MOST_YEARS = 10
"""So long may a collection have rested."""
MOST_DAYS_AHEAD = 366
"""So far ahead may a day lie that is asked for."""
_DAY = 86_400_000
_YEAR = 365 * _DAY + _DAY // 4


class Clock:
    """Time and ids for one open collection. `on_day` fixes the day that outputs carry; `right_on` is a day on which
    the keeper has found the machine's clock to be right, '' for none."""

    def __init__(self, newest: str = "", on_day: date | None = None, right_on: str = "") -> None:
        self._lock = threading.Lock()
        self._newest = self._last = _milliseconds(newest) if newest else 0
        known = [self._last, _milliseconds(RELEASED), _milliseconds(right_on) if right_on else 0]
        self._known = max(known)
        self._on_day = on_day
        if on_day and on_day > (latest := self._calendar_day() + timedelta(days=MOST_DAYS_AHEAD)):
            raise WrongUse(
                f"{on_day} is more than a year ahead: by then, people who live now would count as dead.",
                f"Write a day up to {latest}.",
            )

    def now(self) -> str:
        """UTC, ISO 8601 with milliseconds; later than every time given before."""
        return iso(self._tick())

    def new_id(self) -> str:
        """A version 7 UUID; ids made one after the other sort in that order."""
        return uuid7(self._tick(), os.urandom(10))

    def today(self) -> date:
        """The day outputs are made on: the one asked for, else that of this machine's calendar, if it is followed."""
        return self._on_day or self._calendar_day()

    def _calendar_day(self) -> date:
        if self._is_far_ahead(_by_the_machine()):
            return datetime.fromtimestamp(self._known / 1000).date()
        return date.today()

    def fault(self) -> str:
        """What is wrong with the machine's clock, and what to do; '' if nothing is to be seen."""
        machine = _by_the_machine()
        says = f"This machine's clock says {iso(machine)[:10]}"
        if self._is_far_ahead(machine):
            return (
                f"{says}, more than {MOST_YEARS} years after the last words here; it is not followed. Set it right; "
                f'or, if it is right, write clock_right_on = "{iso(machine)[:10]}" in boxlore.toml.'
            )
        if machine < self._newest - _DAY:
            return (
                f"{says}, and the last words here are of {iso(self._newest)[:10]}. New ones are noted right after "
                "those, until the clock has caught up. Set it right if it is wrong."
            )
        return ""

    def _is_far_ahead(self, machine: int) -> bool:
        return machine > self._known + MOST_YEARS * _YEAR

    def _tick(self) -> int:
        with self._lock:
            machine = _by_the_machine()
            if self._last == 0 and self._is_far_ahead(machine):
                self._last = self._known
            self._last = max(self._last + 1, 0 if self._is_far_ahead(machine) else machine)
            return self._last


def _by_the_machine() -> int:
    """Unix milliseconds by the machine's clock."""
    return time.time_ns() // 1_000_000


def iso(milliseconds: int) -> str:
    """Unix milliseconds → `2026-11-25T10:15:30.250Z`."""
    when = datetime.fromtimestamp(milliseconds // 1000, UTC)
    return f"{when:%Y-%m-%dT%H:%M:%S}.{milliseconds % 1000:03d}Z"


def _milliseconds(text: str) -> int:
    when = datetime.fromisoformat(text.replace("Z", "+00:00"))
    return round((when if when.tzinfo else when.replace(tzinfo=UTC)).timestamp() * 1000)
