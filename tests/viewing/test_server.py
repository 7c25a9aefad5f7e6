"""Who is let in, and what is refused.

Rules: RFC 9110 (Host, 7.2; 413, 15.5.14), RFC 6265 (HttpOnly), Fetch (Origin).
"""

import io
import json
import re
import socket
from http.client import HTTPConnection
from pathlib import Path
from typing import Any

import pytest
from PIL import Image

from boxlore.cli.commands.sit import shown
from boxlore.core.errors import CouldNot
from boxlore.core.statements import Kind, Subject
from boxlore.tasks.telling.statements import Teller, Telling
from boxlore.viewing import server as module
from boxlore.viewing.addresses import Address
from boxlore.viewing.qr_code import in_half_blocks
from boxlore.viewing.server import LOOKERS_AT_MOST, Server, serving


class Caller:
    """Asks as a browser would, with the cookie once it has it."""

    def __init__(self, server: Server, *, cookie: bool = True) -> None:
        self.server = server
        self.cookie = f"{server.cookie}={server.key}" if cookie else ""

    def ask(self, path: str, method: str = "GET", body: bytes | None = None, **headers: str) -> tuple[int, bytes, Any]:
        line = HTTPConnection("127.0.0.1", self.server.address.port, timeout=10)
        sent = {"Host": f"127.0.0.1:{self.server.address.port}", **({"Cookie": self.cookie} if self.cookie else {})}
        if method == "POST":
            sent["Origin"] = f"http://127.0.0.1:{self.server.address.port}"
        line.putrequest(method, path, skip_host=True, skip_accept_encoding=True)
        if body is not None:
            sent["Content-Length"] = str(len(body))
        for name, value in (sent | {name.replace("_", "-"): value for name, value in headers.items()}).items():
            line.putheader(name, value)
        line.endheaders(body)
        answer = line.getresponse()
        try:
            streams = answer.status == 200 and path == "/events"
            return answer.status, b"" if streams else answer.read(), answer.headers
        finally:
            line.close()


@pytest.fixture
def caller(server: Server) -> Caller:
    return Caller(server)


def test_the_key_is_given_once_and_becomes_a_cookie(server: Server) -> None:
    status, _, headers = Caller(server, cookie=False).ask(f"/?key={server.key}")
    assert (status, headers["Location"]) == (303, "/")
    assert "HttpOnly" in headers["Set-Cookie"]
    assert "SameSite=Lax" in headers["Set-Cookie"]
    assert Caller(server).ask("/")[0] == 200


PATHS = ["/", "/page.js", "/events", "/picture/1/screen", "/nothing"]


@pytest.mark.parametrize("path", [*PATHS, "/?key=", "/?key=wrong", "/?key=%C3%A9"])
def test_no_key_no_page(server: Server, path: str) -> None:
    status, body, _ = Caller(server, cookie=False).ask(path)
    assert status == 403
    assert b"Ask the keeper" in body


def test_a_wrong_cookie_is_none(server: Server) -> None:
    for cookie in (f"{server.cookie}=wrong", f"other={server.key}", "=;=,;;", f"{server.cookie}=é"):
        caller = Caller(server, cookie=False)
        assert caller.ask("/", Cookie=cookie)[0] == 403


@pytest.mark.parametrize("host", ["evil.example", "evil.example:80", "127.0.0.1", "127.0.0.1:1", "", "0.0.0.0:80"])
def test_a_forged_host_is_refused(caller: Caller, host: str) -> None:
    for path in PATHS:
        assert caller.ask(path, Host=host)[0] == 403
    assert caller.ask("/tap", "POST", b"{}", Host=host)[0] == 403


TRAVERSAL = [
    "/../collection.sqlite",
    "/picture/../../collection.sqlite",
    "/picture/1/../../x",
    "/picture/%2e%2e/screen",
    "/picture/1/screen/..",
    "/picture/-1/screen",
    "/picture/1e1/screen",
    "/picture/%D9%A3/screen",
    "/picture/99999999999999999999/screen",
    "/picture/1/huge",
    "/page/page.html",
    "/page.css/../server.py",
    "//etc/passwd",
    "/picture/999/screen",
]


@pytest.mark.parametrize("path", TRAVERSAL)
def test_there_is_no_path_to_climb(caller: Caller, path: str) -> None:
    status, body, _ = caller.ask(path)
    assert status == 404
    assert body == b"There is nothing here.\n"


def test_an_oversize_body_is_refused_unread(caller: Caller) -> None:
    assert caller.ask("/tap", "POST", b"x" * 3000)[0] == 413
    assert caller.ask("/tap", "POST", None, Content_Length="999999999999999999999")[0] == 413
    assert caller.ask("/tap", "POST", None, Content_Length="-1")[0] == 411
    assert caller.ask("/tap", "POST", None)[0] == 411


BAD = [
    b"",
    b"[]",
    b"{",
    b"\xff",
    b"[" * 2000,
    b'{"side": "1", "x": 0.5, "y": 0.5}',
    b'{"side": 1, "x": 2, "y": 0.5}',
    b'{"side": true, "x": 0.5, "y": 0.5}',
    b'{"side": 1, "x": NaN, "y": 0.5}',
    b'{"side": 1, "x": null, "y": 0.5}',
]


@pytest.mark.parametrize("body", BAD)
def test_a_touch_that_cannot_be_meant_is_refused(caller: Caller, keeper: Any, body: bytes) -> None:
    assert caller.ask("/tap", "POST", body)[0] == 400
    assert not keeper.sitting.markers.of(keeper.record)


@pytest.mark.parametrize("origin", ["http://evil.example", "null", "", "https://127.0.0.1"])
def test_only_our_own_page_may_touch(caller: Caller, keeper: Any, origin: str) -> None:
    told = json.dumps({"side": keeper.showing.view.sides[0].id, "x": 0.5, "y": 0.5}).encode()
    assert caller.ask("/tap", "POST", told, Origin=origin)[0] == 403
    assert not keeper.sitting.markers.of(keeper.record)
    assert caller.ask("/tap", "POST", told)[0] == 200
    assert len(keeper.sitting.markers.of(keeper.record)) == 1


def test_a_touch_on_a_picture_no_longer_out_is_refused(caller: Caller, keeper: Any) -> None:
    told = json.dumps({"side": keeper.showing.view.sides[0].id, "x": 0.5, "y": 0.5}).encode()
    keeper.out(2)
    assert caller.ask("/tap", "POST", told)[0] == 409


def test_pictures_carry_no_embedded_words(caller: Caller, keeper: Any) -> None:
    scan = keeper.record.scans[0]
    assert b"PRIVATE WORDS" in (keeper.sitting.collection.folder / scan.path).read_bytes()
    _, data, headers = caller.ask(f"/picture/{keeper.showing.view.sides[0].id}/close")
    assert headers["Content-Type"] == "image/jpeg"
    assert b"PRIVATE" not in data
    assert not Image.open(io.BytesIO(data)).getexif()


def test_every_answer_says_what_a_browser_may_do_with_it(caller: Caller) -> None:
    for path in ("/", "/page.css", "/page.js", "/nothing"):
        headers = caller.ask(path)[2]
        assert headers["Cache-Control"] == "no-store"
        assert headers["Referrer-Policy"] == "no-referrer"
        assert "default-src 'none'" in headers["Content-Security-Policy"]
        assert "unsafe" not in headers["Content-Security-Policy"]
    page = caller.ask("/")[1].decode()
    assert not re.search(r"<script>|style=|onclick", page)


def test_a_care_note_covers_the_picture_until_it_is_heard(caller: Caller, keeper: Any) -> None:
    teller = Teller(keeper.sitting.collection)
    teller.tell(Subject(Kind.ITEM, keeper.record.id), "care", "A funeral. Ask first.", Telling())
    keeper.again()
    side = keeper.showing.view.sides[0].id
    assert keeper.showing.view.care == "A funeral. Ask first."
    assert caller.ask(f"/picture/{side}/screen")[0] == 404
    assert caller.ask("/tap", "POST", json.dumps({"side": side, "x": 0.5, "y": 0.5}).encode())[0] == 409
    assert caller.ask("/uncover", "POST", b'{"version": -1}')[0] == 200
    assert keeper.showing.view.covered
    caller.ask("/uncover", "POST", json.dumps({"version": keeper.showing.view.version}).encode())
    assert caller.ask(f"/picture/{side}/screen")[0] == 200
    keeper.out(2)
    keeper.out(1)
    assert not keeper.showing.view.covered


def test_the_page_says_only_what_the_family_may_see(keeper: Any) -> None:
    teller, item = Teller(keeper.sitting.collection), Subject(Kind.ITEM, keeper.record.id)
    teller.tell(item, "story", "Only the keeper knows of the debt.", Telling(audience="keeper"))
    teller.tell(item, "story", "The regatta.", Telling(audience="family"))
    keeper.again()
    assert "regatta" in keeper.showing.view.caption
    assert "debt" not in str(keeper.showing.view)


def test_enough_lookers_are_enough(server: Server, caller: Caller) -> None:
    streams = []
    for _ in range(LOOKERS_AT_MOST):
        line = socket.create_connection(("127.0.0.1", server.address.port), timeout=10)
        host = f"127.0.0.1:{server.address.port}"
        line.sendall(f"GET /events HTTP/1.1\r\nHost: {host}\r\nCookie: {caller.cookie}\r\n\r\n".encode())
        assert b"200 OK" in line.recv(64)
        streams.append(line)
    assert caller.ask("/events")[0] == 503
    for line in streams:
        line.close()


def test_events_follow(server: Server, caller: Caller, keeper: Any) -> None:
    with socket.create_connection(("127.0.0.1", server.address.port), timeout=10) as line:
        host = f"127.0.0.1:{server.address.port}"
        line.sendall(f"GET /events HTTP/1.1\r\nHost: {host}\r\nCookie: {caller.cookie}\r\n\r\n".encode())
        stream = line.makefile("rb")

        def told() -> dict[str, Any]:
            for row in stream:
                if row.startswith(b"data: "):
                    return dict(json.loads(row[6:]))
            raise AssertionError("the stream ended")

        assert told()["number"] == "TRA-0001"
        keeper.out(2)
        assert told()["number"] == "TRA-0002"
        keeper.showing.say("A rest.")
        assert told()["message"] == "A rest."


def test_the_page_on_the_network_is_closed_when_this_machine_is_chosen(
    keeper: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    """And the page of this machine goes on meanwhile. 127.0.0.2 stands for the address on the network here."""
    monkeypatch.setattr(module, "of_this_machine", lambda: "127.0.0.2")
    with shown(lan=True, page=True) as showing:
        showing.collection = keeper.showing.collection
        showing.opening()
        abroad, code = showing.address, showing.code
        host = abroad.removeprefix("http://").partition("/")[0]
        line = HTTPConnection(host, timeout=10)
        line.request("GET", "/" + abroad.rpartition("/")[2])
        kept = line.getresponse()
        assert kept.status == 303 and kept.read() == b""
        showing.to_network(False)
        assert abroad.startswith("http://127.0.0.2:") and code
        assert showing.address.startswith("http://127.0.0.1:") and not showing.code
        assert line.sock.recv(1) == b""  # the connection that was let in is closed too
        line.close()
        with pytest.raises(ConnectionRefusedError):
            line.connect()
        here = showing.address
        showing.to_network(True)
        assert showing.address.startswith("http://127.0.0.2:") and showing.code
        showing.to_network(False)
        assert showing.address == here
    assert not showing.address


def test_a_port_that_cannot_be_had_is_said(keeper: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "LOOPBACK", "192.0.2.77")  # an address kept for documentation is never ours
    with pytest.raises(CouldNot, match="cannot be served"), serving(keeper.showing):
        pass


def test_the_code_can_be_read_back() -> None:
    """Outside truth: the matrix that segno makes for the same address, module for module (ISO/IEC 18004)."""
    segno = pytest.importorskip("segno")
    link = Address("192.168.1.20", 40123).link("k" * 22)
    wanted = [list(row) for row in segno.make(link, error="l", micro=False).matrix_iter(border=2)]
    lines = in_half_blocks(link).splitlines()
    halves = {"█": (0, 0), "▀": (0, 1), "▄": (1, 0), " ": (1, 1)}
    rows = [[halves[cell][half] for cell in line] for line in lines for half in (0, 1)]
    assert rows[: len(wanted)] == [[int(bool(one)) for one in row] for row in wanted]
    assert Path(module.__file__).with_name("page").is_dir()
