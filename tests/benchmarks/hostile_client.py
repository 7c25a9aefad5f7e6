"""Hostile clients at the teller's page, while the teller's own screen goes on asking for the picture that is out.

    python tests/benchmarks/hostile_client.py [--connections 2000] [--seed 7]

Each hostile connection is drawn from a list: it says nothing, drips a byte now and then, begins a request and stops,
sends random bytes, or asks whole requests that must be refused: without the key, under another name, from another
page, for a path to climb, for a picture that was out before or is covered, with a body too long. Counted are answers
that must not be (a 200 to any of them) and times at which the teller's own screen got no picture.
"""

import argparse
import random
import socket
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from PIL import Image

from boxlore.core.statements import Kind, Subject
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import record_of
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.viewing.connections import AT_MOST
from boxlore.viewing.server import Server, serving

AT_ONCE = 120
"""Hostile connections held open at a time: more than twice what the page takes."""


def fill(folder: Path) -> None:
    """A collection of three pictures; the second is covered by a care note."""
    start(folder, Settings(title="Synthetic", prefix="SY"))
    paths = []
    for at in range(3):
        paths.append(folder.parent / f"{at}_f.jpg")
        Image.effect_noise((900, 600), 40 + at).save(paths[-1])
    with open_collection(folder) as collection:
        list(take_in(collection, by_suffix(paths), IntakeOptions(copy=True)))
        Teller(collection).tell(Subject(Kind.ITEM, items(collection)[1]), "care", "A funeral.", Telling())


def items(collection: Collection) -> list[str]:
    return [ident for _, ident in collection.store.items()]


def request(server: Server, path: str, *, key: bool = True, method: str = "GET", **headers: str) -> bytes:
    """The bytes of a request, as the teller's own page sends it but for what is told otherwise."""
    own = f"127.0.0.1:{server.address.port}"
    lines = {"Host": own, "Origin": f"http://{own}", "Cookie": f"{server.cookie}={server.key}" if key else ""}
    told = "".join(f"{name}: {words}\r\n" for name, words in (lines | headers).items() if words)
    return f"{method} {path} HTTP/1.1\r\n{told}\r\n".encode()


def refused(server: Server, before: list[int], chance: random.Random) -> bytes:
    """A whole request that must not be answered with what it asks for."""
    kinds: list[Callable[[], bytes]] = [
        lambda: request(server, "/picture/1/screen", key=False),
        lambda: request(server, f"/?key={'x' * chance.randrange(40)}", key=False),
        lambda: request(server, "/", Host="evil.example"),
        lambda: request(server, "/tap", method="POST", Origin="http://evil.example"),
        lambda: request(server, f"/picture/{chance.choice(before)}/{chance.choice(('screen', 'close'))}"),
        lambda: request(server, "/picture/../../collection.sqlite"),
        lambda: request(server, "/../" * chance.randrange(1, 9) + "collection.sqlite"),
        lambda: request(server, "/tap", method="POST", **{"Content-Length": "9" * chance.randrange(4, 30)}),
        lambda: request(server, "/tap", method="POST", **{"Content-Length": "3"}) + b"[[[",
        lambda: request(server, "/events", key=False),
        lambda: request(server, "/", key=False, method=chance.choice(("PUT", "TRACE", "X"))),
    ]
    return chance.choice(kinds)()


def attack(server: Server, line: socket.socket, before: list[int], chance: random.Random) -> bool:
    """One hostile connection; whether it was answered as it must not be."""
    how = chance.randrange(5)
    line.settimeout(0.2)
    if how == 0:
        return False  # it says nothing, and stays
    if how == 1:
        line.sendall(b"G")
        return False
    if how == 2:
        line.sendall(request(server, "/", key=False)[: chance.randrange(1, 40)])
        return False
    line.sendall(chance.randbytes(chance.randrange(1, 4000)) if how == 3 else refused(server, before, chance))
    with suppress(TimeoutError):
        return line.recv(64).startswith(b"HTTP/1.1 200")
    return False


class Screen(threading.Thread):
    """The teller's own screen: asks for the picture that is out, again and again."""

    def __init__(self, server: Server, number: int) -> None:
        super().__init__(daemon=True)
        self._asks = request(server, f"/picture/{number}/screen", Connection="close")
        self._address = ("127.0.0.1", server.address.port)
        self.asked = self.missed = 0
        self.longest = 0.0
        self.over = threading.Event()

    def run(self) -> None:
        while not self.over.wait(0.02):
            began = time.monotonic()
            self.asked += 1
            self.missed += not self._has_picture()
            self.longest = max(self.longest, time.monotonic() - began)

    def _has_picture(self) -> bool:
        with suppress(OSError), socket.create_connection(self._address, timeout=10) as line:
            line.sendall(self._asks)
            answer = b""
            while data := line.recv(1 << 16):
                answer += data
            return answer.startswith(b"HTTP/1.1 200") and b"\xff\xd8\xff" in answer
        return False


def drip(held: list[socket.socket], over: threading.Event) -> None:
    """A byte on every connection that is held, every half second."""
    while not over.wait(0.5):
        for line in list(held):
            with suppress(OSError):
                line.send(b"x")


def run(options: argparse.Namespace, collection: Collection) -> int:
    """So many hostile connections; how many faults there were."""
    chance = random.Random(options.seed)
    showing = Showing(collection=collection)
    wrong, most = 0, 0
    with serving(showing) as server:
        before = []
        for item in items(collection)[:2]:
            showing.show(record_of(collection, item), (), "")
            before += [side.id for side in showing.view.sides]
        showing.show(record_of(collection, items(collection)[2]), (), "")
        screen = Screen(server, showing.view.sides[0].id)
        screen.start()
        held: list[socket.socket] = []
        threading.Thread(target=drip, args=(held, screen.over), daemon=True).start()
        for _ in range(options.connections):
            with suppress(OSError):
                line = socket.create_connection(("127.0.0.1", server.address.port), timeout=5)
                held.append(line)
                wrong += attack(server, line, before, chance)
            while len(held) > AT_ONCE:
                held.pop(0).close()
            most = max(most, sum("process_request_thread" in thread.name for thread in threading.enumerate()))
        screen.over.set()
        screen.join()
        for line in held:
            line.close()
    print(
        f"{options.connections} hostile connections, {wrong} answered as they must not be; the teller's screen asked "
        f"{screen.asked} times and missed {screen.missed}, longest {screen.longest:.2f} s; at most {most} threads"
    )
    return wrong + screen.missed + (most > 2 * AT_MOST) + (screen.asked == 0)


def main() -> None:
    """Attack, count what is wrong; exit code 1 if anything is."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--connections", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=7)
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as place:
        fill(Path(place) / "tamm_family")
        with open_collection(Path(place) / "tamm_family") as collection:
            faults = run(options, collection)
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
