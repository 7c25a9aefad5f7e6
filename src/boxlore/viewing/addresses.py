"""The address at which the page is served, and the values of Host that are accepted.

The address is the loopback one unless the keeper asks for the local network. Somebody else's web page could make a
name of its own lead to this machine, and would then send that name as Host (RFC 9110, 7.2). So only the number that
is served, and localhost, are answered.
"""

import socket
from dataclasses import dataclass

from boxlore.core.errors import CouldNot

LOOPBACK = "127.0.0.1"
NOWHERE = ("192.0.2.1", 9)
"""An address reserved for documentation (RFC 5737). A datagram socket connected to it sends nothing, but shows which
of this machine's own addresses the system would use."""


@dataclass(frozen=True, slots=True)
class Address:
    """The host and port at which the server listens."""

    host: str
    port: int

    @property
    def accepted_hosts(self) -> frozenset[str]:
        """The values of the header Host that are answered."""
        names = {self.host, "localhost"} if self.host == LOOPBACK else {self.host}
        return frozenset(f"{name}:{self.port}" for name in names)

    def link(self, key: str) -> str:
        """The link to open in a browser, with the key."""
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
