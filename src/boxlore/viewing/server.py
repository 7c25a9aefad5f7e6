"""The page that the narrator looks at: a small web server that runs beside the sitting, for one or a few screens.

The rules that keep others out:
- A random key stands in the address once and then in an HttpOnly cookie; both are compared in constant time.
- Only requests whose Host is our own are answered, against DNS rebinding (see `addresses`).
- A request that changes something must come from our own page (Origin; Fetch, 3.2), with a body of at most 2 KB.
- A picture is asked for by a number, never by a path. The browser is told to store nothing.
- The number of lookers (open screens) and of connections is limited, and every request has a time limit; those who
  have not shown the key go first (see `connections`).

The page hears of each new picture by Server-Sent Events (HTML, 9.2).
"""

import json
import re
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import asdict
from html import escape
from http import HTTPStatus
from http.cookies import CookieError, SimpleCookie
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from importlib import resources
from secrets import compare_digest, token_urlsafe
from typing import Any
from urllib.parse import parse_qs, urlsplit

from boxlore.core.errors import CouldNot
from boxlore.core.wording.catalogue import Say
from boxlore.tasks.sitting.tellers_page import OutlineTouch, Showing, View
from boxlore.viewing.addresses import LOOPBACK, Address, of_this_machine
from boxlore.viewing.connections import Connections
from boxlore.viewing.qr_code import in_half_blocks

BODY_AT_MOST = 2048
LOOKERS_AT_MOST = 8
BEAT = 10.0
"""The most seconds between two messages on a stream. Without them a looker who has gone would not be noticed."""

FILES = {
    "/": ("page.html", "text/html; charset=utf-8"),
    "/page.css": ("page.css", "text/css; charset=utf-8"),
    "/page.js": ("page.js", "text/javascript; charset=utf-8"),
}

HEADERS = {
    "Content-Security-Policy": "default-src 'none'; img-src 'self' blob:; script-src 'self'; style-src 'self'; "
    "connect-src 'self'; form-action 'none'; frame-ancestors 'none'; base-uri 'none'",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cache-Control": "no-store",
}


_MESSAGE = re.compile(r"\{\{say: (.*?)\}\}")


def page_file(name: str, say: Say) -> str:
    """A file of the page in the language of whoever looks. Its messages stand in it as `{{say: Show the picture}}`, in
    HTML and in the strings of the script alike: so no translation holds a mark that would end either."""
    text = resources.files("boxlore.viewing").joinpath("page", name).read_text(encoding="utf-8")
    said = _MESSAGE.sub(lambda message: escape(say(message[1]).replace("\\", "")), text)
    return said.replace("{{language}}", say.language)


class Server(ThreadingHTTPServer):
    """The server, with what its handlers share. Its threads are daemons, so they never keep the program from ending."""

    daemon_threads = True
    block_on_close = False
    request_queue_size = 32
    timeout = 0.2
    """Seconds after which late connections are closed, where nobody asks for anything."""

    def __init__(self, showing: Showing, host: str, port: int = 0) -> None:
        super().__init__((host, port), Handler)
        self.showing = showing
        self.key = token_urlsafe(12)
        self.address = Address(host, self.server_address[1])
        self.cookie = f"boxlore_{self.address.port}"
        self.connections = Connections()
        self._counting = threading.Lock()
        self._over = False

    def serve(self) -> None:
        """Answer requests until `stop`."""
        while not self._over:
            self.handle_request()
            self.connections.close_late()

    @property
    def is_over(self) -> bool:
        """Whether nobody is answered any more."""
        return self._over

    def stop(self, serving: threading.Thread) -> None:
        """Let the thread that serves end at once: a connection wakes it. The keeper leaves without a wait, and whoever
        looked is let go."""
        self._over = True
        with suppress(OSError), socket.create_connection((self.address.host, self.address.port), timeout=1):
            pass
        serving.join()
        self.connections.close_all()
        self.showing.wake()

    def process_request(self, request: Any, client_address: Any) -> None:
        if not self.connections.enter(request, client_address[0]):
            self.shutdown_request(request)
            return
        super().process_request(request, client_address)

    def process_request_thread(self, request: Any, client_address: Any) -> None:
        try:
            super().process_request_thread(request, client_address)
        finally:
            self.connections.leave(request)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """Say nothing: a looker who disconnects is no fault, and the terminal is used by the sitting."""

    @contextmanager
    def looking(self) -> Iterator[bool]:
        """Count one more looker while the block runs, if there is room; yields whether there is."""
        with self._counting:
            room = self.showing.lookers < LOOKERS_AT_MOST
            self.showing.lookers += room
        try:
            yield room
        finally:
            with self._counting:
                self.showing.lookers -= room


class Handler(BaseHTTPRequestHandler):
    """Answers one request. A refusal carries a sentence that tells nothing of the collection."""

    server: Server
    protocol_version = "HTTP/1.1"
    server_version = "Boxlore"
    sys_version = ""
    timeout = 20

    def handle_one_request(self) -> None:
        super().handle_one_request()
        self.server.connections.waiting(self.connection)

    def do_GET(self) -> None:
        self.server.connections.answering(self.connection)
        path = urlsplit(self.path)
        if not self._host_is_ours():
            return
        if path.path == "/" and path.query:
            self._let_in(parse_qs(path.query).get("key", [""])[0])
            return
        if not self._has_cookie():
            return
        if path.path in FILES:
            name, kind = FILES[path.path]
            self._answer(page_file(name, self.server.showing.words).encode(), kind)
        elif path.path == "/events":
            self._follow()
        else:
            self._picture(path.path)

    def do_POST(self) -> None:
        if not self._host_is_ours() or not self._has_cookie() or not self._from_our_page():
            return
        message = self._body()
        self.server.connections.answering(self.connection)
        if message is None:
            return
        if self.path == "/tap":
            self._tap(message)
        elif self.path == "/outline":
            self._outline(message)
        elif self.path == "/uncover":
            view = self.server.showing.view
            if message.get("version") == view.version:
                self.server.showing.uncover(view.item)
                self.server.showing.uncovered()
            self._answer(b"{}", "application/json")
        else:
            self._refuse(HTTPStatus.NOT_FOUND, "There is nothing here.")

    # who is answered

    def _host_is_ours(self) -> bool:
        if self.headers.get("Host", "") in self.server.address.accepted_hosts:
            return True
        self._refuse(HTTPStatus.FORBIDDEN, "This page is not served under that name.")
        return False

    def _let_in(self, key: str) -> None:
        if not compare_digest(key.encode(), self.server.key.encode()):
            self._refuse(HTTPStatus.FORBIDDEN, "Ask the keeper for the address again: it is new at every start.")
            return
        self.server.connections.has_shown_the_key(self.connection)
        self._begin(HTTPStatus.SEE_OTHER)
        self.send_header("Location", "/")
        self.send_header("Set-Cookie", f"{self.server.cookie}={self.server.key}; Path=/; HttpOnly; SameSite=Lax")
        self.send_header("Content-Length", "0")
        self.end_headers()

    def _has_cookie(self) -> bool:
        jar: SimpleCookie = SimpleCookie()
        with suppress(CookieError):
            jar.load(self.headers.get("Cookie", ""))
        cookie = jar.get(self.server.cookie)
        if cookie is not None and compare_digest(cookie.value.encode(), self.server.key.encode()):
            self.server.connections.has_shown_the_key(self.connection)
            return True
        self._refuse(HTTPStatus.FORBIDDEN, "Ask the keeper for the address again: it is new at every start.")
        return False

    def _from_our_page(self) -> bool:
        origin = self.headers.get("Origin", "")
        if origin.removeprefix("http://") in self.server.address.accepted_hosts and origin.startswith("http://"):
            return True
        self._refuse(HTTPStatus.FORBIDDEN, "Only the page itself may do that.")
        return False

    def _body(self) -> dict[str, Any] | None:
        """The JSON object of the request's body; None after a refusal."""
        length = self.headers.get("Content-Length", "")
        if not length.isascii() or not length.isdigit():
            self._refuse(HTTPStatus.LENGTH_REQUIRED, "Say how long it is.")
            return None
        if len(length) > 9 or int(length) > BODY_AT_MOST:
            self._refuse(HTTPStatus.REQUEST_ENTITY_TOO_LARGE, "That is too long.")
            return None
        try:
            message = json.loads(self.rfile.read(int(length)))
        except (ValueError, RecursionError):
            message = None
        if not isinstance(message, dict):
            self._refuse(HTTPStatus.BAD_REQUEST, "That cannot be read.")
            return None
        return message

    # what is answered

    def _picture(self, path: str) -> None:
        """Answer `/picture/NUMBER/SIZE`."""
        empty, kind, number, size = [*path.split("/"), "", "", "", ""][:4]
        is_picture = not empty and kind == "picture" and path.count("/") == 3
        data = None
        if is_picture and number.isascii() and number.isdigit() and len(number) < 10:
            data = self.server.showing.picture(int(number), size)
        if data is None:
            self._refuse(HTTPStatus.NOT_FOUND, "There is nothing here.")
        else:
            self._answer(data, "image/jpeg")

    def _tap(self, message: dict[str, Any]) -> None:
        """Take a tap on the picture: `side` its number, `x` and `y` from 0 to 1."""
        side, x, y = message.get("side"), message.get("x"), message.get("y")
        if type(side) is not int or not _in_unit(x) or not _in_unit(y):
            self._refuse(HTTPStatus.BAD_REQUEST, "That is no place on the picture.")
        elif self.server.showing.tap(side, float(x or 0), float(y or 0)):
            self._answer(b"{}", "application/json")
        else:
            self._refuse(HTTPStatus.CONFLICT, "Another picture is out by now.")

    def _outline(self, message: dict[str, Any]) -> None:
        """Take what was done to the outlines of a sheet: `side` its number, `do` what; of `put`, the outline's number,
        the corner in hand (-1: all of it), and eight numbers from 0 to 1."""
        side, do, corners = message.get("side"), message.get("do"), message.get("corners", [])
        outline, corner = message.get("outline", -1), message.get("corner", -1)
        numbers = [number for number in (side, outline, corner) if type(number) is int and -1 <= number < 1000]
        lies = isinstance(corners, list) and len(corners) == 8 * (do == "put") and all(map(_in_unit, corners))
        if do not in ("put", "add", "remove", "undo", "take") or len(numbers) != 3 or not lies or numbers[2] > 3:
            self._refuse(HTTPStatus.BAD_REQUEST, "That is no outline.")
        elif self.server.showing.outline(
            numbers[0],
            OutlineTouch(do, numbers[1], numbers[2], tuple(map(float, corners)), message.get("begun") is True),
        ):
            self._answer(b"{}", "application/json")
        else:
            self._refuse(HTTPStatus.CONFLICT, "Another picture is out by now.")

    def _follow(self) -> None:
        """Send each view as soon as there is a new one, and a comment at least every BEAT seconds."""
        with self.server.looking() as room:
            if not room:
                self._refuse(HTTPStatus.SERVICE_UNAVAILABLE, "Enough screens are looking already.")
                return
            self._begin(HTTPStatus.OK)
            self.send_header("Content-Type", "text/event-stream; charset=utf-8")
            self.send_header("Connection", "close")
            self.end_headers()
            self.close_connection = True
            self.wfile.write(b"retry: 1000\n\n")
            version = -1
            while not self.server.is_over:
                view = self.server.showing.wait(version, BEAT, lambda: self.server.is_over)
                version = view.version if view else version
                self.wfile.write(as_event(view) if view else b": here\n\n")

    # how it is answered

    def _begin(self, status: HTTPStatus) -> None:
        self.send_response(status)
        for name, value in HEADERS.items():
            self.send_header(name, value)

    def _answer(self, data: bytes, kind: str) -> None:
        self._begin(HTTPStatus.OK)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(data)))
        self.end_headers()
        self.wfile.write(data)

    def _refuse(self, status: HTTPStatus, why: str) -> None:
        self.close_connection = True  # a body that was not read must not be taken for the next request
        self._begin(status)
        data = f"{why}\n".encode()
        self.send_header("Content-Type", "text/plain; charset=utf-8")
        self.send_header("Content-Length", str(len(data)))
        self.send_header("Connection", "close")
        self.end_headers()
        self.wfile.write(data)

    def log_message(self, format: str, *values: Any) -> None:
        """Log nothing: the terminal is used by the sitting."""


def _in_unit(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool) and 0 <= value <= 1


def as_event(view: View) -> bytes:
    """One view as a Server-Sent Event. Its id is the view's version, which a browser sends when it connects again."""
    fields = {name: value for name, value in asdict(view).items() if name != "item"}
    return f"id: {view.version}\ndata: {json.dumps(fields, ensure_ascii=False)}\n\n".encode()


@contextmanager
def serving(showing: Showing, *, lan: bool = False) -> Iterator[Server]:
    """Serve the page while the block runs; sets `address` and `code` of `showing`, which are as before after it.

    `lan` serves it to the local network, with a QR code of the address: a camera beside this machine could do nothing
    with one that only this machine answers. Raises CouldNot when it cannot be served.
    """
    host = of_this_machine() if lan else LOOPBACK
    try:
        server = Server(showing, host)
    except OSError as error:
        raise CouldNot(f"The viewing page cannot be served at {host}.", "Try it with --no-viewing.") from error
    thread = threading.Thread(target=server.serve, name="boxlore-viewing", daemon=True)
    thread.start()
    before = showing.address, showing.code
    showing.address = server.address.link(server.key)
    showing.code = in_half_blocks(showing.address) if lan else ""
    try:
        yield server
    finally:
        showing.address, showing.code = before
        server.stop(thread)
        server.server_close()
