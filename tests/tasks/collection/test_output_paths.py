"""Which names in a collection's folder no output takes (rules of our own, no outside source)."""

import shutil
from pathlib import Path

import pytest

from boxlore.core.errors import WrongUse
from boxlore.tasks.archive.transfer import transfer
from boxlore.tasks.collection.opening import DATABASE, FOLDERS, open_collection
from boxlore.tasks.collection.output_paths import OWN_FILES, Unopened, check_place, write_output, write_own
from boxlore.tasks.outputs.copies import copies
from boxlore.tasks.outputs.web_pages import pages


@pytest.fixture
def mine(tmp_path: Path) -> Path:
    (tmp_path / "mine").mkdir()
    (tmp_path / "mine" / DATABASE).touch()
    return tmp_path / "mine"


def test_no_name_of_the_collections_own_is_taken_as_file_or_folder(mine: Path) -> None:
    outputs = Unopened(mine.parent, over=True)
    for name in (*OWN_FILES, DATABASE, f"{DATABASE}-wal", "collection.lock", *(f"{folder}/x" for folder in FOLDERS)):
        for out in (mine / name, mine / name / "open", mine / name.upper(), mine / "print" / ".." / name):
            with pytest.raises(WrongUse, match=r"own files|cannot be made again"):
                check_place(outputs, out)
    for free in (mine / "copies", mine / "print" / "names-found.csv", mine.parent / "prompts.toml"):
        check_place(outputs, free)


def test_answers_stay_whatever_would_be_written_over_them(demo: Path, tmp_path: Path) -> None:
    shutil.copytree(demo, tmp_path / "mine")
    with open_collection(tmp_path / "mine", write=False) as collection:
        collection.over = True
        listed = write_own(collection, "names-found.csv", b"Number,Key,Answer\n")
        listed.write_bytes(answers := listed.read_bytes() + b"TRA-0001,,hide\n")
        folder = collection.folder
        for wrong in (
            lambda: write_output(collection, listed, b"list,what\n"),
            lambda: pages(collection, folder / "names-left.csv"),
            lambda: list(copies(collection, folder / "names-left.csv")),
            lambda: transfer(collection, folder / "unfinished.txt"),
        ):
            with pytest.raises(WrongUse, match="own files"):
                wrong()
    assert listed.read_bytes() == answers
    assert not (folder / "names-left.csv").exists() and not (folder / "unfinished.txt").exists()


def test_the_task_that_owns_a_file_asks_before_it_goes_over_anothers(mine: Path) -> None:
    outputs = Unopened(mine.parent)
    (mine.parent / "names-left.csv").write_bytes(b"somebody's own")
    with pytest.raises(WrongUse, match="not something that Boxlore wrote"):
        write_own(outputs, "names-left.csv", b"x")
