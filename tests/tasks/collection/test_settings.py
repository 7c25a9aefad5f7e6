"""Settings that are no text, or of which the file lost some (rules of our own)."""

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.cli.main import main
from boxlore.core.errors import WrongUse
from boxlore.tasks.collection.opening import open_collection, start
from boxlore.tasks.collection.settings import FILE_NAME, Settings, keep_setting, lost_settings, read_settings


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "is empty or not there"),
        ("# Settings of this collection.\ntitle = 'Tamm'\n", "lacks prefix"),
        ("prefix = 'TR'\n", "lacks title"),
        (None, "is empty or not there"),
    ],
)
def test_settings_that_were_lost_are_said(
    bare: Callable[[int], Path], caplog: pytest.LogCaptureFixture, text: str | None, said: str
) -> None:
    folder = bare(1)
    assert lost_settings(folder) == ""
    if text is None:
        (folder / FILE_NAME).unlink()
    else:
        (folder / FILE_NAME).write_text(text, "utf-8")
    with open_collection(folder, write=False):
        pass
    assert any(said in record.getMessage() for record in caplog.records)


def test_a_title_that_is_no_text_is_refused(tmp_path: Path) -> None:
    with pytest.raises(WrongUse, match="title has letters that are no text"):
        start(tmp_path / "family", Settings(title="\udcff"))
    assert not (tmp_path / "family").exists()


def test_a_folder_whose_name_is_not_utf_8(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """As a stick of another age has it; the name alone cannot be a title, the folder may hold a collection."""
    folder = Path(os.fsdecode(os.fsencode(tmp_path) + b"/\xff\xfen"))
    try:
        folder.mkdir()
    except OSError:
        pytest.skip("this disk takes no such name")
    with pytest.raises(SystemExit) as refused:
        main(["new", str(folder)])
    assert refused.value.code == 2 and "Say --title" in capsys.readouterr().err
    with pytest.raises(SystemExit) as ended:
        main(["new", str(folder), "--title", "Tamm"])
    assert not ended.value.code
    with open_collection(folder) as collection:
        assert collection.settings.title == "Tamm"


def test_one_setting_is_written_and_the_other_lines_stay(tmp_path: Path) -> None:
    history = 'They came from Reval in 1949, and "the boats" came with them.'
    for text in ('# mine\ntitle = "T"\nhistory = ""\nprefix = "TR"\n', '# mine\ntitle = "T"\nprefix = "TR"\n'):
        (tmp_path / "boxlore.toml").write_text(text, encoding="utf-8")
        assert keep_setting(tmp_path, "history", history) == read_settings(tmp_path)
        assert read_settings(tmp_path) == Settings(title="T", prefix="TR", history=history)
        left = (tmp_path / "boxlore.toml").read_text(encoding="utf-8")
        assert all(line in left for line in text.splitlines() if "history" not in line)
    (tmp_path / "boxlore.toml").unlink()
    assert keep_setting(tmp_path, "history", history) == read_settings(tmp_path) == Settings(history=history)
    several = 'title = "T"\nprefix = "TR"\nhistory = """\nof two lines"""\n'
    (tmp_path / "boxlore.toml").write_text(several, encoding="utf-8")
    with pytest.raises(WrongUse, match="could not be written"):
        keep_setting(tmp_path, "history", history)
    assert (tmp_path / "boxlore.toml").read_text(encoding="utf-8") == several
