"""Slow and keyless connections keep nobody out (rules of our own; the request as RFC 9112 has it)."""

import socket
from typing import Any

import pytest

from boxlore.viewing import connections
from boxlore.viewing.connections import AT_MOST, OF_ONE_ADDRESS, Connections
from boxlore.viewing.server import Server


def head(server: Server, path: str = "/", *, key: bool = True) -> bytes:
    cookie = f"Cookie: {server.cookie}={server.key}\r\n" if key else ""
    return f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{server.address.port}\r\n{cookie}\r\n".encode()


def line_to(server: Server) -> socket.socket:
    return socket.create_connection(("127.0.0.1", server.address.port), timeout=20)


def is_closed(line: socket.socket) -> bool:
    """Waits until the other side closes; False for an answer instead."""
    try:
        return line.recv(1) == b""
    except ConnectionResetError:
        return True


def test_many_who_say_nothing_keep_nobody_out(server: Server) -> None:
    idle = [line_to(server) for _ in range(AT_MOST + 2)]
    for line in idle:
        line.sendall(b"G")
    with line_to(server) as keeper:
        keeper.sendall(head(server))
        assert keeper.recv(15) == b"HTTP/1.1 200 OK"
    assert is_closed(idle[0])
    for line in idle:
        line.close()


@pytest.mark.parametrize("begun", [b"", b"GET / HTTP/1.1\r\nHost: "])
def test_a_request_that_does_not_come_whole_is_cut(
    server: Server, monkeypatch: pytest.MonkeyPatch, begun: bytes
) -> None:
    monkeypatch.setattr(connections, "KEYLESS", 0.2)
    with line_to(server) as line:
        line.sendall(begun)
        assert is_closed(line)


def test_a_body_that_does_not_come_whole_is_cut(server: Server, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(connections, "KEYLESS", 0.5)
    origin = f"Origin: http://127.0.0.1:{server.address.port}\r\nContent-Length: 20\r\n\r\n".encode()
    with line_to(server) as line:
        line.sendall(head(server, "/tap").replace(b"GET", b"POST")[:-2] + origin + b'{"side"')
        assert is_closed(line)


def test_one_that_has_shown_the_key_may_ask_again(server: Server, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(connections, "KEYLESS", 0.2)
    with line_to(server) as line:
        for _ in range(2):
            line.sendall(head(server, "/nothing").replace(b"/nothing", b"/page.css"))
            answer = b""
            while b"\r\n\r\n" not in answer:
                answer += line.recv(1)
            assert answer.startswith(b"HTTP/1.1 200 OK")
            size = int(answer.split(b"Content-Length: ")[1].split(b"\r\n")[0])
            while size:
                size -= len(line.recv(size))
            for _ in range(5):
                server.connections.close_late()
        monkeypatch.setattr(connections, "IDLE", 0.1)
        line.sendall(head(server, "/page.css"))
        while line.recv(4096):
            pass  # until it is closed, as nothing more is asked


@pytest.fixture
def lines() -> Any:
    opened: list[socket.socket] = []

    def line() -> socket.socket:
        opened.extend(socket.socketpair())
        return opened[-2]

    yield line
    for each in opened:
        each.close()


def test_who_goes_first(lines: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(connections, "GRACE", -1.0)
    many = Connections()
    own = lines()
    assert many.enter(own, "192.0.2.1")
    many.has_shown_the_key(own)
    flood = [lines() for _ in range(OF_ONE_ADDRESS + 1)]
    assert all(many.enter(line, "192.0.2.2") for line in flood)
    assert set(many._open) == {own, *flood[1:]}, "the oldest of that address"
    others = [lines() for _ in range(AT_MOST - OF_ONE_ADDRESS - 1)]
    assert all(many.enter(line, f"198.51.100.{at}") for at, line in enumerate(others))
    newest = lines()
    assert len(many._open) == AT_MOST and many.enter(newest, "203.0.113.1")
    assert flood[1] not in many._open and len(many._open) == AT_MOST
    for line in list(many._open):
        many.has_shown_the_key(line)
    assert not many.enter(lines(), "203.0.113.2")
    assert many.enter(lines(), "192.0.2.3") is False
    many.leave(own)
    many.has_shown_the_key(own)
    assert many.enter(lines(), "203.0.113.2")
