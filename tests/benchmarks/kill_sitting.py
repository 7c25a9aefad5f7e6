"""Kill -9 at random moments of a sitting: nothing that the screen called saved may be lost.

    python tests/benchmarks/kill_sitting.py [--moments 1000] [--seed 7] [--terminal 20]

A writer in a process of its own types through the sitting (`tasks.sitting.session`, as both fronts do) and, after each
keystroke's draft or statement has been acknowledged, says so down a pipe: what it says is what a screen would have
called saved. It is killed at a random moment; what was acknowledged must be found after the next opening, whole, and
on its own item. `--terminal` of the moments run the whole terminal program in a pty instead, where the
acknowledgement is the word on the screen. Every opening also asks SQLite for `PRAGMA integrity_check`.
"""

import argparse
import os
import random
import re
import shutil
import signal
import sqlite3
import sys
import tempfile
import time
from pathlib import Path

from boxlore.core.statements import Kind
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.prompts import PROMPTS
from boxlore.tasks.collection.records_for_outputs import records
from boxlore.tasks.collection.settings import Settings
from boxlore.tasks.sitting.recovering import recover_drafts
from boxlore.tasks.sitting.session import Sitting

ITEMS = 40


def type_on(folder: Path, run: int, pipe: int) -> None:
    """Type and say down the pipe what was acknowledged, until killed."""
    with open_collection(folder) as collection:
        sitting = Sitting(collection, narrator="Ellen Rourke")
        sitting.begin()
        os.write(pipe, b"ready\n")
        for count, (number, item) in enumerate(collection.store.items() * 50):
            sitting.show(item)
            record = sitting.record(item)
            prompt = PROMPTS[(0, 5)[count % 2]]
            words = f"run {run} step {count} " + "the boat " * (count % 5)
            for at in range(len(words)):
                sitting.draft(item, prompt, words[: at + 1])
                os.write(pipe, f"{number}\t{prompt.field}\t{words[: at + 1]}\n".encode())
            sitting.keep(record, prompt, words)
            os.write(pipe, f"{number}\t{prompt.field}\t{words.strip()}\tkept\n".encode())


def new_collection(folder: Path) -> None:
    start(folder, Settings(title="Synthetic", prefix="SY"))
    with open_collection(folder) as collection:
        act = collection.act("intake")
        for count in range(ITEMS):
            act.state(act.new(Kind.ITEM), "number", f"SYA-{count + 1:04d}")
        act.done()


def killed_writer(folder: Path, run: int, chance: random.Random) -> list[list[str]]:
    """Start a writer, kill it after a random while, return the lines it had acknowledged.

    The writer is forked, with everything loaded, while nothing of the collection is open here.
    """
    reading, writing = os.pipe()
    writer = os.fork()
    if writer == 0:
        os.close(reading)
        try:
            type_on(folder, run, writing)
        finally:
            os._exit(1)
    os.close(writing)
    with open(reading, "rb") as pipe:
        assert pipe.readline() == b"ready\n"
        time.sleep(chance.random() ** 2 * 0.25)
        os.kill(writer, signal.SIGKILL)
        said = pipe.read().decode(errors="replace")
    os.waitpid(writer, 0)
    return [line.split("\t") for line in said.split("\n")[:-1]]


def lost_of(folder: Path, said: list[list[str]]) -> list[str]:
    """What was acknowledged and is not there, on its own item, after the next opening."""
    with sqlite3.connect(folder / "collection.sqlite") as db:
        sound = db.execute("PRAGMA integrity_check").fetchone()[0]
    db.close()
    lost = [] if sound == "ok" else [sound]
    with open_collection(folder) as collection:
        recover_drafts(collection)
        wanted: dict[tuple[str, str], str] = {}
        for number, field, words, *_ in said:
            wanted[number, field] = words
        found = {record.number: record for record in records(collection)}
        for (number, field), words in wanted.items():
            have = [told.words for told in found[number].all(field)]
            if not any(one.startswith(words.strip()) for one in have):
                lost.append(f"{number} {field}: {words!r} not in {have}")
    return lost


def killed_terminal(folder: Path, run: int, chance: random.Random) -> list[str]:
    """The whole program in a pty: what its screen shows as saved before the kill is there afterwards."""
    sys.path.insert(0, str(Path(__file__).parents[1] / "tui"))
    from conftest import Terminal  # noqa: PLC0415  # the tests' own terminal

    arguments = ["-c", str(folder), "sit", "--narrator", "Ellen", "--no-viewing"]
    window = Terminal(arguments, columns=100, rows=30, XDG_STATE_HOME=str(folder.parent))
    try:
        window.wait_for("Tell me about this photograph", 60)
        words = f"terminal run {run} " + "".join(chance.choice("abcdefgh ") for _ in range(chance.randrange(5, 60)))
        window.send("⟨PgDn⟩" * (run % ITEMS) + words)
        time.sleep(chance.random() * 0.6)
        text = window.text
        window.signal(signal.SIGKILL)
        window.wait()
    finally:
        window.end()
    number = re.search(r"SYA-\d{4}", text)
    shown = re.search(rf"terminal run {run}\b[a-h ]*", text)
    if not number or not shown or "saved" not in text:
        return []
    head = " ".join(shown[0].split())
    with open_collection(folder) as collection:
        recover_drafts(collection)
        record = next(one for one in records(collection) if one.number == number[0])
        have = [" ".join(told.words.split()) for told in record.all("story")]
    return [] if any(head in one for one in have) else [f"{number[0]}: {head!r} not in {have}"]


def main() -> None:
    """Kill so many times, count what is lost; exit code 1 if anything is."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--moments", type=int, default=1000)
    parser.add_argument("--terminal", type=int, default=20)
    parser.add_argument("--seed", type=int, default=7)
    told = parser.parse_args()
    chance = random.Random(told.seed)
    began, acknowledged, lost = time.monotonic(), 0, []
    with tempfile.TemporaryDirectory() as home:
        folder = Path(home) / "tamm_family"
        new_collection(folder)
        for run in range(told.moments - told.terminal):
            if run % 100 == 99:  # a fresh one, so that openings stay short
                shutil.rmtree(folder)
                new_collection(folder)
            said = killed_writer(folder, run, chance)
            acknowledged += len(said)
            lost += lost_of(folder, said)
        for run in range(told.terminal):
            lost += killed_terminal(folder, run, chance)
    for one in lost:
        print("LOST", one)
    print(
        f"{told.moments} moments ({told.terminal} of the whole terminal program), {acknowledged} acknowledged "
        f"keystrokes and statements, {len(lost)} lost; {time.monotonic() - began:.0f} s"
    )
    sys.exit(1 if lost else 0)


if __name__ == "__main__":
    os.environ.setdefault("PYTHONDONTWRITEBYTECODE", "1")
    main()
