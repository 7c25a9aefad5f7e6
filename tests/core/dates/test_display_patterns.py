"""The table of how dates are written is what its script makes of babel's copy of Unicode CLDR."""

import importlib.util
from pathlib import Path

import pytest

pytest.importorskip("babel", reason="babel is needed for making the table only (extra `dev`)")


def test_the_table_is_what_the_script_makes() -> None:
    path = Path(__file__).parent / "make_display.py"
    spec = importlib.util.spec_from_file_location("make_display", path)
    assert spec and spec.loader
    make_display = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(make_display)
    made = make_display.table()
    kept = make_display.TABLE.read_text(encoding="utf-8")
    version = made.splitlines()[0]
    if kept.splitlines()[0] != version:
        pytest.skip(f"babel has another CLDR: {version}")
    assert kept == made
