"""Kill -9 at random moments in every command that writes, then the same command again, then `verify`.

    python tests/benchmarks/kill_commands.py [--kills 200] [--seed 7] [--only transfer] [--demo FOLDER]

Each command runs on its own copy of the demo collection, in a process of its own, which is killed at a random moment;
so that all moments are met, the time it may live is drawn from what a whole run takes. After each kill:

- the database is whole by `PRAGMA integrity_check`, and every statement that was there, or was acknowledged, is there;
- no scan has changed, by its SHA-256;
- below the folder of the output no file outside a folder `closed`, or one in the making, names anyone living, and
  there is no open part without a closed one;
- `verify` names what was left in the making;
- the same command again ends as an undisturbed run does, with the same files, leaves nothing in the making, and what
  it made proves right.
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
from contextlib import closing
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

import pyexiv2

from boxlore.cli.main import main as boxlore
from boxlore.core.records.audience import To
from boxlore.disk.unfinished import PART, remains
from boxlore.tasks.archive.name_search import names_left
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.records_for_outputs import AudienceView, seen_by
from boxlore.tasks.collection.unfinished import left_findings
from boxlore.tasks.outputs.copies_being_made import FILE_NAME as NOTED
from boxlore.tasks.scans.package_check import verify_package


@dataclass(frozen=True, slots=True)
class Job:
    """One command; in its arguments HOME is the collection, OUT a folder elsewhere, FROM a folder of scans, MADE one
    with what was made of the collection before it was told more: copies, a transfer, answers to a worksheet."""

    name: str
    arguments: tuple[str, ...]
    outside: bool = False
    """Whether what it makes is for outside, so that no file of it may name anyone living."""
    home: bool = True
    begins_with: str = ""
    """What of MADE lies in the folder of the output already."""


CHANGED = "intake-of-changed"
"""Takes scans in that lie where they lay, and are others now."""

JOBS = (
    Job("demo", ("demo", "OUT/tamm_family"), home=False),
    Job("new", ("new", "OUT/tamm_family"), home=False),
    Job("intake", ("-c", "HOME", "intake", "FROM", "--copy", "--yes", "--box", "9")),
    Job("tell", ("-c", "HOME", "tell", "TRA-0001", "story", "The words of this kill.")),
    Job("strike", ("-c", "HOME", "strike", "TRA-0002", "story", "--yes")),
    Job("copies", ("-c", "HOME", "copies", "OUT/copies")),
    Job("copies-outside", ("-c", "HOME", "copies", "OUT/copies", "--for", "outside", "--longest", "300"), outside=True),
    Job("sheet", ("-c", "HOME", "sheet", "OUT/album.pdf")),
    Job("worksheet", ("-c", "HOME", "worksheet", "OUT/worksheet.pdf")),
    Job("slips", ("-c", "HOME", "slips", "OUT/slips.pdf")),
    Job("labels", ("-c", "HOME", "labels", "OUT/labels.pdf")),
    Job("pages", ("-c", "HOME", "pages", "OUT/pages"), outside=True),
    Job("offer", ("-c", "HOME", "offer", "OUT/offer"), outside=True),
    Job("transfer", ("-c", "HOME", "transfer", "OUT/transfer", "--yes", "--originals", "yes"), outside=True),
    Job(CHANGED, ("-c", "HOME", "intake", "MADE/changed", "--yes", "--replace")),
    Job("intake-of-copies", ("-c", "HOME", "intake", "MADE/copies", "--own", "--copy", "--yes", "--box", "9")),
    Job("copies-again", ("-c", "HOME", "copies", "OUT/copies"), begins_with="copies"),
    Job("answers", ("-c", "HOME", "tell", "--from", "MADE/answers.txt", "--by", "narrator:Leida Rourke")),
    Job("update", ("-c", "HOME", "transfer", "OUT/update", "--update", "MADE/transfer", "--yes"), outside=True),
    Job("place", ("place", "Reval"), home=False),
)


def run_in_a_process(arguments: list[str], cache: Path, says: Path | str = os.devnull) -> int:
    """Begin a command in a process of its own; its id. What it says goes into the file `says`."""
    worker = os.fork()
    if worker:
        return worker
    code = 99
    try:
        os.environ["BOXLORE_CACHE"] = str(cache)
        os.dup2(os.open(os.devnull, os.O_RDONLY), 0)
        said = os.open(says, os.O_WRONLY | os.O_CREAT | os.O_TRUNC)
        for stream in (1, 2):
            os.dup2(said, stream)
        boxlore(arguments)
    except SystemExit as left:
        code = int(left.code or 0)
    finally:
        os._exit(code)


def statements(folder: Path) -> set[str]:
    """The ids of the statements in the database; raises where SQLite does not find it whole."""
    with closing(sqlite3.connect(folder / "collection.sqlite")) as db:
        if (words := db.execute("PRAGMA integrity_check(1)").fetchone()[0]) != "ok":
            raise sqlite3.DatabaseError(words)
        return {ident for (ident,) in db.execute("SELECT id FROM statement")}


def told(folder: Path) -> int:
    """How many statements the strike takes out: all that is told in stories of the item that it names."""
    query = """SELECT count(*) FROM statement s JOIN statement n ON n.subject = s.subject
        WHERE s.field = 'story' AND n.field = 'number' AND n.words = 'TRA-0002'"""
    with closing(sqlite3.connect(folder / "collection.sqlite")) as db:
        return int(db.execute(query).fetchone()[0])


def digests(folder: Path) -> dict[str, str]:
    return {path.name: sha256(path.read_bytes()).hexdigest() for path in folder.iterdir() if PART not in path.name}


def names(folder: Path) -> set[str]:
    """The files below a folder, without those that are named by the moment or by the ids of this run."""
    paths = (path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file())
    return {path for path in paths if not {"backups", "person"} & set(Path(path).parts)}


class Round:
    """One kill: a fresh collection, an empty folder for the output, a cache."""

    def __init__(self, top: Path, fresh: Path, job: Job) -> None:
        self.job, self.top = job, top
        shutil.rmtree(top, ignore_errors=True)
        self.home, self.out, self.cache = top / "home", top / "out", top / "cache"
        top.mkdir()
        self.out.mkdir()
        shutil.copytree(fresh, self.home)
        if job.name != "place":
            self.cache = Path(os.environ.get("BOXLORE_CACHE") or fresh.parent / "cache")
        self.source, made = fresh.parent / "new scans", top / "made"
        shutil.copytree(fresh.parent / "made", made)  # the way from the collection to its scans there stays the same
        if job.name == CHANGED:
            for path in (made / "changed").iterdir():
                path.write_bytes(path.read_bytes() + b"changed since")
        if job.begins_with:
            shutil.copytree(made / job.begins_with, self.out / job.begins_with)
        places = {"HOME": self.home, "OUT": self.out, "FROM": self.source, "MADE": made}
        self.arguments = [
            str(Path(*(places.get(part, part) for part in Path(argument).parts))) for argument in job.arguments
        ]
        self.before = statements(self.home)
        self.told = told(self.home)
        self.scans = digests(self.home / "scans")

    def whole(self, says: Path | str = os.devnull) -> int:
        """Run the command to its end; its exit code."""
        return os.waitstatus_to_exitcode(os.waitpid(run_in_a_process(self.arguments, self.cache, says), 0)[1])

    def killed(self, seconds: float) -> bool:
        """Run the command and kill it after so long. Whether it had ended by itself."""
        worker = run_in_a_process(self.arguments, self.cache)
        time.sleep(seconds)
        os.kill(worker, signal.SIGKILL)
        return os.WIFEXITED(os.waitpid(worker, 0)[1])

    def faults(self) -> list[str]:
        """What is not as it must be after a kill."""
        wrong = []
        lost = len(self.before - statements(self.home))
        if lost and not (self.job.name == "strike" and lost == self.told):
            wrong.append(f"{lost} statements are lost")
        after = digests(self.home / "scans")
        if any(after.get(name) != digest for name, digest in self.scans.items()):
            wrong.append("a scan has changed")
        wrong += self._closed_outside()
        left = list(remains(self.top))
        unsaid = left_findings(self.home, self.out)
        if self.job.home and len(unsaid) < len(left):
            wrong.append(f"verify does not name all of {[path.name for path in left]}")
        return wrong

    def _closed_outside(self) -> list[str]:
        if not self.job.outside:
            return []
        with open_collection(self.home, write=False) as collection:
            seen = seen_by(collection, To.OUTSIDE)
            naming = [path for path in names_left(seen, self.out) if not self._is_clean_list(seen, path)]
        parts = [Path(path).parts for path in naming]
        wrong = [
            f"{'/'.join(each)} names someone living"
            for each in parts
            if "closed" not in each and not any(part.endswith(PART) for part in each)
        ]
        package = self.out / self.job.name
        if (package / "open").exists() and not (package / "closed").exists():
            wrong.append("an open part without its closed one")
        return wrong

    def _is_clean_list(self, seen: AudienceView, path: str) -> bool:
        """Whether it is the list of copies being made, which the gate cannot open, and names nobody withheld."""
        return Path(path).name == NOTED and seen.recipient.may_read((self.out / path).read_text(encoding="utf-8"))

    def made(self) -> set[str]:
        """The files of the output, and how many statements were told where a second run should tell none twice."""
        told_once = self.job.name in ("answers", CHANGED, "intake-of-copies")
        added = {f"{len(statements(self.home) - self.before)} statements"} if told_once else set()
        return names(self.out) | added

    def faults_at_the_end(self, code: int, want: set[str]) -> list[str]:
        """What is wrong after the same command again; `code` and `want` are those of an undisturbed run."""
        wrong = []
        if (ended := self.whole()) != code:
            wrong.append(f"again it ended with {ended} and not {code}")
        if left := [str(path) for path in remains(self.top)]:
            wrong.append(f"left: {left}")
        if (self.home / "unfinished.txt").exists():
            wrong.append("left: unfinished.txt")
        if (have := self.made()) != want:
            wrong.append(f"other files than in an undisturbed run: {sorted(have ^ want)[:5]}")
        wrong += self._closed_outside()
        if self.job.name in ("transfer", "update"):
            parts = (self.out / self.job.name / part for part in ("open", "closed"))
            wrong += [finding.message for part in parts for finding in verify_package(part)]
        if self.job.home:
            statements(self.home)
            verified = run_in_a_process(["-c", str(self.home), "verify"], self.cache)
            if (ended := os.waitstatus_to_exitcode(os.waitpid(verified, 0)[1])) != 0:
                wrong.append(f"verify ended with {ended}")
        return wrong


def undisturbed(top: Path, fresh: Path, job: Job) -> tuple[float, int, set[str]]:
    """How long a whole run takes in seconds, its exit code, its files and how many statements it adds."""
    test, began = Round(top, fresh, job), time.monotonic()
    code = test.whole()
    return time.monotonic() - began, code, test.made()


def was_done(test: Round) -> bool:
    """Whether a killed run had made its output already: then the same again is refused, and rightly."""
    if test.job.name in ("demo", "new"):
        return (test.out / "tamm_family" / "collection.sqlite").exists()
    if test.job.name in ("offer", "transfer", "update"):
        return any((test.out / test.job.name / name).exists() for name in ("offer.csv", "open"))
    return test.job.name == "strike" and bool(test.before - statements(test.home))


def killed_once(test: Round, seconds: float, code: int, want: set[str]) -> tuple[bool, list[str]]:
    """Whether it had ended by itself, and all that is wrong."""
    ended = test.killed(seconds)
    wrong = test.faults()
    if ended or was_done(test):
        return ended, wrong
    if test.job.name == "tell":  # told again it is told twice: the keeper sees the first and does not
        return ended, wrong
    return ended, [*wrong, *test.faults_at_the_end(code, want)]


def main() -> None:
    """Kill so many times, count what is wrong; exit code 1 if anything is."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--seed", type=int, default=7)
    parser.add_argument("--only", default="", help="only these commands, parted by commas")
    parser.add_argument("--demo", type=Path, help="a demo collection to copy, instead of making one")
    options = parser.parse_args()
    chance, began = random.Random(options.seed), time.monotonic()
    jobs = [job for job in JOBS if not options.only or job.name in options.only.split(",")]
    wrong: list[str] = []
    ended = 0
    with tempfile.TemporaryDirectory() as place:
        fresh, top = Path(place) / "fresh" / "tamm_family", Path(place) / "round"
        make_fresh(fresh, options.demo)
        known = {job: undisturbed(top, fresh, job) for job in jobs[: options.kills]}
        lives = {job: seconds for job, (seconds, _, _) in known.items()}
        for at in range(options.kills):
            job = jobs[at % len(jobs)]
            test, seconds = Round(top, fresh, job), chance.random() * lives[job]
            by_itself, faults = killed_once(test, seconds, *known[job][1:])
            ended += by_itself
            lives[job] = max(0.02, lives[job] * (0.9 if by_itself else 1.03))
            wrong += [f"{job.name}, {seconds:.3f} s: {fault}" for fault in faults]
    for fault in wrong:
        print("WRONG", fault)
    print(f"{options.kills} kills ({ended} came after the end), {len(wrong)} faults; {time.monotonic() - began:.0f} s")
    sys.exit(1 if wrong else 0)


def make_fresh(fresh: Path, demo: Path | None) -> None:
    """The demo, copied from `demo` if it is given, without its outputs; a few scans beside it that are new to it.

    Made in a process of its own too: a library's threads do not come along into those that are begun later.
    """
    if demo is not None:
        shutil.copytree(demo, fresh)
    else:
        worker = run_in_a_process(["demo", str(fresh)], fresh.parent / "cache")
        assert os.waitstatus_to_exitcode(os.waitpid(worker, 0)[1]) == 0
    made = fresh.parent / "made"
    made.mkdir()
    for name in ("copies", "transfer"):
        (fresh / name).rename(made / name)
    (made / "answers.txt").write_text(answered((fresh / "print" / "worksheet-answers.txt").read_text("utf-8")), "utf-8")
    for name in ("pages", "print"):
        shutil.rmtree(fresh / name)
    for folder, count in ((fresh.parent / "new scans", 8), (made / "changed", 4)):
        folder.mkdir()
        for at, path in enumerate(sorted((fresh / "scans").glob("*.jpg"))[:count]):
            # Bytes behind the end of the image (ITU-T T.81, B.1.1.3: EOI) make it another file of the same picture.
            (folder / f"{at}_f.jpg").write_bytes(path.read_bytes() + folder.name.encode() + bytes([at]))
    for arguments in (
        ("intake", str(made / "changed"), "--yes", "--box", "9"),
        ("tell", "TRA-0001", "story", "What was told since."),
        ("tell", "TRA-0003", "title", "Told since"),
    ):
        worker = run_in_a_process(["-c", str(fresh), *arguments], fresh.parent / "cache")
        assert os.waitstatus_to_exitcode(os.waitpid(worker, 0)[1]) == 0, arguments
    for path in sorted((made / "copies").rglob("*.jpg"))[:4]:
        with pyexiv2.Image(str(path)) as image:
            image.modify_xmp({"Xmp.photoshop.Instructions": "Put in by another program."})


def answered(blank: str) -> str:
    """The answers of a worksheet with something to most questions."""
    lines = blank.splitlines()
    return "\n".join(
        f"{line} The answer of line {at}." if line.endswith(":") and not line.startswith("#") and at % 3 else line
        for at, line in enumerate(lines)
    )


if __name__ == "__main__":
    main()
