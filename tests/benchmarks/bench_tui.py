"""The terminal with 100,000 items, measured from outside through a pty: first paint, next item, keys, list, searches.

    python tests/benchmarks/bench_tui.py [--items 100000]

Every item has a scan, every third a date, a place, somebody in it and a story; there are PEOPLE people. Peer of the
same run: a Textual app with one editor and nothing else (first paint, a key). Budgets: first question 1.5 s; next
photograph 150 ms, any key of KEYS and a letter 50 ms at the 95th percentile; the list of all items +10 MB. The next
photograph is measured to its number and first question, and apart from that until its picture is drawn.
"""

import argparse
import fcntl
import hashlib
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

from PIL import Image

from boxlore.core.dates.phrases import PhraseSettings
from boxlore.core.dates.reading import DateReading
from boxlore.core.fields.pictures import FILE_WORDS, SHOWS_WORDS, FileFacts, Shows
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.telling.understanding import date_reading, person_reading

PEOPLE = 300
GIVEN, FAMILY = ("Leida", "Jaan", "Helmi", "Ellen", "Ruth", "August", "Kristjan"), ("Tamm", "Rourke", "Pell", "Moss")
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


SCANS = 40
"""Files that are the scans of all items, each of many: what a picture costs does not depend on how many there are."""


def scans(folder: Path) -> list[FileFacts]:
    """Pictures of the size of a print at 400 dpi, in greys that change from corner to corner."""
    facts = []
    for at in range(SCANS):
        path = folder / "scans" / f"scan-{at}.jpg"
        path.parent.mkdir(exist_ok=True)
        Image.linear_gradient("L").rotate(at * 9).resize((2400, 1600)).convert("RGB").save(path, dpi=(400, 400))
        digest, size = hashlib.sha256(path.read_bytes()).hexdigest(), path.stat().st_size
        facts.append(FileFacts(path=f"scans/{path.name}", sha256=digest, bytes=size, width=2400, height=1600, ppi=400,
                               media_type="image/jpeg"))  # fmt: skip
    return facts


def fill(folder: Path, items: int) -> None:
    """Items with a scan, and a date, a place, somebody in it and a story in every third."""
    start(folder, Settings(title="Synthetic", prefix="SY"))
    files = scans(folder)
    with open_collection(folder) as collection:
        act = collection.act("synthetic")
        people = [act.new(Kind.PERSON) for _ in range(PEOPLE)]
        for at, person in enumerate(people):
            act.state(person, "name", f"{GIVEN[at % len(GIVEN)]} {FAMILY[at % len(FAMILY)]}{at}")
        for count in range(1, items + 1):
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"SYA-{count:04d}")
            scan = act.new(Kind.SCAN)
            act.state(scan, "file", FILE_WORDS.write(files[count % SCANS]))
            act.state(scan, "shows", SHOWS_WORDS.write(Shows(item.id, "recto")))
            if count % 3 == 0:
                act.state(item, "story", f"{STORY} {count}")
                year = f"{1900 + count % 70}"
                told = act.state(item, "date", year)
                act.readings.append((told.id, date_reading(DateReading.from_edtf(year), PhraseSettings())))
                act.state(item, "place", "Port Chalmers")
                person = people[count % PEOPLE]
                named = act.state(item, "person", f"{GIVEN[count % len(GIVEN)]} {FAMILY[count % len(FAMILY)]}")
                act.readings.append((named.id, person_reading(person)))
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

    def rest(self) -> None:
        """Read until nothing has been drawn for a while."""
        while select.select([self.tty], [], [], 0.3)[0]:
            os.read(self.tty, 65536)

    def end(self) -> None:
        """Stop it."""
        os.kill(self.pid, signal.SIGKILL)
        os.waitpid(self.pid, 0)
        os.close(self.tty)


KEYS = (  # a key, what it draws, and the key that goes back
    ("\t", "From the left", "\x1b[Z"),
    ("\x1bOS", "who says so", "\x1b"),
    ("\x1bOP", "You cannot break anything", "\x1b"),
    ("\x1b[20~", "What is to be asked", "\x1b"),
    ("\x1b[19~", "As in", "\x1b"),
    ("\x10", "is in question", ""),
    ("\x1b[15~", "There are words", ""),
    ("\x1bOR", "▸ SYA-", "\x1b"),
)
"""Tab, F4, F1, F9, F8, Ctrl+P, F5, F3, at a photograph with a word typed. Esc is not among them: a terminal sends it
as it begins other keys, and Textual waits 100 ms for what may follow."""

CLEAR = "\x15"
SEARCHES = ("regatta", f"{CLEAR}band", f"{CLEAR}1938", f"{CLEAR}the fifties", f"{CLEAR}May 1952")

LETTERS = "abcdefghijklmnopqrstuvwxyz"


def keys(window: Window, count: int) -> list[float]:
    """Milliseconds a key, each a letter that was not there before."""
    return [window.press(letter, letter) for letter in (LETTERS * 5)[:count]]


def other_keys(window: Window, rounds: int) -> list[float]:
    """Milliseconds of each of KEYS, some times round."""
    times = []
    for _ in range(rounds):
        for key, wanted, back in KEYS:
            times.append(window.press(key, wanted))
            window.rest()
            os.write(window.tty, back.encode())
            window.rest()
    return times


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
    ours = ("-c", PROGRAM, "-c", str(folder), "sit", "--narrator", "Nell Hardy")
    peer = Window("-c", PEER)
    peer.until("Tell me about")
    peer_keys = keys(peer, 100)
    peer.end()
    window = Window(*ours)
    window.until("Tell me about")
    time.sleep(1)
    our_keys = keys(window, 100)
    middle = items // 2
    window.press("\x1bOR", "All photographs")
    pages = [window.press("\x1b[6~", "SYA-") for _ in range(30)]
    window.press(str(middle), "1 found")
    window.press("\r", f"SYA-{middle:04d}")
    flips = [window.press("word\x1b[6~", f"SYA-{middle + at:04d}") for at in range(1, 41)]
    pictures = [window.press("\x1b[6~", f"SYA-{middle + at:04d}") + window.until("▀▀▀") for at in range(41, 72)]
    window.press("x", "saved")
    others = other_keys(window, 5)
    window.press("\x1bOR", "All photographs")
    window.rest()
    found = {words: window.press(words, " found") for words in SEARCHES}
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
        "next item with its picture ms p95": p95(pictures),
        "page of the list ms p95": p95(pages),
        "key ms median": sorted(our_keys)[len(our_keys) // 2],
        "key ms p95": p95(our_keys),
        "key, peer ms p95": p95(peer_keys),
        "other key ms median": sorted(others)[len(others) // 2],
        "other key ms p95": p95(others),
        **{f"search for {words.strip(CLEAR)}, ms": lasted for words, lasted in found.items()},
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
