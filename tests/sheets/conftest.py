"""Records that are hard to print, pictures for them, and a browser to look at pages with."""

import fcntl
import json
import os
import select
import shutil
import subprocess
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from PIL import Image, ImageDraw

from boxlore.core.dates.reading import DateReading
from boxlore.core.places.reading import Place, PlaceReading
from boxlore.core.records.item_record import PersonShown, Record, ScanFile, StatementView
from boxlore.core.records.marks import Mark
from boxlore.core.statements import Said, Source, Sure
from boxlore.sheets.picture_on_paper import front_of, picture_key
from boxlore.sheets.print_run import Printing

ON = date(2026, 11, 25)
LEIDA = Source(Said.NARRATOR, "leida")
STORY = " ".join(f"Word{at} of the long story that Leida told one winter evening." for at in range(1, 181))
HOSTILE = (
    '#image("/etc/passwd") $x$ <script>alert(1)</script> *b* \u202eevil\u202c \x07 & {{ 7 * 7 }} </title> @ref [x]'
)


def told(field: str, words: str, **more: Any) -> StatementView:
    values = {"statement": field, "language": "en", "source": LEIDA, "said_by": "Leida Rourke", "sure": Sure.SURE}
    return StatementView(field=field, words=words, audience="anyone", recorded_at="", **{**values, **more})


def shown(name: str, *area: float, number: int = 0, role: str = "person", **more: Any) -> PersonShown:
    said = told(role, name, **more)
    return PersonShown(told=said, name=name, role=role, person=f"id-{name}", scan="", area=area, number=number)


def record(at: int, *people: PersonShown, **words: str | tuple[StatementView, ...]) -> Record:
    path = f"scans/{at}.jpg"
    scan = ScanFile(
        id=f"scan{at}", path=path, sha256="0" * 64, bytes=1, width=1200, height=900, media_type="image/jpeg"
    )  # fmt: skip
    marked = [replace(one, scan=scan.id) for one in people]
    rows = {name: said if isinstance(said, tuple) else (told(name, said),) for name, said in words.items()}
    mark = Mark((("box", "1"), ("folder", str(1 + at // 6))), 1 + at % 6)
    return Record(id=f"item{at}", number=f"TRA-{at + 1:04d}", mark=mark, scans=(scan,), told=rows, people=tuple(marked))


def nine() -> list[PersonShown]:
    back = [shown(f"Back {x}", 0.2 + x * 0.16, 0.25, 0.05, 0.08, number=x + 6) for x in range(4)]
    front = [shown(f"Front {x}", 0.12 + x * 0.16, 0.42, 0.05, 0.08, number=x + 1) for x in range(5)]
    return [*front, *back]


@pytest.fixture(scope="session")
def hard() -> list[Record]:
    """A group of nine, a story of 2,000 words, other scripts, hostile words, nothing told at all."""
    tallinn = Place(
        name="Tallinn", city="Tallinn", country="Estonia", geonames=588409, lat=59.437, lon=24.7535, radius_km=5
    )
    place = told("place", "Reval", value=PlaceReading("Reval", "match", (tallinn,)))
    return [
        record(0, *nine(), title="The whole family", place=(place,),
               date=(told("date", "1912", value=DateReading.from_edtf("1912")),)),
        record(1, shown("Memm"), story=STORY),
        record(2, shown("לאה תמם", sure=Sure.GUESS), title="בית הספר בתל אביב, 1936", story="זה היה יום חם."),
        record(3, title="Школа в Хаапсалу", place="Хаапсалу", story=(told("story", "Было тихо.", language="ru"),)),
        record(4, shown("Hana Parata"), place="Ōtākou", story=(told("story", "Kei hea te whānau?", language="mi"),)),
        record(5),
        record(6, shown(HOSTILE), title=HOSTILE, story=f"{HOSTILE}\n\n{HOSTILE}", inscription=HOSTILE),
        record(7, title="W" * 80, place="a picture with a glyph that nobody has: \U00013000", care="Handle with care."),
        record(8, title="A damaged one"),
    ]  # fmt: skip


@pytest.fixture(scope="session")
def pictures(hard: list[Record], tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """A JPEG for each but the damaged one."""
    folder, made = tmp_path_factory.mktemp("prepared"), {}
    for at, one in enumerate(hard[:-1]):
        image = Image.new("RGB", (400, 300), (120 + at * 10, 100, 90))
        ImageDraw.Draw(image).ellipse((150, 100, 250, 200), fill="white")
        scan = front_of(one)
        assert scan is not None
        made[picture_key(scan)] = folder / f"{one.number}.jpg"
        image.save(made[picture_key(scan)])
    return made


@pytest.fixture
def printing() -> Printing:
    return Printing(title="Tamm and Rourke", printed_on=ON, audience="for family")


SILENT = 60
"""Seconds without a word of the browser after which it is not waited for any longer."""


class Browser:
    """Headless Chromium over its own pipe (Chrome DevTools Protocol, messages ended by a zero byte)."""

    def __init__(self, home: Path) -> None:
        read_in, write_in = os.pipe()
        read_out, write_out = os.pipe()

        def put() -> None:
            ours = fcntl.fcntl(read_in, fcntl.F_DUPFD, 20), fcntl.fcntl(write_out, fcntl.F_DUPFD, 20)
            os.dup2(ours[0], 3)
            os.dup2(ours[1], 4)

        flags = ["--headless", "--no-sandbox", "--disable-gpu", "--remote-debugging-pipe", f"--user-data-dir={home}"]
        self._process = subprocess.Popen(
            [str(shutil.which("chromium")), *flags, "--hide-scrollbars", "about:blank"],
            preexec_fn=put, close_fds=False, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        os.close(read_in)
        os.close(write_out)
        self._out, self._in, self._heard = os.fdopen(write_in, "wb", 0), read_out, b""
        self._next = 0
        self._session = ""
        self.events: list[dict[str, Any]] = []
        target = self.send("Target.createTarget", url="about:blank")["targetId"]
        self._session = self.send("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        for name in ("Page", "Runtime", "Log", "Network"):
            self.send(f"{name}.enable")

    def send(self, method: str, **params: Any) -> dict[str, Any]:
        self._next += 1
        message: dict[str, Any] = {"id": self._next, "method": method, "params": params}
        if self._session:
            message["sessionId"] = self._session
        self._out.write(json.dumps(message).encode() + b"\0")
        while True:
            got = self._message()
            if got.get("id") == self._next:
                assert "error" not in got, got
                result: dict[str, Any] = got["result"]
                return result
            self.events.append(got)

    def _message(self) -> dict[str, Any]:
        while b"\0" not in self._heard:
            assert select.select([self._in], [], [], SILENT)[0], "the browser says nothing more"
            data = os.read(self._in, 65536)
            assert data, "the browser has ended"
            self._heard += data
        message, _, self._heard = self._heard.partition(b"\0")
        return dict(json.loads(message))

    def open(self, path: Path, *, script: bool = True, width: int = 1000) -> None:
        self.send("Emulation.setScriptExecutionDisabled", value=not script)
        self.send("Emulation.setDeviceMetricsOverride", width=width, height=900, deviceScaleFactor=1, mobile=False)
        self.events.clear()
        self.send("Page.navigate", url=path.resolve().as_uri())
        self._until_loaded()

    def _until_loaded(self) -> None:
        while not any(one.get("method") == "Page.loadEventFired" for one in self.events):
            self.events.append(self._message())

    def follow(self, x: float, y: float) -> None:
        """Click there with the mouse, where a link is that leads to another page."""
        self.events.clear()
        for kind in ("mousePressed", "mouseReleased"):
            self.send("Input.dispatchMouseEvent", type=kind, x=x, y=y, button="left", clickCount=1)
        self._until_loaded()

    def look(self, words: str) -> Any:
        """The value of an expression in the page (the debugger may look also where the page's script is off)."""
        done = self.send("Runtime.evaluate", expression=words, returnByValue=True, awaitPromise=True)
        assert "exceptionDetails" not in done, done
        return done["result"].get("value")

    def until(self, words: str) -> None:
        """Wait until an expression in the page is true; fails after SILENT seconds."""
        self.look(f"new Promise(ok => {{ const wait = () => ({words}) ? ok(true) : setTimeout(wait, 10); wait() }})")

    def key(self, name: str) -> None:
        codes = {"Tab": 9, "Enter": 13, "Escape": 27, "ArrowLeft": 37, "ArrowRight": 39}
        text = {"text": "\r"} if name == "Enter" else {}
        for kind in ("keyDown", "keyUp"):
            more = text if kind == "keyDown" else {}
            self.send(
                "Input.dispatchKeyEvent", type=kind, key=name, code=name, windowsVirtualKeyCode=codes[name], **more
            )

    def write(self, words: str) -> None:
        self.send("Input.insertText", text=words)

    def close(self) -> None:
        self._process.terminate()
        self._process.wait(10)
        self._out.close()
        os.close(self._in)


@pytest.fixture(scope="session")
def browser(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Browser]:
    if not shutil.which("chromium"):
        pytest.skip("Debian's chromium is not here to look at the pages with")
    found = Browser(tmp_path_factory.mktemp("chromium"))
    yield found
    found.close()


@pytest.fixture
def text_of() -> Callable[[Path], list[str]]:
    """What pdftotext (poppler-utils) reads on each page, blanks single."""
    if not shutil.which("pdftotext"):
        pytest.skip("Debian's poppler-utils is not here to read the pages with")

    def read(path: Path) -> list[str]:
        out = subprocess.run(["pdftotext", "-raw", "-enc", "UTF-8", str(path), "-"], capture_output=True, check=True)
        return [plain(page) for page in out.stdout.decode().split("\f")[:-1]]

    return read


def plain(words: str) -> str:
    """Words without what a page adds: line ends, isolates, places to break."""
    for letter in "\u2068\u2069\u200b\u00ad\u202a\u202b\u202c":
        words = words.replace(letter, "")
    return " ".join(words.replace("\u00a0", " ").split())
