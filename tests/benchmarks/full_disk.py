"""A disk that gets full in every command that writes, then room again and the same command again.

    python tests/benchmarks/full_disk.py [--runs 60] [--seed 7] [--only transfer] [--demo FOLDER]

The collection and the folder of the output lie on a disk in memory (tmpfs), which is given a random part of the room
that a whole run needs. After each run:

- it ended with a sentence, no traceback, and not as if all were well;
- the database is whole, with every statement that was there; no scan has changed; nothing is left in the making, and
  nothing closed lies outside its folder;
- with room again the same command ends as an undisturbed run does, with the same files.

Such a disk can be made by root, or where `unshare --map-root-user --mount` may be used; elsewhere it says so and ends.
"""

import argparse
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from kill_commands import JOBS, Job, Round, make_fresh, was_done

from boxlore.disk.unfinished import remains

LARGE = 1 << 30
"""Bytes of the disk while a round is prepared."""


def resize(disk: Path, size: int, *, first: bool = False) -> None:
    """Make the disk in memory, or give it another size in bytes."""
    how = f"size={size}" if first else f"remount,size={size}"
    subprocess.run(["mount", "-t", "tmpfs", "-o", how, "tmpfs", str(disk)], check=True)


def used(disk: Path) -> int:
    status = os.statvfs(disk)
    return (status.f_blocks - status.f_bfree) * status.f_frsize


def needed(disk: Path, fresh: Path, job: Job) -> tuple[int, int, set[str]]:
    """How many bytes a whole run needs at the end, its exit code, its files."""
    test = Round(disk / "round", fresh, job)
    before = used(disk)
    code = test.whole()
    return max(used(disk) - before, 1 << 16), code, test.made()


def faults(test: Round, code: int, good: int, said: str) -> list[str]:
    """What is not as it must be after the disk was full."""
    wrong = list(test.faults())
    if code == good and not was_done(test):
        return wrong  # it needed less than that
    if "Traceback" in said:
        wrong.append(f"a traceback: {said.splitlines()[-1]}")
    if code not in (1, 3) and code != good:
        wrong.append(f"it ended with {code}")
    if code == 3 and not any(words in said for words in ("full", "No space", "could not", "cannot")):
        wrong.append(f"no sentence about the disk: {said[-200:]!r}")
    if left := [path.name for path in remains(test.top)]:
        wrong.append(f"left in the making: {left}")
    return wrong


def filled_once(disk: Path, test: Round, room: int, good: int, want: set[str], says: Path) -> tuple[bool, list[str]]:
    """Whether the disk did get full, and all that is wrong."""
    resize(disk, used(disk) + room)
    code, said = test.whole(says), says.read_text(errors="replace")
    resize(disk, LARGE)
    wrong = faults(test, code, good, said)
    was_full = code != good
    if not was_full or was_done(test) or test.job.name == "tell":
        return was_full, wrong
    return was_full, [*wrong, *test.faults_at_the_end(good, want)]


def run(options: argparse.Namespace, place: Path) -> tuple[int, list[str]]:
    """So many runs; how often the disk got full, and what was wrong."""
    chance = random.Random(options.seed)
    jobs = [job for job in JOBS if not options.only or job.name in options.only.split(",")][: options.runs]
    fresh, disk, says = place / "fresh" / "tamm_family", place / "disk", place / "said.txt"
    make_fresh(fresh, options.demo)
    disk.mkdir()
    resize(disk, LARGE, first=True)
    wrong: list[str] = []
    full = 0
    try:
        known = {job: needed(disk, fresh, job) for job in jobs}
        for at in range(options.runs):
            job = jobs[at % len(jobs)]
            need, good, want = known[job]
            room = int(need * chance.random())
            was_full, found = filled_once(disk, Round(disk / "round", fresh, job), room, good, want, says)
            full += was_full
            wrong += [f"{job.name}, {room:,} of {need:,} bytes: {fault}" for fault in found]
    finally:
        subprocess.run(["umount", "-l", str(disk)], check=True)
    return full, wrong


def main() -> None:
    """Fill so many disks, count what is wrong; exit code 1 if anything is."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--runs", type=int, default=60)
    parser.add_argument("--seed", type=int, default=7)
    parser.add_argument("--only", default="", help="only these commands, parted by commas")
    parser.add_argument("--demo", type=Path, help="a demo collection to copy, instead of making one")
    options = parser.parse_args()
    if os.geteuid() != 0:
        if shutil.which("unshare") is None or subprocess.run(["unshare", "-rm", "true"], check=False).returncode:
            print("No small disk can be made here: be root, or allow user namespaces.")
            return
        os.execvp("unshare", ["unshare", "-rm", sys.executable, *sys.argv])
    began = time.monotonic()
    with tempfile.TemporaryDirectory() as place:
        try:
            full, wrong = run(options, Path(place))
        except subprocess.CalledProcessError as error:
            print(f"No small disk can be made here: {error}")
            return
    for fault in wrong:
        print("WRONG", fault)
    print(f"{options.runs} runs ({full} filled the disk), {len(wrong)} faults; {time.monotonic() - began:.0f} s")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
