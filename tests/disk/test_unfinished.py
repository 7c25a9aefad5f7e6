"""Unfinished work is known by its name, held while somebody works at it, and else removed (rules of our own; the lock
is flock(2), which the system frees when a process ends)."""

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from boxlore.disk.unfinished import (
    PART,
    clear,
    clear_remains,
    is_free,
    is_worked_at,
    put_in_place,
    remains,
    unfinished_file,
    unfinished_folder,
)
from boxlore.disk.writing import replacing

KILLED = """
import os, signal, sys
from pathlib import Path
from boxlore.disk.unfinished import unfinished_file, unfinished_folder
target = Path(sys.argv[1])
with unfinished_folder(target) as folder, unfinished_file(target.with_name("caption.txt")) as file:
    (folder / "closed.txt").write_text("closed")
    file.write_text("half")
    os.kill(os.getpid(), signal.SIGKILL)
"""


def killed(target: Path) -> None:
    ended = subprocess.run([sys.executable, "-c", KILLED, str(target)], check=False)
    assert ended.returncode == -signal.SIGKILL


def test_what_a_killed_run_left_is_found_and_goes(tmp_path: Path) -> None:
    target = tmp_path / "transfer"
    killed(target)
    left = {tmp_path / f"transfer{PART}", tmp_path / f"caption.txt{PART}"}
    assert set(remains(tmp_path)) == left and set(tmp_path.iterdir()) == left
    with unfinished_folder(target) as folder:
        assert folder == tmp_path / f"transfer{PART}" and list(folder.iterdir()) == []
        assert set(remains(tmp_path)) == {tmp_path / f"caption.txt{PART}"}, "what is worked at is not left"
    clear_remains(tmp_path)
    assert list(tmp_path.iterdir()) == []


def test_two_runs_at_once_do_not_hinder_each_other(tmp_path: Path) -> None:
    target = tmp_path / "caption.txt"
    with replacing(target) as first:
        first.write(b"first")
        with replacing(target) as second:
            second.write(b"second")
        assert target.read_bytes() == b"second"
        clear_remains(tmp_path)
    assert target.read_bytes() == b"first" and list(tmp_path.iterdir()) == [target]


def test_what_is_renamed_is_not_removed_by_its_former_name(tmp_path: Path) -> None:
    target = tmp_path / "pages"
    with unfinished_folder(target) as folder:
        folder.rename(target)
        folder.mkdir()  # another run's, by now
    assert {path.name for path in tmp_path.iterdir()} == {"pages", f"pages{PART}"}


def test_a_fault_leaves_nothing(tmp_path: Path) -> None:
    with pytest.raises(KeyboardInterrupt), unfinished_folder(tmp_path / "deep" / "pages") as folder:
        (folder / "index.html").write_text("half")
        raise KeyboardInterrupt
    assert list((tmp_path / "deep").iterdir()) == []


def test_links_are_removed_and_not_followed(tmp_path: Path) -> None:
    elsewhere = tmp_path / "elsewhere"
    (elsewhere / "inside").mkdir(parents=True)
    (tmp_path / f"a{PART}").symlink_to(elsewhere)
    os.mkfifo(tmp_path / f"b{PART}")
    assert not is_worked_at(tmp_path / f"a{PART}") and not is_worked_at(tmp_path / f"b{PART}")
    assert not is_worked_at(tmp_path / f"none{PART}")
    assert clear(tmp_path / f"a{PART}") and clear(tmp_path / f"b{PART}")
    assert [path.name for path in tmp_path.rglob("*")] == ["elsewhere", "inside"]


def test_a_folder_is_free_if_only_what_was_left_is_in_it(tmp_path: Path) -> None:
    out = tmp_path / "out"
    assert is_free(out)
    out.mkdir()
    (out / f"open{PART}").mkdir()
    assert is_free(out) and list(out.iterdir()) == []
    with unfinished_file(out / "offer.csv"):
        assert not is_free(out), "somebody is at work there"
    (out / "offer.csv").write_text("told")
    assert not is_free(out) and not is_free(out / "offer.csv")


def test_a_folder_that_is_whole_takes_its_name(tmp_path: Path) -> None:
    for number, out in enumerate((tmp_path / "new", tmp_path / "there")):
        if number:
            out.mkdir()
        with unfinished_folder(out) as folder:
            for name in ("a", "b"):
                (folder / name).write_text(name)
            put_in_place(folder, out, last="a")
        assert {path.name for path in out.iterdir()} == {"a", "b"}
    assert {path.name for path in tmp_path.iterdir()} == {"new", "there"}
