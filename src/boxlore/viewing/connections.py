"""The connections to the teller's page: how many there may be, and how long one may take to say what it wants.

A connection is keyless until a whole request on it has shown the key. What always holds:

- A request must have come whole within KEYLESS seconds of its connection's beginning, or within IDLE seconds of the
  last answer on a connection that has shown the key. So who drips a byte now and then keeps nothing open.
- Where there is no room, the oldest keyless connection goes for the new one: first a slow one of the same address, if
  that has OF_ONE_ADDRESS waiting, then any. Those that have shown the key are never closed for another.
"""

import socket
import threading
import time
from contextlib import suppress
from dataclasses import dataclass

AT_MOST = 48
OF_ONE_ADDRESS = 8
"""Keyless connections of one address: a browser opens six at once (common practice, no source)."""
KEYLESS, IDLE = 5.0, 20.0
GRACE = 0.5
"""Seconds after which a keyless connection counts as slow: a request that is sent at once has come by then."""


@dataclass(slots=True)
class _Connection:
    address: str
    began: float
    until: float | None
    """When it is closed, by the monotonic clock; None while it is being answered."""
    keyed: bool = False


class Connections:
    """The connections that are open. Every method may be called from any thread."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._open: dict[socket.socket, _Connection] = {}

    def enter(self, line: socket.socket, address: str) -> bool:
        """A new connection. Whether there is room for it, which another may have to make."""
        now = time.monotonic()
        with self._lock:
            keyless = [each for each, known in self._open.items() if not known.keyed]
            same = [each for each in keyless if self._open[each].address == address]
            slow = [each for each in same if now - self._began(each) > GRACE]
            if len(same) >= OF_ONE_ADDRESS and slow:
                self._cut(min(slow, key=self._began))
            elif len(self._open) >= AT_MOST:
                if not keyless:
                    return False
                self._cut(min(keyless, key=self._began))
            self._open[line] = _Connection(address, now, now + KEYLESS)
            return True

    def leave(self, line: socket.socket) -> None:
        """It is closed."""
        with self._lock:
            self._open.pop(line, None)

    def answering(self, line: socket.socket) -> None:
        """Its request has come whole."""
        self._set(line, until=None)

    def waiting(self, line: socket.socket) -> None:
        """It has been answered, and may ask again."""
        self._set(line, until=time.monotonic() + IDLE)

    def has_shown_the_key(self, line: socket.socket) -> None:
        """It belongs to somebody who was let in."""
        with self._lock:
            if known := self._open.get(line):
                known.keyed = True

    def close_late(self) -> None:
        """Close those whose time is over."""
        now = time.monotonic()
        with self._lock:
            for line in [each for each, known in self._open.items() if known.until is not None and known.until < now]:
                self._cut(line)

    def close_all(self) -> None:
        """Close every one: the page is served no more."""
        with self._lock:
            for line in list(self._open):
                self._cut(line)

    def _set(self, line: socket.socket, until: float | None) -> None:
        with self._lock:
            known = self._open.get(line)
            if known is not None and (known.keyed or until is None):
                known.until = until

    def _began(self, line: socket.socket) -> float:
        return self._open[line].began

    def _cut(self, line: socket.socket) -> None:
        """Its thread, which waits for bytes, gets none, and closes it."""
        del self._open[line]
        with suppress(OSError):
            line.shutdown(socket.SHUT_RDWR)
