"""What several tests share: the demo family, built once; the index of places, built once into a cache of its own."""

import os
import tempfile
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from boxlore.tasks.demo import run

ON = date(2026, 11, 25)

if "BOXLORE_CACHE" not in os.environ:
    os.environ["BOXLORE_CACHE"] = str(Path(tempfile.gettempdir()) / "boxlore-test-cache")


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """The demo collection with all its outputs. Tests read it; one that writes takes a copy."""
    folder = tmp_path_factory.mktemp("demo") / "tamm_family"
    for _ in run(folder, lambda words: None, on_day=ON):
        pass
    yield folder
