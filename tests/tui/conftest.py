"""A real terminal for tests: the program runs in a pty, and pyte keeps the screen that a person would see."""

import asyncio
import fcntl
import json
import os
import pty
import re
import select
import selectors
import signal
import socket
import struct
import subprocess
import sys
import termios
import threading
import time
from collections.abc import AsyncIterator, Callable, Coroutine, Iterator
from contextlib import asynccontextmanager, suppress
from pathlib import Path
from typing import Any

import pyte
import pytest
from PIL import Image
from textual._compositor import Compositor
from textual.app import App
from textual.events import Key
from textual.keys import _character_to_key, key_to_character

from boxlore.core.records.item_record import Record
from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.tui.app import Boxlore
from boxlore.tui.widgets.text_input import Words

KEYS = {
    "PgDn": "\x1b[6~", "PgUp": "\x1b[5~", "Tab": "\t", "BackTab": "\x1b[Z", "Enter": "\r", "Esc": "\x1b",
    "Up": "\x1b[A", "Down": "\x1b[B", "Left": "\x1b[D", "Right": "\x1b[C", "Back": "\x7f", "Ins": "\x1b[2~",
    "Del": "\x1b[3~",
    "F1": "\x1bOP", "F2": "\x1bOQ", "F3": "\x1bOR", "F4": "\x1bOS", "F5": "\x1b[15~", "F6": "\x1b[17~",
    "F7": "\x1b[18~", "F8": "\x1b[19~", "F9": "\x1b[20~",
    "^P": "\x10", "^Q": "\x11", "^S": "\x13", "^Y": "\x19", "^Z": "\x1a",
}  # fmt: skip
"""What a terminal sends (xterm control sequences, PC-style function keys)."""

PATIENCE = 300.0
"""Seconds: what never comes fails after them; a busy machine is waited for."""

PROGRAM = "from boxlore.cli.main import main; main()"


class Terminal:
    """One run of the program. `wait_for` reads until the screen shows something; nothing sleeps blindly."""

    def __init__(
        self,
        arguments: list[str],
        *,
        columns: int = 80,
        rows: int = 24,
        deaf: bool = False,
        mute: bool = False,
        warm: socket.socket | None = None,
        **environment: str,
    ) -> None:
        """`deaf`: the program never hears SIGHUP, as when a connection drops. `mute`: the terminal does not say what it
        is, as nearly every one does. `warm`: the door of `tests/tui/warm.py`, which has the program loaded; without it
        the program is started from nothing."""
        self.screen = pyte.Screen(columns, rows)
        if not mute:
            self.screen.write_process_input = lambda data: os.write(self._tty, data.encode())
        self._stream = pyte.ByteStream(self.screen)
        self._lock = threading.Condition()
        self._over = threading.Event()
        self._lines: dict[int, str] = {}
        self._drawn = 0
        """How often something was drawn: the screen is read again only after that."""
        mine = os.environ | {"TERM": "xterm-256color", "COLORTERM": "truecolor", **environment}
        for name in ("COLUMNS", "LINES"):  # these would hide the size of the window
            mine.pop(name, None)
        self._news: socket.socket | None = None
        if warm is not None:
            self._start_warm(warm, arguments, mine, deaf)
        else:
            self.pid, self._tty = pty.fork()
        if self.pid == 0:  # pragma: no cover  # the child
            if deaf:
                signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGHUP})
            # Told whole: readline, which pytest loads, sets both behind the back of `os.environ`.
            os.execve(sys.executable, [sys.executable, "-c", PROGRAM, *arguments], mine)
        self.resize(columns, rows)
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()
        self.code: int | None = None

    def _start_warm(self, warm: socket.socket, arguments: list[str], environment: dict[str, str], deaf: bool) -> None:
        self._tty, slave = pty.openpty()
        self._news, theirs = socket.socketpair()
        said = {"arguments": arguments, "environment": environment, "folder": os.getcwd(), "deaf": deaf}
        with theirs:
            socket.send_fds(warm, [json.dumps(said).encode()], [slave, theirs.fileno()])
        os.close(slave)
        self.pid = int.from_bytes(self._news.recv(4), "little")

    def _status(self) -> int | None:
        """How the program has ended, as `os.waitpid` tells it; None while it runs."""
        if self._news is None:
            ended, status = os.waitpid(self.pid, os.WNOHANG)
            return status if ended else None
        return int.from_bytes(self._news.recv(4), "little") if select.select([self._news], [], [], 0)[0] else None

    def _read(self) -> None:
        while not self._over.is_set():
            try:
                if not select.select([self._tty], [], [], 0.2)[0]:
                    continue
                data = os.read(self._tty, 65536)
            except (OSError, ValueError):
                return
            if not data:
                return
            with self._lock:
                self._stream.feed(self.letters(data))
                self._drawn += 1
                self._lock.notify_all()

    def letters(self, data: bytes) -> bytes:
        """What of the program's output is for the screen of letters: all of it, in a terminal without pictures."""
        return data

    def resize(self, columns: int, rows: int) -> None:
        """Change the size of the window, as a person dragging its corner does."""
        fcntl.ioctl(self._tty, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
        with self._lock:
            self.screen.resize(max(rows, 1), max(columns, 1))

    def send(self, keys: str) -> None:
        """Type, at the speed of the machine. ⟨PgDn⟩ is that key."""
        sent = re.sub("⟨(.+?)⟩", lambda key: KEYS[key[1]], keys).encode()
        while sent:
            sent = sent[os.write(self._tty, sent[:512]) :]

    @property
    def text(self) -> str:
        """What the screen shows. Only the lines that have changed are read again."""
        with self._lock:
            for at in self.screen.dirty:
                line = self.screen.buffer[at]
                self._lines[at] = "".join(line[column].data for column in range(self.screen.columns))
            self.screen.dirty.clear()
            return "\n".join(self._lines.get(at, "") for at in range(self.screen.lines))

    def wait_for(self, wanted: str | Callable[[str], bool], seconds: float = PATIENCE) -> str:
        """Wait until the screen shows it; fails with the screen, at once where the program has ended."""
        shown = (lambda text: wanted in text) if isinstance(wanted, str) else wanted
        until = time.monotonic() + seconds
        ended = False
        while time.monotonic() < until and not ended:
            drawn, ended = self._drawn, not self._reader.is_alive()
            if shown(text := self.text):
                return text
            with self._lock:
                self._lock.wait_for(lambda: self._drawn != drawn, 1)  # noqa: B023
        raise AssertionError(f"{wanted!r} never came. The screen:\n{self.text}")

    def wait_for_words(self, *wanted: str, seconds: float = PATIENCE) -> str:
        """Wait until all of it is on the screen at once, however its lines are broken."""
        return self.wait_for(lambda text: all(one in " ".join(text.split()) for one in wanted), seconds)

    def signal(self, number: int) -> None:
        """Send a signal to the program."""
        os.kill(self.pid, number)

    def hang_up(self) -> None:
        """Close the window."""
        self._close()

    def wait(self, seconds: float = PATIENCE) -> int:
        """Wait for the end; the exit code, or minus the signal."""
        until = time.monotonic() + seconds
        while self.code is None:
            if (status := self._status()) is not None:
                self.code = os.waitstatus_to_exitcode(status)
            elif time.monotonic() > until:
                raise AssertionError(f"It did not end. The screen:\n{self.text}")
            else:
                time.sleep(0.02)
        self._reader.join(5)  # until everything drawn before the end has been read
        return self.code

    def end(self) -> None:
        """Whatever happens, leave nothing running. Asked first, a program also writes down what it has covered."""
        for number in (signal.SIGTERM, signal.SIGKILL):
            if self.code is None:
                with suppress(ProcessLookupError, AssertionError):
                    self.signal(number)
                    self.wait(10)
        self._close()
        if self._news is not None:
            self._news.close()

    def _close(self) -> None:
        """Let the reader go first: the next window may get the same file number, and its screen would be read here."""
        if not self._over.is_set():
            self._over.set()
            self._reader.join()
            with suppress(OSError):
                os.close(self._tty)


@pytest.fixture(autouse=True)
def _own_state(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The collections opened before are those of this test alone."""
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))


Opens = Callable[..., Terminal]


@pytest.fixture(scope="session")
def warm() -> Iterator[socket.socket]:
    """The door of a process that has the program loaded."""
    door, theirs = socket.socketpair(socket.AF_UNIX, socket.SOCK_SEQPACKET)
    with door, theirs:
        arguments = [sys.executable, str(Path(__file__).with_name("warm.py")), str(theirs.fileno())]
        process = subprocess.Popen(arguments, pass_fds=[theirs.fileno()], stdin=subprocess.DEVNULL)
        theirs.close()
        yield door
        door.close()
        process.wait()


@pytest.fixture
def terminal(tmp_path: Path, warm: socket.socket) -> Iterator[Opens]:
    """`terminal("-c", folder, "sit", ...)` runs the program; `cold=True` starts Python from nothing for it."""
    running: list[Terminal] = []

    def run(*arguments: object, cold: bool = False, **more: object) -> Terminal:
        state = {"XDG_STATE_HOME": str(tmp_path / "state"), "warm": None if cold else warm}
        running.append(Terminal([str(one) for one in arguments], **(state | more)))  # type: ignore[arg-type]  # sizes and variables
        return running[-1]

    yield run
    for one in running:
        one.end()


REDRAWN = 0.02
"""Seconds: the screen is redrawn within them (Textual: 60 times a second), and what waits for that is done."""
SOON = 0.2
"""Seconds: what a timer does within them is waited for, such as a search after the last letter."""
RESTLESS = 0.5
"""Seconds: something that moves by itself, as the bar of a long task, is not waited for any longer."""
NEVER_AT_REST = 10.0
"""Seconds: on a slow machine drawing such a bar may leave the loop no rest at all between two keys."""


class _Watched(selectors.DefaultSelector):
    """The loop's selector. The loop waits in it only when nothing is left to run, and then tells who asked."""

    def __init__(self) -> None:
        super().__init__()
        self.asked: list[tuple[float, asyncio.Future[None]]] = []

    def select(self, timeout: float | None = None) -> list[tuple[selectors.SelectorKey, int]]:
        wait = float("inf") if timeout is None else timeout
        for soon, asked in self.asked:
            if wait > soon and not asked.done():
                asked.set_result(None)
                timeout = 0
        self.asked = [(soon, asked) for soon, asked in self.asked if not asked.done()]
        return super().select(timeout)


class Loop(asyncio.SelectorEventLoop):
    """An event loop that can be waited for until it has nothing to do."""

    def __init__(self) -> None:
        self._watched = _Watched()
        super().__init__(self._watched)

    async def rests(self, soon: float = 0.0) -> None:
        """Until nothing is left to run, and no timer is due within so many seconds; at most `NEVER_AT_REST`."""
        asked = self.create_future()
        self._watched.asked.append((soon, asked))
        with suppress(TimeoutError):
            await asyncio.wait_for(asked, NEVER_AT_REST)


async def settled(app: App[Any]) -> None:
    """Until the program has done what its keys began, its threads too, but for a task that is watched at work."""
    loop = asyncio.get_running_loop()
    assert isinstance(loop, Loop)
    with suppress(TimeoutError):
        async with asyncio.timeout(RESTLESS):
            await loop.rests(SOON)
            while any(worker.is_running and worker.group != "default" for worker in app.workers):
                await asyncio.sleep(0.005)
                await loop.rests(SOON)


def _pressed(key: str) -> Key:
    """The event of a key, by Textual's name of it or by its letter."""
    if len(key) == 1:
        return Key(_character_to_key(key), key)
    return Key(key, key_to_character(key))


def tell_births(collection: Collection, births: dict[str, str]) -> None:
    """People of these names, each with when they were born."""
    teller, act = Teller(collection), collection.act("people")
    for name, born in births.items():
        person = act.new(Kind.PERSON)
        teller.add(act, person, "name", name, Telling())
        teller.add(act, person, "born", born, Telling())
    act.done()


class _Frames(Compositor):
    """Textual's compositor, for a screen that nobody sees: it draws what has changed only when it is asked for, at the
    end of a `press`, as a terminal that is slower than the keys does. What is not drawn yet stays due."""

    due = False
    """Whether the next frame is drawn; set for the moment in which a test looks."""

    def render_update(self, *how: Any, **more: Any) -> Any:
        return super().render_update(*how, **more) if _Frames.due else None


class Hands:
    """The program run within the test, without a terminal: quicker, where the keys alone matter."""

    def __init__(self, app: Boxlore) -> None:
        self.app = app

    def _draw(self) -> None:
        """Draw what has changed since the last frame: what cannot be drawn fails here."""
        _Frames.due = True
        try:
            self.app.screen._on_timer_update()
            self.app.screen._compositor_refresh()
        finally:
            _Frames.due = False

    async def press(self, *keys: str, at_once: bool = False) -> None:
        """Textual's names of keys, each once what the last one did is drawn; and words as «words», all their letters
        before the program has answered one. `at_once`: all keys so, as a terminal that was held up hands them on."""
        loop, driver = asyncio.get_running_loop(), self.app._driver
        assert isinstance(loop, Loop) and driver is not None
        for key in keys:
            for letter in key[1:-1] if key.startswith("«") else [key]:
                driver.send_message(_pressed(letter))
            if not at_once:
                await loop.rests(REDRAWN)
        await settled(self.app)
        self._draw()

    async def choose(self, *names: str) -> None:
        """The lines of these names, one card after the other, each by its letter or digit."""
        for name in names:
            key = re.search(rf"([0-9a-z]) +{re.escape(name)}", self.text)
            assert key, f"no line {name} in {self.text}"
            await self.press(key[1])

    async def fill(self, *answers: str) -> None:
        """The lines of a form, each emptied first, with Enter after each."""
        for words in answers:
            assert isinstance(self.app.focused, Words)
            self.app.focused.load("")
            await self.press(*([f"«{words}»"] if words else []), "enter")

    async def refill(self, *answers: str) -> None:
        """The same from the first line on, of a form that was wrong: its cursor is in the line with the fault."""
        self.app.screen.query(Words).first().focus()
        await self.press()
        await self.fill(*answers)

    async def until(self, words: str, seconds: float = PATIENCE) -> None:
        """Wait for the end of a task that works in a thread: until the screen shows these words."""
        end = time.monotonic() + seconds
        while words not in self.text:
            assert time.monotonic() < end, f"{words!r} never came: {self.text}"
            await asyncio.sleep(0.02)

    @property
    def text(self) -> str:
        """What the screen shows, on one line; of a card on top of it, what stands in its frame."""
        strips = self.app.screen._compositor.render_strips()
        if self.app.screen.is_modal:
            frame = self.app.screen.query_one(".card").region
            strips = [strip.crop(frame.x, frame.right) for strip in strips[frame.y : frame.bottom]]
        return " ".join(" ".join(strip.text for strip in strips).replace("│", " ").split())


@pytest.fixture(autouse=True)
def _no_frames_between(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("textual.screen.Compositor", _Frames)


@asynccontextmanager
async def hands_on(
    collection: Collection | None, size: tuple[int, int] = (100, 30), **more: Any
) -> AsyncIterator[Hands]:
    """The program with this collection open, in a terminal of this size."""
    app = Boxlore(collection, **more)
    async with app.run_test(size=size):
        hands = Hands(app)
        await hands.press()
        yield hands


@pytest.fixture
def folder(bare: Callable[[int], Path]) -> Path:
    """A collection of eight items without scans, TRA-0001 to TRA-0008."""
    return bare(8)


@pytest.fixture
def pictured(tmp_path: Path) -> Path:
    """A collection of two items, the first with a picture."""
    made, picture = tmp_path / "tamm_family", tmp_path / "incoming" / "harbour_f.jpg"
    picture.parent.mkdir()
    Image.linear_gradient("L").resize((300, 200)).convert("RGB").save(picture)
    start(made, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(made) as collection:
        list(take_in(collection, by_suffix([picture]), IntakeOptions(copy=True)))
        act = collection.act("one without a scan")
        act.state(act.new(Kind.ITEM), "number", "TRA-0002")
        act.done()
    return made


@pytest.fixture
def told(tmp_path: Path) -> Callable[[], dict[str, Record]]:
    """What the collection holds now: the records by number."""

    def read() -> dict[str, Record]:
        with open_collection(tmp_path / "tamm_family", write=False) as collection:
            return {record.number: record for record in records(collection)}

    return read


def run_to_its_end(course: Coroutine[Any, Any, None]) -> None:
    """Run a coroutine in a loop that can be waited for."""
    with asyncio.Runner(loop_factory=Loop) as runner:
        runner.run(course)


@pytest.fixture
def run() -> Callable[[Coroutine[Any, Any, None]], None]:
    """Run a coroutine to its end."""
    return run_to_its_end
