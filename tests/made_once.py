"""What a fixture makes is made once, and each test has a copy of it: to make a collection costs ten times a copy.

    @pytest.fixture
    def home(copy_of: CopyOf) -> Path:
        return copy_of(make_home)

`make_home(folder)` makes files in the folder, and returns paths in it; the test gets the same paths in its `tmp_path`.
Only for what holds no path of its own: a collection that registers scans where they lie is made for each test.
"""

import shutil
from collections.abc import Callable, Hashable
from pathlib import Path
from typing import Any, TypeVar

import pytest

Made = TypeVar("Made", Path, tuple[Path, ...])
CopyOf = Callable[..., Any]

_made: dict[Hashable, tuple[Path, Any]] = {}
"""What was made by a function with its further arguments: in which folder, and the paths that it returned."""


def copy(make: Callable[..., Made], *how: Hashable, folders: pytest.TempPathFactory, to: Path) -> Made:
    """What `make(folder, *how)` makes, in the folder `to`."""
    known = _made.get((make, how))
    if known is None or not known[0].exists():  # a mutation run has it of a run whose files are gone
        folder = folders.mktemp("made_once")
        known = _made[make, how] = folder, make(folder, *how)
    folder, paths = known
    shutil.copytree(folder, to, dirs_exist_ok=True)
    if isinstance(paths, Path):
        return to / paths.relative_to(folder)
    return tuple(to / path.relative_to(folder) for path in paths)
