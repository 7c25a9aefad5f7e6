"""The scripts that kill, fill the disk and attack the teller's page, a few moments of each (rules of our own).

Kills are in CI alone: run by hand, `test_unfinished.py` and the tests through a terminal kill enough.

At full size they are run by hand: `tests/benchmarks/kill_commands.py`, `full_disk.py`, `hostile_client.py`.
"""

import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from tests.drawn import IN_CI

from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.opening import open_collection
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.printed_sheets import worksheet
from boxlore.tasks.outputs.web_pages import pages

SCRIPTS = Path(__file__).parents[2] / "benchmarks"

RUNS = [
    ("kill_commands.py", "--kills", "2", "--only", "copies-outside,strike", "--demo", "DEMO"),
    ("kill_commands.py", "--kills", "2", "--only", "intake,transfer", "--demo", "DEMO"),
    ("full_disk.py", "--runs", "2", "--only", "copies,intake", "--demo", "DEMO"),
    ("hostile_client.py", "--connections", "120"),
] if IN_CI else [
    ("full_disk.py", "--runs", "1", "--only", "intake", "--demo", "DEMO"),
    ("hostile_client.py", "--connections", "40"),
]  # fmt: skip


@pytest.fixture(scope="module")
def made(small_family: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small family with all outputs that the demo has: the scripts run by hand take the demo itself."""
    home = Path(shutil.copytree(small_family, tmp_path_factory.mktemp("fire") / "tamm_family"))
    with open_collection(home) as collection:
        assert list(copies(collection, home / "copies"))
        transfer(collection, home / "transfer")
        pages(collection, home / "pages")
        worksheet(collection, home / "print" / "worksheet.pdf")
    return home


@pytest.mark.parametrize("run", RUNS, ids=" ".join)
def test_nothing_is_lost_and_nothing_closed_is_outside(run: tuple[str, ...], made: Path) -> None:
    arguments = [sys.executable, str(SCRIPTS / run[0]), *(word.replace("DEMO", str(made)) for word in run[1:])]
    ended = subprocess.run(arguments, capture_output=True, text=True, check=False)
    if "No small disk can be made here" in ended.stdout:
        pytest.skip(ended.stdout.strip())
    assert ended.returncode == 0, ended.stdout + ended.stderr
