"""The program, loaded once and then forked for each terminal of the tests: more than half of a start is loading.

Run as `warm.py FD`, it waits at that socket. Each message is a start: JSON of arguments, environment and folder, with
two descriptors, the terminal, and a socket that hears the number of the process and, when it has ended, its status. The
forked process takes the terminal as its own and is from there on what `python -c PROGRAM` would be: its streams, its
environment and its arguments are new, and nothing has been loaded in it but modules, and the words of dates, which each
sitting gathers beside the first keys. It ends as any Python does.
"""

import gc
import importlib
import json
import os
import select
import signal
import socket
import sys
from contextlib import suppress

MODULES = ("boxlore.cli.main", "boxlore.cli.commands.sit", "boxlore.cli.commands.survey", "boxlore.tui.app",
           "boxlore.tui.screens.survey", "textual.drivers.linux_driver")  # fmt: skip


def _become(said: dict[str, object], tty: int) -> None:
    """Take the terminal, and be started anew."""
    os.login_tty(tty)
    os.environ.clear()
    os.environ.update(said["environment"])  # type: ignore[call-overload]  # JSON of strings
    os.chdir(str(said["folder"]))
    if said["deaf"]:
        signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGHUP})
    sys.argv[:] = ["-c", *said["arguments"]]  # type: ignore[misc]  # the same
    sys.stdin = sys.__stdin__ = os.fdopen(0, closefd=False)  # type: ignore[misc]
    sys.stdout = sys.__stdout__ = os.fdopen(1, "w", 1, closefd=False)  # type: ignore[misc]
    sys.stderr = sys.__stderr__ = os.fdopen(2, "w", 1, closefd=False)  # type: ignore[misc]


def _serve(door: socket.socket) -> bool:
    """Start what is asked for, and tell what has ended. True in a process that has been started; False at the end."""
    waiting: dict[int, socket.socket] = {}
    woken, wakes = os.pipe()
    os.set_blocking(wakes, False)
    signal.signal(signal.SIGCHLD, lambda *_: None)
    signal.set_wakeup_fd(wakes)
    while True:
        ready = select.select([door, woken], [], [])[0]
        if woken in ready:
            os.read(woken, 512)
        while waiting:
            ended, status = os.waitpid(-1, os.WNOHANG)
            if not ended:
                break
            with waiting.pop(ended) as news, suppress(OSError):  # nobody may listen any more
                news.send(status.to_bytes(4, "little"))
        if door not in ready:
            continue
        if not door.recv(1, socket.MSG_PEEK):
            return False
        message, (tty, heard), *_ = socket.recv_fds(door, 1 << 20, 2)
        news, pid = socket.socket(fileno=heard), os.fork()
        if pid == 0:
            signal.set_wakeup_fd(-1)
            signal.signal(signal.SIGCHLD, signal.SIG_DFL)
            for ours in (door, news, *waiting.values()):
                ours.close()
            os.close(woken)
            os.close(wakes)
            _become(json.loads(message), tty)
            return True
        os.close(tty)
        news.send(pid.to_bytes(4, "little"))
        waiting[pid] = news


if __name__ == "__main__":
    for _name in MODULES:
        importlib.import_module(_name)
    importlib.import_module("boxlore.core.dates.lexicon").trie()
    gc.collect()
    gc.freeze()
    if _serve(socket.socket(fileno=int(sys.argv[1]))):
        from boxlore.cli.main import main

        main()
