"""The index of places where its folder cannot be written to, or there is no home: sentences, and work goes on."""

import pwd
import tempfile
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.gazetteer.index import cache_folder, index_path
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
