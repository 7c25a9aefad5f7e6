"""What stands in the place of a file is no file: it is said, and nothing waits for it (POSIX, open: FIFO, devices)."""

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from boxlore.core.errors import CouldNot
from boxlore.disk.digests import sha256_of
from boxlore.disk.regular_file import open_regular
from boxlore.tasks.collection.embedded_metadata import embedded_in
from boxlore.tasks.collection.settings import read_settings


@pytest.fixture
def pipe(tmp_path: Path) -> Path:
    os.mkfifo(tmp_path / "boxlore.toml")
    return tmp_path / "boxlore.toml"


@pytest.mark.parametrize("read", [sha256_of, lambda path: read_settings(path.parent)], ids=["fixity", "settings"])
def test_a_pipe_is_said(pipe: Path, read: Callable[[Path], object]) -> None:
    with pytest.raises(CouldNot, match="It is a pipe, a socket or a device"):
        read(pipe)


def test_a_device_that_never_ends_and_a_folder_are_no_files(tmp_path: Path) -> None:
    (tmp_path / "scan.jpg").symlink_to("/dev/zero")
    with pytest.raises(OSError, match="no file"):
        embedded_in(tmp_path / "scan.jpg")
    with pytest.raises(IsADirectoryError):
        open_regular(tmp_path)
