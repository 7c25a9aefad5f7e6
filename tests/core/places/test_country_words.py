"""The table of countries in other languages is what its script makes of babel's copy of Unicode CLDR."""

import importlib.util
from pathlib import Path

import pytest

pytest.importorskip("babel", reason="babel is needed for making the table only (extra `dev`)")


def test_the_table_is_what_the_script_makes() -> None:
    path = Path(__file__).parent / "make_country_words.py"
    spec = importlib.util.spec_from_file_location("make_country_words", path)
    assert spec and spec.loader
    make_country_words = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(make_country_words)
    made = make_country_words.table()
    kept = make_country_words.TABLE.read_text(encoding="utf-8")
    version = made.splitlines()[0]
    if kept.splitlines()[0] != version:
        pytest.skip(f"babel has another CLDR: {version}")
    assert kept == made
