"""Tables that a script beside their test makes, held against what it makes."""

import importlib.util
from pathlib import Path

import pytest


def check_table(script: Path, elsewhere: str) -> None:
    """The kept table is what `script` makes; skips, with `elsewhere` as the reason, where its source has another
    release than the one that the table's first line names.
    """
    spec = importlib.util.spec_from_file_location(script.stem, script)
    assert spec and spec.loader
    maker = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(maker)
    made = maker.table()
    kept = maker.TABLE.read_text(encoding="utf-8")
    version = made.splitlines()[0]
    if kept.splitlines()[0] != version:
        pytest.skip(f"{elsewhere}: {version}")
    assert kept == made
