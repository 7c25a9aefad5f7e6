"""`boxlore transfer`: its sizes and what it says before anything leaves (our own contract; the package itself:
tests/tasks/archive)."""

import csv
import json
import re
from pathlib import Path

import pytest


def test_the_name_search_is_written_down_before_anything_leaves(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    out = tmp_path / "out"
    code, stdout, err = run("-c", mine, "transfer", out, "--box", "1", "--split", "700M", "--json")
    assert code == 0
    with open(mine / "names-found.csv", encoding="utf-8-sig", newline="") as file:
        questions = len(list(csv.reader(file))) - 1
    told = re.search(rf" living people in (\d+) mentions; each is in {re.escape(str(mine / 'names-found.csv'))}\.", err)
    assert told and int(told[1]) >= questions > 0, "one question may be of several mentions"
    assert "That list is for you; do not hand it on." in err
    assert "Taken as handing over the originals too; --originals no hands over scans only." in err
    assert "people taken as living are withheld from the open part. Read both before you hand them on." in err
    parts = [json.loads(line) for line in stdout.splitlines()]
    assert [Path(part["path"]).name for part in parts] == ["open", "closed"]
    assert parts[0]["records"] <= parts[1]["records"]


def test_what_is_only_worth_knowing_is_no_failure(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    """POSIX.1, 2.8.2: nought says that it was done."""
    settings = mine / "boxlore.toml"
    settings.write_text(settings.read_text("utf-8").replace('custody = ""', 'custody = "Kept by Mia Rourke."'), "utf-8")
    code, _, err = run("-c", mine, "transfer", tmp_path / "out", "--item", "TRA-0001", "--yes")
    assert (code, "names someone living (“Kept by Mia Rourke.”), and is left away." in err) == (0, True)
    assert (tmp_path / "out" / "open").is_dir()


def test_without_a_living_name_nothing_is_listed(run, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    assert run("new", tmp_path / "tamm")[0] == 0
    assert run("-c", tmp_path / "tamm", "intake", "--without-scan", "1")[0] == 0
    _, _, err = run("-c", tmp_path / "tamm", "transfer", tmp_path / "out", "--originals", "yes", "--anyway")
    assert "The name search found nobody living." in err
    assert not (tmp_path / "out" / "names-found.csv").exists()


@pytest.mark.parametrize("size", ["large", "4T", "-1", "1,5G", "1.G"])
def test_a_size_that_is_none(run, demo: Path, tmp_path: Path, size: str) -> None:  # type: ignore[no-untyped-def]
    code, _, err = run("-c", demo, "transfer", tmp_path / "out", f"--split={size}")
    assert code == 2 and f"“{size}” is no size. Write it like 4G or 700M." in err
