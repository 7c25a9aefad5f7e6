"""Ctrl+C is obeyed wherever a command stands, with 130 (128 + SIGINT: common practice of shells) and a true sentence.

Each command runs in a process of its own, which sends SIGINT to itself when Python opens a certain file, or
imports a certain module (audit events `open` and `import`, PEP 578), so that the moment is the same in every run.
"""

import os
import shutil
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from tests.drawn import some

from boxlore.cli import interrupts
from boxlore.disk.unfinished import remains
from boxlore.tasks.collection.opening import open_collection

INTERRUPTED = """
import os, signal, sys
part, sys.argv = sys.argv[1], ["boxlore", *sys.argv[2:]]
sent = []
def hook(event, values):
    if event in ("open", "import") and part in str(values[0]) and not sent:
        sent.append(1)
        os.kill(os.getpid(), signal.SIGINT)
sys.addaudithook(hook)
from boxlore.cli.entry import run
run()
"""


def unmeasured() -> dict[str, str]:
    """The environment without what measures coverage: an interrupt inside of that leaves its lock taken for ever."""
    return {name: value for name, value in os.environ.items() if not name.startswith("COVERAGE")}


def heard() -> None:
    """Whoever runs the tests in the background may have Ctrl+C ignored, and children inherit that."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


def interrupted(part: str, *arguments: object, **environment: str) -> tuple[int, str]:
    """Exit code and stderr of a command that is interrupted when it first opens a path with `part` in it."""
    ended = subprocess.run(
        [sys.executable, "-c", INTERRUPTED, part, *map(str, arguments)],
        capture_output=True, text=True, check=False, env=unmeasured() | environment, timeout=120,
        preexec_fn=heard,
    )  # fmt: skip
    return ended.returncode, ended.stderr


@pytest.fixture
def home(small_family: Path, tmp_path: Path) -> Path:
    return Path(shutil.copytree(small_family, tmp_path / "home"))


COMMANDS = [
    ("metadata/records.nt", ("transfer", "OUT", "--yes", "--originals", "yes")),
    ("cleaned/", ("transfer", "OUT", "--yes", "--originals", "yes")),  # where scans are copied before they are packed
    ("_f.jpg.boxlore-part", ("copies", "OUT")),
    ("images/large", ("pages", "OUT")),
    ("pictures/", ("offer", "OUT")),
    ("album.typ", ("sheet", "OUT/album.pdf")),
    ("scans/TRA-0003", ("verify",)),
    ("cities.tsv", ("place", "Reval")),
    ("boxlore.toml", ("show", "TRA-0001")),
    ("boxlore.cli.main", ("show", "TRA-0001")),  # while its modules load
]


@pytest.mark.parametrize(
    ("part", "arguments"), some(COMMANDS), ids=lambda value: value if isinstance(value, str) else ""
)
def test_a_command_that_is_interrupted(home: Path, tmp_path: Path, part: str, arguments: tuple[str, ...]) -> None:
    out = tmp_path / "away" / "out"
    arguments = tuple(argument.replace("OUT", str(out)) for argument in arguments)
    code, err = interrupted(part, "-c", home, *arguments, BOXLORE_CACHE=str(tmp_path / "cache"))
    assert code == interrupts.EXIT == 128 + signal.SIGINT
    assert "Stop" in err and "Traceback" not in err
    assert interrupts.AT_ONCE in err or not list(remains(tmp_path))
    assert not (out / "open").exists()


def test_an_intake_that_is_interrupted_goes_on(home: Path, tmp_path: Path) -> None:
    new = tmp_path / "new"
    subprocess.run([sys.executable, "-c", "from boxlore.cli.entry import run; run()", "new", str(new)], check=True)
    code, err = interrupted("TRA-0003_f", "-c", new, "intake", home / "scans", "--copy", "--yes")
    assert code == interrupts.EXIT and "Traceback" not in err
    interrupted("never", "-c", new, "intake", home / "scans", "--copy", "--yes")
    with open_collection(new, write=False) as collection:
        digests = [facts.sha256 for _, facts in collection.store.scans()]
    assert len(digests) == len(set(digests)) == len(list((home / "scans").iterdir()))


def test_a_demo_that_is_interrupted_has_no_name(tmp_path: Path) -> None:
    code, err = interrupted("_f.jpg.boxlore-part", "demo", tmp_path / "tamm_family")
    assert code == interrupts.EXIT and "Traceback" not in err
    assert list(tmp_path.iterdir()) == list(remains(tmp_path))
    assert interrupts.AT_ONCE in err or not list(remains(tmp_path))


def test_a_plain_sitting_that_is_interrupted_keeps_its_answers_and_ends_with_130(home: Path) -> None:
    program = "from boxlore.cli.entry import run; run()"
    sitting = subprocess.Popen(
        [sys.executable, "-c", program, "-c", str(home), "sit", "--plain", "--no-viewing", "--narrator", "Leida"],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=unmeasured(),
    )  # fmt: skip
    assert sitting.stdin is not None and sitting.stdout is not None
    sitting.stdin.write("The quay on a Sunday.\n")
    sitting.stdin.flush()
    while "Saved." not in sitting.stdout.readline():
        assert sitting.poll() is None
    sitting.send_signal(signal.SIGINT)
    _, said = sitting.communicate(timeout=60)
    assert sitting.returncode == interrupts.EXIT
    assert "Every answer that was saved is kept" in said and "Traceback" not in said
    with open_collection(home, write=False) as collection:
        assert collection.store.search("Sunday", 5)


DEAF = """
import hashlib, os, signal, sys
from boxlore.cli import interrupts, talk
def deaf():
    os.kill(os.getpid(), signal.SIGINT)
    {}
try:
    with talk.progress() as bar:
        deaf()
except KeyboardInterrupt:
    sys.exit(33)
"""

TASKS = [
    ("while True: bar.stopped() or 1", interrupts.EXIT, interrupts.AT_ONCE),  # it looks, and does not stop
    ("while True: pass", 33, interrupts.STOPPING),  # it never looks
    # A library that hears no signal, and lets other threads run (Python, hashlib: the GIL is released).
    ("hashlib.pbkdf2_hmac('sha256', b'', b'', 10**9)", interrupts.EXIT, interrupts.AT_ONCE),
]


@pytest.mark.parametrize(("doing", "code", "words"), some(TASKS))
def test_a_task_that_does_not_stop_by_itself(doing: str, code: int, words: str) -> None:
    # Without coverage: while it measures, a thread may not get its turn beside a library.
    ended = subprocess.run(
        [sys.executable, "-c", DEAF.format(doing)],
        capture_output=True,
        text=True,
        check=False,
        env=unmeasured(),
        timeout=120,
    )
    assert ended.returncode == code and words in ended.stderr and interrupts.STOPPING in ended.stderr


def test_who_started_us_may_want_it_ignored() -> None:
    """As `nohup` and a shell's `&` do (POSIX, 2.11: asynchronous lists ignore SIGINT)."""
    program = f"import signal; signal.signal(signal.SIGINT, signal.SIG_IGN)\n{INTERRUPTED}"
    ended = subprocess.run(
        [sys.executable, "-c", program, "boxlore.cli.main", "--version"], capture_output=True, text=True, check=False
    )
    assert (ended.returncode, ended.stderr) == (0, "")


def test_nothing_is_imported_before_ctrl_c_is_heard() -> None:
    """In each module that came before the handler Ctrl+C would show a traceback, some milliseconds long."""
    program = (
        "import sys; before = set(sys.modules); import boxlore.cli.entry\n"
        "print(*sorted(set(sys.modules) - before)); import signal\n"
        "print(signal.getsignal(signal.SIGINT) is boxlore.cli.entry._ended)"
    )
    child = [sys.executable, "-c", program]
    ended = subprocess.run(child, capture_output=True, text=True, check=True, env=unmeasured(), preexec_fn=heard)
    assert ended.stdout.split() == ["boxlore", "boxlore.cli", "boxlore.cli.entry", "True"]
