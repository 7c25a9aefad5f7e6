"""What a fault says of itself (rules of our own)."""

import errno
import os
import tempfile
from pathlib import Path

import pytest

from boxlore.core.errors import ByteFault, TextFault, in_words


def test_a_fault_in_a_text_points_at_its_place() -> None:
    assert str(TextFault("1931-13", 5, 7, "There is no month 13")) == "There is no month 13\n  1931-13\n       ^^"


def test_a_long_text_is_not_shown_and_the_column_is_said() -> None:
    assert str(TextFault("9" * 201, 5, 6, "This is no date")) == "This is no date (column 6)"
    assert "999" in str(TextFault("9" * 200, 5, 6, "This is no date"))


def test_a_fault_in_a_file_has_its_offset_and_clause() -> None:
    assert str(ByteFault(20, "This is no marker", "T.81 B.1.1.2")) == "This is no marker (at byte 20; T.81 B.1.1.2)"


def test_an_error_of_the_system_is_said_without_its_number() -> None:
    """The words are those of the C library's strerror (POSIX)."""
    error = OSError(errno.EACCES, os.strerror(errno.EACCES), "/x")
    assert in_words(error) == "permission denied" and "Errno" in str(error)
    assert in_words(ValueError("Line 3: wrong")) == "line 3: wrong"


def test_that_there_is_no_temporary_folder_says_what_to_do(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(tempfile, "_candidate_tempdir_list", lambda: [str(tmp_path / "gone")])
    monkeypatch.setattr(tempfile, "tempdir", None)
    with pytest.raises(FileNotFoundError) as caught:
        tempfile.gettempdir()
    assert "set TMPDIR" in in_words(caught.value)
