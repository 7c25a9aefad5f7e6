"""The terminal with 100,000 items, measured from outside through a pty: first paint, next item, a key, the list.

    python tests/benchmarks/bench_tui.py [--items 100000]

Peer of the same run: a Textual app with one editor and nothing else (first paint, a key). Budgets: first paint
600 ms, next item 100 ms, a key 20 ms at the 95th percentile, the list of all items +10 MB.
"""

import argparse
import fcntl
import json
import os
import pty
import re
import select
import signal
import struct
import subprocess
import sys
import tempfile
import termios
import time
from pathlib import Path

from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings

STORY = "We left on the Monday boat, and the band played on the quay until we could not see it any more."

PROGRAM = "from boxlore.cli.main import main; main()"
PEER = """
from textual.app import App
from textual.widgets import TextArea
class Peer(App):
    def compose(self):
        yield TextArea("Tell me about")
Peer().run()
"""

MEMORY = """
import sys
from pathlib import Path
from boxlore.tasks.sitting.item_list import Listing
from boxlore.tasks.collection.opening import open_collection
def rss():
    return int(next(line.split()[1] for line in open("/proc/self/status") if line.startswith("VmRSS")))
with open_collection(Path(sys.argv[1]), write=False) as collection:
    collection.store.item_by_number("SYA-0001")
    before = rss()
    listing = Listing(collection)
    listing.rows([listing.id_at(0)])
    print((rss() - before) / 1024)
"""


def fill(folder: Path, items: int) -> None:
    """Items with a date and a story in every third."""
    start(folder, Settings(title="Synthetic", prefix="SY"))
    with open_collection(folder) as collection:
        act = collection.act("synthetic")
        for count in range(1, items + 1):
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"SYA-{count:04d}")
            if count % 3 == 0:
                act.state(item, "story", f"{STORY} {count}")
                act.state(item, "date", "1938")
            if count % 5000 == 0:
                act.done()
                act = collection.act("synthetic")
        act.done()


class Window:
    """A pty with a program in it."""

    def __init__(self, *arguments: str) -> None:
        self.began = time.perf_counter()
        self.pid, self.tty = pty.fork()
        if self.pid == 0:
            mine = os.environ | {"TERM": "xterm-256color", "COLORTERM": "truecolor"}
            for name in ("COLUMNS", "LINES", "PYTHONDONTWRITEBYTECODE"):  # an installed program is compiled once
                mine.pop(name, None)
            os.execve(sys.executable, [sys.executable, *arguments], mine)
        fcntl.ioctl(self.tty, termios.TIOCSWINSZ, struct.pack("HHHH", 40, 120, 0, 0))

    def until(self, wanted: str) -> float:
        """Milliseconds until this is drawn (styles between the letters do not count)."""
        began, seen = time.perf_counter(), ""
        while wanted not in re.sub(r"\x1b\[[0-9;?]*[a-zA-Z]", "", seen):
            if not select.select([self.tty], [], [], 20)[0]:
                raise SystemExit(f"{wanted!r} was never drawn")
            seen = seen[-20_000:] + os.read(self.tty, 65536).decode(errors="replace")
        return (time.perf_counter() - began) * 1000

    def press(self, keys: str, wanted: str) -> float:
        """Milliseconds from a key to what it draws, after everything drawn before has been read."""
        while select.select([self.tty], [], [], 0.03)[0]:
            os.read(self.tty, 65536)
        os.write(self.tty, keys.encode())
        return self.until(wanted)

    def end(self) -> None:
        """Stop it."""
        os.kill(self.pid, signal.SIGKILL)
        os.waitpid(self.pid, 0)
        os.close(self.tty)


LETTERS = "abcdefghijklmnopqrstuvwxyz"


def keys(window: Window, count: int) -> list[float]:
    """Milliseconds a key, each a letter that was not there before."""
    return [window.press(letter, letter) for letter in (LETTERS * 5)[:count]]


def p95(times: list[float]) -> float:
    """The 95th percentile."""
    return sorted(times)[int(len(times) * 0.95)]


def first_paint(*arguments: str) -> float:
    """Milliseconds from starting Python to the first question drawn; the best of three."""
    times = []
    for _ in range(3):
        window = Window(*arguments)
        window.until("Tell me about")
        times.append((time.perf_counter() - window.began) * 1000)
        window.end()
    return min(times)


def processor(*arguments: str) -> float:
    """Milliseconds of processor time until the first question is drawn: what a loaded machine hardly changes."""
    window = Window(*arguments)
    window.until("Tell me about")
    told = Path(f"/proc/{window.pid}/stat").read_text().rpartition(")")[2].split()
    window.end()
    return (int(told[11]) + int(told[12])) * 1000 / os.sysconf("SC_CLK_TCK")


def measure(folder: Path, items: int) -> dict[str, float]:
    """Every figure."""
    ours = ("-c", PROGRAM, "-c", str(folder), "sit", "--narrator", "Ellen Rourke")
    peer = Window("-c", PEER)
    peer.until("Tell me about")
    peer_keys = keys(peer, 100)
    peer.end()
    window = Window(*ours)
    window.until("Tell me about")
    time.sleep(1)
    our_keys = keys(window, 100)
    middle = items // 2
    window.press("\x1bOR", "All items")
    pages = [window.press("\x1b[6~", "SYA-") for _ in range(30)]
    window.press(str(middle), "1 found")
    window.press("\r", f"SYA-{middle:04d}")
    flips = [window.press("word\x1b[6~", f"SYA-{middle + at:04d}") for at in range(1, 41)]
    window.end()
    added = subprocess.run([sys.executable, "-c", MEMORY, str(folder)], capture_output=True, text=True, check=True)
    paint, peer_paint = first_paint(*ours), first_paint("-c", PEER)
    return {
        "items": items,
        "load of the machine": os.getloadavg()[0],
        "processor, first paint ms": processor(*ours),
        "processor, first paint, peer ms": processor("-c", PEER),
        "first paint ms": paint,
        "first paint, peer ms": peer_paint,
        "first paint ratio": paint / peer_paint,
        "next item ms p95 (with a word typed)": p95(flips),
        "page of the list ms p95": p95(pages),
        "key ms median": sorted(our_keys)[len(our_keys) // 2],
        "key ms p95": p95(our_keys),
        "key, peer ms p95": p95(peer_keys),
        "key ratio": p95(our_keys) / p95(peer_keys),
        "list MB": float(added.stdout),
    }


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--items", type=int, default=100_000)
    items = parser.parse_args().items
    with tempfile.TemporaryDirectory() as name:
        os.environ["XDG_STATE_HOME"] = name
        fill(Path(name) / "c", items)
        figures = measure(Path(name) / "c", items)
    print(json.dumps({what: round(figure, 2) for what, figure in figures.items()}, indent=1))


if __name__ == "__main__":
    main()
