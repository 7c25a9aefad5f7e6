"""What the tests of commands share: running one as a person or a script does, and a collection to write to."""

import shutil
from pathlib import Path

import pytest

from boxlore.cli.main import main


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]):  # type: ignore[no-untyped-def]
    """Runs the command line; gives the exit code, what stood on stdout, and on stderr."""

    def ran(*arguments: object) -> tuple[int, str, str]:
        with pytest.raises(SystemExit) as left:
            main([str(one) for one in arguments])
        out, err = capsys.readouterr()
        return int(left.value.code or 0), out, err

    return ran


@pytest.fixture
def mine(demo: Path, tmp_path: Path) -> Path:
    """A copy of the demo collection to write to."""
    home = tmp_path / "mine"
    shutil.copytree(demo, home)
    return home
