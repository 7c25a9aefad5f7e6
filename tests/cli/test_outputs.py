"""No output ever takes the place of what a keeper has: a rule of our own, tried at the shell with every output."""

import os
from pathlib import Path

import pytest
from tests.drawn import some

ON = ("--on", "2026-11-25")
ONE = ("--item", "TRA-0003")
THEIRS = b"written by somebody else"

WRITERS = [
    ("sheet", "{}", *ONE, *ON),
    ("slips", "{}", *ONE, *ON),
    ("labels", "{}", *ONE, *ON),
    ("worksheet", "{}", *ONE, *ON),
    ("survey", "--work", "{}", *ON),
    ("survey", "--scan", "{}", *ON),
    ("housing", "lend", "TRA-0003", "--by", "Con Rourke", "--receipt", "{}", *ON),
    ("climate", "log.csv", "--png", "{}"),
]

LOG = "Time,Temperature (C),Humidity (%)\n" + "".join(
    f"2026-03-{day:02}T{hour:02}:00,18.5,45\n" for day in range(1, 4) for hour in range(24)
)


@pytest.fixture
def write(run, mine: Path, tmp_path: Path):  # type: ignore[no-untyped-def]
    (tmp_path / "log.csv").write_text(LOG, encoding="utf-8")

    def wrote(command: tuple[str, ...], target: Path, *more: str) -> tuple[int, str]:
        filled = [str(tmp_path / "log.csv") if part == "log.csv" else part.format(target) for part in command]
        code, _, err = run("-c", mine, *filled, *more)
        return code, err

    return wrote


def all_bytes(folder: Path) -> dict[Path, bytes]:
    return {path: path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()}


@pytest.mark.parametrize("command", some(WRITERS), ids=" ".join)
def test_a_foreign_file_is_replaced_only_when_asked(write, tmp_path: Path, command: tuple[str, ...]) -> None:  # type: ignore[no-untyped-def]
    target = tmp_path / "out.pdf"
    target.write_bytes(THEIRS)
    code, err = write(command, target)
    assert code == 2 and "not something that Boxlore wrote" in err and "--over" in err
    assert target.read_bytes() == THEIRS
    assert write(command, target, "--over")[0] in (0, 1)
    ours = target.read_bytes()
    assert ours != THEIRS
    assert write(command, target)[0] in (0, 1)  # over our own unasked


def test_our_own_with_something_written_into_it_is_foreign(write, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    target = tmp_path / "work.csv"
    assert write(("survey", "--work", "{}", *ON), target)[0] == 0
    ticked = target.read_bytes() + b"done,by,Mere\n"
    target.write_bytes(ticked)
    code, err = write(("survey", "--work", "{}", *ON), target)
    assert code == 2 and "changed since" in err
    assert target.read_bytes() == ticked


OWN = (
    "collection.sqlite",
    "collection.sqlite-wal",
    "Collection.SQLite-shm",
    "collection.lock",
    "boxlore.toml",
    "prompts.toml",
    "places.tsv",
    "outputs.sha256",
    "scans/new.pdf",
    "recordings/new.pdf",
    "papers/deep/new.pdf",
    "backups/new.pdf",
)


@pytest.mark.parametrize("own", OWN)
def test_never_among_what_a_collection_keeps(write, mine: Path, own: str) -> None:  # type: ignore[no-untyped-def]
    before = all_bytes(mine / own.partition("/")[0]) if "/" in own else {}
    there = (mine / own).read_bytes() if (mine / own).is_file() else None
    for command in WRITERS[:2]:
        code, err = write(command, mine / own, "--over")
        assert code == 2 and ("own files" in err or "cannot be made again" in err)
    assert (all_bytes(mine / own.partition("/")[0]) if "/" in own else {}) == before
    assert there is None or own == "collection.sqlite" or (mine / own).read_bytes() == there


@pytest.mark.parametrize("command", ["pages", "copies", "offer", "transfer"])
@pytest.mark.parametrize("place", some(["scans/new", "recordings/new", "papers", "backups/new"]))
def test_no_folder_among_what_a_collection_keeps(run, mine: Path, command: str, place: str) -> None:  # type: ignore[no-untyped-def]
    before = set((mine / place.partition("/")[0]).rglob("*"))
    code, _, err = run("-c", mine, command, mine / place, *ON)
    assert code == 2 and ("cannot be made again" in err or "among the scans" in err)
    assert set((mine / place.partition("/")[0]).rglob("*")) == before


def test_a_link_is_not_followed_nor_one_at_the_temporary_name(write, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    theirs = tmp_path / "theirs.txt"
    theirs.write_bytes(THEIRS)
    (tmp_path / "link.pdf").symlink_to(theirs)
    code, err = write(WRITERS[0], tmp_path / "link.pdf", "--over")
    assert code == 2 and "is a link" in err
    for name in ("out.pdf.part", "out.pdf.boxlore-part"):
        (tmp_path / name).symlink_to(theirs)
    assert write(WRITERS[0], tmp_path / "out.pdf")[0] == 0
    assert theirs.read_bytes() == THEIRS
    assert not os.path.lexists(tmp_path / "out.pdf.boxlore-part")


def test_a_foreign_page_or_contents_stays(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    site = tmp_path / "site"
    assert run("-c", mine, "pages", site, *ON, *ONE)[0] == 0
    listed = (site / "our-files.txt").read_text(encoding="utf-8").splitlines()
    (site / "our-files.txt").write_text("\n".join(one for one in listed if one != "index.html"), encoding="utf-8")
    (site / "index.html").write_bytes(THEIRS)
    before = all_bytes(site)
    code, _, err = run("-c", mine, "pages", site, *ON, *ONE)
    assert code == 2 and "not something that Boxlore wrote" in err
    assert all_bytes(site) == before
    copied = tmp_path / "copied"
    copied.mkdir()
    (copied / "contents.csv").write_bytes(b"my,own,table\n")
    code, _, err = run("-c", mine, "copies", copied, *ONE)
    assert code == 2 and "not something that Boxlore wrote" in err
    assert all_bytes(copied) == {copied / "contents.csv": b"my,own,table\n"}


def test_the_list_of_names_found_goes_over_no_other(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    package = tmp_path / "package"
    (mine / "names-found.csv").write_bytes(THEIRS)
    code, _, err = run("-c", mine, "transfer", package, "--yes", *ON)
    assert code == 2 and "names-found.csv has no column Number" in err, "it is read as the keeper's answers first"
    assert (mine / "names-found.csv").read_bytes() == THEIRS and not package.exists()


def test_the_log_of_a_sitting_goes_over_no_other(run, mine: Path, tmp_path: Path) -> None:  # type: ignore[no-untyped-def]
    logs = tmp_path / "logs"
    code, out, _ = run("-c", mine, "recording", "--log", logs)
    assert code == 0
    written = [Path(line) for line in out.splitlines()]
    written[-1].write_bytes(THEIRS)
    before = all_bytes(logs)
    code, _, err = run("-c", mine, "recording", "--log", logs)
    assert code == 2 and "--over" in err
    assert all_bytes(logs) == before
