"""A collection with two pictures, the page served, and a browser without a window that is asked over its own socket.

The browser is spoken to by the Chrome DevTools Protocol over a WebSocket (RFC 6455) written out here.
"""

import base64
import json
import os
import shutil
import socket
import struct
import subprocess
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any
from urllib.request import urlopen

import pytest
from PIL import Image, ImageDraw

from boxlore.core.records.item_record import Record
from boxlore.tasks.collection.opening import Collection, open_collection, start
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.scans.given_files import files_given
from boxlore.tasks.scans.intake import IntakeOptions, take_in
from boxlore.tasks.scans.pairing import by_suffix
from boxlore.tasks.sitting.session import Sitting
from boxlore.tasks.sitting.tellers_page import Showing
from boxlore.viewing.server import Server, serving

CHROMIUM = next(
    (path for name in ("chromium", "chromium-browser", "google-chrome") if (path := shutil.which(name))), ""
)


def draw(path: Path, words: str, size: tuple[int, int] = (600, 400)) -> None:
    """A picture with a word on it and a bright corner, so that its turning shows."""
    image = Image.new("RGB", size, "#8a7a60")
    pen = ImageDraw.Draw(image)
    pen.rectangle((0, 0, size[0] // 5, size[1] // 5), fill="#f0e0b0")
    pen.text((size[0] // 2, size[1] // 2), words, fill="black")
    exif = Image.Exif()
    exif[270] = "PRIVATE WORDS IN THE FILE"
    image.save(path, quality=90, exif=exif)


@pytest.fixture
def collection(tmp_path: Path) -> Iterator[Collection]:
    """TRA-0001 with a front and a back, TRA-0002 with a front."""
    scans = tmp_path / "incoming"
    scans.mkdir()
    for name in ("harbour_f", "harbour_b", "wedding_f"):
        draw(scans / f"{name}.jpg", name)
    folder = tmp_path / "tamm_family"
    start(folder, Settings(title="Tamm and Rourke", prefix="TR"))
    with open_collection(folder) as collection:
        list(take_in(collection, by_suffix(files_given([scans]).pictures), IntakeOptions(copy=True)))
        yield collection


class Keeper:
    """The keeper's side of a sitting, without a terminal."""

    def __init__(self, collection: Collection) -> None:
        self.sitting = Sitting(collection, narrator="Ellen Rourke")
        self.sitting.begin()
        self.showing = Showing(collection=collection)
        self.showing.heard = self._tapped
        self.record: Record
        self.out(1)

    def out(self, count: int) -> None:
        """Put an item out."""
        item = self.sitting.collection.store.item_by_number(f"TRA-{count:04d}")
        assert item
        self.sitting.show(item)
        self.again(item)

    def again(self, item: str = "") -> None:
        """Show it as it is now."""
        self.record = self.sitting.record(item or self.record.id)
        self.showing.show(self.record, self.sitting.markers.of(self.record), "1 of 2")

    def _tapped(self, tap: Any) -> None:
        scan = next(scan for scan in self.record.scans if scan.id == tap.scan)
        self.sitting.mark(self.record, scan, tap.x, tap.y)
        self.again()


@pytest.fixture
def keeper(collection: Collection) -> Keeper:
    return Keeper(collection)


@pytest.fixture
def server(keeper: Keeper) -> Iterator[Server]:
    with serving(keeper.showing) as running:
        yield running


class Page:
    """One page of the browser."""

    def __init__(self, address: str) -> None:
        host, _, rest = address.removeprefix("ws://").partition("/")
        name, _, port = host.partition(":")
        self._socket = socket.create_connection((name, int(port)), timeout=20)
        key = base64.b64encode(os.urandom(16)).decode()
        self._socket.sendall(
            f"GET /{rest} HTTP/1.1\r\nHost: {host}\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
            f"Sec-WebSocket-Key: {key}\r\nSec-WebSocket-Version: 13\r\n\r\n".encode()
        )
        self._file = self._socket.makefile("rb")
        while self._file.readline().strip():
            pass
        self._count = 0

    def close(self) -> None:
        """Let go of the page; the browser keeps it."""
        self._file.close()
        self._socket.close()

    def call(self, method: str, **told: Any) -> dict[str, Any]:
        """One command of the protocol, and its answer."""
        self._count += 1
        self.send(self._count, method, **told)
        return self.answer(self._count)

    def send(self, count: int, method: str, **told: Any) -> None:
        """One command, not waited for."""
        data = json.dumps({"id": count, "method": method, "params": told}).encode()
        if len(data) < 126:
            size = bytes([0x80 | len(data)])
        else:
            size = (
                b"\xfe" + struct.pack(">H", len(data)) if len(data) < 65536 else b"\xff" + struct.pack(">Q", len(data))
            )
        self._socket.sendall(b"\x81" + size + bytes(4) + data)

    def answer(self, count: int) -> dict[str, Any]:
        """The answer to a command."""
        while True:
            answer = json.loads(self._frame())
            if answer.get("id") == count:
                assert "error" not in answer, answer
                return dict(answer["result"])

    def _frame(self) -> bytes:
        whole = b""
        while True:
            first, second = self._file.read(2)
            size = second & 0x7F
            if size > 125:
                size = int.from_bytes(self._file.read(2 if size == 126 else 8), "big")
            whole += self._file.read(size)
            if first & 0x80:
                return whole

    def ask(self, script: str) -> Any:
        """The value of an expression on the page."""
        answer = self.call("Runtime.evaluate", expression=script, returnByValue=True, awaitPromise=True)
        assert "exceptionDetails" not in answer, answer
        return answer["result"].get("value")

    def wait_for(self, script: str, seconds: float = 15) -> Any:
        """Wait until an expression is true."""
        until = time.monotonic() + seconds
        while not (value := self.ask(script)):
            assert time.monotonic() < until, (script, self.ask("document.body.outerHTML"))
            time.sleep(0.03)
        return value

    def open(self, address: str) -> None:
        """Go to an address."""
        self.call("Page.enable")
        self.call("Page.navigate", url=address)

    def click(self, x: float, y: float) -> None:
        """A short press of the mouse."""
        for kind in ("mousePressed", "mouseReleased"):
            self.call("Input.dispatchMouseEvent", type=kind, x=x, y=y, button="left", clickCount=1)

    def touch(self, x: float, y: float) -> None:
        """A short touch of a finger."""
        self.call("Input.dispatchTouchEvent", type="touchStart", touchPoints=[{"x": x, "y": y}])
        self.call("Input.dispatchTouchEvent", type="touchEnd", touchPoints=[])

    def press(self, key: str, text: str = "") -> None:
        """One key."""
        self.call("Input.dispatchKeyEvent", type="keyDown", key=key, text=text or ("" if len(key) > 1 else key))
        self.call("Input.dispatchKeyEvent", type="keyUp", key=key)

    def shot(self, path: Path) -> None:
        """What it looks like."""
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(base64.b64decode(self.call("Page.captureScreenshot", format="png")["data"]))


class Browser:
    """A headless browser; `page` opens another page in it."""

    def __init__(self, home: Path) -> None:
        self._home = home
        switches = ["--headless", "--no-sandbox", "--disable-gpu", "--remote-debugging-port=0", "--no-first-run"]
        switches += ["--window-size=1024,768", "--touch-events=enabled", "--disable-dev-shm-usage"]
        self._process = subprocess.Popen(
            [CHROMIUM, *switches, f"--user-data-dir={home}", "about:blank"],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        port, until = home / "DevToolsActivePort", time.monotonic() + 30
        while not (port.is_file() and port.read_text().strip()):
            assert time.monotonic() < until and self._process.poll() is None, "the browser did not start"
            time.sleep(0.05)
        self._at = f"127.0.0.1:{port.read_text().splitlines()[0]}"

    def page(self) -> Page:
        """The first page of the browser."""
        with urlopen(f"http://{self._at}/json/list", timeout=60) as answer:
            pages = [one for one in json.load(answer) if one["type"] == "page"]
        return Page(pages[0]["webSocketDebuggerUrl"])

    def close(self) -> None:
        self._process.kill()
        self._process.wait()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    if not CHROMIUM:
        pytest.skip("chromium is not installed; the page is not tried in a browser")
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as home:
        opened = Browser(Path(home))
        yield opened
        opened.close()


@pytest.fixture
def page(browser: Browser, server: Server, keeper: Keeper) -> Iterator[Page]:
    """The viewing page, open on the first item."""
    opened = browser.page()
    opened.open(keeper.showing.address)
    opened.wait_for("document.body && document.body.dataset.shown")
    yield opened
    opened.close()
