"""The scripts that kill, fill the disk and attack the teller's page, a few moments of each (rules of our own).

At full size they are run by hand: `tests/benchmarks/kill_commands.py`, `full_disk.py`, `hostile_client.py`.
"""

import subprocess
import sys
from pathlib import Path

import pytest

SCRIPTS = Path(__file__).parents[2] / "benchmarks"

RUNS = [
    ("kill_commands.py", "--kills", "2", "--only", "intake,transfer", "--demo", "DEMO"),
    ("kill_commands.py", "--kills", "2", "--only", "copies-outside,strike", "--demo", "DEMO"),
    ("full_disk.py", "--runs", "2", "--only", "copies,intake", "--demo", "DEMO"),
    ("hostile_client.py", "--connections", "120"),
]


@pytest.mark.parametrize("run", RUNS, ids=" ".join)
def test_nothing_is_lost_and_nothing_closed_is_outside(run: tuple[str, ...], small_family: Path) -> None:
    arguments = [sys.executable, str(SCRIPTS / run[0]), *(word.replace("DEMO", str(small_family)) for word in run[1:])]
    ended = subprocess.run(arguments, capture_output=True, text=True, check=False)
    if "No small disk can be made here" in ended.stdout:
        pytest.skip(ended.stdout.strip())
    assert ended.returncode == 0, ended.stdout + ended.stderr
