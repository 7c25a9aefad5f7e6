"""Where the page is served, and which names of it are believed.

Loopback unless the local network is asked for on purpose. A page elsewhere that points a name of its own at this
machine sends that name as Host; only the numbers served here, and localhost, are answered (RFC 9110, 7.2).
"""

import socket
from dataclasses import dataclass

from boxlore.core.errors import CouldNot

LOOPBACK = "127.0.0.1"
NOWHERE = ("192.0.2.1", 9)
"""An address kept for documentation (RFC 5737); asking the system for the way there sends nothing."""


@dataclass(frozen=True, slots=True)
class Address:
    """Where the server listens."""

    host: str
    port: int

    @property
    def believed(self) -> frozenset[str]:
        """The values of Host that are answered."""
        names = {self.host, "localhost"} if self.host == LOOPBACK else {self.host}
        return frozenset(f"{name}:{self.port}" for name in names)

    def link(self, key: str) -> str:
        """What a browser is given."""
        return f"http://{self.host}:{self.port}/?key={key}"


def of_this_machine() -> str:
    """This machine's address on the local network. Raises CouldNot where there is none."""
    try:
        with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
            probe.connect(NOWHERE)
            host = str(probe.getsockname()[0])
    except OSError as error:
        raise CouldNot(
            "This machine is on no local network.", "Join one, or leave --lan away and use this screen."
        ) from error
    return host
