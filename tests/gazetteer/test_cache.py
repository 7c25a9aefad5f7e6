"""The index of places where its folder cannot be written to, or there is no home: sentences, and work goes on."""

import os
import pwd
import tempfile
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.disk.unfinished import unfinished_folder
from boxlore.gazetteer import index
from boxlore.gazetteer.index import cache_folder, index_path, make_index
from boxlore.gazetteer.lookup import open_anyway, open_gazetteer


def test_without_a_home_the_index_is_made_for_this_time(monkeypatch: pytest.MonkeyPatch, small_data: Path) -> None:
    """A user of no passwd entry and without HOME, as a container may have (Python, os.path.expanduser)."""
    for name in ("BOXLORE_CACHE", "XDG_CACHE_HOME", "HOME"):
        monkeypatch.delenv(name, raising=False)

    def nobody(uid: int) -> None:
        raise KeyError(uid)

    monkeypatch.setattr(pwd, "getpwuid", nobody)
    with pytest.raises(CouldNot, match=r"no home folder\. Set HOME or BOXLORE_CACHE"):
        cache_folder()
    said: list[str] = []
    assert open_anyway(said.append, data=small_data).read("Tartu").best is not None
    assert len(said) == 1 and said[0].endswith("It was made for this time only.")


def test_a_file_in_the_way_is_said_in_words(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("BOXLORE_CACHE", str(tmp_path / "file" / "cache"))
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path / "file" / "tmp"))
    with pytest.raises(CouldNot) as caught:
        open_anyway(print)
    assert "not a directory" in str(caught.value) and "Errno" not in str(caught.value)


def test_an_index_that_cannot_be_opened_nor_taken_away(tmp_path: Path) -> None:
    """A folder of its name stands where the index would be."""
    index_path(tmp_path).mkdir()
    with pytest.raises(CouldNot, match=r"set BOXLORE_CACHE to another folder\.") as caught:
        open_gazetteer(tmp_path)
    assert "Errno" not in str(caught.value)


@pytest.mark.parametrize("is_made", [True, False])
def test_who_starts_while_the_index_is_being_built_waits_for_it(
    is_made: bool, tmp_path: Path, small_data: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the other one ends without an index, as a killed one does, it is built here."""
    path, built, stages, waits = index_path(tmp_path, small_data), tmp_path / "elsewhere", [], threading.Event()
    make_index(built, lambda stage, done, total: None, small_data)
    monkeypatch.setattr(index.time, "sleep", lambda seconds: waits.set())
    with ThreadPoolExecutor() as pool:
        with unfinished_folder(path) as folder:
            opened = pool.submit(open_gazetteer, tmp_path, lambda stage, done, total: stages.append(stage), small_data)
            assert waits.wait(60)
            if is_made:
                (folder / path.name).write_bytes(built.read_bytes())
                os.replace(folder / path.name, path)
        assert opened.result().read("Tartu").best is not None
    assert bool(stages) != is_made
