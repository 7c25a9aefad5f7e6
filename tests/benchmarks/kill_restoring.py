"""Kill -9 at random moments while a backup is made or brought back: nothing told may be lost, nothing struck come back.

    python tests/benchmarks/kill_restoring.py [--moments 400] [--seed 7]

A collection of a few thousand statements has a backup from before a strike (as if it had lain on another disk) and
words told since. In turn, a process of its own makes a backup, brings that backup back over the sound database, or
over a damaged one, and is killed at a random moment; so that all moments are met, the time it may live is drawn from
what a whole run takes. After each kill:

- the database is the one before or the one brought back, whole by `PRAGMA integrity_check`; a damaged one is as it
  was, byte for byte, or brought back with those bytes in `backups/`;
- what was told since is in the database or in a backup;
- the same can be done again, and after the next opening no file below the folder holds the struck words, and no
  unfinished copy is left.
"""

import argparse
import os
import random
import shutil
import signal
import sqlite3
import sys
import tempfile
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

from boxlore.core.statements import Kind
from boxlore.store.backups import back_up, listed
from boxlore.store.opening import open_store
from boxlore.store.restoring import bring_back
from boxlore.store.strike import files_holding, strike
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import Settings

SECRET, SINCE = "Zanzibar", "Told since"
NOW = "2026-11-25T10:15:30.250Z"
ITEMS = 400


def new_collection(folder: Path) -> Path:
    """The collection as described above. Returns the path of the backup that holds the struck words."""
    start(folder, Settings(title="Synthetic", prefix="SY"))
    with open_collection(folder) as collection:
        act = collection.act("intake")
        for count in range(ITEMS):
            item = act.new(Kind.ITEM)
            act.state(item, "number", f"SYA-{count + 1:04d}")
            for told in range(6):
                act.state(item, "story", f"It rained for the {told}th time on day {count}")
        secret = act.state(item, "story", f"{SECRET} was where they danced that night")
        act.done()
        backup = back_up(collection.store, "on closing", "2026-11-24T10:00:00Z")
        away = backup.read_bytes()
        strike(collection.store, [secret.id], by="me", now=collection.clock.now())
        act = collection.act("later")
        act.state(item, "story", SINCE)
        act.done()
    backup.write_bytes(away)
    return backup


def damage(path: Path) -> None:
    """Other bytes over every third page but the first."""
    data = bytearray(path.read_bytes())
    page = int.from_bytes(data[16:18], "big")
    for number in range(2, len(data) // page, 3):
        data[number * page : number * page + 8] = b"\xa5" * 8
    path.write_bytes(data)


def make_backup(folder: Path, backup: Path) -> None:
    with open_store(folder, write=False) as store:
        back_up(store, "on closing", NOW)


def restore(folder: Path, backup: Path) -> None:
    bring_back(folder, backup, NOW)


def stories(path: Path) -> set[str]:
    """What the database says; raises where SQLite does not find it whole."""
    with closing(sqlite3.connect(path)) as db:
        if (found := db.execute("PRAGMA integrity_check(1)").fetchone()[0]) != "ok":
            raise sqlite3.DatabaseError(found)
        return {words for (words,) in db.execute("SELECT words FROM statement WHERE field = 'story'")}


def killed(job: Callable[[Path, Path], None], folder: Path, backup: Path, seconds: float) -> bool:
    """Run the job in a process of its own and kill it after so long. Whether it had ended by itself."""
    worker = os.fork()
    if worker == 0:
        try:
            job(folder, backup)
        finally:
            os._exit(0)
    time.sleep(seconds)
    os.kill(worker, signal.SIGKILL)
    return os.WIFEXITED(os.waitpid(worker, 0)[1])


def faults(folder: Path, backup: Path, remains: bytes) -> list[str]:
    """What is not as it must be after a kill; `remains` are the damaged database's bytes, if it was damaged."""
    path, wrong = folder / "collection.sqlite", []
    others = [each.path for each in listed(folder) if each.path != backup]
    brought_back = {words for words in stories(backup) if SECRET not in words}
    if remains and path.read_bytes() != remains:
        if stories(path) != brought_back:
            wrong.append("not what was brought back")
        if remains not in [each.read_bytes() for each in others]:
            wrong.append("the damaged database is not kept")
    if not remains:
        if stories(path) not in (brought_back, brought_back | {SINCE}):
            wrong.append("neither the one before nor the one brought back")
        if not any(SINCE in stories(each) for each in (path, *others)):
            wrong.append("what was told since is lost")
    bring_back(folder, backup, NOW)
    open_store(folder).close()
    if stories(path) != brought_back:
        wrong.append("it could not be done again")
    left = [*files_holding(folder, [SECRET]), *folder.rglob("*.part*")]
    return wrong + [f"left: {each.name}" for each in left]


JOBS = ((make_backup, False), (restore, False), (restore, True))


def main() -> None:
    """Kill so many times, count what is wrong; exit code 1 if anything is."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--moments", type=int, default=400)
    parser.add_argument("--seed", type=int, default=7)
    options = parser.parse_args()
    chance, began = random.Random(options.seed), time.monotonic()
    wrong, ended = [], 0
    whole = dict.fromkeys(JOBS, 0.3)
    with tempfile.TemporaryDirectory() as home:
        fresh, folder = Path(home) / "fresh", Path(home) / "tamm_family"
        name = new_collection(fresh).name
        for moment in range(options.moments):
            job, is_damaged = chosen = JOBS[moment % len(JOBS)]
            shutil.rmtree(folder, ignore_errors=True)
            shutil.copytree(fresh, folder)
            backup, path = folder / "backups" / name, folder / "collection.sqlite"
            if is_damaged:
                damage(path)
            remains = path.read_bytes() if is_damaged else b""
            seconds = chance.random() * whole[chosen]
            was_done = killed(job, folder, backup, seconds)
            ended += was_done
            whole[chosen] = max(0.02, whole[chosen] * (0.9 if was_done else 1.05))  # about a third end by themselves
            wrong += [f"{job.__name__}, damaged {is_damaged}, {seconds:.3f} s: {fault}"
                      for fault in faults(folder, backup, remains)]  # fmt: skip
    for fault in wrong:
        print("WRONG", fault)
    print(
        f"{options.moments} kills ({ended} came after the end), {len(wrong)} faults; {time.monotonic() - began:.0f} s"
    )
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
