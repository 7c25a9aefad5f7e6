"""`boxlore restore` as a person or a script meets it (our own contract)."""

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

Runs = Callable[..., tuple[int, str, str]]


@pytest.fixture
def folder(bare: Callable[[int], Path], run: Runs) -> Path:
    """Two items; then a story told, in a command of its own."""
    made = bare(2)
    assert run("-c", made, "tell", "TRA-0001", "story", "It rained")[0] == 0
    return made


def listed(run: Runs, folder: Path) -> list[dict[str, Any]]:
    code, out, _ = run("-c", folder, "restore", "--json")
    assert code == 0
    return [json.loads(line) for line in out.splitlines()]


def test_the_list_tells_when_why_and_what(run: Runs, folder: Path) -> None:
    rows = listed(run, folder)
    assert [(row["why"], row["items"], row["statements"]) for row in rows] == [
        ("on closing", 2, 3), ("on closing", 2, 2)
    ]  # fmt: skip
    assert list(rows[0]) == ["backup", "at", "why", "items", "statements", "bytes"]
    assert {path.stem for path in (folder / "backups").iterdir()} == {row["backup"] for row in rows}
    code, out, err = run("-c", folder, "restore")
    assert code == 0 and "on closing: 2 items, 3 statements" in out and "boxlore restore NAME" in err


def test_one_comes_back_only_with_a_yes(run: Runs, folder: Path) -> None:
    oldest = listed(run, folder)[-1]["backup"]
    code, out, err = run("-c", folder, "restore", oldest)
    assert (code, out) == (1, "") and "Nothing was changed. Add --yes" in err
    assert "It rained" in run("-c", folder, "show", "TRA-0001")[1]
    code, out, err = run("-c", folder, "restore", oldest, "--yes", "--json")
    row = json.loads(out)
    assert (code, row["backup"], row["items"], row["statements"], row["only_before"]) == (0, oldest, 2, 2, [])
    assert "It rained" not in run("-c", folder, "show", "TRA-0001")[1]
    code, _, err = run("-c", folder, "restore", row["kept"], "--yes")
    assert code == 0 and "is back: 2 items, 3 statements." in err
    assert "It rained" in run("-c", folder, "show", "TRA-0001")[1]


@pytest.mark.parametrize("broken", ["missing", "empty", "cut", "other"])
def test_the_way_back_is_said_and_works(run: Runs, folder: Path, broken: str) -> None:
    path = folder / "collection.sqlite"
    data = path.read_bytes()
    path.write_bytes({"missing": b"", "empty": b"", "cut": data[:9000], "other": b"x" * 9000}[broken])
    if broken == "missing":
        path.unlink()
    for command in (("show", "TRA-0001"), ("tell", "TRA-0001", "story", "x"), ("sit", "--plain")):
        code, _, err = run("-c", folder, *command)
        assert code == 3 and "boxlore restore can bring back the backup of " in err, command
    code, _, err = run("-c", folder, "restore", "newest", "--yes")
    assert code == 0 and "is back: 2 items, 3 statements." in err
    assert ("is kept in" in err) == (broken != "missing")
    assert "It rained" in run("-c", folder, "show", "TRA-0001")[1]


def test_refused_in_a_sentence(run: Runs, folder: Path, tmp_path: Path) -> None:
    code, _, err = run("-c", folder, "restore", "1999")
    assert code == 2 and "No backup is called “1999”." in err
    code, out, err = run("-c", tmp_path / "nowhere", "restore")
    assert (code, out) == (0, "") and "There are no backups in" in err
    code, _, err = run("-c", tmp_path / "nowhere", "restore", "newest", "--yes")
    assert code == 2 and "There are no backups in" in err
    holds = "import sys; from pathlib import Path; from boxlore.store.opening import open_store\n"
    holds += "with open_store(Path(sys.argv[1])): print(1, flush=True); sys.stdin.read()"
    env = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE}
    other = subprocess.Popen([sys.executable, "-c", holds, str(folder)], env=env, **pipes)  # type: ignore[call-overload]  # two pipes
    other.stdout.readline()
    code, _, err = run("-c", folder, "restore", "newest", "--yes")
    other.communicate()
    assert code == 3 and "Another program has the collection open." in err and "Close it there" in err


def test_of_damaged_backups_the_newest_whole_one_comes_back_or_none(run: Runs, folder: Path) -> None:
    """Damage in the midst of a file leaves its header, and some counts, as they were."""
    newest, older = (folder / "backups" / f"{row['backup']}.sqlite" for row in listed(run, folder))
    data = newest.read_bytes()
    newest.write_bytes(data[:4096] + bytes(len(data) - 8192) + data[-4096:])
    code, _, err = run("-c", folder, "restore", "newest")
    assert code == 1 and f"Passed over, for they are damaged: {newest.stem}." in err and "2 items, 2 statements" in err
    older.write_bytes(older.read_bytes()[:5000])
    before = {path.name: path.read_bytes() for path in (folder / "backups").iterdir()}
    database = (folder / "collection.sqlite").read_bytes()
    code, _, err = run("-c", folder, "restore", "newest", "--yes")
    assert code == 3 and f"all are damaged: {newest.stem}, {older.stem}." in err and "Nothing was changed" in err
    assert {path.name: path.read_bytes() for path in (folder / "backups").iterdir()} == before
    assert (folder / "collection.sqlite").read_bytes() == database
    for path in (newest, older):
        code, _, err = run("-c", folder, "restore", path.stem, "--yes")
        assert code in (2, 3) and "Take another one" in err


def test_a_backup_that_could_not_be_made_is_said_on_stderr(run: Runs, folder: Path) -> None:
    shutil.rmtree(folder / "backups")
    (folder / "backups").write_text("")
    code, out, err = run("-c", folder, "tell", "TRA-0001", "story", "It snowed")
    assert (code, out) == (0, "")
    assert "Kept: story of TRA-0001." in err and "No backup could be made in " in err
    assert "It snowed" in run("-c", folder, "show", "TRA-0001")[1]


def test_a_damaged_backup_that_still_holds_struck_words_is_named(run: Runs, folder: Path) -> None:
    run("-c", folder, "tell", "TRA-0002", "title", "no more")
    newest = next(path for path in (folder / "backups").iterdir() if b"It rained" in path.read_bytes())
    newest.write_bytes(newest.read_bytes()[:-4096])
    code, _, err = run("-c", folder, "strike", "TRA-0001", "story", "--yes")
    assert code == 1 and "No byte of the collection's database holds" in err
    assert f"Still in backups/{newest.name}: it is damaged and cannot be changed; delete it." in err
