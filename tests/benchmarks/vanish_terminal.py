"""A terminal that vanishes at random moments of a sitting: the program ends by itself, and keeps no processor busy.

    python tests/benchmarks/vanish_terminal.py [--moments 100] [--seed 7] [--only terminal|plain|job] [--latest 9]

Each round runs the program in a pty of its own, types into it, and closes the pty's other side at a random moment up to
`--latest` seconds; half of the rounds hear no SIGHUP, as when a connection drops. The program must end: the sitting and
the plain sitting within two seconds, but for what a start under load takes; a job that hears nothing may finish. One
that is still there after PATIENCE seconds is a fault, and the database must be whole. Needs a system with ptys.
"""

import argparse
import os
import pty
import random
import shutil
import signal
import sqlite3
import sys
import tempfile
import time
from contextlib import suppress
from pathlib import Path

PROGRAM = "from boxlore.cli.entry import run; run()"
PATIENCE = 30.0
KEYS = (b"a", b" ", b"word", b"\r", b"\x1b[6~", b"hello ")
MODES = {
    "terminal": ("sit", "--narrator", "Leida", "--no-viewing"),
    "plain": ("sit", "--plain", "--no-viewing"),
    "job": ("copies", "OUT"),
}


def run_in_pty(arguments: list[str], *, deaf: bool) -> tuple[int, int]:
    """The child's process id, and our side of its terminal."""
    pid, side = pty.fork()
    if pid == 0:
        if deaf:
            signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGHUP})
        os.environ["TERM"] = "xterm-256color"
        os.execv(sys.executable, [sys.executable, "-c", PROGRAM, *arguments])
    os.set_blocking(side, False)
    return pid, side


def use(side: int, seconds: float, chance: random.Random, *, types: bool) -> None:
    """Read what is drawn, and type, for so long."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        with suppress(OSError):
            os.read(side, 65536)
        if types and chance.random() < 0.2:
            with suppress(OSError):
                os.write(side, chance.choice(KEYS))
        time.sleep(0.03)


def seconds_until_end(pid: int) -> float:
    """How long the child lives on; PATIENCE for one that had to be killed."""
    begun = time.monotonic()
    while (taken := time.monotonic() - begun) < PATIENCE:
        if os.waitpid(pid, os.WNOHANG)[0]:
            return taken
        time.sleep(0.02)
    os.kill(pid, signal.SIGKILL)
    os.waitpid(pid, 0)
    return PATIENCE


def main() -> int:
    asked = argparse.ArgumentParser()
    asked.add_argument("--moments", type=int, default=100)
    asked.add_argument("--seed", type=int, default=7)
    asked.add_argument("--only", choices=MODES)
    asked.add_argument("--latest", type=float, default=9.0)
    given = asked.parse_args()
    chance, faults = random.Random(given.seed), 0
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder, "family")
        os.spawnv(os.P_WAIT, sys.executable, [sys.executable, "-c", PROGRAM, "demo", str(home)])
        for mode in [given.only] if given.only else MODES:
            taken: list[float] = []
            for at in range(given.moments):
                out = Path(folder, "out")
                shutil.rmtree(out, ignore_errors=True)
                arguments = [str(out) if part == "OUT" else part for part in MODES[mode]]
                pid, side = run_in_pty(["-c", str(home), *arguments], deaf=at % 2 == 1)
                use(side, chance.uniform(0.2, given.latest), chance, types=mode != "job")
                os.close(side)
                taken.append(seconds_until_end(pid))
            stuck = sum(seconds >= PATIENCE for seconds in taken)
            with sqlite3.connect(home / "collection.sqlite") as db:
                whole = db.execute("PRAGMA integrity_check").fetchone() == ("ok",)
            faults += stuck + (not whole)
            median = sorted(taken)[len(taken) // 2]
            print(f"{mode}: {len(taken)} terminals gone; ended after {median:.2f} s, at most {max(taken):.2f} s")
            print(f"  {stuck} had to be killed; the database is {'whole' if whole else 'DAMAGED'}", flush=True)
    return 1 if faults else 0


sys.exit(main())
