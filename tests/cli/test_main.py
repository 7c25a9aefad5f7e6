"""How the command ends where the world or the reader fails (exit codes of our own contract)."""

import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from tests.drawn import some

PROGRAM = "from boxlore.cli.main import main; main()"


def test_without_a_command_and_a_terminal_the_help_is_shown(run) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run()
    assert (code, err) == (0, "")
    assert out.startswith("Usage: boxlore ") and "Start a collection." in out


def test_its_version(run) -> None:  # type: ignore[no-untyped-def]
    code, out, _ = run("--version")
    assert code == 0 and out.startswith("Boxlore ")


def test_a_file_that_the_system_refuses_is_named(run, demo: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    code, out, err = run("-c", demo, "verify", "--receipt", tmp_path)
    assert (code, out) == (3, "")
    assert err == f"Is a directory: {tmp_path}. What was finished is kept.\n"


def test_a_reader_that_leaves_ends_it_without_a_word(tmp_path: Path) -> None:
    """`boxlore date … | head -1`: what is written into the closed pipe raises BrokenPipeError (POSIX write, EPIPE)."""
    texts = [str(year) for year in range(1000, 2000)] * 8
    child = subprocess.Popen(
        [sys.executable, "-c", PROGRAM, "date", "--json", *texts], stdout=subprocess.PIPE, stderr=subprocess.PIPE
    )
    assert child.stdout is not None and child.stderr is not None
    assert child.stdout.readline().startswith(b'{"text": "1000"')
    child.stdout.close()
    assert child.wait(60) == 3
    assert child.stderr.read() == b""
    child.stderr.close()


@pytest.mark.parametrize("command", some([("sit", "--plain", "--no-viewing"), ("transfer", "OUT"), ()]))
def test_a_closed_stream_is_one_that_says_nothing(small_family: Path, tmp_path: Path, command: tuple[str, ...]) -> None:
    """`boxlore … <&-`: whoever starts us may have closed what is read from (POSIX sh, 2.7.5); Python has None there."""
    home = shutil.copytree(small_family, tmp_path / "home")
    words = [str(tmp_path / "out") if word == "OUT" else word for word in command]
    line = [sys.executable, "-c", PROGRAM, "-c", str(home), *words]
    ended = subprocess.run(
        ["sh", "-c", '"$@" <&-', "sh", *line], capture_output=True, text=True, check=False, timeout=300
    )
    assert "Traceback" not in ended.stderr and ended.returncode in (0, 1, 3), ended.stderr
