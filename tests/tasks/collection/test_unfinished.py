"""What a killed run left lies inside the folder that the keeper named, is named by `verify`, and goes with the next run
(our own rules; SIGKILL as in POSIX signal(7) cannot be handled)."""

import shutil
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from tests.drawn import some

from boxlore.core.errors import CouldNot
from boxlore.disk.unfinished import PART, remains
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.unfinished import left_findings, work_folder
from boxlore.tasks.outputs.web_pages import pages

KILLED = """
import os, signal, sys
from pathlib import Path
from boxlore.tasks.archive.offer import offer
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.collection.progress import Quiet
from boxlore.tasks.demo.every_task import run
from boxlore.tasks.outputs.web_pages import pages

class Killing(Quiet):
    def begin(self, what, total):
        self.what = what
    def step(self, done=1):
        if self.what.startswith(sys.argv[4]):
            os.kill(os.getpid(), signal.SIGKILL)

home, out = Path(sys.argv[1]), Path(sys.argv[2])
if sys.argv[3] == "demo":
    list(run(out, print, Killing()))
with open_collection(home) as collection:
    {"pages": pages, "offer": offer, "transfer": transfer}[sys.argv[3]](collection, out, progress=Killing())
"""


def killed(home: Path, out: Path, task: str, moment: str) -> None:
    arguments = [sys.executable, "-c", KILLED, str(home), str(out), task, moment]
    assert subprocess.run(arguments, check=False, stdout=subprocess.DEVNULL).returncode == -signal.SIGKILL


@pytest.fixture
def mine(small_family: Path, tmp_path: Path) -> Path:
    return Path(shutil.copytree(small_family, tmp_path / "mine"))


TASKS = [
    ("transfer", "Writing the records of the archive part"),
    ("transfer", "Packing closed"),
    ("pages", "Preparing pictures"),
    ("offer", "Making thumbnails"),
]


@pytest.mark.parametrize(("task", "moment"), some(TASKS))
def test_what_a_killed_task_left(mine: Path, tmp_path: Path, task: str, moment: str) -> None:
    out = tmp_path / "away" / "out"
    killed(mine, out, task, moment)
    left = list(remains(tmp_path / "away"))
    assert left and all(path.name.endswith(PART) for path in left)
    assert not (out / "closed").exists() and not (out / "open").exists(), "neither part without the other"
    assert [finding.rule for finding in left_findings(mine)] == ["unfinished.left"]
    assert str(left[0]) in left_findings(mine)[0].message
    with open_collection(mine) as collection:
        {"pages": pages, "offer": offer, "transfer": transfer}[task](collection, out)
    assert not list(remains(tmp_path)) and not left_findings(mine)
    assert not (mine / "unfinished.txt").exists()


def test_the_next_run_elsewhere_removes_it_too(mine: Path, tmp_path: Path) -> None:
    killed(mine, tmp_path / "first", "pages", "Preparing pictures")
    with open_collection(mine) as collection:
        pages(collection, tmp_path / "second")
    assert not list(remains(tmp_path))


def test_a_killed_demo_is_begun_again(tmp_path: Path) -> None:
    """What the killed one left goes with the first thing that the next one has done; a whole one is made elsewhere."""
    from boxlore.tasks.demo.every_task import run  # noqa: PLC0415  # loads every task

    out = tmp_path / "tamm_family"
    killed(tmp_path, out, "demo", "Copying")
    left = list(remains(tmp_path))
    assert left and not out.exists()
    again = run(out, lambda words: None)
    assert str(next(again)[1]).startswith(str(out))
    assert not set(left) & set(remains(tmp_path))
    again.close()
    assert not list(remains(tmp_path)) and not out.exists()


def test_a_line_that_is_not_ours_is_not_touched(mine: Path, tmp_path: Path) -> None:
    precious = tmp_path / "precious"
    precious.mkdir()
    lines = f"{precious}\nrelative{PART}\n{tmp_path}/unplugged/pages{PART}\n"
    (mine / "unfinished.txt").write_text(lines)
    with work_folder(mine, tmp_path / "pages") as folder:
        assert folder.is_dir() and str(folder) in (mine / "unfinished.txt").read_text()
        assert not left_findings(mine), "somebody is at work there"
    assert precious.is_dir()
    assert (mine / "unfinished.txt").read_text() == f"{tmp_path}/unplugged/pages{PART}\n"


def test_a_disk_that_refuses_is_said(mine: Path, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with (
        pytest.raises(CouldNot, match="A file stands where a folder is wanted"),
        work_folder(mine, tmp_path / "file" / "pages"),
    ):
        pass
